"""What to mind when much dough is made for many: stove, hot mass, lifting, small children."""

from collections.abc import Iterator, Sequence

from lumped.dough.kneading import Kneading
from lumped.dough.safety import caution
from lumped.quantities import rounded_text
from lumped.reference import handbook
from lumped.texts import say
from lumped.workshop.batches import Batches
from lumped.workshop.people import Party

__all__ = ["cautions_for"]

_SALTY = 0.01  # mass share of salt from which broken skin feels it
_HOUR = 3600.0


def cautions_for(batches: Batches, parties: Sequence[Party], wait: float) -> tuple[str, ...]:
    """Say what to mind, the gravest first.

    Parameters
    ----------
    batches : Batches
        What is made.
    parties : sequence of Party
        For whom.
    wait : float
        How long a batch stays too hot for hands in its pot. [s]

    Returns
    -------
    tuple of str
    """
    return tuple(_cautions(batches, parties, wait))


def _cautions(batches: Batches, parties: Sequence[Party], wait: float) -> Iterator[str]:
    cooked, mass = batches.recipe.cooked, batches.each.mean
    if cooked != "not cooked":
        yield caution("hot").brief
        yield say("making-caution-inside", mass=rounded_text(mass), hours=_hours(wait))
        yield say("making-caution-pressing")
    if cooked == "kettle":
        yield say("making-caution-kettle")
    if cooked == "not cooked":
        yield caution("raw-flour").brief
    heavy = handbook().value("workshop", "planning", "heavy").mean
    if cooked != "not cooked" and batches.pot * 1e3 * batches.full > heavy:
        yield say("making-caution-heavy", litres=rounded_text(batches.pot * 1e3))
    mouth = handbook().value("workshop", "planning", "mouth").mean
    if any(each.age <= mouth for each in parties):
        yield say("making-caution-mouth", age=f"{mouth:g}")
    if _salt(batches.done) > _SALTY:
        yield caution("salt-skin").brief
    yield caution("rules").brief


def _salt(done: Kneading) -> float:
    return float((done.chain.of("sodium-chloride") / done.chain.mass).mean())


def _hours(wait: float) -> str:
    if wait < _HOUR:
        return say("minutes", count=f"{wait / 60:.0f}")
    return say("hours", count=f"{wait / _HOUR:.1f}")
