"""Conductivity of other salts than table salt, and of several together, at points that did not make the curves.

Sources: CRC Handbook of Chemistry and Physics, tables “Electrical conductivity of aqueous solutions” (20 °C) and, 97th
edition, “Equivalent conductivity of electrolytes” (25 °C); KCl standards after Wu, Koch and Pratt (1991), CRC p. 5-73;
sea water: practical salinity scale 1978 (from memory).
"""

import numpy as np
import pytest

from lumped.chemistry import braking, certainty, mixture
from lumped.chemistry.certainty import mixture_width
from lumped.chemistry.compounds import compound
from lumped.chemistry.density import liquid_volume
from lumped.chemistry.mixture import mixture_conductivity
from lumped.chemistry.potash import potash_conductivity
from lumped.quantities.interpolation import Monotone

T20, T25 = 293.15, 298.15
STANDARDS = {
    # °C: mS/m at 0.01, 0.1, 1 mol/kg
    0: (77.292, 711.685, 6348.8), 5: (89.096, 818.370, 7203.0), 10: (101.395, 929.172, 8084.4),
    15: (114.145, 1043.71, 8990.0), 20: (127.303, 1161.59, 9917.0), 25: (140.823, 1282.46, 10862.0),
    30: (154.663, 1405.92, 11824.0), 35: (168.779, 1531.60, 12797.0), 40: (183.127, 1659.10, 13781.0),
    45: (197.662, 1788.06, 14772.0), 50: (212.343, 1918.09, 15767.0),
}  # fmt: skip
# CRC, 20 °C: mass %, mS/cm; density of the strongest, g/mL, from memory where no row of ours has it
ROWS = {
    "calcium-chloride": ([0.5, 1, 2, 5, 10, 15, 20, 25, 30, 40], [8.1, 15.7, 29.4, 67.0, 117, 157, 177, 183, 172, 106]),
    "magnesium-chloride": ([0.5, 1, 2, 5, 10, 15, 20, 25, 30], [8.6, 16.6, 31.2, 66.9, 108, 129, 134, 122, 98]),
    "magnesium-sulphate": ([0.5, 1, 2, 5, 10, 15, 20, 25], [4.1, 7.6, 13.3, 27.4, 42.7, 54.2, 51.1, 44.1]),
    "sodium-sulphate": ([0.5, 1, 2], [5.9, 11.2, 19.8]),
    "potassium-sulphate": ([0.5, 1, 2, 5], [5.8, 11.2, 21.0, 48.0]),
    "copper-sulphate": ([0.5, 1, 2, 5, 10, 15], [2.9, 5.4, 9.3, 19.0, 32.2, 42.3]),
    "potassium-chloride": ([0.5, 1, 2, 5], [8.2, 15.7, 29.5, 71.9]),
    "ammonium-chloride": ([0.5, 1, 2, 5, 10], [10.5, 20.4, 40.3, 95.3, 180]),
    "hydrogen-chloride": ([0.5, 1, 2], [45.1, 92.9, 183]),
}
NO_ROW = {
    # cation, anion, charges in a mole, kg/mol, mass %, density
    "potassium-sulphate": ("potassium", "sulphate", 2, 0.174259, [0, 5], [998.2, 1039.1]),
    "copper-sulphate": ("copper", "sulphate", 2, 0.159609, [0, 5, 10, 15], [998.2, 1051.3, 1107.3, 1167.5]),
    "ammonium-chloride": ("ammonium", "chloride", 1, 0.053491, [0, 5, 10], [998.2, 1013.8, 1028.6]),
    "hydrogen-chloride": ("hydrogen", "chloride", 1, 0.036461, [0, 2], [998.2, 1008.1]),
}
DILUTE = {
    # CRC 97, 25 °C: mS/cm at 0.0005, 0.001, 0.005, 0.01, 0.02, 0.05, 0.1 mol/L of charge
    "sodium-chloride": [0.06222, 0.12368, 0.60295, 1.1845, 2.314, 5.5505, 10.669],
    "potassium-chloride": [0.07387, 0.14688, 0.7169, 1.412, 2.7654, 6.665, 12.89],
    "calcium-chloride": [0.06593, 0.1303, 0.62095, 1.203, 2.3118, 5.421, 10.241],
    "magnesium-chloride": [0.062775, 0.12415, 0.59125, 1.1449, 2.1998, 5.1515, 9.705],
    "sodium-sulphate": [0.06284, 0.12409, 0.58545, 1.1238, 2.1346, 4.885, 8.994],
}
CHARGE = 1e3 * np.array([0.0005, 0.001, 0.005, 0.01, 0.02, 0.05, 0.1])
TABULATED = [key for key in ROWS if key not in ("ammonium-chloride", "hydrogen-chloride")]


