"""How much the ions of one salt brake each other: the number b in `Λ = Λ° exp(-b)`, from tables of pure salts.

Along the root of ionic strength b is a smooth curve, from Debye, Hückel and Onsager's straight line in thin liquids to
what the tables say of strong ones. A second curve says how much of the temperature dependence of saturated brine the
salt shows. All salts' curves lie on one grid, so that one look-up reads them together.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry import brine, potash
from lumped.chemistry.brine import T20, cold_limit, temperature_factor
from lumped.chemistry.compounds import compound
from lumped.chemistry.density import liquid_volume, water_density
from lumped.quantities import Provenance
from lumped.quantities.interpolation import Monotone
from lumped.reference import handbook

__all__ = ["Braking", "braking_curves", "cold_limits", "onsager_slope", "salts", "valence"]

Array = NDArray[np.float64]
T25 = 298.15


@dataclass(frozen=True, slots=True, kw_only=True)
class Braking:
    """What the tables say of one salt in water.

    Parameters
    ----------
    cation, anion : str
        Its ions.
    number : Monotone
        b at 20 °C against the root of ionic strength. [1 against (mol/m³)^½]
    bend : Monotone
        Its temperature dependence over that of saturated brine, against the same. [1]
    width : float
        Half of the 95 % interval inside the table. [1]
    provenance : Provenance
        Where its table comes from.
    warmth : Provenance
        Where its temperature dependence comes from.
    """

    cation: str
    anion: str
    number: Monotone
    bend: Monotone
    width: float
    provenance: Provenance
    warmth: Provenance


def valence(ion: str) -> int:
    """Number of charges of an ion.

    Examples
    --------
    >>> valence("sulphate")
    2
    """
    return int(abs(handbook().value("ions", ion, "charge").mean))


@cache
def cold_limits() -> dict[str, float]:
    """Limiting conductivity of each ion at 20 °C per mole of charge. [S·m²/mol]

    Examples
    --------
    >>> round(1e4 * cold_limits()["potassium"], 1)
    66.7
    """
    found = {ion: cold_limit(ion) for ion in handbook().keys("ions")}
    # so that potassium chloride is exact
    return found | {"potassium": float(potash.potash_molar_conductivity(0.0, T20)) - found["chloride"]}


@cache
def salts() -> dict[str, Braking]:
    """All tabulated salts, by their key in the table `electrolytes`.

    Examples
    --------
    >>> sorted(salts())[:3]
    ['calcium-chloride', 'copper-sulphate', 'magnesium-chloride']
    """
    return {key: _braking(key) for key in handbook().keys("electrolytes")}


@cache
def _braking(key: str) -> Braking:
    book = handbook()
    entry = book.entry("electrolytes", key)
    cation, anion, curves = (str(entry.facts[each]) for each in ("cation", "anion", "curves"))
    number, bend = _of_its_own_law(curves) if curves in ("nacl", "kcl") else _tabulated(key)
    used = [f"{curves}-conductivity-{each}" for each in ("standards", "dilute-25degC", "20degC")]
    used = [each for each in used if each in book.curves and each != "kcl-conductivity-20degC"]
    return Braking(
        cation=cation, anion=anion, number=number, bend=bend, width=entry.rows["width"].printed,
        provenance=Provenance.of([book.curve(each).provenance for each in used]),
        warmth=book.curve(f"{curves}-warmth").provenance,
    )  # fmt: skip


def _of_its_own_law(curves: str) -> tuple[Monotone, Monotone]:
    """Those of table salt and of potassium chloride, whose laws have files of their own."""
    law, cation = (brine, "sodium") if curves == "nacl" else (potash, "potassium")
    limit, own = np.log(cold_limits()[cation] + cold_limits()["chloride"]), law.log_molar_conductivity()
    return Monotone(own.x, limit - own.y), law.bend()


def _tabulated(key: str) -> tuple[Monotone, Monotone]:
    """Braking number and bend of a salt from its table at 20 °C, and from thin liquids at 25 °C or of its likes."""
    book = handbook()
    entry = book.entry("electrolytes", key)
    cation, anion, curves = (str(entry.facts[each]) for each in ("cation", "anion", "curves"))
    strong, warm = book.curve(f"{curves}-conductivity-20degC"), book.curve(f"{curves}-warmth")
    density = strong.columns.get("density")
    charge = _charge(key, strong["salt"], density)
    limit, per_charge = cold_limits()[cation] + cold_limits()[anion], (valence(cation) + valence(anion)) / 2
    bend = Monotone(np.sqrt(per_charge * _charge(key, warm["salt"], None, strong["salt"], density)), warm["bend"])
    root, number = np.sqrt(per_charge * charge), np.log(limit * charge / strong["conductivity"])
    if f"{curves}-conductivity-dilute-25degC" in book.curves:
        dilute = book.curve(f"{curves}-conductivity-dilute-25degC")
        shrunk = dilute["charge"] * water_density(T20) / water_density(T25)
        x = np.sqrt(per_charge * shrunk)
        cooled = dilute["conductivity"] * np.exp(-bend(x) * np.log(float(temperature_factor(T25))))
        b = np.log(limit * shrunk / cooled)
        clear = root > 1.1 * x[-1]  # thinner rows of the strong table have two digits, and read low
        root, number = root[clear], number[clear]
    else:
        like = _braking(str(entry.facts["thin_like"])).number
        x = like.x[(like.x > 0) & (like.x < 0.9 * root[0])]
        b = like(x) * number[0] / like(root[0])
    return Monotone(np.concatenate([[0.0], x, root]), np.concatenate([[0.0], b, number])), bend


def _charge(
    key: str, share: Array, density: Array | None, known: Array | None = None, densities: Array | None = None
) -> Array:
    """Moles of charge in a cubic metre at 20 °C from mass share of salt. [mol/m³]"""
    entry = handbook().entry("electrolytes", key)
    cation, anion = valence(str(entry.facts["cation"])), valence(str(entry.facts["anion"]))
    count = cation * anion / int(np.gcd(cation, anion)) if cation != anion else cation
    if "molar_mass" not in entry.rows:
        volume = liquid_volume(1.0, {key: share / (1 - share)}, T20)
        return np.asarray(count * share / (1 - share) / (compound(key).molar_mass or 1.0) / volume)
    if density is None:
        assert known is not None
        assert densities is not None
        slope = (densities[-1] - densities[-2]) / (known[-1] - known[-2])
        density = np.interp(share, known, densities) + slope * np.maximum(share - known[-1], 0)
    return np.asarray(count * share * density / entry.rows["molar_mass"].value.mean)


class Sheaf:
    """Several curves on one grid, read together: what each curve says at a place, and how far each goes.

    Parameters
    ----------
    curves : sequence of Monotone
        K of them, each 0 or constant before its first point.
    """

    def __init__(self, curves: Sequence[Monotone]) -> None:
        self.grid = np.unique(np.concatenate([curve.x for curve in curves]))
        self.ends = np.array([[curve.x[-1]] for curve in curves])
        self._pieces = np.array([_pieces(curve, self.grid) for curve in curves]).transpose(1, 0, 2)

    def __call__(self, x: Array) -> Array:
        """Give all curves at (n,) places, (K, n); each stays at its end's value. [unit of the curves]"""
        inside = np.minimum(x, self.grid[-1])
        k = np.minimum(self.grid.searchsorted(inside, "right") - 1, len(self.grid) - 2)
        step = inside - self.grid[k]
        a, b, c, d = self._pieces.take(k, axis=2)
        return np.asarray(a + step * (b + step * (c + step * d)))


