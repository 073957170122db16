"""Words as they are compared: without case and accents, and with hyphens as spaces."""

import unicodedata

__all__ = ["folded", "plain_word"]

_HYPHENS = dict.fromkeys(map(ord, "-‐‑‒–—_"), " ")


def folded(text: str) -> str:
    """Give a text without case and accents.

    Examples
    --------
    >>> folded("Pâte SALÉE")
    'pate salee'
    """
    apart = unicodedata.normalize("NFKD", text.casefold())
    return "".join(letter for letter in apart if not unicodedata.combining(letter) and letter != "\0")


def plain_word(text: str) -> str:
    """Give what something is called, the same however it is written: in any case, with or without accents or hyphens.

    Examples
    --------
    >>> plain_word(" Crème de  tartre"), plain_word("plain-flour"), plain_word("Baker’s salt")
    ('creme de tartre', 'plain flour', "baker's salt")
    """
    return " ".join(folded(text).translate(_HYPHENS).replace("’", "'").split())
