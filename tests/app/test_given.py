"""Sculptures as text: laid out in a folder of their own, and nothing outside it is ever read."""

from pathlib import Path

import pytest

from lumped.app.examples import example_heading, example_names, example_recipe, example_text
from lumped.app.given import Given, laid_out, needed_recipes, plain_name
from lumped.errors import InputError

TEXT = """
kind = "sculpture"
schema = 1
title = "Boat"
[doughs.salt]
recipe = "{recipe}"
"""


def given(recipe, **recipes):
    named = {name.replace("_", "."): text for name, text in recipes.items()}
    return Given(name="boat.toml", text=TEXT.format(recipe=recipe), recipes=named)


def test_recipes_that_came_along_lie_where_the_sculpture_looks_for_them():
    with laid_out(given("kitchen/mine.toml", mine_toml="kind = 'recipe'")) as path:
        assert path == Path("boat.toml")
        assert (path.parent / "kitchen/mine.toml").read_text() == "kind = 'recipe'"


def test_an_example_recipe_is_found_without_bringing_it():
    with laid_out(given("recipes/ropewalk-salt.toml")) as path:
        assert (path.parent / "recipes/ropewalk-salt.toml").read_text() == example_recipe("ropewalk-salt.toml")


@pytest.mark.parametrize(
    "recipe", ["/etc/hostname", "../secret.toml", "a/../../secret.toml", "C:/secret.toml", "..\\\\secret.toml"]
)
def test_a_recipe_outside_the_folder_is_refused_even_if_one_of_that_name_came_along(recipe):
    along = {"secret.toml": "x = 1", "hostname": "x = 1"}
    with (
        pytest.raises(InputError, match="did not come along"),
        laid_out(Given(name="boat.toml", text=TEXT.format(recipe=recipe), recipes=along)),
    ):
        pass


def test_a_missing_recipe_is_named_with_what_to_do():
    with (
        pytest.raises(InputError, match=r"“own.toml”, which did not come along.*I don't know mine"),
        laid_out(given("own.toml")),
    ):
        pass


def test_unknown_doughs_take_the_place_of_missing_recipes_only():
    text = TEXT.format(recipe="own.toml") + '[doughs.sugar]\nrecipe = "ropewalk-sugar.toml"\n'
    changed = Given(name="boat.toml", text=text).with_unknown_doughs()
    assert 'unknown = "conducting"' in changed.text
    assert list(needed_recipes(changed)) == ["ropewalk-sugar.toml"]


def test_too_large_a_text_is_refused():
    with pytest.raises(InputError, match="2 MB"), laid_out(Given(name="big.toml", text="#" * 2_000_001)):
        pass


@pytest.mark.parametrize(
    ("name", "plain"),
    [
        ("../../etc/passwd", "passwd"),
        ("C:\\x\\boat.toml", "boat.toml"),
        ("<b>.toml", "b.toml"),
        ("..", "sculpture.toml"),
    ],
)
def test_names_are_made_plain(name, plain):
    assert plain_name(name) == plain


def test_the_working_folder_is_left_as_it_was():
    before = Path.cwd()
    with laid_out(given("ropewalk-salt.toml")):
        pass
    assert Path.cwd() == before


def test_the_story_has_its_sculptures_in_order():
    names = example_names()
    assert names[0] == "harbour-light.toml"
    assert len(names) >= 7
    assert example_heading("harbour-light.toml")[0] in example_text("harbour-light.toml")
    assert example_text("../pyproject.toml") is None
