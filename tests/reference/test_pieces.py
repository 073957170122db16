"""A handbook that is read piece by piece says what it says when it is read whole."""

import tomllib
from importlib.resources import files

import pytest

from lumped.errors import HandbookError
from lumped.reference.loading import opened_handbook
from lumped.reference.pieces import cut

DATA = files("lumped.reference").joinpath("data")
FILES = sorted(each.name for each in DATA.iterdir() if each.name.endswith(".toml"))


@pytest.mark.parametrize("name", FILES)
def test_the_pieces_of_a_file_are_the_file(name):
    whole, pieces = tomllib.loads(DATA.joinpath(name).read_text(encoding="utf-8")), cut(DATA.joinpath(name))
    found = pieces[0].read()
    for piece in pieces[1:]:
        found.setdefault(piece.kind, []).append(piece.read())
    assert found == whole
    assert [piece.key for piece in pieces[1:]] == [piece.read()["key"] for piece in pieces[1:]]


def test_a_key_that_stands_elsewhere_than_first_is_found(tmp_path):
    (tmp_path / "things.toml").write_text('[[entries]]\nname = "nail"\nkey = "na\\u0069l"\n', encoding="utf-8")
    assert [each.key for each in cut(tmp_path / "things.toml")[1:]] == ["nail"]


def test_what_nobody_asks_for_is_not_read_and_what_is_asked_for_is_checked(tmp_path):
    row = '{ quantity = "length", value = 2, unit = "mm", source = "", page = "", status = "invented" }'
    (tmp_path / "things.toml").write_text(
        f'[[entries]]\nkey = "nail"\nname = "nail"\nrows = [{row}]\n[[entries]]\nkey = "screw"\nrows = [\n',
        encoding="utf-8",
    )
    book = opened_handbook(tmp_path)
    assert book.keys("things") == ("nail", "screw")
    assert book.value("things", "nail", "length").mean == 0.002
    with pytest.raises(HandbookError, match=r"file things\.toml can't be read: Invalid value"):
        book.entry("things", "screw")


def test_a_file_that_is_no_text_is_named(tmp_path):
    (tmp_path / "things.toml").write_bytes(b'about = "\xff"')
    with pytest.raises(HandbookError, match=r"file things\.toml can't be read"):
        opened_handbook(tmp_path)
