"""A batch as a form is filled in, and what it taught."""

import tomllib
from dataclasses import replace

import pytest
import tomli_w
from hypothesis import given
from hypothesis import strategies as st

from lumped.app.asking import Question
from lumped.app.batch_form import batch_filled, batch_written, goes_in, recipe_along, ways_to_measure
from lumped.app.batches import batch_told
from lumped.app.beside import besides
from lumped.app.examples import example_recipe
from lumped.app.given import Given
from lumped.app.own import batch_of
from lumped.errors import InputError

SALT = Given(name="ropewalk-salt.toml", text=example_recipe("ropewalk-salt.toml"))
SAID = {
    "title": "Friday", "made_on": "2026-05-08", "weighed-plain-flour": "148,5", "weighed_after_g": "420", "feel": "4",
    "resistivity_ohm_m": "0.19", "measured_by": "four-needles-ac", "temperature_degC": "21", "notes": "<b>stirred</b>",
}  # fmt: skip


def test_a_form_is_the_batch_file_that_a_person_could_have_written():
    filled = batch_filled(SAID, SALT)
    assert not filled.slips
    document = tomllib.loads(filled.given.text)
    assert document["weighed"] == [{"ingredient": "plain-flour", "amount_g": 148.5}]
    assert document["measured"] == {"resistivity_ohm_m": 0.19, "measured_by": "four-needles-ac", "temperature_degC": 21}
    assert document["made_on"].isoformat() == "2026-05-08"
    batch = batch_of(filled.given)
    assert (batch.feel, batch.recipe.mass_of("plain-flour")) == (4, pytest.approx(0.1485))


def test_what_is_written_stands_in_the_form_again_and_comes_out_as_it_was():
    text = tomli_w.dumps(tomllib.loads(batch_filled(SAID, SALT).given.text) | {
        "invented": True, "weighed": [{"ingredient": "Plain wheat flour", "amount_g": 148.5},
                                      {"ingredient": "honey", "amount_g": 12.3456789}],
    })  # fmt: skip
    given = Given(name="friday.toml", text=text, recipes={SALT.name: SALT.text})
    said = batch_written(given)
    assert (said["weighed-plain-flour"], said["weighed-honey"], said["feel"]) == ("148.5", "12.3456789", "4")
    again = batch_filled(said, recipe_along(given), text)
    assert tomllib.loads(again.given.text) == tomllib.loads(text)
    changed = tomllib.loads(batch_filled(said | {"feel": "", "weighed-honey": ""}, SALT, text).given.text)
    assert (changed["invented"], "feel" in changed, len(changed["weighed"])) == (True, False, 1)


def test_a_batch_without_its_recipe_has_no_form():
    with pytest.raises(InputError, match=r"Choose the recipe file together with the batch: a batch teaches"):
        recipe_along(Given(name="friday.toml", text='kind = "batch"\nrecipe = "mine.toml"'))


def test_what_went_in_besides_has_a_line_of_its_own():
    rows = goes_in(SALT, "plain-flour", "honey", "stardust")
    assert [row[0] for row in rows] == [*(row[0] for row in goes_in(SALT)), "honey"]
    assert rows[-1][2] == "not in the recipe"


def test_steam_is_what_went_in_less_what_came_out():
    went_in = 1e3 * sum(batch_of(batch_filled(SAID, SALT).given).recipe.masses.values())
    words = batch_filled(SAID, SALT).words
    assert f"420 g came out: {went_in - 420:.0f} g" in words[1]
    assert any("0.190 Ω·m (0.173 to 0.209)" in each for each in words)  # ± 10 %, the way's own half-width


def test_grams_are_written_out_for_a_large_class_too():
    large = Given(name="large.toml", text=SALT.text.replace("1/4 cup", "12345 g"))
    assert {key: amount for key, _, amount in goes_in(large)}["table-salt"] == "12,300 g"


