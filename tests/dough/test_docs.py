"""The page on recipe files keeps step with the program."""

import re
from pathlib import Path

from lumped.dough import knead, read_recipe, recipe_schema
from lumped.reference import handbook

PAGE = (Path(__file__).parents[2] / "docs" / "recipe-file.md").read_text(encoding="utf-8")


def test_the_recipe_on_the_page_can_be_kneaded(tmp_path):
    path = tmp_path / "page.toml"
    path.write_text(re.search(r"```toml\n(.*?)```", PAGE, re.DOTALL)[1], encoding="utf-8")
    assert 0.05 < knead(read_recipe(path)).resistivity.mean < 1


def test_every_key_of_a_recipe_and_every_ingredient_has_its_line():
    schema = recipe_schema()
    keys = {key for table in (schema, *schema["$defs"].values()) for key in table["properties"]}
    assert [key for key in sorted(keys) if f"`{key}`" not in PAGE] == []
    assert [key for key in handbook().keys("ingredients") if f"| `{key}` |" not in PAGE] == []
