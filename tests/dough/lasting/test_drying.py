import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from lumped.dough.lasting.air import OPEN, AirSide, Cover, Room, air_over, bag
from lumped.dough.lasting.drying import dry
from lumped.dough.lasting.isotherm import Isotherm, brine_uptake, flour_uptake, isotherm_of
from lumped.dough.lasting.layers import Piece, layer_shares, solve_layers
from lumped.dough.lasting.moist import MoistDough, falling_diffusivity
from lumped.errors import InputError

DAY = 86400.0
SALTY = isotherm_of([(0.6, flour_uptake()), (0.4, brine_uptake("sodium-chloride"))], most=1.5)
DOUGH = MoistDough(density=1250.0, content=1.18, isotherm=SALTY, diffusivity=falling_diffusivity(),
                   resistivity=lambda content: 0.2 * (1.18 / np.maximum(content, 1e-3)) ** 2)  # fmt: skip
WIDE = isotherm_of([(0.6, flour_uptake()), (0.4, brine_uptake("sodium-chloride"))], most=20.0)
ROLL = Piece(shape="roll", thickness=0.012, extent=0.2)


def test_a_roll_dries_from_its_face_inward():
    done = dry(DOUGH, ROLL, Room(humidity=0.45), duration=DAY)
    assert np.all(np.diff(done.mass) < 0)
    assert np.all(np.diff(done.skin) >= -1e-9)
    assert np.all(np.diff(done.contents[-1]) < 0)
    assert done.surface[-1] < done.contents[-1, -1]
    assert 0 < done.skin[-1] < done.thickness[-1] / 2


def test_the_volume_of_the_lost_water_is_gone():
    done = dry(DOUGH, ROLL, Room(humidity=0.45), duration=DAY)
    section = np.pi / 4 * done.thickness**2 * 0.2
    np.testing.assert_allclose(section[0] - section, (done.water[0] - done.water) / 998.2, rtol=1e-9, atol=1e-18)


def test_a_stiff_roll_keeps_its_size():
    stiff = MoistDough(density=1250.0, content=1.18, isotherm=SALTY, diffusivity=falling_diffusivity(), shrinks=0.0)
    done = dry(stiff, ROLL, Room(humidity=0.45), duration=DAY)
    np.testing.assert_allclose(done.thickness, 0.012, rtol=1e-12)


def test_thin_dry_warm_and_draughty_all_dry_faster():
    thin = Piece(shape="roll", thickness=np.array([0.003, 0.012, 0.020]), extent=0.2)
    assert np.all(np.diff(dry(DOUGH, thin, Room(humidity=0.45), duration=3600.0).loss[:, -1]) < 0)
    for room in (Room(humidity=np.array([0.7, 0.5, 0.3, 0.1])), Room(temperature=np.array([288.0, 293.0, 303.0])),
                 Room(air_speed=np.array([0.05, 0.2, 1.0]))):  # fmt: skip
        assert np.all(np.diff(dry(DOUGH, ROLL, room, duration=3600.0).loss[..., -1]) > 0)


def test_a_cover_keeps_it_moist():
    room, hours = Room(humidity=0.45), 8 * 3600.0
    losses = [float(dry(DOUGH, ROLL, room, duration=hours, cover=each).loss[-1])
              for each in (OPEN, bag(ROLL), Cover(leak=0.0, air=0.001))]  # fmt: skip
    assert losses[0] > 10 * losses[1]
    assert 0 < losses[2] < 0.01


def test_many_cases_at_once_are_what_each_is_alone():
    speeds, sizes = np.array([5e-11, 2e-10, 6e-10] * 8), np.linspace(0.004, 0.02, 24)
    many = MoistDough(density=1250.0, content=1.18, isotherm=SALTY, diffusivity=falling_diffusivity(speeds))
    done = dry(many, Piece(shape="roll", thickness=sizes, extent=0.2), Room(humidity=0.4), duration=DAY)
    for i in (0, 7, 23):
        one = MoistDough(density=1250.0, content=1.18, isotherm=SALTY, diffusivity=falling_diffusivity(speeds[i]))
        alone = dry(one, Piece(shape="roll", thickness=sizes[i], extent=0.2), Room(humidity=0.4), duration=DAY)
        for name in ("mass", "surface", "skin", "activity", "temperature"):
            np.testing.assert_allclose(getattr(done, name)[i], getattr(alone, name), rtol=1e-8, atol=1e-12)


def test_each_case_may_have_its_own_isotherm():
    laws = isotherm_of([(np.array([1.0, 0.6]), flour_uptake()),
                        (np.array([0.0, 0.4]), brine_uptake("sodium-chloride"))], most=1.5)  # fmt: skip
    both = MoistDough(density=1250.0, content=0.3, isotherm=laws, diffusivity=lambda content: 1e-8)
    done = dry(both, Piece(shape="slab", thickness=0.002), Room(humidity=0.6, air_speed=1.0), duration=20 * DAY)
    np.testing.assert_allclose(done.mean[:, -1], laws.content_at(0.6), rtol=0.01)  # near rest, after three weeks


