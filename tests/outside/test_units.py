"""Units against pint 0.25, a general unit library whose tables follow the SI brochure and NIST SP 811."""

import pint
import pytest

from lumped.quantities import in_unit, parse_quantity

PINT = pint.UnitRegistry()


@pytest.mark.parametrize(
    ("text", "kind", "theirs", "si"),
    [
        ("6 cm", "length", "6 centimeter", "meter"),
        ("2.5 mm", "length", "2.5 millimeter", "meter"),
        ("250 g", "mass", "250 gram", "kilogram"),
        ("237 mL", "volume", "237 milliliter", "meter**3"),
        ("40 min", "time", "40 minute", "second"),
        ("12 mA", "current", "12 milliampere", "ampere"),
        ("20 ohm_cm", "resistivity", "20 ohm*centimeter", "ohm*meter"),
        ("226 mS/cm", "conductivity", "226 millisiemens/centimeter", "siemens/meter"),
        ("90 deg", "angle", "90 degree", "radian"),
    ],
)
def test_an_amount_reads_as_pint_reads_it(text: str, kind: str, theirs: str, si: str):
    expected = PINT.Quantity(theirs).to(si).magnitude
    assert parse_quantity(text, kind) == pytest.approx(expected, rel=1e-12)  # both exact up to rounding


@pytest.mark.parametrize(("text", "celsius"), [("20 °C", 20), ("68 °F", 20), ("293.15 K", 20)])
def test_temperatures_with_an_offset_agree(text: str, celsius: float):
    expected = PINT.Quantity(celsius, PINT.degC).to(PINT.kelvin).magnitude
    assert parse_quantity(text, "temperature") == pytest.approx(expected, rel=1e-12)
    assert in_unit(expected, "temperature", "°C") == pytest.approx(celsius, rel=1e-12)
