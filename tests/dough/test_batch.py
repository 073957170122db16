"""Batches: what was really weighed, felt and measured, and what is learnt of it."""

import re
from datetime import date
from pathlib import Path

import pytest

from lumped.dough import knead, read_recipe
from lumped.dough.batch import batch_schema, read_batch
from lumped.dough.learning import learnt
from lumped.errors import RecipeError

RECIPE = """
kind = "recipe"
schema = 1
title = "Slipway dough"
dough = "conducting"
ingredients = [
  {ingredient = "plain-flour", amount_g = 125, as_needed_g = [0, 40]},
  {ingredient = "tap-water", amount_g = 237},
  {ingredient = "table-salt", amount_g = 73},
]
"""
BATCH = """
kind = "batch"
schema = 1
title = "Friday"
recipe = "slipway.toml"
made_on = 2026-05-08
weighed = [{ingredient = "flour", amount_g = 148}]
weighed_after_g = 425
feel = 2
invented = true
[measured]
resistivity_ohm_m = 0.16
measured_by = "four-needles-ac"
temperature_degC = 23
"""


def file(folder, text=BATCH, name="friday.toml"):
    (folder / "slipway.toml").write_text(RECIPE, "utf-8")
    (folder / name).write_text(text, "utf-8")
    return folder / name


def test_what_was_weighed_takes_the_place_of_what_the_recipe_says(tmp_path):
    batch = read_batch(file(tmp_path))
    assert batch.recipe.mass_of("plain-flour") == pytest.approx(0.148)
    assert batch.recipe.mass_of("tap-water") == pytest.approx(0.237)
    assert all(portion.as_needed is None for portion in batch.recipe.portions)
    assert (batch.made_on, batch.feel, batch.recipe.weighed_after) == (date(2026, 5, 8), 2, 0.425)
    assert batch.recipe.temperature == pytest.approx(296.15)


def test_a_batch_narrows_what_is_predicted_of_its_recipe(tmp_path):
    batch = read_batch(file(tmp_path))
    recipe = read_recipe(tmp_path / "slipway.toml")
    lessons = learnt([batch], recipe)
    before, after = knead(recipe), knead(recipe, calibration=lessons.calibration, fit=lessons.fit)
    assert after.resistivity.high / after.resistivity.low < before.resistivity.high / before.resistivity.low
    assert after.feel.score.mean < before.feel.score.mean
    assert lessons.passed_over == ()


def test_a_batch_that_was_neither_measured_nor_felt_is_named(tmp_path):
    text = BATCH[: BATCH.index("[measured]")].replace("feel = 2\n", "")
    batch = read_batch(file(tmp_path, text))
    assert learnt([batch], batch.recipe).passed_over == ("Friday",)


@pytest.mark.parametrize(
    ("old", "new", "says"),
    [
        ('"four-needles-ac"', '"two-wire-dc"', r"ohmmeter with two probes is no resistivity.*leave the reading out"),
        ('"four-needles-ac"', '"by eye"', r"is no way of measuring that Lumped knows"),
        ("feel = 2", "feel = 6", r"feel is 6\. It must be at most 5"),
        ("amount_g = 148", "amount_g = -1", r"It must be more than 0"),
        ('"flour"', '"floor"', r"weighed › no\. 1: Lumped knows no ingredient “floor”"),
        ("weighed_after_g = 425", "weighed_after_g = 999", r"at most 4.. g went in"),
        (
            "resistivity_ohm_m = 0.16",
            "resistivity_ohm_m = 0.16\nlow_ohm_m = 0.1",
            r"low_ohm_m and high_ohm_m, or neither",
        ),
        ('recipe = "slipway.toml"', 'recipe = "quay.toml"', r"quay\.toml"),
        ("title = ", "title ", r"is not TOML"),
        ('kind = "batch"', 'kind = "recipe"', r'should say kind = "batch"'),
    ],
)
def test_what_is_wrong_with_a_batch_is_told(tmp_path, old, new, says):
    assert old in BATCH
    with pytest.raises(RecipeError, match=says):
        read_batch(file(tmp_path, BATCH.replace(old, new)))


def test_a_batch_that_contradicts_its_recipe_is_named(tmp_path):
    batch = read_batch(file(tmp_path, BATCH.replace("= 0.16", "= 9.0")))
    with pytest.raises(RecipeError, match=r"Batch “Friday”: 9\.0 Ω·m .* was measured, but this recipe yields"):
        learnt([batch], batch.recipe)


def test_the_schema_of_a_batch_names_its_keys():
    assert {"title", "recipe", "weighed", "measured", "feel"} <= set(batch_schema()["properties"])


def test_the_batch_file_of_the_docs_is_read(tmp_path):
    page = (Path(__file__).parents[2] / "docs" / "dough.md").read_text("utf-8")
    (text,) = re.findall(r"```toml\n(.*?)```", page, re.S)
    batch = read_batch(file(tmp_path, text))
    assert (batch.title, batch.feel, batch.invented) == ("Friday", 3, True)
    keys = set(batch_schema()["properties"]) - {"kind", "schema", "title"}
    assert [key for key in sorted(keys) if f"`{key}`" not in page] == []
