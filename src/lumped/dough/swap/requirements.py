"""What must be kept when something else goes in, in order: texture, current, acidity, keeping, cost, limits.

Each requirement tells of each recipe how far it is beyond what is allowed (0: kept) and how far it drifts within it.
A score sums both with the handbook's weights, adds what the change itself costs, and is less for a better recipe:
`Σ weight · beyond + Σ drift · d² + change`.
"""

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry.compounds import molar_mass_of
from lumped.dough.properties import LUMP
from lumped.dough.safety.metals import limits_on
from lumped.dough.safety.weights import child_mass
from lumped.dough.swap.figures import ELEMENTS, Figures
from lumped.dough.texture import WELL_INSIDE
from lumped.reference import handbook

__all__ = [
    "REQUIREMENTS", "Standard", "beyond", "beyond_hands", "doses_of", "drift", "gain", "limits_of", "row",
    "texture_parts",
]  # fmt: skip

Array = NDArray[np.float64]
REQUIREMENTS = ("texture", "current", "acidity", "keeping", "cost", "limits")
"""In order of weight."""
_AGE = 2.0  # of the child whose weight counts, as in `safety`
_ACID_FLOOR = 5e-3  # mol/kg of acid that flour alone brings


@dataclass(frozen=True, slots=True, kw_only=True)
class Standard:
    """What the recipe as it was is like, and what is asked of another.

    Parameters
    ----------
    old : Figures
        Of the recipe as it was, (1,) each.
    conducts : bool
        Whether the dough is to carry current, or to block it.
    room : float
        Natural logarithm of how much worse its resistivity may be: the end of the old interval. [1]
    limits : (4,) float
        The most of each element that is allowed, as a share of the dough. [1]
    doses : (D,) float
        The most of each dose that a helping may hold: one, or as much as it held before. [1]
    asked : frozenset of str
        Requirements that hold.
    target : str or None
        What is aimed at.
    """

    old: Figures
    conducts: bool
    room: float
    limits: Array
    doses: Array
    asked: frozenset[str]
    target: str | None = None


def beyond(standard: Standard, new: Figures, margin: float = 0.0, *, without: Collection[str] = ()) -> dict[str, Array]:
    """Give how far recipes are beyond what each requirement allows.

    Parameters
    ----------
    standard : Standard
        What is asked.
    new : Figures
        Of n recipes.
    margin : float
        How far within its tolerance each must be, in units of it. [1]
    without : collection of str
        Requirements that are dropped. Without the texture it must still be a dough: no crumbs, no soup.

    Returns
    -------
    dict of str to (n,) float
        By requirement, in units of its tolerance; 0 where it is kept. [1]
    """
    old, full = standard.old, 1.0 - margin
    found = {
        "texture": _no_dough(new, margin) if "texture" in without else sum(texture_parts(old, new, full).values()),
        "current": np.maximum(_worse(standard, new) - full, 0.0),
        "acidity": _unlike_in_acid(old, new, full),
        "keeping": np.maximum((new.water_activity - old.water_activity) / row("keeping", "tolerance") - full, 0.0),
        "limits": np.maximum(new.elements / standard.limits[:, None] - full, 0.0).sum(axis=0)
        + np.maximum(new.doses / standard.doses[:, None] - full, 0.0).sum(axis=0)
        + beyond_hands(old, new),
    }
    if new.cost is not None and old.cost is not None:
        ratio = np.log(np.maximum(new.cost, 1e-9) / np.maximum(old.cost, 1e-9))
        found["cost"] = np.maximum(ratio / row("cost", "tolerance") - full, 0.0)
    kept = [key for key in REQUIREMENTS if key in found and (key == "texture" or key not in without)]
    return {key: np.asarray(found[key]) for key in kept if key in standard.asked}


