"""Leaving research and coming back, and what its lines, keys and columns tell on the way."""

from __future__ import annotations

import pytest
from textual.pilot import Pilot

from conservedb.knowledge.research import ROWS, And, Condition, Research
from conservedb.knowledge.research_words import read, say
from conservedb.tui.actions import actions_of, key_line, motions_of
from conservedb.tui.answer_columns import fitted
from conservedb.tui.app import ConservedbApp
from conservedb.tui.question_lines import ROOT
from conservedb.tui.researching import Asked
from conservedb.tui.screens.research import ResearchScreen
from conservedb.tui.widgets.key_line import KeyLine
from tests.tui.at_research import Million, asking, screen
from tests.tui.conftest import NARROW, WIDE, press, screen_text, type_in
from tests.tui.forms import calm, typed

FILLS = Research("layers", Condition("role", "fill"))
ROOM = 76  # cells of a row on a terminal of 80, beside the bar that scrolls


async def ask_for(pilot: Pilot[None], words: str) -> None:
    screen(pilot).take_question(read(words))
    await calm(pilot)


async def again(pilot: Pilot[None]) -> Asked:
    """Leave, and open research from the start."""
    await press(pilot, "escape")
    assert not isinstance(pilot.app.screen, ResearchScreen)
    await press(pilot, "f4")
    return screen(pilot).asked


@pytest.mark.campaign
async def test_the_question_left_last_is_there_again() -> None:
    async with asking(Million()) as pilot:
        assert await again(pilot) == Asked(Research())
        await ask_for(pilot, "places where role: fill and not kind: join")
        await typed(pilot, "d", "1950", "<enter>", "s", "d", "s", "d")
        left, screen(pilot).name_kept = screen(pilot).asked, "fills"
        assert (left.order, left.descending) == ("date", True) and left.on is not None
        assert await again(pilot) == left
        assert "Research: fills" in screen_text(pilot.app) and "CB.0 " in screen_text(pilot.app)
        await typed(pilot, "<delete>")
        assert screen(pilot).where == And()
        assert (await again(pilot)).research == Research("places")


@pytest.mark.campaign
async def test_a_question_that_came_from_elsewhere_takes_no_other_ones_place() -> None:
    async with asking(Million(), FILLS) as pilot:
        assert say((await again(pilot)).research) == "layers where role: fill"  # there was none
        await typed(pilot, "n")
        own = screen(pilot).asked
        await press(pilot, "escape")
        app = pilot.app
        assert isinstance(app, ConservedbApp)
        for keys, left in (((), own.research), (("w",), read("places where role: fill"))):
            await app.push_screen(ResearchScreen(app.reading, FILLS))
            await calm(pilot)
            assert say(screen(pilot).research) == "layers where role: fill"
            await typed(pilot, *keys)
            assert say((await again(pilot)).research) == say(left)
            await press(pilot, "escape")


async def test_layers_are_not_asked_for_what_they_have() -> None:
    async with asking(Million()) as pilot:
        await ask_for(pilot, "objects where has (role: fill)")
        seen = []
        for _ in ROWS:
            await typed(pilot, "w")
            seen.append(screen(pilot).rows)
        assert seen == ["places", "interventions", "objects", "places"]
        await typed(pilot, "<delete>", "w", "w", "w")
        assert screen(pilot).rows == "layers"


async def test_what_is_added_after_has_is_asked_beside_it() -> None:
    async with asking(Million()) as pilot:
        await ask_for(pilot, "objects where role: fill")
        await typed(pilot, "<end>", "h")
        assert screen(pilot).path == ROOT
        await typed(pilot, "a", "o", "A.1", "<enter>", "<enter>")
        assert say(screen(pilot).research) == "objects where has (role: fill) and object: A.1"
        await typed(pilot, "<home>", "<down>", "h")
        assert say(screen(pilot).research) == "objects where role: fill and object: A.1"
        assert screen(pilot).path == (0,)


