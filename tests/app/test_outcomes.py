"""What happened on the table is noted beside what was predicted, of the very state that was judged."""

import pytest
from tests.app.test_notebooks import LIGHT, SALT

from lumped.app import outcomes, saving
from lumped.errors import InputError

LAMP = {"part": "light", "kind": "lamp", "states": ["dim", "barely-lit", "dark"], "headline": "dim to dark"}


def test_what_happened_is_noted_beside_what_was_predicted(notebook):
    light = saving.save_file(notebook, LIGHT)
    outcomes.note_outcome(notebook, light, LAMP, "dark", effort="full")
    outcomes.note_outcome(notebook, light, LAMP, "bright", effort="quick")
    bright, dark = outcomes.outcomes_of(notebook, light.document)
    assert (dark.part, dark.happened, dark.said, dark.came_true) == ("light", "dark", "dim to dark", True)
    assert (bright.happened, bright.came_true, bright.sculpture_number) == ("bright", False, 1)
    notebook.remove(bright.document)
    assert outcomes.outcomes_of(notebook, light.document) == (dark,)


def test_what_happened_stays_beside_the_recipe_that_was_judged(notebook, tmp_path):
    first = saving.save_file(notebook, LIGHT)
    outcomes.note_outcome(notebook, first, LAMP, "dark", effort="full")
    (tmp_path / "recipes").mkdir()
    (tmp_path / LIGHT.name).write_text(LIGHT.read_text("utf-8"), "utf-8")
    changed = SALT.read_text("utf-8").replace("temperature_degC = 20", "temperature_degC = 25")
    (tmp_path / "recipes" / SALT.name).write_text(changed, "utf-8")
    second = saving.save_file(notebook, tmp_path / LIGHT.name)
    outcomes.note_outcome(notebook, second, LAMP, "bright", effort="full")
    assert first.hash == second.hash
    assert [each.sculpture_number for each in outcomes.outcomes_of(notebook, first.document)] == [2, 1]


def test_a_lamp_cannot_be_seen_to_turn(notebook):
    light = saving.save_file(notebook, LIGHT)
    with pytest.raises(InputError, match="seen to be turning"):
        outcomes.note_outcome(notebook, light, LAMP, "turning", effort="full")
