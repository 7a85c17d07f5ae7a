"""Writing where it cannot be done: waited for, then told in one sentence, nothing half-written."""

from __future__ import annotations

import os
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from sqlalchemy import Connection, Engine, event
from sqlalchemy.exc import OperationalError

from conservedb.exchange.entering import Entry, enter
from conservedb.store import connect
from conservedb.store.connect import ensure_writable, raw_of, reading
from conservedb.store.log import head
from conservedb.store.log_rows import current
from conservedb.store.logging_triggers import logged_tables
from conservedb.store.opening import open_database
from conservedb.store.problems import DatabaseProblem
from conservedb.store.verify import verify
from tests.conftest import TODAY
from tests.recording.conftest import ME

Opened = tuple[Engine, Path]


@pytest.fixture
def opened(
    new_database: Callable[[str], Engine], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Iterator[Opened]:
    """A database that is waited for no longer than a fifth of a second."""
    monkeypatch.setattr(connect, "BUSY_SECONDS", 0.2)
    engine = new_database("writing.db")
    yield engine, tmp_path / "writing.db"
    engine.dispose()


def record(engine: Engine, note: str = "") -> None:
    made = [Entry("objects", {"number": "X.1", "note": note}), Entry("people", {"name": "Ida"})]
    assert not enter(engine, lambda _: made, ME, TODAY).faults


def everything(engine: Engine) -> list[object]:
    """Every row, and the end of the log."""
    with reading(engine) as connection:
        raw = raw_of(connection)
        return [*(sorted(current(raw, table)) for table in logged_tables()), head(raw)]


@contextmanager
def held(path: Path, how: str) -> Iterator[None]:
    """Another program that holds the file."""
    other = sqlite3.connect(path, isolation_level=None)
    other.execute(f"BEGIN {how}")
    try:
        yield
    finally:
        other.execute("ROLLBACK")
        other.close()


@pytest.mark.parametrize("how", ["IMMEDIATE", "EXCLUSIVE"])
def test_a_file_that_is_held_is_waited_for_then_told(opened: Opened, how: str) -> None:
    engine, path = opened
    before = everything(engine)
    with held(path, how), pytest.raises(DatabaseProblem) as told:
        record(engine)
    assert "another program" in str(told.value)
    assert "0.2 seconds" in str(told.value)
    assert everything(engine) == before
    record(engine)
    assert everything(engine) != before


def test_a_reader_who_stays_is_waited_for_at_the_commit(opened: Opened) -> None:
    engine, path = opened
    other = sqlite3.connect(path, isolation_level=None)
    other.execute("BEGIN")
    other.execute("SELECT count(*) FROM object").fetchone()
    with pytest.raises(DatabaseProblem, match=r"another program has held .* nothing was written"):
        record(engine)
    other.execute("ROLLBACK")
    other.close()
    with reading(engine) as connection:
        assert connection.exec_driver_sql("SELECT count(*) FROM object").scalar() == 0
        assert list(verify(raw_of(connection))) == []


@pytest.mark.parametrize(
    ("closed", "sentence"),
    [
        ("file", r"you may read .*writing\.db but not write to it; ask whoever looks after the f"),
        ("folder", "you may not write to the folder .*, which every change needs; ask whoever"),
    ],
)
def test_what_may_only_be_read_is_told_before_anybody_types(
    opened: Opened, monkeypatch: pytest.MonkeyPatch, closed: str, sentence: str
) -> None:
    engine, path = opened
    ensure_writable(engine)
    away = path if closed == "file" else path.parent
    monkeypatch.setattr(os, "access", lambda which, _: Path(which) != away)  # tests may run as root
    with pytest.raises(DatabaseProblem, match=sentence):
        ensure_writable(engine)


def test_a_connection_that_only_reads_writes_nothing(opened: Opened) -> None:
    engine, _ = opened
    before = everything(engine)
    engine.dispose()  # what is open already may write
    read_only = sqlite3.connect

    def connect_read_only(name: str, **options: object) -> sqlite3.Connection:
        return read_only(name.replace("mode=rw", "mode=ro"), **options)  # type: ignore[call-overload, no-any-return]

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(sqlite3, "connect", connect_read_only)
        with pytest.raises(DatabaseProblem, match="may read this database but not write to it"):
            record(engine)
    engine.dispose()
    assert everything(engine) == before


def test_a_full_disk_is_told_and_nothing_is_half_written(opened: Opened) -> None:
    engine, _ = opened
    engine.dispose()  # the connection that is open already has no such limit

    @event.listens_for(engine, "connect")
    def _full(raw: sqlite3.Connection, _: object) -> None:
        (pages,) = raw.execute("PRAGMA page_count").fetchone()
        raw.execute(f"PRAGMA max_page_count={pages + 2}")

    before = everything(engine)
    with pytest.raises(DatabaseProblem, match=r"the disk is full .*; nothing was written; make"):
        record(engine, "a long note " * 5_000)
    assert everything(engine) == before
    with reading(engine) as connection:
        assert list(verify(raw_of(connection))) == []


@pytest.mark.parametrize("kept", [True, False])
def test_a_commit_that_reports_failure_is_looked_at_again(
    opened: Opened, monkeypatch: pytest.MonkeyPatch, *, kept: bool
) -> None:
    """As T4 of the fault runs found: now and then a save is there although it "failed"."""
    engine, path = opened
    before = everything(engine)
    fail = {"now": True}

    @event.listens_for(engine, "commit")
    def _commit(connection: Connection) -> None:
        if fail.pop("now", False):
            if kept:
                raw_of(connection).execute("COMMIT")
            raise OperationalError("COMMIT", {}, sqlite3.OperationalError("disk I/O error"))

    if kept:
        record(engine)
        assert everything(engine) != before
    else:
        with pytest.raises(DatabaseProblem, match=r"full or failed .disk I/O error.; nothing was"):
            record(engine)
        assert everything(engine) == before
    engine.dispose()
    again, _ = open_database(path)
    with reading(again) as connection:
        assert list(verify(raw_of(connection))) == []
    again.dispose()
