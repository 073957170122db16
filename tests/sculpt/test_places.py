"""Places in words."""

import pytest

from lumped.errors import SculptureError
from lumped.sculpt.places import Along, Beside, Between, Dangling, OnTable, OnTop, Spot, read_leg_place, read_lump_place


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("on the table", OnTable()),
        ("right of A, gap 4 mm", Beside("right", "A", 0.004)),
        ("left of the old quay, gap 0,5 cm", Beside("left", "the old quay", 0.005)),
        ("in front of A", Beside("near", "A", 0.004)),
        ("behind A, pressed 2 mm", Beside("far", "A", -0.002)),
        ("behind A, gap 4 mm, shifted 5 mm left", Beside("far", "A", 0.004, (-0.005, 0.0))),
        ("on top of B", OnTop("B", 0.001)),
        ("on top of B, pressed 3 mm, shifted 1 cm nearer", OnTop("B", 0.003, (0.0, -0.01))),
        ("between A and B", Between("A", "B")),
    ],
)
def test_a_lump_place_reads(text, place):
    assert read_lump_place(text) == place


@pytest.mark.parametrize(
    "text", ["", "near A", "right of A, 4 mm", "right of A, gap 4", "between A", "on the table, gap 3 mm", "right of A, gap 4 kg"]
)  # fmt: skip
def test_other_words_are_refused_with_examples(text):
    with pytest.raises(SculptureError, match="does not say where a lump lies"):
        read_lump_place(text)


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("dangling", Dangling()),
        ("left end of A, 15 mm deep", Spot("end", "left", "A", 0.015)),
        ("top of A, 10 mm deep", Spot("top", "", "A", 0.010)),
        ("top of A, 30 % along, 10 mm deep", Spot("top", "", "A", 0.010, Along(share=0.3))),
        (
            "near side of A, 8 mm from the right end, 1 cm deep",
            Spot("side", "near", "A", 0.010, Along(distance=0.008, end="right")),
        ),
        ("top of A, shifted 5 mm farther, 6 mm deep", Spot("top", "", "A", 0.006, shift=(0.0, 0.005))),
    ],
)
def test_a_leg_place_reads(text, place):
    assert read_leg_place(text) == place


@pytest.mark.parametrize(
    "text", ["", "A", "left end of A", "top of A, deep", "end of A, 3 mm deep", "left end of A, 30 % along, 3 mm deep"]
)
def test_other_leg_words_are_refused_with_examples(text):
    with pytest.raises(SculptureError, match="does not say where a leg goes in"):
        read_leg_place(text)
