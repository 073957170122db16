"""Ingredients as a page shows them: plain content, and of each figure where it comes from.

The handbook's ingredients and a person's own are told alike; what a packet did not say is told as assumed.
"""

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from lumped.app.given import Given
from lumped.app.labels import label_trouble, shop_of, sound_labels
from lumped.app.pantry import LANGUAGES, looked_up, share_text
from lumped.app.sources import told_of
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.dough.safety import Caution
    from lumped.pantry import Ingredient, Pantry, Price
    from lumped.quantities import Provenance, Value
    from lumped.reference.rows import Row

__all__ = ["allergens_there", "choices", "ingredient_told", "quantity_words", "shop_with_own"]

Sources = dict[str, dict[str, Any]]
_PERCENT = 100
_METALS = ("sodium", "potassium", "magnesium", "calcium")


def shop_with_own(labels: Mapping[str, str]) -> "tuple[Pantry, tuple[str, ...]]":
    """Give the handbook's ingredients with a person's own; one that can't be read is left out, and said.

    Parameters
    ----------
    labels : mapping of str to str
        Texts of ingredient files by their titles.

    Returns
    -------
    (Pantry, tuple of str)
        The ingredients; what is wrong with those that were left out.

    Examples
    --------
    >>> shop, troubles = shop_with_own({"sand": "kind = 'ingredient'"})
    >>> len(shop) > 15, len(troubles)
    (True, 1)
    """
    troubles = tuple(filter(None, (label_trouble(text, title) for title, text in labels.items())))
    return shop_of(Given(name="", text="", labels=sound_labels(labels))), troubles


def choices() -> dict[str, tuple[str, ...]]:
    """Give what a list of ingredients can be narrowed by: `role`, `diet`, `region`.

    Examples
    --------
    >>> choices()["diet"]
    ('no gluten', 'no nuts', 'no corn', 'vegan')
    """
    from lumped.dough.safety import DIETS
    from lumped.pantry import regions
    from lumped.pantry.ingredient import ROLES

    return {"role": ROLES, "diet": DIETS, "region": regions()}


def allergens_there(shop: "Pantry") -> tuple[str, ...]:
    """Give the allergens of both lists that some ingredient of a pantry contains.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> "wheat" in allergens_there(pantry())
    True
    """
    return tuple(sorted({name for each in shop.values() for name in (*each.allergens_eu, *each.allergens_us)}))


def ingredient_told(shop: "Pantry", name: str) -> dict[str, Any]:
    """Show one ingredient with all that is known of it.

    Parameters
    ----------
    shop : Pantry
        The ingredients.
    name : str
        Its key, name or another name of it, in any of the four languages.

    Returns
    -------
    dict
        `key`, `title`, `also`, `roles`, `own`; rows of `made_of`, `printed`, `weights`, `offers`, `names`,
        `allergens`, `cautions` and `remarks`, each beginning with the key of its source; `assumed`; `sources`.

    Raises
    ------
    RecipeError
        If there is no such ingredient; the sentence names those that look alike.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> told = ingredient_told(pantry(), "table salt")
    >>> told["made_of"][0], told["sources"]["part-sodium-chloride"]["status"][:9]
    (('part-sodium-chloride', 'sodium chloride', '99.8 % (98.5 to 99.8)', 'published'), 'Published')
    """
    shown = looked_up(name, shop=shop)
    each, sources = shown.ingredient, {}  # type: Ingredient, Sources
    return {
        "key": each.key, "title": each.name, "own": each.is_own,
        "also": list(dict.fromkeys((*each.also, *each.everyday))),
        "roles": list(each.roles),
        "made_of": list(_made_of(each, sources)), "printed": list(_printed(each, sources)),
        "weights": list(_weights(each, sources)), "offers": list(_offers(shown.offers, each.key, shop, sources)),
        "names": list(_names(each, sources)), "allergens": list(_allergens(each, sources)),
        "cautions": list(_cautions(each, sources)), "remarks": list(shown.remarks), "assumed": list(each.assumed),
        "sources": sources,
    }  # fmt: skip


