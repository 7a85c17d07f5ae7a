"""Many processes at once on one database: every step there once; no acknowledged edit lost.

CONSERVEDB_STEPS names another number of steps for each of the eight.
"""

from __future__ import annotations

import os
import subprocess
import sys
import time
from collections import Counter
from pathlib import Path

import pytest

from conservedb.store.connect import raw_of, reading
from conservedb.store.log import sets
from conservedb.store.opening import open_database
from tests.campaigns.saving import (
    PLACES,
    department,
    half_recorded,
    recorded,
    recorder,
)
from tests.recording.whole_state import not_sound

pytestmark = pytest.mark.campaign
WRITERS = 8
STEPS = int(os.environ.get("CONSERVEDB_STEPS", "50"))
EDITORS = 4
TAGS = 30


def test_eight_writers(tmp_path: Path) -> None:
    path = tmp_path / "many.db"
    department(path).dispose()
    started = time.monotonic()
    processes = [recorder(path, f"writer {number}", STEPS) for number in range(WRITERS)]
    said = [process.communicate()[0].splitlines() for process in processes]
    seconds = time.monotonic() - started
    assert [process.returncode for process in processes] == [0] * WRITERS
    assert [len(lines) for lines in said] == [STEPS] * WRITERS
    engine, _ = open_database(path)
    with reading(engine) as connection:
        raw = raw_of(connection)
        notes = Counter(n for (n,) in raw.execute("SELECT note FROM intervention"))
        assert notes == Counter(note for lines in said for note in lines)
        assert set(notes.values()) == {1}
        assert len(recorded(raw)) == WRITERS * STEPS
        assert list(half_recorded(raw)) == []
        assert sum(one.kind == "recorded" for one in sets(raw)) == WRITERS * STEPS + 1
    assert not_sound(engine) == []
    print(
        f"{WRITERS} writers, {WRITERS * STEPS} steps in {seconds:.1f} s:"
        f" {WRITERS * STEPS / seconds:.1f} steps a second, all there once, chain whole"
    )


def test_editors_of_one_note(tmp_path: Path) -> None:
    """Each adds tags of its own to the note of one place, and thinks before it saves."""
    path = tmp_path / "note.db"
    department(path).dispose()
    root = Path(__file__).parents[2]
    processes = [
        subprocess.Popen(
            [sys.executable, "-m", "tests.campaigns.noting", str(path), f"e{number}", str(TAGS)],
            stdout=subprocess.PIPE,
            text=True,
            cwd=root,
        )
        for number in range(EDITORS)
    ]
    said = [process.communicate()[0].splitlines() for process in processes]
    assert [process.returncode for process in processes] == [0] * EDITORS
    told = Counter(line.split(" ")[0] for lines in said for line in lines)
    kept = {line.split(" ")[1] for lines in said for line in lines if line.startswith("kept")}
    engine, _ = open_database(path)
    with reading(engine) as connection:
        note = (
            raw_of(connection)
            .execute("SELECT note FROM place WHERE mark = ?", (PLACES[0],))
            .fetchone()[0]
        )
    assert set(note.split()) == kept
    assert len(note.split()) == len(kept)
    assert told["clash"] > 0, "the editors never met"
    assert told.keys() <= {"kept", "clash"}
    assert not_sound(engine) == []
    print(
        f"{EDITORS} editors: {told['kept']} tags kept, all there; {told['clash']} told of a clash"
    )
