"""Recipes side by side: what both leave open counts once."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.bowls import CONDUCTING, INSULATING, recipe_of
from tests.till import PRICES

from lumped.dough import Portion
from lumped.dough.comparing import compared
from lumped.dough.kneading import knead, kneading
from lumped.dough.naming import told_apart
from lumped.errors import RecipeError
from lumped.quantities import Provenance, Status, Value

SALTED, LESS = (recipe_of({**CONDUCTING, "table-salt": grams}) for grams in (73, 36))
SWEET = recipe_of(INSULATING, "insulating", "not cooked")


@pytest.fixture(scope="module")
def three():
    return compared([SALTED, LESS, SWEET])


def test_each_side_is_what_it_is_alone(three):
    for side, recipe in zip(three.sides, (SALTED, LESS, SWEET), strict=True):
        alone = knead(recipe)
        assert side.properties["resistivity"].mean == pytest.approx(alone.resistivity.mean, rel=1e-12)
        assert side.properties["ph"].mean == pytest.approx(alone.reason("ph").value.mean, rel=1e-9)


def test_the_ratio_is_known_better_than_the_two_resistivities(three):
    ratio, own = three.sides[1].ratio, three.sides[1].properties["resistivity"]
    draws = kneading(LESS).chain.resistivity / kneading(SALTED).chain.resistivity
    assert ratio.mean == pytest.approx(float(np.median(draws)), rel=1e-12)
    assert ratio.high / ratio.low < 0.5 * own.high / own.low
    assert (three.sides[0].ratio.low, three.sides[0].ratio.high) == (1.0, 1.0)


def test_an_ingredient_that_only_one_has_is_in_the_list(three):
    assert (*three.ingredients,)[:3] == ("plain-flour", "tap-water", "vegetable-oil")
    assert {"granulated-sugar", "table-salt"} <= set(three.ingredients)
    assert "granulated-sugar" not in three.sides[0].amounts


def test_allergens_stand_beside_each_other(three):
    assert all("wheat" in side.allergens for side in three.sides)


def test_recipes_of_one_title_are_told_apart(three):
    assert [side.name for side in three.sides] == ["dough (1)", "dough (2)", "dough (3)"]


@given(st.lists(st.sampled_from(["a", "b", "a (1)", "a (2)", "a (2) (2)"]), max_size=6))
def test_no_two_names_are_the_same_whatever_they_were(names):
    told = told_apart(names)
    assert len(set(told)) == len(names)
    assert all(each.startswith(name) for each, name in zip(told, names, strict=True))
    assert all(name in told for name in names if names.count(name) == 1)


def test_an_amount_is_as_sure_as_its_weakest_portion():
    measured, guessed = (Provenance(status=each) for each in (Status.MEASURED, Status.FROM_MEMORY))
    portions = [Portion(ingredient="table-salt", written="", mass=Value.exact(0.03, "kg", each))
                for each in (measured, guessed)]  # fmt: skip
    twice = replace(SALTED, portions=(*SALTED.without("table-salt").portions, *portions))
    assert compared([twice, LESS]).sides[0].amounts["table-salt"].provenance.status is Status.FROM_MEMORY


def test_cost_needs_all_prices():
    found = compared([SALTED, LESS], prices=PRICES, money="coins")
    assert found.money == "coins"
    assert "cost" in {each.key for each in found.properties}
    assert compared([SALTED, SWEET], prices=PRICES, money="coins").money == ""


def test_a_frame_holds_what_json_holds(three):
    frame = three.frame()
    told = three.as_dict()["sides"][1]["properties"]["resistivity"]
    row = frame[(frame["name"] == "dough (2)") & (frame["group"] == "property") & (frame["key"] == "resistivity")]
    assert row[["mean", "low", "high"]].to_numpy().tolist() == [[told["mean"], told["low"], told["high"]]]
    assert set(frame["group"]) == {"amount", "property", "ratio"}


def test_one_recipe_alone_is_refused():
    with pytest.raises(RecipeError, match=r"Side by side needs two recipes at least, and 1 came"):
        compared([SALTED])


def test_a_mix_without_water_is_told_beside_others_as_it_is_told_alone():
    """Pictures end at 10 million Ω·m; words don't."""
    crumbs = recipe_of({"plain-flour": 200, "table-salt": 100, "vegetable-oil": 60}, cooked="not cooked")
    side, alone = compared([crumbs, SALTED]).sides[0], knead(crumbs).resistivity
    told = side.properties["resistivity"]
    assert (told.low, told.mean, told.high) == pytest.approx((alone.low, alone.mean, alone.high), rel=1e-9)
    assert told.high > 1e7
    assert side.properties["hydration"].mean == 0.0
