"""The invented harbour's sculptures and recipes, which come along with Lumped."""

import re
import tomllib
from functools import cache
from importlib.resources import files
from pathlib import Path

__all__ = ["example_heading", "example_names", "example_recipe", "example_recipes", "example_text"]


_STORY = ("harbour-light", "ebb-light", "crowded-quays", "loose-mooring", "crossed-legs", "breakwater", "twin-buoys",
          "ferry-on-pins", "ferry-on-nails", "two-packs")  # fmt: skip


def example_names() -> tuple[str, ...]:
    """Give the names of the example sculptures, in the order of the story.

    Returns
    -------
    tuple of str
        File names; empty if the examples are not installed.
    """
    folder = _folder()
    names = sorted(path.name for path in folder.glob("*.toml")) if folder else []
    place = {f"{name}.toml": k for k, name in enumerate(_STORY)}
    return tuple(sorted(names, key=lambda name: place.get(name, len(place))))


def example_heading(name: str) -> tuple[str, str]:
    """Give the title of an example sculpture and the first sentence of its story."""
    document = tomllib.loads(example_text(name) or "")
    story = " ".join(str(document.get("story", "")).split())
    return str(document.get("title", name)), re.split(r"(?<=[.?!])\s", story)[0]


def example_text(name: str) -> str | None:
    """Give the text of an example sculpture; None if there is none of that name."""
    folder = _folder()
    return (folder / name).read_text("utf-8") if folder and name in example_names() else None


def example_recipe(reference: str) -> str | None:
    """Give the text of an example recipe by its file name, whatever folder the reference names; None if unknown.

    Parameters
    ----------
    reference : str
        As a sculpture file refers to it: "recipes/ropewalk-salt.toml".
    """
    folder = _folder()
    name = reference.replace("\\", "/").rsplit("/", 1)[-1]
    return (folder / "recipes" / name).read_text("utf-8") if folder and name in example_recipes() else None


def example_recipes() -> tuple[str, ...]:
    """Give the file names of the example recipes; none if the examples are not installed."""
    folder = _folder()
    return tuple(sorted(path.name for path in (folder / "recipes").glob("*.toml"))) if folder else ()


@cache
def _folder() -> Path | None:
    """Inside the package when installed, beside the sources when worked on."""
    package = Path(str(files("lumped")))
    for folder in (package / "demo", package.parents[1] / "demo"):
        if folder.is_dir():
            return folder
    return None
