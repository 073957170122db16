"""Limits on aluminium and boron in toys, and lists of allergens, against the law.

Sources: Directive 2009/48/EC, Annex II part III point 13; Directive (EU) 2019/1922, OJ L 298, 19.11.2019, p. 5 (from
20 May 2021); Regulation (EU) 2025/2509, OJ L, 12.12.2025 (from 1 August 2030; its figures for metals were not seen);
Regulation (EU) 1169/2011, Annex II; FALCPA 2004 with the FASTER Act 2021; Regulation (EU) 828/2014; 16 CFR 1501.4.
"""

import datetime

import pytest

from lumped.dough.safety import allergens_of, amount_at_limit, limits_on
from lumped.pantry import pantry
from lumped.reference import handbook

NOW, ALUM = datetime.date(2026, 11, 26), "KAl(SO4)2(H2O)12"


@pytest.mark.parametrize(
    ("element", "date", "pliable", "sticky"),
    [
        ("Al", datetime.date(2021, 5, 19), 5625, 1406),
        ("Al", datetime.date(2021, 5, 20), 2250, 560),
        ("Al", datetime.date(2030, 7, 31), 2250, 560),
        ("B", datetime.date(2021, 5, 20), 1200, 300),
    ],
)
def test_the_limits_of_a_day_are_the_law_s(element, date, pliable, sticky):
    rows = limits_on(element, date).rows
    assert (rows["category_1"].printed, rows["category_2"].printed) == (pliable, sticky)
    assert limits_on(element, date).facts["valid_to"] < datetime.date(2030, 8, 1)


@pytest.mark.parametrize(
    ("entry", "pliable"),
    [("copper", 622.5), ("nickel", 75), ("zinc", 3750), ("tin", 15000), ("lead", 2.0), ("chromium-vi", 0.02),
     ("cadmium", 1.3), ("boron", 1200)],
)  # fmt: skip
def test_other_metals_of_a_pliable_toy_have_the_limits_of_annex_ii(entry, pliable):
    held = handbook().entry("limits", f"migration-{entry}")
    assert (held.rows["category_1"].printed, held.rows["category_1"].unit) == (pliable, "mg/kg")
    assert held.facts["valid_from"] < NOW < held.facts["valid_to"] < datetime.date(2030, 8, 1)


@pytest.mark.parametrize(
    ("entry", "quantity", "printed", "unit"),
    [
        ("toy-voltage", "highest", 24, "V"),  # 2009/48/EC, Annex II part IV 1
        ("low-voltage", "highest_dc", 120, "V"), ("low-voltage", "highest_ac", 50, "V"),  # IEC 61558-1, 3.7.16
        ("warm-to-touch", "metal", 25, "K"), ("warm-to-touch", "glass", 30, "K"), ("warm-to-touch", "plastic", 35, "K"),
        ("warm-to-touch", "other_metal", 45, "K"),  # IEC 62115, clause 9, edition of 2003
        ("chlorine", "ceiling", 3.0, "mg/m³"), ("chlorine", "quarter_hour", 1.45, "mg/m³"),  # OSHA Z-1, NIOSH
    ],
)  # fmt: skip
def test_the_handbook_keeps_other_limits_as_they_are_printed(entry, quantity, printed, unit):
    row = handbook().row("limits", entry, quantity)
    assert (row.printed, row.unit) == (printed, unit)


def test_both_limits_on_chlorine_are_the_same_in_parts_and_in_milligrams():
    """1 and 0.5 ppm at 25 °C and one atmosphere: 24.465 L/mol, 70.906 g/mol."""
    for quantity, parts in (("ceiling", 1.0), ("quarter_hour", 0.5)):
        printed = handbook().row("limits", "chlorine", quantity).printed
        assert printed == pytest.approx(parts * 70.906 / 24.465404, rel=0.04)  # printed with one and three digits


def test_from_august_2030_the_new_regulation_is_named_and_marked_as_not_seen():
    row = limits_on("Al", datetime.date(2030, 8, 1)).rows["category_1"]
    assert row.value.provenance.sources == ("toy-regulation",)
    assert row.value.provenance.status.value == "from memory"


@pytest.mark.parametrize(("category", "grams"), [("category_1", 39.6), ("category_2", 9.85)])
def test_alum_that_would_reach_a_limit_if_all_its_aluminium_migrated(category, grams):
    """Limit times 474.388/26.982 (IUPAC molar masses), grams of alum for a kilogram of dough."""
    assert 1e3 * amount_at_limit(ALUM, "Al", NOW, category).mean == pytest.approx(
        grams, rel=2e-3
    )  # printed to 3 digits


def test_borax_that_would_reach_the_limit_on_boron():
    """1200 mg/kg times 381.372/(4 · 10.81), grams of borax for a kilogram of dough."""
    grams = 1e3 * amount_at_limit("Na2B4O7(H2O)10", "B", NOW).mean
    assert grams == pytest.approx(1.2 * 381.372 / 43.24, rel=1e-3)  # standard weight of boron: 10.81


@pytest.mark.parametrize(
    ("ingredient", "eu", "us"),
    [
        ("plain-flour", {"cereals containing gluten"}, {"wheat"}),
        ("barley-flour", {"cereals containing gluten"}, set()),
        ("rye-flour", {"cereals containing gluten"}, set()),
        ("rice-flour", set(), set()),
        ("cornstarch", set(), set()),
        ("tapioca-starch", set(), set()),
        ("soy-flour", {"soybeans"}, {"soybeans"}),
        ("lupin-flour", {"lupin"}, set()),
    ],
)
def test_european_and_american_lists_differ_where_the_law_does(ingredient, eu, us):
    found = allergens_of({ingredient: 0.1}, pantry())
    assert (set(found.eu), set(found.us)) == (eu, us)


def test_gluten_free_food_holds_at_most_20_mg_in_a_kilogram():
    assert handbook().row("limits", "gluten-free", "highest").printed == 20
    assert handbook().row("limits", "gluten-free", "highest").unit == "mg/kg"


def test_the_small_parts_tube_is_an_inch_and_a_quarter_wide():
    tube = handbook().value("limits", "small-parts", "cylinder_diameter")
    assert 1e3 * tube.mean == pytest.approx(31.75)  # English dimensions govern: 1.25 in, not 31.7 mm
