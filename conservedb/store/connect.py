"""The one function that opens a database, and the two kinds of transaction.

Settings are those that lost nothing in simulated power cuts: a rollback journal that is
truncated at commit, flushed fully; no memory mapping; foreign keys and recursive triggers on.
"""

from __future__ import annotations

import os
import random
import sqlite3
import time
from collections.abc import Iterator
from contextlib import contextmanager
from functools import partial
from pathlib import Path

from sqlalchemy import Connection, Engine, create_engine, event
from sqlalchemy.exc import OperationalError
from sqlalchemy.pool import QueuePool

from conservedb.store.known_head import remember
from conservedb.store.log import Author, Head, open_set, seal
from conservedb.store.problems import DatabaseProblem

OLDEST_SQLITE = (3, 37, 0)
BUSY_SECONDS = 30
_LOOK_AGAIN = (0.002, 0.02)
"""Seconds until who waits for the write lock looks again, at random between the two."""
PRAGMAS = (
    "PRAGMA journal_mode=TRUNCATE",
    "PRAGMA foreign_keys=ON",
    "PRAGMA recursive_triggers=ON",
    "PRAGMA cell_size_check=ON",
    "PRAGMA mmap_size=0",
    "PRAGMA synchronous=FULL",
    "PRAGMA temp_store=MEMORY",
)
"""What every connection is set to before anything else."""


def connect_sqlite(path: Path) -> sqlite3.Connection:
    """A plain connection to an existing file, in the state every connection of ours has.

    A file that may only be read is opened for reading.

    Raises:
        DatabaseProblem: the file cannot be opened, or this Python's SQLite is too old.
    """
    if sqlite3.sqlite_version_info < OLDEST_SQLITE:
        raise DatabaseProblem(
            f"this Python brings SQLite {sqlite3.sqlite_version}, and conservedb needs 3.37 or"
            " newer; install a newer Python"
        )
    for mode in ("rw", "ro"):
        try:
            return _prepared(path, mode)
        except sqlite3.OperationalError as problem:
            if "locked" in str(problem):
                raise DatabaseProblem(
                    f"{path} is in use by another program, which held it for {BUSY_SECONDS}"
                    " seconds; wait or close that program, then try again"
                ) from problem
            failure = problem
        except sqlite3.DatabaseError as problem:
            raise DatabaseProblem(
                f"{path} is not a readable database ({problem}); restore it from a copy"
            ) from problem
    raise DatabaseProblem(
        f"{path} cannot be opened ({failure}); check that it is a file you may read"
    ) from failure


def _prepared(path: Path, mode: str) -> sqlite3.Connection:
    raw = sqlite3.connect(
        f"{path.absolute().as_uri()}?mode={mode}",
        uri=True,
        isolation_level=None,
        timeout=BUSY_SECONDS,
        check_same_thread=False,
    )
    try:
        for pragma in PRAGMAS:
            raw.execute(pragma).fetchone()
    except sqlite3.Error:
        raw.close()
        raise
    return raw


def make_engine(path: Path, first: sqlite3.Connection | None = None) -> Engine:
    """An SQLAlchemy engine on the file; every connection is opened by `connect_sqlite`.

    Args:
        first: one that is open already, to be the first of the engine, which closes it.
    """
    opened = [] if first is None else [first]
    engine = create_engine(
        "sqlite://",
        creator=lambda: opened.pop() if opened else connect_sqlite(path),
        poolclass=QueuePool,  # reading the schema takes longer than most questions do
        pool_size=2,
        max_overflow=-1,
    )

    @event.listens_for(engine, "begin")
    def _begin(connection: Connection) -> None:
        if connection.get_execution_options().get("writing", False):
            _take_turn(connection)
        else:
            connection.exec_driver_sql("BEGIN")

    if first is not None:
        engine.connect().close()
    return engine


def _take_turn(connection: Connection) -> None:
    """Begin with the write lock held, after waiting for it where others hold it.

    SQLite's own wait looks more and more rarely, so that newcomers are served first and one
    among eight was once kept out for its 30 seconds. Here all look again at random moments.

    Raises:
        OperationalError: others held it all the time, or the file cannot be written.
    """
    until = time.monotonic() + BUSY_SECONDS
    connection.exec_driver_sql("PRAGMA busy_timeout=0")
    try:
        while True:
            try:
                connection.exec_driver_sql("BEGIN IMMEDIATE")
                return
            except OperationalError as problem:
                if "locked" not in _told(problem) or time.monotonic() > until:
                    raise
            time.sleep(random.uniform(*_LOOK_AGAIN))
    finally:
        connection.exec_driver_sql(f"PRAGMA busy_timeout={int(BUSY_SECONDS * 1000)}")


