"""Salt water at the points of its own tables, with a point left out, and against tables that were not used to make it.

Sources: CRC Handbook, "Electrical conductivity of aqueous solutions" (20 °C) and, 97th edition, "Equivalent
conductivity of electrolytes" (25 °C); conductivity standards in a meter's manual, section 11.2 (saturated NaCl);
Salt Institute (solubility); Poradnik fizykochemiczny 1974 (density); standard KCl solutions of Wu, Koch, Pratt (NIST).
"""

import numpy as np
import pytest

from lumped.chemistry import (
    Brine,
    brine_conductivity,
    brine_density,
    dissociated,
    mixture_conductivity,
    salt_solubility,
    salt_water_conductivity,
)
from lumped.chemistry import brine as brine_room
from lumped.errors import InputError
from lumped.quantities import Status

T20, T25 = 293.15, 298.15
CRC_20 = {0.5: 8.2, 1: 16.0, 2: 30.2, 5: 70.1, 10: 126, 15: 171, 20: 204, 25: 222}  # mass %: mS/cm
SATURATED = {10: 177.9, 15: 201.5, 20: 226.0, 25: 251.3, 30: 277.4, 35: 304.1}  # °C: mS/cm


@pytest.mark.parametrize(("percent", "millisiemens"), CRC_20.items())
def test_salt_water_meets_the_crc_table_at_its_nodes(percent, millisiemens):
    assert brine_conductivity(percent / 100, T20).mean == pytest.approx(millisiemens / 10, rel=1e-9)


@pytest.mark.parametrize("left_out", range(len(CRC_20)))
def test_a_node_left_out_is_found_again_within_two_per_cent(left_out, monkeypatch):
    book = brine_room.handbook()
    curve = book.curve("nacl-conductivity-20degC")
    thinned = {name: np.delete(column, left_out) for name, column in curve.columns.items()}
    fewer = type(curve)(
        **{name: getattr(curve, name) for name in curve.__dataclass_fields__ if name != "columns"}, columns=thinned
    )
    shelf = type(book)(
        tables=book.tables, about=book.about, sources=book.sources, curves={**book.curves, curve.key: fewer}
    )
    monkeypatch.setattr(brine_room, "handbook", lambda: shelf)
    brine_room.log_molar_conductivity.cache_clear()
    try:
        found = salt_water_conductivity(curve["salt"][left_out], T20)
    finally:
        monkeypatch.undo()
        brine_room.log_molar_conductivity.cache_clear()
    assert found == pytest.approx(curve["conductivity"][left_out], rel=0.02)  # the table's own tolerance
    assert found != pytest.approx(curve["conductivity"][left_out], rel=1e-6)  # the node was really out


@pytest.mark.parametrize(("celsius", "millisiemens"), SATURATED.items())
def test_saturated_brine_conducts_as_the_standard_says(celsius, millisiemens):
    kelvins = celsius + 273.15
    found = brine_conductivity(float(salt_solubility(kelvins)), kelvins)
    assert found.mean == pytest.approx(millisiemens / 10, rel=0.01)
    assert found.low < millisiemens / 10 < found.high


def test_saturated_brine_at_25_degrees_has_four_ohm_centimetres():
    assert 1 / brine_conductivity(float(salt_solubility(T25)), T25).mean == pytest.approx(0.0398, rel=0.01)


@pytest.mark.parametrize(("molar", "millisiemens"), [(0.001, 0.12368), (0.01, 1.1845), (0.1, 10.669)])
def test_dilute_salt_water_at_25_degrees_meets_the_equivalent_conductivities(molar, millisiemens):
    found = Brine(charges={"sodium": 1e3 * molar, "chloride": 1e3 * molar}, temperature=T25).conductivity()
    assert found.mean == pytest.approx(millisiemens / 10, rel=0.013)  # 0.1 mol/L lies between the two tables
    assert found.low < millisiemens / 10 < found.high


