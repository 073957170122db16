"""`lumped swap`: what it prints, in words and in JSON, and how it fails."""

import json
from pathlib import Path

from lumped.cli import main

RECIPES = Path(__file__).parents[2] / "demo/recipes"
SALT = str(RECIPES / "ropewalk-salt.toml")


def _said(capsys):
    return " ".join(capsys.readouterr().out.split())


def test_swap_prints_amounts_figures_and_reasons(capsys):
    assert main(["swap", SALT, "--without", "cream of tartar", "--region", "europe", "--count", "2"]) == 0
    shown = _said(capsys)
    for words in ("(invented)", "no. 2", "× 0.", "Why no. 1 moves", "EUR/kg", "no model of texture"):
        assert words in shown


def test_swap_in_json_is_in_si_and_names_what_left(capsys):
    assert main(["swap", SALT, "--diet", "gluten-free", "--count", "1", "--measures", "metric", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["gone"] == ["plain-flour"]
    assert told["proposals"][0]["allergens"] == []
    assert told["proposals"][0]["measures"] == "metric"


def test_swap_says_what_stands_in_the_way(capsys):
    assert main(["swap", SALT, "--without", "salt"]) == 0
    shown = _said(capsys)
    assert "Nothing in the pantry does it." in shown
    assert "water activity" in shown


def test_swap_without_a_wish_changes_nothing(capsys):
    assert main(["swap", SALT]) == 0
    assert "nothing has to change" in _said(capsys)


def test_swap_of_an_unknown_word_fails_in_words(capsys):
    assert main(["swap", SALT, "--without", "cream of tarter"]) == 1
    assert "Did you mean: cream-of-tartar" in " ".join(capsys.readouterr().err.split())
