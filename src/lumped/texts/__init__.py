"""Every sentence a user reads, by key, with named slots.

The sentences live in `en/*.ftl`, one file a room, in the Fluent syntax; the library that reads them also knows
plurals. A key that is missing or a slot that is not filled is an error of ours and stops the program: a user never
reads a key.
"""

from functools import cache
from importlib.resources import files

from fluent.runtime import FluentBundle, FluentResource

__all__ = ["has", "say"]


def say(key: str, /, **slots: object) -> str:
    """Say the sentence `key`, its slots filled.

    Parameters
    ----------
    key : str
        Key of a message in `en/*.ftl`.
    **slots : str, int, float
        What the sentence needs. Numbers that are shown with a chosen number of digits come in as text.

    Returns
    -------
    str
        The sentence, without markup.

    Raises
    ------
    KeyError
        If there is no such sentence, or one of its slots is not filled.

    Examples
    --------
    >>> say("count-parts", count=1), say("count-parts", count=3)
    ('1 part', '3 parts')
    """
    message = _bundle().get_message(key) if has(key) else None
    if message is None or message.value is None:
        raise KeyError(f"no sentence {key!r}")
    text, problems = _bundle().format_pattern(message.value, slots)
    if problems:
        raise KeyError(f"sentence {key!r}: {problems[0]}")
    return str(text)


def has(key: str) -> bool:
    """Tell whether there is a sentence `key`.

    Examples
    --------
    >>> has("count-parts"), has("no-such-sentence")
    (True, False)
    """
    return bool(_bundle().has_message(key))


@cache
def _bundle() -> FluentBundle:
    bundle = FluentBundle(["en-GB"], use_isolating=False)
    for file in sorted(files("lumped.texts").joinpath("en").iterdir(), key=lambda entry: entry.name):
        if file.name.endswith(".ftl"):
            bundle.add_resource(FluentResource(file.read_text(encoding="utf-8")))
    return bundle
