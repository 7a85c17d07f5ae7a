"""The change log as people read it: who did what when, and how records read before and after."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection

from conservedb.questions.answers import FieldChange, NoSuch
from conservedb.questions.naming import find_object
from conservedb.records.every import metadata
from conservedb.records.layers import BOUNDS
from conservedb.store.connect import raw_of
from conservedb.store.labels import described, label, owner_table
from conservedb.store.log import Head, head, span
from conservedb.store.log_rows import parse

_WORKED_OUT = frozenset((*BOUNDS, "object_id", "uuid", "entered", "id"))
_DATE_PARTS = ("_edtf", "_earliest", "_latest", "_flags", "_derived", "_folded", "_sort")
_SETS = (
    "SELECT id, who, at, kind, coalesce(reason, ''), undoes_id, coalesce(changes, 0),"
    " coalesce(hash, '') FROM change_set"
)


@dataclass(frozen=True, slots=True)
class SetLine:
    """A change set in a line. `counts` are changes by what they concern; `hash` "" is unsealed."""

    number: int
    who: str
    at: str
    kind: str
    reason: str
    undoes: int | None
    changes: int
    hash: str
    counts: tuple[tuple[str, int], ...]
    undone_by: int | None


@dataclass(frozen=True, slots=True)
class RecordChange:
    """What happened to one record: entered, amended or withdrawn."""

    what: str
    happened: str
    fields: tuple[FieldChange, ...]


@dataclass(frozen=True, slots=True)
class LogAnswer:
    """Change sets, the latest first, and the end of the chain."""

    sets: tuple[SetLine, ...]
    more: int
    head: Head | None


def log(connection: Connection, *, number: str = "", who: str = "", limit: int = 30) -> LogAnswer:
    """The latest change sets, of one object or one person where named.

    Raises:
        NoSuch: no such object.
    """
    wanted = _sets_of_object(connection, number) if number else None
    rows = [
        row
        for row in connection.exec_driver_sql(f"{_SETS} ORDER BY id DESC").all()
        if (wanted is None or row[0] in wanted) and (not who or row[1].casefold() == who.casefold())
    ]
    undone = _undone(connection)
    lines = tuple(_line(connection, row, undone) for row in rows[:limit])
    return LogAnswer(lines, max(len(rows) - limit, 0), head(raw_of(connection)))


def set_line(connection: Connection, number: int) -> SetLine:
    """One change set.

    Raises:
        NoSuch: there is none of that number.
    """
    row = connection.exec_driver_sql(f"{_SETS} WHERE id = ?", (number,)).first()
    if row is None:
        raise NoSuch("change set", str(number), ())
    return _line(connection, row, _undone(connection))


def set_changes(connection: Connection, number: int) -> tuple[RecordChange, ...]:
    """What one change set did, record by record."""
    rows = connection.exec_driver_sql(
        "SELECT table_name, record_id, before, after FROM change"
        " WHERE id > ? AND id <= ? ORDER BY id",
        span(raw_of(connection), number),
    )
    return tuple(_change(connection, *row) for row in rows if row[0] != "layer_side")


def told(before: str | None, after: str | None) -> tuple[FieldChange, ...]:
    """The fields that differ between two states of a row, without what is worked out."""
    was = parse(before) if before is not None else {}
    now = parse(after) if after is not None else {}
    names = sorted(was.keys() | now.keys())
    return tuple(
        FieldChange(_called(name), _said(was.get(name)), _said(now.get(name)))
        for name in names
        if was.get(name) != now.get(name)
        and name not in _WORKED_OUT
        and (not name.endswith(_DATE_PARTS) or _read_otherwise(name, was, now))
    )


def _called(name: str) -> str:
    return name.replace("_edtf", " read as").removesuffix("_words")


def _read_otherwise(name: str, was: dict[str, Any], now: dict[str, Any]) -> bool:
    """Whether the same words of a date are understood otherwise than before."""
    words = name.replace("_edtf", "_words")
    return name.endswith("_edtf") and was.get(words) == now.get(words)


def _said(value: Any) -> str:  # noqa: ANN401 (whatever a column holds)
    return "" if value is None else str(value)


def _change(
    connection: Connection, table: str, record: int, before: str | None, after: str | None
) -> RecordChange:
    happened = "withdrawn" if after is None else "entered" if before is None else "amended"
    fields = told(before, after)
    what = label(connection, table, record)
    if "no. " in what and table == owner_table(table):  # it is gone: its name is in the log
        what = described(table, parse(before or after or ""))
    if table != owner_table(table):
        what, happened = f"{what}: {table.replace('_', ' ')}", happened
    return RecordChange(what, happened, fields)


def _line(connection: Connection, row: Any, undone: dict[int, int]) -> SetLine:  # noqa: ANN401
    counts = connection.exec_driver_sql(
        "SELECT table_name, count(*) FROM change WHERE id > ? AND id <= ?"
        " AND table_name <> 'layer_side' GROUP BY table_name ORDER BY min(id)",
        span(raw_of(connection), row[0]),
    ).all()
    number, who, at, kind, reason, undoes, changes, sealed = row
    counted = tuple((name, count) for name, count in counts)
    return SetLine(
        number, who, at, kind, reason, undoes, changes, sealed, counted, undone.get(number)
    )


def _undone(connection: Connection) -> dict[int, int]:
    """Which set was last taken back, or put in force again, by which."""
    rows = connection.exec_driver_sql(
        "SELECT undoes_id, max(id) FROM change_set WHERE undoes_id IS NOT NULL GROUP BY undoes_id"
    )
    return dict(rows.all())


def _sets_of_object(connection: Connection, number: str) -> set[int]:
    """Change sets that touched a record of the object, also one that is gone since."""
    owner = find_object(connection, number)
    found: set[int] = set()
    for name, table in metadata.tables.items():
        whole = owner_table(name)
        if "object_id" not in metadata.tables[whole].c:
            continue
        found.update(
            _numbers(
                connection,
                "SELECT DISTINCT set_id FROM change WHERE table_name = ? AND record_id IN"
                f" (SELECT id FROM {whole} WHERE object_id = ?)",
                (name, owner.id),
            )
        )
        if "object_id" not in table.c:
            continue
        found.update(
            _numbers(
                connection,
                "SELECT DISTINCT set_id FROM change WHERE table_name = ? AND after IS NULL"
                " AND instr(before || ',', ?)",
                (name, f",object_id={owner.id},"),
            )
        )
    statement = "SELECT DISTINCT set_id FROM change WHERE table_name = 'object' AND record_id = ?"
    return found | set(_numbers(connection, statement, (owner.id,)))


def _numbers(connection: Connection, statement: str, values: tuple[Any, ...]) -> Iterable[int]:
    return (row[0] for row in connection.exec_driver_sql(statement, values))
