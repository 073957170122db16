"""What to be careful with: always, and because of what this sculpture does."""

from collections.abc import Iterable
from typing import Protocol

from lumped.dough.safety import caution
from lumped.sculpt import Part, Sculpture
from lumped.texts import say

__all__ = ["cautions_for"]

_OF_ANY_DOUGH = ("hot", "salt-skin")  # where nobody said what is in it
_ALWAYS = ("pack-wires", "cells", "mains", "rules")


class _Judged(Protocol):
    @property
    def part(self) -> Part: ...
    @property
    def state(self) -> str: ...


def cautions_for(sculpture: Sculpture, parts: Iterable[_Judged]) -> tuple[str, ...]:
    """Give the cautions for a sculpture, those that it calls for by itself first.

    Parameters
    ----------
    sculpture : Sculpture
        What stands on the table.
    parts : iterable of PartVerdict
        What its parts do.

    Returns
    -------
    tuple of str
    """
    parts = tuple(parts)
    keys = []
    if any(each.state in ("nearly-shorted", "fuse-tripped") for each in parts):
        keys.append("short")
    if any(each.state == "too-hot" for each in parts):
        keys.append("lamp-hot")
    if any(each.part.kind == "motor" for each in parts):
        keys.append("motor")
    if any(each.part.kind == "lamp" for each in parts):
        keys.append("lamp-on-pack")
    used = dict.fromkeys(lump.dough for lump in sculpture.lumps)
    of_doughs = dict.fromkeys(each for name in used for each in sculpture.doughs[name].cautions)
    found = [say(f"caution-{key}") for key in keys]
    if not of_doughs:
        found += [say("caution-not-food"), *(caution(key).brief for key in _OF_ANY_DOUGH)]
    return (*found, *of_doughs, *(caution(key).brief for key in _ALWAYS))
