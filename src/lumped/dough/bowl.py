"""What stands in the bowl: the ingredients of a recipe as one matrix of compounds."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry.compounds import compounds
from lumped.pantry import Ingredient, Pantry

__all__ = ["INDEX", "MINERALS", "Bowl", "bought_salts", "is_body", "is_syrup", "is_wet", "natural_salts", "salt_rows"]

Array = NDArray[np.float64]
INDEX = {each.key: row for row, each in enumerate(compounds())}
"""Row of each compound."""
MINERALS = tuple(
    f"{metal}-{anion}"
    for anion in ("dihydrogen-phosphate", "hydrogen-carbonate", "dihydrogen-citrate")
    for metal in ("sodium", "potassium", "magnesium", "calcium")
    if f"{metal}-{anion}" != "sodium-hydrogen-carbonate"  # that one is bought as such
)
"""Salts whose anion stands for all those of a food or water (`pantry.composing`): phosphate for flour and the like."""
_CHLORIDES = tuple(f"{metal}-chloride" for metal in ("sodium", "potassium", "magnesium", "calcium"))
_WATER, _STARCH, _FAT = INDEX["water"], INDEX["starch"], INDEX["fat"]
_FLUID = 0.1  # share of water and glycerol from which what is sweet is a syrup: sugars hold less, honeys more; chosen
_SWEET = {"sweetener", "moisture keeper"}
_WATER_DENSITY = 1e3  # kg/m³; volumes of liquids are told as the water that fills them


@cache
def salt_rows() -> tuple[int, ...]:
    """Rows of the compounds that people call salts: all ions, no acid but carbonic acid."""
    return tuple(row for row, each in enumerate(compounds()) if each.ions and set(each.acids) <= {"carbonic"})


@cache
def bought_salts() -> tuple[int, ...]:
    """Rows of the salts that are bought as such: table salt, potassium salt, Epsom salt, soda, alum, …

    Examples
    --------
    >>> [INDEX[key] in bought_salts() for key in ("potassium-chloride", "sodium-dihydrogen-phosphate")]
    [True, False]
    """
    natural = {INDEX[key] for key in MINERALS}
    return tuple(row for row in salt_rows() if row not in natural)


def natural_salts(ingredient: Ingredient) -> tuple[str, ...]:
    """Name the salts of an ingredient that differ from field to field and from well to well.

    What is sold as a salt holds none; the chlorides of molasses, vinegar and food colours are some.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> natural_salts(pantry()["tap-water"]), natural_salts(pantry()["cider-vinegar"])
    (('calcium-hydrogen-carbonate',), ('potassium-chloride',))
    >>> natural_salts(pantry()["table-salt"])
    ()
    """
    salts = set(MINERALS)
    if "ions" not in ingredient.roles:
        salts.update(_CHLORIDES[1:])
        if "sodium-chloride" in ingredient.origins:  # printed with an interval; a label's salt is weighed in a factory
            salts.add("sodium-chloride")
    return tuple(key for key in ingredient.composition if key in salts)


def is_body(ingredient: Ingredient) -> bool:
    """Tell whether an ingredient counts as flour where a baker speaks of hydration: flour, meal or starch.

    A gum does not, although it drinks: a baker weighs water against flour, and the chain counts what a gum holds.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> [is_body(pantry()[key]) for key in ("plain-flour", "almond-flour", "xanthan-gum")]
    [True, True, False]
    """
    return "body" in ingredient.roles


def is_wet(ingredient: Ingredient) -> bool:
    """Tell whether the water of an ingredient counts as water where a baker speaks of hydration: water, juice, vinegar.

    Syrups, gels and salts with water in their crystals do not.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> [is_wet(pantry()[key]) for key in ("tap-water", "lemon-juice", "epsom-salt", "honey")]
    [True, True, False, False]
    """
    return "liquid" in ingredient.roles


def is_syrup(ingredient: Ingredient) -> bool:
    """Tell whether an ingredient wets flour although it is no water: syrup, honey, glycerine.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> [is_syrup(pantry()[key]) for key in ("honey", "glycerine", "brown-sugar", "tap-water", "vegetable-oil")]
    [True, True, False, False, False]
    """
    share = ingredient.composition.get
    fluid = share("water", 0.0) + share("glycerol", 0.0) > _FLUID
    return fluid and bool(_SWEET & set(ingredient.roles)) and not (is_wet(ingredient) or is_body(ingredient))


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
    giving : (I,) int
        Row of the compound that gives way where there is more of the minerals: starch, or what there is most of.
    body, wet : (I,) bool
        What counts as flour, and what as water, where a baker speaks of hydration.
    syrup, fat : (I,) float
        Volume of syrup, and of fat that is not flour's own, as the share of its mass in water that fills it. [1]
    """

    keys: tuple[str, ...]
    dry: Array
    minerals: Array
    water: Array
    giving: NDArray[np.intp]
    body: NDArray[np.bool_]
    wet: NDArray[np.bool_]
    syrup: Array
    fat: Array

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
        for column, key in enumerate(keys):
            rows = [INDEX[salt] for salt in natural_salts(pantry[key])]
            minerals[rows, column] = matrix[rows, column]
        dry -= minerals
        dry[_WATER] = 0.0
        filled = _WATER_DENSITY * np.array([1 / each.density for each in compounds()])
        syrups = np.array([is_syrup(pantry[key]) for key in keys], dtype=np.bool_)
        free_fat = np.array([not is_body(pantry[key]) for key in keys]) & ~syrups
        return cls(
            keys=tuple(keys), dry=dry, minerals=minerals, water=matrix[_WATER],
            giving=np.where(matrix[_STARCH] > 0.1, _STARCH, (matrix - minerals).argmax(axis=0)),
            body=np.array([is_body(pantry[key]) for key in keys], dtype=np.bool_),
            wet=np.array([is_wet(pantry[key]) for key in keys], dtype=np.bool_),
            syrup=np.where(syrups, filled @ matrix, 0.0), fat=np.where(free_fat, filled[_FAT] * matrix[_FAT], 0.0),
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
        found: Array = (self.dry + self.minerals) @ parched
        found[_WATER] += (water * masses).sum(axis=0)
        for row, factor in minerals.items():
            salts, giving = self.minerals[:, row], self.giving[row]
            gives = (water * masses)[row] if giving == _WATER else self.dry[giving, row] * parched[row]
            most = gives / max(salts.sum(), 1e-12)  # all that gives way to them
            more = np.minimum(parched[row] * (factor - 1), most)
            found += salts[:, None] * more
            found[giving] -= salts.sum() * more
        return np.maximum(found, 0.0, out=found)