@pytest.mark.parametrize(
    ("rows", "sentence"),
    [
        ("layers", "what a row has is asked of places, interventions or objects; w chooses those"),
        ("objects", "there is no condition yet; a adds one"),
    ],
)
async def test_where_nothing_can_be_had_the_way_on_is_told(rows: str, sentence: str) -> None:
    async with asking(Million()) as pilot:
        await ask_for(pilot, rows)
        await typed(pilot, "h")
        assert screen_text(pilot.app).splitlines()[-1].strip() == sentence
        await typed(pilot, "a")
        assert sentence not in screen_text(pilot.app)
        await press(pilot, "escape")
        await typed(pilot, "h")
        await press(pilot, "f1")
        assert sentence not in screen_text(pilot.app)


async def test_a_message_of_the_start_goes_at_the_next_key() -> None:
    async with asking(Million()) as pilot:
        await press(pilot, "escape", "escape")
        assert "this is the start" in screen_text(pilot.app)
        await press(pilot, "d")
        assert "this is the start" not in screen_text(pilot.app)


def named(rows: str, width: int) -> dict[str, int]:
    return {column.name: cells for column, cells in fitted(rows, width, "sureness")}


def test_narrow_rows_tell_what_matters_most() -> None:
    interventions = named("interventions", ROOM)
    assert set(interventions) == {"sureness", "object", "ref", "kind", "people", "date"}
    assert interventions["ref"] >= len("I1861-1")
    for rows, title in (("places", 15), ("objects", 22)):
        found = named(rows, ROOM)
        assert "layers" in found and found["title"] >= title and found["date"] >= 14
        assert 11 <= found["object"] <= 14


@pytest.mark.parametrize("rows", ROWS)
def test_no_room_is_left_while_a_column_could_use_it(rows: str) -> None:
    for width in range(60, 200):
        found = fitted(rows, width, "sureness")
        used = sum(cells + 2 for _, cells in found) - 2
        assert used == width or all(cells == column.most for column, cells in found)


def test_the_count_of_a_row_is_headed_found() -> None:
    assert [one.heading for one, _ in fitted("objects", ROOM, "sureness")][-1] == "found"


def test_a_wide_key_line_names_more_keys() -> None:
    narrow, wide = ({one.shown for one in key_line("research", w)} for w, _ in (NARROW, WIDE))
    assert narrow < wide and set("hnvgylp") <= wide
    for where in ("start", "object", "material", "research"):
        for width in range(80, 200):
            line = key_line(where, width)
            assert sum(len(one.shown) + 1 + len(one.label) + 3 for one in line) - 2 <= width


async def test_keys_that_have_room_are_shown_and_can_be_clicked() -> None:
    async with asking(Million(), size=WIDE) as pilot:
        line = screen_text(pilot.app).splitlines()[-1]
        await pilot.click(KeyLine, offset=(line.index("h has"), 0))
        await calm(pilot)
        assert "what a row has is asked of" in screen_text(pilot.app)
        await pilot.resize_terminal(*NARROW)
        await press(pilot, "tab")
        assert "h has" not in screen_text(pilot.app)


def test_research_has_one_word_for_places() -> None:
    told = [one.help for one in actions_of("research") if one.where == ("research",)]
    assert "location" not in " ".join((*told, *(one.help for one in motions_of("research"))))


async def test_the_whole_question_is_told_by_a_key_that_the_help_names() -> None:
    async with asking(Million(), FILLS) as pilot:
        await press(pilot, "f")
        assert "as text layers where role: fill" in " ".join(screen_text(pilot.app).split())
    told = {one.shown: one.help for one in actions_of("research")}
    assert "the whole of it as a sentence" in told["f"] and "to begin anew" in told["Del"]


async def test_a_person_that_is_found_opens_what_they_took_part_in() -> None:
    async with asking(Million()) as pilot:
        await press(pilot, "escape")
        await type_in(pilot, "finch")
        await press(pilot, "enter")
        took_part = Condition("person", "Dorothea Finch")
        assert screen(pilot).research == Research("interventions", And((took_part,)))
