"""Questions in SQL by those who know it, on a connection that can do nothing but read.

Nothing is written, attached, loaded or set: the file is opened for reading only, an authorizer
lets through what a SELECT consists of and nothing else, and limits hold for time, memory and the
length of a value. SQLAlchemy is not loaded: half the time of a short question would be that.
"""

from __future__ import annotations

import datetime
import sqlite3
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any, NamedTuple

from conservedb.store import derived
from conservedb.store.problems import DatabaseProblem
from conservedb.store.version import APPLICATION_ID, FINGERPRINT, HEAD

LONGEST = 1_000_000
"""Bytes of one value, and of what an expression makes on the way."""
MEMORY = 1_000_000_000
"""Bytes that SQLite may take in this process."""
_STEPS = 1000
"""So many steps of SQLite's machine lie between two looks at the clock."""
_PRAGMAS = (
    "PRAGMA query_only=ON",
    "PRAGMA trusted_schema=OFF",
    "PRAGMA cell_size_check=ON",
    "PRAGMA mmap_size=0",
    "PRAGMA temp_store=MEMORY",
    f"PRAGMA hard_heap_limit={MEMORY}",
)
_LIMITS = {
    sqlite3.SQLITE_LIMIT_LENGTH: LONGEST,
    sqlite3.SQLITE_LIMIT_SQL_LENGTH: 100_000,
    sqlite3.SQLITE_LIMIT_LIKE_PATTERN_LENGTH: 1000,
    sqlite3.SQLITE_LIMIT_ATTACHED: 0,
    sqlite3.SQLITE_LIMIT_WORKER_THREADS: 0,
}
_READING = {sqlite3.SQLITE_SELECT, sqlite3.SQLITE_READ, sqlite3.SQLITE_RECURSIVE}
_REACHING_OUT = {"load_extension", "readfile", "writefile", "edit", "fts3_tokenizer"}
"""Functions of some builds of SQLite that reach beyond the database."""
_NEEDED_PRAGMA = ("data_version", None)
"""Asked by SQLite's own text search of itself; it sets nothing."""
_DAMAGE = {sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB, sqlite3.SQLITE_IOERR}


class QuestionRefused(Exception):
    """The question is not SQL that only reads; the message says what to do."""


class QuestionStopped(Exception):
    """The question took more time or memory than it may."""


class RawAnswer(NamedTuple):
    """The names of the columns, and the rows as they come."""

    columns: tuple[str, ...]
    rows: Iterator[tuple[Any, ...]]


def is_current(path: Path) -> bool:
    """Whether a file is ours, of this version and whole; where not, opening it says what it is."""
    if not path.is_file():
        return False
    raw = _opened(path, 0)
    try:
        return (
            raw.execute("PRAGMA application_id").fetchone() == (APPLICATION_ID,)
            and raw.execute("PRAGMA user_version").fetchone() == (FINGERPRINT,)
            and raw.execute("SELECT version_num FROM alembic_version").fetchone() == (HEAD,)
            and derived.present(raw) == FINGERPRINT
        )
    except sqlite3.Error:
        return False
    finally:
        raw.close()


def _opened(path: Path, seconds: float) -> sqlite3.Connection:
    return sqlite3.connect(
        f"{path.absolute().as_uri()}?mode=ro", uri=True, isolation_level=None, timeout=seconds
    )


@contextmanager
def reading_only(path: Path, seconds: float) -> Iterator[sqlite3.Connection]:
    """A connection that can only read, and sees one unchanging state of the database.

    Raises:
        DatabaseProblem: the file cannot be read, or another program held it for all of `seconds`.
    """
    raw = _opened(path, seconds)
    try:
        raw.text_factory = _text
        for pragma in _PRAGMAS:
            raw.execute(pragma).fetchone()
        raw.execute("BEGIN")
        raw.execute("SELECT 1 FROM database").fetchone()  # from here on the state is one
        _connect_text_search(raw)
        yield raw
    except sqlite3.Error as problem:
        raise _unreadable(path, problem, seconds) from problem
    finally:
        raw.close()


def today(raw: sqlite3.Connection) -> datetime.date:
    """The current day; in a demonstration the day at which it stands still."""
    (fixed,) = raw.execute("SELECT fixed_today FROM database").fetchone()
    return datetime.date.fromisoformat(fixed) if fixed else datetime.date.today()


