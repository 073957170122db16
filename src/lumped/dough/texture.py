"""How a dough feels: the trade's window of water to flour, and a fit that grows from batches that hands have scored.

There is no model of texture. A score from 1 (crumbles) over 3 (right) to 5 (sticks) is believed linear in the
logarithm of water to flour and in fat, sugar and salt to flour, `score = β·x + noise`; before anybody scored a batch
the trade's window is all that is known. Scored batches move β by Bayes' rule for a linear model with known noise.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from lumped.dough.bowl import INDEX
from lumped.dough.chain import Chain
from lumped.dough.holding import is_held
from lumped.dough.recipe import Recipe
from lumped.dough.wetting import hydration_window, stands_in, wetness_of
from lumped.pantry import Pantry, pantry
from lumped.quantities import Provenance, Status, Value
from lumped.reference import handbook
from lumped.texts import say

__all__ = [
    "FEELS", "POURS", "POWDER", "WELL_INSIDE", "Feel", "FeelFit", "body_lacking", "features_of", "feel_of", "fitted",
    "least_body",
]  # fmt: skip

Array = NDArray[np.float64]
FEELS = {1: "crumbles", 2: "stiff", 3: "right", 4: "soft", 5: "sticks"}
WELL_INSIDE = 0.97
"""How far towards its ends the window is used: middles of the chain and means of draws are not quite the same."""
_TERMS = ("offset", "hydration", "fat", "sugar", "salt")
_STIFFEST, _SOFTEST = 2.5, 3.5  # scores between these round to "right"
POWDER, POURS = 0.4, 1.5
"""Of the least and the most that wets what hands can knead: below it is crumbs, above it batter; from memory."""
_HELPED = 0.2  # share of what wets flour from which syrup and fat are named; chosen
_NONE = 0.05  # water, syrup or fat to flour below which there is none to speak of; chosen
_TINY = 1e-9


@dataclass(frozen=True, slots=True, kw_only=True)
class FeelFit:
    """What is believed of the coefficients of the score.

    Parameters
    ----------
    mean : (5,) tuple of float
        Offset, and slopes with hydration (in half-widths of the window), fat, sugar and salt to flour.
    covariance : (5, 5) tuple of tuples of float
        Their covariance.
    batches : int
        How many scored batches taught it.
    """

    mean: tuple[float, ...]
    covariance: tuple[tuple[float, ...], ...]
    batches: int = 0

    @classmethod
    def before(cls) -> "FeelFit":
        """Give what is believed before any batch was scored: the handbook's entry `feel`."""
        rows = [handbook().value("doughs", "feel", term) for term in _TERMS]
        widths = [((row.high - row.low) / 2 / 1.96) ** 2 for row in rows]
        covariance = np.diag(widths)
        return cls(mean=tuple(row.mean for row in rows), covariance=tuple(tuple(map(float, row)) for row in covariance))

    def score(self, features: Array) -> Value:
        """Predict a score, kept between 1 and 5. [1]

        Parameters
        ----------
        features : (5,) float
            As `features_of` gives them.
        """
        middle = float(features @ np.array(self.mean))
        width = 1.96 * float(np.sqrt(features @ np.array(self.covariance) @ features + _noise() ** 2))
        low, mean, high = np.clip([middle - width, middle, middle + width], 1.0, 5.0)
        note = say("feel-batches", count=self.batches)
        origin = Provenance(status=Status.FROM_MEMORY, note=note)
        return Value(mean=float(mean), low=float(low), high=float(high), unit="", provenance=origin)


