"""Equivalent radii of leads against conformal maps, and the table of gauges."""

import numpy as np
import pytest
from scipy.integrate import quad

from lumped.circuit import gauge
from lumped.reference import handbook


def test_a_square_leg_counts_as_a_round_one_of_0_59_its_side():
    # logarithmic capacity of a square: side·Γ(1/4)²/(4·π^1.5); here by its integral, the side of the image of the
    # unit circle under the map w' = sqrt(1 + z⁻⁴) (Schwarz–Christoffel, outside of a square)
    side = abs(quad(lambda t: np.sqrt(2 * np.abs(np.cos(2 * t))), -np.pi / 4, np.pi / 4)[0])
    assert gauge("leg-tinned-steel").equivalent_radius == pytest.approx(0.5e-3 / side, rel=1e-7)
    assert gauge("leg-tinned-steel").equivalent_radius / 0.5e-3 == pytest.approx(0.5902, rel=1e-4)


def test_a_thin_strip_counts_as_a_round_one_of_a_quarter_of_its_width():
    assert gauge("strip-steel-10mm").equivalent_radius == pytest.approx(2.5e-3)


@pytest.mark.parametrize("key", handbook().keys("gauges"))
def test_every_gauge_is_made_of_known_metals_and_plated_thinner_than_itself(key):
    lead = gauge(key)
    assert {lead.plating, lead.core} <= set(handbook().keys("metals"))
    assert lead.plating_thickness < lead.equivalent_radius / 10
    assert (lead.plating_thickness > 0) == (lead.plating != lead.core)
    assert lead.perimeter**2 >= 4 * np.pi * lead.section * (1 - 1e-12)  # no section has less rim than a round one
