"""What a notebook holds, as plain records: revisions of documents, series of readings, and their seals.

A *seal* is the SHA-256 of a record together with the seal before it. So the newest seal of a document vouches for its
whole history (who, when, title, body, links), and that of a series for every reading in it; `verify` computes them
anew, and what was exported and brought back is identical when its seals are.
"""

import hashlib
import json
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from types import MappingProxyType

import numpy as np
from numpy.typing import NDArray

from lumped.notebook.canonical import Body
from lumped.notebook.moments import as_iso
from lumped.notebook.reference import Reference

__all__ = [
    "DERIVED",
    "Contents",
    "Entry",
    "Readings",
    "Revision",
    "Series",
    "Stretch",
    "sealed",
    "sealed_series",
    "sealed_stretch",
]

DERIVED = "derived from"


@dataclass(frozen=True, slots=True, kw_only=True)
class Revision:
    """One state of a document.

    Parameters
    ----------
    document : str
        Id of the document (UUIDv7).
    kind : str
        Kind of the document.
    number : int
        1 for the first, and one more for each that follows.
    schema : int
        Form in which the body was written.
    title : str
        Its title; a removal keeps the last one.
    body : mapping or None
        What it holds; None in a removal.
    hash : str
        Hash of the body; empty in a removal.
    made_by : str
        Who saved it.
    at : int
        When. [µs since 1970, UTC]
    note : str
        Why, if somebody said so.
    restored : int or None
        Number of the revision that was brought back.
    links : mapping of str to Reference
        What it refers to, by the name it uses for it; the name "derived from" tells its lineage.
    seal : str
        Hash over all of this and the seal of the revision before.
    """

    document: str
    kind: str
    number: int
    schema: int
    title: str
    body: Body | None
    hash: str
    made_by: str
    at: int
    note: str = ""
    restored: int | None = None
    links: Mapping[str, Reference] = field(default_factory=lambda: MappingProxyType({}))
    seal: str = ""

    @property
    def removed(self) -> bool:
        """Whether this revision takes the document away."""
        return self.body is None

    @property
    def reference(self) -> Reference:
        """How others refer to this state."""
        return Reference(self.document, self.hash)

    @property
    def when(self) -> str:
        """When it was saved, in UTC."""
        return as_iso(self.at)

    def envelope(self) -> dict[str, object]:
        """Give all but body and seal, as JSON and TOML show it; what is empty is left out."""
        content = {
            "number": self.number, "schema": self.schema, "title": self.title, "hash": self.hash,
            "made_by": self.made_by, "at": self.when, "note": self.note, "restored": self.restored,
            "links": {name: str(each) for name, each in sorted(self.links.items())},
        }  # fmt: skip
        return {key: each for key, each in content.items() if each not in ("", None, {})}


@dataclass(frozen=True, slots=True, kw_only=True)
class Entry:
    """A document as a list shows it: what its newest revision says, without the body.

    Parameters
    ----------
    document, kind : str
        Id and kind.
    title : str
        The newest title.
    number : int
        Number of the newest revision.
    hash : str
        Hash of its body; empty if it was removed.
    made_by : str
        Who saved it.
    at, begun : int
        When the newest revision was saved, and the first. [µs since 1970, UTC]
    """

    document: str
    kind: str
    title: str
    number: int
    hash: str
    made_by: str
    at: int
    begun: int

    @property
    def removed(self) -> bool:
        """Whether the document is removed."""
        return not self.hash

    @property
    def when(self) -> str:
        """When the newest revision was saved, in UTC."""
        return as_iso(self.at)


def sealed(revision: Revision, before: str) -> Revision:
    """Give a revision with its seal; `before` is the seal of the revision before, empty for the first."""
    content = {"document": revision.document, "kind": revision.kind, "before": before, **revision.envelope()}
    return replace(revision, seal=_digest(content))


