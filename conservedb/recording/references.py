"""Who points at a record: what must be looked at before one is withdrawn or taken back."""

from __future__ import annotations

from functools import cache
from typing import Any, NamedTuple

from sqlalchemy import Column, Connection, select

from conservedb.records.every import metadata
from conservedb.store.logging_triggers import owner_field
from conservedb.store.past import tables_of


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
