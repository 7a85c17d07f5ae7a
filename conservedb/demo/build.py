"""Making the demonstration: from its CSV tables to SQL text, and from that text to a database."""

from __future__ import annotations

import datetime
import sqlite3
import tempfile
from collections.abc import Iterator
from pathlib import Path

import conservedb
from conservedb.store.log import LOG, PROGRAM
from conservedb.store.problems import DatabaseProblem
from conservedb.store.search import INDEX
from conservedb.store.version import APPLICATION_ID

TODAY = "2026-11-02"
"""The day at which the demonstration's "today" stands still."""

NAME = "Museum of Saltmarsh Quay (invented)"
IDENTITY = "6f3c1d2e-5a74-4b0e-9c55-8a1b7e20d904"
NUMBER, JOINT, THEN = "SQ.1902.7", "J14", "1950"
"""The question that `conservedb demo` answers where there is no terminal."""


def tables_folder() -> Path:
    """The folder of CSV tables from which the demonstration is made."""
    return Path(__file__).parent / "tables"


def sql_file() -> Path:
    """`demo.sqlite.sql`: inside the installed package, else at the top of a checkout."""
    inside = Path(__file__).parent / "demo.sqlite.sql"
    return inside if inside.is_file() else Path(conservedb.__file__).parent.parent / inside.name


def sql_text() -> str:
    """The SQL of the demonstration, made from its tables; the same text every time."""
    from conservedb.exchange.importing import import_folder
    from conservedb.store.create import create
    from conservedb.store.opening import open_database

    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "demo.db"
        create(path, name=NAME, identity=IDENTITY, today=TODAY)
        engine, _ = open_database(path)
        report = import_folder(
            engine,
            tables_folder(),
            today=datetime.date.fromisoformat(TODAY),
            who=PROGRAM,
            at=f"{TODAY}T00:00:00Z",
        )
        engine.dispose()
        if not report.written:
            raise ValueError("\n".join(fault.sentence() for fault in report.faults))
        raw = sqlite3.connect(path)
        try:
            return "".join(_lines(raw))
        finally:
            raw.close()


def load(path: Path) -> None:
    """Make a fresh demonstration database at `path` from the shipped SQL; never over a file.

    Raises:
        DatabaseProblem: the file exists, or cannot be made.
    """
    if path.exists():
        raise DatabaseProblem(f"{path} already exists; name a new file for the demonstration")
    try:
        raw = sqlite3.connect(path)
        try:
            raw.executescript(sql_file().read_text(encoding="utf-8"))
        finally:
            raw.close()
    except (OSError, sqlite3.Error) as problem:
        path.unlink(missing_ok=True)
        raise DatabaseProblem(
            f"{path} cannot be made ({problem}); choose a folder you may write to"
        ) from problem


def _lines(raw: sqlite3.Connection) -> Iterator[str]:
    """Tables, rows and indexes as SQL; derived objects are made when the file is first opened."""
    yield "-- The demonstration of conservedb: everything in it is invented.\n"
    yield "-- Made by: python -m conservedb.demo. Load it with: sqlite3 demo.db < demo.sqlite.sql\n"
    yield "PRAGMA foreign_keys=OFF;\nBEGIN;\n"
    yield f"PRAGMA application_id={APPLICATION_ID};\n"
    schema = raw.execute(
        "SELECT type, name, sql FROM sqlite_schema WHERE sql IS NOT NULL"
        " AND tbl_name IN (SELECT name FROM pragma_table_list WHERE type = 'table')"
        " AND type IN ('table', 'index') AND name NOT LIKE 'sqlite_%'"
        f" AND NOT (type = 'index' AND name GLOB '{INDEX}_*') ORDER BY rowid"
    ).fetchall()
    for kind, name, sql in schema:
        if kind == "table":
            yield f"{sql};\n"
            if name not in LOG:  # it begins when the file is first opened
                yield from _rows(raw, name)
    yield "DELETE FROM sqlite_sequence;\n"
    for name, last in raw.execute("SELECT name, seq FROM sqlite_sequence ORDER BY rowid"):
        if name not in LOG:
            yield f"INSERT INTO sqlite_sequence VALUES('{name}',{last});\n"
    for kind, _, sql in schema:
        if kind == "index":
            yield f"{sql};\n"
    yield "COMMIT;\n"


def _rows(raw: sqlite3.Connection, table: str) -> Iterator[str]:
    for row in raw.execute(f"SELECT * FROM {table} ORDER BY rowid"):
        yield f"INSERT INTO {table} VALUES({','.join(map(_literal, row))});\n"


def _literal(value: object) -> str:
    if value is None:
        return "NULL"
    if isinstance(value, int | float):
        return repr(value)
    return "'" + str(value).replace("'", "''") + "'"
