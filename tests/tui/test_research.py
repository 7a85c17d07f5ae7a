"""The research screen: a question put together by keys, mended as text, its answer in a table."""

from __future__ import annotations

from pathlib import Path

import pytest
from textual.pilot import Pilot

from conservedb.knowledge.research import Condition, Research
from conservedb.knowledge.research_words import read, say
from conservedb.questions.research import counts, page
from conservedb.questions.research_answers import Counts, ResearchRow
from conservedb.store.opening import open_database
from conservedb.tui.app import ConservedbApp
from conservedb.tui.screens.asking_sheets import ConditionSheet, TextSheet
from conservedb.tui.screens.material import MaterialScreen
from conservedb.tui.screens.menu import MenuSheet
from conservedb.tui.screens.object import ObjectScreen
from tests.tui.at_research import TODAY, above, at_research, screen, table
from tests.tui.conftest import press, screen_text
from tests.tui.forms import calm, typed

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them

SHELLAC = Research("layers", Condition("material", "shellac"))
"""A question that the demonstration answers in all three ways."""


def counted(path: Path, words: str) -> Counts:
    """What the question itself answers."""
    engine, _ = open_database(path)
    with engine.connect() as connection:
        found = counts(connection, read(words), TODAY)
    engine.dispose()
    return found


def listed(path: Path, words: str, order: str, *, descending: bool = False) -> list[ResearchRow]:
    engine, _ = open_database(path)
    with engine.connect() as connection:
        found = page(connection, read(words), TODAY, order, descending, 0, 20).rows
    engine.dispose()
    return list(found)


def asked(pilot: Pilot[None]) -> str:
    return say(screen(pilot).research)


async def test_a_question_is_put_together_by_keys(demo: Path) -> None:
    async with at_research(demo) as pilot:
        assert above(pilot).startswith("nothing is asked yet")
        await typed(pilot, "a", "m", "shellac", "<enter>", "<enter>")
        assert asked(pilot) == "layers where material: shellac"
        await typed(pilot, "a", "s", "t", "<enter>", "1950", "<enter>", "<enter>")
        await typed(pilot, "a", "p", "W. Orde", "<enter>", "<enter>", "n")
        words = "material: shellac and state: there on 1950 and not person: W. Orde"
        assert asked(pilot) == f"layers where {words}"
        found = counted(demo, words)
        assert found.certain and found.possible and found.unidentified
        assert above(pilot) == found.sentence
        text = screen_text(pilot.app)
        assert "it is, belongs to, or was called, “shellac”" in text
        assert "and at the close of “1950” it is there, wholly or in part" in text
        assert "and not that “W. Orde” took part in the intervention" in text


async def test_conditions_are_changed_joined_and_taken_away(demo: Path) -> None:
    async with at_research(demo, SHELLAC) as pilot:
        await typed(pilot, "<end>", "a", "r", "coating", "<enter>", "<enter>", "o")
        assert asked(pilot) == "layers where material: shellac or role: coating"
        await typed(pilot, "b", "a", "d", "1934", "<enter>", "<enter>")
        assert asked(pilot) == "layers where material: shellac or role: coating and date: 1934"
        assert "or all of these hold:" in screen_text(pilot.app)
        await typed(pilot, "c")
        assert asked(pilot).endswith("date: certainly 1934")
        await typed(pilot, "<enter>", "<ctrl+u>", "1935", "<enter>", "<enter>")
        assert asked(pilot).endswith("date: certainly 1935")
        await typed(pilot, "<delete>", "<home>", "x")
        assert asked(pilot) == "layers"


async def test_what_is_on_record_is_offered(demo: Path) -> None:
    async with at_research(demo) as pilot:
        await typed(pilot, "a", "m", "cellulose nit", "<down>")
        assert "cn  cellulose nitrate" in screen_text(pilot.app)
        await typed(pilot, "<enter>", "<enter>")
        assert asked(pilot) == "layers where material: cn"
        await typed(pilot, "a", "u", "<f2>")
        assert "letter" in screen_text(pilot.app)


