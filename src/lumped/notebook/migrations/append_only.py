"""Triggers that refuse to change or take away a row, on both databases."""

from alembic import op

__all__ = ["make_append_only"]


def make_append_only(table: str) -> None:
    """Refuse every UPDATE and DELETE on a table, whoever asks."""
    if op.get_bind().dialect.name == "sqlite":
        for what in ("UPDATE", "DELETE"):
            op.execute(
                f"CREATE TRIGGER {table}_no_{what.lower()} BEFORE {what} ON {table} "
                f"BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END"
            )
        return
    op.execute(
        "CREATE OR REPLACE FUNCTION lumped_only_grows() RETURNS trigger LANGUAGE plpgsql AS "
        "$$ BEGIN RAISE EXCEPTION 'a notebook only grows'; END $$"
    )
    op.execute(
        f"CREATE TRIGGER {table}_only_grows BEFORE UPDATE OR DELETE OR TRUNCATE ON {table} "
        f"FOR EACH STATEMENT EXECUTE FUNCTION lumped_only_grows()"
    )