@dataclass(frozen=True, slots=True, kw_only=True)
class Feel:
    """How a dough is expected to feel.

    Parameters
    ----------
    hydration : Value
        Water to flour, the bakers' percentage as a share. [1]
    wetness : float
        What wets the flour, as water to flour: below the window's least syrup and fat stand in for water. [1]
    least, most : float
        The trade's window for this way of making it; common practice. [1]
    score : Value
        1 (crumbles) to 5 (sticks), 3 is right. [1]
    words : str
        A sentence.
    is_dough : bool
        Whether it is a dough at all: no crumbs, no soup.
    """

    hydration: Value
    wetness: float
    least: float
    most: float
    score: Value
    words: str = field(default="")
    is_dough: bool = True

    @property
    def span(self) -> tuple[str, str]:
        """The score as one of `FEELS`, twice; where its interval reaches over two or more of them, its ends."""
        low, mean, high = (round(each) for each in (self.score.low, self.score.mean, self.score.high))
        return (FEELS[mean], FEELS[mean]) if high - low < 2 else (FEELS[low], FEELS[high])

    @property
    def word(self) -> str:
        """The score in a word, or from which to which."""
        low, high = (say(f"feel-{each}") for each in self.span)
        return low if low == high else say("feel-anything", low=low, high=high)

    @property
    def figure(self) -> str:
        """The score in a word and in numbers, with its interval."""
        score = self.score
        return say("feel-figure", word=self.word, score=f"{score.mean:.1f}", low=f"{score.low:.1f}",
                   high=f"{score.high:.1f}")  # fmt: skip

    @property
    def fits(self) -> bool:
        """Whether what wets the flour lies in the trade's window."""
        return self.place == "inside"

    @property
    def place(self) -> str:
        """Where what wets the flour lies: "below" the trade's window, "inside" or "above" it."""
        return self._place(self.wetness)

    @property
    def is_helped(self) -> bool:
        """Whether syrup or fat does a good part of the wetting, or what water alone would not."""
        helped = self.wetness - self.hydration.mean
        return helped > _HELPED * self.wetness or self._place(self.hydration.mean) != self.place

    def _place(self, wet: float) -> str:
        return "below" if wet < self.least else "above" if wet > self.most else "inside"

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "hydration": self.hydration.as_dict(), "wetness": self.wetness, "window": [self.least, self.most],
            "fits": self.fits, "score": self.score.as_dict(), "words": self.words,
        }  # fmt: skip


def features_of(recipe: Recipe, chain: Chain) -> Array:
    """Give what the score is linear in, for the middle of a chain. (5,) [1]

    Parameters
    ----------
    recipe : Recipe
        For its way of making.
    chain : Chain
        What came of it.
    """
    least, most = (each.mean for each in hydration_window(recipe))
    flour = sum(chain.of(key) for key in ("starch", "fibre", "protein"))
    dry = max(float(np.median(flour)), _TINY)
    wet = max(float(np.median(wetness_of(chain, least))), 1e-3)
    place = (np.log(wet) - np.log(least * most) / 2) / (np.log(most / least) / 2)
    sugars = sum(chain.of(key) for key in ("sucrose", "glucose", "fructose", "maltose"))
    salts = chain.of("sodium-chloride") + chain.of("potassium-chloride")
    shares = [float(np.median(each)) / dry for each in (chain.components[INDEX["fat"]], sugars, salts)]
    return np.array([1.0, float(place), *shares])


def feel_of(
    recipe: Recipe, chain: Chain, hydration: Value, fit: FeelFit | None = None, *, shop: Pantry | None = None
) -> Feel:
    """Say how a dough is expected to feel.

    Parameters
    ----------
    recipe : Recipe
        What goes in.
    chain : Chain
        What came of it.
    hydration : Value
        Water to flour. [1]
    fit : FeelFit, optional
        What scored batches taught.
    shop : Pantry, optional
        What the ingredients are; the handbook's.

    Returns
    -------
    Feel
    """
    fit = fit or FeelFit.before()
    least, most = (each.mean for each in hydration_window(recipe))
    wet = hydration.mean + float(np.median(stands_in(chain, least)))
    score = fit.score(features_of(recipe, chain))
    feel = Feel(hydration=hydration, wetness=wet, least=least, most=most, score=score)
    if not fit.batches:
        feel = replace(feel, score=_outside(score, feel.place))
    no_dough = _no_dough(feel, recipe, chain, shop or pantry())
    return replace(feel, words=no_dough or _words(feel, recipe, chain), is_dough=not no_dough)


def _words(feel: Feel, recipe: Recipe, chain: Chain) -> str:
    """Say where a dough lies in the trade's window, and what it is expected to feel like."""
    score = feel.score
    shown = {"least": f"{100 * feel.least:.0f}", "most": f"{100 * feel.most:.0f}", "feel": feel.word,
             "low": f"{score.low:.1f}", "high": f"{score.high:.1f}"}  # fmt: skip
    water, wet = f"{100 * feel.hydration.mean:.0f}", f"{100 * feel.wetness:.0f}"
    by = _standing_in(feel, chain)
    if not by:
        return say(f"feel-{feel.place}", water=water, **shown)
    if by == "fat" and feel.hydration.mean < _NONE and feel.place != "above":
        return say("feel-fat-bound", fat=f"{100 * float(np.median(chain.fat)):.0f}", kind=recipe.kind, **shown)
    return say(f"feel-helped-{feel.place}", water=water, wet=wet, by=by, kind=recipe.kind, **shown)


