"""One child's need holds for the whole table: which doughs go, which are asked about, and what would mend it."""

import dataclasses

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.dough.safety.bowls import BOWLS, PANTRY, RICE_DOUGH, SALT_DOUGH, SUGAR_DOUGH

from lumped.dough.safety import fit_for_table, known_needs

DOUGHS = {
    "salt dough": SALT_DOUGH,
    "sugar dough": SUGAR_DOUGH,
    "starch dough": {"potato-starch": 0.2, "table-salt": 0.05},
}


def test_one_coeliac_child_sends_every_dough_with_gluten_away_and_says_which_ingredient():
    fit = fit_for_table(DOUGHS, ["coeliac"], PANTRY)
    assert fit.leaves == ("salt dough", "sugar dough")
    assert {each.ingredient for each in fit.reasons if each.certain} == {"plain-flour"}
    assert any("hands" in words for words in fit.words)
    assert any("dust" in words for words in fit.words)


def test_a_flour_that_may_hold_traces_is_asked_about():
    fit = fit_for_table({"rice dough": RICE_DOUGH}, ["coeliac"], PANTRY)
    assert (fit.stays, fit.asks, fit.leaves) == ((), ("rice dough",), ())
    assert "packet" in fit.reasons[0].words


def test_barley_is_wrong_for_coeliac_disease_and_a_question_for_a_wheat_allergy():
    doughs = {"barley dough": {"barley-flour": 0.2}}
    assert fit_for_table(doughs, ["coeliac"], PANTRY).leaves == ("barley dough",)
    assert fit_for_table(doughs, ["wheat"], PANTRY).asks == ("barley dough",)


def test_barley_from_any_packet_is_asked_about_for_a_wheat_allergy():
    silent = PANTRY.with_added(dataclasses.replace(PANTRY["barley-flour"], may_contain=()))
    assert fit_for_table({"barley dough": {"barley-flour": 0.2}}, ["wheat"], silent).asks == ("barley dough",)


def test_wheat_starch_must_leave_for_a_wheat_allergy():
    fit = fit_for_table({"starch dough": {"wheat-starch": 0.2}}, ["wheat"], PANTRY)
    assert fit.leaves == ("starch dough",)
    assert any("not coeliac disease" in words for words in fit.words)


def test_oats_and_wheat_starch_bring_a_word_of_their_own():
    words = fit_for_table({"a": {"oat-flour": 0.1}, "b": {"wheat-starch": 0.1}}, ["coeliac"], PANTRY).words
    assert any("Oats labelled gluten-free (at most 20 mg" in each for each in words)
    assert any("wheat starch labelled gluten-free (at most 20 mg" in each for each in words)


def test_a_nut_allergy_sends_almonds_away():
    assert fit_for_table({"nut dough": {"almond-flour": 0.1}}, ["nuts"], PANTRY).leaves == ("nut dough",)


def test_without_a_need_every_dough_stays():
    fit = fit_for_table(DOUGHS, [], PANTRY)
    assert (fit.stays, fit.words) == (tuple(DOUGHS), ())


@pytest.mark.parametrize("need", known_needs())
def test_each_need_is_answered_for_each_dough(need):
    fit = fit_for_table(DOUGHS, [need], PANTRY)
    assert sorted((*fit.stays, *fit.asks, *fit.leaves)) == sorted(DOUGHS)
    assert "Their doctor decides" in fit.words[-1]


def test_each_dough_that_must_go_says_what_a_swap_must_look_for():
    mends = fit_for_table(DOUGHS, ["celiac", "wheat allergy"], PANTRY).mends
    assert [(each.dough, each.diets, each.without) for each in mends] == [
        ("salt dough", ("no-gluten",), ("wheat",)), ("sugar dough", ("no-gluten",), ("wheat",)),
    ]  # fmt: skip
    (mend,) = fit_for_table({"soy dough": {"soy-flour": 0.1, "table-salt": 0.1}}, ["soya"], PANTRY).mends
    assert (mend.diets, mend.without) == ((), ("soybeans",))


def test_a_dough_that_is_only_doubted_has_nothing_to_mend():
    assert fit_for_table({"rice dough": RICE_DOUGH}, ["coeliac"], PANTRY).mends == ()


def test_a_need_said_twice_in_other_words_counts_once():
    fit = fit_for_table(DOUGHS, ["celiac", "coeliac disease"], PANTRY)
    assert fit.needs == ("coeliac",)
    assert len(fit.reasons) == len(set(fit.reasons))


@given(BOWLS, st.sampled_from(sorted(PANTRY)), st.sampled_from(known_needs()))
def test_adding_an_ingredient_never_lets_a_dough_back_to_the_table(bowl, more, need):
    before, after = (
        fit_for_table({"a": each}, [need], PANTRY) for each in (bowl, {**bowl, more: 0.01})
    )  # fmt: skip
    assert set(before.leaves) <= set(after.leaves)
    assert set(after.stays) <= set(before.stays)
