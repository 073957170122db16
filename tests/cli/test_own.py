"""Own ingredients and batches at the command line: kept in the notebook, found by title, named by --label."""

import json

import pytest
from tests.app.older import older_notebook

from lumped.cli.main import main

TABLE = "title,like,salt_g,allergens\nour salt,table-salt,99.8,none\nmy salt,table-salt,99.5,none\n"
RECIPE = """\
kind = "recipe"
schema = 1
title = "Slipway dough"
dough = "conducting"
ingredients = [
    {ingredient = "plain flour", amount_g = 125},
    {ingredient = "water", amount_g = 237},
    {ingredient = "Our Salt", amount_g = 73},
]
"""
BATCH = """\
kind = "batch"
schema = 1
title = "Friday"
recipe = "slipway.toml"
made_on = 2026-05-08
weighed_after_g = 400
invented = true
measured = {resistivity_ohm_m = 0.2, measured_by = "four-needles-ac"}
"""
FLOUR = """\
kind = "ingredient"
schema = 1
title = "mill flour"
like = "plain-flour"
fat_g = 1.1
carbohydrate_g = 71.3
protein_g = 10.2
salt_g = 0.02
allergens = ["wheat"]
may_contain = ["milk", "peanuts", "wheat"]
"""
ROLL = """\
kind = "sculpture"
schema = 1
title = "Slipway roll"
invented = true
[doughs.salt]
recipe = "slipway.toml"
[[lumps]]
name = "roll"
dough = "salt"
shape = "roll"
length_mm = 60
diameter_mm = 16
[[parts]]
name = "pack"
part = "pack-4aa-alkaline"
legs.red = "left end of roll, 15 mm deep"
legs.black = "right end of roll, 15 mm deep"
"""


