"""The closed list of units that a row of the handbook may print.

Those of `quantities.units`, and a few that only tables use. A unit that is not listed is a mistake in the table.
"""

from functools import cache

from lumped.errors import InputError
from lumped.quantities import parse_quantity

__all__ = ["known_units", "to_si"]

_KINDS = {
    "length": "m", "mass": "kg", "volume": "m³", "temperature": "K", "time": "s", "voltage": "V", "current": "A",
    "resistance": "ohm", "resistivity": "Ω·m", "conductivity": "S/m", "angle": "rad", "share": "",
}  # fmt: skip

_TABLE_UNITS: dict[str, tuple[float, str]] = {
    # unit as printed: (factor, SI unit)
    "nm": (1e-9, "m"), "µm": (1e-6, "m"), "in": (0.0254, "m"),
    "m²": (1.0, "m²"), "cm²": (1e-4, "m²"), "mm²": (1e-6, "m²"), "m²/s": (1.0, "m²/s"),
    "cm³/g": (1e-3, "m³/kg"), "m/s": (1.0, "m/s"), "kJ/kg": (1e3, "J/kg"),
    "kg/m³": (1.0, "kg/m³"), "g/mL": (1e3, "kg/m³"), "g/cm³": (1e3, "kg/m³"), "g/L": (1.0, "kg/m³"),
    "mg/L": (1e-3, "kg/m³"), "mg/m³": (1e-6, "kg/m³"),
    "g/kg": (1e-3, ""), "mg/kg": (1e-6, ""), "ppm": (1e-6, ""), "g/100 g": (1e-2, ""), "mg/100 g": (1e-5, ""),
    "g/mol": (1e-3, "kg/mol"), "kg/mol": (1e0, "kg/mol"), "mol/kg": (1.0, "mol/kg"), "mol/m³": (1.0, "mol/m³"),
    "mol/L": (1e3, "mol/m³"), "S·cm²/mol": (1e-4, "S·m²/mol"), "S·m²/mol": (1.0, "S·m²/mol"),
    "µS/cm": (1e-4, "S/m"), "Pa": (1.0, "Pa"), "kPa": (1e3, "Pa"), "Pa·s": (1.0, "Pa·s"), "mPa·s": (1e-3, "Pa·s"),
    "1/K": (1.0, "1/K"), "%/K": (1e-2, "1/K"), "mV/K": (1e-3, "V/K"), "V/K": (1.0, "V/K"),
    "µA": (1e-6, "A"), "nA": (1e-9, "A"), "mΩ": (1e-3, "ohm"), "mohm": (1e-3, "ohm"), "MΩ": (1e6, "ohm"),
    "Mohm": (1e6, "ohm"), "Ω·m²": (1.0, "Ω·m²"), "ohm/K": (1.0, "ohm/K"), "nΩ·m": (1e-9, "Ω·m"),
    "A/m²": (1.0, "A/m²"), "A/cm²": (1e4, "A/m²"), "mA/cm²": (10.0, "A/m²"),
    "V/decade": (1.0, "V/decade"), "mV/decade": (1e-3, "V/decade"),
    "C": (1.0, "C"), "mAh": (3.6, "C"), "Ah": (3600.0, "C"), "C/mol": (1.0, "C/mol"),
    "F": (1.0, "F"), "mF": (1e-3, "F"), "µF": (1e-6, "F"), "F/m²": (1.0, "F/m²"), "µF/cm²": (1e-2, "F/m²"),
    "H": (1.0, "H"), "mH": (1e-3, "H"), "Hz": (1.0, "Hz"), "kHz": (1e3, "Hz"),
    "W": (1.0, "W"), "mW": (1e-3, "W"), "J": (1.0, "J"), "kJ": (1e3, "J"), "K/W": (1.0, "K/W"), "J/K": (1.0, "J/K"),
    "J/(kg·K)": (1.0, "J/(kg·K)"), "W/(m·K)": (1.0, "W/(m·K)"), "W/(m²·K)": (1.0, "W/(m²·K)"),
    "N·m": (1.0, "N·m"), "mN·m": (1e-3, "N·m"), "N·m/A": (1.0, "N·m/A"), "mN·m/A": (1e-3, "N·m/A"),
    "V·s/rad": (1.0, "V·s/rad"), "mV·s/rad": (1e-3, "V·s/rad"), "N·m·s/rad": (1.0, "N·m·s/rad"),
    "kg·m²": (1.0, "kg·m²"), "g·cm²": (1e-7, "kg·m²"), "rad/s": (1.0, "rad/s"), "rpm": (0.10471975511965977, "rad/s"),
    "cd": (1.0, "cd"), "mcd": (1e-3, "cd"), "lm": (1.0, "lm"), "lm/W": (1.0, "lm/W"), "lx": (1.0, "lx"),
    "dB": (1.0, "dB"),
}  # fmt: skip


@cache
def _scale(unit: str) -> tuple[float, float, str] | None:
    """Factor, offset and SI unit of a printed unit; None if it is not listed."""
    if unit in _TABLE_UNITS:
        factor, si = _TABLE_UNITS[unit]
        return factor, 0.0, si
    for kind, si in _KINDS.items():
        try:
            offset = parse_quantity(f"0 {unit}", kind)
            return parse_quantity(f"1 {unit}", kind) - offset, offset, si
        except InputError:
            continue
    return None


def to_si(number: float, unit: str) -> tuple[float, str]:
    """Give a printed figure in SI, with the SI unit.

    Parameters
    ----------
    number : float
        The figure as printed. [unit]
    unit : str
        Its unit.

    Returns
    -------
    (float, str)
        The figure and the SI unit; degrees Celsius become kelvins.

    Raises
    ------
    KeyError
        If no table may use this unit.

    Examples
    --------
    >>> to_si(222, "mS/cm"), to_si(20, "°C")
    ((22.2, 'S/m'), (293.15, 'K'))
    """
    scale = _scale(unit)
    if scale is None:
        raise KeyError(unit)
    factor, offset, si = scale
    return float(f"{factor * number + offset:.15g}"), si


def known_units(unit: str) -> bool:
    """Tell whether a row may print this unit.

    Examples
    --------
    >>> known_units("mS/cm"), known_units("furlong")
    (True, False)
    """
    return _scale(unit) is not None
