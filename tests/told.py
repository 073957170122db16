"""Figures that a page tells: read out of its words, held to what is computed, and none of them forgotten."""

import re
from collections.abc import Iterable
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
FIGURE = r"(−?(?:\d[\d,]*\d|\d)(?:\.\d+)?|\.\d+)"
_APART = re.compile(r"```.*?```|`[^`\n]*`|\]\([^)]*\)", re.S)  # code, and where links lead


def page(name: str) -> str:
    """Give the words of a page; its name counts from the root."""
    return (ROOT / name).read_text("utf-8")


def figures(text: str, words: str) -> list[tuple[float, float]]:
    """Give each figure that stands at a {} of these words in a text, with half of its last digit.

    Noughts at the end of a whole number count up to its second digit: 5,300 is known to 50, 100 to 5, 20 to a half.
    """
    found = re.findall(_pattern(words), text)
    assert len(found) == 1, f"“{words}” stands {len(found)} times on the page"
    return [(_number(each), _half(each)) for each in (found if isinstance(found[0], str) else found[0])]


def hold(text: str, words: str, seen: Iterable[float]) -> None:
    """Hold the figures of some words of a page to what is seen."""
    told, seen = figures(text, words), [float(each) for each in seen]
    assert len(told) == len(seen)
    off = [(figure, real) for (figure, half), real in zip(told, seen, strict=True)
           if real != pytest.approx(figure, rel=0, abs=1.02 * half)]  # fmt: skip
    assert off == [], f"“{words}”: (told, seen)"


def not_held(text: str, held: Iterable[str], plain: Iterable[str] = ()) -> list[str]:
    """Give the lines of a page in which a number is left that nobody holds to anything.

    Parameters
    ----------
    text : str
        The page.
    held : iterable of str
        Words that `hold` holds.
    plain : iterable of str
        Words whose numbers nobody computes: what was chosen, or what others say.
    """
    left = _APART.sub("", text)
    for words in held:
        left = re.sub(_pattern(_APART.sub("", words)), "", left)
    for words in plain:
        assert words in left, f"“{words}” no longer stands on the page"
        left = left.replace(words, "")
    return [line for line in left.splitlines() if re.search(r"\d", line)]


def _pattern(words: str) -> str:
    return r"(?<![\d.,])" + re.escape(words).replace(re.escape("{}"), FIGURE) + r"(?!\d|[.,]\d)"


def _number(printed: str) -> float:
    return float(printed.replace(",", "").replace("−", "-"))


def _half(printed: str) -> float:
    digits = printed.strip("−").replace(",", "")
    if "." in digits:
        return 0.5 * 10.0 ** -len(digits.partition(".")[2])
    noughts = len(digits) - len(digits.rstrip("0"))
    return 0.5 * 10.0 ** min(noughts, max(len(digits) - 2, 0))
