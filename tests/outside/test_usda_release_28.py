"""Rows of the pantry against the USDA National Nutrient Database for Standard Reference, release 28, food by food.

Source: US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory: USDA National Nutrient
Database for Standard Reference, Release 28 (2015, revised 2016), file ABBREV, which prints two measures of a food;
further ones (teaspoons of oil, a dash of salt, cups of salt, sugar, unpacked brown sugar and maple syrup) are from file
WEIGHT of an earlier release, which agrees with it wherever both print. Figures stand here as the files print them, in
100 g of food; “-” is a figure that they leave out.
"""

import pytest

from lumped.chemistry.compounds import compound, molar_mass_of
from lumped.pantry import pantry
from lumped.quantities import Status
from lumped.reference import handbook

PANTRY, BOOK = pantry(), handbook()

COLUMNS = ["water", "protein", "fat", "ash", "carbohydrate", "fibre", "sugars"]
COLUMNS += ["calcium", "magnesium", "potassium", "sodium"]
FOODS = """
02047 0.20 0.00 0.00 99.80 0.00 0.0 0.00 24 1 8 38758
02048 93.81 0.00 0.00 0.17 0.93 0.0 0.40 7 5 73 5
02050 52.58 0.06 0.06 0.26 12.65 0.0 12.65 11 12 148 9
02053 94.78 0.00 0.00 0.02 0.04 0.0 0.04 6 1 2 2
04031 0.00 0.00 100.00 0.00 0.00 0.0 0.00 0 0 0 0
04044 0.00 0.00 100.00 0.00 0.00 0.0 0.00 0 0 0 0
04047 0.03 0.00 99.06 0.03 0.00 0.0 0.00 1 0 0 0
04053 0.00 0.00 100.00 0.00 0.00 0.0 0.00 1 0 1 2
04506 0.00 0.00 100.00 0.00 0.00 0.0 0.00 0 0 0 0
09152 92.31 0.35 0.24 0.21 6.90 0.3 2.52 6 6 103 1
09153 93.64 0.45 0.07 0.22 5.62 0.7 1.53 10 7 109 24
09160 90.79 0.42 0.07 0.31 8.42 0.4 1.69 14 8 117 2
11413 6.52 6.90 0.34 3.14 83.10 5.9 3.52 65 65 1001 55
12061 4.41 21.15 49.93 2.97 21.55 12.5 4.35 269 270 733 1
14051 66.60 0.00 0.00 0.01 0.00 0.0 0.00 0 0 1 1
16115 5.16 37.81 20.65 4.46 31.92 9.6 7.50 206 429 2515 13
16157 10.28 22.39 6.69 2.82 57.82 10.8 10.85 45 166 846 64
18372 0.20 0.00 0.00 36.90 0.00 0.0 0.00 0 0 0 27360
18373 1.70 0.00 0.00 36.80 61.50 0.2 0.00 8 2 16500 52
19177 13.00 85.60 0.10 1.30 0.00 0.0 0.00 55 22 16 196
19296 17.10 0.30 0.00 0.20 82.40 0.2 82.12 6 2 52 4
19304 21.87 0.00 0.10 3.30 74.73 0.0 74.72 205 242 1464 37
19334 1.34 0.12 0.00 0.45 98.09 0.0 97.02 83 9 133 28
19335 0.02 0.00 0.00 0.01 99.98 0.0 99.80 1 0 2 1
19336 0.23 0.00 0.00 0.01 99.77 0.0 97.81 1 0 2 2
19350 22.81 0.00 0.20 0.20 76.79 0.0 76.77 13 1 1 62
19353 32.39 0.04 0.06 0.47 67.04 0.0 60.46 102 21 212 12
20003 11.37 0.30 0.10 0.08 88.15 3.4 - 40 3 11 2
20011 11.15 12.62 3.10 2.54 70.59 10.0 2.60 41 251 577 11
20016 10.91 6.93 3.86 1.45 76.85 7.3 0.64 7 93 315 5
20027 8.32 0.26 0.05 0.09 91.27 0.9 0.00 2 3 3 9
20061 11.89 5.95 1.42 0.61 80.13 2.4 0.12 10 35 76 0
20064 10.97 10.88 1.52 1.20 75.43 11.8 1.10 24 63 374 2
20068 10.99 0.19 0.02 0.11 88.69 0.9 3.35 20 1 11 1
20080 10.74 13.21 2.50 1.58 71.97 10.7 0.41 34 137 363 2
20081 11.92 10.33 0.98 0.47 76.31 2.7 0.27 15 22 107 2
20083 13.36 11.98 1.66 0.47 72.53 2.4 0.31 15 25 100 2
20084 12.51 8.20 0.86 0.39 78.03 1.7 0.31 14 16 105 2
20090 11.97 7.23 2.78 1.54 76.48 4.6 0.66 11 112 289 8
20130 12.11 10.50 1.60 1.28 74.52 10.1 0.80 32 96 309 4
20132 8.55 14.66 9.12 1.97 65.70 6.5 0.80 55 144 371 19
20466 12.67 12.68 1.05 0.77 72.83 3.9 - 17 47 186 1
20647 8.67 10.75 4.25 1.21 75.12 3.5 1.66 14 119 224 4
20648 10.26 8.43 3.34 1.32 76.64 6.6 1.94 12 123 324 3
"""
PRINTED = {
    ndb: {name: float(figure) for name, figure in zip(COLUMNS, figures, strict=True) if figure != "-"}
    for ndb, *figures in (line.split() for line in FOODS.strip().splitlines())
}
GRAMS = {  # what a measure weighs, by way of filling where the file says one
    "02047": {"tsp": 6.0, "tbsp": 18, "cup": 292, "dash": 0.4}, "02048": {"tbsp": 14.9, "cup": 239},
    "02050": {"tsp": 4.2, "tbsp": 13.0}, "02053": {"tsp": 5.0, "tbsp": 14.9, "cup": 238},
    "04031": {"tbsp": 12.8, "cup": 205}, "04044": {"tsp": 4.5, "tbsp": 13.6, "cup": 218},
    "04047": {"tsp": 4.5, "tbsp": 13.6, "cup": 218}, "04053": {"tsp": 4.5, "tbsp": 13.5, "cup": 216},
    "04506": {"tsp": 4.5, "tbsp": 13.6, "cup": 218}, "09152": {"cup": 244}, "09153": {"tbsp": 15},
    "09160": {"cup": 242}, "11413": {"cup": 160}, "14411": {"cup": 237}, "16115": {"cup": 84}, "16157": {"cup": 92},
    "18370": {"tsp": 4.6}, "18372": {"tsp": 4.6}, "18373": {"tsp": 3.0}, "19296": {"tbsp": 21, "cup": 339},
    "19304": {"tbsp": 20, "cup": 337}, "19334": {"tsp": 4.6, "cup": 220, "cup_spooned": 145},
    "19335": {"tsp": 4.2, "cup": 200}, "19336": {"tbsp": 8.0, "cup": 120, "cup_sifted": 100},
    "19350": {"tbsp": 22, "cup": 341}, "19353": {"tbsp": 20, "cup": 315}, "20003": {"cup": 128},
    "20011": {"cup": 120}, "20016": {"cup": 117}, "20027": {"cup": 128}, "20061": {"cup": 158}, "20064": {"cup": 102},
    "20068": {"cup": 152}, "20080": {"cup": 120}, "20081": {"cup": 125}, "20083": {"cup": 137}, "20084": {"cup": 137},
    "20090": {"cup": 158}, "20130": {"cup_packed": 148}, "20132": {"cup": 104}, "20466": {"cup": 167},
    "20647": {"cup": 119}, "20648": {"cup": 121},
}  # fmt: skip
LEAVES_OUT = {
    "02048",
    "02050",
    "02053",
    "04047",
    "14051",
    "18372",
}  # acid, alcohol, what leaves when soda is burnt; no column


