"""Random notebooks, for property tests and the fuzzer; all invented."""

from uuid import UUID

import numpy as np
from hypothesis import strategies as st

from lumped.notebook.canonical import LARGEST_INTEGER, Body, canonical_text, hash_of
from lumped.notebook.lines import _TURNING, _UNSEEN
from lumped.notebook.moments import FIRST_MOMENT, LAST_MOMENT
from lumped.notebook.records import Contents, Readings, Revision, Series, Stretch, sealed, sealed_series, sealed_stretch
from lumped.notebook.reference import Reference

AWKWARD = [
    "",
    "'",
    "''",
    "=1+1",
    "@sum",
    "+",
    "-",
    "＝x",
    '"',
    'a,"b"',
    "<script>alert(1)</script>",
    "\\",
    "#",
    "½ µS",
    "日本",
    "e\u0301",
    "🫓",
]


texts = st.one_of(
    st.sampled_from([*AWKWARD, "\x00", "\x1b[2J", "\r\n", "\t", "\x7f", "\u2028", "\u202e", '"""', "'''"]),
    st.text(max_size=20),
)
letters = st.characters(exclude_categories=sorted(_UNSEEN), exclude_characters=_TURNING)
lines = st.one_of(st.sampled_from(AWKWARD), st.text(letters, max_size=20))
keys = st.one_of(st.sampled_from(["", "kind", "schema", "title", "a.b", " ", "documents", "\n", "ключ"]), texts)
numbers = st.one_of(
    st.integers(-LARGEST_INTEGER, LARGEST_INTEGER),
    st.floats(allow_nan=False, allow_infinity=False),
    st.sampled_from([-0.0, 1e17, 2.0**53, 1e300, 5e-324, 0.1 + 0.2, 1e21, 123456789012345680.0]),
)
ids = st.uuids().map(str)
moments = st.one_of(
    st.integers(FIRST_MOMENT, LAST_MOMENT),
    st.integers(0, 4 * 10**15),
    st.sampled_from([0, 1, FIRST_MOMENT, LAST_MOMENT]),
)


def bodies(leaves: int = 12) -> st.SearchStrategy[Body]:
    """All that TOML and JSON both can hold."""
    values = st.recursive(
        st.one_of(st.booleans(), numbers, texts),
        lambda inside: st.one_of(st.lists(inside, max_size=4), st.dictionaries(keys, inside, max_size=4)),
        max_leaves=leaves,
    )
    return st.dictionaries(keys, values, max_size=5)


@st.composite
def histories(draw, document: str, targets: list[Reference]) -> tuple[Revision, ...]:
    """A document that is saved, removed and restored; its links lead to `targets`."""
    history, before = [], ""
    kind = draw(st.text(letters, min_size=1, max_size=20))
    for number in range(1, draw(st.integers(1, 4)) + 1):
        body = None if number > 1 and draw(st.integers(0, 4)) == 0 else draw(bodies())
        revision = Revision(
            document=document, kind=kind, number=number, schema=draw(st.integers(1, 3)), title=draw(lines), body=body,
            hash="" if body is None else hash_of(body), made_by=draw(lines), at=draw(moments), note=draw(lines),
            restored=draw(st.one_of(st.none(), st.integers(1, number - 1))) if number > 1 else None,
            links=draw(st.dictionaries(lines, st.sampled_from(targets), max_size=2)) if targets else {},
        )  # fmt: skip
        history.append(sealed(revision, before))
        before = history[-1].seal
        targets.extend([history[-1].reference] if body is not None else [])
    return tuple(history)


@st.composite
def measured(draw, id: str, targets: list[Reference]) -> tuple[Series, Readings, tuple[Stretch, ...]]:
    """A series with readings in stretches."""
    series = sealed_series(Series(
        id=id, title=draw(lines), unit=draw(lines), instrument=draw(lines), method=draw(lines), made_by=draw(lines),
        at=draw(moments), about=draw(st.sampled_from(targets)) if targets and draw(st.booleans()) else None,
    ))  # fmt: skip
    count = draw(st.integers(0, 12))
    value = draw(st.lists(st.floats(allow_infinity=False), min_size=count, max_size=count))
    remarks = draw(st.dictionaries(st.integers(1, count), lines, max_size=4)) if count else {}
    remarks |= {k + 1: draw(lines) for k, each in enumerate(value) if each != each and k + 1 not in remarks}
    readings = Readings(
        number=np.arange(1, count + 1), value=np.array(value, dtype=np.float64),
        at=np.array(draw(st.lists(moments, min_size=count, max_size=count)), dtype=np.int64),
        remarks=remarks,
    )  # fmt: skip
    stretches, before, first = [], series.seal, 0
    while first < count:
        size = draw(st.integers(1, count - first))
        stretches.append(sealed_stretch(readings.chosen(slice(first, first + size)), before))
        before, first = stretches[-1].seal, first + size
    return series, readings, tuple(stretches)


@st.composite
def contents(draw, documents: int = 3, series: int = 2) -> Contents:
    """A whole notebook."""
    own = [str(UUID(int=draw(st.integers(0, 2**128 - 1)))) for _ in range(documents + series)]
    # some ids alike at their ends, where folders are named after them
    own = list(dict.fromkeys([*own[:-1], own[0][:-12] + own[-1][-12:]] if own else own))
    targets: list[Reference] = []
    return Contents(
        id=draw(ids),
        documents={id: draw(histories(id, targets)) for id in own[: draw(st.integers(0, documents))]},
        series={id: draw(measured(id, targets)) for id in own[documents:]},
    )


def all_bodies(them: Contents) -> dict[str, str]:
    """The canonical text of every body."""
    return {
        f"{id} {each.number}": canonical_text(each.body)
        for id, history in them.documents.items() for each in history if each.body is not None
    }  # fmt: skip
