"""Every action can be reached by its key, from the palette, by mouse and is told in the help."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable

import pytest
from textual.pilot import Pilot
from textual.screen import Screen

from conservedb.tui.action import FORM, Action
from conservedb.tui.actions import ACTIONS, actions_of, key_line, motions_of
from conservedb.tui.app import ConservedbApp
from conservedb.tui.palette import ActionProvider
from conservedb.tui.screens.form import FormScreen
from conservedb.tui.screens.material import MaterialScreen
from conservedb.tui.screens.object import ObjectScreen
from conservedb.tui.screens.removal import RemovalScreen
from conservedb.tui.screens.research import ResearchScreen
from conservedb.tui.screens.sheet import help_sheet
from conservedb.tui.screens.start import StartScreen
from conservedb.tui.screens.treatment import TreatmentScreen
from conservedb.tui.widgets.key_line import KeyLine
from conservedb.tui.widgets.lines import Lines
from tests.tui.canned import NUMBER
from tests.tui.conftest import press, screen_text, settle, sitting

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them

READING = (
    *(StartScreen, ObjectScreen, MaterialScreen, RemovalScreen, TreatmentScreen),
    ResearchScreen,
)
SCREENS = (*READING, FormScreen)
NAMES = [screen.NAME for screen in READING]


def owners(action: Action) -> tuple[type, ...]:
    """Whose method an action is."""
    here = tuple(screen for screen in SCREENS if screen.NAME in action.where)
    return here or (ConservedbApp,)


@pytest.mark.parametrize("where", [*NAMES, FORM])
def test_each_key_means_one_thing_on_a_screen(where: str) -> None:
    keys = Counter(key for action in actions_of(where) for key in action.keys)
    assert set(keys.values()) == {1}


def test_each_action_is_written() -> None:
    assert len({action.name for action in ACTIONS}) == len(ACTIONS)
    for action in ACTIONS:
        for owner in owners(action):
            assert callable(getattr(owner, f"action_{action.name}"))
        assert action.help.endswith(".") and action.title and action.label


@pytest.mark.parametrize("where", [*NAMES, FORM])
def test_the_key_line_is_short(where: str) -> None:
    line = key_line(where)
    assert 0 < len(line) <= 8
    assert sum(len(one.shown) + 1 + len(one.label) + 3 for one in line) <= 79


def recorder(calls: list[str], name: str) -> Callable[..., None]:
    def record(*_: object) -> None:
        calls.append(name)

    return record


@pytest.fixture
def calls(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Names of the actions run, in place of their effects."""
    run: list[str] = []
    for action in ACTIONS:
        for owner in owners(action):
            monkeypatch.setattr(owner, f"action_{action.name}", recorder(run, action.name))
    return run


@pytest.mark.parametrize("where", NAMES[1:])
async def test_every_key_of_a_screen(calls: list[str], where: str) -> None:
    async with sitting(mark="J14") as pilot:
        await go_to(pilot, where)
        for action in actions_of(where):
            for key in action.keys:
                calls.clear()
                await pilot.press(key)
                assert calls == [action.name], f"{key} should be {action.title}"


async def go_to(pilot: Pilot[None], where: str) -> None:
    """From the object to one of the screens beyond it, past the keys under test."""
    app = pilot.app
    assert isinstance(app, ConservedbApp)
    today = app.reading.as_of("")
    if where == MaterialScreen.NAME:
        await app.push_screen(MaterialScreen(app.reading, "b72", today))
    elif where == RemovalScreen.NAME:
        await app.push_screen(RemovalScreen(app.reading, NUMBER, "J14", "", today))
    elif where == TreatmentScreen.NAME:
        await app.push_screen(TreatmentScreen(app.reading, NUMBER, "T2026"))
    elif where == ResearchScreen.NAME:
        await app.push_screen(ResearchScreen(app.reading))
    await settle(pilot)


async def test_keys_that_work_in_a_line_of_text(calls: list[str]) -> None:
    async with sitting() as pilot:
        calls.clear()
        for key in ("f1", "ctrl+p", "escape", "ctrl+q"):
            await pilot.press(key)
        assert calls == ["help", "command_palette", "back", "quit"]


@pytest.mark.parametrize("where", NAMES[1:])
async def test_the_palette_offers_and_runs_every_action(calls: list[str], where: str) -> None:
    async with sitting(mark="J14") as pilot:
        await go_to(pilot, where)
        provider = ActionProvider(pilot.app.screen)
        offered = [hit async for hit in provider.discover()]
        assert len(offered) == len(actions_of(where))
        for action, hit in zip(actions_of(where), offered, strict=True):
            calls.clear()
            hit.command()
            await pilot.pause()
            assert calls == [action.name]
            found = [one.text async for one in provider.search(action.title)]
            assert any(action.title in (text or "") for text in found)


async def test_a_click_on_the_key_line_uses_the_key(calls: list[str]) -> None:
    async with sitting(mark="J14") as pilot:
        calls.clear()
        column = 1
        for action in key_line("object"):
            await pilot.click(KeyLine, offset=(column, 0))
            column += len(action.shown) + 1 + len(action.label) + 3
        assert calls == [action.name for action in key_line("object")]


@pytest.mark.parametrize("where", [*NAMES, FORM])
async def test_the_help_tells_every_action_and_motion(where: str) -> None:
    async with sitting(size=(120, 60)) as pilot:
        pilot.app.push_screen(help_sheet(where))
        await settle(pilot)
        told = written(pilot.app.screen)
        for action in actions_of(where):
            assert squeezed(f"{action.title}. {action.help}") in told
            assert squeezed(action.shown) in told
        for motion in motions_of(where):
            assert squeezed(motion.help) in told


def squeezed(text: str) -> str:
    return re.sub(r"\s+", "", text)


def written(screen: Screen[object]) -> str:
    items = screen.query_one(Lines).items
    return squeezed("".join(line.plain for item in items for line in item.draw(80)))


async def test_an_action_that_can_do_nothing_says_why() -> None:
    async with sitting(mark="J14") as pilot:
        await press(pilot, "t")
        assert "this is today" in screen_text(pilot.app)
        await press(pilot, "right_square_bracket")
        assert "this is today" in screen_text(pilot.app)
        for _ in range(6):
            await press(pilot, "left_square_bracket")
        assert "nothing on record is earlier" in screen_text(pilot.app)
