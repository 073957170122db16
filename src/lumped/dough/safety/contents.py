"""What a dough holds of an element, an acid or a compound: nothing that went in is lost; steam carries only water."""

from collections.abc import Mapping

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.compounds import Compound, compound, molar_mass_of
from lumped.errors import InputError
from lumped.pantry import Ingredient, Pantry
from lumped.quantities import Provenance, Status

__all__ = ["bringers", "element_share", "moles", "origin_of", "parched", "used", "whole"]


def used(masses: Mapping[str, ArrayLike]) -> tuple[str, ...]:
    """Name the ingredients of which something went in.

    Examples
    --------
    >>> used({"plain-flour": 0.125, "table-salt": 0.0})
    ('plain-flour',)
    """
    return tuple(key for key, mass in masses.items() if _is_some(mass))


def _is_some(mass: ArrayLike) -> bool:
    return mass > 0 if isinstance(mass, float) else bool(np.any(np.asarray(mass) > 0))


def moles(
    masses: Mapping[str, ArrayLike], pantry: Pantry, *, element: str = "", acid: str = "", compound: str = "",
    at_most: bool = False,
) -> NDArray[np.float64]:  # fmt: skip
    """Count what went in of one element, one weak acid in all its forms, or one compound.

    Parameters
    ----------
    masses : mapping of str to (...) float
        What went in of each ingredient. [kg]
    pantry : Pantry
        What the ingredients are made of.
    element, acid, compound : str
        What is counted, one of the three: "Na", "tartaric", "glycerol".
    at_most : bool
        Whether each ingredient is taken as dry as it may be, so that it holds the most of it.

    Returns
    -------
    (...) float
        Moles. [mol]

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> round(float(moles({"table-salt": 0.05844}, pantry(), element="Na")), 3)
    0.998
    """
    total = np.zeros(())
    for key in used(masses):
        each = _moles_per_kg(pantry, key, element=element, acid=acid, compound=compound)
        total = total + np.asarray(masses[key], float) * each * (parched(pantry[key]) if at_most else 1.0)
    return total


def parched(ingredient: Ingredient) -> float:
    """Tell by how much the shares of all but water grow where an ingredient is as dry as it may be. [1]

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> round(parched(pantry()["alum"]), 2), round(parched(pantry()["glycerine"]), 2) >= 1
    (1.05, True)
    """
    dry = 1 - ingredient.composition.get("water", 0.0)
    return (1 - ingredient.moisture.low) / dry if dry > 0 else 1.0


def bringers(
    masses: Mapping[str, ArrayLike], pantry: Pantry, *, element: str = "", acid: str = "", compound: str = ""
) -> tuple[str, ...]:
    """Name the ingredients that bring an element, an acid or a compound, the greatest share first.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> bringers({"plain-flour": 0.125, "table-salt": 0.05}, pantry(), element="Na")
    ('table-salt', 'plain-flour')
    """
    brought = {
        key: float(np.max(masses[key])) * _moles_per_kg(pantry, key, element=element, acid=acid, compound=compound)
        for key in used(masses)
    }
    return tuple(sorted((key for key in brought if brought[key] > 0), key=lambda key: -brought[key]))


def element_share(
    masses: Mapping[str, ArrayLike], dough_mass: ArrayLike, pantry: Pantry, element: str, *, at_most: bool = False
) -> NDArray[np.float64]:
    """Give the share of an element in a dough.

    Parameters
    ----------
    masses : mapping of str to (...) float
        What went in of each ingredient. [kg]
    dough_mass : (...) float
        Dough that came out. [kg]
    pantry : Pantry
        What the ingredients are made of.
    element : str
        Its symbol.
    at_most : bool
        Whether each ingredient is taken as dry as it may be, so that it holds the most of it.

    Returns
    -------
    (...) float
        Mass of the element over mass of the dough. [1]

    Raises
    ------
    InputError
        If no dough came out.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> round(float(element_share({"table-salt": 0.1, "distilled-water": 0.9}, 1.0, pantry(), "Na")), 4)
    0.0393
    """
    return moles(masses, pantry, element=element, at_most=at_most) * molar_mass_of(element) / whole(dough_mass)


def whole(dough_mass: ArrayLike) -> NDArray[np.float64]:
    """Give the mass of the dough, which is more than nothing. [kg]"""
    mass = np.asarray(dough_mass, float)
    if not np.all(mass > 0):
        raise InputError("safety-no-dough", mass=f"{1e3 * float(np.min(mass)):g}")
    return mass


def origin_of(keys: tuple[str, ...], pantry: Pantry, *more: Provenance) -> Provenance:
    """Give where a figure on these ingredients comes from: the weakest status of theirs and of `more`."""
    origins = [each for key in keys for name, each in pantry[key].origins.items() if not name.startswith("g_per_")]
    return Provenance.of([*origins, *more] or [Provenance(status=Status.FROM_MEMORY)])


def _moles_per_kg(pantry: Pantry, key: str, *, element: str, acid: str, compound: str) -> float:
    total = 0.0
    for name, share in pantry[key].composition.items():
        if share > 0 and (count := _count(name, element, acid, compound)):
            total += share * count / _molar_mass(name)
    return total


def _count(name: str, element: str, acid: str, wanted: str) -> int:
    if wanted:
        return int(name == wanted)
    found: Compound = compound(name)
    return found.atoms.get(element, 0) if element else found.acids.get(acid, 0)


def _molar_mass(name: str) -> float:
    mass = compound(name).molar_mass
    if mass is None:  # without a formula nothing is counted
        raise ValueError(name)
    return mass
