"""A caution: one thing to mind, as an object, so that cards and pages can choose."""

from dataclasses import dataclass
from typing import Any, Literal

from lumped.quantities import Provenance

__all__ = ["SEVERITIES", "Caution", "Scope", "Severity", "When"]

Severity = Literal["poison", "injury", "care"]
Scope = Literal["dough", "kitchen", "table", "law"]
When = Literal["always", "ingredients", "amount", "making"]

SEVERITIES: tuple[Severity, ...] = ("poison", "injury", "care")


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
    when : {"always", "ingredients", "amount", "making"}
        When it applies: on any dough, because of what went in, because of how much of it, because of how it is made.
    words : str
        The caution, for a parent.
    brief : str
        The same, or the heart of it, as short as a sheet wants it.
    ingredients : tuple of str
        Keys of the ingredients that bring it.
    provenance : Provenance
        Where it comes from.
    """

    key: str
    severity: Severity
    scope: Scope
    when: When
    words: str
    brief: str
    ingredients: tuple[str, ...] = ()
    provenance: Provenance

    @property
    def is_of_material(self) -> bool:
        """Whether it is on handling this dough, and not on any dough or on what else stands on the table."""
        of_any = self.severity == "care" and not self.ingredients and self.key != "no-allergens"
        return self.scope in ("dough", "kitchen") and not of_any

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "key": self.key, "severity": self.severity, "scope": self.scope, "when": self.when, "words": self.words,
            "brief": self.brief, "ingredients": list(self.ingredients), "provenance": self.provenance.as_dict(),
        }  # fmt: skip
