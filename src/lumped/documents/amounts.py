"""Amounts at the border: a bare number in the key's unit, or text with a unit, such as "6 cm"."""

from collections.abc import Callable
from typing import Annotated

from pydantic import BeforeValidator, Field

from lumped.quantities import in_unit, parse_quantity

__all__ = ["Degrees", "Length", "Share"]


def _reader(kind: str, unit: str) -> Callable[[object], object]:
    """Give a function that turns text into a number of the key's unit and leaves numbers alone."""

    def read(given: object) -> object:
        return in_unit(parse_quantity(given, kind), kind, unit) if isinstance(given, str) else given

    return read


Length = Annotated[float, BeforeValidator(_reader("length", "mm")), Field(allow_inf_nan=False)]
"""A length in millimetres."""
Degrees = Annotated[float, BeforeValidator(_reader("angle", "deg")), Field(allow_inf_nan=False, ge=-360, le=360)]
"""An angle in degrees."""
Share = Annotated[float, BeforeValidator(_reader("share", "%")), Field(allow_inf_nan=False, ge=0, le=100)]
"""A share in per cent."""
