"""An export names the end of the log; an update from it does not undo what was amended since."""

from __future__ import annotations

import csv
from collections.abc import Callable
from pathlib import Path

import pytest
from sqlalchemy import Engine

from conservedb.exchange.amending import amend, shown
from conservedb.exchange.exporting import export_folder
from conservedb.exchange.importing import ImportReport, import_folder
from conservedb.exchange.log_head import FILE, read_head
from conservedb.recording.withdrawing import withdraw
from conservedb.store.connect import raw_of, reading, writing
from conservedb.store.log import Author, head
from tests.cli.conftest import Command, conservedb
from tests.conftest import TODAY
from tests.nasty import NASTY
from tests.recording.conftest import OBJECT, engine
from tests.recording.test_undoing import state

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them

__all__ = ["conservedb", "engine"]


@pytest.fixture
def folder(engine: Engine, tmp_path: Path) -> Path:
    out = tmp_path / "out"
    with reading(engine) as connection:
        export_folder(connection, out)
    return out


def edit(folder: Path, file: str, change: Callable[[dict[str, str]], None]) -> None:
    path = folder / file
    with path.open(encoding="utf-8", newline="") as read:
        rows = list(csv.DictReader(read))
    for row in rows:
        change(row)
    with path.open("w", encoding="utf-8", newline="") as written:
        writer = csv.DictWriter(written, list(rows[0]))
        writer.writeheader()
        writer.writerows(rows)


def update(engine: Engine, folder: Path, *, keep_good: bool = False) -> ImportReport:
    return import_folder(
        engine, folder, update=True, today=TODAY, who="A. Tester", keep_good=keep_good
    )


def change(engine: Engine, subject: str, key: str, cells: dict[str, str]) -> None:
    at = "2026-11-05T10:00:00.000+00:00"
    author = Author("I. Roe", "amended", "a slip", at=at)
    assert amend(engine, subject, OBJECT, key, cells, author, TODAY).faults == ()


def said(report: ImportReport) -> list[str]:
    return [fault.sentence() for fault in report.faults]


def test_the_end_of_the_log_stands_beside_an_export(engine: Engine, folder: Path) -> None:
    with reading(engine) as connection:
        end = head(raw_of(connection))
    known = read_head(folder)
    assert known is not None and known.head == end
    text = (folder / FILE).read_text(encoding="utf-8")
    assert "conservedb verify --head" in text and "written: 2026-11-02 by conservedb " in text


def test_import_leaves_it_alone(engine: Engine, folder: Path) -> None:
    report = update(engine, folder)
    assert said(report) == [] and report.notices == ()


def test_an_update_does_not_undo_a_later_amendment(engine: Engine, folder: Path) -> None:
    change(engine, "layers", "L1", {"role": "barrier"})
    change(engine, "interventions", "I1", {"date": "1990", "people": "A. Tester"})
    before = state(engine)
    report = update(engine, folder)
    assert not report.written
    told = said(report)
    assert len(told) == 3
    assert told[0].startswith('interventions.csv, line 2, column date "1989": changed since')
    assert "by I. Roe on 2026-11-05: date was 1989, is 1990; export again" in told[0]
    assert "people was otherwise, is A. Tester" in told[1]
    assert "by I. Roe on 2026-11-05: role was adhesive, is barrier" in told[2]
    assert state(engine) == before


def test_other_cells_and_agreeing_ones_are_taken(engine: Engine, folder: Path) -> None:
    change(engine, "layers", "L1", {"role": "barrier"})

    def agree(row: dict[str, str]) -> None:
        if row["ref"] == "L1":
            row |= {"role": "barrier", "note": "thin"}

    edit(folder, "layers.csv", agree)
    assert said(update(engine, folder)) == []
    with reading(engine) as connection:
        now = shown(connection, "layers", OBJECT, "L1").cells
    assert (now["role"], now["note"]) == ("barrier", "thin")


def test_the_good_rows_are_kept_where_asked(engine: Engine, folder: Path) -> None:
    change(engine, "layers", "L1", {"role": "barrier"})
    edit(folder, "layers.csv", lambda row: row.update(note="thin"))
    report = update(engine, folder, keep_good=True)
    assert report.written and len(report.faults) == 1
    with reading(engine) as connection:
        assert shown(connection, "layers", OBJECT, "L1").cells["note"] == ""
        assert shown(connection, "layers", OBJECT, "L2").cells["note"] == "thin"


def test_what_was_withdrawn_since_does_not_come_back(engine: Engine, folder: Path) -> None:
    with writing(engine, Author("I. Roe", "withdrawn", "no such layer")) as connection:
        withdraw(connection, "layer", 2)
    (told,) = said(update(engine, folder))
    assert 'layers.csv, line 3, column ref "L2": was withdrawn since' in told
    assert "by I. Roe on" in told


def test_a_log_that_does_not_have_that_end(engine: Engine, folder: Path) -> None:
    path = folder / FILE
    text = path.read_text(encoding="utf-8")
    hashed = text.split("change set ")[1].split(", ")[1][:64]
    path.write_text(text.replace(hashed, "0" * 64), encoding="utf-8")
    (told,) = said(update(engine, folder))
    assert "log-head.txt: names an end" in told and "conservedb verify" in told
    without = import_folder(engine, folder, today=TODAY, who="A. Tester")
    assert said(without) == []  # nothing is replaced, so nothing can be undone


def test_the_head_of_another_database_counts_for_nothing(
    engine: Engine, folder: Path, new_database: Callable[[str], Engine]
) -> None:
    change(engine, "layers", "L1", {"role": "barrier"})
    text = (folder / FILE).read_text(encoding="utf-8")
    uuid = text.split("uuid: ")[1][:36]
    other = text.replace(uuid, "0" * 8 + uuid[8:])
    (folder / FILE).write_text(other, encoding="utf-8")
    assert said(update(engine, folder)) == []


@pytest.mark.parametrize("text", NASTY)
def test_nasty_text_in_both(engine: Engine, folder: Path, text: str) -> None:
    change(engine, "layers", "L1", {"note": text})
    edit(folder, "layers.csv", lambda row: row.update(note=f"not {text}"))
    (told,) = said(update(engine, folder))
    assert "note was blank, is " in told and told.startswith("layers.csv, line 2, column note")


def test_a_name_of_a_database_forges_no_line(
    engine: Engine, tmp_path: Path, conservedb: Command
) -> None:
    with writing(engine, Author("A. Tester", "amended")) as connection:
        connection.exec_driver_sql(
            "UPDATE database SET name = ?", (f"x\nuuid: {'0' * 36}\r\nend of its log: y",)
        )
    engine.dispose()
    out = tmp_path / "named"
    done = conservedb("export", str(out), "--db", str(tmp_path / "department.db"))
    assert done.status == 0
    lines = (out / FILE).read_text(encoding="utf-8").splitlines()
    assert len(lines) == 5
    known = read_head(out)
    assert known is not None and known.identity != "0" * 36
    check = lines[-1].split('"')[1]
    told = conservedb("verify", "--head", check, "--db", str(tmp_path / "department.db"))
    assert told.status == 0, told


@pytest.mark.parametrize("text", ["", "\0", "uuid: x\nend of its log: change set 1, y\n", "é" * 9])
def test_a_head_that_says_nothing(engine: Engine, folder: Path, text: str) -> None:
    (folder / FILE).write_text(text, encoding="latin-1")
    assert read_head(folder) is None
    assert said(update(engine, folder)) == []
