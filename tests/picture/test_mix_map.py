"""The mix map: its lines lie where they say, it reads without colour, and its words don't cover each other."""

import re
import xml.etree.ElementTree as ElementTree

import numpy as np
import pytest
from tests.bowls import CONDUCTING, INSULATING, recipe_of

from lumped.dough.maps import mix_map
from lumped.picture.mix_map import levels_of, map_svg, ridges_of
from lumped.picture.ridges import level_lines_on, nice_levels, regions_on
from lumped.picture.shades import shades
from lumped.quantities import rounded_text

SALTED = recipe_of({**CONDUCTING, "table-salt": 73})
SWEET = recipe_of(INSULATING, "insulating", "not cooked")
THREE = ("plain-flour", "tap-water", "table-salt")
# IEC 61966-2-1: linear sRGB to XYZ, second row (luminance)
LUMINANCE = np.array([0.2126, 0.7152, 0.0722])


def _largest_miss(divisions, show, levels):
    """Of most points of the lines: the bend where salt begins to stay solid is no smooth field."""
    found = mix_map(SALTED, THREE, show, divisions=divisions)
    misses = [np.abs(np.log(found.at(each.shares) / each.level)) for each in ridges_of(found, levels)]
    return float(np.quantile(np.concatenate(misses), 0.95))


@pytest.mark.parametrize(
    ("show", "levels", "width"), [("resistivity", (0.3, 0.4), 3e-3), ("water_activity", (0.8, 0.85, 0.9), 1e-4)]
)
def test_a_point_of_a_ridge_worked_out_anew_has_its_level_and_finer_grids_come_nearer(show, levels, width):
    """Between points a smooth field is off by the square of their distance: twice as fine, a quarter of the miss."""
    coarse, fine, finer = (_largest_miss(n, show, levels) for n in (30, 60, 120))
    assert fine < width
    assert finer < fine < coarse
    assert 1.5 < np.log2(coarse / finer) / 2 < 2.5


def test_level_lines_of_a_plane_are_straight_and_exact():
    found = mix_map(SALTED, THREE, divisions=9)
    corners = found.shares[:, :2]
    field = 3 * corners[:, 0] - corners[:, 1]
    level = float(np.median(field)) + 1e-3
    (line,) = level_lines_on(corners, found.triangles, field, level)
    assert 3 * line[:, 0] - line[:, 1] == pytest.approx(level, abs=1e-12)


def test_a_region_and_the_rest_fill_the_triangle():
    found = mix_map(SALTED, THREE, divisions=20)
    corners, field = found.shares[:, :2], np.log(found.values)
    level = float(np.quantile(field, 0.4))

    def area(loops):
        return sum(
            0.5 * np.sum(loop[:, 0] * np.roll(loop[:, 1], -1) - loop[:, 1] * np.roll(loop[:, 0], -1)) for loop in loops
        )

    above = area(regions_on(corners, found.triangles, field, level))
    below = area(regions_on(corners, found.triangles, -field, -level))
    assert above > 0
    assert below > 0
    assert above + below == pytest.approx(found.size**2 / 2, rel=1e-9)


def test_a_field_above_a_level_everywhere_is_the_whole_triangle_without_a_line():
    found = mix_map(SALTED, THREE, divisions=6)
    ones = np.ones(len(found.values))
    assert len(regions_on(found.shares[:, :2], found.triangles, ones, 0.5)) == 1
    assert level_lines_on(found.shares[:, :2], found.triangles, ones, 0.5) == ()
    assert regions_on(found.shares[:, :2], found.triangles, ones, 2.0) == ()


@pytest.mark.parametrize(
    ("low", "high", "ratios", "levels"),
    [(0.73, 1.0, False, (0.75, 0.8, 0.85, 0.9, 0.95)), (1.9, 41, True, (2, 3, 5, 7, 10, 15, 20, 30)),
     (90, 2e6, True, (100, 1e3, 1e4, 1e5, 1e6)), (1.85, 2.4, True, (1.9, 2, 2.1, 2.2, 2.3)), (3, 3, False, ()),
     (-1, 1, False, (-0.8, -0.6, -0.4, -0.2, 0.0, 0.2, 0.4, 0.6, 0.8))],
)  # fmt: skip
def test_levels_are_round(low, high, ratios, levels):
    assert nice_levels(low, high, ratios=ratios, most=9 if low < 0 else 8) == pytest.approx(levels, abs=1e-12)


def _lightness(colour):
    """CIE L* of #rrggbb (IEC 61966-2-1, CIE 15)."""
    parts = np.array([int(colour[k : k + 2], 16) / 255 for k in (1, 3, 5)])
    linear = np.where(parts <= 0.04045, parts / 12.92, ((parts + 0.055) / 1.055) ** 2.4)
    return 116 * float(LUMINANCE @ linear) ** (1 / 3) - 16