def _connect_text_search(raw: sqlite3.Connection) -> None:
    """Look at every virtual table once: connecting one asks for more than an authorizer allows."""
    found = raw.execute(
        "SELECT name FROM sqlite_schema WHERE sql LIKE 'CREATE VIRTUAL TABLE %'"
    ).fetchall()
    for (name,) in found:
        quoted = name.replace('"', '""')
        raw.execute(f'SELECT 1 FROM "{quoted}" LIMIT 0').fetchone()


def ask(raw: sqlite3.Connection, sql: str, seconds: float) -> RawAnswer:
    """Put one SELECT to a connection made by `reading_only`, which can do nothing else afterwards.

    Raises:
        QuestionRefused: it is not one statement that only reads, or SQLite cannot make sense of it.
        QuestionStopped: it takes longer than `seconds`, or too much memory; also while rows come.
    """
    for limit, most in _LIMITS.items():
        raw.setlimit(limit, most)
    raw.set_authorizer(_allowed)
    until = time.monotonic() + seconds
    raw.set_progress_handler(lambda: time.monotonic() > until, _STEPS)
    with _explained(seconds):
        cursor = raw.execute(sql)
    if cursor.description is None:
        raise QuestionRefused("nothing is asked; write one SELECT")
    columns = tuple(column[0] for column in cursor.description)
    return RawAnswer(columns, _rows(cursor, seconds, until))


def _rows(cursor: sqlite3.Cursor, seconds: float, until: float) -> Iterator[tuple[Any, ...]]:
    with _explained(seconds):
        for row in cursor:
            if time.monotonic() > until:  # whoever takes the rows may be slow too
                raise _too_long(seconds)
            yield row


def _allowed(action: int, first: str | None, second: str | None, *_: str | None) -> int:
    """SQLite's question about each thing that a statement does."""
    if (
        action in _READING
        or (action == sqlite3.SQLITE_FUNCTION and (second or "").lower() not in _REACHING_OUT)
        or (action == sqlite3.SQLITE_PRAGMA and (first, second) == _NEEDED_PRAGMA)
    ):
        return sqlite3.SQLITE_OK
    return sqlite3.SQLITE_DENY


@contextmanager
def _explained(seconds: float) -> Iterator[None]:
    """What SQLite refuses, in a sentence."""
    try:
        yield
    except MemoryError as problem:
        raise QuestionStopped(
            f"the question needs more than {MEMORY // 1_000_000} MB of memory and was stopped;"
            " ask for less at once, or without ORDER BY"
        ) from problem
    except (sqlite3.Error, sqlite3.Warning) as problem:
        raise _refused(problem, seconds) from problem


def _refused(problem: Exception, seconds: float) -> Exception:
    said = str(problem)
    code = getattr(problem, "sqlite_errorcode", 0) & 0xFF
    if code == sqlite3.SQLITE_INTERRUPT:
        return _too_long(seconds)
    if code in _DAMAGE:
        return DatabaseProblem(f"the database cannot be read ({said}); run: conservedb verify")
    if any(word in said for word in ("not authorized", "prohibited", "VACUUM")):
        return QuestionRefused(
            f"only questions are put here, and nothing is written, set or loaded ({said}); write"
            " one SELECT"
        )
    if code == sqlite3.SQLITE_TOOBIG:
        return QuestionRefused(
            f"a value would be longer than {LONGEST:,} bytes ({said}); ask for a part of it"
        )
    if "tables in a join" in said:
        return QuestionRefused(
            "the question joins more than 64 tables, and a view counts as all those that it is made"
            " of; join fewer views, or take some apart: WITH a AS MATERIALIZED (SELECT ...)"
        )
    if "one statement" in said:
        return QuestionRefused("these are several statements; put one SELECT at a time")
    return QuestionRefused(
        f"SQLite says: {said}; the views and their columns are told by: conservedb sql --views"
    )


def _too_long(seconds: float) -> QuestionStopped:
    return QuestionStopped(
        f"the question took longer than {seconds:g} seconds and was stopped; ask for less, or give"
        " it more time with --seconds"
    )


def _unreadable(path: Path, problem: sqlite3.Error, seconds: float) -> DatabaseProblem:
    if "locked" in str(problem):
        return DatabaseProblem(
            f"{path} is being written by another program, which held it for {seconds:g} seconds;"
            " wait, then try again"
        )
    return DatabaseProblem(f"{path} cannot be read ({problem}); run: conservedb verify")


def _text(raw: bytes) -> str:
    """Text as it is, and of bytes that are no text what can be read of them."""
    return raw.decode("utf-8", "replace")