def rows_of(status):
    """Each row that rests on the database: ingredient, quantity, its row, NDB number."""
    return [
        (key, quantity, row, row.page.removeprefix("NDB "))
        for key in BOOK.keys("ingredients")
        for quantity, row in BOOK.entry("ingredients", key).rows.items()
        if row.value.provenance.sources == ("usda-sr",) and row.value.provenance.status is status
    ]


PUBLISHED = rows_of(Status.PUBLISHED)


def test_nearly_half_of_the_pantry_is_published_from_the_database():
    assert len(PUBLISHED) >= 340
    assert len({ndb for *_, ndb in PUBLISHED}) >= 40


@pytest.mark.parametrize("ndb", sorted({ndb for *_, ndb in PUBLISHED}))
def test_a_published_row_says_what_the_database_prints(ndb):
    for key, quantity, row, page in PUBLISHED:
        if page != ndb:
            continue
        name = quantity.removeprefix("g_per_")
        if quantity == "sodium-chloride":  # table salt: all of its ash
            printed = PRINTED[ndb]["ash"]
        else:
            printed = GRAMS[ndb][name] if quantity.startswith("g_per_") else PRINTED[ndb][quantity]
        assert row.printed == pytest.approx(printed, rel=1e-12), (key, quantity)
        assert row.low <= row.printed <= row.high


def printed_total(ndb):
    return sum(PRINTED[ndb][name] for name in ("water", "protein", "fat", "ash", "carbohydrate"))


