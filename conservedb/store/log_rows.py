"""Rows as the log writes them: read back, compared with the tables, logged where they differ."""

from __future__ import annotations

import re
import sqlite3
from collections import Counter
from collections.abc import Iterator
from typing import Any, NamedTuple

from sqlalchemy import Table

from conservedb.store.logging_triggers import logged_tables, owner_field, row_text

_FIELD = re.compile(r"([a-z0-9_]+)=('(?:[^']|'')*'|[^,']+)(?:,|$)", re.DOTALL)

_INTO = "INSERT INTO change (set_id, table_name, record_id, before, after)"


class Difference(NamedTuple):
    """A row that is not as the log last says; `logged` or `found` is None where there is none."""

    table: str
    record: int
    logged: str | None
    found: str | None


def parse(text: str) -> dict[str, Any]:
    """The fields of a logged row; those that were blank are not in it.

    Raises:
        ValueError: the text is not one that the log writes.
    """
    fields: dict[str, Any] = {}
    place = 0
    while place < len(text):
        match = _FIELD.match(text, place)
        if match is None:
            raise ValueError(f"a row in the log cannot be read: {text[place : place + 40]!r}")
        fields[match[1]] = _value(match[2])
        place = match.end()
    return fields


def _value(literal: str) -> Any:  # noqa: ANN401 (whatever a column holds)
    if literal.startswith("'"):
        return literal[1:-1].replace("''", "'")
    return float(literal) if any(sign in literal for sign in ".eEn") else int(literal)


def current(raw: sqlite3.Connection, table: Table) -> Iterator[tuple[int, str]]:
    """Every row of a table as the log writes it, with what it is filed under."""
    yield from raw.execute(f"SELECT t.{owner_field(table)}, {row_text(table, 't')} FROM {table} t")


def replayed(raw: sqlite3.Connection, table: str) -> tuple[Counter[tuple[int, str]], list[int]]:
    """The rows of a table that the log leaves in being, and the changes that do not follow.

    A change does not follow where what it says was there before is not what the log had.
    """
    being: Counter[tuple[int, str]] = Counter()
    astray = []
    for number, record, before, after in raw.execute(
        "SELECT id, record_id, before, after FROM change WHERE table_name = ? ORDER BY id", (table,)
    ):
        if before is not None:
            if being[record, before] < 1:
                astray.append(number)
            else:
                being[record, before] -= 1
        if after is not None:
            being[record, after] = being.get((record, after), 0) + 1
    return +being, astray


def differences(raw: sqlite3.Connection) -> Iterator[Difference]:
    """Every row that is not as the log last says."""
    for table in logged_tables():
        yield from differing(raw, table, replayed(raw, table.name)[0])


def differing(
    raw: sqlite3.Connection, table: Table, logged: Counter[tuple[int, str]]
) -> Iterator[Difference]:
    """Every row of a table that is not as the log last says; `logged` is what it leaves there."""
    found = Counter(current(raw, table))
    yield from _paired(table.name, logged - found, found - logged)


def _paired(
    table: str, logged: Counter[tuple[int, str]], found: Counter[tuple[int, str]]
) -> Iterator[Difference]:
    """What was logged and what is there instead, where one row answers to one."""
    waiting: dict[int, list[str]] = {}
    for record, text in found.elements():
        waiting.setdefault(record, []).append(text)
    for record, text in logged.elements():
        instead = waiting.get(record)
        yield Difference(table, record, text, instead.pop(0) if instead else None)
    for record, texts in waiting.items():
        for text in texts:
            yield Difference(table, record, None, text)


def log_differences(raw: sqlite3.Connection) -> int:
    """Write into the open change set what the tables hold otherwise than the log says.

    For rows that came in while no triggers watched: an upgrade, a file loaded from a dump.

    Returns:
        How many rows that were.
    """
    return sum(_log_table(raw, table) for table in logged_tables())


def _log_table(raw: sqlite3.Connection, table: Table) -> int:
    known = raw.execute("SELECT 1 FROM change WHERE table_name = ? LIMIT 1", (table.name,))
    if known.fetchone() is None:  # all of it is new: the database does it at once
        done = raw.execute(
            f"{_INTO} SELECT (SELECT id FROM change_set WHERE hash IS NULL), '{table.name}',"
            f" t.{owner_field(table)}, NULL, {row_text(table, 't')} FROM {table.name} t"
        )
        return done.rowcount
    rows = [
        (d.table, d.record, d.logged, d.found)
        for d in differing(raw, table, replayed(raw, table.name)[0])
    ]
    raw.executemany(
        f"{_INTO} VALUES ((SELECT id FROM change_set WHERE hash IS NULL), ?, ?, ?, ?)", rows
    )
    return len(rows)
