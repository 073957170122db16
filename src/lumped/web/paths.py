"""Every address of the app."""

import re
from collections.abc import Mapping
from urllib.parse import parse_qsl, quote, unquote, urlencode

__all__ = [
    "BRING", "BROUGHT", "EXAMPLE", "KEPT", "NOTEBOOK", "OLD", "SHAPE", "TABLE", "brought", "example", "kept", "old",
    "shape", "values_in",
]  # fmt: skip

TABLE = "/"
SHAPE = "/shape/{key}"
EXAMPLE = "/story/{name}"
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


def brought(key: str) -> str:
    """Address of a sculpture that was brought along."""
    return f"/brought/{quote(key)}"


def kept(document: str) -> str:
    """Address of a document of the notebook, as it is now."""
    return f"/notebook/{quote(document)}"


def old(document: str, number: int) -> str:
    """Address of one revision of a document."""
    return f"/notebook/{quote(document)}/{number}"


def values_in(text: str) -> tuple[str, dict[str, str]] | None:
    """Find the address of a starting shape in a text: its key and how far it was pulled about; None if there is none.

    Examples
    --------
    >>> values_in("Pulled about: /shape/ropewalk?bends=3")
    ('ropewalk', {'bends': '3'})
    """
    match = re.search(r"/shape/([\w%.-]+)(?:\?(\S*))?", text)
    return (unquote(match[1]), dict(parse_qsl(match[2] or ""))) if match else None
