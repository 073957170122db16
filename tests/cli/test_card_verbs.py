"""`lumped card` and `lumped tags`, as somebody types them."""

import json
from pathlib import Path

import pytest

from lumped.cli import main

SALT = str(Path(__file__).parents[2] / "demo" / "recipes" / "ropewalk-salt.toml")
BATCH = """
kind = "batch"
schema = 1
title = "Friday (invented)"
recipe = "ropewalk-salt.toml"
made_on = 2026-05-08
invented = true
[measured]
resistivity_ohm_m = 0.20
measured_by = "four-needles-ac"
"""


@pytest.fixture
def batch(tmp_path):
    (tmp_path / "ropewalk-salt.toml").write_text(Path(SALT).read_text("utf-8"), "utf-8")
    path = tmp_path / "friday.toml"
    path.write_text(BATCH, "utf-8")
    return str(path)


def test_a_card_for_a_class_has_the_amounts_of_one_of_its_batches(capsys):
    def told(*more):
        assert main(["card", SALT, "--json", "--measures", "scale", "--on", "2026-05-08", *more]) == 0
        return json.loads(capsys.readouterr().out)

    def weighed(card):
        return float(next(row[1] for row in card["rows"] if row[0] == "table salt").split()[0])

    plain, many, french = told(), told("--people", "28 of 9 in pairs"), told("--people", "1 of 9", "--language", "fr")
    assert many["for_people"].startswith("For 28 people: make it 2 times, about 1000 g of dough each time.")
    assert weighed(many) / weighed(plain) == pytest.approx(1000 / 444, rel=0.05)  # its batch of 444 g; grams are whole
    assert many["code_words"].endswith("Its amounts are those of the recipe as it was written.")
    assert (plain["for_people"], french["for_people"][:17]) == ("", "Pour une personne")
    assert main(["card", SALT, "--people", "many"]) == 1
    assert "does not say who comes" in " ".join(capsys.readouterr().err.split())


def test_a_card_is_printed_drawn_and_told(capsys, tmp_path):
    pdf, png = tmp_path / "card.pdf", tmp_path / "card.png"
    assert main(["card", SALT, "--pdf", str(pdf), "--picture", str(png), "--on", "2026-05-08"]) == 0
    out = " ".join(capsys.readouterr().out.split())
    assert "Carries current" in out
    assert "Local rules and qualified people come first" in out
    assert "What to do 1. Mix" in out
    assert pdf.read_bytes()[:5] == b"%PDF-"
    assert png.read_bytes()[1:4] == b"PNG"


