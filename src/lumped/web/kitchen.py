"""What all pages of one running app share: its settings, its workers, its notebook, and what was brought along."""

from collections import OrderedDict
from dataclasses import dataclass, field
from functools import cached_property

from lumped.app.given import Given
from lumped.app.jobs import Jobs
from lumped.app.settings import Settings
from lumped.app.shelf import Shelf

__all__ = ["Kitchen"]

BROUGHT_LIMIT = 32


@dataclass(frozen=True, kw_only=True)
class Kitchen:
    """What all pages share."""

    settings: Settings
    jobs: Jobs
    _brought: OrderedDict[str, Given] = field(default_factory=OrderedDict)

    @cached_property
    def shelf(self) -> Shelf:
        """The notebook; it is opened when it is first needed."""
        return Shelf(self.settings)

    def keep(self, given: Given) -> str:
        """Keep a sculpture or recipe that was brought, the oldest makes room; give the key to it."""
        key = given.key[:16]
        self._brought[key] = given
        while len(self._brought) > BROUGHT_LIMIT:
            self._brought.popitem(last=False)
        return key

    def brought(self, key: str) -> Given | None:
        """Give what was brought; None if it is not here."""
        return self._brought.get(key)
