"""`lumped salt`, `lumped mix`, `lumped beside`: what they print, what they write, how they fail."""

import json
import xml.etree.ElementTree as ElementTree
from pathlib import Path

import pytest
from tests.cli.test_dough_verbs import BATCH

from lumped.app.notebooks import open_notebook
from lumped.app.saving import save_file
from lumped.cli import main

RECIPES = Path(__file__).parents[2] / "demo/recipes"
SALT, SUGAR = str(RECIPES / "ropewalk-salt.toml"), str(RECIPES / "ropewalk-sugar.toml")
THREE = ["--of", "flour", "--of", "water", "--of", "salt"]


def _said(capsys):
    return " ".join(capsys.readouterr().out.split())


def test_salt_prints_the_row_and_what_it_says(capsys):
    assert main(["salt", SALT]) == 0
    shown = _said(capsys)
    for words in ("(invented)", "It conducts best with", "some of it stays solid", "promise nothing", "Salt stings"):
        assert words in shown


def test_salt_in_json_gives_where_it_conducts_best_with_its_interval(capsys):
    assert main(["salt", SALT, "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["salt"] == "table-salt"
    assert told["best_kg"]["low"] < told["best_kg"]["mean"] < told["best_kg"]["high"]


def test_salt_of_another_ingredient_than_the_main_one(capsys):
    assert main(["salt", SALT, "--of", "tartar", "--json"]) == 0
    assert json.loads(capsys.readouterr().out)["salt"] == "cream-of-tartar"


def test_pictures_are_written_as_svg_and_as_png(tmp_path, capsys):
    svg, png = tmp_path / "a.svg", tmp_path / "b.png"
    assert main(["salt", SALT, "--picture", str(svg), "--theme", "dark"]) == 0
    assert main(["mix", SALT, *THREE, "--picture", str(png)]) == 0
    assert ElementTree.fromstring(svg.read_text("utf-8")).tag.endswith("svg")
    assert png.read_bytes().startswith(b"\x89PNG")
    assert _said(capsys).count("Written:") == 2


def test_a_picture_of_another_ending_is_refused_before_computing(tmp_path, capsys):
    assert main(["mix", SALT, *THREE, "--picture", str(tmp_path / "a.gif")]) == 1
    assert "ends in .svg or .png" in " ".join(capsys.readouterr().err.split())


def test_mix_prints_the_ends_and_what_stands_against_mixes(capsys):
    assert main(["mix", SALT, *THREE, "--show", "water-activity"]) == 0
    shown = _said(capsys)
    for words in ("lowest good mix", "nothing stands against", "salt stays solid: over 1 %", "common practice"):
        assert words in shown


@pytest.mark.parametrize(("recipe", "three"), [("salt", ["plain-flour", "tap-water", "table-salt"]),
                                               ("sugar", ["plain-flour", "distilled-water", "granulated-sugar"])])  # fmt: skip
def test_mix_of_nothing_named_is_of_flour_liquid_and_salt_or_sugar(capsys, recipe, three):
    assert main(["mix", SALT.replace("ropewalk-salt", f"ropewalk-{recipe}"), "--json"]) == 0
    assert json.loads(capsys.readouterr().out)["of"] == three


def test_mix_in_json_gives_every_point(capsys):
    assert main(["mix", SALT, *THREE, "--whole", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert (told["kind"], len(told["points"]), told["unit"]) == ("mix-map", 2016, "Ω·m")


@pytest.mark.parametrize(
    ("arguments", "sentence"),
    [
        (["salt", SUGAR], "There is no salt in “Ropewalk sugar dough”"),
        (["mix", SALT, *THREE, "--show", "colour"], "“colour” is nothing that Lumped can map"),
        (["mix", SALT, *THREE[:4]], "A map needs three different ingredients, and 2 came"),
        (["mix", SALT, "--of", "flour", "--of", "water", "--of", "stardust"], "Lumped knows no ingredient “stardust”"),
        (["mix", SALT, *THREE, "--show", "cost"], "Not all of these ingredients have a price here"),
        (["beside", SALT], "Side by side needs two recipes at least, and 1 came"),
    ],
)
def test_a_failure_is_a_sentence(arguments, sentence, capsys):
    assert main(arguments) == 1
    assert sentence in " ".join(capsys.readouterr().err.split())


def test_mix_with_an_ingredient_that_is_not_in_the_recipe_begins_with_none_of_it(capsys):
    assert main(["mix", SALT, "--of", "flour", "--of", "water", "--of", "honey", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["of"][2] == "honey"
    assert told["recipe"]["shares"][2] == 0
    assert max(each["shares"][2] for each in told["points"]) > 0.1


def test_beside_prints_amounts_figures_and_allergens(capsys):
    assert main(["beside", SALT, SUGAR]) == 0
    shown = _said(capsys)
    for words in ("Ropewalk salt dough", "what goes in", "granulated sugar", "Ω·m", "the first", "gluten"):
        assert words in shown


def test_beside_in_json_holds_all_sides(capsys):
    assert main(["beside", SALT, SUGAR, "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert [side["dough"] for side in told["sides"]] == ["conducting", "insulating"]
    assert told["sides"][1]["ratio_to_first"]["mean"] > 100


def test_revisions_of_the_notebook_stand_beside_each_other_and_a_file(tmp_path, capsys):
    mine = tmp_path / "mine.toml"
    first = Path(SALT).read_text("utf-8")
    with open_notebook(tmp_path / "notebook.sqlite") as notebook:
        for text in (first, first.replace('amount = "1/4 cup"', "amount_g = 36")):
            mine.write_text(text, encoding="utf-8")
            save_file(notebook, mine)
    places = ["Ropewalk salt dough@1", "Ropewalk salt dough", SUGAR]
    assert main(["beside", *places, "--notebook", str(tmp_path / "notebook.sqlite"), "--json"]) == 0
    sides = json.loads(capsys.readouterr().out)["sides"]
    assert [side["name"] for side in sides] == [
        "Ropewalk salt dough, revision 1", "Ropewalk salt dough, revision 2", "Ropewalk sugar dough"
    ]  # fmt: skip
    assert sides[1]["amounts_kg"]["table-salt"]["mean"] == pytest.approx(0.036)
    assert sides[1]["ratio_to_first"]["low"] > 1


def test_a_batch_teaches_those_beside_each_other_that_are_of_its_kind(tmp_path, capsys):
    (tmp_path / "ropewalk-salt.toml").write_text(Path(SALT).read_text("utf-8"), "utf-8")
    batch = tmp_path / "friday.toml"
    batch.write_text(BATCH, "utf-8")

    def told(*words):
        assert main([*words, "--json"]) == 0
        return json.loads(capsys.readouterr().out)

    alone = told("dough", SALT, "--batch", str(batch))["resistivity"]
    found = told("beside", SALT, SUGAR, "--batch", str(batch))
    salt, sugar = (side["properties"]["resistivity"] for side in found["sides"])
    assert (salt["low"], salt["high"]) == pytest.approx((alone["low"], alone["high"]), rel=1e-9)  # the same draws
    assert sugar == told("beside", SUGAR, SALT)["sides"][0]["properties"]["resistivity"]
    assert found["taught"][0].startswith("Ropewalk salt dough: ")
    assert main(["beside", SALT, SUGAR, "--batch", str(batch)]) == 0
    assert "Friday (invented)" in capsys.readouterr().out
    assert main(["beside", SALT, SUGAR, "--batch", str(tmp_path / "none.toml")]) == 1
    assert "There is no file" in capsys.readouterr().err
