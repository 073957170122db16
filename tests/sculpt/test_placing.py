"""Lumps and legs, from words to millimetres."""

from pathlib import Path

import numpy as np
import pytest
from tests.table import part, roll, sculpture_file

from lumped.errors import SculptureError
from lumped.sculpt import Effort, choose_pitch, find_near_pairs, read_sculpture, settled
from lumped.shape import gap_between


def placed(folder: Path, text: str):
    return read_sculpture(sculpture_file(folder, text))


@pytest.mark.parametrize(
    "words", ["right of A, gap 6 mm", "left of A, gap 6 mm", "behind A, gap 6 mm", "in front of A, gap 6 mm"]
)
@pytest.mark.parametrize("turn", [0, 30, 90])
def test_the_gap_is_the_true_distance_of_the_surfaces(tmp_path, words: str, turn: int):
    lumps = placed(tmp_path, roll("A") + roll("B", f'place = "{words}"\nturn_deg = {turn}', diameter=9)).lumps
    assert gap_between(lumps[0].solid, lumps[1].solid).distance == pytest.approx(
        6e-3, abs=5e-5
    )  # sliding stops at 0.02 mm


def test_a_lump_finds_its_gap_in_the_bay_of_a_path(tmp_path):
    hook = '[[lumps]]\nname = "A"\ndough = "salt"\nshape = "path"\ndiameter_mm = 10\n'
    hook += "points_mm = [[0, 40], [0, 60], [60, 60], [60, -60], [0, -60], [0, -40]]\n"
    lumps = placed(tmp_path, hook + roll("B", 'place = "left of A, gap 4 mm"', length=20, diameter=10)).lumps
    assert gap_between(lumps[0].solid, lumps[1].solid).distance == pytest.approx(4e-3, abs=5e-5)
    assert lumps[1].solid.bounds()[0, 0] > 0  # inside the bay, between the hook's ends


def test_a_lump_pressed_in_overlaps_by_that_depth(tmp_path):
    lumps = placed(tmp_path, roll("A") + roll("B", 'place = "right of A, pressed 3 mm"')).lumps
    assert lumps[1].solid.bounds()[0, 0] == pytest.approx(lumps[0].solid.bounds()[1, 0] - 3e-3, abs=5e-5)


def test_lumps_rest_on_the_table_or_on_each_other(tmp_path):
    lumps = placed(tmp_path, roll("A") + roll("B", 'place = "on top of A, pressed 2 mm"', diameter=10)).lumps
    assert lumps[0].solid.bounds()[0, 2] == pytest.approx(0, abs=1e-9)
    assert lumps[1].solid.bounds()[0, 2] == pytest.approx(14e-3, abs=1e-9)


def test_a_wall_between_two_lumps_stands_in_the_middle_of_the_gap(tmp_path):
    wall = '[[lumps]]\nname = "W"\ndough = "wall"\nshape = "block"\nlength_mm = 4\nwidth_mm = 30\nheight_mm = 20\nplace = "between A and B"'
    lumps = placed(tmp_path, roll("A") + roll("B", 'place = "right of A, gap 8 mm"') + wall).lumps
    assert lumps[2].solid.bounds().mean(axis=0)[0] == pytest.approx(34e-3, abs=1e-4)


LEGS = [
    ("left end of A, 15 mm deep", (-30, 0, 8), (-15, 0, 8)),
    ("right end of A, 15 mm deep", (30, 0, 8), (15, 0, 8)),
    ("top of A, 10 mm deep", (0, 0, 16), (0, 0, 6)),
    ("top of A, 25 % along, 10 mm deep", (-15, 0, 16), (-15, 0, 6)),
    ("top of A, 6 mm from the right end, 10 mm deep", (24, 0, 16), (24, 0, 6)),
    ("near side of A, 5 mm deep", (0, -8, 8), (0, -3, 8)),
    ("far side of A, 6 mm from the left end, 5 mm deep", (-24, 8, 8), (-24, 3, 8)),
]


@pytest.mark.parametrize(("words", "entry", "tip"), LEGS)
def test_a_leg_goes_in_where_the_words_say(tmp_path, words: str, entry, tip):
    lamp = part("lamp", "lamp-red", long=words, short="dangling")
    leg = placed(tmp_path, roll("A") + lamp).parts[0].legs[0]
    np.testing.assert_allclose(1e3 * leg.entry, entry, atol=2e-3)  # the ray starts a micrometre inside
    np.testing.assert_allclose(1e3 * leg.tip, tip, atol=2e-3)


