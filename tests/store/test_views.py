"""The views for those who ask in SQL: every row once, days right, names stable, any program."""

from __future__ import annotations

import datetime
import re
import shutil
import sqlite3
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest

from conservedb.demo.build import load
from conservedb.exchange.keeping_questions import keep_question
from conservedb.knowledge.research_words import read
from conservedb.records.sources import STATEMENT_SUBJECTS
from conservedb.store.opening import open_database
from conservedb.store.verify import verify
from conservedb.store.view_of_statements import _REFS
from conservedb.store.views import VIEWS
from tests.conftest import TODAY

NAMES = Path(__file__).with_name("view_columns.txt")
"""Every name that somebody's own question may rest on: names are added, never changed."""
TABLES = {
    "v_objects": "object",
    "v_components": "component",
    "v_places": "place",
    "v_joint_events": "joint_event",
    "v_layers": "layer",
    "v_layer_sides": "layer_side",
    "v_removals": "removal",
    "v_sightings": "sighting",
    "v_treatments": "treatment",
    "v_interventions": "intervention",
    "v_agents": "agent",
    "v_observations": "observation",
    "v_readings": "reading",
    "v_samples": "sample",
    "v_classes": "material_class",
    "v_materials": "material",
    "v_people": "person",
    "v_sources": "source",
    "v_statements": "statement",
    "v_rules": "rule",
    "v_questions": "saved_question",
    "v_changes": "change",
}


@pytest.fixture(scope="module")
def path(tmp_path_factory: pytest.TempPathFactory) -> Path:
    target = tmp_path_factory.mktemp("views") / "demo.db"
    load(target)
    engine, _ = open_database(target)
    keep_question(engine, "Old joins", read("layers where role: adhesive"), "A. Tester", TODAY)
    keep_question(engine, "All", read("objects"), "A. Tester", TODAY)
    engine.dispose()
    return target


@pytest.fixture
def raw(path: Path) -> Iterator[sqlite3.Connection]:
    """Any program's connection, which trusts nothing in the schema."""
    connection = sqlite3.connect(path)
    connection.execute("PRAGMA trusted_schema=OFF")
    yield connection
    connection.close()


def test_names_stay_as_they_are(raw: sqlite3.Connection) -> None:
    found = {f"{v.name}.{column.name}" for v in VIEWS for column in v.columns}
    kept = set(NAMES.read_text(encoding="utf-8").split())
    assert len(kept) > 300
    assert found == kept
    for view in VIEWS:
        described = raw.execute(f"SELECT * FROM {view.name} LIMIT 0").description
        assert [column[0] for column in described] == [column.name for column in view.columns]


def test_the_file_says_what_every_column_means(raw: sqlite3.Connection) -> None:
    kept = dict(raw.execute("SELECT name, sql FROM sqlite_schema WHERE type = 'view'").fetchall())
    assert {name for name in kept if name.startswith("v_")} == {view.name for view in VIEWS}
    for view in VIEWS:
        lines = kept[view.name].splitlines()
        assert view.meaning and f"-- {view.meaning}" in lines
        for column in view.columns:
            assert column.meaning and f"-- {column.name}: {column.meaning}" in lines


def test_every_row_stands_once(raw: sqlite3.Connection) -> None:
    assert TABLES.keys() == {view.name for view in VIEWS} - {"v_history"}
    for view, table in TABLES.items():
        (shown,) = raw.execute(f"SELECT count(*) FROM (SELECT * FROM {view})").fetchone()
        (kept,) = raw.execute(f"SELECT count(*) FROM {table}").fetchone()
        assert shown == kept > 0, view
    events = ("intervention", "layer", "removal", "sighting", "joint_event")
    for table in (*events, "observation", "reading", "sample"):
        happened = table.replace("_", " ")
        (shown,) = raw.execute(
            "SELECT count(*) FROM v_history WHERE happened = ?", (happened,)
        ).fetchone()
        assert shown == raw.execute(f"SELECT count(*) FROM {table}").fetchone()[0]


def test_days_are_those_of_their_numbers(raw: sqlite3.Connection) -> None:
    """Against Python's own calendar, which counts from the same day."""
    looked_at = set()
    for view in VIEWS:
        for column in view.columns:
            if not column.name.endswith(("first_day", "last_day")):
                continue
            number = column.name.removesuffix("day") + "number"
            for iso, day in raw.execute(f"SELECT {column.name}, {number} FROM {view.name}"):
                known = 1 <= day <= datetime.date.max.toordinal()
                assert iso == (datetime.date.fromordinal(day).isoformat() if known else None)
                looked_at.add((view.name, known))
    assert {("v_layers", True), ("v_layers", False), ("v_history", True)} <= looked_at


