"""Words of the trade with optional thesaurus ids, and what the database says of itself."""

from __future__ import annotations

from sqlalchemy import CheckConstraint, Column, Integer, Table, Text, UniqueConstraint

from conservedb.records.base import metadata, record_table, text

term = record_table(
    "term",
    text("list", required=True),
    text("term", required=True),
    text("definition"),
    text("thesaurus"),
    text("thesaurus_id"),
    text("checked_by"),
    text("note"),
    UniqueConstraint("list", "term"),
)

database = Table(
    "database",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("uuid", Text, nullable=False),
    Column("name", Text),
    Column("created", Text, nullable=False),
    Column("fixed_today", Text),
    Column("edition", Text),
    CheckConstraint("id = 1", name="one_row"),
    sqlite_strict=True,
)
"""One row. `fixed_today` (ISO day) is set only in a demonstration, whose "today" stands still.
`edition` is that of the shipped reference tables last taken in."""
