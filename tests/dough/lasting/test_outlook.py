"""A drying piece with intervals."""

import re

import numpy as np
import pytest
from tests.bowls import CONDUCTING, INSULATING, recipe_of

from lumped.dough.kneading import kneading
from lumped.dough.lasting import Piece, Room, dry
from lumped.dough.lasting.kneaded import moist_from
from lumped.dough.lasting.outlook import HOUR, Surroundings, outlook
from lumped.dough.lasting.telling import moment_words, rest_words, times_text
from lumped.dough.lasting.wording import millimetres_text
from lumped.errors import InputError, SolverError
from lumped.quantities import Value

SALT = recipe_of(CONDUCTING | {"table-salt": 73})
ROLL = Piece(shape="roll", thickness=0.012, extent=0.1)
THREE_DAYS = 72 * HOUR


@pytest.fixture(scope="module")
def lying_open():
    return outlook(SALT, ROLL, Surroundings(), duration=THREE_DAYS, count=64)


def test_the_middle_of_all_draws_is_near_what_the_middle_of_all_beliefs_gives(lying_open):
    dough = moist_from(SALT)
    one = dry(dough, ROLL, Room(temperature=294.15, humidity=0.45, air_speed=0.1), duration=THREE_DAYS)
    for hours in (1.0, 16.0):
        alone = float(np.interp(hours * HOUR, one.time, one.loss[0]))
        assert lying_open.at("loss", hours * HOUR).mean == pytest.approx(alone, rel=0.15)  # the mean of 64 draws


def test_water_that_is_lost_is_weight_that_is_lost(lying_open):
    lost = lying_open.along("mass", 0.0) - lying_open.along("mass", 16 * HOUR)
    held = lying_open.done.water[:, 0]
    assert lost == pytest.approx(held * lying_open.along("loss", 16 * HOUR))


def test_nobody_knows_the_next_day_as_well_as_the_next_hour(lying_open):
    hour, day = (lying_open.at("loss", each) for each in (HOUR, 24 * HOUR))
    assert day.high - day.low > 3 * (hour.high - hour.low)
    assert lying_open.at("resistivity", HOUR).provenance.status.value == "from memory"


def test_more_draws_change_little():
    few, many = (outlook(SALT, ROLL, Surroundings(), duration=HOUR, count=n).at("loss", HOUR) for n in (64, 256))
    assert few.mean == pytest.approx(many.mean, rel=0.05)
    assert few.high - few.low == pytest.approx(many.high - many.low, rel=0.35)  # ends of 64 draws lie on one or two


def test_a_salt_dough_stops_at_75_percent_and_turns_wet_above(lying_open):
    assert lying_open.fresh.low < 0.753 < lying_open.fresh.high  # Greenspan, saturated sodium chloride at 20 °C: 75.5 %
    damp = outlook(SALT, ROLL, Surroundings(humidity=0.85), duration=THREE_DAYS, count=32)
    assert damp.at("loss", THREE_DAYS).high < 0
    assert "turns wet and sticky" in " ".join(rest_words(damp))
    assert "draws water out of the air" in moment_words(damp, "days")
    assert "stops there" in " ".join(rest_words(lying_open))


def test_a_bag_keeps_a_dough_and_a_box_keeps_it_better():
    open_air, bag, box = (
        outlook(SALT, ROLL, Surroundings(cover=cover), duration=THREE_DAYS, count=32).at("loss", 16 * HOUR).mean
        for cover in ("open", "bag", "box")
    )
    assert open_air > 20 * bag > 20 * box > 0


def test_a_draught_and_dry_air_dry_faster():
    def lost(**where):
        return outlook(SALT, ROLL, Surroundings(**where), duration=HOUR, count=16).at("loss", HOUR).mean

    assert lost(draught="fan") > 1.5 * lost() > 1.5 * lost(humidity=0.6)
    assert lost(draught=1.5) == pytest.approx(lost(draught="fan"), rel=0.15)


def test_words_follow_the_figures(lying_open):
    assert "carries current as it did when fresh" in moment_words(lying_open, "lesson")
    assert "times less easily" in moment_words(lying_open, "night")
    thin = outlook(
        SALT, Piece(shape="roll", thickness=0.003, extent=0.1), Surroundings(), duration=THREE_DAYS, count=32
    )
    assert "leathery or hard all through" in moment_words(thin, "days")
    wet = Value(mean=2e3, low=3.0, high=1e7, unit="", spread="lognormal")
    assert times_text(wet) == "more than 1,000"


def test_a_sugar_dough_in_a_box_keeps_its_water():
    sugar = recipe_of(INSULATING, "insulating", "not cooked")
    kept = outlook(sugar, ROLL, Surroundings(cover="box"), duration=THREE_DAYS, count=16)
    assert "keeps its water" in moment_words(kept, "night")
    assert "Under its cover" in " ".join(rest_words(kept))


