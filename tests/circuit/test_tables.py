"""A checksum for each table of parts: an edit of a figure is a decision, and shows here."""

import pytest

from lumped.reference import handbook

BOOK = handbook()
ENTRIES_ROWS_SUM = {
    # table: (entries, rows, sum of all printed figures)
    "gauges": (10, 18, 63.0),
    "lamps": (5, 50, 1123.95),
    "metals": (7, 87, 2365.589712176),
    "motors": (2, 10, 26.67400005),
    "packs": (9, 24, 4123.39),
    "resistors": (3, 3, 790.0),
    "switches": (2, 3, 1000.1),
}


@pytest.mark.parametrize("table", ENTRIES_ROWS_SUM)
def test_a_table_of_parts_has_its_entries_rows_and_sum(table):
    rows = [row for key in BOOK.keys(table) for row in BOOK.entry(table, key).rows.values()]
    assert (len(BOOK.keys(table)), len(rows)) == ENTRIES_ROWS_SUM[table][:2]
    assert sum(row.printed for row in rows) == pytest.approx(ENTRIES_ROWS_SUM[table][2], rel=1e-12)


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
