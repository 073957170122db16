"""What a making is told in, sentences and rows of words: the same in a terminal and on a page."""

from collections.abc import Iterator
from typing import TYPE_CHECKING

from lumped.app.titles import marked
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.quantities import Value
    from lumped.workshop import Making
    from lumped.workshop.kitchen import Line
    from lumped.workshop.within import Option

__all__ = [
    "batch_rows", "blocks_words", "cooling_rows", "cost_words", "drawer_name", "in_time_rows", "in_time_words",
    "making_title", "mass_words", "party_words", "pot_words", "ready_words", "shift_words", "time_text",
    "unpriced_words", "work_rows",
]  # fmt: skip

_HOURS_FROM = 2 * 3600.0
_MANY = 6
_SHIFTS = ("resistivity", "hydration", "mass")


def making_title(made: "Making") -> str:
    """Say which dough is made, for how many people, and whether its recipe is invented."""
    title = made.recipe.title
    if made.people:
        title = say("making-title", title=title, **{"for": say("making-for-one", count=made.people)})
    return marked(title, invented=made.recipe.invented)


def party_words(made: "Making") -> list[str]:
    """Say who comes."""
    return [f"{each.text()[:1].upper()}{each.text()[1:]}." for each in made.parties]


def mass_words(made: "Making") -> str:
    """Say how much hands want and is made."""
    from lumped.quantities import rounded_text as short

    mass = made.batches.mass
    if made.wants is not None:
        return say("making-wants", wants=short(made.wants.mean), low=short(made.wants.low), high=short(made.wants.high),
                  reserve=f"{100 * made.reserve:.0f}", made=short(mass.mean))  # fmt: skip
    return say("making-yields", made=short(mass.mean), low=short(mass.low), high=short(mass.high))


def pot_words(made: "Making") -> Iterator[str]:
    """Say in how many batches it is made, and in which pot."""
    from lumped.quantities import weight_text

    batches = made.batches
    yield say("making-first", count=batches.count, mass=weight_text(batches.each.mean), pot=f"{1e3 * batches.pot:g}",
              full=f"{100 * batches.full:.0f}", way=_way(made.recipe.cooked))  # fmt: skip
    if batches.count > _MANY:
        yield say("making-many")


def drawer_name(system: str) -> str:
    """Say whose cups and spoons.

    Examples
    --------
    >>> drawer_name("scale")
    'kitchen scale'
    """
    from lumped.pantry.measures import kitchen, kitchens

    return kitchen(system).name if system in kitchens() else say("making-on-scale")


def batch_rows(made: "Making") -> tuple[list[str], list[tuple[str, ...]]]:
    """Give headings, and a row for each ingredient: of one batch in grams and measures, of all if there are more."""
    count = made.batches.count
    headings = [say("column-batch"), say("column-grams"), say("column-measures", name=drawer_name(made.measures))]
    rows: list[tuple[str, ...]] = [(each.name, each.grams(), _measures(each)) for each in made.lines]
    if count == 1:
        return headings, rows
    all_of = [each.grams(count) for each in made.lines]
    return [*headings, say("column-all-batches")], [(*row, all_) for row, all_ in zip(rows, all_of, strict=True)]


def _measures(each: "Line") -> str:
    firm = each.measures or say("making-nothing-firm")
    if each.as_needed is None:
        return firm
    least, most = (f"{1e3 * end:.0f}" for end in each.as_needed)
    feel = say("making-by-feel-from", least=least, most=most) if each.as_needed[0] else say("making-by-feel", most=most)
    return f"{firm} {feel}"


def shift_words(made: "Making") -> str:
    """Say what rounding to measures does to the dough; "" where nothing was rounded."""
    if not made.shifts:
        return ""
    return say("making-shift", **{key: f"{100 * made.shifts[key]:+.1f}".replace("-", "−") for key in _SHIFTS})


def work_rows(made: "Making") -> list[tuple[str, str]]:
    """Give a row for each kind of work, the last one for all of it."""
    return [*((each.words, time_text(each.time)) for each in made.steps), (say("making-busy"), time_text(made.active))]


def ready_words(made: "Making") -> str:
    """Say when the dough can be handed out."""
    return say("making-ready-pot" if made.waits else "making-ready-at-once", time=time_text(made.ready))


def cooling_rows(made: "Making") -> list[tuple[str, str, str]]:
    """Give where a batch cools, after how long it is safe for hands, and when all is ready."""
    return [(say(f"making-place-{each.place}"), time_text(each.wait), time_text(each.ready)) for each in made.waits]


