"""`lumped care`: who may touch doughs, which may stay on a table for a child's sake, and what to mind."""

import datetime
import json
import re
import shlex
from pathlib import Path

import pytest

from lumped.app.care import care_at_table
from lumped.cli import main

RECIPES = Path(__file__).parents[2] / "demo" / "recipes"
SALT, SUGAR = str(RECIPES / "ropewalk-salt.toml"), str(RECIPES / "ropewalk-sugar.toml")
DAY = ("--on", "2026-05-08")
ALUM = """
kind = "recipe"
schema = 1
title = "Alum rice dough"
dough = "conducting"
invented = true
measures = "metric"
ingredients = [
  {ingredient = "rice-flour", amount_g = 150}, {ingredient = "tap-water", amount_g = 200},
  {ingredient = "table-salt", amount_g = 60}, {ingredient = "alum", amount_g = 8},
]
[method]
cooked = "pot"
"""

MILK = """
kind = "ingredient"
schema = 1
title = "Quay milk powder (invented)"
per = "100 g"
fat_g = 1
carbohydrate_g = 52
protein_g = 35
allergens = ["milk"]
"""


def said(capsys, *words):
    code = main(["care", *words])
    out = capsys.readouterr()
    return code, " ".join(out.out.split()), " ".join(out.err.split())


def as_json(capsys, *words):
    assert main(["care", *words, *DAY, "--json"]) == 0
    return json.loads(capsys.readouterr().out)


@pytest.fixture
def rice(tmp_path):
    (tmp_path / "rice.toml").write_text(ALUM, "utf-8")
    return str(tmp_path / "rice.toml")


def test_allergens_diets_and_doses_are_told_and_local_rules_come_last(capsys):
    code, out, _ = said(capsys, SALT, *DAY)
    assert code == 0
    assert "cereals containing gluten" in out
    assert "published lethal doses begin" in out
    assert out.index("not food") < out.index("Local rules and qualified people first")


def test_one_coeliac_child_sends_doughs_away_names_the_ingredient_and_the_swap(capsys, rice):
    _, out, _ = said(capsys, SALT, rice, "--child", "celiac", *DAY)
    assert "Ropewalk salt dough leaves plain wheat flour (coeliac)" in out
    assert "Alum rice dough ask first perhaps white rice flour (coeliac)" in out
    assert "makes the whole table gluten-free" in out
    assert f"lumped swap {SALT} --diet no-gluten" in out.replace("ropewalk- salt", "ropewalk-salt")
    assert "read the packet of white rice flour" in out


@pytest.mark.parametrize("needs", [("celiac",), ("wheat", "celiac"), ("gluten-free", "vegan", "corn")])
def test_the_swap_that_is_named_mends_the_table(capsys, tmp_path, needs):
    words = [word for need in needs for word in ("--child", need)]
    (mend,) = as_json(capsys, SALT, *words)["table"]["mends"]
    asked = [word for diet in mend["diets"] for word in ("--diet", diet)]
    asked += [word for one in mend["without"] for word in ("--without", one)]
    new = tmp_path / "new.toml"
    assert main(["swap", SALT, *asked, "--count", "1", "--take", "1", str(new)]) == 0
    capsys.readouterr()
    assert as_json(capsys, str(new), *words)["table"]["leaves"] == []


def test_the_command_that_is_named_can_be_typed(capsys, tmp_path, monkeypatch):
    monkeypatch.setenv("COLUMNS", "300")
    place = tmp_path / "my salt dough.toml"
    place.write_text(Path(SALT).read_text("utf-8"), "utf-8")
    main(["care", str(place), "--child", "wheat", *DAY])
    out = capsys.readouterr().out
    (line,) = [each for each in re.sub(r" *\n {4,}", " ", out).splitlines() if "lumped swap" in each]
    assert shlex.split(line.partition("lumped ")[2])[:4] == ["swap", str(place), "--without", "wheat"]


def test_a_packet_of_ones_own_counts_and_comes_along_in_the_swap(capsys, tmp_path, monkeypatch):
    monkeypatch.setenv("COLUMNS", "300")
    (tmp_path / "milk.toml").write_text(MILK, "utf-8")
    (tmp_path / "milky.toml").write_text(ALUM.replace("alum", "Quay milk powder (invented)"), "utf-8")
    words = [str(tmp_path / "milky.toml"), "--label", str(tmp_path / "milk.toml")]
    assert main(["care", *words, "--child", "dairy-free", *DAY]) == 0
    out = capsys.readouterr().out
    assert "Quay milk powder (invented) (milk)" in out
    command = (" ".join(out.split())).partition(": lumped ")[2].partition(" •")[0]
    assert "--label" in command
    assert main(shlex.split(command)) == 0
    proposed = capsys.readouterr().out
    assert "No longer in it: milk" in " ".join(proposed.split())


def test_a_child_whom_no_dough_troubles_lets_all_stay(capsys):
    found = as_json(capsys, SALT, SUGAR, "--child", "peanut", "--child", "egg")["table"]
    assert found["stays"] == ["Ropewalk salt dough", "Ropewalk sugar dough"]
    assert [each["need"] for each in found["needs"]] == ["peanuts", "eggs"]


def test_what_all_doughs_ask_for_is_said_once_and_what_one_asks_for_under_its_name(capsys):
    _, out, _ = said(capsys, SALT, SUGAR, *DAY)
    assert out.count("Oil and glycerine on the floor are slippery") == 1
    assert out.index("Be careful with Ropewalk sugar dough") < out.index("Sugar dough draws ants")


