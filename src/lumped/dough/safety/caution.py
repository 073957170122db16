"""A caution: one thing to mind, as an object, so that cards and pages can choose."""

from dataclasses import dataclass
from typing import Literal

from lumped.quantities import Provenance, Status

__all__ = ["SEVERITIES", "Caution", "Scope", "Severity"]

Severity = Literal["poison", "injury", "care"]
Scope = Literal["dough", "kitchen", "table", "law"]

SEVERITIES: tuple[Severity, ...] = ("poison", "injury", "care")
_PRACTICE = Provenance(status=Status.COMMON_PRACTICE)


@dataclass(frozen=True, slots=True, kw_only=True)
class Caution:
    """One thing to mind.

    Parameters
    ----------
    key : str
        Which: "eaten", "allergens", "raw-flour", …
    severity : {"poison", "injury", "care"}
        What may come of it: poisoning or a grave illness, an injury, a mess.
    scope : {"dough", "kitchen", "table", "law"}
        Where it belongs: to whoever handles the dough, to whoever makes it, to the table with its pack and parts, to
        whoever would sell it. A verdict on a sculpture says the table's cautions itself.
    words : str
        The caution, for a parent.
    ingredients : tuple of str
        Keys of the ingredients that bring it.
    provenance : Provenance
        Where it comes from.
    """

    key: str
    severity: Severity
    scope: Scope
    words: str
    ingredients: tuple[str, ...] = ()
    provenance: Provenance = _PRACTICE
