"""Files made to harm are refused in words, or do none: no other exception, no endless work, no filled memory."""

import io
import json
import os
import re
import stat
import struct
import subprocess
import sys
import zipfile
from importlib import import_module
from pathlib import Path

import pytest
import tomli_w
from hypothesis import given
from hypothesis import strategies as st
from tests.notebook.fuzzing import fuzz, members_of, repacked, seeds, small_notebook

from lumped.errors import InputError
from lumped.notebook.files.archives import ArchiveSource
from lumped.notebook.files.bundle import read_contents, write_contents
from lumped.notebook.files.limits import MEMORY_LIMIT, Budget
from lumped.notebook.files.reading_files import as_cell, read_cell
from lumped.notebook.files.toml_text import _bare
from lumped.notebook.files.trees import FILES_LIMIT
from lumped.notebook.lines import NOTE_LIMIT, UNIT_LIMIT, plain_line

HISTORY = "documents/sculpture/quay-099a8050/history.toml"
FIRST = "documents/sculpture/quay-099a8050/0001.toml"
SERIES = "readings/noon-099a8052"


def refusal(path: Path, content: bytes) -> str:
    path.write_bytes(content)
    with pytest.raises(InputError) as caught:
        read_contents(path)
    assert str(caught.value).isprintable()
    return caught.value.code


def archive_with(**changes: bytes | None) -> bytes:
    members = dict(members_of(seeds()["archive"])) | changes
    return repacked({name: content for name, content in members.items() if content is not None})


def bundle_with(before: bytes, after: bytes) -> bytes:
    assert before in seeds()["bundle"]
    return seeds()["bundle"].replace(before, after, 1)


def test_what_the_fuzzer_damages_is_refused_or_the_same():
    outcomes = fuzz(2_000, seed=20260509)
    assert {each for each in outcomes if not each.startswith(("refused: ", "the same"))} == set()
    assert len(outcomes) > 20
    assert outcomes["the same"] > 10


def test_the_fuzzer_can_be_resumed():
    whole, parts = fuzz(40, seed=3), [fuzz(25, seed=3), fuzz(15, seed=3, start=25)]
    assert whole == {key: sum(part.get(key, 0) for part in parts) for key in {*parts[0], *parts[1]}}


@pytest.mark.parametrize(
    ("before", "after", "code"),
    [
        (b'"kind":"notebook"', b'"kind":"recipe"', "bundle-other-kind"),
        (b'"schema":1', b'"schema":2,"more":{}', "bundle-newer"),
        (b'"kind":"notebook"', b'"kind":"notebook","kind":"notebook"', "bundle-key-twice"),
        (b'"lumps":[', b'"lumps":0,"lumps":[', "bundle-key-twice"),
        (b'"lumps":[', b'"lumps":[' + 100_000 * b"[", "bundle-too-deep"),
        (b'"lumps":[', b'"lumps":[' + 35 * b"[" + 35 * b"]" + b",", "body-too-deep"),
        (b"1.5,0,", b"1e999,0,", "body-holds"),
        (b"1.5,0,", b"1" + 400 * b"0" + b",0,", "body-holds"),
        (b"1.5,0,", 5_000 * b"7" + b",0,", "body-holds"),
        (b"1.5,0,", b"NaN,0,", "bundle-constant"),
        (b"1.5,0,", b"-Infinity,0,", "bundle-constant"),
        (b"1.5,0,", b"1.25,0,", "proof-hash"),
        (b"1.5,null", b"1e999,null", "bundle-column"),
        (b"1.5,null", b"null,null", "proof-unsaid"),
        (b"1.5,null", b"1.25,null", "proof-seal"),
        (b"1.5,null", b'"1.5",null', "bundle-column"),
        (b"[\n0,1000", b"[\n1" + 30 * b"0" + b",1000", "bundle-column"),
        (b'"why <i>', b'"WHY <i>', "proof-seal"),
        (b'"number":2', b'"number":3', "proof-gap"),
        (b'"number":2', b'"number":true', "bundle-key"),
        (b'"body":null', b'"body":{}', "proof-body-in-removal"),
        (b'"first":4', b'"first":5', "proof-stretches"),
        (b"derived from", b"derived\xfffrom", "bundle-json"),
        (b"derived from", b"derived\\u001bfrom", "line-character"),
        (b'"title":"Quay","hash"', b'"title":"Quay\\u202e","hash"', "bundle-key"),
        (b'"title":"Quay","hash"', b'"title":"' + 600 * b"Q" + b'","hash"', "bundle-key"),
    ],
)
def test_a_bundle_with_one_thing_wrong_is_refused(tmp_path, before, after, code):
    assert refusal(tmp_path / "a.json", bundle_with(before, after)) == code


