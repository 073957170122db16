from contextlib import suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st

from lumped.errors import RecipeError
from lumped.pantry import pantry
from lumped.pantry.amounts import mass_of, read_amount, weighed
from lumped.pantry.choosing import as_measures

FLOUR, SALT, WATER = (pantry()[key] for key in ("plain-flour", "table-salt", "tap-water"))


@pytest.mark.parametrize(
    ("text", "low", "high", "unit", "method"),
    [
        ("125 g", 125, 125, "g", None),
        ("1 1/2 cups", 1.5, 1.5, "cup", None),
        ("1½ cups", 1.5, 1.5, "cup", None),
        ("1 and 1/2 cups", 1.5, 1.5, "cup", None),
        ("1,5 Cups", 1.5, 1.5, "cup", None),
        ("1 ⁄ 2 cup", 0.5, 0.5, "cup", None),
        ("half a cup", 0.5, 0.5, "cup", None),
        ("a pinch", 1, 1, "dash", None),
        ("¼ tsp", 0.25, 0.25, "tsp", None),
        ("⅔ cup, sifted", 2 / 3, 2 / 3, "cup", "sifted"),
        ("1 cup scooped", 1, 1, "cup", "scooped"),
        ("1 heaped tsp", 1, 1, "tsp", "heaped"),
        ("2 level tablespoons", 2, 2, "tbsp", "levelled"),
        ("30 mL", 30, 30, "mL", None),
        ("0.25 L", 0.25, 0.25, "L", None),
        ("1 gō", 1, 1, "go", None),
        ("2 fl oz", 2, 2, "fl_oz", None),
        ("0-60 g", 0, 60, "g", None),
        ("0–60 g as needed", 0, 60, "g", None),
        ("as needed, 0 to 60 g", 0, 60, "g", None),
        ("to feel, up to 60 g", 0, 60, "g", None),
        ("10 g to 20 g", 10, 20, "g", None),
        ("1/2 to 1 cup", 0.5, 1, "cup", None),
    ],
)
def test_amounts_are_read_as_kitchens_write_them(text, low, high, unit, method):
    amount = read_amount(text)
    assert (amount.unit, amount.method) == (unit, method)
    assert (amount.low, amount.high) == pytest.approx((low, high))


def test_measures_that_are_added_weigh_the_sum():
    both = mass_of("1 cup + 2 tbsp", WATER, "us")
    cup, spoons = mass_of("1 cup", WATER, "us"), mass_of("2 tbsp", WATER, "us")
    assert both.mean == pytest.approx(cup.mean + spoons.mean)
    assert both.high - both.mean == pytest.approx(cup.high - cup.mean + spoons.high - spoons.mean)


@given(st.integers(1, 900).map(lambda mass: mass / 1e3), st.sampled_from(["us", "japanese", "metric", "imperial"]))
def test_what_a_kitchen_is_told_to_measure_can_be_read_again(mass, system):
    told = as_measures(mass, FLOUR, system)
    assert mass_of(told.words, FLOUR, system).mean == pytest.approx(told.mass.mean)


@pytest.mark.parametrize("text", ["1 cup +", "+ 1 cup", "1 cup + + 2 tbsp", "1 cup + lots", "1 cup +" * 20])
def test_a_sum_that_lacks_a_term_is_no_amount(text):
    with pytest.raises(RecipeError, match=r"is no amount that Lumped can read"):
        mass_of(text, FLOUR, "us")


