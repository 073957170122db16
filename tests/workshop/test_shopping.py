"""Whole packets: they hold enough, nothing is left below nothing, and more people never cost less."""

import re
from itertools import product
from math import prod
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as some
from tests.bowls import recipe_of

from lumped.app.making import shopping
from lumped.app.shopping_words import places, shop_rows, sum_words, used_words
from lumped.dough import read_recipe
from lumped.errors import InputError, RecipeError
from lumped.pantry import pantry, price, regions
from lumped.quantities import figure_text
from lumped.workshop import cost_of, make_dough, read_party, shopping_list
from lumped.workshop.cost import is_free
from lumped.workshop.packets import covering, packet_price
from lumped.workshop.shopping import SHELVES, needs_of

RECIPES = Path(__file__).parents[2] / "demo" / "recipes"
FILES = [RECIPES / "ropewalk-salt.toml", RECIPES / "ropewalk-sugar.toml"]
SALT, SUGAR = (read_recipe(path) for path in FILES)
SHOP = pantry()
PACKETS = some.lists(some.sampled_from([0.1, 0.25, 0.5, 0.737, 1.0, 1.36, 2.268]), min_size=1, max_size=3, unique=True)


@settings(max_examples=60, deadline=None)
@given(need=some.floats(0.001, 6.0), sizes=PACKETS, data=some.data(), little_over=some.booleans())
def test_no_other_packs_are_cheaper_or_leave_less(need, sizes, data, little_over):
    costs = [size * data.draw(some.floats(0.5, 3.0)) for size in sizes]
    counts = covering(need, sizes, costs, little_over=little_over)

    def held(chosen):
        return sum(count * size for count, size in zip(chosen, sizes, strict=True))

    def paid(chosen):
        return sum(count * cost for count, cost in zip(chosen, costs, strict=True))

    assert held(counts) >= need - 1e-6
    ranges = [range(int(need / size) + 2) for size in sizes]
    every = product(*ranges) if prod(map(len, ranges)) < 5000 else [counts]
    enough = [each for each in every if held(each) >= need]
    judged = held if little_over else paid
    assert all(judged(counts) <= judged(each) + 1e-6 for each in enough)


def test_great_needs_are_covered_without_trying_all():
    counts = covering(5000.0, [0.5, 1.0, 2.268], [0.6, 1.0, 2.0])
    assert 5000 <= 0.5 * counts[0] + counts[1] + 2.268 * counts[2] < 5000.5
    assert covering(0.0, [1.0], [1.0]) == (0,)


def test_each_doubling_of_a_pack_takes_its_share_off_the_price_of_a_kilogram():
    assert float(packet_price(4.0, 1.0, 2.0, 0.1)) == pytest.approx(4 * 2 * 0.9**2)
    assert float(packet_price(1.0, 1.0, 2.0)) == 2.0


AMOUNTS = some.dictionaries(some.sampled_from(sorted(SHOP)), some.floats(1, 5000), min_size=1, max_size=8)


@settings(max_examples=25, deadline=None)
@given(first=AMOUNTS, second=AMOUNTS, where=some.sampled_from(regions()), little_over=some.booleans(), data=some.data())
def test_what_is_bought_covers_what_is_needed_and_nothing_is_left_below_nothing(
    first, second, where, little_over, data
):
    recipes = [recipe_of(grams) for grams in (first, second)]
    have = {key: data.draw(some.floats(0, 3)) for key in list(first)[:2]}
    found = shopping_list(recipes, where, SHOP, have=have, little_over=little_over)
    assert {each.ingredient for each in found.lines} == set(first) | set(second)
    for each in found.lines:
        assert each.need * 1e3 == pytest.approx(first.get(each.ingredient, 0) + second.get(each.ingredient, 0))
        if is_free(each.ingredient, where) or price(each.ingredient, where) is None:
            assert each.packets == ()
            continue
        assert each.bought + each.have >= each.need - 1e-6
        assert each.over == pytest.approx(max(each.bought + each.have - each.need, 0.0))
    assert 0 <= found.total.low <= found.total.mean <= found.total.high


def test_what_is_added_by_feel_is_bought_at_its_most():
    (flour, *_) = SALT.portions
    assert flour.as_needed
    assert needs_of([SALT])["plain-flour"] == pytest.approx(flour.mass.mean + flour.as_needed[1])


@pytest.mark.parametrize("where", ["europe", "japan", "north-america"])
def test_the_sum_is_that_of_the_rows_as_they_are_printed(where):
    for people in ("1 of 9", "28 of 9", "200 of 9"):
        found = shopping(FILES, where, people=[people])
        rows = [row[-1] for _, lines in places(found) for row in shop_rows(lines)]
        total = re.search(r"about ([\d.,]+) ", sum_words(found))[1]
        assert float(total.replace(",", "")) == pytest.approx(sum(float(row.replace(",", "")) for row in rows if row))
        assert found.total.low < found.total.mean < found.total.high


def test_more_people_never_cost_less():
    spent, used = [], []
    for count in (1, 12, 28, 200):
        made = make_dough(SALT, SHOP, parties=[read_party(f"{count} of 9")], where="europe")
        used.append(made.cost.whole.mean)
        spent.append(shopping(FILES, "europe", people=[f"{count} of 9"]).total.mean)
        assert made.cost.whole.mean < spent[-1]  # whole packets cost more than what is used up
    assert spent == sorted(spent)
    assert used == sorted(used)


