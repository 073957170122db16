"""The page on the liquid keeps step: what it says was seen is what is seen, against the figures of `tests/outside`."""

import re
from pathlib import Path

import numpy as np
import pytest
from tests.outside import test_conductivity_of_mixtures as mixtures
from tests.outside import test_demal_standards as demal
from tests.outside.test_brine import CRC_20, SATURATED
from tests.outside.test_solubility import SALT
from tests.outside.test_thin_liquids import CELSIUS, LIMITS, THIN
from tests.outside.test_vapour import PRESSURE
from tests.outside.test_water_activity import FREE, MOLAL, PYEQL, over
from tests.outside.test_weak_acids import ACETIC, CITRIC, SHARES

from lumped.chemistry import (
    brine_conductivity,
    dissociated,
    mixture_conductivity,
    salt_solubility,
    salt_water_conductivity,
)
from lumped.chemistry.activity import water_activity
from lumped.chemistry.braking import salts
from lumped.chemistry.density import brine_density
from lumped.chemistry.humidity import dew_point, wet_bulb
from lumped.chemistry.potash import potash_conductivity
from lumped.chemistry.solubility import solubility
from lumped.chemistry.sours import sour_conductivity
from lumped.chemistry.vapour import saturation_pressure
from lumped.chemistry.viscosity import brine_viscosity
from lumped.quantities.interpolation import Monotone

PAGE = (Path(__file__).parents[2] / "docs" / "liquid.md").read_text(encoding="utf-8")
T0, T20, T25 = 273.15, 293.15, 298.15
BUFFERS = [
    ({"tartaric": 34.1}, 34.1, 3.557), ({"citric": 49.6}, 49.6, 3.776), ({"phosphoric": 49.7}, 74.6, 6.865),
    ({"boric": 39.9}, 19.95, 9.180), ({"carbonic": 49.7}, 74.6, 10.012),
]  # fmt: skip
DAMP = [(20, 0.5, 13.783, 9.272), (25, 0.5, 17.889, 13.864), (30, 0.3, 17.972, 10.548)]


def off(found, printed):
    """The largest relative deviation. [%]"""
    return 100 * float(np.max(np.abs(np.asarray(found, float) / np.asarray(printed, float) - 1)))


def left_out(key):
    """The largest deviation of a node of a salt's curve that was left out of it. [%]"""
    x, y = salts()[key].number.x, salts()[key].number.y
    again = [Monotone(np.delete(x, k), np.delete(y, k))(x[k]) - y[k] for k in range(1, len(x) - 1)]
    return 100 * float(np.max(np.abs(np.expm1(again))))


def standards():
    return off([1e3 * potash_conductivity([0.01, 0.1, 1.0], t + T0) for t in mixtures.STANDARDS],
               list(mixtures.STANDARDS.values()))  # fmt: skip


def older_standards():
    ours = [[10 * float(potash_conductivity(demal.molality(d), t + T0)) for t in (20, 25, 35)] for d in demal.GRAMS]
    return off(ours, [demal.MILLISIEMENS[d] for d in demal.GRAMS])


def thin(key, cation):
    ours = 10 * mixture_conductivity({cation: mixtures.CHARGE, "chloride": mixtures.CHARGE}, T25)
    return off(ours, mixtures.DILUTE[key])


def thinnest(cation):
    """From 0 to 55 °C, in so much water that ions don't brake each other."""
    ours = [float(mixture_conductivity({cation: THIN, "chloride": THIN}, t + T0)) / THIN for t in CELSIUS]
    return off(ours, 1e-4 * (np.array(LIMITS[cation]) + np.array(LIMITS["chloride"])))


def sea():
    mole = {"sodium": 0.46906, "magnesium": 0.10564, "calcium": 0.02056, "potassium": 0.01021, "chloride": 0.54674,
            "sulphate": 0.05648}  # fmt: skip
    found = [
        float(mixture_conductivity({ion: each * rho for ion, each in mole.items()}, t + T0)) / 4.2914
        for t, rho in ((0, 1028.1), (10, 1027.0), (15, 1026.0), (25, 1023.3), (35, 1019.9))
    ]
    return off(found, [mixtures.salinity_ratio(t) for t in (0, 10, 15, 25, 35)])


def percent_of(table):
    return np.array(list(table)) / 100


