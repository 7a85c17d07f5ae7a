"""A menu of what can be recorded: one letter each."""

from __future__ import annotations

from collections.abc import Sequence

from textual.app import ComposeResult
from textual.containers import Vertical
from textual.content import Content
from textual.events import Click, Key, Paste
from textual.screen import ModalScreen
from textual.widgets import Static

from conservedb.tui.about import Kind
from conservedb.tui.in_order import Typed
from conservedb.tui.text import STRONG, joined, plain
from conservedb.tui.widgets.lines import MARKER

COLUMN = 29


class MenuSheet(Typed[str | None], ModalScreen[str | None]):
    """Answers with the name of a kind, or None."""

    CSS_PATH = "menu.tcss"
    AUTO_FOCUS = ""

    def __init__(self, title: str, kinds: Sequence[Kind]) -> None:
        super().__init__()
        self._title, self._kinds, self._at = title, kinds, 0

    def compose(self) -> ComposeResult:
        """A frame with two columns."""
        with Vertical(id="menu-sheet") as sheet:
            sheet.border_title = plain(self._title)
            sheet.border_subtitle = plain("a letter, or the arrows and Enter; Esc goes back")
            yield Static(id="menu")

    def on_mount(self) -> None:
        """Show them."""
        self._show()
        self.begin()

    async def take(self, event: Key | Paste) -> None:
        """A letter chooses; arrows move."""
        if isinstance(event, Paste):
            return
        kinds, half = self._kinds, self._half
        moves = {"down": 1, "up": -1, "right": half, "left": -half}
        chosen = next((k for k in kinds if k.letter == (event.character or "")), None)
        if event.key == "escape":
            self.answer(None)
        elif event.key == "ctrl+q":
            self.app.exit()
        elif event.key == "enter":
            self.answer(kinds[self._at].name)
        elif event.key in moves:
            if 0 <= self._at + moves[event.key] < len(kinds):
                self._at += moves[event.key]
            self._show()
        elif chosen is not None and chosen.letter:
            self.answer(chosen.name)

    def on_click(self, event: Click) -> None:
        """A click chooses."""
        menu = self.query_one("#menu", Static)
        at = event.get_content_offset(menu)
        if at is not None and at.y < self._half:
            index = at.y + self._half * (at.x // COLUMN)
            if index < len(self._kinds):
                self.answer(self._kinds[index].name)

    def refuse(self, sentence: str) -> None:
        """Nothing is asked here."""

    @property
    def _half(self) -> int:
        return (len(self._kinds) + 1) // 2

    def _show(self) -> None:
        half = self._half
        lines = []
        for index in range(half):
            line = self._entry(index)
            if index + half < len(self._kinds):
                padded = line.pad_right(max(COLUMN - line.cell_length, 0))
                line = joined((padded, self._entry(index + half)), "")
            lines.append(line)
        self.query_one("#menu", Static).update(joined(lines, "\n"))

    def _entry(self, index: int) -> Content:
        kind, here = self._kinds[index], index == self._at
        mark = plain(f"{MARKER} " if here else "  ", "$marked")
        return joined((mark, plain(f"{kind.letter}  ", STRONG), plain(kind.label)), "")
