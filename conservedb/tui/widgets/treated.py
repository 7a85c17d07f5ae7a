"""The list of all that is on record about a treatment."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual.events import Resize

from conservedb.tui.plan_rows import Rows
from conservedb.tui.text import prose
from conservedb.tui.treatment_rows import treatment_rows
from conservedb.tui.widgets.lines import Lines, line_item

if TYPE_CHECKING:
    from conservedb.questions.treatment_answers import TreatmentAnswer
    from conservedb.tui.plan_facts import Blocks


class Treated(Lines):
    """Entries in groups; each can be read in full."""

    def __init__(self) -> None:
        super().__init__("treated")
        self._answer: TreatmentAnswer | None = None
        self._rows = Rows(0)

    def show_treatment(self, answer: TreatmentAnswer) -> None:
        """Show another treatment, or the same one again."""
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
    def full(self) -> tuple[str, Blocks]:
        """Title and full text of the entry under the cursor."""
        return self._rows.full.get(self.current.key if self.current else "", ("", ()))

    @property
    def _width(self) -> int:
        """Cells for an entry, beside the cursor and a scroll bar that may yet come."""
        return max(self.room - 3, 1)

    def _compose_rows(self) -> None:
        if self._answer is not None and self.room:
            self._rows = treatment_rows(self._answer, self._width)
            self.show_items(self._rows.items)
