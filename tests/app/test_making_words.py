"""What a making is told in: the same words for a terminal and a page."""

import re
from pathlib import Path

import pytest

from lumped.app.making import make, shopping
from lumped.app.making_words import batch_rows, blocks_words, cost_words, in_time_words, making_title, pot_words
from lumped.app.shopping_words import places, shop_headings, shop_rows, sum_words, tap_words

RECIPES = Path(__file__).parents[2] / "demo" / "recipes"
SALT, SUGAR = RECIPES / "ropewalk-salt.toml", RECIPES / "ropewalk-sugar.toml"
CLASS = ["28 of 9 in pairs"]


def test_what_blocks_is_hands_where_hands_alone_take_longer_than_there_is():
    made = make(SALT, people=CLASS, pot="3 L", within="40 min")
    assert made.active.mean > 2400
    assert "Hands and stove block" in blocks_words(made)


def test_what_blocks_is_cooling_where_hands_would_be_done_in_time():
    made = make(SALT, within="20 min")
    assert made.active.mean < 1200
    words = blocks_words(made)
    assert "Cooling blocks" in words
    assert "in a tight flat bag in cold water" in words


def test_nothing_blocks_where_all_is_ready_or_no_time_was_given():
    assert blocks_words(make(SALT, within="20 h")) == ""
    assert blocks_words(make(SUGAR, within="2 h")) == ""
    assert blocks_words(make(SALT)) == ""
    assert list(in_time_words(make(SALT))) == []


def test_the_way_that_is_advised_says_how_much_worse_its_dough_carries():
    """Nobody chooses the quick way without knowing."""
    best, other = list(in_time_words(make(SALT, within="25 min")))[:2]
    assert re.search(r"kneaded cold gives all of it, but that dough conducts 1\.\d+ times worse than the recipe", best)
    assert other.startswith("As good as the recipe as it stands: boiling water from the kettle")


def test_of_ways_that_are_ready_in_time_the_better_dough_is_advised_and_the_sooner_one_told():
    best, sooner = list(in_time_words(make(SALT, within="40 min")))[:2]
    assert best.startswith("In 40 min: boiling water from the kettle")
    assert re.match(r"Sooner, after \d+ min .*: kneaded cold, but that dough conducts 1\.\d+ times worse", sooner)


def test_one_batch_needs_no_column_for_all_of_them():
    one, many = make(SALT), make(SALT, mass="6 kg", pot="3 L")
    assert (one.batches.count, len(batch_rows(one)[0])) == (1, 3)
    assert many.batches.count > 1
    headings, rows = batch_rows(many)
    assert {len(each) for each in (headings, *rows)} == {4}


def test_a_title_says_for_how_many_and_cost_says_who_pays_what():
    made = make(SALT, people=CLASS, region="europe")
    assert making_title(made).startswith("Ropewalk salt dough for 28 people")
    (cost,) = cost_words(made)
    assert "a person" in cost
    assert made.cost.person.mean == pytest.approx(made.cost.whole.mean / 28)


def test_a_list_names_each_thing_once_and_leaves_the_tap_out_of_the_shops():
    found = shopping([SALT], "europe", people=CLASS)
    rows = [row for _, lines in places(found) for row in shop_rows(lines)]
    assert len({row[0] for row in rows}) == len(rows) == len(found.lines) - 1
    assert {len(row) for row in rows} == {len(shop_headings(found))}
    assert "tap water" in tap_words(found)


def test_batches_of_more_than_a_kilogram_are_told_in_kilograms():
    assert re.search(r"batches of about 1\.\d+ kg of dough each", next(pot_words(make(SALT, mass="6 kg", pot="3 L"))))
    assert re.search(r"about \d{3} g of dough", next(pot_words(make(SALT, mass="0.4 kg"))))


def test_money_is_told_in_coins():
    words = [*cost_words(make(SALT, mass="0.4 kg", region="europe")), sum_words(shopping([SALT], "europe"))]
    assert all(re.search(r"\b\d+\.\d\d EUR\b", each) for each in words)
    assert not any(re.search(r"\d\.\d(\d\d+)?\b(?=[^.]* EUR| to |\))", each) for each in words)
    assert not re.search(r"\d\.\d+ JPY", next(cost_words(make(SALT, region="japan"))))
