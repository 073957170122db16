"""A diode with a series resistor has a closed form.

Source: Lambert's W, i = (n·Vt/R)·W[(Is·R/(n·Vt))·exp((V + Is·R)/(n·Vt))] − Is; 5 V, 1 kΩ, Is = 10 fA, n = 1, 300 K:
4.307456373 mA with 0.692544 V across the diode (computed with scipy's lambertw; a photovoltaic library's solver gives
the same to 1e-9). Photon energies: h·c = 1239.842 eV·nm (CODATA).
"""

import pytest
from scipy.constants import physical_constants

from lumped.circuit import Branch, Lamp, Network, StraightLine, lamp, operating_point, pack_of_cells

CURRENT, ACROSS = 4.307456373e-3, 0.692544


def test_the_law_gives_the_closed_form():
    diode = Lamp(saturation=1e-14, ideality=1.0, resistance=1000.0, temperature=300.0)
    assert diode.current(5.0) == pytest.approx(CURRENT, rel=1e-9)  # ten digits are given


def test_the_network_gives_the_closed_form():
    inside = 1e-3  # Ω of the kiloohm, so that the diode has some
    diode = Lamp(saturation=1e-14, ideality=1.0, resistance=inside, temperature=300.0)
    branches = (
        Branch(name="pack", law=pack_of_cells(1, voltage=5.0, resistance=500.0), plus="a", minus="0"),
        Branch(name="r", law=StraightLine(resistance=500.0 - inside), plus="a", minus="b"),
        Branch(name="d", law=diode, plus="b", minus="0"),
    )  # fmt: skip
    point = operating_point(Network(branches=branches))
    assert point.currents["d"] == pytest.approx(CURRENT, rel=1e-9)
    assert point.voltages["d"] - inside * CURRENT == pytest.approx(ACROSS, rel=1e-6)  # six digits are given


def photon_volts(nanometres):
    return physical_constants["Planck constant in eV/Hz"][0] * 299792458 / (nanometres * 1e-9)


def test_red_and_yellow_lamps_need_about_their_photons_energy_but_green_ones_far_more():
    assert photon_volts(625) == pytest.approx(1.984, abs=1e-3)
    assert photon_volts(525) == pytest.approx(2.362, abs=1e-3)
    forward = {colour: lamp_forward(f"lamp-{colour}") for colour in ("red", "yellow", "green")}
    assert forward["red"] == pytest.approx(photon_volts(625), abs=0.2)
    assert forward["yellow"] == pytest.approx(photon_volts(590), abs=0.2)
    assert forward["green"] > photon_volts(525) + 0.6


def lamp_forward(key):
    from scipy.optimize import brentq

    return brentq(lambda v: lamp(key).current(v) - 0.020, 0, 5)


@pytest.mark.parametrize(
    ("key", "low", "high"),
    [
        ("lamp-red", 1.63, 2.03), ("lamp-yellow", 2.10, 2.18), ("lamp-green", 1.9, 4.0),
        ("lamp-blue", 2.48, 3.7), ("lamp-white", 3.0, 3.5),
    ],
)  # fmt: skip
def test_lamps_lie_in_the_usual_ranges_of_forward_voltage(key, low, high):
    # ranges by colour as printed in general tables of LED materials (secondary sources)
    assert low <= lamp_forward(key) + 1e-9
    assert lamp_forward(key) - 1e-9 <= high
