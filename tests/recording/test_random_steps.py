"""Any work whatever, all taken back: every answer and every export is as it was before.

What differs by right is the log alone.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from sqlalchemy import Engine

from conservedb.exchange.importing import import_folder
from conservedb.exchange.undoing import take_back
from conservedb.questions.log import set_line
from conservedb.store.connect import reading
from tests.conftest import TODAY
from tests.exchange.random_tables import RandomTables
from tests.recording.random_steps import WHO, RandomSteps
from tests.recording.whole_state import differing, not_sound, replay_differs, whole_state

Make = Callable[[str], Engine]
STEPS, MANY = 15, 30
"""How much is done in the default run, and in a long one."""


def work_and_take_back(make: Make, tmp_path: Path, seed: int, steps: int) -> None:
    RandomTables(seed).write(tmp_path / "source")
    engine = make("work.db")
    assert import_folder(engine, tmp_path / "source", today=TODAY, who="Somebody").written
    before = whole_state(engine, tmp_path / "before")
    work = RandomSteps(engine, seed)
    for _ in range(steps):
        work.one()
    after = whole_state(engine, tmp_path / "after")
    told = "\n".join(work.done)
    assert len(work.sets) >= steps // 5, told  # most of it is sensible work
    assert not_sound(engine) == [], told  # so what was refused has left nothing behind
    made = [_back(engine, number) for number in reversed(work.sets)]
    assert differing(whole_state(engine, tmp_path / "undone"), before) == [], told
    assert not_sound(engine) == [], told
    for number in reversed(made):
        _back(engine, number)
    assert differing(whole_state(engine, tmp_path / "redone"), after) == [], told
    assert not_sound(engine) == [], told
    assert replay_differs(engine) == [], told
    engine.dispose()


def _back(engine: Engine, number: int) -> int:
    """Take a change set back, also one that took another back; the number of the new one."""
    with reading(engine) as connection:
        kind = set_line(connection, number).kind
    return take_back(engine, WHO, number, undone=kind == "undone").number


@pytest.mark.parametrize("seed", range(1))
def test_random_work_is_taken_back(new_database: Make, tmp_path: Path, seed: int) -> None:
    work_and_take_back(new_database, tmp_path, seed, STEPS)


@pytest.mark.campaign
@pytest.mark.parametrize("seed", range(1, 7))
def test_much_random_work_is_taken_back(new_database: Make, tmp_path: Path, seed: int) -> None:
    work_and_take_back(new_database, tmp_path, seed, MANY)
