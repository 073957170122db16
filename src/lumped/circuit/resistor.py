"""Resistors, switches and metal that touches metal: straight lines through zero."""

from lumped.circuit.law import StraightLine
from lumped.reference import handbook

__all__ = ["contact", "resistor", "switch"]


def resistor(key: str) -> StraightLine:
    """Look up a resistor.

    Parameters
    ----------
    key : str
        Key in the handbook's table of resistors.

    Returns
    -------
    StraightLine
        Its law.

    Examples
    --------
    >>> resistor("resistor-220").resistance
    220.0
    """
    return StraightLine(resistance=handbook().value("resistors", key, "resistance").mean)


def switch(key: str = "switch", *, closed: bool = True) -> StraightLine:
    """Look up a switch; an open one still leaks a little, so that its far side has a potential.

    Parameters
    ----------
    key : str
        Key in the handbook's table of switches.
    closed : bool
        How it is set.

    Returns
    -------
    StraightLine
        Its law.

    Examples
    --------
    >>> switch(closed=False).resistance > 1e6 * switch().resistance
    True
    """
    return StraightLine(
        resistance=handbook().value("switches", key, f"{'closed' if closed else 'open'}_resistance").mean
    )


def contact() -> StraightLine:
    """Look up two pieces of metal that touch.

    Examples
    --------
    >>> contact().resistance < 1
    True
    """
    return StraightLine(resistance=handbook().value("switches", "metal-to-metal", "closed_resistance").mean)
