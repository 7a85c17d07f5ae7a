"""Questions that are kept, compared, counted and written; nasty text in all of them."""

from __future__ import annotations

import csv
from pathlib import Path

import pytest
from textual.pilot import Pilot

from conservedb.exchange.importing import import_folder
from conservedb.knowledge.research import ROWS, And, Condition, Not, Or, Research
from conservedb.knowledge.research_words import AskError, read, say
from conservedb.questions.asof import as_of
from conservedb.questions.display import show
from conservedb.questions.research import rows
from conservedb.questions.research_compared import Compared, compare
from conservedb.questions.survival import survival
from conservedb.questions.tally import WAYS, counted
from conservedb.store.opening import open_database
from conservedb.tui.screens.asking_sheets import DaysSheet
from conservedb.tui.screens.compared import ComparedSheet
from conservedb.tui.screens.entry_sheet import EntrySheet
from conservedb.tui.screens.kept_questions import KeptSheet
from conservedb.tui.screens.menu import MenuSheet
from conservedb.tui.screens.object import ObjectScreen
from conservedb.tui.screens.research import ResearchScreen
from conservedb.tui.screens.research_kept import ways
from tests.nasty import NASTY
from tests.tui.at_research import TODAY, above, at_research, screen, table
from tests.tui.conftest import NARROW, WIDE, press, screen_text
from tests.tui.forms import calm, typed
from tests.tui.test_nasty import UNPRINTABLE
from tests.tui.test_screens import Check

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them

SHELLAC = Research("layers", Condition("material", "shellac"))


async def test_a_question_is_kept_asked_again_and_withdrawn(demo: Path) -> None:
    async with at_research(demo, SHELLAC) as pilot:
        await typed(pilot, "w", "<ctrl+s>", "Shellac, by place", "<enter>")
        assert "kept as Shellac, by place" in screen_text(pilot.app)
        sentence = above(pilot)
        await typed(pilot, "x", "l")
        assert isinstance(pilot.app.screen, KeptSheet)
        assert "Places with something that fits" in screen_text(pilot.app)
        await typed(pilot, "<enter>")
        assert say(screen(pilot).research) == "places where material: shellac"
        assert above(pilot) == sentence
        assert "Research: Shellac, by place" in screen_text(pilot.app)
        await typed(pilot, "<ctrl+s>", "<ctrl+u>", "SHELLAC, by place", "<enter>")
        assert "why not" in screen_text(pilot.app) and "Shellac, by place" in flat(pilot)
        await typed(pilot, "<escape>")
        await typed(pilot, "l", "<delete>")
        await typed(pilot, "asked no more", "<enter>")
        assert "withdrawn" in screen_text(pilot.app)
        await typed(pilot, "l")
        assert "no question is kept yet" in screen_text(pilot.app)
        await typed(pilot, "<ctrl+z>", "l")
        assert isinstance(pilot.app.screen, KeptSheet)
        await press(pilot, "escape", "ctrl+y")
        await typed(pilot, "l")
        assert "no question is kept yet" in screen_text(pilot.app)


def compared(path: Path, words: str, *days: str) -> Compared:
    engine, _ = open_database(path)
    with engine.connect() as connection:
        first, second = (as_of(day, TODAY) for day in days)
        found = compare(connection, read(words), first, second)
    engine.dispose()
    return found


async def test_two_days_are_compared(demo: Path) -> None:
    async with at_research(demo, SHELLAC) as pilot:
        await typed(pilot, "v", "1880", "<enter>", "1900", "<enter>")
        assert isinstance(pilot.app.screen, ComparedSheet)
        found = compared(demo, "material: shellac", "1880", "1900")
        assert found.only_second
        text = screen_text(pilot.app)
        assert all(one.sentence in text for one in found.counts)
        assert f"only then: {len(found.only_second)}" in text
        await press(pilot, "end", "enter")
        assert isinstance(pilot.app.screen, ObjectScreen)
        assert pilot.app.screen.number == found.only_second[-1].object


async def test_what_became_surer_is_listed_with_both_words(demo: Path) -> None:
    async with at_research(demo, SHELLAC, WIDE) as pilot:
        await typed(pilot, "v", "1900", "<enter>", "1960", "<enter>")
        found = compared(demo, "material: shellac", "1900", "1960")
        text = screen_text(pilot.app)
        assert found.added in text
        assert [one.before for one in found.surer] == ["possible"]
        assert [one.before for one in found.less_sure] == ["certain"]
        for told in ("surer on the second day  1", "possible, then certain: 1"):
            assert told in text
        for told in ("less sure on the second day  1", "certain, then possible: 1"):
            assert told in text
        await press(pilot, "end", "enter")
        assert isinstance(pilot.app.screen, ObjectScreen)
        assert pilot.app.screen.number == found.less_sure[-1].row.object


