"""A one-minute test: three zones, what good and bad batches look like, and when the test is no test."""

from itertools import pairwise
from pathlib import Path

import numpy as np
import pytest

from lumped.app.trial import trial
from lumped.chemistry.electrodes import electrode
from lumped.circuit import Branch, Conductor, Network, lamp, operating_point, pack, resistor
from lumped.errors import InputError
from lumped.pantry import pantry
from lumped.quantities import Provenance, Status
from lumped.reference import handbook
from lumped.sculpt.mould import mould
from lumped.verdict.trial import _lines, _resistor_for, as_hundred, best_line, line, mistake, seen_in, touching
from lumped.verdict.trial_border import CURRENTS, VOLTS, passed, prices, resistivity_at

RECIPES = Path(__file__).parents[2] / "demo" / "recipes"
SALT, SUGAR = RECIPES / "ropewalk-salt.toml", RECIPES / "ropewalk-sugar.toml"
MADE = line("barrel", "lamp-red", "pack-4aa-alkaline")
MEMORY = Provenance(status=Status.FROM_MEMORY)


def current_through(made, resistivity, *, price=0.0, against=0.0):
    """The same line as a network, solved by the engine that judges sculptures."""
    metal, area = handbook().entry("gauges", made.mould.rods).facts["plating"], made.mould.wetted_area
    branches = [
        Branch(name="pack", law=pack(made.pack, against=against), plus="red", minus="black"),
        Branch(name="resistor", law=resistor(made.resistor), plus="red", minus="first"),
        Branch(name="into", law=electrode(metal, area, price=price), plus="first", minus="near"),
        Branch(name="out", law=electrode(metal, area, price=price), plus="second", minus="far"),
        Branch(name="lamp", law=lamp(made.lamp, against=against), plus="second", minus="black"),
    ]
    siemens = np.array([[1.0, -1.0], [-1.0, 1.0]]) / (resistivity * made.mould.factor.mean)
    dough = Conductor(nodes=("near", "far"), matrix=siemens)
    return operating_point(Network(branches=tuple(branches), conductors=(dough,))).currents["lamp"]


@pytest.mark.parametrize("resistivity", [0.2, 2.0, 20.0, 200.0])
def test_the_border_for_a_current_is_the_resistivity_at_which_the_network_passes_it(resistivity):
    current = current_through(MADE, resistivity)
    area, cells = MADE.mould.wetted_area, pack(MADE.pack)
    volts = np.interp(current, passed(MADE.lamp, 0.0), VOLTS)
    price = np.interp(np.log(current), np.log(CURRENTS), prices(MADE.mould.rods, area, 0.0))
    found = resistivity_at(current, cells.emf - volts - price, cells.resistance + MADE.ohms, MADE.mould.factor.mean)
    # the laws are tabulated: volts of the lamp every 20 mV, prices every fifth of a decade
    assert found == pytest.approx(resistivity, rel=0.02)


def test_good_and_bad_batches_fall_where_the_network_puts_them():
    steps = [handbook().value("lamps", "lamp-red", f"{step}_current").mean for step in ("bright", "barely_lit")]
    seen = seen_in(MADE, np.full(4096, 0.2), np.full(4096, 20.0), go="bright", provenance=MEMORY)
    assert current_through(MADE, 0.2) > steps[0] > current_through(MADE, 20.0) > steps[1]
    assert seen.good["bright"] > 0.9
    assert seen.bad["faint"] > 0.9


def test_screws_that_touch_never_burn_the_lamp():
    for key in handbook().keys("lamps"):
        for cells in ("pack-2aa-alkaline", "pack-3aa-alkaline", "pack-4aa-alkaline", "pack-4aa-nimh"):
            made = line("straw", key, cells)
            most = handbook().value("lamps", key, "max_current").mean
            assert touching(made)[1] < most
    assert _resistor_for("lamp-red", "pack-4aa-alkaline") == "resistor-220"


def test_less_resistance_beside_the_dough_moves_the_borders_up():
    borders = [
        seen_in(line(key, "lamp-red", "pack-4aa-alkaline"), np.ones(8), np.ones(8), go="bright", provenance=MEMORY)
        for key in ("straw", "barrel", "ice-cube")
    ]
    for less, more in pairwise(borders):
        assert less.bright_below.mean < more.bright_below.mean
        assert less.dark_above.mean < more.dark_above.mean
        assert less.bright_below.mean < less.dark_above.mean


