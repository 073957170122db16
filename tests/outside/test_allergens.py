"""Lists of allergens against the law, and the pantry against what its own names say, in four languages.

Sources: Regulation (EU) 1169/2011, Annex II, fourteen entries (oats, rye, barley, spelt and wheat are its "cereals
containing gluten"; almonds, hazelnuts, walnuts, cashews, pecans, Brazil nuts, pistachios and macadamias its "nuts"); US
Food Allergen Labeling and Consumer Protection Act of 2004 with the FASTER Act of 2021 (sesame, from 1 January 2023),
nine major allergens, of the cereals only wheat. From memory: buckwheat, coconut and maize are in neither list; the US
Food and Drug Administration named coconut a tree nut until its guidance of January 2025.
"""

import pytest

from lumped.dough.safety import allergens_of, need_named
from lumped.dough.safety.needs import borne
from lumped.pantry import pantry
from lumped.reference import handbook

PANTRY = pantry()
EU = {
    "celery", "cereals containing gluten", "crustaceans", "eggs", "fish", "lupin", "milk", "molluscs", "mustard",
    "peanuts", "sesame", "soybeans", "sulphur dioxide and sulphites", "tree nuts",
}  # fmt: skip
US = {"crustacean shellfish", "eggs", "fish", "milk", "peanuts", "sesame", "soybeans", "tree nuts", "wheat"}
WHEAT, OTHER_CEREALS = ("cereals containing gluten", "wheat"), ("cereals containing gluten", "")
WORDS = {
    # what the European and the American list call it: words of names in English, French, Spanish and Japanese
    WHEAT: "wheat spelt durum semolina blé épeautre froment trigo espelta sémola 小麦 薄力 中力 強力 全粒粉 スペルト"
           " セモリナ 浮き粉",
    OTHER_CEREALS: "rye barley oat oats oatmeal seigle orge avoine centeno cebada avena ライ麦 大麦 オート",
    ("milk", "milk"): "milk butter whey lait beurre leche mantequilla 牛乳 バター",
    ("eggs", "eggs"): "egg eggs œuf œufs huevo huevos 卵",
    ("soybeans", "soybeans"): "soy soya soybean soja 大豆",
    ("peanuts", "peanuts"): "peanut peanuts arachide cacahuete ピーナッツ 落花生",
    ("tree nuts", "tree nuts"): "almond almonds hazelnut walnut cashew pistachio amande amandes noisette almendra"
                                " avellana アーモンド くるみ",
    ("sesame", "sesame"): "sesame sésame sésamo ごま",
    ("lupin", ""): "lupin lupine altramuz ルピナス",
    ("mustard", ""): "mustard moutarde mostaza",
    ("celery", ""): "celery céleri apio セロリ",
}  # fmt: skip
SAID = {word: called for called, words in WORDS.items() for word in words.split()}
# "trigo sarraceno", buckwheat, is no wheat; and ordinary words that hold no allergen
NOT_SAID = ("trigo sarraceno", "without", "corn flour")
FREE = (
    "buckwheat-flour", "glutinous-rice-flour", "rice-flour", "maize-flour", "cornstarch", "potato-starch",
    "tapioca-starch", "sorghum-flour", "millet-flour", "chickpea-flour", "coconut-oil", "cream-of-tartar", "table-salt",
    "granulated-sugar", "white-vinegar", "xanthan-gum", "baby-oil",
)  # fmt: skip


def names_of(key):
    """All that an ingredient is called, without what only sounds like an allergen."""
    each = PANTRY[key]
    text = " ".join((each.key, each.name, *each.also, *each.names.values())).casefold().replace("-", " ")
    for words in NOT_SAID:
        text = text.replace(words, "")
    return text.replace("d'", "d' ").replace("l'", "l' ")


def said_in(key):
    text = names_of(key)
    spaced = set(text.split())
    return {word for word in SAID if (word in spaced if word.isascii() or word[0] < "\u3000" else word in text)}


def test_the_european_list_is_annex_ii_whole():
    names = handbook().entry("allergens", "eu").facts["names"]
    assert set(names) == EU
    assert len(names) == handbook().row("allergens", "eu", "count").printed == 14


def test_the_american_list_is_the_act_s_with_sesame_whole():
    names = handbook().entry("allergens", "us").facts["names"]
    assert set(names) == US
    assert len(names) == handbook().row("allergens", "us", "count").printed == 9


def test_each_name_on_either_list_is_a_need_that_a_teacher_may_type():
    assert all(need_named(name) for name in EU | US)


@pytest.mark.parametrize("key", sorted(key for key in PANTRY if said_in(key)))
def test_an_ingredient_whose_name_tells_an_allergen_carries_it(key):
    for word in said_in(key):
        eu, us = SAID[word]
        assert eu in PANTRY[key].allergens_eu, word
        assert not us or us in PANTRY[key].allergens_us, word


def test_the_words_find_what_they_should():
    """Else the test above would pass by finding nothing."""
    found = {key: said_in(key) for key in PANTRY}
    assert {"blé", "trigo", "wheat"} <= found["plain-flour"]
    assert {"seigle", "centeno", "ライ麦", "rye"} <= found["rye-flour"]
    assert {"amandes", "almendra", "アーモンド"} <= found["almond-flour"]
    assert found["buckwheat-flour"] == set()
    assert sum(map(bool, found.values())) >= 14


@pytest.mark.parametrize("key", sorted(PANTRY))
def test_every_allergen_of_an_ingredient_is_on_the_list_that_it_is_said_of(key):
    each = PANTRY[key]
    assert set(each.allergens_eu) <= EU
    assert set(each.allergens_us) <= US
    assert set(each.may_contain) <= EU | US


@pytest.mark.parametrize("key", FREE)
def test_what_only_sounds_like_an_allergen_is_none(key):
    assert allergens_of({key: 0.1}, PANTRY).names == ()
    assert borne("coeliac", PANTRY[key]) != "holds"
    assert borne("nuts", PANTRY[key]) != "holds"


def test_rye_barley_and_oats_are_on_the_european_list_alone():
    for key in ("rye-flour", "barley-flour", "oat-flour"):
        assert (PANTRY[key].allergens_eu, PANTRY[key].allergens_us) == (("cereals containing gluten",), ())


def test_coconut_is_on_neither_list_and_some_packets_still_call_it_a_nut():
    found = allergens_of({"coconut-oil": 0.1}, PANTRY)
    assert found.names == ()
    assert "tree nuts" in found.traces  # from memory: American packets printed before 2025
    assert borne("coconut", PANTRY["coconut-oil"]) == "holds"


def test_maize_and_buckwheat_are_on_neither_list_and_still_a_need():
    assert not {"corn", "buckwheat"} & (EU | US)
    assert borne(need_named("maize"), PANTRY["icing-sugar"]) == "holds"
    assert borne(need_named("buckwheat"), PANTRY["buckwheat-flour"]) == "holds"
