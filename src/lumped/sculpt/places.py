"""Where things go, in words: "right of west quay, gap 4 mm"; "left end of west quay, 15 mm deep".

Directions are those of a person who looks down at the table: left and right, near and far, top. A place in words is
read into a small frozen object; `placing` turns these objects into millimetres.
"""

import re
from dataclasses import dataclass
from typing import Literal

from lumped.errors import SculptureError
from lumped.quantities import parse_quantity

__all__ = [
    "Along",
    "Beside",
    "Between",
    "Dangling",
    "LegPlace",
    "LumpPlace",
    "OnTable",
    "OnTop",
    "Side",
    "Spot",
    "read_leg_place",
    "read_lump_place",
]

Side = Literal["left", "right", "near", "far"]
_SIDE_OF_WORD: dict[str, Side] = {"left of": "left", "right of": "right", "in front of": "near", "behind": "far"}
_STEP_OF_WORD = {"left": (-1, 0), "right": (1, 0), "nearer": (0, -1), "farther": (0, 1)}
_AMOUNT = r"[-+]?[\d.,]+\s*(?:mm|cm|m)"


@dataclass(frozen=True, slots=True)
class OnTable:
    """On the table, at the origin if nothing else is said."""


@dataclass(frozen=True, slots=True)
class Beside:
    """Beside another lump; a negative gap is pressed in. [m]"""

    side: Side
    of: str
    gap: float
    shift: tuple[float, float] = (0.0, 0.0)


@dataclass(frozen=True, slots=True)
class OnTop:
    """On top of another lump, pressed in by some depth. [m]"""

    of: str
    pressed: float
    shift: tuple[float, float] = (0.0, 0.0)


@dataclass(frozen=True, slots=True)
class Between:
    """In the middle between two lumps."""

    first: str
    second: str


LumpPlace = OnTable | Beside | OnTop | Between


@dataclass(frozen=True, slots=True)
class Dangling:
    """A leg that is not pushed into anything."""


@dataclass(frozen=True, slots=True)
class Along:
    """A place along a lump: a share of its length from the left (or first) end, or a distance from an end. [1], [m]"""

    share: float = 0.5
    distance: float | None = None
    end: Literal["left", "right", "near", "far", "first", "last"] = "left"


@dataclass(frozen=True, slots=True)
class Spot:
    """A place on a lump's surface where a leg goes in, straight, to a depth. [m]"""

    face: Literal["top", "side", "end"]
    towards: Literal["left", "right", "near", "far", "first", "last", ""]
    lump: str
    depth: float
    along: Along = Along()
    shift: tuple[float, float] = (0.0, 0.0)


LegPlace = Dangling | Spot


def read_lump_place(text: str) -> LumpPlace:
    """Read where a lump lies.

    Parameters
    ----------
    text : str
        "on the table"; "right of A, gap 4 mm"; "behind A, pressed 2 mm"; "on top of B"; "between A and B"; a place
        beside or on top may end in ", shifted 5 mm left".

    Returns
    -------
    OnTable, Beside, OnTop or Between

    Raises
    ------
    SculptureError
        If the words are none of these.

    Examples
    --------
    >>> read_lump_place("right of west quay, gap 4 mm")
    Beside(side='right', of='west quay', gap=0.004, shift=(0.0, 0.0))
    """
    head, *clauses = [clause.strip() for clause in re.split(r",(?!\d)", text.strip())]
    if head == "on the table" and not clauses:
        return OnTable()
    if match := re.fullmatch(r"between (.+?) and (.+)", head):
        if not clauses:
            return Between(match[1], match[2])
        raise SculptureError("place-lump-words", text=text)
    gap, shift = _gap_and_shift(clauses, text)
    if re.search(r"(?:gap|pressed) -", text):
        raise SculptureError("place-negative", text=text)
    if match := re.fullmatch(r"(left of|right of|in front of|behind) (.+)", head):
        return Beside(_SIDE_OF_WORD[match[1]], match[2], gap if gap is not None else 0.004, shift)
    if match := re.fullmatch(r"on top of (.+)", head):
        return OnTop(match[1], -gap if gap is not None else 0.001, shift)
    raise SculptureError("place-lump-words", text=text)


def _gap_and_shift(clauses: list[str], text: str) -> tuple[float | None, tuple[float, float]]:
    gap, shift = None, (0.0, 0.0)
    for clause in clauses:
        if match := re.fullmatch(rf"gap ({_AMOUNT})", clause):
            gap = parse_quantity(match[1], "length")
        elif match := re.fullmatch(rf"pressed ({_AMOUNT})", clause):
            gap = -parse_quantity(match[1], "length")
        elif match := re.fullmatch(rf"shifted ({_AMOUNT}) (left|right|nearer|farther)", clause):
            shift = _stepped(shift, match[1], match[2])
        else:
            raise SculptureError("place-lump-words", text=text)
    return gap, shift


def _stepped(shift: tuple[float, float], amount: str, word: str) -> tuple[float, float]:
    step, length = _STEP_OF_WORD[word], parse_quantity(amount, "length")
    return shift[0] + step[0] * length, shift[1] + step[1] * length


def read_leg_place(text: str) -> LegPlace:
    """Read where a leg goes in.

    Parameters
    ----------
    text : str
        "dangling"; "left end of A, 15 mm deep"; "top of A, 30 % along, 10 mm deep"; "near side of A, 8 mm from the
        right end, 10 mm deep"; a top may be ", shifted 5 mm left".

    Returns
    -------
    Dangling or Spot

    Raises
    ------
    SculptureError
        If the words are none of these.

    Examples
    --------
    >>> spot = read_leg_place("left end of west quay, 15 mm deep")
    >>> spot.face, spot.towards, spot.lump, spot.depth
    ('end', 'left', 'west quay', 0.015)
    """
    if text.strip() == "dangling":
        return Dangling()
    head, *clauses = [clause.strip() for clause in re.split(r",(?!\d)", text.strip())]
    match = re.fullmatch(r"(?:(top)|(left|right|near|far) (side)|(left|right|near|far|first|last) (end)) of (.+)", head)
    if not match:
        raise SculptureError("place-leg-words", text=text)
    face, towards = match[1] or match[3] or match[5], match[2] or match[4] or ""
    depth, along, shift = _depth_along_shift(clauses, text)
    if depth is None or (face == "end" and along != Along()):
        raise SculptureError("place-leg-words", text=text)
    if depth <= 0:
        raise SculptureError("place-depth", text=text)
    if not 0 <= along.share <= 1:
        raise SculptureError("place-share", text=text)
    return Spot(face=face, towards=towards, lump=match[6], depth=depth, along=along, shift=shift)  # type: ignore[arg-type]


def _depth_along_shift(clauses: list[str], text: str) -> tuple[float | None, Along, tuple[float, float]]:
    depth, along, shift = None, Along(), (0.0, 0.0)
    for clause in clauses:
        if match := re.fullmatch(rf"({_AMOUNT}) deep", clause):
            depth = parse_quantity(match[1], "length")
        elif match := re.fullmatch(r"([\d.,]+)\s*% along", clause):
            along = Along(share=parse_quantity(match[1] + "%", "share"))
        elif match := re.fullmatch(rf"({_AMOUNT}) from the (left|right|near|far|first|last) end", clause):
            along = Along(distance=parse_quantity(match[1], "length"), end=match[2])  # type: ignore[arg-type]
        elif match := re.fullmatch(rf"shifted ({_AMOUNT}) (left|right|nearer|farther)", clause):
            shift = _stepped(shift, match[1], match[2])
        else:
            raise SculptureError("place-leg-words", text=text)
    return depth, along, shift
