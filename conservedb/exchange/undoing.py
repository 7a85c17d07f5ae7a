"""Taking a change set back, and in force again, through the checks that an import goes through."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence

from sqlalchemy import Connection, Engine, select

from conservedb.exchange.checking import Checking
from conservedb.exchange.completed import undoing_needs_reason
from conservedb.exchange.entering import Entry, tables_of_entries
from conservedb.exchange.faults import Fault
from conservedb.exchange.keys import KeyBook
from conservedb.exchange.reading_cells import cells_of
from conservedb.exchange.subjects import BY_NAME
from conservedb.exchange.taking import Taking
from conservedb.recording import undoing
from conservedb.recording.undoing import TakenBack
from conservedb.store.opening import today

_BY_TABLE = {subject.table.name: subject for subject in BY_NAME.values()}
_OF_THE_FILE = ("uuid", "entered")


def take_back(
    engine: Engine,
    who: str,
    number: int | None = None,
    reason: str = "",
    *,
    undone: bool = False,
) -> TakenBack:
    """Take a change set back, or put one in force again that was, in one transaction.

    Args:
        number: of the set; the last of this person where not given.
        undone: take a taking-back back.

    Raises:
        CannotUndo: there is nothing of that kind, something of it was changed since, it reaches
            into what is complete and no reason is given, or what would be on record again does
            not agree with what was recorded meanwhile.
        DatabaseProblem: the file cannot be written.
    """
    return undoing.take_back(
        engine,
        who,
        number,
        reason,
        undone=undone,
        complete=undoing_needs_reason,
        disagrees=disagreement,
    )


def disagreement(connection: Connection, records: Iterable[tuple[str, int]]) -> str:
    """Why records, as they now stand, could not be recorded; "" where they could.

    Args:
        records: by table and id; those that are no longer there are passed over.
    """
    keys = KeyBook(connection)
    entries = []
    wanted: dict[str, set[int]] = defaultdict(set)
    for table, record in records:
        if table in _BY_TABLE:
            wanted[table].add(record)
    for table, ids in wanted.items():
        subject = _BY_TABLE[table]
        for record in sorted(ids):
            known = select(subject.table.c.id).where(subject.table.c.id == record)
            if connection.execute(known).first() is None:
                continue
            cells = cells_of(connection, subject, record, keys)
            kept = {header: cell for header, cell in cells.items() if header not in _OF_THE_FILE}
            entries.append(Entry(subject.name, kept))
    day = today(connection)
    taking = Taking(
        connection,
        tables_of_entries(entries, day),
        update=True,
        entered=day.isoformat(),
        whole=True,
        entering=True,
    )
    taking.take()
    for _, taken in taking.present():
        for one in taken.values():
            one.changed = True  # what rests on a part that is as it was before is looked at too
    Checking(connection, taking).check()
    return _said(taking.faults[0], entries) if taking.faults else ""


def _said(fault: Fault, entries: Sequence[Entry]) -> str:
    """A fault with the record that it is about: "intervention I2: lies before B2 was made"."""
    entry = entries[fault.row - 1]
    subject = BY_NAME[entry.subject]
    named = f"{subject.singular} {entry.cells[subject.key[-1]]}"
    return f"{named}: {fault.reason}; {fault.remedy}"
