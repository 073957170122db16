"""What can grow in a dough: its water activity and acidity against what bacteria, yeasts and moulds need.

Nothing here is a shelf life. The figures say who could grow, not who is there or how fast; when in doubt, throw away.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.errors import InputError
from lumped.quantities import Value
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["GROUPS", "Group", "Growth", "Keeping", "growth_margins", "habit", "keeping"]

Array = NDArray[np.float64]
State = Literal["grows", "may grow", "slowed", "stopped"]
GROUPS = ("bacteria", "salmonella", "yeasts", "staphylococcus", "moulds", "salt-lovers", "dry-moulds", "sugar-yeasts")
_ACTIVITY_TABLE = 0.01  # the table is rounded so
_KINDS = (("salty", 0.80), ("middling", 0.90), ("wet", float("inf")))  # by water activity


@dataclass(frozen=True, slots=True, kw_only=True)
class Group:
    """One kind of microbe: its name, what it is, and the least that it needs."""

    key: str
    name: str
    kind: str
    activity: Value
    ph: Value | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Growth:
    """What becomes of one group in a dough.

    Parameters
    ----------
    group : Group
        Which.
    state : {"grows", "may grow", "slowed", "stopped"}
        Whether it could grow: "may grow" where the intervals overlap, "slowed" by cold or a preservative.
    by : {"", "dryness", "acid", "preservative", "cold"}
        What stops or slows it.
    """

    group: Group
    state: State
    by: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Keeping:
    """Who could grow in a dough, and what to do about it.

    Parameters
    ----------
    growths : tuple of Growth
        Each group, those that need the most water first.
    words : tuple of str
        The same in sentences; the caveat last.
    """

    growths: tuple[Growth, ...]
    words: tuple[str, ...]

    @property
    def growing(self) -> tuple[str, ...]:
        """The sentences on who could grow and who may; where nobody can, the first of all."""
        states = {each.state for each in self.growths}
        return self.words[: max(len(states & {"grows", "may grow"}), 1)]

    def of(self, key: str) -> Growth:
        """Give what becomes of one group."""
        return next(each for each in self.growths if each.group.key == key)


def keeping(
    activity: Value,
    *,
    ph: Value | None = None,
    sorbate: float = 0.0,
    benzoate: float = 0.0,
    temperature: float = 293.15,
) -> Keeping:
    """Tell who could grow in a dough.

    Parameters
    ----------
    activity : Value
        Its water activity. [1]
    ph : Value, optional
        Its pH; left out, acid stops nobody. [1]
    sorbate, benzoate : float
        Their mass over that of the dough. [1]
    temperature : float
        Where it lies. [K]

    Returns
    -------
    Keeping

    Raises
    ------
    InputError
        If the water activity does not lie between 0 and 1.

    Examples
    --------
    >>> salty = keeping(Value(mean=0.76, low=0.75, high=0.79, unit=""))
    >>> salty.of("bacteria").state, salty.of("dry-moulds").state
    ('stopped', 'grows')
    """
    if not 0 <= activity.low <= activity.high <= 1:
        raise InputError("lasting-activity", activity=f"{activity.mean:g}")
    preserved = _preserved(ph, {"sorbate": sorbate, "benzoate": benzoate})
    cold = temperature <= handbook().value("lasting", "fridge", "warmest").mean
    growths = tuple(_growth(_group(key), activity, ph, preserved=preserved, cold=cold) for key in GROUPS)
    return Keeping(growths=growths, words=_words(growths, preserved=preserved, cold=cold))


def growth_margins(activity: ArrayLike) -> dict[str, Array]:
    """Give by how much a water activity passes what each group needs.

    Parameters
    ----------
    activity : (...) float
        Water activity. [1]

    Returns
    -------
    dict of str to (...) float
        Margin of each group; it can grow where that is positive, acid and preservatives apart. [1]

    Examples
    --------
    >>> float(growth_margins(0.90)["moulds"].round(2))
    0.1
    """
    return {key: np.asarray(np.asarray(activity, float) - _group(key).activity.mean) for key in GROUPS}


def habit(activity: Value, *, fridge: bool = False) -> Value:
    """Give how long the trade keeps such a dough in a closed bag or box: common practice, nobody's measurement.

    Parameters
    ----------
    activity : Value
        Its water activity. [1]
    fridge : bool
        Whether it lies in the fridge.

    Returns
    -------
    Value
        How long. [s]

    Examples
    --------
    >>> round(habit(Value(mean=0.76, low=0.75, high=0.79, unit="")).mean / 86400)
    14
    """
    kind = next(name for name, below in _KINDS if activity.mean < below)
    return handbook().value("lasting", "habit", f"{kind}_{'fridge' if fridge else 'room'}")


@cache
def _group(key: str) -> Group:
    entry = handbook().entry("lasting", key)
    ph = entry.rows["least_ph"].value if "least_ph" in entry.rows else None
    return Group(
        key=key, name=entry.name, kind=str(entry.facts["kind"]), activity=entry.rows["least_activity"].value, ph=ph
    )


def _growth(group: Group, activity: Value, ph: Value | None, *, preserved: bool, cold: bool) -> Growth:
    low, high = group.activity.low - _ACTIVITY_TABLE, group.activity.high + _ACTIVITY_TABLE
    if activity.high < low:
        return Growth(group=group, state="stopped", by="dryness")
    if group.ph is not None and ph is not None and ph.high < group.ph.low:
        return Growth(group=group, state="stopped", by="acid")
    if preserved and group.kind != "bacteria":
        return Growth(group=group, state="slowed", by="preservative")
    if cold:
        return Growth(group=group, state="slowed", by="cold")
    sour = group.ph is not None and ph is not None and ph.low < group.ph.high
    return Growth(group=group, state="grows" if activity.low > high and not sour else "may grow")


def _preserved(ph: Value | None, amounts: Mapping[str, float]) -> bool:
    """Whether enough of a preservative is in its working form; without a pH nobody can tell."""
    book = handbook()
    return any(
        amount >= book.value("lasting", key, "enough").mean
        and ph is not None
        and ph.high <= book.value("lasting", key, "highest_ph").mean
        for key, amount in amounts.items()
    )


def _words(growths: tuple[Growth, ...], *, preserved: bool, cold: bool) -> tuple[str, ...]:
    words = []
    for state in ("grows", "may grow", "slowed"):
        names = "; ".join(each.group.name for each in growths if each.state == state)
        if names:
            words.append(say(f"lasting-growth-{state.replace(' ', '-')}", groups=names))
    if not words:
        words.append(say("lasting-growth-nobody"))
    if preserved:
        words.append(say("lasting-preserved"))
    if cold:
        words.append(say("lasting-cold"))
    if any(each.group.key == "salmonella" and each.state == "grows" for each in growths):
        words.append(say("lasting-ill"))
    if any(each.group.key == "staphylococcus" and each.state != "stopped" for each in growths):
        words.append(say("lasting-poison"))
    return (*words, say("lasting-caveat"))
