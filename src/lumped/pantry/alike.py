"""Whether a word may be another one with a slip in it: letters left out, doubled, changed or swapped.

A slip is one letter left out, added or changed, or two neighbours that changed places. How many are borne grows with
the word: in a short word two slips make another word (*paint* and *plain*); where more than one slips in, the first
letter stands (*tomato* is no *potato*).
"""

from collections.abc import Sequence

__all__ = ["slips", "slips_in_name"]

_BORNE = ((4, 1), (7, 2), (12, 3))  # from so many letters on, so many slips: chosen with the words of the tests


def slips(word: str, other: str, *, most: int) -> int | None:
    """Count the slips between two words; None if there are more than `most`.

    Examples
    --------
    >>> slips("tabel", "table", most=2), slips("hony", "honey", most=2), slips("paint", "plain", most=1)
    (1, 1, None)
    """
    most = most if word[:1] == other[:1] else min(most, 1)
    if abs(len(word) - len(other)) > most:
        return None
    before: list[int] = []
    row = list(range(len(other) + 1))
    for i, letter in enumerate(word, 1):
        older, before, row = before, row, [i]
        for j, mate in enumerate(other, 1):
            cost = min(before[j] + 1, row[j - 1] + 1, before[j - 1] + (letter != mate))
            if i > 1 and j > 1 and letter == other[j - 2] and word[i - 2] == mate:
                cost = min(cost, older[j - 2] + 1)
            row.append(cost)
    return row[-1] if row[-1] <= most else None


def slips_in_name(asked: Sequence[str], name: Sequence[str], *, fewer: int = 0) -> int | None:
    """Count the slips if each of some words stands for a word of a name, or all together for the whole of it.

    Parameters
    ----------
    asked, name : sequence of str
        The words.
    fewer : int
        By how many fewer slips are borne, as in a language in which nobody is likely to have asked.

    Returns
    -------
    int or None
        None if it is another name.

    Examples
    --------
    >>> slips_in_name(["tabel"], ["table", "salt"]), slips_in_name(["corn", "starch"], ["cornstarch"])
    (1, 0)
    >>> slips_in_name(["moonlight"], ["citric", "acid"]) is None
    True
    """
    words = ["".join(asked)]
    whole = slips(words[0], "".join(name), most=_borne(words[0], fewer))
    if whole is not None:
        return whole
    each = [_nearest(word, name, fewer) for word in asked]
    found = [count for count in each if count is not None]
    return sum(found) if found and len(found) == len(each) else None


def _nearest(word: str, name: Sequence[str], fewer: int) -> int | None:
    most = _borne(word, fewer)
    counts = [slips(word, each, most=most if len(each) > 3 else 0) for each in name]
    return min((count for count in counts if count is not None), default=None)


def _borne(word: str, fewer: int) -> int:
    """How many slips a word bears."""
    return max(max((slip for letters, slip in _BORNE if len(word) >= letters), default=0) - fewer, 0)
