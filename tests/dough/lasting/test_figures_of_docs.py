"""What the page on lasting tells is what the engine computes: each figure of its table is read out of the page."""

from functools import cache
from pathlib import Path

import numpy as np
import pytest
from tests.bowls import INSULATING, recipe_of
from tests.told import figures, hold, page

from lumped.app.cooling import cooled, in_time
from lumped.app.drying import dried, surroundings
from lumped.app.named import named_by_files
from lumped.app.refreshing import refreshed
from lumped.dough.blocking import usual_neighbour
from lumped.dough.kneading import kneading
from lumped.dough.lasting.salt_creep import salt_creep
from lumped.verdict.walls import NEVER, Wall, lasts

LASTING = "docs/lasting.md"
RECIPES = Path(__file__).parents[3] / "demo" / "recipes"
HOUR, DAY, ROOM = 3600.0, 86_400.0, 293.15
WINTER = {"room": "22 °C", "humidity": "25"}


@cache
def salt():
    return named_by_files(RECIPES / "ropewalk-salt.toml")


@cache
def roll(millimetres, room="20 °C", humidity="45", draught="quiet"):
    where = surroundings(room=room, humidity=humidity, draught=draught, cover="open")
    return dried(salt(), where, thickness=1e-3 * millimetres, hours=16).outlook


def three(value, scale=1.0):
    return [scale * each for each in (value.mean, value.low, value.high)]


def lost(millimetres, hours=1.0, **room):
    return three(roll(millimetres, **room).at("loss", hours * HOUR), 100)


def worse(hours):
    return three(roll(12).at("worse", hours * HOUR))


def in_winter(millimetres):
    return lost(millimetres, **WINTER)[0] / lost(millimetres)[0]


def cool(form, thickness, unit):
    return three(cooled(salt(), form, thickness=thickness, room=ROOM).clock.middle, 1 / unit)


@cache
def creep(water=1.0, **grams):
    kept = {
        key: mass for key, mass in (INSULATING | {k.replace("_", "-"): g for k, g in grams.items()}).items() if mass
    }
    return salt_creep(kneading(recipe_of(kept, "insulating", "not cooked")), kneading(usual_neighbour()), water=water)


@cache
def of_the_ropewalk(water=1.0):
    wall = named_by_files(RECIPES / "ropewalk-sugar.toml").kneading()
    return salt_creep(wall, kneading(usual_neighbour()), water=water)


def a_day_s_creep(found):
    draws = 1e3 * np.sqrt(found.diffusivity * DAY)
    return [float(each) for each in np.quantile(draws, [0.5, 0.025, 0.975])]


def wall(millimetres, lamp):
    """How long a wall of the ropewalk's sugar dough does. [h]"""
    found = lasts(Wall(thickness=1e-3 * millimetres, area=4e-4), of_the_ropewalk(), of_the_ropewalk(0.8), lamp).lasts
    return three(found, 1 / HOUR)


def bare(lamp):
    """The same without sugar. [min]"""
    found, drier = creep(granulated_sugar=0), creep(0.8, granulated_sugar=0)
    return lasts(Wall(thickness=3e-3, area=4e-4), found, drier, lamp).lasts.mean / 60


def comes_as_far():
    found = creep()
    return float(np.median(found.reach(DAY) / np.sqrt(found.diffusivity * DAY)))


def refreshing():
    found = refreshed(0.512, 0.487, salt()).refresh
    ends = [five_minutes(found.rest.mean), found.rest.low / 60, found.rest.high / HOUR]
    return [1e3 * found.water, 100 * found.of_its_water, *ends]


def five_minutes(seconds):
    return 5 * round(seconds / 300)


SEEN = {
    "5 % of its water an hour | {} % ({} to {}) |": lambda: lost(12),
    "3 mm: 20 % an hour | {} % ({} to {}) |": lambda: lost(3),
    "20 mm: 3 % an hour | {} % ({} to {}) |": lambda: lost(20),
    "| {} times for 12 mm, {} for 20, {} for 3 |": lambda: [in_winter(each) for each in (12, 20, 3)],
    "45 minutes: {} % ({} to {}), resistivity {} times": lambda: [*lost(12, 0.75), worse(0.75)[0]],
    "16 hours: {} % ({} to {}), {} times ({} to {})": lambda: [*lost(12, 16.0), *worse(16.0)],
    "a fan is the exception, {} % ({} to {}) in an hour": lambda: lost(12, draught="fan"),
    "| {} g, {} % of its water; rest about {} minutes ({} min to {} h)": refreshing,
    "on a table {} h ({} to {})": lambda: cool("slab", 0.02, HOUR),
    "70 min to 43 °C | {} min ({} to {}) |": lambda: cool("ball", 0.05, 60),
    "| {} mm ({} to {}) in a stiff syrup, {} ({} to {}) in a thin one, {} ({} to {}) without sugar |": lambda: [
        *a_day_s_creep(creep()), *a_day_s_creep(creep(distilled_water=120)), *a_day_s_creep(creep(granulated_sugar=0))],
    "a hundredth of the salt comes {} times as far": lambda: [comes_as_far()],
    "3 mm beside a white lamp: {} h ({} h to a month)": lambda: wall(3, "lamp-white")[:2],
    "6 mm {} days ({} h to a month)": lambda: [wall(6, "lamp-white")[0] / 24, wall(6, "lamp-white")[1]],
    "may hold for good or only {} h": lambda: [wall(3, "lamp-red")[1]],
    "without sugar {} min beside a red lamp, {} min beside a white one": lambda: [bare("lamp-red"), bare("lamp-white")],
}  # fmt: skip


@pytest.mark.parametrize("words", SEEN)
def test_the_page_tells_what_is_seen(words):
    hold(page(LASTING), words, SEEN[words]())


def test_a_wall_said_to_last_a_month_may_last_for_good():
    assert all(3600 * wall(each, "lamp-white")[2] == pytest.approx(NEVER) for each in (3, 6))
    assert 3600 * wall(3, "lamp-red")[0] == pytest.approx(NEVER)


def test_what_can_be_handed_out_after_40_minutes_is_as_thin_as_the_page_tells():
    told = page(LASTING)
    ((thin, half),) = figures(told, "would have to lie thinner than {} mm")
    assert 1e3 * in_time(salt(), 40, "slab", room=ROOM).thickness.low == pytest.approx(thin, abs=half)
    ((ball, half),) = figures(told, "balls of {} cm are just cool")
    assert 100 * in_time(salt(), 40, "ball", room=ROOM).thickness.low == pytest.approx(ball, abs=half)
    ((slab, _), (minutes, _)) = figures(told, "slabs of {} cm want {} minutes")
    surely = [100 * in_time(salt(), minutes + each, "slab", room=ROOM).thickness.low for each in (-3, 3)]
    assert surely[0] < slab < surely[1]
