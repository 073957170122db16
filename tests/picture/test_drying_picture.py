"""The drying picture: a piece cut through at five hours over two strips."""

import re
import xml.etree.ElementTree as ElementTree

import numpy as np
import pytest
from tests.bowls import CONDUCTING, recipe_of

from lumped.dough.lasting import Piece
from lumped.dough.lasting.outlook import HOUR, Surroundings, outlook
from lumped.picture.drying_picture import drying_svg

SALT = recipe_of(CONDUCTING | {"table-salt": 73})


def seen(shape="roll", **where):
    piece = Piece(shape=shape, thickness=0.012, extent=0.1 if shape == "roll" else 0.01)
    return outlook(SALT, piece, Surroundings(**where), duration=72 * HOUR, count=16)


@pytest.fixture(scope="module")
def found():
    return seen()


@pytest.mark.parametrize("theme", ["light", "dark", "print"])
def test_three_strips_stand_over_one_clock_and_the_words_below(found, theme):
    drawn = drying_svg(found, theme=theme, prefix="d-")
    root = ElementTree.fromstring(drawn)
    strips = [each.get("data-strip") for each in root.iter() if each.get("data-strip")]
    assert strips == ["resistivity", "skin", "mass"]
    for words in (
        "Weight, g",
        "Leathery skin, mm",
        "Resistivity, Ω·m",
        "a lesson",
        "next morning",
        "In a lesson of 45 minutes",
    ):
        assert words in drawn
    assert "nan" not in drawn


def test_a_piece_that_dries_gets_smaller_and_darker(found):
    drawn = drying_svg(found)
    rims = [float(each) for each in re.findall(r'r="([\d.]+)" fill="none"', drawn)]
    assert len(rims) == 5
    assert rims == sorted(rims, reverse=True)
    middles = re.findall(r'fill="(#[0-9a-f]{6})"/><circle[^>]*fill="none"', drawn)
    light = [sum(int(each[k : k + 2], 16) for k in (1, 3, 5)) for each in middles]
    assert light == sorted(light, reverse=True)
    assert light[0] > light[-1]


@pytest.mark.parametrize("shape", ["slab", "slab-both-sides", "ball"])
@pytest.mark.parametrize("hours", [3.0, 72.0])
def test_every_shape_and_clock_is_drawn_inside_the_picture(shape, hours):
    drawn = drying_svg(seen(shape, cover="bag"), hours=hours)
    width, height = (float(each) for each in re.search(r'viewBox="0 [-\d.]+ ([\d.]+) ([\d.]+)"', drawn).groups())
    places = np.array([[float(x), float(y)] for x, y in re.findall(r'<text[^>]* x="([-\d.]+)" y="([-\d.]+)"', drawn)])
    assert np.all((places > [0, -height]) & (places < [width, 0]))
    assert "in a bag" in drawn
