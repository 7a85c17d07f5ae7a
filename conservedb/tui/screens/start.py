"""The start: find anything, and what needs attention."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual import on
from textual.app import ComposeResult
from textual.widgets import Static

from conservedb.tui.actions import bindings
from conservedb.tui.asking import Asking
from conservedb.tui.hits import no_screen, start_groups
from conservedb.tui.text import QUIET, STRONG, joined, plain, styled, two_ends
from conservedb.tui.widgets.find_panel import FindPanel
from conservedb.tui.widgets.key_line import KeyLine

if TYPE_CHECKING:
    from conservedb.questions.answers import StartAnswer
    from conservedb.tui.reading import Reading

WIDEST = 112  # as in the style sheet


class StartScreen(Asking[None]):
    """Painted before the database is opened; filled when the answers come."""

    NAME = "start"
    BINDINGS = bindings(NAME)
    AUTO_FOCUS = "#find-line"

    def __init__(self, reading: Reading) -> None:
        super().__init__()
        self.reading = reading
        self._counts = ""

    def compose(self) -> ComposeResult:
        """Name of the program and file, a sentence if something is wrong, the find line."""
        yield Static(id="masthead")
        yield Static(id="notice")
        yield FindPanel(self.reading)
        yield KeyLine(self.NAME)

    def on_mount(self) -> None:
        """Paint first, ask afterwards."""
        self._show_masthead()
        self.call_after_refresh(self.action_refresh)

    def on_resize(self) -> None:
        """The masthead is composed for a width."""
        self._show_masthead()

    def action_refresh(self) -> None:
        """Ask what needs attention."""
        self.ask("start", self.reading.start, self._show_start)

    def action_find(self) -> None:
        """Go to the line and begin anew."""
        self.query_one(FindPanel).clear()

    def action_back(self) -> None:
        """Forget what was typed, from wherever the cursor is."""
        panel = self.query_one(FindPanel)
        if not panel.words and panel.line.has_focus:
            self.tell("this is the start; Ctrl+Q leaves the program")
        panel.clear()

    def refuse(self, sentence: str) -> None:
        """Show why there is no answer, where the eye is."""
        self._notice(sentence)

    def tell(self, sentence: str) -> None:
        """Show a message for a while."""
        self.query_one(KeyLine).tell(sentence)

    @on(FindPanel.Opened)
    def _open(self, event: FindPanel.Opened) -> None:
        from conservedb.tui.screens.opening import screen_of

        screen = screen_of(self.reading, event.hit)
        if screen is None:
            self.tell(no_screen(event.hit))
        else:
            self.app.push_screen(screen)

    def _show_start(self, answer: StartAnswer) -> None:
        self._counts = ", ".join(f"{number} {what}" for what, number in answer.counts.items())
        self._notice("; ".join(self.reading.remarks()))
        self._show_masthead()
        self.query_one(FindPanel).show_before(start_groups(answer))

    def _notice(self, sentence: str) -> None:
        notice = self.query_one("#notice", Static)
        notice.display = bool(sentence)
        notice.update(plain(f"! {sentence}", "$hazard"))

    def _show_masthead(self) -> None:
        left = joined((styled("conservedb", STRONG), plain(self.reading.name)), "  ")
        room = max(min(self.size.width - 4, WIDEST), 1)
        counts = plain(self._counts, QUIET).truncate(
            max(room - left.cell_length - 2, 0), ellipsis=True
        )
        self.query_one("#masthead", Static).update(two_ends(left, counts, room))
