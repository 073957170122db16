import pickle

import pytest

from lumped.errors import RecipeError
from lumped.pantry import pantry
from lumped.pantry.measures import FILLINGS, kitchen, kitchens, packs, weight_of, weight_of_volume
from lumped.quantities import Status, Value

FLOUR, SALT, WATER = (pantry()[key] for key in ("plain-flour", "table-salt", "tap-water"))


def test_an_australian_tablespoon_holds_a_third_more_than_a_metric_one():
    ours, theirs = (weight_of("tbsp", SALT, system).mean for system in ("australian", "metric"))
    assert ours / theirs == pytest.approx(4 / 3)


@pytest.mark.parametrize("system", kitchens())
def test_every_scoop_of_a_drawer_has_a_volume_and_the_largest_comes_first(system):
    place = kitchen(system)
    held = [float(scoop.share) * place.volumes[scoop.measure].mean for scoop in place.scoops]
    assert place.scoops[0].share == 1
    assert held[0] == max(held)


def test_scooped_flour_weighs_more_than_spooned_and_sifted_less_and_the_ways_overlap():
    sifted, spooned, scooped = (weight_of("cup", FLOUR, "us", way) for way in ("sifted", "spooned", "scooped"))
    assert sifted.mean < spooned.mean < scooped.mean
    assert scooped.low < spooned.high
    assert sifted.high > spooned.low
    assert 0.140 <= scooped.mean <= 0.150  # common practice of bakers, from memory


def test_not_knowing_how_a_cup_was_filled_is_wider_than_knowing():
    unsaid, said = weight_of("cup", FLOUR, "us"), weight_of("cup", FLOUR, "us", "spooned")
    assert said.high - said.low < unsaid.high - unsaid.low
    assert said.mean == pytest.approx(unsaid.mean)
    assert unsaid.high >= weight_of("cup", FLOUR, "us", "scooped").mean


def test_salt_does_not_pack():
    ways = [weight_of("cup", SALT, "us", way).mean for way in ("spooned", "scooped", "sifted", "packed", "levelled")]
    assert ways == pytest.approx([0.292] * 5)


@pytest.mark.parametrize("way", ["sifted", "packed", "scooped", "spooned"])
def test_a_way_that_grains_do_not_know_makes_them_no_surer(way):
    unsaid, said = weight_of("cup", SALT, "us"), weight_of("cup", SALT, "us", way)
    assert (said.low, said.mean, said.high) == (unsaid.low, unsaid.mean, unsaid.high)
    assert not packs(SALT)
    assert packs(FLOUR)


@pytest.mark.parametrize("key", pantry())
def test_each_ingredient_can_be_filled_in_each_way_or_is_a_liquid(key):
    for method in FILLINGS:
        try:
            heavy = weight_of("cup", pantry()[key], "metric", method)
        except RecipeError as problem:
            assert problem.code == "filling-liquid", str(problem)  # noqa: PT017
            assert pantry()[key].density is not None
        else:
            assert 0 < heavy.low < heavy.mean < heavy.high


@pytest.mark.parametrize("method", FILLINGS)
def test_every_way_of_filling_encloses_its_mean(method):
    heavy = weight_of("cup", FLOUR, "metric", method)
    assert 0 < heavy.low < heavy.mean < heavy.high


def test_a_pinch_of_what_no_table_weighs_by_the_pinch_is_known_to_a_factor_of_two():
    pinch = weight_of("dash", pantry()["baking-soda"], "us")
    assert pinch.high / pinch.mean >= 2
    assert pinch.mean / pinch.low >= 2


def test_a_liquid_that_only_has_a_density_is_weighed_by_it():
    bare = pickle.loads(pickle.dumps(WATER))
    bare = type(bare)(key="x", name="brine", composition={}, moisture=WATER.moisture, minerals=WATER.minerals,
                      density=Value.exact(1200.0, "kg/m³"))  # fmt: skip
    assert weight_of("cup", bare, "metric").mean == pytest.approx(0.3)
    assert weight_of_volume(10e-6, bare).mean == pytest.approx(0.012)


@pytest.mark.parametrize(
    ("attempt", "sentence"),
    [
        (lambda: kitchen("martian"), r"no martian measures here. Choose one of: us, "),
        (lambda: kitchen("handling"), r"no handling measures here"),
        (lambda: weight_of("dessertspoon", SALT, "us"), r"no such measure among US customary measures"),
        (lambda: weight_of("cup", SALT, "us", "thrown"), r"thrown is no way of filling.*spooned, scooped"),
        (lambda: weight_of("cup", WATER, "us", "heaped"), r"tap water is a liquid and can't be heaped"),
        (lambda: weight_of("cup", WATER, "us", "sifted"), r"tap water is a liquid and can't be sifted"),
    ],
)
def test_what_no_kitchen_has_is_refused_in_plain_words(attempt, sentence):
    with pytest.raises(RecipeError, match=sentence):
        attempt()


def test_an_ingredient_that_nobody_weighed_by_the_cup_is_refused():
    bare = type(SALT)(key="x", name="dust", composition={}, moisture=SALT.moisture, minerals=SALT.minerals)
    with pytest.raises(RecipeError, match=r"does not know what that measure of dust weighs"):
        weight_of("cup", bare, "us")


@pytest.mark.parametrize(("measure", "system", "heap"), [("tsp", "us", 1.75), ("tbsp", "australian", 1.75),
                                                         ("dessertspoon", "imperial", 1.75), ("cup", "us", 1.33),
                                                         ("cup", "japanese", 1.33), ("go", "japanese", 1.33)])  # fmt: skip
@pytest.mark.parametrize("key", ["plain-flour", "table-salt", "baking-soda"])
def test_a_heap_is_more_of_a_spoon_than_of_a_cup(measure, system, heap, key):
    ingredient = pantry()[key]
    level, heaped = (weight_of(measure, ingredient, system, method) for method in (None, "heaped"))
    assert heaped.mean == pytest.approx(heap * level.mean)
    assert heaped.provenance.status is Status.FROM_MEMORY
