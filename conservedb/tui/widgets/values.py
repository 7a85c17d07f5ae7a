"""The list of all that is on record about a material."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual.events import Resize

from conservedb.tui.material_rows import Rows, material_rows
from conservedb.tui.text import prose
from conservedb.tui.widgets.lines import Lines, line_item

if TYPE_CHECKING:
    from conservedb.questions.material_answers import MaterialAnswer
    from conservedb.tui.details import Fact


class Values(Lines):
    """Values in groups; the one under the cursor can be read in full."""

    def __init__(self) -> None:
        super().__init__("values")
        self._answer: MaterialAnswer | None = None
        self._rows = Rows(0)

    def show_material(self, answer: MaterialAnswer) -> None:
        """Show another material."""
        self._answer = answer
        self._compose_rows()

    def show_trouble(self, sentence: str) -> None:
        """Say why there is nothing to show."""
        lines = prose(sentence).wrap(max(self.room - 2, 12))
        self.show_items([line_item("trouble", *lines)])

    def on_resize(self, event: Resize) -> None:
        """Entries are composed for a width: do it again for another."""
        super().on_resize(event)
        if self._width != self._rows.width:
            self._compose_rows()

    @property
    def _width(self) -> int:
        """Cells for an entry, beside the cursor and a scroll bar that may yet come."""
        return max(self.room - 3, 1)

    @property
    def full(self) -> tuple[str, tuple[Fact, ...]]:
        """Title and facts of the entry under the cursor."""
        key = self.current.key if self.current else ""
        return self._rows.full.get(key, ("", ()))

    def leads_to(self, key: str) -> str:
        """The key of the material or class to which an entry leads, "" if to none."""
        return self._rows.leads.get(key, "")

    def _compose_rows(self) -> None:
        if self._answer is None or not self.room:
            return
        self._rows = material_rows(self._answer, self._width)
        self.show_items(self._rows.items)
