"""The verbs round a dough, as somebody types them."""

import json
import re
import shlex
from pathlib import Path

import pytest

from lumped.cli import main
from lumped.texts import say

RECIPES = Path(__file__).parents[2] / "demo" / "recipes"
SALT, SUGAR = str(RECIPES / "ropewalk-salt.toml"), str(RECIPES / "ropewalk-sugar.toml")
BATCH = """
kind = "batch"
schema = 1
title = "Friday (invented)"
recipe = "ropewalk-salt.toml"
weighed_after_g = 430
feel = 3
invented = true
[measured]
resistivity_ohm_m = 0.20
measured_by = "four-needles-ac"
"""


def said(capsys, *words):
    code = main([*words])
    out = capsys.readouterr()
    return code, " ".join(out.out.split()), " ".join(out.err.split())


def test_a_dough_says_first_what_it_does_how_it_feels_and_what_would_narrow_it(capsys):
    code, out, _ = said(capsys, "dough", SALT)
    assert code == 0
    assert out.index("Carries current") < out.index("trade's window") < out.index("Water activity") < out.index("step")
    assert "What would narrow this" in out
    assert "Blocks current" in said(capsys, "dough", SUGAR)[1]


def test_a_batch_narrows_the_dough(capsys, tmp_path):
    (tmp_path / "ropewalk-salt.toml").write_text(Path(SALT).read_text("utf-8"), "utf-8")
    batch = tmp_path / "friday.toml"
    batch.write_text(BATCH, "utf-8")
    before = json.loads(said_raw(capsys, "dough", SALT, "--json"))["resistivity"]
    after = json.loads(said_raw(capsys, "dough", SALT, "--batch", str(batch), "--json"))["resistivity"]
    assert after["high"] / after["low"] < before["high"] / before["low"]


def said_raw(capsys, *words):
    assert main([*words]) == 0
    return capsys.readouterr().out


def test_a_label_brings_an_ingredient_that_the_handbook_lacks(capsys, tmp_path):
    label = tmp_path / "quay-flour.toml"
    label.write_text(
        'kind = "ingredient"\nschema = 1\ntitle = "Quay flour (invented)"\nlike = "plain-flour"\nper = "100 g"\n'
        "fat_g = 1.2\ncarbohydrate_g = 71\nprotein_g = 11\n",
        "utf-8",
    )
    recipe = tmp_path / "mine.toml"
    recipe.write_text(Path(SALT).read_text("utf-8").replace('"plain-flour"', '"Quay flour (invented)"').replace(
        'amount = "1 cup"\nas_needed', "amount_g = 125\nas_needed"), "utf-8")  # fmt: skip
    code, out, err = said(capsys, "dough", str(recipe), "--label", str(label))
    assert (code, err) == (0, "")
    assert "Carries current" in out
    assert "knows no ingredient “Quay flour" in said(capsys, "dough", str(recipe))[2]


def test_a_wall_is_judged_and_its_figures_are_short(capsys):
    words = " ".join(said(capsys, "wall", SUGAR)[1].split())
    assert words.startswith("Insulating enough while it is fresh")
    assert say("wall-night-perhaps") in words
    code, out, _ = said(capsys, "wall", SALT, "--lamp", "lamp-white")
    assert code == 0
    assert "gets 0 mA instead of" in out
    assert json.loads(said_raw(capsys, "wall", SUGAR, "--json"))["enough"] == "yes"


@pytest.mark.parametrize(
    ("more", "says"),
    [
        (("--thick", "0 mm"), "can't be. Give a thickness above 0"),
        (("--touch-cm2", "-4"), "can't be. Give a thickness above 0"),
        (("--thick", "3 kg"), "given in kg, but a length is wanted"),
        (("--lamp", "lamp-rad"), "Did you mean: lamp-red"),
    ],
)
def test_a_wall_that_cannot_be_is_refused_in_words(capsys, more, says):
    code, _, err = said(capsys, "wall", SUGAR, *more)
    assert code == 1
    assert says in err


def test_what_if_lists_what_ruins_a_dough_first(capsys):
    found = json.loads(said_raw(capsys, "what-if", SUGAR, "--json"))["changes"]
    means = [each["factor"]["mean"] for each in found]
    assert means == sorted(means)
    assert "one pinch of salt" in said(capsys, "what-if", SUGAR)[1]


def test_a_dough_loads_no_heavy_library():
    import subprocess
    import sys

    code = f"""
import sys
from lumped.cli import main
main(["dough", {SALT!r}, "--json"])
heavy = {{"scipy", "pandas", "sqlalchemy", "matplotlib", "numba", "nicegui", "alembic"}}
print("HEAVY", sorted(heavy & {{each.split(".")[0] for each in sys.modules}}))
"""
    run = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert run.stdout.splitlines()[-1] == "HEAVY []"


@pytest.mark.parametrize("words", [
    "dough", "dough --sources", "dry", "cool", "cool --within '40 min'", "keep", "trial", "salt", "care", "make",
    "shop --region europe", "measure --in metric", "tags", "swap --without cream-of-tartar", "mix",
])  # fmt: skip
def test_every_verb_with_a_title_marks_an_invented_recipe_and_no_other(words, capsys, tmp_path):
    own = tmp_path / "own.toml"
    own.write_text(Path(SALT).read_text("utf-8").replace("invented = true", ""), "utf-8")
    verb, *more = shlex.split(words)
    assert main([verb, SALT, *more]) == 0
    assert "(invented)" in capsys.readouterr().out
    assert main([verb, str(own), *more]) == 0
    assert "(invented)" not in capsys.readouterr().out


@pytest.mark.parametrize("recipe", [SALT, SUGAR])
def test_card_and_drying_table_tell_the_resistivity_with_the_digits_of_the_dough(capsys, monkeypatch, recipe):
    monkeypatch.setenv("COLUMNS", "110")
    mean, ends = re.search(r"current: ([\d.,]+) Ω·m (\([^)]+\))", said(capsys, "dough", recipe)[1]).groups()
    assert f"{mean} {ends}" in said(capsys, "card", recipe)[1]
    assert f"{mean} {ends}" in said(capsys, "dry", recipe)[1]