@pytest.mark.parametrize("count", [3, 6, 9])
def test_shades_darken_in_even_steps_of_cie_lightness(count):
    steps = -np.diff([_lightness(each) for each in shades(count)])
    assert np.all(steps > 0)
    assert steps == pytest.approx(np.mean(steps), rel=0.15)  # Oklab's lightness and CIE's differ a little
    assert np.mean(steps) > 7  # L* apart: told apart in grey, whatever an eye makes of hue


@pytest.fixture(scope="module", params=["light", "dark", "print"])
def drawn(request):
    return map_svg(mix_map(SALTED, THREE), theme=request.param, prefix="m-")


def test_the_map_is_sound_svg_with_its_point_its_ridges_and_its_reasons(drawn):
    root = ElementTree.fromstring(drawn)
    reasons = {each.get("data-reason") for each in root.iter() if each.get("data-reason")}
    assert {"too-stiff", "too-wet", "salt-stays-solid"} <= reasons
    levels = {float(each.get("data-level")) for each in root.iter() if each.get("data-level")}
    assert levels == set(levels_of(mix_map(SALTED, THREE)))
    here = float(mix_map(SALTED, THREE).at(mix_map(SALTED, THREE).point).item())
    assert f"this recipe: {rounded_text(here)} Ω·m" in drawn
    assert "nan" not in drawn
    ids = re.findall(r'\bid="([^"]+)"', drawn)
    assert len(ids) == len(set(ids))
    assert all(each.startswith("m-") for each in ids)


def test_hatchings_differ_in_shape_not_in_colour():
    drawn = map_svg(mix_map(SALTED, THREE), theme="print")
    patterns = re.findall(r'<pattern id="hatch[^>]*><path d="([^"]+)"|<pattern[^>]*>\s*<path d="([^"]+)"', drawn)
    shapes = [a or b for a, b in patterns]
    assert len(shapes) == len(set(shapes)) >= 4


def test_letters_are_large_enough_on_a_telephone(drawn):
    width = float(re.search(r'viewBox="0 \S+ (\S+)', drawn)[1])
    sizes = [float(each) for each in re.findall(r'font-size="([\d.]+)"', drawn)]
    assert min(sizes) * 375 / width > 10.5  # pixels on a telephone 375 wide


def test_a_figure_has_few_digits(drawn):
    shown = re.findall(r"<text[^>]*>([^<]*)</text>", drawn)
    assert [each for each in shown if re.search(r"\d{5}|\.\d{4}", each)] == []


def test_a_map_without_any_dough_worth_mixing_still_draws():
    found = mix_map(recipe_of({**CONDUCTING, "cream-of-tartar": 0.5}), ["flour", "water", "oil"])
    assert found.feasible.sum() == 0
    assert ElementTree.fromstring(map_svg(found)).tag.endswith("svg")


def test_a_sugar_dough_shows_where_sugar_stays_solid_and_where_flour_holds_all_water():
    assert "sugar stays solid: over 1 % of the dough" in map_svg(mix_map(SWEET, ["flour", "sugar", "water"]))
    drawn = map_svg(mix_map(SWEET, ["flour", "sugar", "water"], whole=True))
    assert 'data-reason="no-free-water"' in drawn
    assert "no free water: flour holds it all" in drawn


@pytest.mark.parametrize(("recipe", "of", "show"), [(SALTED, THREE, "resistivity"), (SALTED, THREE, "sodium"),
                                                    (SWEET, ("flour", "sugar", "water"), "resistivity")])  # fmt: skip
def test_figures_on_ridges_cover_neither_each_other_nor_the_recipe(recipe, of, show):
    root = ElementTree.fromstring(map_svg(mix_map(recipe, of, show)))
    slips = [each for each in root if each.tag.endswith("rect") and each.get("rx") == "0.9"]
    boxes = [tuple(float(each.get(key)) for key in ("x", "y", "width", "height")) for each in slips]
    rings = [each for each in root.iter() if each.tag.endswith("circle") and each.get("r") == "2"]
    x, y = (float(rings[0].get(key)) for key in ("cx", "cy"))
    boxes.append((x - 2, y - 2, 4.0, 4.0))
    assert len(boxes) > 3
    for k, (left, top, width, height) in enumerate(boxes):
        for other in boxes[:k]:
            apart = left >= other[0] + other[2] or other[0] >= left + width
            assert apart or top >= other[1] + other[3] or other[1] >= top + height
