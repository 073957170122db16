"""Drying, cooling, refreshing and keeping, as somebody types them."""

import json
import re
import subprocess
import sys
from pathlib import Path

import pytest

from lumped.cli import main

RECIPES = Path(__file__).parents[2] / "demo" / "recipes"
SALT, SUGAR = str(RECIPES / "ropewalk-salt.toml"), str(RECIPES / "ropewalk-sugar.toml")


def said(capsys, *words):
    code = main([*words])
    out = capsys.readouterr()
    return code, " ".join(out.out.split()), " ".join(out.err.split())


def told(capsys, *words):
    assert main([*words, "--json"]) == 0
    return json.loads(capsys.readouterr().out)


def test_a_drying_piece_is_told_in_words_first_then_as_a_table(capsys):
    code, out, _ = said(capsys, "dry", SALT)
    assert code == 0
    order = ["In a lesson", "Overnight", "After three days", "weight, g", "24 h", "Where it stops", "75 % humidity"]
    assert [out.index(each) for each in order] == sorted(out.index(each) for each in order)
    assert re.search(r"lost \d\.\d \(\d\.\d to \d\.\d\) % of its water", out)


@pytest.mark.parametrize(
    ("words", "piece"),
    [
        ((), "A roll 12 mm thick and 10 cm long, lying open, in a room of 21 °C and 45 % humidity:"),
        (("--shape", "rack", "--long", "20 cm"), "A slab 12 mm thick, 200 cm² large, on a rack, lying open"),
        (("--shape", "ball", "--thick", "4 cm", "--cover", "bag"), "A ball 40 mm thick, in a bag"),
    ],
)
def test_it_is_said_which_piece_dries(capsys, words, piece):
    code, out, _ = said(capsys, "dry", SALT, *words)
    assert code == 0
    assert piece in out


def test_json_of_a_drying_piece_is_si_with_intervals(capsys):
    found = told(capsys, "dry", SALT, "--shape", "ball", "--thick", "4 cm", "--humidity", "85", "--hours", "48")
    last = found["moments"][-1]
    assert last["time_s"] == 48 * 3600
    assert last["mass"]["low"] < last["mass"]["mean"] < last["mass"]["high"] < 0.06
    assert found["room"]["humidity"] == 0.85
    assert found["water_lost_in_balance"]["high"] < 0


@pytest.mark.parametrize("ending", ["svg", "png"])
def test_a_drying_piece_is_drawn(capsys, tmp_path, ending):
    picture = tmp_path / f"drying.{ending}"
    code, out, _ = said(capsys, "dry", SUGAR, "--shape", "slab", "--thick", "6 mm", "--picture", str(picture))
    assert code == 0
    assert "Written" in out
    content = picture.read_bytes()
    assert content.startswith(b"\x89PNG") if ending == "png" else b'data-strip="resistivity"' in content


def test_the_cooling_clock_tells_middle_and_face(capsys):
    code, out, _ = said(capsys, "cool", SALT)
    assert code == 0
    assert re.search(r"In its pot, \d+ g and \d+ mm high, it is too hot for hands for \d+ minutes \(\d+ to \d+\)", out)
    assert "inside is still hot" in out
    assert "local rules come first" in out
    ball = told(capsys, "cool", SALT, "--as", "ball", "--thick", "5 cm")["clock"]["too_hot_for_hands"]
    assert 30 < ball["middle"]["low"] / 60 < ball["middle"]["high"] / 60 < 80
    assert ball["face"]["mean"] < ball["middle"]["mean"]


def test_what_was_never_hot_may_be_taken_at_once(capsys):
    assert "hands may take it at once" in said(capsys, "cool", SUGAR)[1]
    assert "hands may take it at once" in said(capsys, "cool", SUGAR, "--within", "40 min")[1]


def test_forty_minutes_are_too_few_for_a_cooked_slab_and_ninety_are_enough(capsys):
    # trade.md: cooked dough can't be made and handed out in 40 minutes
    thin = told(capsys, "cool", SALT, "--within", "40 min")
    assert "Cook it the day before" in thin["words"][1]
    found, limit = re.search(r"it may be ([\d.]+) mm thick .* thinner than (\d+) mm", thin["words"][1]).groups()
    assert float(found) == pytest.approx(1e3 * thin["thickness"]["low"], rel=0.05)  # two digits
    assert float(found) < float(limit)
    assert "not even 2 mm thick" in said(capsys, "cool", SALT, "--within", "10 min")[1].replace("\n", "")
    slow = told(capsys, "cool", SALT, "--within", "90 min")
    assert slow["possible"]
    assert 0.007 < slow["thickness"]["low"] < slow["thickness"]["mean"] < 0.02
    assert "even chance" in said(capsys, "cool", SALT, "--within", "90 min", "--as", "ball")[1]
    assert "In its pot a layer" in said(capsys, "cool", SALT, "--within", "2 h", "--as", "pot")[1]


