"""`lumped care`: who may touch a dough, and what to mind."""

import json
from pathlib import Path

from lumped.cli import main

SALT = str(Path(__file__).parents[2] / "demo" / "recipes" / "ropewalk-salt.toml")


def test_allergens_diets_and_doses_are_told_and_local_rules_come_last(capsys):
    assert main(["care", SALT, "--on", "2026-05-08"]) == 0
    out = " ".join(capsys.readouterr().out.split())
    assert "cereals containing gluten" in out
    assert "published lethal doses begin" in out
    assert out.index("not food") < out.index("Local rules and qualified people first")


def test_as_json_every_caution_has_its_status(capsys):
    assert main(["care", SALT, "--on", "2026-05-08", "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert found["diets"]["no gluten"]["fits"] is False
    assert found["diets"]["vegan"]["fits"] is True
    assert all(each["provenance"]["status"] for each in found["cautions"])
    assert found["cautions"][-1]["key"] == "rules"


def test_an_age_that_nobody_has_is_refused_in_words(capsys):
    assert main(["care", SALT, "--age", "99"]) == 1
    assert "99" in capsys.readouterr().err
