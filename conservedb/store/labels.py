"""What a record is called in a sentence."""

from __future__ import annotations

from functools import cache

from sqlalchemy import Connection, select

from conservedb.records.every import metadata
from conservedb.store.past import tables_of

_KEYS = ("mark", "ref", "key", "name", "number", "code", "term")


@cache
def owner_table(table: str) -> str:
    """The table of the records that the rows of a table belong to; itself for records."""
    if "uuid" in metadata.tables[table].c:
        return table
    return next((name for name in metadata.tables if table in tables_of(name)), table)


def label(connection: Connection, table: str, record: int) -> str:
    """What a record is called in sentences: "layer L5 of SQ.1902.7"."""
    name = owner_table(table)
    known = metadata.tables[name]
    key = next((column for column in _KEYS if column in known.c), "id")
    singular = name.replace("_", " ")
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
