"""`lumped beside RECIPE RECIPE …`: recipes, or revisions of one, side by side."""

import argparse
from typing import TYPE_CHECKING, Any

from lumped.cli.notebook_opening import add_common, settings_of
from lumped.cli.show import print_json, print_notes, print_table, print_title
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.dough.comparing import Comparison

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("beside", help=say("cli-beside"), description=say("cli-beside-about"))
    verb.add_argument("recipes", nargs="+", metavar="RECIPE", help=say("cli-beside-recipe"))
    verb.add_argument("--region", metavar="REGION", help=say("cli-region"))
    add_common(verb, default=None)
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Put recipes side by side and print them."""
    from lumped.app import maps

    found = maps.beside(said.recipes, settings=settings_of(said), region=said.region)
    if said.json:
        print_json(found.as_dict())
        return 0
    _print_comparison(found)
    return 0


def _print_comparison(found: "Comparison") -> None:
    from lumped.pantry import pantry

    names = [side.name + (say("invented-mark") if side.recipe.invented else "") for side in found.sides]
    print_title(say("beside-title"))
    amounts = [
        (pantry()[key].name, *(_grams(side.amounts.get(key)) for side in found.sides)) for key in found.ingredients
    ]
    print_table([say("column-goes-in"), *names], amounts)
    rows = [
        (each.words, *(each.text(side.properties[each.key], found.money) for side in found.sides))
        for each in found.properties
    ]
    rows.append((say("beside-ratio"), *(_ratio(side.ratio, k) for k, side in enumerate(found.sides))))
    rows.append((say("beside-allergens"), *(", ".join(side.allergens) or say("beside-none") for side in found.sides)))
    print_table([say("column-comes-out"), *names], rows)
    remembered = [say("map-prices", money=found.money)] if found.money else []
    print_notes(say("heading-findings"), [say("beside-shared"), *remembered])


def _grams(amount: Any) -> str:
    if amount is None:
        return say("beside-none")
    if amount.is_exact:
        return f"{1e3 * amount.mean:.4g} g"
    return f"{1e3 * amount.mean:.4g} g ({1e3 * amount.low:.3g} to {1e3 * amount.high:.3g})"


def _ratio(ratio: Any, number: int) -> str:
    return say("beside-itself") if number == 0 else f"× {ratio.text()}"
