"""The salt picture: four strips over one row of amounts."""

import re
import xml.etree.ElementTree as ElementTree
from dataclasses import replace

import pytest
from tests.bowls import CONDUCTING, recipe_of
from tests.till import PRICES

from lumped.dough.salting import salting
from lumped.picture.salt_picture import salt_svg
from lumped.quantities import rounded_text


@pytest.fixture(scope="module")
def row():
    return salting(recipe_of({**CONDUCTING, "table-salt": 73}), prices=PRICES, money="coins")


@pytest.fixture(scope="module", params=["light", "dark", "print"])
def drawn(request, row):
    return salt_svg(row, theme=request.param, prefix="s-")


def test_all_four_stand_over_one_row(drawn, row):
    root = ElementTree.fromstring(drawn)
    strips = [each.get("data-strip") for each in root.iter() if each.get("data-strip")]
    assert strips == ["resistivity", "water_activity", "sodium", "cost"]
    for words in (
        f"this recipe: {rounded_text(row.point['resistivity'].mean)} Ω·m",
        "conducts best",
        "some stays solid",
        "bacteria",
        "yeasts",
        "moulds",
    ):
        assert words in drawn
    assert "nan" not in drawn


def test_without_prices_there_is_no_strip_of_cost(row):
    bands = {key: band for key, band in row.bands.items() if key != "cost"}
    drawn = salt_svg(replace(row, bands=bands))
    assert 'data-strip="sodium"' in drawn
    assert 'data-strip="cost"' not in drawn


def test_the_mark_of_the_recipe_is_on_the_curve(row):
    root = ElementTree.fromstring(salt_svg(row))
    group = next(each for each in root.iter() if each.get("data-strip") == "sodium")
    curve = next(each for each in group.iter() if each.get("stroke-width") == "0.9")
    points = [tuple(map(float, each.split())) for each in curve.get("d")[1:].split("L")]
    circles = [each for each in root.iter() if each.tag.endswith("circle")]
    x, y = float(circles[2].get("cx")), float(circles[2].get("cy"))
    left = max((each for each in points if each[0] <= x), key=lambda each: each[0])
    right = min((each for each in points if each[0] >= x), key=lambda each: each[0])
    assert min(left[1], right[1]) - 0.4 < y < max(left[1], right[1]) + 0.4  # mm


def test_letters_are_large_enough_on_a_telephone_and_ids_are_its_own(drawn):
    width = float(re.search(r'viewBox="0 \S+ (\S+)', drawn)[1])
    sizes = [float(each) for each in re.findall(r'font-size="([\d.]+)"', drawn)]
    assert min(sizes) * 375 / width > 10.5  # pixels on a telephone 375 wide
    assert all(each.startswith("s-") for each in re.findall(r'\bid="([^"]+)"', drawn))


def test_what_the_picture_says_it_says_in_words_too(row):
    title = re.search(r"<title>([^<]*)</title>", salt_svg(row))[1]
    assert all(sentence in title for sentence in row.sentences())


def test_a_salt_that_all_dissolves_has_no_grains_in_its_picture(row):
    clear = replace(row, solid_from=None)
    drawn = salt_svg(clear)
    assert "some stays solid" not in drawn
    assert "all of it dissolves" in drawn
