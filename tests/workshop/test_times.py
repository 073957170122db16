"""How long it takes: stove, hands, cooling; what is ready in a given time."""

from pathlib import Path

import numpy as np
import pytest
from tests.bowls import recipe_of

from lumped.app.making_words import time_text
from lumped.dough import read_recipe
from lumped.dough.kneading import kneading
from lumped.errors import InputError
from lumped.pantry import pantry
from lumped.quantities import Status
from lumped.workshop import batches_of, make_dough, options_within, read_party
from lumped.workshop.hands import work_of
from lumped.workshop.waiting import waits

RECIPES = Path(__file__).parents[2] / "demo" / "recipes"
SALT, SUGAR = (read_recipe(RECIPES / f"ropewalk-{name}.toml") for name in ("salt", "sugar"))
SHOP = pantry()
PAIRS = read_party("28 of 9 in pairs")


def made(recipe=SALT, **more):
    return make_dough(recipe, SHOP, parties=[PAIRS], **more)


def test_a_stove_gives_the_heat_that_warms_the_dough_and_drives_its_steam_out():
    # by hand: 0.362 kg at about 3.4 kJ/(kg K) from 18 to 85 °C, 0.038 kg steam at 2.26 MJ/kg, through 700 W: 4 min
    work = work_of(kneading(recipe_of({"plain-flour": 125, "tap-water": 237}), SHOP))
    whole = work.value(work.parts(0.324, 1)["cooking"])
    by_hand = (0.362 * 3.4e3 * 67 + 0.038 * 2.26e6) / 700
    assert whole.mean == pytest.approx(by_hand, rel=0.1)  # heat capacity read off by eye
    assert whole.provenance.status is Status.FROM_MEMORY


def test_water_for_a_kettle_dough_boils_as_long_as_its_heat_takes():
    done = kneading(recipe_of({"plain-flour": 100, "tap-water": 1000}, cooked="kettle"), SHOP)
    work = work_of(done)
    each = work.value(work.parts(float(np.median(done.chain.mass)), 1)["cooking"])
    assert each.mean == pytest.approx(1.012 * 4186 * 82 / 1800, rel=0.03)  # flour brings 12 g of water


def test_twice_the_dough_cooks_twice_as_long_and_work_sums_up():
    work = work_of(kneading(SALT, SHOP))
    one, two = (work.parts(mass, 1)["cooking"] for mass in (1.0, 2.0))
    np.testing.assert_allclose(two, 2 * one)
    parts = work.parts(2.0, 3, pressed=True)
    np.testing.assert_allclose(sum(parts.values()), work.active(2.0, 3, pressed=True))
    assert min(each.min() for each in parts.values()) >= 0


def test_what_was_never_hot_waits_for_nothing():
    work = work_of(kneading(SUGAR, SHOP))
    assert not waits(work, "pot", 1.0, 3e-3).any()
    found = made(SUGAR)
    assert found.waits == ()
    assert found.ready.mean == pytest.approx(found.active.mean)


def test_a_large_pot_stays_hot_longer_than_a_small_one_and_flat_dough_less_long():
    work = work_of(kneading(SALT, SHOP))
    small, large = (np.median(waits(work, "pot", mass, 5e-3)) for mass in (0.5, 2.5))
    assert 1.5 * small < large
    slab, thin, bath = (np.median(waits(work, place, 2.5, 5e-3)) for place in ("slab", "thin", "bath"))
    assert bath < thin < slab < large
    assert large > 4 * 3600  # hours, as the caution says


def test_many_masses_cool_at_once_as_each_alone():
    work = work_of(kneading(SALT, SHOP))
    many = waits(work, "pot", np.array([0.3, 1.0]), 3e-3)
    np.testing.assert_allclose(many[1], waits(work, "pot", 1.0, 3e-3))


def test_a_cooked_dough_left_in_its_pot_or_in_slabs_is_not_ready_in_forty_minutes():
    # shared estimate of the trade: "cooked dough can't be made and handed out in 40 minutes"
    found = {(each.way, each.place): each for each in made(within=2400.0).options}
    assert all(found["pot", place].ready.low > 2400 for place in ("pot", "slab", "thin"))
    assert all(found["pot", place].surely == 0 for place in ("pot", "slab", "thin"))
    assert 0 < found["pot", "bath"].surely < found["pot", "bath"].most < 2.0  # part of it, flat in cold water
    assert found["not cooked", None].surely == pytest.approx(made().batches.mass.mean)


@pytest.mark.parametrize("people", ["28 of 9 in pairs", "7 of 5"])
def test_one_dough_in_its_pot_is_ready_at_one_time_wherever_it_is_told(people):
    found = make_dough(SALT, SHOP, parties=[read_party(people)], within=7200.0)
    told = {each.place: time_text(each.ready) for each in found.waits}
    ways = {each.place: time_text(each.ready) for each in found.options if each.way == "pot"}
    assert ways == told


def test_options_come_soonest_first_and_grow_with_the_time():
    batches = batches_of(SALT, 2.0, shop=SHOP)
    rows = [options_within(batches, 60.0 * minutes, SHOP, groups=14) for minutes in (20, 60, 240)]
    ready = [each.ready.mean for each in rows[0]]
    assert ready == sorted(ready)
    for ways in zip(*rows, strict=True):
        assert len({(each.way, each.place) for each in ways}) == 1
        assert [each.most for each in ways] == sorted(each.most for each in ways)
        assert all(0 <= each.surely <= each.most <= 2.0 * 1.01 for each in ways)


def test_less_than_a_group_wants_is_nothing():
    batches = batches_of(SALT, 2.0, shop=SHOP)
    for each in options_within(batches, 1500.0, SHOP, groups=4):
        assert each.most == 0 or each.most >= 0.5 * (1 - 2e-3)


@pytest.mark.parametrize("time", [0.0, -60.0, float("nan"), 1e9])
def test_a_time_that_nobody_plans_with_is_refused(time):
    with pytest.raises(InputError, match="is no time that Lumped can plan with"):
        options_within(batches_of(SALT, 1.0, shop=SHOP), time, SHOP)


def minded(found):
    return " ".join(each.brief for each in found.cautions)


def test_cautions_name_the_hot_inside_small_mouths_and_heavy_pots():
    words = minded(make_dough(SALT, SHOP, parties=[read_party("9 of 2")], pot=2e-2))
    for each in (
        "An adult cooks",
        "stays too hot inside",
        "put dough and lamps into their mouths",
        "Salt stings",
        "Local rules",
    ):
        assert each in words
    assert "no load for one person" not in words
    cold = minded(made(SUGAR))
    assert "Raw flour" in cold
    assert "stays too hot" not in cold
    kettle = recipe_of({"plain-flour": 1250, "tap-water": 2370}, cooked="kettle")
    assert "Boiling water scalds" in minded(make_dough(kettle, SHOP))


def test_it_is_shown_as_json_and_as_a_frame():
    found = made(where="europe", within=2400.0)
    told = found.as_dict()
    assert told["cost"]["person"]["mean"] == pytest.approx(told["cost"]["whole"]["mean"] / 28)
    assert told["active_s"]["low"] < told["active_s"]["mean"] < told["active_s"]["high"]
    frame = found.frame()
    assert list(frame["ingredient"]) == list(SALT.ingredients)
    assert frame["mass_kg"].sum() * found.batches.count == pytest.approx(
        sum(each.mass.mean for each in found.batches.whole.portions)
    )
