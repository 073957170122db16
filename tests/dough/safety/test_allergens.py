"""Allergens come from what went in, each with the ingredient that brings it; one need holds for the whole table."""

import dataclasses

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.dough.safety.bowls import BOWLS, PANTRY, RICE_DOUGH, SALT_DOUGH, SUGAR_DOUGH

from lumped.dough.safety import allergens_of, fit_for_table, known_needs
from lumped.errors import InputError

DOUGHS = {
    "salt dough": SALT_DOUGH,
    "sugar dough": SUGAR_DOUGH,
    "starch dough": {"potato-starch": 0.2, "table-salt": 0.05},
}


@given(BOWLS, st.sampled_from(sorted(PANTRY)))
def test_adding_an_ingredient_never_removes_an_allergen(bowl, more):
    before, after = allergens_of(bowl, PANTRY), allergens_of({**bowl, more: 0.01}, PANTRY)
    assert set(before.eu) <= set(after.eu)
    assert set(before.us) <= set(after.us)
    assert set(before.traces) <= set(after.traces) | set(after.names)


@given(BOWLS)
def test_each_allergen_names_an_ingredient_of_the_bowl_that_has_it(bowl):
    found = allergens_of(bowl, PANTRY)
    assert all(name in PANTRY[key].allergens_eu for name, keys in found.eu.items() for key in keys)
    assert all(name in PANTRY[key].allergens_us for name, keys in found.us.items() for key in keys)
    assert not set(found.traces) & set(found.names)


def test_what_was_left_out_brings_nothing():
    assert allergens_of({"plain-flour": 0.0, "table-salt": 0.05}, PANTRY).names == ()


def test_traces_stand_apart_from_what_is_in_it():
    found = allergens_of({"rice-flour": 0.1}, PANTRY)
    assert found.names == ()
    assert "rice-flour" in found.traces["wheat"]
    assert "wheat" not in allergens_of({"rice-flour": 0.1, "plain-flour": 0.1}, PANTRY).traces


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


def test_an_unknown_need_is_refused():
    with pytest.raises(InputError, match=r"“moon” is no need that Lumped knows. Choose one of: coeliac, wheat"):
        fit_for_table(DOUGHS, ["moon"], PANTRY)
