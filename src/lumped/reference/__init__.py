"""The handbook: every figure that Lumped did not compute, with unit, source, page and status on each row.

Tables are TOML files under `data/`; whatever lies there is found. A file is cut into its entries, and an entry is
read and checked when it is first asked for, so that no command waits for tables that it does not need; the tests read
them all, and no row without a source or a unit gets past them. Figures leave the handbook in SI with their provenance:
`value = factor · printed figure + offset`, the printed figure staying in the row.
"""

from lumped.reference.handbook import Handbook, handbook
from lumped.reference.loading import read_handbook
from lumped.reference.rows import Curve, Entry, Row, Source
from lumped.reference.units import known_units, to_si

__all__ = ["Curve", "Entry", "Handbook", "Row", "Source", "handbook", "known_units", "read_handbook", "to_si"]
