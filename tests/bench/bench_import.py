"""Importing CSV, with its log, against a bare `executemany` of the same rows.

The floor has the same tables and indexes, but no triggers and no words to be found by, and no
log is written.
"""

from __future__ import annotations

import sqlite3
import time
from pathlib import Path

import pytest

from conservedb.store.log import LOG
from tests.bench.conftest import Collection

BUDGET = 20


def bare_inserts(source: Path, target: Path) -> float:
    """Seconds to insert every row of `source` but the log's into empty tables, indexed alike."""
    rows_from, into = sqlite3.connect(source), sqlite3.connect(target, isolation_level=None)
    into.execute("PRAGMA journal_mode=TRUNCATE")
    into.execute("PRAGMA synchronous=FULL")
    schema = rows_from.execute(
        "SELECT name, sql FROM sqlite_schema WHERE type IN ('table', 'index')"
        " AND tbl_name IN (SELECT name FROM pragma_table_list WHERE type = 'table')"
        " AND sql IS NOT NULL AND name NOT LIKE 'sqlite_%' ORDER BY rowid"
    ).fetchall()
    rows = {}
    for name, sql in schema:
        into.execute(sql)
        if sql.startswith("CREATE TABLE") and name not in LOG:
            rows[name] = rows_from.execute(f"SELECT * FROM {name}").fetchall()
    started = time.perf_counter()
    into.execute("BEGIN")
    for name, found in rows.items():
        if found:
            marks = ", ".join("?" * len(found[0]))
            into.executemany(f"INSERT INTO {name} VALUES ({marks})", found)
    into.execute("COMMIT")
    seconds = time.perf_counter() - started
    into.close()
    rows_from.close()
    return seconds


@pytest.mark.bench
def test_import(large: Collection, tmp_path: Path) -> None:
    if large.seconds is None:
        pytest.skip("a collection of this size is filled, and not imported")
    floor = bare_inserts(large.path, tmp_path / "floor.db")
    ratio = large.seconds / floor
    print(f"import of {large.layers} layers: {ratio:.1f} x bare executemany ({floor:.1f} s)")
    assert ratio <= BUDGET
