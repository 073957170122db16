"""Composition and weights of ingredients, against published tables and formulas.

Sources: USDA National Nutrient Database for Standard Reference (weights, composition); atomic weights (IUPAC, four
digits); Penniston 2008 (citric acid); Regulation (EU) 1169/2011 Annex II and FALCPA/FASTER (allergens).
"""

import pytest

from lumped.chemistry.compounds import compound, molar_mass_of
from lumped.dough.safety import element_share
from lumped.pantry import pantry
from lumped.pantry.amounts import mass_of
from lumped.reference import handbook

PANTRY, BOOK = pantry(), handbook()
NA, K = 22.990, 39.098  # g/mol


def weight(ingredient, measure):
    found = PANTRY[ingredient]
    return 1e3 * found.weights[measure][found.usual_method].mean


@pytest.mark.parametrize(
    ("ingredient", "measure", "grams"),
    [
        ("plain-flour", "cup", 125), ("bread-flour", "cup", 137), ("cake-flour", "cup", 137),
        ("wholemeal-flour", "cup", 120), ("rice-flour", "cup", 158), ("cornstarch", "cup", 128),
        ("potato-flour", "cup", 160), ("tapioca-pearls", "cup", 152), ("table-salt", "cup", 292),
        ("table-salt", "tbsp", 18), ("table-salt", "tsp", 6), ("table-salt", "dash", 0.4),
        ("granulated-sugar", "cup", 200), ("granulated-sugar", "tsp", 4.2), ("icing-sugar", "cup", 120),
        ("vegetable-oil", "tsp", 4.5), ("vegetable-oil", "tbsp", 13.6), ("vegetable-oil", "cup", 218),
        ("lemon-juice", "cup", 244), ("white-vinegar", "tsp", 5), ("white-vinegar", "tbsp", 14.9),
        ("white-vinegar", "cup", 238), ("baking-soda", "tsp", 4.6), ("cream-of-tartar", "tsp", 3),
        ("tap-water", "cup", 237), ("icing-sugar", "tbsp", 8),
    ],
)  # fmt: skip
def test_a_measure_weighs_what_the_usda_table_says(ingredient, measure, grams):
    assert weight(ingredient, measure) == pytest.approx(grams, rel=1e-9)


def test_sifted_icing_sugar_and_ounces_of_liquids_weigh_what_the_usda_table_says():
    assert 1e3 * PANTRY["icing-sugar"].weights["cup"]["sifted"].mean == pytest.approx(100)
    for ingredient, grams in (("lemon-juice", 30.5), ("tap-water", 29.6)):
        assert 1e3 * mass_of("1 fl oz", PANTRY[ingredient], "us").mean == pytest.approx(grams, abs=0.05)


@pytest.mark.parametrize(
    ("ingredient", "sodium", "potassium"),
    [("plain-flour", 2, None), ("cornstarch", 9, None), ("potato-flour", None, 1001), ("lemon-juice", None, 103)],
)
def test_the_metals_of_an_ingredient_are_those_of_the_usda_table(ingredient, sodium, potassium):
    """mg in 100 g, counted from the atoms of the salts that stand for them."""
    for element, printed in (("Na", sodium), ("K", potassium)):
        if printed is not None:
            found = 1e6 * element_share({ingredient: 1.0}, 1.0, PANTRY, element) / 10
            assert found == pytest.approx(printed, rel=2e-3)


@pytest.mark.parametrize(("ingredient", "ash"), [
    ("plain-flour", 0.47), ("bread-flour", 0.47), ("cake-flour", 0.39), ("rice-flour", 0.61), ("cornstarch", 0.09),
    ("wholemeal-flour", 1.58), ("potato-flour", 3.14), ("tapioca-pearls", 0.11),
])  # fmt: skip
def test_minerals_burn_to_about_the_ash_that_the_usda_table_prints(ingredient, ash):
    """Each phosphate loses its water and is left as metaphosphate. One phosphate for each charge is the most there can
    be; in phytate six sit in a molecule and meet more of them: up to half again as much ash was seen."""
    left = 0.0
    for key, share in PANTRY[ingredient].composition.items():
        if key.endswith("dihydrogen-phosphate"):
            each = compound(key)
            left += share * (1 - each.atoms["H"] / 2 * molar_mass_of("H2O") / each.molar_mass)
    assert 0.6 < 100 * left / ash < 1.55


