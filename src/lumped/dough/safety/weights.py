"""What children and dogs weigh, and the most salt that a child should eat in a day."""

from functools import cache

from lumped.errors import InputError
from lumped.quantities import Provenance, Value
from lumped.quantities.interpolation import Monotone
from lumped.reference import Row, handbook

__all__ = ["child_mass", "dog_mass", "salt_of_a_day"]


def child_mass(age: float) -> Value:
    """Tell what a child weighs.

    Parameters
    ----------
    age : float
        Age in years, 1 to 10. [a]

    Returns
    -------
    Value
        The middle of girls and boys; nearly all lie between the ends. [kg]

    Raises
    ------
    InputError
        If the table does not reach so far.

    Examples
    --------
    >>> child_mass(2).mean, child_mass(2.5).text()
    (12.0, '13.1 kg (10.1 to 16.5)')
    """
    rows = _by_age("child-mass")
    ages = tuple(rows)
    if not ages[0] <= age <= ages[-1]:
        raise InputError("safety-age", age=f"{age:,.9g}", first=f"{ages[0]:g}", last=f"{ages[-1]:g}")
    low, mean, high = (float(curve(age)) for curve in _mass_curves())
    return Value(mean=mean, low=low, high=high, unit="kg", provenance=Provenance.of(_origins("child-mass")))


def dog_mass(size: str = "small") -> Value:
    """Tell what a dog weighs.

    Parameters
    ----------
    size : {"tiny", "small", "middle", "large"}
        How big it is.

    Examples
    --------
    >>> dog_mass("small").text()
    '10.0 kg (5.0 to 12.0)'
    """
    return handbook().value("limits", "dog-mass", size)


def salt_of_a_day(age: float) -> Value:
    """Tell the most salt that a child should eat in a day.

    Parameters
    ----------
    age : float
        Age in years, from 1. [a]

    Returns
    -------
    Value
        [kg]

    Examples
    --------
    >>> 1e3 * salt_of_a_day(5).mean
    3.0
    """
    rows = _by_age("salt-day-child")
    fitting = [first for first in rows if first <= age]
    if not fitting:
        raise InputError("safety-age", age=f"{age:g}", first=f"{min(rows):g}", last="18")
    return rows[max(fitting)].value


@cache
def _by_age(key: str) -> dict[float, Row]:
    """Rows by the age from which they hold, the youngest first."""
    rows = handbook().entry("limits", key).rows
    return dict(sorted((float(name.removeprefix("age_")), row) for name, row in rows.items()))


@cache
def _mass_curves() -> tuple[Monotone, Monotone, Monotone]:
    rows = _by_age("child-mass")
    values = [row.value for row in rows.values()]
    ends = zip(*((each.low, each.mean, each.high) for each in values), strict=True)
    low, mean, high = (Monotone(list(rows), list(end)) for end in ends)
    return low, mean, high


def _origins(key: str) -> list[Provenance]:
    return [row.value.provenance for row in handbook().entry("limits", key).rows.values()]
