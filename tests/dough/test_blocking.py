"""“Many thousands of times less”: where the trade's word holds, where it does not, and what moves it."""

import pytest
from tests.bowls import CONDUCTING, INSULATING, recipe_of

from lumped.dough.blocking import blocking_of, usual_neighbour
from lumped.dough.kneading import kneading
from lumped.dough.what_if import ratio
from lumped.pantry import pantry
from lumped.quantities import Status


def against(grams, kind="insulating", cooked="not cooked"):
    return blocking_of(kneading(recipe_of(grams, kind, cooked)), pantry())


def test_a_stiff_syrup_dough_bears_the_trades_word_out():
    found = against(INSULATING)
    assert found.trade == "holds"
    assert found.thousands.provenance.status is Status.COMMON_PRACTICE
    assert "(common practice), holds" in found.words[0]


def test_without_sugar_the_physics_says_less_and_what_would_raise_it():
    found = against({"plain-flour": 150, "distilled-water": 70, "vegetable-oil": 40})
    assert found.ratio.high < 2000
    assert found.trade == "less"
    assert "the physics says less" in found.words[0]
    assert "cornstarch instead of the flour" in found.words[1]
    assert "one gram of salt gets in" in found.words[2]


def test_more_water_brings_it_down_to_hundreds_or_a_few_thousand():
    assert against({**INSULATING, "distilled-water": 120}).trade == "less"


def test_the_ratio_is_that_of_the_two_doughs_draw_by_draw():
    done = kneading(recipe_of(INSULATING, "insulating", "not cooked"))
    expected = ratio(done, kneading(usual_neighbour()))
    assert against(INSULATING).ratio.mean == pytest.approx(expected.mean)


def test_a_conducting_dough_is_not_asked():
    assert against({**CONDUCTING, "table-salt": 73}, "conducting", "pot") is None
