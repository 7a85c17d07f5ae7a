"""The change log: written by triggers, refused to the unnamed, never altered.

The bypasses are those of the project's own table of attempts: each was tried on a database whose
log had no such guard, where it went through.
"""

from __future__ import annotations

import shutil
import sqlite3
import subprocess
from collections.abc import Callable
from functools import partial
from pathlib import Path

import pytest
from sqlalchemy import Engine

from conservedb.exchange.entering import Entry, Refs, enter
from conservedb.exchange.lists import ListColumn
from conservedb.exchange.subjects import SUBJECTS
from conservedb.records.every import metadata
from conservedb.store import derived
from conservedb.store.connect import connect_sqlite, raw_of, reading, writing
from conservedb.store.log import Author, Head, head, open_set, seal
from conservedb.store.log_rows import current, log_differences, parse
from conservedb.store.logging_triggers import REFUSAL, logged_tables, owner_field
from conservedb.store.opening import open_database
from conservedb.store.verify import verify
from conservedb.store.version import FINGERPRINT
from tests.conftest import TODAY
from tests.recording.conftest import ME, entries

Found = list[tuple[str, str]]


def _given(made: list[Entry], _: Refs) -> list[Entry]:
    return made


@pytest.fixture
def path(new_database: Callable[[str], Engine], tmp_path: Path) -> Path:
    """A database in which three change sets were made after the first."""
    engine = new_database("log.db")
    for step in (
        entries(objects=[{"number": "X.1", "title": "Basin"}], components=[{"mark": "B1"}]),
        entries(components=[{"mark": "B2", "note": "it's 'quoted', a=b,c='d'"}]),
        entries(components=[{"mark": "B3", "mass_kg": "2.5"}]),
    ):
        assert not enter(engine, partial(_given, step), ME, TODAY).faults
    engine.dispose()
    return tmp_path / "log.db"


def found(path: Path, *heads: Head) -> Found:
    raw = connect_sqlite(path)
    try:
        return [(one.part, one.sentence) for one in verify(raw, heads)]
    finally:
        raw.close()


def end(path: Path) -> Head:
    raw = connect_sqlite(path)
    last = head(raw)
    raw.close()
    assert last is not None
    return last


def behind(path: Path, *statements: str, triggers: str = "") -> None:
    """What somebody does with another program who knows how to get round the triggers."""
    raw = sqlite3.connect(path, isolation_level=None)
    kept = raw.execute(
        "SELECT name, sql FROM sqlite_schema WHERE type = 'trigger' AND name LIKE ?", (triggers,)
    ).fetchall()
    raw.execute("PRAGMA synchronous=OFF")
    raw.execute("BEGIN")
    for name, _ in kept:
        raw.execute(f"DROP TRIGGER {name}")
    for statement in statements:
        raw.execute(statement)
    for _, sql in kept:
        raw.execute(sql)
    raw.execute("COMMIT")
    raw.close()


def test_the_fingerprint_is_that_of_the_triggers() -> None:
    assert derived.fingerprint() == FINGERPRINT


def test_a_sound_file_is_sound(path: Path) -> None:
    assert found(path, end(path)) == []


def test_every_table_is_logged_and_links_are_filed_under_their_owner() -> None:
    assert {t.name for t in logged_tables()} == metadata.tables.keys() - {"change", "change_set"}
    for subject in SUBJECTS:
        for column in subject.columns:
            if isinstance(column, ListColumn):
                assert owner_field(metadata.tables[column.table]) == column.owner


def test_rows_are_read_back_as_they_were(path: Path) -> None:
    raw = connect_sqlite(path)
    for table in logged_tables():
        names = [column.name for column in table.columns]
        stored = sorted(
            (
                {k: v for k, v in zip(names, row, strict=True) if v is not None}
                for row in raw.execute(f"SELECT {', '.join(names)} FROM {table.name}")
            ),
            key=repr,
        )
        written = sorted((_in_order(parse(t), names) for _, t in current(raw, table)), key=repr)
        assert written == stored
    raw.close()


def _in_order(fields: dict[str, object], names: list[str]) -> dict[str, object]:
    return {name: fields[name] for name in names if name in fields}


@pytest.mark.skipif(shutil.which("sqlite3") is None, reason="no sqlite3 shell on this machine")
def test_the_sqlite3_shell_is_refused_with_a_sentence(path: Path) -> None:
    done = subprocess.run(
        ["sqlite3", str(path), "UPDATE component SET note = 'x'"], capture_output=True, text=True
    )
    assert done.returncode != 0
    assert REFUSAL in done.stderr


@pytest.mark.parametrize(
    "statement",
    [
        "UPDATE component SET note = 'x'",
        "DELETE FROM component",
        "INSERT INTO term (uuid, entered, list, term) VALUES ('u', '2026-01-01', 'l', 't')",
        "INSERT OR REPLACE INTO setting SELECT * FROM setting LIMIT 1",
    ],
)
def test_a_client_that_names_nobody_is_refused(path: Path, statement: str) -> None:
    raw = sqlite3.connect(path, isolation_level=None)
    with pytest.raises(sqlite3.IntegrityError, match=REFUSAL):
        raw.execute(statement)
    raw.close()


