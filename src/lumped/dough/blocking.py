"""How many times less an insulating dough carries than a usual salt dough, beside what the trade says of that."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from lumped.dough.calibrating import Calibration
from lumped.dough.kneading import Kneading, kneading
from lumped.dough.recipe import Portion, Recipe
from lumped.dough.what_if import Change, ratio, what_if
from lumped.pantry import Pantry
from lumped.quantities import Value, short_text
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["Blocking", "blocking_of", "usual_neighbour"]

_TOLD = 3  # changes that are worth a word
_WORTH = 1.1  # by which a change moves it at least


@dataclass(frozen=True, slots=True, kw_only=True)
class Blocking:
    """An insulating dough against a usual salt dough.

    Parameters
    ----------
    ratio : Value
        Its resistivity over that of the salt dough. [1]
    thousands : Value
        From where “many thousands of times” holds; common practice. [1]
    changes : tuple of Change
        What one thing different would do, as `what_if` gives it.
    """

    ratio: Value
    thousands: Value
    changes: tuple[Change, ...]

    @property
    def trade(self) -> str:
        """What becomes of the trade's word: "holds", "maybe" or "less"."""
        if self.ratio.low >= self.thousands.mean:
            return "holds"
        return "maybe" if self.ratio.mean >= self.thousands.mean else "less"

    @property
    def words(self) -> tuple[str, ...]:
        """The ratio, the trade's word, what would raise it, and what would ruin it."""
        told = [say("blocking-ratio", ratio=self.ratio.text(), trade=say(f"blocking-{self.trade}"))]
        ordered = sorted(self.changes, key=lambda each: each.factor.mean)
        better = [each for each in reversed(ordered) if each.factor.mean > _WORTH]
        worse = [each for each in ordered if each.factor.mean < 1 / _WORTH]
        told += [say("blocking-raise", changes=_listed("better", better))] if better else []
        told += [say("blocking-ruin", changes=_listed("worse", worse))] if worse else []
        return tuple(told)

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "ratio": self.ratio.as_dict(), "thousands": self.thousands.as_dict(), "trade": self.trade,
            "words": list(self.words), "changes": [each.as_dict() for each in self.changes],
        }  # fmt: skip


def blocking_of(done: Kneading, shop: Pantry, calibration: Calibration | None = None) -> Blocking | None:
    """Hold an insulating dough against a usual salt dough.

    Parameters
    ----------
    done : Kneading
        The dough.
    shop : Pantry
        What its ingredients are.
    calibration : Calibration, optional
        What measured batches taught of it.

    Returns
    -------
    Blocking or None
        None for a dough that is meant to conduct.

    Notes
    -----
    What is unknown of both counts once, as in `ratio`; what batches taught of one kind says nothing of the other.
    """
    if done.recipe.kind != "insulating":
        return None
    return Blocking(
        ratio=ratio(done, kneading(usual_neighbour(), shop)),
        thousands=handbook().value("marks", "blocking", "thousands"),
        changes=what_if(done.recipe, shop, calibration),
    )


def usual_neighbour() -> Recipe:
    """Give the recipe of the conducting dough that usually stands beside a wall.

    Examples
    --------
    >>> usual_neighbour().mass_of("table-salt")
    0.073
    """
    grams = handbook().entry("verdicts", "wall-scene").facts["beside"]
    portions = tuple(Portion(ingredient=key, written=f"{mass:g} g", mass=Value.exact(mass / 1e3, "kg"))
                     for key, mass in grams.items())  # fmt: skip
    return Recipe(title=say("wall-neighbour"), kind="conducting", portions=portions, cooked="pot")


def _listed(way: str, changes: Sequence[Change]) -> str:
    told = []
    for each in changes[:_TOLD]:
        times = each.factor.mean if way == "better" else 1 / each.factor.mean
        told.append(say(f"blocking-{way}", words=each.words, factor=short_text(times)))
    return "; ".join(told)
