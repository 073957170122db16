"""The page on care keeps step with the handbook and the program."""

import datetime
import re
from pathlib import Path

from lumped.app.care import care
from lumped.dough.safety.metals import limit_rows
from lumped.quantities import significant
from lumped.reference import handbook

ROOT = Path(__file__).parents[3]
PAGE = (ROOT / "docs" / "care.md").read_text(encoding="utf-8")


def test_every_dose_of_the_handbook_has_its_line_with_its_source():
    entries = [handbook().entry("limits", key) for key in handbook().keys("limits")]
    lines = {line.split("|")[1].strip(): line for line in PAGE.splitlines() if line.startswith("| `")}
    eaten = [(entry, row) for entry in entries if "eater" in entry.facts for row in entry.rows.values()]
    assert len(lines) == len(eaten) > 10
    for entry, row in eaten:
        line = lines[f"`{row.quantity}` of `{entry.key}`"]
        assert f"{row.printed:g}" in line or f"{row.low:g} to" in line
        assert row.value.provenance.sources or "from memory" in line


def test_every_dated_limit_has_its_line():
    for day in ("2021-05-19", "2021-05-20"):
        for row in limit_rows(datetime.date.fromisoformat(day)):
            assert f"{row['limit']:,.0f} mg/kg" in PAGE
            assert f"{row['valid_from']} to {row['valid_to']}" in PAGE
    assert "from 2030-08-01" in PAGE


def test_the_ropewalks_figures_are_the_page_s():
    found = care(ROOT / "demo" / "recipes" / "ropewalk-salt.toml", on=datetime.date(2026, 11, 26))
    child = next(each for each in found.near if (each.key, each.figure) == ("salt-child", "lethal_per_kg"))
    dog = next(each for each in found.near if (each.key, each.figure) == ("salt-dog", "signs_per_kg"))
    text = re.search(r"The ropewalk's salt dough is (\d+) %.*?a lump ([\d.]+) g; (\d+) g.*?from (\d+) g", PAGE)
    figures = (100 * found.salt, 1e3 * found.helpings[1].salt, 1e3 * child.dough.low, 1e3 * dog.dough.low)
    for shown, real in zip(text.groups(), figures, strict=True):
        assert float(shown) == significant(real, 2)