def test_a_client_that_names_somebody_is_logged_and_shows(path: Path) -> None:
    raw = sqlite3.connect(path, isolation_level=None)
    raw.execute(
        "INSERT INTO change_set (who, at, kind, program) VALUES ('Mallory', '2026-01-01T00:00Z',"
        " 'by hand', 'shell')"
    )
    raw.execute("UPDATE component SET note = 'x' WHERE mark = 'B1'")
    raw.close()
    ((part, sentence),) = found(path)
    assert part == "chain"
    assert "(Mallory, 2026-01-01) was left open by another program" in sentence
    raw = connect_sqlite(path)
    raw.execute("BEGIN IMMEDIATE")
    open_set(raw, ME)
    raw.execute("UPDATE component SET note = 'y' WHERE mark = 'B2'")
    seal(raw)
    raw.execute("COMMIT")
    assert [r[0] for r in raw.execute("SELECT who FROM change_set ORDER BY id DESC LIMIT 2")] == [
        "A. Tester",
        "Mallory",
    ]
    raw.close()
    assert found(path) == []


LOG_IS_KEPT = {
    "an entry edited": "UPDATE change SET after = 'id=1' WHERE id = (SELECT max(id) FROM change)",
    "an entry deleted": "DELETE FROM change WHERE id = (SELECT max(id) FROM change)",
    "an entry replaced": "INSERT OR REPLACE INTO change (id, set_id, table_name, record_id)"
    " SELECT id, set_id, table_name, record_id FROM change ORDER BY id DESC LIMIT 1",
    "an entry before the first": "INSERT INTO change (id, set_id, table_name, record_id)"
    " VALUES (-5, (SELECT id FROM change_set WHERE hash IS NULL), 'term', 1)",
    "an entry in a sealed set": "INSERT INTO change (set_id, table_name, record_id)"
    " VALUES (1, 'term', 1)",
    "a set edited": "UPDATE change_set SET who = 'Somebody' WHERE id = 2",
    "a set opened again": "UPDATE change_set SET hash = NULL WHERE id = 2",
    "a set deleted": "DELETE FROM change_set WHERE id = 2",
    "a set replaced": "INSERT OR REPLACE INTO change_set (id, who, at, kind, program)"
    " VALUES (2, 'Somebody', '2026', 'x', 'x')",
    "a second open set": "INSERT INTO change_set (who, at, kind, program)"
    " VALUES ('Somebody', '2026', 'x', 'x')",
    "the open set renamed": "UPDATE change_set SET who = 'Somebody' WHERE hash IS NULL",
    "a key changed": "UPDATE component SET id = 900 WHERE mark = 'B1'",
}


@pytest.mark.parametrize("statement", LOG_IS_KEPT.values(), ids=LOG_IS_KEPT.keys())
@pytest.mark.parametrize("recursive", ["ON", "OFF"])
def test_the_log_is_only_added_to(path: Path, statement: str, recursive: str) -> None:
    raw = connect_sqlite(path)
    raw.execute(f"PRAGMA recursive_triggers={recursive}")
    raw.execute("BEGIN IMMEDIATE")
    open_set(raw, ME)
    with pytest.raises(sqlite3.IntegrityError, match=r"only ever added to|key of a row never"):
        raw.execute(statement)
    raw.execute("ROLLBACK")
    raw.close()


