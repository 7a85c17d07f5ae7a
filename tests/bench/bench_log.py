"""What the change log costs: bulk recording, verification, and one save at the bench.

Each is a ratio to a floor in plain SQLite, measured in the same run.
"""

from __future__ import annotations

import hashlib
import shutil
import sqlite3
import time
from functools import partial
from pathlib import Path
from statistics import median

import pytest

from conservedb.records.layers import layer
from conservedb.store import derived
from conservedb.store.connect import PRAGMAS, connect_sqlite
from conservedb.store.log import Author, open_set, seal
from conservedb.store.verify import verify
from tests.bench.conftest import LARGE, Collection
from tests.campaigns.saving import department, record_step
from tests.campaigns.traced import statements_of

BULK_BUDGET = 2.5
VERIFY_BUDGET = 40
SAVE_BUDGET = 60
SAVES = 20
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


def without_log(raw: sqlite3.Connection) -> None:
    """Take the triggers of the log away."""
    for name in [text.split()[2] for text in derived.statements()]:
        if name.startswith("log_"):
            raw.execute(f"DROP TRIGGER {name}")


def recorded_in_bulk(path: Path, rows: list[tuple[object, ...]], *, logged: bool) -> float:
    """Seconds to record the rows in one transaction, sealed and committed."""
    raw = connect_sqlite(path)
    if not logged:
        without_log(raw)
    marks = ", ".join("?" * len(rows[0]))
    started = time.perf_counter()
    raw.execute("BEGIN IMMEDIATE")
    if logged:
        open_set(raw, ME)
    raw.executemany(f"INSERT INTO layer VALUES ({marks})", rows)
    if logged:
        seal(raw)
    raw.execute("COMMIT")
    seconds = time.perf_counter() - started
    raw.close()
    return seconds


@pytest.mark.bench
def test_layers_in_bulk(large: Collection, tmp_path: Path) -> None:
    rows = layers_like(large.path, LARGE)
    seconds = {}
    for logged in (False, True):
        path = Path(shutil.copy(large.path, tmp_path / f"{logged}.db"))
        seconds[logged] = recorded_in_bulk(path, rows, logged=logged)
        path.unlink()
    ratio = seconds[True] / seconds[False]
    print(
        f"{len(rows)} layers in bulk: {seconds[True]:.2f} s with the log,"
        f" {seconds[False]:.2f} s without: {ratio:.2f} times"
    )
    assert ratio <= BULK_BUDGET


@pytest.mark.bench
def test_verify(large: Collection) -> None:
    raw = connect_sqlite(large.path)
    started = time.perf_counter()
    hasher, changes = hashlib.sha256(), 0
    for table, record, before, after in raw.execute(
        "SELECT table_name, record_id, before, after FROM change ORDER BY id"
    ):
        hasher.update(f"{table} {record} {before} {after}".encode())
        changes += 1
    floor = time.perf_counter() - started
    started = time.perf_counter()
    assert list(verify(raw)) == []
    seconds = time.perf_counter() - started
    raw.close()
    print(
        f"verification of {changes} changes: {seconds:.1f} s, {seconds / changes * 1e5:.1f} s for"
        f" 100,000; {seconds / floor:.1f} x reading and hashing their text ({floor:.2f} s)"
    )
    assert seconds / floor <= VERIFY_BUDGET


@pytest.mark.bench
def test_one_save(tmp_path: Path) -> None:
    """A step over three places, against the statements that it comes to."""
    engine = department(tmp_path / "saved.db")
    bare = sqlite3.connect(
        shutil.copy(tmp_path / "saved.db", tmp_path / "bare.db"), isolation_level=None
    )
    for pragma in PRAGMAS:
        bare.execute(pragma)
    without_log(bare)
    saved, floor = [], []
    for number in range(SAVES):
        step = partial(record_step, engine, f"step {number}", 3)
        statements = [s for s in statements_of(engine, step) if "change_set" not in s]
        started = time.perf_counter()
        for statement in statements:
            bare.execute(statement)
        floor.append(time.perf_counter() - started)
        started = time.perf_counter()
        record_step(engine, f"again {number}", 3)
        saved.append(time.perf_counter() - started)
    bare.close()
    ratio = median(saved) / median(floor)
    print(
        f"one save: {median(saved) * 1000:.1f} ms, {ratio:.1f} x its bare statements"
        f" ({median(floor) * 1000:.1f} ms)"
    )
    assert ratio <= SAVE_BUDGET
