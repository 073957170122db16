"""Verify finds whatever was changed behind the notebook's back, and says where."""

import re
import sqlite3
from contextlib import closing

import numpy as np
import pytest

from lumped.notebook import open_notebook


@pytest.fixture
def file(tmp_path):
    """A notebook with a history, links and readings, and no triggers to protect it."""
    file = tmp_path / "notebook.sqlite"
    with open_notebook(file) as notebook:
        first = notebook.save("note", {"title": "Quay", "gap_mm": 6})
        notebook.save("note", {"title": "Quay", "gap_mm": 4}, document=first.document)
        notebook.save("note", {"title": "Mooring"}, derived_from=first.reference)
        series = notebook.begin_series("R", unit="Ω", instrument="meter", method="four wires", about=first.reference)
        for _ in range(3):
            notebook.append(series.id, np.arange(10.0))
    with closing(sqlite3.connect(file)) as connection:
        for (name,) in connection.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall():
            connection.execute(f"DROP TRIGGER {name}")
    return file


def test_a_sound_notebook_is_said_to_be_sound_and_is_counted(file):
    with open_notebook(file) as notebook:
        found = notebook.verify()
    assert found.sound
    assert (found.documents, found.revisions, found.series, found.readings) == (2, 3, 1, 30)


@pytest.mark.parametrize(
    ("order", "words"),
    [
        ("UPDATE revisions SET body = replace(body, '6', '7') WHERE number = 1", "revision 1: what it holds is not"),
        ("UPDATE revisions SET body = '{' WHERE number = 2", "revision 2: what it holds is not"),
        ("UPDATE revisions SET made_by = 'somebody else' WHERE number = 1", "“Quay”, revision 1 .* its seal differs"),
        ("UPDATE revisions SET at = at + 1 WHERE number = 2", "“Quay”, revision 2 .* its seal differs"),
        ("UPDATE revisions SET note = 'x' WHERE title = 'Mooring'", "“Mooring”, revision 1"),
        ("DELETE FROM revisions WHERE number = 1 AND title = 'Quay'", "a revision is missing"),
        ("DELETE FROM links", "“Mooring”, revision 1 .* title or links are not what was saved"),
        ("UPDATE links SET to_hash = 'ffff'", "“derived from” refers to .*@ffff, which is not here"),
        ("UPDATE series SET about_hash = 'ffff'", "“R” refers to .*@ffff, which is not here"),
        ("UPDATE series SET unit = 'kΩ'", "its description is not what was saved"),
        ("UPDATE readings SET value = 9.5 WHERE number = 12", "readings 11 to 20 are not what was saved"),
        ("UPDATE readings SET at = at + 1 WHERE number = 30", "readings 21 to 30 are not what was saved"),
        ("UPDATE readings SET remark = 'x' WHERE number = 1", "readings 1 to 10 are not what was saved"),
        ("DELETE FROM readings WHERE number = 5", "29 readings are there, 30 were acknowledged"),
        ("DELETE FROM stretches WHERE first = 11", "the seal of some readings is missing"),
        ("INSERT INTO readings SELECT series, 31, at, value, remark FROM readings WHERE number = 1", "31 readings are"),
        (
            "UPDATE revisions SET document = 'elsewhere' WHERE number = 2",
            "The file itself is damaged: revisions → documents",
        ),
    ],
)
def test_a_change_behind_its_back_is_found(file, order, words):
    with closing(sqlite3.connect(file)) as connection:
        connection.execute(order)
        connection.commit()
    with open_notebook(file) as notebook:
        found = notebook.verify()
    assert not found.sound
    assert re.search(words, "\n".join(found.problems))


def test_a_page_that_was_overwritten_is_found(file):
    content = bytearray(file.read_bytes())
    start = content.rfind(b'"gap_mm":6') - 40
    content[start : start + 30] = b"\xff" * 30
    file.write_bytes(content)
    with open_notebook(file) as notebook:
        assert not notebook.verify().sound


def test_only_so_many_problems_are_told(file):
    with closing(sqlite3.connect(file)) as connection:
        connection.executemany("INSERT INTO documents VALUES (?, 'note')", [(str(k),) for k in range(80)])
        connection.commit()
    with open_notebook(file) as notebook:
        assert len(notebook.verify().problems) == 50
