"""The price of passing from metal to dough: against estimates made by hand, and against thermodynamics."""

import math

import pytest
from scipy.optimize import brentq

from lumped.chemistry.electrodes import dissolved_mass, electrode, electrode_provenance, lump_price, plating_charge
from lumped.errors import HandbookError
from lumped.quantities import Status
from lumped.reference import handbook

LEG = 0.2e-4  # m², a leg of 0.5 mm square, 10 mm deep
METALS = handbook().keys("metals")

# Volts lost a lump at 1 to 20 mA, estimated beforehand for leads of one metal; each ± 0.3 V (from memory).
ESTIMATED = {
    "iron": (0.5, 1.0), "tin": (1.0, 1.5), "copper": (1.0, 1.5), "nickel": (1.0, 1.5),
    "graphite": (2.1, 2.6), "stainless": (2.1, 2.6),
}  # fmt: skip


@pytest.mark.parametrize("metal", ESTIMATED)
@pytest.mark.parametrize("current", [0.001, 0.005, 0.020])
def test_a_lump_costs_what_was_estimated_by_hand(metal, current):
    low, high = ESTIMATED[metal]
    price = lump_price(metal, metal, current, wetted_area=LEG)
    assert low - 0.05 < price < high + 0.05  # the estimates are given to a tenth of a volt


@pytest.mark.parametrize("metal", ["tin", "copper", "nickel"])
def test_a_zinc_anode_makes_a_lump_half_a_volt_to_a_volt_cheaper(metal):
    saved = lump_price(metal, metal, 0.005, wetted_area=LEG) - lump_price("zinc", metal, 0.005, wetted_area=LEG)
    assert 0.5 < saved < 1.05


@pytest.mark.parametrize("metal", METALS)
def test_the_interval_of_a_lump_is_0_3_volts_either_way(metal):
    cheap, middle, dear = (lump_price(metal, metal, 0.005, wetted_area=LEG, price=price) for price in (-1.0, 0.0, 1.0))
    assert dear - middle == pytest.approx(0.3, abs=0.002)  # the polarisation resistance takes under 1 % of 5 mA
    assert middle - cheap == pytest.approx(0.3, abs=0.002)


@pytest.mark.parametrize("metal", METALS)
@pytest.mark.parametrize("price", [-1.0, 0.0, 1.0])
def test_leads_of_one_metal_never_drive_a_current(metal, price):
    for current in (1e-9, 1e-6, 1e-3, 0.1):
        assert lump_price(metal, metal, current, wetted_area=LEG, price=price) > 0
    lead = electrode(metal, LEG, price=price)
    assert abs(lead.current(lead.rest_potential)) < 1e-15


@pytest.mark.parametrize("metal", METALS)
def test_a_bigger_lead_costs_less_by_one_tafel_line_each_side(metal):
    big, small = (lump_price(metal, metal, 0.005, wetted_area=area) for area in (10 * LEG, LEG))
    slopes = sum(handbook().value("metals", metal, f"{side}_slope").mean for side in ("anodic", "cathodic"))
    assert small - big == pytest.approx(slopes, rel=0.02)  # one decade of current density


def test_metals_rest_in_the_order_of_the_electrochemical_series():
    rest = [electrode(metal, LEG).rest_potential for metal in ("zinc", "iron", "tin", "copper")]
    assert rest == sorted(rest)


def test_unlike_metals_drive_no_more_than_their_reactions_allow():
    hydrogen = -0.0592 * 10  # V at pH 10
    for price in (-1.0, 0.0, 1.0):
        gained = -lump_price("zinc", "nickel", 0.005, wetted_area=LEG, price=price)
        assert gained < hydrogen - (-0.7628 - 0.0592 / 2 * 2)  # zinc at 0.01 mol/L


def test_a_plated_leg_is_bare_after_minutes_and_a_steel_one_after_hours():
    tin = plating_charge("tin", 5e-6, LEG)
    assert tin == pytest.approx(1.2, rel=0.05)  # estimated by hand: 1.2 C, two minutes at 10 mA
    steel = 20e-6 / dissolved_mass("iron", 1.0)
    assert steel / 0.010 / 3600 == pytest.approx(2, rel=0.1)  # 20 mg wetted last about two hours at 10 mA
    assert plating_charge("graphite", 5e-6, LEG) == math.inf


def test_metals_that_hold_put_no_metal_into_the_dough():
    assert dissolved_mass("stainless", 24.0) == 0
    assert dissolved_mass("nickel", 24.0) == pytest.approx(7.3e-6, rel=0.01)  # by hand: 10 mA for 40 min, 7.3 mg


def test_the_figures_say_that_they_are_from_memory():
    assert {electrode_provenance(metal).status for metal in METALS} == {Status.FROM_MEMORY}


def test_an_unknown_metal_or_price_is_refused():
    with pytest.raises(HandbookError, match="no “gold”"):
        electrode("gold", LEG)
    with pytest.raises(ValueError, match="between −1 and 1"):
        electrode("iron", LEG, price=1.5)


@pytest.mark.parametrize("metal", ["iron", "tin", "copper"])
@pytest.mark.parametrize("current", [-3.0, -0.02, -1e-7, 0.0, 1e-5, 0.005, 2.0])
def test_the_potential_at_a_current_is_that_of_a_root_finder(metal, current):
    """scipy's `brentq` on the same law."""
    lead = electrode(metal, 0.2e-4)
    rest = lead.rest_potential
    wanted = brentq(lambda v: lead.current(v) - current, rest - 20, rest + 20, xtol=1e-13)
    assert lead.potential(current) == pytest.approx(wanted, abs=1e-11)
