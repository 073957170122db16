"""Triggers that refuse to change or take away a row, on both databases."""

from alembic import op

__all__ = ["make_append_only", "refuse_replacing"]


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


def refuse_replacing(table: str, *keys: str) -> None:
    """Refuse an INSERT OR REPLACE of a row that is there: SQLite takes the old row away without telling a trigger."""
    if op.get_bind().dialect.name != "sqlite":
        return  # PostgreSQL's ON CONFLICT is an UPDATE, which is refused already
    same = " AND ".join(f"{key} = NEW.{key}" for key in keys)
    op.execute(
        f"CREATE TRIGGER {table}_no_replace_{keys[-1]} BEFORE INSERT ON {table} "
        f"WHEN EXISTS (SELECT 1 FROM {table} WHERE {same}) "
        f"BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END"
    )
