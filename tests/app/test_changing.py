"""What a page changes of a recipe's text, and that its address says it back."""

import tomllib

import pytest

from lumped.app.changing import (
    RECIPE_WORDS,
    amounts_in,
    changed,
    changes_to,
    name_of,
    names_in,
    names_of_keys,
    with_amount,
    with_feel,
)
from lumped.app.examples import example_recipe
from lumped.app.given import Given
from lumped.app.own import recipe_of
from lumped.errors import InputError

SALT = Given(name="salt.toml", text=example_recipe("ropewalk-salt.toml"))


def entries(given):
    return {each["ingredient"]: each for each in tomllib.loads(given.text)["ingredients"]}


def test_nothing_changed_leaves_the_text_as_it_was_written():
    assert changed(SALT, {}) is SALT
    assert changed(SALT, {"table-salt": "1/4 cup"}) is SALT


def test_what_is_added_by_feel_stays_until_it_is_said_otherwise():
    assert entries(changed(SALT, {"plain-flour": "120 g"}))["plain-flour"] == {
        "ingredient": "plain-flour", "amount_g": 120, "as_needed_g": [0, 40],
    }  # fmt: skip
    assert "as_needed_g" not in entries(changed(SALT, {"plain-flour": "120 g;"}))["plain-flour"]
    assert entries(changed(SALT, {"plain-flour": "120 g;5-10"}))["plain-flour"]["as_needed_g"] == [5, 10]


@pytest.mark.parametrize(("words", "ends"), [
    ("40", [0, 40]), ("10-40", [10, 40]), ("10 to 40 g", [10, 40]), ("2,5 – 7.5", [2.5, 7.5]), ("some", "some"),
])  # fmt: skip
def test_what_is_added_by_feel_is_read_as_somebody_writes_it(words, ends):
    changes = {"table-salt": with_feel("", "1/4 cup", words)}
    assert entries(changed(SALT, changes))["table-salt"] == {
        "ingredient": "table-salt", "amount": "1/4 cup", "as_needed_g": ends,
    }  # fmt: skip
    assert with_amount(changes["table-salt"], "20 g") == f"20 g;{words}"


def test_words_that_do_not_say_what_is_added_by_feel_are_refused_in_words():
    with pytest.raises(InputError, match=r"“plain-flour” › as_needed_g.*“some” does not say what is added by feel"):
        recipe_of(changed(SALT, {"plain-flour": "1 cup;some"}))


def test_a_dough_is_used_warmer_or_heated_otherwise():
    warm = recipe_of(changed(SALT, {"degrees": "35", "cooked": "kettle"}))
    assert (warm.temperature, warm.cooked) == (308.15, "kettle")
    assert changed(SALT, {"degrees": "20", "cooked": "pot"}) is SALT
    with pytest.raises(InputError, match="temperature_degC"):
        recipe_of(changed(SALT, {"degrees": "warm"}))


@pytest.mark.parametrize("nothing", ["0", "0 g", "0,0 g", "0;"])
def test_nothing_of_an_ingredient_leaves_it_out(nothing):
    assert "table-salt" not in entries(changed(SALT, {"table-salt": nothing}))


def test_a_name_that_is_not_in_the_recipe_goes_in():
    assert entries(changed(SALT, {"cornstarch": "2 tbsp"}))["cornstarch"]["amount"] == "2 tbsp"


def test_an_ingredient_that_comes_twice_is_told_apart():
    twice = Given(
        name="a.toml", text="ingredients = [{ingredient='flour', amount_g=1}, {ingredient='Flour', amount_g=2}]"
    )
    assert names_in(twice.text) == ["flour", "flour-2"]
    assert amounts_in(changed(twice, {"flour-2": "5"}).text) == ["1 g", "5 g"]
    assert names_of_keys(twice) == {"plain-flour": "flour"}


def test_the_weight_of_the_finished_dough_holds_no_longer_for_other_amounts():
    weighed = Given(name="a.toml", text=SALT.text.replace('cooked = "pot"', 'cooked = "pot"\nweighed_after_g = 430'))
    assert "weighed_after_g" in changed(weighed, {"title": "Ours"}).text
    assert "weighed_after_g" not in changed(weighed, {"table-salt": "30 g"}).text


def test_a_dough_of_ones_own_has_no_story_and_keeps_the_mark_of_what_it_was_made_of():
    own = tomllib.loads(changed(SALT, {"title": "Ours", "table-salt": "30 g"}).text)
    assert (own["title"], "story" in own) == ("Ours", False)
    assert own["invented"] is True  # what is made of an invented recipe is invented
    assert tomllib.loads(changed(SALT, {"title": "Ours"}).text)["invented"] is True  # its amounts still are


def test_changes_to_a_recipe_lead_to_it():
    wanted = [("plain-flour", "120 g", (0.0, 30.0)), ("tap-water", "1 cup", None), ("rice-flour", "2 tbsp", None)]
    found = entries(changed(SALT, changes_to(SALT, wanted)))
    assert list(found) == ["plain-flour", "tap-water", "rice-flour"]
    assert found["plain-flour"]["as_needed_g"] == [0, 30]
    assert "tap-water" not in changes_to(SALT, wanted)
    assert changes_to(SALT, wanted)["table-salt"] == "0"


@pytest.mark.parametrize("word", RECIPE_WORDS)
def test_a_new_ingredient_that_is_called_like_a_setting_goes_in(word):
    label = f'kind = "ingredient"\nschema = 1\ntitle = "{word.title()}"\nsalt_g = 99\nallergens = []\n'
    given = Given(name=SALT.name, text=SALT.text, labels={word.title(): label})
    more = changed(given, {name_of(word): "5 g"})
    assert recipe_of(more).mass_of(word) == pytest.approx(0.005)
    assert tomllib.loads(more.text)["title"] == tomllib.loads(SALT.text)["title"]
    portions = [(each.ingredient, each.written, None) for each in recipe_of(more).portions]
    assert changes_to(given, portions)[f"{word}-1"] == "5 g"
    assert changed(more, {name_of(word): "7 g"}).text.count(f'"{word}"') == 1
