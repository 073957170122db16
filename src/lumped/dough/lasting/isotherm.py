"""How much water a dough holds at rest in air of a given humidity, and the other way about: its water activity.

Flour and salt each take up what they take up at that humidity, `X(a) = Σ shareᵢ Xᵢ(a)`; what a salt takes jumps from
nothing to a saturated brine at its own humidity (table salt: 75 %), so a salt dough stops drying there or turns wet.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.errors import InputError
from lumped.reference import handbook

__all__ = ["Isotherm", "brine_uptake", "flour_uptake", "isotherm_of", "linear_isotherm"]

Array = NDArray[np.float64]
Uptake = Callable[[Array], Array]
_NODES = 160
_THICKEST = 20.0  # a liquid such as glycerine is followed to a twentieth of its mass in water


@dataclass(frozen=True, slots=True, kw_only=True)
class Isotherm:
    """Water activity against water content, as a table with straight lines between.

    Parameters
    ----------
    content : (k,) float
        Water over dry matter (salt and sugar are dry matter), strictly rising from 0. [1]
    activity : (..., k) float
        Water activity, never falling. [1]

    Examples
    --------
    >>> law = Isotherm(content=np.array([0.0, 0.5, 1.0]), activity=np.array([0.0, 0.8, 1.0]))
    >>> float(law.activity_at(0.25)), float(law.content_at(0.9))
    (0.4, 0.75)
    """

    content: Array
    activity: Array

    def __post_init__(self) -> None:
        if np.any(np.diff(self.content) <= 0) or np.any(np.diff(self.activity) < 0):
            raise ValueError("an isotherm needs content strictly rising and activity never falling")

    def activity_at(self, content: ArrayLike) -> Array:
        """Give the water activity at a water content; beyond the table its end's. [1]

        The last axes of `content` follow those of the isotherm's cases.
        """
        wanted = np.clip(np.asarray(content, float), self.content[0], self.content[-1])
        k = np.clip(self.content.searchsorted(wanted, "right") - 1, 0, len(self.content) - 2)
        share = (wanted - self.content[k]) / (self.content[k + 1] - self.content[k])
        return np.asarray(_taken(self.activity, k) * (1 - share) + _taken(self.activity, k + 1) * share)

    def content_at(self, humidity: ArrayLike) -> Array:
        """Give the water content at which a dough comes to rest in air of a humidity.

        Parameters
        ----------
        humidity : (...) float
            Relative humidity. [1]

        Returns
        -------
        (...) float
            Water over dry matter; where the activity is level (salt that crystallises) its dry end. Above the table's
            greatest activity the table's end: such a dough goes on taking up water. [1]
        """
        wanted = np.asarray(humidity, float)
        k = np.clip((self.activity < wanted[..., None]).sum(axis=-1) - 1, 0, len(self.content) - 2)
        low, high = _taken(self.activity, k), _taken(self.activity, k + 1)
        share = np.clip((wanted - low) / np.where(high > low, high - low, 1.0), 0.0, 1.0)
        return np.asarray(self.content[k] + share * (self.content[k + 1] - self.content[k]))


def _taken(table: Array, k: NDArray[np.int64]) -> Array:
    """Entries k of the table's last axis: k has the shape of the cases, and perhaps more axes behind."""
    if table.ndim == 1:
        return np.asarray(table[k])
    cases = table.shape[:-1]
    flat = table.reshape(-1, table.shape[-1])
    rows = np.arange(len(flat)).reshape(cases)
    rows = rows.reshape(cases + (1,) * (np.ndim(k) - len(cases)))
    return np.asarray(flat[rows, k])


