"""Cups and spoons by country, what a kitchen has of them, and what one of them holds of an ingredient.

Tables weigh US measures. Elsewhere a measure holds as much more as its volume is larger; another way of filling it
changes the weight by a factor of its own:  m = m_US · (V / V_US) · f / f_usual.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cache

from lumped.errors import RecipeError
from lumped.pantry.ingredient import Ingredient
from lumped.quantities import Provenance, Value
from lumped.reference import handbook
from lumped.texts import say

__all__ = [
    "FILLINGS",
    "FLUFFED",
    "Kitchen",
    "Scoop",
    "kitchen",
    "kitchens",
    "packs",
    "scaled",
    "spoon_fullness",
    "together",
    "weight_of",
    "weight_of_volume",
]

FILLINGS = ("spooned", "scooped", "sifted", "packed", "levelled", "poured", "heaped")
FLUFFED = {"spooned", "scooped", "sifted", "packed"}  # powders: how they fall into the cup matters
_SPOONS = 50e-6  # no spoon of a kitchen holds more. [m³]
_NO_KITCHENS = {"handling", "filling"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Scoop:
    """A measure that lies in a drawer.

    Parameters
    ----------
    measure : str
        "cup", "tbsp", "tsp", …
    share : Fraction
        How much of one it holds. [1]
    """

    measure: str
    share: Fraction


@dataclass(frozen=True, slots=True, kw_only=True)
class Kitchen:
    """Measures of a country.

    Parameters
    ----------
    key, name : str
        What programs and people call it.
    volumes : mapping of str to Value
        What each measure holds. [m³]
    scoops : tuple of Scoop
        What lies in the drawer, each measure's largest first.
    """

    key: str
    name: str
    volumes: Mapping[str, Value]
    scoops: tuple[Scoop, ...]


def kitchens() -> tuple[str, ...]:
    """Give the keys of all systems of measures.

    Examples
    --------
    >>> kitchens()
    ('us', 'us-label', 'metric', 'australian', 'imperial', 'japanese')
    """
    return tuple(key for key in handbook().keys("measures") if key not in _NO_KITCHENS)


@cache
def kitchen(system: str) -> Kitchen:
    """Give a country's measures.

    Parameters
    ----------
    system : str
        Its key in the handbook.

    Returns
    -------
    Kitchen

    Raises
    ------
    RecipeError
        If there is no such system; the sentence names all.

    Examples
    --------
    >>> round(kitchen("japanese").volumes["cup"].mean * 1e6, 6)
    200.0
    """
    if system not in kitchens():
        raise RecipeError("kitchen-unknown", system=system, known=", ".join(kitchens()))
    entry = handbook().entry("measures", system)
    scoops = tuple(
        Scoop(measure=measure, share=Fraction(share))
        for measure, shares in entry.facts["scoops"].items() for share in shares
    )  # fmt: skip
    volumes = {measure: row.value for measure, row in entry.rows.items()}
    return Kitchen(key=system, name=entry.name, volumes=volumes, scoops=scoops)


def weight_of(measure: str, ingredient: Ingredient, system: str, method: str | None = None, *, text: str = "") -> Value:
    """Weigh one measure of an ingredient.

    Parameters
    ----------
    measure : str
        "cup", "tbsp", "tsp", "fl_oz", "dessertspoon", "go", or "dash" (a pinch, the same everywhere).
    ingredient : Ingredient
        What is in it.
    system : str
        Whose measures.
    method : str, optional
        How it is filled; unsaid, the ingredient's usual method, with the whole spread of not knowing.
    text : str
        What the recipe says, for the message.

    Returns
    -------
    Value
        Its mass. [kg]

    Raises
    ------
    RecipeError
        If the system has no such measure, nobody knows what this ingredient weighs by volume, or it can't be filled so.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> weight_of("cup", pantry()["plain-flour"], "us", "scooped").text()
    '0.145 kg (0.130 to 0.160)'
    """
    if measure == "dash":
        return _pinch(ingredient, text)
    volumes = kitchen(system).volumes
    if measure not in volumes:
        raise RecipeError(
            "recipe-measure-system", text=text or measure, system=kitchen(system).name,
            elsewhere=_elsewhere(measure),
        )  # fmt: skip
    own = ingredient.weights.get(measure)
    us = kitchen("us").volumes.get(measure)
    if own and us:
        return scaled(_filled(own, volumes[measure].mean, ingredient, method, text), volumes[measure].mean / us.mean)
    return weight_of_volume(volumes[measure].mean, ingredient, method, text=text)


def _elsewhere(measure: str) -> str:
    """Say in which country's measures one is that is not among these."""
    for system in kitchens():
        place = kitchen(system)
        if measure in place.volumes:
            return say(
                "amount-elsewhere", name=place.name, key=system, volume=f"{1e6 * place.volumes[measure].mean:.3g}"
            )
    return say("amount-nowhere")


