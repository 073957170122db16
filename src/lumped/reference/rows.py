"""What a table holds: rows of one figure, entries of many rows, curves of many points, and sources."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

import numpy as np
from numpy.typing import NDArray

from lumped.quantities import Provenance, Value

__all__ = ["Curve", "Entry", "Row", "Source"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Source:
    """A book, paper, standard, law or data sheet.

    Parameters
    ----------
    key : str
        What rows call it.
    title : str
        Full title, with edition or number.
    short : str
        What cards and reports print.
    short_fr, short_es, short_ja : str
        The same in other languages, where it says more than names.
    authors, year, publisher, doi : str
        As far as known.
    """

    key: str
    title: str
    short: str
    short_fr: str = ""
    short_es: str = ""
    short_ja: str = ""
    authors: str = ""
    year: str = ""
    publisher: str = ""
    doi: str = ""

    def short_in(self, language: str) -> str:
        """Name it in short in a language.

        Examples
        --------
        >>> ions = Source(key="a", title="Tables of ions", short="N. Other, ions", short_es="N. Other, iones")
        >>> ions.short_in("es"), ions.short_in("fr")
        ('N. Other, iones', 'N. Other, ions')
        """
        return {"fr": self.short_fr, "es": self.short_es, "ja": self.short_ja}.get(language) or self.short

    def text(self) -> str:
        """Write the source as a reference list does.

        Examples
        --------
        >>> Source(key="a", title="Tables of brine", short="Brine", authors="N. Other", year="1900").text()
        'N. Other, Tables of brine, 1900'
        """
        doi = f"doi {self.doi}" if self.doi else ""
        return ", ".join(filter(None, (self.authors, self.title, self.publisher, self.year, doi)))


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One figure as printed, and the same in SI.

    Parameters
    ----------
    quantity : str
        What the figure is.
    printed, low, high : float
        Figure as the source prints it, and the ends of its interval: the source's own where it has one, else our belief
        of what a kitchen or a shop meets. [unit]
    unit : str
        Unit as printed.
    page : str
        Table and page in the source.
    note : str
        A remark.
    value : Value
        The figure in SI with its provenance.
    """

    quantity: str
    printed: float
    low: float
    high: float
    unit: str
    page: str
    note: str
    value: Value


@dataclass(frozen=True, slots=True, kw_only=True)
class Entry:
    """One thing of a table: its rows by quantity, and facts that are no figures (allergens, colours)."""

    key: str
    name: str
    rows: Mapping[str, Row]
    facts: Mapping[str, Any] = field(default_factory=dict)


@dataclass(frozen=True, slots=True, kw_only=True)
class Curve:
    """A table of points, in SI.

    Parameters
    ----------
    axes : tuple of str
        Columns that the others depend on; the first rises strictly within each value of the others.
    columns : mapping of str to (n,) float
        Each column's points. [units[column]]
    units : mapping of str to str
        SI unit of each column.
    tolerances : mapping of str to float
        Relative half-width of a column's 95 % interval, where the table states one. [1]
    pages : tuple of str
        Table and page of each point.
    provenance : Provenance
        The weakest of the points' statuses, and all their sources.
    """

    key: str
    name: str
    axes: tuple[str, ...]
    columns: Mapping[str, NDArray[np.float64]]
    units: Mapping[str, str]
    tolerances: Mapping[str, float]
    pages: tuple[str, ...]
    provenance: Provenance

    def __getitem__(self, column: str) -> NDArray[np.float64]:
        return self.columns[column]

    def __len__(self) -> int:
        return len(self.pages)
