"""Opening: ours, complete, of this version; else one sentence, and nothing touched."""

from __future__ import annotations

import os
import re
import shutil
import sqlite3
from pathlib import Path

import pytest

from conservedb.demo.build import load
from conservedb.store import derived, opening
from conservedb.store.connect import connect_sqlite, reading, writing
from conservedb.store.create import create
from conservedb.store.log import Author
from conservedb.store.opening import open_database, surroundings
from conservedb.store.problems import DatabaseProblem
from conservedb.store.upgrade import back_up, upgrade
from conservedb.store.version import HEAD, REVISIONS, migrations_folder


@pytest.fixture
def path(tmp_path: Path) -> Path:
    target = tmp_path / "department.db"
    create(target)
    return target


def tables_and_triggers(path: Path) -> list[tuple[str, str, str]]:
    raw = sqlite3.connect(path)
    try:
        return raw.execute("SELECT type, name, sql FROM sqlite_schema ORDER BY 1, 2").fetchall()
    finally:
        raw.close()


def derived_objects(path: Path) -> list[str]:
    return sorted(
        sql
        for kind, name, sql in tables_and_triggers(path)
        if kind in ("trigger", "view") or name == "search" or re.fullmatch("search_.*_ref", name)
    )


def test_head_is_the_newest_migration() -> None:
    from alembic.config import Config
    from alembic.script import ScriptDirectory

    config = Config()
    config.set_main_option("script_location", str(migrations_folder()))
    scripts = ScriptDirectory.from_config(config)
    assert scripts.get_current_head() == HEAD
    assert [s.revision for s in scripts.walk_revisions()][::-1] == list(REVISIONS)


def test_migrations_make_what_the_tables_say(path: Path) -> None:
    """Alembic's own comparison of the migrated file with the declared tables finds nothing."""
    from alembic.autogenerate import compare_metadata
    from alembic.migration import MigrationContext
    from sqlalchemy import create_engine

    from conservedb.records.every import metadata

    raw = connect_sqlite(path)
    derived.drop(raw)
    raw.close()
    with create_engine(f"sqlite:///{path}").connect() as connection:
        assert compare_metadata(MigrationContext.configure(connection), metadata) == []


def test_every_check_and_unique_of_the_tables_is_in_the_migration(path: Path) -> None:
    """Alembic does not compare CHECKs, so the CREATE statements are compared by their names."""
    from sqlalchemy import CheckConstraint, ForeignKeyConstraint, UniqueConstraint

    from conservedb.records.every import metadata

    made = {name: sql for kind, name, sql in tables_and_triggers(path) if kind == "table"}
    for table in metadata.tables.values():
        assert made[table.name].rstrip().endswith("STRICT")
        for constraint in table.constraints:
            if isinstance(constraint, CheckConstraint | ForeignKeyConstraint | UniqueConstraint):
                assert f"CONSTRAINT {_full_name(constraint)} " in made[table.name]


def _full_name(constraint: object) -> str:
    from sqlalchemy.dialects import sqlite

    preparer = sqlite.dialect().identifier_preparer
    name = preparer.format_constraint(constraint)  # type: ignore[arg-type]
    assert name
    return name


def test_settings_of_every_connection(path: Path) -> None:
    raw = connect_sqlite(path)
    read = {
        name: raw.execute(f"PRAGMA {name}").fetchone()[0]
        for name in (
            "foreign_keys",
            "recursive_triggers",
            "journal_mode",
            "synchronous",
            "cell_size_check",
            "busy_timeout",
        )
    }
    raw.close()
    assert read == {
        "foreign_keys": 1,
        "recursive_triggers": 1,
        "journal_mode": "truncate",
        "synchronous": 2,
        "cell_size_check": 1,
        "busy_timeout": 30000,
    }


def test_a_missing_file_is_named(tmp_path: Path) -> None:
    with pytest.raises(DatabaseProblem, match=r"no database at .*conservedb new"):
        open_database(tmp_path / "none.db")


def test_nothing_is_made_over_a_file(path: Path) -> None:
    before = path.read_bytes()
    with pytest.raises(DatabaseProblem, match="already exists"):
        create(path)
    with pytest.raises(DatabaseProblem, match="already exists"):
        load(path)
    assert path.read_bytes() == before


@pytest.mark.parametrize("content", [b"", b"not a database", b"SQLite format 3\0" + bytes(200)])
def test_a_file_that_is_no_database(tmp_path: Path, content: bytes) -> None:
    path = tmp_path / "strange.db"
    path.write_bytes(content)
    with pytest.raises(DatabaseProblem, match=r"not a (conservedb|readable) database"):
        open_database(path)
    assert path.read_bytes() == content


def test_a_stranger_is_not_adopted(tmp_path: Path) -> None:
    path = tmp_path / "other.db"
    raw = sqlite3.connect(path)
    raw.executescript("CREATE TABLE object (id); CREATE TABLE alembic_version (version_num);")
    raw.close()
    before = path.read_bytes()
    with pytest.raises(DatabaseProblem, match="not a conservedb database"):
        open_database(path)
    assert path.read_bytes() == before


def test_a_newer_file_is_refused_untouched(path: Path) -> None:
    raw = sqlite3.connect(path)
    raw.execute("UPDATE alembic_version SET version_num = '9999'")
    raw.commit()
    raw.close()
    before = path.read_bytes()
    with pytest.raises(DatabaseProblem, match=r"newer conservedb .schema 9999"):
        open_database(path)
    assert path.read_bytes() == before


