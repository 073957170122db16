"""Numbers as people read them: no exponents, money in coins, kilograms from one on."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from lumped.pantry import region, regions
from lumped.quantities import COINS, Value, figure_text, short_text, weight_text


def test_the_coins_of_every_region_are_known():
    assert {region(each).currency for each in regions()} <= set(COINS)


@given(st.floats(0.01, 1e6))
def test_money_with_cents_shows_two_decimals_or_none(amount):
    assert re.fullmatch(r"\d{1,2}\.\d\d|[\d,]{3,}", figure_text(amount, "EUR"))


@given(st.floats(1.0, 1e7))
def test_yen_have_no_decimals(amount):
    assert "." not in figure_text(amount, "JPY/kg")


def test_what_costs_less_than_a_coin_is_not_free():
    assert figure_text(0.0042, "USD") == "0.0042"
    assert figure_text(0.3, "JPY") == "0.3"


def test_both_ends_of_a_price_are_money_too():
    price = Value(mean=0.4, low=0.25, high=16.0, unit="EUR/kg")
    assert price.text() == "0.40 EUR/kg (0.25 to 16.00)"


@given(st.floats(1e-6, 1e9), st.integers(1, 4))
def test_no_number_is_read_with_an_exponent(number, digits):
    written = short_text(number, digits)
    assert "e" not in written
    assert float(written.replace(",", "")) == pytest.approx(number, rel=0.51 * 10 ** (1 - digits))  # half a digit


@given(st.floats(0.01, 1e3))
def test_weights_from_a_kilogram_on_are_in_kilograms(mass):
    number, unit = weight_text(mass).split()
    assert unit == ("kg" if mass >= 0.9995 else "g")
    assert float(number.replace(",", "")) < 1000 or mass > 999
