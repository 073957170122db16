"""A dough for a class, as a page asks for it: how much, what to weigh out, the clock, money, and the shopping list.

Everything is told by `app.making_words` and `app.shopping_words`, so that the command says the same; here each number
gets its source.
"""

from collections.abc import Callable, Iterator, Mapping
from typing import TYPE_CHECKING, Any

from lumped.app.asking import Question
from lumped.app.sources import told_of

if TYPE_CHECKING:
    from lumped.dough.safety import Caution
    from lumped.quantities import Provenance
    from lumped.workshop import Making, Shopping
    from lumped.workshop.shopping import Bought

__all__ = ["GROUPS", "classed", "party_said"]

Report = Callable[[float], None]
Sources = dict[str, dict[str, Any]]
GROUPS = {"one": 1, "two": 2, "three": 3, "four": 4}
"""How many share a sculpture, by name."""
_GRAMS = 1e3


def classed(question: Question, report: Report) -> dict[str, Any]:
    """Plan making a dough for a class.

    Parameters
    ----------
    question : Question
        Said are `by` ("people", "mass" or "recipe"), `people`, `age` and `group` in words, `mass`, `pot` and `minutes`
        as somebody writes them (a bare number is in kg, L and min), the `region`, and whether to leave `little_over`.
    report : callable
        Told how far it is.

    Returns
    -------
    dict
        `title`, `state`, `holding` (what a dough without gluten is like) and `sentences`; `figures` (key, words,
        figure); `batch`, `work`, `cooling`, `in_time` and `shops` as tables; `notes`; `cautions` (key, severity,
        words); and each number's source.

    Raises
    ------
    RecipeError, InputError
        If the recipe or something that was said can't be.
    """
    from lumped.app.making import make_of, shopping_for
    from lumped.app.named import named_in
    from lumped.app.together import Together

    said, dough = question.said, named_in(question.given)
    people = [party_said(said)] if said["by"] == "people" else []
    mass = _said(said["mass"], "kg") if said["by"] == "mass" else None
    made = make_of(dough, people=people, mass=mass, pot=_said(said["pot"], "L"), region=said["region"],
                   within=_said(said["minutes"], "min"))  # fmt: skip
    report(0.8)
    bought = shopping_for(Together.of(dough), said["region"], people=people, masses=[mass] if mass else (),
                          little_over=said["little_over"])  # fmt: skip
    sources: Sources = {}
    return {
        **_amount(made, bought, said["by"], sources), **_clock(made, sources),
        **_shopped(bought, said["little_over"], sources),
        "cautions": list(_cautions(made.cautions, sources)), "sources": sources,
    }  # fmt: skip


def party_said(said: Mapping[str, str]) -> str:
    """Who comes, in the words that `--people` takes."""
    people, age, size = said["people"].strip(), said["age"].strip(), GROUPS.get(said["group"], 1)
    who = f"{people} of {age}" if age else f"{people} adults"
    return who if size == 1 else f"{who} in groups of {size}"


def _said(text: str, unit: str) -> str | None:
    """What somebody wrote, a bare number with the unit that the field asks for; None for nothing."""
    from lumped.quantities import with_unit

    return with_unit(text, unit) if text.strip() else None


def _amount(made: "Making", bought: "Shopping", by: str, sources: Sources) -> dict[str, Any]:
    """How much of it in which pots, what it costs, and one batch to weigh out."""
    from lumped.app.making_words import batch_rows, making_title, party_words, pot_words, shift_words, unpriced_words
    from lumped.quantities import rounded_text
    from lumped.texts import say

    headings, rows = batch_rows(made)
    _source_lines(made, by, sources)
    figures = list(_figures(made, bought, sources))
    mass = rounded_text(made.batches.mass.mean)
    return {
        "title": making_title(made), "state": say("web-make-state", mass=mass, count=made.batches.count),
        "holding": list(made.holding),
        "sentences": [*party_words(made), *pot_words(made), *filter(None, [unpriced_words(made)])], "figures": figures,
        "batch": {"headings": headings, "rows": rows, "keys": [each.ingredient for each in made.lines]},
        "shift": shift_words(made),
    }  # fmt: skip