def _pieces(curve: Monotone, grid: Array) -> Array:
    """Coefficients of a curve's cubic in each cell of a finer grid, (4, cells)."""
    starts, width = grid[:-1], np.diff(grid)
    place = starts + width * np.array([[0.0], [1 / 3], [2 / 3], [1.0]])
    y = curve(place)
    cubic = (y[3] - 3 * y[2] + 3 * y[1] - y[0]) * 4.5
    square = (2 * y[0] - 5 * y[1] + 4 * y[2] - y[3]) * 4.5
    slope = -5.5 * y[0] + 9 * y[1] - 4.5 * y[2] + y[3]
    return np.array([y[0], slope / width, square / width**2, cubic / width**3])


@cache
def braking_curves() -> tuple[tuple[str, ...], Sheaf]:
    """Keys of the K salts, and their curves on one grid: K braking numbers, then K bends."""
    each = salts()
    return tuple(each), Sheaf([salt.number for salt in each.values()] + [salt.bend for salt in each.values()])


def onsager_slope(cation: str, anion: str) -> float:
    """How steeply the ions of a thin salt brake each other: db/d√I at 25 °C, by Onsager's limiting law.

    Parameters
    ----------
    cation, anion : str
        Their keys in the handbook's table `ions`.

    Returns
    -------
    float
        Slope. [(L/mol)^½]

    Notes
    -----
    Λ = Λ° - [0.785 |z₊z₋| q/(1 + √q) Λ° + 30.3 (|z₊| + |z₋|)] √I with Λ in S·cm²/mol and
    q = |z₊z₋| (λ₊ + λ₋)/((|z₊| + |z₋|)(|z₋| λ₊ + |z₊| λ₋)); the numbers follow from water's permittivity and
    viscosity at 25 °C.

    References
    ----------
    R. A. Robinson, R. H. Stokes, Electrolyte Solutions (1959), chapter 7; from memory.

    Examples
    --------
    >>> round(onsager_slope("sodium", "chloride"), 2), round(onsager_slope("hydrogen", "chloride"), 2)
    (0.71, 0.37)
    """
    book = handbook()
    plus, minus = (1e4 * book.value("ions", ion, "limiting_conductivity").mean for ion in (cation, anion))
    zp, zm = valence(cation), valence(anion)
    q = zp * zm * (plus + minus) / ((zp + zm) * (zm * plus + zp * minus))
    return float(0.785 * zp * zm * q / (1 + q**0.5) + 30.3 * (zp + zm) / (plus + minus))
