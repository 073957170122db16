"""Starting shapes: every slider stands, every shape is a file, and what is out of reach is refused in words."""

import tomllib
from itertools import pairwise
from pathlib import Path

import pytest

from lumped.errors import InputError
from lumped.sculpt import SculptureFile, build_sculpture
from lumped.sculpt.starting import Slider, as_toml, started, starting_shapes
from lumped.shape import gap_between

SHAPES = starting_shapes()
ENDS = [
    (shape.key, control.name, value)
    for shape in SHAPES
    for control in shape.controls
    for value in ((control.low, control.high) if isinstance(control, Slider) else control.options)
]


def placed(key, **values):
    return build_sculpture(started(key, {"dough": "unknown"} | values), Path("demo/shape.toml"))


def test_there_are_at_least_four_and_each_has_words():
    assert len(SHAPES) >= 4
    for shape in SHAPES:
        assert shape.title
        assert shape.lure
        assert all(control.label for control in shape.controls)


@pytest.mark.parametrize("shape", SHAPES, ids=lambda shape: shape.key)
def test_as_it_stands_at_first_every_leg_is_in_dough(shape):
    sculpture = placed(shape.key)
    for leg in sculpture.legs:
        middle = (leg.entry + leg.tip) / 2
        assert min(float(lump.solid.distance(middle[None])[0]) for lump in sculpture.lumps) < 0, leg.node


@pytest.mark.parametrize(("key", "name", "value"), ENDS)
def test_both_ends_of_each_slider_and_each_choice_give_a_sculpture(key, name, value):
    assert build_sculpture(started(key, {name: value}), Path("demo/shape.toml")).parts


@pytest.mark.parametrize("shape", SHAPES, ids=lambda shape: shape.key)
def test_it_comes_back_identical_from_its_file(shape):
    sculpture = started(shape.key)
    assert SculptureFile.model_validate(tomllib.loads(as_toml(sculpture))) == sculpture


@pytest.mark.parametrize("gap", [-2, 0, 3.5, 15])
def test_the_gap_slider_is_the_gap_in_millimetres(gap):
    west, east = placed("harbour-mouth", gap=gap).lumps
    assert 1e3 * (east.solid.bounds()[0, 0] - west.solid.bounds()[1, 0]) == pytest.approx(
        gap, abs=0.03
    )  # a slide's end


def test_as_many_buoys_as_the_slider_says():
    assert [sum(part.kind == "lamp" for part in placed("channel-buoys", buoys=n).parts) for n in (1, 4)] == [1, 4]


def test_more_bends_make_a_longer_rope():
    def length(bends):
        points = started("ropewalk", {"bends": bends}).lumps[0].points_mm
        return sum(abs(b[0] - a[0]) + abs(b[1] - a[1]) for a, b in pairwise(points))

    assert length(0) == 80
    assert length(3) == 4 * 80 + 3 * (14 + 8)


def test_what_is_out_of_reach_is_refused_in_words():
    with pytest.raises(InputError, match=r"no starting shape “duck”. There are: harbour-mouth"):
        started("duck")
    with pytest.raises(InputError, match=r"“Gap between the lumps” can't be 40. Choose a number from -2 to 15"):
        started("harbour-mouth", {"gap": 40})
    with pytest.raises(InputError, match="can't be wide"):
        started("harbour-mouth", {"gap": "wide"})
    with pytest.raises(InputError, match="“Lamp” can't be “lamp-pink”"):
        started("harbour-mouth", {"colour": "lamp-pink"})
    with pytest.raises(InputError, match=r"no slider or choice “wind”. It has: gap"):
        started("harbour-mouth", {"wind": 1})


@pytest.mark.parametrize("bends", [0, 1, 2])
@pytest.mark.parametrize("gap", [3.5, 15])
def test_the_gap_at_the_end_of_the_rope_is_the_sliders(bends, gap):
    file = started("ropewalk", {"bends": bends, "gap": gap})
    rope, post = build_sculpture(file, Path("demo/rope.toml")).lumps
    assert gap_between(rope.solid, post.solid).distance == pytest.approx(1e-3 * gap, abs=3e-5)
