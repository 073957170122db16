"""Diffusion into a slab, a roll and a ball, against Crank's series.

Source: J. Crank, The Mathematics of Diffusion, 2nd edition (1975): slab, equations 4.18 (uptake) and 4.17 (profile);
cylinder 5.23, sphere 6.20. The slab's figures are the series summed to a part in a million, with D t/L² where L is the
half-thickness of a slab that dries on both sides.
"""

import numpy as np
import pytest
from scipy.special import jn_zeros

from lumped.dough.lasting.air import AirSide, Room
from lumped.dough.lasting.drying import dry
from lumped.dough.lasting.isotherm import linear_isotherm
from lumped.dough.lasting.layers import Piece
from lumped.dough.lasting.moist import MoistDough

HALF, SPEED, BEGINNING, END = 0.005, 1e-10, 0.9, 0.5
NO_RESISTANCE = AirSide(heat=1e9, vapour=1e6)
SLAB = {0.01: 0.112838, 0.05: 0.252313, 0.1: 0.356823, 0.2: 0.504088, 0.3: 0.613236, 0.5: 0.763950, 0.8: 0.887403,
        1.0: 0.931260, 1.5: 0.979982, 2.0: 0.994170}  # fmt: skip
MIDDLE = {0.1: 0.050695, 0.2: 0.227688, 0.5: 0.629223, 1.0: 0.892023}


def left(shape, thickness, fourier, *, layers=40, steps=128):
    """Dry a stiff piece of constant diffusivity without any resistance of the air, until D t/half² = fourier."""
    stiff = MoistDough(density=1250.0, content=BEGINNING, isotherm=linear_isotherm(1.0), shrinks=0.0,
                       diffusivity=lambda content: SPEED)  # fmt: skip
    duration = fourier * HALF**2 / SPEED
    return dry(stiff, Piece(shape=shape, thickness=thickness), Room(humidity=END), duration=duration,
               side=NO_RESISTANCE, layers=layers, steps=steps)  # fmt: skip


def gone(done):
    return float((BEGINNING - done.mean[-1]) / (BEGINNING - END))


@pytest.mark.parametrize(("fourier", "share"), SLAB.items())
def test_a_slab_that_dries_on_both_sides_loses_what_crank_says(fourier, share):
    assert gone(left("slab-both-sides", 2 * HALF, fourier)) == pytest.approx(share, rel=2e-3)  # 40 layers


@pytest.mark.parametrize(("fourier", "share"), SLAB.items())
def test_a_slab_on_a_table_dries_as_one_of_twice_its_thickness_that_hangs(fourier, share):
    # the trap of half and full thickness: on a table L is the whole thickness
    assert gone(left("slab", HALF, fourier)) == pytest.approx(share, rel=2e-3)


def test_the_same_slab_takes_four_times_as_long_on_a_table():
    half_gone = 0.1967307  # D t/L² with the half-thickness; 0.0491827 with the full one
    assert gone(left("slab-both-sides", 2 * HALF, half_gone)) == pytest.approx(0.5, rel=2e-3)
    assert gone(left("slab", 2 * HALF, half_gone)) == pytest.approx(2 * np.sqrt(half_gone / 4 / np.pi), rel=2e-3)
    assert gone(left("slab", 2 * HALF, 4 * half_gone)) == pytest.approx(0.5, rel=2e-3)
    nine_tenths = 0.8480854  # 0.2120214 with the full thickness
    assert gone(left("slab-both-sides", 2 * HALF, nine_tenths)) == pytest.approx(0.9, rel=2e-3)
    assert gone(left("slab", 2 * HALF, 4 * nine_tenths)) == pytest.approx(0.9, rel=2e-3)


@pytest.mark.parametrize(("fourier", "share"), MIDDLE.items())
def test_the_middle_of_a_slab_follows(fourier, share):
    done = left("slab-both-sides", 2 * HALF, fourier)
    approach = (BEGINNING - float(done.middle[-1])) / (BEGINNING - END)
    assert approach == pytest.approx(share, rel=1e-2)  # the innermost layer, a twentieth of the half, not its middle


@pytest.mark.parametrize("fourier", [0.02, 0.1, 0.3, 0.6])
def test_a_roll_follows_the_series_of_the_cylinder(fourier):
    roots = jn_zeros(0, 400)
    share = 1 - np.sum(4 / roots**2 * np.exp(-(roots**2) * fourier))
    assert gone(left("roll", 2 * HALF, fourier)) == pytest.approx(share, rel=2e-3)


@pytest.mark.parametrize("fourier", [0.02, 0.1, 0.3])
def test_a_ball_follows_the_series_of_the_sphere(fourier):
    n = np.arange(1, 2000)
    share = 1 - 6 / np.pi**2 * np.sum(np.exp(-((n * np.pi) ** 2) * fourier) / n**2)
    assert gone(left("ball", 2 * HALF, fourier)) == pytest.approx(share, rel=2e-3)


def test_halving_layers_and_steps_quarters_the_error():
    errors = [
        abs(gone(left("slab", HALF, 0.5, layers=layers, steps=steps)) - SLAB[0.5])
        for layers, steps in ((10, 32), (20, 64), (40, 128))
    ]
    order = -np.polyfit(np.log([10, 20, 40]), np.log(errors), 1)[0]
    assert 1.7 < order < 2.3  # second order
