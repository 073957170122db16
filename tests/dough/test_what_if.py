"""One thing different, and what the resistivity does; hand estimates from first principles, none measured."""

import pytest
from tests.bowls import CONDUCTING, INSULATING, recipe_of

from lumped.dough.kneading import kneading
from lumped.dough.what_if import ratio, what_if

SUGAR = recipe_of(INSULATING, "insulating", "not cooked")
SALT = recipe_of({**CONDUCTING, "table-salt": 73})


def factors(recipe):
    return {each.key: each.factor for each in what_if(recipe)}


def test_a_pinch_of_salt_ruins_an_insulating_dough_more_than_anything_but_heat():
    found = what_if(SUGAR)
    assert {each.key for each in found[:3]} <= {"gram", "pinch", "hot", "no-sugar"}
    assert 1 / factors(SUGAR)["pinch"].mean == pytest.approx(2.5, rel=0.25)  # hand estimate 2.5
    assert 1 / factors(SUGAR)["gram"].mean == pytest.approx(5, rel=0.25)  # hand estimate 5


def test_sugar_is_what_makes_it_insulate():
    assert 1 / factors(SUGAR)["no-sugar"].mean > 4


def test_starch_insulates_better_than_flour():
    assert 4 < factors(SUGAR)["starch"].mean < 15  # hand estimate 4; starch brings less water of its own, too


def test_half_the_salt_costs_a_salt_dough_little_and_twice_the_salt_makes_it_worse():
    found = factors(SALT)
    assert 1.1 < found["half-salt"].mean < 1.6
    assert found["double-salt"].mean > 1.0


def test_a_ratio_of_a_dough_to_itself_is_one_however_unsure_it_is():
    same = ratio(kneading(SALT), kneading(SALT))
    assert (same.low, same.mean, same.high) == (1.0, 1.0, 1.0)


def test_the_ratio_of_sugar_dough_to_salt_dough_is_thousands():
    """“Many thousands of times less” is common practice of the trade; the physics says 1,000 to 40,000."""
    found = ratio(kneading(SUGAR), kneading(SALT))
    assert 2000 < found.mean < 10000  # hand estimate 2,000 to 10,000
    assert found.low > 500