@pytest.mark.parametrize(
    ("number", "day"),
    [
        (-365, "0000-01-01"),  # year 0 is a leap year of ISO 8601
        (0, "0000-12-31"),
        (1, "0001-01-01"),
        (3652059, "9999-12-31"),
        (-366, None),
        (3652060, None),
    ],
)
def test_days_at_the_ends_of_the_calendar(
    path: Path, tmp_path: Path, number: int, day: str | None
) -> None:
    copy = sqlite3.connect(shutil.copy(path, tmp_path / "copy.db"))
    for (trigger,) in copy.execute(
        "SELECT name FROM sqlite_schema WHERE type = 'trigger'"
    ).fetchall():
        copy.execute(f"DROP TRIGGER {trigger}")
    copy.execute("UPDATE object SET made_earliest = ?, made_latest = ?", (number, number))
    found = copy.execute(
        "SELECT DISTINCT made_first_day, made_last_number FROM v_objects"
    ).fetchall()
    copy.close()
    assert found == [(day, number)]


def test_a_layer_is_told_with_all_that_is_known_of_it(raw: sqlite3.Connection) -> None:
    """SQ.1902.7 J14 in the demonstration's own tables (conservedb/demo/tables)."""
    raw.row_factory = sqlite3.Row
    row = raw.execute(
        "SELECT * FROM v_layers WHERE object = 'SQ.1902.7' AND ref = 'L14b'"
    ).fetchone()
    assert (row["place"], row["material"], row["role"]) == ("J14", "shellac", "adhesive")
    assert row["came_last_day"] == "1871-12-31"
    unplaced = raw.execute("SELECT * FROM v_layers WHERE possible_places IS NOT NULL").fetchall()
    assert unplaced and all(r["place"] is None and ";" in r["possible_places"] for r in unplaced)


def test_kept_questions_read_as_they_are_asked(raw: sqlite3.Connection) -> None:
    found = raw.execute(
        "SELECT name, question, rows, conditions, saved_first_day, person FROM v_questions"
    ).fetchall()
    day = TODAY.isoformat()
    assert sorted(found) == [
        ("All", "objects", "objects", None, day, "A. Tester"),
        *[
            (
                "Old joins",
                "layers where role: adhesive",
                "layers",
                "role: adhesive",
                day,
                "A. Tester",
            )
        ],
    ]
    assert [read(row[1]).rows for row in found] == [row[2] for row in found]


def test_what_sources_say_stands_beside_each_other(raw: sqlite3.Connection) -> None:
    """The letter of 1871 and the bill disagree (conservedb/demo/tables/statements.csv)."""
    assert tuple(_REFS) == STATEMENT_SUBJECTS
    found = raw.execute(
        "SELECT about, ref, field, value, source, followed, decided_by FROM v_statements"
        " WHERE object = 'SQ.1902.7' AND about = 'layer' AND ref = 'L14b' ORDER BY key"
    ).fetchall()
    assert len(found) > 1 and {row[5] for row in found} >= {"yes", "no"}
    about = {row[0] for row in raw.execute("SELECT about FROM v_statements")}
    kept = {row[0].replace("_", " ") for row in raw.execute("SELECT subject FROM statement")}
    assert about == kept and len(about) > 2


@pytest.mark.skipif(shutil.which("sqlite3") is None, reason="no sqlite3 shell here")
def test_the_shell_reads_every_view(path: Path) -> None:
    for view in VIEWS:
        done = subprocess.run(
            ["sqlite3", "-readonly", str(path), f"SELECT * FROM {view.name} LIMIT 3"],
            capture_output=True,
            text=True,
            timeout=30,
        )
        assert (done.returncode, done.stderr) == (0, ""), view.name
        assert done.stdout


def test_nothing_is_written_through_a_view(raw: sqlite3.Connection) -> None:
    for view in VIEWS:
        with pytest.raises(sqlite3.OperationalError, match="cannot modify"):
            raw.execute(f"DELETE FROM {view.name}")


@pytest.mark.parametrize("view", [v.name for v in VIEWS if v.columns[0].name == "object"])
def test_one_object_is_looked_up(raw: sqlite3.Connection, view: str) -> None:
    """Only the list of objects is read from end to end for its number, and what is short anyway:
    layers whose sides differ, and statements."""
    steps = raw.execute(f"EXPLAIN QUERY PLAN SELECT * FROM {view} WHERE object = 'X'").fetchall()
    scanned = {m[1] for step in steps if (m := re.match(r"SCAN (\S+)", step[3]))}
    allowed = {"ob", view, "ls", "st"}
    assert {s for s in scanned if not s.startswith("(")} <= allowed, steps
    assert not any("AUTOMATIC" in step[3] for step in steps)


def test_a_view_that_was_rewritten_is_found_and_made_anew(path: Path, tmp_path: Path) -> None:
    copy = tmp_path / "copy.db"
    shutil.copy(path, copy)
    raw = sqlite3.connect(copy)
    raw.execute("DROP VIEW v_people")
    raw.execute("CREATE VIEW v_people AS SELECT 'nobody' AS name")
    raw.commit()
    assert [f.sentence for f in verify(raw)] == ["view v_people was rewritten"]
    raw.close()
    engine, upgraded = open_database(copy)
    assert upgraded is not None and "made anew" in upgraded.guards
    with engine.connect() as connection:
        names = connection.exec_driver_sql("SELECT name FROM v_people").fetchall()
    engine.dispose()
    assert len(names) > 1
