"""A row that is there can't be replaced by one of the same key."""

from lumped.notebook.migrations.append_only import refuse_replacing

revision = "0003"
down_revision = "0002"


def upgrade() -> None:
    """Make the triggers."""
    refuse_replacing("notebook", "id")
    refuse_replacing("documents", "id")
    refuse_replacing("revisions", "document", "number")
    refuse_replacing("links", "document", "number", "name")
    refuse_replacing("series", "number")
    refuse_replacing("series", "id")
    refuse_replacing("readings", "series", "number")
    refuse_replacing("batches", "series", "first")
