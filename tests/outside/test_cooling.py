"""Cooling, against the series for slab, roll and ball that give heat to air at a steady rate.

Source: H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd edition (1959), sections 3.11 (slab), 7.7
(cylinder), 9.4 (sphere): roots of ζ tan ζ = Bi, ζ J₁(ζ) = Bi J₀(ζ), 1 - ζ cot ζ = Bi, with Bi = h·half/k.
"""

import itertools

import numpy as np
import pytest
from scipy.optimize import brentq
from scipy.special import j0, j1, jn_zeros

from lumped.dough.lasting.air import AirSide, Room
from lumped.dough.lasting.cooling import biot_number, cool, cool_pot, cooling_time
from lumped.dough.lasting.heat import WarmDough, warm_dough
from lumped.dough.lasting.layers import Piece

DOUGH = WarmDough(density=1250.0, capacity=3000.0, conductivity=0.5)
HALF, AIR, BEGINNING = 0.03, 293.15, 353.15
TINY = 1e-9


def slab(biot, fourier):
    roots = [brentq(lambda z: z * np.sin(z) - biot * np.cos(z), n * np.pi, n * np.pi + np.pi / 2) for n in range(60)]
    z = np.array(roots)
    wave = 4 * np.sin(z) / (2 * z + np.sin(2 * z)) * np.exp(-(z**2) * fourier)
    return wave.sum(), (wave * np.sin(z) / z).sum()


def ball(biot, fourier):
    z = np.array([brentq(lambda z: np.sin(z) * (1 - biot) - z * np.cos(z), n * np.pi + TINY, (n + 1) * np.pi - TINY)
                  for n in range(60)])  # fmt: skip
    wave = 4 * (np.sin(z) - z * np.cos(z)) / (2 * z - np.sin(2 * z)) * np.exp(-(z**2) * fourier)
    return wave.sum(), (wave * 3 * (np.sin(z) - z * np.cos(z)) / z**3).sum()


def roll(biot, fourier):
    ends = np.concatenate([[0.0], jn_zeros(1, 60)])
    z = np.array([brentq(lambda z: z * j1(z) - biot * j0(z), a + TINY, b) for a, b in itertools.pairwise(ends)])
    wave = 2 / z * j1(z) / (j0(z) ** 2 + j1(z) ** 2) * np.exp(-(z**2) * fourier)
    return wave.sum(), (wave * 2 * j1(z) / z).sum()


@pytest.mark.parametrize(("shape", "series"), [("slab-both-sides", slab), ("roll", roll), ("ball", ball)])
@pytest.mark.parametrize("biot", [0.1, 0.6, 5.0])
def test_a_piece_cools_as_its_series_says(shape, series, biot):
    minutes = np.array([20.0, 60.0, 120.0])
    side = AirSide(heat=biot * 0.5 / HALF, vapour=0.0)
    done = cool(DOUGH, Piece(shape=shape, thickness=2 * HALF), Room(), beginning=BEGINNING, duration=7200.0, side=side)
    middle, mean = (np.interp(60 * minutes, done.time, each - AIR) / 60 for each in (done.middle, done.mean))
    exact = np.array([series(biot, 60 * m * float(DOUGH.diffusivity) / HALF**2) for m in minutes]).T
    np.testing.assert_allclose(middle, exact[0], atol=4e-3)  # 16 layers; interpolated in time
    np.testing.assert_allclose(mean, exact[1], atol=4e-3)


def test_a_slab_on_wood_cools_as_one_twice_as_thick_that_hangs():
    side = AirSide(heat=10.0, vapour=0.0)
    lying, hanging = (
        cool(DOUGH, Piece(shape=shape, thickness=thickness), Room(), beginning=BEGINNING, duration=7200.0, side=side)
        for shape, thickness in (("slab", HALF), ("slab-both-sides", 2 * HALF))
    )
    np.testing.assert_allclose(lying.middle, hanging.middle, rtol=1e-9)


def test_a_thin_piece_cools_by_one_exponential():
    piece = Piece(shape="ball", thickness=0.005)
    side = AirSide(heat=10.0, vapour=0.0)
    assert biot_number(DOUGH, piece, 10.0) < 0.02
    done = cool(DOUGH, piece, Room(), beginning=BEGINNING, duration=1800.0, side=side)
    constant = float(cooling_time(DOUGH, piece, 10.0))
    # the piece is slower by a fifth of h L/k, which is 0.4 % of the whole fall at most
    np.testing.assert_allclose(done.mean - AIR, 60 * np.exp(-done.time / constant), rtol=0, atol=0.004 * 60)


def test_a_heap_in_a_pot_is_the_product_of_a_slab_and_a_roll():
    # Bi 0.8 from the bottom that is tight to the top, 1.6 over the half of the width
    side, hour = AirSide(heat=8.0, vapour=0.0), 3600.0
    heap = cool_pot(DOUGH, Room(), height=0.05, diameter=0.20, beginning=BEGINNING, duration=hour, side=side)
    spread = float(DOUGH.diffusivity)
    exact = slab(0.8, spread * hour / 0.05**2)[0] * roll(1.6, spread * hour / 0.1**2)[0]
    assert (heap.middle[-1] - AIR) / 60 == pytest.approx(exact, rel=5e-3)  # 16 layers


def test_heat_of_water_and_of_flour_are_in_the_range_of_foods():
    # from memory: flour 1.6 to 1.9 kJ/(kg K), 0.1 as powder; bread dough 2.5 to 3.1 and 0.4 to 0.55 W/(m K)
    flour = warm_dough({"water": 0.12, "starch": 0.76, "protein": 0.11, "fat": 0.01})
    assert 1600 < flour.capacity < 2050
    bread = warm_dough({"water": 0.42, "starch": 0.48, "protein": 0.08, "fat": 0.01, "salt": 0.01})
    assert 2500 < bread.capacity < 3100
    assert 0.35 < bread.conductivity < 0.55
    assert 1150 < bread.density < 1350
