"""`lumped swap RECIPE --without INGREDIENT`: something else instead, and why the dough moves."""

import argparse
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.cli.recipe import add_recipe, print_taught, print_unfit, recipe_named
from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.dough.swap import Proposal, Swap

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("swap", help=say("cli-swap"), description=say("cli-swap-about"))
    add_recipe(verb)
    verb.add_argument("--without", action="append", default=[], metavar="INGREDIENT", help=say("cli-swap-without"))
    verb.add_argument("--diet", action="append", default=[], metavar="DIET", help=say("cli-swap-diet"))
    verb.add_argument("--region", metavar="REGION", help=say("cli-swap-region"))
    verb.add_argument("--target", metavar="TARGET", help=say("cli-swap-target"))
    verb.add_argument("--measures", metavar="MEASURES", help=say("cli-swap-measures"))
    verb.add_argument("--count", type=int, default=3, metavar="NUMBER", help=say("cli-swap-count"))
    verb.add_argument("--take", nargs=2, metavar=("NUMBER", "FILE"), help=say("cli-swap-take"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Look for other recipes and print them."""
    from lumped.app.swaps import swap, write_proposal

    number, file = _taken(said.take)
    dough = recipe_named(said)
    found = swap(
        dough, without=said.without, diets=said.diet, region=said.region, target=said.target,
        measures=said.measures, count=said.count,
    )  # fmt: skip
    if said.take:
        write_proposal(found, number, file)
    if said.json:
        print_json(found.as_dict() | dough.as_dict())
        return 0
    print_unfit(dough)
    _print_swap(found)
    print_taught(dough)
    if said.take:
        print_line(say("swap-taken", number=number, file=str(file), title=found.proposals[number - 1].recipe.title))
    return 0


def _taken(words: tuple[str, str] | None) -> tuple[int, Path]:
    """Which proposal is written, and where."""
    from lumped.errors import InputError

    if words is None:
        return 0, Path()
    if not words[0].isdecimal():
        raise InputError("swap-take-two")
    return int(words[0]), Path(words[1])


def _print_swap(found: "Swap") -> None:
    from lumped.dough.safety import caution

    print_title(say("swap-title", title=found.recipe.title), invented=found.recipe.invented)
    if found.unchanged:
        print_line(say("swap-as-it-is"))
        for words in found.traces_words(found.proposals[0]):
            print_line(words)
        return
    if not found.proposals:
        print_line(say("swap-none"))
        blockers = [each.words for each in found.blockers] or [say("swap-no-blocker")]
        print_notes(say("heading-blockers"), blockers)
        return
    numbers = [say("swap-number", number=number) for number in range(1, len(found.proposals) + 1)]
    print_table([say("column-goes-in"), say("swap-now"), *numbers], _amounts(found))
    print_table([say("column-comes-out"), say("swap-now"), *numbers], _outcomes(found))
    for number, each in enumerate(found.proposals, 1):
        print_notes(say("heading-proposal", number=number, way=_way(each)), list(_sentences(each, found)))
    remembered = [say("map-prices", money=found.money)] if found.money else []
    order = say("swap-kept-aim") if found.wish.target else say("swap-kept")
    print_notes(say("heading-findings"), [*found.shared_notes, order, say("swap-steps"), *remembered])
    keys = ("salt-skin", "rules") if found.recipe.kind == "conducting" else ("rules",)
    print_notes(say("heading-cautions"), [caution(key).brief for key in keys])


def _amounts(found: "Swap") -> Iterator[tuple[str, ...]]:
    """Each ingredient as it is measured now and in each proposal."""
    every = dict.fromkeys(each.ingredient for proposal in found.proposals for each in proposal.changes)
    after = [{each.ingredient: each.written for each in proposal.changes} for proposal in found.proposals]
    for key in every:
        now = found.now.get(key)
        yield found.names[key], now or say("beside-none"), *(one.get(key) or say("beside-none") for one in after)
    yield say("swap-way"), _words(found.recipe.cooked), *(_way(each) for each in found.proposals)


def _outcomes(found: "Swap") -> Iterator[tuple[str, ...]]:
    """Each property with its interval, now and in each proposal."""
    from lumped.dough.properties import PROPERTIES

    for key, now in found.before.items():
        shown = PROPERTIES[key]
        yield (
            shown.words,
            shown.text(now, found.money),
            *(shown.text(each.properties[key], found.money) for each in found.proposals),
        )
    yield say("swap-ratio"), "", *(f"× {each.ratio.text()}" for each in found.proposals)
    yield say("swap-feel"), found.feel.score.text(), *(each.feel.score.text() for each in found.proposals)
    yield (
        say("beside-allergens"), ", ".join(found.allergens) or say("beside-none"),
        *(", ".join(each.allergens) or say("beside-none") for each in found.proposals),
    )  # fmt: skip


def _sentences(each: "Proposal", found: "Swap") -> Iterator[str]:
    yield from found.traces_words(each)
    yield from (reason.words for reason in each.reasons)
    if not each.reasons:
        yield say("swap-hardly-moves")
    if each.allergens_new:
        yield say("swap-allergens-new", allergens=", ".join(each.allergens_new))
    if each.allergens_gone:
        yield say("swap-allergens-gone", allergens=", ".join(each.allergens_gone))
    yield from (note for note in each.notes if note not in found.shared_notes)
    yield from (say("swap-caution", caution=caution) for caution in each.cautions)


def _way(each: "Proposal") -> str:
    return _words(each.recipe.cooked)


def _words(cooked: str) -> str:
    return say(f"swap-way-{cooked.replace(' ', '-')}")
