"""Every address of the app."""

from collections.abc import Mapping
from urllib.parse import quote, urlencode

__all__ = ["BRING", "BROUGHT", "EXAMPLE", "SHAPE", "TABLE", "brought", "example", "shape"]

TABLE = "/"
SHAPE = "/shape/{key}"
EXAMPLE = "/story/{name}"
BROUGHT = "/brought/{key}"
BRING = "/bring"


def shape(key: str, values: Mapping[str, float | str] | None = None) -> str:
    """Address of a starting shape, pulled about as its values say.

    Examples
    --------
    >>> shape("ropewalk", {"bends": 3.0, "colour": "lamp-red"})
    '/shape/ropewalk?bends=3&colour=lamp-red'
    """
    shown = {name: f"{value:g}" if isinstance(value, float) else value for name, value in (values or {}).items()}
    return f"/shape/{quote(key)}" + (f"?{urlencode(shown)}" if shown else "")


def example(name: str) -> str:
    """Address of an example sculpture."""
    return f"/story/{quote(name)}"


def brought(key: str) -> str:
    """Address of a sculpture that was brought along."""
    return f"/brought/{quote(key)}"
