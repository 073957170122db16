"""Whether a wall insulates enough; leaks worked by hand: a wall of 3 mm and 4 cm² at 3.2 V."""

import numpy as np
import pytest
from tests.bowls import INSULATING, recipe_of

from lumped.dough.blocking import usual_neighbour
from lumped.dough.kneading import kneading
from lumped.dough.lasting.salt_creep import salt_creep
from lumped.errors import InputError
from lumped.quantities import Value, rounded_text
from lumped.reference import handbook
from lumped.texts import say
from lumped.verdict.walls import NIGHT, Wall, _needed, _point, judge_wall, lasts

WALL = Wall(thickness=3e-3, area=4e-4)


def dough(low, mean, high):
    return Value(mean=mean, low=low, high=high, unit="Ω·m", spread="lognormal")


def test_the_sentence_of_a_wall_rounds_the_leak_as_its_figures_do():
    """0.103 to 1.99 mA stood beside "0.1 to 2"."""
    found = judge_wall(WALL, dough(12, 60, 234))
    low, high = (rounded_text(1e3 * each) for each in (found.leak.low, found.leak.high))
    assert f"({low} to {high}) leak" in found.words
    assert max(len(each.replace(".", "").lstrip("0")) for each in (low, high)) == 3


@pytest.mark.parametrize(("resistivity", "milliamperes"), [(13, 33), (118, 3.6), (300, 1.4), (900, 0.5)])
def test_the_resistance_of_a_wall_is_that_of_a_slab(resistivity, milliamperes):
    assert 1e3 * 3.2 / WALL.resistance(resistivity) == pytest.approx(
        milliamperes, rel=0.06
    )  # one or two digits by hand


def test_with_a_perfect_wall_the_red_lamp_gets_about_19_milliamperes():
    found = judge_wall(WALL, Value.exact(1e9, "Ω·m"))
    assert 1e3 * found.without.mean == pytest.approx(19, rel=0.05)  # hand estimate: 6.2 V, 1.2 V a lump, 100 Ω
    assert found.current.mean == pytest.approx(found.without.mean, rel=1e-6)
    assert found.enough == "yes"


def test_current_that_passes_the_wall_is_missing_in_the_lamp():
    found = judge_wall(WALL, Value.exact(3.0, "Ω·m"))
    volts = found.leak.mean * WALL.resistance(3.0)
    assert 3.8 - volts == pytest.approx(100 * (found.leak.mean + found.current.mean), rel=1e-6)


def test_an_interval_that_spans_good_and_bad_is_told_as_such():
    found = judge_wall(WALL, dough(0.5, 30, 900))
    assert found.enough == "perhaps"
    assert "measure the dough" in found.words


def test_a_poor_wall_puts_the_lamp_out():
    found = judge_wall(WALL, Value.exact(0.2, "Ω·m"), "lamp-white")
    assert found.enough == "no"
    assert found.states[1] == "dark"
    assert "Not insulating enough" in found.words


def test_a_white_lamp_asks_for_a_better_wall_than_a_red_one():
    rho = Value.exact(20.0, "Ω·m")
    red, white = (judge_wall(WALL, rho, key) for key in ("lamp-red", "lamp-white"))
    assert white.current.mean / white.without.mean < red.current.mean / red.without.mean


@pytest.fixture(scope="module")
def salty():
    return kneading(usual_neighbour())


def creep(salty, **more):
    return salt_creep(kneading(recipe_of(INSULATING, "insulating", "not cooked")), salty, **more)


def test_when_a_wall_has_just_the_resistance_that_is_needed_the_lamp_is_just_as_bright_as_it_must_be():
    needed = _needed("lamp-white")
    limit = handbook().value("lamps", "lamp-white", "bright_current").mean
    _, current = _point("lamp-white", np.array([1 / needed]))
    assert current[0] == pytest.approx(limit, rel=0.01)  # straight lines between 400 points of the lamp's law


def test_salt_ends_a_wall_and_thickness_drier_dough_and_a_modest_lamp_put_it_off(salty):
    fresh, drier = creep(salty), creep(salty, water=0.8)
    found = lasts(WALL, fresh, drier, "lamp-white")
    assert found.lasts.low < found.lasts.mean < found.twice_as_thick.mean
    assert found.drier.mean > found.lasts.mean
    assert lasts(WALL, fresh, drier, "lamp-red").lasts.mean >= found.lasts.mean
    assert 0 < found.overnight.mean < 0.02


def test_a_wall_that_does_not_do_has_no_hour(salty):
    found = lasts(Wall(thickness=1e-5, area=0.01), creep(salty), creep(salty), "lamp-white")
    assert found.lasts.mean == 0
    assert (found.after_night, found.headline) == ("no", say("wall-night-worse"))
    assert "does not do from the start" in found.words[0]


@pytest.mark.parametrize(("millimetres", "night"), [(1, "no"), (6, "perhaps"), (25, "yes")])
def test_a_wall_is_judged_for_the_next_morning_too(salty, millimetres, night):
    found = lasts(Wall(thickness=1e-3 * millimetres, area=4e-4), creep(salty), creep(salty), "lamp-white")
    assert found.after_night == night
    assert {"yes": found.lasts.low >= NIGHT, "no": found.lasts.high < NIGHT}.get(night, True)
    assert found.headline == say(f"wall-night-{night}")


def test_without_sugar_salt_creeps_faster(salty):
    plain = {"plain-flour": 150, "distilled-water": 70, "vegetable-oil": 41}
    bare = salt_creep(kneading(recipe_of(plain, "insulating", "not cooked")), salty)
    assert np.median(bare.diffusivity) > 3 * np.median(creep(salty).diffusivity)


def test_salt_moves_no_faster_than_in_water_and_a_salty_wall_never_conducts_better_than_its_neighbour(salty):
    found = creep(salty)
    assert np.all(found.diffusivity < 1.6e-9)  # in water at 25 °C: 1.61e-9, Nernst and Hartley
    assert np.median(found.resistivity / found.contrast) > np.median(1 / salty.chain.conductivity)


@pytest.mark.parametrize("size", [{"thickness": 0.0, "area": 4e-4}, {"thickness": 3e-3, "area": -1.0}])
def test_a_wall_without_size_is_refused_in_words(size):
    with pytest.raises(InputError, match="Give a thickness above 0"):
        Wall(**size)
