"""The screen of a treatment: from the start, from an object, and what each line says in full."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from textual.pilot import Pilot

from conservedb.questions.treatment_answers import TreatmentsAnswer
from conservedb.tui.reading import Database
from conservedb.tui.screens.object import ObjectScreen
from conservedb.tui.screens.start import StartScreen
from conservedb.tui.screens.treatment import TreatmentScreen
from conservedb.tui.screens.treatments import TreatmentsSheet
from conservedb.tui.widgets.facts import Facts
from conservedb.tui.widgets.treated import Treated
from tests.questions.treating import make_workshop
from tests.tui.canned import NUMBER, Canned
from tests.tui.conftest import NARROW, WIDE, press, screen_text, sitting

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them

Check = Callable[[Pilot[None], str], None]


async def open_treatment(pilot: Pilot[None], ref: str = "T2026") -> TreatmentScreen:
    screen = TreatmentScreen(Canned(), NUMBER, ref)
    await pilot.app.push_screen(screen)
    await press(pilot)
    return screen


def held(screen: TreatmentScreen, width: int = 300) -> str:
    items = screen.query_one(Treated).items
    return "\n".join(line.plain for item in items for line in item.draw(width))


@pytest.mark.parametrize("size", [NARROW, WIDE])
async def test_the_treatment(size: tuple[int, int], same_screen: Check) -> None:
    async with sitting(size=size) as pilot:
        screen = await open_treatment(pilot)
        same_screen(pilot, "treatment")
        screen.query_one(Treated).go_to("planned:PS3")
        await press(pilot)
        same_screen(pilot, "treatment_plan")
        screen.query_one(Treated).go_to("step:I3")
        await press(pilot)
        same_screen(pilot, "treatment_steps")
        await press(pilot, "enter")
        same_screen(pilot, "treatment_step_full")
        await press(pilot, "escape", "a")
        same_screen(pilot, "treatments")


async def test_what_is_unfinished_comes_first_and_nothing_is_left_out() -> None:
    async with sitting(size=WIDE) as pilot:
        screen = await open_treatment(pilot)
        text = held(screen)
        assert text.lstrip().startswith("to be ratified")
        order = ("Examination", "Plan, version 2", "Plan, version 1", "Steps on record",
                 "Guidelines still ask of")  # fmt: skip
        assert [text.index(one) for one in order] == sorted(text.index(one) for one in order)
        for words in (
            "October 2026, which has passed",
            "presumed, not seen: The seat works",
            "what was seen is not recorded",
            "on conditions: Off again",
            "expires 31 December 2027",
            "● PS2 (support): done by I2",
            "○ PS3 (consolidate): no step on record.",
            "◆ PS4 (take apart): done otherwise by I3",
            "if begun today: Curator: no authorisation on record.",
            "written down 21 October 2026",
            "recorded over 12 at once",
            "done otherwise: One slab held.",
            "Started before authorisation by Bruno Castell: It rained in.",
            "layer: Applied: cyclododecane, facing at S07 (LS7e)",
        ):
            assert words in text, words


async def test_every_entry_can_be_read_in_full() -> None:
    async with sitting(size=WIDE) as pilot:
        screen = await open_treatment(pilot)
        treated = screen.query_one(Treated)
        for item in treated.items:
            if item.live:
                treated.go_to(item.key)
                assert treated.full[0] and treated.full[1]
        treated.go_to("step:I2")
        await press(pilot)
        shown = "\n".join(line.plain for one in screen.query_one(Facts).items for line in
                          one.draw(60))  # fmt: skip
        assert "batch BT2, lot CD-114" in shown and "19 October 2026, morning" in shown


async def test_from_an_object_a_list_and_back() -> None:
    async with sitting(mark="J14") as pilot:
        await press(pilot, "a")
        assert isinstance(pilot.app.screen, TreatmentsSheet)
        await press(pilot, "down", "enter")
        assert isinstance(pilot.app.screen, TreatmentScreen) and pilot.app.screen.ref == "T1934"
        assert "none beside examinations" in screen_text(pilot.app)
        await press(pilot, "a", "up", "enter")
        assert pilot.app.screen.ref == "T2026" and "treatment T2026 Move" in screen_text(pilot.app)
        await press(pilot, "a", "escape", "escape")
        assert isinstance(pilot.app.screen, ObjectScreen)


class Few(Canned):
    """An object with so many of its treatments on record."""

    def __init__(self, number: int) -> None:
        self.number = number

    def treatments(self, number: str) -> TreatmentsAnswer:
        answer = super().treatments(number)
        return replace(answer, rows=answer.rows[: self.number])


async def test_the_only_treatment_opens_at_once_and_none_is_said() -> None:
    async with sitting(Few(1), mark="") as pilot:
        await press(pilot, "a")
        assert isinstance(pilot.app.screen, TreatmentScreen)
    async with sitting(Few(0), mark="") as pilot:
        await press(pilot, "a")
        assert "no treatment of this object is on record" in screen_text(pilot.app)


async def test_from_the_start_to_a_treatment_and_to_its_object() -> None:
    async with sitting() as pilot:
        await press(pilot, "down", "enter")
        assert isinstance(pilot.app.screen, TreatmentScreen)
        await press(pilot, "p")
        assert isinstance(pilot.app.screen, ObjectScreen)
        await press(pilot, "escape", "escape")
        assert isinstance(pilot.app.screen, StartScreen)


async def test_from_a_database(tmp_path: Path) -> None:
    """What the question answers is what the screen shows."""
    database = Database(make_workshop(tmp_path))
    async with sitting(database, size=WIDE) as pilot:
        await press(pilot, "down", "enter")
        screen = pilot.app.screen
        assert isinstance(screen, TreatmentScreen)
        text = " ".join(held(screen).split())  # lines are wrapped for the screen
        assert "Started before authorisation by Ann Author: It could not wait." in text
        assert "● b1 (take apart): done by d1, 5 March 2026." in text
        await press(pilot, "a")
        assert isinstance(pilot.app.screen, TreatmentsSheet)


async def test_no_such_treatment_is_said() -> None:
    async with sitting() as pilot:
        await open_treatment(pilot, "T9")
        assert "no treatment of SQ.1902.7 'T9' on record. Esc goes back." in screen_text(pilot.app)
        await press(pilot, "f", "tab", "escape")
        assert isinstance(pilot.app.screen, StartScreen)


@pytest.mark.campaign
async def test_any_size_of_terminal_will_do() -> None:
    async with sitting() as pilot:
        await open_treatment(pilot)
        for width, height in ((30, 8), (300, 90), (1, 1), (116, 30)):
            await pilot.resize_terminal(width, height)
            await press(pilot, "tab", "down", "end", "tab", "a", "escape")
