"""Insulating enough for this? What a wall of insulating dough leaks beside a lamp, and what the lamp makes of it.

A wall lies between two conducting lumps, a lamp bridges it, a pack feeds the lumps: the wall takes V/R of the current
that the lamp could have, `V_pack - price = R·(I_lamp(V) + V/R_wall) + V`. Salt creeps in from both lumps, so a wall
that is enough now has its hour; when it stops being enough is judged for the same lamp.
"""

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from lumped.circuit.lamp import lamp
from lumped.dough.lasting.salt_creep import SaltCreep
from lumped.dough.lasting.wording import NEVER, THIN, millimetres_text, time_text
from lumped.errors import InputError
from lumped.quantities import Value, believed, drawn, rounded_text
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["Lasting", "Wall", "WallVerdict", "judge_wall", "lasts"]

Array = NDArray[np.float64]
_STEPS = ("barely_lit_current", "dim_current", "bright_current")
_STATES = ("dark", "barely-lit", "dim", "bright")
NIGHT = 16 * 3600.0  # from the end of a lesson to the next morning
FELT = 0.01  # of the neighbour's salt
DRIER = 0.8  # of the water that the recipe says
_LESSON = 45 * 60.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Wall:
    """A wall of insulating dough between two lumps.

    Parameters
    ----------
    thickness : float
        From lump to lump. [m]
    area : float
        Where the lumps touch it. [m²]

    Raises
    ------
    InputError
        If there is no such wall.

    Examples
    --------
    >>> round(Wall(thickness=3e-3, area=4e-4).resistance(118.0))
    885
    """

    thickness: float
    area: float

    def __post_init__(self) -> None:
        if not (0 < self.thickness <= 1 and 0 < self.area <= 1):
            raise InputError("wall-size", thickness=f"{1e3 * self.thickness:g}", area=f"{1e4 * self.area:g}")

    def resistance(self, resistivity: Any) -> Any:
        """Resistance of the wall, the field at its edges left out, for a resistivity in Ω·m. [Ω]"""
        return resistivity * self.thickness / self.area


@dataclass(frozen=True, slots=True, kw_only=True)
class Lasting:
    """How long a wall is enough.

    Parameters
    ----------
    lasts : Value
        Until the lamp falls below what it does beside a perfect wall; 30 days stand for longer. [s]
    overnight : Value
        How deep a thick wall has a hundredth of its neighbour's salt after 16 hours. [m]
    twice_as_thick, drier : Value
        How long the same wall lasts with twice the thickness, and with a fifth less water in its dough. [s]
    after_night : {"yes", "no", "perhaps"}
        Whether it is still enough the next morning, after 16 hours between its lumps.
    words : tuple of str
        The same in sentences, with what helps.
    """

    lasts: Value
    overnight: Value
    twice_as_thick: Value
    drier: Value
    after_night: str
    words: tuple[str, ...]

    @property
    def night(self) -> str:
        """Key of its headline: `after_night`, or "worse" if it is not enough from the start."""
        return self.after_night if self.lasts.high > 0 else "worse"

    @property
    def headline(self) -> str:
        """Say whether it is still enough after a night."""
        return say(f"wall-night-{self.night}")

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        values = {key: getattr(self, key).as_dict() for key in ("lasts", "overnight", "twice_as_thick", "drier")}
        return {**values, "after_night": self.after_night, "words": list(self.words)}


@dataclass(frozen=True, slots=True, kw_only=True)
class WallVerdict:
    """Whether a wall insulates enough for a lamp.

    Parameters
    ----------
    lamp : str
        Key of the lamp.
    leak : Value
        Current through the wall. [A]
    current, without : Value
        Current through the lamp, with this wall and with a perfect one. [A]
    states : tuple of str
        What the lamp does at the poor end, the middle and the good end of the wall's interval.
    enough : {"yes", "no", "perhaps"}
        Whether it shines as brightly as with a perfect wall: at both ends, at neither, or at one.
    words : str
        The verdict in a sentence.
    lasting : Lasting or None
        How long that holds, if it is known what salt does in the wall.
    """

    lamp: str
    leak: Value
    current: Value
    without: Value
    states: tuple[str, str, str]
    enough: str
    words: str
    lasting: Lasting | None = None

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "lamp": self.lamp, "leak": self.leak.as_dict(), "current": self.current.as_dict(),
            "current_with_perfect_wall": self.without.as_dict(), "states": list(self.states), "enough": self.enough,
            "words": self.words, "lasting": self.lasting and self.lasting.as_dict(),
        }  # fmt: skip


def judge_wall(
    wall: Wall, resistivity: Value, lamp_key: str = "lamp-red", lasting: Lasting | None = None
) -> WallVerdict:
    """Judge whether a wall insulates enough for a lamp that bridges it.

    Parameters
    ----------
    wall : Wall
        The wall.
    resistivity : Value
        Of its dough. [Ω·m]
    lamp_key : str
        Which lamp, by its key in the handbook.
    lasting : Lasting, optional
        How long it is enough, from `lasts`.

    Returns
    -------
    WallVerdict

    Notes
    -----
    The pack, the price at the metal and the resistance of the lumps are those of the handbook's entry `wall-scene`.

    Examples
    --------
    >>> judge_wall(Wall(thickness=3e-3, area=4e-4), Value.exact(400.0, "Ω·m")).enough
    'yes'
    >>> judge_wall(Wall(thickness=3e-3, area=4e-4), Value.exact(2.0, "Ω·m")).enough
    'no'
    """
    rho = drawn({"wall": resistivity})["wall"]
    resistance = wall.resistance(rho)
    volts, through = _point(lamp_key, 1 / resistance)
    _, alone = _point(lamp_key, np.zeros(1))
    origin = resistivity.provenance
    current = believed(through, unit="A", provenance=origin)
    states = tuple(_state(lamp_key, each) for each in (current.low, current.mean, current.high))
    best = _state(lamp_key, float(alone[0]))
    enough = "yes" if states[0] == best else "no" if states[2] != best else "perhaps"
    leak = believed(volts / resistance, unit="A", provenance=origin)
    words = say(
        f"wall-{enough}", lamp=handbook().name("lamps", lamp_key),
        leak=_with_unit(leak), alone=_milliamperes(float(alone[0])), current=_spanned(current),
    )  # fmt: skip
    return WallVerdict(
        lamp=lamp_key, leak=leak, current=current, without=Value.exact(float(alone[0]), "A", origin),
        states=(states[0], states[1], states[2]), enough=enough, words=words, lasting=lasting,
    )  # fmt: skip


