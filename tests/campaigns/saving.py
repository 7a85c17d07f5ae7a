"""A department in which steps are recorded over several places at once, for runs full of faults.

As a program it records steps until it is killed or done, and says so after each:

    python -m tests.campaigns.saving DATABASE NAME STEPS
"""

from __future__ import annotations

import random
import sqlite3
import subprocess
import sys
from collections.abc import Iterator
from functools import partial
from pathlib import Path

from sqlalchemy import Engine

from conservedb.exchange.deeds import Step, compose_step
from conservedb.exchange.entering import Entry, enter
from conservedb.store.create import create
from conservedb.store.log import Author
from conservedb.store.opening import open_database
from tests.conftest import TODAY

OBJECT = "X.1"
PLACES = tuple(f"S{number}" for number in range(1, 6))
WHO = "A. Tester"


def department(path: Path) -> Engine:
    """A new database with one object that has five surfaces."""
    create(path, today=TODAY.isoformat())
    engine, _ = open_database(path)
    made = [
        Entry("objects", {"number": OBJECT, "title": "Basin"}),
        Entry("people", {"name": WHO}),
        Entry("components", {"object": OBJECT, "mark": "B1"}),
        *(
            Entry("places", {"object": OBJECT, "mark": mark, "kind": "surface", "component": "B1"})
            for mark in PLACES
        ),
    ]
    assert not enter(engine, lambda _: made, Author(WHO, "recorded"), TODAY).faults
    return engine


def record_step(engine: Engine, name: str, over: int) -> str:
    """Record one step over so many places; its note, which is its name and that number."""
    step = Step(
        OBJECT,
        "coat",
        TODAY.isoformat(),
        places=PLACES[:over],
        material="b72",
        note=f"{name} over {over}",
    )
    compose = partial(compose_step, step=step, who=WHO, today=TODAY)
    written = enter(engine, compose, Author(WHO, "recorded"), TODAY)
    assert not written.faults, written.faults
    return step.note


def recorder(path: Path, name: str, steps: int) -> subprocess.Popen[str]:
    """A process that records so many steps; it writes the note of each when it is kept."""
    command = [sys.executable, "-m", "tests.campaigns.saving", str(path), name, str(steps)]
    root = Path(__file__).parents[2]
    return subprocess.Popen(command, stdout=subprocess.PIPE, text=True, cwd=root)


def recorded(raw: sqlite3.Connection) -> dict[str, int]:
    """The layers of each step on record, by its note."""
    return dict(
        raw.execute(
            "SELECT i.note, count(l.id) FROM intervention i"
            " LEFT JOIN layer l ON l.intervention_id = i.id GROUP BY i.id"
        )
    )


def half_recorded(raw: sqlite3.Connection) -> Iterator[str]:
    """Steps that do not have as many layers as their notes say."""
    for note, layers in recorded(raw).items():
        if layers != int(note.rpartition(" ")[2]):
            yield f"{note}, but {layers} layers"


def _record(path: Path, name: str, steps: int) -> None:
    engine, _ = open_database(path)
    chance = random.Random(name)
    for number in range(steps):
        over = chance.randint(1, len(PLACES))
        print(record_step(engine, f"{name} {number}", over), flush=True)


if __name__ == "__main__":
    _record(Path(sys.argv[1]), sys.argv[2], int(sys.argv[3]))
