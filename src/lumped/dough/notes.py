"""Sentences that belong with a computed dough: what to know, and what to mind."""

from collections.abc import Iterator, Mapping

from lumped.chemistry import is_extrapolated
from lumped.dough import safety
from lumped.dough.material import CONDUCTS_BELOW, Dough
from lumped.dough.recipe import Recipe
from lumped.pantry import Pantry
from lumped.quantities import Value, rounded_text, short_text
from lumped.texts import say

__all__ = ["cautions_on", "first_words", "narrowing_words", "notes_on", "taken_words"]

_WIDE = 1e3  # between the ends of an interval, from where only liquid that may form no way through explains it
_SALTY, _SALTED = 0.001, 0.02  # mass share of salt from which an insulating dough deserves a word, and is none


def notes_on(
    recipe: Recipe, found: Mapping[str, Value], salt_fraction: float, *, calibrated: bool = False
) -> tuple[str, ...]:
    """Say what a person should know about a computed dough.

    Parameters
    ----------
    recipe : Recipe
        What went in.
    found : mapping of str to Value
        The steps of the chain.
    salt_fraction : float
        Mass of salt over mass of dough. [1]
    calibrated : bool
        Whether measured batches narrowed it.

    Returns
    -------
    tuple of str
    """
    return tuple(_notes(recipe, found, salt_fraction, calibrated))


def _notes(recipe: Recipe, found: Mapping[str, Value], salt_fraction: float, calibrated: bool) -> Iterator[str]:
    resistivity = found["resistivity"]
    factor = rounded_text(resistivity.high / resistivity.low)
    yield say("dough-note-calibrated" if calibrated else "dough-note-unmeasured", factor=factor)
    if resistivity.high / resistivity.low > _WIDE and "free_water" in found:
        yield say("dough-note-no-way")
    solid = found.get("salt_solid")
    reached = found.get("liquid_water", found.get("free_water"))
    if solid is not None and solid.high > 1 and reached is not None:
        yield say("dough-note-solid-salt", solid=f"{solid.high:.0f}", reached=f"{reached.mean:.0f}")
    if recipe.kind == "insulating" and salt_fraction > _SALTY:
        key = "salted" if salt_fraction > _SALTED else "salty"
        yield say(f"dough-note-{key}", share=rounded_text(100 * salt_fraction))
    if recipe.kind == "conducting" and resistivity.mean > CONDUCTS_BELOW:
        yield say("dough-note-poor" if "free_water" in found else "dough-note-dry")
    if any(portion.as_needed and portion.as_needed[1] > portion.as_needed[0] for portion in recipe.portions):
        yield say("dough-note-as-needed")
    if is_extrapolated(recipe.temperature):
        yield say("dough-note-warm", temperature=f"{recipe.temperature - 273.15:.0f}")
    if recipe.invented:
        yield say("dough-note-invented")


def taken_words(recipe: Recipe, shop: Pantry) -> tuple[str, ...]:
    """Say which everyday words of a recipe were taken as which ingredient: "salt" as table salt."""
    return tuple(shop.taken_as(word) for word, key in recipe.everyday if key in recipe.ingredients)


def cautions_on(recipe: Recipe, mass: float, shop: Pantry) -> tuple[str, ...]:
    """Say shortly what to mind with a dough's ingredients and with making it, the gravest first.

    Parameters
    ----------
    recipe : Recipe
        What went in.
    mass : float
        Dough that came out. [kg]
    shop : Pantry
        What the ingredients are.

    Returns
    -------
    tuple of str
        Of `safety.cautions_on` what is on this dough and on making it; the law and the table are told by its care.
        Of traces only what a label of one's own names, of dust only what an ingredient is marked with: a sheet has
        one page.
    """
    carried = {key for each in recipe.ingredients for key in shop[each].cautions}
    found = safety.cautions_on(
        recipe.masses, mass, shop, cooked=recipe.cooked, date=None, name=recipe.title, most=recipe.most
    )
    left_out = {"dust"} - carried
    briefs = (
        _label_traces(recipe, shop) if each.key == "may-contain" else each.brief
        for each in found if each.is_of_material and each.key not in left_out
    )  # fmt: skip
    return tuple(filter(None, briefs))


def _label_traces(recipe: Recipe, shop: Pantry) -> str:
    """Say which traces the labels of one's own packets name; "" if none does."""
    traces = safety.allergens_of(recipe.masses, shop).traces
    named: dict[str, list[str]] = {}
    for allergen, keys in traces.items():
        for key in filter(lambda each: shop[each].is_own, keys):
            named.setdefault(shop[key].name, []).append(allergen)
    found = (say("safety-allergens-of", ingredient=name, allergens=", ".join(each)) for name, each in named.items())
    return say("safety-brief-label-traces", allergens="; ".join(found)) if named else ""


def first_words(dough: Dough) -> tuple[str, ...]:
    """Say how a dough will feel and whether it keeps; nothing of a measured or an unknown one.

    Parameters
    ----------
    dough : Dough
        The dough.

    Returns
    -------
    tuple of str
    """
    facts = {each.key: each.value.text() for each in dough.facts}
    feel = (dough.feel.words,) if dough.feel is not None else ()
    if not facts:
        return feel
    return (
        *feel, say("dough-facts", activity=facts["water_activity"], ph=facts["ph"], density=facts["density"])
    )  # fmt: skip


def narrowing_words(dough: Dough) -> tuple[str, ...]:
    """Say which measurement would narrow a dough's resistivity by how much, the strongest first.

    Parameters
    ----------
    dough : Dough
        The dough.

    Returns
    -------
    tuple of str
    """
    if not dough.influences and dough.how == "recipe":
        return (say("dough-influence-none"),)
    return tuple(
        say("dough-influence", share=f"{100 * each.share:.0f}", words=each.words, factor=short_text(each.factor_left))
        for each in dough.influences
    )
