"""Documents as revisions, links between them, series of readings with their batches."""

import sqlalchemy as sa
from alembic import op

from lumped.notebook.migrations.append_only import make_append_only

revision = "0001"
down_revision = None


def upgrade() -> None:
    """Make the tables."""
    long_number = sa.BigInteger().with_variant(sa.Integer, "sqlite")
    op.create_table(
        "notebook",
        sa.Column("id", sa.Text, primary_key=True),
        sa.Column("at", sa.BigInteger, nullable=False),
    )
    op.create_table(
        "documents",
        sa.Column("id", sa.Text, primary_key=True),
        sa.Column("kind", sa.Text, nullable=False),
    )
    op.create_table(
        "revisions",
        sa.Column("document", sa.Text, sa.ForeignKey("documents.id"), primary_key=True),
        sa.Column("number", sa.Integer, primary_key=True, autoincrement=False),
        sa.Column("schema", sa.Integer, nullable=False),
        sa.Column("title", sa.Text, nullable=False),
        sa.Column("body", sa.Text),
        sa.Column("hash", sa.Text, nullable=False),
        sa.Column("made_by", sa.Text, nullable=False),
        sa.Column("at", sa.BigInteger, nullable=False),
        sa.Column("note", sa.Text, nullable=False),
        sa.Column("restored", sa.Integer),
        sa.Column("seal", sa.Text, nullable=False),
    )
    op.create_index("ix_revisions_hash", "revisions", ["hash"])
    op.create_table(
        "links",
        sa.Column("document", sa.Text, primary_key=True),
        sa.Column("number", sa.Integer, primary_key=True, autoincrement=False),
        sa.Column("name", sa.Text, primary_key=True),
        sa.Column("to_document", sa.Text, sa.ForeignKey("documents.id"), nullable=False),
        sa.Column("to_hash", sa.Text, nullable=False),
        sa.ForeignKeyConstraint(["document", "number"], ["revisions.document", "revisions.number"]),
    )
    op.create_index("ix_links_to_document", "links", ["to_document"])
    op.create_table(
        "series",
        sa.Column("number", sa.Integer, primary_key=True),
        sa.Column("id", sa.Text, nullable=False, unique=True),
        sa.Column("title", sa.Text, nullable=False),
        sa.Column("unit", sa.Text, nullable=False),
        sa.Column("instrument", sa.Text, nullable=False),
        sa.Column("method", sa.Text, nullable=False),
        sa.Column("made_by", sa.Text, nullable=False),
        sa.Column("at", sa.BigInteger, nullable=False),
        sa.Column("about_document", sa.Text, sa.ForeignKey("documents.id")),
        sa.Column("about_hash", sa.Text),
        sa.Column("seal", sa.Text, nullable=False),
    )
    op.create_table(
        "readings",
        sa.Column("series", sa.Integer, sa.ForeignKey("series.number"), primary_key=True),
        sa.Column("number", long_number, primary_key=True, autoincrement=False),
        sa.Column("at", sa.BigInteger, nullable=False),
        sa.Column("value", sa.Double),
        sa.Column("remark", sa.Text),
        sqlite_with_rowid=False,
    )
    op.create_index("ix_readings_series_at", "readings", ["series", "at"])
    op.create_table(
        "batches",
        sa.Column("series", sa.Integer, sa.ForeignKey("series.number"), primary_key=True),
        sa.Column("first", long_number, primary_key=True, autoincrement=False),
        sa.Column("size", sa.Integer, nullable=False),
        sa.Column("seal", sa.Text, nullable=False),
    )
    for table in ("notebook", "documents", "revisions", "links", "series", "readings", "batches"):
        make_append_only(table)