def isotherm_of(parts: Sequence[tuple[ArrayLike, Uptake]], *, most: float, top: float = 0.995) -> Isotherm:
    """Build the isotherm of a dough from what its dry matter takes up.

    Parameters
    ----------
    parts : sequence of ((...) float, callable)
        Share of the dry matter, and the water that a kilogram of it holds at a water activity. [1], [1]
    most : float
        Greatest water content of the table. [1]
    top : float
        Greatest water activity of the table. [1]

    Returns
    -------
    Isotherm
        With as many cases as the shares have.

    Notes
    -----
    No part changes what another takes up. That is exact for two strong brines that keep Zdanovskii's rule, and fair for
    flour with salt; a cooked starch holds some water more than raw flour near saturation.

    Examples
    --------
    >>> law = isotherm_of([(0.6, flour_uptake()), (0.4, brine_uptake("sodium-chloride"))], most=1.5)
    >>> law.content_at([0.45, 0.70, 0.80]).round(2).tolist()
    [0.06, 0.1, 1.45]
    """
    activity = np.linspace(0.0, top, 1200)
    held = sum(np.asarray(share, float)[..., None] * uptake(activity) for share, uptake in parts)
    content = most * np.linspace(0.0, 1.0, _NODES) ** 1.5
    table = np.asarray(held)
    flat = [np.interp(content, row, activity) for row in table.reshape(-1, len(activity))]
    return Isotherm(content=content, activity=np.reshape(flat, (*table.shape[:-1], _NODES)))


def linear_isotherm(slope: float, most: float = 1.0) -> Isotherm:
    """Give an isotherm `a = slope · X`, for checks against closed forms.

    Examples
    --------
    >>> float(linear_isotherm(0.8).activity_at(0.5))
    0.4
    """
    content = np.linspace(0.0, most, _NODES)
    return Isotherm(content=content, activity=slope * content)


def flour_uptake(
    layer: ArrayLike | None = None, first: ArrayLike | None = None, further: ArrayLike | None = None
) -> Uptake:
    """Give the water that flour and starch hold.

    Parameters
    ----------
    layer, first, further : (...) float, optional
        M, C and K of `X = M C K a/((1 - K a)(1 - K a + C K a))`; the handbook's for flour. [1]

    Returns
    -------
    callable
        Water over dry flour at water activities (k,), of shape (..., k). [1]

    References
    ----------
    Guggenheim, Anderson, de Boer; constants from memory: flour of 13 % water keeps at 65 % humidity.

    Examples
    --------
    >>> float(flour_uptake()(np.array(0.65)).round(3))
    0.146
    """
    M, C, K = (
        handbook().value("lasting", "flour", quantity).mean if given is None else np.asarray(given, float)[..., None]
        for quantity, given in (("layer", layer), ("first", first), ("further", further))
    )

    def held(activity: Array) -> Array:
        x = K * np.asarray(activity, float)
        return np.asarray(M * C * x / ((1 - x) * (1 - x + C * x)))

    return held


def brine_uptake(compound: str, temperature: float = 298.15) -> Uptake:
    """Give the water that a salt, sugar or glycerine holds: none below its own humidity, then a brine or syrup.

    Parameters
    ----------
    compound : str
        Its key among the compounds: "sodium-chloride", "sucrose".
    temperature : float
        Temperature. [K]

    Returns
    -------
    callable
        Water over the dissolved matter at a water activity. [1]

    Raises
    ------
    InputError
        If the handbook doesn't know its molar mass or how much of it dissolves.

    Examples
    --------
    >>> held = brine_uptake("sodium-chloride")
    >>> held(np.array([0.70, 0.80])).round(2).tolist()
    [0.0, 3.32]
    """
    from lumped.chemistry.activity import water_activity
    from lumped.chemistry.compounds import compound as known
    from lumped.chemistry.solubility import solubility

    mass = known(compound).molar_mass
    if mass is None:
        raise InputError("lasting-no-molar-mass", compound=compound)
    most = min(float(solubility(compound, temperature)), _THICKEST) / mass
    molality = most * np.linspace(0.0, 1.0, 400)[1:] ** 2
    activity = water_activity({compound: molality}, temperature)
    order = np.argsort(activity)
    content = 1 / (molality[order] * mass)

    def held(wanted: Array) -> Array:
        found = np.interp(wanted, activity[order], content)
        return np.asarray(np.where(np.asarray(wanted) < activity[order][0], 0.0, found))

    return held
