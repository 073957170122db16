import numpy as np
import pytest
from tests.bowls import recipe_of

from lumped.chemistry import salt_dissolving_time
from lumped.dough.grains import dissolving_hours, grain_words
from lumped.dough.kneading import knead
from lumped.pantry import pantry
from lumped.quantities import Value

COLD = {"plain-flour": 250, "tap-water": 150}


def grains_of(cooked="not cooked", **salts):
    dough = knead(recipe_of({**COLD, **{key.replace("_", "-"): grams for key, grams in salts.items()}}, cooked=cooked))
    return [note for note in dough.notes if "rains of" in note]


def test_coarse_salt_kneaded_cold_is_told_to_take_hours_and_boiled_not():
    (told,) = grains_of(coarse_salt=10)
    assert "small grains of coarse salt (about 2 mm) take 3 hours" in told
    assert "large ones more than half a day" in told
    assert grains_of(coarse_salt=10, cooked="pot") == []
    assert len(grains_of(coarse_salt=10, cooked="kettle")) == 1


def test_fine_salt_is_gone_before_anybody_asks_unless_it_nearly_fills_the_water():
    assert grains_of(table_salt=20) == []
    assert "Grains of table salt (about 0.35 mm) take 10 minutes to 2 hours" in grains_of(table_salt=36)[0]


def test_salt_that_the_water_cannot_take_never_dissolves():
    assert "can’t all dissolve" in grains_of(coarse_salt=80)[0]


def test_the_hours_are_those_of_the_smallest_and_the_largest_grain():
    found = {key: Value.exact(each, "") for key, each in
             {"salt_dissolved": 15.0, "salt_solid": 5.0, "free_water": 150.0, "obstruction": 25.0}.items()}  # fmt: skip
    grain = Value(mean=1e-3, low=0.5e-3, high=2e-3, unit="m")
    hours = salt_dissolving_time([0.5e-3, 2e-3], salt=20.0, water=150.0, temperature=293.15, obstruction=0.25) / 3600
    assert dissolving_hours(grain, found, 293.15) == pytest.approx(tuple(hours), rel=1e-12)
    assert hours[1] == pytest.approx(16 * hours[0], rel=1e-9)
    assert np.isfinite(hours).all()


def test_a_dough_whose_water_is_all_held_says_nothing_of_grains():
    assert list(grain_words(recipe_of({"plain-flour": 100}, cooked="not cooked"), {}, pantry())) == []
