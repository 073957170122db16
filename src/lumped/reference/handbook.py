"""Looking things up in the handbook."""

import difflib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache

from lumped.errors import HandbookError
from lumped.quantities import Provenance, Value
from lumped.reference.rows import Curve, Entry, Row, Source
from lumped.texts import say

__all__ = ["Handbook", "handbook"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Handbook:
    """All tables, curves and sources.

    Parameters
    ----------
    tables : mapping of str to mapping of str to Entry
        Entries by table (the file's name) and key.
    about : mapping of str to str
        What each table is for.
    curves : mapping of str to Curve
        Curves by key.
    sources : mapping of str to Source
        The bibliography.
    """

    tables: Mapping[str, Mapping[str, Entry]]
    about: Mapping[str, str]
    curves: Mapping[str, Curve]
    sources: Mapping[str, Source]

    def keys(self, table: str) -> tuple[str, ...]:
        """Give the keys of a table's entries, in the table's order.

        Examples
        --------
        >>> "table-salt" in handbook().keys("ingredients")
        True
        """
        return tuple(self._table(table))

    def entry(self, table: str, key: str) -> Entry:
        """Give one entry with all its rows and facts.

        Raises
        ------
        HandbookError
            If there is no such table or entry; the sentence names those that look alike.
        """
        entries = self._table(table)
        if key not in entries:
            raise HandbookError("handbook-no-entry", table=table, key=key, near=_near(key, entries))
        return entries[key]

    def name(self, table: str, key: str) -> str:
        """Give an entry's name in plain words.

        Examples
        --------
        >>> handbook().name("ingredients", "table-salt")
        'table salt'
        """
        return self.entry(table, key).name

    def row(self, table: str, key: str, quantity: str) -> Row:
        """Give one figure as printed, with its page.

        Examples
        --------
        >>> row = handbook().row("ingredients", "table-salt", "g_per_cup")
        >>> row.printed, row.unit
        (292.0, 'g')
        """
        rows = self.entry(table, key).rows
        if quantity not in rows:
            raise HandbookError("handbook-no-row", table=table, key=key, quantity=quantity, near=_near(quantity, rows))
        return rows[quantity]

    def value(self, table: str, key: str, quantity: str) -> Value:
        """Give one figure in SI, with interval and provenance.

        Examples
        --------
        >>> handbook().value("ingredients", "table-salt", "g_per_cup").text()
        '0.292 kg (0.280 to 0.304)'
        """
        return self.row(table, key, quantity).value

    def has(self, table: str, key: str, quantity: str) -> bool:
        """Tell whether an entry has such a row."""
        return quantity in self.entry(table, key).rows

    def curve(self, key: str) -> Curve:
        """Give a table of points, in SI.

        Examples
        --------
        >>> curve = handbook().curve("nacl-conductivity-20degC")
        >>> float(curve["conductivity"][-1]), curve.units["conductivity"]
        (22.2, 'S/m')
        """
        if key not in self.curves:
            raise HandbookError("handbook-no-curve", key=key, near=_near(key, self.curves))
        return self.curves[key]

    def citations(self, provenance: Provenance, language: str = "en") -> tuple[str, ...]:
        """Name in short the sources of a number, in a language.

        Examples
        --------
        >>> book = handbook()
        >>> book.citations(book.value("ingredients", "table-salt", "g_per_cup").provenance)
        ('USDA SR',)
        """
        return tuple(self.sources[key].short_in(language) for key in provenance.sources if key in self.sources)

    def _table(self, table: str) -> Mapping[str, Entry]:
        if table not in self.tables:
            raise HandbookError("handbook-no-table", table=table, near=_near(table, self.tables))
        return self.tables[table]


@cache
def handbook() -> Handbook:
    """Open the handbook that comes with Lumped; the second call costs nothing.

    Returns
    -------
    Handbook
        All tables. An entry is read and checked when it is first asked for: a row that is unsound is then refused with
        a sentence that names file, entry and row.

    Examples
    --------
    >>> handbook() is handbook()
    True
    """
    from importlib.resources import files

    from lumped.reference.loading import opened_handbook

    return opened_handbook(files("lumped.reference").joinpath("data"))


def _near(wanted: str, known: Iterable[str]) -> str:
    """Words that look like the wanted one, or else the first few that exist."""
    known = list(known)
    near = difflib.get_close_matches(wanted, known, n=3, cutoff=0.5)
    near += [each for each in known if wanted in each and each not in near][:3]
    return say("handbook-near", words=", ".join(near)) if near else say("handbook-all", words=", ".join(known[:12]))
