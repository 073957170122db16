"""A recipe's text with other amounts, something more or something less in it: what a page moves, and its address tells.

A change is the name of an ingredient and an amount in words: "36 g", "1 cup"; "0" leaves it out. What is added by
feel stays as it is unless the amount says otherwise behind a semicolon: "150 g;0-30", or "150 g;" for nothing. How it
is heated (`cooked`) and how warm it is used (`degrees`) are changes too.
"""

import re
import tomllib
from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any

import tomli_w

from lumped.app.given import Given
from lumped.app.labels import shop_of
from lumped.errors import InputError

__all__ = [
    "RECIPE_WORDS", "WAYS", "amounts_in", "changed", "changes_to", "leaves_out", "name_of", "names_in",
    "names_of_keys", "with_amount", "with_feel",
]  # fmt: skip

_GRAMS = re.compile(r"(\d+(?:[.,]\d+)?)\s*(?:g|grams?)?")
_NOTHING = re.compile(r"0+(?:[.,]0+)?\s*(?:g|grams?)?")
_BY_FEEL = re.compile(r"(?:(\d[\d.,]*)\s*(?:g\s*)?(?:-|–|to)\s*)?(\d[\d.,]*)\s*(?:g|grams?)?")
_BARE = re.compile(r"\d+(?:[.,]\d+)?")
_MOST = 100_000  # g; of more the reader of amounts tells what it weighs
_ROOM = 20  # °C; what a recipe that says nothing means
RECIPE_WORDS = ("title", "measures", "cooked", "degrees")
"""Words of a change that are no ingredients."""
WAYS = ("pot", "kettle", "microwave", "not cooked")


def names_in(text: str) -> list[str]:
    """Name what goes in, each name once: the word of the recipe, with a number if it comes again.

    Examples
    --------
    >>> names_in("ingredients = [{ingredient = 'salt'}, {ingredient = 'Salt'}]")
    ['salt', 'salt-2']
    """
    names: list[str] = []
    for entry in _entries(text):
        name = str(entry["ingredient"]).strip().casefold().replace(" ", "-")
        name = name_of(name)
        count = sum(each == name or re.fullmatch(rf"{re.escape(name)}-\d+", each) is not None for each in names)
        names.append(f"{name}-{count + 1}" if count else name)
    return names


def name_of(ingredient: str) -> str:
    """Give the name by which a change knows an ingredient that comes once: another than the words for a title, ….

    Examples
    --------
    >>> name_of("salt"), name_of("title")
    ('salt', 'title-1')
    """
    return f"{ingredient}-1" if ingredient in RECIPE_WORDS else ingredient


def _ingredient_of(name: str) -> str:
    """Give the ingredient that a change puts in by a name of `name_of`."""
    bare = name.removesuffix("-1")
    return bare if bare in RECIPE_WORDS else name


def amounts_in(text: str) -> list[str]:
    """Give the amounts of a recipe as a person writes them; empty where something is only added by feel.

    Examples
    --------
    >>> amounts_in("ingredients = [{ingredient = 'salt', amount_g = 125}, {ingredient = 'oil', as_needed_g = [0, 9]}]")
    ['125 g', '']
    """
    return [_amount_of(entry) for entry in _entries(text)]


def changed(given: Given, changes: Mapping[str, str]) -> Given:
    """Give a recipe with some things changed; what is as before stays as it was written.

    Parameters
    ----------
    given : Given
        The recipe.
    changes : mapping of str to str
        Amounts by the names of `names_in`; a name that is not among them is put in as an ingredient. `cooked`,
        `degrees`, `measures` and `title` change these; a recipe with another title has the old story no
        longer, and is invented if it was.

    Examples
    --------
    >>> salt = Given(name="r.toml", text="ingredients = [{ingredient = 'salt', amount = '1 cup'}]")
    >>> amounts_in(changed(salt, {"salt": "62,5", "oil": "1 tbsp"}).text)
    ['62.5 g', '1 tbsp']
    """
    if not changes or not _entries(given.text):
        return given  # what can't be read its reader will say
    document = tomllib.loads(given.text)
    names, entries = names_in(given.text), document["ingredients"]
    other = dict(changes)
    title, measures, cooked, degrees = (other.pop(key, "") for key in RECIPE_WORDS)
    kept = [_entry(entry, other.pop(name, None)) for name, entry in zip(names, entries, strict=True)]
    added = [_entry({"ingredient": _ingredient_of(name)}, amount) for name, amount in other.items()]
    moved = kept != entries or any(added)
    document["ingredients"] = [entry for entry in (*kept, *added) if entry]
    if cooked and cooked != document.get("method", {}).get("cooked", "pot"):
        document["method"] = {"cooked": cooked}
        moved = True
    if moved:
        document.get("method", {}).pop("weighed_after_g", None)  # it was another dough that weighed so much
        document.pop("steps", None)
    warmed = bool(degrees) and _number_in(degrees) != document.get("temperature_degC", _ROOM)
    if warmed:
        document["temperature_degC"] = _number_in(degrees)
    if measures:
        document["measures"] = measures
    if title:
        document = {key: value for key, value in document.items() if key != "story"} | {"title": title}
    return replace(given, text=tomli_w.dumps(document)) if moved or warmed or title or measures else given