def in_time_rows(made: "Making") -> list[tuple[str, str, str]]:
    """Give each way of making it, when all of it is ready so, and how much in the time that was asked for."""
    return [(each.words, time_text(each.ready), _amount(each.most, each.surely, made)) for each in made.options]


def in_time_words(made: "Making") -> Iterator[str]:
    """Say what can be had in the time that was asked for, and what is other then."""
    if made.within is None:
        return
    minutes = f"{made.within / 60:.0f}"
    best = max(made.options, key=lambda each: (each.surely, each.most, each.as_good))
    yield _best(best, minutes, made)
    yield from _others(best, made)
    if blocks := blocks_words(made):
        yield blocks
    yield from dict.fromkeys(say("making-note", way=_way(each.way), note=note)
                             for each in made.options for note in each.notes)  # fmt: skip
    yield say("making-day-before")
    yield say("making-memory")


def _best(best: "Option", minutes: str, made: "Making") -> str:
    """Say which way has most of it ready, and how much worse that dough is, if it is."""
    if best.most <= 0:
        return say("making-best-none", minutes=minutes)
    slots = {"minutes": minutes, "words": best.words, "amount": _amount(best.most, best.surely, made)}
    return say("making-best-time", **slots) if best.as_good else say("making-best-worse", **slots, worse=_worse(best))


def _others(best: "Option", made: "Making") -> Iterator[str]:
    """Say what is as good as the recipe where the best in time is worse, or what is worse but ready sooner."""
    ready = [each for each in made.options if each.most > 0]
    if not best.as_good and (good := [each for each in ready if each.as_good]):
        other = max(good, key=lambda each: (each.surely, each.most))
        yield say("making-as-good", words=other.words, amount=_amount(other.most, other.surely, made))
    sooner = next((each for each in ready if not each.as_good and each.ready.mean < best.ready.mean), None)
    if best.as_good and sooner is not None:
        yield say("making-sooner", time=time_text(sooner.ready), words=sooner.words, worse=_worse(sooner))


def _worse(option: "Option") -> str:
    from lumped.quantities import rounded_text

    return say(f"making-worse-{option.recipe.kind}", factor=rounded_text(option.worse))


def blocks_words(made: "Making") -> str:
    """Say what keeps the recipe, made as it says, from being ready in time: hands and stove, or cooling; else ""."""
    own = [each for each in made.options if each.recipe is made.batches.recipe]
    if made.within is None or any(each.surely >= made.batches.mass.mean * 0.999 for each in own):
        return ""
    soonest = min(own, key=lambda each: each.ready.mean)
    if soonest.place is None or made.active.mean > made.within:
        longest = max(made.steps, key=lambda each: each.time.mean)
        return say("making-blocks-work", active=time_text(made.active), step=longest.words,
                   longest=time_text(longest.time))  # fmt: skip
    wait = next(each.wait for each in made.waits if each.place == soonest.place)
    return say("making-blocks-cooling", active=time_text(made.active), place=say(f"making-place-{soonest.place}"),
               wait=time_text(wait))  # fmt: skip


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


def cost_words(made: "Making") -> Iterator[str]:
    """Say what the ingredients cost, as far as they are used up."""
    if made.cost is None:
        yield say("making-cost-none")
        return
    cost = made.cost
    person = say("making-cost-person", person=cost.person.text()) if cost.person else ""
    yield say("making-cost", whole=cost.whole.text(), batch=cost.batch.text(), person=person, money=cost.money,
              dated=cost.dated)  # fmt: skip
    if unpriced := unpriced_words(made):
        yield unpriced


def unpriced_words(made: "Making") -> str:
    """Say what has no price and is in no sum; "" if all has one."""
    if made.cost is None or not made.cost.unpriced:
        return ""
    return say("making-cost-unpriced", names=", ".join(made.cost.unpriced))


def time_text(time: "Value") -> str:
    """Write a time with its interval, in minutes or hours.

    Examples
    --------
    >>> from lumped.quantities import Provenance, Status, Value
    >>> time_text(Value(mean=1200.0, low=900.0, high=1500.0, unit="s", provenance=Provenance(status=Status.MEASURED)))
    '20 min (15 to 25)'
    """
    if time.mean >= _HOURS_FROM:
        mean, low, high = (f"{each / 3600:.1f}" for each in (time.mean, time.low, time.high))
        return say("making-hours-between", mean=mean, low=low, high=high)
    mean, low, high = (f"{each / 60:.0f}" for each in (time.mean, time.low, time.high))
    return say("making-minutes-between", mean=mean, low=low, high=high)
