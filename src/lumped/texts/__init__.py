"""Every sentence a user reads, by key, with named slots.

The sentences live in `en/*.ftl`, one file a room, in the Fluent syntax; the library that reads them also knows
plurals. A key that is missing or a slot that is not filled is an error of ours and stops the program: a user never
reads a key. Paper for tables also speaks French, Spanish and Japanese: inside `speaking("fr")` a sentence is French
or the program stops, so that no page mixes languages.
"""

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from functools import cache
from importlib.resources import files

from lumped.texts.sentences import Sentences

__all__ = ["LANGUAGES", "has", "language", "say", "speaking"]

LANGUAGES = {"en": "en-GB", "fr": "fr-FR", "es": "es-ES", "ja": "ja-JP"}
_spoken: ContextVar[str] = ContextVar("spoken", default="en")


def say(key: str, /, **slots: object) -> str:
    """Say the sentence `key`, its slots filled, in the language that is spoken.

    Parameters
    ----------
    key : str
        Key of a message in `en/*.ftl`, or in the folder of the language.
    **slots : str, int, float
        What the sentence needs. Numbers that are shown with a chosen number of digits come in as text.

    Returns
    -------
    str
        The sentence, without markup.

    Raises
    ------
    KeyError
        If there is no such sentence in that language, or one of its slots is not filled.

    Examples
    --------
    >>> say("count-parts", count=1), say("count-parts", count=3)
    ('1 part', '3 parts')
    """
    return _sentences(_spoken.get()).said(key, slots)


def has(key: str) -> bool:
    """Tell whether there is a sentence `key` in the language that is spoken.

    Examples
    --------
    >>> has("count-parts"), has("no-such-sentence")
    (True, False)
    """
    return _sentences(_spoken.get()).has(key)


def language() -> str:
    """Give the language that is spoken.

    Examples
    --------
    >>> language()
    'en'
    """
    return _spoken.get()


@contextmanager
def speaking(code: str) -> Iterator[None]:
    """Speak a language for a while.

    Parameters
    ----------
    code : {"en", "fr", "es", "ja"}
        Which.

    Examples
    --------
    >>> with speaking("fr"):
    ...     say("measure-cup", amount="2", count=2)
    '2 tasses'
    """
    token = _spoken.set(code)
    try:
        yield
    finally:
        _spoken.reset(token)


@cache
def _sentences(code: str) -> Sentences:
    return Sentences(files("lumped.texts").joinpath(code), LANGUAGES[code])
