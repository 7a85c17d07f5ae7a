"""Who points at a record: what must be looked at before one is withdrawn or taken back."""

from __future__ import annotations

from functools import cache
from typing import Any, NamedTuple

from sqlalchemy import Column, Connection, select

from conservedb.recording.past import tables_of
from conservedb.records.every import metadata
from conservedb.store.logging_triggers import owner_field

_KEYS = ("mark", "ref", "key", "name", "number", "code", "term")


class Reference(NamedTuple):
    """A row that points at a record: its table, its id or that of its owner, and the field."""

    table: str
    record: int
    field: str


@cache
def pointers_to(table: str) -> tuple[Column[Any], ...]:
    """The fields of all tables that point at records of one."""
    found = [
        key.parent
        for other in sorted(metadata.tables.values(), key=lambda one: one.name)
        for constraint in other.foreign_key_constraints
        for key in constraint.elements
        if key.column.table.name == table and key.column.name == "id"
    ]
    return tuple(dict.fromkeys(found))


def references(connection: Connection, table: str, record: int) -> list[Reference]:
    """Rows of other records that point at this one; those that belong to it are left out."""
    own = tables_of(table)
    found = []
    for column in pointers_to(table):
        other = column.table.name
        owner = column.table.c[owner_field(metadata.tables[other])]
        if other in own and column.name == owner.name:
            continue  # a row that only belongs to the record goes with it
        rows = connection.execute(select(owner).where(column == record))
        found += [Reference(other, row[0], column.name) for row in rows]
    return found


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
