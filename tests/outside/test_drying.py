"""Drying, against closed forms and against what salt does.

Sources: the law of evaporation itself while the face is wet; Lewis and the psychrometer for the temperature; 75.3 %
humidity over saturated table salt (CRC Handbook, constant humidity solutions, after Wexler; ±2 %); Carslaw and Jaeger,
Stefan and Boltzmann for what still air and walls take.
"""

import numpy as np
import pytest

from lumped.chemistry.draught import evaporation_rate, vapour_transfer
from lumped.chemistry.humidity import wet_bulb
from lumped.chemistry.vapour import saturated_humidity
from lumped.dough.lasting.air import AirSide, Cover, Room, air_over, radiation
from lumped.dough.lasting.drying import dry
from lumped.dough.lasting.isotherm import Isotherm, brine_uptake, flour_uptake, isotherm_of
from lumped.dough.lasting.layers import Piece
from lumped.dough.lasting.moist import MoistDough
from lumped.reference import handbook

WET = Isotherm(content=np.array([0.0, 1e-6, 2.0]), activity=np.array([0.0, 1.0, 1.0]))
ROOM = Room(temperature=293.15, humidity=0.45)
SIDE = AirSide(heat=15.0, vapour=0.009)
SALT_DOUGH = isotherm_of([(0.6, flour_uptake()), (0.4, brine_uptake("sodium-chloride"))], most=4.0)


def quick(content):
    return 1e-6  # water that creeps so fast that the air alone decides


def test_while_its_face_is_wet_a_slab_loses_water_at_a_steady_rate():
    wet = MoistDough(density=1250.0, content=1.0, isotherm=WET, diffusivity=quick)
    done = dry(wet, Piece(shape="slab", thickness=0.01, extent=0.02), ROOM, duration=3600.0, side=SIDE)
    face = float(done.temperature[-1])
    rate = evaporation_rate(0.009, surface=face, activity=1.0, air=293.15, humidity=0.45)
    expected = done.water[0] - 0.02 * rate * done.time
    np.testing.assert_allclose(done.water, expected, rtol=1e-4)  # the face's temperature settles in two rounds


def test_a_wet_face_is_as_cold_as_the_wet_bulb():
    wet = MoistDough(density=1250.0, content=1.0, isotherm=WET, diffusivity=quick)
    side = AirSide(heat=10.0, vapour=vapour_transfer(10.0, 293.15))  # no radiation, as in a psychrometer
    done = dry(wet, Piece(shape="slab", thickness=0.01), ROOM, duration=600.0, side=side)
    depression = 293.15 - float(wet_bulb(293.15, 0.45))
    assert 293.15 - done.temperature[-1] == pytest.approx(depression, rel=0.1)  # the analogy's own tenth


def test_where_the_air_alone_decides_a_dough_comes_to_rest_by_an_exponential():
    # a = X s, so m dX/dt = -k A (p s X - e)/(R T): X goes to e/(p s) with time constant m R T/(k A p s); no cooling
    slope = Isotherm(content=np.linspace(0, 2, 81), activity=np.linspace(0, 1, 81))
    dough = MoistDough(density=1250.0, content=1.0, isotherm=slope, diffusivity=quick)
    side = AirSide(heat=1e9, vapour=0.009)
    done = dry(dough, Piece(shape="slab", thickness=0.004), Room(humidity=0.25), duration=40000.0, side=side)
    vapour = 461.523 * 293.15
    constant = 0.004 * 1250 / 2 * vapour / (0.009 * 2339.2 * 0.5)
    np.testing.assert_allclose(done.mean, 0.5 + 0.5 * np.exp(-done.time / constant), rtol=2e-4)  # 64 steps


@pytest.mark.parametrize("shape", ["slab", "slab-both-sides", "roll", "ball"])
def test_what_the_dough_loses_is_what_a_tight_box_gains(shape):
    dough = MoistDough(density=1250.0, content=1.2, isotherm=SALT_DOUGH, diffusivity=lambda content: 2e-10)
    box = Cover(leak=0.0, air=0.5)
    done = dry(dough, Piece(shape=shape, thickness=0.01, extent=1.0), ROOM, duration=86400.0, cover=box)
    gained = 0.5 * (done.pressure - done.pressure[0]) / (461.523 * 293.15)
    np.testing.assert_allclose(done.water[0] - done.water, gained, rtol=1e-5, atol=1e-12)  # the gas constant's digits
    assert np.all(np.diff(gained) > -1e-12)


def test_a_dough_in_a_tight_box_brings_the_air_to_its_own_humidity():
    dough = MoistDough(density=1250.0, content=0.9, isotherm=SALT_DOUGH, diffusivity=quick)
    done = dry(
        dough, Piece(shape="slab", thickness=0.01, extent=0.02), ROOM, duration=6e5, cover=Cover(leak=0.0, air=0.003)
    )
    assert done.pressure[-1] / 2339.2 == pytest.approx(float(done.activity[-1]), rel=1e-3)
    assert done.pressure[-1] / 2339.2 == pytest.approx(float(saturated_humidity("sodium-chloride", 293.15)), rel=0.01)


def test_a_salt_dough_stops_near_75_per_cent_and_turns_wet_above():
    dough = MoistDough(density=1250.0, content=0.7, isotherm=SALT_DOUGH, diffusivity=quick)
    humid = np.array([0.70, 0.74, 0.77, 0.85])
    room = Room(humidity=humid, air_speed=1.0)
    done = dry(dough, Piece(shape="slab", thickness=0.002), room, duration=60 * 86400.0)
    gains = done.water[:, -1] > done.water[:, 0]
    assert gains.tolist() == [False, False, True, True]
    np.testing.assert_allclose(done.mean[:, -1], SALT_DOUGH.content_at(humid), rtol=0.02)  # near, after two months


def test_a_tiny_ball_in_still_air_gives_heat_by_conduction_alone():
    """Heat from a ball into unmoved matter: 4π k r for a kelvin, so Nu = 2 (Carslaw and Jaeger, section 9.2)."""
    room = Room(temperature=293.15, humidity=0.5, air_speed=0.0)
    side = air_over(Piece(shape="ball", thickness=1e-4), room, surface=293.05)
    conductivity = handbook().value("air", "air", "heat_conductivity").mean
    assert side.heat - radiation(293.05, 293.15) == pytest.approx(
        2 * conductivity / 1e-4, rel=0.03
    )  # some flow is left


def test_radiation_of_a_kelvin_is_the_derivative_of_stefan_and_boltzmann():
    rise = 0.93 * 5.670374e-8 * (293.65**4 - 292.65**4)
    assert radiation(293.65, 292.65) == pytest.approx(rise, rel=1e-6)


@pytest.mark.parametrize("shape", ["slab", "roll", "ball"])
@pytest.mark.parametrize("shrinks", [0.0, 0.6, 1.0])
def test_a_piece_shrinks_by_its_share_of_the_water_that_left(shape, shrinks):
    dough = MoistDough(density=1250.0, content=1.2, isotherm=SALT_DOUGH, diffusivity=lambda content: 2e-10,
                       shrinks=shrinks)  # fmt: skip
    done = dry(dough, Piece(shape=shape, thickness=0.01, extent=1.0), ROOM, duration=86400.0)
    gone = (done.water[0] - done.water[-1]) / 998.2
    assert done.volumes[0].sum() - done.volumes[-1].sum() == pytest.approx(shrinks * gone, rel=1e-6, abs=1e-12)
    assert gone > 0
