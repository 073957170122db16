"""Every ingredient is complete, closes its mass and charge, and is found by each of its names and by no other's."""

import unicodedata
from collections import Counter

import pytest

from lumped.chemistry.compounds import compound
from lumped.dough.safety import cautions_of
from lumped.errors import RecipeError
from lumped.pantry import pantry
from lumped.pantry.ingredient import METHODS, ROLES
from lumped.pantry.measures import weight_of
from lumped.quantities import Status
from lumped.reference import handbook
from lumped.texts import has
from lumped.texts.folding import plain_word

PANTRY = pantry()
BOOK = handbook()
EU, US = (set(BOOK.entry("allergens", region).facts["names"]) for region in ("eu", "us"))
CHARGES = {  # of the ions that an ingredient's compounds give, by the periodic table
    "sodium": 1, "potassium": 1, "magnesium": 2, "calcium": 2, "aluminium": 3, "chloride": -1, "sulphate": -2,
}  # fmt: skip
PROTONS = {  # hydrogens that the whole acid can give off
    "citric": 3, "tartaric": 2, "acetic": 1, "ascorbic": 1, "lactic": 1, "benzoic": 1, "sorbic": 1, "carbonic": 2,
    "phosphoric": 3, "boric": 1,
}  # fmt: skip
each_ingredient = pytest.mark.parametrize("ingredient", PANTRY.values(), ids=list(PANTRY))


def test_there_are_at_least_sixty_ingredients():
    assert len(PANTRY) >= 60


@each_ingredient
def test_its_compounds_sum_to_one_and_none_is_negative(ingredient):
    assert sum(ingredient.composition.values()) == pytest.approx(1, abs=1e-12)
    assert min(ingredient.composition.values()) >= 0
    assert ingredient.moisture.low <= ingredient.composition.get("water", 0) <= ingredient.moisture.high


@each_ingredient
def test_metals_never_outweigh_the_acids_and_anions_that_they_are_salts_of(ingredient):
    """A compound of strong ions alone is neutral; where acids take part, hydrogen closes the charge."""
    for key in ingredient.composition:
        parts = compound(key)
        left = sum(CHARGES[ion] * count for ion, count in parts.ions.items())
        left += 3 * parts.acids.get("aluminium", 0)  # which gives hydrogen of the water round it away
        room = sum(PROTONS[acid] * count for acid, count in parts.acids.items() if acid != "aluminium")
        assert 0 <= left <= room


@each_ingredient
def test_it_has_a_name_in_each_language_a_role_and_a_weight_of_a_measure(ingredient):
    assert set(ingredient.names) == {"en", "fr", "es", "ja"}
    assert all(name.strip() for name in ingredient.names.values())
    assert any(
        unicodedata.name(letter).startswith(("CJK", "HIRAGANA", "KATAKANA")) for letter in ingredient.names["ja"]
    )
    assert ingredient.roles
    assert set(ingredient.roles) <= set(ROLES)
    assert ingredient.weights
    assert {method for by_method in ingredient.weights.values() for method in by_method} <= set(METHODS)
    assert all(ingredient.usual_method in by_method for by_method in ingredient.weights.values())


@each_ingredient
def test_a_liquid_has_a_density_and_it_agrees_with_its_cup(ingredient):
    if "liquid" in ingredient.roles or (ingredient.usual_method == "poured" and "softener" in ingredient.roles):
        assert ingredient.density is not None
    if ingredient.density is not None and "cup" in ingredient.weights:
        by_cup = ingredient.weights["cup"][ingredient.usual_method].mean / 236.588e-6
        assert by_cup == pytest.approx(ingredient.density.mean, rel=0.03)  # cups are rounded to a gram or two


@each_ingredient
def test_a_salt_or_crystal_sugar_says_how_large_its_grains_are(ingredient):
    soluble = sum(share for key, share in ingredient.composition.items() if compound(key).dissolves)
    if soluble > 0.9 and ingredient.density is None:
        assert ingredient.grain is not None


