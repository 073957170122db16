"""More salt is not more current: where the turn lies, and what it costs in sodium."""

from dataclasses import replace

import numpy as np
import pytest
from tests.bowls import CONDUCTING, INSULATING, recipe_of
from tests.till import PRICES, VAGUE

from lumped.dough.beliefs import middle
from lumped.dough.bowl import Bowl
from lumped.dough.chain import follow
from lumped.dough.kneading import kneading
from lumped.dough.lasting.keeping import keeping
from lumped.dough.salting import salting
from lumped.dough.salts import growth_marks, main_salt
from lumped.dough.what_if import ratio
from lumped.errors import RecipeError
from lumped.pantry import pantry
from lumped.quantities import Value

SALTED = {**CONDUCTING, "table-salt": 73}
GRAMS = np.array([18, 36, 73, 146])
BY_HAND = {
    # salt in g: (Ω·cm, water activity, per cent of the dough); by hand for a pack of grains with m = 2, from 125 g of
    # flour, 237 g of water of which 15 % boils off, 0.3 g of bound water a gram of flour
    18: (23.7, 0.94, 5), 36: (14.6, 0.88, 9), 73: (11.3, 0.75, 17), 146: (13.7, 0.75, 30),
}  # fmt: skip


@pytest.fixture(scope="module")
def row():
    return salting(recipe_of(SALTED))


def test_the_engine_agrees_with_the_estimate_by_hand():
    recipe = recipe_of(SALTED)
    one = middle(recipe, pantry())
    masses = np.repeat(one.masses, 4, axis=1)
    masses[one.keys.index("table-salt")] = GRAMS / 1e3
    grains = replace(one.unknowns, archie_exponent=np.array([2.0]), picture=np.zeros(1), percolation=np.zeros(1))
    chain = follow(Bowl.of(one.keys, pantry()), masses, unknowns=grains, lost_share=one.lost_share, temperature=293.15)
    by_hand = np.array([BY_HAND[grams] for grams in GRAMS]).T
    assert 100 * chain.resistivity == pytest.approx(by_hand[0], rel=0.15)  # no air, tartar or oil's volume by hand
    assert chain.water_activity == pytest.approx(by_hand[1], abs=0.006)  # two digits by hand
    assert 100 * GRAMS / 1e3 / chain.mass == pytest.approx(by_hand[2], abs=0.6)  # whole per cents by hand


def test_resistivity_falls_turns_and_rises_again(row):
    middle = row.bands["resistivity"][1]
    turn = int(middle.argmin())
    assert 0 < turn < len(middle) - 1
    assert np.all(np.diff(middle[: turn + 1]) < 0)
    assert np.all(np.diff(middle[turn::4]) > 0)  # every fourth: neighbours may swap the batch that is the median


def test_the_best_amount_is_where_the_water_is_full(row):
    assert row.best.mean == pytest.approx(row.solid_from.mean, rel=0.05)
    assert row.solid_from.low < 0.066 < row.solid_from.high  # kg; "beyond about 66 g" by hand
    assert row.enough[0] < row.best.low < row.best.high < row.enough[1]


def test_a_quarter_of_the_salt_conducts_as_well_with_a_third_of_the_sodium():
    little, much = (kneading(recipe_of({**CONDUCTING, "table-salt": grams})) for grams in (36, 146))
    assert ratio(little, much).mean == pytest.approx(1.0, abs=0.1)
    low, high = (salting(recipe_of({**CONDUCTING, "table-salt": grams})).point["sodium"].mean for grams in (36, 146))
    assert low / high == pytest.approx(1 / 3, abs=0.03)


def test_sodium_of_a_lump_is_its_share_of_salt_times_that_of_sodium_in_salt(row):
    lump, sodium_in_salt = 0.060, 22.990 / 58.443  # IUPAC 2021 atomic masses
    expected = lump * row.share * 0.998 * sodium_in_salt  # 0.2 % of table salt is water
    assert row.bands["sodium"][1][1:] == pytest.approx(expected[1:], rel=0.01)  # flour and water bring a little


def test_the_row_meets_the_recipe_itself(row):
    here = [np.interp(row.amount, row.amounts, each) for each in row.bands["resistivity"]]
    point = row.point["resistivity"]
    assert here == pytest.approx([point.low, point.mean, point.high], rel=0.08)  # an eighth of the draws


def test_the_row_goes_beyond_what_the_water_holds_even_for_a_recipe_with_little_salt():
    found = salting(recipe_of({**CONDUCTING, "table-salt": 15}))
    assert found.amounts[-1] > found.solid_from.high


def test_a_weighed_dough_has_its_own_loss_of_water_all_along_the_row():
    wet = replace(recipe_of(SALTED), weighed_after=0.440)
    dry = replace(recipe_of(SALTED), weighed_after=0.390)
    assert salting(wet).solid_from.mean > salting(dry).solid_from.mean + 0.010  # 50 g of water hold 18 g of salt
    found = salting(wet)
    assert np.interp(0.073, found.amounts, found.bands["resistivity"][1]) == pytest.approx(
        found.point["resistivity"].mean, rel=0.08
    )


