"""The screens of recording as they are kept: menu, step, removal, the same again, ticks."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from textual.pilot import Pilot

from conservedb.tui.widgets.parts import TICK
from tests.tui.at_the_desk import at_desk
from tests.tui.conftest import NARROW, WIDE, screen_text, settle
from tests.tui.forms import typed

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them


async def rested(pilot: Pilot[None]) -> None:
    """Until the cursor has rested long enough for its place to be asked for and shown."""
    for _ in range(2):
        await pilot.pause(0.1)
        await settle(pilot)


@pytest.mark.parametrize("size", [NARROW, WIDE])
async def test_recording(
    demo: Path, same_screen: Callable[[Pilot[None], str], None], size: tuple[int, int]
) -> None:
    async with at_desk(demo, size=size) as pilot:
        for key in ("<space>", "<down>", "<space>"):
            await typed(pilot, key)
            await rested(pilot)
        rows = [line for line in screen_text(pilot.app).splitlines() if TICK in line]
        assert len(rows) == 2, rows
        same_screen(pilot, "recording_ticked")
        await typed(pilot, "n")
        await rested(pilot)
        same_screen(pilot, "recording_menu")
        await typed(pilot, "s")
        await rested(pilot)
        same_screen(pilot, "recording_step")
        await typed(pilot, "<escape>")
        await typed(pilot, "<escape>", "y")
        assert "The same as last time" in screen_text(pilot.app)
        await typed(pilot, "<escape>")
        await typed(pilot, "n", "r")
        await rested(pilot)
        same_screen(pilot, "recording_removal")
