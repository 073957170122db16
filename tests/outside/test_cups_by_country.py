"""Cups and spoons that other tests leave out, against their definitions.

Sources: the gō as a tenth of a shō of 2401/1331 L (Japanese law of weights and measures of 1891; from memory);
180.4 mL and the Japanese cup of 200 mL, the Australian tablespoon of 20 mL with 12 of them in 240 mL, the metric cup of
250 mL (metricviews.uk and sizes.com, as read for this project); 21 CFR 101.9(b)(5)(viii); imperial pint of 568.26125 mL.
"""

import pytest

from lumped.app.weighing import kitchen_table, weighed_amount

HELD = {(row["kitchen"], row["measure"]): 1e6 * row["volume_m3"] for row in kitchen_table()}


@pytest.mark.parametrize(
    ("kitchen", "measure", "millilitres"),
    [
        ("metric", "tbsp", 15), ("metric", "tsp", 5), ("australian", "cup", 250), ("australian", "tbsp", 20),
        ("australian", "tsp", 5), ("japanese", "cup", 200), ("japanese", "tbsp", 15), ("japanese", "tsp", 5),
        ("imperial", "cup", 568.26125 / 2), ("us-label", "cup", 240), ("us", "cup", 236.5882365),
    ],
)  # fmt: skip
def test_what_a_measure_holds(kitchen, measure, millilitres):
    assert HELD[kitchen, measure] == pytest.approx(millilitres, rel=1e-9)


def test_a_go_is_a_tenth_of_a_sho():
    assert HELD["japanese", "go"] == pytest.approx(2401 / 1331 * 100, rel=1.5e-4)  # 180.39; the table prints 180.4


def test_twelve_australian_tablespoons_make_240_millilitres():
    assert 12 * HELD["australian", "tbsp"] == pytest.approx(240)


@pytest.mark.parametrize(("kitchen", "ratio"), [("metric", 250), ("japanese", 200), ("us-label", 240)])
def test_the_same_cup_of_water_weighs_as_its_volume(kitchen, ratio):
    here, us = (weighed_amount("1 cup", "tap-water", kitchen=each).mass.mean for each in (kitchen, "us"))
    assert here / us == pytest.approx(ratio / 236.5882365, rel=1e-9)
