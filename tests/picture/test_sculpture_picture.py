"""What stands in a picture: everything on the table, once, at its place and size."""

import re
from xml.etree import ElementTree

import numpy as np
import pytest
from tests.laid_tables import ALL_SHAPES, ONE_ROLL, TWISTED, sculpture, verdict

from lumped.picture import View, arrange, sculpture_svg, view_of
from lumped.picture.svg import text_width
from lumped.texts import say

SVG = "{http://www.w3.org/2000/svg}"


@pytest.fixture(scope="module")
def picture():
    return ElementTree.fromstring(sculpture_svg(verdict(ALL_SHAPES)))


def named(picture, attribute):
    return [each.get(attribute) for each in picture.iter() if each.get(attribute)]


def points_of(path):
    return np.array(re.findall(r"(-?[\d.]+) (-?[\d.]+)", path.get("d")), dtype=float)


def test_every_lump_and_part_appears_once_with_an_id_and_a_title(picture):
    seen = sculpture(ALL_SHAPES)
    assert sorted(named(picture, "data-lump")) == sorted(lump.name for lump in seen.lumps)
    assert named(picture, "data-part") == [part.name for part in seen.parts]
    for group in picture.iter(f"{SVG}g"):
        if group.get("data-lump") or group.get("data-part"):
            assert group.get("id")
            assert group.find(f"{SVG}title").text


def test_ids_are_unique_and_every_reference_meets_one(picture):
    ids = named(picture, "id")
    assert len(ids) == len(set(ids))
    text = ElementTree.tostring(picture, encoding="unicode")
    referred = set(re.findall(r"url\(#([^)]+)\)", text)) | {each[1:] for each in named(picture, "href")}
    assert referred <= set(ids)


def test_every_leg_is_drawn_and_those_in_the_air_end_openly(picture):
    assert set(named(picture, "data-leg")) == {leg.node for leg in sculpture(ALL_SHAPES).legs}
    loose = [each.get("data-leg") for each in picture.iter() if each.get("data-loose")]
    assert sorted(loose) == ["loose lamp.short", "mill.black"]


def test_what_lies_on_top_is_drawn_last(picture):
    order = named(picture, "data-lump")
    assert order[-1] == "disc"
    assert [name for name in order if name != "disc"] == ["ball", "turned roll", "lane", "slab", "block"]


def test_each_mark_is_a_pattern_of_its_own(picture):
    assert sorted(set(named(picture, "data-mark"))) == ["crosses", "dots", "stripes", "waves"]
    dents = {pattern.get("id"): pattern[0].get("d") for pattern in picture.iter(f"{SVG}pattern")}
    marks = [d for key, d in dents.items() if key.endswith("-mark")]
    assert len(set(marks)) == len(marks) == 4


def test_legs_go_in_where_the_sculpture_says(picture):
    seen = sculpture(ALL_SHAPES)
    holes = {
        group.get("data-leg"): group.find(f"{SVG}circle")
        for group in picture.iter(f"{SVG}g")
        if group.get("data-leg") and group.find(f"{SVG}circle") is not None and not group.get("data-loose")
    }
    for leg in seen.legs:
        if leg.entry is not None:
            hole = holes[leg.node]
            # coordinates are written to a hundredth of a millimetre
            assert [float(hole.get("cx")), -float(hole.get("cy"))] == pytest.approx(1e3 * leg.entry[:2], abs=0.006)


def test_one_unit_is_one_millimetre():
    picture = ElementTree.fromstring(sculpture_svg(verdict(ONE_ROLL), theme="print", scale=4))
    width, height = (float(each) for each in picture.get("viewBox").split()[2:])
    assert float(picture.get("width")) == pytest.approx(4 * width, rel=1e-3)
    assert float(picture.get("height")) == pytest.approx(4 * height, rel=1e-3)
    edge = next(each for each in picture.iter(f"{SVG}path") if each.get("class") == "outline")
    assert np.ptp(points_of(edge), axis=0) == pytest.approx([80, 16])


def test_light_and_dark_differ_in_colour_alone():
    light, dark = (sculpture_svg(verdict(ONE_ROLL), theme=theme) for theme in ("light", "dark"))
    assert light != dark
    bare = [re.sub(r"#[0-9a-f]{6}", "", svg) for svg in (light, dark)]
    assert bare[0] == bare[1]


