"""One line to agree to before something is recorded."""

from __future__ import annotations

from collections.abc import Sequence

from textual.app import ComposeResult
from textual.containers import Vertical
from textual.content import Content
from textual.events import Key, Paste
from textual.screen import ModalScreen
from textual.widgets import Static

from conservedb.tui.in_order import Typed
from conservedb.tui.text import joined, plain


class ConfirmSheet(Typed[bool | None], ModalScreen[bool | None]):
    """y or Enter agrees; anything else does not."""

    CSS_PATH = "menu.tcss"
    AUTO_FOCUS = ""

    def __init__(self, title: str, lines: Sequence[Content]) -> None:
        super().__init__()
        self._title, self._lines = title, lines

    def compose(self) -> ComposeResult:
        """The line in a frame."""
        with Vertical(id="confirm-sheet") as sheet:
            sheet.border_title = plain(self._title)
            sheet.border_subtitle = plain("y or Enter records it; any other key does not")
            yield Static(joined(self._lines, "\n"))

    def on_mount(self) -> None:
        """Wait for the key."""
        self.begin()

    async def take(self, event: Key | Paste) -> None:
        """One key decides."""
        if isinstance(event, Key):
            self.answer(True if event.key in ("y", "enter") else None)

    def refuse(self, sentence: str) -> None:
        """Nothing is asked here."""