def test_a_loaded_dump_is_completed(tmp_path: Path) -> None:
    path = tmp_path / "demo.db"
    load(path)
    assert not [name for kind, name, _ in tables_and_triggers(path) if kind == "trigger"]
    engine, upgraded = open_database(path)
    engine.dispose()
    assert upgraded is None
    assert derived_objects(path) == sorted(derived.statements())


def test_a_loaded_dump_with_dangling_rows_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "demo.db"
    load(path)
    raw = sqlite3.connect(path)
    raw.execute("UPDATE layer SET source_id = 999999 WHERE id = 1")
    raw.commit()
    raw.close()
    with pytest.raises(DatabaseProblem, match="row of table layer points at a record"):
        open_database(path)


def test_a_loaded_dump_with_wrong_bounds_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "demo.db"
    load(path)
    raw = sqlite3.connect(path)
    raw.execute("UPDATE layer SET came_from = came_from - 1 WHERE date_derived = 'edtf'")
    raw.commit()
    raw.close()
    with pytest.raises(DatabaseProblem, match="its bounds go beyond its own date"):
        open_database(path)


def test_reading_works_where_one_may_not_write(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Root may write anywhere, so the refusal to write is simulated by the mode of opening."""
    import conservedb.store.connect as connect

    real = connect._prepared
    monkeypatch.setattr(connect, "_prepared", lambda p, mode: real(p, "ro"))
    engine, _ = open_database(path)
    with reading(engine) as connection:
        assert connection.exec_driver_sql("SELECT count(*) FROM object").scalar() == 0


NEXT = f"{int(HEAD) + 1:04}"
"""A revision that no program knows yet."""
OLD_TO_NEW = '''"""a column more, and a table rebuilt"""
import sqlalchemy as sa
from alembic import op
revision = "{next}"
down_revision = "{head}"
def upgrade():
    op.add_column("object", sa.Column("owner", sa.Text()))
    with op.batch_alter_table("component", recreate="always") as batch:
        batch.add_column(sa.Column("colour", sa.Text()))
    {failure}
'''


def newer_program(tmp_path: Path, failure: str = "") -> Path:
    folder = tmp_path / "migrations"
    shutil.copytree(migrations_folder(), folder, ignore=shutil.ignore_patterns("__pycache__"))
    text = OLD_TO_NEW.format(failure=failure, head=HEAD, next=NEXT)
    (folder / "versions" / f"{NEXT}_more.py").write_text(text, encoding="utf-8")
    return folder


def counts(path: Path) -> dict[str, int]:
    raw = sqlite3.connect(path)
    names = [r[0] for r in raw.execute("SELECT name FROM pragma_table_list WHERE type = 'table'")]
    found = {n: raw.execute(f"SELECT count(*) FROM {n}").fetchone()[0] for n in names}
    raw.close()
    return {name: number for name, number in found.items() if not name.startswith("sqlite_")}


def test_an_older_file_is_upgraded_after_a_copy(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "old.db"
    load(path)
    open_database(path)[0].dispose()
    before = counts(path)
    monkeypatch.setattr(opening, "HEAD", NEXT)
    monkeypatch.setattr(opening, "REVISIONS", (*REVISIONS, NEXT))
    monkeypatch.setattr(
        "conservedb.store.upgrade.migrations_folder", lambda: newer_program(tmp_path)
    )
    engine, upgraded = open_database(path)
    engine.dispose()
    assert upgraded is not None
    assert upgraded.backup is not None
    assert upgraded.backup.name == f"old.db.before-{HEAD}.db"
    assert upgraded.remarks == (
        f"upgraded to schema {NEXT}; a copy from before: {upgraded.backup}",
    )
    assert counts(upgraded.backup) == before == counts(path)
    raw = sqlite3.connect(path)
    assert raw.execute("SELECT colour FROM component").fetchone() == (None,)
    assert raw.execute("PRAGMA foreign_key_check").fetchall() == []
    raw.close()
    assert derived_objects(path) == sorted(derived.statements())


@pytest.mark.parametrize(
    "failure",
    ['raise RuntimeError("power")', 'op.execute("DELETE FROM bridge")'],
    ids=["error", "lost rows"],
)
def test_a_failed_upgrade_leaves_the_file_as_it_was(tmp_path: Path, failure: str) -> None:
    path = tmp_path / "old.db"
    load(path)
    open_database(path)[0].dispose()
    before, rows = tables_and_triggers(path), counts(path)
    with pytest.raises(DatabaseProblem, match="the file is as it was, and a copy lies in"):
        upgrade(path, HEAD, NEXT, newer_program(tmp_path, failure))
    assert tables_and_triggers(path) == before
    assert counts(path) == rows


def test_a_copy_is_never_made_over_a_file(path: Path, tmp_path: Path) -> None:
    target = tmp_path / "copy.db"
    back_up(path, target)
    assert counts(target) == counts(path)
    with pytest.raises(DatabaseProblem, match="already there"):
        back_up(path, target)


def test_writing_waits_for_nobody_to_read_and_rolls_back(path: Path) -> None:
    engine, _ = open_database(path)
    with (
        pytest.raises(ZeroDivisionError),
        writing(engine, Author("A. Tester", "recorded")) as connection,
    ):
        connection.exec_driver_sql(
            "INSERT INTO term (uuid, entered, list, term) VALUES ('u', '2026-01-01', 'l', 't')"
        )
        raise ZeroDivisionError
    with reading(engine) as connection:
        assert connection.exec_driver_sql("SELECT count(*) FROM term").scalar() == 0


def test_synchronised_folders_and_shares_are_warned_of(tmp_path: Path) -> None:
    folder = tmp_path / "OneDrive - Museum"
    assert "synchronised" in (surroundings(folder / "a.db") or "")
    assert surroundings(tmp_path / "a.db") is None
    assert os.sep in str(tmp_path)
