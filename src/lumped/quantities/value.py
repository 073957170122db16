"""A value with its interval, and formulas on such values.

Intervals go through a formula by Monte Carlo: each input is drawn at the same fixed, evenly spread set of quantiles
(a Latin hypercube, shuffled by the input's name), so a result never changes from run to run, and a narrower input
never gives a wider result by chance.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cache
from statistics import NormalDist
from typing import Any, Literal, get_args
from zlib import crc32

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.quantities.provenance import Provenance, Status
from lumped.quantities.rounding import figure_text

__all__ = ["LEVEL", "Value", "believed", "combined", "drawn", "draws_of", "draws_order"]

Array = NDArray[np.float64]

Spread = Literal["normal", "lognormal", "uniform"]
_COMPUTED = Provenance(status=Status.COMPUTED)
DRAWS = 4096
LEVEL = 0.95


@dataclass(frozen=True, slots=True, kw_only=True)
class Value:
    """A number with its interval.

    Parameters
    ----------
    mean : float
        Best single figure: the median of what is believed.
    low, high : float
        Ends of the interval that holds the true figure with probability `level`. Of a uniform spread: its ends.
    unit : str
        Unit, written as in `quantities.units`; "" for a plain number.
    provenance : Provenance
        Where the number comes from.
    level : float
        Probability of the interval.
    spread : {"normal", "lognormal", "uniform"}
        Shape of the belief. Resistivities and other positive figures that are known to a factor are lognormal.

    Raises
    ------
    ValueError
        If the ends don't enclose the mean, or a lognormal value is not positive.

    Examples
    --------
    >>> Value(mean=0.2, low=0.1, high=0.4, unit="Ω·m", spread="lognormal").text()
    '0.20 Ω·m (0.10 to 0.40)'
    """

    mean: float
    low: float
    high: float
    unit: str
    provenance: Provenance = _COMPUTED
    level: float = LEVEL
    spread: Spread = "normal"

    def __post_init__(self) -> None:
        if not self.low <= self.mean <= self.high:
            raise ValueError(f"the interval {self.low} to {self.high} does not enclose {self.mean}")
        if self.spread not in get_args(Spread):
            raise ValueError(f"unknown spread {self.spread!r}")
        if self.spread == "lognormal" and self.low <= 0:
            raise ValueError(f"a lognormal value is positive, not {self.low}")

    @classmethod
    def exact(cls, mean: float, unit: str, provenance: Provenance | None = None) -> "Value":
        """Give a value without a spread."""
        return cls(
            mean=mean,
            low=mean,
            high=mean,
            unit=unit,
            provenance=provenance or Provenance(status=Status.COMPUTED),
        )

    @property
    def is_exact(self) -> bool:
        """Whether the interval has no width."""
        return self.low == self.high

    def at(self, share: float) -> float:
        """Give the value at a share of its half-width: -1 is the low end, 0 the mean, 1 the high end. [its unit]

        Examples
        --------
        >>> Value(mean=0.2, low=0.1, high=0.4, unit="Ω·m", spread="lognormal").at(0.5)
        0.28284271247461906
        """
        end = self.high if share > 0 else self.low
        if self.spread == "lognormal":
            return float(self.mean * (end / self.mean) ** abs(share))
        return self.mean + abs(share) * (end - self.mean)

    def text(self, unit_shown: bool = True) -> str:
        """Write the value as people read it: two or three digits (money in coins), then the interval."""
        mean, low, high = (figure_text(each, self.unit) for each in (self.mean, self.low, self.high))
        unit = f" {self.unit}" if unit_shown and self.unit else ""
        return f"{mean}{unit}" if self.is_exact else f"{mean}{unit} ({low} to {high})"

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "mean": self.mean, "low": self.low, "high": self.high, "level": self.level,
            "unit": self.unit, "provenance": self.provenance.as_dict(),
        }  # fmt: skip


def draws_of(value: Value, quantile: Array) -> Array:
    """Draw a value at quantiles.

    A normal or lognormal belief that is not symmetrical gets its own width on each side of the mean.

    Parameters
    ----------
    value : Value
        What is drawn. [its unit]
    quantile : (n,) float
        Quantiles between 0 and 1, ends excluded. [1]

    Returns
    -------
    (n,) float
        The draws. [unit of the value]

    Examples
    --------
    >>> draws_of(Value(mean=0.2, low=0.1, high=0.4, unit="Ω·m", spread="lognormal"), np.array([0.025, 0.5])).round(3)
    array([0.1, 0.2])
    """
    score = np.array([NormalDist().inv_cdf(each) for each in np.ravel(quantile)], float).reshape(np.shape(quantile))
    return _placed(value, np.asarray(quantile, float), score)


def _placed(value: Value, quantile: Array, score: Array) -> Array:
    """Give a value at quantiles of which the normal scores are known."""
    if value.is_exact:
        return np.full_like(quantile, value.mean)
    if value.spread == "uniform":
        below = value.low + (value.mean - value.low) * quantile / 0.5
        above = value.mean + (value.high - value.mean) * (quantile - 0.5) / 0.5
        return np.where(quantile < 0.5, below, above)
    widths = score / NormalDist().inv_cdf(0.5 + value.level / 2)
    if value.spread == "lognormal":
        ratio = np.where(score < 0, value.mean / value.low, value.high / value.mean)
        return np.asarray(value.mean * ratio**widths)
    return np.asarray(value.mean + widths * np.where(score < 0, value.mean - value.low, value.high - value.mean))


def drawn(inputs: Mapping[str, Value]) -> dict[str, Array]:
    """Draw values, each from its own fixed, evenly spread set of quantiles.

    An input is always drawn in the order that its name calls for: what two computations share moves both alike, so
    that they can be compared draw by draw.

    Parameters
    ----------
    inputs : mapping of str to Value
        What is drawn; independent of each other.

    Returns
    -------
    dict of str to (DRAWS,) float
        The draws. [unit of each]

    Examples
    --------
    >>> side = Value(mean=2.0, low=1.9, high=2.1, unit="m")
    >>> bool((drawn({"side": side})["side"] == drawn({"side": side, "other": side})["side"]).all())
    True
    """
    ladder, scores = _ladder()
    return {name: _placed(value, ladder[order], scores[order]) for name, value in inputs.items()
            for order in [draws_order(name)]}  # fmt: skip


def believed(draws: ArrayLike, *, unit: str, provenance: Provenance = _COMPUTED, spread: Spread = "normal") -> Value:
    """Give what draws say: their median, and the central interval of level 0.95.

    Parameters
    ----------
    draws : (n,) float
        Draws. [unit]
    unit : str
        Their unit.
    provenance : Provenance
        Where they come from.
    spread : {"normal", "lognormal", "uniform"}
        Shape of the belief.

    Examples
    --------
    >>> believed([1.0, 2.0, 3.0], unit="m").mean
    2.0
    """
    tail = (1 - LEVEL) / 2
    low, mean, high = np.quantile(np.asarray(draws, float), [tail, 0.5, 1 - tail])
    return Value(mean=float(mean), low=float(low), high=float(high), unit=unit, provenance=provenance, spread=spread)


def combined(
    formula: Callable[..., Array],
    inputs: Mapping[str, Value],
    *,
    unit: str,
    spread: Spread = "normal",
    note: str = "",
) -> Value:
    """Carry the intervals of `inputs` through `formula`.

    Parameters
    ----------
    formula : callable
        Takes each input by name as an array of draws, shape (n,), and returns an array of shape (n,).
    inputs : mapping of str to Value
        The inputs; independent of each other.
    unit : str
        Unit of the result.
    spread : {"normal", "lognormal", "uniform"}
        Shape of the belief in the result.
    note : str
        A remark for the provenance.

    Returns
    -------
    Value
        Median and the central interval of level 0.95; the provenance keeps the weakest of the inputs.

    Examples
    --------
    >>> side = Value(mean=2.0, low=1.9, high=2.1, unit="m")
    >>> combined(lambda side: side**2, {"side": side}, unit="m²").text()
    '4.00 m² (3.61 to 4.41)'
    """
    provenance = Provenance.of((value.provenance for value in inputs.values()), note)
    return believed(formula(**drawn(inputs)), unit=unit, provenance=provenance, spread=spread)


@cache
def _ladder() -> tuple[Array, Array]:
    """Quantiles from low to high, evenly spread, and their normal scores."""
    ladder = (np.arange(DRAWS) + 0.5) / DRAWS
    half = np.array([NormalDist().inv_cdf(each) for each in ladder[: DRAWS // 2]])
    return ladder, np.concatenate([half, -half[::-1]])


@cache
def draws_order(name: str) -> NDArray[np.int64]:
    """Give the order in which an input of that name is drawn: how it shuffles the ladder; fixed by design.

    Examples
    --------
    >>> sorted(draws_order("air").tolist()) == list(range(DRAWS))
    True
    """
    return np.random.default_rng(np.random.SeedSequence(4, spawn_key=(crc32(name.encode()),))).permutation(DRAWS)
