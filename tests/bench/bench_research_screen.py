"""The first screen of a large answer on the research screen against the query of its first page."""

from __future__ import annotations

import asyncio
import datetime
import statistics
import time
from collections.abc import Callable

import pytest
from textual.events import Key
from textual.pilot import Pilot

from conservedb.knowledge.research import Research
from conservedb.knowledge.research_words import read
from conservedb.questions.research import counts, page
from conservedb.questions.research_answers import ResearchRow
from conservedb.store.opening import open_database
from conservedb.tui.app import ConservedbApp
from conservedb.tui.database_researcher import DatabaseResearcher
from conservedb.tui.reading import Database
from conservedb.tui.screens.research import ResearchScreen
from conservedb.tui.widgets.answers_table import PAGE, AnswersTable
from tests.bench.conftest import LARGE, Collection
from tests.tui.conftest import screen_text

BUDGET = 1.5 if LARGE >= 1_000_000 else 2.5
"""Of a million rows; beside a query of a tenth of a second what every screen takes counts too."""
ROUNDS = 15
TODAY = datetime.date(2026, 11, 2)
LONGEST = 600
REST = 0.1
"""Seconds in which what was shown before is painted; nobody presses a key sooner."""


async def until(holds: Callable[[], bool]) -> None:
    """Wait, looking often."""
    end = time.monotonic() + LONGEST
    while not holds():
        assert time.monotonic() < end
        await asyncio.sleep(0.002)


async def seconds_to_rows(pilot: Pilot[None], screen: ResearchScreen, first: str) -> float:
    """Seconds from the key until the first row is on the screen; then all that is to come comes."""
    table, came = screen.query_one(AnswersTable), asyncio.Event()
    show_rows = table.show_rows

    def show(start: int, rows: tuple[ResearchRow, ...]) -> None:
        show_rows(start, rows)
        came.set()

    table.show_rows = show  # type: ignore[method-assign]
    await asyncio.sleep(REST)
    begun = time.perf_counter()
    pilot.app.post_message(Key("r", "r"))
    await came.wait()
    assert first in screen_text(pilot.app)
    taken = time.perf_counter() - begun
    table.show_rows = show_rows  # type: ignore[method-assign]
    await until(lambda: not screen.waiting)
    return taken


@pytest.mark.bench
@pytest.mark.parametrize("words", ["layers", "material: class1"])
async def test_first_screen(large: Collection, words: str) -> None:
    research: Research = read(words)
    engine, _ = open_database(large.path)
    with engine.connect() as connection:
        total = counts(connection, research, TODAY).total
        first = page(connection, research, TODAY, length=PAGE).rows[0]
    database = Database(large.path)
    app = ConservedbApp(database, None, DatabaseResearcher(database))
    ours, floor = [], []
    async with app.run_test(size=(80, 24)) as pilot:
        screen = ResearchScreen(database, research)
        await app.push_screen(screen)
        await until(lambda: screen.counts is not None and not screen.waiting)
        assert screen.query_one(AnswersTable).total == total
        for _ in range(ROUNDS):
            with engine.connect() as connection:
                begun = time.perf_counter()
                page(connection, research, TODAY, length=PAGE)
                floor.append(time.perf_counter() - begun)
            ours.append(await seconds_to_rows(pilot, screen, first.object))
    engine.dispose()
    ratio = statistics.median(ours) / statistics.median(floor)
    print(f"first of {total:,} rows: {ratio:.2f} x its query ({statistics.median(ours):.2f} s)")
    assert ratio <= BUDGET