def _standing_in(feel: Feel, chain: Chain) -> str:
    """Name what stands in for water: "syrup", "fat", "both", or "" for nothing that counts."""
    if not feel.is_helped:
        return ""
    syrup, fat = (float(np.median(each)) > _NONE for each in (chain.syrup, chain.fat))
    return "both" if syrup and fat else "syrup" if syrup else "fat"


def _no_dough(feel: Feel, recipe: Recipe, chain: Chain, shop: Pantry) -> str:
    """Say why it is no dough; "" of a dough."""
    least, most, water, wet = feel.least, feel.most, feel.hydration.mean, feel.wetness
    if (lacking := float(np.median(body_lacking(chain)))) > 0:
        body = least_body()
        return say("feel-no-body", share=f"{round(100 * (body - lacking), 1) + 0.0:g}", least=f"{100 * body:.0f}")
    if not POWDER * least < wet < POURS * most:
        shown = {"water": f"{100 * water:.0f}", "least": f"{100 * least:.0f}", "most": f"{100 * most:.0f}"}
        by = _standing_in(feel, chain) or "nothing"
        key = "pours" if wet > most else "powder"
        return say(f"feel-{key}", wet=f"{100 * wet:.0f}", by=by, kind=recipe.kind, **shown)
    return "" if is_held(recipe, shop) else say("feel-unbound")


def _outside(score: Value, place: str) -> Value:
    """A score as far as the trade's window alone tells: what lies outside is not right, as long as no hand said so."""
    low, high = {"below": (1.0, _STIFFEST), "above": (_SOFTEST, 5.0), "inside": (1.0, 5.0)}[place]
    ends = np.clip([score.low, score.mean, score.high], low, high).tolist()
    return replace(score, low=ends[0], mean=ends[1], high=ends[2])


def body_lacking(chain: Chain) -> Array:
    """Give how much starch, fibre and protein doughs lack to be one, as a share of them; below 0 if none. (n,) [1]"""
    body = sum(chain.of(key) for key in ("starch", "fibre", "protein"))
    return np.asarray(least_body() - body / np.maximum(chain.mass, _TINY))


def least_body() -> float:
    """Give the share of starch, fibre and protein below which nothing is a dough. [1]"""
    return handbook().value("marks", "body", "least").mean


def fitted(scored: Sequence[tuple[Array, int]], before: FeelFit | None = None) -> FeelFit:
    """Learn from scored batches.

    Parameters
    ----------
    scored : sequence of ((5,) float, int)
        Features of each batch as it was weighed, and its score from 1 to 5.
    before : FeelFit, optional
        What earlier batches taught.

    Returns
    -------
    FeelFit

    Notes
    -----
    With noise σ, precision Λ' = Λ + XᵀX/σ² and mean Λ'⁻¹(Λμ + Xᵀy/σ²).

    References
    ----------
    A. Gelman et al., Bayesian Data Analysis, 3rd ed., section 14.8 (from memory).

    Examples
    --------
    >>> fit = fitted([(np.array([1.0, 0.0, 0.0, 0.0, 0.0]), 5)] * 20)
    >>> 4.5 < fit.mean[0] < 5, fit.batches
    (True, 20)
    """
    before = before or FeelFit.before()
    if not scored:
        return before
    x, y = np.array([each for each, _ in scored], float), np.array([score for _, score in scored], float)
    precision = np.linalg.inv(np.array(before.covariance))
    after = precision + x.T @ x / _noise() ** 2
    mean = np.linalg.solve(after, precision @ np.array(before.mean) + x.T @ y / _noise() ** 2)
    covariance = np.linalg.inv(after)
    return FeelFit(
        mean=tuple(map(float, mean)), covariance=tuple(tuple(map(float, row)) for row in covariance),
        batches=before.batches + len(scored),
    )  # fmt: skip


def _noise() -> float:
    """How far two people's scores of one dough differ, as a standard deviation. [1]"""
    return handbook().value("doughs", "feel", "noise").mean
