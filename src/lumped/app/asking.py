"""What is asked about a dough beyond what it does: plain content for pages, pictures drawn, each number's source along.

Workers of the pool answer what takes long; what is light (`walled`) a thread of the app does.
"""

import json
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from hashlib import sha256
from typing import TYPE_CHECKING, Any

from lumped.app.changing import changes_to
from lumped.app.given import Given
from lumped.app.labels import shop_of
from lumped.app.own import kneading_of
from lumped.app.sources import opened, told_of

if TYPE_CHECKING:
    from lumped.dough.swap import Proposal, Swap
    from lumped.quantities import Value

__all__ = ["LAMPS_FIRST", "Question", "mixed", "salted", "swapped", "wall_lasts", "walled"]

Report = Callable[[float], None]
LAMPS_FIRST = "lamp-red"
_MM, _CM2, _MILLI = 1e-3, 1e-4, 1e3
_LEAST = 0.001  # mA; a lamp is dark long before


@dataclass(frozen=True, kw_only=True)
class Question:
    """A recipe, what is asked about it, and the recipes that it is held against."""

    given: Given
    said: Mapping[str, Any] = field(default_factory=dict)
    others: tuple[Given, ...] = ()

    @property
    def key(self) -> str:
        """Hash of everything that the answer hangs on."""
        recipes = " ".join(each.key for each in (self.given, *self.others))
        return sha256(f"{recipes} {json.dumps(self.said, sort_keys=True)}".encode()).hexdigest()


def swapped(question: Question, report: Report) -> dict[str, Any]:
    """Look for other recipes: `proposals`, what stands in the way (`blockers`), `notes`, each number's source."""
    from lumped.app.named import named_in
    from lumped.app.swaps import swap
    from lumped.dough.safety import caution
    from lumped.texts import say

    said = question.said
    found = swap(named_in(question.given), without=said["without"], diets=said["diets"], region=said["region"],
                 target=said["target"] or None)  # fmt: skip
    report(1.0)
    sources: dict[str, Any] = {}
    blockers = [each.words for each in found.blockers] or [say("swap-no-blocker")]
    priced = [say("map-prices", money=found.money)] if found.money else []
    kept = say("swap-kept-aim") if found.wish.target else say("swap-kept")
    return {
        "unchanged": found.unchanged,
        "traces": list(found.traces_words(found.proposals[0])) if found.unchanged else [],
        "proposals": [_proposal(each, found, question.given, number, sources)
                      for number, each in enumerate(found.proposals, 1)],
        "blockers": [] if found.proposals or found.unchanged else blockers,
        "notes": [*found.shared_notes, kept, *priced, caution("rules").brief] if found.proposals else [],
        "sources": sources,
    }  # fmt: skip


def _proposal(
    each: "Proposal", found: "Swap", given: Given, number: int, sources: dict[str, Any]
) -> dict[str, Any]:  # fmt: skip
    from lumped.texts import say

    way = say(f"swap-way-{each.recipe.cooked.replace(' ', '-')}")
    portions = [
        (
            one.ingredient,
            one.written if one.mass.mean else "",
            one.as_needed and (1e3 * one.as_needed[0], 1e3 * one.as_needed[1]),
        )
        for one in each.recipe.portions
    ]
    changes = changes_to(given, portions) | {"title": each.recipe.title}
    if each.recipe.cooked != found.recipe.cooked:
        changes["cooked"] = each.recipe.cooked
    if each.recipe.measures != found.recipe.measures:
        changes["measures"] = each.recipe.measures
    return {
        "heading": say("web-proposal", number=number, way=way),
        "amounts": list(_amounts(each, found, number, sources)),
        "figures": list(_figures(each, found, given, number, sources)),
        "traces": list(found.traces_words(each)),
        "reasons": [one.words for one in each.reasons] or [say("swap-hardly-moves")],
        "notes": list(_to_know(each, found)), "cautions": list(each.cautions),
        "changes": changes,
    }  # fmt: skip


def _amounts(
    each: "Proposal", found: "Swap", number: int, sources: dict[str, Any]
) -> Iterator[tuple[str, str, str, str]]:  # fmt: skip
    """Key, name, amount before and amount now, of each ingredient; "" where it is none."""
    from lumped.texts import say

    origins = {one.ingredient: one.mass.provenance for one in (*found.recipe.portions, *each.recipe.portions)}
    for one in each.changes:
        before, name = found.now.get(one.ingredient, ""), found.names[one.ingredient]
        for place, written in (("amount", one.written), ("amount-before", before)):
            kept = written == before
            note = say("web-beside-amount-written", written=before) if kept else say("web-source-swap-amount")
            if written:
                key = f"no-{number}-{place}-{one.ingredient}"
                sources[key] = told_of(name, origins[one.ingredient], note=note)
        yield one.ingredient, name, before, one.written


