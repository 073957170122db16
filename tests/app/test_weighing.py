"""Weights and measures as pages and commands use them."""

import pytest

from lumped.app.weighing import find_kitchen, kitchen_table, weighed_amount
from lumped.errors import InputError


def test_the_beginning_of_a_name_will_do_if_it_is_the_only_one():
    assert [find_kitchen(word) for word in ("Japan", "us", "us-l", "imp", "grams")] == [
        "japanese", "us", "us-label", "imperial", "scale"
    ]  # fmt: skip


@pytest.mark.parametrize("word", ["mars", "", "u"])
def test_other_words_are_refused(word):
    with pytest.raises(InputError, match=r"There are no measures .* Choose one of: us, us-label"):
        find_kitchen(word)


def test_every_measure_of_every_country_has_a_status():
    assert all(row["status"] and row["volume_m3"] > 0 for row in kitchen_table())


def test_an_ingredient_of_unknown_weight_by_volume_is_weighed():
    found = weighed_amount("5 g", "alum")
    assert found.mass.mean == pytest.approx(0.005)
    assert "scale" in found.ways
