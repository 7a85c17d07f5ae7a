"""The answer of the research screen: as many rows as there are, slow ones, and stopping them."""

from __future__ import annotations

import threading
import time
from pathlib import Path

import pytest
from rich.cells import cell_len

from conservedb.knowledge.research import Condition, Research
from conservedb.knowledge.research_words import read
from conservedb.questions.research_answers import Counts, Page
from conservedb.tui.answer_columns import GAP, columns_of, fitted
from conservedb.tui.database_researcher import DatabaseResearcher
from conservedb.tui.reading import Connection, Database, Unanswered
from conservedb.tui.researching import Asked, Stop
from conservedb.tui.screens.menu import MenuSheet
from conservedb.tui.screens.research import ResearchScreen
from conservedb.tui.text import plain
from conservedb.tui.widgets.answers_table import BLOCK, PAGE
from tests.nasty import NASTY
from tests.tui.at_research import Million, Slow, above, asking, row, screen, table, until_shown
from tests.tui.conftest import press, screen_text
from tests.tui.test_nasty import UNPRINTABLE

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them

FILLS = Research("layers", Condition("role", "fill"))
WIDEST = 200


async def test_a_million_rows_are_walked_by_pages() -> None:
    researcher = Million()
    async with asking(researcher, FILLS) as pilot:
        await until_shown(pilot, "1,000,000 certainly, 0 possibly, 0 unidentified")
        assert "CB.0 " in screen_text(pilot.app)
        await press(pilot, "tab", "end")
        assert "CB.999999" in screen_text(pilot.app)
        assert table(pilot).cursor == Million.TOTAL - 1
        await press(pilot, "pageup", "pageup", "up")
        cursor = table(pilot).cursor
        assert f"CB.{cursor} " in screen_text(pilot.app) and cursor < Million.TOTAL - 20
        await press(pilot, "home")
        assert "CB.0 " in screen_text(pilot.app)
        assert sum(length for _, _, length in researcher.pages) <= 3 * BLOCK * PAGE


async def test_sorting_asks_once_and_counts_no_more() -> None:
    researcher = Million()
    async with asking(researcher, FILLS) as pilot:
        await until_shown(pilot, "1,000,000 certainly")
        await press(pilot, "tab", "end")
        before = len(researcher.pages)
        await press(pilot, "s", "m")
        assert [one.order for one, _, _ in researcher.pages[before:]] == ["material"]
        assert researcher.counted == 1
        assert table(pilot).total == Million.TOTAL and "CB.0 " in screen_text(pilot.app)