def test_recipes_of_one_kind_share_what_hands_want():
    one = shopping(FILES[:1], "europe", people=["28 of 9 in pairs"]).doughs
    two = shopping([FILES[0], FILES[0]], "europe", people=["28 of 9 in pairs"]).doughs
    assert [mass for _, mass in two] == pytest.approx([one[0][1] / 2] * 2)


def test_a_price_that_nobody_knows_is_named_and_not_in_the_sum():
    rainy = recipe_of({"plain-flour": 100, "rain-water": 200})
    made = make_dough(rainy, SHOP, where="europe")
    assert made.cost.unpriced == ("rain water",)
    found = shopping_list([rainy], "europe", SHOP)
    far, unpriced = found.hints
    assert "lumped swap RECIPE --without rain-water --region europe" in far
    assert "Get 200 g at least; it is not in the sum" in unpriced


def test_what_shops_there_lack_comes_with_the_swap_that_replaces_it():
    found = shopping(FILES, "japan", people=["28 of 9 in pairs"])
    (hint,) = found.hints
    assert f"lumped swap {FILES[0]} --without cream-of-tartar --region japan" in hint
    assert not shopping(FILES[:1], "north-america").hints


def test_a_large_pack_is_taken_where_it_is_cheaper_and_small_ones_where_less_is_left():
    flour = recipe_of({"plain-flour": 4000})
    cheap = shopping_list([flour], "north-america", SHOP).lines[0]
    spare = shopping_list([flour], "north-america", SHOP, little_over=True).lines[0]
    assert cheap.cost.mean <= spare.cost.mean
    assert spare.over <= cheap.over
    assert {size for size, _ in cheap.packets} <= {0.907, 2.268}  # 2 and 5 pounds


def test_every_ingredient_has_a_shelf():
    assert {SHELVES[each.roles[0]] for each in SHOP.values()} == set(SHELVES.values())


def test_a_cost_is_that_of_what_is_used():
    made = make_dough(recipe_of({"table-salt": 1000, "plain-flour": 100, "tap-water": 200}), SHOP, where="europe")
    prices = {key: price(key, "europe").per_mass.mean for key in ("table-salt", "plain-flour", "tap-water")}
    by_hand = prices["table-salt"] + 0.1 * prices["plain-flour"] + 0.2 * prices["tap-water"]
    assert cost_of(made.batches, "europe", SHOP).whole.mean == pytest.approx(by_hand, rel=0.05)  # median of a sum


def test_a_list_is_shown_as_json_and_as_a_frame():
    found = shopping(FILES, "europe", masses=["1 kg"], have=["table-salt: 1 kg"])
    frame = found.frame()
    assert set(frame["ingredient"]) == {*SALT.ingredients, *SUGAR.ingredients}
    salt = frame[frame["ingredient"] == "table-salt"].iloc[0]
    assert (salt["packets"], salt["have_kg"]) == (0, pytest.approx(1.0))
    assert found.as_dict()["money"] == "EUR"


@pytest.mark.parametrize(
    ("more", "failure", "says"),
    [
        ({"region": None}, InputError, "A shopping list needs a region"),
        ({"region": "mars"}, InputError, "There is no region “mars”"),
        ({"people": ["3 of 9"], "masses": ["1 kg"]}, InputError, "Say for whom .* or how much .*, not both"),
        ({"masses": ["1 kg"] * 3}, InputError, "There are 2 recipes and 3 masses"),
        ({"have": ["salt"]}, InputError, "“salt” does not say what is there already"),
        ({"have": ["salt: much"]}, RecipeError, "“much” is no amount that Lumped can read"),
        ({"have": ["mortar: 1 kg"]}, RecipeError, "knows no ingredient “mortar”"),
    ],
)
def test_what_cannot_be_bought_is_refused_in_words(more, failure, says):
    with pytest.raises(failure, match=says):
        shopping(FILES, **({"region": "europe"} | more))


def of_oils(*keys):
    """A dough for each oil, which takes 30 g of it."""
    return [recipe_of({"plain-flour": 125, "tap-water": 120, key: 30}) for key in keys]


def test_doughs_that_each_ask_another_oil_are_told_of_one_for_all():
    found = shopping_list(of_oils("vegetable-oil", "sunflower-oil"), "europe", SHOP)
    said = (
        "vegetable oil, sunflower oil: one oil would do for all these doughs: sunflower oil in all of them (60 g) saves"
    )
    assert found.one_oil.startswith(said)
    [bottle] = [each for each in found.lines if each.ingredient == "vegetable-oil"]  # one of sunflower oil is enough
    assert f"saves about {figure_text(bottle.cost.mean, 'EUR')} EUR" in found.one_oil
    assert used_words(found, little_over=False)[0] == found.one_oil


@pytest.mark.parametrize("keys", [("sunflower-oil",), ("sunflower-oil", "sunflower-oil"), ("olive-oil", "baby-oil")])
def test_no_oil_is_offered_where_nothing_is_saved_or_oils_are_not_alike(keys):
    assert shopping_list(of_oils(*keys), "europe", SHOP).one_oil == ""


@pytest.mark.parametrize("keys", [("vegetable-oil", "olive-oil"), ("olive-oil", "vegetable-oil")])
def test_an_oil_with_traces_is_not_offered_in_the_place_of_one_without(keys):
    """Vegetable oil may be soya: it is never the one that is kept, however cheap."""
    assert "olive oil in all of them" in shopping_list(of_oils(*keys), "europe", SHOP).one_oil
