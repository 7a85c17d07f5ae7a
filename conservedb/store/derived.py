"""Derived objects: the triggers that guard the tables, generated here and nowhere else.

They are left out of migrations and of `demo.sqlite.sql`, and rebuilt whenever the text
below differs from what the file carries (its `PRAGMA user_version` holds a hash of it).
They use no functions of ours, so that any SQLite program can still read the file.
"""

from __future__ import annotations

import sqlite3
import zlib

from conservedb.dates import OPEN_START, UNKNOWN_END, UNKNOWN_START

_TREES = (
    ("component", "id", "parent_id"),
    ("material_class", "id", "parent_id"),
    ("material_part", "part_id", "material_id"),
)


def _no_cycle(table: str, child: str, parent: str, moment: str) -> str:
    return f"""CREATE TRIGGER {table}_no_cycle_{moment.lower()} AFTER {moment} ON {table}
WHEN NEW.{parent} IS NOT NULL
BEGIN
  SELECT RAISE(ABORT, '{table}: a part cannot contain itself, directly or through others')
  WHERE NEW.{child} IN (
    WITH RECURSIVE above(id) AS (
      SELECT NEW.{parent}
      UNION
      SELECT t.{parent} FROM {table} t JOIN above ON t.{child} = above.id
      WHERE t.{parent} IS NOT NULL
    )
    SELECT id FROM above
  );
END"""


def _mark_free(table: str, other: str, moment: str) -> str:
    return f"""CREATE TRIGGER {table}_mark_free_{moment.lower()} AFTER {moment} ON {table}
BEGIN
  SELECT RAISE(ABORT, '{table}: this mark already stands for another part of the object')
  WHERE EXISTS (
    SELECT 1 FROM {other} o
    WHERE o.object_id = NEW.object_id AND o.mark_folded = NEW.mark_folded
  );
END"""


def _removal_agrees(moment: str) -> str:
    return f"""CREATE TRIGGER removal_agrees_{moment.lower()} AFTER {moment} ON removal
WHEN NEW.extent IN ('all', 'part') AND NEW.side IS NULL AND NEW.date_latest < {UNKNOWN_END}
BEGIN
  SELECT RAISE(ABORT, 'removal: the bounds of its layer do not take it into account')
  FROM layer l WHERE l.id = NEW.layer_id
  AND CASE NEW.extent WHEN 'all' THEN l.gone_to ELSE l.reduced_to END > NEW.date_latest;
END"""


def _sighting_agrees(moment: str) -> str:
    return f"""CREATE TRIGGER sighting_agrees_{moment.lower()} AFTER {moment} ON sighting
WHEN NEW.result = 'seen' AND NEW.date_latest < {UNKNOWN_END}
BEGIN
  SELECT RAISE(ABORT, 'sighting: the bounds of its layer do not take it into account')
  FROM layer l WHERE l.id = NEW.layer_id
  AND (l.came_to > NEW.date_latest OR l.gone_from < NEW.date_earliest);
END"""


def _layer_agrees(moment: str) -> str:
    return f"""CREATE TRIGGER layer_agrees_{moment.lower()} AFTER {moment} ON layer
WHEN (NEW.date_latest < {UNKNOWN_END} AND NEW.came_to > NEW.date_latest)
  OR (NEW.date_earliest > {max(OPEN_START, UNKNOWN_START)} AND NEW.came_from < NEW.date_earliest)
BEGIN
  SELECT RAISE(ABORT, 'layer: its bounds go beyond its own date');
END"""


def statements() -> list[str]:
    """The text of every derived object, in the order in which they are made."""
    made: list[str] = []
    for moment in ("INSERT", "UPDATE"):
        made += [_no_cycle(table, child, parent, moment) for table, child, parent in _TREES]
        made += [
            _mark_free("component", "place", moment),
            _mark_free("place", "component", moment),
            _removal_agrees(moment),
            _sighting_agrees(moment),
            _layer_agrees(moment),
        ]
    return made


def fingerprint() -> int:
    """A number that changes when a derived object does; never 0, which means "none made"."""
    return zlib.crc32("\n".join(statements()).encode()) % 0x7FFFFFFF or 1


def drop(raw: sqlite3.Connection) -> None:
    """Take away every trigger and view, inside the caller's transaction."""
    rows = raw.execute("SELECT type, name FROM sqlite_schema WHERE type IN ('trigger', 'view')")
    for kind, name in rows.fetchall():
        quoted = name.replace('"', '""')
        raw.execute(f'DROP {kind} "{quoted}"')


def build(raw: sqlite3.Connection) -> None:
    """Make every derived object anew, inside the caller's transaction."""
    drop(raw)
    for statement in statements():
        raw.execute(statement)
    raw.execute(f"PRAGMA user_version={fingerprint()}")