def _figures(made: "Making", bought: "Shopping", sources: Sources) -> Iterator[tuple[str, str, str]]:
    """Key, words and figure of what matters first."""
    from lumped.app.making_words import time_text
    from lumped.texts import say

    values = {"wants": made.wants, "made": made.batches.mass, "each": made.batches.each}
    for key, value in values.items():
        if value is not None and (key != "each" or made.batches.count > 1):
            words = say(f"web-make-{key}")
            made_of = _wanted_of(made) if key != "each" else ()
            sources[key] = told_of(words, value.provenance, made_of, note=say(f"web-make-source-{key}"),
                                   recipe=made.recipe)  # fmt: skip
            yield key, words, value.text()
    for key, value in {"active": made.active, "ready": made.ready}.items():
        words = say("web-make-ready-pot") if key == "ready" and made.waits else say(f"web-make-{key}")
        sources[key] = told_of(words, value.provenance, note=say("web-make-source-time"), recipe=made.recipe)
        yield key, words, time_text(value)
    yield from _money(made, bought, sources)


def _wanted_of(made: "Making") -> "list[tuple[str, Any]]":
    """What is open in how much hands want: a lump, and how many of them a group shares."""
    from dataclasses import replace

    from lumped.texts import say
    from lumped.workshop.people import lump_of_age

    found = []
    for each in made.parties:
        lump = lump_of_age(each.age)
        grams = replace(lump, unit="g", **{end: _GRAMS * getattr(lump, end) for end in ("mean", "low", "high")})
        found += [(say("web-make-lump", age=f"{each.age:g}"), grams),
                  (say("web-make-lumps"), each.lumps(made.recipe.kind))]  # fmt: skip
    return found


def _money(made: "Making", bought: "Shopping", sources: Sources) -> Iterator[tuple[str, str, str]]:
    from lumped.app.shopping_words import till_text
    from lumped.texts import say

    cost = made.cost
    if cost is None:
        return
    names = {each.ingredient: each.name for each in made.lines}
    made_of = [(names[key], each) for key, each in cost.prices.items()]
    note = say("web-source-cost", dated=cost.dated)
    values = {"person": cost.person, "whole": cost.whole, "till": bought.total}
    for key, value in values.items():
        if value is not None:
            words = say(f"web-make-{key}")
            sources[key] = told_of(words, value.provenance, made_of, note=note)
            yield key, words, till_text(bought) if key == "till" else value.text()


def _source_lines(made: "Making", by: str, sources: Sources) -> None:
    """Say where the grams and the cups of each ingredient come from."""
    from lumped.quantities import Provenance
    from lumped.texts import say

    scaled = [] if by == "recipe" else [made.batches.mass.provenance]
    written = {each.ingredient: each.mass.provenance for each in made.recipe.portions}
    note, count = say(f"web-make-source-by-{by}"), made.batches.count
    for each in made.lines:
        origin = Provenance.of([written[each.ingredient], *scaled])
        sources[f"grams-{each.ingredient}"] = told_of(each.name, origin, _wanted_of(made), note=note)
        if count > 1:
            all_of = say("web-make-source-all", count=count)
            sources[f"all-{each.ingredient}"] = told_of(each.name, origin, _wanted_of(made), note=all_of)
        if each.holds is not None:
            sources[f"cups-{each.ingredient}"] = _cups(each.name, each.measures, each.holds)


def _cups(name: str, measures: str, holds: Any) -> dict[str, Any]:
    from dataclasses import replace

    from lumped.texts import say

    grams = replace(holds, unit="g", **{end: _GRAMS * getattr(holds, end) for end in ("mean", "low", "high")})
    return told_of(name, holds.provenance, [(measures, grams)], note=say("web-make-source-cups"))


