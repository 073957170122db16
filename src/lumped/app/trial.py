"""A one-minute go or no-go test of a batch: what a lamp shows through a mould with two screws, and what that means."""

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.app.trial_words import (
    LAMP,
    PACK,
    SCREWS,
    figure_text,
    in_hundred,
    needs_of,
    on_the_card,
    passing,
    steps_of,
    whether_it_tells,
    zone_text,
)
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.dough.kneading import Kneading
    from lumped.dough.unfit import Standing
    from lumped.pantry import Pantry
    from lumped.quantities import Value
    from lumped.verdict.trial import Seen

__all__ = ["LAMP", "PACK", "SCREWS", "Trial", "trial", "tried"]

_ALIKE = 0.5  # of the batches with a mistake; if more look faint, faint is no good sign


@dataclass(frozen=True, slots=True, kw_only=True)
class Trial:
    """A test of a batch.

    Parameters
    ----------
    title, kind : str
        Of the recipe.
    seen : Seen
        What the lamp shows through this mould, with these screws and this pack.
    mistake_key : str
        The mistake that the test should find: "no-salt", "spoon-of-salt" or "no-carrier".
    better : Seen or None
        What tells better, if this does not tell good from bad.
    resistivity : Value
        Of good batches. [Ω·m]
    warm : bool
        Whether the dough comes hot from pot, kettle or microwave.
    stands : {"sound", "none", "opposite"}
        Whether it is a dough and does what it is for; of another there are no good batches to tell from bad ones.
    """

    title: str
    kind: str
    seen: "Seen"
    mistake_key: str
    better: "Seen | None"
    resistivity: "Value"
    warm: bool = False
    stands: "Standing" = "sound"

    @property
    def mistake(self) -> str:
        """The mistake that the test should find, in words."""
        return say(f"trial-bad-{self.mistake_key}")

    @property
    def tells(self) -> bool:
        """Whether the test tells a good batch from one with a mistake; none is good of what is unsound."""
        return self.seen.tells and self.is_sound

    @property
    def is_sound(self) -> bool:
        """Whether there are good batches of it."""
        return self.stands == "sound"

    @property
    def words(self) -> tuple[str, ...]:
        """What should be seen, what each light means, and whether the test can tell."""
        return (self.expected, *self.zones, self.spread, *self.worth)

    @property
    def expected(self) -> str:
        """What good batches look like."""
        return say(f"trial-expect-{self.kind if self.is_sound else 'unfit'}", **in_hundred(self.seen.good))

    @property
    def lights(self) -> tuple[tuple[str, str], ...]:
        """Each light with its sentence: "bright", "faint" or "dark", between which resistivities, what to do then.

        A light that lamps never show stands at "" with its reason.
        """
        seen, kind = self.seen, self.kind
        ends = {"below": figure_text(seen.bright_below.mean), "above": figure_text(seen.dark_above.mean)}
        no = "bright" if seen.go == "dark" else "dark"
        alike = "-bad" if seen.bad["faint"] >= _ALIKE else ""
        between = say(f"trial-say-between-{f'{kind}{alike}' if self.is_sound else 'unfit'}", bad=self.mistake)
        what = {seen.go: say("trial-say-go"), "faint": between, no: say(f"trial-say-no-{kind}")}
        if seen.dark_above.mean == 0:
            return (("", say("trial-zone-always-dark")),)
        if seen.bright_below.mean == 0:
            rest = ("faint", zone_text("faint-first", ends, between)), ("dark", zone_text("dark", ends, what["dark"]))
            return ("", say("trial-zone-never-bright")), *rest
        return tuple((state, zone_text(state, ends, what[state])) for state in ("bright", "faint", "dark"))

    @property
    def zones(self) -> tuple[str, ...]:
        """The sentences of the lights."""
        return tuple(words for _, words in self.lights)

    @property
    def spread(self) -> str:
        """How far the borders between the zones lie apart, from lamp to lamp and eye to eye."""
        bright, dark = self.seen.bright_below, self.seen.dark_above
        return say(
            "trial-spread", bright_low=figure_text(bright.low), bright_high=figure_text(bright.high),
            dark_low=figure_text(dark.low), dark_high=figure_text(dark.high),
        )  # fmt: skip

    @property
    def worth(self) -> tuple[str, ...]:
        """What batches with a mistake look like, whether the test can tell, and what tells better."""
        return tuple(whether_it_tells(self))

    @property
    def needs(self) -> tuple[str, ...]:
        """What to fetch: mould with its size inside, screws, lamp, pack, resistor."""
        return tuple(needs_of(self.seen.line))

    @property
    def steps(self) -> tuple[str, ...]:
        """What to do, in order; less than a minute."""
        return tuple(steps_of(self.seen.line))

    @property
    def cautions(self) -> tuple[str, ...]:
        """What to be careful with; local rules last."""
        from lumped.dough.safety.known import caution

        cut = ("cut",) if self.seen.line.mould.key == "barrel" else ()
        warm = ("warm",) if self.warm else ()
        wires = say("trial-caution-wires-lamp" if self.seen.line.resistor else "trial-caution-wires")
        named = (say(f"trial-caution-{each}") for each in ("small", "food", *cut, *warm))
        return (wires, *named, caution("rules").brief)

    @property
    def card_words(self) -> tuple[str, ...]:
        """Short sentences for a recipe card, in its language: what to put together, what each light means, how surely.

        One more says so if the test is weak.
        """
        key = "trial-card-do-resistor" if self.seen.line.resistor else "trial-card-do-plain"
        return (
            say(key, **on_the_card(self.seen.line)),
            say(f"trial-card-{self.kind}"),
            say("trial-card-share", bad=self.mistake, **passing(self.seen)),
            *(() if self.tells else (say("trial-card-weak"),)),
        )

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        from lumped.verdict.trial import touching

        state, current = touching(self.seen.line)
        return {
            "kind": "trial", "schema": 1, "title": self.title, "dough": self.kind, "go": self.seen.go,
            **_seen_as_dict(self.seen), "resistivity": self.resistivity.as_dict(),
            "mistake": self.mistake if self.is_sound else None,
            "screws_touching": {"state": state, "current_A": current}, "tells": self.tells,
            "better": self.better and _seen_as_dict(self.better), "words": list(self.words),
            "needs": list(self.needs), "steps": list(self.steps), "cautions": list(self.cautions),
            "card_words": list(self.card_words),
        }  # fmt: skip


