"""What comes out: a dough, and the chain of reasons that led to it."""

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any, Literal

from lumped.quantities import Value, parse_quantity

if TYPE_CHECKING:
    from lumped.dough.influence import Influence
    from lumped.dough.texture import Feel

__all__ = ["CONDUCTS_BELOW", "Answer", "Dough", "Kind", "Reason", "answer_of"]

CONDUCTS_BELOW = 5.0  # Ω·m: between salt doughs and sugar doughs
Kind = Literal["conducting", "insulating"]
Answer = Literal["carries", "blocks", "open"]
_SURE, _WIDE = 4.0, 1e3  # an interval so wide tells that a dough blocks only if all of it lies so far above the limit
_SI = {"g": ("mass", "kg"), "%": ("share", "")}


@dataclass(frozen=True, slots=True, kw_only=True)
class Reason:
    """One step between recipe and resistivity.

    Parameters
    ----------
    key : str
        Which step, for programs.
    words : str
        Which step, for people.
    value : Value
        Its figure, in a kitchen's unit (grams, per cent) where people expect one.
    """

    key: str
    words: str
    value: Value

    def as_dict(self) -> dict[str, Any]:
        """Give the step as JSON shows it, in SI."""
        shown = self.value.as_dict()
        if self.value.unit in _SI:
            kind, unit = _SI[self.value.unit]
            factor = parse_quantity(f"1 {self.value.unit}", kind)
            shown |= {end: shown[end] * factor for end in ("mean", "low", "high")} | {"unit": unit}
        return {"key": self.key, "words": self.words, "value": shown}


@dataclass(frozen=True, slots=True, kw_only=True)
class Dough:
    """A dough as the table meets it.

    Parameters
    ----------
    name : str
        What it is called.
    kind : {"conducting", "insulating"}
        What it is for.
    resistivity : Value
        Resistivity at the temperature of use, with its 95 % interval. [Ω·m]
    how : {"recipe", "measured", "unknown"}
        Where the resistivity comes from.
    reasons : tuple of Reason
        The chain between recipe and resistivity; empty for a measured dough.
    facts : tuple of Reason
        What else is known of it: hydration, water activity, pH, density; empty for a measured dough.
    influences : tuple of Influence
        What dominates the interval, and which measurement would settle it, the strongest first.
    feel : Feel or None
        How it is expected to feel; None for a measured dough.
    notes : tuple of str
        Sentences that belong with the figure.
    cautions : tuple of str
        What to mind with its ingredients and with making it.
    allergens : tuple of str
        Allergens of the European and American lists.
    salt_fraction : float or None
        Mass of salt over mass of dough; None if unknown. [1]
    temperature : float
        Temperature of use. [K]
    invented : bool
        Whether recipe or readings are invented.
    """

    name: str
    kind: Kind
    resistivity: Value
    how: Literal["recipe", "measured", "unknown"]
    reasons: tuple[Reason, ...] = ()
    facts: tuple[Reason, ...] = ()
    influences: tuple["Influence", ...] = ()
    feel: "Feel | None" = None
    notes: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    allergens: tuple[str, ...] = ()
    salt_fraction: float | None = None
    temperature: float = 293.15
    invented: bool = False

    @property
    def conducts(self) -> bool:
        """Whether it carries current, whatever it is for: below the limit between salt doughs and sugar doughs."""
        return self.resistivity.mean < CONDUCTS_BELOW

    @property
    def answer(self) -> Answer:
        """Whether it carries current or blocks it, or whether that can't be told."""
        return answer_of(self.resistivity)

    @property
    def resistivity_ohm_cm(self) -> Value:
        """The resistivity in the unit of many handbooks. [Ω·cm]"""
        value = self.resistivity
        ends = {end: 100 * getattr(value, end) for end in ("mean", "low", "high")}
        return replace(value, unit="Ω·cm", **ends)

    def reason(self, key: str) -> Reason:
        """Give one step of the chain by its key."""
        return next(each for each in (*self.reasons, *self.facts) if each.key == key)

    def as_dict(self) -> dict[str, Any]:
        """Give the dough as JSON shows it, in SI."""
        return {
            "kind": "dough", "schema": 1, "name": self.name, "dough": self.kind, "how": self.how,
            "resistivity": self.resistivity.as_dict(), "temperature_K": self.temperature,
            "salt_fraction": self.salt_fraction, "allergens": list(self.allergens), "invented": self.invented,
            "reasons": [each.as_dict() for each in self.reasons], "facts": [each.as_dict() for each in self.facts],
            "influences": [each.as_dict() for each in self.influences],
            "feel": self.feel.as_dict() if self.feel else None, "notes": list(self.notes),
            "cautions": list(self.cautions),
        }  # fmt: skip


def answer_of(resistivity: Value) -> Answer:
    """Tell whether a dough carries current or blocks it.

    Parameters
    ----------
    resistivity : Value
        With its 95 % interval. [Ω·m]

    Returns
    -------
    {"carries", "blocks", "open"}
        "open" where the interval lies on both sides of `CONDUCTS_BELOW`, or reaches near it from a thousandfold away:
        such is a mix with hardly any free water.

    Examples
    --------
    >>> from lumped.quantities import Value
    >>> from lumped.dough.known import unknown_dough
    >>> answer_of(unknown_dough("conducting").resistivity)
    'carries'
    """
    if resistivity.high < CONDUCTS_BELOW:
        return "carries"
    if resistivity.low < CONDUCTS_BELOW:
        return "open"
    near = resistivity.high / resistivity.low > _WIDE and resistivity.low < _SURE * CONDUCTS_BELOW
    return "open" if near else "blocks"
