"""Sculptures go into the notebook with the very recipes they were judged with, and what happened is noted beside."""

import sqlite3
import tomllib
from contextlib import closing
from pathlib import Path

import pytest

from lumped.app import gathering, notebooks, saving
from lumped.app.outcomes import note_outcome
from lumped.errors import InputError, RecipeError, SculptureError
from lumped.notebook import open_notebook as open_plain
from lumped.notebook.store import APPLICATION_ID

DEMO = Path(__file__).parents[2] / "demo"
OLD = Path(__file__).parents[1] / "notebook/old/layout-0001.sql"
LIGHT, SALT = DEMO / "harbour-light.toml", DEMO / "recipes" / "ropewalk-salt.toml"


def test_the_settings_say_where_and_who(notebook, tmp_path):
    assert notebook.place.file == tmp_path / "lab.sqlite"
    assert notebook.who == "Ines"


@pytest.mark.parametrize("path", sorted(DEMO.glob("*.toml")), ids=lambda path: path.stem)
def test_every_demo_sculpture_comes_back_as_it_went_in(notebook, path):
    saved = saving.save_file(notebook, path)
    given = gathering.given_from(notebook, saved)
    assert tomllib.loads(given.text) == tomllib.loads(path.read_text("utf-8"))
    for name, text in given.recipes.items():
        assert tomllib.loads(text) == tomllib.loads((DEMO / name).read_text("utf-8"))
    assert set(given.recipes) == set(saved.links)


def test_a_sculpture_keeps_the_recipe_that_it_was_saved_with(notebook):
    saved = saving.save_file(notebook, LIGHT)
    recipe = notebook.find("Ropewalk salt dough")
    body = dict(notebook.body(recipe))
    notebook.save("recipe", {**body, "temperature_degC": 30.0}, document=recipe.document)
    (text,) = gathering.given_from(notebook, saved).recipes.values()
    assert tomllib.loads(text) == tomllib.loads(SALT.read_text("utf-8"))


def test_the_same_recipe_is_saved_once_and_a_changed_one_as_its_next_revision(notebook, tmp_path):
    saving.save_file(notebook, LIGHT)
    saving.save_file(notebook, DEMO / "ebb-light.toml")
    assert len(notebook.entries(kind="recipe")) == 1
    (tmp_path / "recipes").mkdir()
    (tmp_path / LIGHT.name).write_text(LIGHT.read_text("utf-8"), "utf-8")
    changed = SALT.read_text("utf-8").replace("temperature_degC = 20", "temperature_degC = 25")
    (tmp_path / "recipes" / SALT.name).write_text(changed, "utf-8")
    again = saving.save_file(notebook, tmp_path / LIGHT.name)
    assert [each.number for each in notebook.entries(kind="recipe")] == [2]
    assert again.number == 2
    assert again.hash == notebook.revision(again.document, 1).hash
    assert again.links != notebook.revision(again.document, 1).links


def test_a_file_goes_on_with_the_document_of_its_title_unless_a_new_one_is_wanted(notebook):
    first = saving.save_file(notebook, SALT)
    assert saving.save_file(notebook, SALT).document == first.document
    assert saving.save_file(notebook, SALT, new=True).document != first.document


def test_what_cannot_be_read_is_not_saved(notebook, tmp_path):
    for text, words in (
        ('kind = "sculpture"\nschema = 1\ntitle = "x"', "doughs"),
        ('kind = "boat"', "boat"),
        ("kind = ", "TOML"),
    ):
        (tmp_path / "mine.toml").write_text(text, "utf-8")
        with pytest.raises((InputError, SculptureError), match=words):
            saving.save_file(notebook, tmp_path / "mine.toml")
    (tmp_path / "mine.toml").write_text(SALT.read_text("utf-8").replace("table-salt", "stardust"), "utf-8")
    with pytest.raises(RecipeError, match="stardust"):
        saving.save_file(notebook, tmp_path / "mine.toml")
    assert notebook.entries() == ()


def test_a_recipe_that_did_not_come_along_is_named(notebook, tmp_path):
    path = tmp_path / "mine.toml"
    path.write_text(LIGHT.read_text("utf-8").replace("ropewalk-salt", "attic-salt"), "utf-8")
    with pytest.raises(InputError, match="attic-salt"):
        saving.save_file(notebook, path)
    assert notebook.entries() == ()


LAMP = {"part": "light", "kind": "lamp", "states": ["dim", "barely-lit", "dark"], "headline": "dim to dark"}


def test_export_and_bringing_in_keep_everything(notebook, tmp_path):
    light = saving.save_file(notebook, LIGHT)
    note_outcome(notebook, light, LAMP, "dark", effort="full")
    for name in ("plain", "packed.zip", "bundle.json", "copy.sqlite"):
        if name.endswith(".sqlite"):
            notebook.backup(tmp_path / name)
        else:
            notebooks.export(notebook, tmp_path / name)
        with open_plain(tmp_path / f"into-{name}.sqlite") as other:
            notebooks.bring_in(other, tmp_path / name)
            assert other.contents().fingerprint == notebook.contents().fingerprint


def test_an_export_says_what_it_can_be_written_as(notebook, tmp_path):
    with pytest.raises(InputError, match="a notebook is not written as"):
        notebooks.export(notebook, tmp_path / "all.txt")
    assert list(tmp_path.glob("all*")) == []


def test_a_story_of_several_lines_stays_readable_in_the_file(notebook):
    text = gathering.file_text(notebook, saving.save_file(notebook, SALT))
    assert 'story = """\n' in text
    assert tomllib.loads(text) == tomllib.loads(SALT.read_text("utf-8"))
    odd = notebook.save("note", {"title": "x", "text": "a\r\nb\n\r"})
    assert tomllib.loads(gathering.file_text(notebook, odd))["text"] == "a\r\nb\n\r"


def test_another_notebook_is_taken_in_and_left_as_it_was(notebook, tmp_path):
    old = tmp_path / "theirs" / "old.sqlite"
    old.parent.mkdir()
    with closing(sqlite3.connect(old)) as connection:
        connection.executescript(OLD.read_text("utf-8"))
        connection.execute(f"PRAGMA application_id = {APPLICATION_ID}")
    before = {path.name: path.read_bytes() for path in old.parent.iterdir()}
    assert notebooks.bring_in(notebook, old).revisions > 0
    assert {path.name: path.read_bytes() for path in old.parent.iterdir() if path.suffix == ".sqlite"} == before


def test_a_title_in_other_letters_is_the_same_document(notebook, tmp_path):
    first = saving.save_file(notebook, SALT)
    (tmp_path / "mine.toml").write_text(SALT.read_text("utf-8").replace("Ropewalk salt", "  ROPEWALK salt"), "utf-8")
    assert saving.save_file(notebook, tmp_path / "mine.toml").document == first.document
