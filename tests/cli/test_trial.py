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
