"""The pages on the pantry and on ingredient files keep step with the program."""

import re
from collections import Counter
from pathlib import Path

from lumped.pantry.label_file import label_schema, read_label_toml
from lumped.quantities import Status
from lumped.reference import handbook

DOCS = Path(__file__).parents[2] / "docs"
PAGE = (DOCS / "ingredient-file.md").read_text(encoding="utf-8")
WORDS = {"worked out": Status.COMPUTED}


def test_the_page_counts_the_figures_of_each_status():
    book = handbook()
    rows = [
        (row.value.provenance, row.page)
        for key in book.keys("ingredients")
        for row in book.entry("ingredients", key).rows.values()
    ]
    table = re.findall(r"^\| ([a-z ]+) \| (\d+) \|", (DOCS / "pantry.md").read_text(encoding="utf-8"), re.MULTILINE)
    told = {WORDS.get(word) or Status(word): int(count) for word, count in table}
    assert told == Counter(origin.status for origin, _ in rows)
    foods = {page for origin, page in rows if origin.status is Status.PUBLISHED}
    assert f"weights of {len(foods)} foods" in (DOCS / "pantry.md").read_text(encoding="utf-8")


def test_the_label_on_the_page_becomes_an_ingredient(tmp_path):
    path = tmp_path / "page.toml"
    path.write_text(re.search(r"```toml\n(.*?)```", PAGE, re.DOTALL)[1], encoding="utf-8")
    assert 0.10 < read_label_toml(path).composition["water"] < 0.16


def test_every_key_of_an_ingredient_has_its_line():
    assert [key for key in label_schema()["properties"] if f"`{key}`" not in PAGE] == []
