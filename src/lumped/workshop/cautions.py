"""What to mind when much dough is made for many: stove, hot mass, lifting, small children."""

from collections.abc import Iterator, Sequence

from lumped.dough.kneading import Kneading
from lumped.dough.safety import Caution, caution
from lumped.quantities import Provenance, Status, Value, rounded_text
from lumped.reference import handbook
from lumped.texts import say
from lumped.workshop.batches import Batches
from lumped.workshop.people import Party

__all__ = ["cautions_for"]

_SALTY = 0.01  # mass share of salt from which broken skin feels it
_HOUR = 3600.0
_PRACTICE = Provenance(status=Status.COMMON_PRACTICE)


def cautions_for(batches: Batches, parties: Sequence[Party], wait: Value | None) -> tuple[Caution, ...]:
    """Say what to mind, in the order of the work.

    Parameters
    ----------
    batches : Batches
        What is made.
    parties : sequence of Party
        For whom.
    wait : Value or None
        How long a batch stays too hot for hands in its pot; None if it was never hot. [s]

    Returns
    -------
    tuple of Caution
    """
    return tuple(_cautions(batches, parties, wait))


def _cautions(batches: Batches, parties: Sequence[Party], wait: Value | None) -> Iterator[Caution]:
    cooked, mass = batches.recipe.cooked, batches.each.mean
    if wait is not None:
        yield caution("hot")
        inside = say("making-caution-inside", mass=rounded_text(mass), hours=_hours(wait.mean))
        yield _injury("making-inside", inside, wait.provenance)
        yield _injury("making-pressing", say("making-caution-pressing"), _PRACTICE)
    if cooked == "kettle":
        yield _injury("making-kettle", say("making-caution-kettle"), _PRACTICE)
    if cooked == "not cooked":
        yield caution("raw-flour")
    heavy = handbook().value("workshop", "planning", "heavy")
    if cooked != "not cooked" and batches.pot * 1e3 * batches.full > heavy.mean:
        litres = rounded_text(batches.pot * 1e3)
        yield _injury("making-heavy", say("making-caution-heavy", litres=litres), heavy.provenance)
    mouth = handbook().value("workshop", "planning", "mouth")
    if any(each.age <= mouth.mean for each in parties):
        yield _injury("making-mouth", say("making-caution-mouth", age=f"{mouth.mean:g}"), mouth.provenance)
    if _salt(batches.done) > _SALTY:
        yield caution("salt-skin")
    yield caution("rules")


def _injury(key: str, words: str, provenance: Provenance) -> Caution:
    return Caution(key=key, severity="injury", scope="kitchen", when="making", words=words, brief=words,
                   provenance=provenance)  # fmt: skip


def _salt(done: Kneading) -> float:
    return float((done.chain.of("sodium-chloride") / done.chain.mass).mean())


def _hours(wait: float) -> str:
    if wait < _HOUR:
        return say("minutes", count=f"{wait / 60:.0f}")
    return say("hours", count=f"{wait / _HOUR:.1f}")
