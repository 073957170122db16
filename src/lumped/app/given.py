"""What a page asks about: a file's text and the recipes, ingredients and batches with it, never a path on disk."""

import hashlib
import json
import re
import tomllib
from collections.abc import Iterator, Mapping
from contextlib import chdir, contextmanager
from dataclasses import dataclass, field, replace
from functools import cached_property
from pathlib import Path, PurePosixPath
from tempfile import TemporaryDirectory
from typing import Any, Literal

import tomli_w

from lumped.app.examples import example_recipe
from lumped.documents import is_there
from lumped.errors import InputError

__all__ = ["Given", "along", "file_name_of", "labels_laid_out", "laid_out", "names_file", "needed_recipes", "not_along",
           "plain_name", "references"]  # fmt: skip

SIZE_LIMIT = 2_000_000
Effort = Literal["quick", "full"]


@dataclass(frozen=True, kw_only=True)
class Given:
    """A sculpture, a recipe, a batch or an ingredient, as text.

    Parameters
    ----------
    name : str
        Name of the file, for messages.
    text : str
        Its TOML.
    recipes : mapping of str to str
        Texts of recipe files by their names.
    labels : mapping of str to str
        Texts of the ingredient files of what the handbook does not have, by their titles.
    batches : tuple of Given
        Batches that a recipe's prediction learns from, in the order in which they were made.
    effort : {"quick", "full"}
        How finely to compute.
    """

    name: str
    text: str
    recipes: Mapping[str, str] = field(default_factory=dict)
    labels: Mapping[str, str] = field(default_factory=dict)
    batches: "tuple[Given, ...]" = ()
    effort: Effort = "full"

    @cached_property
    def key(self) -> str:
        """Hash of everything that the answer hangs on.

        Examples
        --------
        >>> Given(name="a.toml", text="x = 1").key == Given(name="a.toml", text="x = 2").key
        False
        """
        content = json.dumps([
            self.name, self.text, sorted(self.recipes.items()), sorted(self.labels.items()),
            [each.key for each in self.batches], self.effort,
        ])  # fmt: skip
        return hashlib.sha256(content.encode()).hexdigest()

    def with_unknown_doughs(self) -> "Given":
        """Give the same with "I don't know mine" in place of each recipe that is missing."""
        document = tomllib.loads(self.text)
        for entry in document["doughs"].values():
            if "recipe" in entry and along(self, entry["recipe"]) is None:
                del entry["recipe"]
                entry["unknown"] = "conducting"
        return replace(self, text=tomli_w.dumps(document))

    def computed(self, effort: Effort) -> "Given":
        """Give the same, computed with another effort."""
        return replace(self, effort=effort)


def names_file(place: str) -> bool:
    """Tell whether a file is meant, and no title: one that is there, or a name that ends like one.

    Examples
    --------
    >>> names_file("salt.toml"), names_file("Ropewalk salt dough")
    (True, False)
    """
    return Path(place).suffix in (".toml", ".csv") or is_there(Path(place))


def plain_name(name: str) -> str:
    """Give a file name without folders and odd signs.

    Examples
    --------
    >>> plain_name("../../etc/my boat!.toml")
    'my boat.toml'
    """
    last = re.split(r"[/\\]", name)[-1]
    return re.sub(r"[^\w .()-]", "", last).strip(" .")[:80] or "sculpture.toml"


def file_name_of(title: str) -> str:
    """Give the name of the file in which something of a title is handed out.

    Examples
    --------
    >>> file_name_of("rice/corn mix"), file_name_of("?")
    ('rice-corn mix.toml', 'untitled.toml')
    """
    name = re.sub(r"[^\w .()-]", "", re.sub(r"[/\\]", "-", title)).strip(" .")[:80]
    return f"{name or 'untitled'}.toml"


def needed_recipes(given: Given) -> dict[str, str]:
    """Give the recipes that a sculpture refers to, by their file names; those that are missing are left out."""
    found = {re.split(r"[/\\]", each)[-1]: along(given, each) for each in references(given.text)}
    return {name: text for name, text in found.items() if text is not None}


@contextmanager
def laid_out(given: Given) -> Iterator[Path]:
    """Lay a sculpture or a batch out with its recipes in an empty folder of their own, and work there.

    Parameters
    ----------
    given : Given
        The texts.

    Yields
    ------
    Path
        The file's name, relative to the working folder, so that messages name it as its owner does.

    Raises
    ------
    InputError
        If it is too large, or refers to a recipe that did not come with it or lies outside its own folder.
    """
    parts = ((given.text,), given.recipes.values(), given.labels.values())
    if any(sum(len(text.encode()) for text in part) > SIZE_LIMIT for part in parts):
        raise InputError("document-too-large", file=given.name, limit="2 MB")
    with TemporaryDirectory(prefix="lumped-") as folder:
        for reference in references(given.text):
            text, place = along(given, reference), PurePosixPath(reference.replace("\\", "/"))
            if text is None or place.is_absolute() or ".." in place.parts or ":" in reference:
                raise not_along(given, reference)
            target = Path(folder, *place.parts)
            target.parent.mkdir(parents=True, exist_ok=True)
            target.write_text(text, "utf-8")
        for at, text in zip(labels_laid_out(given), given.labels.values(), strict=True):
            Path(folder, at).parent.mkdir(exist_ok=True)
            Path(folder, at).write_text(text, "utf-8")
        name = plain_name(given.name)
        Path(folder, name).write_text(given.text, "utf-8")
        with chdir(folder):
            yield Path(name)


def labels_laid_out(given: Given) -> list[Path]:
    """Give the places at which `laid_out` lays the ingredients that came along.

    Examples
    --------
    >>> labels_laid_out(Given(name="a.toml", text="", labels={"our salt": ""}))
    [PosixPath('labels/1.toml')]
    """
    return [Path("labels", f"{number}.toml") for number in range(1, len(given.labels) + 1)]


def along(given: Given, reference: str) -> str | None:
    """Give the text of a recipe: one that came along under that name, else an example; None if there is neither."""
    last = re.split(r"[/\\]", reference)[-1]
    found = given.recipes.get(reference, given.recipes.get(last))
    return found if found is not None else example_recipe(reference)


def not_along(given: Given, recipe: str) -> InputError:
    """Give the refusal of a sculpture or batch whose recipe did not come along."""
    of_batch = tomllib.loads(given.text).get("kind") == "batch"  # what names a recipe could be read
    return InputError("batch-recipe-not-along" if of_batch else "recipe-not-along", file=given.name, recipe=recipe)


def references(text: str) -> tuple[str, ...]:
    """Give the recipes that a sculpture or batch refers to; none if it can't be read, as its reader says."""
    try:
        document = tomllib.loads(text)
    except (ValueError, RecursionError):
        return ()
    doughs: Any = document.get("doughs")
    entries = doughs.values() if isinstance(doughs, dict) else ()
    found = [entry.get("recipe") for entry in entries if isinstance(entry, dict)]
    if document.get("kind") == "batch":
        found.append(document.get("recipe"))
    return tuple(dict.fromkeys(each for each in found if isinstance(each, str) and each))
