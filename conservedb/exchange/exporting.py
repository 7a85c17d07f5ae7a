"""Writing every table out as CSV: all columns, unaltered, in a stable order."""

from __future__ import annotations

import csv
import os
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, select

from conservedb.exchange.columns import Values
from conservedb.exchange.keys import KeyBook
from conservedb.exchange.lists import ListColumn
from conservedb.exchange.log_head import write_head
from conservedb.exchange.stored import link_statement
from conservedb.exchange.subject import Subject
from conservedb.exchange.subjects import SUBJECTS
from conservedb.store.problems import DatabaseProblem
from conservedb.store.shipped_shape import SHAPES


def export_folder(connection: Connection, folder: Path) -> dict[str, int]:
    """Write one CSV file per subject into `folder`, which is made, and the end of the log.

    Returns:
        Rows written, by file.

    Raises:
        DatabaseProblem: the folder holds files already, or cannot be written.
    """
    try:
        folder.mkdir(parents=True, exist_ok=True)
        if any(folder.iterdir()):
            raise DatabaseProblem(f"{folder} is not empty; name a new folder")
        keys = KeyBook(connection)
        rows = {subject.file: _export(connection, subject, keys, folder) for subject in SUBJECTS}
        write_head(connection, folder)
        return rows
    except OSError as problem:
        raise DatabaseProblem(
            f"{folder} cannot be written ({problem.strerror}); choose another place"
        ) from problem


def _export(connection: Connection, subject: Subject, keys: KeyBook, folder: Path) -> int:
    partial = folder / f"{subject.file}.partial"
    count = 0
    with partial.open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file)
        writer.writerow(subject.headers)
        for row in _in_order(subject, export_rows(connection, subject, keys)):
            writer.writerow(row)
            count += 1
        file.flush()
        os.fsync(file.fileno())
    partial.rename(folder / subject.file)
    return count


def _in_order(subject: Subject, rows: Iterator[list[str]]) -> Iterable[list[str]]:
    """By key where the program ships records too: else their order would be that of editions."""
    if subject.name not in SHAPES:
        return rows
    keys = [subject.headers.index(name) for name in subject.key]
    return sorted(rows, key=lambda cells: [cells[place] for place in keys])


def export_rows(connection: Connection, subject: Subject, keys: KeyBook) -> Iterator[list[str]]:
    """The rows of a subject as cells, ordered by object and by day of writing (id)."""
    table = subject.table
    statement = select(table.c.id, *(table.c[field] for field in subject.fields))
    statement = statement.order_by(table.c.id)
    lists = {c.name: _Links(connection, c) for c in subject.lists}
    for record, *values in connection.execute(statement):
        cells = [keys.name_of("objects", values[0])] if subject.in_object else []
        position = len(cells)
        for column in subject.columns:
            if isinstance(column, ListColumn):
                rows = lists[column.name].of(record)
                if not rows and column.single:
                    single = values[subject.position[column.single]]
                    rows = [(single,)] if single is not None else []
                cells.append(column.show(rows, keys))
            else:
                width = len(column.fields)
                group = tuple(values[position : position + width])
                position += width
                cells.extend(column.show_all(group, keys))
        yield cells


class _Links:
    """The link rows of a list column, read alongside the records in the order of their ids."""

    def __init__(self, connection: Connection, column: ListColumn) -> None:
        self._rows = iter(connection.execute(link_statement(column, True)))
        self._waiting: tuple[Any, ...] | None = next(self._rows, None)

    def of(self, record: int) -> list[Values]:
        """The items of this record."""
        items: list[Values] = []
        while self._waiting is not None and self._waiting[0] == record:
            items.append(tuple(self._waiting[1:]))
            self._waiting = next(self._rows, None)
        return items
