"""Reading a TOML file within limits."""

import tomllib
from pathlib import Path
from typing import Any

from lumped.errors import InputError
from lumped.texts import say

__all__ = ["document_in", "is_there", "read_document", "text_of"]

SIZE_LIMIT = 2_000_000
DEPTH_LIMIT = 32


def read_document(path: Path, kind: str, *, failure: type[InputError] = InputError) -> dict[str, Any]:
    """Read a document of a kind from a TOML file.

    Parameters
    ----------
    path : Path
        The file.
    kind : str
        What it must say of itself: `kind = "recipe"`, `kind = "sculpture"`.
    failure : type of InputError
        Which error to raise.

    Returns
    -------
    dict
        The document, as TOML gives it.

    Raises
    ------
    InputError
        If the file is not there, too large, no TOML, too deep, or of another kind.
    """
    document = document_in(text_of(path, failure=failure), str(path), failure=failure)
    if _depth(document) > DEPTH_LIMIT:
        raise failure("document-too-deep", file=str(path), limit=DEPTH_LIMIT)
    if document.get("kind") != kind:
        raise failure("document-other-kind", file=str(path), kind=kind, found=str(document.get("kind", "nothing")))
    return document


def document_in(text: str, name: str, *, failure: type[InputError] = InputError) -> dict[str, Any]:
    """Give the document that a text is; `name` is its file, for messages.

    Raises
    ------
    InputError
        If it is no TOML, or too deep.
    """
    try:
        return tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise failure("document-not-toml", file=name, problem=str(error)) from None
    except ValueError:
        raise failure("document-not-toml", file=name, problem=say("document-number-too-long")) from None
    except RecursionError:
        raise failure("document-too-deep", file=name, limit=DEPTH_LIMIT) from None


def text_of(path: Path, *, failure: type[InputError] = InputError, no_text: str = "document-not-text") -> str:
    """Give the text of a file within the limit on size; other encodings than UTF-8 are refused, not guessed.

    Parameters
    ----------
    path : Path
        The file.
    failure : type of InputError
        Which error to raise.
    no_text : str
        Key of the sentence for a file that is no UTF-8 text.

    Raises
    ------
    InputError
        If the file is not there, a folder, too large, or no text.
    """
    try:
        if path.is_dir():
            raise failure("document-is-folder", file=str(path))
        if path.stat().st_size > SIZE_LIMIT:
            raise failure("document-too-large", file=str(path), limit="2 MB")
        return path.read_text(encoding="utf-8-sig")
    except InputError:
        raise
    except FileNotFoundError:
        raise failure("document-missing", file=str(path)) from None
    except UnicodeDecodeError:
        raise failure(no_text, file=str(path)) from None
    except (OSError, ValueError) as error:
        problem = getattr(error, "strerror", None) or str(error)
        raise failure("document-unreadable", file=repr(str(path)), problem=problem) from None


def is_there(path: Path) -> bool:
    """Tell whether there is such a file; a name that can't be one is not there.

    Examples
    --------
    >>> is_there(Path("no such file")), is_there(Path("no" + chr(0)))
    (False, False)
    """
    try:
        return path.is_file()
    except (OSError, ValueError):
        return False


def _depth(node: object) -> int:
    """Depth of nested tables and lists, counted without recursion."""
    deepest, waiting = 0, [(node, 1)]
    while waiting:
        each, depth = waiting.pop()
        deepest = max(deepest, depth)
        children = each.values() if isinstance(each, dict) else each if isinstance(each, list) else ()
        waiting.extend((child, depth + 1) for child in children)
    return deepest
