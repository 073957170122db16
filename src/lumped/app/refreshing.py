"""What to knead into a dough that dried, as pages and commands show it."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from lumped.app.named import Named
    from lumped.dough.lasting.refreshing import Refresh
    from lumped.quantities import Value

__all__ = ["Refreshed", "refreshed"]

_SAME, _FELT = 1.05, 1.1  # times less easily that nobody notices: the middle, and the poor end


@dataclass(frozen=True, slots=True, kw_only=True)
class Refreshed:
    """What to knead into a dough that dried.

    Parameters
    ----------
    refresh : Refresh
        Water and rest.
    worse : Value or None
        How many times less easily it lets current through than fresh, if its recipe is known. [1]
    words : tuple of str
        The same in sentences.
    """

    refresh: "Refresh"
    worse: "Value | None"
    words: tuple[str, ...]

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "water_kg": self.refresh.water, "of_its_water": self.refresh.of_its_water,
            "rest": self.refresh.rest.as_dict(), "resistivity_over_fresh": self.worse and self.worse.as_dict(),
            "words": list(self.words),
        }  # fmt: skip


def refreshed(before: float, now: float, dough: "Named | None" = None) -> Refreshed:
    """Tell what to knead into a dough that dried.

    Parameters
    ----------
    before, now : float
        Its weight when fresh and today, with the bag both times or without it both times. [kg]
    dough : Named, optional
        Its recipe, with what its batches taught: tells how much water it held.

    Raises
    ------
    InputError
        If the weights can't be.
    """
    from lumped.dough.lasting.refreshing import refresh
    from lumped.dough.unfit import standing_of
    from lumped.quantities import short_text
    from lumped.texts import say

    if dough is None:
        plain = refresh(before, now)
        return Refreshed(refresh=plain, worse=None, words=plain.words)
    content, law = _water_of(dough)
    found = refresh(before, now, water=content / (1 + content) * before)
    worse, lost = law(found.of_its_water or 0.0), found.of_its_water or 0.0
    if found.water == 0:
        return Refreshed(refresh=found, worse=worse, words=found.words)
    first, *others = found.words
    share = say("refresh-water-share", share=short_text(100 * lost))
    grams = {"water": short_text(1e3 * found.water, 3), "each": short_text(100 * found.water / now, 2)}
    if standing_of(dough.kneading()) == "none":
        words = [say("refresh-no-dough", **grams), share]
    elif _hard(content * (1 - lost)) and not _hard(content):
        words = [say("refresh-hard", **grams), share, _now(worse), *others]
    else:
        words = [first, share, _now(worse), *others]
    return Refreshed(refresh=found, worse=worse, words=tuple(words))


def _now(worse: "Value") -> str:
    """Say how it carries as it is now."""
    from lumped.dough.lasting.telling import times_text
    from lumped.quantities import short_text
    from lumped.texts import say

    if worse.mean >= _SAME:
        return say("refresh-now", times=times_text(worse))
    return say("refresh-now-same") if worse.high < _FELT else say("refresh-now-about", most=short_text(worse.high))


def _water_of(named: "Named") -> "tuple[float, Callable[[float], Value]]":
    """Give a dough's water over its dry matter, and the law of its resistivity over that of the fresh dough."""
    import numpy as np

    from lumped.dough.beliefs import draws, spread_over
    from lumped.dough.lasting.kneaded import moist_from
    from lumped.dough.lasting.outlook import COUNT
    from lumped.quantities import Provenance, Status, believed

    places = spread_over(named.kneading().chain.resistivity, COUNT)
    given = draws(named.recipe, named.shop, named.calibration)[0].taken(places)
    dough = moist_from(named.recipe, named.shop, given)
    content, law = np.asarray(dough.content)[:, None], dough.resistivity
    if law is None:
        raise ValueError("a dough of a recipe has a resistivity")

    def worse(lost: float) -> "Value":
        ratio = np.asarray(law(content * (1 - lost)))[:, 0] / np.asarray(law(content))[:, 0]
        return believed(ratio, unit="", provenance=Provenance(status=Status.FROM_MEMORY), spread="lognormal")

    return float(np.median(content)), worse


def _hard(content: float) -> bool:
    from lumped.reference import handbook

    return content < handbook().value("lasting", "skin", "content").mean
