"""`conservedb sql`: those who know SQL read everything, and can do nothing else."""

from __future__ import annotations

import csv
import datetime
import hashlib
import io
import json
import re
import sqlite3
import time
from pathlib import Path

import pytest
from openpyxl import load_workbook  # type: ignore[import-untyped]

import conservedb
from conservedb.store import raw_questions
from conservedb.store.connect import connect_sqlite
from conservedb.store.log import Author, open_set, seal
from conservedb.store.problems import DatabaseProblem
from conservedb.store.raw_questions import ask as put
from conservedb.store.raw_questions import reading_only
from tests.cli.conftest import Command
from tests.cli.test_endings import loaded
from tests.nasty import NASTY

FOREVER = "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n) SELECT count(*) FROM n"
ATTEMPTS = {
    "insert": "INSERT INTO term (uuid, entered, list, term) VALUES ('u', '2026-01-01', 'l', 't')",
    "update": "UPDATE object SET title = 'forged'",
    "delete": "DELETE FROM layer",
    "upsert in a WITH": "WITH a AS (SELECT 1) DELETE FROM layer",
    "returning": "UPDATE object SET title = 'x' RETURNING title",
    "create a table": "CREATE TABLE mine (a)",
    "create a temporary table": "CREATE TEMP TABLE mine (a)",
    "create a temporary view": "CREATE TEMP VIEW mine AS SELECT 1",
    "create a virtual table": "CREATE VIRTUAL TABLE mine USING fts5(a)",
    "drop": "DROP VIEW v_layers",
    "alter": "ALTER TABLE object RENAME TO mine",
    "reindex": "REINDEX",
    "analyze": "ANALYZE",
    "attach": "ATTACH '{folder}/other.db' AS other",
    "attach in memory": "ATTACH ':memory:' AS other",
    "detach": "DETACH main",
    "pragma that sets": "PRAGMA user_version = 5",
    "pragma that allows": "PRAGMA query_only = OFF",
    "pragma that reads": "PRAGMA journal_mode",
    "pragma as a table": "SELECT * FROM pragma_database_list",
    "vacuum": "VACUUM",
    "vacuum into": "VACUUM INTO '{folder}/other.db'",
    "load": "SELECT load_extension('{folder}/evil')",
    "begin": "BEGIN IMMEDIATE",
    "commit": "COMMIT",
    "savepoint": "SAVEPOINT mine",
    "explain a write": "EXPLAIN DELETE FROM layer",
}


@pytest.mark.parametrize("attempt", ATTEMPTS)
def test_nothing_but_reading_is_let_through(
    ask: Command, department: Path, tmp_path: Path, attempt: str
) -> None:
    before = hashlib.sha256(department.read_bytes()).hexdigest()
    ended = ask("sql", ATTEMPTS[attempt].format(folder=tmp_path))
    assert (ended.status, ended.out) == (2, "")
    assert ended.err.count("\n") == 1 and "nothing is written, set or loaded" in ended.err
    assert not (tmp_path / "other.db").exists()
    assert hashlib.sha256(department.read_bytes()).hexdigest() == before


