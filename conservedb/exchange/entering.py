"""Entering records one by one, from a form or a command: the same cells, checks and log as import.

Everything given is written in one transaction, or nothing is.
"""

from __future__ import annotations

import datetime
import re
import sqlite3
from collections import Counter
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass

from sqlalchemy import Connection, Engine, Integer, cast, func, not_, select
from sqlalchemy.exc import IntegrityError

from conservedb.exchange.checking import Checking
from conservedb.exchange.columns import Date
from conservedb.exchange.completed import lacking_reasons
from conservedb.exchange.faults import Fault
from conservedb.exchange.files import Row, Table
from conservedb.exchange.subject import Subject
from conservedb.exchange.subjects import BY_NAME
from conservedb.exchange.taking import Taking
from conservedb.exchange.untimely import refuse_untimely
from conservedb.exchange.writing import write
from conservedb.questions.naming import find_object
from conservedb.store.connect import raw_of, writing
from conservedb.store.log import Author, open_number
from conservedb.store.log_rows import parse
from conservedb.store.problems import DatabaseProblem

PREFIXES = {
    "treatments": "T",
    "plans": "P",
    "planned_steps": "PS",
    "authorisations": "A",
    "interventions": "I",
    "agents": "G",
    "layers": "L",
    "removals": "R",
    "sightings": "V",
    "spot_tests": "ST",
    "joint_events": "E",
    "observations": "O",
    "readings": "M",
    "samples": "SP",
    "warnings": "W",
    "whereabouts": "H",
    "acceptances": "X",
    "batches": "B",
    "sources": "SRC",
    "statements": "Z",
    "standing_approvals": "SA",
}
"""What a new ref begins with where the records of the object show no habit of their own."""
_NUMBERED = re.compile(r"(.*?)(\d+)")
_HABIT = 200
"""So many of the latest refs show how they are made up."""
_LAST = chr(0x10FFFF)


@dataclass(frozen=True, slots=True)
class Entry:
    """A record to be written: the file it would stand in, and its cells by header."""

    subject: str
    cells: Mapping[str, str]


@dataclass(frozen=True, slots=True)
class Written:
    """What became of entries. Where there are faults, nothing was written.

    `keys` are those of the records, in the order of the entries; the `row` of a fault or notice
    is the place of its entry, from 1. `set_number` is that of the change set.
    """

    faults: tuple[Fault, ...] = ()
    notices: tuple[Fault, ...] = ()
    keys: tuple[str, ...] = ()
    set_number: int | None = None


class Refused(Exception):
    """Ends the transaction: nothing is kept."""

    def __init__(self, faults: Sequence[Fault], notices: Sequence[Fault] = ()) -> None:
        super().__init__("; ".join(fault.sentence() for fault in faults))
        self.faults, self.notices = tuple(faults), tuple(notices)


class Refs:
    """Gives out references that are free, in the manner of those that the object has.

    `connection` is that of the transaction, for a look at what is on record.
    """

    def __init__(self, connection: Connection) -> None:
        self.connection = connection
        self._last: dict[tuple[str, int], tuple[str, int]] = {}

    def next(self, subject: str, number: str = "") -> str:
        """A ref for a new record of a subject; `number` is that of the object, if it has one."""
        known = BY_NAME[subject]
        owner = find_object(self.connection, number).id if known.in_object else 0
        if (subject, owner) not in self._last:
            self._last[subject, owner] = self._habit(known, owner)
        prefix, last = self._last[subject, owner]
        self._last[subject, owner] = prefix, last + 1
        return f"{prefix}{last + 1}"

    def _habit(self, subject: Subject, owner: int) -> tuple[str, int]:
        """The commonest beginning of numbered refs, and the highest number behind it."""
        key = subject.table.c[subject.key[-1]]
        statement = select(key).order_by(subject.table.c.id.desc()).limit(_HABIT)
        if subject.in_object:
            statement = statement.where(subject.table.c.object_id == owner)
        recent = [ref for (ref,) in self.connection.execute(statement)]
        gone = self._once_given(subject, owner)
        # "I2012-3" is a habit of that year, not of the records to come
        habits = Counter(
            match[1]
            for ref in (*recent, *gone)
            if (match := _NUMBERED.fullmatch(ref))
            and len(match[2]) < 10
            and match[1]
            and not any(map(str.isdigit, match[1]))
        )
        prefix = habits.most_common(1)[0][0] if habits else PREFIXES.get(subject.name, "N")
        rest = func.substr(key, len(prefix) + 1)
        last = select(func.max(cast(rest, Integer))).where(
            key >= prefix,
            key < prefix + _LAST,
            func.length(rest).between(1, 9),
            not_(rest.op("GLOB")("*[^0-9]*")),
        )
        if subject.in_object:
            last = last.where(subject.table.c.object_id == owner)
        withdrawn = [match for ref in gone if (match := _NUMBERED.fullmatch(ref))]
        numbers = [int(m[2]) for m in withdrawn if m[1] == prefix and len(m[2]) < 10]
        return prefix, max(self.connection.execute(last).scalar() or 0, *numbers, 0)

    def _once_given(self, subject: Subject, owner: int) -> list[str]:
        """Refs of records that were withdrawn or taken back; they are not given again."""
        rows = self.connection.exec_driver_sql(
            "SELECT before FROM change WHERE table_name = ? AND after IS NULL",
            (subject.table.name,),
        )
        fields = [parse(before) for (before,) in rows]
        return [
            one[subject.key[-1]]
            for one in fields
            if subject.key[-1] in one and one.get("object_id", owner) == owner
        ]


