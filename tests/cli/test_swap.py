"""`lumped swap`: what it prints, in words and in JSON, and how it fails."""

import json
from pathlib import Path

import pytest

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


def test_what_holds_for_all_proposals_is_said_once(capsys):
    assert main(["swap", SALT, "--diet", "gluten-free", "--count", "2"]) == 0
    assert _said(capsys).count("it is short, and tears where wheat dough bends") == 1


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
    assert "If limits and doses are set aside" in shown
    assert "xanthan gum" not in shown  # which would be a gum dough with a little flour in it


def test_traces_of_what_was_refused_are_told_even_where_nothing_has_to_change(capsys):
    assert main(["swap", SALT, "--without", "soy"]) == 0
    shown = _said(capsys)
    assert "nothing has to change" in shown
    assert "May contain soybeans as traces: plain wheat flour, vegetable oil." in shown


def test_each_proposal_says_what_it_may_contain(capsys):
    assert main(["swap", SALT, "--without", "gluten", "--json"]) == 0
    proposals = json.loads(capsys.readouterr().out)["proposals"]
    assert [each["may_contain"] for each in proposals][:2] == [{}, {"gluten": ["maize-flour"]}]
    assert main(["swap", SALT, "--without", "gluten"]) == 0
    assert "May contain gluten as traces: maize flour." in _said(capsys)


def test_swap_without_a_wish_changes_nothing(capsys):
    assert main(["swap", SALT]) == 0
    assert "nothing has to change" in _said(capsys)


def test_now_and_proposals_are_told_in_the_same_measures(capsys):
    asked = ["swap", SALT, "--without", "cream-of-tartar", "--count", "1", "--json", "--measures"]
    for measures, flour in (("scale", "125 g"), ("us", "1 cup"), ("japanese", "1 cup + 2½ tbsp")):
        assert main([*asked, measures]) == 0
        told = json.loads(capsys.readouterr().out)
        after = next(each["written"] for each in told["proposals"][0]["changes"] if each["ingredient"] == "plain-flour")
        assert told["now"]["plain-flour"] == after == f"{flour}, and 0 to 40 g until it feels right"


def test_who_weighs_is_answered_in_grams(capsys):
    assert main(["swap", str(RECIPES / "ropewalk-sugar.toml"), "--without", "gluten", "--count", "1", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    new = [each["written"] for each in told["proposals"][0]["changes"] if not each["before_kg"]]
    assert new
    assert all(" g" in each for each in new)
    assert told["now"]["vegetable-oil"] == "3 tbsp"


def test_what_is_new_is_named_by_weight(tmp_path, capsys):
    new = tmp_path / "new.toml"
    assert main(["swap", SALT, "--without", "soy", "--without", "plain flour", "--take", "1", str(new)]) == 0
    assert (
        "as “Ropewalk salt dough, with white rice flour and olive oil instead of plain wheat flour and vegetable oil”"
        in (_said(capsys))
    )


def test_the_feel_of_the_recipe_stands_beside_that_of_the_proposals(capsys):
    assert main(["swap", SALT, "--without", "cream-of-tartar", "--count", "1"]) == 0
    line = next(each for each in capsys.readouterr().out.splitlines() if each.strip().startswith("feel, 1"))
    assert line.count(" (1.") == 2


@pytest.mark.parametrize("measures", ["us", "australian", "scale"])
def test_the_cheapest_is_shown_first(measures, capsys):
    asked = ["swap", SALT, "--target", "cheapest", "--region", "europe", "--measures", measures, "--count", "6"]
    assert main([*asked, "--json"]) == 0
    told = json.loads(capsys.readouterr().out)["proposals"]
    costs = [each["properties"]["cost"]["mean"] for each in told]
    assert len(costs) > 2
    assert costs == sorted(costs)
    assert main(asked) == 0
    assert "the best at what you aim at comes first" in _said(capsys)


def test_a_proposal_is_taken_as_a_recipe_of_its_own(tmp_path, capsys):
    new = tmp_path / "no-gluten.toml"
    assert main(["swap", SALT, "--diet", "gluten-free", "--count", "1", "--take", "1", str(new)]) == 0
    shown = _said(capsys)
    assert "as “Ropewalk salt dough, with" in shown
    assert "instead of plain wheat flour”" in shown
    assert "write them when you have made it once" in shown
    assert main(["dough", str(new), "--json"]) == 0
    assert "plain-flour" not in capsys.readouterr().out
    before = new.read_bytes()
    assert main(["swap", SALT, "--diet", "gluten-free", "--count", "1", "--take", "1", str(new)]) == 1
    assert "is there already and is not written over" in capsys.readouterr().err
    assert new.read_bytes() == before


@pytest.mark.parametrize(
    ("words", "sentence"),
    [
        (["2", "new.toml"], "There is no proposal no. 2: only one was found."),
        (["one", "new.toml"], "--take needs a number and a file, such as --take 1 new-recipe.toml"),
        (["1", "new.txt"], "the name of such a file ends in .toml"),
    ],
)
def test_a_proposal_that_cannot_be_taken_is_said(words, sentence, tmp_path, monkeypatch, capsys):
    monkeypatch.chdir(tmp_path)
    assert main(["swap", SALT, "--diet", "gluten-free", "--count", "1", "--take", *words]) == 1
    assert sentence in " ".join(capsys.readouterr().err.split())
    assert not list(tmp_path.iterdir())


def test_swap_of_an_unknown_word_fails_in_words(capsys):
    assert main(["swap", SALT, "--without", "cream of tarter"]) == 1
    assert "Did you mean: cream-of-tartar" in " ".join(capsys.readouterr().err.split())
