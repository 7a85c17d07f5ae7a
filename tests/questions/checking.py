"""A department made for the rules: every object of it is one case, named after what it is."""

from __future__ import annotations

import csv
import shutil
from collections import defaultdict
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from sqlalchemy import Connection

from conservedb.exchange.importing import import_folder
from conservedb.knowledge.rule_case import Finding
from conservedb.questions.asof import as_of
from conservedb.questions.checks import check, check_step
from conservedb.questions.checks_answers import PlannedStep
from conservedb.store import log
from conservedb.store.connect import connect_sqlite, reading
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.conftest import TODAY
from tests.questions import checking_cases

ON = as_of(None, TODAY)


class Tables:
    """Rows of CSV files, by file."""

    def __init__(self) -> None:
        self.rows: dict[str, list[dict[str, str]]] = defaultdict(list)

    def add(self, table: str, /, **cells: str) -> None:
        self.rows[table].append(cells)

    def write(self, folder: Path) -> None:
        folder.mkdir()
        for table, rows in self.rows.items():
            names = list(dict.fromkeys(name for row in rows for name in row))
            with (folder / f"{table}.csv").open("w", newline="", encoding="utf-8") as file:
                writer = csv.DictWriter(file, names, restval="")
                writer.writeheader()
                writer.writerows(rows)

    # -- objects --------------------------------------------------------------------------

    def joint(
        self,
        number: str,
        *,
        body: str = "limestone",
        other: str = "",
        load: str = "85",
        room: str = "Cold room",
        made: str = "1741",
    ) -> None:
        """An object of two original blocks, B1 and B2, and the joint J1 between them."""
        self.add("objects", number=number, title=f"Case {number}", made=made, whereabouts=room)
        for mark, material in (("B1", body), ("B2", other or body)):
            self.add(
                "components",
                object=number,
                mark=mark,
                name="block",
                kind="block",
                origin="original",
                material=material,
            )
        self.add(
            "places",
            object=number,
            mark="J1",
            kind="joint",
            component="B1",
            other_component="B2",
            load_kg=load,
        )

    def surface(self, number: str, mark: str = "S1", component: str = "B1") -> None:
        self.add("places", object=number, mark=mark, kind="surface", component=component)

    def layer(
        self,
        number: str,
        ref: str,
        material: str,
        role: str = "adhesive",
        date: str = "1990",
        place: str = "J1",
        **more: str,
    ) -> None:
        found = {"identified": "analysed", "coverage": "whole"}
        cells = {"origin": "applied", "zone": "face", **found, **more}
        if place.startswith("S"):
            cells["zone"] = ""
        self.add(
            "layers",
            object=number,
            place=place,
            ref=ref,
            material=material,
            role=role,
            date=date,
            **cells,
        )


def import_tables(folder: Path, fill: Callable[[Tables], None]) -> Path:
    """A database of what fills some tables."""
    tables = Tables()
    fill(tables)
    tables.write(folder / "tables")
    path = folder / "checked.db"
    create(path, today=TODAY.isoformat())
    engine, _ = open_database(path)
    report = import_folder(engine, folder / "tables", today=TODAY, who="A. Tester")
    engine.dispose()
    assert report.written, [fault.sentence() for fault in report.faults]
    return path


@pytest.fixture(scope="session")
def checked(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The department as a database file."""
    return import_tables(tmp_path_factory.mktemp("checked"), checking_cases.fill)


@pytest.fixture
def connection(checked: Path) -> Iterator[Connection]:
    """To ask the department through."""
    with asking(checked) as open_connection:
        yield open_connection


@contextmanager
def asking(path: Path) -> Iterator[Connection]:
    engine, _ = open_database(path)
    with reading(engine) as open_connection:
        yield open_connection
    engine.dispose()


def changed(path: Path, copy: Path, *statements: str) -> Path:
    """A copy of a database with something changed in it."""
    shutil.copy(path, copy)
    raw = connect_sqlite(copy)
    raw.execute("BEGIN IMMEDIATE")
    log.open_set(raw, log.Author("A. Tester", "recorded"))
    for statement in statements:
        assert raw.execute(statement).rowcount, statement
    log.seal(raw)
    raw.execute("COMMIT")
    raw.close()
    return copy


def found(connection: Connection, number: str, rule: str) -> list[Finding]:
    """What a rule finds of an object today."""
    answer = check(connection, number, ON)
    assert rule in answer.ran
    return [one.finding for one in answer.findings if one.finding.rule == rule]


def found_of_step(
    connection: Connection, number: str, mark: str, step: PlannedStep, rule: str
) -> list[Finding]:
    """What a rule finds of a step planned today."""
    answer = check_step(connection, number, mark, step, ON)
    assert rule in answer.ran
    return [one.finding for one in answer.findings if one.finding.rule == rule]