@contextmanager
def reading(engine: Engine) -> Iterator[Connection]:
    """A connection that sees one unchanging state of the database."""
    with engine.connect() as connection:
        yield connection


@contextmanager
def writing(engine: Engine, author: Author) -> Iterator[Connection]:
    """A transaction that holds the write lock from its start; all of it or nothing is kept.

    What it changes is logged under `author` and sealed into the chain of the change log.

    Raises:
        DatabaseProblem: another program holds the file, the file may only be read, or its
            triggers were taken away by another program.
    """
    with engine.connect().execution_options(writing=True) as connection:
        try:
            transaction = connection.begin()
        except OperationalError as problem:
            raise _cannot_write(problem) from problem
        try:
            raw = raw_of(connection)
            open_set(raw, author)
            yield connection
            sealed = seal(raw)
        except BaseException as problem:
            transaction.rollback()
            if isinstance(problem, _REFUSALS) and _told_of_file(problem):
                raise _cannot_write(problem) from problem
            raise
        if sealed is None:  # nothing was changed: there is nothing to keep, nor to log
            transaction.rollback()
            return
        identity = raw.execute("SELECT uuid FROM database").fetchone()[0]
        try:
            transaction.commit()
        except OperationalError as problem:
            if raw.in_transaction:  # SQLAlchemy takes the transaction for over, and SQLite does not
                raw.execute("ROLLBACK")
            _look_again(engine, sealed, problem)
    remember(identity, sealed, partial(_still_there, engine))


@contextmanager
def mending(engine: Engine) -> Iterator[sqlite3.Connection]:
    """A transaction for what holds no record, such as the search index; it is not logged.

    Raises:
        DatabaseProblem: another program holds the file, or the file may only be read.
    """
    with engine.connect().execution_options(writing=True) as connection:
        try:
            with connection.begin():
                yield raw_of(connection)
        except _REFUSALS as problem:
            raise _cannot_write(problem) from problem


def _still_there(engine: Engine, known: Head) -> bool:
    """Whether an end of the chain that was seen before is still in it."""
    with reading(engine) as connection:
        row = connection.exec_driver_sql(
            "SELECT 1 FROM change_set WHERE id = ? AND hash = ?", (known.number, known.hash)
        ).first()
    return row is not None


def ensure_writable(engine: Engine) -> None:
    """To be asked before anybody types: whether this account may write to the file at all.

    Raises:
        DatabaseProblem: it may not.
    """
    with reading(engine) as connection:
        path = Path(connection.exec_driver_sql("PRAGMA database_list").all()[0][2])
    if not os.access(path, os.W_OK):
        raise DatabaseProblem(
            f"you may read {path} but not write to it; ask whoever looks after the folder"
        )
    if not os.access(path.parent, os.W_OK):  # the journal of every change is made beside the file
        raise DatabaseProblem(
            f"you may not write to the folder {path.parent}, which every change needs; ask whoever"
            " looks after it"
        )


def raw_of(connection: Connection) -> sqlite3.Connection:
    """The plain connection below an SQLAlchemy one."""
    raw = connection.connection.driver_connection
    assert isinstance(raw, sqlite3.Connection)
    return raw


_REFUSALS = (OperationalError, sqlite3.OperationalError)


def _told_of_file(problem: Exception) -> bool:
    """Whether it is the file or the disk that refuses, and not a statement that is wrong."""
    return any(word in _told(problem) for word in ("locked", "readonly", "full", "disk I/O"))


def _told(problem: Exception) -> str:
    """What SQLite itself says."""
    return str(problem.orig if isinstance(problem, OperationalError) else problem)


def _look_again(engine: Engine, sealed: Head, problem: OperationalError) -> None:
    """A commit that failed may have been kept all the same: the file says which."""
    with reading(engine) as connection:
        found = connection.exec_driver_sql(
            "SELECT 1 FROM change_set WHERE hash = ?", (sealed.hash,)
        ).first()
    if found is None:
        raise _cannot_write(problem) from problem


def _cannot_write(problem: Exception) -> DatabaseProblem:
    told = _told(problem)
    if "locked" in told:
        return DatabaseProblem(
            f"another program has held the database for {BUSY_SECONDS} seconds; nothing was"
            " written; wait until it is done, then try again"
        )
    if "readonly" in told:
        return DatabaseProblem(
            "you may read this database but not write to it; nothing was written; ask whoever"
            " looks after the folder"
        )
    if "full" in told or "disk I/O" in told:
        return DatabaseProblem(
            f"the disk is full or failed ({told}); nothing was written; make room, then try again"
        )
    return DatabaseProblem(f"nothing was written ({told}); try again")
