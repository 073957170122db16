"""Go or no go: what a lamp shows of a batch in one minute, through a mould with two screws.

Pack, resistor, mould and lamp stand in one line. A current i flows when the dough has the resistivity

    ρ(i) = (V_pack − i·(R_pack + R) − V_lamp(i) − price(i)) / (i·k),

k from the mould's field; ρ only falls with i. So the currents at which an eye calls a lamp bright, and dark, give the
two resistivities at which one word gives way to the next, and the draws of a recipe fall into three zones.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

from lumped.circuit import lamp, pack
from lumped.dough.kneading import Kneading
from lumped.dough.kneading import kneading as followed
from lumped.dough.material import CONDUCTS_BELOW
from lumped.dough.recipe import Recipe
from lumped.pantry import Pantry
from lumped.pantry.measures import weight_of
from lumped.quantities import Provenance, Value, believed
from lumped.reference import handbook
from lumped.sculpt.mould import Mould, mould, moulds
from lumped.verdict.trial_border import VOLTS, border, passed

__all__ = ["Line", "Seen", "as_hundred", "best_line", "line", "look", "mistake", "seen_in", "touching"]

Array = NDArray[np.float64]
_PASSES, _SLIPS = 0.9, 0.1  # a test tells if so many good batches pass and no more bad ones do: chosen


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """What stands in one line.

    Parameters
    ----------
    mould : Mould
        With dough and two rods.
    lamp, pack : str
        Keys in the handbook.
    resistor : str or None
        Key of the smallest resistor with which the lamp bears it that the screws touch; None if it needs none.
    """

    mould: Mould
    lamp: str
    pack: str
    resistor: str | None

    @property
    def ohms(self) -> float:
        """Resistance of the resistor; 0 without one. [Ω]"""
        return handbook().value("resistors", self.resistor, "resistance").mean if self.resistor else 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Seen:
    """What a lamp shows of batches.

    Parameters
    ----------
    line : Line
        Through what.
    bright_below, dark_above : Value
        Resistivities at which bright gives way to faint, and faint to dark. [Ω·m]
    good, bad : mapping of str to float
        Share of good batches, and of those with a mistake, that look bright, faint, dark. [1]
    go : str
        What a good batch should look like.
    """

    line: Line
    bright_below: Value
    dark_above: Value
    good: dict[str, float]
    bad: dict[str, float]
    go: str

    @property
    def gain(self) -> float:
        """How many more good batches pass than bad ones. [1]"""
        return self.good[self.go] - self.bad[self.go]

    @property
    def tells(self) -> bool:
        """Whether the test tells good from bad: nine in ten good ones pass, one in ten bad ones."""
        return self.good[self.go] >= _PASSES and self.bad[self.go] <= _SLIPS


def line(mould_key: str, lamp_key: str, pack_key: str, rods: str = "screw-stainless-3mm") -> Line:
    """Put a line together, with the resistor that its lamp needs.

    Parameters
    ----------
    mould_key, lamp_key, pack_key, rods : str
        Keys in the handbook.

    Returns
    -------
    Line

    Raises
    ------
    HandbookError, InputError
        If the handbook has no such thing, or the rods don't fit.

    Examples
    --------
    >>> line("straw", "lamp-red", "pack-4aa-alkaline").resistor
    'resistor-220'
    """
    return Line(mould=mould(mould_key, rods), lamp=lamp_key, pack=pack_key, resistor=_resistor_for(lamp_key, pack_key))


@cache
def _resistor_for(lamp_key: str, pack_key: str) -> str | None:
    """The smallest resistor with which screws may touch, wherever lamp and cells stand in their spread."""
    most = handbook().value("lamps", lamp_key, "max_current").mean
    law, cells = lamp(lamp_key, against=-1.0), pack(pack_key, against=-1.0)
    needed = (cells.emf - float(np.interp(most, passed(lamp_key, -1.0), VOLTS))) / most - cells.resistance
    known = [(handbook().value("resistors", key, "resistance").low, key) for key in handbook().keys("resistors")]
    if law.current(cells.emf) <= most or needed <= 0:
        return None
    return min((each for each in known if each[0] >= needed), default=max(known))[1]


def touching(made: Line) -> tuple[str, float]:
    """Say what the lamp does where the screws touch, and the current. [A]"""
    book, cells = handbook(), pack(made.pack)
    spare = cells.emf - VOLTS - (cells.resistance + made.ohms) * passed(made.lamp, 0.0)
    volts = float(np.interp(0.0, -spare, VOLTS))
    current = float(np.interp(volts, VOLTS, passed(made.lamp, 0.0)))
    bright, barely = (book.value("lamps", made.lamp, f"{step}_current").mean for step in ("bright", "barely_lit"))
    return "bright" if current > bright else "faint" if current > barely else "dark", current


def mistake(recipe: Recipe, shop: Pantry) -> tuple[str, Recipe | None]:
    """Give the mistake that a test should find: the salt forgotten, or a teaspoon of it in the wrong dough.

    Returns
    -------
    str, Recipe or None
        Its key, and the recipe with it; None for a conducting dough that has no salt to forget.
    """
    if recipe.kind == "insulating":
        spoon = weight_of("tsp", shop["table-salt"], "metric").mean
        return "spoon-of-salt", recipe.with_added("table-salt", spoon)
    salts = [key for key in recipe.ingredients if "ions" in shop[key].roles and "preservative" in shop[key].roles]
    without = recipe
    for key in salts:
        without = without.without(key)
    return ("no-salt", without) if salts and without.portions else ("no-carrier", None)


def look(done: Kneading, shop: Pantry) -> tuple[str, Array, Array]:
    """Draw the resistivities of good batches and of those with a mistake.

    Parameters
    ----------
    done : Kneading
        The recipe, followed through.
    shop : Pantry
        What the ingredients are.

    Returns
    -------
    str, (n,) float, (n,) float
        The mistake's key, and the resistivities. [Ω·m]
    """
    key, other = mistake(done.recipe, shop)
    good = np.asarray(done.chain.resistivity)
    bad = np.full_like(good, CONDUCTS_BELOW) if other is None else np.asarray(followed(other, shop).chain.resistivity)
    return key, good, bad


def seen_in(made: Line, good: Array, bad: Array, *, go: str, provenance: Provenance) -> Seen:
    """Tell what is seen of batches.

    Parameters
    ----------
    made : Line
        Through what.
    good, bad : (n,) float
        Resistivities of good batches, and of those with a mistake. [Ω·m]
    go : str
        What a good batch should look like: "bright" or "dark".
    provenance : Provenance
        Of the resistivities.

    Returns
    -------
    Seen

    Notes
    -----
    Drawn beside the dough are the mould's sizes, the price at the metal, lamp and cells within their kinds, and the
    eye. A price or a part beyond its interval goes on as a straight line.
    """
    bright, dark = (_border(made, step) for step in ("bright", "barely_lit"))

    def shares(resistivity: Array) -> dict[str, float]:
        first, last = _passing(resistivity, bright, "bright"), _passing(resistivity, dark, "dark")
        return {"bright": first, "faint": max(0.0, 1 - first - last), "dark": last}

    origin = Provenance.of([provenance, made.mould.factor.provenance,
                            handbook().value("lamps", made.lamp, "bright_current").provenance])  # fmt: skip
    return Seen(
        line=made, good=shares(good), bad=shares(bad), go=go,
        bright_below=believed(bright, unit="Ω·m", provenance=origin),
        dark_above=believed(dark, unit="Ω·m", provenance=origin),
    )  # fmt: skip


def best_line(good: Array, bad: Array, *, go: str, provenance: Provenance, near: Line) -> Seen:
    """Find the mould, lamp and pack that tell best; of equals that which changes least."""

    def changes(each: Line) -> int:
        return sum(getattr(each, part) != getattr(near, part) for part in ("mould", "lamp", "pack"))

    found = [(each, _gain(each, good, bad, go)) for each in _lines(near.mould.rods)]
    best = max(gain for _, gain in found)
    chosen, _ = min((each for each in found if each[1] > best - 0.02), key=lambda each: (changes(each[0]), -each[1]))
    return seen_in(chosen, good, bad, go=go, provenance=provenance)


def _border(made: Line, step: str) -> Array:
    return border(made.mould, made.lamp, made.pack, step, ohms=made.ohms)


def _gain(made: Line, good: Array, bad: Array, go: str) -> float:
    """How many more good batches pass than bad ones. [1]"""
    where = _border(made, "bright" if go == "bright" else "barely_lit")
    return _passing(good, where, go) - _passing(bad, where, go)


def _passing(resistivity: Array, where: Array, go: str) -> float:
    """Share of batches below the border of what is bright, or above that of what is dark. [1]"""
    there = np.resize(where, len(resistivity))
    return float(np.mean(resistivity < there if go == "bright" else resistivity > there))


def _lines(rods: str) -> Iterator[Line]:
    book = handbook()
    packs = [key for key in book.keys("packs") if book.entry("packs", key).facts.get("kind") == "pack"]
    for mould_key in moulds():
        for lamp_key in book.keys("lamps"):
            for pack_key in packs:
                yield line(mould_key, lamp_key, pack_key, rods)


def as_hundred(shares: dict[str, float]) -> dict[str, int]:
    """Give shares as whole batches of a hundred, by largest remainders, so that they are a hundred together.

    Examples
    --------
    >>> as_hundred({"bright": 0.914, "faint": 0.083, "dark": 0.003})
    {'bright': 92, 'faint': 8, 'dark': 0}
    """
    found = {state: int(100 * share) for state, share in shares.items()}
    order = sorted(found, key=lambda state: found[state] - 100 * shares[state])
    for state in order[: 100 - sum(found.values())]:
        found[state] += 1
    return found
