"""How fast salt dissolves, against laws of flow and diffusion that did not make ours.

Sources, all from memory: L. Schiller, A. Naumann 1933 (drag of a ball), N. Frössling 1938 and W. E. Ranz, W. R. Marshall
1952 (what a flow carries off a ball), V. G. Levich 1942 (off a turning disc). No published time of coarse salt in dough is known to us; a timed batch, felt
for grains every ten minutes, would replace this.
"""

import numpy as np
import pytest
from scipy.integrate import quad
from scipy.optimize import brentq

from lumped.chemistry.compounds import compound
from lumped.chemistry.density import water_density
from lumped.chemistry.diffusion import salt_diffusivity
from lumped.chemistry.dissolving import dissolving_time, stirred_dissolving_time
from lumped.chemistry.viscosity import water_viscosity
from lumped.reference import handbook

T20 = 293.15
GRAIN, WATER, VISCOSITY = compound("sodium-chloride").density, float(water_density(T20)), float(water_viscosity(T20))
SPEED = float(salt_diffusivity(T20))
STIRRED = handbook().value("grains", "stirring", "pot")


def falling(diameter):
    """Speed at which a ball of salt falls through water, by Schiller's and Naumann's drag. [m/s]"""

    def unbalanced(speed):
        reynolds = WATER * speed * diameter / VISCOSITY
        drag = 24 / reynolds * (1 + 0.15 * reynolds**0.687)
        return drag * WATER * speed**2 / 2 / 4 - 9.81 * (GRAIN - WATER) * diameter / 6

    return brentq(unbalanced, 1e-6, 1.0)


def carried_off(diameter, speed):
    """What a flow carries off a ball: 2 + 0.6 Re^½ Sc^⅓ times diffusivity over diameter. [m/s]"""
    reynolds, schmidt = WATER * speed * diameter / VISCOSITY, VISCOSITY / WATER / SPEED
    return (2 + 0.6 * reynolds**0.5 * schmidt ** (1 / 3)) * SPEED / diameter


@pytest.mark.parametrize("diameter", [0.35e-3, 0.5e-3, 1e-3, 2e-3, 3.5e-3])
def test_a_spoon_sweeps_salt_off_a_grain_about_as_falling_through_water_does(diameter):
    """8 to 9·10⁻⁵ m/s at any size, against our 5·10⁻⁵ (2 to 15): that one figure serves all grains is the law's own."""
    alone = carried_off(diameter, falling(diameter))
    assert STIRRED.low < alone < STIRRED.high
    assert 0.5 < STIRRED.mean / alone < 2


def test_a_disc_that_turns_as_a_spoon_does_is_swept_within_the_interval():
    # k = 0.62 D^⅔ ν^-⅙ ω^½; one turn a second is 1.95·10⁻⁵, at the interval's end: a disc is no small grain
    for turns in (1.5, 3, 5):
        sweep = 0.62 * SPEED ** (2 / 3) * (VISCOSITY / WATER) ** (-1 / 6) * (2 * np.pi * turns) ** 0.5
        assert STIRRED.low < sweep < STIRRED.high


def test_where_nothing_flows_a_grain_is_swept_by_diffusion_alone():
    """A Sherwood number of two, k = 2 D/d, at each moment's diameter, is the law of a grain that lies still."""
    radius, final = 0.5e-3, 60.0
    still = dissolving_time(radius, diffusivity=SPEED, solid_density=GRAIN, saturation=317.0, final=final)

    def slowness(r):
        filling = final * (1 - (r / radius) ** 3)
        return GRAIN / (2 * SPEED / (2 * r) * (317.0 - filling))

    assert quad(slowness, 0, radius)[0] == pytest.approx(float(still), rel=1e-8)


def test_falling_a_coarse_grain_is_gone_in_some_minutes_and_a_fine_one_in_seconds():
    # by integrating the fall with its shrinking diameter; the constant sweep of our table is within a factor of 2.5
    for diameter in (2e-3, 0.35e-3):
        fallen = quad(lambda r: GRAIN / (carried_off(2 * r, falling(2 * r)) * 317.0), 2e-6, diameter / 2)[0]
        ours = float(stirred_dissolving_time(diameter / 2, sweep=STIRRED.mean, solid_density=GRAIN, saturation=317.0))
        assert 1 / 2.5 < ours / fallen < 2.5
