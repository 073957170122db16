"""Every address of the app."""

from urllib.parse import quote

__all__ = ["BRING", "BROUGHT", "EXAMPLE", "SHAPE", "TABLE", "brought", "example", "shape"]

TABLE = "/"
SHAPE = "/shape/{key}"
EXAMPLE = "/story/{name}"
BROUGHT = "/brought/{key}"
BRING = "/bring"


def shape(key: str) -> str:
    """Address of a starting shape."""
    return f"/shape/{quote(key)}"


def example(name: str) -> str:
    """Address of an example sculpture."""
    return f"/story/{quote(name)}"


def brought(key: str) -> str:
    """Address of a sculpture that was brought along."""
    return f"/brought/{quote(key)}"
