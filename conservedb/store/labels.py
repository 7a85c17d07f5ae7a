"""What a record is called in a sentence."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from typing import Any

from sqlalchemy import Connection, select

from conservedb.records.every import metadata
from conservedb.store.log_rows import parse
from conservedb.store.past import tables_of

_KEYS = ("mark", "ref", "key", "name", "number", "code", "term")


@cache
def owner_table(table: str) -> str:
    """The table of the records that the rows of a table belong to; itself for records."""
    if "uuid" in metadata.tables[table].c:
        return table
    return next((name for name in metadata.tables if table in tables_of(name)), table)


def described(table: str, fields: Mapping[str, Any]) -> str:
    """What a record is called that is known from its fields only: "layer L5"."""
    key = next((column for column in _KEYS if column in fields), "id")
    return f"{table.replace('_', ' ')} {fields.get(key, '')}"


def name_of(connection: Connection, table: str, record: int) -> str:
    """The key alone of a record, also of one that is gone: the log has it."""
    known = metadata.tables[table]
    key = next((column for column in _KEYS if column in known.c), "id")
    found = connection.execute(select(known.c[key]).where(known.c.id == record)).scalar()
    if found is None:
        text = connection.exec_driver_sql(
            "SELECT before FROM change WHERE table_name = ? AND record_id = ? AND after IS NULL"
            " ORDER BY id DESC LIMIT 1",
            (table, record),
        ).scalar()
        found = parse(text).get(key) if text else None
    return f"no. {record}" if found is None else str(found)


def label(connection: Connection, table: str, record: int) -> str:
    """What a record is called in sentences: "layer L5 of SQ.1902.7"."""
    name = owner_table(table)
    known = metadata.tables[name]
    key = next((column for column in _KEYS if column in known.c), "id")
    singular = name.replace("_", " ")
    row = None
    if "id" in known.c:
        row = connection.execute(select(known).where(known.c.id == record)).mappings().first()
    if row is None:
        return f"{singular} no. {record}"
    said = f"{singular} {row[key]}"
    if "object_id" in known.c and name != "object":
        objects = metadata.tables["object"]
        number = connection.execute(
            select(objects.c.number).where(objects.c.id == row["object_id"])
        ).scalar()
        said += f" of {number}"
    return said
