"""The sentences of one language, each read when it is first said.

A language has two thousand sentences, and a command says a hundred of them. A file is cut into its sentences, which
costs little; a sentence is read, with those that it names, when somebody asks for it.
"""

import re
from importlib.resources.abc import Traversable

from fluent.runtime import FluentBundle, FluentResource

__all__ = ["Sentences"]

_BEGINS = re.compile(r"^(-?[A-Za-z][\w-]*) *=", re.MULTILINE)
_NAMES = re.compile(r"\{ *(-?[A-Za-z][\w-]*)")
_LONGEST = 900  # letters that fill a slot; Fluent refuses more than 1000
_PLAIN = re.compile(r"[\w-]+ *= *([^\s{}][^\n{}]*)\n(?:\s*\n|#[^\n]*(?:\n|$))*")  # one line, no slot, no other form


class Sentences:
    """All sentences of a folder of Fluent files.

    Parameters
    ----------
    folder : path
        Where the files lie; a key that two of them have is said as in the first.
    locale : str
        Whose plurals and figures they use.

    Examples
    --------
    >>> from importlib.resources import files
    >>> english = Sentences(files("lumped.texts").joinpath("en"), "en-GB")
    >>> english.said("count-parts", {"count": 3})
    '3 parts'
    """

    def __init__(self, folder: Traversable, locale: str) -> None:
        self._unread: dict[str, str] = {}
        self._plain: dict[str, str] = {}
        self._keys: set[str] = set()
        self._bundle = FluentBundle([locale], use_isolating=False)
        for file in sorted(folder.iterdir(), key=lambda entry: entry.name):
            if file.name.endswith(".ftl"):
                self._cut(file.read_text(encoding="utf-8"))

    def _cut(self, text: str) -> None:
        begins = list(_BEGINS.finditer(text))
        ends = [each.start() for each in begins[1:]] + [len(text)]
        for begin, end in zip(begins, ends, strict=True):
            if begin[1] not in self._keys:
                self._keys.add(begin[1])
                self._unread[begin[1]] = text[begin.start() : end]

    def has(self, key: str) -> bool:
        """Tell whether there is a sentence of that key."""
        return key in self._keys and not key.startswith("-")

    def said(self, key: str, slots: dict[str, object]) -> str:
        """Say a sentence, its slots filled.

        Raises
        ------
        KeyError
            If there is no such sentence, or one of its slots is not filled.
        """
        if key in self._plain or self._is_plain(key):
            return self._plain[key]
        self._read(key)
        message = self._bundle.get_message(key) if self._bundle.has_message(key) else None
        if message is None or message.value is None:
            raise KeyError(f"no sentence {key!r}")
        text, problems = self._bundle.format_pattern(message.value, {name: _held(each) for name, each in slots.items()})
        if problems:
            raise KeyError(f"sentence {key!r}: {problems[0]}")
        return str(text)

    def _is_plain(self, key: str) -> bool:
        """Whether a sentence is one line without slots; then it is kept, and needs no reader."""
        found = None if key.startswith("-") else _PLAIN.fullmatch(self._unread.get(key, ""))
        if found is not None:
            self._plain[key] = found[1].rstrip()
        return found is not None

    def _read(self, key: str) -> None:
        """Read a sentence and those that it names."""
        text = self._unread.get(key)
        if text is None:
            return
        self._bundle.add_resource(FluentResource(text))
        self._unread.pop(key, None)  # only now: another thread may ask meanwhile
        for named in _NAMES.findall(text):
            self._read(named)


def _held(slot: object) -> object:
    """Cut short what is longer than a sentence can hold."""
    return f"{slot[:_LONGEST]}…" if isinstance(slot, str) and len(slot) > _LONGEST else slot
