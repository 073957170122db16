"""Starting shapes: sculptures with a few sliders, so that a first answer needs no file and no coordinate.

A starting shape is a function from slider positions to a sculpture file; what it gives is read by the same model as a
file that a person wrote, and can be saved as one.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

import tomli_w

from lumped.errors import InputError
from lumped.sculpt.model import SculptureFile
from lumped.texts import say

__all__ = ["Choice", "Slider", "StartingShape", "as_toml", "placed", "started", "starting_shape", "starting_shapes"]

Values = Mapping[str, float | str]
Document = dict[str, Any]


@dataclass(frozen=True, slots=True, kw_only=True)
class Slider:
    """A length, or a count, that a person moves.

    Parameters
    ----------
    name : str
        Its key among the values.
    low, high, step, default : float
        Ends, step and where it stands at first.
    unit : str
        "mm", or "" for a count.
    """

    name: str
    low: float
    high: float
    step: float
    default: float
    unit: str = "mm"

    @property
    def label(self) -> str:
        """What is written beside it."""
        return say(f"slider-{self.name}")

    def taken(self, value: float | str) -> float:
        """Give a value that the slider can stand at, or fail."""
        try:
            number = float(value)
        except ValueError:
            number = float("nan")
        if not self.low <= number <= self.high:
            raise InputError("starting-slider", slider=self.label, value=str(value), low=self.low, high=self.high)
        return number


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """A choice between a few things, the first one at first."""

    name: str
    options: tuple[str, ...]

    @property
    def label(self) -> str:
        """What is written beside it."""
        return say(f"choice-{self.name}")

    @property
    def default(self) -> str:
        """What is chosen at first."""
        return self.options[0]

    def words(self, option: str) -> str:
        """Say an option in words."""
        return say(f"choice-{self.name}-{option}")

    def taken(self, value: float | str) -> str:
        """Give one of the options, or fail."""
        if value not in self.options:
            known = ", ".join(self.options)
            raise InputError("starting-choice", choice=self.label, value=str(value), known=known)
        return str(value)


@dataclass(frozen=True, slots=True, kw_only=True)
class StartingShape:
    """A sculpture with a few sliders.

    Parameters
    ----------
    key : str
        Its name in addresses and texts.
    controls : tuple of Slider or Choice
        What can be changed.
    build : callable
        From values to the document of a sculpture file, without `kind`, `schema`, `title` and `story`.
    """

    key: str
    controls: tuple[Slider | Choice, ...]
    build: Callable[[Any], Document]

    @property
    def title(self) -> str:
        """Its title."""
        return say(f"starting-{self.key}")

    @property
    def lure(self) -> str:
        """One sentence that makes a person try it."""
        return say(f"starting-{self.key}-lure")

    @property
    def defaults(self) -> dict[str, float | str]:
        """Where everything stands at first."""
        return {control.name: control.default for control in self.controls}

    def changed(self, values: Values) -> dict[str, float | str]:
        """Give the values that don't stand where they stand at first."""
        return {name: value for name, value in values.items() if value != self.defaults[name]}


def starting_shapes() -> tuple[StartingShape, ...]:
    """Give all starting shapes, the plainest first.

    Examples
    --------
    >>> [shape.key for shape in starting_shapes()][:2]
    ['harbour-mouth', 'channel-buoys']
    """
    from lumped.sculpt.harbour import SHAPES

    return SHAPES


def starting_shape(key: str) -> StartingShape:
    """Give one starting shape by its key, or fail."""
    found = next((each for each in starting_shapes() if each.key == key), None)
    if found is None:
        raise InputError("starting-none", key=key, known=", ".join(each.key for each in starting_shapes()))
    return found


def placed(key: str, values: Values | None = None) -> dict[str, float | str]:
    """Give where all sliders and choices of a starting shape stand.

    Parameters
    ----------
    key : str
        Key of a starting shape.
    values : mapping of str to float or str, optional
        What was moved, numbers also as text; what is left out stands where it is at first. [mm]

    Returns
    -------
    dict

    Raises
    ------
    InputError
        If there is no such shape, slider or option, or a value lies outside its slider.

    Examples
    --------
    >>> placed("ropewalk", {"bends": "3"})["bends"]
    3.0
    """
    shape = starting_shape(key)
    controls = {control.name: control for control in shape.controls}
    for name in values or {}:
        if name not in controls:
            raise InputError("starting-no-control", name=name, known=", ".join(controls))
    return {name: control.taken((values or {}).get(name, control.default)) for name, control in controls.items()}


def started(key: str, values: Values | None = None) -> SculptureFile:
    """Give the sculpture of a starting shape.

    Parameters
    ----------
    key, values
        As for `placed`.

    Returns
    -------
    SculptureFile
        As if read from a file.

    Raises
    ------
    InputError
        As `placed` does.

    Examples
    --------
    >>> started("harbour-mouth", {"gap": 3}).lumps[1].place
    'right of west quay, gap 3 mm'
    """
    shape, given = starting_shape(key), placed(key, values)
    head = {"kind": "sculpture", "schema": 1, "title": shape.title, "story": shape.lure, "invented": True}
    return SculptureFile.model_validate(head | shape.build(given))


def as_toml(sculpture: SculptureFile) -> str:
    """Write a sculpture as the text of a file.

    Parameters
    ----------
    sculpture : SculptureFile
        What to write; what stands at its default is left out.

    Returns
    -------
    str
        TOML.

    Examples
    --------
    >>> print(as_toml(started("harbour-mouth")).splitlines()[0])
    kind = "sculpture"
    """
    return tomli_w.dumps(sculpture.model_dump(mode="json", by_alias=True, exclude_unset=True, exclude_none=True))