def test_the_ends_of_a_turned_roll_are_still_left_and_right_near_and_far(tmp_path):
    lamp = part("lamp", "lamp-red", long="far end of A, 10 mm deep", short="near end of A, 10 mm deep")
    first, second = placed(tmp_path, roll("A", "turn_deg = 90") + lamp).parts[0].legs
    assert 1e3 * first.entry[1] == pytest.approx(30, abs=0.01)
    assert 1e3 * second.entry[1] == pytest.approx(-30, abs=0.01)


def test_a_dangling_leg_has_no_place(tmp_path):
    lamp = part("lamp", "lamp-red", long="dangling", short="top of A, 9 mm deep")
    assert placed(tmp_path, roll("A") + lamp).parts[0].legs[0].entry is None


def test_a_path_has_a_first_and_a_last_end(tmp_path):
    path = '[[lumps]]\nname = "A"\ndough = "salt"\nshape = "path"\npoints_mm = [[0, 0], [40, 0], [40, 40]]\ndiameter_mm = 12'
    lamp = part("lamp", "lamp-red", long="last end of A, 10 mm deep", short="first end of A, 10 mm deep")
    last, first = placed(tmp_path, path + lamp).parts[0].legs
    np.testing.assert_allclose(1e3 * last.entry, (40, 40, 6), atol=2e-3)
    np.testing.assert_allclose(1e3 * first.entry, (0, 0, 6), atol=2e-3)


def test_pairs_that_a_hand_cannot_tell_are_unsure(tmp_path):
    text = roll("A") + roll("B", 'place = "right of A, gap 1 mm"') + roll("C", 'place = "right of B, gap 5 mm"')
    pairs = find_near_pairs(placed(tmp_path, text))
    assert [(pair.first, pair.second, pair.unsure, pair.touching) for pair in pairs] == [(0, 1, True, False)]


REFUSALS = [
    (roll("A") + part("l", "lamp-red", long="top of A, -5 mm deep", short="dangling"), "by more than nothing"),
    (roll("A") + part("l", "lamp-red", long="top of A, 150 % along, 9 mm deep", short="dangling"), "0 to 100 %"),
    (roll("A") + part("l", "lamp-red", long="top of A, 90 mm from the left end, 9 mm deep", short="dangling"), "only 60 mm long"),
    (roll("A") + roll("B", 'place = "right of A, gap 4 mm, shifted 200 mm farther"'), "it slides past"),
    (roll("A") + roll("B", 'place = "right of A, gap -4 mm"'), "as a positive length"),
    (roll("A") + part("l", "lamp-red", long="dangling", short="dangling").replace('"dangling"', "{ at_mm = [0, 0, 9], towards = [nan, 0, 1], depth_mm = 5 }", 1), "Write a number"),
    (roll("A~B"), "can't be printed"),
    (roll("A", diameter=0.01), "must be at least 0.5"),
    (roll("A") + roll("A"), "two lumps are called “A”"),
    (roll("A").replace('"salt"', '"slat"'), "Did you mean “salt”"),
    (roll("B", 'place = "right of A, gap 4 mm"') + roll("A"), "no such lump stands above it in the file"),
    (roll("A") + part("l", "lamp-rde", long="dangling", short="dangling"), "Did you mean “lamp-red”"),
    (roll("A") + part("l", "lamp-red", long="top of B, 9 mm deep", short="dangling"), "no such lump"),
    (roll("A") + part("l", "lamp-red", long="dangling", tall="dangling"), "has no leg “tall”"),
    (roll("A") + part("l", "lamp-red", long="dangling"), "nothing is said about the short leg"),
    (roll("A") + part("l", "lamp-red", 'leads = "nail"', long="dangling", short="dangling"), "leads of part “l” are “nail”"),
    (roll("A") + part("l", "lamp-red", 'state = "open"', long="dangling", short="dangling"), "is open, but a lamp can't be"),
    (roll("A") + part("l", "lamp-red", long="first end of A, 1 m deep", short="dangling") + roll("B").replace('"roll"', '"ball"').replace("length_mm = 60\n", "") + part("m", "lamp-red", long="first end of B, 9 mm deep", short="dangling"), "only a roll or a path has a first"),
    ('[[lumps]]\nname = "A"\ndough = "salt"\nshape = "path"\npoints_mm = [[1, 1], [1, 1]]\ndiameter_mm = 12', "stays on one point"),
    ('[[lumps]]\nname = "A"\ndough = "salt"\nshape = "cone"', "Choose one of"),
    (roll("A", length=-3), "must be at least 0.5"),
    (roll("A", "at_mm = [0, 0]\nplace = 'on the table'"), "either a place in words or at_mm"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "words"), REFUSALS)
