"""Numbers that carry their unit, their interval and where they come from.

A `Value` is a mean with an interval; `combined` carries the intervals of several values through a formula by Monte
Carlo with fixed draws; a `Provenance` says whether a number was published, measured, computed, or is common practice,
from memory or invented, and combining keeps the weakest.
"""

from lumped.quantities.provenance import Provenance, Status
from lumped.quantities.rounding import rounded_text, significant
from lumped.quantities.units import SUFFIXES, in_unit, parse_quantity, suffix_of
from lumped.quantities.value import Value, believed, combined, drawn, draws_of, draws_order

__all__ = [
    "SUFFIXES",
    "Provenance",
    "Status",
    "Value",
    "believed",
    "combined",
    "drawn",
    "draws_of",
    "draws_order",
    "in_unit",
    "parse_quantity",
    "rounded_text",
    "significant",
    "suffix_of",
]