def _made_of(each: "Ingredient", sources: Sources) -> Iterator[tuple[str, str, str, str]]:
    """Compounds, the largest share first, each with its interval where one is known."""
    from lumped.reference import handbook

    for key, share in sorted(each.composition.items(), key=lambda item: -item[1]):
        if share > 0:
            words, value = handbook().name("compounds", key), _share(each, key, share)
            rows = dict(_rows_behind(each, key))
            parts = [(quantity_words(name), _of_hundred(row.value)) for name, row in rows.items()]
            made_of = () if key in rows else parts
            note = "" if key in rows else say("larder-composed-own" if each.assumed else "larder-composed")
            sources[f"part-{key}"] = _with_pages(told_of(words, value.provenance, made_of, note=note), rows.values())
            yield f"part-{key}", words, share_text(value), value.provenance.status.value


def _share(each: "Ingredient", key: str, share: float) -> "Value":
    """Share of a compound: its water, and all mineral salts together, as they are drawn; the rest as printed. [1]"""
    from lumped.dough.bowl import natural_salts
    from lumped.quantities import Provenance, Value

    if key == "water":
        return each.moisture
    rows = dict(_rows_behind(each, key))
    behind = [row.value.provenance for row in rows.values()] or _on_packet(each, key)
    low = high = share
    if key in natural_salts(each):
        behind.append(each.minerals.provenance)
        low, high = share * each.minerals.low, share * each.minerals.high
    elif key in rows:
        low, high = min(rows[key].value.low, share), max(rows[key].value.high, share)
    origin = behind[0] if len(behind) == 1 else Provenance.of(behind)
    return Value(mean=share, low=low, high=min(high, 1.0), unit="", provenance=origin)


def _on_packet(each: "Ingredient", key: str) -> "list[Provenance]":
    """What of a person's own ingredient's label a compound's share comes from."""
    named = ("carbohydrate", "fibre", "sugars") if key == "starch" else (key,)
    return [each.origins[name] for name in named if name in each.origins] or list(each.origins.values())


def _rows_behind(each: "Ingredient", key: str) -> "Iterator[tuple[str, Row]]":
    """The printed rows that a compound's share comes from."""
    rows = _rows_of(each)
    if key in rows:
        yield key, rows[key]
        return
    metal = key.split("-", 1)[0]
    wanted = (metal,) if metal in _METALS else ("carbohydrate", "fibre", "sugars") if key == "starch" else tuple(rows)
    for quantity in wanted:
        if quantity in rows and not quantity.startswith("g_per_") and quantity not in ("grain", "density"):
            yield quantity, rows[quantity]


def _rows_of(each: "Ingredient") -> "Mapping[str, Row]":
    """The rows of its table; a person's own has none."""
    from lumped.reference import handbook

    book = handbook()
    return {} if each.assumed or each.key not in book.keys("ingredients") else book.entry("ingredients", each.key).rows


def _with_pages(told: dict[str, Any], rows: Any) -> dict[str, Any]:
    """Name the sources with the pages of just these rows."""
    from lumped.reference import handbook

    pages: dict[str, dict[str, None]] = {}
    for row in rows:
        for key in row.value.provenance.sources:
            pages.setdefault(key, {}).update({row.page: None} if row.page else {})
    named = [
        say("web-source-page", source=handbook().sources[key].text(), page="; ".join(there)) if there
        else handbook().sources[key].text()
        for key, there in pages.items()
    ]  # fmt: skip
    return told | {"sources": named or told["sources"]}


def _printed(each: "Ingredient", sources: Sources) -> Iterator[tuple[str, str, str, str]]:
    """The rows of its table as the source prints them, but for weights of measures; of a person's own what is known."""
    for name, value in each.label.items():
        sources[f"row-{name}"] = told_of(name, value.provenance)
        yield f"row-{name}", name, share_text(value), value.provenance.status.value
    for quantity, row in _rows_of(each).items():
        if not quantity.startswith("g_per_"):
            spread = f" ({row.low:g} to {row.high:g})" if row.low != row.high else ""
            words = quantity_words(quantity)
            told = told_of(words, row.value.provenance)
            sources[f"row-{quantity}"] = _with_pages(told, [row])
            yield f"row-{quantity}", words, f"{row.printed:g} {row.unit}{spread}", row.value.provenance.status.value


