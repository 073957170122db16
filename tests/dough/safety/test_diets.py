"""Diets judge by what an ingredient is; remarks on faith judge nothing."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.dough.safety.bowls import BOWLS, PANTRY

from lumped.dough.safety import DIETS, remarks_on, suits
from lumped.errors import InputError
from lumped.quantities import Status


@pytest.mark.parametrize(
    ("ingredient", "diet", "fits"),
    [
        ("plain-flour", "no gluten", False), ("rye-flour", "no gluten", False), ("oat-flour", "no gluten", False),
        ("buckwheat-flour", "no gluten", True), ("almond-flour", "no nuts", False), ("plain-flour", "no nuts", True),
        ("cornstarch", "no corn", False), ("icing-sugar", "no corn", False), ("potato-starch", "no corn", True),
        ("honey", "vegan", False), ("gelatine", "vegan", False), ("vegetable-oil", "vegan", True),
    ],
)  # fmt: skip
def test_an_ingredient_suits_or_does_not(ingredient, diet, fits):
    answer, why = suits({ingredient: 0.1, "table-salt": 0.02}, PANTRY, diet)
    assert answer is fits
    assert (PANTRY[ingredient].name in why) or fits


def test_traces_fit_and_say_where_to_look():
    fits, why = suits({"rice-flour": 0.1}, PANTRY, "no gluten")
    assert fits
    assert why == "Suits “no gluten” as far as the ingredients tell; read the packet of white rice flour."


@given(BOWLS, st.sampled_from(sorted(PANTRY)), st.sampled_from(DIETS))
def test_adding_an_ingredient_never_makes_a_dough_suit(bowl, more, diet):
    assert suits(bowl, PANTRY, diet).fits or not suits({**bowl, more: 0.01}, PANTRY, diet).fits


@given(BOWLS)
def test_a_dough_without_gluten_has_no_allergen_of_wheat(bowl):
    if suits(bowl, PANTRY, "no gluten").fits:
        assert not any("wheat" in PANTRY[key].allergens_us for key in bowl)


def test_an_unknown_diet_is_refused_and_the_nearest_named():
    with pytest.raises(InputError, match=r"“vegam” is no diet that Lumped knows. Did you mean: vegan\?"):
        suits({"table-salt": 0.1}, PANTRY, "vegam")


def test_where_no_diet_is_near_all_are_told():
    with pytest.raises(InputError, match=r"“kosher” is no diet that Lumped knows. Choose one of: no gluten, no nuts"):
        suits({"table-salt": 0.1}, PANTRY, "kosher")


def test_a_remark_carries_status_and_day_and_no_verdict():
    remark = remarks_on({"gelatine": 0.01}, PANTRY)[0]
    assert (remark.ingredient, remark.status) == ("gelatine", Status.FROM_MEMORY)
    assert f"written {remark.written.isoformat()}; no verdict" in remark.words
