"""What the page on the one-minute test tells is what the engine computes: each figure is read out of the page."""

from functools import cache
from pathlib import Path

import pytest
from tests.told import hold, not_held, page

from lumped.app.trial import trial
from lumped.reference import handbook
from lumped.sculpt.mould import mould
from lumped.verdict.trial import as_hundred

TRIAL = "docs/trial.md"
RECIPES = Path(__file__).parents[2] / "demo" / "recipes"
LIGHTS = ("bright", "faint", "dark")


@cache
def seen(kind, key):
    return trial(RECIPES / f"ropewalk-{kind}.toml", mould=key).seen


def of_mould(key):
    """A row of the page: both borders, and of a hundred batches how many shine, glow and stay dark."""
    found = [each[light] for kind in ("salt", "sugar") for part in ("good", "bad")
             for each in (as_hundred(getattr(seen(kind, key), part)),) for light in LIGHTS]  # fmt: skip
    return [seen("salt", key).bright_below.mean, seen("salt", key).dark_above.mean, *found]


def factor(key):
    found = mould(key, "screw-stainless-3mm").factor
    return [found.mean, found.low, found.high]


def milliamperes(step):
    found = handbook().value("lamps", "lamp-red", f"{step}_current")
    return [1e3 * each for each in (found.mean, found.low, found.high)]


_ROW = "{} Ω·m | {} Ω·m | {} / {} / {} | {} / {} / {} | {} / {} / {} | {} / {} / {} |"
SEEN = {
    f"| straw | {_ROW}": lambda: of_mould("straw"),
    f"| barrel | {_ROW}": lambda: of_mould("barrel"),
    f"| ice-cube | {_ROW}": lambda: of_mould("ice-cube"),
    "6 cm long, screws 2 cm deep | {} ({} to {}) |\n| `barrel`": lambda: factor("straw"),
    "6 cm long, screws 2 cm deep | {} ({} to {}) |\n| `ice-cube`": lambda: factor("barrel"),
    "20 mm apart | {} ({} to {}) |": lambda: factor("ice-cube"),
    "the resistor of {} Ω that this lamp needs": lambda: [seen("salt", "barrel").line.ohms],
    "bright ({} mA, {} to {})": lambda: milliamperes("bright"),
    "dark ({} mA, {} to {})": lambda: milliamperes("barely_lit"),
}
PLAIN = (
    "20 mL syringe, 19.5 mm bore", "6 mm bore", "35 × 28 × 25 mm, screws 15 mm deep", "screws of 3 mm",
    "at least 90 of 100 good batches pass and at most 10 of 100",
)  # fmt: skip


@pytest.mark.parametrize("words", SEEN)
def test_the_page_tells_what_is_seen(words):
    hold(page(TRIAL), words, SEEN[words]())


def test_no_number_stands_on_the_page_on_trust():
    left = not_held(page(TRIAL), SEEN, PLAIN)
    assert [line for line in left if "bore" not in line] == []  # sizes of moulds stand beside what holds their factor


def test_the_barrel_tells_both_doughs_and_no_other_mould_does():
    told = {key: [seen(kind, key).tells for kind in ("salt", "sugar")] for key in ("straw", "barrel", "ice-cube")}
    assert told["barrel"] == [True, True]
    assert not any(map(all, (told["straw"], told["ice-cube"])))