NEW_NOTE = "UPDATE component SET note = 'forged' WHERE mark = 'B1'"
LAST_SET = "(SELECT max(id) FROM change_set)"
LAST_CHANGES = (
    f"(SELECT last_change FROM change_set WHERE id < {LAST_SET} ORDER BY id DESC LIMIT 1)"
)
BYPASSES: dict[str, tuple[tuple[str, ...], str, str, str]] = {
    "a row changed while the triggers were away": (
        (NEW_NOTE,),
        "%",
        "rows",
        "row 1 of component was changed behind the log's back: note",
    ),
    "a row added while the triggers were away": (
        ("INSERT INTO term (uuid, entered, list, term) VALUES ('u', '2026-01-01', 'l', 't')",),
        "%",
        "rows",
        "row 1 of term was added behind the log's back",
    ),
    "a row taken away while the triggers were away": (
        ("DELETE FROM component WHERE mark = 'B3'",),
        "%",
        "rows",
        "row 3 of component was taken away behind the log's back",
    ),
    "a trigger dropped": (
        ("DROP TRIGGER log_component_update",),
        "",
        "schema",
        "trigger log_component_update was",
    ),
    "the triggers written out of the schema": (
        ("PRAGMA writable_schema=ON", "DELETE FROM sqlite_schema WHERE type = 'trigger'"),
        "",
        "schema",
        "trigger log_agent_delete was taken away",
    ),
    "a trigger rewritten": (
        (
            "DROP TRIGGER log_term_update",
            "CREATE TRIGGER log_term_update AFTER UPDATE ON term BEGIN SELECT 1; END",
        ),
        "",
        "schema",
        "trigger log_term_update was rewritten",
    ),
    "a table dropped": (("DROP TABLE near",), "", "schema", "table near was taken away"),
    "a table added": (("CREATE TABLE x (y)",), "", "schema", "table x was added by another"),
    "an entry edited": (
        ("UPDATE change SET after = replace(after, 'B2', 'B9') WHERE after LIKE '%B2%'",),
        "log_change%",
        "chain",
        "is not as it was sealed: it was edited",
    ),
    "an entry cut out": (
        ("DELETE FROM change WHERE after LIKE '%B2%'",),
        "log_change%",
        "chain",
        "had 1 changes and now has 0",
    ),
    "a set cut out": (
        (f"DELETE FROM change_set WHERE id = {LAST_SET} - 1",),
        "log_change%",
        "chain",
        "does not follow the one before it",
    ),
    "an author renamed": (
        (f"UPDATE change_set SET who = 'Somebody' WHERE id = {LAST_SET}",),
        "log_change%",
        "chain",
        "is not as it was sealed: it was edited",
    ),
    "an entry put outside": (
        ("INSERT INTO change (set_id, table_name, record_id) VALUES (1, 'term', 77)",),
        "log_change%",
        "chain",
        "1 changes stand in the log outside every change set",
    ),
    "the end of the log cut off, with its rows": (
        (
            f"DELETE FROM change WHERE id > {LAST_CHANGES}",
            "DELETE FROM component WHERE mark = 'B3'",
            f"DELETE FROM change_set WHERE id = {LAST_SET}",
        ),
        "%",
        "head",
        "is no longer there: the log was cut off",
    ),
}


@pytest.mark.parametrize(
    ("statements", "triggers", "part", "sentence"), BYPASSES.values(), ids=BYPASSES.keys()
)
def test_verify_names_each_bypass(
    path: Path, statements: tuple[str, ...], triggers: str, part: str, sentence: str
) -> None:
    known = end(path)
    behind(path, *statements, triggers=triggers)
    told = found(path, known)
    assert any(p == part and sentence in s for p, s in told), told
    if part in ("rows", "head"):  # the triggers stand again: little else gives it away
        assert {p for p, _ in told} - {"search"} == {part}


def test_a_log_written_anew_shows_only_against_a_head_written_down(path: Path) -> None:
    known = end(path)
    behind(path, "DELETE FROM change", "DELETE FROM change_set", triggers="log_change%")
    raw = connect_sqlite(path)
    raw.execute("BEGIN IMMEDIATE")
    raw.execute("DELETE FROM sqlite_sequence WHERE name LIKE 'change%'")
    open_set(raw, Author("Somebody", "found"))
    log_differences(raw)
    seal(raw)
    raw.execute("COMMIT")
    raw.close()
    assert found(path) == []
    ((part, sentence),) = found(path, known)
    assert part == "head"
    assert "cut off" in sentence or "written anew" in sentence


def test_replace_by_a_client_without_recursive_triggers_shows(path: Path) -> None:
    """The row it replaces goes without a trigger; the log then has two where one is."""
    raw = sqlite3.connect(path, isolation_level=None)
    raw.execute("PRAGMA recursive_triggers=OFF")
    raw.execute("INSERT INTO change_set (who, at, kind, program) VALUES ('M', '2026', 'x', 'x')")
    for word in ("a", "b"):
        raw.execute(
            "INSERT OR REPLACE INTO term (id, uuid, entered, list, term)"
            f" VALUES (1, 'u', '2026', 'l', '{word}')"
        )
    raw.close()
    assert any(part == "rows" and "row 1 of term" in sentence for part, sentence in found(path))


def test_nothing_is_logged_where_nothing_changed(new_database: Callable[[str], Engine]) -> None:
    engine = new_database("still.db")
    with reading(engine) as connection:
        before = head(raw_of(connection))
    with writing(engine, ME) as connection:
        connection.exec_driver_sql("UPDATE setting SET note = note")
    with reading(engine) as connection:
        assert head(raw_of(connection)) == before


def test_triggers_that_were_taken_away_are_made_anew_and_told(path: Path) -> None:
    behind(path, "DROP TRIGGER log_component_update", "DROP TRIGGER log_change_delete")
    engine, _ = open_database(path, mend=False)
    engine.dispose()
    assert [part for part, _ in found(path)] == ["schema", "schema"]
    engine, told = open_database(path)
    engine.dispose()
    assert told is not None
    assert told.remarks == (
        "another program has changed or taken away triggers, views or the search index of this"
        " file; they were made anew;"
        " run: conservedb verify",
    )
    assert found(path) == []
