"""How a clock's figures are said: minutes, hours or days, few digits, the interval behind."""

from lumped.quantities import Value, rounded_text, short_text
from lumped.texts import say

__all__ = ["THIN", "grams_text", "millimetres_text", "percent_text", "plain_time", "resistivity_text", "time_text"]

_UNITS = (("minutes", 60.0, 5400.0), ("hours", 3600.0, 2 * 86400.0), ("days", 86400.0, float("inf")))
_FAR = 30.0  # times; beyond it the ends of an interval have units of their own
_MOMENT = 60.0  # s
_MILLION = 1e6  # Ω·m
THIN = 5e-5  # m
_SMALL = 10.0  # per cent, below which a tenth is shown
NEVER = 30 * 86400.0  # s; what takes longer is not told apart


def time_text(time: Value) -> str:
    """Write a time with its interval in the unit that suits it.

    Parameters
    ----------
    time : Value
        How long. [s]

    Examples
    --------
    >>> time_text(Value(mean=3000.0, low=2280.0, high=3900.0, unit="s"))
    '50 minutes (38 to 65)'
    >>> time_text(Value(mean=10800.0, low=3600.0, high=31 * 86400.0, unit="s"))
    '3 hours (60 minutes to more than a month)'
    >>> time_text(Value(mean=6900.0, low=5200.0, high=9000.0, unit="s"))
    '1.9 hours (1.4 to 2.5)'
    >>> time_text(Value(mean=31 * 86400.0, low=3600.0, high=31 * 86400.0, unit="s"))
    'more than a month, perhaps only 60 minutes'
    >>> time_text(Value(mean=300.0, low=0.0, high=960.0, unit="s"))
    '5 minutes (less than a minute to 16 minutes)'
    """
    if time.mean < _MOMENT:
        return say("lasting-moment") if time.high < _MOMENT else say("lasting-moment-most", high=plain_time(time.high))
    if time.mean >= NEVER:
        return say("lasting-long") if time.low >= NEVER else say("lasting-open", low=plain_time(time.low))
    if time.low < _MOMENT or time.high >= NEVER or time.high > _FAR * time.mean or _FAR * time.low < time.mean:
        low, high = plain_time(time.low), plain_time(time.high)
    else:
        low, high = (short_text(each / _unit(time.mean)[1]) for each in (time.low, time.high))
    return say("lasting-span", mean=plain_time(time.mean), low=low, high=high)


def plain_time(seconds: float) -> str:
    """Write a time in the unit that suits it.

    Examples
    --------
    >>> plain_time(90.0), plain_time(3 * 86400.0), plain_time(1e9)
    ('1.5 minutes', '3 days', 'more than a month')
    """
    if seconds >= NEVER:
        return say("lasting-long")
    if seconds < _MOMENT:
        return say("lasting-moment")
    unit, factor = _unit(seconds)
    shown = short_text(seconds / factor)
    return say(f"lasting-{unit}", mean=shown, count="one" if shown == "1" else "other")


def _unit(seconds: float) -> tuple[str, float]:
    unit, factor, _ = next(each for each in _UNITS if seconds < each[2])
    return unit, factor


def percent_text(share: Value) -> str:
    """Write a share with its interval, in per cent.

    Examples
    --------
    >>> percent_text(Value(mean=0.037, low=0.028, high=0.051, unit=""))
    '3.7 (2.8 to 5.1)'
    """
    mean, low, high = (_near(100 * each) for each in (share.mean, share.low, share.high))
    return mean if mean == low == high else f"{mean} ({low} to {high})"


def _near(number: float) -> str:
    shown = f"{number:.1f}" if 0.05 <= abs(number) < _SMALL else f"{number:.0f}"
    return "0" if shown == "-0" else shown.replace("-", "−")


def millimetres_text(length: Value) -> str:
    """Write a small length with its interval, in mm; a twentieth of one is the least that counts.

    Examples
    --------
    >>> millimetres_text(Value(mean=0.0022, low=0.00022, high=0.0051, unit="m"))
    '2.2 (0.2 to 5.1)'
    >>> millimetres_text(Value(mean=0.0, low=0.0, high=1e-5, unit="m"))
    'none'
    """
    if length.high < THIN:
        return say("lasting-none")
    if length.mean < THIN:
        return say("lasting-at-most", most=f"{1e3 * length.high:.1f}")
    mean, low, high = (f"{1e3 * each:.1f}" if each < 0.00995 else f"{1e3 * each:.0f}" for each in
                       (length.mean, length.low, length.high))  # fmt: skip
    return mean if mean == low == high else f"{mean} ({low} to {high})"


def grams_text(mass: Value) -> str:
    """Write a mass with its interval, in grams.

    Examples
    --------
    >>> grams_text(Value(mean=0.0135, low=0.0127, high=0.0140, unit="kg"))
    '13.5 (12.7 to 14.0)'
    """
    places = 1 if mass.mean < 0.1 else 0
    mean, low, high = (f"{1e3 * each:.{places}f}" for each in (mass.mean, mass.low, mass.high))
    return f"{mean} ({low} to {high})"


def resistivity_text(resistivity: Value) -> str:
    """Write a resistivity with its interval, in Ω·m; beyond a million it blocks, however much.

    Examples
    --------
    >>> resistivity_text(Value(mean=0.2, low=0.1, high=2e9, unit="Ω·m", spread="lognormal"))
    '0.20 (0.10 to more than a million)'
    """
    shown = [rounded_text(each) if each < _MILLION else say("lasting-million")
             for each in (resistivity.mean, resistivity.low, resistivity.high)]  # fmt: skip
    return f"{shown[0]} ({shown[1]} to {shown[2]})"