def test_a_card_as_json_has_its_mark_its_code_and_its_language(capsys):
    assert main(["card", SALT, "--language", "ja", "--measures", "japan", "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert (found["mark"], found["language"]) == ("carries", "ja")
    assert 'title="Ropewalk salt dough"' in found["code"]


@pytest.mark.parametrize("width", [40, 80])
def test_a_card_without_blanks_between_its_words_is_folded_and_not_cut(capsys, monkeypatch, width):
    assert main(["card", SALT, "--language", "ja", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    monkeypatch.setenv("COLUMNS", str(width))
    assert main(["card", SALT, "--language", "ja"]) == 0
    out = capsys.readouterr().out
    assert "…" not in out
    whole = "".join(out.split())
    assert all("".join(each.split()) in whole for each in (*told["steps"], *told["careful"]))
    assert not [line for line in out.splitlines() if line.strip().startswith(("。", "、", "）"))]


def test_a_card_names_the_batch_that_it_learnt_from(capsys, batch):
    assert main(["card", SALT, "--batch", batch]) == 0
    out = " ".join(capsys.readouterr().out.split())
    assert "and from 1 measured batch" in out
    assert "Batch: Friday (invented), 8 May 2026" in out


def test_labels_take_the_day_of_the_batch(capsys, batch, tmp_path):
    pdf = tmp_path / "tags.pdf"
    assert main(["tags", SALT, "--batch", batch, "--pdf", str(pdf), "--count", "3", "--tare", "6 g", "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert found["made_on"] == "8 May 2026"
    assert (found["bags"], found["trays"], found["tare"]) == (3, 1, "6 g")
    assert pdf.read_bytes()[:5] == b"%PDF-"


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (["card", SALT, "--measures", "martian"], "no martian measures"),
        (["card", SALT, "--picture", "card.gif"], ".png"),
        (["card", "nowhere.toml"], "nowhere.toml"),
        (["tags", SALT, "--count", "-1"], "can't be printed"),
        (["tags", SALT, "--tare", "6 cm"], "but a mass is wanted"),
    ],
)
def test_what_cannot_be_is_refused_in_words(capsys, monkeypatch, tmp_path, words, says):
    monkeypatch.chdir(tmp_path)
    assert main(words) == 1
    assert says in " ".join(capsys.readouterr().err.split())


@pytest.mark.parametrize(("language", "said"), [
    ("en", "anything from crumbly to sticky"), ("fr", "de friable à collante"), ("es", "de quebradiza a pegajosa"),
    ("ja", "ぼろぼろからべたつくまで"),
])  # fmt: skip
def test_a_feel_that_the_recipe_leaves_open_is_said_to_be_open(capsys, language, said):
    assert main(["card", SALT, "--language", language, "--json"]) == 0
    assert any(said in each for each in json.loads(capsys.readouterr().out)["does"])


@pytest.mark.parametrize("verb", ["card", "tags"])
@pytest.mark.parametrize(
    ("dough", "grams", "why"),
    [
        ("conducting", {"flour": 200, "salt": 50}, "This is no dough: 0 g of water"),
        ("conducting", {"water": 100}, "This is no dough: 0 % of it is flour"),
        ("conducting", {"flour": 100, "sugar": 200, "distilled water": 60}, "is to carry current, but blocks it"),
        ("insulating", {"flour": 125, "water": 237, "salt": 73}, "is to block current, but carries it"),
    ],
)
def test_what_is_no_dough_or_does_the_opposite_gets_no_mark(capsys, tmp_path, verb, dough, grams, why):
    entries = "".join(f'{{ingredient = "{key}", amount_g = {each}}},' for key, each in grams.items())
    head = f'kind = "recipe"\nschema = 1\ntitle = "Odd"\ndough = "{dough}"\n'
    (tmp_path / "odd.toml").write_text(f"{head}ingredients = [{entries}]\n", "utf-8")
    assert main([verb, str(tmp_path / "odd.toml")]) == 1
    assert why in " ".join(capsys.readouterr().err.split())


@pytest.mark.parametrize("verb", ["card", "tags", "care"])
@pytest.mark.parametrize("day", ["tomorrow", "31.12.2026", "2026-13-01", "20261231"])
def test_a_day_that_is_none_is_refused_in_words(capsys, verb, day):
    with pytest.raises(SystemExit) as stopped:
        main([verb, SALT, "--on", day])
    err = " ".join(capsys.readouterr().err.split())
    assert stopped.value.code == 2
    assert f"“{day}” is no day that Lumped can read. Write year, month and day, as in 2026-05-09" in err


def test_labels_of_a_potassium_dough_warn_of_its_dose_in_each_language(capsys, tmp_path):
    salts = {"flour": 125, "water": 200, "potassium chloride salt": 70}
    entries = "".join(f'{{ingredient = "{key}", amount_g = {each}}},' for key, each in salts.items())
    head = 'kind = "recipe"\nschema = 1\ntitle = "Odd"\ndough = "conducting"\nmethod = {cooked = "pot"}\n'
    (tmp_path / "odd.toml").write_text(f"{head}ingredients = [{entries}]\n", "utf-8")
    for language, word in (("en", "can stop a heart"), ("fr", "arrêter un cœur"), ("ja", "カリウム")):
        assert main(["tags", str(tmp_path / "odd.toml"), "--language", language, "--json"]) == 0
        assert word in json.loads(capsys.readouterr().out)["careful"]
    assert main(["tags", SALT, "--json"]) == 0
    assert json.loads(capsys.readouterr().out)["careful"] == ""
