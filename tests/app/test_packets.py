"""A packet's label as a form is filled in: what is taken, what is assumed, and what is wrong beside which field."""

import tomllib
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from lumped.app.asking import Question
from lumped.app.examples import example_recipe
from lumped.app.for_class import classed
from lumped.app.given import Given
from lumped.app.larder import ingredient_told, shop_with_own
from lumped.app.packets import CONTAINS, FIGURES, LISTS, PLAIN, filled_in, packet_of
from lumped.app.readings import readings
from lumped.pantry.label_file import LabelFile, labelled_from
from lumped.texts import say

FLOUR = {
    "title": "corner flour", "like": "plain-flour", "per": "100 g", "fat_g": "1,1", "carbohydrate_g": "71.3",
    "fibre_g": "3", "protein_g": "10.2", "salt_g": "0.02", "serving_g": "30", "serving": "1/4 cup",
    "allergens": "wheat", "may_contain": "soya, milk",
}  # fmt: skip


def test_a_form_is_the_ingredient_file_that_a_person_could_have_written():
    packet = packet_of(FLOUR)
    assert not packet.slips
    document = tomllib.loads(packet.given.text)
    assert document["fat_g"] == 1.1
    assert document["may_contain"] == ["soya", "milk"]
    flour = labelled_from(document, "a.toml")
    assert packet.told["assumed"] == list(flour.assumed)
    assert packet.told["key"] == flour.key


def test_every_field_of_the_ingredient_file_stands_in_the_form():
    keys = {field.alias or name for name, field in LabelFile.model_fields.items()} - {"kind", "schema"}
    assert keys == {*FIGURES, *PLAIN, *LISTS, "fibre_within", "contains", "roles"}


PAID = {"pack_g": "1500", "pack_price": "1,80", "bought_in": "europe"}


def test_a_price_is_used_where_it_was_paid_and_nowhere_else():
    packet = packet_of(FLOUR | PAID)
    offers = {key: (price, packs) for key, _, price, packs, _ in packet.told["offers"]}
    assert offers["offer-europe"] == ("1.20 EUR/kg", "1500 g")
    assert offers["offer-japan"][1] == "–"
    recipe = Given(name="a.toml", text=example_recipe("ropewalk-salt.toml").replace('"plain-flour"', '"corner flour"'),
                   labels={"corner flour": packet.given.text})  # fmt: skip
    dear = replace(recipe, labels={"corner flour": packet_of(FLOUR | PAID | {"pack_price": "18"}).given.text})
    cost, costs = (readings(each, "europe")["readings"]["cost"]["middle"] for each in (recipe, dear))
    assert cost < costs
    assert readings(recipe, "japan")["readings"]["cost"]["says"] == say("web-cost-missing", names="corner flour")
    said = {"by": "people", "people": "28", "age": "9", "group": "two", "mass": "", "pot": "3", "minutes": "",
            "region": "europe", "little_over": False}  # fmt: skip
    plan = classed(Question(given=recipe, said=said), lambda _: None)
    bought = {key: row[3] for _, rows, keys in plan["shops"] for key, row in zip(keys, rows, strict=True)}
    assert bought["corner-flour"] == "1 × 1.5 kg"
    assert plan["sources"]["buy-corner-flour"]["note"] == say("web-source-paid")


@pytest.mark.parametrize("left_out", PAID)
def test_half_a_price_is_refused_beside_its_field(left_out):
    packet = packet_of(FLOUR | PAID | {left_out: ""})
    assert packet.slips["pack_price"].endswith("whose money it is in.")
    assert packet_of(FLOUR | PAID | {"bought_in": "the moon"}).slips["bought_in"]


def test_a_kept_file_fills_the_form_in_as_it_was():
    said = {**FLOUR, **PAID, "contains-gluten": "yes", "fibre_within": "no", "role": "body, binder", "allergens": "none",
            "energy_kJ": "1471.2345678"}  # fmt: skip
    text = packet_of(said).given.text
    assert tomllib.loads(packet_of(filled_in(text)).given.text) == tomllib.loads(text)


@pytest.mark.parametrize(
    ("wrong", "field", "words"),
    [
        ({"fat_g": "-3"}, "fat_g", "at least 0"),
        ({"fat_g": "much"}, "fat_g", "no number"),
        ({"fat_g": "nan"}, "fat_g", "number"),
        ({"fat_g": "60", "protein_g": "60"}, "per", "sums to"),
        ({"sugars_g": "80"}, "sugars_g", "of which they are a part"),
        ({"sodium_mg": "900"}, "salt_g", "two and a half"),
        ({"energy_kJ": "1450", "energy_kcal": "900"}, "energy_kcal", "kcal"),
        ({"per": "serving", "serving_g": "", "serving": ""}, "serving_g", "what a serving weighs"),
        ({"serving": "a handful"}, "serving", "can't be read"),
        ({"allergens": "weat"}, "allergens", "wheat"),
        ({"may_contain": "mustart"}, "may_contain", "mustard"),
        ({"title": "<script>alert(1)</script>"}, "title", "can't stand here"),
        ({"title": "=1+1"}, "title", "can't stand here"),
        ({"title": "plain flour"}, "title", "already has"),
        ({"like": "stardust"}, "like", "stardust"),
        ({"role": "magic"}, "role", "no role"),
    ],
)
def test_what_is_wrong_stands_beside_its_field(wrong, field, words):
    packet = packet_of(FLOUR | wrong)
    assert packet.told is None
    assert words in packet.slips[field]


def test_all_fields_that_are_wrong_by_themselves_are_told_at_once():
    assert set(packet_of(FLOUR | {"fat_g": "-1", "salt_g": "x", "title": "<b>"}).slips) == {"fat_g", "salt_g", "title"}


def test_an_empty_form_asks_for_a_figure():
    assert "no figure" in packet_of({}).slips[""]


@given(st.dictionaries(st.sampled_from([*FIGURES, *PLAIN, *LISTS, *(f"contains-{each}" for each in CONTAINS)]),
                       st.text(max_size=12)))  # fmt: skip
def test_whatever_is_typed_is_read_or_told(said):
    packet = packet_of(said)
    assert bool(packet.slips) != (packet.told is not None)


def test_an_own_ingredient_tells_what_its_packet_prints_and_what_was_assumed():
    told = packet_of(FLOUR).told
    rows = {row[0]: row for row in told["made_of"]}
    assert rows["part-protein"][3] == "from a label"
    assert rows["part-water"][3] == "from memory"  # it is what is left to a hundred
    assert "its packet" in told["sources"]["part-protein"]["note"]
    assert all(row[0] in told["sources"] for row in told["made_of"])


def test_an_ingredient_file_that_can_t_be_read_is_left_out_of_the_pantry_and_said():
    text = packet_of(FLOUR).given.text
    shop, troubles = shop_with_own({"corner flour": text, "sand": 'kind = "ingredient"\nschema = 1\ntitle = "sand"'})
    assert "corner-flour" in shop
    assert len(troubles) == 1
    assert "sand" in troubles[0]
    assert ingredient_told(shop, "Corner Flour")["own"]
