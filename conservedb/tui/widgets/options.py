"""The list of a removal plan: ranked options in groups, and what stands above and below them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual.events import Resize

from conservedb.tui.plan_rows import Rows, first_entry, plan_rows
from conservedb.tui.text import prose
from conservedb.tui.widgets.lines import Lines, line_item

if TYPE_CHECKING:
    from conservedb.knowledge.plan import Option
    from conservedb.questions.removal_answers import RemovalAnswer
    from conservedb.tui.plan_facts import Blocks


class Options(Lines):
    """Every entry can be read in full; those of options say what they would do."""

    def __init__(self) -> None:
        super().__init__("options")
        self._answer: RemovalAnswer | None = None
        self._rows = Rows(0)

    def show_plan(self, answer: RemovalAnswer) -> None:
        """Show another plan, from its best option."""
        before = self.current.key if self.current else ""
        self._answer = answer
        self._rows = plan_rows(answer, self._width)
        kept = before in self._rows.options
        self.show_items(self._rows.items, before if kept else first_entry(self._rows, answer.plan))
        if not kept:
            self.scroll_to(y=0, animate=False)

    def show_trouble(self, sentence: str) -> None:
        """Say why there is nothing to show."""
        lines = prose(sentence).wrap(max(self.room - 2, 12))
        self.show_items([line_item("trouble", *lines)])

    def on_resize(self, event: Resize) -> None:
        """Entries are composed for a width: do it again for another."""
        super().on_resize(event)
        if self._answer is not None and self._width != self._rows.width:
            self._rows = plan_rows(self._answer, self._width)
            self.show_items(self._rows.items)

    @property
    def option(self) -> Option | None:
        """The option under the cursor."""
        return self._rows.options.get(self.current.key if self.current else "")

    @property
    def full(self) -> tuple[str, Blocks]:
        """Title and full text of the entry under the cursor."""
        key = self.current.key if self.current else ""
        return self._rows.full.get(key, ("", ()))

    @property
    def _width(self) -> int:
        """Cells for an entry, beside the cursor and a scroll bar that may yet come."""
        return max(self.room - 3, 1)
