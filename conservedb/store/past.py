"""What the log says of a record: who changed it last, and how it read before."""

from __future__ import annotations

from functools import cache
from typing import NamedTuple

from sqlalchemy import Connection

from conservedb.records.every import metadata
from conservedb.store.logging_triggers import owner_field


class Change(NamedTuple):
    """A change of a record, or of the rows that belong to it; `at` is UTC, ISO 8601."""

    number: int
    table: str
    before: str | None
    after: str | None
    set_number: int
    who: str
    at: str
    kind: str
    reason: str | None


@cache
def tables_of(table: str) -> tuple[str, ...]:
    """A table of records, and those whose rows only belong to such a record."""
    found = [table]
    for name, other in sorted(metadata.tables.items()):
        if "uuid" in other.c or name == table or not other.primary_key.columns:
            continue
        owner = owner_field(other) if _links(name) else ""
        if owner and any(
            key.column.table.name == table
            for constraint in other.foreign_key_constraints
            for key in constraint.elements
            if key.parent.name == owner
        ):
            found.append(name)
    return tuple(found)


def _links(name: str) -> bool:
    return name not in ("change", "change_set", "database", "shipped")


_COLUMNS = (
    "SELECT c.id, c.table_name, c.before, c.after, s.id, s.who, s.at, s.kind, s.reason"
    " FROM change c JOIN change_set s ON s.id = c.set_id"
)


def changes_of(connection: Connection, table: str, record: int) -> list[Change]:
    """Every change of a record and of what belongs to it, oldest first."""
    names = tables_of(table)
    marks = ", ".join("?" * len(names))
    rows = connection.exec_driver_sql(
        f"{_COLUMNS} WHERE c.table_name IN ({marks}) AND c.record_id = ? ORDER BY c.id",
        (*names, record),
    )
    return [Change(*row) for row in rows]


def last_change(connection: Connection, table: str, record: int) -> Change | None:
    """The last change of a record or of what belongs to it; its number is the record's version."""
    changes = changes_of(connection, table, record)
    return changes[-1] if changes else None