def test_what_cannot_exist_is_refused_in_words(tmp_path, text: str, words: str):
    with pytest.raises(SculptureError) as caught:
        placed(tmp_path, text)
    assert words in str(caught.value)
    assert "sculpture.toml" in str(caught.value)


def test_a_part_may_be_called_by_the_name_that_is_printed(tmp_path):
    lamp = part("l", "red lamp", long="top of A, 9 mm deep", short="dangling")
    assert placed(tmp_path, roll("A") + lamp).parts[0].key == "lamp-red"


def test_a_recipe_that_is_not_there_is_named_with_the_dough_and_the_folder(tmp_path):
    from tests.table import HEAD

    head = HEAD + '[doughs.lost]\nrecipe = "gone.toml"\n'
    with pytest.raises(SculptureError, match="dough “lost” names the recipe “gone"):
        read_sculpture(sculpture_file(tmp_path, roll("A"), head))


def test_a_recipe_is_also_found_beside_the_sculpture(tmp_path):
    from tests.table import HEAD

    source = Path(__file__).parents[2] / "demo/recipes/ropewalk-salt.toml"
    (tmp_path / source.name).write_text(source.read_text("utf-8"), encoding="utf-8")
    head = HEAD + f'[doughs.mine]\nrecipe = "recipes/{source.name}"\n'
    sculpture = read_sculpture(sculpture_file(tmp_path, roll("A"), head))
    assert sculpture.doughs["mine"].how == "recipe"


def test_the_same_twist_said_twice_is_one(tmp_path):
    from tests.table import HEAD

    head = 'joined = [["l.long", "p.red"], ["p.red", "l.long"]]\n' + HEAD
    text = roll("A") + part("l", "lamp-red", long="dangling", short="dangling")
    text += part("p", "pack-4aa-alkaline", red="dangling", black="dangling")
    assert read_sculpture(sculpture_file(tmp_path, text, head)).joined == (("l.long", "p.red"),)


def test_joined_legs_must_exist(tmp_path):
    path = sculpture_file(tmp_path, roll("A"), head='joined = [["pack.red", "lamp.long"]]\n' + sculpture_head())
    with pytest.raises(SculptureError, match="names no leg"):
        read_sculpture(path)


def sculpture_head() -> str:
    from tests.table import HEAD

    return HEAD


def test_absolute_millimetres_are_the_other_way(tmp_path):
    lumps = roll("A", "at_mm = [10, 20]") + roll("B", "at_mm = [10, 60, 30]")
    lamp = '[[parts]]\nname = "l"\npart = "lamp-red"\n'
    lamp += "legs.long = { at_mm = [10, 20, 16], depth_mm = 9 }\n"
    lamp += "legs.short = { at_mm = [10, 52, 30], towards = [0, 2, 0], depth_mm = 9 }\n"
    sculpture = placed(tmp_path, lumps + lamp)
    np.testing.assert_allclose(1e3 * sculpture.lumps[0].solid.bounds().mean(axis=0), (10, 20, 8), atol=1e-9)
    np.testing.assert_allclose(1e3 * sculpture.lumps[1].solid.bounds().mean(axis=0), (10, 60, 30), atol=1e-9)
    down, across = sculpture.parts[0].legs
    np.testing.assert_allclose(1e3 * down.tip, (10, 20, 7), atol=1e-9)
    np.testing.assert_allclose(1e3 * across.tip, (10, 61, 30), atol=1e-9)


@pytest.mark.parametrize("turn", [30, 45])
def test_turning_a_wall_does_not_coarsen_the_grid(tmp_path, turn: int):
    wall = '[[lumps]]\nname = "W"\ndough = "salt"\nshape = "block"\nlength_mm = 30\nwidth_mm = 3\nheight_mm = 12\nturn_deg = {turn}\n'
    lamp = part("l", "lamp-red", long="top of W, 20 % along, 9 mm deep", short="top of W, 80 % along, 9 mm deep")
    straight, turned = (
        choose_pitch(settled(placed(tmp_path, wall.format(turn=each) + lamp), ()), Effort.named("full"))
        for each in (0, turn)
    )
    assert turned == pytest.approx(straight)