def _clock(made: "Making", sources: Sources) -> dict[str, Any]:
    """What keeps hands busy, how long it cools, and what can be had in the time that there is."""
    from lumped.app import making_words as told
    from lumped.texts import say

    def kept(key: str, words: str, provenance: "Provenance") -> str:
        sources[key] = told_of(words, provenance, note=say("web-make-source-time"), recipe=made.recipe)
        return key

    steps = [*made.steps]
    work = [kept(f"work-{each.key}", each.words, each.time.provenance) for each in steps] + ["active"]
    places = [say(f"making-place-{each.place}") for each in made.waits]
    cooling = [kept(f"cool-{each.place}", words, each.wait.provenance)
               for words, each in zip(places, made.waits, strict=True)]  # fmt: skip
    ways = [kept(f"way-{k}", each.words, each.ready.provenance) for k, each in enumerate(made.options)]
    for words, each in zip(places, made.waits, strict=True):
        kept(f"cool-{each.place}-more", words, each.ready.provenance)
    for k, option in enumerate(made.options):
        kept(f"way-{k}-more", option.words, option.ready.provenance)
    minutes = f"{made.within / 60:.0f}" if made.within else ""
    state, *sentences = told.in_time_words(made) if made.within else [""]
    blocks = told.blocks_words(made)
    return {
        "work": {"rows": told.work_rows(made), "keys": work}, "ready": told.ready_words(made),
        "cooling": {"rows": told.cooling_rows(made), "keys": cooling},
        "minutes": minutes, "in_time": {"rows": told.in_time_rows(made), "keys": ways}, "in_time_state": state,
        "blocks": blocks, "in_time_notes": [each for each in sentences if each != blocks],
    }  # fmt: skip


def _shopped(bought: "Shopping", little_over: bool, sources: Sources) -> dict[str, Any]:
    """The shopping list, place by place."""
    from lumped.app.shopping_words import places, shop_headings, shop_rows, sum_words, tap_words, used_words
    from lumped.texts import say

    shops = [(place, shop_rows(lines), [each.ingredient for each in lines]) for place, lines in places(bought)]
    for each in bought.lines:
        sources[f"need-{each.ingredient}"] = sources[f"grams-{each.ingredient}"] | {"note": say("web-make-source-need")}
        _source_packets(each, sources)
    far = [(say("web-make-far", name=each.name, place=each.sold.words), each.ingredient)
           for each in bought.lines if each.is_far]  # fmt: skip
    return {
        "shops": shops, "shop_headings": shop_headings(bought), "tap": tap_words(bought), "sum": sum_words(bought),
        "far": far, "unpriced": [_unpriced(each) for each in bought.lines if each.is_unpriced],
        "used": used_words(bought, little_over=little_over),
    }  # fmt: skip


def _unpriced(each: "Bought") -> str:
    from lumped.texts import say

    return say("shopping-hint-unknown", name=each.name, need=f"{_GRAMS * (each.need - each.have):.0f}")


def _source_packets(each: "Bought", sources: Sources) -> None:
    from lumped.quantities import Provenance
    from lumped.reference import handbook
    from lumped.texts import say

    priced = each.price
    if priced is None or not each.packets:
        return
    made_of = [(say("web-make-price"), priced.per_mass),
               (say("web-make-cheaper"), handbook().value("workshop", "packets", "cheaper"))]  # fmt: skip
    origin = Provenance.of([priced.per_mass.provenance, each.sold.provenance])
    note = say("web-make-source-packets", dated=priced.dated) if priced.dated else say("web-source-paid")
    for what in ("buy", "over", "money"):
        sources[f"{what}-{each.ingredient}"] = told_of(each.name, origin, made_of, note=note)


def _cautions(cautions: "tuple[Caution, ...]", sources: Sources) -> Iterator[tuple[str, str, str]]:
    from lumped.texts import say

    for each in cautions:
        key = f"caution-{each.key}"
        sources[key] = told_of(say("web-caution-source"), each.provenance)
        yield key, each.severity, each.brief
