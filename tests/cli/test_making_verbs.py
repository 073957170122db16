"""`lumped make` and `lumped shop`, as somebody types them."""

import json
import re
import subprocess
import sys
from pathlib import Path

import pytest

from lumped.cli import main

RECIPES = Path(__file__).parents[2] / "demo" / "recipes"
SALT, SUGAR = str(RECIPES / "ropewalk-salt.toml"), str(RECIPES / "ropewalk-sugar.toml")
CLASS = ("--people", "28 of 9 in pairs")


def said(capsys, *words):
    code = main([*words])
    out = capsys.readouterr()
    return code, " ".join(out.out.split()), " ".join(out.err.split())


def told(capsys, *words):
    assert main([*words, "--json"]) == 0
    return json.loads(capsys.readouterr().out)


def test_make_says_how_much_in_how_many_batches_how_long_and_what_it_costs(capsys):
    code, out, _ = said(
        capsys,
        "make",
        SALT,
        *CLASS,
        "--people",
        "2 adults",
        "--pot",
        "3L",
        "--region",
        "uk-ireland",
        "--within",
        "40 min",
    )
    assert code == 0
    order = ["for 30 people (invented)", "28 of age 9, in groups of 2", "Hands want about", "2 batches of about",
             "metric (250 mL cup)", "plain wheat flour", "resistivity moves by", "one person is busy for", "What can I have in 40 minutes?",
             "kneaded cold", "The day before", "GBP", "Be careful", "stays too hot inside"]  # fmt: skip
    places = [out.index(words) for words in order]
    assert places == sorted(places)


def test_make_by_mass_needs_no_people_and_says_why_there_is_no_cost(capsys):
    code, out, _ = said(capsys, "make", SUGAR, "--mass", "1.7 kg")
    assert code == 0
    for words in (
        "That makes 1.70 kg of dough",
        "It is never hot",
        "No region was given, so there is no cost",
        "Raw flour",
    ):
        assert words in out


def test_without_a_time_make_lists_the_places_where_dough_cools(capsys):
    out = said(capsys, "make", SALT, *CLASS)[1]
    for words in (
        "left in its pot",
        "pressed into slabs of 2 cm",
        "rolled out to 1 cm",
        "in a tight flat bag in cold water",
    ):
        assert words in out


def test_make_is_precise_in_json_and_short_in_print(capsys):
    found = told(capsys, "make", SALT, *CLASS, "--region", "japan", "--within", "40 min")
    assert found["measures"] == "japanese"
    assert found["wants_kg"]["low"] < 1.7 < found["wants_kg"]["high"]
    assert found["batches"] * found["batch_kg"]["mean"] == pytest.approx(found["mass_kg"]["mean"])
    assert {each["way"] for each in found["options"]} == {"pot", "kettle", "not cooked"}
    out = said(capsys, "make", SALT, *CLASS, "--region", "japan", "--within", "40 min")[1]
    assert re.findall(r"\d\.\d{4,}|\d{6,}", out) == []


def test_shop_lists_packs_by_shop_and_shelf_with_leftovers_money_and_a_way_round(capsys):
    code, out, _ = said(capsys, "shop", SALT, SUGAR, *CLASS, "--region", "japan")
    assert code == 0
    order = ["Shopping for Ropewalk salt dough, Ropewalk sugar dough (invented)", "In any supermarket", "JPY",
             "2 × 1 kg", "beside the salt", "By order, on the internet", "From the tap", "Altogether about", "lumped swap", "from memory (2024)"]  # fmt: skip
    places = [out.index(words) for words in order]
    assert places == sorted(places)


def test_what_is_there_already_is_not_bought(capsys):
    out = said(capsys, "shop", SALT, "--region", "europe", "--have", "table-salt: 1 kg", "--little-over")[1]
    assert "all there" in out
    assert "leave least over" in out
    found = told(capsys, "shop", SALT, "--region", "europe", "--have", "salt: 1 cup")
    salt = next(each for each in found["lines"] if each["ingredient"] == "table-salt")
    assert salt["packets"] == []
    assert salt["over_kg"] > 0.2


@pytest.mark.parametrize(
    ("arguments", "sentence"),
    [
        (["make", SALT, "--people", "0 of 9"], "“0 of 9” is nobody"),
        (["make", SALT, "--people", "many of 9"], "does not say who comes"),
        (["make", SALT, "--people", "1000000 of 9"], "more than Lumped plans for at once"),
        (["make", SALT, "--people", "3 of 9", "--mass", "1 kg"], "not both"),
        (["make", SALT, "--mass", "3 L"], "given in L, but a mass is wanted"),
        (["make", SALT, "--mass", "0 kg"], "Give a mass from 20 g to 1,000 kg"),
        (["make", SALT, "--pot", "0 L"], "A pot of 0 L is none"),
        (["make", SALT, "--within", "0 min"], "no time that Lumped can plan with"),
        (["make", SALT, "--region", "mars"], "There is no region “mars”"),
        (["make", SALT, "--measures", "furlong"], "There are no furlong measures here"),
        (["make", "nowhere.toml"], "There is no file “nowhere.toml”"),
        (["shop", SALT], "A shopping list needs a region"),
    ],
)
def test_a_failure_is_a_sentence(arguments, sentence, capsys):
    code, out, err = said(capsys, *arguments)
    assert (code, out) == (1, "")
    assert sentence in err


def test_a_shopping_list_loads_no_heavy_library():
    code = f"""
import sys
from lumped.cli import main
main(["make", {SALT!r}, "--people", "28 of 9", "--region", "europe"])
main(["shop", {SALT!r}, "--region", "europe"])
heavy = {{"scipy", "pandas", "sqlalchemy", "matplotlib", "numba", "nicegui", "alembic"}}
print("HEAVY", sorted(heavy & {{each.split(".")[0] for each in sys.modules}}))
"""
    run = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert run.stdout.splitlines()[-1] == "HEAVY []"
