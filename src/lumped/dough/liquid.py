"""Which ions swim in a dough's liquid, and how well it conducts."""

from collections.abc import Mapping

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry import dissociated, liquid_viscosity_ratio, mixture_conductivity, mobility_left
from lumped.dough.balance import Balance
from lumped.reference import handbook

__all__ = ["ash_ions", "ions_conductivity", "slowed"]

Array = NDArray[np.float64]
_METALS = {"sodium": 1, "potassium": 1, "magnesium": 2, "calcium": 2}
_ACID_OF_ANION = {"dihydrogen-phosphate": "phosphoric", "hydrogen-carbonate": "carbonic", "citrate": "citric"}
_ACIDS = {"bitartrate": "tartaric", "citric_acid": "citric", "acetic_acid": "acetic", "bicarbonate": "carbonic"}
_TINY = 1e-12


def ash_ions(
    masses: Mapping[str, Array], *, mobile_single: Array, mobile_double: Array, hardness: Array
) -> tuple[dict[str, Array], dict[str, Array]]:
    """Give the ions that come with the ingredients' ash.

    Parameters
    ----------
    masses : mapping of str to (n,) float
        Mass of each ingredient. [kg]
    mobile_single, mobile_double : (n,) float
        Share of sodium and potassium, and of magnesium and calcium, of a solid ingredient that is free to move. [1]
    hardness : (n,) float
        Ions of tap water over the usual amount. [1]

    Returns
    -------
    cations : dict of str to (n,) float
        Moles of charge by metal. [mol]
    acids : dict of str to (n,) float
        Moles of the acids whose anions came with them. [mol]
    """
    cations: dict[str, Array] = {}
    acids: dict[str, Array] = {}
    book = handbook()
    for ingredient, mass in masses.items():
        entry = book.entry("ingredients", ingredient)
        acid = _ACID_OF_ANION.get(entry.facts.get("anion", ""))
        bound, hard = acid == "phosphoric", ingredient == "tap-water"
        for metal, charge in _METALS.items():
            if acid is None or metal not in entry.rows:
                continue
            free = (
                (mobile_single if charge == 1 else mobile_double) if bound else hardness if hard else np.ones_like(mass)
            )
            molar = book.value("substances", metal, "molar_mass").mean
            moles = mass * entry.rows[metal].value.mean / molar * charge * free
            cations[metal] = cations.get(metal, 0.0) + moles
            if acid != "citric":  # a juice's citric acid is counted with its composition
                acids[acid] = acids.get(acid, 0.0) + moles
    return cations, acids


def ions_conductivity(
    balance: Balance, cations: Mapping[str, Array], acids: Mapping[str, Array], temperature: float
) -> tuple[Array, Array]:
    """Give the conductivity of a dough's liquid before sugar thickens it.

    Parameters
    ----------
    balance : Balance
        The mass balance.
    cations, acids : mapping of str to (n,) float
        Ions of the ash. [mol]
    temperature : float
        Temperature of use. [K]

    Returns
    -------
    whole, salt_alone : (n,) float
        Conductivity with all ions, and with those of salt alone. [S/m]
    """
    volume = np.maximum(balance.liquid_volume, _TINY)
    moles = {each: balance.dissolved[each] / _molar_mass(each) for each in ("salt", *_ACIDS)}
    surplus = dict(cations)
    for metal, component in (("potassium", "bitartrate"), ("sodium", "bicarbonate")):
        surplus[metal] = surplus.get(metal, 0.0) + moles[component]
    totals = dict(acids)
    for component, acid in _ACIDS.items():
        totals[acid] = totals.get(acid, 0.0) + moles[component]
    found = dissociated(
        {acid: each / volume for acid, each in totals.items() if np.any(np.asarray(each) > 0)},
        np.asarray(sum(surplus.values())) / volume,
    )
    salt = moles["salt"] / volume
    charges = {**found.charges, "chloride": salt}
    for metal, each in surplus.items():
        charges[metal] = each / volume
    charges["sodium"] = charges["sodium"] + salt
    alone = mixture_conductivity({"sodium": salt, "chloride": salt}, temperature)
    return mixture_conductivity(charges, temperature), alone


def slowed(balance: Balance, exponent: Array, temperature: float) -> Array:
    """Give the share of their mobility that ions keep in the dough's syrup. [1]"""
    water = np.maximum(balance.liquid_water, _TINY)
    sugar, glycerol = balance.dissolved["sucrose"], balance.dissolved["glycerol"]
    ratio = liquid_viscosity_ratio(sugar / (sugar + water), glycerol / (glycerol + water), temperature)
    return mobility_left(ratio, exponent)


def _molar_mass(component: str) -> float:
    return handbook().value("substances", component, "molar_mass").mean
