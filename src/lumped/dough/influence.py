"""What dominates the uncertainty of a dough, and which measurement would shrink it most."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from lumped.dough.beliefs import sorted_out
from lumped.pantry import Pantry
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.dough.kneading import Kneading

__all__ = ["MEASUREMENTS", "Influence", "influences_on"]

Array = NDArray[np.float64]
MEASUREMENTS = ("resistivity", "scale", "finished", "oven", "conductivity-meter", "syrup")
"""What one could measure: a specimen's resistivity, each ingredient's weight, the finished dough's weight, flour dried
in an oven, water or pressed liquid with a conductivity meter, a syrup's own conductivity."""
_WORTH_TELLING = 0.01


@dataclass(frozen=True, slots=True, kw_only=True)
class Influence:
    """A group of unknowns that one measurement would settle.

    Parameters
    ----------
    measurement : str
        Which, one of `MEASUREMENTS`.
    words : str
        What to do, in words.
    share : float
        Share of the variance of the resistivity's logarithm that goes when the group is known. [1]
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
        The strongest first; those below 1 % are left out.

    Notes
    -----
    Each group is held at its middle and the recipe followed through again: what is left of the variance is what the
    other unknowns leave. The shares need not sum to one, for unknowns work together.
    """
    whole = float(np.var(np.log(done.chain.conductivity)))
    found = []
    for measurement in MEASUREMENTS:
        held = [name for name in done.named if _settled_by(measurement, name)]
        if whole < 1e-12 or not held:
            continue
        left = np.log(_without(done, held, shop))
        share = 1 - float(np.var(left)) / whole
        if share >= _WORTH_TELLING:
            low, high = np.quantile(left, [0.025, 0.975])
            found.append(
                Influence(
                    measurement=measurement, words=say(f"dough-measure-{measurement}"), share=min(share, 1.0),
                    factor_left=float(np.exp(high - low)),
                )
            )  # fmt: skip
    return tuple(sorted(found, key=lambda each: -each.share))


def _settled_by(measurement: str, name: str) -> bool:
    groups: Mapping[str, tuple[str, ...]] = {
        "resistivity": ("bound_water", "archie_exponent", "picture", "percolation", "air", "scatter"),
        "scale": ("mass ", "needed "),
        "finished": ("water_lost",),
        "oven": ("moisture ",),
        "conductivity-meter": ("minerals ", "mobile_single", "mobile_double", "brine_error"),
        "syrup": ("walden_exponent",),
    }
    return name.startswith(groups[measurement])


def _without(done: "Kneading", held: list[str], shop: Pantry) -> Array:
    """Conductivity in draws, with some unknowns held at their middle. [S/m]"""
    from lumped.dough.kneading import followed

    named = {
        name: np.full_like(draws, np.median(draws)) if name in held else draws for name, draws in done.named.items()
    }
    return followed(done.recipe, sorted_out(done.recipe, named, shop), shop).conductivity
