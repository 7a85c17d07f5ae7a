"""From an object to the material of a layer and to the plan for taking it off, and back."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest
from textual.pilot import Pilot

from conservedb.questions.answers import AsOf
from conservedb.questions.removal_answers import RemovalAnswer
from conservedb.tui.screens.material import MaterialScreen
from conservedb.tui.screens.object import ObjectScreen
from conservedb.tui.screens.removal import RemovalScreen
from conservedb.tui.widgets.build_up import BuildUp
from conservedb.tui.widgets.options import Options
from conservedb.tui.widgets.values import Values
from tests.tui.canned import NUMBER, Canned
from tests.tui.conftest import NARROW, WIDE, press, screen_text, sitting, type_in

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them

Check = Callable[[Pilot[None], str], None]
SIZES = pytest.mark.parametrize("size", [NARROW, WIDE])


async def open_material(pilot: Pilot[None], word: str = "b72") -> MaterialScreen:
    reading = Canned()
    screen = MaterialScreen(reading, word, reading.as_of(""))
    await pilot.app.push_screen(screen)
    await press(pilot)
    return screen


async def open_removal(pilot: Pilot[None], layer: str = "", mark: str = "J14") -> RemovalScreen:
    reading = Canned()
    screen = RemovalScreen(reading, NUMBER, mark, layer, reading.as_of(""))
    await pilot.app.push_screen(screen)
    await press(pilot)
    return screen


@SIZES
async def test_the_material(size: tuple[int, int], same_screen: Check) -> None:
    async with sitting(size=size) as pilot:
        screen = await open_material(pilot)
        same_screen(pilot, "material")
        screen.query_one(Values).go_to("value:glass transition:2")
        await press(pilot)
        same_screen(pilot, "material_values")
        await press(pilot, "enter")
        same_screen(pilot, "material_value_full")
        await press(pilot, "escape", "tab")
        same_screen(pilot, "material_places")


@SIZES
async def test_a_class(size: tuple[int, int], same_screen: Check) -> None:
    async with sitting(size=size) as pilot:
        await open_material(pilot, "resin")
        same_screen(pilot, "material_class")


@SIZES
async def test_the_removal(size: tuple[int, int], same_screen: Check) -> None:
    async with sitting(size=size) as pilot:
        await open_removal(pilot)
        same_screen(pilot, "removal")
        await press(pilot, "down", "down", "down")
        same_screen(pilot, "removal_other_option")
        await press(pilot, "enter")
        same_screen(pilot, "removal_reasons")
        await press(pilot, "escape", "end")
        same_screen(pilot, "removal_end")
        await press(pilot, "c")
        same_screen(pilot, "removal_layers")


@SIZES
async def test_steps_where_nobody_knows_what_it_is(
    size: tuple[int, int], same_screen: Check
) -> None:
    async with sitting(size=size) as pilot:
        await open_removal(pilot, "L14b")
        same_screen(pilot, "removal_unknown")


async def test_what_is_remembered_always_says_so() -> None:
    async with sitting() as pilot:
        screen = await open_material(pilot)
        items = screen.query_one(Values).items
        held = "\n".join(line.plain for item in items for line in item.draw(60))
        assert held.count("from memory, not confirmed") == 5  # each of them, in the narrowest too


async def test_conflicting_values_stand_on_one_scale() -> None:
    async with sitting(size=WIDE) as pilot:
        screen = await open_material(pilot)
        screen.query_one(Values).go_to("value:glass transition:0")
        await press(pilot)
        text = screen_text(pilot.app)
        assert "glass transition  ! sources differ" in text
        assert re.search(r" 40 C +······●···· ", text)  # 40 lies between 15 and 55
        assert re.search(r" 15 to 25 C +├─┤········ ", text)
        assert re.search(r" 55 C +··········●", text)


async def test_enter_leads_from_names_and_places() -> None:
    async with sitting() as pilot:
        screen = await open_material(pilot)
        values = screen.query_one(Values)
        leading = next(item.key for item in values.items if values.leads_to(item.key) == "acetone")
        values.go_to(leading)
        await press(pilot, "enter")
        assert isinstance(pilot.app.screen, MaterialScreen)
        assert pilot.app.screen.word == "acetone"
        await press(pilot, "escape", "tab", "enter")
        assert isinstance(pilot.app.screen, ObjectScreen)
        assert pilot.app.screen.number == NUMBER
        assert "J14  joint" in screen_text(pilot.app)
        await press(pilot, "escape")
        assert pilot.app.screen is screen


async def test_a_found_material_opens_its_screen() -> None:
    async with sitting() as pilot:
        await type_in(pilot, "acrylic")
        await press(pilot, "enter")
        assert isinstance(pilot.app.screen, MaterialScreen)
        assert "acrylic resin B-72" in screen_text(pilot.app)
    async with sitting(mark="J14") as pilot:
        await press(pilot, "slash")
        await type_in(pilot, "acrylic")
        await press(pilot, "enter")
        assert isinstance(pilot.app.screen, MaterialScreen)
        await press(pilot, "escape")
        assert isinstance(pilot.app.screen, ObjectScreen)


async def test_from_a_layer_to_its_plan_and_to_its_material() -> None:
    async with sitting(mark="J14") as pilot:
        await press(pilot, "tab", "down", "down", "o")
        screen = pilot.app.screen
        assert isinstance(screen, RemovalScreen) and screen.ref == "L14b"
        await press(pilot, "escape", "m")  # no such material in this reading: it says so
        assert isinstance(pilot.app.screen, MaterialScreen)
        assert "no material or class 'shellac' on record. Esc goes back." in screen_text(pilot.app)


async def test_a_day_in_the_past_goes_along() -> None:
    async with sitting(mark="J14") as pilot:
        await press(pilot, "left_square_bracket", "o")
        assert "as of 9 May 2012" in screen_text(pilot.app)
        await press(pilot, "down", "down", "down", "m")  # acetone
        assert isinstance(pilot.app.screen, MaterialScreen)
        assert "as of 9 May 2012" in screen_text(pilot.app)


async def test_without_a_location_there_is_no_plan() -> None:
    async with sitting(mark="") as pilot:
        await press(pilot, "o")
        assert isinstance(pilot.app.screen, ObjectScreen)
        assert "choose a location first" in screen_text(pilot.app)


async def test_no_layer_to_take_off_is_said() -> None:
    async with sitting() as pilot:
        await open_removal(pilot, mark="S02")
        assert "no layer to take off at 'S02' on record. Esc goes back." in screen_text(pilot.app)
        await press(pilot, "c", "plus", "minus", "i", "f", "m", "tab", "escape")
        assert "Open treatments" in screen_text(pilot.app)


def effects(pilot: Pilot[None]) -> dict[str, str]:
    """Band -> what the drawing says beside it."""
    items = pilot.app.screen.query_one(BuildUp).items
    bands = [item for item in items if item.key.startswith(("target:", "band:"))]
    return {item.key.split(":")[2]: item.draw(0)[0].plain for item in bands}


async def test_the_drawing_follows_the_cursor() -> None:
    async with sitting(size=WIDE) as pilot:
        await open_removal(pilot)
        drawn = effects(pilot)
        # Release is through the barrier: the first reading is the barrier's, not the epoxy's.
        assert drawn["L14g"].endswith("● dissolves") and drawn["L14g"].startswith("▷")
        assert drawn["L14e"].endswith("◇ swells") and drawn["L14e"].startswith("▶")
        assert drawn["L14b"].endswith("○ no effect when tested")
        assert drawn["LS2a"].endswith("? cannot tell")
        assert drawn["B12 dolphin, right oolitic limestone"].endswith("not judged")
        await press(pilot, "end", "home", *["down"] * 4)
        drawn = effects(pilot)
        assert drawn["L14b"].endswith("✖ attacked")
        assert drawn["L14a"].endswith("? tested but for less")
        await press(pilot, "up", "up", "up", "down")  # by hand
        assert effects(pilot)["L14e"].endswith("? cannot tell")
        assert effects(pilot)["L14g"].endswith("not judged")


async def test_the_hazard_band_moves_by_one_and_says_where_it_ends() -> None:
    async with sitting() as pilot:
        screen = await open_removal(pilot)
        assert screen.band == "C"
        await press(pilot, "minus")
        assert screen.band == "B" and "hazard bands A to B" in screen_text(pilot.app)
        assert "xylenes," not in screen_text(pilot.app)
        await press(pilot, "plus", "plus", "plus")
        assert screen.band == "D" and "band D, the worst" in screen_text(pilot.app)
        await press(pilot, "minus", "minus", "minus", "minus")
        assert screen.band == "A" and "only band A" in screen_text(pilot.app)


async def test_another_layer_is_chosen_from_a_list() -> None:
    async with sitting() as pilot:
        screen = await open_removal(pilot)
        await press(pilot, "c", "home", "enter")
        assert screen.ref == "L14b" and "unidentified layer" in screen_text(pilot.app)
        await press(pilot, "c", "escape")
        assert pilot.app.screen is screen and screen.ref == "L14b"


async def test_every_line_of_the_plan_can_be_reached() -> None:
    async with sitting() as pilot:
        screen = await open_removal(pilot)
        options = screen.query_one(Options)
        await press(pilot, "end")
        assert options.current is options.items[-1]
        assert "no leave to go" in screen_text(pilot.app)


class Slow(Canned):
    """Answers about band D never matter: a newer question has been asked."""

    def __init__(self) -> None:
        self.asked: list[str] = []

    def removal(self, number: str, mark: str, layer: str, on: AsOf, band: str) -> RemovalAnswer:
        self.asked.append(band)
        return super().removal(number, mark, layer, on, band)


async def test_a_key_before_the_answer_asks_nothing() -> None:
    reading = Slow()
    async with sitting(reading) as pilot:
        screen = RemovalScreen(reading, NUMBER, "J14", "", reading.as_of(""))
        await pilot.app.push_screen(screen)
        await press(pilot, "plus")
        assert set(reading.asked) <= {"", "D"}


@pytest.mark.campaign
async def test_any_size_of_terminal_will_do() -> None:
    async with sitting() as pilot:
        for open_screen in (open_material, open_removal):
            await open_screen(pilot)
            for width, height in ((30, 8), (300, 90), (1, 1), (116, 30)):
                await pilot.resize_terminal(width, height)
                await press(pilot, "tab", "down", "end", "tab")