def _unlike_in_acid(old: Figures, new: Figures, full: float) -> Array:
    """How far a dough is more sour, or less, than it may be: one that nobody soured may be as mild as flour. (n,) [1]

    Soda makes a dough a weak lye, which serves nothing: without it the pH falls to that of flour and water.
    """
    room = full * row("acidity", "tolerance")
    least, most = np.minimum(old.ph - room, row("acidity", "mild")), old.ph + room
    out = np.maximum(least - new.ph, 0.0) + np.maximum(new.ph - most, 0.0)
    return np.asarray(out / row("acidity", "tolerance"))


def _no_dough(new: Figures, margin: float) -> Array:
    """How far it is from being a dough at all: crumbs, soup, hardly any body, or unbound when cold. (n,) [1]"""
    return np.asarray(np.maximum(new.no_dough + margin, 0.0) + new.unbound)


def beyond_hands(old: Figures, new: Figures) -> Array:
    """How far a dough is too sour or too much of a lye for hands, in units of pH. (n,) [1]"""
    least, most = np.minimum(old.ph, row("limits", "least_ph")), np.maximum(old.ph, row("limits", "most_ph"))
    return np.asarray(np.maximum(least - new.ph, 0.0) + np.maximum(new.ph - most, 0.0))


def texture_parts(old: Figures, new: Figures, full: float = 1.0) -> dict[str, Array]:
    """How far each part of the texture is beyond what holds: water, binder, body, too much of fat, sugar or salt. [1]

    Each is (n,) and in units of its own tolerance.
    """
    most = row("texture", "most")
    slime = np.maximum(new.binder - np.maximum(old.binder, full * row("texture", "most_binder")), 0.0)
    more = {
        key: np.maximum((getattr(new, key) - getattr(old, key)) / row("texture", key) / most - full, 0.0)
        for key in ("softener", "sugar", "salt")
    }
    return {
        "water": np.maximum(np.abs(new.place) - np.maximum(np.abs(old.place), WELL_INSIDE * full), 0.0),
        "unbound": new.unbound,
        "body": np.maximum(np.abs(np.log(new.body / old.body)) / row("texture", "body") - full, 0.0),
        **more, "binder": slime / row("texture", "least_binder"),
    }  # fmt: skip


def drift(standard: Standard, new: Figures) -> dict[str, Array]:
    """Give how far recipes drift within what each requirement allows, squared and bounded. (n,) [1]"""
    old = standard.old
    shares = _bent(np.log(new.body / old.body) / row("texture", "body")) + sum(
        _bent((getattr(new, key) - getattr(old, key)) / row("texture", key)) for key in ("softener", "sugar", "salt")
    )
    moles = np.log((np.abs(new.acid) + _ACID_FLOOR) / (np.abs(old.acid) + _ACID_FLOOR)) / row("acidity", "moles")
    found = {
        "texture": _bent((new.place - old.place) / row("texture", "tolerance")) + shares,
        "current": _bent(np.maximum(_worse(standard, new), 0.0)),
        "acidity": _bent((new.ph - old.ph) / row("acidity", "tolerance")) + _bent(moles),
        "keeping": _bent(np.maximum(new.water_activity - old.water_activity, 0.0) / row("keeping", "tolerance")),
        "limits": _bent(np.maximum(new.sodium - old.sodium, 0.0) / row("limits", "free_sodium"))
        + _bent(np.maximum(new.doses - old.doses, 0.0)).sum(axis=0),
    }
    if new.cost is not None and old.cost is not None:
        ratio = np.log(np.maximum(new.cost, 1e-9) / np.maximum(old.cost, 1e-9))
        found["cost"] = _bent(np.maximum(ratio, 0.0) / row("cost", "tolerance"))
    return {key: np.asarray(found[key]) for key in REQUIREMENTS if key in found and key in standard.asked}


