"""Notebooks of an older layout, of a newer one, and of none yet."""

import shutil
import signal
import sqlite3
import threading
from collections.abc import Iterator
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path
from random import Random

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory
from tests.notebook.children import Nursery
from tests.notebook.looking import fingerprint
from tests.notebook.old.making import thaw, thaw_on_server
from tests.notebook.trials import old_seals

import lumped.notebook
from lumped.errors import NotebookError
from lumped.notebook import Notebook, open_notebook
from lumped.notebook.layout import LAYOUTS, VERSION_TABLE
from lumped.notebook.tables import metadata

FROZEN = {
    "0001": "fb0e7290299ecc51dd4567cf0e44322c7a0d91b1f089f6004e944878d25265d4",
    "0003": "1d691ede2dc6a716d41f1130defc5ab5eb4a30c97fe2ecacf0e2aef8a1ef5b30",
}
OLD_TITLES = {"Salt": "note", "Crème": "note", "Quay dough": "pot", "Pier dough": "pot"}


@pytest.fixture(scope="module")
def nursery() -> Iterator[Nursery]:
    started = Nursery()
    yield started
    started.close()


@pytest.fixture
def old(tmp_path: Path) -> Path:
    """A notebook as the first layout left it."""
    return thaw(tmp_path / "notebook.sqlite")


def frozen_is_there(notebook: Notebook, layout: str = "0001") -> None:
    """All that was frozen is there, sound, and found."""
    assert {entry.title: entry.kind for entry in notebook.entries()} == OLD_TITLES
    assert [entry.title for entry in notebook.entries(removed=True)] == ["Lost page"]
    assert notebook.verify().problems == ()
    assert fingerprint(notebook) == FROZEN[layout]
    assert [entry.title for entry in notebook.entries(words="creme POT")] == ["Crème"]
    assert [entry.title for entry in notebook.entries(words="invented twice")] == ["Salt"]
    pot = notebook.find("Quay dough")
    assert [(each.number, each.restored, each.body["stirred"]) for each in notebook.history(pot.document)] == [
        (1, None, True), (2, None, False), (3, 1, True),
    ]  # fmt: skip
    (series,) = notebook.series()
    readings = notebook.readings(series.id)
    assert [str(value) for value in readings.value] == ["812.5", "799.25", "nan", "0.1", "801.0"]
    assert dict(readings.remarks) == {3: "over range", 5: "pressed"}


@pytest.mark.parametrize("layout", FROZEN)
def test_an_old_notebook_is_backed_up_then_brought_up_to_date_and_all_is_there(layout: str, tmp_path: Path) -> None:
    old = thaw(tmp_path / "notebook.sqlite", layout)
    seals = old_seals(old)
    clock = iter([datetime(2026, 5, 9, 14, 30, tzinfo=UTC)] * 9)
    with open_notebook(old, clock=lambda: next(clock)) as notebook:
        assert notebook.migrated_from == old.parent / "backups" / f"notebook-20260509T143000Z-layout-{layout}.sqlite"
        frozen_is_there(notebook, layout)
        assert old_seals(old) == seals == old_seals(notebook.migrated_from)
        assert layout_of(old) == LAYOUTS[-1]
        assert layout_of(notebook.migrated_from) == layout
        notebook.save("note", {"title": "and on"})
        backup = notebook.migrated_from
    with open_notebook(old) as notebook:
        assert notebook.migrated_from is None
    shutil.copyfile(backup, old.with_name("again.sqlite"))
    with open_notebook(old.with_name("again.sqlite")) as notebook:
        frozen_is_there(notebook, layout)


def test_a_notebook_that_lost_its_layout_is_called_damaged_not_newer(old: Path) -> None:
    with closing(sqlite3.connect(old)) as connection, connection:
        connection.execute(f"DELETE FROM {VERSION_TABLE}")
    with pytest.raises(NotebookError, match=r"is damaged. Keep the file as it is"):
        open_notebook(old)


def layout_of(file: Path) -> str:
    with closing(sqlite3.connect(file)) as connection:
        (found,) = connection.execute(f"SELECT version_num FROM {VERSION_TABLE}").fetchone()
        return str(found)


def test_a_backup_never_takes_a_name_that_is_there(old: Path) -> None:
    moment = datetime(2026, 5, 9, 14, 30, tzinfo=UTC)
    names = []
    for _ in range(2):
        thaw_anew(old)
        with open_notebook(old, clock=lambda: moment) as notebook:
            names.append(notebook.migrated_from.name)
    assert names == ["notebook-20260509T143000Z-layout-0001.sqlite", "notebook-20260509T143000Z-layout-0001-2.sqlite"]


def thaw_anew(file: Path) -> None:
    for path in file.parent.glob("notebook.sqlite*"):
        path.unlink()
    thaw(file)


def test_on_a_server_the_backup_is_a_schema(server_address: str) -> None:
    thaw_on_server(server_address)
    with open_notebook(server_address) as notebook:
        frozen_is_there(notebook)
        schema = str(notebook.migrated_from)
        with notebook._store.reading() as connection:
            for table in ("revisions", "links", "readings", "stretches", VERSION_TABLE):
                was = "batches" if table == "stretches" else table  # its name before layout 0004
                ours, kept = (
                    connection.exec_driver_sql(f"SELECT * FROM {where}").all()
                    for where in (f"public.{table}", f"{schema}.{was}")
                )
                assert set(kept) == set(ours) or table == VERSION_TABLE
                assert kept
            assert connection.exec_driver_sql(f"SELECT version_num FROM {schema}.{VERSION_TABLE}").scalar() == "0001"
    with open_notebook(server_address) as notebook:
        assert notebook.migrated_from is None


