"""The change log: who changed what, when and why; written by triggers, never changed itself.

A change set is one transaction. While it is open its `hash` is NULL; at the end it is sealed into
a chain: `hash` covers everything in it and the hash of the set before (see `store.log`).
"""

from __future__ import annotations

from sqlalchemy import Column, ForeignKey, Index, Integer, Table, Text, UniqueConstraint
from sqlalchemy import column as named

from conservedb.records.base import metadata

change_set = Table(
    "change_set",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("who", Text, nullable=False),
    Column("at", Text, nullable=False),
    Column("kind", Text, nullable=False),
    Column("reason", Text),
    Column("program", Text, nullable=False),
    Column("undoes_id", Integer, ForeignKey("change_set.id")),
    Column("changes", Integer),
    Column("last_change", Integer),
    Column("prev", Text),
    Column("hash", Text),
    UniqueConstraint("prev"),
    UniqueConstraint("hash"),
    Index("ix_change_set_open", "hash", sqlite_where=named("hash").is_(None)),
    Index(None, "undoes_id"),
    sqlite_strict=True,
    sqlite_autoincrement=True,
)
"""`at` is UTC, ISO 8601. `changes` counts those of the set, `last_change` is the id of its last."""

change = Table(
    "change",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("set_id", Integer, ForeignKey("change_set.id"), nullable=False),
    Column("table_name", Text, nullable=False),
    Column("record_id", Integer, nullable=False),
    Column("before", Text),
    Column("after", Text),
    Index(None, "table_name", "record_id"),
    Index("ix_change_gone", "table_name", sqlite_where=named("after").is_(None)),
    sqlite_strict=True,
    sqlite_autoincrement=True,
)
"""One row of one table before and after, as `name=value` in SQL literals, blank fields left out.

`record_id` is the row's own id; for a row that ties records together, that of its owner.
"""