def test_a_dried_dough_gets_back_what_its_bag_lost(capsys):
    _, out, _ = said(capsys, "refresh", "--weighed", "512 g", "--now", "487 g")
    assert "Knead in 25 g of water" in out  # trade.md
    _, out, _ = said(capsys, "refresh", SALT, "--weighed", "512 g", "--now", "487 g")
    assert "% of the water that it held" in out
    assert "times less easily" in out
    assert told(capsys, "refresh", SALT, "--weighed", "512 g", "--now", "487 g")["water_kg"] == pytest.approx(0.025)


def test_keeping_names_who_could_grow_the_habit_and_the_caveat(capsys):
    _, room, _ = said(capsys, "keep", SALT)
    assert "14 days at room temperature" in room
    assert "no promise" in room
    assert "too little free water" in room
    _, cold, _ = said(capsys, "keep", SUGAR, "--fridge")
    assert "in the fridge" in cold
    assert "slowed" in cold
    fridge, outside = (told(capsys, "keep", SALT, *more)["kept_by_habit"]["mean"] for more in (("--fridge",), ()))
    assert fridge > outside


def test_keeping_says_first_how_wet_and_how_sour_it_is(capsys):
    _, out, _ = said(capsys, "keep", SALT)
    assert re.search(
        r"Ropewalk salt dough \(invented\) Its water activity is 0\.\d\d \(0\.\d\d to 0\.\d\d\), its pH \d\.\d", out
    )
    found = told(capsys, "keep", SALT)
    ends = {key: f"{found['water_activity'][key]:.2f}" for key in ("mean", "low", "high")}
    assert f"{ends['mean']} ({ends['low']} to {ends['high']})" in found["words"][0]


def test_what_a_kind_needs_is_shown_as_wide_as_it_is_known(capsys):
    """A dough of 0.75 (0.74 to 0.79) beside a bare 0.85 looks safe: the table says 0.80 to 0.87, rounded to 0.01."""
    assert "0.85 (0.80 to 0.87)" in said(capsys, "keep", SALT)[1]


def test_a_leak_through_a_wall_has_its_interval(capsys):
    _, out, _ = said(capsys, "wall", SUGAR)
    assert re.search(r"0\.\d+ mA \(0\.\d+ to 0\.\d+\) leak through the wall", out)
    _, out, _ = said(capsys, "wall", SALT)
    assert re.search(r"[\d.]+ mA \([\d.]+ to [\d.]+\) leak through the wall", out)


def test_a_wall_that_lets_no_salt_in_says_so(capsys, tmp_path):
    _, out, _ = said(capsys, "wall", recipe_in(tmp_path, "Crumbs", "insulating", plain_flour=200, vegetable_oil=80))
    assert "none mm" not in out
    assert "Overnight (16 hours) no salt to speak of creeps in" in out
    assert "For this lamp the wall still does after a month." in out


def test_a_wall_has_its_hour(capsys):
    code, out, _ = said(capsys, "wall", SUGAR, "--lamp", "lamp-white", "--beside", SALT)
    assert code == 0
    assert re.search(r"it does for this lamp for [\d.]+ hours", out)
    assert "Overnight (16 hours) a hundredth" in out
    assert "Twice as thick (6 mm)" in out
    assert "apart after the lesson" in out
    found = told(capsys, "wall", SUGAR, "--lamp", "lamp-white")["lasting"]
    assert found["lasts"]["low"] < found["lasts"]["mean"] <= found["lasts"]["high"]


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("dry", SALT, "--thick", "0 mm"), "A piece 0 mm in size can’t be"),
        (("dry", SALT, "--long", "200 m"), "A piece 200,000 mm in size can’t be"),
        (("dry", SALT, "--shape", "cube"), "“cube” is no shape"),
        (("dry", SALT, "--humidity", "145"), "A humidity of 145 % can’t be"),
        (("dry", SALT, "--hours", "0"), "0 hours can’t be followed"),
        (("dry", SALT, "--picture", "x.jpg"), "ends in .svg or .png"),
        (("cool", SALT, "--as", "cup"), "“cup” is no way to lay"),
        (("cool", SALT, "--within", "0 min"), "A time of 0 minutes can’t be"),
        (("cool", SALT, "--within", "90 min", "--as", "cup"), "“cup” is no way to lay"),
        (("cool", SALT, "--mass", "900 kg"), "can’t be reckoned with"),
        (("refresh", "--weighed", "512 g", "--now", "600 g"), "heavier than"),
        (("refresh", SALT, "--weighed", "512 g", "--now", "100 g"), "but held only"),
        (("keep", "nowhere.toml"), "no file “nowhere.toml”"),
    ],
)
def test_what_cannot_be_is_refused_in_words(capsys, words, says):
    code, _, err = said(capsys, *words)
    assert code == 1
    assert says in err


