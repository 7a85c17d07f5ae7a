"""Search as one types: each keystroke against plain FTS5 with the same rows, in the same run.

The floor is a full-text table of its own, without prefix indexes, asked as its manual shows it:
the best 50 by rank, with a snippet of each. It neither groups nor counts, and offers nothing.
"""

from __future__ import annotations

import sqlite3
import time
from collections.abc import Callable
from pathlib import Path
from statistics import median, quantiles

import pytest

from conservedb.questions.find import find
from conservedb.store.connect import reading
from conservedb.store.opening import open_database
from tests.bench.conftest import Collection

QUERIES = (
    "CB.17",
    "cb7 P0",
    "P12",
    "object 12",
    "worker number7",
    "material 33",
    "trade 12",
    "block 3",
    "clean 193",
    "stone 7",
)
SHORTEST = 2
"""Letters from which the screen searches."""
MEDIAN_BUDGET, SLOWEST_BUDGET = 8, 4
"""How many times the floor a keystroke may take: in the middle, and of the slowest in twenty."""


def plain_index(source: Path, target: Path) -> sqlite3.Connection:
    """A full-text table of its own with the words of the same records."""
    raw = sqlite3.connect(target, isolation_level=None)
    raw.execute("ATTACH ? AS ours", (str(source),))
    raw.execute("CREATE VIRTUAL TABLE plain USING fts5(names, words)")
    raw.execute(
        "INSERT INTO plain (rowid, names, words) SELECT id, names, words FROM ours.search_text"
    )
    return raw


def taken(work: Callable[[], object]) -> float:
    """Seconds of computing: who else uses the machine would count most for the shortest work."""
    started = time.process_time()
    work()
    return time.process_time() - started


@pytest.mark.bench
def test_each_keystroke(large: Collection, tmp_path: Path) -> None:
    plain = plain_index(large.path, tmp_path / "plain.db")
    engine, _ = open_database(large.path)
    best = (
        "SELECT rowid, snippet(plain, -1, '[', ']', '…', 12) FROM plain(?) ORDER BY rank LIMIT 50"
    )
    typed = [text[:end] for text in QUERIES for end in range(SHORTEST, len(text) + 1)]
    ours: list[float] = []
    floor: list[float] = []
    with reading(engine) as connection:
        for text in (typed[0], *typed):  # the first one warms both up
            asked = " AND ".join(f'"{word}"*' for word in text.split())
            floor.append(taken(lambda a=asked: plain.execute(best, (a,)).fetchall()))  # type: ignore[misc]
            ours.append(taken(lambda t=text: find(connection, t)))  # type: ignore[misc]
    engine.dispose()
    plain.close()
    middle = median(ours[1:]), median(floor[1:])
    slowest = quantiles(ours[1:], n=20)[-1], quantiles(floor[1:], n=20)[-1]
    print(
        f"{len(typed)} keystrokes at {large.layers} layers: median {middle[0] * 1000:.1f} ms,"
        f" {middle[0] / middle[1]:.1f} x plain FTS5; slowest 5 %: {slowest[0] * 1000:.1f} ms,"
        f" {slowest[0] / slowest[1]:.1f} x"
    )
    assert middle[0] / middle[1] <= MEDIAN_BUDGET
    assert slowest[0] / slowest[1] <= SLOWEST_BUDGET
