"""The sentences of a recipe card, said in the language that is spoken."""

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING, Any

from lumped.app.card_facts import Facts, States
from lumped.app.card_words import (
    allergen_name,
    day_text,
    days,
    grams,
    ingredient_name,
    interval,
    listed,
    local,
    unread,
)
from lumped.quantities import significant
from lumped.reference import handbook
from lumped.texts import has, language, say

if TYPE_CHECKING:
    from lumped.dough import Recipe
    from lumped.dough.safety import Allergens
    from lumped.pantry import Pantry
    from lumped.workshop.batches import Batches
    from lumped.workshop.kitchen import Line

__all__ = ["allergens_shown", "amounts_shown", "careful", "does", "face", "foot", "for_people", "steps_shown"]

_HOUR = 3600.0
_TOLD = 1e-3  # share by which a resistivity moves, from which it is worth a figure
_LONG = 72.0  # h; nobody plans a wall for longer
_OWN_BOX = ("allergens", "no-allergens", "may-contain")


def face(recipe: "Recipe", mark: str, shop: "Pantry") -> dict[str, Any]:
    """Say which dough it is, and how it looks; a mark of "" is none, for nobody can tell."""
    what = "carries" if recipe.kind == "conducting" else "blocks"
    told = what if mark else f"open-{what}"
    colours = [ingredient_name(key, shop) for key in recipe.ingredients if "colour" in shop[key].roles]
    looks = say("card-looks-coloured", ingredients=listed(colours)) if colours else say(f"card-looks-{what}")
    return {
        "what": say(f"card-{told}"), "mark_words": say(f"card-mark-{mark or 'none'}"), "not_food": say("card-not-food"),
        "looks": [looks, say("card-looks-alike" if mark else "card-looks-alike-open")],
        "invented": say("card-invented") if recipe.invented else "",
    }  # fmt: skip


def for_people(people: int, batches: "Batches") -> str:
    """Say for how many it is, and how often it is made."""
    return say("card-for-people", people=people, batches=batches.count, grams=grams(significant(batches.each.mean, 2)))


def amounts_shown(lines: "Sequence[Line]", shift: float, system: str, shop: "Pantry") -> dict[str, Any]:
    """Say what goes in, in grams and in a country's measures; `shift` is what their rounding does. [1]"""
    columns = [say("card-column-ingredient"), say("card-column-grams")]
    note = ""
    if system != "scale":
        columns.append(say("card-column-measures", kitchen=say(f"card-kitchen-{system}")))
        note = _rounded(abs(shift)) + " " + say("card-scale")
    rows = [_row(line, shop)[: len(columns)] for line in lines]
    return {"columns": columns, "rows": rows, "amounts_note": note}


def _rounded(shift: float) -> str:
    """Say how far rounding to cups and spoons moves the dough. [1]"""
    return say("card-rounded", shift=local(f"{100 * shift:.1f}")) if shift >= _TOLD else say("card-rounded-little")


def _row(line: "Line", shop: "Pantry") -> list[str]:
    weighed = [say("card-grams", amount=grams(line.mass))] if line.mass else []
    if line.as_needed:
        ends = {"low": grams(line.as_needed[0]), "high": grams(line.as_needed[1])}
        weighed.append(say("card-and-by-feel", **ends) if line.mass else say("card-by-feel", **ends))
    return [ingredient_name(line.ingredient, shop), " ".join(weighed), line.measures]


def steps_shown(recipe: "Recipe", shop: "Pantry") -> dict[str, Any]:
    """Say what to do: the maker's own steps, or the usual way."""
    if recipe.steps:
        return {"steps": list(recipe.steps), "steps_note": say("card-steps-own")}
    way = recipe.cooked.replace(" ", "-")
    felt = [ingredient_name(each.ingredient, shop) for each in recipe.portions if each.as_needed]
    steps = [say(f"card-step-{way}-1", felt="yes" if felt else "no"), say(f"card-step-{way}-2")]
    if recipe.cooked != "not cooked":
        steps.append(say("card-step-cool"))
    if felt:
        steps.append(say("card-step-feel", ingredients=listed(felt)))
    return {"steps": [*steps, say("card-step-keep")], "steps_note": say("card-steps-usual")}


