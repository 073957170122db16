"""Each figure of a dough names the sources of the laws that made it, and no others."""

import pytest
from tests.bowls import CONDUCTING, INSULATING, recipe_of

from lumped.dough.kneading import knead, kneading
from lumped.dough.origins import FIGURES
from lumped.dough.properties import PROPERTIES

SALTED = {**CONDUCTING, "table-salt": 73, "lemon-juice": 10}
CONDUCTIVITY = {"crc-equivalent", "wu-koch-pratt"}
ACTIVITY, DENSITY, FOOD = "pitzer-dat", "laliberte-2009", "usda-sr"
# figure: what it must name, what it must not
NAMED = {
    "went_in": (set(), {FOOD, ACTIVITY, DENSITY, *CONDUCTIVITY}),
    "hydration": ({FOOD}, {ACTIVITY, DENSITY, *CONDUCTIVITY}),
    "mass": ({FOOD}, {ACTIVITY, DENSITY, *CONDUCTIVITY}),
    "bound_water": ({FOOD}, {ACTIVITY, DENSITY, *CONDUCTIVITY}),
    "water_activity": ({ACTIVITY, FOOD}, {DENSITY, *CONDUCTIVITY}),
    "density": ({DENSITY, "poradnik-1974"}, {ACTIVITY, *CONDUCTIVITY}),
    "ph": ({FOOD}, {ACTIVITY, *CONDUCTIVITY}),
    "liquid_conductivity": ({"crc-equivalent"}, {ACTIVITY}),
    "resistivity": ({"crc-equivalent", DENSITY}, {ACTIVITY}),
    "obstruction": ({DENSITY}, {ACTIVITY, *CONDUCTIVITY}),
    "sodium": ({FOOD}, {ACTIVITY, DENSITY, *CONDUCTIVITY}),
}


@pytest.fixture(scope="module")
def salted():
    return kneading(recipe_of(SALTED))


@pytest.mark.parametrize("figure", NAMED)
def test_a_figure_names_the_tables_of_its_laws_and_no_others(salted, figure):
    wanted, unwanted = NAMED[figure]
    named = set(salted.origins.of(figure).sources)
    assert wanted <= named
    assert not unwanted & named


def test_the_sour_of_vinegar_names_the_table_of_its_acid():
    sour = kneading(recipe_of({**SALTED, "white-vinegar": 20}))
    assert "crc-conductivity" in sour.origins.of("ph").sources
    assert "crc-conductivity" not in sour.origins.of("water_activity").sources


def test_potash_brings_its_own_standards_and_salt_does_not(salted):
    potash = kneading(recipe_of({**CONDUCTING, "potassium-chloride-salt": 60}))
    assert "wu-koch-pratt" in potash.origins.of("liquid_conductivity").sources
    assert "wu-koch-pratt" not in kneading(recipe_of({"plain-flour": 125, "distilled-water": 237, "table-salt": 73})
                                           ).origins.of("went_in").sources  # fmt: skip


def test_each_figure_says_in_words_which_laws_made_it(salted):
    assert "Pitzer" in salted.origins.of("water_activity").note
    assert "Davies" in salted.origins.of("ph").note
    assert "Archie" in salted.origins.of("resistivity").note
    assert salted.origins.of("went_in").note == "Made by what was weighed or measured out."


def test_what_is_open_in_a_figure_is_what_its_laws_take(salted):
    assert set(salted.origins.opened("went_in")) == {f"mass {n}" for n in range(1, 7)}
    assert "archie_exponent" in salted.origins.opened("resistivity")
    assert "archie_exponent" not in salted.origins.opened("water_activity")


@pytest.mark.parametrize("grams", [SALTED, INSULATING, {"plain-flour": 100, "honey": 100, "glycerine": 20}])
def test_every_step_and_fact_of_a_dough_and_every_property_has_an_origin(grams):
    dough = knead(recipe_of(grams))
    origins = kneading(recipe_of(grams)).origins
    assert {each.key for each in (*dough.reasons, *dough.facts)} | set(PROPERTIES) <= set(FIGURES)
    for each in (*dough.reasons, *dough.facts):
        assert each.value.provenance == origins.of(each.key)
