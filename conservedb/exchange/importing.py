"""Taking a folder of CSV files in: all of it or nothing, unless the good rows are asked for."""

from __future__ import annotations

import datetime
import errno
import sqlite3
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import Connection, Engine
from sqlalchemy.exc import IntegrityError

from conservedb.exchange.checking import Checking
from conservedb.exchange.checking_updates import refuse_overtaken
from conservedb.exchange.faults import Fault
from conservedb.exchange.files import Table, read_folder
from conservedb.exchange.log_head import read_head
from conservedb.exchange.refused import write_refused
from conservedb.exchange.taking import Taking
from conservedb.exchange.writing import write
from conservedb.store.connect import writing
from conservedb.store.log import Author
from conservedb.store.problems import DatabaseProblem


@dataclass(frozen=True, slots=True)
class Count:
    """What became of the rows of one file; `rows` is always the sum of the others."""

    file: str
    rows: int
    added: int
    changed: int
    unchanged: int
    refused: int


@dataclass(frozen=True, slots=True)
class ImportReport:
    """What an import did. `written` is False where a fault kept everything out."""

    written: bool
    counts: tuple[Count, ...]
    faults: tuple[Fault, ...]
    dependents: tuple[Fault, ...]
    notices: tuple[Fault, ...]
    refused_folder: Path | None


class _NothingWritten(Exception):
    """Ends the transaction without keeping anything."""


def import_folder(
    engine: Engine,
    folder: Path,
    *,
    encoding: str = "utf-8",
    update: bool = False,
    keep_good: bool = False,
    today: datetime.date | None = None,
    who: str,
    at: str = "",
) -> ImportReport:
    """Read the CSV files of a folder into the database, in one transaction.

    Args:
        encoding: of the files; UTF-8 with or without byte order mark unless named.
        update: let cells replace what the database has under the same key, unless somebody has
            amended them since the folder was exported.
        keep_good: write the good rows even if others are refused; those, and the rows that
            depend on them, are put with their reasons in a folder beside `folder`.
        today: the day of entry for rows that do not give one.
        who: takes the folder in; stands in the change log.
        at: the moment of it, in UTC; now unless given.

    Raises:
        NotADirectoryError: `folder` is no folder.
        DatabaseProblem: the database refused what had passed every check; nothing is written.
    """
    if not folder.is_dir():
        raise NotADirectoryError(
            errno.ENOTDIR, "this is not a folder; name the folder of CSV files", str(folder)
        )
    tables, folder_faults, notices = read_folder(folder, encoding)
    entered = (today or datetime.date.today()).isoformat()
    report: ImportReport | None = None
    try:
        with writing(engine, Author(who, "imported", f"from {folder.name}", at=at)) as connection:
            taking = Taking(connection, tables, update=update, entered=entered)
            taking.faults += folder_faults
            taking.take()
            if update:
                refuse_overtaken(connection, taking, read_head(folder))
            checking = Checking(connection, taking)
            checking.check()
            kept = keep_good or not taking.faults
            if kept:
                _write(connection, taking, checking)
                _integrity(connection)
            refused = None
            if kept and (taking.faults or checking.dependents):
                refused = write_refused(folder, encoding, taking, checking.dependents)
            report = _report(taking, checking, notices, kept, refused)
            if not kept:
                raise _NothingWritten
    except _NothingWritten:
        pass
    assert report is not None
    return report


def _write(connection: Connection, taking: Taking, checking: Checking) -> None:
    known = taking.touched | {r.id for r in taking.records.get("objects", {}).values()}
    known -= {r.id for r in taking.records.get("objects", {}).values() if r.new}
    try:
        write(
            connection,
            taking.records,
            checking.ordering.bounds,
            known | checking.ordering.also_concerned,
        )
    except (IntegrityError, sqlite3.IntegrityError) as problem:
        raise DatabaseProblem(
            f"the database refused a row ({problem.args[0]}); nothing was written"
        ) from problem


def _integrity(connection: Connection) -> None:
    """Nothing may have slipped past: the database's own check of references."""
    broken = connection.exec_driver_sql("PRAGMA foreign_key_check").first()
    if broken is not None:
        raise DatabaseProblem(f"a row of {broken[0]} points at nothing; nothing was written")


def _report(
    taking: Taking,
    checking: Checking,
    notices: list[Fault],
    kept: bool,
    refused: Path | None,
) -> ImportReport:
    counts = tuple(_count(taking, table, kept) for table in taking.tables)
    ordered = sorted(taking.faults, key=lambda fault: (fault.row > 1, fault.file, fault.row))
    return ImportReport(
        kept,
        counts,
        tuple(dict.fromkeys(ordered)),
        tuple(checking.dependents),
        (*notices, *taking.keys.notices),
        refused,
    )


def _count(taking: Taking, table: Table, kept: bool) -> Count:
    name = table.subject.name
    records = taking.records.get(name, {}).values()
    if not kept:
        return Count(table.subject.file, table.rows_in, 0, 0, 0, table.rows_in)
    refused = len(taking.refused[name]) + sum(record.refused for record in records)
    good = [record for record in records if not record.refused]
    added = sum(record.new for record in good)
    changed = sum(record.changed and not record.new for record in good)
    unchanged = len(good) - added - changed + taking.repeated[name]
    return Count(table.subject.file, table.rows_in, added, changed, unchanged, refused)
