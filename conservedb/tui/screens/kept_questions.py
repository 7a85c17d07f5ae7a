"""Choosing one of the questions that are kept."""

from __future__ import annotations

from typing import NamedTuple

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.content import Content
from textual.screen import ModalScreen

from conservedb.questions.research_saved import SavedQuestion
from conservedb.tui.text import QUIET, STRONG, plain, two_ends
from conservedb.tui.widgets.lines import Drawer, Item, Lines

HEIGHT = 3


class Choice(NamedTuple):
    """A question, and whether it is to be withdrawn instead of asked."""

    kept: SavedQuestion
    withdraw: bool


class KeptSheet(ModalScreen[Choice | None]):
    """The questions, each told in words; answers with one of them."""

    CSS_PATH = "kept_questions.tcss"
    BINDINGS = [  # noqa: RUF012
        Binding("escape,l", "leave", show=False),
        Binding("delete", "withdraw", show=False),
    ]
    AUTO_FOCUS = "#kept"

    def __init__(self, kept: tuple[SavedQuestion, ...]) -> None:
        super().__init__()
        self._kept = {one.name: one for one in kept}

    def compose(self) -> ComposeResult:
        """A framed list."""
        with Vertical(id="kept-sheet", classes="chosen-from") as sheet:
            sheet.border_title = plain("Questions that are kept")
            sheet.border_subtitle = plain("Enter asks it again, Del withdraws it, Esc leaves")
            yield Lines("kept")

    def on_mount(self) -> None:
        """List them."""
        items = [Item(name, _drawer(one), HEIGHT) for name, one in self._kept.items()]
        self.query_one(Lines).show_items(items)

    @on(Lines.Chosen, "#kept")
    def _chosen(self, event: Lines.Chosen) -> None:
        event.stop()
        self.dismiss(Choice(self._kept[event.key], withdraw=False))

    def action_withdraw(self) -> None:
        """The one under the cursor is to go."""
        current = self.query_one(Lines).current
        if current is not None:
            self.dismiss(Choice(self._kept[current.key], withdraw=True))

    def action_leave(self) -> None:
        """Choose none."""
        self.dismiss(None)


def _drawer(kept: SavedQuestion) -> Drawer:
    def draw(width: int) -> tuple[Content, ...]:
        by = ", ".join(one for one in (kept.person, kept.saved.said) if one)
        told = plain(kept.description or f"{kept.question} (can no longer be read)", QUIET)
        lines = told.wrap(max(width - 2, 1))
        shown = [plain("  ").append(line) for line in lines[: HEIGHT - 1]]
        if len(lines) >= HEIGHT:
            shown[-1] = shown[-1].append(" …")
        return (two_ends(plain(kept.name, STRONG), plain(by, QUIET), width), *shown)

    return draw
