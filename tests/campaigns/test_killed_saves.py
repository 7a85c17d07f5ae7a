"""Saves killed at a random moment: what was acknowledged is there, nothing is there by half.

CONSERVEDB_KILLS names another number of kills. No loss in n kills means, with 95 % confidence,
one in less than 3/n; and a kill alone says nothing about a power cut (`test_power_cuts.py`).
"""

from __future__ import annotations

import os
import random
import time
from pathlib import Path

import pytest

from conservedb.store.connect import raw_of, reading
from conservedb.store.opening import open_database
from tests.campaigns.saving import department, half_recorded, recorded, recorder
from tests.recording.whole_state import not_sound

pytestmark = pytest.mark.campaign
KILLS = int(os.environ.get("CONSERVEDB_KILLS", "30"))
LONGEST = 0.4
"""Seconds after the first save within which the process is killed."""


def test_killed_saves(tmp_path: Path) -> None:
    path = tmp_path / "killed.db"
    department(path).dispose()
    journal = path.with_name(f"{path.name}-journal")
    chance = random.Random(11)
    acknowledged: set[str] = set()
    hot = 0
    for attempt in range(KILLS):
        process = recorder(path, f"run {attempt}", 10_000)
        assert process.stdout is not None
        acknowledged.add(process.stdout.readline().rstrip("\n"))
        time.sleep(chance.uniform(0, LONGEST))
        process.kill()
        rest = process.stdout.read()
        process.wait()
        # a line that the kill cut in two was not read by anybody
        acknowledged.update(rest.rpartition("\n")[0].splitlines())
        hot += journal.stat().st_size > 0
        engine, _ = open_database(path)
        with reading(engine) as connection:
            raw = raw_of(connection)
            assert acknowledged - recorded(raw).keys() == set(), "an acknowledged step is lost"
            assert list(half_recorded(raw)) == []
            if attempt % 10 == 9 or attempt == KILLS - 1:
                assert not_sound(engine) == []
            else:
                assert raw.execute("PRAGMA quick_check").fetchone() == ("ok",)
        engine.dispose()
    print(
        f"{KILLS} kills, {len(acknowledged)} steps acknowledged, none lost, none half there;"
        f" {hot} left a hot journal"
    )
    assert len(acknowledged) > KILLS