@pytest.mark.parametrize("begun", ["old", "absent"])
@pytest.mark.parametrize("turn", range(5))
def test_of_two_programs_that_open_at_once_one_takes_the_steps_and_both_work(
    turn: int, begun: str, nursery: Nursery, place, tmp_path: Path
) -> None:
    if begun == "old":
        thaw(place) if isinstance(place, Path) else thaw_on_server(place)
    children = [nursery.start(tmp_path, "open_and_save", place=str(place), seed=seed) for seed in (1, 2)]
    for child in children:
        child.finish(at_most=60)
    migrated = [said[1] for child in children for said in child.acknowledged if said[0] == "migrated"]
    with open_notebook(place) as notebook:
        assert sum(map(bool, migrated)) == (begun == "old")
        assert len(notebook.entries(kind="trial")) == 2
        assert len(notebook.entries()) == 2 + (len(OLD_TITLES) if begun == "old" else 0)
        assert notebook.verify().sound


def test_threads_of_one_program_may_begin_notebooks_at_once(tmp_path: Path) -> None:
    troubles: list[BaseException] = []

    def begin(name: str) -> None:
        try:
            with open_notebook(tmp_path / name) as notebook:
                notebook.save("note", {"title": "Salt"})
        except BaseException as error:
            troubles.append(error)

    threads = [threading.Thread(target=begin, args=(f"{n % 3}.sqlite",)) for n in range(6)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert troubles == []
    for n in range(3):
        with open_notebook(tmp_path / f"{n}.sqlite", begin=False) as notebook:
            assert len(notebook.entries()) == 2


@pytest.mark.parametrize("seed", range(8))
def test_a_program_killed_while_it_migrates_leaves_the_old_layout_or_the_new_one(
    seed: int, old: Path, nursery: Nursery, tmp_path: Path
) -> None:
    seals = old_seals(old)
    child = nursery.start(tmp_path, "open_and_save", place=str(old), seed=1)
    child.run_for(Random(seed).uniform(0, 0.06))
    assert child.kill() in (-signal.SIGKILL, 0)
    with closing(sqlite3.connect(old)) as connection:
        tables = {name for (name,) in connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
    assert layout_of(old) == (LAYOUTS[-1] if "search" in tables else "0001")
    assert old_seals(old) >= seals
    with open_notebook(old) as notebook:
        assert notebook.verify().sound
        assert {entry.title for entry in notebook.entries()} >= set(OLD_TITLES)


def test_a_newer_layout_is_refused_and_left_as_it_is(tmp_path: Path) -> None:
    file = tmp_path / "notebook.sqlite"
    with open_notebook(file) as notebook:
        notebook.save("note", {"title": "Salt"})
    with closing(sqlite3.connect(file)) as connection:
        connection.execute(f"UPDATE {VERSION_TABLE} SET version_num = '0099'")
        connection.commit()
    before = file.read_bytes()
    with pytest.raises(
        NotebookError, match=r"written by a newer Lumped \(layout 0099; this one knows up to .*untouched"
    ):
        open_notebook(file)
    assert file.read_bytes() == before
    assert [path.name for path in tmp_path.iterdir()] == [file.name]


def test_a_newer_layout_on_a_server_is_refused(server_address: str) -> None:
    with open_notebook(server_address) as notebook, notebook._store.writing() as connection:
        connection.exec_driver_sql(f"UPDATE {VERSION_TABLE} SET version_num = '0099'")
    with pytest.raises(NotebookError, match=r"written by a newer Lumped \(layout 0099"):
        open_notebook(server_address)


def test_an_old_notebook_that_can_only_be_read_says_what_to_do(old: Path, monkeypatch) -> None:
    monkeypatch.setattr("lumped.notebook.store._can_write", lambda path: False)
    before = old.read_bytes()
    with pytest.raises(
        NotebookError, match=r"has to be brought up to date, but .*write-protected. Copy it to a folder"
    ):
        open_notebook(old)
    assert old.read_bytes() == before
    assert not (old.parent / "backups").exists()


def test_an_empty_file_that_can_only_be_read_is_not_called_old(tmp_path: Path, monkeypatch) -> None:
    monkeypatch.setattr("lumped.notebook.store._can_write", lambda path: False)
    (tmp_path / "notebook.sqlite").touch()
    with pytest.raises(NotebookError, match=r"can be read, not written"):
        open_notebook(tmp_path)


def test_the_list_of_layouts_is_that_of_the_steps() -> None:
    steps = ScriptDirectory(str(Path(lumped.notebook.__file__).with_name("migrations")))
    assert tuple(step.revision for step in reversed([*steps.walk_revisions()])) == LAYOUTS


def test_the_steps_make_the_tables_that_the_program_uses(place) -> None:
    def counts(_object, name: str | None, kind: str, *_: object) -> bool:
        return not (kind == "table" and name == VERSION_TABLE)

    with open_notebook(place) as notebook, notebook._store.reading() as connection:
        context = MigrationContext.configure(connection, opts={"compare_type": True, "include_object": counts})
        assert compare_metadata(context, metadata) == []


def test_the_file_of_a_notebook_that_was_just_begun_is_one_without_its_log(tmp_path: Path) -> None:
    with open_notebook(tmp_path / "notebook.sqlite"):
        shutil.copyfile(tmp_path / "notebook.sqlite", tmp_path / "alone.sqlite")
    with open_notebook(tmp_path / "alone.sqlite", begin=False) as notebook:
        assert notebook.entries() == ()