@pytest.mark.parametrize("ndb", sorted(PRINTED.keys() - LEAVES_OUT))
def test_what_the_database_prints_closes_within_its_rounding(ndb):
    assert printed_total(ndb) == pytest.approx(100, abs=0.025)  # five figures, each rounded to 0.01


@pytest.mark.parametrize(
    ("key", "quantity", "ndb"),
    [
        ("cider-vinegar", "acetic-acid", "02048"), ("white-vinegar", "acetic-acid", "02053"),
        ("vanilla-extract", "ethanol", "02050"), ("spirit", "ethanol", "14051"),
    ],
)  # fmt: skip
def test_what_the_database_has_no_column_for_is_what_it_leaves_to_a_hundred(key, quantity, ndb):
    assert BOOK.row("ingredients", key, quantity).printed == pytest.approx(100 - printed_total(ndb), abs=0.025)


@pytest.mark.parametrize(
    "key", sorted({key for key, quantity, *_ in PUBLISHED if quantity == "protein"} - {"lemon-juice"})
)
def test_an_ingredient_keeps_the_shares_that_the_database_prints(key):
    """Compounds are made to sum to one; what that moves stays within what tables round, salts' anions included."""
    composition = PANTRY[key].composition
    for name in ("water", "protein", "fat", "fibre"):
        row = BOOK.entry("ingredients", key).rows.get(name)
        if row is not None and row.value.provenance.status is Status.PUBLISHED:
            assert 100 * composition.get(name, 0) == pytest.approx(row.printed, rel=2.5e-3, abs=0.02)


@pytest.mark.parametrize(
    ("key", "ndb", "salts"),
    [
        ("cider-vinegar", "02048", "potassium"), ("vanilla-extract", "02050", "potassium"),
        ("gelatine", "19177", "sodium"), ("honey", "19296", "potassium"),
        ("molasses", "19304", "potassium magnesium calcium sodium"), ("brown-sugar", "19334", "potassium calcium sodium"),
        ("corn-syrup", "19350", "sodium"), ("maple-syrup", "19353", "potassium calcium magnesium"),
    ],
)  # fmt: skip
def test_chlorides_stand_for_the_metals_that_the_database_prints(key, ndb, salts):
    symbols = {"sodium": "Na", "potassium": "K", "magnesium": "Mg", "calcium": "Ca"}
    for metal in salts.split():
        row = BOOK.row("ingredients", key, f"{metal}-chloride")
        per_metal = compound(f"{metal}-chloride").molar_mass / molar_mass_of(symbols[metal])
        assert row.value.provenance.status is Status.COMPUTED
        assert row.printed == pytest.approx(
            PRINTED[ndb][metal] / 1e3 * per_metal, abs=0.0051
        )  # two decimals of a per cent


@pytest.mark.parametrize(
    ("key", "quantity", "minus"),
    [("lemon-juice", "carbohydrate", 0), ("bottled-lemon-juice", "carbohydrate", 0), ("lime-juice", "carbohydrate", 0),
     ("lemon-juice", "sugars", 0.3)],
)  # fmt: skip
def test_a_juice_s_carbohydrate_by_difference_holds_its_citric_acid(key, quantity, minus):
    """The file takes 100 less water, protein, fat and ash for carbohydrate: acid, fibre (`minus`) and sugars in one."""
    row, acid = BOOK.row("ingredients", key, quantity), BOOK.row("ingredients", key, "citric-acid")
    whole = PRINTED[row.page.removeprefix("NDB ")]["carbohydrate"]
    assert row.printed + minus + acid.printed == pytest.approx(whole, abs=1e-9)


def test_lemon_juice_keeps_more_acid_than_the_database_s_sugars_leave_room_for():
    """2.52 % sugars, 0.3 % fibre and 48 g/L of acid are 7.48 %, and the file prints 6.90 %: its interval says so."""
    sugars, acid = (BOOK.row("ingredients", "lemon-juice", name) for name in ("sugars", "citric-acid"))
    assert PRINTED["09152"]["sugars"] + 0.3 + acid.printed > PRINTED["09152"]["carbohydrate"] + 0.5
    assert sugars.low < PRINTED["09152"]["sugars"] < sugars.high


@pytest.mark.parametrize("row", [row for _, quantity, row, _ in rows_of(Status.COMPUTED) if quantity == "density"])
def test_a_density_from_a_cup_is_its_weight_by_236_6_millilitres(row):
    cup = GRAMS[ndb]["cup"] if (ndb := row.page.removeprefix("NDB ")) != "02050" else 208  # vanilla's cup is no row
    assert row.printed == pytest.approx(cup / 236.588, rel=5e-3)  # two decimals, and a cup rounded to a gram
