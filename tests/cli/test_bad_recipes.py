"""Wrong input, as somebody types it: each gets a sentence that says what, where and what to do, and no file is touched."""

import json

import pytest

from lumped.cli import main
from lumped.texts import say

GOOD = """kind = "recipe"
schema = 1
title = "Slipway (invented)"
dough = "conducting"
[[ingredients]]
ingredient = "plain-flour"
amount_g = 125
[[ingredients]]
ingredient = "tap-water"
amount_g = 237
[[ingredients]]
ingredient = "table-salt"
amount = "1/4 cup"
"""
WATER = '[[ingredients]]\ningredient = "tap-water"\namount_g = 237\n'
LABEL = 'kind = "ingredient"\nschema = 1\ntitle = "Quay flour (invented)"\nlike = "plain-flour"\nper = "100 g"\n'


@pytest.fixture(autouse=True)
def wide(monkeypatch):
    """A terminal that breaks no line, however long a path is."""
    monkeypatch.setenv("COLUMNS", "1000")


@pytest.fixture
def refused(tmp_path, capsys):
    """Run `lumped dough` on a text that it must refuse; give the sentence, once read in words and once as JSON."""

    def ask(text, *more):
        path = tmp_path / "slipway.toml"
        content = text if isinstance(text, bytes) else text.encode()
        path.write_bytes(content)
        assert main(["dough", str(path), *more]) == 1
        said = capsys.readouterr()
        assert said.out == ""
        assert main(["dough", str(path), *more, "--json"]) == 1
        error = json.loads(capsys.readouterr().err)["error"]
        words = " ".join(said.err.split())
        assert words.removesuffix(f" {say('own-hint-label')}") == " ".join(error["message"].split())
        assert path.read_bytes() == content
        return words

    return ask


@pytest.mark.parametrize(("old", "new", "sentence"), [
    ("= 125", "= -125", "ingredients › “plain-flour” › amount_g is -125. It must be more than 0."),
    ("= 125", "= 0", "ingredients › “plain-flour” › amount_g is 0. It must be more than 0."),
    ("= 125", "= 1000000", "amount_g is 1000000. It must be at most 100000."),
    ("= 125", "= nan", 'nan. Write a number of grams alone, as in amount_g = 3, or with its unit: amount = "3 g".'),
    ("= 125", "= inf", "amount_g is inf. Write a number of grams alone"),
    ("= 125", '= "200 g"', 'Write a number of grams alone, as in amount_g = 200, or with its unit: amount = "200 g".'),
    ("amount_g = 125", "as_needed_g = [60, 0]", "gives the least amount first, then the most: as_needed_g = [0, 60]."),
    ("amount_g = 125", "as_needed_g = [0, 0]", "as_needed_g = [0, 0] adds nothing; take it out"),
    ("amount_g = 125", "as_needed_g = 60", "two amounts in grams, least and most: as_needed_g = [0, 60]."),
    ("amount_g = 125", "as_needed_g = [60]", "two amounts in grams, least and most: as_needed_g = [0, 60]."),
    ('"plain-flour"', "5", "Write text in quotation marks."),
    ("schema = 1", 'schema = 1\ntemperature_degC = "20 C"', "Write a number of degrees Celsius alone, such as 20."),
    ("schema = 1", 'schema = 1\ninvented = "maybe"', "Write true or false."),
    ('"1/4 cup"', '"-1 cup"', "“-1 cup” is less than nothing. Write an amount above zero."),
    ('"1/4 cup"', '"0 cup"', "“0 cup” is nothing at all. Leave the ingredient out, or write how much goes in."),
    ('"1/4 cup"', '"1000000 g"', "more than any bowl holds; at most 100 kg can be read here."),
    ('"1/4 cup"', '"1000000 cups"', "more than any bowl holds; at most 100 kg can be read here."),
    ('"1/4 cup"', '"3 cm"', "“3 cm” is given in cm, which no kitchen scale, cup or spoon shows. Write one of g, kg, oz"),
    ('"1/4 cup"', '"5 ohm"', "“5 ohm” is given in ohm, which no kitchen scale, cup or spoon shows."),
    ('"1/4 cup"', '"20 °C"', "“20 °C” is given in °C, which no kitchen scale, cup or spoon shows."),
    ('"1/4 cup"', '"1/0 cup"', "“1/0 cup” is no amount that Lumped can read."),
    ('"1/4 cup"', '"1 go"', "there is no such measure among US customary measures. It is one of the Japanese"),
    ('"plain-flour"', '"plane flour"', "no. 1: Lumped knows no ingredient “plane flour”. Did you mean: plain-flour"),
    ('"table-salt"', '"tabel salt"', "no. 3: Lumped knows no ingredient “tabel salt”. Did you mean: table-salt"),
    ("amount_g = 237", "amount_kg = 0.237", "There is no such key; did you mean “amount_g”?"),
    ("amount_g = 237", "", "ingredients › “tap-water”: Say how much goes in: “125 g”, or “1 cup”."),
    ("title =", "title", "is not TOML: Expected '=' after a key in a key/value pair (at line 3"),
    ('= "conducting"', '= "conducting', "is not TOML"),
    ("[[ingredients]]", "[[ingredients]", "each [[table]] its two brackets"),
    (GOOD[GOOD.index("[[") :], "", "ingredients is missing. Add the key “ingredients”."),
    (GOOD[GOOD.index("[[") :], "ingredients = []", "slipway.toml, ingredients: Give at least 1."),
])  # fmt: skip
def test_what_is_wrong_in_a_recipe_is_told_with_its_place_and_the_next_step(refused, old, new, sentence):
    assert old in GOOD
    said = refused(GOOD.replace(old, new))
    assert sentence in said
    assert "slipway.toml" in said


