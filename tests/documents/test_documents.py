"""Files that people write: each refusal is met, with file, key, value and remedy in its sentence."""

from pathlib import Path

import pytest
from pydantic import BaseModel, ConfigDict, Field, model_validator

from lumped.documents import Length, checked, read_document
from lumped.errors import InputError, SculptureError


class Bun(BaseModel):
    model_config = ConfigDict(extra="forbid")
    name: str
    width_mm: Length = Field(gt=0)


class Tray(BaseModel):
    model_config = ConfigDict(extra="forbid")
    kind: str
    buns: list[Bun] = Field(max_length=2)


@pytest.fixture
def write(tmp_path: Path):
    def _write(text: str | bytes) -> Path:
        path = tmp_path / "tray.toml"
        path.write_bytes(text if isinstance(text, bytes) else text.encode())
        return path

    return _write


def refusal(path: Path) -> str:
    with pytest.raises(InputError) as caught:
        checked(Tray, read_document(path, "tray"), path, failure=SculptureError)
    return str(caught.value)


def test_a_missing_file_is_named(tmp_path: Path):
    assert "no file" in refusal(tmp_path / "nothing.toml")


def test_a_folder_is_called_a_folder(tmp_path: Path):
    assert "is a folder" in refusal(tmp_path)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        (b"\xff\xfe\x00", "is no UTF-8 text"),
        ("kind = 'tray'\nx = ]", "line 2"),
        ('kind = "recipe"', 'kind = "tray"'),
        ("kind = 'tray'\n[[buns]]\nname = 'a'", "buns › “a” › width_mm is missing. Add the key"),
        ("kind = 'tray'\n[[buns]]\nname = 'a'\nwidht_mm = 3", "did you mean “width_mm”"),
        ("kind = 'tray'\nwidth_mm = 3", "width_mm is 3. It does not stand here but under: buns."),
        ("kind = 'tray'\n[[buns]]\nname = 'a'\nwidth_mm = 3\nkind = 'a'", "here but at the top of the file"),
        ("kind = 'tray'\n[[buns]]\nname = 'a'\nwidth_mm = 0", "more than 0"),
        ("kind = 'tray'\n[[buns]]\nname = 'a'\nwidth_mm = nan", "width_mm is nan"),
        ("kind = 'tray'\n[[buns]]\nname = 'a'\nwidth_mm = '3 kg'", "a length is wanted"),
        ("kind = 'tray'\nbuns = [{}, {}, {}]", "At most 2"),
        ("kind = 'tray'\nx = " + "[" * 40 + "]" * 40, "levels deep"),
        ("kind = 'tray'\nx = " + "[" * 5000 + "]" * 5000, "levels deep"),
        ("kind = 'tray'\n#" + "x" * 2_000_001, "larger than 2 MB"),
    ],
)  # fmt: skip
def test_a_bad_file_is_refused_in_words(write, text, words: str):
    assert words in refusal(write(text))


def test_text_with_a_unit_is_a_length(write):
    path = write("kind = 'tray'\n[[buns]]\nname = 'a'\nwidth_mm = '2,5 cm'")
    assert checked(Tray, read_document(path, "tray"), path, failure=InputError).buns[0].width_mm == pytest.approx(25)


def test_a_file_with_a_byte_order_mark_is_read(write):
    assert read_document(write(b"\xef\xbb\xbfkind = 'tray'"), "tray") == {"kind": "tray"}


class Box(BaseModel):
    tray: Tray | None = None

    @model_validator(mode="after")
    def _full(self) -> "Box":
        if self.tray is None:
            raise InputError("label-empty", where="the box")
        return self


class Shelf(BaseModel):
    box: Box


@pytest.mark.parametrize(
    ("model", "document", "begins"),
    [(Box, {}, "a.toml: The label of “the box”"), (Shelf, {"box": {}}, "a.toml, box: The label of “the box”")],
)
def test_a_rule_of_a_whole_table_is_told_without_the_table(model, document, begins):
    with pytest.raises(InputError) as caught:
        checked(model, document, Path("a.toml"), failure=InputError)
    assert str(caught.value).startswith(begins)
    assert "{" not in str(caught.value)