def test_the_demo_salt_dough_is_told_from_one_without_salt():
    found = trial(SALT)
    assert found.tells
    assert found.seen.good["bright"] > 0.9 > 0.1 > found.seen.bad["bright"]
    assert "Go" in found.zones[0]


def test_a_white_lamp_through_a_straw_is_no_test_and_a_better_one_is_named():
    found = trial(SALT, mould="straw", lamp="lamp-white")
    assert not found.tells
    assert found.better.tells
    assert any("does not tell" in words for words in found.words)
    assert any(words.startswith("Better: the barrel") for words in found.words)


def test_the_best_line_is_the_one_that_every_line_looked_at_by_itself_would_name():
    rng = np.random.default_rng(3)
    good, bad = 0.5 * rng.lognormal(0, 0.5, 4096), 8.0 * rng.lognormal(0, 0.5, 4096)
    near = line("straw", "lamp-blue", "pack-3aa-alkaline")
    for go, first, second in (("bright", good, bad), ("dark", bad, good)):
        found = best_line(first, second, go=go, provenance=MEMORY, near=near)
        rods = near.mould.rods
        gains = [seen_in(each, first, second, go=go, provenance=MEMORY).gain for each in _lines(rods)]
        assert max(gains) - 0.02 <= found.gain <= max(gains)
        assert found == seen_in(found.line, first, second, go=go, provenance=MEMORY)


def test_two_cells_light_nothing_and_the_words_say_so():
    found = trial(SALT, mould="straw", pack="pack-2aa-alkaline")
    assert "stay dark here, whatever the dough" in " ".join(found.zones)


def test_an_insulating_dough_should_stay_dark_and_a_spoon_of_salt_shows():
    found = trial(SUGAR)
    assert (found.seen.go, found.tells) == ("dark", True)
    assert found.seen.bad["dark"] < 0.1 < 0.9 < found.seen.good["dark"]


def test_the_card_of_a_weak_test_says_so():
    weak = trial(SALT, mould="straw", lamp="lamp-white")
    assert not weak.tells
    assert weak.card_words[-1].startswith("This trial is weak: it misjudges more than one in ten")
    assert max(1 - weak.seen.good["bright"], weak.seen.bad["bright"]) > 0.1  # what the sentence claims


def test_the_card_has_three_short_sentences_and_the_steps_check_lamp_and_pack_first():
    found = trial(SUGAR)
    assert len(found.card_words) == 3
    assert all(len(words) < 200 for words in found.card_words)
    order = [next(k for k, step in enumerate(found.steps) if word in step) for word in ("touch", "Fill", "Look")]
    assert order == sorted(order)
    assert "never touch each other" in found.cautions[0]
    assert "Local rules" in found.cautions[-1]


def test_a_dough_without_salt_to_forget_is_held_against_one_that_carries_little():
    from lumped.dough import read_recipe

    key, other = mistake(read_recipe(SALT).without("table-salt"), pantry())
    assert (key, other) == ("no-carrier", None)


def test_shares_of_a_hundred_are_a_hundred():
    rng = np.random.default_rng(7)
    for row in rng.dirichlet([0.3, 0.3, 0.3], 50):
        assert sum(as_hundred(dict(zip(("bright", "faint", "dark"), row.tolist(), strict=True))).values()) == 100


def test_rods_that_do_not_fit_are_refused():
    with pytest.raises(InputError, match=r"is not round\. Take one of wire-tinned-copper"):
        mould("straw", "strip-steel-10mm")


def test_rods_too_thick_are_refused(monkeypatch):
    from lumped.sculpt import mould as room

    monkeypatch.setattr(room, "gauge", lambda key: type("Thick", (), {"equivalent_radius": 3e-3}))
    with pytest.raises(
        InputError, match=r"too thick for a piece of a drinking straw, 6 cm long, which is 5\.5 mm wide"
    ):
        mould.__wrapped__("straw", "nail-iron-3mm")


def test_a_cooked_dough_cools_before_it_is_tested():
    assert any("cool first" in words for words in trial(SALT).cautions)
    assert not any("cool first" in words for words in trial(SUGAR).cautions)
