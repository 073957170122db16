"""What a dough does, at once: the few figures that a page moves while an amount is being dragged.

One pass of the chain through all draws, without what takes long (influences, what-ifs); light enough for a thread of
the app. Places on a scale run from 0 to 1, so that a page only has to lay them out.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from math import log, pi
from typing import TYPE_CHECKING, Any

from lumped.app.given import Given
from lumped.app.labels import shop_of
from lumped.app.own import kneading_of, taught
from lumped.app.pricing import known_prices

if TYPE_CHECKING:
    from lumped.dough.kneading import Kneading
    from lumped.quantities import Value

__all__ = ["READINGS", "Scale", "home_region", "readings", "scales", "warm_up"]

READINGS = ("resistivity", "water_activity", "feel", "cost", "ph")
_SOUR, _SOAPY = 5.5, 8.0  # pH; skin itself has about 5.5, and wheat flour in water about 6 (from memory): chosen
_KILO = 1e4  # Ω from which kilohms are told
_ROLL = (0.10, 0.02)  # m; length and thickness of the roll whose resistance is told


@dataclass(frozen=True, slots=True, kw_only=True)
class Scale:
    """From a figure to its place along a scale, 0 to 1; `marks` are figures that something begins at."""

    low: float
    high: float
    ratios: bool = False
    marks: tuple[float, ...] = ()

    def place(self, value: float) -> float:
        """Give the place of a value, kept on the scale. [1]

        Examples
        --------
        >>> Scale(low=1.0, high=100.0, ratios=True).place(10.0)
        0.5
        """
        low, high, at = self.low, self.high, value
        if self.ratios:
            low, high, at = log(low), log(high), log(max(at, 1e-12))
        return min(max((at - low) / (high - low), 0.0), 1.0)

    @property
    def places(self) -> tuple[float, ...]:
        """The places of its marks. [1]"""
        return tuple(self.place(each) for each in self.marks)


def warm_up() -> None:
    """Read the handbook and knead once, so that the first question does not wait for it."""
    from lumped.app.examples import example_recipe

    text = example_recipe("ropewalk-salt.toml")
    if text is not None:
        readings(Given(name="ropewalk-salt.toml", text=text), home_region())


def home_region() -> str:
    """Give the region whose prices are shown where nobody chose one."""
    return "europe"


def readings(given: Given, region: str) -> dict[str, Any]:
    """Give what a dough does.

    Parameters
    ----------
    given : Given
        The recipe.
    region : str
        Where it is bought.

    Returns
    -------
    dict
        `conducts`, `headline`, `unfit` (what is to be said first); `readings`, by key: `figure` in words, `says`, and
        `low`, `middle`, `high`, places on the scale; of each portion its name (`names`), what is added by feel
        (`by_feel`) [g], and `amounts`: `grams`, and where its slider ends (`most`, `step`); `cooked`, and `degrees`
        [°C].

    Raises
    ------
    RecipeError, InputError
        If the recipe can't be read or can't exist.

    Examples
    --------
    >>> from lumped.app.examples import example_recipe
    >>> salt = Given(name="salt.toml", text=example_recipe("ropewalk-salt.toml"))
    >>> found = readings(salt, "europe")
    >>> found["headline"], found["readings"]["ph"]["says"]
    ('It carries current', 'Sour.')
    """
    from lumped.dough.material import CONDUCTS_BELOW
    from lumped.dough.unfit import unfit_words

    done, shop = kneading_of(given), shop_of(given)
    recipe = done.recipe
    resistivity = done.value(done.chain.resistivity, "Ω·m", "resistivity")
    conducts = resistivity.mean < CONDUCTS_BELOW
    marked = scales(region)
    told = {key: _TOLD[key](done, region, given) for key in READINGS}
    return {
        "title": recipe.title,
        "conducts": conducts,
        "headline": _headline(done),
        "unfit": list(unfit_words(done)),
        "readings": {key: _placed(each, marked[key]) for key, each in told.items()},
        "names": [shop[each.ingredient].name for each in recipe.portions],
        "by_feel": [each.as_needed and tuple(1e3 * end for end in each.as_needed) for each in recipe.portions],
        "amounts": [_slide(1e3 * each.mass.mean, each.as_needed) for each in recipe.portions],
        "cooked": recipe.cooked,
        "degrees": round(recipe.temperature - 273.15, 2),
        "invented": recipe.invented,
    }


def _headline(done: "Kneading") -> str:
    from lumped.dough.material import answer_of
    from lumped.dough.unfit import standing_of
    from lumped.texts import say

    standing, answer = standing_of(done), answer_of(done.value(done.chain.resistivity, "Ω·m", "resistivity"))
    endings = {"none": "none", "opposite": f"{answer}-against", "sound": answer}
    return say(f"web-dough-{endings[standing]}")


def _placed(told: "_Told", scale: Scale) -> dict[str, Any]:
    words = {"figure": told.figure, "short": told.short, "says": told.says}
    if told.value is None:
        return {**words, "low": None, "middle": None, "high": None}
    ends = {"low": told.value.low, "middle": told.value.mean, "high": told.value.high}
    return {**words, **{end: round(scale.place(at), 4) for end, at in ends.items()}}


def scales(region: str) -> dict[str, Scale]:
    """Give the scale of each reading, with its marks."""
    from lumped.dough.material import CONDUCTS_BELOW
    from lumped.dough.salts import growth_marks
    from lumped.pantry import region as region_of

    level = region_of(region).level.mean
    return {
        "resistivity": Scale(low=0.05, high=2e4, ratios=True, marks=(CONDUCTS_BELOW,)),
        "water_activity": Scale(low=0.5, high=1.0, marks=tuple(each.value.mean for each in growth_marks())),
        "feel": Scale(low=1.0, high=5.0, marks=(3.0,)),
        "cost": Scale(low=0.2 * level, high=50 * level, ratios=True),
        "ph": Scale(low=2.0, high=10.0, marks=(7.0,)),
    }


@dataclass(frozen=True, slots=True, kw_only=True)
class _Told:
    """A reading in words: with its interval, without, and what it means."""

    value: "Value | None"
    figure: str
    short: str
    says: str


def _resistivity(done: "Kneading", region: str, given: Given) -> _Told:
    from lumped.quantities import rounded_text
    from lumped.texts import say

    value = done.value(done.chain.resistivity, "Ω·m", "resistivity")
    length, thick = _ROLL
    ohms = value.mean * length / (pi * (thick / 2) ** 2)
    roll = f"{rounded_text(ohms / 1e3)}\u00a0kΩ" if ohms > _KILO else f"{rounded_text(ohms)}\u00a0Ω"
    return _told(value, say("web-roll", cm=f"{rounded_text(100 * value.mean)} Ω·cm", resistance=roll))


def _water_activity(done: "Kneading", region: str, given: Given) -> _Told:
    from lumped.dough.lasting.keeping import keeping

    value = done.value(done.chain.water_activity.clip(0.0, 1.0), "", "water_activity")
    mass = float(done.chain.mass.mean())
    preserved = {
        name: float(done.chain.of(key).mean()) / mass
        for name, key in (("sorbate", "potassium-sorbate"), ("benzoate", "sodium-benzoate"))
    }
    return _told(value, " ".join(keeping(value, ph=done.value(done.chain.ph, "", "ph"), **preserved).growing))


def _feel(done: "Kneading", region: str, given: Given) -> _Told:
    from lumped.dough.texture import feel_of
    from lumped.quantities import rounded_text
    from lumped.texts import say

    fit = taught(given, done.recipe).lessons.fit
    feel = feel_of(done.recipe, done.chain, done.value(done.chain.hydration, "", "hydration"), fit, shop=done.shop)
    least, most = (f"{100 * each:.0f}" for each in (feel.least, feel.most))
    water, wet = (rounded_text(100 * each) for each in (feel.hydration.mean, feel.wetness))
    helped = "helped" if feel.is_helped else "alone"
    says = say(f"web-water-{feel.place}", water=water, wet=wet, helped=helped, least=least, most=most)
    return _Told(value=feel.score, figure=feel.figure, short=f"{feel.score.mean:.1f}", says=says)


def _cost(done: "Kneading", region: str, given: Given) -> _Told:
    from lumped.dough.beliefs import sorted_out
    from lumped.dough.properties import PROPERTIES, drawn_prices, spent
    from lumped.quantities import rounded_text
    from lumped.texts import say

    shop = shop_of(given)
    known, money = known_prices([done.recipe], region, shop)
    prices = known or {}
    missing = [shop[key].name for key in done.recipe.ingredients if key not in prices]
    if missing:
        unknown = say("web-cost-unknown")
        return _Told(value=None, figure=unknown, short=unknown, says=say("web-cost-missing", names=", ".join(missing)))
    weighed = sorted_out(done.recipe, done.named, shop)
    batch = spent(weighed.keys, weighed.masses, drawn_prices(prices))
    assert batch is not None
    value = done.value(PROPERTIES["cost"].given(done.chain, batch), f"{money}/kg", "cost")
    mass = rounded_text(1e3 * float(done.chain.mass.mean()))
    return _told(value, say("web-cost-batch", mass=mass, cost=done.value(batch, money, "cost").text()))


def _ph(done: "Kneading", region: str, given: Given) -> _Told:
    from lumped.texts import say

    value = done.value(done.chain.ph, "", "ph")
    word = "sour" if value.mean < _SOUR else "alkaline" if value.mean > _SOAPY else "neutral"
    return _told(value, say(f"web-ph-{word}"))


def _told(value: "Value", says: str) -> _Told:
    from lumped.quantities import figure_text

    short = f"{figure_text(value.mean, value.unit)} {value.unit}".strip()
    return _Told(value=value, figure=value.text(), short=short, says=says)


_TOLD: Mapping[str, Callable[["Kneading", str, Given], _Told]] = {
    "resistivity": _resistivity, "water_activity": _water_activity, "feel": _feel, "cost": _cost, "ph": _ph,
}  # fmt: skip


def _slide(grams: float, as_needed: tuple[float, float] | None) -> dict[str, float]:
    """From nothing to about twice as much, in steps that a kitchen scale shows. [g]"""
    middle = grams or sum(as_needed or (0.0, 0.01)) * 500
    step = 0.1 if middle < 4 else 0.5 if middle < 20 else 1.0 if middle < 200 else 5.0
    return {"grams": round(grams, 2), "most": _nice_above(2 * max(middle, 0.5)), "step": step}


def _nice_above(number: float) -> float:
    """Round up to the next 1, 1.5, 2, 3, 4, 5, 6 or 8 times a power of ten.

    Examples
    --------
    >>> _nice_above(237.0), _nice_above(6.1)
    (300.0, 8.0)
    """
    power = 10.0 ** len(str(int(number))) / 10 if number >= 1 else 0.1
    return next(step * power for step in (1, 1.5, 2, 3, 4, 5, 6, 8, 10) if step * power >= number * 0.999)
