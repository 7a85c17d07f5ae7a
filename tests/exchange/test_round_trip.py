"""Export, import into an empty database, export: the same files, the same rows."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import Column, Engine, select

from conservedb.demo.build import tables_folder
from conservedb.exchange.exporting import export_folder
from conservedb.exchange.importing import ImportReport, import_folder
from conservedb.recording.bounds import check_bounds
from conservedb.records.every import metadata
from conservedb.store.connect import reading
from conservedb.store.log import LOG
from tests.conftest import TODAY
from tests.exchange.random_tables import RandomTables

Make = Callable[[str], Engine]


def imported(engine: Engine, folder: Path, **options: Any) -> ImportReport:
    report = import_folder(engine, folder, today=TODAY, who="A. Tester", **options)
    assert report.written, "\n".join(fault.sentence() for fault in report.faults)
    return report


def rows(engine: Engine) -> dict[str, list[tuple[Any, ...]]]:
    """Every row of every table except the one that describes the file itself.

    Ids, which are the order of writing, are replaced by the UUIDs of the records they mean.
    """
    with reading(engine) as connection:
        identities = {
            name: dict(connection.execute(select(table.c.id, table.c.uuid)).all())
            for name, table in metadata.tables.items()
            if "uuid" in table.c and name != "database"
        }
        found = {}
        for name, table in metadata.tables.items():
            if name in (*LOG, "database"):
                continue
            meant = [_points_at(column) for column in table.columns]
            found[name] = sorted(
                (
                    tuple(
                        identities[target].get(value) if target else value
                        for target, value in zip(meant, row, strict=True)
                    )
                    for row in connection.execute(table.select())
                ),
                key=repr,
            )
    return found


def _points_at(column: Column[Any]) -> str:
    """The table whose ids a column holds, "" where it holds none."""
    if column.name == "id" and "uuid" in column.table.c and column.table.name != "database":
        return str(column.table.name)
    targets = {key.column.table.name for key in column.foreign_keys if key.column.name == "id"}
    return targets.pop() if targets else ""


def texts(folder: Path) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in sorted(folder.glob("*.csv"))}


def round_trip(make: Make, source: Path, tmp_path: Path) -> None:
    first, second = make("first.db"), make("second.db")
    imported(first, source)
    with reading(first) as connection:
        export_folder(connection, tmp_path / "once")
    imported(second, tmp_path / "once")
    with reading(second) as connection:
        export_folder(connection, tmp_path / "twice")
        objects = connection.exec_driver_sql("SELECT id FROM object").scalars().all()
        assert check_bounds(connection, list(objects)) == []
    assert texts(tmp_path / "once") == texts(tmp_path / "twice")
    again = imported(second, tmp_path / "once")
    assert sum(count.added + count.changed + count.refused for count in again.counts) == 0


def test_demo(new_database: Make, tmp_path: Path) -> None:
    round_trip(new_database, tables_folder(), tmp_path)


def test_demo_rows_are_identical(new_database: Make, tmp_path: Path) -> None:
    first, second = new_database("first.db"), new_database("second.db")
    imported(first, tables_folder())
    with reading(first) as connection:
        export_folder(connection, tmp_path / "once")
    imported(second, tmp_path / "once")
    assert rows(first) == rows(second)


def test_a_name_given_later_decides_nothing_on_the_way(new_database: Make, tmp_path: Path) -> None:
    """What was known as a class stays one, though a material is called the same by now."""
    first, second = new_database("first.db"), new_database("second.db")
    for folder, tables in enumerate(
        (
            {"objects": "number\nA.1\n", "layers": "object,ref,material\nA.1,L1,Glass\n"},
            {"materials": "key,name,class,aliases\nown,our own,glass,glass\n"},
        )
    ):
        (tmp_path / f"{folder}").mkdir()
        for name, text in tables.items():
            (tmp_path / f"{folder}" / f"{name}.csv").write_text(text, encoding="utf-8")
        imported(first, tmp_path / f"{folder}")
    with reading(first) as connection:
        export_folder(connection, tmp_path / "once")
    assert b"Glass = glass" in texts(tmp_path / "once")["layers.csv"]
    imported(second, tmp_path / "once")
    assert rows(first)["layer"] == rows(second)["layer"]


@pytest.mark.parametrize("seed", range(4))
def test_random_databases(new_database: Make, tmp_path: Path, seed: int) -> None:
    RandomTables(seed).write(tmp_path / "source")
    round_trip(new_database, tmp_path / "source", tmp_path)


@pytest.mark.campaign
@pytest.mark.parametrize("seed", range(4, 60))
def test_many_random_databases(new_database: Make, tmp_path: Path, seed: int) -> None:
    RandomTables(seed).write(tmp_path / "source")
    round_trip(new_database, tmp_path / "source", tmp_path)
