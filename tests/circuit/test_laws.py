"""Each law alone: continuous, never decreasing, with the slope it claims, at any voltage."""

import itertools

import numpy as np
import pytest

from lumped.chemistry.electrodes import electrode
from lumped.circuit import Fuse, Lamp, Motor, MotorTurning, StraightLine, lamp, motor, pack, pack_of_cells, switch
from lumped.circuit.motor import MotorAtRest

FAN = Motor(resistance=2.0, constant=3e-3, static_friction=2e-4, kinetic_friction=1.5e-4, viscous_friction=2e-8)
LAWS = {
    "line": StraightLine(resistance=100.0, emf=1.5),
    "lamp": lamp("lamp-white"),
    "motor": MotorTurning(motor=FAN),
    "inert lead": electrode("graphite", 0.2e-4),
    "zinc lead": electrode("zinc", 2e-4, price=1.0),
    "pack": pack("pack-4aa-nimh", fuse=True),
}


@pytest.mark.parametrize("law", LAWS.values(), ids=LAWS.keys())
def test_a_law_never_decreases_and_never_jumps(law):
    voltage = np.linspace(-8, 8, 20001)
    current = np.array([law.current(v) for v in voltage])
    steepest = max(law.slope(v) for v in (-8.0, 8.0, *voltage[::200]))
    assert np.all(np.isfinite(current))
    assert np.all(np.diff(current) >= 0)
    assert np.max(np.diff(current)) <= 1.01 * steepest * (voltage[1] - voltage[0]) + 1e-15


@pytest.mark.parametrize("law", LAWS.values(), ids=LAWS.keys())
def test_the_slope_is_the_derivative_of_the_current(law):
    h = 1e-6
    for v in (-6.1, -1.05, -0.31, 0.017, 0.6, 1.83, 2.9, 6.3):
        rise = (law.current(v + h) - law.current(v - h)) / (2 * h)
        noise = 1e-15 * abs(law.current(v)) / h
        assert law.slope(v) == pytest.approx(rise, rel=2e-6, abs=4 * noise)  # central difference, second order


@pytest.mark.parametrize("law", LAWS.values(), ids=LAWS.keys())
@pytest.mark.parametrize("v", [-1e6, 1e6])
def test_absurd_voltages_do_not_overflow(law, v):
    assert np.isfinite(law.current(v))
    assert np.isfinite(law.slope(v))


def test_a_lamp_the_wrong_way_round_leaks_less_than_a_microampere():
    assert -1e-6 < lamp("lamp-red").current(-6.0) < 0


def test_lamps_carry_their_test_current_at_their_forward_voltage():
    for key, volts in (("lamp-red", 1.95), ("lamp-yellow", 2.1), ("lamp-green", 3.2), ("lamp-white", 3.1)):
        assert lamp(key).current(volts) == pytest.approx(0.020, rel=1e-9)


def test_a_turning_motor_stops_where_its_friction_holds_it_and_turns_backwards_too():
    turning = MotorTurning(motor=FAN)
    assert turning.speed(0.09) == 0  # 0.1 V is what 50 mA drop over 2 Ω
    assert turning.speed(3.0) == pytest.approx(-turning.speed(-3.0))
    assert turning.current(0.05) == pytest.approx(0.025)


def test_a_turning_motor_balances_volts_and_torques():
    for v in (0.2, 3.0, -6.0):
        current, speed = MotorTurning(motor=FAN).current(v), MotorTurning(motor=FAN).speed(v)
        friction = FAN.kinetic_friction * np.sign(v) + FAN.viscous_friction * speed
        assert v == pytest.approx(FAN.resistance * current + FAN.constant * speed, rel=1e-12)
        assert FAN.constant * current == pytest.approx(friction, rel=1e-12)


def test_a_diode_backwards_passes_its_saturation_current():
    diode = Lamp(saturation=1e-6, ideality=1.0, resistance=10.0)
    assert diode.current(-5.0) == pytest.approx(-1e-6, rel=1e-12)
    assert diode.current(0.0) == pytest.approx(0.0, abs=1e-20)


def test_a_motor_starts_only_above_its_static_friction():
    at_rest = motor("motor-ordinary")
    assert isinstance(at_rest, MotorAtRest)
    assert at_rest.next(0.132, 0.066) is None
    assert isinstance(at_rest.next(-0.136, -0.068), MotorTurning)


def test_a_motor_with_more_friction_when_it_turns_does_not_exist():
    with pytest.raises(ValueError, match="no more friction"):
        Motor(resistance=1.0, constant=1e-3, static_friction=1e-4, kinetic_friction=2e-4)


def test_a_resistance_is_above_zero():
    with pytest.raises(ValueError, match="above zero"):
        StraightLine(resistance=0.0)


def test_a_tripped_fuse_holds_its_heat_at_a_short_circuit():
    fuse = Fuse(hold_current=0.5, trip_current=1.0, resistance=0.5, tripped_power=0.8)
    intact = pack_of_cells(4, voltage=1.55, resistance=0.23, fuse=fuse)
    assert intact.next(0.0, -0.99) is None
    tripped = intact.next(0.0, -1.01)
    assert tripped is not None
    assert tripped.current(0.0) == pytest.approx(-0.8 / 6.2, rel=0.05)  # P/V; the cells' own ohms are left over


def test_tired_cells_give_less_voltage_through_more_resistance():
    for key in ("pack-3aa-alkaline", "pack-3aa-nimh"):
        fresh, tired = pack(key), pack(key, state="tired")
        assert tired.emf < fresh.emf
        assert tired.resistance > fresh.resistance


def test_a_switch_is_a_wire_or_nothing():
    assert switch(closed=True).current(6.0) > 10
    assert switch(closed=False).current(6.0) < 1e-8


def test_packs_of_more_cells_give_more_voltage():
    volts = [pack(f"pack-{cells}aa-alkaline").emf for cells in (2, 3, 4)]
    assert all(more > less for less, more in itertools.pairwise(volts))
