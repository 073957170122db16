"""What a command says of a dough's liquid, as somebody types it: where it is extrapolated, and how long grains take."""

import json

import pytest

from lumped.cli import main

RECIPE = """
kind = "recipe"
schema = 1
title = "Trial (invented)"
dough = "conducting"
temperature_degC = {celsius}
[method]
cooked = "not cooked"
[[ingredients]]
ingredient = "plain-flour"
amount_g = 200
[[ingredients]]
ingredient = "distilled-water"
amount_g = 150
[[ingredients]]
ingredient = "{salt}"
amount_g = {grams}
"""


@pytest.fixture
def asked(tmp_path, capsys):
    """Ask `lumped dough` of a recipe, in words and as JSON."""

    def ask(celsius=20.0, salt="table-salt", grams=10):
        path = tmp_path / "trial.toml"
        path.write_text(RECIPE.format(celsius=celsius, salt=salt, grams=grams), encoding="utf-8")
        assert main(["dough", str(path)]) == 0
        said = " ".join(capsys.readouterr().out.split())
        assert main(["dough", str(path), "--json"]) == 0
        return said, json.loads(capsys.readouterr().out)

    return ask


@pytest.mark.parametrize(("beyond", "sentence"), [
    ({"celsius": 4}, "At 4 °C the conductivity is extrapolated: the tables begin at 10 °C. The interval is wider."),
    ({"celsius": 60}, "above 35 °C the figure is extrapolated"),
    ({"salt": "potassium-chloride-salt", "grams": 30}, "Potassium chloride this strong is extrapolated"),
])  # fmt: skip
def test_beyond_the_tables_a_dough_says_extrapolated_and_inside_it_does_not(asked, beyond, sentence):
    said, found = asked(**beyond)
    assert sentence in said
    assert any("extrapolated" in note for note in found["notes"])
    inside, plain = asked(salt=beyond.get("salt", "table-salt"), grams=4)
    assert "extrapolated" not in inside
    assert not any("extrapolated" in note for note in plain["notes"])


def test_coarse_salt_in_a_cold_dough_is_told_how_long_it_takes(asked):
    said, found = asked(salt="coarse-salt")
    assert "grains of coarse salt (about 2 mm) take" in said
    assert any("with a spoon" in note for note in found["notes"])