Compose = Callable[[Refs], Sequence[Entry]]
"""Makes the entries, inside the transaction, so that the refs it asks for stay free."""
Afterwards = Callable[[Connection], Sequence[Fault]]
"""Looks at what was written before it is kept; any fault undoes all."""


def enter(
    engine: Engine,
    compose: Compose,
    author: Author,
    today: datetime.date,
    afterwards: Afterwards | None = None,
    *,
    whole: bool = False,
) -> Written:
    """Write entries, all or none, through the checks that an import goes through.

    Args:
        compose: makes the entries.
        afterwards: a last look, before anything is kept.
        whole: records on record are amended: each cell given replaces what is there, also a
            blank one. Else a record of the same key is a fault where its cells differ.

    Raises:
        DatabaseProblem: the file cannot be written, or refused what had passed every check.
    """
    try:
        with writing(engine, author) as connection:
            entries = compose(Refs(connection))
            refuse_unreasoned(connection, entries, author)
            written = put(connection, entries, today, whole=whole)
            faults = afterwards(connection) if afterwards else ()
            if faults:
                raise Refused(faults, written.notices)
            return written
    except Refused as refused:
        return Written(refused.faults, refused.notices)


def refuse_unreasoned(connection: Connection, entries: Sequence[Entry], author: Author) -> None:
    """Refuse entries that change what is complete, where the author names no reason.

    Raises:
        Refused: there are such entries.
    """
    if author.reason.strip():
        return
    faults = lacking_reasons(connection, [(one.subject, one.cells) for one in entries])
    if faults:
        raise Refused(faults)


def put(
    connection: Connection, entries: Sequence[Entry], today: datetime.date, *, whole: bool = False
) -> Written:
    """Write entries inside the caller's writing transaction.

    Raises:
        Refused: something is wrong with them; the caller must let the transaction go.
        DatabaseProblem: the database refused what had passed every check.
    """
    tables = tables_of_entries(entries, today)
    taking = Taking(
        connection, tables, update=whole, entered=today.isoformat(), whole=whole, entering=True
    )
    taking.take()
    checking = Checking(connection, taking)
    checking.check()
    notices = tuple(taking.keys.notices)
    refuse_untimely(taking, today)
    if not whole:
        _refuse_known(taking)
    if taking.faults:
        raise Refused(tuple(dict.fromkeys(taking.faults)), notices)
    new = {r.id for r in taking.records.get("objects", {}).values() if r.new}
    known = taking.touched | {r.id for r in taking.records.get("objects", {}).values()}
    concerned = (known - new) | checking.ordering.also_concerned
    try:
        write(connection, taking.records, checking.ordering.bounds, concerned)
    except (IntegrityError, sqlite3.IntegrityError) as problem:
        raise DatabaseProblem(
            f"the database refused a record ({problem.args[0]}); nothing was written"
        ) from problem
    by_row = {
        (name, record.row.first): taking.keys.name_of(name, record.id)
        for name, records in taking.records.items()
        for record in records.values()
    }
    keys = tuple(by_row.get((e.subject, row), "") for row, e in enumerate(entries, 1))
    return Written((), notices, keys, open_number(raw_of(connection)))


def tables_of_entries(entries: Iterable[Entry], today: datetime.date) -> list[Table]:
    """The entries as files are read: one table for each subject, one row for each entry."""
    by_subject: dict[str, list[tuple[int, Mapping[str, str]]]] = {}
    for row, entry in enumerate(entries, 1):
        by_subject.setdefault(entry.subject, []).append((row, entry.cells))
    tables = []
    for name, subject in BY_NAME.items():
        rows = by_subject.get(name, [])
        if not rows:
            continue
        given = {header for _, cells in rows for header in cells}
        headers = [header for header in subject.headers if header in given]
        table = Table(subject, headers)
        dates = {column.name for column in subject.plain if isinstance(column, Date)}
        for row, cells in rows:
            _refuse_strange(table, row, cells)
            said = [_said_today(cells.get(header, ""), header, dates, today) for header in headers]
            table.rows.append(Row(row, row, said))
        tables.append(table)
    return tables


def _refuse_known(taking: Taking) -> None:
    """What is on record is amended, with a reason, and never filled in by the way."""
    for subject, records in taking.present():
        for record in records.values():
            if not record.new and record.changed and not record.bad:
                key = taking.keys.name_of(subject.name, record.id)
                reason = f"there is a {subject.singular} {key} on record already"
                taking.charge(subject, record, subject.key[-1], "", reason, "amend that one")


def _said_today(cell: str, header: str, dates: set[str], today: datetime.date) -> str:
    """Whoever writes "today" means a day, which is kept as that day."""
    spoken = header in dates and cell.strip().casefold() == "today"
    return today.isoformat() if spoken else cell


def _refuse_strange(table: Table, row: int, cells: Mapping[str, str]) -> None:
    """Headers that the file does not have, and characters that no text holds."""
    for header, cell in cells.items():
        if header not in table.subject.headers:
            known = ", ".join(table.subject.headers)
            table.fault(row, "is no field here", f"use one of {known}", header)
        elif "\0" in cell:
            table.fault(row, "holds a NUL character", "take it out", header, cell)
        elif any("\ud800" <= character <= "\udfff" for character in cell):
            table.fault(row, "holds a character that is no text", "type it again", header)
    missing = [h for h in ("object",) if table.subject.in_object and h not in cells]
    if missing:
        table.fault(row, "names no object", "write the object's number", "object")
