"""What people write and measure, and nothing of it lost: revisions of documents, and readings that are only added.

The notebook knows no model: a document is `(kind, schema, body)`, and other rooms register how theirs are checked and
migrated (`Kind`). A body's hash is the SHA-256 of its canonical JSON; a *seal* chains each record to the one before.
"""

from lumped.notebook.beginning import open_notebook
from lumped.notebook.canonical import Body, canonical_text, hash_of
from lumped.notebook.comparing import Difference, differences
from lumped.notebook.kinds import Kind
from lumped.notebook.notebook import Notebook
from lumped.notebook.place import Place, usual_place
from lumped.notebook.recording import Recorder
from lumped.notebook.records import DERIVED, Contents, Entry, Readings, Revision, Series, Stretch
from lumped.notebook.reference import Reference
from lumped.notebook.taking import Taken
from lumped.notebook.verifying import Soundness

__all__ = [
    "DERIVED",
    "Body",
    "Contents",
    "Difference",
    "Entry",
    "Kind",
    "Notebook",
    "Place",
    "Readings",
    "Recorder",
    "Reference",
    "Revision",
    "Series",
    "Soundness",
    "Stretch",
    "Taken",
    "canonical_text",
    "differences",
    "hash_of",
    "open_notebook",
    "usual_place",
]
