"""The sheet as it leaves the printer: measured on its own pixels, read from its own text."""

import re
import subprocess
from functools import cache
from io import BytesIO

import numpy as np
import pytest
from PIL import Image
from tests.laid_tables import ALL_SHAPES, ONE_ROLL, TWISTED, long_wall, verdict

from lumped.errors import InputError
from lumped.paper import TypesettingError, sheet_data, sheet_pdf, svg_as_png, typeset
from lumped.picture import sculpture_svg

DPI = 200


@cache
def pdf(text: str, paper: str = "a4") -> bytes:
    return sheet_pdf(verdict(text), paper=paper)


def tool(name: str, *flags: str, page: bytes) -> bytes:
    return subprocess.run([name, *flags], input=page, capture_output=True, check=True).stdout


@cache
def dark(page: bytes) -> np.ndarray:
    """Dark pixels of the first page."""
    raster = tool("pdftoppm", "-r", str(DPI), "-f", "1", "-l", "1", "-gray", "-", page=page)
    return np.asarray(Image.open(BytesIO(raster))) < 100


def runs(line: np.ndarray) -> np.ndarray:
    """Lengths in mm of unbroken dark stretches of a row or column of pixels."""
    edges = np.flatnonzero(np.diff(np.r_[0, line.astype(int), 0]))
    return (edges[1::2] - edges[::2]) / DPI * 25.4


def longest_runs(page: bytes, axis: int = 0) -> np.ndarray:
    picture = dark(page) if axis == 0 else dark(page).T
    return np.array([max(runs(row), default=0.0) for row in picture])


def near(lengths: np.ndarray, wanted: float) -> np.ndarray:
    return lengths[np.abs(lengths - wanted) < 1.5]


@pytest.mark.parametrize("paper", ["a4", "us-letter"])
def test_the_ruler_is_100_mm_long(paper):
    found = near(longest_runs(pdf(ONE_ROLL, paper)), 100.0)
    assert len(found)
    assert found.max() == pytest.approx(100.0, abs=0.35)  # two pixels and the end ticks' width, 0.18 mm


@pytest.mark.parametrize("paper", ["a4", "us-letter"])
def test_the_outline_of_an_80_by_16_roll_is_80_by_16(paper):
    across, up = (near(longest_runs(pdf(ONE_ROLL, paper), axis), size) for axis, size in ((0, 80.0), (1, 16.0)))
    # its line is 0.4 mm wide, half of it outside on each side
    assert across.max() == pytest.approx(80.4, abs=0.3)
    assert up.max() == pytest.approx(16.4, abs=0.3)


def test_a_slot_is_as_wide_as_the_roll_is_thick():
    found = near(longest_runs(pdf(ONE_ROLL)), 16.5)  # the slot's foot, and half of both its sides' lines of 0.5 mm
    assert found.max() == pytest.approx(16.5, abs=0.3)


def test_what_is_too_long_is_drawn_smaller_and_says_so():
    text = long_wall(400)
    data = sheet_data(verdict(text))
    assert "1/3 of true size" in " ".join(data["remarks"])
    found = near(longest_runs(pdf(text)), 400 / 3)
    assert np.abs(found - (400 / 3 + 0.13)).min() < 0.3  # a line of words may run a little farther
    assert near(longest_runs(pdf(text)), 100.0).max() == pytest.approx(100.0, abs=0.35)
    assert near(longest_runs(pdf(text)), 100 / 3).max() == pytest.approx(100 / 3, abs=0.35)


def test_what_fits_only_turned_is_turned_at_true_size():
    data = sheet_data(verdict(long_wall(170)))
    assert data["turned"]
    assert "true size" in data["remarks"][0]
    assert near(longest_runs(pdf(long_wall(170)), axis=1), 170).max() == pytest.approx(170.4, abs=0.3)


def test_letters_are_embedded_and_are_those_of_the_package():
    rows = tool("pdffonts", "-", page=pdf(ONE_ROLL)).decode().splitlines()[2:]
    assert rows
    for row in rows:
        assert "DejaVuSerif" in row
        assert re.search(r"\byes yes (yes|no)\b", row), row


@pytest.mark.parametrize(("paper", "size"), [("a4", "595.27"), ("us-letter", "612 x 792")])
def test_the_page_has_the_size_asked_for(paper, size):
    assert size in tool("pdfinfo", "-", page=pdf(ONE_ROLL, paper)).decode()


def test_the_sheet_names_every_lump_part_leg_and_figure():
    text = " ".join(tool("pdftotext", "-layout", "-", "-", page=pdf(ALL_SHAPES)).decode().split())
    found = verdict(ALL_SHAPES)
    for name in [lump.name for lump in found.sculpture.lumps] + [part.name for part in found.sculpture.parts]:
        assert name in text, name
    for phrase in ("long leg", "short leg (flat edge)", "red wire", "stays in the air", "a gap of 2.0 mm"):
        assert phrase in text, phrase
    for each in found.parts:
        assert f"{each.voltage.mean:.1f}".replace("-", "−").replace("−0.0", "0.0") in text


def test_one_roll_fits_one_page_and_many_parts_two():
    pages = [len(re.findall(rb"/Type\s*/Page\b", pdf(text))) for text in (ONE_ROLL, ALL_SHAPES)]
    assert pages[0] == 1
    assert pages[1] <= 2


def test_same_verdict_same_data_for_both_papers():
    a4, letter = (sheet_data(verdict(ONE_ROLL), paper=paper) for paper in ("a4", "us-letter"))
    assert {key for key in a4 if a4[key] != letter[key]} == {"paper"}


def test_lumps_of_one_measure_share_a_line():
    twins = ONE_ROLL.replace("[[parts]]", "[[lumps]]\nname = \"twin\"\ndough = \"salt\"\nshape = \"roll\"\n"
                             "length_mm = 80\ndiameter_mm = 16\nat_mm = [0, 60]\n[[parts]]", 1)  # fmt: skip
    assert sheet_data(verdict(twins))["shape"] == ["“roll” and “twin” – salt dough, 2 rolls 80 mm long, 16 mm thick"]


def test_an_unknown_paper_is_refused():
    with pytest.raises(InputError, match=r"no sheet “a5”.*a4, us-letter"):
        sheet_pdf(verdict(ONE_ROLL), paper="a5")


def test_a_warning_of_the_typesetter_is_a_failure():
    lost = '<svg xmlns="http://www.w3.org/2000/svg" width="4"'
    with pytest.raises(TypesettingError):
        typeset("svg", {"svg": lost})


def test_a_png_has_the_width_asked_for_and_shows_the_dough():
    picture = Image.open(BytesIO(svg_as_png(sculpture_svg(verdict(ONE_ROLL)), width=600)))
    assert picture.width == pytest.approx(600, abs=1)
    colours = np.asarray(picture.convert("RGB")).reshape(-1, 3).astype(int)
    dough = np.abs(colours - [0xC9, 0x8A, 0x5E]).sum(axis=1) < 90
    assert dough.mean() > 0.05


def test_a_png_of_a_picture_without_a_width_is_refused():
    with pytest.raises(ValueError, match="width"):
        svg_as_png("<svg/>")


def test_twisted_legs_say_with_what_and_the_last_wire_is_joined_not_pushed():
    data = sheet_data(verdict(TWISTED))
    lines = [line for part in data["push"] for line in part["legs"]]
    assert "red wire → twisted together with one leg of “gate”, outside the dough" in lines
    assert not [line for line in lines if "in the air" in line]
    assert data["start"][1].startswith("Join the last wire of “pack”")
