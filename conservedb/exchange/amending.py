"""Amending a record: with a reason, and never over what somebody else has changed meanwhile."""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from dataclasses import dataclass

from sqlalchemy import Connection, Engine
from sqlalchemy.exc import IntegrityError

from conservedb.exchange.completed import needs_reason
from conservedb.exchange.entering import Afterwards, Entry, Refused, Written, put
from conservedb.exchange.faults import CellProblem, Fault
from conservedb.exchange.keys import KeyBook
from conservedb.exchange.reading_cells import cells_of, find_record, subject_named
from conservedb.exchange.subject import Subject
from conservedb.store.connect import raw_of, writing
from conservedb.store.log import Author, open_number
from conservedb.store.past import last_change

FIXED = ("uuid", "entered", "object")
"""What is never amended: who a record is, when it came, and which object it belongs to."""


@dataclass(frozen=True, slots=True)
class Clash:
    """A field that two people changed: as the form showed it, mine, theirs, and who they are."""

    field: str
    shown: str
    mine: str
    theirs: str
    by: str
    at: str


@dataclass(frozen=True, slots=True)
class Shown:
    """A record as a form shows it: its cells, and its version (the number of its last change)."""

    cells: Mapping[str, str]
    version: int


@dataclass(frozen=True, slots=True)
class Amended(Written):
    """What became of an amendment; where there are clashes, nothing was written."""

    clashes: tuple[Clash, ...] = ()


class Clashing(Exception):
    """Somebody else changed the same fields; ends the transaction."""

    def __init__(self, clashes: tuple[Clash, ...]) -> None:
        super().__init__(clashes)
        self.clashes = clashes


def shown(connection: Connection, subject: str, number: str, key: str) -> Shown:
    """A record as a form shows it.

    Raises:
        NoSuch: there is none.
    """
    known = subject_named(subject)
    record = find_record(connection, known, number, key)
    last = last_change(connection, known.table.name, record)
    return Shown(cells_of(connection, known, record), last.number if last else 0)


def amend(
    engine: Engine,
    subject: str,
    number: str,
    key: str,
    cells: Mapping[str, str],
    author: Author,
    today: datetime.date,
    seen: Shown | None = None,
    afterwards: Afterwards | None = None,
) -> Amended:
    """Replace cells of a record; a blank cell blanks the field.

    Args:
        subject: what kind of record, as its file is called or in the singular.
        number: of its object, "" where it has none.
        key: its mark, ref or key.
        cells: the new text, by header; fields left out stay.
        author: with the reason.
        seen: the record as the form showed it; what somebody else has changed since in the same
            fields is a clash.
        afterwards: a last look, before anything is kept.

    Raises:
        NoSuch: there is no such record.
        DatabaseProblem: the file cannot be written.
    """
    known = subject_named(subject)
    try:
        with writing(engine, author) as connection:
            refuse_unreasoned(connection, known, number, key, author)
            written = amend_within(connection, known, number, key, cells, today, seen)
            faults = afterwards(connection) if afterwards else ()
            if faults:
                raise Refused(faults, written.notices)
            return Amended((), written.notices, written.keys, written.set_number)
    except Refused as refused:
        return Amended(refused.faults, refused.notices)
    except Clashing as clashing:
        return Amended(clashes=clashing.clashes)


def refuse_unreasoned(
    connection: Connection, subject: Subject, number: str, key: str, author: Author
) -> None:
    """Refuse to amend what is complete where the author names no reason.

    Raises:
        NoSuch: there is no such record.
        Refused: it is complete.
    """
    why = needs_reason(connection, subject.name, number, key)
    if why and not author.reason.strip():
        raise _refused(subject, "", key, why, "give the reason for this change")


def amend_within(
    connection: Connection,
    subject: Subject,
    number: str,
    key: str,
    cells: Mapping[str, str],
    today: datetime.date,
    seen: Shown | None = None,
) -> Written:
    """`amend` inside the caller's writing transaction.

    Raises:
        NoSuch, Refused, Clashing, DatabaseProblem.
    """
    record = find_record(connection, subject, number, key)
    now = cells_of(connection, subject, record)
    changed = {
        header: cell
        for header, cell in cells.items()
        if header not in FIXED and cell != now.get(header)
    }
    if seen is not None:
        clashes = _clashes(connection, subject, record, changed, now, seen)
        if clashes:
            raise Clashing(clashes)
        # what the form did not change stays as it is now, not as the form showed it
        changed = {h: cell for h, cell in changed.items() if cell != seen.cells.get(h, "")}
    if not changed:
        return Written(keys=(key,))
    identity = {header: now[header] for header in ("object", *subject.key) if header in now}
    if any(header in changed for header in subject.key):
        return _rename(connection, subject, record, identity, changed, today)
    return put(connection, [Entry(subject.name, identity | changed)], today, whole=True)


def _clashes(
    connection: Connection,
    subject: Subject,
    record: int,
    mine: Mapping[str, str],
    now: Mapping[str, str],
    seen: Shown,
) -> tuple[Clash, ...]:
    """Fields that I changed and somebody else changed otherwise since they were shown."""
    last = last_change(connection, subject.table.name, record)
    if last is None or last.number == seen.version:
        return ()
    return tuple(
        Clash(header, seen.cells.get(header, ""), cell, now.get(header, ""), last.who, last.at)
        for header, cell in mine.items()
        if cell != seen.cells.get(header, "") and now.get(header, "") != seen.cells.get(header, "")
    )


def _rename(
    connection: Connection,
    subject: Subject,
    record: int,
    identity: Mapping[str, str],
    changed: Mapping[str, str],
    today: datetime.date,
) -> Written:
    """Give a record another key, then amend the rest of it."""
    keys = KeyBook(connection)
    fields: dict[str, object] = {}
    for column in subject.plain:
        if column.name not in subject.key or column.name not in changed:
            continue
        cell = changed[column.name]
        if not cell.strip():
            raise _refused(subject, column.name, cell, "is blank", "every record needs its key")
        try:
            fields |= dict(zip(column.fields, column.parse(cell, keys), strict=True))
        except CellProblem as problem:
            raise _refused(subject, column.name, cell, problem.reason, problem.remedy) from problem
    names = ", ".join(f"{name} = ?" for name in fields)
    try:
        connection.exec_driver_sql(
            f"UPDATE {subject.table.name} SET {names} WHERE id = ?", (*fields.values(), record)
        )
    except IntegrityError as problem:
        header = next(header for header in subject.key if header in changed)
        reason = "stands for another record already"
        cell = changed[header]
        raise _refused(subject, header, cell, reason, "choose another") from problem
    now = dict(identity) | {header: changed[header] for header in subject.key if header in changed}
    rest = {header: cell for header, cell in changed.items() if header not in subject.key}
    if not rest:
        return Written(keys=(now[subject.key[-1]],), set_number=open_number(raw_of(connection)))
    return put(connection, [Entry(subject.name, now | rest)], today, whole=True)


def _refused(subject: Subject, column: str, value: str, reason: str, remedy: str) -> Refused:
    return Refused([Fault(subject.file, 1, column, value, reason, remedy)])
