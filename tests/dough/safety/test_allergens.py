"""Allergens come from what went in, each with the ingredient that brings it."""

from hypothesis import given
from hypothesis import strategies as st
from tests.dough.safety.bowls import BOWLS, PANTRY

from lumped.dough.safety import allergens_of


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
