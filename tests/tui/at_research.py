"""Sitting at the research screen: of the demonstration, or with whoever answers given."""

from __future__ import annotations

import datetime
import time
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

from textual.pilot import Pilot

from conservedb.knowledge.research import Research, Tree
from conservedb.questions.answers import AsOf
from conservedb.questions.basics import When
from conservedb.questions.research_answers import CERTAIN, Counts, Page, ResearchRow
from conservedb.questions.research_compared import Compared
from conservedb.questions.research_saved import SavedQuestion
from conservedb.tui.app import ConservedbApp
from conservedb.tui.database_recorder import DatabaseRecorder
from conservedb.tui.database_researcher import DatabaseResearcher
from conservedb.tui.reading import Database, Unanswered
from conservedb.tui.recording import Completion
from conservedb.tui.researching import Asked, Researcher, Stop
from conservedb.tui.screens.research import ResearchScreen
from conservedb.tui.widgets.answers_table import AnswersTable
from tests.tui.canned import Canned
from tests.tui.conftest import NARROW, screen_text
from tests.tui.forms import calm

TODAY = datetime.date(2026, 11, 2)


@asynccontextmanager
async def at_research(
    path: Path, research: Research | None = None, size: tuple[int, int] = NARROW
) -> AsyncIterator[Pilot[None]]:
    """The research screen of a database, which can be written to."""
    database = Database(path)
    app = ConservedbApp(database, DatabaseRecorder(database), DatabaseResearcher(database))
    async with _sitting(app, research, size) as pilot:
        yield pilot


@asynccontextmanager
async def asking(
    researcher: Researcher, research: Research | None = None, size: tuple[int, int] = NARROW
) -> AsyncIterator[Pilot[None]]:
    """The research screen with somebody who answers; nothing is waited for."""
    app = ConservedbApp(Canned(), None, researcher)
    async with app.run_test(size=size) as pilot:
        await pilot.pause()
        await app.push_screen(ResearchScreen(app.reading, research))
        await pilot.pause()
        yield pilot


@asynccontextmanager
async def _sitting(
    app: ConservedbApp, research: Research | None, size: tuple[int, int]
) -> AsyncIterator[Pilot[None]]:
    async with app.run_test(size=size) as pilot:
        await calm(pilot)
        await app.push_screen(ResearchScreen(app.reading, research))
        await calm(pilot)
        yield pilot


def screen(pilot: Pilot[None]) -> ResearchScreen:
    """The research screen, whatever is laid over it."""
    found = [one for one in pilot.app.screen_stack if isinstance(one, ResearchScreen)]
    return found[-1]


def table(pilot: Pilot[None]) -> AnswersTable:
    """The answer."""
    return screen(pilot).query_one(AnswersTable)


def above(pilot: Pilot[None]) -> str:
    """What stands above the table."""
    return str(screen(pilot).query_one("#answer").border_title).strip()


async def until_shown(pilot: Pilot[None], words: str) -> None:
    """Wait until words are on the screen."""
    end = time.monotonic() + 10
    while words not in screen_text(pilot.app):
        assert time.monotonic() < end, f"{words!r} is not in\n{screen_text(pilot.app)}"
        await pilot.pause(0.02)


def row(number: int) -> ResearchRow:
    """A row that tells its number in the answer."""
    words = ("layer", f"L{number}", "", "shellac", "shellac", "coating", "coat", "")
    date = When("1900", "1900", 693596, 693960)
    return ResearchRow(CERTAIN, f"CB.{number}", "an object", "S1", *words, date, "present", 1)


class Million:
    """Answers any question with a million rows, and remembers what was asked."""

    TOTAL = 1_000_000

    def __init__(self) -> None:
        self.pages: list[tuple[Asked, int, int]] = []
        self.stops: list[Stop] = []
        self.counted = 0

    def page(self, asked: Asked, start: int, length: int, stop: Stop) -> Page:
        self.pages.append((asked, start, length))
        self.stops.append(stop)
        numbers = range(start, min(start + length, self.TOTAL))
        return Page(asked.research, tuple(map(row, numbers)), start)

    def counts(self, asked: Asked, stop: Stop) -> Counts:
        self.counted += 1
        return Counts(self.TOTAL, 0, 0)

    def closed(self, field: str) -> tuple[str, ...]:
        return ()

    def offers(self, field: str, typed: str) -> tuple[Completion, ...]:
        return ()

    def completed(self, field: str, typed: str) -> str:
        return typed

    def ensure_known(self, tree: Tree) -> None:
        """Everything is on record."""

    def compare(self, research: Research, first: AsOf, second: AsOf, stop: Stop) -> Compared:
        raise Unanswered("nothing is compared here")

    def bars(self, asked: Asked, by: str, width: int, stop: Stop) -> tuple[str, ...]:
        raise Unanswered("nothing is counted here")

    def survival(self, asked: Asked, width: int, stop: Stop) -> tuple[str, ...]:
        raise Unanswered("nothing is counted here")

    def write(self, asked: Asked, file: str, stop: Stop) -> str:
        raise Unanswered("nothing is written here")

    def kept(self) -> tuple[SavedQuestion, ...]:
        return ()

    def keep(self, research: Research, name: str, who: str) -> str:
        raise Unanswered("nothing is kept here")


class Slow(Million):
    """Answers nothing until it is stopped."""

    def page(self, asked: Asked, start: int, length: int, stop: Stop) -> Page:
        self.stops.append(stop)
        end = time.monotonic() + 20
        while not stop.asked and time.monotonic() < end:
            time.sleep(0.005)
        raise Unanswered("stopped" if stop.asked else "nobody stopped it")
