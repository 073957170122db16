"""`lumped measure`: as somebody types it."""

import json
from pathlib import Path

import pytest

from lumped.cli import main

RECIPES = Path(__file__).parents[2] / "demo" / "recipes"
SALT = str(RECIPES / "ropewalk-salt.toml")


def said(capsys, *words):
    code = main([*words])
    out = capsys.readouterr()
    return code, " ".join(out.out.split()), " ".join(out.err.split())


def as_json(capsys, *words):
    assert main([*words, "--json"]) == 0
    return json.loads(capsys.readouterr().out)


def test_a_measure_is_weighed_with_its_interval_and_a_scooped_cup_is_heavier(capsys):
    code, out, _ = said(capsys, "measure", "1 1/2 cup", "plain-flour", "--in", "us", "--method", "scooped")
    assert code == 0
    assert "weighs 217 g (195 to 240)" in out
    spooned = as_json(capsys, "measure", "1 1/2 cup", "plain-flour", "--method", "spooned")["mass"]
    scooped = as_json(capsys, "measure", "1 1/2 cup", "plain-flour", "--method", "scooped")["mass"]
    assert scooped["mean"] > spooned["mean"]


def test_a_cup_that_nobody_says_how_to_fill_has_the_wider_interval(capsys):
    unsaid = as_json(capsys, "measure", "1 cup", "plain-flour")["mass"]
    said_so = as_json(capsys, "measure", "1 cup", "plain-flour", "--method", "spooned")["mass"]
    assert unsaid["high"] > said_so["high"]
    assert "Nobody said how it is filled" in said(capsys, "measure", "1 cup", "plain-flour")[1]


def test_a_weight_comes_back_in_the_measures_of_a_country(capsys):
    found = as_json(capsys, "measure", "180 g", "plain-flour", "--in", "japan")
    assert list(found["ways"]) == ["japanese"]
    assert abs(found["ways"]["japanese"]["shift"]) < 0.03
    assert len(as_json(capsys, "measure", "180 g", "plain-flour")["ways"]) == 7


def test_a_weight_is_a_weight(capsys):
    code, out, _ = said(capsys, "measure", "180 g", "plain-flour")
    assert code == 0
    assert out.startswith("180 g of plain wheat flour is a weight already. In measures it is:")
    assert "Status of the weight" not in out
    assert said(capsys, "measure", "8 oz", "plain-flour")[1].startswith("8 oz of plain wheat flour is 227 g. In")


@pytest.mark.parametrize("way", ["sifted", "packed"])
def test_grains_do_not_pack_and_it_says_so(capsys, way):
    out = said(capsys, "measure", "1 cup", "table-salt", "--method", way)[1]
    assert f"Grains of table salt neither pack nor fluff up: {way} it weighs what it does poured." in out
    found, unsaid = (as_json(capsys, "measure", "1 cup", "table-salt", *more)["mass"]
                     for more in (["--method", way], []))  # fmt: skip
    assert (found["low"], found["high"]) == (unsaid["low"], unsaid["high"])
    assert "Grains" not in said(capsys, "measure", "1 cup", "plain-flour", "--method", way)[1]


def test_there_and_back_again(capsys):
    words = as_json(capsys, "measure", "250 g", "granulated-sugar", "--in", "metric")["ways"]["metric"]
    back = as_json(capsys, "measure", words["words"], "granulated-sugar", "--in", "metric")
    assert back["mass"]["mean"] == pytest.approx(words["mass"]["mean"], rel=1e-9)


def test_a_recipe_in_its_own_measures_stays_as_it_is(capsys):
    found = as_json(capsys, "measure", SALT, "--in", "us")
    assert [each["words"] for each in found["portions"]] == ["1 cup", "1 cup", "¼ cup", "1 tbsp", "1 tbsp"]
    assert found["moved"] == pytest.approx(0, abs=1e-9)
    assert found["before"] == pytest.approx(found["after"])


