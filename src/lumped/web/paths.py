"""Every address of the app."""

import re
from collections.abc import Mapping
from urllib.parse import parse_qsl, quote, unquote, urlencode

__all__ = [
    "ASK", "BRING", "BROUGHT", "DOUGH", "EXAMPLE", "INGREDIENT", "KEPT", "NOTEBOOK", "OLD", "OPTIONS", "PACKET",
    "PANTRY", "SHAPE", "TABLE", "ask", "batch", "brought", "changed", "dough", "example", "ingredient", "kept",
    "number_in", "old", "packet", "pantry", "shape", "values_in",
]  # fmt: skip

_DIGITS = 9  # of a revision number; more than anybody saves
OPTIONS = ("of", "without", "diet", "region", "target", "vary", "first", "second", "third", "show", "age", "dog",
           "thick", "touch", "lamp", "others", "child", "mould", "pack", "screws", "by", "people", "group", "mass",
           "pot", "minutes", "packets", "shape", "cover", "room", "humidity", "draught", "hours", "weighed", "now",
           "form", "deep", "where", "on")  # fmt: skip
"""Words of an address that are no ingredients."""
TABLE = "/"
SHAPE = "/shape/{key}"
EXAMPLE = "/story/{name}"
DOUGH = "/dough/{name}"
ASK = {each: f"/{each}" for each in ("swap", "salt", "mix", "care", "wall", "beside", "time", "trial", "make", "batch")}
PANTRY = "/pantry"
INGREDIENT = "/ingredient"
PACKET = "/packet"
BROUGHT = "/brought/{key}"
BRING = "/bring"
NOTEBOOK = "/notebook"
KEPT = "/notebook/{document}"
OLD = "/notebook/{document}/{number}"


def shape(key: str, values: Mapping[str, float | str] | None = None, *, kept_as: str | None = None) -> str:
    """Address of a starting shape, pulled about as its values say; or of the document that it was written down as.

    Examples
    --------
    >>> shape("ropewalk", {"bends": 3.0, "colour": "lamp-red"})
    '/shape/ropewalk?bends=3&colour=lamp-red'
    """
    shown = {name: f"{value:g}" if isinstance(value, float) else value for name, value in (values or {}).items()}
    address = f"/shape/{quote(key)}" if kept_as is None else kept(kept_as)
    return address + (f"?{urlencode(shown)}" if shown else "")


def example(name: str) -> str:
    """Address of an example sculpture."""
    return f"/story/{quote(name)}"


def dough(name: str) -> str:
    """Address of an example recipe."""
    return f"/dough/{quote(name)}"


def changed(page: str, changes: Mapping[str, str]) -> str:
    """Address of a recipe's page with some amounts changed.

    Examples
    --------
    >>> changed("/dough/plain.toml", {"table-salt": "36 g"})
    '/dough/plain.toml?table-salt=36+g'
    >>> changed("/dough/plain.toml", {"form": "3 g"})
    '/dough/plain.toml?.form=3+g'
    """
    return page + (f"?{urlencode(_marked(changes))}" if changes else "")


def _marked(changes: Mapping[str, str]) -> dict[str, str]:
    """Changes with a point before each name that could be taken for an option."""
    return {f".{name}" if name in OPTIONS or name.startswith(".") else name: each for name, each in changes.items()}


def ask(what: str, page: str, changes: Mapping[str, str], **more: str) -> str:
    """Address of a question about the recipe of another page, with some amounts changed.

    Examples
    --------
    >>> ask("swap", "/dough/plain.toml", {"table-salt": "36 g"}, without="flour")
    '/swap?of=%2Fdough%2Fplain.toml&without=flour&table-salt=36+g'
    """
    options = {name: each for name, each in more.items() if each}
    return f"{ASK[what]}?{urlencode({'of': page} | options | _marked(changes))}"


def pantry(**options: str) -> str:
    """Address of the pantry, narrowed by what is wanted.

    Examples
    --------
    >>> pantry(role="acid", region="")
    '/pantry?role=acid'
    """
    said = {name: each for name, each in options.items() if each}
    return PANTRY + (f"?{urlencode(said)}" if said else "")


def ingredient(name: str) -> str:
    """Address of one ingredient of the pantry, by its key or any name: also one with a stroke, which a path would part.

    Examples
    --------
    >>> ingredient("rice/corn mix")
    '/ingredient?name=rice%2Fcorn+mix'
    """
    return f"{INGREDIENT}?{urlencode({'name': name})}"


def packet(document: str = "") -> str:
    """Address of the form for a packet's label; of one in the notebook, to be written anew."""
    return PACKET + (f"?{urlencode({'of': document})}" if document else "")


def batch(document: str) -> str:
    """Address of the form for a batch of the notebook, to be changed.

    Examples
    --------
    >>> batch("01a2")
    '/batch?of=%2Fnotebook%2F01a2'
    """
    return ask("batch", kept(document), {})


def brought(key: str) -> str:
    """Address of a sculpture that was brought along."""
    return f"/brought/{quote(key)}"


def kept(document: str) -> str:
    """Address of a document of the notebook, as it is now."""
    return f"/notebook/{quote(document)}"


def old(document: str, number: int) -> str:
    """Address of one revision of a document."""
    return f"/notebook/{quote(document)}/{number}"


def number_in(text: str) -> int | None:
    """Read the number of a revision in an address; None if it can be none.

    Examples
    --------
    >>> number_in("12"), number_in("-1"), number_in("9" * 40)
    (12, None, None)
    """
    return int(text) if text.isdecimal() and len(text) < _DIGITS else None


def values_in(text: str) -> tuple[str, dict[str, str]] | None:
    """Find the address of a starting shape in a text: its key and how far it was pulled about; None if there is none.

    Examples
    --------
    >>> values_in("Pulled about: /shape/ropewalk?bends=3")
    ('ropewalk', {'bends': '3'})
    """
    match = re.search(r"/shape/([\w%.-]+)(?:\?(\S*))?", text)
    return (unquote(match[1]), dict(parse_qsl(match[2] or ""))) if match else None
