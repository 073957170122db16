"""Doughs that no recipe explains: one that somebody measured, and one that nobody knows."""

import math

from lumped.dough.material import CONDUCTS_BELOW, Dough, Kind
from lumped.errors import RecipeError
from lumped.quantities import Provenance, Status, Value
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["OHMMETER", "WAYS_TO_MEASURE", "measured_dough", "unknown_dough"]

WAYS_TO_MEASURE = ("four-needles-ac", "plates-ac-1khz", "four-terminal-dc-swapped")
OHMMETER = "two-wire-dc"
"""A way that does not measure dough."""


def measured_dough(
    resistivity: float,
    how: str,
    *,
    low: float | None = None,
    high: float | None = None,
    name: str = "",
    kind: Kind | None = None,
) -> Dough:
    """Give a dough that somebody measured.

    Parameters
    ----------
    resistivity : float
        The reading. [Ω·m]
    how : str
        How it was measured, one of `WAYS_TO_MEASURE`.
    low, high : float, optional
        Ends of the measured interval; without them the way's usual spread. [Ω·m]
    name : str
        What the dough is called.
    kind : {"conducting", "insulating"}, optional
        What it is for; without it, conducting below 5 Ω·m.

    Returns
    -------
    Dough

    Raises
    ------
    RecipeError
        If it was measured in a way that does not measure dough, or the figures can't be.

    Examples
    --------
    >>> measured_dough(0.2, "four-needles-ac").resistivity.text()
    '0.20 Ω·m (0.182 to 0.220)'
    """
    if how == OHMMETER:
        raise RecipeError("dough-ohmmeter", resistivity=f"{resistivity:g}")
    if how not in WAYS_TO_MEASURE:
        raise RecipeError("dough-no-way", how=how, ways=", ".join(WAYS_TO_MEASURE))
    spread = 1 + handbook().value("measuring", how, "half_width").mean
    low = resistivity / spread if low is None else low
    high = resistivity * spread if high is None else high
    if not (math.isfinite(resistivity) and math.isfinite(high) and 0 < low <= resistivity <= high):
        raise RecipeError("dough-measured-order", low=f"{low:g}", resistivity=f"{resistivity:g}", high=f"{high:g}")
    way = handbook().name("measuring", how)
    origin = Provenance(status=Status.MEASURED, note=way)
    value = Value(mean=resistivity, low=low, high=high, unit="Ω·m", provenance=origin, spread="lognormal")
    found: Kind = "conducting" if resistivity < CONDUCTS_BELOW else "insulating"
    return Dough(
        name=name or say("dough-measured-name"), kind=kind or found, resistivity=value, how="measured",
        notes=(say("dough-note-measured", way=way),),
    )  # fmt: skip


def unknown_dough(kind: Kind) -> Dough:
    """Give a dough of which only the kind is known, with a wide interval.

    Parameters
    ----------
    kind : {"conducting", "insulating"}
        What it is for.

    Returns
    -------
    Dough

    Examples
    --------
    >>> unknown_dough("conducting").resistivity.text()
    '0.20 Ω·m (0.070 to 1.00)'
    """
    key = f"unknown-{kind}"
    row = handbook().row("doughs", key, "resistivity")
    return Dough(
        name=handbook().name("doughs", key), kind=kind, resistivity=row.value, how="unknown",
        notes=(say("dough-note-unknown", span=row.note),),
    )  # fmt: skip
