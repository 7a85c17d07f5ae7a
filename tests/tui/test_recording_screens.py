"""The screens of recording as they are kept: menu, step, removal, the same again, ticks."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from textual.pilot import Pilot

from tests.tui.at_the_desk import at_desk
from tests.tui.conftest import NARROW, WIDE
from tests.tui.forms import typed


@pytest.mark.parametrize("size", [NARROW, WIDE])
async def test_recording(
    demo: Path, same_screen: Callable[[Pilot[None], str], None], size: tuple[int, int]
) -> None:
    async with at_desk(demo, size=size) as pilot:
        await typed(pilot, "<space>", "<down>", "<space>")
        same_screen(pilot, "recording_ticked")
        await typed(pilot, "n")
        same_screen(pilot, "recording_menu")
        await typed(pilot, "s")
        same_screen(pilot, "recording_step")
        await typed(pilot, "<escape>")
        await typed(pilot, "<escape>", "y")
        same_screen(pilot, "recording_same")
        await typed(pilot, "<escape>")
        await typed(pilot, "n", "r")
        same_screen(pilot, "recording_removal")
