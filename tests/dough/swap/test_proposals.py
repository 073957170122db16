"""Proposals keep what matters, hold nothing that was forbidden, and are what they say when worked out alone."""

import pytest
from tests.bowls import CONDUCTING, INSULATING, recipe_of

from lumped.dough.kneading import knead, knead_middle, kneading
from lumped.dough.swap import CLASSES, Wish, read_wish, swapped
from lumped.dough.swap.explaining import reasons_for
from lumped.errors import InputError, RecipeError
from lumped.pantry import pantry

SALT = recipe_of({**CONDUCTING, "table-salt": 73})
SUGAR = recipe_of(INSULATING, "insulating", "not cooked")


@pytest.mark.parametrize(
    ("recipe", "kind"), [(SALT, "gluten"), (SALT, "acid"), (SALT, "fat"), (SUGAR, "gluten"), (SUGAR, "sugar")]
)
def test_no_proposal_holds_what_was_forbidden(recipe, kind):
    shop = pantry()
    found = swapped(recipe, Wish(classes=(kind,)), shop, measures="scale", count=2)
    assert found.proposals or found.blockers
    for proposal in found.proposals:
        assert [key for key in proposal.recipe.ingredients if CLASSES[kind](shop[key])] == []


def test_a_proposal_worked_out_alone_gives_the_printed_figures():
    found = swapped(SALT, Wish(ingredients=("cream-of-tartar",)), count=1, measures="scale")
    proposal = found.proposals[0]
    alone = knead(proposal.recipe)
    assert alone.resistivity.mean == pytest.approx(proposal.properties["resistivity"].mean, rel=1e-9)
    activity = alone.reason("water_activity").value.mean
    assert activity == pytest.approx(proposal.properties["water_activity"].mean, rel=1e-6)


def test_another_acid_instead_of_cream_of_tartar_keeps_what_the_dough_does():
    found = swapped(SALT, Wish(ingredients=("cream-of-tartar",)), count=3, measures="scale")
    assert len(found.proposals) == 3
    for proposal in found.proposals:
        assert proposal.ratio.mean == pytest.approx(1, abs=0.25)
        assert float(knead_middle(proposal.recipe).ph[0]) < 5
        assert proposal.reasons


def test_without_gluten_the_allergen_is_gone_and_the_dough_still_carries():
    found = swapped(SALT, Wish(classes=("gluten",)), count=2, measures="scale")
    assert found.gone == ("plain-flour",)
    for proposal in found.proposals:
        assert "cereals containing gluten" not in proposal.allergens
        assert knead(proposal.recipe).conducts


def test_with_nothing_forbidden_the_recipe_comes_back_as_it_is():
    found = swapped(SALT, Wish(), measures="scale")
    assert found.unchanged
    assert {key: SALT.mass_of(key) for key in SALT.ingredients} == pytest.approx(
        {key: found.proposals[0].recipe.mass_of(key) for key in found.proposals[0].recipe.ingredients}
    )


def test_proposals_are_distinct():
    found = swapped(SALT, Wish(classes=("gluten",)), count=3, measures="scale")
    assert len({frozenset(each.recipe.ingredients) for each in found.proposals}) == len(found.proposals)


def test_without_table_salt_it_is_told_what_stands_in_the_way():
    found = swapped(SALT, Wish(classes=("salt",)), count=1, measures="scale")
    assert found.proposals == ()
    # Epsom salt alone carries a quarter of what salt does (CRC: 54 against 226 mS/cm at best); potassium is limited
    assert "limits" in {each.requirement for each in found.blockers}
    assert all(each.words and each.ingredients for each in found.blockers)


@pytest.mark.parametrize(
    ("without", "says"),
    [(["alumn"], r"alum"), (["xanthan gum"], r"."), (["moonlight"], r"moonlight")],
)
def test_an_ingredient_that_is_not_known_or_not_in_it_is_told(without, says):
    with pytest.raises((InputError, RecipeError), match=says):
        read_wish(SALT, pantry(), without=without, diets=(), where=None, target=None)


SODA = recipe_of({"plain-flour": 125, "tap-water": 237, "baking-soda": 24, "vegetable-oil": 14})


def test_salt_takes_the_place_of_soda_as_no_dough_needs_to_be_a_lye():
    found = swapped(SODA, Wish(ingredients=("baking-soda",)), measures="scale")
    first = found.proposals[0]
    assert [each.ingredient for each in first.changes if not each.before and each.after] == ["table-salt"]
    assert first.feel.fits
    assert 5.5 < first.properties["ph"].mean < 6.5 < 7 < found.before["ph"].mean


def test_a_sour_dough_stays_sour():
    found = swapped(SALT, Wish(ingredients=("cream-of-tartar",)), measures="scale")
    assert all(each.properties["ph"].mean < 5 for each in found.proposals)


def test_measures_and_counts_that_cannot_be_are_told():
    with pytest.raises(InputError, match=r"buckets"):
        swapped(SALT, Wish(), measures="buckets")
    with pytest.raises(InputError, match=r"9"):
        swapped(SALT, Wish(), count=9)


def test_keeping_names_what_left_and_what_came_in_its_stead():
    sweet = {"plain-flour": 150, "granulated-sugar": 100, "distilled-water": 70}
    before, after = (kneading(recipe_of(each, "insulating", "not cooked"), pantry())
                     for each in (sweet, sweet | {"granulated-sugar": 40, "glycerine": 15}))  # fmt: skip
    words = next(each.words for each in reasons_for(before, after, pantry()) if each.key == "keeping")
    assert "less sucrose" in words
    assert "though" in words
    assert "more glycerol" in words


def test_a_thin_liquid_names_the_ions_that_came():
    watery = {"plain-flour": 150, "granulated-sugar": 100, "distilled-water": 70}
    before, after = (kneading(recipe_of(each, "insulating", "not cooked"), pantry())
                     for each in (watery, watery | {"table-salt": 0.05}))  # fmt: skip
    words = next(each.words for each in reasons_for(before, after, pantry()) if each.key == "liquid")
    assert "more of sodium" in words or "more of chloride" in words
