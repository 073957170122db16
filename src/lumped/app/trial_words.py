"""The sentences of a one-minute trial: its steps, what each light means, how well it tells good from bad."""

from collections.abc import Iterator
from typing import TYPE_CHECKING

from lumped.texts import say

if TYPE_CHECKING:
    from lumped.app.trial import Trial
    from lumped.reference.rows import Row
    from lumped.verdict.trial import Line, Seen

__all__ = [
    "LAMP", "PACK", "SCREWS", "figure_text", "in_hundred", "needs_of", "on_the_card", "passing", "steps_of",
    "whether_it_tells", "zone_text",
]  # fmt: skip

LAMP, PACK, SCREWS = "lamp-red", "pack-4aa-alkaline", "screw-stainless-3mm"


def whether_it_tells(found: "Trial") -> Iterator[str]:
    """Say what batches with a mistake look like, whether the trial can tell, and what tells better."""
    if not found.is_sound:
        yield say(f"trial-unfit-{found.stands}")
        return
    yield say("trial-bad", bad=found.mistake, **in_hundred(found.seen.bad))
    if found.tells:
        yield say("trial-tells", bad=found.mistake)
        return
    yield say("trial-tells-not", bad=found.mistake, **_missing(found.seen))
    if found.better is None:
        yield say("trial-no-better")
    else:
        key = "trial-better" if found.better.tells else "trial-best"
        yield say(key, **_names(found.better.line, but="resistor"), **_missing(found.better))


def needs_of(line: "Line") -> Iterator[str]:
    """Say what to fetch: mould with its inner size, screws, lamp, pack, resistor."""
    from lumped.reference import handbook

    mould, things, book = line.mould, _names(line), handbook()
    inside = ("bore",) if mould.kind == "tube" else ("length", "width", "height")
    sizes = [_inner(name, book.entry("moulds", mould.key).rows[name]) for name in inside]
    yield say("trial-need-mould", mould=things["mould"], sizes=", ".join(sizes))
    yield say("trial-need-screws", screws=book.name("gauges", mould.rods), depth=_millimetres(mould.depth))
    yield from (things[name] for name in ("lamp", "pack", "resistor") if name in things)


def _inner(name: str, row: "Row") -> str:
    """A size inside a mould with its ends and its status, in the millimetres of the handbook."""
    mm = {end: f"{each:g}" for end, each in (("size", row.printed), ("low", row.low), ("high", row.high))}
    return say(f"trial-need-{name}", status=row.value.provenance.status.value, **mm)


def steps_of(line: "Line") -> Iterator[str]:
    """Say what to do, in order."""
    from lumped.reference import handbook
    from lumped.verdict.trial import touching

    mould, things = line.mould, _names(line)
    sizes = {name: f"{1e3 * row.value.mean:g}" for name, row in handbook().entry("moulds", mould.key).rows.items()}
    if line.resistor:
        yield say("trial-step-resistor", resistor=things["resistor"])
    else:
        yield say("trial-step-plain")
    yield say("trial-step-touch", state=say(f"trial-state-{touching(line)[0]}"))
    yield say(f"trial-step-fill-{mould.key}", length=sizes["length"])
    if mould.kind == "tube":
        yield say("trial-step-tube", depth=sizes["depth"], gap=_millimetres(mould.gap))
    else:
        yield say("trial-step-cube", depth=sizes["depth"], spacing=sizes["spacing"])
    yield say("trial-step-look")
    yield say("trial-step-apart")


def _names(line: "Line", but: str = "") -> dict[str, str]:
    from lumped.reference import handbook

    book = handbook()
    found = {"mould": line.mould.name, "lamp": book.name("lamps", line.lamp), "pack": book.name("packs", line.pack)}
    if line.resistor:
        found["resistor"] = book.name("resistors", line.resistor)
    return {name: words for name, words in found.items() if name != but}


def on_the_card(line: "Line") -> dict[str, str]:
    """What a card names, in its language; of lamps and packs the usual ones have a name in all of them."""
    from lumped.app.card_words import local

    named = _names(line)
    lamp = say("card-trial-lamp") if line.lamp == LAMP else named["lamp"]
    pack = say("card-trial-pack") if line.pack == PACK else named["pack"]
    resistor = {"resistor": say("card-trial-resistor", ohms=f"{line.ohms:.0f}")} if line.resistor else {}
    mould = say(f"card-trial-mould-{line.mould.key}")
    return {"depth": local(_millimetres(line.mould.depth)), "mould": mould, "lamp": lamp, "pack": pack, **resistor}


def zone_text(state: str, ends: dict[str, str], what: str) -> str:
    """Say between which resistivities a light is seen, and what to do then."""
    return say(f"trial-zone-{state}", what=what, **ends)


def in_hundred(shares: dict[str, float]) -> dict[str, int]:
    """Give shares of batches as whole numbers of a hundred."""
    from lumped.verdict.trial import as_hundred

    return as_hundred(shares)


def _missing(seen: "Seen") -> dict[str, int]:
    return {"missed": 100 - in_hundred(seen.good)[seen.go], "passed": in_hundred(seen.bad)[seen.go]}


def passing(seen: "Seen") -> dict[str, int]:
    """Give how many of a hundred good batches, and of a hundred with the mistake, pass."""
    return {"good": in_hundred(seen.good)[seen.go], "passed": in_hundred(seen.bad)[seen.go]}


def _millimetres(length: float) -> str:
    return f"{1e3 * length:.3g}"


def figure_text(resistivity: float) -> str:
    """Write a resistivity with two digits. [Ω·m]"""
    from lumped.quantities.rounding import significant

    number = significant(resistivity, 2)
    return f"{number:,.0f}" if number >= 10 else f"{number:g}"