def does(facts: Facts) -> Iterator[str]:
    """Say what the dough will do."""
    from lumped.dough.lasting.keeping import habit

    made = facts.dough
    yield from _circuit(facts)
    yield say("card-resistivity", value=interval(made.resistivity))
    batches = say("card-batches", count=facts.measured)
    yield say("card-learnt", batches=batches) if facts.measured else say("card-unmeasured")
    if made.feel is not None:
        low, high = (say(f"card-feel-{each}") for each in made.feel.span)
        yield say("card-feel", feel=low) if low == high else say("card-feel-open", low=low, high=high)
    (low, high), (cold_low, cold_high) = (
        days(habit(made.reason("water_activity").value, fridge=cold)) for cold in (False, True)
    )
    yield say("card-keeps", low=low, high=high, cold_low=cold_low, cold_high=cold_high)


def _circuit(facts: Facts) -> Iterator[str]:
    """What a lamp does: through rolls of a dough that carries, across a wall of one that blocks."""
    for key, states in zip(("card-roll-thick", "card-roll-thin"), facts.rolls, strict=False):
        yield say(key, state=_state(states))
    if facts.wall is not None:
        yield say("card-wall-breaks" if facts.enough == "no" else "card-wall", state=_state(facts.wall))
    yield say("card-pack")
    if facts.lasts is not None and facts.lasts.high > 0:
        low, high = facts.lasts.low / _HOUR, facts.lasts.high / _HOUR
        ends = {"low": local(f"{low:.1f}"), "high": local(f"{high:.1f}")}
        if high > _LONG:
            yield say("card-wall-lasts-long", low=ends["low"])
        else:
            yield say("card-wall-lasts", **ends)


def _state(states: States) -> str:
    worst, best = say(f"card-state-{states[0]}"), say(f"card-state-{states[2]}")
    return best if worst == best else say("card-state-span", worst=worst, best=best)


def allergens_shown(found: "Allergens") -> dict[str, Any]:
    """Say the allergens of both lists, and traces apart."""
    names = [allergen_name(each) for each in found.names]
    contains = say("card-contains", allergens=listed(names)) if names else say("card-contains-none")
    traces = [allergen_name(each) for each in found.traces]
    return {"contains": contains, "traces": say("card-may-contain", allergens=listed(traces)) if traces else ""}


def careful(facts: Facts) -> Iterator[str]:
    """Say what to mind in the card's short words, the gravest first; what only a packet says in one line."""
    packets: list[str] = []
    for each in facts.care.cautions[:-1]:
        if each.key == "eaten":
            yield _eaten(facts)
        elif has(f"card-careful-{each.key}"):
            yield say(f"card-careful-{each.key}")
        elif each.key not in _OWN_BOX and not each.key.startswith("migration"):
            packets += [ingredient_name(key, facts.shop) for key in each.ingredients]
    if any(each.key.startswith("migration") for each in facts.care.cautions):
        yield say("card-careful-migration")
    if packets:
        yield say("card-careful-packet", ingredients=listed(packets))
    yield say("card-careful-rules")


def _eaten(facts: Facts) -> str:
    from lumped.quantities import short_text

    child, dog = facts.doses["salt-child", "lethal_per_kg"], facts.doses["salt-dog", "signs_per_kg"]
    figures = {
        "share": 100 * facts.salt, "child": 1e3 * child.dough.low, "child_mass": child.eater_mass,
        "dog": 1e3 * dog.dough.low, "dog_mass": dog.eater_mass,
    }  # fmt: skip
    return say("card-careful-eaten", **{name: local(short_text(figure)) for name, figure in figures.items()})


def foot(facts: Facts) -> Iterator[str]:
    """Say when and from what the card was computed, and that nobody has read its language yet."""
    from lumped import __version__

    if (last := facts.batch) is not None:
        if last.made_on is not None:
            yield say("card-foot-batch", batch=last.title, date=day_text(last.made_on))
        else:
            yield say("card-foot-batch-undated", batch=last.title)
    yield say("card-foot-computed", version=__version__, date=day_text(facts.on))
    if sources := handbook().citations(facts.dough.resistivity.provenance, language()):
        yield say("card-foot-sources", sources=" · ".join(sources))
    yield from unread()