def test_layers_side_by_side_conduct_no_worse_than_one_behind_the_other():
    done = dry(DOUGH, Piece(shape="slab", thickness=0.01, extent=0.01), Room(humidity=0.45), duration=DAY)
    assert done.along[0] == pytest.approx(0.2)
    assert np.all(done.along <= done.across * (1 + 1e-12))
    assert done.across[-1] > done.along[-1] > 0.2
    assert done.resistance_ratio[-1] > done.along[-1] / 0.2


def test_a_dough_without_a_law_has_no_resistivity():
    plain = MoistDough(density=1250.0, content=1.0, isotherm=SALTY, diffusivity=falling_diffusivity())
    assert dry(plain, ROLL, Room(), duration=60.0).resistance_ratio is None


@settings(max_examples=15, deadline=None)
@given(
    humidity=st.floats(0.0, 0.97), thickness=st.floats(1e-3, 0.05), content=st.floats(0.1, 1.4),
    shape=st.sampled_from(["slab", "slab-both-sides", "roll", "ball"]), speed=st.floats(1e-12, 1e-8),
)  # fmt: skip
def test_whatever_the_weather_water_stays_between_none_and_what_the_air_gives(
    humidity, thickness, content, shape, speed
):
    dough = MoistDough(density=1250.0, content=content, isotherm=WIDE, diffusivity=falling_diffusivity(speed))
    done = dry(dough, Piece(shape=shape, thickness=thickness), Room(humidity=humidity), duration=7 * DAY)
    rest = float(WIDE.content_at(humidity))
    low, high = min(rest, content), max(rest, content)
    slack = 0.02 * (high - low) + 1e-6  # the outermost layer may pass its aim by that for a step
    assert np.all(done.contents >= low - slack)
    assert np.all(done.contents <= high + slack)


def test_shares_of_layers_sum_to_one_and_the_outermost_is_thin():
    for power in (1, 2, 3):
        assert layer_shares(20, power).sum() == pytest.approx(1.0)
    assert layer_shares(20)[-1] < 0.01


@pytest.mark.parametrize("layers", [2, 3, 7, 8])
def test_both_ways_of_solving_agree_with_numpy(layers):
    rng = np.random.default_rng(5)
    off, diagonal, right = -rng.random((layers - 1, 40)), 3 + rng.random((layers, 40)), rng.random((layers, 40))
    found = solve_layers(off, diagonal, right)
    for i in range(40):
        dense = np.diag(diagonal[:, i]) + np.diag(off[:, i], 1) + np.diag(off[:, i], -1)
        np.testing.assert_allclose(found[:, i], np.linalg.solve(dense, right[:, i]), rtol=1e-10)
        one = slice(i, i + 1)
        np.testing.assert_allclose(solve_layers(off[:, one], diagonal[:, one], right[:, one])[:, 0], found[:, i],
                                   rtol=1e-10)  # fmt: skip


def test_an_isotherm_and_its_inverse_belong_together():
    content = np.linspace(0.02, 0.14, 9)
    np.testing.assert_allclose(SALTY.content_at(SALTY.activity_at(content)), content, rtol=1e-9)
    wet = np.linspace(0.9, 1.3, 9)
    np.testing.assert_allclose(SALTY.content_at(SALTY.activity_at(wet)), wet, rtol=1e-9)


def test_an_isotherm_that_falls_is_refused():
    with pytest.raises(ValueError, match="never falling"):
        Isotherm(content=np.array([0.0, 1.0]), activity=np.array([0.5, 0.4]))


def test_a_draught_and_a_thin_roll_make_more_of_the_air():
    calm, windy = (air_over(ROLL, Room(air_speed=speed)) for speed in (0.05, 1.0))
    assert windy.vapour > 2 * calm.vapour
    assert air_over(Piece(shape="roll", thickness=0.003), Room()).vapour > calm.vapour
    ball, slab = (air_over(Piece(shape=shape, thickness=0.05, extent=1.0), Room()) for shape in ("ball", "slab"))
    assert 8 < ball.heat < 16
    assert 6 < slab.heat < 16


@pytest.mark.parametrize(("changed", "match"), [
    ({"piece": Piece(shape="roll", thickness=0.0)}, r"The thickness is 0, but must be more than nothing"),
    ({"piece": Piece(shape="roll", thickness=0.01, extent=-1.0)}, r"length is -1, but must"),
    ({"room": Room(humidity=45.0)}, r"humidity of 45 can’t be"),
    ({"duration": 0.0}, r"The time is 0, but"),
    ({"dough": MoistDough(density=0.0, content=1.0, isotherm=SALTY, diffusivity=lambda x: 1e-10)}, r"The density is 0"),
    ({"dough": MoistDough(density=1.0, content=-1.0, isotherm=SALTY, diffusivity=lambda x: 1e-10)}, r"content is -1"),
])  # fmt: skip
def test_what_can_not_be_is_refused(changed, match):
    given = {"dough": DOUGH, "piece": ROLL, "room": Room(), "duration": 60.0, "side": AirSide(heat=9.0, vapour=0.01)}
    given |= changed
    with pytest.raises(InputError, match=match):
        dry(given["dough"], given["piece"], given["room"], duration=given["duration"], side=given["side"])
