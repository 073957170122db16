"""How a piece of dough dries, as pages and commands show it."""

from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.errors import InputError

if TYPE_CHECKING:
    from lumped.app.named import Named
    from lumped.dough.lasting.layers import Piece
    from lumped.dough.lasting.outlook import Outlook, Surroundings
    from lumped.picture.theme import ThemeName

__all__ = ["SHAPES", "Dried", "draw_drying", "dried", "drying_columns", "drying_rows", "surroundings"]

SHAPES = ("roll", "slab", "rack", "ball")
_ENGINE = {"rack": "slab-both-sides"}
_HOURS = (0.0, 0.75, 2.0, 4.0, 8.0, 16.0, 24.0, 48.0, 72.0, 120.0, 168.0, 336.0, 504.0, 720.0)
_MANY = 96  # hours from which on days are counted
_MEMORABLE = 72 * 3600.0  # three days are told of every piece
_THINNEST, _THICKEST, _LARGEST = 5e-4, 0.2, 10.0  # m


@dataclass(frozen=True, slots=True, kw_only=True)
class Dried:
    """What becomes of a piece of dough.

    Parameters
    ----------
    outlook : Outlook
        The piece in draws.
    hours : float
        How long the table and the picture go on. [h]
    words : tuple of str
        A lesson, a night, three days.
    rest : tuple of str
        Where it stops.
    piece : str
        Which piece it is, and where it lies.
    """

    outlook: "Outlook"
    hours: float
    piece: str
    words: tuple[str, ...]
    rest: tuple[str, ...]

    @property
    def times(self) -> tuple[float, ...]:
        """The moments of the table. [s]"""
        inside = [hours for hours in _HOURS if hours < 0.95 * self.hours]
        return tuple(3600.0 * each for each in (*inside, self.hours))

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {**self.outlook.as_dict(self.times), "which": self.piece, "words": [*self.words, *self.rest]}


def dried(
    dough: "Named",
    where: "Surroundings",
    *,
    shape: str = "roll",
    thickness: float = 0.012,
    length: float = 0.1,
    width: float = 0.1,
    hours: float = 24.0,
) -> Dried:
    """Follow a piece of a recipe's dough through its hours.

    Parameters
    ----------
    dough : Named
        The recipe, with what its batches taught.
    where : Surroundings
        Room, draught, cover.
    shape : str
        One of `SHAPES`.
    thickness, length, width : float
        Its thickness or diameter; the length of a roll or slab; the width of a slab. [m]
    hours : float
        How long. [h]

    Raises
    ------
    InputError, SolverError
        If there is no such piece or time, or it can't be followed so long.
    """
    from lumped.dough.lasting.outlook import outlook
    from lumped.dough.lasting.telling import MOMENTS, moment_words, piece_words, rest_words
    from lumped.texts import say

    piece = _piece(shape, thickness, length, width)
    duration = 3600.0 * hours if hours <= 0 else max(3600.0 * hours, _MEMORABLE)
    found = outlook(dough.recipe, piece, where, duration=duration, shop=dough.shop, calibration=dough.calibration)
    which = say("drying-of", piece=piece_words(found))
    return Dried(outlook=found, hours=hours, piece=which[:1].upper() + which[1:], rest=rest_words(found),
                 words=tuple(moment_words(found, moment) for moment in MOMENTS))  # fmt: skip


def _piece(shape: str, thickness: float, length: float, width: float) -> "Piece":
    from lumped.dough.lasting.layers import Piece

    if shape not in SHAPES:
        raise InputError("lasting-shape", shape=shape, shapes=", ".join(SHAPES))
    for size, least, most in ((thickness, _THINNEST, _THICKEST), (length, _THINNEST, _LARGEST),
                              (width, _THINNEST, _LARGEST)):  # fmt: skip
        if not least <= size <= most:
            raise InputError("lasting-size", size=f"{1e3 * size:,.9g}")
    extent = {"roll": length, "ball": 1.0}.get(shape, length * width)
    return Piece(shape=_ENGINE.get(shape, shape), thickness=thickness, extent=extent)  # type: ignore[arg-type]


def surroundings(*, room: str, humidity: str, draught: str, cover: str) -> "Surroundings":
    """Read where a piece lies, as a person writes it.

    Parameters
    ----------
    room, humidity : str
        Such as "21 °C", and "45 %" or "45".
    draught : str
        A word, or a speed in metres a second.
    cover : str
        What lies round it.

    Raises
    ------
    InputError
        If there is no such room.

    Examples
    --------
    >>> where = surroundings(room="21 °C", humidity="45", draught="quiet", cover="bag")
    >>> where.humidity, where.cover
    (0.45, 'bag')
    """
    from lumped.dough.lasting.outlook import Surroundings
    from lumped.quantities import parse_quantity

    share = parse_quantity(humidity, "share")
    return Surroundings(
        temperature=parse_quantity(room, "temperature"), humidity=share if "%" in humidity else share / 100,
        draught=_number(draught), cover=cover,  # type: ignore[arg-type]
    )  # fmt: skip


def _number(text: str) -> str | float:
    try:
        return float(text)
    except ValueError:
        return text


def drying_columns() -> tuple[str, ...]:
    """Give the headings of `drying_rows`."""
    from lumped.texts import say

    return tuple(say(f"column-{key}") for key in ("time", "weight", "lost", "skin", "resistivity"))


def drying_rows(found: Dried) -> list[tuple[str, ...]]:
    """Give the table of a drying piece: time, weight, water lost, skin, resistivity."""
    from lumped.dough.lasting.wording import grams_text, millimetres_text, percent_text, resistivity_text

    return [
        (_short_time(time), grams_text(found.outlook.at("mass", time)), percent_text(found.outlook.at("loss", time)),
         millimetres_text(found.outlook.at("skin", time)), resistivity_text(found.outlook.at("resistivity", time)))
        for time in found.times
    ]  # fmt: skip


def _short_time(seconds: float) -> str:
    from lumped.quantities import short_text
    from lumped.texts import say

    hours = seconds / 3600
    if hours == 0:
        return say("drying-fresh")
    if hours < 1:
        return say("drying-minute", count=short_text(60 * hours))
    unit, count = ("day", hours / 24) if hours >= _MANY else ("hour", hours)
    return say(f"drying-{unit}", count=short_text(count))


def draw_drying(found: Dried, path: Path, *, theme: "ThemeName" = "light") -> None:
    """Write the picture of a drying piece, SVG or PNG by the name's ending."""
    from lumped.app.maps import write_picture
    from lumped.picture.drying_picture import drying_svg

    write_picture(drying_svg(found.outlook, hours=found.hours, theme=theme), path)