@pytest.mark.parametrize("words", [("dry", SALT), ("cool", SALT), ("cool", SALT, "--within", "2 h"), ("keep", SALT)])
def test_the_clocks_load_no_heavy_library(words):
    code = f"""
import sys
from lumped.cli import main
main([*{words!r}, "--json"])
heavy = {{"scipy", "pandas", "sqlalchemy", "matplotlib", "numba", "nicegui", "alembic"}}
print("HEAVY", sorted(heavy & {{each.split(".")[0] for each in sys.modules}}))
"""
    run = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert run.stdout.splitlines()[-1] == "HEAVY []"


def recipe_in(folder, title, kind, **grams):
    file = folder / f"{title}.toml"
    portions = "".join(f'[[ingredients]]\ningredient = "{key.replace("_", "-")}"\namount_g = {amount}\n'
                       for key, amount in grams.items())  # fmt: skip
    file.write_text(f'kind = "recipe"\nschema = 1\ntitle = "{title}"\ndough = "{kind}"\n'
                    f'[method]\ncooked = "not cooked"\n{portions}')  # fmt: skip
    return str(file)


def test_a_wet_dough_without_salt_is_kept_a_day_and_warned_of(capsys, tmp_path):
    plain = recipe_in(tmp_path, "Plain", "insulating", plain_flour=150, distilled_water=80)
    _, out, _ = said(capsys, "keep", plain)
    assert "keeps such a dough 1 day at" in out
    assert "make people ill" in out
    assert "make people ill" not in said(capsys, "keep", SALT)[1]


def test_a_time_of_nearly_nothing_is_no_figure(capsys, tmp_path):
    plain = recipe_in(tmp_path, "Plain", "insulating", plain_flour=150, distilled_water=80)
    _, out, _ = said(capsys, "wall", plain)
    assert "(less than a minute to" in out
    assert not re.search(r"\(0(\.\d+)? minutes", out)


def test_refreshing_says_when_nothing_is_felt_and_when_it_is_too_late(capsys):
    assert "as it did when fresh" in said(capsys, "refresh", SALT, "--weighed", "512 g", "--now", "511 g")[1]
    _, late, _ = said(capsys, "refresh", SUGAR, "--weighed", "200 g", "--now", "155 g")
    assert " ".join(late.split()).startswith("It lost 45 g of water, so much that it is leathery or hard all through")
    assert "29 g of water to 100 g of it" in " ".join(late.split())  # 45 g for 155 g
    assert "Knead in" not in late
    assert "hard all through" not in said(capsys, "refresh", SALT, "--weighed", "512 g", "--now", "487 g")[1]


def test_what_is_no_dough_is_not_kneaded_back(capsys, tmp_path):
    dry = recipe_in(tmp_path, "Dry", "conducting", plain_flour=150, table_salt=50)
    out = " ".join(said(capsys, "refresh", dry, "--weighed", "200 g", "--now", "190 g")[1].split())
    assert "that was no dough: mend the recipe" in out
    assert "Knead in" not in out
    assert "times less easily" not in out


def test_amounts_that_a_scale_hardly_tells_are_not_followed(capsys, tmp_path):
    speck = recipe_in(tmp_path, "Speck", "conducting", plain_flour=0.5, tap_water=0.4, table_salt=0.1)
    code, _, err = said(capsys, "dry", speck)
    assert code == 1
    assert "Nobody can tell how much water this mix has" in err


def test_making_that_takes_longer_than_there_is_time_is_told_so(capsys):
    _, out, _ = said(capsys, "cool", SALT, "--within", "10 min")
    assert re.search(r"alone take \d+ minutes \(\d+ to \d+\), longer than the 10 minutes\.", out)
    assert "Of the 90 minutes," in said(capsys, "cool", SALT, "--within", "90 min")[1]
