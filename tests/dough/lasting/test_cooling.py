import numpy as np
import pytest

from lumped.dough.lasting.air import Room
from lumped.dough.lasting.cooling import cool, safe_warmth
from lumped.dough.lasting.heat import WarmDough, warm_dough
from lumped.dough.lasting.layers import Piece
from lumped.errors import InputError

DOUGH = warm_dough({"water": 0.45, "starch": 0.27, "protein": 0.04, "salt": 0.24})
BALL = Piece(shape="ball", thickness=0.05)


def test_the_middle_is_the_warmest_and_the_face_the_coolest():
    done = cool(DOUGH, BALL, Room(), beginning=353.15, duration=3 * 3600.0)
    assert np.all(done.middle[1:] >= done.mean[1:])
    assert np.all(done.mean[1:] >= done.face[1:])
    assert np.all(np.diff(done.mean) < 0)
    assert np.all(done.face > 293.15)


def test_an_open_face_cools_faster_than_one_under_film_and_a_wet_one_below_the_room():
    covered, salty, wet = (cool(DOUGH, BALL, Room(humidity=0.4), beginning=353.15, duration=6 * 3600.0, activity=each)
                           for each in (None, 0.75, 1.0))  # fmt: skip
    safe = safe_warmth().mean
    assert wet.moment_below(safe) < salty.moment_below(safe) < covered.moment_below(safe)
    assert wet.mean[-1] < 293.15 < covered.mean[-1]


def test_heat_that_leaves_is_heat_that_was_in_it():
    from lumped.dough.lasting.air import AirSide

    piece = Piece(shape="roll", thickness=0.03, extent=0.2)
    done = cool(DOUGH, piece, Room(), beginning=353.15, duration=3600.0, side=AirSide(heat=12.0, vapour=0.0), steps=240)
    away = np.trapezoid(12.0 * piece.area * (done.face - 293.15), done.time)
    inside = float(DOUGH.density * DOUGH.capacity * piece.volume) * (353.15 - done.mean[-1])
    assert away == pytest.approx(inside, rel=5e-3)  # the trapezium's first steps


def test_thicker_pieces_wait_longer():
    sizes = np.array([0.01, 0.03, 0.06])
    done = cool(DOUGH, Piece(shape="slab", thickness=sizes), Room(), beginning=353.15, duration=10 * 3600.0)
    moments = done.moment_below(safe_warmth().mean)
    assert moments.shape == (3,)
    assert np.all(np.diff(moments) > 0)


def test_many_pieces_at_once_cool_as_each_alone():
    sizes = np.linspace(0.01, 0.06, 20)
    many = cool(DOUGH, Piece(shape="ball", thickness=sizes), Room(), beginning=353.15, duration=7200.0, activity=0.8)
    one = cool(DOUGH, Piece(shape="ball", thickness=sizes[7]), Room(), beginning=353.15, duration=7200.0, activity=0.8)
    np.testing.assert_allclose(many.middle[7], one.middle, rtol=1e-9)


def test_what_is_not_reached_is_reached_never():
    done = cool(DOUGH, BALL, Room(), beginning=353.15, duration=60.0)
    assert done.moment_below(300.0) == np.inf


def test_pores_hold_heat_back_and_weigh_nothing():
    airy = warm_dough({"water": 0.45, "starch": 0.55}, pores=0.2)
    dense = warm_dough({"water": 0.45, "starch": 0.55})
    assert airy.density == pytest.approx(0.8 * dense.density)
    assert airy.conductivity < 0.8 * dense.conductivity
    assert airy.capacity == dense.capacity


def test_what_can_not_be_warm_is_refused():
    with pytest.raises(InputError, match=r"“gold” is no part of a dough"):
        warm_dough({"gold": 1.0})
    with pytest.raises(InputError, match=r"all its parts are nothing"):
        warm_dough({"water": 0.0})
    with pytest.raises(InputError, match=r"has 10 °C and the room 20 °C: nothing cools"):
        cool(DOUGH, BALL, Room(), beginning=283.15, duration=60.0)
    with pytest.raises(InputError, match=r"cooling dough is 0, but must be more"):
        cool(WarmDough(density=0.0, capacity=1.0, conductivity=1.0), BALL, Room(), beginning=353.15, duration=60.0)
