"""Where a number comes from, and how much that is worth."""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum

__all__ = ["Provenance", "Status"]


class Status(Enum):
    """How a number came about, strongest first; combining numbers keeps the weakest."""

    MEASURED = "measured"
    PUBLISHED = "published"
    LABEL = "from a label"
    COMPUTED = "computed"
    COMMON_PRACTICE = "common practice"
    FROM_MEMORY = "from memory"
    INVENTED = "invented"

    @property
    def rank(self) -> int:
        """Place in the order above; 0 is the strongest."""
        return list(Status).index(self)


@dataclass(frozen=True, slots=True, kw_only=True)
class Provenance:
    """Status of a number, the keys of its sources in the bibliography, and a remark.

    Examples
    --------
    >>> table = Provenance(status=Status.PUBLISHED, sources=("crc-conductivity",))
    >>> guess = Provenance(status=Status.FROM_MEMORY)
    >>> Provenance.of([table, guess]).status.value, Provenance.of([table, guess]).sources
    ('from memory', ('crc-conductivity',))
    """

    status: Status
    sources: tuple[str, ...] = ()
    note: str = ""

    @classmethod
    def of(cls, parts: Iterable["Provenance"], note: str = "") -> "Provenance":
        """Give the provenance of what was computed from `parts`: the weakest status, all sources."""
        parts = tuple(parts)
        status = max((Status.COMPUTED, *(part.status for part in parts)), key=lambda each: each.rank)
        sources = dict.fromkeys(source for part in parts for source in part.sources)
        return cls(status=status, sources=tuple(sources), note=note)

    def as_dict(self) -> dict[str, object]:
        """Give it as JSON shows it."""
        return {"status": self.status.value, "sources": list(self.sources), "note": self.note}