@pytest.mark.parametrize("attempt", ["insert", "update", "drop", "pragma that sets"])
def test_the_file_is_closed_to_writing_even_without_the_authorizer(
    department: Path, attempt: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(raw_questions, "_allowed", lambda *_: sqlite3.SQLITE_OK)
    with (
        reading_only(department, 5) as raw,
        pytest.raises(raw_questions.QuestionRefused, match=r"readonly|unsafe use"),
    ):
        put(raw, ATTEMPTS[attempt], 5)


def test_several_statements_and_none(ask: Command, capsys: pytest.CaptureFixture[str]) -> None:
    assert "one SELECT at a time" in ask("sql", "SELECT 1; DELETE FROM layer").err
    assert ask("sql", "SELECT 1;").lines == ["1", "1"]
    for nothing in ("", " ", "/* nothing */"):
        ended = ask("sql", nothing)
        assert ended.status == 2 and "SELECT" in ended.err


@pytest.mark.parametrize("into", [(), ("--csv", "{}/a.csv")], ids=["screen", "file"])
def test_a_question_without_end_is_stopped(ask: Command, tmp_path: Path, into: list[str]) -> None:
    started = time.monotonic()
    files = [part.format(tmp_path) for part in into]
    ended = ask("sql", FOREVER, "--seconds", "1", *files)
    assert 0.9 < time.monotonic() - started < 10
    assert ended.status == 1 and "took longer than 1 seconds" in ended.err
    assert not list(tmp_path.glob("a.csv*"))


def test_rows_without_end_are_stopped_too(ask: Command, tmp_path: Path) -> None:
    endless = FOREVER.replace("count(*)", "i")
    ended = ask("sql", endless, "--seconds", "1", "--jsonl", str(tmp_path / "a.jsonl"))
    assert ended.status == 1 and "took longer" in ended.err
    assert not list(tmp_path.glob("a.jsonl*"))
    assert ask("sql", endless, "--limit", "2").lines[:3] == ["i", "1", "2"]


@pytest.mark.parametrize(
    "bomb",
    [
        "SELECT zeroblob(2000000000)",
        "SELECT group_concat(hex(randomblob(10000))) FROM v_materials, v_materials",
        "SELECT replace(hex(zeroblob(400000)), '0', '00000000')",
    ],
)
def test_a_value_that_fills_the_memory_is_refused(ask: Command, bomb: str) -> None:
    ended = ask("sql", bomb)
    assert ended.status == 2 and "longer than 1,000,000 bytes" in ended.err


def test_memory_has_a_limit(department: Path) -> None:
    """The limit holds for the whole process: a full memory is pretended here, and not filled."""
    with reading_only(department, 5) as raw:
        assert raw.execute("PRAGMA hard_heap_limit").fetchone()[0] == raw_questions.MEMORY
    with (
        pytest.raises(raw_questions.QuestionStopped, match="more than 1000 MB of memory"),
        raw_questions._explained(5),
    ):
        raise MemoryError


def test_an_answer_on_the_screen_and_as_json(ask: Command) -> None:
    sql = (
        "SELECT ref, material, came_first_day, stack, NULL AS absent FROM v_layers"
        " WHERE object = 'Q.1' AND ref IN ('L2', 'L3') ORDER BY ref"
    )
    assert ask("sql", sql).lines == [
        "ref | material | came_first_day | stack | absent",
        "L2  | portland | 1934-01-01     | 1     |",
        "L3  | epoxy    | 1989-05-18     | 2     |",
    ]
    assert ask("sql", sql, "--json").json == {
        "columns": ["ref", "material", "came_first_day", "stack", "absent"],
        "rows": [
            ["L2", "portland", "1934-01-01", 1, None],
            ["L3", "epoxy", "1989-05-18", 2, None],
        ],
        "more": False,
    }
    few = ask("sql", "SELECT ref FROM v_layers", "--limit", "1", "--json").json
    assert len(few["rows"]) == 1 and few["more"] is True
    assert ask("sql", "SELECT x'00ff', 9e999, 1e-7", "--json").json["rows"] == [
        ["x'00ff'", "inf", 1e-7]
    ]


@pytest.mark.parametrize("text", NASTY)
def test_text_from_records_stays_text(ask: Command, text: str) -> None:
    quoted = text.replace("'", "''")
    ended = ask("sql", f"SELECT '{quoted}' AS a")
    assert ended.status == 0 and len(ended.lines) == 2
    assert not set(map(chr, [*range(10), *range(11, 32), 127, 155])) & set(ended.out)
    assert ask("sql", f"SELECT '{quoted}' AS a", "--json").json["rows"] == [[text]]


def test_files_tell_what_they_answer(ask: Command, tmp_path: Path) -> None:
    sql = "SELECT object, ref, note, stack FROM v_layers ORDER BY object, ref"
    paths = {form: tmp_path / f"answer.{form}" for form in ("csv", "jsonl", "xlsx")}
    for form, path in paths.items():
        ended = ask("sql", sql, f"--{form}", str(path), "--json")
        assert ended.json == {"file": str(path), "rows": 9}
    rows = list(csv.reader(io.StringIO(paths["csv"].read_text(encoding="utf-8-sig"))))
    assert rows[0][:4] == ["object", "ref", "note", "stack"] and rows[1][:2] == ["Q.1", "L1"]
    assert len(rows) == 10
    told = dict(fact.split(": ", 1) for fact in rows[0][4].split(" | ")[1:])
    about, *lines = map(json.loads, paths["jsonl"].read_text(encoding="utf-8").splitlines())
    assert len(lines) == 9 and lines[0]["ref"] == "L1"
    book = load_workbook(paths["xlsx"])
    assert book["answer"].max_row == 10
    told_there = dict(book["about"].iter_rows(values_only=True))
    head = ask("log", "--json").json["head"]
    for said in (told, about["about"], told_there):
        assert said["question"] == sql
        assert said["day"] == "2026-11-02"
        assert said["program"] == f"conservedb {conservedb.__version__}"
        assert said["end of its change log"] == f"change set {head['number']}, {head['hash']}"
    again = ask("sql", sql, "--csv", str(paths["csv"]))
    assert again.status == 3 and "already exists" in again.err
    both = ask("sql", sql, "--csv", str(tmp_path / "b"), "--xlsx", str(tmp_path / "c"))
    assert both.status == 2 and "name one file" in both.err


def test_views_are_told(conservedb: Command) -> None:
    told = conservedb("sql", "--views", "--json").json  # needs no database
    columns = {view["name"]: [c["name"] for c in view["columns"]] for view in told["views"]}
    assert {"object", "place", "ref", "material", "came_first_day"} <= set(columns["v_layers"])
    shown = conservedb("sql", "--views")
    assert all(f"{name}: " in shown.out for name in columns)
    assert "\n  mass_kg: mass in kg\n" in shown.out


def test_the_head_of_the_views_says_how_to_ask_for_a_day(ask: Command) -> None:
    """What it names gives the day number of Python, whose 0001-01-01 is 1 too."""
    head = ask("sql", "--views").lines[:2]
    assert head[0].startswith("today or a day: ") and head[1].startswith("days: ")
    first, second = re.findall(r"julianday\(.+?'\)+ - [\d.]+", head[0])
    (day,) = ask("sql", f"SELECT {second}", "--json").json["rows"]
    assert day == [datetime.date(2026, 11, 2).toordinal()]
    before = datetime.date.today().toordinal()
    ((today,),) = ask("sql", f"SELECT {first}", "--json").json["rows"]
    assert before <= today <= datetime.date.today().toordinal()


def test_the_view_of_rules_gives_the_keys_that_ask_takes(ask: Command) -> None:
    sql = "SELECT key, severity, active, judges FROM v_rules"
    rows = ask("sql", sql, "--json").json["rows"]
    assert len(rows) > 10 and {row[3] for row in rows} == {"objects", "steps"}
    assert {row[2] for row in rows} == {"yes"}
    safety = next(row[0] for row in rows if row[3] == "objects")
    assert ask("ask", f"objects where rule: {safety}").status == 0


def test_a_question_from_standard_input(ask: Command, monkeypatch: pytest.MonkeyPatch) -> None:
    typed = io.BytesIO(b"SELECT count(*) AS many\nFROM v_objects\n")
    monkeypatch.setattr("sys.stdin", io.TextIOWrapper(typed))
    assert ask("sql", "-").lines == ["many", "3"]


def test_mistakes_are_told_in_the_words_of_sqlite(ask: Command) -> None:
    for sql, said in (
        ("SELEC 1", 'near "SELEC": syntax error'),
        ("SELECT * FROM layrs", "no such table: layrs"),
        ("SELECT colour FROM v_layers", "no such column: colour"),
        ("SELECT date_of(1)", "no such function: date_of"),
    ):
        ended = ask("sql", sql)
        assert ended.status == 2 and said in ended.err and "conservedb sql --views" in ended.err


def test_too_many_tables_in_a_join(ask: Command) -> None:
    """64 is SQLite's own limit (https://www.sqlite.org/limits.html, 5), and cannot be raised."""
    names = ", ".join(f"{{0}} a{at}" for at in range(20))
    ended = ask("sql", f"SELECT count(*) FROM {names.format('v_layers')}")
    assert (ended.status, ended.out) == (2, "")
    assert ended.err == (
        "conservedb: the question joins more than 64 tables, and a view counts as all those that"
        " it is made of; join fewer views, or take some apart: WITH a AS MATERIALIZED (SELECT"
        " ...)\n"
    )
    apart = "WITH l AS MATERIALIZED (SELECT * FROM v_layers LIMIT 1)"  # the advice helps
    assert ask("sql", f"{apart} SELECT count(*) AS n FROM {names.format('l')}").lines == ["n", "1"]


def test_text_search_may_read(tmp_path: Path) -> None:
    """SQLite's text search asks a pragma of itself, which the authorizer must let through."""
    path = tmp_path / "search.db"
    raw = sqlite3.connect(path)
    raw.execute("CREATE TABLE database (uuid)")
    raw.execute("CREATE VIRTUAL TABLE words USING fts5(word)")
    raw.execute("INSERT INTO words VALUES ('plaster of Paris')")
    raw.commit()
    raw.close()
    with reading_only(path, 5) as only:
        answer = put(only, "SELECT word FROM words WHERE words MATCH 'paris'", 5)
        assert list(answer.rows) == [("plaster of Paris",)]


def test_while_somebody_writes(department: Path, tmp_path: Path) -> None:
    """A writer at work keeps nobody from reading; one that saves is waited for, then named."""
    path = tmp_path / "own.db"
    path.write_bytes(department.read_bytes())
    writer = connect_sqlite(path)
    writer.execute("BEGIN IMMEDIATE")
    open_set(writer, Author("A. Tester", "recorded"))
    writer.execute("UPDATE object SET title = 'new' WHERE number = 'Q.1'")
    with reading_only(path, 5) as raw:
        rows = list(put(raw, "SELECT count(*) FROM v_objects WHERE title = 'new'", 5).rows)
    assert rows == [(0,)]
    seal(writer)
    writer.execute("COMMIT")
    writer.execute("BEGIN EXCLUSIVE")
    started = time.monotonic()
    with (
        pytest.raises(DatabaseProblem, match="being written by another program"),
        reading_only(path, 0.3),
    ):
        pass
    assert time.monotonic() - started > 0.2
    writer.execute("ROLLBACK")
    writer.close()


def test_a_file_that_is_not_of_this_version_is_completed_first(
    conservedb: Command, department: Path, tmp_path: Path
) -> None:
    path = tmp_path / "older.db"
    path.write_bytes(department.read_bytes())
    raw = sqlite3.connect(path)
    raw.execute("DROP VIEW v_people")
    raw.commit()
    raw.close()
    ended = conservedb("sql", "SELECT count(*) > 0 FROM v_people", "--db", str(path))
    assert ended.status == 0 and "made anew" in ended.err and ended.lines[1] == "1"
    for wrong in (tmp_path / "none.db", tmp_path):
        ended = conservedb("sql", "SELECT 1", "--db", str(wrong))
        assert ended.status == 3 and str(wrong) in ended.err


def test_only_what_is_needed_is_loaded(department: Path) -> None:
    heavy = {"textual", "alembic", "xlsxwriter", "openpyxl", "sqlalchemy"}
    assert not heavy & loaded("sql", "SELECT 1", "--db", str(department))
    assert not heavy & loaded("sql", "--views")
