"""The one-minute trial of a dough as a page shows it: what is seen, how strongly that tells, each number's source."""

from collections.abc import Iterator, Mapping
from typing import TYPE_CHECKING, Any

from lumped.app.given import Given
from lumped.app.labels import shop_of
from lumped.app.own import kneading_of
from lumped.app.sources import opened, told_of
from lumped.app.trial import LAMP, PACK, SCREWS

if TYPE_CHECKING:
    from lumped.app.trial import Trial
    from lumped.quantities import Value
    from lumped.verdict.trial import Seen

__all__ = ["THINGS", "trial_choices", "trialled"]

THINGS = {"mould": "", "lamp": LAMP, "pack": PACK, "screws": SCREWS}
"""What a trial is put together from, and what of each lies there at first: of moulds the one that tells most."""


def trial_choices() -> dict[str, list[tuple[str, str]]]:
    """Give what there is of each of `THINGS`: key and name.

    Examples
    --------
    >>> [key for key, _ in trial_choices()["mould"]]
    ['straw', 'barrel', 'ice-cube']
    """
    from lumped.reference import handbook

    book = handbook()
    kinds = {
        "mould": ("moulds", book.keys("moulds")), "lamp": ("lamps", book.keys("lamps")),
        "pack": ("packs", [key for key in book.keys("packs") if book.entry("packs", key).facts.get("kind") == "pack"]),
        "screws": ("gauges", [key for key in book.keys("gauges") if _is_rod(key)]),
    }  # fmt: skip
    return {thing: [(key, book.name(table, key)) for key in keys] for thing, (table, keys) in kinds.items()}


def _is_rod(key: str) -> bool:
    from lumped.reference import handbook

    return key.startswith(("screw-", "nail-")) and handbook().entry("gauges", key).facts["shape"] == "round"


def trialled(given: Given, things: Mapping[str, str]) -> dict[str, Any]:
    """Say what a one-minute trial of a dough should show.

    Parameters
    ----------
    given : Given
        The recipe.
    things : mapping of str to str
        Keys of some of `THINGS`; what is "" or left out is chosen.

    Returns
    -------
    dict
        `tells`, `go`, `expected`, `lights` (state and words), `batches` (words and shares of bright, faint and dark in
        100), `worth`, `better` (what to take instead, or None), `steps`, `cautions`, `figures`, `line`, `sources`.

    Raises
    ------
    RecipeError, InputError, HandbookError
        If the recipe can't be, there is no such thing, or the screws don't fit.
    """
    from lumped.app.trial import tried

    done, shop = kneading_of(given), shop_of(given)
    found = tried(done, shop, **{name: each for name, each in things.items() if each})
    made = found.seen.line
    values = dict(_values(found))
    parts = list(_parts(found.seen))
    open_in = {"good": list(opened(done, shop)), "bright": parts, "dark": parts}
    return {
        "tells": found.tells, "go": found.seen.go, "kind": found.kind, "expected": found.expected,
        "lights": list(found.lights), "spread": found.spread, "batches": _batches(found), "worth": list(found.worth),
        "better": _better(found), "steps": list(found.steps), "cautions": list(found.cautions),
        "line": {"mould": made.mould.key, "kind": made.mould.kind, "lamp": made.lamp, "resistor": bool(made.resistor)},
        "figures": [(f"trial-{key}", _name(key), each.text()) for key, each in values.items()],
        "sources": {
            f"trial-{key}": told_of(_name(key), each.provenance, open_in[key], note=_note(key), recipe=done.recipe)
            for key, each in values.items()
        } | {"trial-line": _line(found, parts)},
    }  # fmt: skip


def _line(found: "Trial", parts: "list[tuple[str, Value]]") -> dict[str, Any]:
    """Where what should be seen comes from: the mould, the lamp, and the dough between them."""
    from lumped.quantities import Provenance

    origin = Provenance.of([found.resistivity.provenance, *(each.provenance for _, each in parts)])
    return told_of(_name("line"), origin, parts, note=_note("line"))


def _values(found: "Trial") -> "Iterator[tuple[str, Value]]":
    yield "good", found.resistivity
    if found.seen.bright_below.mean > 0:
        yield "bright", found.seen.bright_below
    if found.seen.dark_above.mean > 0:
        yield "dark", found.seen.dark_above


def _name(key: str) -> str:
    from lumped.texts import say

    return say(f"web-trial-{key}")


def _note(key: str) -> str:
    from lumped.texts import say

    return say("web-source-chain") if key == "good" else say("web-trial-note")


def _parts(seen: "Seen") -> "Iterator[tuple[str, Value]]":
    """What is open of mould, lamp and pack."""
    from lumped.reference import handbook
    from lumped.texts import say

    book, made = handbook(), seen.line
    yield say("web-trial-open-mould"), made.mould.factor
    for step in ("bright", "barely_lit"):
        yield say(f"web-trial-open-{step.replace('_', '-')}"), book.value("lamps", made.lamp, f"{step}_current")


def _batches(found: "Trial") -> list[tuple[str, dict[str, int]]]:
    from lumped.texts import say
    from lumped.verdict.trial import as_hundred

    good = as_hundred(found.seen.good)
    if not found.is_sound:
        return [(say("web-trial-these-batches"), good)]
    return [(say("web-trial-good-batches"), good),
            (say("web-trial-bad-batches", bad=found.mistake), as_hundred(found.seen.bad))]  # fmt: skip


def _better(found: "Trial") -> dict[str, str] | None:
    if found.better is None:
        return None
    made = found.better.line
    return {"mould": made.mould.key, "lamp": made.lamp, "pack": made.pack, "screws": made.mould.rods}
