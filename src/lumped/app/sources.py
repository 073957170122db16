"""Where a number of a page comes from: its status in words, what is open in it, its sources with edition and page."""

from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING, Any

from lumped.app.given import Given
from lumped.app.labels import shop_of
from lumped.app.own import kneading_of

if TYPE_CHECKING:
    from lumped.dough.kneading import Kneading
    from lumped.dough.recipe import Recipe
    from lumped.pantry import Pantry
    from lumped.quantities import Provenance, Value

__all__ = ["CURVES", "opened", "source_of", "told_of"]

CURVES = ("nacl-conductivity-20degC", "nacl-solubility")
_GRAMS = 1e3


def source_of(given: Given, what: str, region: str) -> dict[str, Any]:
    """Say where a number of a dough comes from.

    Parameters
    ----------
    given : Given
        The recipe.
    what : str
        A reading or step ("resistivity", "ph", "free_water"), "cost", "feel", "what-if-…" or "narrower-…".
    region : str
        Where it is bought.

    Returns
    -------
    dict
        `title`, `status` in words, `note`, `made_of` (words, figure and status of what is open in it), `sources`
        (each with edition and pages).

    Examples
    --------
    >>> from lumped.app.examples import example_recipe
    >>> salt = Given(name="salt.toml", text=example_recipe("ropewalk-salt.toml"))
    >>> source_of(salt, "cost", "europe")["status"].split(":")[0]
    'From memory'
    """
    done = kneading_of(given)
    if what == "cost":
        return _cost(done.recipe, region, shop_of(given))
    if what == "feel":
        return _feel(done)
    return _chained(done, what, shop_of(given))


def told_of(
    title: str, provenance: "Provenance", made_of: Iterable[tuple[str, "Value"]] = (), *, note: str = "",
    recipe: "Recipe | None" = None,
) -> dict[str, Any]:  # fmt: skip
    """Lay out where a number comes from.

    Parameters
    ----------
    title : str
        What the number is.
    provenance : Provenance
        Its status and sources.
    made_of : iterable of (str, Value)
        What is open in it, in words.
    note : str
        How it was worked out.
    recipe : Recipe, optional
        Whose ingredients tell the pages of sources.
    """
    from lumped.texts import say

    return {
        "title": title,
        "status": say(f"web-status-{provenance.status.value.replace(' ', '-')}"),
        "note": " ".join(filter(None, (note, provenance.note))),
        "made_of": [
            {"words": words, "figure": value.text(), "status": value.provenance.status.value}
            for words, value in made_of
        ],
        "sources": list(_sources(provenance.sources, recipe)),
    }  # fmt: skip


def _chained(done: "Kneading", what: str, shop: "Pantry") -> dict[str, Any]:
    from lumped.dough.steps import step_words
    from lumped.texts import say

    key = "resistivity" if what.startswith(("what-if-", "narrower-")) else what
    title, note = step_words(key, done.chain), say("web-source-chain")
    if what.startswith("what-if-"):
        title, note = say(what), say("web-source-what-if")
    elif what.startswith("narrower-"):
        title, note = say(f"dough-measure-{what.removeprefix('narrower-')}"), say("web-source-narrower")
    return told_of(title, done.origins.of(key), opened(done, shop, key), note=note, recipe=done.recipe)


def opened(
    done: "Kneading", shop: "Pantry | None" = None, figure: str = "resistivity"
) -> Iterator[tuple[str, "Value"]]:  # fmt: skip
    """Give what is open in a figure of a dough, in words; what is known exactly is left out, masses are in grams.

    Parameters
    ----------
    done : Kneading
        A recipe, followed through.
    shop : Pantry, optional
        What the ingredients are; the handbook's.
    figure : str
        One of `origins.FIGURES`.
    """
    from dataclasses import replace

    from lumped.pantry import pantry
    from lumped.texts import say

    shop = shop or pantry()
    for name, value in done.origins.opened(figure).items():
        if value.is_exact:
            continue
        word, _, which = name.partition(" ")
        shown = value
        if value.unit == "kg":
            ends = {end: _GRAMS * getattr(value, end) for end in ("mean", "low", "high")}
            shown = replace(value, unit="g", **ends)
        if word in ("mass", "needed"):
            which = shop[done.recipe.portions[int(which) - 1].ingredient].name
        elif which:
            which = shop[which].name
        yield say(f"web-open-{word.replace('_', '-')}", name=which), shown


def _cost(recipe: "Recipe", region: str, shop: "Pantry") -> dict[str, Any]:
    from lumped.quantities import Provenance
    from lumped.texts import say

    found = {key: each for key in recipe.ingredients if (each := shop.price(key, region)) is not None}
    dated = min((each.dated for each in found.values() if each.dated), default="")
    made_of = [(shop[key].name, each.per_mass) for key, each in found.items()]
    origin = Provenance.of(each.per_mass.provenance for each in found.values())
    return told_of(say("property-cost"), origin, made_of, note=say("web-source-cost", dated=dated))


def _feel(done: "Kneading") -> dict[str, Any]:
    from lumped.dough.texture import feel_of
    from lumped.dough.wetting import hydration_window
    from lumped.texts import say

    least, most = hydration_window(done.recipe)
    hydration = done.value(done.chain.hydration, "", "hydration")
    score = feel_of(done.recipe, done.chain, hydration, shop=done.shop).score
    made_of = [(say("web-open-least"), least), (say("web-open-most"), most), (say("web-open-hydration"), hydration)]
    return told_of(say("web-reading-feel"), score.provenance, made_of, note=say("web-source-feel"))


def _sources(keys: Iterable[str], recipe: "Recipe | None") -> Iterator[str]:
    from lumped.reference import handbook
    from lumped.texts import say

    for key in keys:
        pages = list(dict.fromkeys(_pages(key, recipe)))
        text = handbook().sources[key].text()
        yield say("web-source-page", source=text, page="; ".join(pages)) if pages else text


def _pages(source: str, recipe: "Recipe | None") -> Iterator[str]:
    """Tables and pages of a source that this dough's ingredients and its brine stand on."""
    from lumped.reference import handbook

    book = handbook()
    for ingredient in recipe.ingredients if recipe is not None else ():
        if ingredient in book.keys("ingredients"):
            for row in book.entry("ingredients", ingredient).rows.values():
                if source in row.value.provenance.sources and row.page:
                    yield row.page
    for key in CURVES:
        curve = book.curve(key)
        if source in curve.provenance.sources:
            yield from filter(None, curve.pages)
