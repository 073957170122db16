"""What a measured batch teaches: obstruction and bound water move, and later predictions carry a smaller interval.

Learnt is what batches of a lab share: how its doughs stand in the way of ions. Before anything was measured, exponent,
bound water, picture, percolation and air are believed independent. A measured resistivity weighs the draws by how well
they explain it, and those that do are kept as they are, five figures each: together they say what the measurement
taught, the ridge along which one can make up for another included.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from lumped.dough.recipe import Recipe
from lumped.errors import RecipeError
from lumped.pantry import Pantry, pantry
from lumped.quantities import Provenance, Status, Value, believed, draws_order

__all__ = ["LEARNT", "Calibration", "calibrated", "taught_by"]

Array = NDArray[np.float64]
LEARNT = ("archie_exponent", "bound_water", "picture", "percolation", "air")
KEPT = 2048  # what is kept of the draws
_FEWEST = 40  # draws that still explain a measurement; with fewer it contradicts the recipe


@dataclass(frozen=True, slots=True, kw_only=True)
class Calibration:
    """What is believed of the obstruction after measuring.

    Parameters
    ----------
    points : (KEPT, 5) tuple of tuples of float
        Equally likely values of `LEARNT`: Archie's exponent, water bound by a mass of dry flour, picture, share of
        liquid below which it forms no way through, share of air. [1]
    batches : tuple of str
        What taught it, in words, oldest first.
    """

    points: tuple[tuple[float, ...], ...]
    batches: tuple[str, ...] = ()

    @property
    def provenance(self) -> Provenance:
        """Where it comes from: it narrows a belief from memory, and does not make it a table."""
        return Provenance(status=Status.FROM_MEMORY, note="; ".join(self.batches))

    def draws(self) -> dict[str, Array]:
        """Draw what was learnt, by name: each draw is one of the points."""
        points = np.array(self.points)
        chosen = points[draws_order("calibration") * len(points) // len(draws_order("calibration"))]
        return {name: chosen[:, column] for column, name in enumerate(LEARNT)}

    def value(self, name: str) -> Value:
        """Give what is believed of one of `LEARNT`. [1]"""
        return believed([each[LEARNT.index(name)] for each in self.points], unit="", provenance=self.provenance)

    def values(self) -> dict[str, Value]:
        """Give what is believed of each of `LEARNT`, by name. [1]"""
        return {name: self.value(name) for name in LEARNT}

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "kind": "calibration", "schema": 1, "learnt": list(LEARNT), "points": [list(each) for each in self.points],
            "batches": list(self.batches), **{name: each.as_dict() for name, each in self.values().items()},
        }  # fmt: skip


def calibrated(
    recipe: Recipe, measured: Value, *, shop: Pantry | None = None, before: Calibration | None = None, batch: str = ""
) -> Calibration:
    """Learn from a batch of a recipe whose resistivity was measured.

    Parameters
    ----------
    recipe : Recipe
        What went into the batch.
    measured : Value
        Its resistivity, measured in a way that measures dough (`known.measured_dough`). [Ω·m]
    shop : Pantry, optional
        What the ingredients are; the handbook's.
    before : Calibration, optional
        What earlier batches taught.
    batch : str
        What the batch is called.

    Returns
    -------
    Calibration

    Raises
    ------
    RecipeError
        If the recipe can't have yielded what was measured.

    Notes
    -----
    All that is open of the batch besides (amounts, steam, moisture) is drawn too and averaged out, so that a batch
    whose finished weight is known teaches more. Learnt from an insulating dough, the figures hold for insulating
    doughs: obstruction depends on what obstructs.
    """
    from lumped.dough.kneading import kneading

    done = kneading(recipe, shop or pantry(), before)
    taught = taught_by(done.named, done.chain.resistivity, measured)
    if taught is None:
        expected = done.value(done.chain.resistivity, "Ω·m", "resistivity")
        raise RecipeError("dough-calibration-far", measured=measured.text(), expected=expected.text())
    told = before.batches if before else ()
    return replace(taught, batches=(*told, f"{batch or recipe.title}: {measured.text()}"))


def taught_by(named: Mapping[str, Array], resistivity: Array, measured: Value) -> Calibration | None:
    """Keep the draws that explain a measurement.

    Parameters
    ----------
    named : mapping of str to (n,) float
        Draws of what is open of a batch, by name.
    resistivity : (n,) float
        What came of each. [Ω·m]
    measured : Value
        What was measured. [Ω·m]

    Returns
    -------
    Calibration or None
        None where too few draws explain it.
    """
    error = np.log(resistivity / measured.mean)
    below, above = np.log(measured.mean / measured.low) / 1.96, np.log(measured.high / measured.mean) / 1.96
    weight = np.exp(-0.5 * (error / np.where(error < 0, below, above)) ** 2)
    if float(weight.sum() ** 2 / max(float((weight**2).sum()), 1e-300)) < _FEWEST:
        return None
    kept = np.searchsorted(np.cumsum(weight) / weight.sum(), (np.arange(KEPT) + 0.5) / KEPT)
    points = np.array([named[name][kept] for name in LEARNT]).round(5).T
    return Calibration(points=tuple(map(tuple, points.tolist())))