@pytest.mark.parametrize("kitchen", ["japan", "metric", "imperial", "scale"])
def test_a_rounded_recipe_shows_how_far_the_dough_moved(capsys, kitchen):
    found = as_json(capsys, "measure", SALT, "--in", kitchen)
    change = found["after"]["resistivity"] / found["before"]["resistivity"] - 1
    assert abs(change) < 0.05
    assert found["moved"] <= found["each_alone"] + 0.02  # another way than the plainest is worth half a per cent
    assert "moved by" in said(capsys, "measure", SALT, "--in", kitchen)[1]


def test_a_rounded_recipe_is_taken_as_a_file_that_reads_back(capsys, tmp_path):
    new = tmp_path / "japan.toml"
    before = as_json(capsys, "measure", SALT, "--in", "japan", "--take", str(new))
    again = as_json(capsys, "measure", str(new), "--in", "japan")
    assert again["before"]["resistivity"] == pytest.approx(before["after"]["resistivity"], rel=1e-6)
    assert said(capsys, "measure", SALT, "--in", "japan", "--take", str(new))[0] == 1


def test_without_an_amount_all_measures_are_listed_with_their_source(capsys):
    out = said(capsys, "measure")[1]
    assert "21 CFR 101.9" in out
    assert "180.4" in out


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("1 cup",), r"of what? Name an ingredient"),
        (("1 cup", "plain-flour", "--in", "mars"), "There are no measures “mars”"),
        ((SALT,), "Whose measures? Add --in"),
        (("nowhere.toml",), "There is no file “nowhere.toml”"),
        (("1 go",), 'of what? Name an ingredient, such as: lumped measure "1 go" plain-flour --in japanese'),
        (("1 go", "rice-flour"), "--in japanese for a command"),
        (("half a cup",), "of what? Name an ingredient"),
        (("1 cup", "flor"), "Did you mean: plain-flour"),
        (("1 cup", "plain-flour", "--method", "thrown"), "is no way of filling"),
        (("1 gō", "plain-flour", "--in", "us"), "gō"),
        (("0 g", "plain-flour"), "is nothing at all"),
    ],
)
def test_what_cannot_be_measured_is_refused_in_words(capsys, words, says):
    code, _, err = said(capsys, "measure", *words)
    assert code == 1
    assert says in err


def test_a_recipe_without_water_is_measured_without_a_warning(capsys, tmp_path):
    grams = "{ingredient = 'flour', amount_g = 200}, {ingredient = 'salt', amount_g = 50}"
    head = 'kind = "recipe"\nschema = 1\ntitle = "Dry"\ndough = "conducting"\n'
    (tmp_path / "dry.toml").write_text(f"{head}ingredients = [{grams}]\n", "utf-8")
    assert main(["measure", str(tmp_path / "dry.toml"), "--in", "us"]) == 0
    assert "nan" not in capsys.readouterr().out


def test_a_recipe_of_the_notebook_is_measured_by_its_title(tmp_path, capsys):
    place = ("--notebook", str(tmp_path / "book.sqlite"))
    assert main(["notebook", "save", SALT, *place]) == 0
    capsys.readouterr()
    found = as_json(capsys, "measure", "Ropewalk salt dough", "--in", "metric", *place)
    assert found["before"] == as_json(capsys, "measure", SALT, "--in", "metric")["before"]
    assert said(capsys, "measure", "No such dough", "--in", "metric", *place)[0] == 1


def test_an_amount_as_needed_is_all_of_its_range(capsys):
    assert main(["measure", "as needed, 0-60 g", "plain-flour", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert (told["mass"]["low"], told["mass"]["high"]) == (0, 0.06)
    assert told["ways"]["scale"]["mass"]["mean"] == pytest.approx(0.06)
    assert main(["measure", "as needed, 0-60 g", "plain-flour"]) == 0
    assert "is anything between: 30.0 g (0 to 60)" in " ".join(capsys.readouterr().out.split())