def test_a_word_that_is_no_need_is_refused_with_the_nearest(capsys):
    code, _, err = said(capsys, SALT, "--child", "peenut")
    assert code == 1
    assert "Did you mean: peanuts" in err


def test_as_json_doses_are_figures_with_their_published_source(capsys):
    found = as_json(capsys, SALT, "--age", "4", "--dog", "20")
    assert (found["kind"], found["on"]) == ("care", "2026-05-08")
    assert (found["child"]["age_years"], found["child"]["mass"]["unit"], found["dog"]["mass"]["mean"]) == (4, "kg", 20)
    (dough,) = found["doughs"]
    dose = next(each for each in dough["doses"] if (each["key"], each["figure"]) == ("salt-dog", "lethal_per_kg"))
    assert dose["published"]["value"] == 4.0
    assert dose["published"]["unit"] == "g/kg"
    assert dose["published"]["provenance"]["status"] == "published"
    assert dose["published"]["provenance"]["sources"] == ["merck-vet"]
    assert dose["amount"]["mean"] == pytest.approx(20 * 4e-3)
    assert dose["dough"]["mean"] == pytest.approx(20 * 4e-3 / dough["salt_share"])
    pinch = dough["helpings"][0]
    assert pinch["salt_kg"] == pytest.approx(pinch["dough_kg"] * dough["salt_share"])
    child, dog = found["child"]["mass"]["mean"], found["dog"]["mass"]["mean"]
    assert pinch["share_of_lethal_child"] == pytest.approx(pinch["salt_kg"] / (0.75e-3 * child))  # RCPCH 2009, p. 79
    assert pinch["share_of_illness_dog"] == pytest.approx(pinch["salt_kg"] / (2e-3 * dog))  # from memory
    assert pinch["sodium_kg"] == pytest.approx(pinch["salt_kg"] * 22.990 / 58.443, rel=1e-4)  # IUPAC molar masses


def test_as_json_metals_stand_against_dated_limits_as_the_law_prints_them(capsys, rice):
    found = as_json(capsys, rice)
    (held,) = found["doughs"][0]["migration"]
    most = 8.5e-3 * 0.056876 * 57 / 54.4  # a scale in whole grams, crystals that lost water
    assert held["share"] == pytest.approx(most / found["doughs"][0]["mass_kg"], rel=2e-3)
    assert (held["valid_from"], held["valid_to"], held["over"]) == ("2021-05-20", "2030-07-31", ["sticky"])
    printed = {(each["element"], each["toy"]): (each["limit"], each["unit"]) for each in found["limits"]}
    assert printed == {
        ("Al", "pliable"): (2250, "mg/kg"), ("Al", "sticky"): (560, "mg/kg"),
        ("B", "pliable"): (1200, "mg/kg"), ("B", "sticky"): (300, "mg/kg"),
    }  # fmt: skip


def test_as_json_cautions_and_remarks_are_whole_and_remarks_have_no_verdict(capsys):
    (dough,) = as_json(capsys, SALT)["doughs"]
    assert dough["diets"]["no gluten"]["fits"] is False
    assert dough["diets"]["vegan"]["fits"] is True
    keys = {"key", "severity", "scope", "when", "words", "brief", "ingredients", "provenance"}
    assert all(set(each) == keys and each["provenance"]["status"] for each in dough["cautions"])
    assert dough["cautions"][-1]["key"] == "rules"
    assert all(set(each) == {"key", "ingredient", "words", "status", "written"} for each in dough["remarks"])
    assert {each["written"] for each in dough["remarks"]} == {"2026-11-26"}


def test_a_dough_of_two_recipes_of_one_title_is_told_by_its_number():
    found = care_at_table([Path(SALT), Path(SALT)], on=datetime.date(2026, 5, 8))
    assert [each.name for each in found.doughs] == ["Ropewalk salt dough (1)", "Ropewalk salt dough (2)"]


@pytest.mark.parametrize(("more", "says"), [(("--age", "99"), "99"), (("--dog", "-3"), "no dog of -3 kg")])
def test_an_age_or_a_weight_that_nobody_has_is_refused_in_words(capsys, more, says):
    code, _, err = said(capsys, SALT, *more)
    assert code == 1
    assert says in err


def test_care_loads_no_heavy_library():
    import subprocess
    import sys

    code = f"""
import sys
from lumped.cli import main
main(["care", {SALT!r}, "--child", "coeliac", "--json"])
heavy = {{"scipy", "pandas", "sqlalchemy", "matplotlib", "numba", "nicegui", "alembic"}}
print("HEAVY", sorted(heavy & {{each.split(".")[0] for each in sys.modules}}))
"""
    run = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert run.stdout.splitlines()[-1] == "HEAVY []"


def test_dough_care_and_card_name_the_same_dose(capsys):
    told = {}
    for verb in ("dough", "care", "card"):
        assert main([verb, SALT, "--json"]) == 0
        told[verb] = capsys.readouterr().out
    shares = {verb: set(re.findall(r"(\d+) (?:%|per cent) (?:of it is )?salt", text)) for verb, text in told.items()}
    assert shares["dough"] == shares["card"] == shares["care"] == {"17"}


def test_care_sources_and_pantry_call_things_by_their_names(capsys):
    assert main(["care", SALT]) == 0
    assert "cereals containing gluten (plain wheat flour)" in " ".join(capsys.readouterr().out.split())
    assert main(["dough", SALT, "--sources"]) == 0
    assert main(["pantry", "cream of tartar"]) == 0
    shown = capsys.readouterr().out
    assert "sodium-chloride" not in shown
    assert "potassium-hydrogen-tar" not in shown
