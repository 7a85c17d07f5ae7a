"""Power cuts, rebuilt: whatever the disk lost, no acknowledged change set is, and none is halved.

The program writes through SQLAlchemy on Python's own SQLite, which cannot be given a disk that
takes notes. So the statements of real steps, with those that open and seal their change sets, are
traced as the program sends them, and sent again through `apsw` (which brings a SQLite of its own)
with the program's own pragmas, over a disk that notes every write, truncation, sync and deletion.
From these notes the disks are rebuilt that a power cut at any moment may leave behind, and each is
opened by the program. `test_the_method_sees_losses` shows that less careful settings are caught.

CONSERVEDB_POWER_CUTS names another number of rebuilt disks.
"""

from __future__ import annotations

import os
import random
import shutil
import sqlite3
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

import pytest

from conservedb.store.connect import PRAGMAS, connect_sqlite, raw_of, reading
from conservedb.store.log import sets
from conservedb.store.opening import open_database
from conservedb.store.problems import DatabaseProblem
from conservedb.store.verify import verify
from tests.campaigns.recording_disk import RecordingDisk, after_cuts, played, written
from tests.campaigns.saving import department, half_recorded, record_step
from tests.campaigns.traced import statements_of

pytestmark = pytest.mark.campaign
CUTS = int(os.environ.get("CONSERVEDB_POWER_CUTS", "100"))
STEPS = 12


@dataclass(frozen=True)
class Traced:
    """A database, its last change set, and the statements of some steps after it."""

    path: Path
    last: int
    steps: Sequence[Sequence[str]]


@pytest.fixture(scope="module")
def traced(tmp_path_factory: pytest.TempPathFactory) -> Traced:
    folder = tmp_path_factory.mktemp("traced")
    department(folder / "start.db").dispose()
    shutil.copy(folder / "start.db", folder / "traced.db")
    engine, _ = open_database(folder / "traced.db")
    with reading(engine) as connection:
        last = max(one.id for one in sets(raw_of(connection)))
    steps = [
        statements_of(engine, lambda n=number: record_step(engine, f"step {n}", n % 5 + 1))  # type: ignore[misc]
        for number in range(STEPS)
    ]
    engine.dispose()
    return Traced(folder / "start.db", last, steps)


@dataclass
class Seen:
    """What was found on the rebuilt disks."""

    disks: int = 0
    lost: int = 0
    damaged: int = 0
    hot: int = 0
    unsynced: int = 0


def cut(traced: Traced, folder: Path, pragmas: Sequence[str], number: int) -> Seen:
    """Play the steps, cut the power so often, and look at each disk."""
    path = folder / "cut.db"
    shutil.copy(traced.path, path)
    before = {path.name: path.read_bytes()}
    disk = RecordingDisk(f"recording {folder.name}")
    played(path, disk, pragmas, traced.steps)
    rebuilt = folder / "rebuilt"
    rebuilt.mkdir()
    seen = Seen()
    for kept, files in after_cuts(before, disk.events, number, random.Random(5)):
        written(files, rebuilt)
        journal = rebuilt / f"{path.name}-journal"
        seen.disks += 1
        seen.hot += journal.exists() and journal.stat().st_size > 0
        _look(rebuilt / path.name, traced.last, kept, seen)
    disk.unregister()
    return seen


def _look(path: Path, last: int, kept: int, seen: Seen) -> None:
    """Open a rebuilt database: how many change sets are there, and is all of each there?"""
    try:
        raw = connect_sqlite(path)
    except DatabaseProblem:
        seen.damaged += 1
        return
    try:
        there = [one.id - last for one in sets(raw) if one.id > last]
        if there != list(range(1, len(there) + 1)) or len(there) < kept:
            seen.lost += 1
        elif len(there) > kept + 1 or any(verify(raw)) or any(half_recorded(raw)):
            seen.damaged += 1
        else:
            seen.unsynced += len(there) - kept
    except sqlite3.Error:
        seen.damaged += 1
    finally:
        raw.close()


def test_power_cuts(traced: Traced, tmp_path: Path) -> None:
    seen = cut(traced, tmp_path, PRAGMAS, CUTS)
    print(
        f"{seen.disks} rebuilt disks: {seen.lost} lost an acknowledged step, {seen.damaged} were"
        f" damaged; {seen.hot} had a journal to be rolled back; on {seen.unsynced} a step was kept"
        " that was not yet acknowledged"
    )
    assert (seen.lost, seen.damaged) == (0, 0)
    assert seen.hot > CUTS // 10, "hardly a cut fell into a save"


def test_the_method_sees_losses(traced: Traced, tmp_path: Path) -> None:
    careless = [pragma.replace("synchronous=FULL", "synchronous=OFF") for pragma in PRAGMAS]
    seen = cut(traced, tmp_path, careless, 40)
    print(f"without syncs: {seen.lost} lost and {seen.damaged} damaged of {seen.disks}")
    assert seen.lost + seen.damaged > 20
    (tmp_path / "default").mkdir()
    default = [pragma.replace("=TRUNCATE", "=DELETE") for pragma in PRAGMAS]
    seen = cut(traced, tmp_path / "default", default, 100)
    print(f"journal deleted: {seen.lost} lost and {seen.damaged} damaged of {seen.disks}")
    assert seen.lost > 0
