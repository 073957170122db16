"""A checksum for each table: an edit of a figure is a decision, and shows here."""

import numpy as np
import pytest

from lumped.reference import handbook

BOOK = handbook()

ENTRIES_ROWS_SUM = {
    # table: (entries, rows, sum of all printed figures)
    "acids": (11, 21, 101.4765),
    "activity": (22, 85, -719.721536),
    "air": (5, 13, 1373.92574),
    "allergens": (4, 2, 23.0),
    "compounds": (42, 42, 76431.2),
    "doughs": (9, 27, 350.41),
    "electrolytes": (8, 10, 334.228),
    "elements": (13, 13, 305.772),
    "gauges": (10, 18, 63.0),
    "grains": (15, 16, 7.730051),
    "hands": (3, 5, 18.5),
    "ingredients": (88, 774, 43478.836),
    "ions": (33, 68, 2122.66),
    "lamps": (5, 50, 1123.95),
    "lasting": (27, 59, 17976.34702),
    "limits": (31, 60, 35842.608),
    "marks": (5, 7, 2494.0),
    "measures": (8, 37, 1977.22814),
    "measuring": (4, 3, 37.0),
    "metals": (7, 87, 2365.589712),
    "motors": (2, 10, 26.674),
    "moulds": (3, 14, 337.949),
    "names": (88, 0, 0),
    "packs": (9, 24, 4123.39),
    "prices": (87, 130, 5964.665),
    "regions": (8, 8, 299.15),
    "resistors": (3, 3, 790.0),
    "shops": (88, 0, 0),
    "solubility": (1, 2, 46.0),
    "solutions": (35, 189, 918761.153008),
    "swap": (8, 44, 463.023),
    "switches": (2, 3, 1000.1),
    "syrup": (5, 9, 169.99),
    "verdicts": (4, 6, 134.45),
    "workshop": (11, 39, 3699.3),
}
CURVES = {
    # curve: (points, sum of its last column as printed in SI)
    "lump-by-age": (7, 0.42),
    "water-evaporation": (6, 14282600.0),
    "nacl-conductivity-20degC": (8, 84.75),
    "nacl-conductivity-saturated": (7, 157.27),
    "nacl-conductivity-dilute-25degC": (7, 2.050685),
    "kcl-conductivity-dilute-25degC": (7, 2.467005),
    "nacl-solubility": (14, 3.74595),
    "nacl-density-20degC": (12, 12937.7),
    "water-viscosity": (13, 0.011469),
    "kcl-conductivity-standards": (11, 120.3462),
    "kcl-conductivity-20degC": (4, 91.8),
    "cacl2-conductivity-20degC": (10, 103.22),
    "mgcl2-conductivity-20degC": (9, 71.43),
    "mgso4-conductivity-20degC": (8, 24.45),
    "na2so4-conductivity-20degC": (6, 24.2),
    "k2so4-conductivity-20degC": (4, 8.6),
    "cuso4-conductivity-20degC": (6, 11.11),
    "cuso4-conductivity-dilute-25degC": (7, 1.093211),
    "nacl-warmth": (6, 5.774),
    "kcl-warmth": (5, 4.608),
    "cacl2-warmth": (8, 7.522),
    "mgcl2-warmth": (5, 5.291),
    "na2so4-warmth": (4, 4.267),
    "k2so4-warmth": (3, 2.735),
    "mgso4-warmth": (6, 6.656),
    "cuso4-warmth": (4, 3.933),
    "cacl2-conductivity-dilute-25degC": (7, 1.999398),
    "mgcl2-conductivity-dilute-25degC": (7, 1.8979375),
    "na2so4-conductivity-dilute-25degC": (7, 1.790978),
    "citric-acid-viscosity-20degC": (9, 22.3),
    "solubility-potassium-hydrogen-tartrate": (8, 0.15157284),
    "solubility-potassium-chloride": (8, 3.241),
    "solubility-calcium-chloride": (8, 8.697),
    "solubility-magnesium-chloride": (6, 3.654),
    "solubility-magnesium-sulphate": (7, 2.812),
    "solubility-sodium-sulphate": (5, 1.24),
    "solubility-sodium-hydrogen-carbonate": (7, 0.794),
    "solubility-sodium-carbonate": (5, 1.302),
    "solubility-potassium-hydrogen-carbonate": (4, 1.693),
    "solubility-alum": (8, 2.378),
    "solubility-glucose": (10, 19.36),
    "solubility-fructose": (6, 26.31),
    "solubility-sorbitol": (5, 14.15),
    "solubility-citric-acid": (9, 21.78),
    "solubility-tartaric-acid": (9, 17.4),
    "solubility-ascorbic-acid": (5, 1.89),
    "solubility-sodium-benzoate": (5, 3.292),
    "solubility-potassium-sorbate": (4, 5.98),
    "solubility-borax": (9, 1.289),
    "solubility-potassium-dihydrogen-phosphate": (7, 2.387),
    "solubility-sodium-dihydrogen-phosphate": (4, 4.484),
    "solubility-calcium-dihydrogen-phosphate": (2, 0.036),
    "glycerol-density-20degC": (11, 12405.3),
    "sucrose-viscosity-20degC": (9, 0.716352),
    "sucrose-solubility": (12, 8.6742),
    "glycerol-viscosity-20degC": (11, 1.738692),
}
PEAKED = {f"{salt}-conductivity-20degC" for salt in ("cacl2", "mgcl2", "mgso4")} | {  # thick when strong
    f"{salt}-warmth" for salt in ("nacl", "cacl2", "mgcl2", "mgso4", "cuso4")
}


def test_every_table_and_curve_has_a_checksum():
    assert {name for name, entries in BOOK.tables.items() if entries} == set(ENTRIES_ROWS_SUM)
    assert set(BOOK.curves) == set(CURVES)


@pytest.mark.parametrize("table", ENTRIES_ROWS_SUM)
def test_a_table_holds_what_it_held(table):
    rows = [row for key in BOOK.keys(table) for row in BOOK.entry(table, key).rows.values()]
    count, total = len(rows), sum(row.printed for row in rows)
    assert (len(BOOK.keys(table)), count, round(total, 6)) == ENTRIES_ROWS_SUM[table]


@pytest.mark.parametrize("key", CURVES)
def test_a_curve_holds_what_it_held_and_rises_along_its_axis(key):
    curve = BOOK.curve(key)
    last = list(curve.columns)[-1]
    assert (len(curve), float(f"{curve[last].sum():.8g}")) == CURVES[key]
    assert np.all(np.diff(curve[curve.axes[0]]) > 0)
    steps = np.diff(curve[last])
    turns = int(np.sum(np.sign(steps[1:]) != np.sign(steps[:-1])))
    assert turns == (1 if key in PEAKED else 0)
