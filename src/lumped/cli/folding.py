"""Lines of a language without blanks between its words: folded between any two letters, but not before a full stop."""

import unicodedata

from rich.cells import cell_len

__all__ = ["folded"]

_NOT_FIRST = "、。，．・：；？！）］｝」』】〉》”’ー〜…ぁぃぅぇぉっゃゅょァィゥェォッャュョ々,.:;?!)]}%"
_NOT_LAST = "（［｛「『【〈《“‘([{"


def folded(text: str, width: int) -> str:
    r"""Fold wide letters into lines of so many columns; a text without them stays as it is.

    Parameters
    ----------
    text : str
        One line.
    width : int
        Columns of a line; a wide letter takes two.

    Examples
    --------
    >>> folded("熱い生地。大人が持つ。", 10)
    '熱い生地。\n大人が持\nつ。'
    >>> folded("Hot dough sticks.", 10)
    'Hot dough sticks.'
    """
    if not any(map(_is_wide, text)):
        return text
    lines, line = [], ""
    for piece in _pieces(text):
        if line and cell_len((line + piece).rstrip()) > width:
            lines.append(line.rstrip())
            line = piece.lstrip()
        else:
            line += piece
    return "\n".join([*lines, line.rstrip()])


def _pieces(text: str) -> list[str]:
    """Give what stays on one line: a wide letter with the signs that cling to it, a word, blanks."""
    found: list[str] = []
    for letter in text:
        last = found[-1][-1] if found else ""
        clings = letter in _NOT_FIRST or (last and last in _NOT_LAST)
        if last and not last.isspace() and (clings or not (_is_wide(letter) or _is_wide(last) or letter.isspace())):
            found[-1] += letter
        else:
            found.append(letter)
    return found


def _is_wide(letter: str) -> bool:
    return unicodedata.east_asian_width(letter) in "WF"
