"""Who can grow in a dough, and how long it is kept by habit."""

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from lumped.app.named import Named
    from lumped.dough.lasting.keeping import Keeping
    from lumped.quantities import Value

__all__ = ["Kept", "growth_columns", "growth_rows", "kept"]
_DAY = 86400.0  # s


@dataclass(frozen=True, slots=True, kw_only=True)
class Kept:
    """Who can grow in a dough, and how long it is kept by habit.

    Parameters
    ----------
    activity, ph : Value
        Its water activity and pH. [1]
    keeping : Keeping
        Who can grow.
    habit : Value
        How long the trade keeps such a dough. [s]
    words : tuple of str
        The same in sentences, the caveat last.
    """

    title: str
    activity: "Value"
    ph: "Value"
    keeping: "Keeping"
    habit: "Value"
    words: tuple[str, ...]

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "title": self.title, "water_activity": self.activity.as_dict(), "ph": self.ph.as_dict(),
            "growth": [
                {"who": each.group.name, "needs_water_activity": each.group.activity.as_dict(), "state": each.state,
                 "by": each.by or None}
                for each in self.keeping.growths
            ],
            "kept_by_habit": self.habit.as_dict(), "words": list(self.words),
        }  # fmt: skip


def kept(dough: "Named", *, fridge: bool = False) -> Kept:
    """Tell what can grow in a recipe's dough, and how long it is kept by habit.

    Parameters
    ----------
    dough : Named
        The recipe, with what its batches taught.
    fridge : bool
        Whether it lies in the fridge.
    """
    from lumped.dough.lasting.keeping import habit, keeping
    from lumped.quantities import short_text
    from lumped.reference import handbook
    from lumped.texts import say

    done = dough.kneading()
    chain, mass = done.chain, float(done.chain.mass.mean())
    activity, ph = done.value(chain.water_activity.clip(0.0, 1.0), "", "water_activity"), done.value(chain.ph, "", "ph")
    preserved = {name: float(chain.of(key).mean()) / mass for name, key in
                 (("sorbate", "potassium-sorbate"), ("benzoate", "sodium-benzoate"))}  # fmt: skip
    temperature = handbook().value("lasting", "fridge", "warmest").mean if fridge else done.recipe.temperature
    found, days = keeping(activity, ph=ph, temperature=temperature, **preserved), habit(activity, fridge=fridge)
    count = short_text(days.mean / _DAY)
    time = say("lasting-days", mean=count, count="one" if count == "1" else "other")
    ends = {"low": short_text(days.low / _DAY), "high": short_text(days.high / _DAY)}
    said = say(f"keep-habit-{'fridge' if fridge else 'room'}", time=time, **ends)
    return Kept(title=done.recipe.title, activity=activity, ph=ph, keeping=found, habit=days,
                words=(_headline(activity, ph), *found.words[:-1], said, found.words[-1]))  # fmt: skip


def _headline(activity: "Value", ph: "Value") -> str:
    from lumped.texts import say

    return say("keep-headline", activity=activity.text(), ph=ph.text())


def growth_columns() -> tuple[str, ...]:
    """Give the headings of `growth_rows`."""
    from lumped.texts import say

    return tuple(say(f"column-{key}") for key in ("group", "needs", "state", "why"))


def growth_rows(found: Kept) -> list[tuple[str, ...]]:
    """Give the table of who can grow: name, the water activity that it needs, whether it can, and why not."""
    from lumped.texts import say

    return [
        (each.group.name, each.group.activity.text(), say(f"lasting-state-{each.state.replace(' ', '-')}"),
         say(f"lasting-by-{each.by or 'none'}"))
        for each in found.keeping.growths
    ]  # fmt: skip
