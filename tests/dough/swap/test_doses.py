"""A swap keeps a helping below the doses that care tells of."""

import datetime

import numpy as np
import pytest
from tests.bowls import INSULATING, recipe_of

from lumped.chemistry.compounds import compounds
from lumped.dough.kneading import knead_middle
from lumped.dough.safety import migration
from lumped.dough.safety.weights import child_mass
from lumped.dough.swap import read_wish, swapped
from lumped.dough.swap.doses import dosed, doses_in_a_helping
from lumped.dough.swap.figures import WAYS, figures_of, table_of
from lumped.pantry import pantry
from lumped.pantry.measures import spoon_fullness
from lumped.reference import handbook

ALUM = recipe_of({"plain-flour": 250, "tap-water": 400, "table-salt": 120, "vegetable-oil": 20, "alum": 40})


def helped(recipe):
    chain = knead_middle(recipe)
    return dict(zip(dosed(), (doses_in_a_helping() @ chain.components / chain.mass)[:, 0], strict=True))


def test_a_helping_of_glycerine_is_counted_by_a_childs_weight():
    """20 g of pure glycerine for a two-year-old of some 12 kg: ten times and more what makes one unwell, 0.125 g/kg."""
    row = [each.key for each in compounds()].index("glycerol")
    least = handbook().entry("limits", "glycerol-child").rows
    dose = min(each.value.low for each in least.values())
    assert doses_in_a_helping()[dosed().index("glycerol-child"), row] == pytest.approx(
        0.020 / (dose * child_mass(2.0).mean)
    )


def test_instead_of_alum_no_more_tartar_goes_in_than_a_dog_may_get():
    found = swapped(ALUM, read_wish(ALUM, pantry(), without=["alum"]), pantry())
    assert found.proposals
    for each in found.proposals:
        assert all(count <= 1.001 for count in helped(each.recipe).values())
        assert each.recipe.mass_of("cream-of-tartar") < 0.040


def test_no_proposal_takes_a_helping_beyond_a_dose_that_the_dough_kept():
    sugar = recipe_of(INSULATING, "insulating", "not cooked")
    found = swapped(sugar, read_wish(sugar, pantry(), target="blocks-better"), pantry())
    for each in found.proposals:
        assert np.max(list(helped(each.recipe).values())) <= 1.001


@pytest.mark.parametrize("key", dosed())
def test_each_dose_has_words(key):
    from lumped.dough.swap.doses import told_as

    assert told_as(dosed().index(key))


@pytest.mark.parametrize("system", ["scale", "us"])
def test_a_swap_counts_as_much_aluminium_as_care_does(system):
    """As dry as it may be, and its spoon as full."""
    table = table_of(ALUM, ALUM.ingredients, pantry(), system=system)
    masses = np.array([[ALUM.mass_of(key)] for key in ALUM.ingredients])
    counted = figures_of(table, masses, np.array([WAYS.index("pot")])).elements[2, 0]
    most = {key: spoon_fullness(pantry()[key], system) * mass for key, mass in ALUM.masses.items()}
    mass = float(knead_middle(ALUM).mass[0])
    (told,) = migration(ALUM.masses, mass, pantry(), date=datetime.date(2026, 1, 1), most=most)
    assert counted == pytest.approx(told.share, rel=2e-3)  # flour's own aluminium is none; masses of doughs differ
    assert counted > 1.04 * 0.040 * 0.0569 / mass  # alum holds 5.69 % of aluminium; crystals may lack some water
