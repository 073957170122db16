"""Needs are understood in the words of teachers and families, and the nearest is named where one is not."""

import dataclasses

import pytest
from tests.dough.safety.bowls import PANTRY

from lumped.dough.safety import known_needs, need_in_words, need_named
from lumped.dough.safety.needs import borne
from lumped.errors import InputError
from lumped.reference import handbook


@pytest.mark.parametrize(
    ("word", "need"),
    [
        ("coeliac", "coeliac"), ("Celiac", "coeliac"), ("celiac disease", "coeliac"), ("Cœliac", None),
        ("gluten-free", "cereals containing gluten"), ("no gluten", "cereals containing gluten"), ("wheat", "wheat"),
        ("peanut", "peanuts"), ("Peanut allergy", "peanuts"), ("tree nuts", "tree nuts"), ("nuts", "nuts"),
        ("nut-free", "nuts"), ("almond", "tree nuts"), ("corn", "corn"), ("maize", "corn"), ("corn starch", "corn"),
        ("dairy", "milk"), ("dairy-free", "milk"), ("lactose intolerance", "milk"), ("egg", "eggs"), ("soy", "soybeans"),
        ("soya", "soybeans"), ("sesame", "sesame"), ("tahini", "sesame"), ("shellfish", "shellfish"),
        ("sulfites", "sulphur dioxide and sulphites"), ("VEGAN", "vegan"), ("buckwheat", "buckwheat"),
        ("allergic to lupin", "lupin"), ("crustacean shellfish", "crustaceans"),
    ],
)  # fmt: skip
def test_what_a_teacher_types_means_a_need(word, need):
    if need is None:
        with pytest.raises(InputError, match=r"Did you mean: coeliac"):
            need_named(word)
    else:
        assert need_named(word) == need


def test_each_word_of_the_table_means_a_need_that_is_known():
    facts = handbook().entry("allergens", "needs").facts
    assert set(facts["words"].values()) <= set(known_needs())
    assert set(facts["by_name"]) <= set(known_needs())
    assert all(need_named(each) == each and need_in_words(each) for each in known_needs())


def test_each_name_of_the_two_lists_of_allergens_is_understood():
    lists = [handbook().entry("allergens", region).facts["names"] for region in ("eu", "us")]
    assert all(need_named(name) for names in lists for name in names)


def test_a_word_nearly_right_is_answered_with_the_nearest():
    with pytest.raises(InputError, match=r"“peenut” is no need that Lumped knows. Did you mean: peanuts"):
        need_named("peenut")


def test_a_word_that_is_like_none_is_answered_with_all():
    with pytest.raises(InputError, match=r"“moon” is no need that Lumped knows. Choose one of: coeliac, wheat"):
        need_named("moon")


@pytest.mark.parametrize(
    ("need", "ingredient", "how"),
    [
        ("corn", "cornstarch", "holds"), ("corn", "corn-syrup", "holds"), ("corn", "baking-powder", "perhaps"),
        ("corn", "citric-acid", "perhaps"), ("corn", "iodised-salt", "perhaps"), ("corn", "plain-flour", ""),
        ("vegan", "honey", "holds"), ("vegan", "gelatine", "holds"), ("vegan", "granulated-sugar", "perhaps"),
        ("vegan", "food-colour", "perhaps"), ("vegan", "food-colour-gel", "perhaps"), ("vegan", "table-salt", ""),
        ("buckwheat", "buckwheat-flour", "holds"), ("buckwheat", "plain-flour", ""), ("citrus", "lime-juice", "holds"),
        ("coconut", "coconut-oil", "holds"), ("tree nuts", "coconut-oil", "perhaps"), ("peanuts", "lupin-flour", "perhaps"),
        ("nuts", "almond-flour", "holds"), ("wheat", "glucose-powder", "perhaps"), ("coeliac", "wheat-starch", "holds"),
    ],
)  # fmt: skip
def test_an_ingredient_holds_what_a_need_is_about_or_may(need, ingredient, how):
    assert borne(need, PANTRY[ingredient]) == how


def test_crustaceans_of_either_law_and_molluscs_are_shellfish():
    def of(**lists):
        return dataclasses.replace(PANTRY["table-salt"], **lists)

    assert borne("crustaceans", of(allergens_us=("crustacean shellfish",))) == "holds"
    assert borne("shellfish", of(allergens_eu=("molluscs",))) == "holds"
    assert borne("crustaceans", of(allergens_eu=("molluscs",))) == ""