def gain(standard: Standard, new: Figures) -> Array:
    """Give how much better recipes are at what is aimed at: a natural logarithm, or for keeping a share. (n,) [1]"""
    old = standard.old
    if standard.target == "cheapest" and new.cost is not None and old.cost is not None:
        return np.asarray(np.log(np.maximum(old.cost, 1e-9) / np.maximum(new.cost, 1e-9)))
    if standard.target == "saltless":
        floor = row("limits", "free_sodium") / 10
        return np.asarray(np.log((old.sodium + floor) / (new.sodium + floor)))
    if standard.target == "keeps-longer":
        return np.asarray(old.water_activity - new.water_activity)
    if standard.target in ("carries-better", "blocks-better"):
        sign = 1.0 if standard.target == "carries-better" else -1.0
        return np.asarray(sign * np.log(old.resistivity / new.resistivity))
    return np.zeros_like(new.resistivity)


def limits_of(old: Figures, *, date: "object" = None) -> Array:
    """Give the most of each element that another recipe may hold: what the law, a dose, or the old recipe allows.

    Parameters
    ----------
    old : Figures
        Of the recipe as it was.
    date : date, optional
        The day whose law counts; the newest that the handbook knows.

    Returns
    -------
    (4,) float
        Sodium, potassium, aluminium, boron. [1]
    """
    sodium = np.maximum(old.elements[0] * (1 + row("limits", "sodium")), row("limits", "free_sodium"))
    found = [float(sodium[0]), max(_potassium_in_a_lump(), float(old.elements[1, 0]) * 1.001)]
    for number, symbol in enumerate(ELEMENTS[2:], 2):
        found.append(max(_lawful(symbol, date), float(old.elements[number, 0]) * 1.001))
    return np.array(found)


def doses_of(old: Figures) -> Array:
    """Give how many of each dose a helping of another recipe may hold: one, or what the old one held. (D,) [1]"""
    return np.asarray(np.maximum(1.0, 1.001 * old.doses[:, 0]))


def _potassium_in_a_lump() -> float:
    """Share of potassium at which a lump holds what a child should be seen for. [1]"""
    dose = handbook().value("limits", "potassium-child", "care_per_kg").low * child_mass(_AGE).mean
    return dose * molar_mass_of("K") / molar_mass_of("KCl") / LUMP


def _lawful(symbol: str, date: "object") -> float:
    import datetime

    day = date if isinstance(date, datetime.date) else datetime.date.max
    return limits_on(symbol, day).rows["category_1"].value.mean


def _worse(standard: Standard, new: Figures) -> Array:
    """How much worse a dough carries, or blocks, in units of what is allowed. (n,) [1]"""
    ratio = np.log(new.resistivity / standard.old.resistivity)
    return np.asarray((ratio if standard.conducts else -ratio) / standard.room)


def _bent(deviation: Array) -> Array:
    """A square that levels off at four, so that what is lost anyway does not outweigh all else. [1]"""
    square = np.square(deviation)
    return np.asarray(square / (1 + square / 4))


@cache
def row(key: str, quantity: str) -> float:
    """Look a figure of the table `swap` up."""
    return handbook().value("swap", key, quantity).mean


def score(
    standard: Standard, new: Figures, change: Array, *, without: Collection[str] = ()
) -> tuple[Array, Mapping[str, Array]]:
    """Sum what stands against recipes; the less the better.

    Parameters
    ----------
    standard : Standard
        What is asked.
    new : Figures
        Of n recipes.
    change : (n,) float
        What the change itself counts. [1]
    without : collection of str
        Requirements that are dropped.

    Returns
    -------
    (n,) float
        The score. [1]
    mapping of str to (n,) float
        What is beyond, by requirement. [1]
    """
    over = beyond(standard, new, without=without)
    total = np.asarray(change, float).copy()
    for key, each in over.items():
        total += row(key, "weight") * each
    for key, each in drift(standard, new).items():
        total += row(key, "drift") * each
    total -= row("change", "target") * gain(standard, new) / _step(standard.target)
    return np.where(np.isfinite(total), total, np.inf), over


def _step(target: str | None) -> float:
    """What counts as one step towards a target: a fifth better, or a water activity lower by the tolerance. [1]"""
    return row("keeping", "tolerance") if target == "keeps-longer" else float(np.log(1.25))