@pytest.mark.parametrize(
    ("wrong", "field", "words"),
    [
        ({"measured_by": "two-wire-dc"}, "measured_by", "reads the volts lost where metal meets dough"),
        ({"measured_by": "two-wire-dc", "resistivity_ohm_m": ""}, "measured_by", "four needles"),
        ({"measured_by": ""}, "measured_by", "what it was measured with"),
        ({"measured_by": "tongue"}, "", "no way of measuring"),
        ({"resistivity_ohm_m": "-1"}, "resistivity_ohm_m", "more than 0"),
        ({"resistivity_ohm_m": "some"}, "resistivity_ohm_m", "no number"),
        ({"resistivity_ohm_m": "", "low_ohm_m": "1"}, "resistivity_ohm_m", "the reading"),
        ({"low_ohm_m": "0.1"}, "low_ohm_m", "both ends"),
        ({"low_ohm_m": "0.3", "high_ohm_m": "0.4"}, "resistivity_ohm_m", "can't be"),
        ({"temperature_degC": "300"}, "temperature_degC", "at most 90"),
        ({"weighed_after_g": "-420"}, "weighed_after_g", "more than 0"),
        ({"weighed_after_g": "9000"}, "weighed_after_g", "at most"),
        ({"weighed-plain-flour": "-1"}, "weighed-plain-flour", "more than 0"),
        ({"weighed-stardust": "1"}, "", "stardust"),
        ({"made_on": "yesterday"}, "made_on", "day alone"),
        ({"feel": "9"}, "feel", "at most 5"),
        ({"title": "x" * 300}, "title", "at most 200"),
    ],
)
def test_what_is_wrong_stands_beside_its_field(wrong, field, words):
    filled = batch_filled(SAID | wrong, SALT)
    assert words in filled.slips[field]
    assert not filled.words


@given(st.dictionaries(st.sampled_from([*SAID, "low_ohm_m", "high_ohm_m"]), st.text(max_size=10)))
def test_whatever_is_typed_is_read_or_told(said):
    filled = batch_filled(said, SALT)
    assert bool(filled.slips) != bool(filled.words)


def test_the_refused_way_is_offered_so_that_its_reason_can_be_read():
    assert dict(ways_to_measure())["two-wire-dc"]
    assert len(ways_to_measure()) == 4
    assert len(goes_in(SALT)) == 5


def width(text):
    low, high = text.split("(")[1].rstrip(")").split(" to ")
    return float(high) / float(low)


def test_a_measured_batch_narrows_and_a_second_one_is_told_beside_it():
    friday = batch_filled(SAID, SALT).given
    monday = batch_filled(SAID | {"title": "Monday", "resistivity_ohm_m": "0.2"}, SALT).given
    told = batch_told(Question(given=Given(
        name=friday.name, text=friday.text, recipes=friday.recipes, batches=(friday, monday)
    )), lambda share: None)  # fmt: skip
    assert told["stages"] == ["alone", "this", "all"]
    assert told["weighed"] == [("plain wheat flour", "145 g", "148.5 g")]
    (_, _, figures), (_, _, feels) = told["learnt"]
    alone, this, both = (width(figure) for _, figure in figures)
    assert both < this < alone
    assert feels[0] != feels[1]
    assert {key for _, _, row in told["learnt"] for key, _ in row} == set(told["sources"])
    assert any("Friday" in each for each in told["taught"])


def test_a_batch_that_contradicts_its_recipe_teaches_nothing_and_is_told():
    far = batch_filled(SAID | {"resistivity_ohm_m": "50", "feel": ""}, SALT).given
    told = batch_told(Question(given=far), lambda share: None)
    (_, _, figures), _ = told["learnt"]
    assert figures[0][1] == figures[1][1]
    assert "Measure again" in told["taught"][0]


def test_doughs_side_by_side_on_a_page_know_what_their_batches_taught():
    sugar = Given(name="sugar.toml", text=example_recipe("ropewalk-sugar.toml"))
    learnt = replace(SALT, batches=(batch_filled(SAID, SALT).given,))

    def shown(first):
        said = {"names": ["salt", "sugar"], "region": ""}
        found = besides(Question(given=first, others=(sugar,), said=said), lambda share: None)
        return {key: cells for key, _, cells in found["outcomes"]}["resistivity"], found["notes"]

    (salt_then, sugar_then), told = shown(learnt)
    (salt_before, sugar_before), _ = shown(SALT)
    assert salt_then != salt_before
    assert sugar_then == sugar_before
    assert any(each.startswith("salt: ") for each in told)
