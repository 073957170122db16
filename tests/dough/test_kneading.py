import json
import math
import re
from pathlib import Path

import numpy as np
import pytest
from tests.bowls import CONDUCTING, INSULATING, insulating, recipe_of

from lumped.dough import Portion, Recipe, knead, measured_dough, read_recipe
from lumped.dough.calibrating import calibrated
from lumped.dough.kneading import followed, kneading, typical
from lumped.dough.notes import narrowing_words
from lumped.dough.safety import KNOWN
from lumped.dough.what_if import ratio
from lumped.pantry import pantry
from lumped.quantities import Status, Value

DEMO = Path(__file__).parents[2] / "demo" / "recipes"


def kneaded(grams, kind="conducting", cooked="pot", needed=None, **more):
    portions = tuple(
        Portion(ingredient=key, written="", mass=Value.exact(amount / 1e3, "kg"), as_needed=(needed or {}).get(key))
        for key, amount in grams.items()
    )
    return knead(Recipe(title="dough", kind=kind, portions=portions, cooked=cooked, **more))


PLAIN = {"plain-flour": 125, "tap-water": 237, "table-salt": 73}


def test_the_same_recipe_gives_the_same_dough():
    assert kneaded(PLAIN).as_dict() == kneaded(PLAIN).as_dict()


def test_twice_the_batch_is_the_same_dough():
    once, twice = kneaded(PLAIN), kneaded({key: 2 * grams for key, grams in PLAIN.items()})
    assert twice.resistivity.mean == pytest.approx(once.resistivity.mean, rel=1e-9)


def test_weighing_the_finished_dough_narrows_the_interval_of_its_water():
    guessed, weighed = kneaded(PLAIN), kneaded(PLAIN, weighed_after=0.400)
    lost = weighed.reason("water_lost").value
    assert lost.mean == pytest.approx(35, abs=1)
    assert lost.high - lost.low < 0.6 * _width(guessed.reason("water_lost").value)


def test_flour_as_needed_widens_the_interval():
    exact, loose = kneaded(PLAIN), kneaded(PLAIN, needed={"plain-flour": (0.0, 0.060)})
    assert _width(loose.reason("liquid_share").value) > 1.1 * _width(exact.reason("liquid_share").value)
    assert any("felt right" in note for note in loose.notes)


def test_boiling_water_away_leaves_less_liquid():
    boiled, raw = kneaded(PLAIN), kneaded(PLAIN, cooked="not cooked")
    assert boiled.reason("free_water").value.mean < raw.reason("free_water").value.mean


def test_oil_stands_in_the_way():
    assert kneaded({**PLAIN, "vegetable-oil": 60}).resistivity.mean > 1.2 * kneaded(PLAIN).resistivity.mean


def test_a_dough_without_water_barely_conducts():
    oily, dry = ({"cornstarch": 100, "vegetable-oil": 50}, {"plain-flour": 100})
    for grams in (oily, dry):
        assert kneaded(grams, "insulating", "not cooked").resistivity.low > 1e5  # dry flour: 1e6 Ω·m and more, memory


def test_an_ingredient_named_twice_is_added_up():
    portions = tuple(
        Portion(ingredient=key, written="", mass=Value.exact(amount, "kg"))
        for key, amount in (("plain-flour", 0.125), ("tap-water", 0.1), ("tap-water", 0.137), ("table-salt", 0.073))
    )
    found = knead(Recipe(title="dough", kind="conducting", portions=portions, cooked="pot"))
    assert found.resistivity.mean == pytest.approx(kneaded(PLAIN).resistivity.mean, rel=0.02)


def test_a_dough_names_its_allergens_its_status_and_its_sources():
    found = kneaded(PLAIN)
    assert found.allergens == ("cereals containing gluten", "wheat")
    assert found.resistivity.provenance.status is Status.FROM_MEMORY
    assert "crc-conductivity" in found.resistivity.provenance.sources
    assert kneaded({"rice-flour": 125, "tap-water": 200, "table-salt": 70}).allergens == ()


def test_a_salty_dough_says_what_it_does_to_a_child_or_a_dog():
    note = next(each for each in kneaded({**PLAIN, "tap-water": 230}).cautions if "poison centre" in each)
    share = kneaded({**PLAIN, "tap-water": 230}).salt_fraction
    child, dog = (float(each) for each in re.findall(r"about (\d+) g .* near (\d+) g", note)[0])
    assert child == pytest.approx(12 * 0.75 / share, rel=0.02)  # 0.75 g/kg, RCPCH 2009 p. 79; two digits are printed
    assert dog == pytest.approx(10 * 4 / share, rel=0.03)  # 4 g/kg, Merck Veterinary Manual; all sodium as salt


def test_every_caution_that_an_ingredient_calls_for_has_its_sentence():
    called = {key for each in pantry().values() for key in each.cautions}
    assert {"raw-flour", "salt-skin", "acid-eyes"} <= called
    assert called <= set(KNOWN)


def test_a_cooked_dough_warns_of_heat_and_an_uncooked_one_does_not():
    cooked, raw = kneaded(PLAIN), kneaded(PLAIN, cooked="not cooked")
    assert any("burns" in each for each in cooked.cautions)
    assert not any("burns" in each for each in raw.cautions)


