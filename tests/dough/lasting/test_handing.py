"""When hands may take a hot dough."""

import numpy as np
import pytest
from scipy.integrate import solve_ivp
from tests.bowls import CONDUCTING, INSULATING, recipe_of

from lumped.dough.kneading import kneading
from lumped.dough.lasting import Piece, Room, air_over
from lumped.dough.lasting.handing import Hot, hand_clock, hot_dough, thickest_within
from lumped.dough.lasting.heat import WarmDough
from lumped.errors import InputError
from lumped.quantities import Provenance, Status


@pytest.fixture(scope="module")
def hot():
    return hot_dough(kneading(recipe_of(CONDUCTING | {"table-salt": 73})))


def test_a_dough_kneaded_cold_was_never_hot():
    done = kneading(recipe_of(INSULATING, "insulating", "not cooked"))
    assert hot_dough(done) is None
    assert hot_dough(done, beginning=330.0) is not None


def test_the_face_is_cool_before_the_middle_and_thick_pieces_take_longer(hot):
    thin, thick = (hand_clock(hot, "slab", thickness=each) for each in (0.01, 0.02))
    assert thin.face.mean < thin.middle.mean < thick.middle.mean
    assert thick.middle.low < thick.middle.mean < thick.middle.high


def test_what_cools_as_one_follows_newton():
    # Newton: ρ c L dT/dt = -h(T)(T - T_air) for a slab that gives its heat upward; k so high that it cools as one
    one = np.ones(1)
    made = Hot(
        title="", dough=WarmDough(density=1250.0 * one, capacity=3000.0 * one, conductivity=50.0 * one),
        beginning=353.15 * one, safe=316.15 * one, transfer=one, air_speed=0.1 * one,
        provenance=Provenance(status=Status.INVENTED),
    )  # fmt: skip
    thin = hand_clock(made, "slab", thickness=0.005, room=293.15)
    slab = Piece(shape="slab", thickness=0.005, extent=np.pi / 4 * 0.3**2)

    def slope(time, warm):
        heat = air_over(slab, Room(temperature=293.15, air_speed=0.1), surface=warm, wet=0.0).heat
        return -heat * (warm - 293.15) / (1250.0 * 3000.0 * 0.005)

    def cool(time, warm):
        return warm[0] - 316.15

    cool.terminal = True
    exact = solve_ivp(slope, (0.0, 1e4), [353.15], events=cool, rtol=1e-8).t_events[0][0]
    assert thin.middle.mean == pytest.approx(exact, rel=0.01)  # 60 steps


def test_mass_and_size_say_the_same(hot):
    by_mass = hand_clock(hot, "ball", mass=0.08)
    by_size = hand_clock(hot, "ball", thickness=by_mass.thickness)
    assert by_size.mass == pytest.approx(0.08)
    assert by_size.middle.mean == pytest.approx(by_mass.middle.mean)
    pot = hand_clock(hot, "pot", mass=0.45, across=0.18)
    assert hand_clock(hot, "pot", thickness=pot.thickness, across=0.18).mass == pytest.approx(0.45)


def test_the_way_back_from_a_time_to_a_thickness_is_the_way_there(hot):
    for form in ("slab", "ball", "pot"):
        there = hand_clock(hot, form, thickness=0.02)
        back = thickest_within(hot, form, there.middle.mean)
        assert back.mean == pytest.approx(0.02, rel=0.05)  # straight lines of logarithms between 14 thicknesses
        assert back.low < 0.02 < back.high


def test_less_than_no_time_cools_nothing(hot):
    assert thickest_within(hot, "slab", -60.0).high == 0
    assert thickest_within(hot, "slab", 10.0).high == 0


@pytest.mark.parametrize(
    ("given", "says"),
    [
        ({"form": "cup", "thickness": 0.02}, r"“cup” is no way to lay"),
        ({"form": "slab"}, r"How much is it"),
        ({"form": "slab", "mass": 1.0}, r"How much is it"),
        ({"form": "ball", "thickness": -1.0}, r"A hot dough -1,000 mm in size can’t be"),
        ({"form": "ball", "mass": -0.001}, r"A hot dough of -0.001 kg can’t be"),
        ({"form": "pot", "mass": 0.4, "across": 3.0}, r"3,000 mm in size .* at most 2 m"),
        ({"form": "pot", "mass": 900.0}, r"at most 50 kg"),
        ({"form": "ball", "thickness": 0.05, "room": 320.0}, r"A room of 46.9 °C is too warm"),
    ],
)
def test_what_cannot_cool_is_refused(hot, given, says):
    with pytest.raises(InputError, match=says):
        hand_clock(hot, **given)


def test_a_dough_colder_than_its_room_is_refused():
    cold = hot_dough(kneading(recipe_of(CONDUCTING)), beginning=285.0)
    with pytest.raises(InputError, match=r"nothing cools there"):
        hand_clock(cold, "ball", thickness=0.05)
