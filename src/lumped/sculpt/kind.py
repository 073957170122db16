"""What the notebook is told of sculptures: how one is checked, and what names a lump or a part of it."""

from pathlib import Path

from lumped.documents import checked
from lumped.errors import SculptureError
from lumped.notebook import Body, Kind
from lumped.sculpt.model import SculptureFile

__all__ = ["SCULPTURE"]


def _check(body: Body, name: str) -> None:
    """Hold the file against its model; its recipes are documents of their own."""
    checked(SculptureFile, {"kind": "sculpture", "schema": 1, **body}, Path(name), failure=SculptureError)


SCULPTURE = Kind(name="sculpture", schema=1, check=_check, keyed_by=("name",))
"""Sculptures; form 1 is the only one there was."""
