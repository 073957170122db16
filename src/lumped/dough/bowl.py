"""What stands in the bowl: the ingredients of a recipe as one matrix of compounds."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry.compounds import compounds
from lumped.pantry import Pantry

__all__ = ["INDEX", "MINERALS", "Bowl"]

Array = NDArray[np.float64]
INDEX = {each.key: row for row, each in enumerate(compounds())}
"""Row of each compound."""
MINERALS = tuple(
    f"{metal}-{anion}"
    for anion in ("dihydrogen-phosphate", "hydrogen-carbonate", "dihydrogen-citrate")
    for metal in ("sodium", "potassium", "magnesium", "calcium")
    if f"{metal}-{anion}" != "sodium-hydrogen-carbonate"  # that one is bought as such
)
"""Salts that come with a food and differ from field to field and from well to well."""
_WATER, _STARCH = INDEX["water"], INDEX["starch"]
_MINERAL_ROWS = [INDEX[key] for key in MINERALS]


@dataclass(frozen=True, slots=True, kw_only=True)
class Bowl:
    """Ingredients, composed.

    Parameters
    ----------
    keys : tuple of str
        The ingredients, I of them.
    dry, minerals : (C, I) float
        Mass share of each compound but water: what is sure of, and the mineral salts. [1]
    water : (I,) float
        Mass share of water. [1]
    starchy : (I,) float
        1 for an ingredient in which more of a mineral means less starch, 0 where it means less water.
    body, wet : (I,) bool
        What counts as flour, and what as water, where a baker speaks of hydration.
    """

    keys: tuple[str, ...]
    dry: Array
    minerals: Array
    water: Array
    starchy: Array
    body: NDArray[np.bool_]
    wet: NDArray[np.bool_]

    @classmethod
    def of(cls, keys: Sequence[str], pantry: Pantry) -> "Bowl":
        """Compose ingredients of a pantry.

        Examples
        --------
        >>> from lumped.pantry import pantry
        >>> bowl = Bowl.of(["plain-flour", "tap-water"], pantry())
        >>> bowl.body.tolist(), bowl.wet.tolist()
        ([True, False], [False, True])
        """
        matrix = pantry.matrix(keys)
        dry, minerals = matrix.copy(), np.zeros_like(matrix)
        minerals[_MINERAL_ROWS] = matrix[_MINERAL_ROWS]
        dry[[_WATER, *_MINERAL_ROWS]] = 0.0
        held = matrix[_STARCH] + matrix[INDEX["fibre"]] + matrix[INDEX["protein"]]
        return cls(
            keys=tuple(keys), dry=dry, minerals=minerals, water=matrix[_WATER],
            starchy=(matrix[_STARCH] > 0.1).astype(float), body=held > 0.4, wet=matrix[_WATER] > 0.5,
        )  # fmt: skip

    def compounds(self, masses: Array, moisture: Mapping[int, Array], minerals: Mapping[int, Array]) -> Array:
        """Sum the compounds of all ingredients.

        Parameters
        ----------
        masses : (I, n) float
            Mass of each ingredient. [kg]
        moisture : mapping of int to (n,) float
            Share of water of an ingredient, where it is drawn. [1]
        minerals : mapping of int to (n,) float
            How much of its mineral salts there is over what the table says, where it is drawn. [1]

        Returns
        -------
        (C, n) float
            Mass of each compound; they sum to what went in. [kg]
        """
        water, parched = self.water[:, None], masses
        if moisture:
            water = np.repeat(water, masses.shape[1], axis=1)
            parched = masses.copy()
            for row, share in moisture.items():
                water[row] = share
                parched[row] *= (1 - share) / max(1 - self.water[row], 1e-9)
        found: Array = self.dry @ parched + self.minerals @ parched
        found[_WATER] += (water * masses).sum(axis=0)
        for row, factor in minerals.items():
            more = parched[row] * (factor - 1)
            found += self.minerals[:, row, None] * more
            found[_STARCH if self.starchy[row] else _WATER] -= self.minerals[:, row].sum() * more
        return np.maximum(found, 0.0)