def charges_of(key, percent):
    """Moles of charge of both ions in a cubic metre at 20 °C."""
    share = np.asarray(percent) / 100
    if key in NO_ROW:
        cation, anion, count, molar_mass, at, density = NO_ROW[key]
        charge = count * share * np.interp(percent, at, density) / molar_mass
    else:
        cation, anion = key.split("-")
        count = 2 if cation in ("calcium", "magnesium") or anion == "sulphate" else 1
        charge = (
            count * share / (1 - share) / compound(key).molar_mass / liquid_volume(1.0, {key: share / (1 - share)}, T20)
        )
    return {cation: charge, anion: charge}


def off_and_width(key):
    """How far each row of a salt lies from ours, and our half-width, both over ours."""
    percent, printed = ROWS[key]
    charges = charges_of(key, percent)
    ours = mixture_conductivity(charges, T20)
    off, width = np.array(printed) / 10 / ours - 1, mixture_width(charges, T20)
    if key in DILUTE:
        thin = dict.fromkeys(charges, CHARGE)
        ours = mixture_conductivity(thin, T25)
        off = np.append(off, np.array(DILUTE[key]) / 10 / ours - 1)
        width = np.append(width, mixture_width(thin, T25))
    return off, width


CACHES = (
    braking.braking_curves,
    mixture.plan_of,
    mixture._standing_for,
    mixture._ends,
    certainty._salt_figures,
    certainty._kinds,
)


@pytest.fixture
def without(monkeypatch):
    """Take a salt off the shelf: its table is unknown until the test ends."""
    shelf = dict(braking.salts())

    def take(key):
        fewer = {each: salt for each, salt in shelf.items() if each != key}
        for room in (braking, mixture, certainty):
            monkeypatch.setattr(room, "salts", lambda: fewer)
        for each in CACHES:
            each.cache_clear()

    yield take
    monkeypatch.undo()
    for each in CACHES:
        each.cache_clear()


def test_nineteen_of_twenty_published_points_lie_in_the_interval_of_a_rule_that_never_saw_their_salt(without, capsys):
    """Each salt's own table is taken away; those of ammonium and hydrogen chloride never were there."""
    off, width = [], []
    for key in ROWS:
        without(key)
        for found, each in zip((off, width), off_and_width(key), strict=True):
            found.extend(each)
    inside = np.abs(off) <= width
    with capsys.disabled():
        print(f"\n{inside.sum()} of {len(inside)} points of {len(ROWS)} salts left out: {inside.mean():.1%}")
    assert len(inside) >= 75
    assert inside.mean() >= 0.95
    assert np.median(width) < 0.15  # an interval that held everything would say nothing


def test_a_salt_left_out_is_really_left_out(without):
    charges = charges_of("calcium-chloride", 20)
    known = mixture_conductivity(charges, T20)
    without("calcium-chloride")
    assert abs(mixture_conductivity(charges, T20) / known - 1) > 0.05
    assert certainty.reach(charges, T20).guessed == pytest.approx(1, rel=1e-9)


def test_nineteen_of_twenty_nodes_left_out_of_their_curve_lie_in_the_width_of_their_table(capsys):
    inside, worst = [], {}
    for key, salt in braking.salts().items():
        x, y = salt.number.x, salt.number.y
        off = [np.expm1(Monotone(np.delete(x, k), np.delete(y, k))(x[k]) - y[k]) for k in range(1, len(x) - 1)]
        inside += [abs(each) <= salt.width for each in off]
        worst[key] = max(map(abs, off))
    with capsys.disabled():
        print(f"\n{np.sum(inside)} of {len(inside)} nodes: {np.mean(inside):.1%}; worst " + ", ".join(
            f"{key} {each:.1%}" for key, each in worst.items()))  # fmt: skip
    assert np.mean(inside) >= 0.95
    assert max(worst["sodium-chloride"], worst["potassium-chloride"]) <= 0.02


@pytest.mark.parametrize("key", TABULATED)
def test_a_tabulated_salt_is_met_at_its_nodes(key):
    percent, printed = (np.array(each)[1:] for each in ROWS[key])  # rows of 0.5 % give way to the table of 25 °C
    found = 10 * mixture_conductivity(charges_of(key, percent), T20)
    tolerance = 0.03 if key == "potassium-chloride" else 2e-3  # its nodes are the standards; densities round the others
    np.testing.assert_allclose(found, printed, rtol=tolerance)


@pytest.mark.parametrize("key", DILUTE)
def test_thin_salts_at_25_degrees_meet_the_equivalent_conductivities(key):
    cation, anion = key.split("-")
    found = 10 * mixture_conductivity({cation: CHARGE, anion: CHARGE}, T25)
    tolerance = 0.013 if key == "sodium-chloride" else 1.5e-3  # 0.1 mol/L NaCl gives way to “8.2” at 0.5 % and 20 °C
    np.testing.assert_allclose(found, DILUTE[key], rtol=tolerance)


