"""Numbers as people read them: few digits, no exponents, no false precision; money in whole coins."""

import math

__all__ = [
    "COINS",
    "coins_text",
    "figure_shown",
    "figure_text",
    "rounded_text",
    "short_text",
    "significant",
    "weight_text",
]
COINS = {"AUD": 2, "EUR": 2, "GBP": 2, "INR": 2, "JPY": 0, "MXN": 2, "USD": 2, "ZAR": 2}
"""Decimals of each currency's smallest coin (ISO 4217, from memory)."""
_WHOLE_FROM = 100.0  # money from which nobody names the cents of an estimate


def significant(number: float, digits: int = 3) -> float:
    """Round to significant digits.

    Examples
    --------
    >>> significant(0.123456), significant(98765.0, 2)
    (0.123, 99000.0)
    """
    if number == 0 or not math.isfinite(number):
        return number
    return round(number, digits - 1 - math.floor(math.log10(abs(number))))


def rounded_text(number: float, digits: int = 2) -> str:
    """Write a number with two significant digits, three where the first is a 1 to 4 below a thousand.

    Parameters
    ----------
    number : float
        What to write. [any]
    digits : int
        Significant digits at least kept.

    Examples
    --------
    >>> [rounded_text(each) for each in (0.2, 4.0, 12.34, 1234.0, 0.00312, 98765.0, 0.0)]
    ['0.20', '4.00', '12.3', '1,230', '0.00312', '99,000', '0']
    """
    if number == 0:
        return "0"
    kept = _kept(number, digits)
    shown = significant(number, kept)
    places = max(0, kept - 1 - math.floor(math.log10(abs(shown))))
    return f"{shown:,.{places}f}"


def _kept(number: float, digits: int) -> int:
    """How many significant digits of a number are worth reading."""
    lead = abs(number) / 10 ** math.floor(math.log10(abs(number)))
    kept = digits + 1 if lead < 5 and not math.isclose(significant(number, 1), number) else digits
    return digits + 1 if abs(number) >= 1 and lead < 5 else kept


def figure_text(number: float, unit: str) -> str:
    """Write a number of a unit, without the unit: money in coins, all else as `rounded_text` does.

    Parameters
    ----------
    number : float
        What to write. [unit]
    unit : str
        Its unit; money is one of `COINS`, or one of them by something, such as "EUR/kg".

    Examples
    --------
    >>> [figure_text(each, "EUR") for each in (0.4, 0.0136, 12.34, 1234.0, 0.0031)]
    ['0.40', '0.01', '12.30', '1,230', '0.0031']
    >>> figure_text(64.2, "JPY"), figure_text(0.4, "Ω·m")
    ('64', '0.40')
    """
    decimals = COINS.get(unit.partition("/")[0])
    if decimals is None:
        return rounded_text(number)
    if abs(number) < 10.0**-decimals:
        return short_text(number)
    shown = significant(number, _kept(number, 2))
    return f"{shown:,.{0 if abs(shown) >= _WHOLE_FROM else decimals}f}"


def figure_shown(number: float, unit: str) -> float:
    """Give the number that `figure_text` writes, for sums that somebody checks. [unit]

    Examples
    --------
    >>> figure_shown(12.34, "EUR")
    12.3
    """
    return float(figure_text(number, unit).replace(",", ""))


def coins_text(number: float, money: str) -> str:
    """Write an amount of money to its last coin, as a sum of others is written.

    Examples
    --------
    >>> coins_text(12.34, "EUR"), coins_text(1294.0, "JPY")
    ('12.34', '1,294')
    """
    return f"{number:,.{COINS[money]}f}"


def short_text(number: float, digits: int = 2) -> str:
    """Write a number with so many significant digits at most, without zeros that say nothing.

    Parameters
    ----------
    number : float
        What to write. [any]
    digits : int
        Significant digits.

    Examples
    --------
    >>> [short_text(each) for each in (94.6, 0.0378, 1163.0, 10.0)], short_text(12345.6, 4)
    (['95', '0.038', '1,200', '10'], '12,350')
    """
    shown = significant(float(number), digits)
    places = 0 if shown == 0 else max(0, digits - 1 - math.floor(math.log10(abs(shown))))
    text = f"{shown:,.{places}f}"
    return text.rstrip("0").rstrip(".") if places else text


def weight_text(mass: float) -> str:
    """Write what a packet holds, a recipe takes or a batch weighs: grams, from a kilogram on kilograms.

    Parameters
    ----------
    mass : float
        What to write. [kg]

    Examples
    --------
    >>> weight_text(1.5), weight_text(0.9996), weight_text(0.25), weight_text(0.0045)
    ('1.5 kg', '1 kg', '250 g', '4.50 g')
    """
    if mass >= 0.9995:
        return f"{short_text(mass, 3)} kg"
    return f"{1e3 * mass:.0f} g" if mass >= 0.01 else f"{rounded_text(1e3 * mass)} g"
