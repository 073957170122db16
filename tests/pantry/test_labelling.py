"""A label becomes an ingredient; what it does not say is assumed, with an interval, and said."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from lumped.chemistry.compounds import compound
from lumped.errors import InputError
from lumped.pantry import pantry
from lumped.pantry.label import Label, allergens_named
from lumped.pantry.labelling import labelled

FLOUR = Label(
    name="mill flour", like="plain-flour", kilojoules=1450, kilocalories=342, fat=1.1e-3, carbohydrate=71.3e-3,
    sugars=0.8e-3, fibre=3.0e-3, protein=10.2e-3, salt=0.02e-3, allergens=("wheat",), may_contain=("soya",),
)  # fmt: skip
SODIUM_IN_SALT = 22.990 / 58.44


def test_water_is_what_is_left_to_a_hundred_and_said():
    flour = labelled(FLOUR)
    known = 1.1 + 71.3 + 3.0 + 10.2  # of which fibre stands beside carbohydrate in Europe
    assert 100 * flour.composition["water"] == pytest.approx(100 - known, abs=0.8)  # less ash and salt
    assert flour.moisture.low < flour.moisture.mean - 0.01 < flour.moisture.mean + 0.01 < flour.moisture.high
    assert any("Water is not on the label" in each for each in flour.assumed)
    assert sum(flour.composition.values()) == pytest.approx(1, abs=1e-12)


def test_minerals_come_from_the_similar_ingredient_with_a_wider_interval():
    flour, like = labelled(FLOUR), pantry()["plain-flour"]
    salt = "potassium-dihydrogen-phosphate"
    assert flour.composition[salt] == pytest.approx(like.composition[salt], rel=0.02)
    assert flour.minerals.low < like.minerals.low < like.minerals.high < flour.minerals.high


def test_without_a_similar_ingredient_the_ash_is_known_to_a_factor_of_three():
    flour = labelled(replace(FLOUR, like=""))
    assert (flour.minerals.low, flour.minerals.high) == pytest.approx((0.3, 3.0))
    assert any("0.6 % ash taken (0.18 to 1.8 %)" in each for each in flour.assumed)
    assert flour.roles == ("body",)
    assert flour.weights == {}
    assert any("weigh it" in each for each in flour.assumed)


def test_european_fibre_stands_beside_carbohydrate_and_american_within():
    europe = labelled(FLOUR)
    america = labelled(replace(FLOUR, salt=None, sodium=8e-6, carbohydrate=74.3e-3))
    assert america.composition["starch"] == pytest.approx(europe.composition["starch"], rel=1e-3)
    assert america.composition["fibre"] == pytest.approx(europe.composition["fibre"], rel=1e-3)
    assert any("American" in each for each in america.assumed)
    assert any("European" in each for each in europe.assumed)


@pytest.mark.parametrize("figure", [{"salt": 99.8e-3}, {"sodium": 99.8e-3 / 2.5}])
def test_european_salt_is_two_and_a_half_times_sodium(figure):
    """Regulation (EU) 1169/2011, Annex I: salt = sodium × 2.5; true salt is 2.542 times its sodium."""
    salt = labelled(Label(name="our crystals", like="table-salt", allergens=(), **figure))
    assert salt.composition["sodium-chloride"] == pytest.approx(0.998 / 2.5 / SODIUM_IN_SALT, rel=0.02)
    assert salt.composition["sodium-chloride"] > 0.99


def test_the_sodium_of_soda_is_not_taken_for_salt():
    given = Label(name="white powder", sodium=27.3e-3, sodium_from="baking soda", allergens=())
    assert labelled(given).composition["sodium-hydrogen-carbonate"] == pytest.approx(27.3 / 27.37, rel=0.01)
    alike = labelled(replace(given, sodium_from=None, like="baking-soda"))
    assert "sodium-chloride" not in alike.composition
    assert any("sodium hydrogen carbonate" in each for each in alike.assumed)
    salt = labelled(replace(given, sodium_from=None))
    assert salt.composition["sodium-chloride"] == pytest.approx(27.3 / 100 / SODIUM_IN_SALT, rel=0.01)


def test_a_mixed_salt_keeps_the_potassium_of_the_similar_one():
    mixed = labelled(Label(name="heart salt", like="half-salt", salt=49e-3, allergens=()))
    assert mixed.composition["potassium-chloride"] == pytest.approx(0.495, rel=0.02)


def test_acids_of_a_juice_come_from_the_similar_juice():
    juice = labelled(Label(name="squeezed", like="lemon-juice", per="100 mL", carbohydrate=2.5e-3, sugars=2.0e-3,
                           protein=0.4e-3, fat=0.0, salt=0.0, allergens=()))  # fmt: skip
    assert juice.composition["citric-acid"] == pytest.approx(
        pantry()["lemon-juice"].composition["citric-acid"], rel=0.05
    )
    assert any("density is not on the label: 1.03 g/mL" in each for each in juice.assumed)


def test_syrup_by_the_hundred_millilitres_needs_its_density():
    """1.4 g/mL: 84 g sugars in 100 mL are 60 g in 100 g."""
    syrup = Label(name="tin syrup", per="100 mL", density=1400.0, carbohydrate=112e-3, sugars=84e-3, allergens=())
    found = labelled(syrup)
    assert found.composition["sucrose"] == pytest.approx(0.60, rel=1e-2)
    assert found.composition["water"] == pytest.approx(0.20, rel=0.05)
    assert found.weights["cup"]["levelled"].mean == pytest.approx(1.4 * 0.2365882, rel=1e-4)
    assert labelled(replace(syrup, like="golden-syrup")).composition["glucose"] > 0.1  # sugars as in that


@pytest.mark.parametrize(
    ("figures", "density", "tolerance"),
    [
        ({"fat": 92e-3}, 920, 0.005),  # an oil
        ({"carbohydrate": 112e-3, "sugars": 84e-3}, 1400, 0.02),  # a syrup
        ({"salt": 31.8e-3}, 1197, 0.03),  # brine of 26 %: 1197.2 kg/m³ at 20 °C (Poradnik fizykochemiczny 1974)
        ({"alcohol": 31.6e-3}, 951, 0.05),  # spirit of 40 %; alcohol and water shrink together
    ],
)
def test_a_density_worked_out_from_what_is_in_it_is_near_the_true_one(figures, density, tolerance):
    found = labelled(Label(name="tin", per="100 mL", allergens=(), **figures))
    assert found.density.mean == pytest.approx(density, rel=tolerance)
    assert found.density.low <= density <= found.density.high
    assert any("worked out from what is in it" in each for each in found.assumed)


def test_a_serving_gives_the_weight_of_a_cup():
    """30 g in a quarter of the label's cup of 240 mL are 118.3 g in a kitchen's cup of 236.6 mL."""
    flour = labelled(replace(FLOUR, serving=0.030, serving_measure="1/4 cup"))
    assert flour.weights["cup"]["spooned"].mean == pytest.approx(0.030 * 4 * 236.5882 / 240, rel=1e-6)
    spoons = labelled(replace(FLOUR, serving=0.016, serving_measure="2 Tbsp"))
    assert spoons.weights["tbsp"]["spooned"].mean == pytest.approx(0.008 * 236.5882 / 240, rel=1e-6)


def test_a_table_for_a_serving_is_read_by_its_weight():
    parts = dict.fromkeys(("fat", "carbohydrate", "sugars", "fibre", "protein", "salt"))
    served = replace(FLOUR, per="serving", serving=0.030, kilojoules=435, kilocalories=None,
                     **{key: 0.3 * getattr(FLOUR, key) for key in parts})  # fmt: skip
    assert labelled(served).composition == pytest.approx(labelled(FLOUR).composition)


def test_energy_that_does_not_fit_is_doubted_and_energy_that_fits_is_not():
    assert not any("energy" in each for each in labelled(FLOUR).assumed)
    odd = labelled(replace(FLOUR, kilojoules=900, kilocalories=215))
    assert any("energy, 900 kJ in 100 g, doesn't fit" in each for each in odd.assumed)


def test_unlikely_water_is_doubted():
    wet = labelled(replace(FLOUR, carbohydrate=40e-3, kilojoules=None, kilocalories=None))
    assert any("unlike plain wheat flour" in each for each in wet.assumed)


def test_allergens_are_understood_for_both_laws_and_never_guessed_silently():
    flour = labelled(FLOUR)
    assert (flour.allergens_eu, flour.allergens_us) == (("cereals containing gluten",), ("wheat",))
    assert flour.may_contain == ("soybeans",)
    silent = labelled(replace(FLOUR, allergens=None))
    assert silent.allergens_us == ("wheat",)
    assert any("Read the packet" in each for each in silent.assumed)
    assert labelled(replace(FLOUR, allergens=())).allergens_eu == ()
    assert allergens_named(("Rye", "almonds", "crustaceans"), "x") == (
        ("cereals containing gluten", "tree nuts", "crustaceans"),
        ("tree nuts", "crustacean shellfish"),
    )


@pytest.mark.parametrize(
    ("wrong", "sentence"),
    [
        ({"carbohydrate": 171e-3}, r"sums to 18\d\.\d g in 100 g.*for 100 g, 100 mL or a serving"),
        ({"sugars": 80e-3}, "more sugars than carbohydrate"),
        ({"sodium": 1e-3, "salt": 1e-3}, r"salt 1 g in 100 g, but the sodium stands for 2\.5 g"),
        ({"kilocalories": 500}, "1450 kJ are 347 kcal, not 500"),
        ({"per": "serving"}, "nobody says what a serving weighs"),
        ({"serving_measure": "one handful", "serving": 0.03}, "serving “one handful” can't be read"),
        ({"serving_measure": "0 cup", "serving": 0.03}, "serving “0 cup” can't be read"),
        ({"serving_measure": "1/0 cup", "serving": 0.03}, "serving “1/0 cup” can't be read"),
        ({"allergens": ("wheet",)}, "“wheet” is no allergen.*Did you mean: wheat"),
        ({"name": "Table Salt"}, r"already has an ingredient of that name \(table-salt\)"),
        ({"like": "plane-flour"}, r"Lumped knows no ingredient “plane-flour”.*plain-flour"),
    ],
)
def test_what_cannot_be_is_told(wrong, sentence):
    with pytest.raises(InputError, match=sentence):
        labelled(replace(FLOUR, **wrong))


def test_a_negative_or_endless_figure_is_refused_at_once():
    with pytest.raises(InputError, match=r"fat is -0\.001\. A label prints no such figure"):
        Label(name="odd", fat=-1e-3)
    with pytest.raises(InputError, match="fat is nan"):
        Label(name="odd", fat=float("nan"))


def test_a_label_without_figures_is_refused():
    with pytest.raises(InputError, match="gives no figure of what is in it"):
        labelled(Label(name="blank"))


@settings(max_examples=40, deadline=None)
@given(
    parts=st.lists(st.floats(0, 1), min_size=6, max_size=6).filter(lambda parts: sum(parts) > 1e-3),
    filled=st.floats(0.02, 1.0),
    like=st.sampled_from(["", "plain-flour", "table-salt", "honey", "lemon-juice", "self-raising-flour"]),
)
def test_whatever_a_label_says_the_compounds_sum_to_one_and_the_elements_close(parts, filled, like):
    fat, starch, sugars, fibre, protein, salt = (0.1 * filled * part / sum(parts) for part in parts)
    label = Label(name="any", like=like, fat=fat, carbohydrate=starch + sugars, sugars=sugars, fibre=fibre,
                  protein=protein, salt=salt, allergens=())  # fmt: skip
    found = _ingredient_unless_full(label)
    if found is None:
        return
    assert sum(found.composition.values()) == pytest.approx(1, abs=1e-12)
    assert min(found.composition.values()) >= 0
    assert found.moisture.low <= found.composition.get("water", 0.0) <= found.moisture.high
    sodium = sum(
        share * compound(key).ions["sodium"] * 22.990e-3 / compound(key).molar_mass
        for key, share in found.composition.items()
        if "sodium" in compound(key).ions
    )
    assert sodium == pytest.approx(10 * salt / 2.5, rel=0.04, abs=1e-9)  # up to the slack of three per cent


def _ingredient_unless_full(label):
    """The ingredient, or nothing where what the similar one adds has no room left."""
    try:
        return labelled(label)
    except InputError as problem:
        if problem.code != "label-sum":
            raise
        return None


def test_a_users_flour_makes_a_dough():
    shop = pantry().with_added(labelled(FLOUR))
    assert shop.find("Mill Flour").key == "mill-flour"
    assert shop.matrix(["mill-flour"]).sum() == pytest.approx(1, abs=1e-12)
