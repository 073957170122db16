"""Cautions follow from what went in and how it is made; each is an object to choose from."""

import dataclasses
import datetime
import re
from functools import partial
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.dough.safety.bowls import BOWLS, PANTRY, SALT_DOUGH, SUGAR_DOUGH

import lumped.texts
from lumped.dough import knead, read_recipe
from lumped.dough.safety import KNOWN, cautions_on

on = partial(cautions_on, pantry=PANTRY, cooked="not cooked", date=datetime.date(2026, 11, 26))
DEMO = Path(__file__).parents[3] / "demo/recipes"
GRAVITY = ("poison", "injury", "care")
WAYS = ("pot", "kettle", "microwave", "not cooked")


def keys(bowl, dough_mass, **how):
    return {each.key for each in on(bowl, dough_mass, **how)}


@given(BOWLS, st.sampled_from(WAYS))
def test_the_gravest_come_first_the_rules_last_and_each_has_words_of_its_own(bowl, cooked):
    found = on(bowl, sum(bowl.values()), cooked=cooked)
    gravity = [GRAVITY.index(each.severity) for each in found]
    assert gravity == sorted(gravity)
    assert found[-1].key == "rules"
    assert len({each.key for each in found}) == len({each.words for each in found}) == len(found)
    assert all(set(each.ingredients) <= set(bowl) for each in found)


@pytest.mark.parametrize("bowl", [{key: 1.0} for key in PANTRY], ids=list(PANTRY))
def test_no_caution_that_an_ingredient_carries_is_lost(bowl):
    said = " ".join(each.words for each in on(bowl, sum(bowl.values())))
    told = {"raw-flour": "germs", "acid-eyes": "eyes", "slippery": "slippery", "colour-stains": "stains",
            "sugar-ants": "ants", "dust": "dust", "spirit": "flame", "alum": "Alum", "borax": "Borax",
            "tartrate-dogs": "dog", "epsom-laxative": "laxative", "potassium": "Potassium", "glycerine-drink": "lycerine",
            "honey-infants": "Honey", "lye": "soda", "not-food-grade": "not sold as food"}  # fmt: skip
    for key in bowl:
        assert all(told[caution] in said for caution in PANTRY[key].cautions if caution in told)


def test_the_words_on_salt_hold_both_doses_and_the_pinch():
    found = on(SALT_DOUGH, 0.386, cooked="pot")[0]
    assert found.key == "eaten"
    for part in ("9.3 per cent salt", "97 g of it", "a child of 2 (12 kg)", "a dog of 10 kg", "never give salt water"):
        assert part in found.words
    assert {"rcpch-2009", "usda-sr"} <= set(found.provenance.sources)


@pytest.mark.parametrize("salt", ["potassium-chloride-salt", "epsom-salt", "calcium-chloride-salt", "alum"])
def test_salts_without_sodium_sting_and_kill_plants_too(salt):
    found = keys({"potato-starch": 0.2, salt: 0.05, "tap-water": 0.1}, 0.35)
    assert {"salt-skin", "disposal-salt"} <= found
    assert "eaten" not in found


def test_a_dough_without_salt_is_not_called_salty():
    assert not keys(SUGAR_DOUGH, 0.38) & {"eaten", "salt-skin", "disposal-salt"}
    assert {"sugar-ants", "slippery", "disposal", "mould"} <= keys(SUGAR_DOUGH, 0.38)


@pytest.mark.parametrize(("cooked", "key"), [("pot", "flour-cooked"), ("microwave", "flour-cooked"),
                                             ("kettle", "flour-raw"), ("not cooked", "flour-raw")])  # fmt: skip
def test_only_a_dough_that_is_cooked_through_counts_as_cooked(cooked, key):
    found = {each.key: each for each in on(SALT_DOUGH, 0.38, cooked=cooked)}
    assert key in found
    assert ("hot" in found) == (cooked != "not cooked")
    assert "sure remedy" in found[key].words or "can’t promise" in found[key].words


def test_cream_of_tartar_warns_of_dogs_with_its_source_and_once():
    found = [each for each in on(SALT_DOUGH, 0.38) if "cream-of-tartar" in each.ingredients and "dog" in each.words]
    assert [each.key for each in found] == ["tartrate-dog"]
    assert "wegenast-2022" in found[0].provenance.sources


