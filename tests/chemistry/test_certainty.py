import numpy as np
import pytest

from lumped.chemistry import Brine, mixture_width, reach
from lumped.quantities import Status

T20 = 293.15


def both(ion, amount, anion="chloride"):
    return {ion: amount, anion: amount}


@pytest.mark.parametrize(("charges", "kelvins", "sentence"), [
    (both("sodium", 1000.0), 278.15, "At 5 °C the conductivity is extrapolated: the tables begin at 10 °C"),
    (both("sodium", 1000.0), 333.15, "At 60 °C the conductivity is extrapolated: the tables end at 35 °C"),
    (both("potassium", 500.0), 328.15, "the tables end at 50 °C"),
    (both("potassium", 2000.0), T20, "Potassium chloride this strong is extrapolated"),
    (both("potassium", 6000.0), T20, "stronger than tables go for salts that carry 100 %"),
    (both("sodium", 100.0, "acetate"), T20, "No table says how the ions that carry 100 % of the current"),
])  # fmt: skip
def test_what_lies_beyond_the_tables_is_said(charges, kelvins, sentence):
    found = reach(charges, kelvins)
    assert found.is_extrapolated
    assert any(sentence in words for words in found.words())
    assert all("extrapolated" in words for words in found.words())


@pytest.mark.parametrize(("charges", "kelvins"), [
    (both("sodium", 5000.0), T20), (both("sodium", 100.0), 303.15), (both("potassium", 900.0), 278.15),
    ({"sodium": 470.0, "magnesium": 105.0, "chloride": 575.0}, T20),
])  # fmt: skip
def test_inside_the_tables_nothing_is_said(charges, kelvins):
    found = reach(charges, kelvins)
    assert not found.is_extrapolated or found.words() == ()
    assert found.potash == found.strong == 0


def test_warm_words_can_be_left_to_others():
    assert reach(both("sodium", 100.0), 333.15).words(warm=False) == ()


@pytest.mark.parametrize(("inside", "beyond"), [
    ((both("potassium", 900.0), T20), (both("potassium", 1500.0), T20)),
    ((both("potassium", 100.0), 318.15), (both("potassium", 100.0), 333.15)),
    ((both("sodium", 100.0), 283.15), (both("sodium", 100.0), 273.15)),
    ((both("sodium", 100.0), 308.15), (both("sodium", 100.0), 333.15)),
    ((both("sodium", 5000.0), T20), (both("sodium", 7000.0), T20)),
    ((both("sodium", 100.0), T20), (both("sodium", 100.0, "acetate"), T20)),
    ((both("sodium", 900.0), T20), ({"sodium": 450.0, "potassium": 450.0, "chloride": 900.0}, T20)),
    ((both("sodium", 1000.0), T20), ({"sodium": 500.0, "magnesium": 500.0, "chloride": 1000.0}, T20)),
])  # fmt: skip
def test_the_interval_widens_beyond_the_tables(inside, beyond):
    assert float(mixture_width(*beyond)) > 1.4 * float(mixture_width(*inside))


def test_a_liquid_is_as_sure_as_the_weakest_that_carries_in_it():
    salt = Brine(charges=both("sodium", 100.0)).conductivity().provenance
    assert salt.status is Status.COMPUTED
    assert set(salt.sources) == {"crc-conductivity", "crc-equivalent", "crc-ions"}
    sour = Brine(charges={"sodium": 100.0, "chloride": 60.0, "bitartrate": 40.0}).conductivity().provenance
    assert sour.status is Status.FROM_MEMORY
    traces = Brine(charges={"sodium": 100.0, "chloride": 99.99, "bitartrate": 0.01}).conductivity().provenance
    assert traces.status is Status.COMPUTED
    strong = Brine(charges=both("potassium", 2000.0)).conductivity().provenance
    assert strong.status is Status.FROM_MEMORY
    assert "extrapolated" in strong.note


def test_the_width_is_one_number_an_entry():
    assert mixture_width({"sodium": np.ones(7), "chloride": np.ones(7)}, T20).shape == (7,)


def test_ions_that_no_table_pairs_are_less_sure_for_each_kelvin():
    """A thousandth a kelvin more than salt water, whose warming a table knows."""
    paired, alone = both("sodium", 100.0), both("sodium", 100.0, "acetate")
    warm, cold = (np.array([mixture_width(each, kelvins) for each in (paired, alone)]) for kelvins in (308.15, T20))
    assert (warm - cold)[1] - (warm - cold)[0] == pytest.approx(0.015, rel=0.01)  # and water expands
