"""A recipe in the measures of a kitchen, as pages and commands use it."""

from pathlib import Path

import pytest

from lumped.app.measuring import measured_recipe
from lumped.app.named import named
from lumped.dough import knead


def test_a_recipe_of_which_nothing_is_added_by_feel_is_rounded_too(tmp_path):
    recipe = tmp_path / "plain.toml"
    amounts = {"plain-flour": 200, "tap-water": 120, "table-salt": 60}
    rows = "".join(f'[[ingredients]]\ningredient = "{key}"\namount_g = {each}\n' for key, each in amounts.items())
    recipe.write_text(f'kind = "recipe"\nschema = 1\ntitle = "Plain"\ndough = "conducting"\n{rows}')
    found = measured_recipe(named(str(recipe)), kitchen="metric")
    assert all(0 < each.mass.mean < 0.5 for each in found.rounded.portions)
    assert found.after["resistivity"] == pytest.approx(found.before["resistivity"], rel=0.1)


def test_a_recipe_has_the_figures_before_that_its_dough_has():
    salt = named(str(Path(__file__).parents[2] / "demo" / "recipes" / "ropewalk-salt.toml"))
    found, whole = measured_recipe(salt, kitchen="japan"), knead(salt.recipe, salt.shop)
    for key in ("resistivity", "water_activity", "ph"):
        assert found.before[key] == whole.reason(key).value.mean
