"""The form and its sheets, kept as text: a look that changes is looked at."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from textual.pilot import Pilot

from conservedb.tui.recording import Clash, Finding, Outcome
from tests.tui.conftest import NARROW, WIDE
from tests.tui.form_recorder import Fake
from tests.tui.forms import at_form, row_of, typed, until

pytestmark = pytest.mark.campaign

SIZES = pytest.mark.parametrize("size", [NARROW, WIDE])
Same = Callable[[Pilot[None], str], None]

JUDGED = Outcome(
    judged=(
        Finding(
            "water on gypsum",
            "block",
            "This step brings water onto gypsum plaster, which dissolves in it; the location has no"
            " barrier on record.",
        ),
        Finding("no test", "warn", "No test of acetone at this location is on record."),
        Finding("dwell", "inform", "The longest dwell on record here is 2 minutes."),
    )
)
CLASHED = Outcome(
    clashes=(
        Clash("concentration", "concentration", "", "5", "7", "W. Orde", "today, 14:05"),
        Clash("batch", "batch", "lot 6", "lot 7", "", "W. Orde", "today, 14:05"),
    )
)
FILLED = ("early 1930s", "<tab>", "xylol", "<tab>", "J14; J9", "<tab>", "five", "<tab>", "p")


@SIZES
async def test_a_form(tmp_path: Path, size: tuple[int, int], same_screen: Same) -> None:
    async with at_form(Fake(), tmp_path, size=size) as pilot:
        await typed(pilot, *FILLED)
        await until(pilot, lambda: bool(row_of(pilot, "places").problem))
        same_screen(pilot, "form")
        await typed(
            pilot, "<tab>", "<tab>", "<tab>", "<tab>", "one", "<enter>", "two", "<shift+tab>"
        )
        await typed(pilot, *("<up>",) * 5)
        await typed(pilot, "; J1", "<down>", "<down>")
        same_screen(pilot, "form_list")


async def test_the_rules_object(tmp_path: Path, same_screen: Same) -> None:
    async with at_form(Fake(outcomes=[JUDGED]), tmp_path) as pilot:
        await typed(pilot, "1950", "<ctrl+s>", "dry today", "<tab>", "<ctrl+s>")
        same_screen(pilot, "form_judged")


async def test_a_clash(tmp_path: Path, same_screen: Same) -> None:
    async with at_form(Fake(outcomes=[CLASHED]), tmp_path) as pilot:
        await typed(pilot, "1950", "<ctrl+s>", "t", "<tab>", "e")
        same_screen(pilot, "form_clash")
