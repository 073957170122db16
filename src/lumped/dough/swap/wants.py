"""What a person wants of another recipe: what must not be in it, for whom, where it is bought, what it should do.

A word is an ingredient or a class of them; a class is a question to each ingredient's composition and label, so that
ingredients that a user added answer it too. Each allergen of the European and the American list is a class.
"""

from collections.abc import Callable, Iterable, Mapping
from contextlib import suppress
from dataclasses import dataclass
from difflib import get_close_matches
from types import MappingProxyType

from lumped.dough.finding import found_in, matches_in
from lumped.dough.recipe import Recipe
from lumped.dough.safety import DIETS, diet_named, suits
from lumped.dough.safety.allergens import has_gluten
from lumped.dough.safety.needs import borne, listed_allergens, need_named
from lumped.errors import InputError, RecipeError
from lumped.pantry import Ingredient, Pantry, region, sold
from lumped.texts import say
from lumped.texts.folding import plain_word

__all__ = ["CLASSES", "TARGETS", "Wish", "is_of", "is_water", "read_wish"]

STOVE = "stove"
TARGETS = ("cheapest", "saltless", "keeps-longer", "carries-better", "blocks-better")
_SUGARS = ("sucrose", "glucose", "fructose", "maltose")
_ACIDS = ("citric-acid", "tartaric-acid", "acetic-acid", "ascorbic-acid", "lactic-acid", "potassium-hydrogen-tartrate")
_OF_NEEDS = {"coeliac": "gluten", "nuts": "nuts", "corn": "corn"}  # classes by the need that they are for
_OTHER_WORDS = {"oil": "fat", "oils": "fat", "fats": "fat", "acids": "acid", "sugars": "sugar", "salts": "salt",
                "aluminium": "alum", "maize": "corn", "nut": "nuts", "coeliac": "gluten", "celiac": "gluten",
                "soy": "soybeans", "soya": "soybeans", "egg": "eggs", "dairy": "milk"}  # fmt: skip
Question = Callable[[Ingredient], bool]


def _holds(least: float, *compounds: str) -> Question:
    return lambda each: sum(each.composition.get(key, 0.0) for key in compounds) > least


CLASSES: Mapping[str, Question] = MappingProxyType(
    {
        "acid": lambda each: "acid" in each.roles or _holds(0.01, *_ACIDS)(each),
        "gluten": has_gluten,
        "wheat": lambda each: "wheat" in each.allergens_us,
        "alum": _holds(0.0, "alum"),
        "sugar": _holds(0.1, *_SUGARS),
        "fat": _holds(0.3, "fat"),
        "salt": _holds(0.1, "sodium-chloride"),
        "corn": lambda each: "corn" in each.contains,
        "nuts": lambda each: bool({"tree nuts", "peanuts"} & {*each.allergens_eu, *each.allergens_us}),
        "glycerine": _holds(0.1, "glycerol"),
    }
)
"""Classes of ingredients, each with the question that tells whether one belongs to it."""


def is_of(word: str, ingredient: Ingredient) -> bool:
    """Tell whether an ingredient belongs to a class, or contains an allergen.

    Parameters
    ----------
    word : str
        One of `CLASSES`, or one of `safety.needs.known_needs`.
    ingredient : Ingredient
        What is asked about.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> is_of("acid", pantry()["lemon-juice"]), is_of("soybeans", pantry()["soy-flour"])
    (True, True)
    """
    return CLASSES[word](ingredient) if word in CLASSES else borne(word, ingredient) == "holds"


def is_water(ingredient: Ingredient) -> bool:
    """Tell whether an ingredient is water, from whatever tap or bottle.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> is_water(pantry()["tap-water"]), is_water(pantry()["white-vinegar"])
    (True, False)
    """
    return ingredient.composition.get("water", 0.0) > 0.99


@dataclass(frozen=True, slots=True, kw_only=True)
class Wish:
    """What is wanted.

    Parameters
    ----------
    ingredients : tuple of str
        Keys of ingredients that must not be in it.
    classes : tuple of str
        Classes that must not be in it; see `is_of`.
    diets : tuple of str
        Diets that it must suit; see `safety.DIETS`.
    region : str or None
        Key of the region where it is bought.
    target : str or None
        What it should do better; see `TARGETS`.
    stove : bool
        Whether there is a stove.
    """

    ingredients: tuple[str, ...] = ()
    classes: tuple[str, ...] = ()
    diets: tuple[str, ...] = ()
    region: str | None = None
    target: str | None = None
    stove: bool = True

    def allows(self, key: str, shop: Pantry) -> bool:
        """Tell whether an ingredient may be in it.

        Examples
        --------
        >>> from lumped.pantry import pantry
        >>> Wish(classes=("gluten",)).allows("spelt-flour", pantry())
        False
        """
        if key in self.ingredients or any(is_of(each, shop[key]) for each in self.classes):
            return False
        if any(not suits({key: 1.0}, shop, diet).fits for diet in self.diets):
            return False
        return self.region is None or key not in shop or sold(key, self.region).trouble != "a search"


