"""What a page moves while an amount is dragged is what the commands say, and each number tells its source."""

import pytest

from lumped.app import dough
from lumped.app.changing import changed
from lumped.app.examples import example_recipe
from lumped.app.given import Given, laid_out
from lumped.app.readings import READINGS, readings
from lumped.app.sources import source_of
from lumped.errors import LumpedError

SALT, SUGAR = (Given(name=name, text=example_recipe(name)) for name in ("ropewalk-salt.toml", "ropewalk-sugar.toml"))


@pytest.mark.parametrize("given", [SALT, SUGAR], ids=lambda given: given.name)
def test_the_readings_are_the_figures_of_the_command(given):
    with laid_out(given) as path:
        whole = dough(path)
    found = readings(given, "europe")
    assert found["conducts"] is whole.conducts
    assert found["readings"]["resistivity"]["figure"] == whole.resistivity.text()
    for key in ("water_activity", "ph"):
        assert found["readings"][key]["figure"] == whole.reason(key).value.text()


def test_less_salt_moves_resistivity_keeping_and_cost():
    before, after = (readings(each, "europe")["readings"] for each in (SALT, changed(SALT, {"table-salt": "20 g"})))
    assert after["resistivity"]["middle"] > before["resistivity"]["middle"]
    assert after["water_activity"]["middle"] > before["water_activity"]["middle"]
    assert after["cost"]["figure"] != before["cost"]["figure"]
    assert "many yeasts" in after["water_activity"]["says"]


def test_the_ends_of_a_smear_enclose_its_middle_on_the_scale():
    for key, each in readings(SUGAR, "japan")["readings"].items():
        assert 0 <= each["low"] <= each["middle"] <= each["high"] <= 1, key


def test_a_slider_holds_the_recipes_amount_and_room_above_it():
    for each in readings(SALT, "europe")["amounts"]:
        assert 0 < each["grams"] < 0.7 * each["most"]
        assert each["step"] < 0.1 * each["grams"]


def test_a_recipe_that_can_not_be_says_why_in_the_words_of_the_command():
    with pytest.raises(LumpedError, match="“some” is no amount"):
        readings(changed(SALT, {"table-salt": "some"}), "europe")
    with pytest.raises(LumpedError, match=r"“a\.toml” is not TOML"):
        readings(changed(Given(name="a.toml", text="kind = "), {"salt": "1 g"}), "europe")


@pytest.mark.parametrize("what", [*READINGS, "free_water", "what-if-pinch", "narrower-resistivity"])
def test_each_number_says_its_status_and_what_is_open_in_it(what):
    told = source_of(SALT, what, "europe")
    assert told["title"]
    assert told["status"].startswith("From memory:")  # nobody measured how flour obstructs, or what shops ask
    assert told["made_of"]


def test_a_source_is_named_with_edition_and_page():
    (usda,) = (each for each in source_of(SALT, "resistivity", "europe")["sources"] if each.startswith("USDA"))
    assert "Standard Reference, release 28" in usda
    assert "NDB 20081" in usda  # the page of plain flour there


@pytest.mark.parametrize(("given", "says"), [(SALT, "Sour."), (SUGAR, "Nearly neutral: neither sour nor soapy.")])
def test_flour_and_water_are_not_called_sour(given, says):
    """A dough of flour, sugar and water has a pH of 5.9: nobody tastes or feels that."""
    assert readings(given, "europe")["readings"]["ph"]["says"] == says


def test_the_line_on_keeping_says_who_may_grow_too():
    said = readings(SALT, "europe")["readings"]["water_activity"]["says"]
    assert "Could grow in this dough: " in said
    assert "May grow in it" in said
    assert "most moulds" in said