def test_household_vinegar_holds_five_per_cent_of_acid_and_more_than_the_least_that_is_sold():
    """At least 4 g in 100 mL (US FDA, CPG 525.825, from memory); 5 % by volume are 0.833 mol/L."""
    vinegar = PANTRY["white-vinegar"]
    grams = 0.1 * vinegar.composition["acetic-acid"] * vinegar.density.mean  # in 100 mL
    assert grams > 4
    assert 10 * grams / (1e3 * compound("acetic-acid").molar_mass) == pytest.approx(0.833, rel=0.06)


@pytest.mark.parametrize(
    ("ingredient", "water", "protein", "fat", "fibre", "carbohydrate"),
    [  # g in 100 g
        ("plain-flour", 11.92, 10.33, 0.98, 2.7, 76.31),
        ("bread-flour", 13.36, 11.98, 1.66, 2.4, 72.53),
        ("cake-flour", 12.51, 8.20, 0.86, 1.7, 78.03),
        ("wholemeal-flour", 10.74, 13.21, 2.50, 10.7, 71.97),
        ("rice-flour", 11.89, 5.95, 1.42, 2.4, 80.13),
        ("cornstarch", 8.32, 0.26, 0.05, 0.9, 91.27),
        ("potato-flour", 6.52, 6.90, 0.34, 5.9, 83.10),
        ("tapioca-pearls", 10.99, 0.19, 0.02, 0.9, 88.69),
    ],
)
def test_what_an_ingredient_is_made_of_is_what_the_usda_table_prints(
    ingredient, water, protein, fat, fibre, carbohydrate
):
    shares = {key: 100 * share for key, share in PANTRY[ingredient].composition.items()}
    for key, printed in (("water", water), ("protein", protein), ("fat", fat), ("fibre", fibre)):
        assert shares.get(key, 0) == pytest.approx(printed, abs=0.02)  # rounding of a dozen rows is shared out
    phosphate = sum(share for key, share in shares.items() if key.endswith("phosphate"))
    ash = 100 - water - protein - fat - carbohydrate
    assert shares["starch"] + shares["fibre"] == pytest.approx(carbohydrate - max(phosphate - ash, 0), abs=0.06)


def test_bread_and_cake_flour_are_weighed_in_a_dipped_cup():
    """SR 28 says “unsifted, dipped” of cake flour (20084) and of unenriched bread flour (20129)."""
    assert {PANTRY[key].usual_method for key in ("bread-flour", "cake-flour")} == {"scooped"}
    assert 1e3 * PANTRY["bread-flour"].weights["cup"]["scooped"].mean == pytest.approx(137)


def test_no_way_of_filling_is_told_twice():
    """A second row for the usual way would silently take the place of the first."""
    for key, ingredient in PANTRY.items():
        usual = {f"g_per_{measure}_{ingredient.usual_method}" for measure in ("cup", "tbsp", "tsp", "dash")}
        assert not usual & set(BOOK.entry("ingredients", key).rows), key


def test_the_usda_weights_agree_with_each_other():
    assert weight("table-salt", "cup") / weight("table-salt", "tbsp") == pytest.approx(16, rel=0.02)
    assert 48 * weight("table-salt", "tsp") == pytest.approx(weight("table-salt", "cup"), rel=0.02)
    assert weight("table-salt", "cup") / 236.588 == pytest.approx(1.234, rel=0.001)  # g/mL, in bulk
    assert weight("vegetable-oil", "cup") / 236.588 == pytest.approx(0.92, rel=0.005)  # true density of oil