@pytest.mark.parametrize("share", [0, 1, 2, 40, 90, 99])
def test_a_bundle_that_breaks_off_is_refused(tmp_path, share):
    whole = seeds()["bundle"]
    assert refusal(tmp_path / "a.json", whole[: len(whole) * share // 100]) == "bundle-json"


def test_a_bundle_from_which_a_document_was_taken_is_refused(tmp_path):
    table = json.loads(seeds()["bundle"])
    table["series"] = []
    assert refusal(tmp_path / "a.json", json.dumps(table).encode()) == "bundle-incomplete"


@pytest.mark.parametrize(
    "name",
    ["../up.toml", "/etc/up.toml", "documents/../../up.toml", "documents\\up.toml", "C:/up.toml", "documents/a/b/" + 3_000 * "0" + ".toml",
     "documents/a/b/more.zip", "notebook.toml/x", "NOTEBOOK.TOML", "documents/a/b/c/0001.toml", "readings/../notebook.toml"],
)  # fmt: skip
def test_a_name_outside_the_tree_is_refused(tmp_path, name):
    assert refusal(tmp_path / "a.zip", archive_with(**{name: b"x"})) == "plain-stranger"


def test_a_name_that_goes_on_after_a_nul_is_refused(tmp_path):
    archive = seeds()["unpacked"].replace(b"notebook.toml", b"notebook.tom\0")
    assert refusal(tmp_path / "a.zip", archive) == "plain-stranger"


@pytest.mark.parametrize("kind", [stat.S_IFLNK, stat.S_IFIFO, stat.S_IFCHR, stat.S_IFSOCK])
def test_links_and_devices_in_an_archive_are_refused(tmp_path, kind):
    path = tmp_path / "a.zip"
    with zipfile.ZipFile(path, "w") as file:
        member = zipfile.ZipInfo("notebook.toml")
        member.external_attr = (kind | 0o644) << 16
        file.writestr(member, "/etc/passwd")
    assert refusal(path, path.read_bytes()) == "plain-special"


def test_an_encrypted_member_is_refused(tmp_path):
    archive = bytearray(seeds()["unpacked"])
    archive[archive.index(b"PK\x01\x02") + 8] |= 1
    assert refusal(tmp_path / "a.zip", bytes(archive)) == "plain-archive-locked"


@pytest.mark.parametrize("packing", [zipfile.ZIP_BZIP2, zipfile.ZIP_LZMA])
def test_other_ways_of_packing_are_refused(tmp_path, packing):
    archive = repacked(members_of(seeds()["archive"]), packing)
    assert refusal(tmp_path / "a.zip", archive) == ("plain-archive-packing")


def test_a_name_that_is_there_twice_is_refused(tmp_path):
    archive = archive_with(**{"notebook.tomk": b""}).replace(b"notebook.tomk", b"notebook.toml")
    assert refusal(tmp_path / "a.zip", archive) == "plain-twice"


def test_a_table_of_contents_that_claims_much_is_refused(tmp_path):
    end = struct.pack("<4sHHHHLLH", b"PK\x05\x06", 0, 0, 0xFFFF, 0xFFFF, 0xFFFF_FFF0, 0, 0)
    (tmp_path / "a.zip").write_bytes(end)
    with pytest.raises(InputError, match="table of contents is larger"):
        read_contents(tmp_path / "a.zip")


@pytest.mark.parametrize(
    ("name", "content", "code"),
    [
        ("notebook.toml", b"", "bundle-other-kind"),
        ("notebook.toml", b'kind = "notebook"\nschema = 7\nnovelty = 1', "bundle-newer"),
        ("notebook.toml", 30_000 * b"#", "plain-toml-heavy"),
        ("notebook.toml", None, "plain-missing"),
        (FIRST, None, "plain-missing"),
        (FIRST, b"x = " + 100_000 * b"[", "bundle-too-deep"),
        (FIRST, b"x" + 1_000_000 * b".x" + b" = 1", "plain-toml-heavy"),
        (FIRST, b'x = ["""",{' + 100_000 * b"a." + b'a=1,b="x"}]', "plain-toml"),
        (FIRST, b"x = [," + 1_000_000 * b"'a'," + b"]", "plain-toml-heavy"),
        (FIRST, b"x = " + 2_000_000 * b"'a'", "plain-toml"),
        (FIRST, b'x = ["""\n""",{"' + 100_000 * b'a"."' + b'a"=1,b="x"}]', "plain-toml-heavy"),
        (FIRST, b"".join(b"[a%d]\n" % k for k in range(300_000)), "plain-toml-heavy"),
        (FIRST, b"x = " + 5_000 * b"7", "plain-toml"),
        (FIRST, b"x = 0x" + 5_000 * b"f", "plain-toml"),
        (FIRST, b'kind = "sculpture"\nschema = 1\nx = nan', "body-holds"),
        (FIRST, b'kind = "sculpture"\nschema = 1\nx = 2026-05-09', "body-holds"),
        (FIRST, b'kind = "recipe"\nschema = 1', "plain-body-marks"),
        (FIRST, b'kind = "sculpture"\nschema = 1', "proof-hash"),
        (FIRST, b"\xff", "plain-toml"),
        (HISTORY, b"", "bundle-key"),
        (FIRST.replace("1.toml", "3.toml"), b"x = 1", "plain-stranger"),
        (f"{SERIES}/readings.csv", b"", "plain-csv"),
        (f"{SERIES}/readings.csv", b"number,at,value,remark\n1,x,2,\n", "plain-csv"),
        (f"{SERIES}/readings.csv", b"number,at,value,remark\n" + 1_000_000 * b"1", "plain-csv"),
        (f"{SERIES}/readings.csv", b"number,at,value,remark\n1,1970-01-01T00:00:00.000000Z,1e999,\n", "plain-csv"),
        (f"{SERIES}/readings.csv", b"number,at,value,remark\n1,1970-01-01T00:00:00.000000Z,1,=1+1\n", "plain-csv"),
        (f"{SERIES}/readings.csv", b"number,at,value,remark\n1,1970-13-01T00:00:00.000000Z,1,\n", "plain-csv"),
        (f"{SERIES}/readings.csv", b"number,at,value,remark\n1,0000-01-01T00:00:00.000000Z,1,\n", "proof-moment"),
        (f"{SERIES}/readings.csv", b'number,at,value,remark\n1,1970-01-01T00:00:00.000000Z,1,"' + 9_000 * b"x\n" * 9, "plain-csv"),
        (f"{SERIES}/stretches.csv", b"first,count,seal\n", "proof-stretches"),
    ],
)  # fmt: skip
def test_a_plain_file_with_something_wrong_is_refused(tmp_path, name, content, code):
    assert refusal(tmp_path / "a.zip", archive_with(**{name: content})) == code


QUOTED = st.text(st.sampled_from("\"'\\#\n=a.,"), max_size=12)


@given(
    tables=st.dictionaries(QUOTED, st.one_of(QUOTED, st.lists(QUOTED, max_size=3)), max_size=4), several=st.booleans()
)
def test_marks_in_text_are_not_counted_as_toml(tables, several):
    text = tomli_w.dumps(tables, multiline_strings=several)
    bare = _bare(text)
    assert bare.count("=") == len(tables)
    assert bare.count("[") == sum(isinstance(each, list) for each in tables.values())
    assert bare.count(",") == sum(len(each) for each in tables.values() if isinstance(each, list))


def test_a_line_without_end_is_not_read_to_its_end(tmp_path):
    (tmp_path / "a.zip").write_bytes(archive_with(**{f"{SERIES}/readings.csv": 1_000_000 * b"1"}))
    with pytest.raises(InputError, match="longer than a reading"):
        read_contents(tmp_path / "a.zip")


def test_links_and_pipes_in_a_folder_are_refused(tmp_path):
    write_contents(small_notebook(), tmp_path / "a")
    for make in (lambda path: path.symlink_to("/etc/passwd"), lambda path: path.symlink_to(tmp_path), os.mkfifo):
        (tmp_path / "a/documents/odd").unlink(missing_ok=True)
        make(tmp_path / "a/documents/odd")
        with pytest.raises(InputError, match="no plain file"):
            read_contents(tmp_path / "a")


@pytest.mark.parametrize(
    "name", ["pipe.json", "pipe.zip", "folder.json", "none.json", "none.zip", "nu\0l.json", "lo" + 300 * "o" + "ng.zip"]
)
def test_what_is_no_file_is_refused(tmp_path, name):
    if name.startswith("pipe"):
        os.mkfifo(tmp_path / name)
    elif name.startswith("folder"):
        (tmp_path / name).mkdir()
    with pytest.raises(InputError, match="no plain file" if name.startswith("pipe") else None):
        read_contents(tmp_path / name)


ROW = b"1,1970-01-01T00:00:00.000000Z,1," + 1_000 * b"x" + b"\n"
BOMBS = {
    "zeros in an archive": lambda: packed(f"{SERIES}/readings.csv", 100_000_000 * b"0"),
    "zeros in a history": lambda: packed(HISTORY, 100_000_000 * b"0"),
    "rows in an archive": lambda: packed(f"{SERIES}/readings.csv", b"number,at,value,remark\n" + 150_000 * ROW),
    "empty tables": lambda: bundle_with(b'"lumps":[', b'"lumps":[' + 1_000_000 * b'{"":{}},'),
    "many bodies": lambda: bundle_with(
        b'"documents":[', b'"documents":[' + b",".join(map(many_revisions, range(8))) + b","
    ),
    "empty lists as stretches": lambda: bundle_with(b'"stretches":[', b'"stretches":[' + 2_000_000 * b"{},"),
    "readings without end": lambda: bundle_with(b'"at_us":[\n', b'"at_us":[' + 10_000_000 * b"1,"),
}


def many_revisions(place: int) -> bytes:
    revision = (
        b'{"number":1,"schema":1,"at":"1970-01-01T00:00:00Z","seal":"'
        + 64 * b"0"
        + b'","body":{"a":['
        + 200_000 * b"[],"
        + b"0]}}"
    )
    head = b'{"id":"01890a5d-ac96-774b-bcce-b302099a81%02d","kind":"x","revisions":[' % place
    return head + b",".join([revision] * 3) + b"]}"


def packed(name: str, content: bytes) -> bytes:
    return repacked({**members_of(seeds()["archive"]), name: content}, zipfile.ZIP_DEFLATED)


CHILD = """
import re, sys, pathlib
from lumped.errors import InputError
from lumped.notebook.files.bundle import read_contents
def peak():
    return int(re.search("VmHWM:[^0-9]*([0-9]+)", pathlib.Path("/proc/self/status").read_text())[1])
before = peak()
try:
    read_contents(pathlib.Path(sys.argv[1]), memory=100_000_000)
except InputError as error:
    print(error.code, (peak() - before) // 1000)
"""


@pytest.mark.skipif(not Path("/proc/self/status").exists(), reason="the peak of memory is read from Linux")
@pytest.mark.parametrize("bomb", BOMBS)
def test_a_bomb_is_refused_before_it_fills_the_memory(tmp_path, bomb):
    path = tmp_path / ("a.zip" if "archive" in bomb or "history" in bomb else "a.json")
    path.write_bytes(BOMBS[bomb]())
    done = subprocess.run([sys.executable, "-c", CHILD, path], capture_output=True, text=True, timeout=120, check=True)
    code, megabytes = done.stdout.split()
    assert code in {
        "plain-bomb",
        "plain-csv",
        "plain-toml-heavy",
        "bundle-piece-too-large",
        "bundle-too-large",
        "bundle-key",
        "proof-gap",
    }
    assert int(megabytes) < 130  # what may be held is 100 MB; lists are given more room than they use


def test_an_archive_that_unpacks_to_much_more_is_refused():
    source = ArchiveSource(io.BytesIO(packed(FIRST, 100_000_000 * b"0")), Budget())
    with pytest.raises(InputError, match="200 times"):
        source.whole(FIRST, 10**9)


def test_the_limits_in_the_docs_are_those_of_the_code():
    page = (Path(__file__).parents[3] / "docs/notebook-files.md").read_text("utf-8")
    told = {(limits, name) for limits, name in re.findall(r"`([\w.]+)\.([A-Z_]+)`", page)}
    assert len(told) > 8
    assert [name for module, name in told if not hasattr(import_module(f"lumped.notebook.{module}"), name)] == []
    for text in (
        f"{MEMORY_LIMIT // 10**6} MB",
        f"{FILES_LIMIT:,}",
        f"{NOTE_LIMIT:,} characters",
        f"{UNIT_LIMIT} characters",
    ):
        assert f"| {text}" in page


def test_formulas_in_remarks_are_text_to_a_spreadsheet():
    for text in ["=1+1", "+1", "-1", "@a", "\t=1", "\r=1", "'", "''=", "", "＝1", "wet", None]:
        assert as_cell(text)[:1] not in set("=+-@\t\r＝")
        assert read_cell(as_cell(text)) == text


@pytest.mark.parametrize("letter", ["\x00", "\x1b", "\n", "\t", "\x7f", "\x9b", "\u2028", "\u202e", "\u2066", "\ud800"])
def test_a_line_with_a_letter_that_does_something_is_refused(letter):
    with pytest.raises(InputError, match=f"U.{ord(letter):04X}"):
        plain_line(f"Quay{letter}")


def test_markup_in_text_stays_text(tmp_path):
    write_contents(small_notebook(), tmp_path / "a.json")
    after = read_contents(tmp_path / "a.json")
    assert [each.note for history in after.documents.values() for each in history][-1] == "why <i>not</i>"
