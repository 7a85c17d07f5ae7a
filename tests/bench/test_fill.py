"""A database that is filled by copying is the one that importing everything makes."""

from __future__ import annotations

import csv
from pathlib import Path

import pytest

from conservedb.exchange.exporting import export_folder
from conservedb.exchange.importing import import_folder
from conservedb.recording.verifying import verify_database
from conservedb.store.connect import reading
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.bench import collection
from tests.bench.fill import WHO, filled

OWN = ("uuid", "entered")
"""What differs between any two databases."""


def exported(path: Path, folder: Path) -> dict[str, list[dict[str, str]]]:
    engine, _ = open_database(path)
    with reading(engine) as connection:
        export_folder(connection, folder)
    engine.dispose()
    tables = {}
    for file in folder.glob("*.csv"):
        with file.open(newline="", encoding="utf-8") as lines:
            rows = list(csv.DictReader(lines))
        tables[file.name] = [{k: v for k, v in row.items() if k not in OWN} for row in rows]
    return tables


@pytest.mark.campaign
def test_copied_is_as_good_as_imported(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(collection, "PERIOD", 1)
    wanted = 700
    written = collection.make_collection(tmp_path / "tables", wanted)
    create(tmp_path / "whole.db", today="2026-11-02")
    engine, _ = open_database(tmp_path / "whole.db")
    assert import_folder(engine, tmp_path / "tables", who=WHO).written
    engine.dispose()
    made = filled(wanted, tmp_path / "kept")
    assert made.layers == written >= wanted
    whole = exported(tmp_path / "whole.db", tmp_path / "a")
    copied = exported(made.path, tmp_path / "b")
    assert len(whole["objects.csv"]) == 4  # three laps
    assert whole == copied
    engine, _ = open_database(made.path)
    with reading(engine) as connection:
        assert list(verify_database(connection)) == []
    engine.dispose()
    assert filled(wanted, tmp_path / "kept") == made  # kept, not made again


def test_an_object_is_the_same_at_every_size() -> None:
    first, again = (
        [
            (name, [cell for cell in row if cell not in (f"CB.{number}", f"Object {number}")])
            for name, row in collection._object(number)
        ]
        for number in (7, 7 + collection.PERIOD)
    )
    assert first == again
    assert list(collection._object(7)) == list(collection._object(7))
