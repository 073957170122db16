"""`lumped trial`: go or no go, as somebody types it."""

import json
from pathlib import Path

import pytest

from lumped.cli import main

SALT = str(Path(__file__).parents[2] / "demo" / "recipes" / "ropewalk-salt.toml")


def test_the_expected_light_stands_before_the_steps_and_cautions_come_last(capsys):
    assert main(["trial", SALT]) == 0
    out = " ".join(capsys.readouterr().out.split())
    assert (
        out.index("shine brightly") < out.index("Bright: below") < out.index("In one minute") < out.index("Be careful")
    )


def test_as_json_it_has_borders_shares_and_the_card(capsys):
    assert main(["trial", SALT, "--mould", "straw", "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert sum(found["good"].values()) == pytest.approx(1)
    assert found["bright_below"]["mean"] < found["dark_above"]["mean"]
    assert found["better"]["mould"] == "barrel"
    assert found["card_words"][-1].startswith("This trial is weak")  # through a straw it is
    assert not found["tells"]


@pytest.mark.parametrize(
    ("more", "says"),
    [(("--mould", "cup"), "It has: straw"), (("--lamp", "lamp-rad"), "Did you mean: lamp-red"),
     (("--screws", "leg-tinned-steel"), "is not round"), (("--pack", "pack-9"), "no “pack-9”")],
)  # fmt: skip
def test_what_is_not_there_is_refused_in_words(capsys, more, says):
    assert main(["trial", SALT, *more]) == 1
    assert says in " ".join(capsys.readouterr().err.split())


def test_what_to_fetch_is_the_first_block_with_sizes(capsys):
    assert main(["trial", SALT]) == 0
    out = " ".join(capsys.readouterr().out.split())
    assert out.index("You need") < out.index("shine brightly")
    for words in (
        "the barrel of a 20 mL syringe, inside 19.5 mm wide (18.5 to 21, from memory): measure yours",
        "two of the same, longer than 20 mm: stainless screw of 3 mm", "pack of four alkaline AA cells", "red lamp",
        "resistor of 220 Ω",
    ):  # fmt: skip
        assert words in out, words


def test_what_was_chosen_is_what_to_fetch(capsys):
    assert (
        main(["trial", SALT, "--mould", "ice-cube", "--lamp", "lamp-white", "--screws", "nail-iron-3mm", "--json"]) == 0
    )
    needs = json.loads(capsys.readouterr().out)["needs"]
    assert "one hollow of an ice-cube tray, inside 35 mm long (30 to 42, from memory), 28 mm wide" in needs[0]
    assert any("iron nail of 3 mm" in each for each in needs)
    assert "white lamp" in needs


def test_the_moulds_factor_tells_where_it_comes_from(capsys):
    assert main(["trial", SALT, "--json"]) == 0
    origin = json.loads(capsys.readouterr().out)["resistance_per_resistivity"]["provenance"]
    assert origin["status"] == "from memory"
    assert "field between two rods" in origin["note"]
