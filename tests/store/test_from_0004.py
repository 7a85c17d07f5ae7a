"""A department's file of the fourth schema, with its log and triggers, opened by this program.

The file is the demonstration as it was at schema 0004, after a source and a climate had been
recorded and the source withdrawn. Every row stays, the rooms may be outdoors, and the log holds.
"""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest
from sqlalchemy import Engine

from conservedb.exchange.keeping_questions import keep_question
from conservedb.knowledge.research_words import read
from conservedb.questions.research_saved import saved
from conservedb.recording.bounds import check_bounds
from conservedb.store import derived
from conservedb.store.connect import connect_sqlite, raw_of, reading
from conservedb.store.create import create
from conservedb.store.opening import open_database
from conservedb.store.verify import verify
from tests.conftest import TODAY
from tests.store.older import GROWN, Rows, ask, columns, everything, load_old

Opened = tuple[Path, Engine, dict[str, str], Rows]


@pytest.fixture(scope="module")
def opened(tmp_path_factory: pytest.TempPathFactory) -> Opened:
    """The file, opened; what columns it had, and what these held before."""
    path = tmp_path_factory.mktemp("old") / "old.db"
    load_old(path, "0004")
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
    assert sum(map(len, before.values())) > 10_000
    assert len(before["climate"]) == 8
    for table, held in before.items():
        assert held == after[table] or table in GROWN | {
            "database",
            "shipped",
            "change",
            "change_set",
        }
        assert held <= after[table] or table in ("database", "shipped"), table
    assert ask(path, "SELECT count(*) FROM saved_question") == [0]


def test_keys_of_climates_are_not_used_again(opened: Opened) -> None:
    (last,) = ask(opened[0], "SELECT seq FROM sqlite_sequence WHERE name = 'climate'")
    assert last == ask(opened[0], "SELECT max(id) FROM climate")[0]


def test_the_file_and_its_log_are_whole(opened: Opened) -> None:
    path, engine, _, _ = opened
    assert ask(path, "PRAGMA foreign_key_check") == []
    assert ask(path, "PRAGMA integrity_check") == ["ok"]
    made = "type IN ('trigger', 'view') OR name = 'search' OR name GLOB 'search_*_ref'"
    derived_objects = ask(path, f"SELECT sql FROM sqlite_schema WHERE {made}")
    assert sorted(derived_objects) == sorted(derived.statements())
    with reading(engine) as connection:
        assert list(verify(raw_of(connection))) == []
        assert check_bounds(connection, ask(path, "SELECT id FROM object")) == []


def test_it_has_the_shape_of_a_new_file(opened: Opened, tmp_path: Path) -> None:
    create(tmp_path / "new.db")
    open_database(tmp_path / "new.db")[0].dispose()
    shape = "SELECT type, name, tbl_name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite_%'"
    assert sorted(ask(opened[0], shape)) == sorted(ask(tmp_path / "new.db", shape))


REFUSED = {
    "a room of another use": "UPDATE climate SET use = 'garden' WHERE id = 1",
    "rows of another kind": "UPDATE saved_question SET rows = 'people'",
    "a name twice": "UPDATE saved_question SET name_folded = 'one'",
}


@pytest.mark.parametrize("statement", REFUSED.values(), ids=REFUSED.keys())
def test_what_joined_is_guarded(opened: Opened, statement: str) -> None:
    _, engine, _, _ = opened
    for name in ("one", "two"):
        keep_question(engine, name, read("material: shellac"), "A. Tester", TODAY)
    with reading(engine) as connection:
        assert saved(connection, "ONE").research == read("material: shellac")
    raw = connect_sqlite(opened[0])
    try:
        raw.execute("BEGIN")
        with pytest.raises(sqlite3.IntegrityError):
            raw.execute(statement)
    finally:
        raw.execute("ROLLBACK")
        raw.close()
