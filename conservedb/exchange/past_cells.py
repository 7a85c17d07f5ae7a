"""A record as somebody saw it: its cells at an earlier version, read back from the log."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from operator import itemgetter
from typing import Any

from sqlalchemy import Connection
from sqlalchemy.exc import NoResultFound

from conservedb.exchange.amending import Shown
from conservedb.exchange.columns import Column, Values
from conservedb.exchange.keys import KeyBook
from conservedb.exchange.lists import ListColumn
from conservedb.exchange.reading_cells import find_record, subject_named
from conservedb.questions.answers import NoSuch
from conservedb.store.log_rows import parse
from conservedb.store.past import Change, changes_of

WITHDRAWN = "(withdrawn since)"
"""Stands for what a record named then and is no longer there."""


def shown_at(connection: Connection, subject: str, number: str, key: str, version: int) -> Shown:
    """A record as it was at a version that was printed or shown.

    Raises:
        NoSuch: there is no such record, or that is no version of it.
    """
    known = subject_named(subject)
    record = find_record(connection, known, number, key)
    changes = changes_of(connection, known.table.name, record)
    numbers = [one.number for one in changes]
    if version not in numbers:
        near = tuple(str(one) for one in numbers[-1:])
        raise NoSuch(f"version of {known.singular} {key}", str(version), near)
    then = [one for one in changes if one.number <= version]
    fields = next((row for row in _rows(then, known.table.name)), {})
    book = KeyBook(connection)
    cells = {"object": book.name_of("objects", fields["object_id"])} if known.in_object else {}
    for column in known.columns:
        if isinstance(column, ListColumn):
            cells[column.name] = _listed(column, _items(column, fields, then), book)
        else:
            values = tuple(fields.get(field) for field in column.fields)
            cells |= dict(zip(column.names, _shown(column, values, book), strict=True))
    return Shown(cells, version)


def _rows(changes: Sequence[Change], table: str) -> list[dict[str, Any]]:
    """The rows of a table that some changes leave in being."""
    being: Counter[str] = Counter()
    for one in changes:
        if one.table == table:
            being[one.before or ""] -= 1
            being[one.after or ""] += 1
    return [parse(text) for text, many in being.items() if text and many > 0]


def _items(column: ListColumn, fields: dict[str, Any], changes: Sequence[Change]) -> list[Values]:
    """The items of a list as they stood, in the order of its cell."""
    rows = _rows(changes, column.table)
    order = "position" if any("position" in row for row in rows) else column.fields[0]
    rows.sort(key=itemgetter(order))
    items: list[Values] = [tuple(row.get(field) for field in column.fields) for row in rows]
    if not items and column.single and fields.get(column.single) is not None:
        items = [(fields[column.single],)]
    return items


def _listed(column: ListColumn, items: list[Values], book: KeyBook) -> str:
    try:
        return column.show(items, book)
    except NoResultFound:
        return WITHDRAWN


def _shown(column: Column, values: Values, book: KeyBook) -> tuple[str, ...]:
    try:
        return column.show_all(values, book)
    except NoResultFound:
        return (WITHDRAWN,) * len(column.names)