def _figures(
    each: "Proposal", found: "Swap", given: Given, number: int, sources: dict[str, Any]
) -> Iterator[tuple[str, str, str, str]]:  # fmt: skip
    """Key, words, figure before and figure now, of each property."""
    from lumped.dough.properties import PROPERTIES
    from lumped.texts import say

    open_before = list(opened(kneading_of(given), shop_of(given)))

    for key, now in each.properties.items():
        if key not in found.before:
            continue
        shown, place = PROPERTIES[key], f"no-{number}-{key}"
        sources[place] = told_of(shown.words, now.provenance, note=say("web-source-swap"), recipe=each.recipe)
        sources[f"{place}-before"] = told_of(shown.words, found.before[key].provenance, open_before,
                                             note=say("web-source-chain"), recipe=found.recipe)  # fmt: skip
        yield place, shown.words, shown.text(found.before[key], found.money), shown.text(now, found.money)
    place = f"no-{number}-ratio"
    sources[place] = told_of(
        say("swap-ratio"), each.ratio.provenance, note=say("web-source-what-if"), recipe=each.recipe
    )
    yield place, say("swap-ratio"), "", f"× {each.ratio.text()}"
    place = f"no-{number}-feel"
    for which, feel in ((place, each.feel), (f"{place}-before", found.feel)):
        sources[which] = told_of(say("swap-feel"), feel.score.provenance, note=say("web-source-feel"))
    yield place, say("web-swap-feel"), found.feel.figure, each.feel.figure


def _to_know(each: "Proposal", found: "Swap") -> Iterator[str]:
    from lumped.texts import say

    if each.allergens_new:
        yield say("swap-allergens-new", allergens=", ".join(each.allergens_new))
    if each.allergens_gone:
        yield say("swap-allergens-gone", allergens=", ".join(each.allergens_gone))
    yield from (note for note in each.notes if note not in found.shared_notes)


def salted(question: Question, report: Report) -> dict[str, Any]:
    """Draw the salt picture: `drawings` by theme, `sentences`, `salt`, and where the row ends (`most`, in g)."""
    from lumped.app.maps import salt_row
    from lumped.app.named import named_in
    from lumped.picture.salt_picture import salt_svg
    from lumped.texts import say

    row = salt_row(named_in(question.given), salt=question.said["vary"] or None, region=question.said["region"])
    report(0.6)
    priced = [say("map-prices", money=row.money)] if row.money else []
    return {
        "drawings": {f"dough-{theme}": salt_svg(row, theme=theme) for theme in ("light", "dark")},
        "sentences": [say("salt-keeping"), *priced],
        "salt": row.salt, "name": row.name, "most": _MILLI * float(row.amounts[-1]), "amount": _MILLI * row.amount,
    }  # fmt: skip


def mixed(question: Question, report: Report) -> dict[str, Any]:
    """Draw the mix map: `drawings` by theme, `corners`, what turns a place into grams (`least`, `size`, `total`)."""
    from lumped.app.maps import mixes
    from lumped.app.named import named_in
    from lumped.picture.mix_map import map_svg
    from lumped.texts import say

    said = question.said
    found = mixes(named_in(question.given), said["corners"], said["show"], region=said["region"])
    report(0.5)
    priced = [say("map-prices", money=found.money)] if found.money else []
    return {
        "drawings": {f"dough-{theme}": map_svg(found, theme=theme) for theme in ("light", "dark")},
        "corners": list(found.corners), "least": found.least.tolist(), "size": found.size,
        "total": _MILLI * found.total, "point": found.point.tolist(), "sentences": [say("map-middle"), *priced],
    }  # fmt: skip


def walled(given: Given, thick: float, touch: float, lamp: str) -> dict[str, Any]:
    """Judge a wall of a dough beside a lamp.

    Parameters
    ----------
    given : Given
        The recipe.
    thick, touch : float
        Thickness, and where the lumps touch it. [mm], [cm²]
    lamp : str
        Key of the lamp.

    Returns
    -------
    dict
        `enough`, `words`, `figures` (key, words and figure), `states`, and each number's source.
    """
    from lumped.texts import say
    from lumped.verdict.walls import Wall, judge_wall

    done = kneading_of(given)
    recipe = done.recipe
    resistivity = done.value(done.chain.resistivity, "Ω·m", "resistivity")
    found = judge_wall(Wall(thickness=_MM * thick, area=_CM2 * touch), resistivity, lamp)
    values = {"leak": found.leak, "current": found.current, "without": found.without}
    return {
        "enough": found.enough, "words": found.words,
        "states": [say(f"state-lamp-{each}") for each in found.states],
        "figures": [
            (f"wall-{key}", say(f"web-wall-{key}"), _milliamperes(each)) for key, each in values.items()
        ],
        "sources": {
            f"wall-{key}": told_of(
                say(f"web-wall-{key}"), each.provenance, [(say("dough-step-resistivity"), resistivity)],
                note=say("wall-scene"), recipe=recipe,
            )
            for key, each in values.items()
        },
    }  # fmt: skip


def _milliamperes(current: "Value") -> str:
    """Write a current as a wall's page shows it: between its ends; what no lamp shows is only said to be less."""
    from lumped.quantities import rounded_text
    from lumped.texts import say

    ends = [_MILLI * current.low, _MILLI * current.high]
    if ends[1] < _LEAST:
        return say("web-wall-hardly", least=f"{_LEAST:g}")
    return " to ".join(dict.fromkeys(rounded_text(end if end >= _LEAST else 0.0) for end in ends)) + " mA"


def wall_lasts(question: Question, report: Report) -> dict[str, Any]:
    """Say for how long a wall does, while salt creeps in: `night`, the key of its headline, `words`, and `sources`."""
    from lumped.app.doughs import wall_of
    from lumped.app.named import named_in
    from lumped.texts import say

    said = question.said
    found = wall_of(named_in(question.given), thickness=_MM * said["thick"], area=_CM2 * said["touch"],
                    lamp=said["lamp"])  # fmt: skip
    report(1.0)
    lasting = found.lasting
    assert lasting is not None
    told = told_of(say("heading-wall-lasts"), lasting.lasts.provenance, note=say("web-source-creep"))
    return {"night": lasting.night, "words": list(lasting.words), "sources": {"wall-lasts": told}}
