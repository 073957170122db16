"""What to do about an ingredient that the handbook lacks: perhaps the notebook has it from a packet."""

import shlex
from contextlib import suppress
from typing import TYPE_CHECKING

from lumped.errors import LumpedError
from lumped.texts import say
from lumped.texts.folding import plain_word

if TYPE_CHECKING:
    from lumped.app.settings import Settings

__all__ = ["packet_hint"]


def packet_hint(problem: LumpedError, settings: "Settings | None" = None) -> str:
    """Say how an ingredient that is not in the handbook can come along; "" if something else is the matter.

    Parameters
    ----------
    problem : LumpedError
        Why something could not be done.
    settings : Settings, optional
        They say which notebook; it is only looked into, and never begun.
    """
    if problem.code != "recipe-no-ingredient":
        return ""
    from lumped.app.gathering import own_labels
    from lumped.app.notebooks import open_notebook

    word = plain_word(str(problem.data["word"]))
    with suppress(LumpedError), open_notebook(settings=settings, begin=False) as notebook:
        title = next((each for each in own_labels(notebook) if plain_word(each) == word), None)
        if title is not None:
            return say("own-hint-notebook", title=title, quoted=shlex.quote(title))
    return say("own-hint-label")
