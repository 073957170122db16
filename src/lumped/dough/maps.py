"""Any three ingredients of a recipe, in all proportions: what the dough would be at each point of a triangle.

Their summed mass stays as the recipe has it, all else stays as it is, and the whole triangle is one pass of the chain:
`mass of corner i = total · share i`, shares from 0 to 1 that sum to one. Where no dough is to be had, the map says
why.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property, partial
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.compounds import compounds
from lumped.dough.beliefs import Draws
from lumped.dough.bowl import Bowl
from lumped.dough.calibrating import Calibration
from lumped.dough.chain import Chain, follow
from lumped.dough.finding import found_in, matches_in
from lumped.dough.kneading import lost_share, typical
from lumped.dough.mainly import main_three
from lumped.dough.material import CONDUCTS_BELOW
from lumped.dough.properties import Property, find_property, middle_prices, salt_excess, spent, sugar_excess
from lumped.dough.recipe import Recipe
from lumped.dough.texture import body_lacking
from lumped.dough.wetting import hydration_window, wetness_of
from lumped.errors import RecipeError
from lumped.pantry import Pantry, pantry
from lumped.quantities import Value
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["REASONS", "MixMap", "hydration_window", "mix_map", "with_corners"]

Array = NDArray[np.float64]
REASONS = (
    "no-body",
    "no-free-water",
    "does-not-conduct",
    "conducts",
    "too-stiff",
    "too-wet",
    "salt-stays-solid",
    "sugar-stays-solid",
)
"""Why no dough of use is to be had there, the gravest first; a point is hatched for the first that holds."""
_DIVISIONS = 62  # 2016 points
_SOLID = 0.01  # share of the dough from which salt or sugar that stays solid counts
_FAR = 1e3
_HOLDING = [row for row, each in enumerate(compounds()) if each.holds_water]
_SMALLEST, _MARGIN = 0.12, 0.08  # of the side of the whole triangle: least part shown; room round what is worth showing


@dataclass(frozen=True, kw_only=True)
class MixMap:
    """A map of three ingredients.

    Parameters
    ----------
    recipe : Recipe
        The recipe as written.
    corners : (str, str, str)
        The three ingredients.
    total : float
        Their summed mass. [kg]
    shown : Property
        What is shown.
    least : (3,) float
        The smallest share of each that is shown. [1]
    size : float
        How much of the whole triangle is shown, as a share of its side. [1]
    shares : (n, 3) float
        Share of each corner in `total`, row by row of the triangle. [1]
    triangles : (t, 3) int
        Points of each small triangle, anticlockwise if the corners are.
    values : (n,) float
        The property. [its unit]
    chain : Chain
        Everything else of the doughs, (n + 1); the last is the recipe itself.
    point : (3,) float
        Shares of the recipe itself. [1]
    here : float
        Its property. [its unit]
    money : str
        In what prices are given; "" without prices.
    """

    recipe: Recipe
    corners: tuple[str, str, str]
    total: float
    shown: Property
    least: Array
    size: float
    shares: Array
    triangles: NDArray[np.int64]
    values: Array
    chain: Chain
    point: Array
    here: float
    money: str
    given: Draws
    shop: Pantry
    prices: Mapping[str, Array] | None

    def at(self, shares: ArrayLike) -> Array:
        """Work the property out anew at (m, 3) shares. [its unit]"""
        masses = _masses(self.given, self.corners, self.total, np.atleast_2d(np.asarray(shares, float)))
        chain = _chain(self.recipe, self.given, self.shop, masses)
        return self.shown.given(chain, spent(self.given.keys, masses, self.prices))

    @cached_property
    def reasons(self) -> Mapping[str, Array]:
        """How far each point is beyond a limit, (n,) for each reason: above 0 where the reason holds."""
        chain, (least, most) = self.chain, (each.mean for each in hydration_window(self.recipe))
        wet = np.log(np.clip(wetness_of(chain, least), 1 / _FAR, _FAR))
        poor = np.log(np.clip(chain.resistivity / CONDUCTS_BELOW, 1e-9, 1e9))
        conducting = self.recipe.kind == "conducting"
        found = {
            "no-body": body_lacking(chain),
            "no-free-water": (self._held() - chain.of("water")) / np.maximum(chain.mass, 1e-12),
            "does-not-conduct" if conducting else "conducts": poor if conducting else -poor,
            "too-stiff": np.log(least) - wet, "too-wet": wet - np.log(most),
            "salt-stays-solid": salt_excess(chain) - _SOLID, "sugar-stays-solid": sugar_excess(chain) - _SOLID,
        }  # fmt: skip
        return {reason: margin[: len(self.values)] for reason, margin in found.items()}

    def _held(self) -> Array:
        """Water that flour can hold, (n + 1,). [kg]"""
        return np.asarray(self.given.unknowns.bound_water * self.chain.components[_HOLDING].sum(axis=0))

    @property
    def feasible(self) -> NDArray[np.bool_]:
        """Where none of the reasons holds, (n,)."""
        return np.asarray(np.max(list(self.reasons.values()), axis=0) <= 0)

    @property
    def extremes(self) -> tuple[int, int] | None:
        """Numbers of the points with the least and the most of the property among the feasible; None without any."""
        there = np.flatnonzero(self.feasible)
        if not len(there):
            return None
        return int(there[self.values[there].argmin()]), int(there[self.values[there].argmax()])

    def words(self, reason: str) -> str:
        """Say a reason, with its figures."""
        least, most = hydration_window(self.recipe)
        return say(f"map-{reason}", least=f"{100 * least.mean:.0f}", most=f"{100 * most.mean:.0f}",
                   limit=f"{CONDUCTS_BELOW:g}", solid=f"{100 * _SOLID:g}",
                   body=f"{100 * handbook().value('marks', 'body', 'least').mean:g}")  # fmt: skip

    def as_dict(self) -> dict[str, Any]:
        """Give the map as JSON shows it, in SI: each point with its shares, its value, and what stands against it."""
        holds = {reason: margin > 0 for reason, margin in self.reasons.items()}
        return {
            "kind": "mix-map", "schema": 1, "title": self.recipe.title, "of": list(self.corners),
            "total_kg": self.total, "show": self.shown.key, "unit": self.shown.unit, "money": self.money or None,
            "invented": self.recipe.invented, "recipe": {"shares": self.point.tolist(), "value": self.here},
            "reasons": {reason: self.words(reason) for reason in holds},
            "points": [
                {"shares": shares, "value": value, "reasons": [reason for reason, held in holds.items() if held[k]]}
                for k, (shares, value) in enumerate(zip(self.shares.tolist(), self.values.tolist(), strict=True))
            ],
        }  # fmt: skip


def mix_map(
    recipe: Recipe,
    corners: Sequence[str] = (),
    show: str = "resistivity",
    *,
    shop: Pantry | None = None,
    prices: Mapping[str, Value] | None = None,
    money: str = "",
    calibration: Calibration | None = None,
    divisions: int = _DIVISIONS,
    whole: bool = False,
) -> MixMap:
    """Map three ingredients of a recipe in all proportions.

    Parameters
    ----------
    recipe : Recipe
        What goes in, and what is done with it.
    corners : sequence of str
        Three ingredients, by key or name, of which one that is not in the recipe begins with nothing; the recipe's
        body, liquid and salt or sugar (`main_three`) if left out.
    show : str
        A property: one of `properties.PROPERTIES`.
    shop : Pantry, optional
        What the ingredients are; the handbook's.
    prices : mapping of str to Value, optional
        Price of each ingredient; their middles are used. [money/kg]
    money : str
        In what they are given.
    calibration : Calibration, optional
        What measured batches taught.
    divisions : int
        Into how many parts each side is divided.
    whole : bool
        Whether all of the triangle is shown, or only the part of it where there are doughs.

    Returns
    -------
    MixMap

    Raises
    ------
    RecipeError
        If there is no such ingredient, or there are not three.
    InputError
        If there is no such property, or its prices are missing.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> grams = {"plain-flour": 125, "tap-water": 237, "table-salt": 73}
    >>> portions = tuple(Portion(ingredient=k, written=f"{g} g", mass=Value.exact(g / 1e3, "kg"))
    ...                  for k, g in grams.items())
    >>> plain = Recipe(title="Plain", kind="conducting", portions=portions, cooked="pot")
    >>> found = mix_map(plain, ["flour", "water", "salt"])
    >>> found.values.shape, round(float(found.at(found.point)[0] / found.here), 9)
    ((2016,), 1.0)
    """
    shop = shop or pantry()
    recipe = with_corners(recipe, corners, shop)
    chosen = _corners(recipe, corners or main_three(recipe, shop), shop)
    shown = find_property(show)
    given = typical(recipe, shop, calibration)
    given = replace(given, lost_share=lost_share(recipe, given, shop), weighed_after=None)
    rows = [given.keys.index(key) for key in chosen]
    total = float(given.masses[rows].sum())
    survey = partial(
        _surveyed, recipe=recipe, corners=chosen, total=total, shown=shown, given=given, shop=shop,
        prices=middle_prices(prices), money=money, divisions=divisions,
    )  # fmt: skip
    found = survey(np.zeros(3))
    return found if whole else survey(_least(found))


def _surveyed(
    least: Array, *, recipe: Recipe, corners: tuple[str, str, str], total: float, shown: Property, given: Draws,
    shop: Pantry, prices: Mapping[str, Array] | None, money: str, divisions: int,
) -> MixMap:  # fmt: skip
    """Follow all points of a triangle through, the recipe itself last, in one pass."""
    parts, triangles = _triangle(divisions)
    size = 1 - float(least.sum())
    shares = least + size * parts
    rows = [given.keys.index(key) for key in corners]
    point = given.masses[rows, 0] / total
    masses = _masses(given, corners, total, np.vstack([shares, point]))
    chain = _chain(recipe, given, shop, masses)
    cost = spent(given.keys, masses, prices)
    values = shown.given(chain, cost)
    return MixMap(
        recipe=recipe, corners=corners, total=total, shown=shown, least=least, size=size, shares=shares,
        triangles=triangles, chain=chain, values=values[:-1], point=point, here=float(values[-1]), given=given,
        shop=shop, prices=prices, money=money if cost is not None else "",
    )  # fmt: skip


def _least(coarse: MixMap) -> Array:
    """The smallest shares of the part worth showing: all points without a reason against them, and the recipe. [1]"""
    points = np.vstack([coarse.shares[coarse.feasible], coarse.point])
    least = points.min(axis=0)
    size = max(1 - least.sum(), _SMALLEST)
    least = np.maximum(least - (_MARGIN * size + (size - 1 + least.sum()) / 3), 0.0)
    return np.asarray(np.floor(100 * least) / 100)


def with_corners(recipe: Recipe, words: Sequence[str], shop: Pantry) -> Recipe:
    """Give a recipe with nothing yet of each of some ingredients that are not in it, so that a map may put them in.

    Parameters
    ----------
    recipe : Recipe
        What goes in.
    words : sequence of str
        What the ingredients are called.
    shop : Pantry
        What there is.

    Raises
    ------
    RecipeError
        If there is no such ingredient.
    """
    weighed = recipe.weighed_after
    for word in words:
        if not matches_in(recipe, word, shop):
            recipe = recipe.with_added(shop.find(word).key, 0.0)
    return replace(recipe, weighed_after=weighed)  # nothing was put in


def _corners(recipe: Recipe, words: Sequence[str], shop: Pantry) -> tuple[str, str, str]:
    found = [found_in(recipe, word, shop) for word in words]
    if len(found) != 3 or len(set(found)) != 3:
        raise RecipeError("map-three", count=len(set(found)), there=", ".join(recipe.ingredients))
    if not sum(recipe.mass_of(key) for key in found) > 0:
        raise RecipeError("map-nothing", names=", ".join(shop[key].name for key in found))
    return found[0], found[1], found[2]


def _triangle(divisions: int) -> tuple[Array, NDArray[np.int64]]:
    """Give the points of a triangle divided evenly, as shares, and its small triangles."""
    down, along = np.meshgrid(np.arange(divisions + 1), np.arange(divisions + 1), indexing="ij")
    kept = along <= down
    down, along = down[kept], along[kept]
    shares = np.column_stack([divisions - down, down - along, along]) / divisions
    first = down * (down + 1) // 2 + along
    inner = down < divisions
    below = first[inner] + down[inner] + 1
    upright = np.column_stack([first[inner], below, below + 1])
    hanging = along[inner] < down[inner]
    turned = np.column_stack([first[inner][hanging], below[hanging] + 1, first[inner][hanging] + 1])
    return shares, np.concatenate([upright, turned])


def _masses(given: Draws, corners: Sequence[str], total: float, shares: Array) -> Array:
    masses = np.repeat(given.masses, len(shares), axis=1)
    masses[[given.keys.index(key) for key in corners]] = total * shares.T
    return masses


def _chain(recipe: Recipe, given: Draws, shop: Pantry, masses: Array) -> Chain:
    return follow(
        Bowl.of(given.keys, shop), masses, unknowns=given.unknowns, lost_share=given.lost_share,
        temperature=recipe.temperature,
    )  # fmt: skip
