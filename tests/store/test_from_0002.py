"""A department's file of the second schema, full of rows, opened by this program.

The file is the demonstration as it was at schema 0002. Every row stays as it was, the columns
that joined are blank, and the tables that joined are empty.
"""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest
from sqlalchemy import Engine

from conservedb.dates import UNKNOWN_END, UNKNOWN_START
from conservedb.exchange.exporting import export_folder
from conservedb.exchange.importing import import_folder
from conservedb.recording.bounds import check_bounds
from conservedb.store import derived
from conservedb.store.connect import connect_sqlite, reading
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.conftest import TODAY
from tests.store.older import GROWN, Rows, ask, columns, everything, load_old

Opened = tuple[Path, Engine, dict[str, str], Rows]
GREW = ("treatment", "intervention", "layer", "agent", "removal", "component")
JOINED = {"batch", "observation", "reading", "sample", "plan", "planned_step", "authorisation"}
JOINED |= {"authorisation_step", "standing_approval", "needed_authorisation", "sample_person"}


@pytest.fixture(scope="module")
def opened(tmp_path_factory: pytest.TempPathFactory) -> Opened:
    """The file, opened; what columns it had, and what these held before."""
    path = tmp_path_factory.mktemp("old") / "old.db"
    load_old(path, "0002")
    had = columns(path)
    before = everything(path, had)
    engine, done = open_database(path)
    assert done is not None
    assert done.backup is not None
    assert everything(done.backup, had) == before
    return path, engine, had, before


def test_every_row_is_kept(opened: Opened) -> None:
    path, _, had, before = opened
    after = everything(path, had)
    assert sum(map(len, before.values())) > 4000
    for table, held in before.items():
        assert held == after[table] or table in GROWN | {"database", "shipped"}, table
        assert len(held) <= len(after[table]), table


def test_what_joined_is_blank(opened: Opened) -> None:
    path, _, had, _ = opened
    blanks = {None, UNKNOWN_START, UNKNOWN_END, 0, "blank"}
    now = columns(path)
    for table in GREW:
        joined = set(now[table].split(", ")) - set(had[table].split(", "))
        assert len(joined) >= 1, table
        for name in joined:
            assert set(ask(path, f"SELECT DISTINCT {name} FROM {table}")) <= blanks, name
    for table in JOINED:
        assert ask(path, f"SELECT count(*) FROM {table}") == [0]


def test_the_file_is_whole(opened: Opened) -> None:
    path, engine, _, _ = opened
    assert ask(path, "PRAGMA foreign_key_check") == []
    assert ask(path, "PRAGMA integrity_check") == ["ok"]
    made = "type IN ('trigger', 'view') OR name = 'search' OR name GLOB 'search_*_ref'"
    derived_objects = ask(path, f"SELECT sql FROM sqlite_schema WHERE {made}")
    assert sorted(derived_objects) == sorted(derived.statements())
    with reading(engine) as connection:
        assert check_bounds(connection, ask(path, "SELECT id FROM object")) == []


def test_it_has_the_shape_of_a_new_file(opened: Opened, tmp_path: Path) -> None:
    create(tmp_path / "new.db")
    shape = "SELECT type, name, tbl_name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite_%'"
    open_database(tmp_path / "new.db")[0].dispose()
    assert sorted(ask(opened[0], shape)) == sorted(ask(tmp_path / "new.db", shape))


REFUSED = {
    "a standing of no kind": "UPDATE intervention SET standing = 'by habit' WHERE id = 1",
    "fewer than no cycles": "UPDATE layer SET cycles = -1 WHERE id = 1",
    "a batch that nobody made": "UPDATE layer SET batch_id = 999 WHERE id = 1",
    "residues on a third side": "UPDATE removal SET residue_side = 'C' WHERE id = 1",
    "a part in its own place": "UPDATE component SET replaced_by_id = id WHERE id = 1",
    "retired backwards": "UPDATE component SET retired_earliest = 9000000 WHERE id = 1",
}


@pytest.mark.parametrize("statement", REFUSED.values(), ids=REFUSED.keys())
def test_columns_that_joined_are_guarded(opened: Opened, statement: str) -> None:
    raw = connect_sqlite(opened[0])
    try:
        raw.execute("BEGIN")
        with pytest.raises(sqlite3.IntegrityError):
            raw.execute(statement)
    finally:
        raw.execute("ROLLBACK")
        raw.close()


def test_it_goes_out_and_into_a_new_file_and_out_the_same(opened: Opened, tmp_path: Path) -> None:
    with reading(opened[1]) as connection:
        export_folder(connection, tmp_path / "once")
    create(tmp_path / "new.db")
    new, _ = open_database(tmp_path / "new.db")
    report = import_folder(new, tmp_path / "once", today=TODAY, who="A. Tester")
    assert report.written, "\n".join(fault.sentence() for fault in report.faults)
    with reading(new) as connection:
        export_folder(connection, tmp_path / "twice")
    for path in (tmp_path / "once").glob("*.csv"):
        assert path.read_bytes() == (tmp_path / "twice" / path.name).read_bytes(), path.name
