"""Wishes of all kinds: what is forbidden stays out, what stands in the way is named, what can't be is refused."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.bowls import INSULATING, recipe_of
from tests.dough.swap.shelves import shelf

from lumped.dough.kneading import kneading
from lumped.dough.properties import PROPERTIES
from lumped.dough.safety.needs import borne
from lumped.dough.swap import CLASSES, Wish, read_wish, swapped
from lumped.dough.swap.explaining import parts_of
from lumped.dough.what_if import ratio
from lumped.errors import InputError, RecipeError
from lumped.pantry import pantry

SALT = {"plain-flour": 130, "tap-water": 237, "table-salt": 55, "vegetable-oil": 13.6, "cream-of-tartar": 9}


_NEED = {"soybeans": "soybeans", "gluten": "coeliac"}


def salt_dough():
    return recipe_of(SALT)


def sugar_dough():
    return recipe_of(INSULATING, "insulating", "not cooked")


@settings(max_examples=4, deadline=None, derandomize=True)
@given(st.sampled_from(sorted(CLASSES)), st.sampled_from([(), ("no gluten",), ("vegan", "no corn")]), st.booleans())
def test_what_is_forbidden_is_in_no_proposal(word, diets, conducts):
    wish = Wish(classes=(word,), diets=diets)
    for each in swapped(salt_dough() if conducts else sugar_dough(), wish, count=4).proposals:
        for key in each.recipe.ingredients:
            assert not CLASSES[word](pantry()[key])
            if "no gluten" in diets:
                assert "gluten" not in pantry()[key].contains
                assert "cereals containing gluten" not in pantry()[key].allergens_eu


@pytest.mark.parametrize(
    ("word", "meant"),
    [("soy", "soybeans"), ("Lupine", "lupin"), ("dairy", "milk"), ("celiac", "gluten"), ("sesame", "sesame")],
)
def test_an_allergen_is_a_class_under_every_name_that_people_use(word, meant):
    assert read_wish(salt_dough(), pantry(), without=[word]).classes == (meant,)


def test_what_replaces_soy_flour_holds_no_soy():
    recipe = recipe_of({"soy-flour": 130, "tap-water": 200, "table-salt": 40, "vegetable-oil": 10})
    found = swapped(recipe, read_wish(recipe, pantry(), without=["soy"]), count=3)
    assert found.proposals
    used = {key for each in found.proposals for key in each.recipe.ingredients}
    assert not [key for key in used if "soybeans" in pantry()[key].allergens_eu]


@pytest.mark.parametrize(("word", "named"), [("soy", "soybeans"), ("gluten", "gluten")])
def test_what_may_bring_traces_of_it_comes_last_and_says_so(word, named):
    body = {"soy": "soy-flour", "gluten": "plain-flour"}[word]
    recipe = recipe_of({body: 130, "tap-water": 200, "table-salt": 40, "vegetable-oil": 10})
    found = swapped(recipe, read_wish(recipe, pantry(), without=[word]), count=5)
    traces = [sum(borne(_NEED[named], pantry()[key]) == "perhaps" for key in each.recipe.ingredients)
              for each in found.proposals]  # fmt: skip
    assert traces[0] == 0
    assert sorted(map(bool, traces)) == list(map(bool, traces))
    for each, number in zip(found.proposals, traces, strict=True):
        assert bool(each.traces.get(named)) == bool(number)


def test_an_oil_that_may_be_of_soy_gives_way_to_one_that_is_not():
    recipe = recipe_of({"soy-flour": 130, "tap-water": 200, "table-salt": 40, "vegetable-oil": 10})
    best = swapped(recipe, read_wish(recipe, pantry(), without=["soy"]), count=1).proposals[0]
    assert "vegetable-oil" not in best.recipe.ingredients
    assert any("soybeans" not in pantry()[key].may_contain and "softener" in pantry()[key].roles
               for key in best.recipe.ingredients)  # fmt: skip


def test_every_figure_is_that_of_the_proposal_worked_out_alone():
    recipe = salt_dough()
    each = swapped(recipe, Wish(classes=("gluten",)), count=1).proposals[0]
    alone = kneading(each.recipe)
    for key in ("resistivity", "water_activity", "hydration", "ph", "sodium"):
        value, shown = alone.value(PROPERTIES[key].given(alone.chain), PROPERTIES[key].unit, key), each.properties[key]
        assert (value.low, value.mean, value.high) == (shown.low, shown.mean, shown.high)
    assert each.ratio == ratio(alone, kneading(recipe))


@pytest.mark.parametrize("measures", ["us", "japanese", "scale"])
def test_every_requirement_is_kept_after_rounding(measures):
    found = swapped(salt_dough(), Wish(ingredients=("cream-of-tartar",)), measures=measures)
    assert found.proposals
    assert max(sum(each.beyond.values()) for each in found.proposals) <= 1e-3


@pytest.mark.parametrize("acid", ["lemon-juice", "citric-acid"])
def test_another_acid_for_cream_of_tartar_keeps_ph_and_resistivity(acid):
    found = swapped(salt_dough(), Wish(ingredients=("cream-of-tartar",)), shelf(*SALT, acid), measures="scale")
    best = found.proposals[0]
    assert acid in best.recipe.ingredients
    assert best.properties["ph"].mean == pytest.approx(found.before["ph"].mean, abs=0.7)  # tolerance in `swap`
    assert best.ratio.mean == pytest.approx(1.0, abs=0.1)  # acid is about 1.5 % of the brine's conductivity


def test_rice_flour_for_wheat_takes_the_allergens_away():
    best = swapped(salt_dough(), Wish(classes=("wheat",)), shelf(*SALT, "rice-flour")).proposals[0]
    assert "rice-flour" in best.recipe.ingredients
    assert best.allergens == ()
    assert set(best.allergens_gone) == {"cereals containing gluten", "wheat"}
    assert any("stretch" in note for note in best.notes)


def test_no_proposal_is_worse_than_the_old_interval():
    found = swapped(sugar_dough(), Wish(classes=("sugar",)))
    assert all(each.properties["resistivity"].mean >= found.before["resistivity"].low for each in found.proposals)
    found = swapped(salt_dough(), Wish(stove=False))
    assert all(each.properties["resistivity"].mean <= found.before["resistivity"].high for each in found.proposals)


def test_a_cold_dough_without_gluten_gets_a_binder():
    best = swapped(sugar_dough(), Wish(diets=("no gluten",)), count=1).proposals[0]
    assert any("binder" in pantry()[key].roles for key in best.recipe.ingredients)


def test_without_a_stove_it_is_made_in_other_ways():
    ways = {each.recipe.cooked for each in swapped(salt_dough(), Wish(stove=False)).proposals}
    assert ways
    assert "pot" not in ways


def test_only_other_water_goes_in_where_a_water_leaves():
    """A cup of lemon juice with baking soda is no water."""
    found = swapped(salt_dough(), read_wish(salt_dough(), pantry(), without=["tap-water"]))
    assert [each.recipe.ingredients[-1] for each in found.proposals] == ["distilled-water"]


def test_an_impossible_wish_names_what_stands_in_the_way():
    """Potassium salt carries as well as table salt, but a lump of it holds more than the dose of concern."""
    little = recipe_of({**SALT, "table-salt": 25})
    found = swapped(little, Wish(classes=("salt",)), shelf(*SALT, "potassium-chloride-salt"))
    assert found.proposals == ()
    blocker = next(each for each in found.blockers if each.requirement == "limits")
    assert "potassium-chloride-salt" in blocker.ingredients
    assert "not advised" in blocker.words


def test_where_two_requirements_stand_in_the_way_no_single_one_is_blamed():
    """Without salt, and nothing else to take its place, a dough neither carries nor keeps."""
    found = swapped(salt_dough(), Wish(classes=("salt",)), shelf(*SALT))
    assert (found.proposals, found.blockers) == ((), ())


def test_a_part_of_the_wish_can_stand_in_the_way():
    """Without salt nothing carries; without fat alone, glycerine softens."""
    wish = Wish(classes=("salt", "fat"))
    found = swapped(salt_dough(), wish, shelf(*SALT, "glycerine"))
    assert found.proposals == ()
    assert "salt" in [each.requirement for each in found.blockers]


def test_aims_are_met():
    less = swapped(salt_dough(), Wish(target="saltless"), count=1)
    assert less.proposals[0].properties["sodium"].mean < 0.97 * less.before["sodium"].mean
    more = swapped(sugar_dough(), Wish(target="blocks-better"), count=1)
    assert more.proposals[0].ratio.mean > 1.5


@pytest.mark.parametrize(("recipe", "target"), [(sugar_dough, "blocks-better"), (salt_dough, "saltless")])
def test_nothing_is_left_in_it_as_a_mere_trace(recipe, target):
    for each in swapped(recipe(), Wish(target=target), count=5).proposals:
        assert [one for one in each.changes if 0 < one.after < 0.05 * one.before] == []


def test_the_same_question_has_the_same_answer():
    one, other = (swapped(salt_dough(), Wish(classes=("acid",)), count=2).as_dict() for _ in range(2))
    assert one == other


def test_the_steps_explain_the_whole_ratio():
    before, after = kneading(salt_dough()).chain, kneading(recipe_of({**SALT, "table-salt": 20})).chain
    whole = float(np.median(np.log(after.resistivity / before.resistivity)))
    assert sum(parts_of(before, after).values()) == pytest.approx(whole, abs=0.02)  # medians of parts, not of the sum


REFUSED = [
    ({"without": ["sealing wax"]}, InputError, r"neither an ingredient nor a class"),
    ({"without": ["honey"]}, RecipeError, r"There is no honey in “dough”. It is made of: plain-flour"),
    ({"without": ["Water"]}, InputError, r"Nothing replaces water in a dough.* say --without tap-water"),
    ({"diets": ["glutenfree"]}, InputError, r"is no diet that Lumped knows. Did you mean"),
    ({"target": "no-stove"}, InputError, r"say --without stove instead of aiming at “no-stove”"),
    ({"target": "cheap"}, InputError, r"nothing that Lumped can aim at. Did you mean: cheapest"),
    ({"target": "cheapest"}, InputError, r"Say where, such as --region europe"),
    ({"target": "blocks-better"}, InputError, r"is a conducting dough, so “blocks-better” would spoil it"),
    ({"where": "atlantis"}, InputError, r"atlantis"),
]


@pytest.mark.parametrize(("asked", "error", "words"), REFUSED)
def test_a_wish_that_cannot_be_is_refused_in_words(asked, error, words):
    with pytest.raises(error, match=words):
        read_wish(salt_dough(), pantry(), **asked)


def test_measures_and_counts_that_cannot_be_are_refused():
    with pytest.raises(InputError, match=r"There are no roman measures here. Choose one of: us"):
        swapped(salt_dough(), Wish(classes=("fat",)), measures="roman")
    with pytest.raises(InputError, match=r"0 proposals can’t be shown. Ask for 1 to 8"):
        swapped(salt_dough(), Wish(classes=("fat",)), count=0)


def test_nothing_left_is_said():
    with pytest.raises(RecipeError, match=r"Nothing is left that could be the body of “dough”"):
        swapped(salt_dough(), Wish(classes=("gluten",)), shelf(*SALT))


@pytest.mark.parametrize(
    ("word", "diets", "classes"),
    [("coeliac", ("no gluten",), ()), ("celiac", ("no gluten",), ()), ("gluten free", ("no gluten",), ()),
     ("nut allergy", ("no nuts",), ()), ("maize", ("no corn",), ()), ("Vegan", ("vegan",), ()),
     ("dairy-free", (), ("milk",)), ("peanut allergy", (), ("peanuts",)), ("wheat", (), ("wheat",))],
)  # fmt: skip
def test_a_diet_is_asked_for_in_the_words_that_a_childs_need_has(word, diets, classes):
    """As `lumped care --child` takes them."""
    wish = read_wish(salt_dough(), pantry(), diets=[word])
    assert (wish.diets, wish.classes) == (diets, classes)


@pytest.mark.parametrize("word", ["coeliac disease", "sprue", "celiac"])
def test_who_has_coeliac_disease_goes_without_gluten(word):
    assert read_wish(salt_dough(), pantry(), without=[word]).classes == ("gluten",)