@pytest.mark.parametrize(
    ("keys", "question"),
    [
        (("m", "cellulose nit"), "material: cn"),
        (("r", "adh"), "role: adhesive"),
        (("p", "Orde"), "person: Orde"),  # his alone: it needs no mending
        (("l", "iron-in"), "rule: iron-in-stone"),
        (("m", "cement"), "material: cement"),  # called so on record, and nothing's name
    ],
)
async def test_enter_takes_the_first_that_fits(
    demo: Path, keys: tuple[str, ...], question: str
) -> None:
    for waited in (False, True):
        async with at_research(demo) as pilot:
            await typed(pilot, "a", *keys)
            if waited:
                await pilot.pause(0.3)  # the list is in view
                await calm(pilot)
            await typed(pilot, "<enter>", "<enter>")
            assert asked(pilot) == f"layers where {question}"


async def test_enter_chooses_none_of_several_people(demo: Path) -> None:
    async with at_research(demo) as pilot:
        await typed(pilot, "a", "p", "Miss", "<enter>", "<enter>")
        assert "'Miss' can mean" in screen_text(pilot.app)
        assert isinstance(pilot.app.screen, ConditionSheet)


async def test_a_form_shows_its_own_keys_and_all_it_can_be_given(demo: Path) -> None:
    async with at_research(demo) as pilot:
        assert "a add" in screen_text(pilot.app).splitlines()[-1]
        await typed(pilot, "a", "s")
        text = screen_text(pilot.app)
        assert "F2 list" in text.splitlines()[-1] and "a add" not in text.splitlines()[-1]
        words = " ".join(text.replace("│", " ").split())
        assert "there, in place, partly removed, gone, not yet, perhaps" in words
        assert "blank is today" in words  # beside the day, before anybody goes there
        await typed(pilot, "t", "<tab>", "1950")
        assert "blank is today" not in screen_text(pilot.app).split("holds")[0].split("1950")[0]
        await pilot.click("KeyLine", offset=(12, 0))
        await calm(pilot)
        sheet = pilot.app.screen
        assert isinstance(sheet, ConditionSheet) and sheet.current is sheet.rows[2]
        await typed(pilot, "<escape>")
        assert "a add" in screen_text(pilot.app).splitlines()[-1]


async def test_the_help_begins_with_what_only_research_has(demo: Path) -> None:
    async with at_research(demo) as pilot:
        await press(pilot, "f1")
        text = screen_text(pilot.app)
        assert "Add a condition" in text and "Every key of this screen" not in text


@pytest.mark.parametrize(
    ("keys", "sentence"),
    [
        (("m", "shelac"), "no material or class 'shelac' on record"),
        (("p", "Nobody Known"), "no person 'Nobody Known' on record"),
        (("d", "Easter"), "'Easter'"),
        (("m",), "nothing is asked for yet"),
    ],
)
async def test_a_value_that_cannot_be_asked_for(
    demo: Path, keys: tuple[str, ...], sentence: str
) -> None:
    async with at_research(demo) as pilot:
        await typed(pilot, "a", *keys, "<enter>", "<enter>")
        assert isinstance(pilot.app.screen, ConditionSheet)
        assert f"! {sentence}" in " ".join(screen_text(pilot.app).split())
        await typed(pilot, "<escape>")
        assert asked(pilot) == "layers"


async def test_the_question_is_mended_as_text(demo: Path) -> None:
    async with at_research(demo, SHELLAC) as pilot:
        await typed(pilot, "e", " and colour: red", "<enter>")
        assert isinstance(pilot.app.screen, TextSheet)
        text = " ".join(screen_text(pilot.app).replace("│", " ").split())
        assert "! there is no field 'colour'" in text
        assert "layers where material: shellac and colour: red" in text
        await typed(pilot, *["<backspace>"] * len("colour: red"), "person: Nobody", "<enter>")
        assert "! no person 'Nobody' on record" in screen_text(pilot.app)
        await typed(pilot, *["<backspace>"] * len("person: Nobody"), "role: coating", "<enter>")
        assert asked(pilot) == "layers where material: shellac and role: coating"
        assert above(pilot) == counted(demo, "material: shellac and role: coating").sentence