@pytest.mark.parametrize("celsius", STANDARDS)
def test_potassium_chloride_is_exact_at_the_standards(celsius):
    found = 1e3 * potash_conductivity([0.01, 0.1, 1.0], celsius + 273.15)
    np.testing.assert_allclose(found, STANDARDS[celsius], rtol=2e-5)  # the table prints five digits


@pytest.mark.parametrize(("celsius", "thin", "middle"), [(18, 1219.93, 11140.6)])
def test_the_standard_at_18_degrees_which_made_no_curve(celsius, thin, middle):
    found = 1e4 * potash_conductivity([0.01, 0.1], celsius + 273.15)
    np.testing.assert_allclose(found, [thin, middle], rtol=1e-4)  # µS/cm


@pytest.mark.parametrize("molality", [0.01, 0.1, 1.0])
def test_beyond_the_standards_the_rise_of_their_last_kelvins_goes_on(molality):
    before, end, beyond = (float(np.log(potash_conductivity(molality, t + 273.15))) for t in (45, 50, 55))
    assert 0.9 < (beyond - end) / (end - before) < 1.05  # from 40 to 50 °C it falls by a twelfth every five kelvins


@pytest.mark.parametrize("node", range(1, 10))
@pytest.mark.parametrize("column", range(3))
def test_a_temperature_left_out_of_the_standards_is_found_within_a_thousandth(node, column):
    celsius, logs = np.array(list(STANDARDS)), np.log(np.array(list(STANDARDS.values()))[:, column])
    fewer = Monotone(np.delete(celsius, node), np.delete(logs, node))
    assert fewer(celsius[node]) == pytest.approx(logs[node], abs=1.1e-3)


@pytest.mark.parametrize("molality", [0.01, 0.1, 0.4, 1.0, 3.0])
@pytest.mark.parametrize("kelvins", [273.15, 293.15, 313.15, 323.15])
def test_as_a_mixture_potassium_chloride_is_what_it_is_alone(molality, kelvins):
    cold, warm = (liquid_volume(1.0, {"potassium-chloride": molality * 0.0745513}, each) for each in (T20, kelvins))
    found = mixture_conductivity({"potassium": molality / warm, "chloride": molality / warm}, kelvins)
    assert cold <= warm or kelvins < T20
    assert found == pytest.approx(potash_conductivity(molality, kelvins), rel=4e-3)  # it expands as water does, almost


def test_strong_warm_potassium_chloride_warms_as_kohlrausch_found():
    # 1.88 % a kelvin at 18 °C, 10 % KCl: a meter's manual, section 11.3 (it calls it 25 °C; Kohlrausch's is 18 °C)
    m = 10 / 90 / 0.0745513
    low, high = potash_conductivity(m, 290.15), potash_conductivity(m, 292.15)
    assert np.log(high / low) / 2 == pytest.approx(0.0188, abs=5e-4)


def salinity_ratio(celsius):
    """Conductivity of sea water of salinity 35 over that at 15 °C, practical salinity scale 1978."""
    return np.polyval([1.0031e-9, -6.9698e-7, 1.104259e-4, 2.00564e-2, 0.6766097], celsius)


@pytest.mark.parametrize(("celsius", "density"), [(0, 1028.1), (10, 1027.0), (15, 1026.0), (25, 1023.3), (35, 1019.9)])
def test_sea_water_conducts_as_the_salinity_scale_says(celsius, density):
    """Six ions, 0.72 mol/L; none of it made a curve but a hint of how 5 % salt water warms."""
    mole = {
        "sodium": 0.46906,
        "magnesium": 2 * 0.05282,
        "calcium": 2 * 0.01028,
        "potassium": 0.01021,
        "chloride": 0.54674,
        "sulphate": 2 * 0.02824,
    }  # mol of charge in a kilogram, reference composition
    charges = {ion: each * density for ion, each in mole.items()}
    found = mixture_conductivity(charges, celsius + 273.15)
    assert found == pytest.approx(4.2914 * salinity_ratio(celsius), rel=0.01)  # 0.5 % was seen
    off = abs(4.2914 * salinity_ratio(celsius) / found - 1)
    assert off < mixture_width(charges, celsius + 273.15)


@pytest.mark.parametrize(("ions", "percent_a_kelvin", "within"), [
    ({"hydrogen": 2870.0, "chloride": 2870.0}, 1.56, 0.1),  # HCl of 10 %: a meter's manual, section 11.3
    ({"potassium": 1426.0, "chloride": 1426.0}, 1.88, 0.05),
])  # fmt: skip
def test_acid_warms_less_than_salt(ions, percent_a_kelvin, within):
    low, high = (float(mixture_conductivity(ions, each)) for each in (290.15, 292.15))
    assert 50 * np.log(high / low) == pytest.approx(percent_a_kelvin, abs=within)
