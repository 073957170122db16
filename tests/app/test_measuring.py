"""Weights and measures as pages and commands use them."""

import pytest

from lumped.app.measuring import find_kitchen, kitchen_table, measured_recipe, weighed_amount
from lumped.errors import InputError


def test_the_beginning_of_a_name_will_do_if_it_is_the_only_one():
    assert [find_kitchen(word) for word in ("Japan", "us", "us-l", "imp", "grams")] == [
        "japanese", "us", "us-label", "imperial", "scale"
    ]  # fmt: skip


@pytest.mark.parametrize("word", ["mars", "", "u"])
def test_other_words_are_refused(word):
    with pytest.raises(InputError, match=r"There are no measures .* Choose one of: us, us-label"):
        find_kitchen(word)


def test_every_measure_of_every_country_has_a_status():
    assert all(row["status"] and row["volume_m3"] > 0 for row in kitchen_table())


def test_an_ingredient_of_unknown_weight_by_volume_is_weighed():
    found = weighed_amount("5 g", "alum")
    assert found.mass.mean == pytest.approx(0.005)
    assert "scale" in found.ways


def test_a_recipe_of_which_nothing_is_added_by_feel_is_rounded_too(tmp_path):
    recipe = tmp_path / "plain.toml"
    amounts = {"plain-flour": 200, "tap-water": 120, "table-salt": 60}
    rows = "".join(f'[[ingredients]]\ningredient = "{key}"\namount_g = {each}\n' for key, each in amounts.items())
    recipe.write_text(f'kind = "recipe"\nschema = 1\ntitle = "Plain"\ndough = "conducting"\n{rows}')
    found = measured_recipe(recipe, kitchen="metric")
    assert all(0 < each.mass.mean < 0.5 for each in found.rounded.portions)
    assert found.after["resistivity"] == pytest.approx(found.before["resistivity"], rel=0.1)