def quantity_words(quantity: str) -> str:
    """What a printed row is about, in words."""
    from lumped.reference import handbook

    if quantity in handbook().keys("compounds"):
        return handbook().name("compounds", quantity)
    return quantity.replace("_", " ")


def _weights(each: "Ingredient", sources: Sources) -> Iterator[tuple[str, str, str, str]]:
    """US measures by the way of filling them."""
    from lumped.app.weighing import grams

    rows = _rows_of(each)
    for measure, own in each.weights.items():
        for method, value in own.items():
            usual = method == each.usual_method
            words = say(
                "larder-weighs", measure=measure, method=say("larder-usual", method=method) if usual else method
            )
            row = rows.get(f"g_per_{measure}_{method}") or (rows.get(f"g_per_{measure}") if usual else None)
            told = told_of(words, value.provenance)
            sources[f"weight-{measure}-{method}"] = _with_pages(told, [row] if row else [])
            yield f"weight-{measure}-{method}", words, grams(value), value.provenance.status.value


def _offers(offers: Any, key: str, shop: "Pantry", sources: Sources) -> Iterator[tuple[str, str, str, str, str]]:
    """By region: price, packs, where it is sold."""
    from lumped.quantities import Provenance, Status

    for offer in offers:
        where, found = offer["region"], shop.price(key, offer["region"])
        memory = Provenance(status=Status.FROM_MEMORY)
        notes = [_price_note(found)] if found else []
        told = told_of(offer["name"], found.per_mass.provenance if found else memory, note=" ".join(notes))
        sources[f"offer-{where}"] = told
        yield f"offer-{where}", offer["name"], offer["price_words"], offer["packs_words"], offer["sold"]


def _price_note(found: "Price") -> str:
    return say("larder-prices-dated", dated=found.dated) if found.dated else say("web-source-paid")


def _names(each: "Ingredient", sources: Sources) -> Iterator[tuple[str, str, str]]:
    from lumped.quantities import Provenance, Status

    origin = Provenance(status=Status.FROM_MEMORY)
    for code in LANGUAGES:
        if code in each.names:
            language = say(f"web-paper-{code}")
            sources[f"name-{code}"] = told_of(language, origin, note=say("larder-name-note"))
            yield f"name-{code}", language, each.names[code]


def _allergens(each: "Ingredient", sources: Sources) -> Iterator[tuple[str, str, str]]:
    """Both lists and traces; which allergens a list names is law, whether this packet holds one its own label tells."""
    from lumped.quantities import Provenance, Status

    memory = Provenance(status=Status.FROM_MEMORY)
    for which, there in (("eu", each.allergens_eu), ("us", each.allergens_us), ("traces", each.may_contain)):
        words = say(f"care-{which}")
        told = told_of(words, memory, note=say("larder-allergens-note"))
        rows = () if which == "traces" else (_count_row(which),)
        sources[f"allergens-{which}"] = _with_pages(told, rows)
        yield f"allergens-{which}", words, ", ".join(there) or say("web-care-none")


def _count_row(which: str) -> "Row":
    from lumped.reference import handbook

    return handbook().row("allergens", which, "count")


def _cautions(each: "Ingredient", sources: Sources) -> Iterator[tuple[str, str, str]]:
    from lumped.dough.safety import cautions_of

    found: tuple[Caution, ...] = tuple(cautions_of(each))
    for caution in found:
        sources[f"caution-{caution.key}"] = told_of(say("web-caution-source"), caution.provenance)
        yield f"caution-{caution.key}", caution.severity, caution.words


def _of_hundred(value: "Value") -> "Value":
    ends = {end: _PERCENT * getattr(value, end) for end in ("mean", "low", "high")}
    return replace(value, unit="%", **ends)
