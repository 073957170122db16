from pathlib import Path

import pytest
import tomli_w
from hypothesis import given
from hypothesis import strategies as st
from tests.bowls import recipe_of

from lumped.dough import read_recipe
from lumped.dough.writing import recipe_document

DEMO = Path(__file__).parents[2] / "demo"


def read_again(recipe, folder):
    path = folder / "again.toml"
    path.write_text(tomli_w.dumps(recipe_document(recipe)), encoding="utf-8")
    return read_recipe(path)


@pytest.mark.parametrize("name", ["ropewalk-salt", "ropewalk-sugar"])
def test_a_recipe_that_is_written_is_read_as_the_same(name, tmp_path):
    recipe = read_recipe(DEMO / "recipes" / f"{name}.toml")
    assert read_again(recipe, tmp_path) == recipe


@given(factor=st.floats(0.1, 20))
def test_a_scaled_recipe_keeps_its_masses_when_written(factor, tmp_path_factory):
    recipe = recipe_of({"plain-flour": 125, "tap-water": 237, "table-salt": 73}).scaled(factor)
    again = read_again(recipe, tmp_path_factory.mktemp("scaled"))
    for key in recipe.ingredients:
        assert again.mass_of(key) == pytest.approx(recipe.mass_of(key), rel=5e-4)  # four digits are written
