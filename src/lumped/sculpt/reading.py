"""Reading a sculpture file: TOML → checked model, with the references inside it followed."""

from collections import Counter
from collections.abc import Iterable
from difflib import get_close_matches
from pathlib import Path

from lumped.documents import checked, read_document
from lumped.errors import SculptureError
from lumped.sculpt.model import SculptureFile
from lumped.texts import say

__all__ = ["nearest_remedy", "read_sculpture_file"]


def read_sculpture_file(path: Path) -> SculptureFile:
    """Read a sculpture file and see that the names in it are its own.

    Parameters
    ----------
    path : Path
        The TOML file.

    Returns
    -------
    SculptureFile
        The file's model; nothing is placed yet.

    Raises
    ------
    SculptureError
        With file, key, value and remedy.
    """
    document = read_document(path, "sculpture", failure=SculptureError)
    sculpture = checked(SculptureFile, document, path, failure=SculptureError)
    _refuse_doubles((lump.name for lump in sculpture.lumps), "lumps", path)
    _refuse_doubles((part.name for part in sculpture.parts), "parts", path)
    for lump in sculpture.lumps:
        if lump.dough not in sculpture.doughs:
            remedy = nearest_remedy(lump.dough, sculpture.doughs)
            raise SculptureError("sculpture-no-dough", file=str(path), lump=lump.name, dough=lump.dough, remedy=remedy)
    return sculpture


def nearest_remedy(name: str, known: Iterable[str]) -> str:
    """Say which known name is near, or list the known ones.

    Examples
    --------
    >>> nearest_remedy("slat", ["salt", "sugar"])
    'Did you mean “salt”?'
    """
    known = list(known)
    near = get_close_matches(name, known, n=1)
    if near:
        return say("remedy-near", near=near[0])
    return say("remedy-choices", choices=", ".join(known))


def _refuse_doubles(names: Iterable[str], what: str, path: Path) -> None:
    name, count = Counter(names).most_common(1)[0] if (names := list(names)) else ("", 0)
    if count > 1:
        raise SculptureError("sculpture-name-twice", file=str(path), what=what, name=name)