@pytest.mark.parametrize("file", ["ropewalk-salt.toml", "ropewalk-sugar.toml"])
def test_the_ropewalk_doughs_do_what_they_are_for_and_are_marked_invented(file):
    found = knead(read_recipe(DEMO / file))
    assert (found.resistivity.mean < 0.5) == (found.kind == "conducting")
    assert (found.resistivity.mean > 100) == (found.kind == "insulating")
    assert found.invented
    assert any("invented" in note for note in found.notes)


def test_a_dough_as_json_is_in_si_and_has_no_nan():
    shown = knead(read_recipe(DEMO / "ropewalk-salt.toml")).as_dict()
    assert json.loads(json.dumps(shown, allow_nan=False)) == shown
    mass = next(each["value"] for each in shown["reasons"] if each["key"] == "mass")
    assert mass["unit"] == "kg"
    assert 0.3 < mass["mean"] < 0.6
    assert all(math.isfinite(each["value"]["mean"]) for each in shown["reasons"])


def _width(value):
    return value.high - value.low


def test_how_hard_the_tap_water_is_counts_in_a_starch_dough():
    starch = {"cornstarch": 150, "granulated-sugar": 100, "vegetable-oil": 41}
    tap, distilled = (
        kneading(recipe_of({**starch, water: 70}, "insulating", "not cooked"))
        for water in ("tap-water", "distilled-water")
    )
    assert ratio(tap, distilled).mean < 0.8
    hardness = tap.named["minerals tap-water"]
    assert np.corrcoef(np.log(hardness), np.log(tap.chain.liquid_conductivity))[0, 1] > 0.3


@pytest.mark.parametrize("ingredient", pantry())
@pytest.mark.parametrize("celsius", [0, 90])
def test_every_ingredient_alone_or_in_a_dough_gives_a_positive_finite_resistivity(ingredient, celsius):
    for others in ({}, {"plain-flour": 100, "tap-water": 90, "table-salt": 60}):
        found = kneaded({**others, ingredient: 30}, temperature=celsius + 273.15).resistivity
        assert 0 < found.low <= found.high < 1e12


@pytest.mark.parametrize("learnt", [False, True])
@pytest.mark.parametrize("recipe", [
    recipe_of({**CONDUCTING, "table-salt": 73}), recipe_of(INSULATING, "insulating", "not cooked"),
])  # fmt: skip
def test_a_typical_batch_has_the_resistivity_that_is_told(recipe, learnt):
    told = knead(recipe).resistivity
    taught = None
    if learnt:
        taught = calibrated(recipe, measured_dough(1.2 * told.mean, "four-needles-ac").resistivity)
        told = knead(recipe, calibration=taught).resistivity
    batch = typical(recipe, calibration=taught)
    assert float(followed(recipe, batch, pantry()).resistivity[0]) == pytest.approx(told.mean, rel=1e-6)


def words_of(dough):
    return [each.words for each in dough.reasons]


def test_a_liquid_without_salt_or_sugar_is_called_a_liquid():
    vinegar = words_of(kneaded({"plain-flour": 150, "white-vinegar": 100}, cooked="not cooked"))
    assert not [each for each in vinegar if "brine" in each or "syrup" in each]
    assert "Conductivity of the liquid" in " ".join(vinegar)
    assert "Conductivity of the brine" in words_of(kneaded(CONDUCTING | {"table-salt": 73}))
    sweet = words_of(insulating(INSULATING))
    assert "Mobility that the syrup leaves to ions" in sweet
    assert "Conductivity of the liquid, were it as thin as water" in sweet
    assert len(set(sweet)) == len(sweet)


def test_the_salt_that_dissolves_is_what_the_water_holds_that_ions_reach():
    """Solubility of table salt at 20 °C: 35.9 g in 100 g of water (handbook); the note names the same water."""
    dough = kneaded(CONDUCTING | {"table-salt": 120})
    free, reached, salt = (dough.reason(key).value.mean for key in ("free_water", "liquid_water", "salt_dissolved"))
    assert salt == pytest.approx(0.359 * reached, rel=0.01)
    assert reached > free + 5
    note = next(each for each in dough.notes if "may stay solid" in each)
    assert f"about {reached:.0f} g of the water" in note


def test_where_nothing_holds_water_ions_reach_all_of_it_and_nobody_dries_flour():
    dough = kneaded({"white-vinegar": 100}, cooked="not cooked")
    assert [each.key for each in dough.reasons if "water" in each.key] == ["water_lost", "free_water"]
    assert not [each for each in narrowing_words(dough) if "flour" in each]


@pytest.mark.parametrize(("salt", "left"), [
    ({"potassium-chloride-salt": 70}, False), ({"half-salt": 60}, False), ({"epsom-salt": 60}, False),
    ({"potassium-chloride-salt": 120}, True), ({"table-salt": 20, "potassium-chloride-salt": 20}, False),
])  # fmt: skip
def test_every_salt_has_its_steps_and_its_share(salt, left):
    dough = kneaded({"plain-flour": 125, "tap-water": 237, **salt})
    steps = {each.key: each.value for each in dough.reasons}
    dry = sum(salt.values()) * (0.49 if "epsom-salt" in salt else 1.0)  # the rest of Epsom salt is water of crystals
    there = steps["salt_dissolved"].mean + (steps["salt_solid"].mean if left else 0.0)
    assert there == pytest.approx(dry, rel=0.05)
    assert steps["salt_in_liquid"].mean > 5
    assert dough.salt_fraction == pytest.approx(dry / steps["mass"].mean, rel=0.06)
    assert len([note for note in dough.notes if "solid" in note]) <= 1
