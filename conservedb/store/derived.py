"""Derived objects: triggers, views and the indexes of finding, made here and nowhere else.

They are left out of migrations and of `demo.sqlite.sql`, and rebuilt whenever the text
below differs from what the file carries (its `PRAGMA user_version` holds a hash of it).
They use no functions of ours, so that any SQLite program can still read the file.
"""

from __future__ import annotations

import sqlite3
import zlib
from collections.abc import Iterable
from typing import NamedTuple

from conservedb.dates import OPEN_START, UNKNOWN_END, UNKNOWN_START
from conservedb.store import search, search_refs
from conservedb.store.version import FINGERPRINT


class Guard(NamedTuple):
    """What must never hold of a row (`NEW`) of a table, and the sentence that refuses it."""

    name: str
    table: str
    broken: str
    sentence: str


def _no_circle(table: str, child: str, parent: str) -> Guard:
    broken = f"""NEW.{parent} IS NOT NULL AND NEW.{child} IN (
  WITH RECURSIVE above(id) AS (
    SELECT NEW.{parent}
    UNION
    SELECT t.{parent} FROM {table} t JOIN above ON t.{child} = above.id
    WHERE t.{parent} IS NOT NULL
  )
  SELECT id FROM above
)"""
    sentence = f"{table}: a part cannot contain itself, directly or through others"
    return Guard(f"{table}_no_circle", table, broken, sentence)


def _mark_free(table: str, other: str) -> Guard:
    broken = f"""EXISTS (
  SELECT 1 FROM {other} o
  WHERE o.object_id = NEW.object_id AND o.mark_folded = NEW.mark_folded
)"""
    sentence = f"{table}: this mark already stands for another part of the object"
    return Guard(f"{table}_mark_free", table, broken, sentence)


GUARDS = (
    _no_circle("component", "id", "parent_id"),
    _no_circle("material_class", "id", "parent_id"),
    _no_circle("material_part", "part_id", "material_id"),
    _mark_free("component", "place"),
    _mark_free("place", "component"),
    Guard(
        "layer_agrees",
        "layer",
        f"""(NEW.date_latest < {UNKNOWN_END} AND NEW.came_to > NEW.date_latest)
OR (NEW.date_earliest > {max(OPEN_START, UNKNOWN_START)} AND NEW.came_from < NEW.date_earliest)""",
        "layer: its bounds go beyond its own date",
    ),
    Guard(
        "removal_agrees",
        "removal",
        f"""NEW.extent IN ('all', 'part') AND NEW.side IS NULL AND NEW.date_latest < {UNKNOWN_END}
AND EXISTS (
  SELECT 1 FROM layer l WHERE l.id = NEW.layer_id
  AND CASE NEW.extent WHEN 'all' THEN l.gone_to ELSE l.reduced_to END > NEW.date_latest
)""",
        "removal: the bounds of its layer do not take it into account",
    ),
    Guard(
        "sighting_agrees",
        "sighting",
        f"""NEW.result = 'seen' AND NEW.date_latest < {UNKNOWN_END}
AND EXISTS (
  SELECT 1 FROM layer l WHERE l.id = NEW.layer_id
  AND (l.came_to > NEW.date_latest OR l.gone_from < NEW.date_earliest)
)""",
        "sighting: the bounds of its layer do not take it into account",
    ),
)
"""Every guard; the bounds of layers are worked out by the program and only checked here."""


def statements() -> list[str]:
    """The text of every derived object, in the order in which they are made."""
    from conservedb.store import logging_triggers, views  # the first needs every table

    guards = [
        f"CREATE TRIGGER {guard.name}_{moment.lower()} AFTER {moment} ON {guard.table}\n"
        f"WHEN {guard.broken}\n"
        f"BEGIN SELECT RAISE(ABORT, '{guard.sentence}'); END"
        for guard in GUARDS
        for moment in ("INSERT", "UPDATE")
    ]
    return [
        *guards,
        *logging_triggers.statements(),
        *views.statements(),
        *search.statements(),
        *search_refs.statements(),
    ]


def broken_rows(raw: sqlite3.Connection) -> list[str]:
    """A sentence for each guard that rows already in the file break, with the first of them."""
    found = []
    for guard in GUARDS:
        row = raw.execute(
            f"SELECT id FROM {guard.table} AS NEW WHERE {guard.broken} LIMIT 1"
        ).fetchone()
        if row is not None:
            found.append(f"{guard.table} {row[0]}: {guard.sentence.partition(': ')[2]}")
    return found


def fingerprint(texts: Iterable[str] | None = None) -> int:
    """A number that changes when a derived object does; never 0, which means "none made"."""
    texts = statements() if texts is None else texts
    return zlib.crc32("\n".join(sorted(texts)).encode()) % 0x7FFFFFFF or 1


def present(raw: sqlite3.Connection) -> int:
    """The fingerprint of the derived objects that the file really has."""
    return fingerprint(text for _, _, text in _made(raw))


def drop(raw: sqlite3.Connection) -> None:
    """Take away every derived object, inside the caller's transaction."""
    for kind, name, _ in _made(raw):
        if kind != "table":
            quoted = name.replace('"', '""')
            raw.execute(f'DROP {kind} "{quoted}"')
    search.remove(raw)


def _made(raw: sqlite3.Connection) -> list[tuple[str, str, str]]:
    """Kind, name and text of each trigger and view, and of the indexes of finding."""
    rows = raw.execute(
        "SELECT type, name, sql FROM sqlite_schema WHERE type IN ('trigger', 'view') OR name = ?"
        f" OR (type = 'index' AND name GLOB '{search.INDEX}_*')",
        (search.INDEX,),
    )
    return rows.fetchall()


def build(raw: sqlite3.Connection) -> None:
    """Make every derived object anew, inside the caller's transaction."""
    drop(raw)
    for statement in statements():
        raw.execute(statement)
    search.fill(raw)
    raw.execute(f"PRAGMA user_version={FINGERPRINT}")
