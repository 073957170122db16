"""`lumped make RECIPE --people "28 of 9 in pairs"`: batches in grams and measures, times, cost."""

import argparse
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.quantities import Value
    from lumped.workshop import Making
    from lumped.workshop.kitchen import Line

__all__ = ["add_to"]

_HOURS_FROM = 2 * 3600.0
_MANY = 6


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("make", help=say("cli-make"), description=say("cli-make-about"))
    verb.add_argument("recipe", type=Path, metavar="RECIPE", help=say("cli-recipe"))
    verb.add_argument("--people", action="append", default=[], metavar="WHO", help=say("cli-make-people"))
    verb.add_argument("--mass", metavar="MASS", help=say("cli-make-mass"))
    verb.add_argument("--pot", metavar="VOLUME", help=say("cli-make-pot"))
    verb.add_argument("--region", metavar="REGION", help=say("cli-make-region"))
    verb.add_argument("--measures", metavar="MEASURES", help=say("cli-make-measures"))
    verb.add_argument("--within", metavar="TIME", help=say("cli-make-within"))
    verb.add_argument("--label", type=Path, action="append", default=[], metavar="FILE", help=say("cli-label"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Plan making a dough and print it."""
    from lumped.app.making import make

    made = make(
        said.recipe, people=said.people, mass=said.mass, pot=said.pot, region=said.region, measures=said.measures,
        within=said.within, labels=said.label,
    )  # fmt: skip
    if said.json:
        print_json(made.as_dict())
        return 0
    _print_making(made)
    return 0


def _print_making(made: "Making") -> None:
    mark = say("invented-mark") if made.recipe.invented else ""
    whom = say("making-for-one", count=made.people)
    title = made.recipe.title
    print_title((say("making-title", title=title, **{"for": whom}) if made.people else title) + mark)
    for sentence in (*_first(made), ""):
        print_line(sentence)
    _print_batch(made)
    _print_times(made)
    if made.within is not None:
        _print_in_time(made, made.within)
    print_notes(say("heading-cost"), list(_cost(made)))
    print_notes(say("heading-cautions"), made.cautions)


def _first(made: "Making") -> Iterator[str]:
    from lumped.quantities import rounded_text as short

    batches = made.batches
    mass = batches.mass
    if made.wants is not None:
        yield from (f"{each.text()[:1].upper()}{each.text()[1:]}." for each in made.parties)
        yield say("making-wants", wants=short(made.wants.mean), low=short(made.wants.low), high=short(made.wants.high),
                  reserve=f"{100 * made.reserve:.0f}", made=short(mass.mean))  # fmt: skip
    else:
        yield say("making-yields", made=short(mass.mean), low=short(mass.low), high=short(mass.high))
    yield say("making-first", count=batches.count, mass=short(1e3 * batches.each.mean), pot=f"{1e3 * batches.pot:g}",
              full=f"{100 * batches.full:.0f}", way=_way(made.recipe.cooked))  # fmt: skip
    if batches.count > _MANY:
        yield say("making-many")


def _print_batch(made: "Making") -> None:
    count = made.batches.count
    headings = [say("column-batch"), say("column-grams"), say("column-measures", name=_drawer(made.measures))]
    rows: list[tuple[str, ...]] = [(each.name, each.grams(), _measures(each)) for each in made.lines]
    if count > 1:
        headings.append(say("column-all-batches"))
        rows = [(*row, each.grams(count)) for row, each in zip(rows, made.lines, strict=True)]
    print_table(headings, rows, numbers=(1, 3))
    if made.shifts:
        shift = {
            key: f"{100 * made.shifts[key]:+.1f}".replace("-", "−") for key in ("resistivity", "hydration", "mass")
        }
        print_line(say("making-shift", **shift))
        print_line("")


def _drawer(system: str) -> str:
    """Whose cups and spoons, in words."""
    from lumped.pantry.measures import kitchen, kitchens

    return kitchen(system).name if system in kitchens() else say("making-on-scale")


def _measures(each: "Line") -> str:
    firm = each.measures or say("making-nothing-firm")
    if each.as_needed is None:
        return firm
    least, most = (f"{1e3 * end:.0f}" for end in each.as_needed)
    feel = say("making-by-feel-from", least=least, most=most) if each.as_needed[0] else say("making-by-feel", most=most)
    return f"{firm} {feel}"


def _print_times(made: "Making") -> None:
    rows = [(each.words, _minutes(each.time)) for each in made.steps]
    rows.append((say("making-busy"), _minutes(made.active)))
    print_table([say("column-work"), say("making-column-time")], rows)
    line = "making-ready-pot" if made.waits else "making-ready-at-once"
    print_line(say(line, time=_minutes(made.ready)))
    if made.waits and made.within is None:
        cooling = [
            (say(f"making-place-{each.place}"), _minutes(each.wait), _minutes(each.ready)) for each in made.waits
        ]
        print_line("")
        print_table([say("column-cooling"), say("column-safe"), say("column-all-ready")], cooling)
    else:
        print_line("")


def _print_in_time(made: "Making", time: float) -> None:
    minutes = f"{time / 60:.0f}"
    rows = [(each.words, _minutes(each.ready), _amount(each.most, each.surely, made)) for each in made.options]
    print_line(say("heading-in-time", minutes=minutes))
    print_line("")
    print_table([say("column-way"), say("column-all-ready"), say("column-in-time", minutes=minutes)], rows)
    best = max(made.options, key=lambda each: (each.surely, each.most))
    found = say("making-best-none", minutes=minutes)
    if best.most > 0:
        amount = _amount(best.most, best.surely, made)
        found = say("making-best-time", minutes=minutes, words=best.words, amount=amount)
    notes = {(each.way, note): say("making-note", way=_way(each.way), note=note)
             for each in made.options for note in each.notes}  # fmt: skip
    print_notes(say("heading-findings"), [found, *notes.values(), say("making-day-before"), say("making-memory")])


def _amount(most: float, surely: float, made: "Making") -> str:
    whole = made.batches.mass.mean * 0.999
    if surely >= whole:
        return say("making-all")
    if most <= 0:
        return say("making-none")
    likely = say("making-all") if most >= whole else _kilograms(most)
    if not surely:
        return say("making-some", most=likely)
    return say("making-some-surely", most=likely, surely=_kilograms(surely)) if most > surely else _kilograms(surely)


def _kilograms(mass: float) -> str:
    from lumped.quantities.rounding import significant

    return say("making-kilograms", mass=f"{significant(mass, 2):g}")


def _way(cooked: str) -> str:
    return say(f"making-way-{cooked.replace(' ', '-')}")


def _cost(made: "Making") -> Iterator[str]:
    if made.cost is None:
        yield say("making-cost-none")
        return
    cost = made.cost
    person = say("making-cost-person", person=cost.person.text()) if cost.person else ""
    yield say("making-cost", whole=cost.whole.text(), batch=cost.batch.text(), person=person, money=cost.money,
              dated=cost.dated)  # fmt: skip
    if cost.unpriced:
        yield say("making-cost-unpriced", names=", ".join(cost.unpriced))


def _minutes(time: "Value") -> str:

    if time.mean >= _HOURS_FROM:
        mean, low, high = (f"{each / 3600:.1f}" for each in (time.mean, time.low, time.high))
        return say("making-hours-between", mean=mean, low=low, high=high)
    mean, low, high = (f"{each / 60:.0f}" for each in (time.mean, time.low, time.high))
    return say("making-minutes-between", mean=mean, low=low, high=high)
