"""Values, their intervals, and formulas on them."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from lumped.errors import InputError
from lumped.quantities import Provenance, Status, Value, combined, draws_of, parse_quantity, rounded_text

PUBLISHED = Provenance(status=Status.PUBLISHED, sources=("table",))
REMEMBERED = Provenance(status=Status.FROM_MEMORY)


def test_the_product_of_lognormal_values_is_lognormal_with_added_variances():
    a = Value(mean=2.0, low=1.0, high=4.0, unit="", spread="lognormal")
    b = Value(mean=3.0, low=1.0, high=9.0, unit="", spread="lognormal")
    product = combined(lambda a, b: a * b, {"a": a, "b": b}, unit="")
    width = math.exp(math.hypot(math.log(2), math.log(3)))  # exact: log-widths add in quadrature
    assert product.mean == pytest.approx(6.0, rel=0.02)  # 4096 draws
    assert product.high == pytest.approx(6.0 * width, rel=0.05)
    assert product.low == pytest.approx(6.0 / width, rel=0.05)


def test_a_uniform_value_is_drawn_evenly():
    value = Value(mean=2.25, low=1.5, high=3.0, unit="", spread="uniform")
    draws = draws_of(value, (np.arange(1000) + 0.5) / 1000)
    assert draws.min() == pytest.approx(1.5, abs=1e-3)
    assert np.mean(draws < 1.875) == pytest.approx(0.25, abs=1e-3)


def test_a_result_never_changes_from_run_to_run():
    a = Value(mean=2.0, low=1.0, high=4.0, unit="", spread="lognormal")
    assert combined(lambda x: x**2, {"x": a}, unit="") == combined(lambda x: x**2, {"x": a}, unit="")


def test_combining_keeps_the_weakest_status_and_all_sources():
    a = Value.exact(1.0, "V", PUBLISHED)
    b = Value.exact(2.0, "V", REMEMBERED)
    total = combined(lambda a, b: a + b, {"a": a, "b": b}, unit="V")
    assert (total.mean, total.provenance.status, total.provenance.sources) == (3.0, Status.FROM_MEMORY, ("table",))


def test_published_figures_give_a_computed_one():
    assert Provenance.of([PUBLISHED]).status is Status.COMPUTED


@given(st.floats(1e-6, 1e6), st.floats(1.0, 10.0), st.floats(1.0, 10.0))
def test_draws_keep_the_median_and_the_ends(mean: float, below: float, above: float):
    value = Value(mean=mean, low=mean / below, high=mean * above, unit="", spread="lognormal")
    low, middle, high = draws_of(value, np.array([0.025, 0.5, 0.975]))
    assert (low, middle, high) == (
        pytest.approx(value.low, rel=1e-9), pytest.approx(mean, rel=1e-9), pytest.approx(value.high, rel=1e-9),
    )  # fmt: skip


@pytest.mark.parametrize(("low", "high"), [(3.0, 4.0), (1.0, 1.5)])
def test_an_interval_encloses_its_mean(low: float, high: float):
    with pytest.raises(ValueError, match="does not enclose"):
        Value(mean=2.0, low=low, high=high, unit="")


@pytest.mark.parametrize("text", ["", "six cm", "6", "6 kg", "nan mm", "1e5"])
def test_what_is_no_length_is_refused(text: str):
    with pytest.raises(InputError):
        parse_quantity(text, "length")


@pytest.mark.parametrize(
    ("kind", "example", "units"),
    [("length", "6 cm", "mm, cm, m, in"), ("mass", "250 g", "g, kg, mg"), ("volume", "250 mL", "mL, L"),
     ("temperature", "20 °C", "°C, °F"), ("time", "20 min", "s, min, h, d")],
)  # fmt: skip
def test_what_is_no_amount_is_answered_with_units_of_a_kitchen(kind: str, example: str, units: str):
    with pytest.raises(InputError, match=f"such as “{example}”"):
        parse_quantity("6", kind)
    with pytest.raises(InputError, match=f"Write it in one of: {units}\\.$"):
        parse_quantity("6 furlongs", kind)
    for each in units.split(", "):
        assert parse_quantity(f"6 {each}", kind) > 0
    assert parse_quantity(example, kind) > 0


@given(st.floats(1e-4, 1e6))
def test_rounded_text_stays_within_half_a_unit_of_its_last_digit_and_shows_at_most_three(number: float):
    text = rounded_text(number).replace(",", "")
    assert float(text) == pytest.approx(number, rel=0.0501)  # two digits at the least: half a unit of 10 is 5 %
    digits = text.replace(".", "").lstrip("0")
    assert len(digits.rstrip("0") if "." not in text else digits) <= 3
