"""`lumped care RECIPE …`: allergens, diets, children's needs, what is dangerous to eat, what to mind."""

import argparse
import shlex
from collections.abc import Iterator, Sequence
from datetime import date
from typing import TYPE_CHECKING, Any

from lumped.cli.moments import read_day
from lumped.cli.recipe import add_recipes, print_unfit, recipes_named
from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.app.care import Care, CareTable

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("care", help=say("cli-care"), description=say("cli-care-about"))
    add_recipes(verb, words=say("cli-care-recipes"))
    verb.add_argument("--child", action="append", default=[], metavar="NEED", help=say("cli-care-child"))
    verb.add_argument("--age", type=float, default=2.0, metavar="YEARS", help=say("cli-care-age"))
    verb.add_argument("--dog", type=float, metavar="KG", help=say("cli-care-dog"))
    verb.add_argument("--on", type=read_day, default=None, metavar="DAY", help=say("cli-care-on"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Print what to mind with the doughs of a table."""
    from lumped.app.care import care_for

    together = recipes_named(said)
    found = care_for(together, needs=said.child, on=said.on or date.today(), age=said.age, dog=said.dog)
    if said.json:
        print_json(found.as_dict() | together.as_dict())
        return 0
    print_unfit(together)
    if found.fit.needs:
        notebook = ["--notebook", said.notebook] if said.notebook else []
        _print_table(found, [*notebook, *(word for label in said.label for word in ("--label", str(label)))])
    for each in found.doughs:
        _print_dough(each, found)
    _print_cautions(found)
    print_notes(say("heading-left-out"), together.left_out)
    return 0


def _print_table(found: "CareTable", further: Sequence[str]) -> None:
    """Print which doughs may stay, what that means for all, and what would mend it."""
    from lumped.app.care_rows import standing
    from lumped.dough.safety import need_in_words

    print_title(say("heading-care-table", needs=", ".join(map(need_in_words, found.fit.needs))))
    columns = [say(f"column-care-{each}") for each in ("dough", "stands", "because")]
    print_table(columns, [(each.dough, each.words, "; ".join(each.because) or "–") for each in standing(found)])
    print_notes(say("heading-care-whole-table"), found.fit.words)
    print_notes(say("heading-care-mend"), list(_mends(found, further)))


def _mends(found: "CareTable", further: Sequence[str]) -> Iterator[str]:
    """Say which command would mend each dough, or which packet to read."""
    from lumped.app.care_rows import packets_to_read

    for each in found.fit.mends:
        words = ["lumped", "swap", found.of(each.dough).place]
        words += [word for diet in each.diets for word in ("--diet", diet)]
        words += [word for one in each.without for word in ("--without", one)]
        yield say("care-mend", dough=each.dough, command=shlex.join([*words, *further]))
    if found.fit.mends:
        yield say("care-mend-look")
    for dough, ingredients in packets_to_read(found).items():
        yield say("care-mend-packet", dough=dough, ingredients=", ".join(ingredients))


def _print_dough(each: "Care", found: "CareTable") -> None:
    print_title(each.name, invented=each.invented)
    rows = [
        (
            say(f"care-{where}"),
            "; ".join(f"{name} ({', '.join(each.names[key] for key in keys)})" for name, keys in there.items()) or "–",
        )
        for where, there in (("eu", each.allergens.eu), ("us", each.allergens.us), ("traces", each.allergens.traces))
    ]
    rows += [(diet, met.why) for diet, met in each.diets.items()]
    print_table([say("column-care"), say("column-care-found")], rows)
    _print_doses(each, found)
    _print_metals(each, found)


def _print_doses(each: "Care", found: "CareTable") -> None:
    from lumped.app.care_rows import dose_rows

    rows = dose_rows(each)
    if not rows:
        return
    print_line(
        say("heading-care-doses", age=f"{found.eaters.age:g}", child=f"{found.eaters.child.mean:.3g}",
            dog=f"{found.eaters.dog.mean:.3g}")
    )  # fmt: skip
    columns = [say(f"column-care-{name}") for name in ("dose", "amount", "held", "source")]
    print_table(columns, [(row.words, row.amount, row.held, row.source) for row in rows])


def _print_metals(each: "Care", found: "CareTable") -> None:
    from lumped.app.care_rows import metal_rows

    if each.migration:
        columns = [say(f"column-care-{name}") for name in ("metal", "in-dough", "dry", "pliable", "sticky", "valid")]
        print_line(say("heading-care-metals", date=found.on.isoformat()))
        print_table(columns, metal_rows(each))


def _print_cautions(found: "CareTable") -> None:
    """Print what each dough asks for by itself, then what all do, and what those whom it concerns may ask."""
    shared = found.shared_cautions
    if len(found.doughs) > 1:
        for each in found.doughs:
            own = [one.words for one in each.cautions if one.words not in {other.words for other in shared}]
            print_notes(say("heading-care-of", dough=each.name), own)
    print_notes(say("heading-cautions"), [each.words for each in shared])
    remarks = dict.fromkeys(one.words for each in found.doughs for one in each.remarks)
    print_notes(say("heading-remarks"), list(remarks))
