"""What the program ships gives way to the department's rows, and goes out and in unaltered."""

from __future__ import annotations

import shutil
from collections.abc import Callable
from pathlib import Path
from typing import Any

from sqlalchemy import Engine

import conservedb.reference
from conservedb.exchange.exporting import export_folder
from conservedb.exchange.importing import ImportReport, import_folder
from conservedb.store.connect import reading, writing
from conservedb.store.log import Author
from tests.conftest import TODAY

Make = Callable[[str], Engine]
SHIPPED = Path(conservedb.reference.__file__).parent / "tables"


def take(engine: Engine, folder: Path, **tables: str) -> ImportReport:
    folder.mkdir()
    for name, text in tables.items():
        (folder / f"{name}.csv").write_text(text, encoding="utf-8")
    return import_folder(engine, folder, today=TODAY, who="A. Tester")


def ask(engine: Engine, sql: str) -> list[tuple[Any, ...]]:
    with reading(engine) as connection:
        return [tuple(row) for row in connection.exec_driver_sql(sql)]


def exported(engine: Engine, folder: Path) -> dict[str, bytes]:
    with reading(engine) as connection:
        export_folder(connection, folder)
    return {path.name: path.read_bytes() for path in sorted(folder.glob("*.csv"))}


def test_the_shipped_files_say_what_a_new_database_has(new_database: Make, tmp_path: Path) -> None:
    """Two programs read them, this one at import and the store's; they read the same."""
    engine = new_database("a.db")
    (tmp_path / "in").mkdir()
    for path in SHIPPED.glob("*.csv"):
        shutil.copy(path, tmp_path / "in")
    report = import_folder(engine, tmp_path / "in", today=TODAY, who="A. Tester")
    assert [fault.sentence() for fault in report.faults] == []
    assert [notice.sentence() for notice in report.notices] == []
    assert len(report.counts) > 10
    assert all(count.rows == count.unchanged > 0 for count in report.counts)


SHELLAC = "SELECT name, note, class_id IS NOT NULL FROM material WHERE key = 'shellac'"


def test_a_row_takes_the_place_of_what_is_as_shipped(new_database: Make, tmp_path: Path) -> None:
    engine = new_database("a.db")
    ((_, note, _),) = ask(engine, SHELLAC)
    rows = "key,name,class,aliases,note\nshellac,Our shellac,,lac,\nx,X,,,\n"
    report = take(engine, tmp_path / "in", materials=rows)
    assert report.written
    (count,) = report.counts
    assert (count.added, count.changed) == (1, 1)
    assert [notice.sentence() for notice in report.notices] == [
        "materials.csv, line 2: this row: the department's own in place of what the program"
        " brought; later versions of the program will not change it"
    ]
    assert ask(engine, SHELLAC) == [("Our shellac", note, True)]  # a blank cell never erases
    aliases = "SELECT alias FROM material_alias JOIN material ON id = material_id"
    assert ask(engine, f"{aliases} WHERE key = 'shellac'") == [("lac",)]
    again = take(engine, tmp_path / "again", materials="key,name\nshellac,Another\n")
    (fault,) = again.faults
    assert fault.sentence().startswith(
        'materials.csv, line 2, column name "Another": the database has "Our shellac" for this'
    )


def test_a_corrected_value_goes_out_and_in_and_out_the_same(
    new_database: Make, tmp_path: Path
) -> None:
    """Corrected, emptied, and with a name less: nothing of it comes back from the program."""
    engine = new_database("a.db")
    with writing(engine, Author("A. Tester", "amended")) as connection:
        for statement in (
            "UPDATE hansen SET d = d + 0.1, note = NULL WHERE id % 3 = 0",
            "UPDATE material_value SET low = NULL, high = NULL, words = 'looked up again'"
            " WHERE id % 5 = 0",
            "UPDATE material SET note = NULL, class_id = NULL WHERE id % 7 = 0",
            "DELETE FROM trade_name WHERE material_id % 2 = 0",
            "UPDATE solubility_part SET share = NULL, material_id = 1 WHERE solubility_id = 1",
            "UPDATE setting SET value = NULL",
            "UPDATE source SET uuid = '00000000-0000-0000-0000-00000000000' || id WHERE id < 10",
        ):
            connection.exec_driver_sql(statement)
    once = exported(engine, tmp_path / "once")
    other = new_database("b.db")
    report = import_folder(other, tmp_path / "once", today=TODAY, who="A. Tester")
    assert [fault.sentence() for fault in report.faults] == []
    assert exported(other, tmp_path / "twice") == once
    assert exported(new_database("c.db"), tmp_path / "untouched") != once


def test_a_shipped_record_is_known_by_its_uuid(new_database: Make, tmp_path: Path) -> None:
    """An export in which it bears another key, and its own key stands for something else."""
    engine = new_database("a.db")
    ((record, identity),) = ask(engine, "SELECT id, uuid FROM material WHERE key = 'shellac'")
    rows = f"key,name,uuid\nlac,Shellac,{identity}\nshellac,Something else,\n"
    assert take(engine, tmp_path / "in", materials=rows).written
    found = "SELECT id, key, name FROM material WHERE key IN ('lac', 'shellac') ORDER BY id"
    kept, new = ask(engine, found)
    assert kept == (record, "lac", "Shellac")
    assert new[1:] == ("shellac", "Something else")
