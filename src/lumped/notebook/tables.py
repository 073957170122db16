"""The tables, once for both databases. Moments are whole microseconds since 1970 (UTC), hashes 64 hexadecimal digits.

Rows are only ever added; triggers in the migrations hold every program to that. `search` alone is overwritten: it is
derived, and tells the words of each document's newest revision.
"""

from sqlalchemy import (
    BigInteger,
    Column,
    Double,
    ForeignKey,
    ForeignKeyConstraint,
    Index,
    Integer,
    MetaData,
    Table,
    Text,
)

__all__ = [
    "about",
    "documents",
    "links",
    "metadata",
    "readings",
    "revisions",
    "search",
    "series",
    "stretches",
]

metadata = MetaData(
    naming_convention={
        "ix": "ix_%(table_name)s_%(column_0_N_name)s",
        "uq": "uq_%(table_name)s_%(column_0_N_name)s",
        "fk": "fk_%(table_name)s_%(column_0_N_name)s",
        "pk": "pk_%(table_name)s",
    }
)

about = Table("notebook", metadata, Column("id", Text, primary_key=True), Column("at", BigInteger, nullable=False))

documents = Table(
    "documents", metadata,
    Column("id", Text, primary_key=True),
    Column("kind", Text, nullable=False),
)  # fmt: skip

revisions = Table(
    "revisions", metadata,
    Column("document", ForeignKey("documents.id"), primary_key=True),
    Column("number", Integer, primary_key=True, autoincrement=False),
    Column("schema", Integer, nullable=False),
    Column("title", Text, nullable=False),
    Column("body", Text),  # canonical JSON; NULL in a removal
    Column("hash", Text, nullable=False),
    Column("made_by", Text, nullable=False),
    Column("at", BigInteger, nullable=False),
    Column("note", Text, nullable=False),
    Column("restored", Integer),
    Column("seal", Text, nullable=False),
    Index(None, "hash"),
)  # fmt: skip

links = Table(
    "links", metadata,
    Column("document", Text, primary_key=True),
    Column("number", Integer, primary_key=True, autoincrement=False),
    Column("name", Text, primary_key=True),
    Column("to_document", ForeignKey("documents.id"), nullable=False),
    Column("to_hash", Text, nullable=False),
    ForeignKeyConstraint(["document", "number"], ["revisions.document", "revisions.number"]),
    Index(None, "to_document"),
)  # fmt: skip

series = Table(
    "series", metadata,
    Column("number", Integer, primary_key=True),  # short, for the many rows that name it; differs between notebooks
    Column("id", Text, nullable=False, unique=True),
    Column("title", Text, nullable=False),
    Column("unit", Text, nullable=False),
    Column("instrument", Text, nullable=False),
    Column("method", Text, nullable=False),
    Column("made_by", Text, nullable=False),
    Column("at", BigInteger, nullable=False),
    Column("about_document", ForeignKey("documents.id")),
    Column("about_hash", Text),
    Column("seal", Text, nullable=False),
)  # fmt: skip

readings = Table(
    "readings", metadata,
    Column("series", ForeignKey("series.number"), primary_key=True),
    Column("number", BigInteger().with_variant(Integer, "sqlite"), primary_key=True, autoincrement=False),
    Column("at", BigInteger, nullable=False),
    Column("value", Double),  # NULL where the remark says why
    Column("remark", Text),
    Index(None, "series", "at"),
    sqlite_with_rowid=False,
)  # fmt: skip

stretches = Table(
    "stretches", metadata,
    Column("series", ForeignKey("series.number"), primary_key=True),
    Column("first", BigInteger().with_variant(Integer, "sqlite"), primary_key=True, autoincrement=False),
    Column("size", Integer, nullable=False),
    Column("seal", Text, nullable=False),
)  # fmt: skip

search = Table(
    "search", metadata,
    Column("document", ForeignKey("documents.id"), primary_key=True),
    Column("words", Text, nullable=False),
)  # fmt: skip