async def test_rows_are_sorted_by_each_column(demo: Path) -> None:
    async with at_research(demo, SHELLAC) as pilot:
        for keys, order, descending in (
            (("s", "o"), "object", False),
            (("s", "o"), "object", True),
            (("s", "m"), "material", False),
            (("s", "h"), "sureness", False),
            (("s", "d"), "date", False),
        ):
            await typed(pilot, *keys)
            wanted = listed(demo, "material: shellac", order, descending=descending)
            assert [table(pilot)._row(i) for i in range(20)] == wanted
            sign = "▼" if descending else "▲"
            assert sign in screen_text(pilot.app)
        await pilot.click("#answers", offset=(18, 0))
        await calm(pilot)
        assert screen(pilot).order == "object"


async def test_every_column_has_a_letter_of_its_own(demo: Path) -> None:
    async with at_research(demo, SHELLAC) as pilot:
        for _ in range(4):
            await typed(pilot, "s")
            sheet = pilot.app.screen
            assert isinstance(sheet, MenuSheet)
            letters = [kind.letter for line in sheet._rows for kind in line]
            assert len(set(letters)) == len(letters) > 3
            await typed(pilot, "<escape>", "w")


@pytest.mark.parametrize("rows", ["places", "interventions", "objects"])
async def test_other_rows_are_asked_for(demo: Path, rows: str) -> None:
    async with at_research(demo, SHELLAC) as pilot:
        while screen(pilot).rows != rows:
            await typed(pilot, "w")
        found = counted(demo, f"{rows} where material: shellac")
        assert above(pilot) == found.sentence
        assert table(pilot).total == found.total > 0


async def test_another_day_is_asked_for(demo: Path) -> None:
    words = Research("layers", Condition("state", "there"))
    async with at_research(demo, words) as pilot:
        today = above(pilot)
        await typed(pilot, "d", "1900", "<enter>")
        assert "as of the end of 1900" in screen_text(pilot.app)
        assert above(pilot) == counted(demo, "state: there on 1900").sentence != today
        await typed(pilot, "t")
        assert above(pilot) == today


async def test_keys_typed_at_once_land_where_they_belong(demo: Path) -> None:
    async with at_research(demo, SHELLAC) as pilot:
        await typed(pilot, "<tab>", "<end>", "<up>", "<tab>", "<end>")
        assert table(pilot).cursor == table(pilot).total - 2 > 0
        await typed(pilot, "<home>", "<end>", "n")
        assert asked(pilot) == "layers where not material: shellac"


async def test_a_row_opens_its_place_and_its_material(demo: Path) -> None:
    async with at_research(demo, SHELLAC) as pilot:
        await typed(pilot, "<tab>", "<down>", "<down>")
        found = table(pilot).current
        assert found is not None and found.place
        await typed(pilot, "<enter>")
        assert isinstance(pilot.app.screen, ObjectScreen)
        assert pilot.app.screen.number == found.object
        assert pilot.app.screen.row is not None and pilot.app.screen.row.mark == found.place
        await press(pilot, "escape", "m")
        assert isinstance(pilot.app.screen, MaterialScreen)
        await press(pilot, "escape", "f")
        assert found.title in screen_text(pilot.app)


async def test_research_is_reached_from_the_start_an_object_and_a_material(demo: Path) -> None:
    async with at_research(demo) as pilot:
        await press(pilot, "escape", "f4")
        assert asked(pilot) == "layers"
        await press(pilot, "escape")
        app = pilot.app
        assert isinstance(app, ConservedbApp)
        reading = app.reading
        await pilot.app.push_screen(MaterialScreen(reading, "shellac"))
        await calm(pilot)
        await press(pilot, "f4")
        await calm(pilot)
        assert asked(pilot) == "layers where material: shellac"
        assert above(pilot) == counted(demo, "material: shellac").sentence
        await pilot.app.push_screen(ObjectScreen(reading, "SQ.1902.7", ""))
        await calm(pilot)
        await press(pilot, "f4")
        await calm(pilot)
        assert asked(pilot) == "layers where object: SQ.1902.7"