def test_a_little_cream_of_tartar_still_warns_of_dogs():
    assert "tartrate-dogs" in keys({**SALT_DOUGH, "cream-of-tartar": 0.001}, 0.38)


def test_potassium_of_flour_and_tartar_raises_no_alarm_but_potassium_salt_does():
    assert "potassium-child" not in keys(SALT_DOUGH, 0.38)
    assert "potassium-child" in keys({**SALT_DOUGH, "potassium-chloride-salt": 0.036}, 0.41)


def test_a_sheet_names_the_grams_of_a_potassium_dough_as_it_does_those_of_salt():
    (found,) = (
        each for each in on({**SALT_DOUGH, "potassium-chloride-salt": 0.036}, 0.41) if each.key == "potassium-child"
    )
    assert "g of this dough" in found.brief
    assert "poison centre at once" in found.brief


def test_alum_brings_the_law_and_a_word_on_no_known_dose():
    found = {each.key: each for each in on({"plain-flour": 0.2, "alum": 0.01, "table-salt": 0.05}, 0.5)}
    assert found["migration-Al"].scope == "law"
    assert "No dose for children is known" in found["alum"].words


def test_the_table_s_cautions_are_marked_so_that_a_verdict_need_not_repeat_them():
    table = {each.key for each in on(SALT_DOUGH, 0.38) if each.scope == "table"}
    assert table == {"small-parts", "pack-wires", "cells", "mains", "metal"}


def test_a_caution_that_nobody_wrote_a_sentence_for_sends_people_to_the_packet():
    odd = dataclasses.replace(PANTRY["table-salt"], key="odd", name="odd salt", cautions=("glows-at-night",))
    found = cautions_on({"odd": 0.1}, 0.2, PANTRY.with_added(odd), cooked="pot", date=datetime.date(2026, 1, 1))
    words = next(each.words for each in found if each.key == "packet")
    assert words == "Read and heed what the packet of odd salt warns of."


def test_a_dough_of_no_allergens_says_so():
    found = {each.key: each.severity for each in on({"table-salt": 0.1, "distilled-water": 0.2}, 0.3)}
    assert found["no-allergens"] == "care"
    assert "allergens" not in found


def test_each_caution_stands_once_with_its_sentence_and_each_sentence_belongs_to_one():
    files = Path(lumped.texts.__file__).parent.glob("en/*.ftl")
    written = {key for file in files for key in re.findall(r"^safety-caution-([\w-]+) =", file.read_text(), re.M)}
    with_figures = {each for each in KNOWN if each.startswith("migration") or each.endswith(("-child", "-dog"))}
    assert written == set(KNOWN) - with_figures


def test_a_sheet_s_short_sentences_are_the_same_cautions():
    long, short = (
        {each.key: len(each.words) for each in on(SALT_DOUGH, 0.38, cooked="pot")},
        on(SALT_DOUGH, 0.38, cooked="pot"),
    )
    assert all(len(each.brief) <= long[each.key] for each in short)
    assert "nobody eats raw dough" in next(each.brief for each in short if each.key == "flour-cooked")


def test_a_kneaded_dough_says_the_same_cautions_as_its_care():
    recipe = read_recipe(DEMO / "ropewalk-salt.toml")
    found = cautions_on(recipe.masses, 0.4, PANTRY, cooked=recipe.cooked, date=None, name=recipe.title)
    told, left_out = knead(recipe).cautions, ("eaten", "dust", "may-contain")
    wanted = {each.key: each.brief for each in found if each.is_of_material and each.key not in left_out}
    assert set(wanted.values()) <= set(told)
    assert len(told) == len(wanted) + 1  # and the words on salt, whose figures hang on the mass


def test_a_caution_says_when_it_applies():
    found = {each.key: each.when for each in on(SALT_DOUGH, 0.38, cooked="pot")}
    assert (found["eaten"], found["hot"], found["acid-eyes"], found["mains"]) == (
        "amount", "making", "ingredients", "always",
    )  # fmt: skip
