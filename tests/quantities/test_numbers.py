"""Numbers as people write them: nothing is guessed, nothing takes long."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from lumped.errors import InputError, LumpedError, RecipeError
from lumped.pantry.amounts import read_amount
from lumped.quantities import parse_quantity, read_number


@given(st.decimals(-9999, 9999, places=2, allow_nan=False))
def test_point_and_comma_say_the_same(number):
    assert read_number(str(number)) == read_number(str(number).replace(".", ",")) == float(number)


@pytest.mark.parametrize(
    "text", ["", "four", "nan", "inf", "-inf", "1_000", "0x10", "1e999", "1.2.3", "1,2,3", "1 2", "9" * 50]
)
def test_what_is_no_finite_number_is_refused(text):
    with pytest.raises(InputError, match=re.escape(f"“{text[:40]}” is no number")):
        read_number(text)


def test_a_comma_that_may_part_thousands_is_not_guessed_at():
    for read in (read_number, lambda text: parse_quantity(f"{text} g", "mass"), lambda text: read_amount(f"{text} g")):
        with pytest.raises(InputError, match=r"“1,250” can be read in two ways. Write 1.250 or 1250"):
            read("1,250")
    assert (parse_quantity("0,125 kg", "mass"), read_amount("1,25 cups").low) == (0.125, 1.25)


@pytest.mark.parametrize(
    "text", ["1" + " " * 60 + "1", "1" + " " * 9000 + "1", "1" * 9000, " " * 9000 + "mm", "1e99999999 g"]
)
def test_long_and_large_amounts_are_refused_at_once(text):
    # a thousand spaces once took three seconds, nine thousand would have taken half an hour
    for read, kind in ((lambda text: parse_quantity(text, "mass"), InputError), (read_amount, RecipeError)):
        with pytest.raises(kind):
            read(text)


def test_a_sentence_holds_any_length_of_what_somebody_wrote():
    assert str(LumpedError("number-unreadable", text="x" * 5000)).startswith("“xxx")
