"""A table of recipes says of each what the recipe alone says."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.bowls import recipe_of

from lumped.dough import Portion
from lumped.dough.kneading import knead_middle, kneading
from lumped.dough.many import knead_many
from lumped.errors import RecipeError
from lumped.pantry.amounts import weighed

KEYS = ["plain-flour", "tap-water", "table-salt", "vegetable-oil"]
MASSES = st.lists(st.tuples(*(st.floats(1, 500),) * 4), min_size=1, max_size=6)


@settings(max_examples=30)
@given(MASSES)
def test_each_recipe_of_a_table_is_the_recipe_alone(rows):
    found = knead_many(KEYS, np.array(rows).T / 1e3)
    alone = [knead_middle(recipe_of(dict(zip(KEYS, row, strict=True)))) for row in rows]
    assert found["resistivity"] == pytest.approx([float(each.resistivity[0]) for each in alone], rel=1e-9)
    assert found["ph"] == pytest.approx(
        [float(each.ph[0]) for each in alone], rel=2e-3
    )  # a slip is told from the mean of the draws


def test_intervals_of_a_table_are_those_of_the_recipe():
    row = (125, 237, 73, 13.6)
    found = knead_many(KEYS, np.array([row]).T / 1e3, count=512)
    portions = tuple(
        Portion(ingredient=key, written="", mass=weighed(grams / 1e3)) for key, grams in zip(KEYS, row, strict=True)
    )
    alone = kneading(replace(recipe_of({}), portions=portions)).chain.resistivity  # the same draws, and more of them
    ends = np.quantile(alone[:512], [0.025, 0.5, 0.975])
    assert found["resistivity"][:, 0] == pytest.approx(ends, rel=2e-3)  # slips are told from the mean of the draws


def test_an_ingredient_that_no_recipe_holds_changes_nothing():
    table = np.array([[0.125], [0.237], [0.073], [0.0]])
    assert knead_many(KEYS, table, count=64)["resistivity"] == pytest.approx(
        knead_many(KEYS[:3], table[:3], count=64)["resistivity"], rel=0.02
    )


def test_a_long_table_goes_through_in_blocks_and_comes_out_in_order():
    salt = np.linspace(0.001, 0.07, 200)
    table = np.stack([np.full(200, 0.125), np.full(200, 0.237), salt])
    found = knead_many(KEYS[:3], table, count=128)
    assert found["resistivity"].shape == (3, 200)
    assert np.all(np.diff(found["resistivity"][1, :150]) < 0)


@pytest.mark.parametrize(
    ("keys", "table", "sentence"),
    [
        (KEYS[:2], [[1.0, 0.1], [0.2, -0.1]], r"Recipe no. 2 holds -100 g of tap-water"),
        (KEYS[:2], [[1.0, np.nan], [0.2, 0.1]], r"Recipe no. 2 holds nan g of plain-flour"),
        (KEYS[:2], [[1.0, 0.0], [0.2, 0.0]], r"Recipe no. 2 holds nothing"),
        (KEYS[:2], [[], []], r"There is no recipe in the table"),
        (["tap-water", "tap-water"], [[1.0], [1.0]], r"each of them once: 2 are named"),
        (KEYS[:2], [1.0, 2.0], r"but the table is 2\."),
    ],
)
def test_a_table_that_cannot_be_kneaded_is_refused(keys, table, sentence):
    with pytest.raises(RecipeError, match=sentence):
        knead_many(keys, table)
