"""Change sets: opened before the first change of a transaction, sealed into a chain at its end.

The hash of a set is SHA-256 over lines of JSON: one for the set, with the hash of the set before,
then one for each change. It proves that nothing up to a head that somebody else wrote down was
altered, left out or put in another order; it does not prove who sat at the keyboard.
"""

from __future__ import annotations

import datetime
import json
import sqlite3
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any, NamedTuple

import conservedb
from conservedb.store.problems import DatabaseProblem

LOG = ("change_set", "change")
"""The tables that hold the log."""

PROGRAM = "conservedb"
"""Who stands in the log for what the program does by itself."""

_SET = "id, who, at, kind, reason, program, undoes_id, changes, last_change, prev, hash"
_ENCODED = json.JSONEncoder(ensure_ascii=False, separators=(",", ":")).encode


@dataclass(frozen=True, slots=True)
class Author:
    """Who is about to write, what for and why.

    Attributes:
        who: the name of a person, or of this program.
        kind: one word for what is done: recorded, amended, withdrawn, undone, imported ...
        reason: why, in a sentence; "" where none is asked for.
        undoes: the change set that is taken back, if any.
        at: the moment, in UTC; now unless given (a demonstration gives its own).
    """

    who: str
    kind: str
    reason: str = ""
    undoes: int | None = None
    at: str = ""


class Head(NamedTuple):
    """The end of the chain: the number of the last change set and its hash."""

    number: int
    hash: str

    def __str__(self) -> str:
        return f"change set {self.number}, {self.hash}"


class SetRow(NamedTuple):
    """A row of `change_set`."""

    id: int
    who: str
    at: str
    kind: str
    reason: str | None
    program: str
    undoes_id: int | None
    changes: int | None
    last_change: int | None
    prev: str | None
    hash: str | None


def now() -> str:
    """The present moment in UTC, to the millisecond."""
    return datetime.datetime.now(datetime.UTC).isoformat(timespec="milliseconds")


def open_set(raw: sqlite3.Connection, author: Author) -> int:
    """Open a change set inside the caller's transaction and return its number.

    A set that another program left open is sealed first as it stands, so that it stays on record.

    Raises:
        DatabaseProblem: no name is given.
    """
    who = " ".join(author.who.split())
    if not any(character.isalnum() for character in who):
        raise DatabaseProblem("nobody is named as the writer; say who you are first")
    seal(raw)
    done = raw.execute(
        "INSERT INTO change_set (who, at, kind, reason, program, undoes_id)"
        " VALUES (?, ?, ?, ?, ?, ?)",
        (
            who,
            author.at or now(),
            author.kind,
            author.reason.strip() or None,
            f"conservedb {conservedb.__version__}",
            author.undoes,
        ),
    )
    assert done.lastrowid is not None
    return done.lastrowid


def open_number(raw: sqlite3.Connection) -> int | None:
    """The number of the open change set; None where nothing has been changed in it so far."""
    row = raw.execute(
        "SELECT id FROM change_set WHERE hash IS NULL"
        " AND id = (SELECT set_id FROM change WHERE id = (SELECT max(id) FROM change))"
    ).fetchone()
    return row[0] if row else None


def seal(raw: sqlite3.Connection) -> Head | None:
    """Seal the open change set; None where none is open or nothing was changed in it."""
    row = raw.execute(f"SELECT {_SET} FROM change_set WHERE hash IS NULL").fetchone()
    if row is None:
        return None
    opened = SetRow(*row)
    before = last_sealed(raw)
    first = before.last_change or 0 if before else 0
    (last,) = raw.execute("SELECT max(id) FROM change").fetchone()
    if last is None or last <= first:
        raw.execute("DELETE FROM change_set WHERE id = ?", (opened.id,))
        return None
    (count,) = raw.execute(
        "SELECT count(*) FROM change WHERE id > ? AND id <= ?", (first, last)
    ).fetchone()
    ended = opened._replace(
        changes=count, last_change=last, prev=before.hash if before else _genesis(raw)
    )
    sealed = digest(raw, ended, first)
    raw.execute(
        "UPDATE change_set SET changes = ?, last_change = ?, prev = ?, hash = ? WHERE id = ?",
        (count, last, ended.prev, sealed, opened.id),
    )
    return Head(opened.id, sealed)


def digest(raw: sqlite3.Connection, row: SetRow, first: int) -> str:
    """The hash of a set whose changes are those after `first`, up to its last."""
    import hashlib  # who only reads needs none

    hasher = hashlib.sha256(_line(row[:-1]))
    changes = raw.execute(
        "SELECT id, set_id, table_name, record_id, before, after FROM change"
        " WHERE id > ? AND id <= ? ORDER BY id",
        (first, row.last_change),
    )
    for one in changes:
        hasher.update(_line(one))
    return hasher.hexdigest()


def _line(values: tuple[Any, ...]) -> bytes:
    return _ENCODED(values).encode("utf-8", "surrogatepass") + b"\n"


def _genesis(raw: sqlite3.Connection) -> str:
    """What stands before the first set: the identity of the database."""
    (identity,) = raw.execute("SELECT uuid FROM database").fetchone()
    return f"database {identity}"


def last_sealed(raw: sqlite3.Connection) -> SetRow | None:
    """The last set of the chain, None where nothing was ever changed."""
    row = raw.execute(
        f"SELECT {_SET} FROM change_set WHERE hash IS NOT NULL ORDER BY id DESC LIMIT 1"
    ).fetchone()
    return SetRow(*row) if row else None


def head(raw: sqlite3.Connection) -> Head | None:
    """The end of the chain, to be printed on whatever leaves the house."""
    last = last_sealed(raw)
    return Head(last.id, last.hash or "") if last else None


def taken_back(raw: sqlite3.Connection) -> set[int]:
    """The change sets that do not stand: one does unless one that stands takes it back."""
    gone: set[int] = set()
    for number, undoes in raw.execute(
        "SELECT id, undoes_id FROM change_set WHERE undoes_id IS NOT NULL AND hash IS NOT NULL"
        " ORDER BY id DESC"  # a later one decides about an earlier one
    ):
        if number not in gone:
            gone.add(undoes)
    return gone


def span(raw: sqlite3.Connection, number: int) -> tuple[int, int]:
    """The changes of a set are those after the first number, up to the second."""
    (first,) = raw.execute(
        "SELECT coalesce((SELECT last_change FROM change_set WHERE id < ? ORDER BY id DESC"
        " LIMIT 1), 0)",
        (number,),
    ).fetchone()
    row = raw.execute(
        "SELECT coalesce(last_change, (SELECT max(id) FROM change)) FROM change_set WHERE id = ?",
        (number,),
    ).fetchone()
    return first, row[0] if row and row[0] is not None else first


def set_row(raw: sqlite3.Connection, number: int) -> SetRow | None:
    """The change set of that number; None where there is none."""
    row = raw.execute(f"SELECT {_SET} FROM change_set WHERE id = ?", (number,)).fetchone()
    return SetRow(*row) if row else None


def sets(raw: sqlite3.Connection) -> Iterator[SetRow]:
    """Every change set, oldest first."""
    for row in raw.execute(f"SELECT {_SET} FROM change_set ORDER BY id"):
        yield SetRow(*row)
