import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as some

from lumped.chemistry import acidity, dissociated
from lumped.chemistry.acidity import Buffer, ph_width, shielding


@given(some.floats(0.01, 1000), some.floats(0.01, 1000), some.floats(-50, 200))
def test_an_acid_liquid_is_neutral(acetic, citric, surplus):
    found = dissociated({"acetic": acetic, "citric": citric}, surplus)
    anions = sum(amount for ion, amount in found.charges.items() if ion != "hydrogen")
    assert found.charges["hydrogen"] + surplus == pytest.approx(anions, rel=1e-6, abs=1e-6)


def test_pure_water_has_ph_seven():
    assert float(dissociated({}, np.zeros(1)).ph[0]) == pytest.approx(7, abs=1e-3)  # its own ions shield a little


def test_a_half_neutralised_acid_shows_its_constant_less_what_its_ions_shield():
    found = dissociated({"acetic": 100.0}, 50.0)
    assert float(found.ph) == pytest.approx(4.756 - float(shielding(found.strength)) + 0.0535 * 0.1, abs=2e-3)


def test_more_strong_salt_frees_more_hydrogen_and_lowers_ph_until_davies_ends():
    strength = np.array([0.0, 10.0, 100.0, 390.0, 5000.0])
    found = dissociated({"citric": 100.0}, 50.0, strength)
    assert np.all(np.diff(found.ph[:4]) < 0)
    assert found.ph[4] == pytest.approx(found.ph[3], abs=1e-3)
    assert np.all(np.diff(ph_width(found.strength)) >= 0)
    assert ph_width([0.0, 1100.0, 9000.0]) == pytest.approx([0.05, 0.17, 0.7])


def test_ionic_strength_counts_all_ions():
    found = dissociated({"phosphoric": 10.0}, 20.0, 10.0)  # as good as all HPO4 2-
    assert float(found.strength) == pytest.approx(10 + 0.5 * 4 * 10, rel=0.02)


@pytest.mark.parametrize("strong", [0.0, -5.0, 5.0])
@pytest.mark.parametrize("acid", [0.0, 20.0])
def test_a_buffered_liquid_settles_without_halving_and_is_neutral(monkeypatch, strong, acid):
    monkeypatch.setattr(acidity, "_halved", lambda liquid: pytest.fail("Newton's steps did not come to rest"))
    capacity = np.geomspace(1e-3, 1e5, 200)
    found = dissociated({"acetic": acid, "carbonic": 0.0}, strong, 1.0, Buffer(rest=6.0, capacity=capacity))
    anions = sum(amount for ion, amount in found.charges.items() if ion != "hydrogen")
    assert found.fixed == pytest.approx(capacity * (6.0 - found.ph))
    off = found.charges["hydrogen"] + strong + found.fixed - anions
    assert np.all(np.abs(off) <= 1e-9 * capacity + 1e-6)
