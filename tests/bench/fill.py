"""Databases of collections of any size, made once and kept for the next run.

The first thousand objects go in through the program's own import, with all its checks. Those that
are like them (see `collection`) are copied inside the database, under new keys and through every
trigger, a change set for each thousand: `test_fill` holds such a database against one that was
imported whole. Run as a script it makes one and says how long that took:

    python -m tests.bench.fill 1000000
"""

from __future__ import annotations

import hashlib
import sqlite3
import sys
import tempfile
import time
import uuid
from bisect import bisect_left
from collections.abc import Iterator
from itertools import accumulate
from pathlib import Path
from typing import Any, NamedTuple

from sqlalchemy import Column, Table

from conservedb.exchange.importing import import_folder
from conservedb.records.every import metadata
from conservedb.store.connect import connect_sqlite
from conservedb.store.create import create
from conservedb.store.keys import fold, sort_key
from conservedb.store.log import Author, open_set, seal
from conservedb.store.logging_triggers import owner_field
from conservedb.store.opening import open_database
from conservedb.store.version import FINGERPRINT
from tests.bench import collection

WHO = "A. Tester"
KEPT = Path(tempfile.gettempdir()) / "conservedb-bench"
_FAST = ("PRAGMA synchronous=OFF", "PRAGMA cache_size=-500000", "PRAGMA journal_mode=OFF")
"""For a file that is made anew where the power fails."""


class Filled(NamedTuple):
    """A database, and how many layers it holds."""

    path: Path
    layers: int


def filled(layers: int, kept: Path = KEPT) -> Filled:
    """A database with at least so many layers: the one of a run before, else a new one.

    It must not be written to; copy it first.
    """
    texts = (Path(file).read_bytes() for file in (collection.__file__, __file__))
    edition = hashlib.sha256(b"".join(texts)).hexdigest()[:12]
    path = kept / f"{layers}-{edition}-{FINGERPRINT}.db"
    if not path.exists():
        kept.mkdir(parents=True, exist_ok=True)
        partial = path.with_suffix(".partial")
        partial.unlink(missing_ok=True)
        fill(partial, layers)
        partial.rename(path)
    raw = connect_sqlite(path)
    (found,) = raw.execute("SELECT count(*) FROM layer").fetchone()
    raw.close()
    return Filled(path, found)


def fill(path: Path, layers: int) -> None:
    """Make a new database with the collection of that size."""
    with tempfile.TemporaryDirectory(dir=path.parent) as folder:
        tables = Path(folder) / "tables"
        collection.make_collection(tables, layers, collection.PERIOD)
        create(path, today="2026-11-02")
        engine, _ = open_database(path)
        report = import_folder(engine, tables, who=WHO)
        engine.dispose()
        assert report.written, [fault.sentence() for fault in report.faults[:5]]
    raw = connect_sqlite(path)
    for pragma in _FAST:
        raw.execute(pragma).fetchone()
    raw.create_function("new_uuid", 0, lambda: str(uuid.uuid4()))
    lasts = {table.name: _last(raw, table) for table in _ON_OBJECTS if "id" in table.c}
    lasts["object"] = collection.PERIOD
    for lap, objects in enumerate(_laps(raw, layers), 1):
        _copy(raw, lap, objects, {name: lap * last for name, last in lasts.items()})
    raw.execute("PRAGMA journal_mode=TRUNCATE").fetchone()
    raw.close()


def _laps(raw: sqlite3.Connection, layers: int) -> Iterator[int]:
    """How many of the first objects to copy, lap after lap, until there are enough layers."""
    counts = raw.execute("SELECT count(*) FROM layer GROUP BY object_id ORDER BY object_id")
    sums = list(accumulate(count for (count,) in counts))
    missing = layers - sums[-1]
    while missing > 0:
        yield min(bisect_left(sums, missing) + 1, len(sums))
        missing -= sums[-1]


def _last(raw: sqlite3.Connection, table: Table) -> int:
    found = raw.execute(f"SELECT coalesce(max(id), 0) FROM {table.name}").fetchone()
    return int(found[0])


def _copy(raw: sqlite3.Connection, lap: int, objects: int, shifts: dict[str, int]) -> None:
    """Copy the first objects with everything on them, in one change set.

    Args:
        shifts: by how much the keys of a lap differ from the first ones, by table.
    """
    raw.execute("BEGIN IMMEDIATE")
    raw.execute("PRAGMA defer_foreign_keys=ON")
    open_set(raw, Author(WHO, "imported", f"objects like the first, lap {lap}"))
    _copy_objects(raw, lap, objects)
    for table in _ON_OBJECTS:
        raw.execute(_copying(table, shifts), (objects,))
    seal(raw)
    raw.execute("COMMIT")


def _copy_objects(raw: sqlite3.Connection, lap: int, objects: int) -> None:
    """The objects themselves, under numbers and titles of their own."""
    names = [column.name for column in _OBJECT.columns]
    rows = raw.execute(f"SELECT {', '.join(names)} FROM object WHERE id <= ?", (objects,))
    for row in rows.fetchall():
        fields = dict(zip(names, row, strict=True))
        number = fields["id"] + lap * collection.PERIOD
        name, title = f"CB.{number}", f"Object {number}"
        fields |= {"id": number, "uuid": str(uuid.uuid4()), "number": name, "title": title}
        fields |= {"number_sort": sort_key(name), "number_folded": fold(name)}
        fields["title_folded"] = fold(title)
        marks = ", ".join("?" * len(names))
        raw.execute(f"INSERT INTO object VALUES ({marks})", tuple(fields.values()))


def _copying(table: Table, shifts: dict[str, int]) -> str:
    """SQL that copies the rows of a table that belong to the first objects."""
    made = []
    for column in table.columns:
        target = _pointed_at(column)
        if column.name == "uuid":
            made.append("new_uuid()")
        elif column.name == "id":
            made.append(f"id + {shifts[table.name]}")
        elif target in shifts:
            made.append(f"{column.name} + {shifts[target]}")
        else:
            made.append(column.name)
    if "object_id" in table.c:
        chosen = "object_id <= ?"
    else:
        owner = owner_field(table)
        target = _pointed_at(table.c[owner])
        chosen = f"{owner} IN (SELECT id FROM {target} WHERE object_id <= ?)"
    names = ", ".join(column.name for column in table.columns)
    return (
        f"INSERT INTO {table.name} ({names}) SELECT {', '.join(made)} FROM {table.name}"
        f" WHERE {chosen} ORDER BY {owner_field(table)}"
    )


def _pointed_at(column: Column[Any]) -> str:
    """The table whose keys a column holds; "" where it holds none."""
    keys = [key.column for key in column.foreign_keys if key.column.name == "id"]
    if column.name == "object_id":
        return "object"
    return keys[0].table.name if keys else ""


def _on_objects() -> list[Table]:
    """The tables whose rows belong to objects, those that others point at first."""
    found = {"object"}
    for table in metadata.sorted_tables:
        if found & {_pointed_at(column) for column in table.columns}:
            found.add(table.name)
    return [table for table in metadata.sorted_tables if table.name in found - {"object"}]


_OBJECT = metadata.tables["object"]
_ON_OBJECTS = _on_objects()


if __name__ == "__main__":
    started = time.perf_counter()
    made = filled(int(sys.argv[1]))
    size = made.path.stat().st_size / 1e6
    print(
        f"{made.layers} layers, {size:.0f} MB, {time.perf_counter() - started:.1f} s: {made.path}"
    )
