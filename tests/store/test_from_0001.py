"""A department's file of the first schema, full of rows, opened by this program.

The file is the demonstration as it was at schema 0001. Every row of it stays as it was; the
shipped tables come in beside it, under other keys where the department bears theirs.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from sqlalchemy import Engine

from conservedb.exchange.exporting import export_folder
from conservedb.exchange.importing import import_folder
from conservedb.questions.behaviour import Materials
from conservedb.recording.bounds import check_bounds
from conservedb.reference.edition import EDITION
from conservedb.reference.tables import SUBJECTS, rows
from conservedb.store import derived
from conservedb.store.connect import reading
from conservedb.store.create import create
from conservedb.store.opening import open_database
from conservedb.store.shipped_shape import SHAPES
from tests.conftest import TODAY
from tests.store.older import GROWN, Rows, ask, columns, everything, load_old

Opened = tuple[Path, Engine, tuple[str, ...]]


@pytest.fixture(scope="module")
def old(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("old") / "old.db"
    load_old(path, "0001")
    return path


@pytest.fixture(scope="module")
def old_columns(old: Path) -> dict[str, str]:
    """The columns of the first schema; asked for before the file is opened."""
    return columns(old)


@pytest.fixture(scope="module")
def before(old: Path, old_columns: dict[str, str]) -> Rows:
    """What the file held before it was opened."""
    return everything(old, old_columns)


@pytest.fixture(scope="module")
def opened(old: Path, before: Rows, old_columns: dict[str, str]) -> Opened:
    engine, done = open_database(old)
    assert done is not None
    assert done.backup is not None
    assert everything(done.backup, old_columns) == before
    return old, engine, done.remarks


def test_every_row_is_kept(before: Rows, opened: Opened, old_columns: dict[str, str]) -> None:
    after = everything(opened[0], old_columns)
    assert sum(map(len, before.values())) > 2000
    for table, held in before.items():
        assert held <= after[table], table
        assert held == after[table] or table in GROWN, table


def test_the_file_is_whole(opened: Opened) -> None:
    path, engine, _ = opened
    assert ask(path, "PRAGMA foreign_key_check") == []
    assert ask(path, "PRAGMA integrity_check") == ["ok"]
    made = "type IN ('trigger', 'view') OR name = 'search' OR name GLOB 'search_*_ref'"
    derived_objects = ask(path, f"SELECT sql FROM sqlite_schema WHERE {made}")
    assert sorted(derived_objects) == sorted(derived.statements())
    with reading(engine) as connection:
        assert check_bounds(connection, ask(path, "SELECT id FROM object")) == []


def test_the_shipped_tables_are_in(before: Rows, opened: Opened) -> None:
    path, _, remarks = opened
    assert ask(path, "SELECT edition FROM database") == [EDITION]
    for subject in SUBJECTS:
        table = SHAPES[subject].table.name
        (count,) = ask(path, f"SELECT count(*) FROM {table}")
        assert count == len(before.get(table, ())) + len(rows(subject)), subject
    ours = {row["key"] for row in rows("materials")} & set(
        ask(path, "SELECT key FROM material WHERE entered <> ?", EDITION)
    )
    assert {"b72", "shellac", "limestone"} <= ours
    beside = ask(path, "SELECT key FROM material WHERE key LIKE 'shipped-%'")
    assert set(beside) == {f"shipped-{key}" for key in ours}
    bearers = "SELECT DISTINCT m.key FROM {} t JOIN material m ON m.id = t.material_id"
    for table in ("hansen", "material_value", "solubility", "hazard"):
        assert not ours & set(ask(path, bearers.format(table))), table
    upgraded, reference = remarks
    assert "a copy from before" in upgraded
    assert "these keys are the department's own" in reference
    assert open_database(path)[1] is None


def test_ours_may_behave_as_the_shipped_one(opened: Opened, tmp_path: Path) -> None:
    path, engine, _ = opened
    folder = tmp_path / "behaves"
    folder.mkdir()
    (folder / "materials.csv").write_text("key,behaves_as\nb72,shipped-b72\n")
    assert import_folder(engine, folder, today=TODAY, who="A. Tester").written
    (ours,) = ask(path, "SELECT id FROM material WHERE key = 'b72'")
    with reading(engine) as connection:
        matter = Materials(connection).of(ours)
    assert (matter.stand_in, bool(matter.spheres)) == ("shipped-b72", True)


def test_it_goes_out_and_into_a_new_file_and_out_the_same(opened: Opened, tmp_path: Path) -> None:
    _, engine, _ = opened
    with reading(engine) as connection:
        export_folder(connection, tmp_path / "once")
    create(tmp_path / "new.db")
    new, _ = open_database(tmp_path / "new.db")
    report = import_folder(new, tmp_path / "once", today=TODAY, who="A. Tester")
    assert report.written, "\n".join(fault.sentence() for fault in report.faults)
    with reading(new) as connection:
        export_folder(connection, tmp_path / "twice")
    for path in (tmp_path / "once").glob("*.csv"):
        assert path.read_bytes() == (tmp_path / "twice" / path.name).read_bytes(), path.name
