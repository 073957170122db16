"""What a label leaves out is never a silent nothing: a range, in figures, that reaches the dough."""

import re
from dataclasses import replace

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from lumped.dough import Portion, Recipe, knead
from lumped.errors import InputError
from lumped.pantry import pantry
from lumped.pantry.label import Label
from lumped.pantry.labelling import labelled
from lumped.quantities import Status, Value

WHOLE = Label(
    name="mill flour", fat=1.1e-3, carbohydrate=71.3e-3, sugars=0.8e-3, fibre=3.0e-3, protein=10.2e-3, salt=0.0,
    allergens=("wheat",),
)  # fmt: skip
SYRUP = Label(name="syrup y", carbohydrate=80e-3, allergens=())


def said(ingredient, start):
    (found,) = (each for each in ingredient.assumed if each.startswith(start))
    return found


def test_a_label_that_says_three_grams_of_a_hundred_is_asked_for_more():
    with pytest.raises(InputError, match="tells what 3 g of 100 g are, and nothing of fat and carbohydrate") as caught:
        labelled(Label(name="riddle", protein=3e-3, allergens=()))
    assert "most like" in str(caught.value)


@pytest.mark.parametrize("figures", [{"salt": 99.8e-3}, {"fat": 100e-3}, {"carbohydrate": 99.9e-3, "sugars": 99.9e-3},
                                     {"fat": 0.0, "carbohydrate": 1e-3, "protein": 0.0}, {"water": 97e-3}])  # fmt: skip
def test_what_is_nearly_all_said_is_not_asked_for_more(figures):
    assert labelled(Label(name="plain thing", allergens=(), **figures)).composition


def test_what_a_label_leaves_out_is_taken_from_its_like():
    """Plain wheat flour has 12 % water (10.4 to 13.4); 10 % protein alone on the label changes little of it."""
    flour, like = labelled(Label(name="sack", like="plain-flour", protein=10e-3, allergens=())), pantry()["plain-flour"]
    for part in ("water", "starch", "fat", "fibre"):
        assert flour.composition[part] == pytest.approx(like.composition[part], rel=0.03)
    assert flour.moisture.low < like.moisture.low < like.moisture.high < flour.moisture.high < 0.2
    taken = said(flour, "Not on the label, so taken as in plain wheat flour:")
    assert "fat 0.98 % (0.49 to 1.5 %)" in taken
    low, high = (float(each) for each in re.search(r"carbohydrate \d+ % \((\d+) to (\d+) %\)", taken).groups())
    assert 60 < low < 74 < high < 85  # no more than the rest and the least water leave room for
    assert "as in plain wheat flour" in said(flour, "Water is not on the label")


def test_a_small_part_left_out_widens_the_water_by_its_own_interval():
    """Plain wheat flour holds 0.98 % fat; half of that either way is left open."""
    known, unsaid = (labelled(replace(WHOLE, like="plain-flour", fat=each)) for each in (0.98e-3, None))
    assert unsaid.composition["water"] == pytest.approx(known.composition["water"], abs=2e-4)
    narrow, wide = ((each.moisture.mean - each.moisture.low) for each in (known, unsaid))
    assert wide - narrow == pytest.approx(0.0049, abs=2e-4)


def test_a_great_part_left_out_leaves_the_water_of_its_like():
    flour = labelled(replace(WHOLE, like="wholemeal-flour", fibre=None))
    assert "taken as in wholemeal" in said(flour, "Water is not on the label")


def test_without_a_like_what_is_left_out_may_be_all_that_is_left():
    syrup = labelled(SYRUP)
    assert syrup.moisture.low == 0
    assert syrup.moisture.mean == pytest.approx(0.2, abs=0.01)  # less a trace of salt and ash
    assert "fat (0 to 20 %), protein (0 to 20 %)" in said(syrup, "Not on the label, so none taken")
    assert said(syrup, "Water is not on the label").endswith("(0.0 to 21.4 %).")


def test_sugars_left_out_are_said_to_be_open_and_what_it_does_a_guess():
    syrup = labelled(SYRUP)
    assert "none taken, all 80 % of carbohydrate as starch" in said(syrup, "Sugars are not on the label")
    assert "body" in said(syrup, "What it does in a dough was not said")
    told = labelled(replace(SYRUP, like="golden-syrup"))
    assert told.composition.get("starch", 0.0) < 0.02
    assert "sugars" in said(told, "Not on the label, so taken as in golden syrup")