SEEN = {
    # row of the page's table: what is seen, in the row's unit
    "potassium chloride, 33 standards from 0 to 50 °C": standards,
    "potassium chloride, 9 older standards (demal)": older_standards,
    "potassium chloride, a node left out": lambda: left_out("potassium-chloride"),
    "salt water at 20 °C": lambda: off(10 * salt_water_conductivity(percent_of(CRC_20), T20), list(CRC_20.values())),
    "salt water, a node left out": lambda: left_out("sodium-chloride"),
    "saturated salt water, 10 to 35 °C": lambda: off(
        [10 * brine_conductivity(float(salt_solubility(t + T0)), t + T0).mean for t in SATURATED],
        list(SATURATED.values()),
    ),
    "thin salt water at 25 °C": lambda: thin("sodium-chloride", "sodium"),
    "thin potassium chloride at 25 °C": lambda: thin("potassium-chloride", "potassium"),
    "thinnest salt water and potassium chloride, 0 to 55 °C": lambda: max(map(thinnest, ("sodium", "potassium"))),
    "thinnest hydrogen chloride, 0 to 55 °C": lambda: thinnest("hydrogen"),
    "sea water, six ions, 0 to 35 °C": sea,
    "acetic acid, 1 to 50 %": lambda: off(10 * sour_conductivity("acetic", SHARES), ACETIC),
    "citric acid, 1 to 25 %": lambda: off(10 * sour_conductivity("citric", SHARES[:7]), CITRIC),
    "pH of five standard buffers": lambda: max(abs(float(dissociated(a, s).ph) - ph) for a, s, ph in BUFFERS),
    "salt in saturated brine, 0 to 100 °C": lambda: off(
        [salt_solubility(t + T0) for t in SALT], percent_of(SALT.values())
    ),
    "water activity of salt water at 25 °C, osmotic coefficients": lambda: float(
        np.max(np.abs(water_activity({"sodium-chloride": MOLAL}, T25) - FREE))
    ),
    "the same, another program's Pitzer": lambda: float(
        np.max(np.abs(water_activity({"sodium-chloride": MOLAL}, T25) - PYEQL))
    ),
    "water activity over saturated salt, 0 to 60 °C": lambda: max(
        abs(float(over("sodium-chloride", 0.058443, t + T0)) - 0.6920 * np.exp(25 / (t + T0))) for t in range(0, 61, 10)
    ),
    "water activity over saturated potassium chloride, 0 to 40 °C": lambda: max(
        abs(float(over("potassium-chloride", 0.074551, t + T0)) - 0.4938 * np.exp(159 / (t + T0)))
        for t in range(0, 41, 10)
    ),
    "water activity over saturated magnesium chloride, 15 to 25 °C": lambda: max(
        abs(float(over("magnesium-chloride", 0.095211, t + T0)) - 0.2926 * np.exp(34 / (t + T0))) for t in (15, 20, 25)
    ),
    "density of salt water at 25 °C": lambda: off(brine_density([0.10, 0.20, 0.26], T25), [1068.910, 1145.596, 1193.786]),
    "viscosity of salt water at 20 °C": lambda: off(
        1e3 * brine_viscosity([0.10, 0.20, 0.26], T20), [1.1905, 1.5612, 1.9661]
    ),
    "cream of tartar, 25 and 100 °C": lambda: off(
        solubility("potassium-hydrogen-tartrate", [298.15, 373.15]), [1 / 162, 1 / 16]
    ),
    "pressure of vapour, 0 to 100 °C": lambda: off(
        [saturation_pressure(t + T0) for t in PRESSURE], list(PRESSURE.values())
    ),
    "wet bulb and dew point": lambda: max(
        abs(float(each(t + T0, h)) - T0 - wanted)
        for t, h, wet, dew in DAMP
        for each, wanted in ((wet_bulb, wet), (dew_point, dew))
    ),
}  # fmt: skip


def told(row):
    """What the page's table says was seen: its figure, and half of its last digit."""
    match = re.search(rf"^\| {re.escape(row)} \|.*\| ([\d.]+)( %| K)? \|$", PAGE, re.M)
    assert match, f"no row “{row}”"
    digits = len(match[1].partition(".")[2])
    return float(match[1]), 0.51 * 10.0**-digits


@pytest.mark.parametrize("row", SEEN)
def test_the_page_says_the_deviation_that_is_seen(row):
    figure, rounding = told(row)
    assert float(SEEN[row]()) == pytest.approx(figure, abs=rounding)


def test_every_deviation_on_the_page_is_computed_here():
    table = PAGE[PAGE.index("| what") :].partition("\n\n")[0].splitlines()[2:]
    assert [line.split(" | ")[0].removeprefix("| ") for line in table] == list(SEEN)
