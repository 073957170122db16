"""`lumped shop RECIPE… --people "28 of 9 in pairs" --region japan`: whole packets for several doughs together."""

import argparse
from collections.abc import Iterator
from itertools import groupby
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.workshop.shopping import Bought, Shopping

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("shop", help=say("cli-shop"), description=say("cli-shop"))
    verb.add_argument("recipes", type=Path, nargs="+", metavar="RECIPE", help=say("cli-recipe"))
    verb.add_argument("--region", metavar="REGION", help=say("cli-make-region"))
    verb.add_argument("--people", action="append", default=[], metavar="WHO", help=say("cli-make-people"))
    verb.add_argument("--mass", action="append", default=[], metavar="MASS", help=say("cli-shop-mass"))
    verb.add_argument("--have", action="append", default=[], metavar="WHAT", help=say("cli-shop-have"))
    verb.add_argument("--little-over", action="store_true", help=say("cli-shop-little-over"))
    verb.add_argument("--label", type=Path, action="append", default=[], metavar="FILE", help=say("cli-label"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Make a shopping list and print it."""
    from lumped.app.making import shopping

    found = shopping(
        said.recipes, said.region, people=said.people, masses=said.mass, have=said.have,
        little_over=said.little_over, labels=said.label,
    )  # fmt: skip
    if said.json:
        print_json(found.as_dict())
        return 0
    _print_shopping(found, little_over=said.little_over)
    return 0


def _print_shopping(found: "Shopping", *, little_over: bool) -> None:
    from lumped.quantities import rounded_text as short

    mark = say("invented-mark") if found.invented else ""
    print_title(say("shopping-title", titles=", ".join(title for title, _ in found.doughs)) + mark)
    amounts = [say("shopping-amount", mass=short(mass), title=title) for title, mass in found.doughs]
    print_line(say("shopping-for", amounts=", ".join(amounts)))
    print_line("")
    bought = [each for each in found.lines if each.sold.place != "tap"]
    for place, lines in groupby(bought, key=lambda each: each.sold.words):
        print_line(say("shopping-place", place=f"{place[:1].upper()}{place[1:]}"))
        headings = ["", "", say("column-need"), say("column-buy"), say("column-over"), found.money]
        print_table(headings, list(_rows(list(lines))), numbers=(2, 4, 5))
    if tapped := [each for each in found.lines if each.sold.place == "tap"]:
        print_line(say("shopping-tap", what=", ".join(f"{_weight(each.need)} {each.name}" for each in tapped)))
    total = found.total
    print_line(say("shopping-total", total=short(total.mean), low=short(total.low), high=short(total.high),
                   money=found.money))  # fmt: skip
    print_line("")
    print_notes(say("heading-hints"), found.hints)
    chosen = say("shopping-least" if little_over else "shopping-cheapest")
    print_notes(say("heading-findings"), [chosen, say("shopping-used", money=found.money, dated=found.dated)])


def _rows(lines: "list[Bought]") -> "Iterator[tuple[str, ...]]":
    for each in lines:
        over = "" if each.over is None else _weight(each.over)
        yield (each.name, say(f"shopping-shelf-{each.shelf}"), _weight(each.need), _packets(each), over, _paid(each))


def _packets(each: "Bought") -> str:
    if not each.packets:
        return say("shopping-have") if each.need <= each.have else ""
    text = ""
    for size, count in each.packets:
        packet = say("shopping-packet", count=str(count), size=_weight(size))
        text = say("shopping-packet-sum", left=text, right=packet) if text else packet
    return text


def _paid(each: "Bought") -> str:
    from lumped.quantities import rounded_text as short

    return short(each.cost.mean) if each.cost else ""


def _weight(mass: float) -> str:
    from lumped.quantities import rounded_text as short
    from lumped.quantities.rounding import significant

    return (
        f"{significant(mass, 3):g} kg"
        if mass >= 1
        else f"{1e3 * mass:.0f} g"
        if mass >= 0.01
        else f"{short(1e3 * mass)} g"
    )
