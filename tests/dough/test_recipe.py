import pytest

from lumped.dough import measured_dough, read_recipe, recipe_schema, unknown_dough
from lumped.errors import InputError, RecipeError
from lumped.quantities import Status

GOOD = """
kind = "recipe"
schema = 1
title = "Slipway dough"
dough = "conducting"
[method]
cooked = "kettle"
weighed_after_g = 400
[[ingredients]]
ingredient = "flour"
amount = "1 cup"
as_needed_g = [0, 30]
[[ingredients]]
ingredient = "tap-water"
amount_g = 237
[[ingredients]]
ingredient = "table-salt"
amount_g = 73
"""


def file(tmp_path, text=GOOD):
    path = tmp_path / "slipway.toml"
    path.write_text(text, encoding="utf-8")
    return path


def test_a_recipe_is_read_with_measures_names_and_what_is_added_by_feel(tmp_path):
    recipe = read_recipe(file(tmp_path))
    assert [portion.ingredient for portion in recipe.portions] == ["plain-flour", "tap-water", "table-salt"]
    assert recipe.portions[0].mass.mean == pytest.approx(0.125)
    assert recipe.portions[0].as_needed == (0.0, 0.030)
    assert (recipe.cooked, recipe.weighed_after, recipe.temperature) == ("kettle", 0.4, 293.15)


@pytest.mark.parametrize(
    ("old", "new", "says"),
    [
        ('"flour"', '"floor"', r"no\. 1: Lumped knows no ingredient “floor”\. Did you mean: plain-flour"),
        ('"1 cup"', '"1 bowl"', r"“flour” › amount: “1 bowl” is no amount"),
        ("amount_g = 237", "amount_g = -237", r"amount_g is -237\. It must be more than 0"),
        ("amount_g = 237", 'amount_g = 237\namount = "1 cup"', "not both"),
        ("amount_g = 237", "", "Say how much"),
        ("amount_g = 237", "amount_gg = 237", "did you mean “amount_g”"),
        ("[0, 30]", "[30, 10]", "the least amount first"),
        ("[0, 30]", "[0, 0]", "adds nothing"),
        ('"kettle"', '"oven"', "Choose one of: 'pot', 'kettle', 'microwave' or 'not cooked'"),
        ("= 400", "= 900", "at most 506 g went in"),
        ("= 400", "= 120", "less than the 1.. g of dry things"),
        ("title = ", "title ", r"is not TOML: .*line 4"),
        ('kind = "recipe"', 'kind = "sculpture"', 'should say kind = "recipe"'),
        ('title = "Slipway dough"\n', "", "title is missing"),
        ("schema = 1", "schema = 1\ntemperature_degC = 400", "It must be at most 90"),
    ],
)
def test_what_is_wrong_is_told_with_file_key_value_and_remedy(tmp_path, old, new, says):
    assert old in GOOD
    with pytest.raises(RecipeError, match=says) as caught:
        read_recipe(file(tmp_path, GOOD.replace(old, new)))
    assert "slipway.toml" in str(caught.value)


def test_a_file_too_large_or_too_deep_or_missing_is_refused(tmp_path):
    with pytest.raises(RecipeError, match="larger than 2 MB"):
        read_recipe(file(tmp_path, GOOD + "#" * 2_000_001))
    with pytest.raises(RecipeError, match="levels deep"):
        read_recipe(file(tmp_path, GOOD + "\n[deep]\nx = " + "[" * 40 + "]" * 40))
    with pytest.raises(RecipeError, match="no file"):
        read_recipe(tmp_path / "nowhere.toml")


def test_the_schema_names_the_keys_that_a_file_has():
    keys = set(recipe_schema()["properties"])
    assert {"kind", "schema", "title", "dough", "measures", "temperature_degC", "method", "ingredients"} <= keys


def test_a_measured_dough_keeps_how_it_was_measured():
    found = measured_dough(0.15, "plates-ac-1khz", low=0.13, high=0.18, name="Slipway")
    assert (found.how, found.kind, found.name) == ("measured", "conducting", "Slipway")
    assert found.resistivity.provenance.status is Status.MEASURED
    assert (found.resistivity.low, found.resistivity.high) == (0.13, 0.18)
    assert measured_dough(300, "four-needles-ac").kind == "insulating"


def test_an_ohmmeter_is_refused_with_the_reason():
    with pytest.raises(InputError, match="reads the volts lost where metal meets dough"):
        measured_dough(30, "two-wire-dc")


def test_impossible_measurements_are_refused():
    with pytest.raises(RecipeError, match="Choose one of: four-needles-ac"):
        measured_dough(0.2, "licking")
    with pytest.raises(RecipeError, match="low below and high above"):
        measured_dough(0.2, "four-needles-ac", low=0.3, high=0.4)
    with pytest.raises(RecipeError, match="positive figures"):
        measured_dough(float("nan"), "four-needles-ac")


@pytest.mark.parametrize("kind", ["conducting", "insulating"])
def test_a_dough_that_nobody_knows_has_a_wide_interval_and_says_where_it_comes_from(kind):
    found = unknown_dough(kind)
    assert found.how == "unknown"
    assert found.resistivity.high / found.resistivity.low > 10
    assert found.resistivity.provenance.status is Status.FROM_MEMORY
    assert "from memory" in found.notes[0]
