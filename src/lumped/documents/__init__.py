"""Files that people write: read safely, checked against a model, refused in words that help.

A document is a TOML file with a `kind` and a `schema` number. `read_document` reads one within the limits on size and
depth; `checked` holds it against its pydantic model and turns the first thing that is wrong into one sentence with
file, key, value and remedy. What can be read but makes no working circuit is no matter of this room.
"""

from lumped.documents.amounts import Degrees, Length, Share
from lumped.documents.checking import checked
from lumped.documents.folders import refuse_missing_folder
from lumped.documents.reading import document_in, is_there, read_document, text_of

__all__ = [
    "Degrees", "Length", "Share", "checked", "document_in", "is_there", "read_document", "refuse_missing_folder",
    "text_of",
]  # fmt: skip