def trial(
    path: Path, *, mould: str | None = None, lamp: str = LAMP, pack: str = PACK, screws: str = SCREWS,
    batches: Sequence[Path] = (), labels: Sequence[Path] = (),
) -> Trial:  # fmt: skip
    """Say what a one-minute test of a batch should show.

    Parameters
    ----------
    path : Path
        A recipe file.
    mould : str, optional
        Key of the mould in the handbook; without it the one that tells most with this lamp and pack.
    lamp, pack, screws : str
        Keys in the handbook: of a lamp, a pack, a round gauge.
    batches : sequence of Path
        Batch files that the prediction learns from.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Returns
    -------
    Trial

    Raises
    ------
    RecipeError, InputError, HandbookError
        If a file can't be read, there is no such thing, or the screws don't fit.
    """
    from lumped.app.named import named_by_files

    dough = named_by_files(path, batches=batches, labels=labels)
    return tried(dough.kneading(), dough.shop, mould=mould, lamp=lamp, pack=pack, screws=screws)


def tried(
    done: "Kneading", shop: "Pantry", *, mould: str | None = None, lamp: str = LAMP, pack: str = PACK,
    screws: str = SCREWS,
) -> Trial:  # fmt: skip
    """Say what a one-minute test should show; as `trial`, of a recipe that was followed through.

    Parameters
    ----------
    done : Kneading
        The recipe, followed through.
    shop : Pantry
        What the ingredients are.
    mould : str, optional
        Key of the mould in the handbook; without it the one that tells most with this lamp and pack.
    lamp, pack, screws : str
        Keys in the handbook: of a lamp, a pack, a round gauge.

    Returns
    -------
    Trial

    Raises
    ------
    InputError, HandbookError
        If there is no such thing, or the screws don't fit.
    """
    from lumped.dough.unfit import standing_of
    from lumped.sculpt.mould import moulds
    from lumped.verdict.trial import best_line, line, look, seen_in

    recipe = done.recipe
    key, good, bad = look(done, shop)
    go = "bright" if recipe.kind == "conducting" else "dark"
    asked = (mould,) if mould else moulds()
    shown = [seen_in(line(each, lamp, pack, screws), good, bad, go=go, provenance=done.provenance) for each in asked]
    seen = max(shown, key=lambda each: each.gain)
    better = None
    stands = standing_of(done)
    if not seen.tells and stands == "sound":
        best = best_line(good, bad, go=go, provenance=done.provenance, near=seen.line)
        better = best if best.gain > seen.gain else None
    return Trial(
        title=recipe.title, kind=recipe.kind, seen=seen, mistake_key=key, better=better,
        resistivity=done.value(good, "Ω·m", "resistivity"), warm=recipe.cooked != "not cooked",
        stands=stands,
    )  # fmt: skip


def _seen_as_dict(seen: "Seen") -> dict[str, Any]:
    line = seen.line
    return {
        "mould": line.mould.key, "screws": line.mould.rods, "lamp": line.lamp, "pack": line.pack,
        "resistor": line.resistor, "resistance_per_resistivity": line.mould.factor.as_dict(),
        "bright_below": seen.bright_below.as_dict(), "dark_above": seen.dark_above.as_dict(),
        "good": seen.good, "bad": seen.bad,
    }  # fmt: skip
