"""Holding a file against its own log: every way known to change it behind the program's back shows.

What this cannot show: who really sat at the keyboard, and whether what was entered is true. A log
that was cut off or written anew shows only against an end that somebody wrote down.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from functools import cache
from typing import NamedTuple

from conservedb.store import derived, search
from conservedb.store.log import Head, SetRow, digest, sets
from conservedb.store.log_rows import differing, parse, replayed
from conservedb.store.logging_triggers import logged_tables
from conservedb.store.version import APPLICATION_ID, HEAD, migrations_folder


class Found(NamedTuple):
    """Something that is not as it should be: what was looked at, and a sentence."""

    part: str
    sentence: str


PARTS = ("file", "schema", "chain", "rows", "search", "bounds", "head")
"""What is looked at, in this order."""
_NAMED = 20


def verify(raw: sqlite3.Connection, heads: tuple[Head, ...] = ()) -> Iterator[Found]:
    """Everything of the file, its schema, its log and its rows that does not agree.

    Args:
        heads: ends of the chain that somebody wrote down; each must still be in it.
    """
    yield from _file(raw)
    yield from _schema(raw)
    yield from _chain(raw)
    yield from _rows(raw)
    for sentence in search.check(raw):
        yield Found("search", f"{sentence}; mend it with: conservedb verify --rebuild-search")
    yield from _heads(raw, heads)


def _file(raw: sqlite3.Connection) -> Iterator[Found]:
    for (verdict,) in raw.execute("PRAGMA integrity_check(5)").fetchall():
        if verdict != "ok":
            yield Found("file", f"the file is damaged: {verdict}; restore it from a copy")
    for table, row, target, _ in raw.execute("PRAGMA foreign_key_check").fetchmany(_NAMED):
        yield Found("file", f"row {row} of {table} points at a {target} that is not there")


def _schema(raw: sqlite3.Connection) -> Iterator[Found]:
    """Tables, indexes, views and triggers against those that this program makes."""
    wanted, found = _as_made(), _made(raw)
    for name in sorted(wanted.keys() - found.keys()):
        yield Found("schema", f"{name} was taken away")
    for name in sorted(found.keys() - wanted.keys()):
        yield Found("schema", f"{name} was added by another program")
    for name in sorted(found.keys() & wanted.keys()):
        if _plain(found[name]) != _plain(wanted[name]):
            yield Found("schema", f"{name} was rewritten")


@cache
def _as_made() -> dict[str, str]:
    """The schema of a new database, by kind and name."""
    from conservedb.store.upgrade import run_migrations

    fresh = sqlite3.connect(":memory:", isolation_level=None)
    try:
        fresh.execute(f"PRAGMA application_id={APPLICATION_ID}")
        fresh.execute("BEGIN")
        run_migrations(fresh, HEAD, migrations_folder())
        derived.build(fresh)
        fresh.execute("COMMIT")
        return _made(fresh)
    finally:
        fresh.close()


def _made(raw: sqlite3.Connection) -> dict[str, str]:
    """The schema by kind and name, without the tables that SQLite itself makes for an index."""
    rows = raw.execute(
        "SELECT type || ' ' || name, sql FROM sqlite_schema WHERE sql IS NOT NULL"
        " AND name NOT IN (SELECT name FROM pragma_table_list WHERE type = 'shadow')"
    )
    return dict(rows.fetchall())


def _plain(sql: str) -> str:
    """SQL without blanks and quotes around names, which a rebuilt table may write otherwise."""
    return "".join(sql.split()).replace('"', "")


def _chain(raw: sqlite3.Connection) -> Iterator[Found]:
    (identity,) = raw.execute("SELECT uuid FROM database").fetchone()
    before, last_change = f"database {identity}", 0
    for one in sets(raw):
        if one.hash is None:
            yield Found(
                "chain",
                f"change set {one.id} ({one.who}, {one.at[:10]}) was left open by another program"
                " and is not sealed; the next change made here seals it as it stands",
            )
            continue
        yield from _link(raw, one, before, last_change)
        before, last_change = one.hash, one.last_change or last_change
    (beyond,) = raw.execute(
        "SELECT count(*) FROM change WHERE id < 1 OR (id > ? AND NOT EXISTS (SELECT 1 FROM"
        " change_set s WHERE s.id = set_id AND s.hash IS NULL))",
        (last_change,),
    ).fetchone()
    if beyond:
        yield Found("chain", f"{beyond} changes stand in the log outside every change set")


def _link(raw: sqlite3.Connection, one: SetRow, before: str, last_change: int) -> Iterator[Found]:
    said = f"change set {one.id} ({one.who}, {one.at[:10]})"
    if one.prev != before:
        yield Found(
            "chain", f"{said} does not follow the one before it: one was changed or cut out"
        )
    first, last = last_change, one.last_change or 0
    (count,) = raw.execute(
        "SELECT count(*) FROM change WHERE id > ? AND id <= ?", (first, last)
    ).fetchone()
    if count != one.changes:
        yield Found("chain", f"{said} had {one.changes} changes and now has {count}")
    elif digest(raw, one, first) != one.hash:
        yield Found("chain", f"{said} is not as it was sealed: it was edited")


def _rows(raw: sqlite3.Connection) -> Iterator[Found]:
    there = {name for (name,) in raw.execute("SELECT name FROM sqlite_schema WHERE type='table'")}
    if not {table.name for table in logged_tables()} <= there:
        yield Found("rows", "could not be held against the log while a table is missing")
        return
    count = 0
    for table in logged_tables():
        logged, astray = replayed(raw, table.name)
        for number in astray[:_NAMED]:
            yield Found(
                "rows",
                f"change {number} of {table.name} starts from a state that the log does not know",
            )
        for one in differing(raw, table, logged):
            if count == _NAMED:
                yield Found("rows", "and more rows")
                return
            count += 1
            yield Found("rows", _told(one.table, one.record, one.logged, one.found))


def _told(table: str, record: int, logged: str | None, found: str | None) -> str:
    if found is None:
        return f"row {record} of {table} was taken away behind the log's back"
    if logged is None:
        return f"row {record} of {table} was added behind the log's back"
    try:
        was, now = parse(logged), parse(found)
    except ValueError as problem:
        return f"row {record} of {table}: {problem}"
    names = sorted(n for n in was.keys() | now.keys() if was.get(n) != now.get(n))
    return f"row {record} of {table} was changed behind the log's back: {', '.join(names)}"


def _heads(raw: sqlite3.Connection, heads: tuple[Head, ...]) -> Iterator[Found]:
    for one in heads:
        number = min(one.number, 2**63 - 1)  # as large as a number can be in the file
        row = raw.execute("SELECT hash FROM change_set WHERE id = ?", (number,)).fetchone()
        if row is None:
            yield Found(
                "head",
                f"change set {one.number} is no longer there: the log was cut off after it"
                " was written down, or this file is an older copy",
            )
        elif row[0] != one.hash:
            yield Found(
                "head",
                f"change set {one.number} has another hash than was written down: the log"
                " was written anew, or this file has gone its own way since",
            )