def test_sodium_is_39_percent_of_salt_and_27_percent_of_soda():
    """Theory 39.337 and 27.366 per cent; the table prints 38.758 and 27.360."""
    salt, soda = (NA / (1e3 * compound(f"sodium-{rest}").molar_mass) for rest in ("chloride", "hydrogen-carbonate"))
    assert (salt, soda) == (pytest.approx(0.39337, rel=1e-4), pytest.approx(0.27366, rel=1e-4))  # chlorine of 35.45
    row = BOOK.row("ingredients", "table-salt", "sodium-chloride")
    assert row.low / 100 == pytest.approx(0.38758 / salt, abs=1e-3)
    assert 0.27360 / soda == pytest.approx(PANTRY["baking-soda"].composition["sodium-hydrogen-carbonate"], abs=3e-3)


def test_the_potassium_of_usda_cream_of_tartar_stands_for_four_fifths_of_it():
    """Theory 20.78 per cent potassium, the table prints 16.5: its interval reaches down to that."""
    row = BOOK.row("ingredients", "cream-of-tartar", "potassium-hydrogen-tartrate")
    theory = K / (1e3 * compound("potassium-hydrogen-tartrate").molar_mass)
    assert theory == pytest.approx(0.2078, abs=1e-4)
    assert row.low / 100 == pytest.approx(0.165 / theory, abs=2e-3)
    assert row.low < row.printed <= row.high


@pytest.mark.parametrize(("juice", "grams_per_litre"), [("lemon-juice", 48.0), ("lime-juice", 45.9)])
def test_juices_hold_the_citric_acid_that_was_measured(juice, grams_per_litre):
    printed = BOOK.row("ingredients", juice, "citric-acid").printed / 100
    assert printed * PANTRY[juice].density.mean == pytest.approx(grams_per_litre, rel=0.01)  # two digits of density


def test_bottled_lemon_juice_holds_34_to_39_grams_per_litre():
    printed = BOOK.row("ingredients", "bottled-lemon-juice", "citric-acid").printed / 100
    assert 34 <= printed * PANTRY["bottled-lemon-juice"].density.mean <= 39


@pytest.mark.parametrize(
    ("key", "element", "share"),
    [("epsom-salt", "magnesium-sulphate", 48.84), ("alum", "alum", 54.43), ("borax", "borax", 52.76)],
)
def test_crystals_hold_as_much_water_as_their_formula_says(key, element, share):
    """MgSO4·7H2O, KAl(SO4)2·12H2O, Na2B4O7·10H2O by atomic weights; alum's water is 45.57 per cent."""
    assert 100 * PANTRY[key].composition[element] == pytest.approx(share, abs=0.06)  # three digits in the table


def test_alum_is_5_7_percent_aluminium():
    aluminium = PANTRY["alum"].composition["alum"] * 26.982 / (1e3 * compound("alum").molar_mass)
    assert aluminium == pytest.approx(0.056876, rel=2e-3)


def test_there_are_fourteen_european_and_nine_american_allergens():
    assert len(set(BOOK.entry("allergens", "eu").facts["names"])) == BOOK.row("allergens", "eu", "count").printed == 14
    assert len(set(BOOK.entry("allergens", "us").facts["names"])) == BOOK.row("allergens", "us", "count").printed == 9


@pytest.mark.parametrize(
    ("keys", "eu", "us"),
    [
        ("plain-flour spelt-flour semolina wheat-starch", ("cereals containing gluten",), ("wheat",)),
        ("barley-flour rye-flour oat-flour", ("cereals containing gluten",), ()),
        ("rice-flour cornstarch tapioca-starch potato-starch buckwheat-flour", (), ()),
        ("soy-flour", ("soybeans",), ("soybeans",)),
        ("almond-flour", ("tree nuts",), ("tree nuts",)),
        ("lupin-flour", ("lupin",), ()),
    ],
)
def test_flours_name_the_allergens_of_either_law(keys, eu, us):
    assert {(PANTRY[key].allergens_eu, PANTRY[key].allergens_us) for key in keys.split()} == {(eu, us)}
