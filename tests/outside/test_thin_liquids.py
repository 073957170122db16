"""Thin liquids from freezing to 55 °C, against figures that made none of our curves.

Sources: limiting conductivities of ions, R. A. Robinson and R. H. Stokes, Electrolyte Solutions (1959), appendix 6.2
(from memory); temperature coefficients from conductivity standards: a meter's manual, section 11.2 (saturated table
salt), CRC Handbook p. 5-73 (potassium chloride, water with the carbon dioxide of the air); Henry's constant of carbon
dioxide and its share of the air in the years of that table from memory.
"""

import numpy as np
import pytest

from lumped.chemistry import brine_conductivity, dissociated, mixture_conductivity, mixture_width, salt_solubility
from lumped.chemistry.potash import potash_conductivity

T0 = 273.15
LIMITS = {  # S·cm²/mol at 0, 5, 15, 18, 25, 35, 45, 55 °C
    "sodium": (26.5, 30.3, 39.7, 42.8, 50.1, 61.5, 73.7, 86.9),
    "potassium": (40.7, 46.7, 59.6, 63.9, 73.5, 88.2, 103.5, 119.3),
    "hydrogen": (225, 250.1, 300.6, 315, 349.8, 397.0, 441.4, 483.1),
    "chloride": (41.0, 47.5, 61.4, 66.0, 76.35, 92.2, 108.9, 126.4),
}
CELSIUS = (0, 5, 15, 18, 25, 35, 45, 55)
THIN = 1e-3  # mol/m³: too few ions to brake each other


@pytest.mark.parametrize("cation", ["sodium", "potassium", "hydrogen"])
@pytest.mark.parametrize("place", range(len(CELSIUS)))
def test_ions_in_much_water_warm_as_the_book_says(cation, place):
    """1.0 % was seen of both salts, where our law of salt water is carried on beyond 35 °C; 3.4 % of acid at 55 °C."""
    kelvins, thin = CELSIUS[place] + T0, {cation: THIN, "chloride": THIN}
    found = 1e4 * float(mixture_conductivity(thin, kelvins)) / THIN
    wanted = LIMITS[cation][place] + LIMITS["chloride"][place]
    assert found == pytest.approx(wanted, rel=0.04 if cation == "hydrogen" else 0.012)
    assert abs(found / wanted - 1) < float(mixture_width(thin, kelvins))


def coefficient(cold, warm):
    """Rise over five kelvins, over the conductivity at 25 °C. [%/K]"""
    return 100 * (warm - cold) / 5 / warm


def test_saturated_salt_water_rises_by_two_per_cent_a_kelvin():
    cold, warm = (brine_conductivity(float(salt_solubility(t)), t).mean for t in (293.15, 298.15))
    assert coefficient(cold, warm) == pytest.approx(2.01, abs=0.02)  # 226.0 and 251.3 mS/cm


def test_thin_potassium_chloride_rises_by_1_92_per_cent_a_kelvin():
    cold, warm = (float(potash_conductivity(0.01, t)) for t in (293.15, 298.15))
    assert coefficient(cold, warm) == pytest.approx(1.920, abs=0.001)  # 1273.03 and 1408.23 µS/cm


def water_in_air(parts_in_a_million):
    """Distilled water that stood open at 25 °C: so much carbon dioxide unchanged, and what it gives. [S/m]"""
    free = 33.9 * parts_in_a_million * 1e-6  # mol/m³: Henry's constant is 0.0339 mol/(L bar)
    whole = free
    for _ in range(30):
        found = dissociated({"carbonic": whole})
        whole = free + float(found.charges["hydrogen-carbonate"])
    return float(mixture_conductivity(found.charges, 298.15)), float(found.ph)


def test_distilled_water_that_stood_in_the_air_conducts_a_microsiemens():
    conductivity, ph = water_in_air(355)
    assert 1e4 * conductivity == pytest.approx(
        1.10, rel=0.2
    )  # µS/cm, CRC; a laboratory's air holds more than outdoors'
    assert ph == pytest.approx(5.65, abs=0.1)  # of rain far from towns, from memory
    assert np.sqrt(4) == pytest.approx(water_in_air(4 * 355)[0] / conductivity, rel=0.01)  # a weak acid's root
