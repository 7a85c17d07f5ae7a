"""What a save says: in the line at the foot, on the key h, and where the rules object."""

from __future__ import annotations

from pathlib import Path

import pytest

from conservedb.tui.recording import Finding, Outcome
from conservedb.tui.screens.entry_sheet import EntrySheet
from conservedb.tui.screens.recording_here import _said_briefly
from tests.tui.at_the_desk import at_desk
from tests.tui.conftest import NARROW, screen_text
from tests.tui.form_recorder import Fake
from tests.tui.forms import at_form, form_of, row_of, typed
from tests.tui.test_form_saving import NOTE


@pytest.mark.parametrize(
    ("outcome", "room", "line"),
    [
        (Outcome("saved: O1; change set 2"), 78, "saved: O1; change set 2"),
        (
            Outcome("saved: O1", notices=("a", "b", "c")),
            78,
            "saved: O1; 3 things to know: h",
        ),
        (Outcome("saved: O1", notices=("a",)), 78, "saved: O1; 1 thing to know: h"),
        (Outcome("saved: a long story", notices=("a",)), 33, "saved: a lon…; 1 thing to know: h"),
    ],
)
def test_that_there_is_more_to_know_is_never_cut_off(
    outcome: Outcome, room: int, line: str
) -> None:
    assert _said_briefly(outcome, room) == line
    assert len(line) <= room


async def test_all_that_came_with_a_save_is_told_on_h(demo: Path) -> None:
    async with at_desk(demo, "J14") as pilot:
        await typed(pilot, "h")
        assert "nothing was saved from here yet" in screen_text(pilot.app)
        await typed(pilot, "n", "U")
        row_of(pilot, "keep").value = "Tom Aldous"
        row_of(pilot, "gone").value = "Leonie Strand"
        row_of(pilot, "reason").value = "same hand"
        await typed(pilot, "<ctrl+s>")
        screen = screen_text(pilot.app)
        assert "saved: Leonie Strand is Tom Aldous; change set 2; " in screen
        assert "to know: h" in screen
        await typed(pilot, "h")
        screen = screen_text(pilot.app)
        assert "What the last save said" in screen
        assert "saved saved" not in screen
        assert "to know 1" in screen
        assert "name Tom Aldous from now on" in " ".join(screen.replace("│", " ").split())


async def test_what_one_rule_says_stands_together_and_is_read_to_its_end(tmp_path: Path) -> None:
    many = [Finding("acid", "block", f"Acid at J{n}: it dissolves lime.") for n in range(20)]
    judged = (Finding("test", "warn", "No test on record."), *many)
    fake = Fake(outcomes=[Outcome(judged=judged)])
    async with at_form(fake, tmp_path, NOTE, size=NARROW) as pilot:
        await typed(pilot, "a", "<ctrl+s>")
        screen = screen_text(pilot.app)
        assert screen.count("rule acid") == 1
        assert "20 times, one reason for all" in screen
        assert "J19" not in screen
        await typed(pilot, *("<pagedown>",) * 4)
        assert "J19" in screen_text(pilot.app)
        assert "rule test" in screen_text(pilot.app)
        await typed(pilot, "known", "<enter>")
        assert isinstance(pilot.app.screen, EntrySheet)
        await typed(pilot, "<escape>")
        assert "not saved: the rules object" in screen_text(pilot.app)
        assert form_of(pilot).form == NOTE
