"""Conductivity of weak acids in water at 20 °C: it has a maximum.

Source: CRC Handbook of Chemistry and Physics, table “Electrical conductivity of aqueous solutions” (20 °C), mS/cm at
mass per cent of acid. pH of saturated cream of tartar: The Merck Index.
"""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from lumped.chemistry import dissociated
from lumped.chemistry.sours import sour_conductivity

SHARES = np.array([1, 2, 5, 10, 15, 20, 25, 30, 40, 50]) / 100
ACETIC = np.array([0.6, 0.8, 1.2, 1.5, 1.7, 1.7, 1.6, 1.4, 1.1, 0.8])
CITRIC = np.array([2.1, 3.0, 4.7, 6.2, 7.0, 7.2, 7.1])


def test_acetic_acid_is_met_within_six_per_cent():
    np.testing.assert_allclose(10 * sour_conductivity("acetic", SHARES), ACETIC, rtol=0.06)  # printed with two digits


def test_citric_acid_is_met_within_a_quarter():
    """Its first hydrogen alone does not explain the strong liquids: ours read up to 23 % low."""
    np.testing.assert_allclose(10 * sour_conductivity("citric", SHARES[:7]), CITRIC, rtol=0.25)


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
        ({"carbonic": 100.0}, 100.0, 8.3, 0.1),  # baking soda; from memory
    ],
)
def test_the_ph_of_known_liquids(acids, surplus, ph, within):
    assert float(dissociated(acids, surplus).ph) == pytest.approx(ph, abs=within)


@given(st.floats(0.01, 2000), st.floats(0.01, 2000), st.floats(0.01, 500), st.floats(0, 1))
def test_ph_is_that_of_a_root_finder_on_the_balance(acetic, citric, phosphoric, share):
    """scipy's `brentq` on the charge of the liquid as our ions give it back."""
    surplus = share * (acetic + 3 * citric)

    def charge(ph):
        constants = {"acetic": [4.756], "citric": [3.13, 4.76, 6.40], "phosphoric": [2.15, 7.20]}
        total = 1e3 * 10**-ph - 1e3 * 10 ** (ph - 14) + surplus
        for (acid, pk), amount in zip(constants.items(), (acetic, citric, phosphoric), strict=True):
            shift = 0.0121 * (1e-3 * amount) ** 2 if acid == "acetic" else 0.0
            terms = [10 ** (k * ph - sum(pk[:k]) - shift * (k > 0)) for k in range(len(pk) + 1)]
            total -= amount * sum(k * term for k, term in enumerate(terms)) / sum(terms)
        return total

    found = dissociated({"acetic": acetic, "citric": citric, "phosphoric": phosphoric}, surplus)
    assert float(found.ph) == pytest.approx(brentq(charge, -1, 15, xtol=1e-12), abs=1e-7)
