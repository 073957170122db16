from pathlib import Path

import pandas as pd
import pytest

import lumped
from lumped.dough.properties import LUMP
from lumped.errors import InputError, RecipeError

SALT = Path(__file__).parents[2] / "demo/recipes/ropewalk-salt.toml"
RECIPES = pd.DataFrame(
    {"plain-flour": [125, 125, 150], "tap water": [237, 237, 70], "table-salt": [18.0, 73.0, None]},
    index=["little", "much", "none"],
)


def test_a_frame_of_recipes_comes_back_as_a_frame_of_doughs():
    found = lumped.doughs(RECIPES)
    assert list(found.index) == ["little", "much", "none"]
    assert found.loc["none", "resistivity_ohm_m"] > 10 * found.loc["little", "resistivity_ohm_m"]
    salted = 0.393 * 73 / (125 + 237 + 73)  # sodium is 39.3 % of salt; the pot takes some water away, flour brings none
    assert salted < found.loc["much", "sodium_in_lump_kg"] / LUMP < 1.25 * salted


def test_with_draws_there_are_intervals():
    found = lumped.doughs(RECIPES, draws=128, region="europe")
    for name in ("resistivity_ohm_m", "water_activity", "cost_per_kg"):
        assert (found[f"{name}_low"] <= found[name]).all()
        assert (found[name] <= found[f"{name}_high"]).all()


@pytest.mark.parametrize(
    ("given", "says"),
    [({"dough": "crumbly"}, "dough is “crumbly”. It is one of: conducting, insulating"),
     ({"cooked": "fried"}, "cooked is “fried”. It is one of: pot, kettle"), ({"draws": -1}, "-1 draws can’t be")],
)  # fmt: skip
def test_a_way_that_nobody_knows_is_refused(given, says):
    """Any word passed for a kind of dough; for a way it named the handbook's table."""
    with pytest.raises(InputError, match=says):
        lumped.doughs(RECIPES, **given)


def test_a_frame_that_cannot_be_understood_is_refused_in_words():
    with pytest.raises(RecipeError, match=r"plane-flour"):
        lumped.doughs(pd.DataFrame({"plane-flour": [1.0]}))
    with pytest.raises(RecipeError, match=r"Recipe no. 2 holds “a cup” of plain-flour, which is no number"):
        lumped.doughs(pd.DataFrame({"plain-flour": [1.0, "a cup"]}, index=["b", "b"]))
    with pytest.raises(InputError, match=r"There is no region"):
        lumped.doughs(RECIPES, region="atlantis")


def test_the_steps_of_a_recipe_have_status_and_sources():
    found = lumped.steps(SALT)
    assert found.loc["resistivity", "low"] < found.loc["resistivity", "mean"] < found.loc["resistivity", "high"]
    assert set(found["status"]) <= {
        "measured",
        "published",
        "from a label",
        "computed",
        "common practice",
        "from memory",
        "invented",
    }


def test_every_ingredient_is_a_row_that_sums_to_one():
    table = lumped.ingredients()
    assert len(table) > 60
    assert (table.sum(axis=1) - 1).abs().max() < 1e-9