@pytest.mark.parametrize(("molar", "millisiemens"), [(0.001, 0.12368), (0.01, 1.1845), (0.05, 5.5505)])
def test_salt_water_by_mass_meets_them_too(molar, millisiemens):
    """By mass share and by moles the same law: a litre weighs 997.05 g and 0.041 g more for each millimole of salt."""
    share = 58.443 * molar / (997.05 + 41 * molar)
    assert 10 * salt_water_conductivity(share, T25) == pytest.approx(millisiemens, rel=1.5e-3)


@pytest.mark.parametrize("kelvins", [278.15, 298.15, 308.15, 333.15])
@pytest.mark.parametrize("share", [0.005, 0.05, 0.20])
def test_salt_water_by_mass_is_salt_water_by_ions_at_any_warmth(share, kelvins):
    amount = share * float(brine_density(share, kelvins)) / 0.0584428
    found = mixture_conductivity({"sodium": amount, "chloride": amount}, kelvins)
    assert found == pytest.approx(salt_water_conductivity(share, kelvins), rel=8e-3)  # brine expands a little more


def test_conductivity_rises_all_the_way_to_saturation_and_ever_more_slowly():
    salt = np.linspace(0.001, 0.264, 200)
    along = salt_water_conductivity(salt, T20)
    assert np.all(np.diff(along) > 0)
    assert np.all(np.diff(along / salt) < 1e-9)


def test_temperature_moves_a_tenth_molar_potassium_chloride_as_brine_moves_within_four_per_cent():
    standard = {0: 7116.85, 10: 9291.72, 20: 11615.9, 25: 12824.6, 35: 15316.0}  # µS/cm, 0.1 mol/kg
    factor = brine_room.temperature_factor(np.array(list(standard)) + 273.15)
    wanted = np.array(list(standard.values())) / standard[20]
    np.testing.assert_allclose(factor, wanted, rtol=0.04)  # K+ is a little less sensitive than Na+


@pytest.mark.parametrize(("celsius", "standard"), [(40, 16591.0), (45, 17880.6), (50, 19180.9)])
def test_above_its_table_salt_water_goes_on_warming_beside_potassium_chloride(celsius, standard):
    """At 35 °C the logarithm of brine's rise from 20 °C is 1.073 times that of 0.1 mol/kg KCl (µS/cm), whose standards
    go on to 50 °C; there ours is 1.079."""
    rise = np.log(float(brine_room.temperature_factor(celsius + 273.15))) / np.log(standard / 11615.9)
    assert rise == pytest.approx(1.073, rel=0.01)


@pytest.mark.parametrize(("molar", "millisiemens"), [(0.001, 0.14688), (0.01, 1.412), (0.1, 12.89)])
def test_the_mixing_rule_gives_potassium_chloride(molar, millisiemens):
    found = mixture_conductivity({"potassium": 1e3 * molar, "chloride": 1e3 * molar}, T25)
    assert found == pytest.approx(millisiemens / 10, rel=0.035)  # the rule's own error


@pytest.mark.parametrize(
    ("cation", "charge", "molar_mass", "density", "percent", "millisiemens"),
    [
        (
            "calcium",
            2,
            0.11098,
            1002.6,
            0.5,
            8.1,
        ),  # density: Laliberté's worked example is near; ±0.3 % does not matter
        # densities from memory; they only turn mass per cent into moles, and a per cent in them is a per cent here
        ("calcium", 2, 0.11098, 1015.0, 2.0, 29.4),
        ("magnesium", 2, 0.09521, 1002.0, 0.5, 8.6),
        ("ammonium", 1, 0.05349, 1014.0, 5.0, 95.3),
        ("hydrogen", 1, 0.03646, 1001.0, 0.5, 45.1),
    ],
)
def test_the_mixing_rule_gives_other_chlorides_within_its_stated_interval(
    cation, charge, molar_mass, density, percent, millisiemens
):
    amount = percent / 100 * density / molar_mass * charge
    found = mixture_conductivity({cation: amount, "chloride": amount}, T20)
    assert found == pytest.approx(millisiemens / 10, rel=0.10)