@pytest.mark.parametrize(
    ("where", "says"),
    [
        ({"temperature": 400.0}, r"A room of 127 °C can’t be reckoned with"),
        ({"humidity": 1.45}, r"A humidity of 145 % can’t be"),
        ({"humidity": float("nan")}, r"A humidity of nan % can’t be"),
        ({"cover": "sock"}, r"“sock” is no cover"),
        ({"draught": "storm"}, r"“storm” is no draught"),
        ({"draught": -1.0}, r"“-1” is no draught"),
    ],
)
def test_surroundings_that_cannot_be_are_refused(where, says):
    with pytest.raises(InputError, match=says):
        Surroundings(**where)


def test_a_time_that_cannot_be_is_refused():
    with pytest.raises(InputError, match=r"at most 720 hours"):
        outlook(SALT, ROLL, Surroundings(), duration=1e9)


def test_a_thin_roll_is_followed_for_a_month_and_ends_in_balance():
    thin = Piece(shape="roll", thickness=0.003, extent=0.1)
    found = outlook(SALT, thin, Surroundings(), duration=720 * HOUR)
    assert np.all(np.isfinite(found.done.mass))
    assert found.done.contents.min() > -0.01
    assert found.at("loss", 720 * HOUR).mean == pytest.approx(found.rest.mean, abs=0.02)  # 2 % of its water


def test_what_cannot_be_followed_is_said_and_never_shown(monkeypatch):
    from lumped.dough.lasting import outlook as room

    monkeypatch.setattr(room, "_STEPS", (64,))
    thin = Piece(shape="roll", thickness=0.0005, extent=0.1)
    with pytest.raises(SolverError, match=r"A piece of 0\.5 mm is dry so soon that Lumped can’t follow it for 720"):
        outlook(SALT, thin, Surroundings(), duration=720 * HOUR)


@pytest.mark.parametrize("recipe", [SALT, recipe_of(INSULATING, "insulating", "not cooked")])
def test_few_draws_tell_of_the_fresh_dough_what_all_of_them_tell(recipe):
    """Of 128 the 2.5th lies between two: they are chosen so that median and ends are those of the dough's page."""
    found, whole = outlook(recipe, ROLL, Surroundings(), duration=HOUR), kneading(recipe)
    fresh, told = found.at("resistivity", 0.0), whole.value(whole.chain.resistivity, "Ω·m", "resistivity")
    level = whole.value(whole.chain.water_activity, "", "water_activity")
    for end in ("low", "mean", "high"):
        assert getattr(fresh, end) == pytest.approx(getattr(told, end), rel=0.005)  # two neighbours of 4,096
        assert getattr(found.fresh, end) == pytest.approx(getattr(level, end), rel=1e-9)


CRUMBS = recipe_of({"plain-flour": 200, "table-salt": 100, "vegetable-oil": 60}, cooked="not cooked")


def test_what_neither_surely_loses_water_nor_gains_some_stays_as_it_is():
    found = outlook(CRUMBS, ROLL, Surroundings(humidity=0.60), duration=THREE_DAYS)
    lost = found.at("loss", 16 * HOUR)
    assert lost.low < 0 < lost.high
    night = moment_words(found, "night")
    assert "about as it is" in night
    assert not re.search("softer|better|easily", night)


def test_what_was_hard_when_fresh_does_not_turn_hard():
    found = outlook(CRUMBS, ROLL, Surroundings(humidity=0.30), duration=THREE_DAYS)
    assert "is as stiff all through as at first" in moment_words(found, "days")


def test_a_blocking_dough_that_draws_water_is_told_how_much_more_it_carries():
    damp = outlook(recipe_of(INSULATING, "insulating", "not cooked"), ROLL, Surroundings(humidity=0.97),
                   duration=THREE_DAYS)  # fmt: skip
    worse = damp.at("worse", THREE_DAYS)
    assert worse.high < 1 / 1.1
    better = Value(mean=1 / worse.mean, low=1 / worse.high, high=1 / worse.low, unit="")
    assert f"lets current through {times_text(better)} times more easily" in moment_words(damp, "days")


def test_a_skin_of_one_depth_has_no_interval():
    assert millimetres_text(Value(mean=6e-3, low=6e-3, high=6e-3, unit="m")) == "6.0"


def test_a_piece_that_may_dry_or_get_wet_by_much_does_not_stay_as_it_is():
    starchy = recipe_of({"cornstarch": 100, "vegetable-oil": 80}, "insulating", "not cooked")
    found = outlook(starchy, ROLL, Surroundings(), duration=THREE_DAYS)
    lost = found.at("loss", THREE_DAYS)
    assert lost.low < -0.1 < 0 < lost.high
    assert "may dry or get wet, nobody can tell" in moment_words(found, "days")


def test_drying_names_the_tables_of_its_laws_and_resistivity_those_of_current(lying_open):
    lost, along = (set(lying_open.at(figure, HOUR).provenance.sources) for figure in ("loss", "resistivity"))
    assert {"pitzer-dat", "usda-sr", "laliberte-2009"} <= lost
    assert not {"crc-equivalent", "wu-koch-pratt"} & lost
    assert {"pitzer-dat", "crc-equivalent"} <= along
    assert "laliberte-2009" not in lying_open.fresh.provenance.sources
