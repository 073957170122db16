"""What all pages of one running app share: its settings, its workers, and the sculptures that were brought along."""

from collections import OrderedDict
from dataclasses import dataclass, field

from lumped.app.given import Given
from lumped.app.jobs import Jobs
from lumped.app.settings import Settings

__all__ = ["Kitchen"]

BROUGHT_LIMIT = 32


@dataclass(frozen=True, slots=True, kw_only=True)
class Kitchen:
    """What all pages share."""

    settings: Settings
    jobs: Jobs
    _brought: OrderedDict[str, Given] = field(default_factory=OrderedDict)

    def keep(self, given: Given) -> str:
        """Keep a sculpture that was brought, the oldest makes room; give the key to it."""
        key = given.key[:16]
        self._brought[key] = given
        while len(self._brought) > BROUGHT_LIMIT:
            self._brought.popitem(last=False)
        return key

    def brought(self, key: str) -> Given | None:
        """Give a sculpture that was brought; None if it is not here."""
        return self._brought.get(key)
