"""A worked example of a permanent-magnet DC motor.

Source: the standard equations of such motors; 3 V, 2 Ω, K = 3 mN·m/A, friction 0.2 mN·m: no-load current 66.667 mA,
no-load speed 955.556 rad/s (9124.88 rpm), stall current 1.5 A, stall torque 4.3 mN·m, largest power 1.02722 W,
largest efficiency 0.622807.
"""

import math

import pytest
from scipy.optimize import minimize_scalar

from lumped.circuit import Branch, Motor, MotorTurning, Network, operating_point, pack_of_cells

R, K, FRICTION, VOLTS = 2.0, 3e-3, 2e-4, 3.0


def loaded(torque):
    """The motor with a brake of that torque on its shaft."""
    total = FRICTION + torque
    return MotorTurning(motor=Motor(resistance=R, constant=K, static_friction=total, kinetic_friction=total))


def test_no_load_current_and_speed():
    free = loaded(0.0)
    assert free.current(VOLTS) == pytest.approx(66.667e-3, rel=1e-5)
    assert free.speed(VOLTS) == pytest.approx(955.556, rel=1e-6)
    assert free.speed(VOLTS) * 60 / (2 * math.pi) == pytest.approx(9124.88, rel=1e-6)


def test_stall_current_and_torque():
    at_rest = loaded(0.0).motor.at_rest()
    assert at_rest.current(VOLTS) == pytest.approx(1.5, rel=1e-12)
    assert K * at_rest.current(VOLTS) - FRICTION == pytest.approx(4.3e-3, rel=1e-12)
    assert loaded(4.3e-3).speed(VOLTS) == pytest.approx(0.0, abs=1e-9)


def test_largest_power_and_efficiency():
    def power(torque):
        return torque * loaded(torque).speed(VOLTS)

    def efficiency(torque):
        return power(torque) / (VOLTS * loaded(torque).current(VOLTS))

    assert largest(power) == pytest.approx(1.02722, rel=1e-5)
    assert largest(efficiency) == pytest.approx(0.622807, rel=1e-5)


def largest(quantity):
    best = minimize_scalar(
        lambda torque: -quantity(torque), bounds=(0, 4.3e-3), method="bounded", options={"xatol": 1e-12}
    )
    return -best.fun


def test_the_network_turns_the_motor_from_rest():
    cells = pack_of_cells(2, voltage=1.5, resistance=1e-6)
    motor = loaded(0.0).motor.at_rest()
    branches = tuple(
        Branch(name=name, law=law, plus="red", minus="black") for name, law in (("pack", cells), ("motor", motor))
    )
    point = operating_point(Network(branches=branches))
    assert point.running == {"motor"}
    assert point.currents["motor"] == pytest.approx(66.667e-3, rel=1e-5)
    assert point.speed("motor") == pytest.approx(955.556, rel=1e-6)
