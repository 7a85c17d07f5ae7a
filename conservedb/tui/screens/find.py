"""Finding from an object: the find line laid over it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.screen import ModalScreen

from conservedb.questions.answers import Hit
from conservedb.tui.asking import Asking
from conservedb.tui.text import plain
from conservedb.tui.widgets.find_panel import FindPanel

if TYPE_CHECKING:
    from conservedb.tui.reading import Reading


class FindSheet(Asking[Hit | None], ModalScreen[Hit | None]):
    """Finds anything; what belongs to the object behind it comes first. Answers with a hit."""

    CSS_PATH = "find.tcss"
    BINDINGS = [Binding("escape", "leave", show=False)]  # noqa: RUF012
    AUTO_FOCUS = "#find-line"

    def __init__(self, reading: Reading, nearest: str) -> None:
        super().__init__()
        self._reading, self._nearest = reading, nearest

    def compose(self) -> ComposeResult:
        """The panel of the start screen, framed."""
        with Vertical(id="find-sheet") as sheet:
            sheet.border_title = plain("Find")
            yield FindPanel(self._reading, self._nearest)

    @on(FindPanel.Opened)
    def _opened(self, event: FindPanel.Opened) -> None:
        self.dismiss(event.hit)

    def action_leave(self) -> None:
        """Back to the object as it was."""
        self.dismiss(None)

    def refuse(self, sentence: str) -> None:
        """Show why there is no answer."""
        self.query_one(FindPanel).show_problem(sentence)
