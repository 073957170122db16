"""Why a dough with something else in it is another one: the chain compared, step by step, and what to know.

The logarithm of the ratio of two resistivities is a sum, `ln ρ'/ρ = −Δln σ(liquid) − Δln mobility − Δln obstruction`,
so each step's part can be named; so can the ions and the share of liquid behind it.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry.compounds import compounds
from lumped.dough.bowl import INDEX
from lumped.dough.chain import Chain
from lumped.dough.holding import body_of
from lumped.dough.kneading import Kneading
from lumped.dough.recipe import Recipe
from lumped.dough.safety import suits
from lumped.dough.swap.wants import Wish
from lumped.pantry import Pantry, sold
from lumped.quantities import rounded_text, short_text
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["Reasoned", "notes_on", "parts_of", "reasons_for"]

Array = NDArray[np.float64]
_WORTH = 0.03  # a part of a logarithm that is worth a sentence
_TOLD = 0.01  # of all charge in the liquid, from which an ion is told
_KEEPS_ELSE = 0.015  # of water activity
_AGAINST = 0.3  # of what drives the water activity, from which what drives it the other way is told too
_TINY = 1e-12


@dataclass(frozen=True, slots=True, kw_only=True)
class Reasoned:
    """One thing that moves a property.

    Parameters
    ----------
    key : str
        Which step of the chain.
    words : str
        What it does, and why, in a sentence.
    part : float
        Its part in the natural logarithm of the ratio of resistivities; 0 for what moves another property. [1]
    """

    key: str
    words: str
    part: float = 0.0

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {"key": self.key, "words": self.words, "part": self.part}


def parts_of(before: Chain, after: Chain) -> dict[str, float]:
    """Split the logarithm of the ratio of resistivities into the steps of the chain; medians of the draws.

    Parameters
    ----------
    before, after : Chain
        Of (n,) draws each.

    Returns
    -------
    dict of str to float
        Part of liquid, mobility and obstruction, and of what conducts without liquid; they sum to the whole. [1]
    """
    steps = {
        "liquid": (before.liquid_conductivity, after.liquid_conductivity),
        "mobility": (before.mobility_left, after.mobility_left),
        "obstruction": (before.obstruction, after.obstruction),
    }
    logs = {key: np.log(np.maximum(old, _TINY)) - np.log(np.maximum(new, _TINY)) for key, (old, new) in steps.items()}
    whole = np.log(after.resistivity / before.resistivity)
    found = {key: float(np.median(each)) for key, each in logs.items()}
    found["dry"] = float(np.median(whole - sum(logs.values())))
    return found


def reasons_for(before: Kneading, after: Kneading, shop: Pantry) -> tuple[Reasoned, ...]:
    """Say what moves, the largest part of the resistivity first, then keeping and acidity.

    Parameters
    ----------
    before, after : Kneading
        The dough as it was, and the other.
    shop : Pantry
        What the ingredients are.
    """
    parts = parts_of(before.chain, after.chain)
    found = [
        Reasoned(key=key, words=_step(key, part, before.chain, after.chain), part=part)
        for key, part in sorted(parts.items(), key=lambda each: -abs(each[1]))
        if abs(part) > _WORTH and key != "dry"
    ]
    return (*found, *_others(before.chain, after.chain))


def _step(key: str, part: float, before: Chain, after: Chain) -> str:
    way = "up" if part < 0 else "down"
    factor = rounded_text(float(np.exp(abs(part))))
    if key == "liquid":
        return say(f"swap-liquid-{way}", factor=factor, ions=_ions(before, after, more=part < 0))
    if key == "mobility":
        return say(f"swap-mobility-{way}", factor=factor)
    shares = _told_apart([100 * float(np.median(each.liquid_share)) for each in (before, after)])
    water = [f"{1e3 * float(np.median(each.free_water)):.0f}" for each in (before, after)]
    freed = say("swap-free-water", before=water[0], after=water[1]) if water[0] != water[1] else ""
    return say(f"swap-obstruction-{way}", factor=factor, before=shares[0], after=shares[1], water=freed)


def _told_apart(figures: list[float]) -> list[str]:
    """Give two figures with as few digits as tell one from the other, two decimals at most."""
    return next((each for each in ([f"{figure:.{digits}f}" for figure in figures] for digits in range(2))
                 if each[0] != each[1]), [f"{figure:.2f}" for figure in figures])  # fmt: skip


def _ions(before: Chain, after: Chain, *, more: bool) -> str:
    """Name the ions of which there are most more, or most less, in a litre of the liquid."""
    names = set(before.charges) | set(after.charges)
    change = {name: _charge(after, name) - _charge(before, name) for name in names}
    sign = 1 if more else -1
    least = _TOLD * sum(_charge(before, name) for name in before.charges)
    largest = sorted(names, key=lambda name: (-sign * change[name], name))[:2]
    told = [
        say(
            "swap-ion-more" if more else "swap-ion-less",
            ion=_ion_name(name),
            change=short_text(abs(change[name]) / 1e3),
        )
        for name in largest
        if sign * change[name] > least
    ]
    return ", ".join(told) or say("swap-no-ion", way="more" if more else "less")


def _charge(chain: Chain, ion: str) -> float:
    """Median of the moles of charge of an ion in a cubic metre of liquid. [mol/m³]"""
    return float(np.median(chain.charges[ion])) if ion in chain.charges else 0.0


def _ion_name(ion: str) -> str:
    return ion.replace("-", " ")


def _others(before: Chain, after: Chain) -> Iterator[Reasoned]:
    """Keeping and acidity, where they move enough to be told."""
    activity = [float(np.median(each.water_activity)) for each in (before, after)]
    if abs(activity[1] - activity[0]) > _KEEPS_ELSE:
        way = "up" if activity[1] > activity[0] else "down"
        words = say(f"swap-keeping-{way}", before=f"{activity[0]:.2f}", after=f"{activity[1]:.2f}",
                    solute=_solute(before, after, more=way == "down"))  # fmt: skip
        yield Reasoned(key="keeping", words=words)
    ph = [float(np.median(each.ph)) for each in (before, after)]
    if abs(ph[1] - ph[0]) > 0.15:
        way = "up" if ph[1] > ph[0] else "down"
        told = {"before": rounded_text(ph[0]), "after": rounded_text(ph[1])}
        yield Reasoned(key="acidity", words=say(f"swap-ph-{way}", **told))


def _solute(before: Chain, after: Chain, *, more: bool) -> str:
    """Name what is dissolved so much more, or less, in a mass of liquid water. [mol/kg]"""
    molal = [_molalities(each) for each in (before, after)]
    change = {key: molal[1][key] - molal[0][key] for key in molal[0]}
    sign = 1 if more else -1
    key = max(change, key=lambda key: sign * change[key])
    against = min(change, key=lambda key: sign * change[key])
    told = _moles(key, change[key])
    if -sign * change[against] > _AGAINST * sign * change[key]:
        told = say("swap-solute-though", solute=told, against=_moles(against, change[against]))
    return told


def _moles(key: str, change: float) -> str:
    return say("swap-solute", name=handbook().name("compounds", key), change=short_text(abs(change)),
               way="more" if change > 0 else "less")  # fmt: skip


def _molalities(chain: Chain) -> dict[str, float]:
    water = np.maximum(chain.liquid_water, _TINY)
    return {
        each.key: float(np.median(chain.dissolved[INDEX[each.key]] / water)) / each.molar_mass
        for each in compounds()
        if each.dissolves and each.molar_mass
    }


def notes_on(before: Recipe, after: Recipe, wish: Wish, shop: Pantry) -> tuple[str, ...]:
    """Say what a person should know of another recipe."""
    return tuple(_notes(before, after, wish, shop))


def _notes(before: Recipe, after: Recipe, wish: Wish, shop: Pantry) -> Iterator[str]:
    new = [key for key in after.ingredients if key not in before.ingredients]
    bodies = [{body_of(shop[key]) for key in each.ingredients} - {""} for each in (before, after)]
    if bodies[0] != bodies[1]:
        yield say("swap-note-texture")
    if "wheat" in bodies[0] and "wheat" not in bodies[1]:
        yield say("swap-note-no-gluten")
    if "starch" in bodies[1] - bodies[0] and "wheat" not in bodies[1]:
        yield say("swap-note-starch-cold" if after.cooked == "not cooked" else "swap-note-starch-cooked")
    if before.cooked != after.cooked:
        yield say(f"swap-note-{after.cooked.replace(' ', '-')}")
    for key in new:
        yield from _notes_on_one(key, after, shop)
    for diet in wish.diets:
        why = suits(dict.fromkeys(after.ingredients, 1.0), shop, diet)
        yield why.why
    if wish.region is not None:
        for key in new:
            place = sold(key, wish.region)
            if place.trouble != "none":
                yield say("swap-note-shop", ingredient=shop[key].name, place=place.words)


def _notes_on_one(key: str, after: Recipe, shop: Pantry) -> Iterator[str]:
    share, grams = shop[key].composition.get, 1e3 * after.mass_of(key)
    if share("potassium-chloride", 0.0) > 0.1:
        yield say("swap-note-potassium", ingredient=shop[key].name)
    for acid, groups in (("citric-acid", 3), ("tartaric-acid", 2), ("potassium-hydrogen-tartrate", 1),
                         ("acetic-acid", 1), ("ascorbic-acid", 1)):  # fmt: skip
        if share(acid, 0.0) > 0.01:
            mass = compounds()[INDEX[acid]].molar_mass or 1.0
            moles = after.mass_of(key) * share(acid, 0.0) / mass * groups
            yield say("swap-note-acid", ingredient=shop[key].name, acid=handbook().name("compounds", acid),
                      groups=groups, moles=short_text(1e3 * moles))  # fmt: skip
    if 0.1 < share("water", 0.0) < 0.99 and "body" not in shop[key].roles:
        yield say("swap-note-water", ingredient=shop[key].name, water=f"{grams * share('water', 0.0):.0f}")
