"""Every screen as plain text, at the size of a small terminal and of a large one."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from textual.pilot import Pilot

from tests.tui.conftest import NARROW, WIDE, press, sitting, type_in

Check = Callable[[Pilot[None], str], None]


@pytest.mark.parametrize("size", [NARROW, WIDE])
async def test_the_start(size: tuple[int, int], same_screen: Check) -> None:
    async with sitting(size=size) as pilot:
        same_screen(pilot, "start")
        await type_in(pilot, "dolphin")
        same_screen(pilot, "start_found")
        await type_in(pilot, "xx")
        same_screen(pilot, "start_nothing_found")
        await press(pilot, *["backspace"] * 9)
        await type_in(pilot, "dolfin")
        same_screen(pilot, "start_did_you_mean")


@pytest.mark.parametrize("size", [NARROW, WIDE])
async def test_a_joint_through_time(size: tuple[int, int], same_screen: Check) -> None:
    async with sitting(size=size, mark="J14") as pilot:
        same_screen(pilot, "joint")
        await press(pilot, "tab", "down", "down")
        same_screen(pilot, "joint_band")
        await press(pilot, "g")
        same_screen(pilot, "joint_gone")
        await pilot.press("d")
        await type_in(pilot, "14 June 1950")
        same_screen(pilot, "joint_typing")
        await press(pilot, "enter")
        same_screen(pilot, "joint_1950")


@pytest.mark.parametrize("size", [NARROW, WIDE])
async def test_other_selections(size: tuple[int, int], same_screen: Check) -> None:
    async with sitting(size=size, mark="") as pilot:
        same_screen(pilot, "object")
        await press(pilot, "e", "down", "down", "down")
        same_screen(pilot, "part")
    async with sitting(size=size, mark="S02") as pilot:
        same_screen(pilot, "surface")


async def test_sheets(same_screen: Check) -> None:
    async with sitting(mark="J14") as pilot:
        for key, name in (
            ("f1", "help"),
            ("l", "legend"),
            ("w", "warnings"),
            ("f", "full_text"),
            ("slash", "find"),
        ):
            await press(pilot, key)
            same_screen(pilot, name)
            await press(pilot, "escape")
        same_screen(pilot, "joint")
