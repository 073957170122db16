"""Numbers that carry their unit, their interval and where they come from.

A `Value` is a mean with an interval; `combined` carries the intervals of several values through a formula by Monte
Carlo with fixed draws; a `Provenance` says whether a number was published, measured, computed, or is common practice,
from memory or invented, and combining keeps the weakest.
"""

from lumped.quantities.numbers import read_number, with_unit
from lumped.quantities.provenance import Provenance, Status
from lumped.quantities.rounding import (
    COINS,
    coins_text,
    figure_shown,
    figure_text,
    rounded_text,
    short_text,
    significant,
    weight_text,
)  # fmt: skip
from lumped.quantities.units import SUFFIXES, in_unit, parse_quantity, suffix_of
from lumped.quantities.value import LEVEL, Value, believed, combined, drawn, draws_of, draws_order

__all__ = [
    "COINS",
    "LEVEL",
    "SUFFIXES",
    "Provenance",
    "Status",
    "Value",
    "believed",
    "coins_text",
    "combined",
    "drawn",
    "draws_of",
    "draws_order",
    "figure_shown",
    "figure_text",
    "in_unit",
    "parse_quantity",
    "read_number",
    "rounded_text",
    "short_text",
    "significant",
    "suffix_of",
    "weight_text",
    "with_unit",
]
