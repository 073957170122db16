"""How the frozen notebooks were made, and how one is thawed. The frozen text is the truth: it is never made anew.

`layout-0001.sql` holds a notebook as the first layout wrote it, all of it invented: documents with several revisions,
a removal, one brought back, links and lineage, a series with remarks. To freeze a later layout:
`python -m tests.notebook.old.making 0002`.
"""

import sqlite3
import sys
from contextlib import closing
from datetime import UTC, datetime, timedelta
from itertools import count
from pathlib import Path
from tempfile import TemporaryDirectory

from sqlalchemy import Connection, create_engine, text

from lumped.notebook import open_notebook
from lumped.notebook.store import APPLICATION_ID

HERE = Path(__file__).parent
# in the order of references
TABLES = ("notebook", "documents", "revisions", "links", "series", "readings", "batches")


def thaw(file: Path, layout: str = "0001") -> Path:
    """Make a file of a frozen notebook, as the Lumped of that layout left it."""
    with closing(sqlite3.connect(file)) as connection:
        connection.executescript((HERE / f"layout-{layout}.sql").read_text())
        connection.execute(f"PRAGMA application_id = {APPLICATION_ID}")
        connection.execute("PRAGMA journal_mode = WAL")
    return file


def thaw_on_server(address: str, layout: str = "0001") -> None:
    """Bring the rows of a frozen notebook into the tables of that layout on a server."""
    engine = create_engine(address.replace("postgresql://", "postgresql+psycopg://"))
    with TemporaryDirectory() as folder, engine.begin() as connection:
        take_steps(connection, layout)
        with closing(sqlite3.connect(thaw(Path(folder) / "old.sqlite", layout))) as old:
            old.row_factory = sqlite3.Row
            for table in TABLES:
                for row in old.execute(f"SELECT * FROM {table}").fetchall():
                    names = ", ".join(row.keys())
                    slots = ", ".join(f":{name}" for name in row.keys())  # noqa: SIM118 (a row iterates its values)
                    connection.execute(text(f"INSERT INTO {table} ({names}) VALUES ({slots})"), dict(row))
    engine.dispose()


def take_steps(connection: Connection, layout: str) -> None:
    """Take the steps up to a layout, and no further."""
    from alembic import command
    from alembic.config import Config

    import lumped.notebook

    steps = Config()
    steps.set_main_option("script_location", str(Path(lumped.notebook.__file__).with_name("migrations")))
    steps.set_main_option("path_separator", "os")
    steps.attributes["connection"] = connection
    command.upgrade(steps, layout)


def freeze(layout: str) -> str:
    """Write an invented notebook, and give it as SQL in a layout."""
    moments = (datetime(2026, 3, 2, 9, 30, tzinfo=UTC) + timedelta(seconds=7 * n) for n in count())
    with TemporaryDirectory() as folder:
        new, old = Path(folder) / "new.sqlite", Path(folder) / "old.sqlite"
        with open_notebook(new, who="Invented Person", clock=lambda: next(moments)) as notebook:
            salt = notebook.save("note", {"title": "Salt", "text": "Coarse salt takes longer."})
            salt = notebook.save("note", {"title": "Salt", "text": "Twice as long (invented)."}, document=salt.document)
            notebook.save("note", {"title": "Crème", "text": "Wrong pot."}, note="by mistake")
            gone = notebook.save("note", {"title": "Lost page", "text": "Nobody misses it."})
            notebook.remove(gone.document, note="not ours")
            dough = {"title": "Quay dough", "amounts": [{"name": "flour", "amount_g": 200.5}], "stirred": True}
            first = notebook.save("pot", dough, links={"about salt": salt.reference})
            second = notebook.save("pot", {**dough, "title": "Pier dough"}, derived_from=first.reference)
            notebook.save("pot", {**dough, "stirred": False}, document=first.document)
            notebook.restore(first.document, 1, note="it was better")
            series = notebook.begin_series(
                "Ball, two pins", unit="ohm", instrument="an invented meter", method="held by hand",
                about=second.reference,
            )  # fmt: skip
            notebook.append(series.id, [812.5, 799.25, float("nan"), 0.1], remarks={2: "over range"})
            notebook.append(series.id, [801.0], remarks={0: "pressed"})
        engine = create_engine(f"sqlite:///{old}")
        with engine.begin() as connection:
            take_steps(connection, layout)
        engine.dispose()
        with closing(sqlite3.connect(old)) as connection:
            connection.execute("ATTACH ? AS new", (str(new),))
            theirs = {
                name for (name,) in connection.execute("SELECT name FROM main.sqlite_master WHERE type = 'table'")
            }
            for table in (*TABLES, "stretches", "search"):
                if table in theirs:
                    source = "stretches" if table == "batches" else table  # its name since layout 0004
                    connection.execute(f"INSERT INTO main.{table} SELECT * FROM new.{source}")
            connection.commit()
            return "\n".join(connection.iterdump()) + "\n"


if __name__ == "__main__":
    target = HERE / f"layout-{sys.argv[1]}.sql"
    with target.open("x") as file:  # what was frozen is not frozen again
        file.write(freeze(sys.argv[1]))
