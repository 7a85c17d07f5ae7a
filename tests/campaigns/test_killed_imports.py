"""Imports killed at a random moment and run again: nothing doubled, nothing missing."""

from __future__ import annotations

import random
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pytest

from conservedb.exchange.exporting import export_folder
from conservedb.exchange.importing import import_folder
from conservedb.recording.bounds import check_bounds
from conservedb.store.connect import reading
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.bench.collection import make_collection

pytestmark = pytest.mark.campaign
KILLS = 20


def exported(path: Path, folder: Path) -> dict[str, list[bytes]]:
    """Every exported row, without the columns that a new database makes anew."""
    engine, _ = open_database(path)
    with reading(engine) as connection:
        assert connection.exec_driver_sql("PRAGMA integrity_check").scalar() == "ok"
        assert connection.exec_driver_sql("PRAGMA foreign_key_check").fetchall() == []
        objects = connection.exec_driver_sql("SELECT id FROM object").scalars().all()
        assert check_bounds(connection, list(objects)) == []
        export_folder(connection, folder)
    engine.dispose()
    return {
        p.name: [line.rsplit(b",", 2)[0] for line in p.read_bytes().splitlines()]
        for p in sorted(folder.glob("*.csv"))
    }


@pytest.fixture(scope="module")
def source(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("source") / "tables"
    make_collection(folder, 2_000)
    return folder


def command(source: Path, path: Path) -> list[str]:
    return [sys.executable, "-m", "conservedb", "import", str(source), "--db", str(path)]


def test_twenty_killed_imports(source: Path, tmp_path: Path) -> None:
    clean = tmp_path / "clean.db"
    started = time.monotonic()
    subprocess.run(command(source, clean), check=True, capture_output=True, timeout=120)
    duration = time.monotonic() - started
    expected = exported(clean, tmp_path / "expected")
    chance = random.Random(7)
    interrupted = 0
    for attempt in range(KILLS):
        path = tmp_path / f"killed{attempt}.db"
        create(path)
        process: subprocess.Popen[Any] = subprocess.Popen(
            command(source, path), stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
        )
        time.sleep(chance.uniform(0.1, 0.7 * duration))  # well before its end, on any machine
        process.kill()
        interrupted += process.wait() != 0
        for _ in range(2):
            subprocess.run(command(source, path), check=True, capture_output=True, timeout=120)
        assert exported(path, tmp_path / f"after{attempt}") == expected
    assert interrupted > KILLS // 2, "most imports were over before they were killed"


def test_killed_inside_the_transaction(source: Path, tmp_path: Path) -> None:
    """Killed while rows are being written: the next opening finds none of them."""
    path = tmp_path / "half.db"
    create(path)
    script = (
        "import os, sys\n"
        "from pathlib import Path\n"
        "from conservedb.exchange import importing\n"
        "from conservedb.store.opening import open_database\n"
        "importing._integrity = lambda *a: os._exit(9)\n"
        "engine, _ = open_database(Path(sys.argv[1]))\n"
        "importing.import_folder(engine, Path(sys.argv[2]), who='A. Tester')\n"
    )
    run = subprocess.run([sys.executable, "-c", script, str(path), str(source)], timeout=120)
    assert run.returncode == 9
    engine, _ = open_database(path)
    with reading(engine) as connection:
        assert connection.exec_driver_sql("SELECT count(*) FROM layer").scalar() == 0
    report = import_folder(engine, source, who="A. Tester")
    assert report.written
