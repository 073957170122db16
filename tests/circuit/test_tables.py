"""The tables of parts hang together."""

import pytest

from lumped.reference import handbook

BOOK = handbook()


@pytest.mark.parametrize("key", BOOK.keys("lamps"))
def test_a_lamp_gets_brighter_before_it_gets_too_hot(key):
    names = ("barely_lit_current", "dim_current", "bright_current", "max_current", "damage_current")
    figures = [BOOK.value("lamps", key, name).mean for name in names]
    assert figures == sorted(figures)


@pytest.mark.parametrize("table", ["lamps", "motors", "packs", "resistors", "switches"])
def test_every_part_with_legs_names_them_and_a_known_gauge(table):
    parts = [BOOK.entry(table, key).facts for key in BOOK.keys(table)]
    for facts in parts:
        if facts["kind"] in ("lamp", "motor", "pack", "resistor", "switch"):
            assert set(facts["legs"]) == {"plus", "minus"}
            assert facts["gauge"] in BOOK.keys("gauges")