@each_ingredient
def test_spoons_and_cup_of_it_agree(ingredient):
    per_cup = {"cup": 1, "tbsp": 16, "tsp": 48}
    cups = {
        measure: per_cup[measure] * by_method[ingredient.usual_method].mean
        for measure, by_method in ingredient.weights.items()
        if measure in per_cup
    }
    assert max(cups.values()) <= 1.16 * min(
        cups.values()
    )  # a heaped or a round spoon: figures of tables differ by that


@each_ingredient
def test_its_allergens_are_spelt_as_in_the_lists(ingredient):
    assert set(ingredient.allergens_eu) <= EU
    assert set(ingredient.allergens_us) <= US
    assert set(ingredient.may_contain) <= EU | US
    assert not set(ingredient.may_contain) & {*ingredient.allergens_eu, *ingredient.allergens_us}
    assert set(ingredient.contains) <= {"gluten", "corn", "animal", "alcohol"}


@each_ingredient
def test_its_cautions_and_remarks_have_sentences(ingredient):
    assert [each.key for each in cautions_of(ingredient)] == list(ingredient.cautions)
    assert all(has(f"safety-remark-{key}") for key in ingredient.notes)


@each_ingredient
def test_every_figure_of_it_says_what_it_is_worth(ingredient):
    for quantity, origin in ingredient.origins.items():
        row = BOOK.row("ingredients", ingredient.key, quantity)
        assert origin.status in (Status.PUBLISHED, Status.COMPUTED, Status.COMMON_PRACTICE, Status.FROM_MEMORY)
        assert (origin.status is Status.PUBLISHED) <= bool(row.page)
    assert BOOK.entry("names", ingredient.key).facts["status"] == "from memory"


def test_no_word_finds_two_ingredients():
    words = Counter(word for each in PANTRY.values() for word in set(map(plain_word, each.called)))
    assert [word for word, count in words.items() if count > 1] == []


@pytest.mark.parametrize(
    ("word", "key"),
    [
        ("Cornflour", "cornstarch"),
        ("corn flour", "maize-flour"),  # in America
        ("片栗粉", "potato-starch"),
        ("FÉCULE DE MAÏS", "cornstarch"),
        ("bicarb", "baking-soda"),
        ("kosher salt", "flaky-salt"),
        ("plain flour", "plain-flour"),
        ("creme de tartre", "cream-of-tartar"),
        ("Crème  de Tartre", "cream-of-tartar"),
        ("cr\u0065\u0300me-de-tartre", "cream-of-tartar"),  # the accent as a letter of its own
        ("farine d’avoine", "oat-flour"),
        ("生ミョウバン", "alum"),
        ("焼きミョウバン", "burnt-alum"),  # nearly free of water: twice the aluminium
        ("ﾍﾞｰｷﾝｸﾞﾊﾟｳﾀﾞｰ", "baking-powder"),
    ],
)
def test_an_ingredient_is_found_by_any_of_its_names(word, key):
    assert PANTRY.find(word).key == key == PANTRY.key_of(word)
    assert PANTRY.key_of(word + " of nobody") is None


EVERYDAY = {
    "table-salt": "salt sel sal 塩", "plain-flour": "flour farine harina 小麦粉 薄力粉",
    "granulated-sugar": "sugar sucre azúcar 砂糖", "tap-water": "water eau agua 水", "vegetable-oil": "oil huile aceite 油",
    "white-vinegar": "vinegar vinaigre vinagre 酢", "lemon-juice": "レモン汁",
}  # fmt: skip


@pytest.mark.parametrize("key", EVERYDAY)
def test_an_everyday_word_means_the_everyday_ingredient_and_is_told(key):
    for word in EVERYDAY[key].split():
        assert PANTRY.key_of(word) == key
        assert PANTRY.taken_as(word) == f"“{word}” is taken as {PANTRY[key].name}."
    assert PANTRY.taken_as(key) == PANTRY.taken_as(PANTRY[key].name) == ""


def test_salts_differ_in_weight_and_grain():
    cups = {key: PANTRY[key].weights["cup"]["poured"].mean for key in ("table-salt", "coarse-salt", "flaky-salt")}
    assert cups["table-salt"] > cups["coarse-salt"] > cups["flaky-salt"]
    assert PANTRY["table-salt"].grain.mean < PANTRY["coarse-salt"].grain.mean < PANTRY["rock-salt"].grain.mean