def spoon_fullness(ingredient: Ingredient, system: str) -> float:
    """Tell how much more than its usual weight a spoon of an ingredient may hold at most; 1 on a scale. [1]

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> spoon_fullness(pantry()["alum"], "us") > 1.05, spoon_fullness(pantry()["alum"], "scale")
    (True, 1.0)
    """
    try:
        each = weight_of("tsp", ingredient, system) if system in kitchens() else None
    except RecipeError:  # nobody knows what a spoon of it weighs, so that it is weighed
        return 1.0
    return each.high / each.mean if each is not None else 1.0


def weight_of_volume(volume: float, ingredient: Ingredient, method: str | None = None, *, text: str = "") -> Value:
    """Weigh a volume by the ingredient's largest known measure, or else by its density.

    Parameters
    ----------
    volume : float
        The volume. [m³]
    ingredient, method, text
        As of `weight_of`.

    Returns
    -------
    Value
        Its mass. [kg]

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> weight_of_volume(30e-6, pantry()["tap-water"]).text()
    '0.0301 kg (0.0292 to 0.0309)'
    """
    us = kitchen("us").volumes
    for measure in ("cup", "tbsp", "tsp"):
        if measure in ingredient.weights:
            each = _filled(ingredient.weights[measure], volume, ingredient, method, text)
            return scaled(each, volume / us[measure].mean)
    if ingredient.density is None:
        raise RecipeError("recipe-no-weight", text=text, ingredient=ingredient.name)
    _refuse_liquid(ingredient, method, text)
    hands = _filling("poured")
    low, high = ingredient.density.low * hands.low, ingredient.density.high * hands.high
    provenance = Provenance.of([ingredient.density.provenance, hands.provenance])
    return Value(
        mean=volume * ingredient.density.mean, low=volume * low, high=volume * high, unit="kg", provenance=provenance
    )


def scaled(value: Value, factor: float) -> Value:
    """Give so many of what `value` weighs; who fills one cup too full fills them all so."""
    return Value(
        mean=factor * value.mean, low=factor * value.low, high=factor * value.high, unit=value.unit,
        provenance=value.provenance, spread=value.spread,
    )  # fmt: skip


def together(parts: Sequence[Value]) -> Value:
    """Add masses that one hand measured: its habit is in all of them, so their ends add. [kg]"""
    mean, low, high = (sum(getattr(part, end) for part in parts) for end in ("mean", "low", "high"))
    return Value(mean=mean, low=low, high=high, unit="kg", provenance=Provenance.of(part.provenance for part in parts))


