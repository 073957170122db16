"""What a dough's resistivity answers, and what is said of mixes that are no dough."""

import pytest
from tests.bowls import kneaded

from lumped.dough.material import answer_of
from lumped.quantities import Provenance, Status, Value


def value(low, mean, high):
    return Value(mean=mean, low=low, high=high, unit="Ω·m", provenance=Provenance(status=Status.FROM_MEMORY))


@pytest.mark.parametrize(("low", "mean", "high", "answer"), [
    (0.12, 0.24, 0.40, "carries"), (300.0, 1200.0, 4000.0, "blocks"), (8.0, 12.0, 20.0, "blocks"),
    (2.0, 4.0, 8.0, "open"), (5.2, 9500.0, 3.4e9, "open"), (310.0, 3490.0, 2.65e6, "blocks"), (8.4e5, 9.9e7, 1e10, "blocks"),
])  # fmt: skip
def test_a_dough_carries_or_blocks_only_if_its_interval_says_so(low, mean, high, answer):
    assert answer_of(value(low, mean, high)) == answer


def test_what_pours_or_crumbles_is_called_no_dough():
    assert "This is no dough: 500 g of water" in kneaded({"plain-flour": 100, "tap-water": 500}).feel.words
    assert "and it stays crumbs" in kneaded({"plain-flour": 100, "vegetable-oil": 40}).feel.words


def test_outside_the_trades_window_nothing_is_expected_to_be_right():
    stiff, soft = (kneaded({"plain-flour": 100, "tap-water": water}).feel.score for water in (90, 260))
    assert stiff.high < 3 < soft.low


def test_much_salt_in_an_insulating_dough_is_no_pinch():
    wall = kneaded({"plain-flour": 100, "table-salt": 30, "vegetable-oil": 30}, "insulating")
    assert any("This is no dough for walls" in note for note in wall.notes)
    pinch = kneaded({"plain-flour": 100, "tap-water": 45, "table-salt": 0.5}, "insulating", "not cooked")
    assert any("a pinch more" in note for note in pinch.notes)
