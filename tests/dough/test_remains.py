"""What stays solid of salts other than table salt, and the water that its crystals keep."""

import numpy as np
import pytest
from tests.bowls import CONDUCTING, kneaded, recipe_of

from lumped.chemistry.compounds import compound
from lumped.chemistry.solubility import solubility
from lumped.dough.kneading import knead_middle


def notes(grams, cooked="not cooked"):
    return " ".join(kneaded(grams, "conducting", cooked).notes)


def test_potassium_chloride_beyond_what_the_water_holds_is_told():
    assert "of potassium chloride salt stay solid" in notes(
        {"plain-flour": 100, "tap-water": 100, "potassium-chloride-salt": 80}
    )
    assert "stay solid" not in notes({"plain-flour": 100, "tap-water": 100, "potassium-chloride-salt": 10})


def test_cream_of_tartar_stays_mostly_solid():
    assert "g of cream of tartar stay solid" in notes({**CONDUCTING, "table-salt": 73}, "pot")


def test_crystals_that_stay_keep_their_water():
    """All Epsom salt, 48.8 % MgSO4: what dissolves and what stays share the water as s and seven waters of crystals ask."""
    chain = knead_middle(recipe_of({"epsom-salt": 150, "distilled-water": 60}, cooked="not cooked"))
    salt, water = float(chain.of("magnesium-sulphate")[0]), float(chain.of("water")[0])
    held = compound("magnesium-sulphate").crystals
    assert held == pytest.approx(7 * 18.015 / 120.37, rel=1e-3)
    dissolved = float(chain.in_liquid("magnesium-sulphate")[0])
    liquid = water - held * (salt - dissolved)
    assert dissolved / liquid == pytest.approx(float(solubility("magnesium-sulphate", 293.15)), rel=1e-6)
    assert float(chain.free_water[0]) == pytest.approx(liquid, rel=1e-6)


def test_with_enough_water_all_crystal_water_is_free():
    chain = knead_middle(recipe_of({"epsom-salt": 20, "distilled-water": 100}, cooked="not cooked"))
    assert float(chain.free_water[0]) == pytest.approx(float(chain.of("water")[0]))
    assert np.all(chain.solid("magnesium-sulphate") == 0)


def test_grains_in_water_that_is_full_are_not_told_to_be_stirred_in():
    told = notes({"plain-flour": 150, "tap-water": 100, "coarse-salt": 131})
    assert "can’t all dissolve: the water is full" in told
    assert "with a spoon" not in told