def _filled(own: Mapping[str, Value], volume: float, ingredient: Ingredient, method: str | None, text: str) -> Value:
    """What the US measure weighs when one of this volume is filled so. [kg]"""
    usual = ingredient.usual_method
    if usual not in own:
        usual = next(iter(own))
    powder = packs(ingredient)
    if method is None:
        return _unsaid(_with_spread(own[usual]), own, usual, packs=powder)
    if method not in FILLINGS:
        raise RecipeError("filling-unknown", method=method, known=", ".join(FILLINGS))
    _refuse_liquid(ingredient, method, text)
    if method in own and method != usual:
        return _with_spread(own[method])
    if method == "heaped" and volume > _SPOONS:
        method = "heaped_cup"
    if not powder and method in FLUFFED:
        return _with_spread(own[usual])  # grains don't pack: they lie as they always do, as far as that is known
    return _otherwise(own[usual], usual, method)


def packs(ingredient: Ingredient) -> bool:
    """Tell whether it matters how a measure of it is filled: flour and starch pack, grains and liquids don't.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> packs(pantry()["plain-flour"]), packs(pantry()["table-salt"])
    (True, False)
    """
    return _usual_of(ingredient) in FLUFFED or _is_powder(ingredient)


def _usual_of(ingredient: Ingredient) -> str:
    """How its largest measure was filled when it was weighed."""
    own = next(iter(ingredient.weights.values()), {})
    return ingredient.usual_method if ingredient.usual_method in own or not own else next(iter(own))


def _unsaid(known: Value, own: Mapping[str, Value], usual: str, *, packs: bool) -> Value:
    """A powder whose recipe does not say how the cup was filled: it may have been scooped. [kg]"""
    if not packs or usual not in ("spooned", "levelled"):
        return known
    scooped = own.get("scooped") or _otherwise(known, usual, "scooped")
    return Value(
        mean=known.mean, low=known.low, high=max(known.high, scooped.high), unit="kg",
        provenance=Provenance.of([known.provenance, scooped.provenance]),
    )  # fmt: skip


def _otherwise(known: Value, usual: str, method: str) -> Value:
    """What is known of the usual method, carried over to another, with that method's spread. [kg]"""
    filling, base = _filling(method), _filling(usual).mean
    mean = known.mean * filling.mean / base
    low, high = mean * filling.low / filling.mean, mean * filling.high / filling.mean
    if method == usual and not known.is_exact:  # the table knows it better where its interval is the narrower
        low, high = max(low, known.low), min(high, known.high)
    provenance = Provenance.of([known.provenance, filling.provenance])
    return Value(mean=mean, low=low, high=high, unit="kg", provenance=provenance)


def _pinch(ingredient: Ingredient, text: str) -> Value:
    if "dash" in ingredient.weights:
        return _with_spread(next(iter(ingredient.weights["dash"].values())))
    pinch = handbook().value("measures", "handling", "pinch")
    one = weight_of_volume(pinch.mean, ingredient, text=text)
    low, high = one.low * pinch.low / pinch.mean, one.high * pinch.high / pinch.mean
    provenance = Provenance.of([one.provenance, pinch.provenance])
    return Value(mean=one.mean, low=low, high=high, unit="kg", provenance=provenance)


def _refuse_liquid(ingredient: Ingredient, method: str | None, text: str) -> None:
    if method in (FLUFFED | {"heaped"}) and _is_liquid(ingredient):
        raise RecipeError("filling-liquid", text=text or method, ingredient=ingredient.name, method=method)


def _is_powder(ingredient: Ingredient) -> bool:
    """Whether it is a flour or starch that packs, though its table only says that a measure was levelled."""
    return ingredient.usual_method == "levelled" and ingredient.composition.get("starch", 0.0) > 0.4


def _is_liquid(ingredient: Ingredient) -> bool:
    return ingredient.density is not None and ingredient.usual_method != "packed"


def _with_spread(value: Value) -> Value:
    if not value.is_exact:
        return value
    share = handbook().value("measures", "handling", "spoon")
    return Value(
        mean=value.mean, low=value.mean * (1 + share.low), high=value.mean * (1 + share.high), unit="kg",
        provenance=Provenance.of([value.provenance, share.provenance]),
    )  # fmt: skip


@cache
def _filling(method: str) -> Value:
    return handbook().value("measures", "filling", method)
