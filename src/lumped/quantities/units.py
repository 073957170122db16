"""A small table of units, and amounts such as "6 cm" read into SI.

Only what a dough table needs. A key in a file or in JSON ends in one of `SUFFIXES`; everywhere inside the unit is SI.
"""

import re

from lumped.errors import InputError
from lumped.quantities.numbers import read_number

__all__ = ["SUFFIXES", "in_unit", "parse_quantity", "suffix_of"]

_UNITS: dict[str, dict[str, tuple[float, float]]] = {
    # kind: {unit: (factor, offset)}; SI value = factor * number + offset
    "length": {
        "m": (1.0, 0.0), "cm": (1e-2, 0.0), "mm": (1e-3, 0.0),
        "in": (0.0254, 0.0), "inch": (0.0254, 0.0), "inches": (0.0254, 0.0),
    },
    "mass": {"kg": (1.0, 0.0), "g": (1e-3, 0.0), "mg": (1e-6, 0.0)},
    "volume": {"m³": (1.0, 0.0), "L": (1e-3, 0.0), "l": (1e-3, 0.0), "mL": (1e-6, 0.0), "ml": (1e-6, 0.0)},
    "temperature": {"K": (1.0, 0.0), "°C": (1.0, 273.15), "degC": (1.0, 273.15), "°F": (5 / 9, 459.67 * 5 / 9)},
    "time": {"s": (1.0, 0.0), "min": (60.0, 0.0), "h": (3600.0, 0.0), "d": (86400.0, 0.0)},
    "voltage": {"V": (1.0, 0.0), "mV": (1e-3, 0.0)},
    "current": {"A": (1.0, 0.0), "mA": (1e-3, 0.0)},
    "resistance": {"ohm": (1.0, 0.0), "Ω": (1.0, 0.0), "kohm": (1e3, 0.0), "kΩ": (1e3, 0.0)},
    "resistivity": {"ohm_m": (1.0, 0.0), "Ω·m": (1.0, 0.0), "ohm_cm": (1e-2, 0.0), "Ω·cm": (1e-2, 0.0)},
    "conductivity": {"S/m": (1.0, 0.0), "mS/cm": (0.1, 0.0)},
    "angle": {"rad": (1.0, 0.0), "deg": (0.017453292519943295, 0.0), "°": (0.017453292519943295, 0.0)},
    "share": {"": (1.0, 0.0), "%": (1e-2, 0.0)},
}  # fmt: skip

_TOLD = {
    # kind: an example, and the units that are told to somebody who wrote another
    "length": ("6 cm", "mm, cm, m, in"), "mass": ("250 g", "g, kg, mg"), "volume": ("250 mL", "mL, L"),
    "temperature": ("20 °C", "°C, °F"), "time": ("20 min", "s, min, h, d"), "voltage": ("3 V", "V, mV"),
    "current": ("20 mA", "mA, A"), "resistance": ("220 ohm", "ohm, kohm"),
    "resistivity": ("0.3 ohm_m", "ohm_m, ohm_cm"), "conductivity": ("3 S/m", "S/m, mS/cm"),
    "angle": ("30 deg", "deg, rad"), "share": ("6 %", "%"),
}  # fmt: skip

SUFFIXES: dict[str, tuple[str, str]] = {
    # suffix of a key: (kind, unit)
    "_mm": ("length", "mm"), "_g": ("mass", "g"), "_mL": ("volume", "mL"), "_degC": ("temperature", "°C"),
    "_V": ("voltage", "V"), "_A": ("current", "A"), "_mA": ("current", "mA"), "_ohm": ("resistance", "ohm"),
    "_ohm_m": ("resistivity", "ohm_m"), "_S_per_m": ("conductivity", "S/m"), "_s": ("time", "s"),
    "_deg": ("angle", "deg"), "_percent": ("share", "%"),
}  # fmt: skip

_AMOUNT = re.compile(r"([-+−]?[\d.,]+(?:[eE][-+]?\d+)?)(\D*)")
_LONGEST, _SHOWN = 80, 40  # letters of an amount, and of one that is told back


def parse_quantity(text: str, kind: str) -> float:
    """Read an amount such as "6 cm" or "2,5 mm" into SI.

    Parameters
    ----------
    text : str
        A number, as `numbers.read_number` takes it, and a unit.
    kind : str
        What is wanted: "length", "mass", "volume", "temperature", "time", "voltage", "current", "resistance",
        "resistivity", "conductivity", "angle" or "share".

    Returns
    -------
    float
        The amount. [SI unit of the kind]

    Raises
    ------
    InputError
        If the text is no amount, its number can be read in two ways, or its unit belongs to another kind.

    Examples
    --------
    >>> parse_quantity("6 cm", "length"), parse_quantity("20 °C", "temperature")
    (0.06, 293.15)
    """
    units = _UNITS[kind]
    written = text.strip()
    match = _AMOUNT.fullmatch(written) if len(written) <= _LONGEST else None
    unit = match[2].strip() if match else ""
    if not match or (not unit and "" not in units):
        raise InputError("quantity-unreadable", text=written[:_SHOWN], example=_TOLD[kind][0])
    if unit not in units:
        raise InputError("quantity-wrong-unit", text=written, unit=unit, kind=kind, units=_TOLD[kind][1])
    factor, offset = units[unit]
    return factor * read_number(match[1]) + offset


def in_unit(si: float, kind: str, unit: str) -> float:
    """Give an SI amount in another unit of its kind.

    Examples
    --------
    >>> in_unit(0.2, "resistivity", "Ω·cm")
    20.0
    """
    factor, offset = _UNITS[kind][unit]
    return (si - offset) / factor


def suffix_of(key: str) -> tuple[str, str] | None:
    """Tell kind and unit that a key's suffix stands for, the longest suffix first.

    Examples
    --------
    >>> suffix_of("gap_mm"), suffix_of("resistivity_ohm_m"), suffix_of("title")
    (('length', 'mm'), ('resistivity', 'ohm_m'), None)
    """
    for suffix in sorted(SUFFIXES, key=len, reverse=True):
        if key.endswith(suffix):
            return SUFFIXES[suffix]
    return None