async def test_nothing_is_said_of_presence_where_the_question_asks_for_a_state(demo: Path) -> None:
    gone = Research("layers", Condition("state", "gone"))
    async with at_research(demo, gone, WIDE) as pilot:
        await typed(pilot, "v", "1900", "<enter>", "1960", "<enter>")
        assert isinstance(pilot.app.screen, ComparedSheet)
        assert "on each day" not in screen_text(pilot.app)


async def test_a_day_that_cannot_be_read_is_said(demo: Path) -> None:
    async with at_research(demo, SHELLAC) as pilot:
        await typed(pilot, "v", "1880", "<enter>", "Easter", "<enter>")
        sheet = pilot.app.screen
        assert isinstance(sheet, DaysSheet)
        assert [bool(row.problem) for row in sheet.rows] == [False, True]
        assert "! the date 'Easter' cannot be read" in flat(pilot)
        assert sheet.current is sheet.rows[1]
        await typed(pilot, "<ctrl+u>", "1900", "<enter>")
        assert isinstance(pilot.app.screen, ComparedSheet)  # the first day was not lost
        await press(pilot, "escape")
        await typed(pilot, "d", "Easter", "<enter>")
        assert "! the date 'Easter' cannot be read" in flat(pilot)
        await typed(pilot, "<ctrl+u>", "1900", "<enter>")
        assert "as of the end of 1900" in screen_text(pilot.app)


async def test_the_answer_is_counted_as_bars(demo: Path) -> None:
    async with at_research(demo, SHELLAC) as pilot:
        await typed(pilot, "g", "d")
        assert "layers by decade" in screen_text(pilot.app)
        assert "18 + 0 + 1" in screen_text(pilot.app)  # 1890s, as the command look tells
        await press(pilot, "escape")
        await typed(pilot, "w", "g", "c")
        sheet = pilot.app.screen
        assert isinstance(sheet, MenuSheet)
        assert "decade" in flat(pilot) and "class" not in flat(pilot)


@pytest.mark.parametrize("rows", ROWS)
def test_rows_are_counted_in_all_ways_that_are_offered(demo: Path, rows: str) -> None:
    """No other way is left out than those that the question refuses."""
    engine, _ = open_database(demo)
    offered = [one.name for one in ways(rows)]
    with engine.connect() as connection:
        for by in WAYS:
            if by in offered:
                counted(connection, Research(rows), (), by)
            else:
                with pytest.raises(AskError):
                    counted(connection, Research(rows), (), by)
    engine.dispose()
    assert "decade" in offered


@pytest.mark.parametrize("size", [NARROW, WIDE])
async def test_how_long_layers_last_is_told(demo: Path, size: tuple[int, int]) -> None:
    engine, _ = open_database(demo)
    with engine.connect() as connection:
        answer = rows(connection, SHELLAC, TODAY)
        found = survival(connection, SHELLAC, answer, TODAY)
    engine.dispose()
    async with at_research(demo, SHELLAC, size) as pilot:
        await typed(pilot, "y")
        text = flat(pilot)
        assert "Layers still there, by age" in text
        there, ended, unknown = found.ages[0].standing
        assert f"after {found.ages[0].years} years: " in text
        assert f"{there:,} there for certain, {ended:,} ended for certain, {unknown:,}" in text
        await press(pilot, "end")
        assert "conservedb look --survival --picture" in flat(pilot)
        assert "'layers where material: shellac'" in flat(pilot)
        await press(pilot, "escape")
        assert isinstance(pilot.app.screen, ResearchScreen)
        await typed(pilot, "w", "y")
        assert "it is layers that last, not places" in screen_text(pilot.app)


async def test_the_picture_is_written_by_a_command_which_is_told(demo: Path) -> None:
    async with at_research(demo, SHELLAC) as pilot:
        await typed(pilot, "d", "1950", "<enter>", "g", "d")
        await press(pilot, "end")
        assert "As a picture in a file, as of today: conservedb look --by decade" in flat(pilot)
        assert "'layers where material: shellac'" in flat(pilot)