def read_wish(
    recipe: Recipe,
    shop: Pantry,
    *,
    without: Iterable[str] = (),
    diets: Iterable[str] = (),
    where: str | None = None,
    target: str | None = None,
) -> Wish:
    """Understand what is wanted, in a person's words.

    Parameters
    ----------
    recipe : Recipe
        The recipe that is to be changed.
    shop : Pantry
        What the ingredients are.
    without : iterable of str
        Ingredients, classes, allergens, or "stove".
    diets : iterable of str
        "gluten-free", "vegan", "no-nuts", "no-corn", or a child's need in the words of `safety.need_named`; what no
        diet answers must not be in it, as if it stood in `without`.
    where : str, optional
        Key of the region where it is bought.
    target : str, optional
        One of `TARGETS`.

    Returns
    -------
    Wish

    Raises
    ------
    InputError, RecipeError
        If a word is not known, an ingredient is not in the recipe, or what is wanted contradicts itself.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> from lumped.dough import Portion
    >>> from lumped.quantities import Value
    >>> flour = Portion(ingredient="plain-flour", written="1 g", mass=Value.exact(1e-3, "kg"))
    >>> recipe = Recipe(title="", kind="insulating", portions=(flour,), cooked="not cooked")
    >>> read_wish(recipe, pantry(), without=["flour", "oil"]).classes
    ('fat',)
    """
    ingredients, classes = [], []
    stove = True
    for word in without:
        asked = word.strip().casefold()
        asked = _OTHER_WORDS.get(asked, asked)
        if asked == STOVE:
            stove = False
        elif asked in say("swap-read-water").split(", "):
            raise InputError("swap-water", title=recipe.title, named=_water_in(recipe, shop))
        elif asked in CLASSES or asked in listed_allergens():
            classes.append(asked)
        elif matches_in(recipe, word, shop):
            ingredients.append(found_in(recipe, word, shop))
        else:
            classes.append(_need(word, recipe, shop))
    if where is not None:
        region(where)
    _refuse_target(target, recipe, where)
    asked_for = [diet_named(each) for each in diets]
    classes += [each for each in asked_for if each not in DIETS]
    return Wish(
        ingredients=tuple(dict.fromkeys(ingredients)), classes=tuple(dict.fromkeys(classes)),
        diets=tuple(dict.fromkeys(each for each in asked_for if each in DIETS)), region=where, target=target,
        stove=stove,
    )  # fmt: skip


def _water_in(recipe: Recipe, shop: Pantry) -> str:
    """Name the water of a recipe, or a kind of water that one may do without."""
    return next((key for key in recipe.ingredients if is_water(shop[key])), "tap-water")


def _need(word: str, recipe: Recipe, shop: Pantry) -> str:
    """Understand a word that is no ingredient of the recipe: an allergen under another name, or a mistake."""
    if shop.key_of(word) is not None:
        raise RecipeError("swap-not-in-recipe", word=word, title=recipe.title, there=", ".join(recipe.ingredients))
    with suppress(InputError):
        named = need_named(word)
        if named in _OF_NEEDS or named in listed_allergens():
            return _OF_NEEDS.get(named, named)
    known = [*CLASSES, STOVE, *listed_allergens()]
    near = get_close_matches(plain_word(word), known, n=2, cutoff=0.6) or shop.near(word) or list(CLASSES)
    raise InputError("swap-no-word", word=word, near=", ".join(near))


def _refuse_target(target: str | None, recipe: Recipe, where: str | None) -> None:
    if target is None:
        return
    if target not in TARGETS:
        left_out = target.removeprefix("no-").removeprefix("without-")
        if left_out in (*CLASSES, STOVE):
            raise InputError("swap-target-without", word=target, without=left_out)
        near = get_close_matches(target, TARGETS, n=2, cutoff=0.4) or TARGETS
        raise InputError("swap-no-target", word=target, near=", ".join(near))
    if target == "cheapest" and where is None:
        raise InputError("swap-where")
    against = {"conducting": "blocks-better", "insulating": "carries-better"}[recipe.kind]
    if target == against:
        raise InputError("swap-against", target=target, title=recipe.title, kind=recipe.kind)