def test_cost_comes_from_prices_and_is_left_out_without_them(row):
    assert "cost" not in row.bands
    found = salting(recipe_of(SALTED), prices=PRICES, money="coins")
    paid = 0.125 * 1 + 0.0136 * 2 + 0.009 * 20 + 0.073 * 0.5
    mass = found.amount / np.interp(found.amount, found.amounts, found.share)
    assert found.point["cost"].mean == pytest.approx(paid / mass, rel=0.01)
    assert found.money == "coins"


def test_what_nobody_knows_of_a_price_is_in_the_interval_of_the_cost():
    sure, vague = (salting(recipe_of(SALTED), prices=each).point["cost"] for each in (PRICES, VAGUE))
    assert vague.mean == pytest.approx(sure.mean, rel=0.02)
    tartar = 0.009 * 20 / 0.42  # a price that may be half or double, of about 0.42 kg of dough
    assert vague.low == pytest.approx(sure.mean - tartar / 2, rel=0.1)
    assert vague.high == pytest.approx(sure.mean + tartar, rel=0.1)


def test_marks_of_growth_fall_from_bacteria_to_the_hardiest():
    """Beuchat (1981): gut bacteria 0.95, Salmonella 0.91, yeasts 0.87, moulds 0.80, salt lovers 0.75, none below 0.60."""
    assert [each.value.mean for each in growth_marks()] == [0.95, 0.91, 0.87, 0.80, 0.75, 0.60]


def test_the_picture_draws_each_kind_where_keeping_has_it():
    kept = keeping(Value.exact(0.9, ""))
    marks = growth_marks()
    assert [mark.value for mark in marks] == [kept.of(mark.key).group.activity for mark in marks]


def test_the_main_salt_is_the_one_with_most_ions():
    assert main_salt(recipe_of({**SALTED, "baking-soda": 60}), pantry()) == "table-salt"
    for salt in ("baking-soda", "epsom-salt", "half-salt", "coarse-salt"):
        assert main_salt(recipe_of({**CONDUCTING, salt: 60}), pantry()) == salt


def test_a_recipe_without_salt_has_no_salt_picture():
    with pytest.raises(RecipeError, match=r"There is no salt in “dough”, so there is none to vary"):
        salting(recipe_of(INSULATING, "insulating"))


def test_the_smallest_pinch_has_a_row_of_its_own_size_and_a_turn_beyond_the_row_is_not_made_up(row):
    found = salting(recipe_of({**CONDUCTING, "table-salt": 0.1}))
    assert found.amounts[-1] > found.solid_from.mean
    rising = replace(row, best=replace(row.best, mean=0.150, high=0.150))
    assert rising.sentences()[0] == "As far as 150\u00a0g, more table salt makes it conduct better."


def test_json_is_plain_si(row):
    told = row.as_dict()
    assert told["salt"] == "table-salt"
    assert told["row"][0]["amount_kg"] == 0
    assert told["row"][-1]["resistivity"]["low"] < told["row"][-1]["resistivity"]["high"]
    assert told["solid_from_kg"]["unit"] == "kg"


def test_the_row_goes_through_the_figure_of_the_recipe_itself(row):
    """The band at the recipe's own amount, and the figure that the dough's page shows."""
    place = int(np.argmin(np.abs(row.amounts - row.amount)))
    assert abs(row.amounts[place] - row.amount) < 0.03 * row.amount
    own = row.point["resistivity"]
    assert row.bands["resistivity"][:, place] == pytest.approx([own.low, own.mean, own.high], rel=0.02)


@pytest.fixture(scope="module")
def tartar():
    return salting(recipe_of({**SALTED, "cream-of-tartar": 9}), salt="cream-of-tartar")


def test_a_salt_that_hardly_dissolves_has_a_row_of_its_own_size_and_is_told_from_where_it_stays_solid(tartar):
    assert tartar.amounts[-1] <= 3 * 0.009
    assert 0.0010 < tartar.solid_from.mean < 0.0035  # 6 g/L at 20 °C, in a fifth to a third of a litre, warmer or not
    assert any("some of it stays solid" in each for each in tartar.sentences())


def test_the_table_of_amounts_has_the_recipes_own_among_them(tartar, row):
    for found, own in ((tartar, "recipe: 9 g"), (row, "recipe: 73 g")):
        cells = [cell[0].replace("\u00a0", " ") for cell in found.cells()]
        assert own in cells
        assert cells[0] == "0 g"
        assert len(cells) in (11, 12)


def test_of_what_no_table_limits_nothing_is_said_to_dissolve():
    found = salting(recipe_of(SALTED), salt="plain-flour")
    assert found.amounts[-1] == pytest.approx(3 * found.amount, rel=0.05)  # two digits
    assert not any("dissolves" in each for each in found.sentences())
