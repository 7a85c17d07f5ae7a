"""Rows of a folder that somebody has overtaken: amended or withdrawn after it was exported."""

from __future__ import annotations

import json
from collections import defaultdict
from collections.abc import Iterable, Iterator
from typing import Any, NamedTuple

from sqlalchemy import Connection
from sqlalchemy.exc import NoResultFound

from conservedb.exchange.columns import Column
from conservedb.exchange.faults import Fault
from conservedb.exchange.keys import KeyBook
from conservedb.exchange.log_head import FILE, WrittenHead
from conservedb.exchange.record import Record
from conservedb.exchange.stored import links_of
from conservedb.exchange.subject import Subject
from conservedb.exchange.taking import Taking
from conservedb.store.log_rows import parse
from conservedb.store.past import tables_of

_AGAIN = "export again and make the change there, or give the cell what stands in it now"
_SINCE = (
    "SELECT c.table_name, c.record_id, c.before, c.after, s.who, s.at"
    " FROM json_each(?) w CROSS JOIN change c ON c.record_id = w.value"
    " JOIN change_set s ON s.id = c.set_id"
    " WHERE c.set_id > ? AND c.table_name IN ({marks}) ORDER BY c.id"
)
_GONE = (
    "SELECT c.before, s.who, s.at FROM change c JOIN change_set s ON s.id = c.set_id"
    " WHERE c.table_name = ? AND c.after IS NULL AND c.set_id > ? ORDER BY c.id"
)
Fields = dict[str, Any]


class _Change(NamedTuple):
    table: str
    before: str | None
    after: str | None
    who: str
    at: str

    @property
    def by(self) -> str:
        return f"by {self.who} on {self.at[:10]}"


def refuse_overtaken(connection: Connection, taking: Taking, known: WrittenHead | None) -> None:
    """Charge rows whose cells would undo what was amended after the folder was exported.

    Args:
        taking: the rows as read; an update is asked for.
        known: where the log ended then; nothing is refused where that is of another database.
    """
    identity = connection.exec_driver_sql("SELECT uuid FROM database").scalar_one()
    if known is None or known.identity != identity:
        return
    sealed = connection.exec_driver_sql(
        "SELECT hash FROM change_set WHERE id = ?", (known.head.number,)
    ).scalar()
    if sealed != known.head.hash:
        reason = f"names an end ({known.head}) that the log of this database does not have"
        remedy = (
            "the log was cut off or written anew, or the folder comes from another copy: run"
            f" conservedb verify; to import all the same, take {FILE} out of the folder"
        )
        taking.faults.append(Fault(FILE, 0, "", "", reason, remedy))
        return
    for subject, records in taking.present():
        sound = [record for record in records.values() if not record.bad]
        _refuse_withdrawn(connection, taking, subject, sound, known.head.number)
        concerned = {r.id: r for r in sound if r.changed and not r.new}
        since = _since(connection, subject, concerned, known.head.number)
        for one, changes in since.items():
            for header, was, now in _overtaken(
                connection, taking.keys, subject, concerned[one], changes
            ):
                cell = _cell(taking, subject, concerned[one], header)
                reason = f"changed since this folder was exported, {changes[-1].by}: {header}"
                reason += f" was {was or 'blank'}, is {now or 'blank'}"
                taking.charge(subject, concerned[one], header, cell, reason, _AGAIN)


def _since(
    connection: Connection, subject: Subject, ids: Iterable[int], number: int
) -> dict[int, list[_Change]]:
    """Changes of records, and of what belongs to them, after a change set."""
    found: dict[int, list[_Change]] = defaultdict(list)
    wanted = list(ids)
    if wanted:
        names = tables_of(subject.table.name)
        statement = _SINCE.format(marks=", ".join("?" * len(names)))
        given = (json.dumps(wanted), number, *names)
        for table, record, *rest in connection.exec_driver_sql(statement, given):
            found[record].append(_Change(table, *rest))
    return found


def _overtaken(
    connection: Connection,
    keys: KeyBook,
    subject: Subject,
    record: Record,
    changes: list[_Change],
) -> Iterator[tuple[str, str, str]]:
    """Columns amended since whose cell says otherwise: header, what it was, what it is."""
    own = [one for one in changes if one.table == subject.table.name and one.after is not None]
    before = parse(own[0].before) if own and own[0].before else {}
    now = parse(own[-1].after) if own and own[-1].after else {}
    for column in subject.plain:
        was, is_, cell = (
            tuple(fields.get(name) for name in column.fields)
            for fields in (before, now, _values(subject, record))
        )
        if own and was != is_ and cell != is_ and column.name not in ("uuid", "entered"):
            yield column.names[0], _said(column, was, keys), _said(column, is_, keys)
    tables = {one.table for one in changes if one.table != subject.table.name}
    for listed in subject.lists:
        single = listed.single and before.get(listed.single) != now.get(listed.single)
        if listed.name in record.links and (listed.table in tables or single):
            rows = links_of(connection, subject, listed, record.id)
            yield listed.name, "otherwise", listed.show(rows, keys)


def _values(subject: Subject, record: Record) -> Fields:
    return dict(zip(subject.fields, record.values, strict=True))


def _said(column: Column, values: tuple[Any, ...], keys: KeyBook) -> str:
    """A cell as exported; what it named may be gone by now."""
    try:
        return " ".join(part for part in column.show_all(values, keys) if part)
    except NoResultFound:
        return "a record that is withdrawn"


def _cell(taking: Taking, subject: Subject, record: Record, header: str) -> str:
    headers = next(table.headers for table in taking.tables if table.subject is subject)
    return record.row.cells[headers.index(header)] if header in headers else ""


def _refuse_withdrawn(
    connection: Connection, taking: Taking, subject: Subject, records: list[Record], number: int
) -> None:
    """Rows that would bring back what somebody has withdrawn."""
    new = [record for record in records if record.new]
    if not new:
        return
    rows = connection.exec_driver_sql(_GONE, (subject.table.name, number))
    gone = {parse(before)["uuid"]: (who, at) for before, who, at in rows}
    for record in new:
        identity = _values(subject, record)["uuid"]
        if identity in gone:
            who, at = gone[identity]
            reason = f"was withdrawn since this folder was exported, by {who} on {at[:10]}"
            remedy = "leave the row out, or bring the record back with conservedb undo first"
            taking.charge(subject, record, subject.key[-1], str(record.key), reason, remedy)
