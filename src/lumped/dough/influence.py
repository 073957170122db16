"""What dominates the uncertainty of a dough, and which measurement would shrink it most."""

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from lumped.dough.beliefs import sorted_out
from lumped.dough.bowl import is_body
from lumped.dough.calibrating import taught_by
from lumped.dough.known import measured_dough
from lumped.pantry import Pantry
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.dough.kneading import Kneading

__all__ = ["MEASUREMENTS", "Influence", "influences_on"]

Array = NDArray[np.float64]
MEASUREMENTS = ("resistivity", "scale", "finished", "oven", "conductivity-meter", "syrup")
"""What one could measure: one batch's resistivity, each ingredient's weight, the finished dough's weight, flour dried
in an oven, water or pressed liquid with a conductivity meter, a syrup's own conductivity."""
_SETTLED = {
    "scale": ("mass ", "needed "), "finished": ("water_lost",), "oven": ("moisture ",),
    "conductivity-meter": ("minerals ", "mobile_single", "mobile_double", "brine_error"),
    "syrup": ("walden_exponent",),
}  # fmt: skip
_WAY = "four-needles-ac"  # of the ways to measure a resistivity, the one that a lab without money has
_WORTH_TELLING = 0.01


@dataclass(frozen=True, slots=True, kw_only=True)
class Influence:
    """What one measurement would settle.

    Parameters
    ----------
    measurement : str
        Which, one of `MEASUREMENTS`.
    words : str
        What to do, in words.
    share : float
        Share of the variance of the resistivity's logarithm that goes with it. [1]
    factor_left : float
        Factor between the ends of the 95 % interval that would be left. [1]
    """

    measurement: str
    words: str
    share: float
    factor_left: float

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "measurement": self.measurement, "words": self.words, "share": self.share, "factor_left": self.factor_left
        }  # fmt: skip


def influences_on(done: "Kneading", shop: Pantry) -> tuple[Influence, ...]:
    """Rank what one could measure by what it would settle.

    Parameters
    ----------
    done : Kneading
        A recipe followed through in draws.
    shop : Pantry
        What its ingredients are.

    Returns
    -------
    tuple of Influence
        The strongest first; those below 1 %, and those that leave the ends as far apart, are left out.

    Notes
    -----
    What a scale, an oven or a meter settles is held at its middle and the recipe followed through again: what is left
    of the variance is what the other unknowns leave. A measured resistivity settles the batch it was measured on; what
    it teaches of the next batch is what `calibrating` learns from a batch that comes out in the middle, and how batches
    differ from each other stays. The shares need not sum to one, for unknowns work together.
    """
    from lumped.dough.kneading import followed

    now = np.log(done.chain.conductivity)
    whole, wide = float(np.var(now)), _between_ends(now)
    found = []
    for measurement in MEASUREMENTS:
        known = _known_by(measurement, done, shop)
        if whole < 1e-12 or not known:
            continue
        left = np.log(followed(done.recipe, sorted_out(done.recipe, {**done.named, **known}, shop), shop).conductivity)
        share = 1 - float(np.var(left)) / whole
        if share >= _WORTH_TELLING and _between_ends(left) < wide:
            words = say(f"dough-measure-{measurement}")
            factor = float(np.exp(_between_ends(left)))
            found.append(Influence(measurement=measurement, words=words, share=min(share, 1.0), factor_left=factor))
    return tuple(sorted(found, key=lambda each: -each.share))


def _between_ends(logarithms: Array) -> float:
    """How far apart the ends of the 95 % interval are."""
    low, high = np.quantile(logarithms, [0.025, 0.975])
    return float(high - low)


def _known_by(measurement: str, done: "Kneading", shop: Pantry) -> dict[str, Array]:
    """What would be drawn of what a measurement tells of, by name; empty where it tells nothing."""
    if measurement == "resistivity":
        middle = float(np.median(done.chain.resistivity))
        taught = taught_by(done.named, done.chain.resistivity, measured_dough(middle, _WAY).resistivity)
        return {} if taught is None else taught.draws()
    return {
        name: np.full_like(draws, np.median(draws))
        for name, draws in done.named.items()
        if name.startswith(_SETTLED[measurement]) and (measurement != "oven" or is_body(shop[name.partition(" ")[2]]))
    }