def test_a_range_is_not_added_to_another_amount():
    with pytest.raises(RecipeError, match=r"“1 cup \+ 0–40 g” adds a range to another amount"):
        mass_of("1 cup + 0–40 g", FLOUR, "us")


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("lots", r"“lots” is no amount that Lumped can read"),
        ("", r"“” is no amount"),
        ("1/0 cup", r"“1/0 cup” is no amount"),
        ("1 cup salt", r"is no amount"),
        ("nan g", r"is no amount"),
        ("1 cup - 2 g", r"is no amount"),
        ("9" * 400 + " g", r"“9{20}…” is no amount"),
        ("5", r"“5” has no unit. Say what is counted, such as “5 g”"),
        ("10 s", r"“10 s” is given in s, which no kitchen scale, cup or spoon shows"),
        ("3 cm", r"“3 cm” is given in cm, which no kitchen scale, cup or spoon shows"),
        ("20 °C", r"given in °C, which"),
        ("5 %", r"given in %, which"),
        ("0 g", r"“0 g” is nothing at all"),
        ("up to 0 g", r"is nothing at all"),
        ("-5 g", r"“-5 g” is less than nothing"),
        ("−5 g", r"is less than nothing"),
        ("1000000 g", r"is 1,000 kg, more than any bowl holds; at most 100 kg"),
        ("1e6 g", r"is 1,000 kg, more than any bowl holds"),
        ("1000 cups", r"is 125 kg, more than any bowl holds"),
        ("60-10 g", r"runs from more to less"),
        ("10-10 g", r"runs from more to less"),
        ("as needed", r"does not say how much it may be"),
        ("60 g as needed", r"does not say how much it may be"),
        ("1 cup sifted, scooped", r"filled in two ways, scooped and sifted"),
        ("5 g heaped", r"is a weight, so it does not matter whether it is heaped"),
        (
            "1 gō",
            r"among US customary measures. It is one of the Japanese measures and holds 180 mL. Name those \(measures = "
            r'"japanese" in a recipe, --in japanese for a command\), or give the amount in mL or grams',
        ),
        ("1 go", r"one of the Japanese measures"),
        ("2 dessertspoons", r"It is one of the imperial measures and holds 10 mL"),
        ("6 m³", r"is given in m³, which no kitchen scale, cup or spoon shows"),
        ("6 m", r"is given in m, which no kitchen"),
        ("2 cupz", r"“cupz” is no unit that Lumped knows. Did you mean cup"),
        ("3 teaspons", r"“teaspons” is no unit that Lumped knows. Did you mean teaspoons"),
    ],
)
def test_what_is_no_amount_is_refused_in_plain_words(text, sentence):
    with pytest.raises(RecipeError, match=sentence):
        mass_of(text, FLOUR, "us")


def test_an_amount_as_needed_is_uniform_between_its_ends():
    needed = mass_of("0–60 g as needed", FLOUR, "us")
    assert (needed.low, needed.mean, needed.high) == pytest.approx((0, 0.03, 0.06))
    assert needed.spread == "uniform"


def test_a_range_of_cups_reaches_from_a_poor_half_to_a_heavy_whole():
    half, whole, either = (mass_of(text, FLOUR, "us") for text in ("1/2 cup", "1 cup", "1/2 to 1 cup"))
    assert (either.low, either.high, either.spread) == (half.low, whole.high, "uniform")


def test_a_method_in_the_words_goes_before_the_one_that_is_usual():
    assert mass_of("1 cup sifted", FLOUR, "us", "scooped") == mass_of("1 cup", FLOUR, "us", "sifted")


def test_a_scale_is_kept_to_two_per_cent_and_at_least_half_a_gram():
    assert (weighed(1.0).low, weighed(1.0).high) == pytest.approx((0.98, 1.02))
    assert (weighed(0.01).low, weighed(0.01).high) == pytest.approx((0.0095, 0.0105))


@given(st.text(max_size=30))
def test_any_rubbish_is_an_amount_or_a_sentence(text):
    with suppress(RecipeError):  # any other failure is a slip of ours
        assert 0 < mass_of(text, FLOUR, "us").high <= 200


@given(st.floats(0.1, 900), st.sampled_from(["g", "mL", "tsp", "oz"]))
def test_twice_the_amount_is_twice_the_mass(number, unit):
    one, two = (mass_of(f"{number * times:.6f} {unit}", SALT, "metric").mean for times in (1, 2))
    assert two == pytest.approx(2 * one, rel=1e-4)  # six decimals of a tenth
