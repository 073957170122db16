"""A fuzzer of everything that brings a notebook back from files: good files, made bad in many ways.

Input no. i depends only on the seed and i, so a long run can be cut into pieces and resumed. Each outcome is either
"the same" (the damage did no harm), "refused: …" with the code of a sentence, or something that must never happen:
"altered" (a changed notebook was taken for whole) or "raised: …" (another exception).
"""

import io
import json
import zipfile
from collections import Counter
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

import numpy as np

from lumped.errors import InputError
from lumped.notebook.canonical import hash_of
from lumped.notebook.files.bundle import read_contents, write_contents
from lumped.notebook.records import Contents, Readings, Revision, Series, sealed, sealed_series, sealed_stretch
from lumped.notebook.reference import Reference

HARM = [
    b"\x00", b"\x1b[2J", b"\xff\xfe", b"\xed\xa0\x80", b"\\ud800", b"\\u0000", b"1e999", b"-1e999", b"NaN", b"Infinity", b"nan", b"inf",
    b"9" * 400, b"9" * 5000, b"0x" + b"f" * 5000, b"1" + b"0" * 18, b"-1", b"0", b"1.0", b"true", b"null", b'""', b"''", b'"', b"'", b"[" * 200, b"{" * 200,
    b'{"a":' * 60, b"a." * 300, b"[[a.a]]\n", b"[a]\n", b'"""', b"'''", b"#", b"\n", b"\r\n", b",", b":", b"=", b"{}", b"[]", b"[[]]",
    b"=cmd()", b"@x", b"'", b"../", b"\\", b"C:\\", b"/etc/passwd", b"<script>", "\u202e".encode(), "\u2028".encode(), b"1979-05-27", b"07:32:00",
    b'"kind":"notebook",', b'"schema":2,', b'"body":null,', b'"hash":"",', b'"id":1,', b"9999-12-31T23:59:59.999999Z", b"0000-00-00T00:00:00Z",
]  # fmt: skip


@cache
def seeds() -> dict[str, bytes]:
    """Good files: a bundle, an archive, and an archive that is not packed, so that damage reaches its text."""
    with TemporaryDirectory() as folder:
        for name in ("a.json", "a.zip"):
            write_contents(small_notebook(), Path(folder, name))
        bundle, archive = (Path(folder, name).read_bytes() for name in ("a.json", "a.zip"))
    return {"bundle": bundle, "archive": archive, "unpacked": repacked(members_of(archive))}


@cache
def small_notebook() -> Contents:
    """A notebook with a bit of everything; invented."""
    one, two, three = (f"01890a5d-ac96-774b-bcce-b302099a805{k}" for k in range(3))
    body = {"title": "Quay", "lumps": [{"name": "East", "at_mm": [1.5, 0, -2e-7]}], "": {"a.b": 1e17, "<b>": "=1"}}
    first = sealed(_revision(one, 1, body), "")
    second = sealed(_revision(one, 2, None), first.seal)
    link = {"derived from": Reference(one, first.hash)}
    other = sealed(_revision(two, 1, {"kind": "kept", "x": True}, links=link, note="why <i>not</i>"), "")
    series = sealed_series(
        Series(
            id=three,
            title="=noon",
            unit="Ω",
            instrument="meter",
            method="",
            made_by="Ä",
            at=3,
            about=link["derived from"],
        )
    )
    readings = Readings(
        number=np.arange(1, 6), at=np.arange(5) * 10**14, value=np.array([1.5, np.nan, -3e-9, 1e22, 7]), remarks={2: "'=wet", 4: "-"},
    )  # fmt: skip
    early = sealed_stretch(readings.chosen(slice(0, 3)), series.seal)
    late = sealed_stretch(readings.chosen(slice(3, 5)), early.seal)
    return Contents(
        id=two, documents={one: (first, second), two: (other,)}, series={three: (series, readings, (early, late))}
    )


def _revision(document: str, number: int, body: dict | None, **more: object) -> Revision:
    return Revision(
        document=document, kind="sculpture", number=number, schema=1, title="Quay", body=body, made_by="me", at=10**15 + number,
        hash="" if body is None else hash_of(body), restored=None, **more,
    )  # fmt: skip


def members_of(archive: bytes) -> dict[str, bytes]:
    """The files in an archive."""
    with zipfile.ZipFile(io.BytesIO(archive)) as file:
        return {name: file.read(name) for name in file.namelist()}


def repacked(members: dict[str, bytes], packing: int = zipfile.ZIP_STORED) -> bytes:
    """An archive of some files."""
    target = io.BytesIO()
    with zipfile.ZipFile(target, "w", packing) as file:
        for name, content in members.items():
            member = zipfile.ZipInfo(name)
            member.compress_type = packing
            file.writestr(member, content)
    return target.getvalue()