def lasts(wall: Wall, fresh: SaltCreep, drier: SaltCreep, lamp_key: str = "lamp-red") -> Lasting:
    """Judge how long a wall stays insulating enough for a lamp that bridges it, with salt that creeps in.

    Parameters
    ----------
    wall : Wall
        The wall.
    fresh, drier : SaltCreep
        Its dough between two salty lumps; the same dough made with a fifth less water.
    lamp_key : str
        Which lamp, by its key in the handbook.

    Returns
    -------
    Lasting

    Notes
    -----
    Both lumps stay salty, and nothing but salt moves: water and sugar that wander too are left out.
    """
    needed = _needed(lamp_key)

    def life(creep: SaltCreep, thickness: float) -> Value:
        factor = creep.resistivity * thickness / wall.area / needed
        time = np.minimum(creep.lifetime(thickness, factor), NEVER)
        return believed(time, unit="s", provenance=creep.provenance)

    now, thick, stiff = (life(fresh, wall.thickness), life(fresh, 2 * wall.thickness), life(drier, wall.thickness))
    overnight = believed(fresh.reach(NIGHT, FELT), unit="m", provenance=fresh.provenance)
    return Lasting(
        lasts=now, overnight=overnight, twice_as_thick=thick, drier=stiff,
        after_night="yes" if now.low >= NIGHT else "no" if now.high < NIGHT else "perhaps",
        words=_lasting_words(now, overnight, thick, stiff, wall),
    )  # fmt: skip


def _lasting_words(now: Value, overnight: Value, thick: Value, stiff: Value, wall: Wall) -> tuple[str, ...]:
    still = overnight.high < THIN
    key = "not" if now.high <= 0 else "hours" if now.low < NEVER else "still" if still else "long"
    depth = {"depth": millimetres_text(overnight), "thick": f"{1e3 * wall.thickness:g}"}
    words = [say(f"wall-lasts-{key}", time=time_text(now)),
             say("wall-overnight-none") if still else say("wall-overnight", **depth)]  # fmt: skip
    if now.low < NEVER and thick.high > 0:
        words.append(say("wall-thicker", thick=f"{2e3 * wall.thickness:g}", time=time_text(thick)))
    if now.low < NEVER and stiff.high > 0:
        words.append(say("wall-drier", time=time_text(stiff)))
    if key == "hours" and now.low < NIGHT:
        words.append(say("wall-apart" if now.low > _LESSON else "wall-fresh"))
    return tuple(words)


def _needed(lamp_key: str) -> float:
    """Resistance of the wall beside which the lamp only just does what it does beside a perfect one. [Ω]"""
    book = handbook()
    source = book.value("verdicts", "wall-scene", "voltage").mean
    resistance = book.value("verdicts", "wall-scene", "resistance").mean
    _, alone = _point(lamp_key, np.zeros(1))
    reached = [book.value("lamps", lamp_key, step).mean for step in _STEPS]
    reached = [each for each in reached if each <= float(alone[0])]
    if not reached:
        return 0.0  # dark beside any wall: every wall is as good as a perfect one
    law, grid = np.vectorize(lamp(lamp_key).current), np.linspace(0.0, source, 400)
    volts = float(np.interp(max(reached), law(grid), grid))
    spare = source - volts - resistance * max(reached)
    return float(resistance * volts / max(spare, 1e-9))


def _point(lamp_key: str, conductance: Array) -> tuple[Array, Array]:
    """Volts at the lamp and current through it, by halving: all laws rise with the volts. [V], [A]"""
    book = handbook()
    source = book.value("verdicts", "wall-scene", "voltage").mean
    resistance = book.value("verdicts", "wall-scene", "resistance").mean
    law = np.vectorize(lamp(lamp_key).current)
    grid = np.linspace(0.0, source, 400)
    passed = law(grid)
    low, high = np.zeros_like(conductance), np.full_like(conductance, source)
    for _ in range(40):
        middle = (low + high) / 2
        too_low = middle + resistance * (np.interp(middle, grid, passed) + middle * conductance) < source
        low, high = np.where(too_low, middle, low), np.where(too_low, high, middle)
    return low, np.interp(low, grid, passed)


def _milliamperes(current: float) -> str:
    return rounded_text(1e3 * current) if current >= 5e-6 else "0"


def _spanned(current: Value) -> str:
    mean, low, high = (_milliamperes(each) for each in (current.mean, current.low, current.high))
    return mean if low == high else f"{mean} ({low} to {high})"


def _with_unit(leak: Value) -> str:
    mean, low, high = (_milliamperes(each) for each in (leak.mean, leak.low, leak.high))
    if high == "0":
        return say("wall-leak-none")
    return say("wall-leak-known", leak=mean) if low == high else say("wall-leak", leak=mean, low=low, high=high)


def _state(lamp_key: str, current: float) -> str:
    return _STATES[sum(current >= handbook().value("lamps", lamp_key, step).mean for step in _STEPS)]
