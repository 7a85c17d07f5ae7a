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
from conservedb.tui.text import QUIET, STRONG, joined, plain
from conservedb.tui.widgets.lines import MARKER

COLUMN = 29


class MenuSheet(Typed[str | None], ModalScreen[str | None]):
    """Answers with the name of a kind, or None. `more` is a heading, and kinds below it."""

    CSS_PATH = "menu.tcss"
    AUTO_FOCUS = ""

    def __init__(self, title: str, kinds: Sequence[Kind], more: tuple[str, Sequence[Kind]]) -> None:
        super().__init__()
        heading, below = more
        self._title, self._at = title, kinds[0]
        upper, lower = _two_columns(kinds), _two_columns(below)
        self._rows: list[Sequence[Kind]] = [*upper, (), (), *lower]
        self._headings = {len(upper) + 1: f"  {heading}"}

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
        kinds = [kind for row in self._rows for kind in row]
        chosen = next((k for k in kinds if k.letter == (event.character or "")), None)
        if event.key == "escape":
            self.answer(None)
        elif event.key == "ctrl+q":
            self.app.exit()
        elif event.key == "enter":
            self.answer(self._at.name)
        elif event.key in ("down", "up", "left", "right"):
            self._move(event.key)
        elif chosen is not None and chosen.letter:
            self.answer(chosen.name)

    def on_click(self, event: Click) -> None:
        """A click chooses."""
        at = event.get_content_offset(self.query_one("#menu", Static))
        if at is not None and at.y < len(self._rows):
            row, column = self._rows[at.y], at.x // COLUMN
            if column < len(row):
                self.answer(row[column].name)

    def refuse(self, sentence: str) -> None:
        """Nothing is asked here."""

    def _move(self, key: str) -> None:
        """Along a row, or down one column and on at the head of the next, as lists are read."""
        row = next(row for row in self._rows if self._at in row)
        if key in ("left", "right"):
            self._at = row[min(key == "right", len(row) - 1)]
        else:
            columns = [[one[i] for one in self._rows if i < len(one)] for i in (0, 1)]
            listed = [*columns[0], *columns[1]]
            at = listed.index(self._at) + (1 if key == "down" else -1)
            self._at = listed[min(max(at, 0), len(listed) - 1)]
        self._show()

    def _show(self) -> None:
        lines = [
            joined(self._entry(kind) for kind in row)
            if row
            else plain(self._headings.get(index, " "), QUIET)
            for index, row in enumerate(self._rows)
        ]
        self.query_one("#menu", Static).update(joined(lines, "\n"))

    def _entry(self, kind: Kind) -> Content:
        mark = plain(f"{MARKER} " if kind is self._at else "  ", "$marked")
        entry = joined((mark, plain(f"{kind.letter}  ", STRONG), plain(kind.label)))
        return entry.pad_right(max(COLUMN - entry.cell_length, 0))


def _two_columns(kinds: Sequence[Kind]) -> list[Sequence[Kind]]:
    """Rows of two, so that each column reads downward."""
    half = (len(kinds) + 1) // 2
    return [kinds[index::half] for index in range(half)]