def fuzz(count: int, seed: int, *, start: int = 0) -> dict[str, int]:
    """Try `count` damaged inputs from no. `start` on; give how often each outcome came."""
    outcomes: Counter[str] = Counter()
    with TemporaryDirectory() as folder:
        for index in range(start, start + count):
            outcomes[outcome(*damaged(index, seed), Path(folder))] += 1
    return dict(outcomes)


def outcome(suffix: str, content: bytes, folder: Path) -> str:
    """What reading makes of an input."""
    path = folder / f"a{suffix}"
    path.write_bytes(content)
    try:
        found = read_contents(path)
    except InputError as error:
        return f"refused: {error.code}" if str(error).isprintable() else f"raised: what can't be printed, {error.code}"
    except Exception as error:
        return f"raised: {type(error).__name__} {error}"[:200]
    return "the same" if found.fingerprint == small_notebook().fingerprint else "altered"


def damaged(index: int, seed: int) -> tuple[str, bytes]:
    """Input no. `index`: the suffix of its name, and what is in it."""
    rng = np.random.default_rng(np.random.SeedSequence(seed, spawn_key=(index,)))
    which = rng.choice(["bundle", "tree of a bundle", "archive", "unpacked", "member", "member", "member"])
    if which == "tree of a bundle":
        return ".json", json.dumps(_other_tree(json.loads(seeds()["bundle"]), rng)).encode("utf-8", "surrogatepass")
    if which == "member":
        members = dict(members_of(seeds()["archive"]))
        name = str(rng.choice(list(members)))
        members[name] = _other_bytes(members[name], rng)
        if rng.random() < 0.1:
            members[str(rng.choice(["../a", "/a", "a\\b", "documents/../x", name + "x", "C:/a", "a.zip"]))] = b"x"
        return ".zip", repacked(members)
    return ".json" if which == "bundle" else ".zip", _other_bytes(seeds()[which], rng)


def _other_bytes(content: bytes, rng: np.random.Generator) -> bytes:
    for _ in range(rng.geometric(0.6)):
        at, to = sorted(rng.integers(0, len(content) + 1, 2).tolist())
        to = min(to, at + int(rng.geometric(0.05)))
        harm = HARM[rng.integers(len(HARM))]
        match rng.integers(7):
            case 0:
                content = content[:at] + bytes([rng.integers(256)]) + content[at + 1 :]
            case 1:
                content = content[:at]
            case 2:
                content = content[:at] + harm + content[at:]
            case 3:
                content = content[:at] + harm + content[to:]
            case 4:
                content = content[:to] + content[at:to] * int(rng.integers(1, 50)) + content[to:]
            case 5:
                content = content[:at] + content[to:]
            case 6:
                other = int(rng.integers(0, len(content) + 1))
                content = content[:at] + content[other : other + to - at] + content[to:]
    return content


def _other_tree(tree: object, rng: np.random.Generator) -> object:
    """Put something else somewhere into JSON that stays JSON."""
    places = [*_places(tree)]
    for _ in range(rng.geometric(0.6)):
        holder, key = places[rng.integers(len(places))]
        match rng.integers(5):
            case 0:
                holder[key] = ODD[rng.integers(len(ODD))]
            case 1:
                other, its = places[rng.integers(len(places))]
                holder[key] = json.loads(json.dumps(other.get(its) if isinstance(other, dict) else None))
            case 2 if isinstance(holder, dict):
                holder.pop(key, None)
            case 3 if isinstance(holder, dict):
                holder[str(ODD[rng.integers(len(ODD))])[:300]] = holder.get(key)
            case _ if isinstance(holder, list):
                holder.append(holder[0] if holder else None)
    return tree


ODD = [
    None, True, False, 0, -1, 1, 2, 1.0, 1e308, 10**400, 2**31, 2**63, 2**64, "", "x", "1", [], {}, [[]], {"": {}}, "\x1b[2J", "\u202e", "\ud800", "\x00",
    "notebook", "0" * 64, "01890a5d-ac96-774b-bcce-b302099a8050", "9999-12-31T23:59:59.999999Z", "0000-01-01T00:00:00Z", "x" * 3000, float("nan"), float("inf"),
    "__class__", "1970-01-01T00:00:00.000000Z", "1970-01-01T00:00:00+00:00",
]  # fmt: skip


def _places(node: object):
    if isinstance(node, dict | list):
        for key, each in list(node.items() if isinstance(node, dict) else enumerate(node)):
            yield node, key
            yield from _places(each)
