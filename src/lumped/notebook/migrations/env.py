"""Runs the steps on the connection that `layout` hands over."""

from alembic import context

from lumped.notebook.layout import VERSION_TABLE
from lumped.notebook.tables import metadata

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=metadata,
    version_table=VERSION_TABLE,
    render_as_batch=True,
    transactional_ddl=False,  # the caller's transaction holds all of it
)
context.run_migrations()