@pytest.mark.parametrize(("content", "sentence"), [
    (b"\xff\xfe\x00\x01", "is no UTF-8 text. If it is the right file, save it as UTF-8: Lumped reads TOML, a plain text format."),
    (b"", "should say kind = \"recipe\" at its top, but says nothing."),
    (b"[" * 2000, "slipway.toml"),
    (b"#" * 3_000_000, "larger than 2 MB"),
])  # fmt: skip
def test_what_is_no_recipe_at_all_is_named(refused, content, sentence):
    assert sentence in refused(content)


@pytest.mark.parametrize(("figures", "sentence"), [
    ("fat_g = 40\ncarbohydrate_g = 71\nprotein_g = 30\n", "what the label prints sums to 141.7 g in 100 g."),
    ("fat_g = -1\n", "fat_g is -1. It must be at least 0."),
    ("fat_g = 1\nsugars_g = 30\ncarbohydrate_g = 20\n", "sugar"),
])  # fmt: skip
def test_a_composition_that_does_not_sum_is_refused_with_what_to_look_at(refused, tmp_path, figures, sentence):
    label = tmp_path / "label.toml"
    label.write_text(LABEL + figures, "utf-8")
    assert sentence in refused(GOOD, "--label", str(label))


@pytest.mark.parametrize(("table", "sentence"), [
    ("title,like,fat_g\n=cmd|' /C calc'!A0,plain-flour,1\n", "Begin with a letter or a digit"),
    ("title;like;fat_g\nflour;plain-flour;1;2;3\n", "label.csv"),
    ('title,like\n"flour', "label.csv"),
])  # fmt: skip
def test_a_hostile_table_of_labels_is_refused(refused, tmp_path, table, sentence):
    label = tmp_path / "label.csv"
    label.write_text(table, "utf-8")
    assert sentence in refused(GOOD, "--label", str(label))
    assert label.read_text("utf-8") == table


def words_of(text, tmp_path, capsys):
    path = tmp_path / "slipway.toml"
    path.write_text(text, "utf-8")
    assert main(["dough", str(path)]) == 0
    return " ".join(capsys.readouterr().out.split())


def test_a_recipe_without_water_is_computed_and_told_to_add_some(tmp_path, capsys):
    said = words_of(GOOD.replace(WATER, ""), tmp_path, capsys)
    assert "Blocks current" in said
    assert "All its water is held by flour and starch, none is free to carry salt: add water." in said


@pytest.mark.parametrize("text", [
    GOOD.replace("= 125", "= 1e-9"), GOOD[: GOOD.index("[[")] + '[[ingredients]]\ningredient = "table-salt"\namount_g = 9',
])  # fmt: skip
def test_a_recipe_without_flour_is_computed_and_said_to_be_no_dough(text, tmp_path, capsys):
    assert "This is no dough: 0 % of it is flour or starch" in words_of(text, tmp_path, capsys)


def test_the_largest_amount_that_is_read_is_worked_out(tmp_path, capsys):
    said = words_of(GOOD.replace("= 125", "= 100000"), tmp_path, capsys)
    assert "nan" not in said
    assert "inf " not in said