async def test_no_more_pages_are_kept_than_are_needed(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("conservedb.tui.widgets.answers_table.MOST_KEPT", 2 * BLOCK)
    async with asking(Million(), FILLS) as pilot:
        await until_shown(pilot, "1,000,000 certainly")
        answers = table(pilot)
        await press(pilot, "tab")
        for number in range(4):
            answers.cursor = number * BLOCK * PAGE
            await until_shown(pilot, f"CB.{number * BLOCK * PAGE} ")
        assert len(answers._pages) == 2 * BLOCK
        await press(pilot, "home")
        await until_shown(pilot, "CB.0 ")


async def test_a_slow_question_tells_how_long_and_is_stopped() -> None:
    researcher = Slow()
    async with asking(researcher, FILLS) as pilot:
        await until_shown(pilot, "asking ... 1 s, Esc stops")
        before = time.monotonic()
        await pilot.press("a")
        await pilot.pause()
        assert isinstance(pilot.app.screen, MenuSheet) and time.monotonic() - before < 1
        await pilot.press("escape", "escape")
        await until_shown(pilot, "stopped; r asks again")
        assert [stop.asked for stop in researcher.stops] == [True]
        assert isinstance(pilot.app.screen, ResearchScreen)
        await pilot.press("r")
        await until_shown(pilot, "asking ...")
        await press(pilot, "escape", "escape")
        assert not isinstance(pilot.app.screen, ResearchScreen)


async def test_another_question_stops_the_one_before() -> None:
    researcher = Slow()
    async with asking(researcher, FILLS) as pilot:
        await pilot.press("n")
        await pilot.pause(0.1)
        assert [stop.asked for stop in researcher.stops] == [True, False]
        screen(pilot).stop_all()


async def test_leaving_stops_too() -> None:
    researcher = Slow()
    async with asking(researcher, FILLS) as pilot:
        await pilot.pause(0.1)
        pilot.app.pop_screen()
        await pilot.pause(0.1)
        assert researcher.stops[0].asked


class Late(Million):
    """Rows of the first question come only when the gate opens."""

    def __init__(self) -> None:
        super().__init__()
        self.gate = threading.Event()

    def page(self, asked: Asked, start: int, length: int, stop: Stop) -> Page:
        if asked.research == FILLS:
            assert self.gate.wait(10)
            return super().page(asked, 500, length, stop)
        return super().page(asked, start, length, stop)


async def test_an_answer_to_another_question_is_dropped() -> None:
    researcher = Late()
    async with asking(researcher, FILLS) as pilot:
        await pilot.press("n")
        await until_shown(pilot, "CB.0 ")
        researcher.gate.set()
        await press(pilot)
        assert "CB.0 " in screen_text(pilot.app) and "CB.500" not in screen_text(pilot.app)


class Refusing(Million):
    """Nothing can be read."""

    def page(self, asked: Asked, start: int, length: int, stop: Stop) -> Page:
        raise Unanswered("no material 'shelac' on record; did you mean shellac?")


async def test_a_refusal_stands_above_the_table() -> None:
    async with asking(Refusing(), FILLS) as pilot:
        await press(pilot)
        assert above(pilot) == "no material 'shelac' on record; did you mean shellac?"
        await press(pilot, "tab", "enter", "f", "m")
        assert isinstance(pilot.app.screen, ResearchScreen)


def test_the_database_itself_is_interrupted(demo: Path) -> None:
    """Counting to a thousand million takes SQLite minutes."""
    researcher, stop = DatabaseResearcher(Database(demo)), Stop()
    asked = Asked(read("role: fill"))
    sql = (
        "WITH RECURSIVE n(i) AS (VALUES (1) UNION ALL SELECT i + 1 FROM n WHERE i < 1000000000)"
        " SELECT count(*) FROM n"
    )

    def question(connection: Connection, _: object) -> object:
        return connection.exec_driver_sql(sql).all()

    assert researcher.counts(asked, Stop()).total > 0
    threading.Timer(0.3, stop.now).start()
    before = time.monotonic()
    with pytest.raises(Unanswered):
        researcher._ask(asked, stop, question)
    assert 0.2 < time.monotonic() - before < 3
    assert researcher.counts(asked, Stop()).total > 0
    with pytest.raises(Unanswered, match="stopped"):
        researcher.counts(asked, stop)


@pytest.mark.parametrize("rows", ["layers", "places", "interventions", "objects"])
def test_columns_fill_any_width(rows: str) -> None:
    names = {one.name for one in columns_of(rows)}
    for order in names:
        for width in range(20, WIDEST):
            found = fitted(rows, width, order)
            assert order in {column.name for column, _ in found}
            assert sum(cells + GAP for _, cells in found) - GAP <= width
    widest = {column.name for column, _ in fitted(rows, WIDEST, "date")}
    assert names <= widest


async def test_any_size_of_terminal_will_do() -> None:
    async with asking(Million(), FILLS) as pilot:
        await until_shown(pilot, "1,000,000 certainly")
        for width, height in ((30, 8), (1, 1), (200, 60), (80, 24)):
            await pilot.resize_terminal(width, height)
            await press(pilot, "tab", "end", "home", "tab")
        assert "CB.0 " in screen_text(pilot.app)


class Nasty(Million):
    """A row for each nasty text, which stands in all its columns."""

    def page(self, asked: Asked, start: int, length: int, stop: Stop) -> Page:
        rows = tuple(
            row(0)._replace(object=text, title=text, place=text, material=text, people=text)
            for text in NASTY
        )
        return Page(asked.research, rows, start)

    def counts(self, asked: Asked, stop: Stop) -> Counts:
        return Counts(len(NASTY), 0, 0)


async def test_nasty_text_in_rows_is_data() -> None:
    async with asking(Nasty(), FILLS, (140, 48)) as pilot:
        await until_shown(pilot, f"{len(NASTY)} certainly")
        text = screen_text(pilot.app)
        assert UNPRINTABLE.search(text) is None
        for nasty in NASTY:
            assert plain(nasty).plain[:6] in text
        lines = text.splitlines()
        top = next(number for number, line in enumerate(lines) if "how sure" in line)
        heading, *lines = lines[top : top + 1 + len(NASTY)]
        at = cell_len(heading[: heading.index("state")])
        assert all(cut(line, at).startswith("in place") for line in lines)
        await press(pilot, "tab", "f")
        assert "how sure certain" in screen_text(pilot.app)
        await press(pilot, "escape", "end", "f", "escape")
        assert table(pilot).cursor == len(NASTY) - 1


def cut(line: str, at: int) -> str:
    """What stands in a line from a cell on."""
    while cell_len(line) and at > 0:
        at -= cell_len(line[0])
        line = line[1:]
    return line