def test_scooping_weighs_more_and_sifting_less():
    for ingredient in PANTRY.values():
        for by_method in ingredient.weights.values():
            weights = {method: value.mean for method, value in by_method.items()}
            loose, usual, packed = (weights.get(method) for method in ("sifted", "spooned", "scooped"))
            assert (loose or 0) < (usual or packed or 1)
            assert (usual or 0) < (packed or 1)


def test_grains_are_as_large_as_the_table_of_grains_says():
    shared = [key for key in BOOK.keys("grains") if key in PANTRY]
    assert len(shared) > 10
    for key in shared:
        table = BOOK.value("grains", key, "diameter")
        assert (PANTRY[key].grain.low, PANTRY[key].grain.high) == (table.low, table.high)


def test_a_cup_whose_filling_the_table_leaves_open_is_worth_what_the_filling_is():
    """The figure is printed, but that it is a spooned, poured or pressed cup stands nowhere."""
    for key in BOOK.keys("ingredients"):
        entry, each = BOOK.entry("ingredients", key), PANTRY[key]
        unsaid = [name for name, row in entry.rows.items() if "does not say how it was filled" in row.note]
        assert unsaid == entry.facts.get("filling_unsaid", []), key
        for quantity in unsaid:
            method = quantity.removeprefix("g_per_cup").strip("_") or None
            known = each.weights["cup"][method or each.usual_method]
            assert known.provenance.status is weight_of("cup", each, "us", method).provenance.status
            assert known.provenance.status is Status.FROM_MEMORY
            assert known.provenance.sources == ("usda-sr",)


MISSPELT = {
    "flor": "plain-flour", "plane flour": "plain-flour", "rice flower": "rice-flour",
    "tabel salt": "table-salt", "tabel": "table-salt", "suger": "granulated-sugar", "hony": "honey",
    "cream of tarter": "cream-of-tartar", "creme of tartar": "cream-of-tartar", "cornstarsh": "cornstarch",
    "corn starch": "cornstarch", "kornstarch": "cornstarch", "viniger": "white-vinegar", "lemmon juice": "lemon-juice",
    "glicerine": "glycerine", "vegtable oil": "vegetable-oil", "bakeing soda": "baking-soda",
    "xantan gum": "xanthan-gum", "psylium husk": "psyllium-husk", "citrik acid": "citric-acid",
    "distiled water": "distilled-water", "oliv oil": "olive-oil", "potato strach": "potato-starch",
    "molases": "molasses", "epsom": "epsom-salt", "chickpea flor": "chickpea-flour", "farine de ble": "plain-flour",
    "aluum": "alum",
}  # fmt: skip


@pytest.mark.parametrize(("word", "meant"), MISSPELT.items())
def test_a_word_with_a_slip_in_it_is_answered_with_what_was_meant(word, meant):
    assert meant in PANTRY.near(word)


@pytest.mark.parametrize(
    ("word", "meant"),
    [("lime", ["lime-juice"]), ("lemon", ["lemon-juice", "bottled-lemon-juice", "citric-acid"]),
     ("ミョウバン", ["alum", "burnt-alum"]), ("tartar", ["cream-of-tartar"])],
)  # fmt: skip  # citric acid is also called lemon salt
def test_a_word_of_a_name_comes_before_words_that_only_look_like_it(word, meant):
    assert PANTRY.near(word) == meant


@pytest.mark.parametrize(
    "word",
    ["moonlight", "xyz", "stardust", "gravel", "cement", "glitter", "chair", "paint", "concrete", "paper", "glue",
     "school", "monday", "plastic", "clay", "sand", "sawdust", "wool", "ink", "bacon", "cheese", "tomato", "banana",
     "chocolate", "carrot", "dog", "q", "teaspoon", "", "sealing wax", "blue tack"],
)  # fmt: skip
def test_another_word_is_answered_with_no_name_at_all(word):
    assert PANTRY.near(word) == []
    with pytest.raises(RecipeError, match=r"No name here looks like it: all of them stand in the pantry\.$"):
        PANTRY.find(word)