def test_salt_left_out_is_a_range_and_not_none():
    silent = labelled(replace(WHOLE, salt=None))
    assert "0.1 % taken (0 to 1 %)" in said(silent, "Salt is not on the label")
    assert silent.composition["sodium-chloride"] == pytest.approx(0.001, rel=0.1)
    assert silent.origins["sodium-chloride"].status is Status.FROM_MEMORY
    assert not any("Salt is not" in each for each in labelled(WHOLE).assumed)
    alike = labelled(replace(WHOLE, salt=None, like="plain-flour"))
    assert "as in plain wheat flour" in said(alike, "Salt is not on the label")


def test_acids_and_minerals_are_told_in_figures():
    flour = labelled(replace(WHOLE, like="plain-flour"))
    minerals = sum(each for key, each in flour.composition.items() if key.endswith("-phosphate"))
    figures = said(flour, "Minerals are not on the label").partition(": ")[2]
    share, low, high = (float(each) for each in re.findall(r"[0-9.]+\d", figures))
    assert share == pytest.approx(100 * minerals, rel=0.03)  # two digits; sodium stands with the salt
    assert low == pytest.approx(share * flour.minerals.low, rel=0.03)
    assert high == pytest.approx(share * flour.minerals.high, rel=0.03)
    sweet = labelled(replace(SYRUP, sugars=80e-3))
    assert "0.05 % ash taken (0 to 0.3 %)" in said(sweet, "Minerals are not on the label")


def _resistivity(label):
    flour = labelled(label)
    shop = pantry().with_added(flour)
    portions = tuple(
        Portion(ingredient=key, written="g", mass=Value.exact(mass, "kg"))
        for key, mass in (("mill-flour", 0.15), ("distilled-water", 0.08))
    )
    recipe = Recipe(title="wall", kind="insulating", portions=portions, cooked="not cooked")
    return knead(recipe, shop).resistivity


def test_the_salt_and_water_that_a_label_leaves_open_reach_the_dough():
    told, silent = _resistivity(WHOLE), _resistivity(replace(WHOLE, salt=None))
    assert silent.low < 0.6 * told.low  # half a gram of salt in a hundred of flour and more
    open_water = _resistivity(replace(WHOLE, protein=None))
    assert open_water.high / open_water.low > 1.05 * told.high / told.low


def test_energy_is_held_against_what_was_taken_too():
    energy = Label(name="sack", like="plain-flour", protein=10.3e-3, kilojoules=1450, allergens=())
    assert not any("energy" in each for each in labelled(energy).assumed)


PARTS = ("fat", "carbohydrate", "sugars", "fibre", "protein", "salt", "sodium", "water", "alcohol", "ash")


@settings(max_examples=150, deadline=None)
@given(
    figures=st.dictionaries(st.sampled_from(PARTS), st.floats(0, 0.1), min_size=1),
    like=st.sampled_from(["", "plain-flour", "table-salt", "honey", "lemon-juice", "vegetable-oil", "corn-syrup",
                          "psyllium-husk", "alum", "tap-water", "granulated-sugar", "baking-powder"]),
    per=st.sampled_from(["100 g", "100 mL"]),
    within=st.sampled_from([None, True, False]),
)  # fmt: skip
@example(figures={"sugars": 0.0625}, like="plain-flour", per="100 g", within=None)
def test_whatever_is_left_out_the_whole_is_whole_and_every_range_holds_its_figure(figures, like, per, within):
    label = Label(name="any", like=like, per=per, fibre_within=within, allergens=(), **figures)
    try:
        found = labelled(label)
    except InputError as problem:
        assert problem.code in ("label-sum", "label-part", "label-salt-sodium", "label-too-little")  # noqa: PT017
        return
    assert sum(found.composition.values()) == pytest.approx(1, abs=1e-9)
    assert min(found.composition.values()) >= 0
    assert 0 <= found.moisture.low <= found.composition.get("water", 0.0) <= found.moisture.high <= 1
    assert 0 < found.minerals.low <= 1 <= found.minerals.high
    for name, each in found.label.items():
        assert -1e-12 <= each.low <= each.mean <= each.high <= 1 + 1e-9 or name in figures, (name, each)