def test_vinegar_of_five_per_cent_conducts_almost_sixty_times_less_than_salt_water_of_five():
    acid = dissociated({"acetic": 0.05 * 1005 / 0.060052})
    vinegar = mixture_conductivity(acid.charges, T20)
    assert vinegar == pytest.approx(0.12, rel=0.25)  # CRC: 1.2 mS/cm; strong acid solutions lose activity
    assert brine_conductivity(0.05, T20).mean / vinegar == pytest.approx(58, rel=0.25)


def test_citric_acid_of_half_a_per_cent_conducts_as_the_rows_above_it_say():
    """CRC prints 1.2 mS/cm at 0.5 % and 2.1 at 1 %; a weak acid goes as the root of its amount: 2.1/√2 = 1.48."""
    acid = dissociated({"citric": 0.005 * 1000 / 0.192124})
    assert mixture_conductivity(acid.charges, T20) == pytest.approx(0.21 / 2**0.5, rel=0.03)


def test_sea_water_conducts_as_sea_water():
    # composition of sea water of salinity 35 and its 4.79 S/m at 20 °C: from memory
    charges = {"sodium": 480, "potassium": 10.5, "magnesium": 108, "calcium": 21, "chloride": 559, "sulphate": 58}
    assert Brine(charges=charges, temperature=T20).conductivity().mean == pytest.approx(4.79, rel=0.05)


@pytest.mark.parametrize(("celsius", "percent"), [(10, 26.36), (21.11, 26.45), (65.56, 27.21), (100, 28.12)])
def test_brine_saturates_where_the_salt_institute_says(celsius, percent):
    assert salt_solubility(celsius + 273.15) == pytest.approx(percent / 100, rel=5e-4)


def test_a_hundred_grams_of_water_hold_almost_36_grams_of_salt():
    share = float(salt_solubility(T20))
    assert 100 * share / (1 - share) == pytest.approx(35.9, abs=0.2)  # CRC 35.9 g, from memory


@pytest.mark.parametrize(("percent", "density"), [(1, 1005.3), (10, 1070.7), (20, 1147.8), (26, 1197.2)])
def test_brine_has_the_density_of_the_table(percent, density):
    assert brine_density(percent / 100, T20) == pytest.approx(density, rel=1e-4)


@pytest.mark.parametrize(("percent", "density"), [(10, 1068.910), (20, 1145.596), (26, 1193.786)])
def test_warmer_brine_is_lighter_as_laliberte_computes(percent, density):
    assert brine_density(percent / 100, T25) == pytest.approx(density, rel=5e-4)  # thermo 0.6.1


def test_beyond_the_tables_the_interval_widens_and_says_so():
    inside, beyond = brine_conductivity(0.2, 308.15), brine_conductivity(0.2, 333.15)
    assert (beyond.high - beyond.low) / beyond.mean > 2 * (inside.high - inside.low) / inside.mean
    assert "extrapolated" in beyond.provenance.note
    assert inside.provenance.note == ""
    assert beyond.provenance.status is Status.FROM_MEMORY


def test_below_ten_degrees_it_says_that_it_leaves_the_table():
    cold, begins = brine_conductivity(0.2, 278.15), brine_conductivity(0.2, 283.15)
    assert "extrapolated" in cold.provenance.note
    assert cold.provenance.status is Status.FROM_MEMORY
    assert begins.provenance.note == ""


@pytest.mark.parametrize(("celsius", "percent"), [(20, 2.0), (10, 3.0), (35, 3.5), (0, 6.0), (60, 16.0)])
def test_the_interval_is_as_wide_as_the_page_says(celsius, percent):
    """2 %, 0.1 % a kelvin; 0.2 % more for each below 10 °C, 0.4 % for each above 35 °C."""
    found = brine_conductivity(0.2, celsius + 273.15)
    assert 100 * (found.high - found.low) / 2 / found.mean == pytest.approx(percent, rel=1e-6)


def test_more_salt_than_dissolves_is_refused():
    with pytest.raises(InputError, match=r"30\.0 % salt can't exist"):
        brine_conductivity(0.30, T20)
    with pytest.raises(InputError, match="not at 120 °C"):
        brine_conductivity(0.10, 393.15)