def test_words_of_a_person_are_escaped():
    svg = sculpture_svg(verdict(ALL_SHAPES))
    assert "red &lt;lamp&gt;" in svg
    assert "All shapes &amp; &lt;marks&gt;" in svg


def test_the_slip_says_what_the_part_does():
    remark = view_of(verdict(ONE_ROLL)).remarks["pack"]
    assert remark.words == say(f"state-pack-{verdict(ONE_ROLL).part('pack').state}")
    assert f">{remark.words}</text>" in sculpture_svg(verdict(ONE_ROLL))


def test_a_brighter_lamp_glows_more_and_has_more_rays():
    lively = [
        _lamp_of(0.0, "dark"), _lamp_of(0.2, "barely-lit"), _lamp_of(0.5, "dim"), _lamp_of(1.0, "bright"),
    ]  # fmt: skip
    assert [each.count("<path") for each in lively] == sorted({each.count("<path") for each in lively})


def _lamp_of(lively, state):
    from lumped.picture import THEMES
    from lumped.picture.bodies import Body
    from lumped.picture.glyphs import draw_body

    part = next(part for part in sculpture(ALL_SHAPES).parts if part.kind == "lamp")
    return draw_body(Body(part=part, centre=np.zeros(2), size=(5.6, 5.6), turn=0.0), lively, state, THEMES["light"])


def test_a_picture_does_without_a_verdict():
    picture = sculpture_svg(View(sculpture=sculpture(ALL_SHAPES)), labels=False)
    assert "<text" not in picture
    assert picture.count("data-lump=") == 6


def test_a_prefix_keeps_two_pictures_on_a_page_apart():
    one, two = (
        set(re.findall(r'\bid="([^"]+)"', sculpture_svg(verdict(ONE_ROLL), prefix=prefix))) for prefix in ("a-", "b-")
    )
    assert one
    assert not one & two


@pytest.mark.parametrize("legs", [False, True])
def test_no_words_overlap(legs):
    labels = arrange(view_of(verdict(ALL_SHAPES)), legs=legs).labels
    boxes = [label.box for label in labels]
    assert len(boxes) >= 11
    assert not [(a, b) for k, a in enumerate(boxes) for b in boxes[:k] if a.meets(b)]


def test_words_keep_off_the_bodies_of_parts():
    from lumped.picture.labels import Box

    arrangement = arrange(view_of(verdict(ALL_SHAPES)))
    bodies = [Box.of(body.corners) for body in arrangement.bodies]
    assert not [label for label in arrangement.labels for body in bodies if label.box.meets(body)]


def test_everything_lies_on_the_cloth():
    arrangement = arrange(view_of(verdict(ALL_SHAPES)), legs=True)
    box = arrangement.box
    for points in (*(body.corners for body in arrangement.bodies), *(wire.points for wire in arrangement.wires)):
        assert np.all((points >= [box.left, box.near]) & (points <= [box.right, box.far]))


def test_widths_of_words_are_not_underestimated():
    from importlib.resources import files

    from PIL import ImageFont

    font = ImageFont.truetype(str(files("lumped.paper").joinpath("fonts/DejaVuSerif.ttf")), 100)
    for text in ("west quay", "bright to too hot to last", "barely lit", "Möwe 12", "propeller motor", "WIDE MAMMOTH"):
        assert 0.93 < text_width(text, 100) / font.getlength(text) < 1.25, text


def test_wires_go_round_the_dough():
    arrangement = arrange(view_of(verdict(ONE_ROLL)))
    roll = sculpture(ONE_ROLL).lumps[0].solid
    for wire in arrangement.wires:
        points = np.column_stack([1e-3 * wire.points, np.full(len(wire.points), 8e-3)])
        assert np.mean(roll.distance(points) < -1e-4) < 0.05, wire.leg.node


def test_twisted_legs_meet_and_none_of_them_hangs_in_the_air():
    wires = {wire.leg.node: wire for wire in arrange(view_of(verdict(TWISTED))).wires}
    assert not any(wire.loose for wire in wires.values())
    for first, second in sculpture(TWISTED).joined:
        assert wires[first].points[-1] == pytest.approx(wires[second].points[-1])
