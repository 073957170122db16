"""A small DC motor: it stays at rest until its torque exceeds friction, then its own voltage opposes the pack's.

At rest i = v/R. Turning at the speed ω, v = R·i + K·ω and K·i = T + B·ω, so that
i = (B·v + K·T)/(B·R + K²): flat, because a free motor draws only what friction asks for.
"""

from dataclasses import dataclass
from functools import partial

from lumped.circuit.law import StraightLine
from lumped.reference import handbook

__all__ = ["Motor", "MotorAtRest", "MotorTurning", "motor"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Motor:
    """The constants of a motor.

    Parameters
    ----------
    resistance : float
        Resistance R of winding and brushes. [Ω]
    constant : float
        Torque for each ampere, volts for each radian a second, K. [N·m/A, V·s/rad]
    static_friction : float
        Torque that must be exceeded to start. [N·m]
    kinetic_friction : float
        Friction T while turning, at most the static one. [N·m]
    viscous_friction : float
        Friction B that grows with speed (air, grease, a fan). [N·m·s/rad]

    Examples
    --------
    >>> fan = Motor(resistance=2.0, constant=3e-3, static_friction=2e-4, kinetic_friction=2e-4)
    >>> round(fan.starting_current * 1000, 3)
    66.667
    """

    resistance: float
    constant: float
    static_friction: float
    kinetic_friction: float
    viscous_friction: float = 0.0

    def __post_init__(self) -> None:
        if self.kinetic_friction > self.static_friction:
            raise ValueError("a motor that turns has no more friction than one at rest")

    @property
    def starting_current(self) -> float:
        """Current that just starts it. [A]"""
        return self.static_friction / self.constant

    def at_rest(self) -> "MotorAtRest":
        """Give the law of the motor at rest, which is where every solution starts."""
        return MotorAtRest(resistance=self.resistance, motor=self)


@dataclass(frozen=True, slots=True, kw_only=True)
class MotorAtRest(StraightLine):
    """A motor that stands: a resistance, until the current exceeds the starting current."""

    motor: Motor
    delay: float = 0.05

    def next(self, v: float, i: float, /) -> "MotorTurning | None":
        """Give the law of the turning motor once the torque exceeds static friction."""
        return MotorTurning(motor=self.motor) if abs(i) > self.motor.starting_current else None

    def speed(self, v: float, /) -> float:
        """Give the speed: none. [rad/s]"""
        return 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class MotorTurning:
    """A motor that has started: it turns, either way, and stops where kinetic friction holds it.

    Examples
    --------
    >>> fan = Motor(resistance=2.0, constant=3e-3, static_friction=2e-4, kinetic_friction=2e-4)
    >>> turning = MotorTurning(motor=fan)
    >>> round(turning.current(3.0) * 1000, 3), round(turning.speed(3.0), 3)
    (66.667, 955.556)
    """

    motor: Motor

    @property
    def _stopping_voltage(self) -> float:
        return self.motor.resistance * self.motor.kinetic_friction / self.motor.constant

    def current(self, v: float, /) -> float:
        """Give the current. [A]"""
        motor, excess = self.motor, abs(v) - self._stopping_voltage
        if excess <= 0:
            return v / motor.resistance
        held = motor.kinetic_friction / motor.constant
        return (held + excess * self.slope(v)) * (1 if v > 0 else -1)

    def slope(self, v: float, /) -> float:
        """Give its derivative. [S]"""
        motor = self.motor
        if abs(v) <= self._stopping_voltage:
            return 1 / motor.resistance
        return motor.viscous_friction / (motor.viscous_friction * motor.resistance + motor.constant**2)

    def speed(self, v: float, /) -> float:
        """Give the speed, negative backwards; none where friction holds it. [rad/s]"""
        if abs(v) <= self._stopping_voltage:
            return 0.0
        return (v - self.motor.resistance * self.current(v)) / self.motor.constant


def motor(key: str, *, against: float = 0.0) -> MotorAtRest:
    """Look up a motor; it is at rest.

    Parameters
    ----------
    key : str
        Key in the handbook's table of motors.
    against : float
        Where this piece stands in its kind's spread of friction: -1 starts easily, 1 hardly. [1]

    Returns
    -------
    MotorAtRest
        Its law.

    Examples
    --------
    >>> round(motor("motor-ordinary").motor.starting_current * 1000)
    67
    """
    value = partial(handbook().value, "motors", key)
    return Motor(
        resistance=value("resistance").mean,
        constant=value("torque_constant").mean,
        static_friction=value("static_friction").at(against),
        kinetic_friction=value("kinetic_friction").at(against),
        viscous_friction=value("viscous_friction").mean,
    ).at_rest()
