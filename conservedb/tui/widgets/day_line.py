"""The line in which a day is typed; it takes the place of the time rule while it is used."""

from __future__ import annotations

from textual import on
from textual.app import ComposeResult
from textual.containers import Horizontal
from textual.events import Key
from textual.message import Message
from textual.widgets import Input, Static

from conservedb.tui.text import plain, styled
from conservedb.tui.widgets.line import Line

HINT = "any date: 14 June 1950, 1934-06, 193X, c. 1890. Enter goes there, Esc leaves"


class DayLine(Horizontal):
    """Takes any date, in words or EDTF."""

    class Wanted(Message):
        """Show this day."""

        def __init__(self, words: str) -> None:
            super().__init__()
            self.words = words

    class Left(Message):
        """Stay where we are."""

    def __init__(self) -> None:
        super().__init__(id="day-line")

    def compose(self) -> ComposeResult:
        """A label, the line, a hint."""
        yield Static(styled("as of", "bold $marked"), id="day-label")
        yield Line(id="day-input")
        yield Static(id="day-hint")

    def begin(self) -> None:
        """Empty the line and type."""
        line = self.query_one(Input)
        line.value = ""
        self._hint(HINT)
        self.screen.set_focus(line)

    def refuse(self, sentence: str) -> None:
        """Say why those words are no day; they stay, to be mended."""
        self.query_one("#day-hint", Static).update(plain(sentence, "$hazard"))
        self.screen.set_focus(self.query_one(Input))

    def _hint(self, words: str) -> None:
        self.query_one("#day-hint", Static).update(plain(words, "$quiet"))

    @on(Input.Submitted)
    def _submitted(self, event: Input.Submitted) -> None:
        event.stop()
        self.post_message(self.Wanted(event.value))

    @on(Input.Changed)
    def _changed(self, event: Input.Changed) -> None:
        event.stop()
        self._hint(HINT)

    def on_key(self, event: Key) -> None:
        """Esc leaves the line."""
        if event.key == "escape":
            event.stop()
            self.post_message(self.Left())
