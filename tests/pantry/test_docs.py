"""The page on ingredient files keeps step with the program."""

import re
from pathlib import Path

from lumped.pantry.label_file import label_schema, read_label_toml

PAGE = (Path(__file__).parents[2] / "docs" / "ingredient-file.md").read_text(encoding="utf-8")


def test_the_label_on_the_page_becomes_an_ingredient(tmp_path):
    path = tmp_path / "page.toml"
    path.write_text(re.search(r"```toml\n(.*?)```", PAGE, re.DOTALL)[1], encoding="utf-8")
    assert 0.10 < read_label_toml(path).composition["water"] < 0.16


def test_every_key_of_an_ingredient_has_its_line():
    assert [key for key in label_schema()["properties"] if f"`{key}`" not in PAGE] == []