@dataclass(frozen=True, slots=True, kw_only=True)
class Series:
    """Readings of one thing with one instrument, in one unit, by one method.

    Parameters
    ----------
    id : str
        Its id (UUIDv7).
    title : str
        What is measured.
    unit : str
        Unit of the values.
    instrument : str
        What it was measured with.
    method : str
        How.
    made_by : str
        Who began it.
    at : int
        When. [µs since 1970, UTC]
    about : Reference or None
        The document whose thing it measures: a batch, a specimen, a sculpture.
    seal : str
        Hash over all of this.
    """

    id: str
    title: str
    unit: str
    instrument: str
    method: str
    made_by: str
    at: int
    about: Reference | None = None
    seal: str = ""

    def envelope(self) -> dict[str, object]:
        """Give all but the seal, as JSON and TOML show it; what is empty is left out."""
        content = {
            "id": self.id, "title": self.title, "unit": self.unit, "instrument": self.instrument,
            "method": self.method, "made_by": self.made_by, "at": as_iso(self.at),
            "about": str(self.about) if self.about else "",
        }  # fmt: skip
        return {key: each for key, each in content.items() if each != ""}


def sealed_series(series: Series) -> Series:
    """Give a series with its seal."""
    return replace(series, seal=_digest(series.envelope()))


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Readings:
    """Readings in the order in which they were written down.

    Parameters
    ----------
    number : (n,) int64
        1 for the first of the series.
    at : (n,) int64
        When. [µs since 1970, UTC]
    value : (n,) float64
        What was read; not a number where the remark says why. [unit of the series]
    remarks : mapping of int to str
        Remarks by the number of their reading.
    """

    number: NDArray[np.int64]
    at: NDArray[np.int64]
    value: NDArray[np.float64]
    remarks: Mapping[int, str] = field(default_factory=lambda: MappingProxyType({}))

    def __len__(self) -> int:
        return len(self.at)

    @classmethod
    def none(cls) -> "Readings":
        """Give no readings."""
        return cls(number=np.empty(0, np.int64), at=np.empty(0, np.int64), value=np.empty(0, np.float64))

    def chosen(self, which: "slice | NDArray[np.intp]") -> "Readings":
        """Give those at some indices."""
        numbers = self.number[which]
        kept = set(numbers.tolist()) if self.remarks else set()
        remarks = {number: text for number, text in self.remarks.items() if number in kept}
        return Readings(number=numbers, at=self.at[which], value=self.value[which], remarks=remarks)


@dataclass(frozen=True, slots=True, kw_only=True)
class Stretch:
    """Readings of a series that were committed together.

    Parameters
    ----------
    first : int
        Number of its first reading.
    count : int
        How many.
    seal : str
        Hash over its readings and the seal before.
    """

    first: int
    count: int
    seal: str


def sealed_stretch(readings: Readings, before: str) -> Stretch:
    """Seal readings that are committed together; `before` is the seal of the stretch before, or that of the series."""
    digest = hashlib.sha256(before.encode())
    value = np.where(np.isnan(readings.value), np.nan, readings.value + 0.0)  # one pattern of bits for none, and for 0
    for column, form in ((readings.number, "<i8"), (readings.at, "<i8"), (value, "<f8")):
        digest.update(np.ascontiguousarray(column, dtype=form).tobytes())
    digest.update(json.dumps(sorted(readings.remarks.items()), ensure_ascii=True).encode())
    return Stretch(first=int(readings.number[0]), count=len(readings), seal=digest.hexdigest())


@dataclass(frozen=True, slots=True, kw_only=True)
class Contents:
    """Everything in a notebook, in memory.

    Parameters
    ----------
    id : str
        Id of the notebook.
    documents : mapping of str to tuple of Revision
        Revisions in order, by document.
    series : mapping of str to (Series, Readings, tuple of Stretch)
        Series with their readings, by id.
    """

    id: str
    documents: Mapping[str, tuple[Revision, ...]]
    series: Mapping[str, tuple[Series, Readings, tuple[Stretch, ...]]]

    @property
    def fingerprint(self) -> str:
        """Hash over the newest seals: equal when all that was written and measured is."""
        newest = {document: revisions[-1].seal for document, revisions in self.documents.items()}
        last = {
            key: (stretches[-1].seal if stretches else each.seal) for key, (each, _, stretches) in self.series.items()
        }
        return _digest({"documents": newest, "series": last})


def _digest(content: Mapping[str, object]) -> str:
    return hashlib.sha256(json.dumps(content, sort_keys=True, ensure_ascii=True).encode()).hexdigest()
