"""What the change log costs: bulk recording, verification, and one save at the bench.

Each is a ratio to a floor in plain SQLite, measured in the same run.
"""

from __future__ import annotations

import sqlite3
import time
from pathlib import Path

import pytest

from conservedb.records.layers import layer
from conservedb.store import derived
from conservedb.store.connect import connect_sqlite
from conservedb.store.log import Author, open_set, seal
from tests.bench.conftest import LARGE, Collection

BULK_BUDGET = 2.5
ME = Author("A. Tester", "recorded")


def layers_like(path: Path, number: int) -> list[tuple[object, ...]]:
    """Rows of `layer` with fresh ids, refs and UUIDs, otherwise as a collection has them."""
    names = [column.name for column in layer.columns]
    own = {name: names.index(name) for name in ("id", "uuid", "ref")}
    raw = sqlite3.connect(path)
    found = raw.execute(f"SELECT {', '.join(names)} FROM layer LIMIT ?", (number,)).fetchall()
    (last,) = raw.execute("SELECT max(id) FROM layer").fetchone()
    raw.close()
    made = []
    for count, row in enumerate(found, 1):
        fresh = list(row)
        fresh[own["id"]] = last + count
        fresh[own["uuid"]] = f"00000000-0000-4000-8000-{count:012d}"
        fresh[own["ref"]] = f"new{count}"
        made.append(tuple(fresh))
    return made


def recorded_in_bulk(path: Path, rows: list[tuple[object, ...]], *, logged: bool) -> float:
    """Seconds to record the rows, sealing included; nothing of it is kept."""
    raw = connect_sqlite(path)
    try:
        raw.execute("BEGIN IMMEDIATE")
        if not logged:
            for statement in derived.statements():
                name = statement.split()[2]
                if name.startswith("log_"):
                    raw.execute(f"DROP TRIGGER {name}")
        marks = ", ".join("?" * len(rows[0]))
        started = time.perf_counter()
        if logged:
            open_set(raw, ME)
        raw.executemany(f"INSERT INTO layer VALUES ({marks})", rows)
        if logged:
            seal(raw)
        seconds = time.perf_counter() - started
        raw.execute("ROLLBACK")
        return seconds
    finally:
        raw.close()


@pytest.mark.bench
def test_layers_in_bulk(large: Collection) -> None:
    rows = layers_like(large.path, LARGE)
    without = recorded_in_bulk(large.path, rows, logged=False)
    with_log = recorded_in_bulk(large.path, rows, logged=True)
    ratio = with_log / without
    print(
        f"{len(rows)} layers in bulk: {with_log:.2f} s with the log, {without:.2f} s without:"
        f" {ratio:.2f} times"
    )
    assert ratio <= BULK_BUDGET