async def test_the_answer_is_written_to_a_new_file_only(demo: Path, tmp_path: Path) -> None:
    path = tmp_path / "shellac.csv"
    async with at_research(demo, SHELLAC) as pilot:
        await typed(pilot, "s", "o", "p", str(path), "<enter>")
        total = table(pilot).total
        assert f"{total} rows written to" in screen_text(pilot.app)
        with path.open(encoding="utf-8-sig", newline="") as file:
            written = [one["object"] for one in csv.DictReader(file)]
        assert len(written) == total and table(pilot)._row(0).object == written[0]  # type: ignore[union-attr]
        before = path.read_bytes()
        await typed(pilot, "p", str(path), "<enter>")
        assert "already exists; name a new file" in flat(pilot)
        await typed(pilot, "<escape>")
        assert path.read_bytes() == before
        await typed(pilot, "p", str(tmp_path / "x.pdf"), "<enter>")
        assert "end the name of the file with .csv, .jsonl, .xlsx" in flat(pilot)
        await typed(pilot, "p", str(tmp_path / ("x" * 300 + ".csv")), "<enter>")
        assert "why not" in screen_text(pilot.app)
        assert above(pilot).startswith("23 certainly")


def flat(pilot: Pilot[None]) -> str:
    """The screen without frames and breaks of lines."""
    return " ".join(screen_text(pilot.app).replace("│", " ").split())


ALL = [one for one in NASTY if len(one) < 1_000]
_TEXTS = (" ¦ ".join(ALL[::2]), " ¦ ".join(ALL[1::2]))


@pytest.mark.parametrize("text", _TEXTS, ids=range(2))
async def test_nasty_text_is_data(demo: Path, tmp_path: Path, text: str) -> None:
    asked = Research("layers", Or((Condition("technique", text), Not(Condition("role", text)))))
    list_words(demo, tmp_path / "tables", text)
    async with at_research(demo, asked, WIDE) as pilot:
        assert shown_in(pilot, text)
        assert "certainly" in above(pilot)
        for key in ("f", "e", "enter", "g"):
            await typed(pilot, f"<{key}>")
            assert UNPRINTABLE.search(screen_text(pilot.app)) is None
            await typed(pilot, "<escape>")
        assert isinstance(pilot.app.screen, ResearchScreen)
        await typed(pilot, "<ctrl+s>")
        sheet = pilot.app.screen
        assert isinstance(sheet, EntrySheet)
        sheet.rows[0].value = text[:200]
        await typed(pilot, "<ctrl+s>")  # in a field of several lines, Enter makes one more
        assert "kept as" in screen_text(pilot.app)
        assert UNPRINTABLE.search(screen_text(pilot.app)) is None
        await typed(pilot, "l")
        assert UNPRINTABLE.search(screen_text(pilot.app)) is None
        await typed(pilot, "<enter>")
        assert screen(pilot).research == asked


def list_words(path: Path, folder: Path, text: str) -> None:
    """Make words of the department of a text, so that they can be asked for."""
    folder.mkdir()
    with (folder / "terms.csv").open("w", encoding="utf-8", newline="") as file:
        csv.writer(file).writerows((("list", "term"), ("technique", text), ("role", text)))
    engine, _ = open_database(path)
    assert import_folder(engine, folder, today=TODAY, who="A. Tester").written
    engine.dispose()


def shown_in(pilot: Pilot[None], text: str) -> bool:
    """Whether the text is on the screen as data, its first words at least."""
    assert UNPRINTABLE.search(screen_text(pilot.app)) is None
    return show(text[:20]) in screen_text(pilot.app)


@pytest.mark.parametrize("size", [NARROW, WIDE])
async def test_screens(demo: Path, size: tuple[int, int], same_screen: Check) -> None:
    asked = Research(
        "layers",
        And(
            (
                Condition("material", "shellac"),
                Condition("state", "there", "1950"),
                Not(Or((Condition("person", "W. Orde"), Condition("kind", "join")))),
            )
        ),
    )
    async with at_research(demo, size=size) as pilot:
        same_screen(pilot, "research")
        await typed(pilot, "a")
        same_screen(pilot, "research_fields")
        await typed(pilot, "s")
        same_screen(pilot, "research_condition")
        await typed(pilot, "<escape>")
        screen(pilot).take_question(asked)
        await calm(pilot)
        await typed(pilot, "<tab>", "<down>")
        same_screen(pilot, "research_answer")
        await typed(pilot, "w", "w", "s")
        same_screen(pilot, "research_sort")
        await typed(pilot, "<escape>", "f")
        same_screen(pilot, "research_row")
        await press(pilot, "escape")
        await typed(pilot, "e")
        same_screen(pilot, "research_text")


async def test_sheets(demo: Path, same_screen: Check) -> None:
    async with at_research(demo, SHELLAC) as pilot:
        await typed(pilot, "<ctrl+s>", "shellac, wherever it is", "<enter>", "l")
        same_screen(pilot, "research_kept")
        await press(pilot, "escape")
        await typed(pilot, "v", "1880", "<enter>", "1900", "<enter>")
        same_screen(pilot, "research_compared")
        await press(pilot, "escape")
        await typed(pilot, "g", "d")
        same_screen(pilot, "research_bars")
