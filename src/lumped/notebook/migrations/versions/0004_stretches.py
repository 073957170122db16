"""What was committed together is a stretch of readings: a batch is one making of a recipe."""

import sqlalchemy as sa
from alembic import op

from lumped.notebook.migrations.append_only import make_append_only, refuse_replacing

revision = "0004"
down_revision = "0003"


def upgrade() -> None:
    """Make the table, fill it from the old one, and take that away."""
    long_number = sa.BigInteger().with_variant(sa.Integer, "sqlite")
    op.create_table(
        "stretches",
        sa.Column("series", sa.Integer, sa.ForeignKey("series.number"), primary_key=True),
        sa.Column("first", long_number, primary_key=True, autoincrement=False),
        sa.Column("size", sa.Integer, nullable=False),
        sa.Column("seal", sa.Text, nullable=False),
    )
    op.execute("INSERT INTO stretches (series, first, size, seal) SELECT series, first, size, seal FROM batches")
    op.drop_table("batches")
    make_append_only("stretches")
    refuse_replacing("stretches", "series", "first")
