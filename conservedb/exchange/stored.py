"""Rows of link tables as the database holds them."""

from __future__ import annotations

from functools import cache
from typing import Any

from sqlalchemy import Connection, Select, bindparam, select

from conservedb.exchange.columns import Values
from conservedb.exchange.lists import ListColumn
from conservedb.exchange.subject import Subject
from conservedb.records.every import metadata


@cache
def link_statement(column: ListColumn, all_rows: bool) -> Select[Any]:
    """Owner and item fields of a list, for one owner or for all, in the order of the cell."""
    table = metadata.tables[column.table]
    owner = table.c[column.owner]
    order = table.c.position if "position" in table.c else table.c[column.fields[0]]
    statement = select(owner, *(table.c[field] for field in column.fields))
    if all_rows:
        return statement.order_by(owner, order)
    return statement.where(owner == bindparam("owner")).order_by(order)


def links_of(
    connection: Connection, subject: Subject, column: ListColumn, record: int
) -> list[Values]:
    """The items of a list of one record; a single item kept in the record itself included."""
    rows = connection.execute(link_statement(column, False), {"owner": record})
    items = [tuple(row[1:]) for row in rows]
    if not items and column.single:
        field = subject.table.c[column.single]
        kept = connection.execute(select(field).where(subject.table.c.id == record)).scalar()
        items = [(kept,)] if kept is not None else []
    return items
