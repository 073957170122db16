"""The words of each document's newest revision, folded, so that a search finds them on both databases alike."""

import sqlalchemy as sa
from alembic import op

from lumped.notebook.words import words_of

revision = "0002"
down_revision = "0001"


def upgrade() -> None:
    """Make the table, and fill it from what is there."""
    search = op.create_table(
        "search",
        sa.Column("document", sa.Text, sa.ForeignKey("documents.id"), primary_key=True),
        sa.Column("words", sa.Text, nullable=False),
    )
    newest = op.get_bind().execute(
        sa.text(
            "SELECT document, title, body FROM revisions AS r WHERE number = "
            "(SELECT max(number) FROM revisions WHERE document = r.document)"
        )
    )
    rows = [{"document": document, "words": words_of(title, body)} for document, title, body in newest]
    if rows:
        op.bulk_insert(search, rows)