def _entries(text: str) -> list[dict[str, Any]]:
    """The ingredients of a recipe's text; none if they can't be read."""
    try:
        found = tomllib.loads(text).get("ingredients")
    except (ValueError, RecursionError):
        return []
    if not isinstance(found, list) or not all(isinstance(each, dict) and "ingredient" in each for each in found):
        return []
    return found


def leaves_out(amount: str) -> bool:
    """Whether an amount in words leaves its ingredient out.

    Examples
    --------
    >>> leaves_out("0"), leaves_out("0.0 g"), leaves_out("0.5 g")
    (True, True, False)
    """
    return _NOTHING.fullmatch(amount.partition(";")[0].strip()) is not None


def _entry(entry: Mapping[str, Any], said: str | None) -> dict[str, Any]:
    """One ingredient with what was said of its amount; nothing if it is left out."""
    if said is None:
        return dict(entry)
    amount, parted, feel = (each.strip() for each in said.partition(";"))
    if leaves_out(said):
        return {}
    found = dict(entry)
    if parted:
        found.pop("as_needed_g", None)
        if feel:
            found["as_needed_g"] = _feel_in(feel)
    if amount == _amount_of(entry):
        return found
    found.pop("amount", None)
    found.pop("amount_g", None)
    if (grams := _grams_in(amount)) is not None:
        found["amount_g"] = grams
    elif amount:
        found["amount"] = f"{amount} g" if _BARE.fullmatch(amount) else amount
    return found


def with_amount(said: str, amount: str) -> str:
    """Give a change with another amount; what it says of adding by feel stays.

    Examples
    --------
    >>> with_amount("150 g;0-30", "1 cup"), with_amount("", "1 cup")
    ('1 cup;0-30', '1 cup')
    """
    _, parted, feel = said.partition(";")
    return f"{amount}{parted}{feel}"


def with_feel(said: str, amount: str, feel: str) -> str:
    """Give a change that adds by feel what somebody wrote; `amount` is the recipe's, where the change says none.

    Examples
    --------
    >>> with_feel("", "1 cup", "40"), with_feel("150 g;0-30", "1 cup", "")
    ('1 cup;40', '150 g;')
    """
    own = said.partition(";")[0] if said else amount
    return f"{own};{feel.strip()}"


def _feel_in(words: str) -> list[float | int] | str:
    """Give the least and the most that are added by feel; the words themselves if they are none. [g]

    Examples
    --------
    >>> _feel_in("0-40"), _feel_in("10 to 40 g"), _feel_in("40"), _feel_in("some")
    ([0, 40], [10, 40], [0, 40], 'some')
    """
    ends = _BY_FEEL.fullmatch(words)
    found = [_number_in(each) for each in (ends[1] or "0", ends[2])] if ends else []
    numbers = [each for each in found if not isinstance(each, str)]
    return numbers if len(numbers) == 2 else words


def _number_in(words: str) -> float | int | str:
    """Give a number; the words themselves if they are none, for the recipe's reader to refuse."""
    from lumped.quantities import read_number

    try:
        return _plain(read_number(words))
    except InputError:
        return words


def _grams_in(amount: str) -> float | int | None:
    """Give the number of an amount in grams; None for any other, which the recipe's reader then takes or refuses."""
    grams = _GRAMS.fullmatch(amount)
    found = None if grams is None else _number_in(grams[1])
    return None if isinstance(found, str) or (found or 0) > _MOST else found


def _amount_of(entry: Mapping[str, Any]) -> str:
    grams = entry.get("amount_g")
    return f"{grams:.12g} g" if isinstance(grams, int | float) else str(entry.get("amount", ""))


def _plain(number: float) -> float | int:
    return int(number) if number.is_integer() else number


def changes_to(given: Given, portions: Sequence[tuple[str, str, tuple[float, float] | None]]) -> dict[str, str]:
    """Give the changes that turn a recipe into one with these portions.

    Parameters
    ----------
    given : Given
        The recipe.
    portions : sequence of (str, str, (float, float) or None)
        Key, amount in words, and what is added by feel, of each ingredient. [g]
    """
    shop, wanted = shop_of(given), [*portions]
    changes: dict[str, str] = {}
    for name, entry in zip(names_in(given.text), _entries(given.text), strict=True):
        key = shop.find(entry["ingredient"]).key
        at = next((k for k, each in enumerate(wanted) if each[0] == key), None)
        if at is None:
            changes[name] = "0"
            continue
        _, written, feel = wanted.pop(at)
        said = f"{written};{_feel_words(feel)}"
        if _entry(entry, said) != dict(entry):
            changes[name] = said if feel or "as_needed_g" in entry else written
    return changes | {
        name_of(key): f"{written};{_feel_words(feel)}" if feel else written for key, written, feel in wanted
    }


def names_of_keys(given: Given) -> dict[str, str]:
    """Give the name in `names_in` of each ingredient's first portion, by its key in the pantry."""
    shop = shop_of(given)
    found: dict[str, str] = {}
    for name, entry in zip(names_in(given.text), _entries(given.text), strict=True):
        key = shop.key_of(str(entry["ingredient"]))
        if key is not None:
            found.setdefault(key, name)
    return found


def _feel_words(feel: tuple[float, float] | None) -> str:
    return "" if feel is None else f"{feel[0]:g}-{feel[1]:g}"
