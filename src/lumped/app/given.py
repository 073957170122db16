"""What a page asks about: the text of a sculpture or recipe, with recipes that came along, never a path on disk."""

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
from lumped.errors import InputError

__all__ = ["Given", "along", "laid_out", "needed_recipes", "plain_name", "references"]

SIZE_LIMIT = 2_000_000
Effort = Literal["quick", "full"]


@dataclass(frozen=True, kw_only=True)
class Given:
    """A sculpture, or a recipe, as text.

    Parameters
    ----------
    name : str
        Name of the file, for messages.
    text : str
        Its TOML.
    recipes : mapping of str to str
        Texts of recipe files by their names.
    effort : {"quick", "full"}
        How finely to compute.
    """

    name: str
    text: str
    recipes: Mapping[str, str] = field(default_factory=dict)
    effort: Effort = "full"

    @cached_property
    def key(self) -> str:
        """Hash of everything that the answer hangs on.

        Examples
        --------
        >>> Given(name="a.toml", text="x = 1").key == Given(name="a.toml", text="x = 2").key
        False
        """
        content = json.dumps([self.name, self.text, sorted(self.recipes.items()), self.effort])
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


def plain_name(name: str) -> str:
    """Give a file name without folders and odd signs.

    Examples
    --------
    >>> plain_name("../../etc/my boat!.toml")
    'my boat.toml'
    """
    last = re.split(r"[/\\]", name)[-1]
    return re.sub(r"[^\w .()-]", "", last).strip(" .")[:80] or "sculpture.toml"


def needed_recipes(given: Given) -> dict[str, str]:
    """Give the recipes that a sculpture refers to, by their file names; those that are missing are left out."""
    found = {re.split(r"[/\\]", each)[-1]: along(given, each) for each in references(given.text)}
    return {name: text for name, text in found.items() if text is not None}


@contextmanager
def laid_out(given: Given) -> Iterator[Path]:
    """Lay a sculpture and its recipes out in an empty folder of their own, and work there.

    Parameters
    ----------
    given : Given
        The texts.

    Yields
    ------
    Path
        The sculpture file's name, relative to the working folder, so that messages name it as its owner does.

    Raises
    ------
    InputError
        If it is too large, or refers to a recipe that did not come with it or lies outside its own folder.
    """
    if len(given.text.encode()) > SIZE_LIMIT or sum(len(text.encode()) for text in given.recipes.values()) > SIZE_LIMIT:
        raise InputError("document-too-large", file=given.name, limit="2 MB")
    with TemporaryDirectory(prefix="lumped-") as folder:
        for reference in references(given.text):
            text, place = along(given, reference), PurePosixPath(reference.replace("\\", "/"))
            if text is None or place.is_absolute() or ".." in place.parts or ":" in reference:
                raise InputError("recipe-not-along", file=given.name, recipe=reference)
            target = Path(folder, *place.parts)
            target.parent.mkdir(parents=True, exist_ok=True)
            target.write_text(text, "utf-8")
        name = plain_name(given.name)
        Path(folder, name).write_text(given.text, "utf-8")
        with chdir(folder):
            yield Path(name)


def along(given: Given, reference: str) -> str | None:
    """Give the text of a recipe: one that came along under that name, else an example; None if there is neither."""
    last = re.split(r"[/\\]", reference)[-1]
    found = given.recipes.get(reference, given.recipes.get(last))
    return found if found is not None else example_recipe(reference)


def references(text: str) -> tuple[str, ...]:
    """Give the recipes that a sculpture's text refers to; none if it can't be read, which the reader will say."""
    try:
        document = tomllib.loads(text)
    except (tomllib.TOMLDecodeError, RecursionError):
        return ()
    doughs: Any = document.get("doughs")
    entries = doughs.values() if isinstance(doughs, dict) else ()
    found = (entry.get("recipe") for entry in entries if isinstance(entry, dict))
    return tuple(dict.fromkeys(each for each in found if isinstance(each, str) and each))