@pytest.fixture
def lumped(tmp_path, monkeypatch, capsys):
    """Run a command in a folder with the three files and an empty notebook; give what it printed."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("LUMPED_NOTEBOOK", str(tmp_path / "notebook.sqlite"))
    for name, text in (("salts.csv", TABLE), ("slipway.toml", RECIPE), ("friday.toml", BATCH)):
        (tmp_path / name).write_text(text, "utf-8")

    def run(*words: str, ends: int = 0) -> str:
        assert main([*words]) == ends
        said = capsys.readouterr()
        return " ".join((said.err if ends else said.out).split())

    return run


def _saved(lumped):
    for name in ("salts.csv", "slipway.toml", "friday.toml"):
        lumped("notebook", "save", name)


def test_a_table_is_saved_as_ingredients(lumped):
    assert "2 ingredients are saved" in lumped("notebook", "save", "salts.csv")
    again = json.loads(lumped("notebook", "save", "salts.csv", "--json"))
    assert [(each["title"], each["number"]) for each in again["revisions"]] == [("our salt", 1), ("my salt", 1)]


def test_several_files_are_saved_what_others_name_first(lumped):
    told = lumped("notebook", "save", "friday.toml", "slipway.toml", "salts.csv")
    assert told.index("2 ingredients are saved") < told.index("Saved: “Slipway dough”") < told.index("Saved: “Friday”")
    again = json.loads(lumped("notebook", "save", "slipway.toml", "salts.csv", "--json"))["revisions"]
    assert [each["title"] for each in again] == ["our salt", "my salt", "Slipway dough"]
    assert "are for one document, and here are 2 files" in lumped(
        "notebook", "save", "--new", "slipway.toml", "friday.toml", ends=1
    )


def test_one_of_several_files_that_can_not_be_read_begins_no_notebook(lumped, tmp_path):
    (tmp_path / "odd.toml").write_text('kind = "parcel"', "utf-8")
    assert "should say at its top what it is" in lumped("notebook", "save", "slipway.toml", "odd.toml", ends=1)
    assert not (tmp_path / "notebook.sqlite").exists()


def test_a_table_has_many_titles_and_goes_on_with_no_one_document(lumped, tmp_path):
    assert "each has a title of its own" in lumped("notebook", "save", "salts.csv", "--new", ends=1)
    assert "no file “nope.csv”" in lumped("notebook", "save", "nope.csv", ends=1)
    assert not (tmp_path / "notebook.sqlite").exists()


def test_a_broken_line_saves_nothing_and_begins_no_notebook(lumped, tmp_path):
    (tmp_path / "salts.csv").write_text(TABLE.replace("99.5", "-1"), "utf-8")
    assert "line 3" in lumped("notebook", "save", "salts.csv", ends=1)
    assert not (tmp_path / "notebook.sqlite").exists()


def test_a_recipe_by_its_title_learns_from_its_batches(lumped):
    _saved(lumped)
    assert "narrowed by one batch that was measured: Friday" in lumped("dough", "slipway dough")
    kept = json.loads(lumped("dough", "slipway dough", "--json"))["resistivity"]
    alone = json.loads(lumped("dough", "slipway.toml", "--label", "salts.csv", "--json"))["resistivity"]
    width = lambda each: each["high"] / each["low"]  # noqa: E731
    assert width(kept) < width(alone)
    named = json.loads(lumped("dough", "slipway.toml", "--batch", "Friday", "--json"))["resistivity"]
    assert named == kept


LASTING = [
    ("dry", "--hours", "8"), ("cool",), ("cool", "--within", "2 h"), ("keep", "--fridge"), ("trial",), ("wall",),
    ("refresh", "--weighed", "512 g", "--now", "487 g"),
]  # fmt: skip


@pytest.mark.parametrize("words", LASTING, ids=" ".join)
def test_every_verb_of_a_dough_learns_from_the_batches_of_a_title_as_from_their_files(lumped, tmp_path, words):
    (tmp_path / "slipway.toml").write_text(RECIPE + 'method = {cooked = "pot"}\n', "utf-8")
    _saved(lumped)
    verb, *more = words
    assert "What its batches taught • Its resistivity is narrowed by one batch that was measured: Friday." in lumped(
        verb, "slipway dough", *more
    )
    kept = json.loads(lumped(verb, "slipway dough", *more, "--json"))
    alone = json.loads(lumped(verb, "slipway.toml", "--label", "salts.csv", *more, "--json"))
    files = lumped(verb, "slipway.toml", "--label", "salts.csv", "--batch", "friday.toml", *more, "--json")
    assert kept == json.loads(files)
    assert "taught" not in alone
    changed = alone != {key: each for key, each in kept.items() if key != "taught"}
    assert changed == (verb != "cool")  # how it cools hangs neither on obstruction nor on bound water


def test_a_measured_batch_narrows_the_resistivity_of_its_hours(lumped):
    _saved(lumped)
    kept, alone = (
        [each["resistivity"] for each in json.loads(lumped("dry", *words, "--hours", "8", "--json"))["moments"]]
        for words in (("slipway dough",), ("slipway.toml", "--label", "salts.csv"))
    )
    width = lambda each: each["high"] / each["low"]  # noqa: E731
    assert all(width(one) < 0.85 * width(other) for one, other in zip(kept[:4], alone, strict=False))
    assert kept[0]["low"] < 0.2 < kept[0]["high"]


def test_another_notebook_is_asked_if_it_is_named(lumped, tmp_path):
    shown = lumped("keep", "slipway dough", "--notebook", str(tmp_path / "other"), ends=1)
    assert "“slipway dough”" in shown
    assert str(tmp_path / "other") in shown


def test_an_ingredient_that_can_not_be_read_is_named_below_what_does_not_name_it(lumped, tmp_path):
    _saved(lumped)
    with older_notebook(tmp_path / "notebook.sqlite") as older:
        older.save("ingredient", {"title": "Old sand", "like": "plain-flour"})
    heading = (
        "Ingredients of the notebook that can’t be read and are left out • Old sand: The label of “Old sand” gives"
    )
    for words in (("dough", "slipway dough"), ("cool", "slipway dough"), ("beside", "slipway dough", "slipway dough")):
        assert heading in lumped(*words)
        assert "Old sand" in json.loads(lumped(*words, "--json"))["left_out"][0]
    assert "Old sand" not in lumped("dough", "slipway.toml", "--label", "salts.csv")


def test_sources_of_a_title_say_what_to_do(lumped):
    _saved(lumped)
    assert "listed for a recipe file" in lumped("dough", "slipway dough", "--sources", ends=1)
    assert "no “nowhere”" in lumped("dough", "nowhere", ends=1)


KEPT = [
    ("card", "--on", "2026-05-08"), ("make", "--mass", "1 kg"), ("salt",), ("what-if",), ("tags",),
    ("mix", "--of", "flour", "--of", "water", "--of", "our salt"), ("swap", "--without", "our salt", "--count", "1"),
]  # fmt: skip


@pytest.mark.parametrize("words", KEPT, ids=" ".join)
def test_every_verb_that_makes_or_changes_a_dough_takes_a_title_as_it_takes_files(lumped, words):
    _saved(lumped)
    verb, *more = words
    kept = json.loads(lumped(verb, "slipway dough", *more, "--json"))
    files = json.loads(lumped(verb, "slipway.toml", "--label", "salts.csv", "--batch", "friday.toml", *more, "--json"))
    if verb in ("card", "tags"):  # they name the batch, which was named only with the files
        kept, files = (
            {key: told[key] for key in told if key not in ("foot", "made_on", "code")} for told in (kept, files)
        )
    assert kept == files


@pytest.mark.parametrize("verb", ["salt", "mix", "card", "swap"])
def test_a_measured_batch_moves_what_a_kept_recipe_is_told_to_do(lumped, verb):
    _saved(lumped)
    more = {"mix": ("--of", "flour", "--of", "water", "--of", "our salt"), "swap": ("--without", "our salt")}
    kept, alone = (
        json.loads(lumped(verb, *words, *more.get(verb, ()), "--json"))
        for words in (("slipway dough",), ("slipway.toml", "--label", "salts.csv"))
    )
    taught = kept.pop("taught")
    assert "Friday" in taught[0]
    assert kept != alone


def test_doughs_of_a_table_are_titles_and_files(lumped):
    _saved(lumped)
    assert "Slipway dough" in lumped("care", "slipway dough", "--child", "coeliac")
    assert "lumped swap 'slipway dough' --diet no-gluten" in lumped("care", "slipway dough", "--child", "coeliac")
    assert "plain wheat flour" in lumped("shop", "slipway dough", "slipway.toml", "--region", "europe")


def test_a_hint_of_the_shopping_list_can_be_typed_as_it_stands(lumped, tmp_path):
    tartar = RECIPE.replace("Our Salt", "cream of tartar")
    (tmp_path / "slipway.toml").write_text(tartar, "utf-8")
    lumped("notebook", "save", "slipway.toml")
    hint = "lumped swap 'slipway dough' --without cream-of-tartar --region europe"
    assert hint in lumped("shop", "slipway dough", "--region", "europe")


def test_a_batch_in_the_place_of_a_recipe_names_its_recipe(lumped):
    _saved(lumped)
    for words in (("dough", "Friday"), ("beside", "Friday", "slipway dough"), ("care", "Friday"), ("card", "Friday")):
        assert "“Friday” in the notebook is a batch, and here a recipe is meant" in lumped(*words, ends=1)
    assert "is no recipe, but of the kind “ingredient”" in lumped("dough", "our salt", ends=1)


def test_the_card_and_the_labels_name_the_batch_that_was_said(lumped):
    _saved(lumped)
    assert "Batch: Friday" in lumped("card", "slipway dough", "--batch", "Friday")
    assert "Batch: Friday" not in lumped("card", "slipway dough")
    assert json.loads(lumped("tags", "slipway dough", "--batch", "Friday", "--json"))["made_on"] == "8 May 2026"


def test_traces_that_a_label_names_are_told_apart_from_what_is_contained(lumped, tmp_path):
    (tmp_path / "flour.toml").write_text(FLOUR, "utf-8")
    (tmp_path / "own.toml").write_text(RECIPE.replace("plain flour", "mill flour").replace("Our Salt", "salt"), "utf-8")
    told = lumped("dough", "own.toml", "--label", "flour.toml")
    assert "May contain, by the label of the packet: mill flour (milk, peanuts)." in told
    assert "contains cereals containing gluten, wheat. Ask" in told
    assert "by the label" not in lumped("dough", "slipway.toml", "--label", "salts.csv")


def test_a_figure_typed_off_a_packet_is_called_so(lumped, tmp_path):
    (tmp_path / "flour.toml").write_text(FLOUR, "utf-8")
    (tmp_path / "own.toml").write_text(RECIPE.replace("plain flour", "mill flour").replace("Our Salt", "salt"), "utf-8")
    found = json.loads(lumped("dough", "own.toml", "--label", "flour.toml", "--sources", "--json"))["by_status"]
    assert any("mill flour" in each["what"] for each in found["from a label"])
    assert not any("mill flour" in each["what"] for each in found["published"])
    assert "From the label of a packet" in lumped("dough", "own.toml", "--label", "flour.toml", "--sources")
    assert "from a label" in lumped("pantry", "mill flour", "--label", "flour.toml")


@pytest.mark.parametrize("words", [("dough",), ("shop", "--region", "europe"), ("measure", "--in", "us")], ids=" ".join)
def test_an_ingredient_that_the_notebook_has_from_a_packet_is_told_with_what_to_type(lumped, tmp_path, capsys, words):
    verb, *more = words
    typed = (verb, "slipway.toml", *more)
    assert "If it is a packet of your own, write down its label as an ingredient file and add --label" in lumped(
        *typed, ends=1
    )
    lumped("notebook", "save", "salts.csv")
    told = lumped(*typed, ends=1)
    assert "The notebook has a packet “our salt”" in told
    assert "lumped notebook show 'our salt' > packet.toml, then add --label packet.toml" in told
    assert main(["notebook", "show", "our salt"]) == 0
    (tmp_path / "packet.toml").write_text(capsys.readouterr().out, "utf-8")
    assert lumped(*typed, "--label", "packet.toml")
    assert "The notebook has" in json.loads(lumped(*typed, "--json", ends=1))["error"]["hint"]


@pytest.mark.parametrize("verb", ["what-if", "salt", "wall"])
def test_a_label_is_taken_by_every_verb_of_a_dough(lumped, verb):
    assert "no ingredient “Our Salt”" in lumped(verb, "slipway.toml", ends=1)
    assert lumped(verb, "slipway.toml", "--label", "salts.csv")


def test_recipes_side_by_side_take_labels_and_the_notebooks_own_ingredients(lumped, tmp_path):
    plain = RECIPE.replace("Our Salt", "table salt").replace("Slipway", "Plain")
    (tmp_path / "plain.toml").write_text(plain, "utf-8")
    shown = lumped("beside", "plain.toml", "slipway.toml", "--label", "salts.csv")
    assert "our salt" in shown
    _saved(lumped)
    assert "our salt" in lumped("beside", "slipway dough", "plain.toml")


def test_the_ports_of_a_sculpture_take_labels(lumped, tmp_path):
    (tmp_path / "roll.toml").write_text(ROLL, "utf-8")
    assert "no ingredient “Our Salt”" in lumped("ports", "roll.toml", ends=1)
    matrix = json.loads(lumped("ports", "roll.toml", "--label", "salts.csv", "--effort", "quick", "--json"))["matrix_S"]
    assert matrix[0][0] > 0
