"""Conductivity of weak acids in water at 20 °C: it has a maximum.

Source: CRC Handbook of Chemistry and Physics, table “Electrical conductivity of aqueous solutions” (20 °C), mS/cm at
mass per cent of acid. pH of saturated cream of tartar: The Merck Index. pH of standard buffers at 25 °C: the values of
the National Bureau of Standards (R. G. Bates), from memory. Davies' law by scipy's root finder.
"""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq

from lumped.chemistry import acidity, dissociated
from lumped.chemistry.sours import sour_conductivity

SHARES = np.array([1, 2, 5, 10, 15, 20, 25, 30, 40, 50]) / 100
ACETIC = np.array([0.6, 0.8, 1.2, 1.5, 1.7, 1.7, 1.6, 1.4, 1.1, 0.8])
CITRIC = np.array([2.1, 3.0, 4.7, 6.2, 7.0, 7.2, 7.1])


def test_acetic_acid_is_met_within_seven_per_cent():
    # printed with one digit at 2 %, with two above; 6.7 % at 2 % and 4.6 % elsewhere were seen
    np.testing.assert_allclose(10 * sour_conductivity("acetic", SHARES), ACETIC, rtol=0.07)


def test_citric_acid_is_met_within_two_and_a_half_per_cent():
    """Nothing is fitted to it: constants, Davies and viscosity. At 0.5 % the table's 1.2 is 19 % below ours."""
    np.testing.assert_allclose(10 * sour_conductivity("citric", SHARES[:7]), CITRIC, rtol=0.025)


@pytest.mark.parametrize(("acid", "low", "high"), [("acetic", 0.15, 0.20), ("citric", 0.15, 0.25)])
def test_the_maximum_is_where_the_table_has_it(acid, low, high):
    share = np.linspace(0.01, 0.35, 341)
    assert low <= share[np.argmax(sour_conductivity(acid, share))] <= high + 1e-9


def test_household_vinegar_conducts_sixty_times_less_than_salt_water_of_five_per_cent():
    assert 70.1 / (10 * float(sour_conductivity("acetic", 0.05))) == pytest.approx(58, rel=0.05)


@pytest.mark.parametrize(
    ("acids", "surplus", "ph", "within"),
    [
        ({"tartaric": 32.8}, 32.8, 3.5, 0.25),  # cream of tartar, saturated: 1 g in 162 mL; Merck, “about 3.5”
        ({"acetic": 833.0}, 0.0, 2.4, 0.1),  # vinegar of 5 %; from memory
        ({"citric": 100.0}, 0.0, 2.1, 0.1),  # 0.1 mol/L; from memory
        ({"carbonic": 100.0}, 100.0, 8.3, 0.2),  # baking soda; from memory; ours leaves its ion pairs out
    ],
)
def test_the_ph_of_known_liquids(acids, surplus, ph, within):
    assert float(dissociated(acids, surplus).ph) == pytest.approx(ph, abs=within)


@pytest.mark.parametrize(("acids", "surplus", "ph"), [
    ({"tartaric": 34.1}, 34.1, 3.557),  # potassium hydrogen tartrate, saturated at 25 °C
    ({"citric": 49.6}, 49.6, 3.776),  # potassium dihydrogen citrate, 0.05 mol/kg
    ({"phosphoric": 49.7}, 74.6, 6.865),  # both phosphates, 0.025 mol/kg each
    ({"boric": 39.9}, 19.95, 9.180),  # borax, 0.01 mol/kg
    ({"carbonic": 49.7}, 74.6, 10.012),  # both carbonates, 0.025 mol/kg each
])  # fmt: skip
def test_standard_buffers_read_what_they_are_standards_of(acids, surplus, ph):
    """Moles in a litre from molality by density; 0.016 at most was seen. Merck's “about 3.5” holds cream of tartar."""
    assert float(dissociated(acids, surplus).ph) == pytest.approx(ph, abs=0.02)


def test_acetic_acid_warms_less_than_salt():
    # 1.69 % a kelvin for 10 %: a meter's manual, section 11.3; constants are held, so only mobility warms
    low, high = (float(sour_conductivity("acetic", 0.10, each)) for each in (290.15, 292.15))
    assert 50 * np.log(high / low) == pytest.approx(1.69, abs=0.35)


CONSTANTS = {"acetic": [4.756], "citric": [3.13, 4.76, 6.40], "phosphoric": [2.15, 7.20]}


def charge_of(ph, shield, amounts, surplus):
    """Charge and ionic strength of a liquid, written here once more with plain loops."""
    hydrogen, hydroxide = 1e3 * 10 ** (shield - ph), 1e3 * 10 ** (ph - 14 + shield)
    charge, strength = hydrogen - hydroxide + surplus, (hydrogen + hydroxide + abs(surplus)) / 2
    for acid, amount in amounts.items():
        pk, molar = CONSTANTS[acid], 1e-3 * amount
        rise = molar * (0.0535 + 0.0070 * molar) if acid == "acetic" else 0.0
        terms = [10 ** (k * ph - sum(pk[:k]) - rise * (k > 0) + k * k * shield) for k in range(len(pk) + 1)]
        charge -= amount * sum(k * term for k, term in enumerate(terms)) / sum(terms)
        strength += amount * sum(k * k * term for k, term in enumerate(terms)) / sum(terms) / 2
    return charge, strength


@settings(deadline=None)
@given(st.floats(0.01, 2000), st.floats(0.01, 2000), st.floats(0.01, 500), st.floats(0, 1))
def test_ph_is_that_of_a_root_finder_on_the_balance(acetic, citric, phosphoric, share):
    """scipy's `brentq` on the charge of the liquid, with Davies' law at the ionic strength that we give back."""
    surplus, amounts = share * (acetic + 3 * citric), {"acetic": acetic, "citric": citric, "phosphoric": phosphoric}
    found = dissociated(amounts, surplus)
    held = min(1e-3 * float(found.strength), 0.394)
    shield = 0.509 * (held**0.5 / (1 + held**0.5) - 0.3 * held)
    ph = brentq(lambda each: charge_of(each, shield, amounts, surplus)[0], -1, 15, xtol=1e-12)
    assert float(found.ph) == pytest.approx(ph, abs=1e-6)
    assert float(found.strength) == pytest.approx(charge_of(ph, shield, amounts, surplus)[1], rel=1e-5)


def test_halving_finds_what_newton_s_steps_find(monkeypatch):
    amounts, surplus = {"citric": [30.0, 200.0], "tartaric": [5.0, 0.1]}, [20.0, -3.0]
    quick = dissociated(amounts, surplus)
    monkeypatch.setattr(acidity, "_STEPS", 0)
    slow = dissociated(amounts, surplus)
    np.testing.assert_allclose(slow.ph, quick.ph, atol=1e-6)


def test_many_liquids_at_once_are_what_each_is_alone():
    citric, surplus = np.geomspace(0.01, 2000, 40), np.linspace(-50, 200, 40)
    together = dissociated({"citric": citric}, surplus).ph
    alone = [float(dissociated({"citric": c}, s).ph) for c, s in zip(citric, surplus, strict=True)]
    np.testing.assert_allclose(together, alone, atol=1e-6)
