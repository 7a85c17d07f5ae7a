"""A list composed of one answer for the width that there is, each entry to be read in full."""

from __future__ import annotations

from typing import Any, Generic, Protocol, TypeVar

from textual.events import Resize

from conservedb.tui.text import prose
from conservedb.tui.widgets.lines import Item, Lines, line_item


class Composed(Protocol):
    """Entries for a width; title and full text of each by its key."""

    width: int
    items: list[Item]
    full: dict[str, tuple[str, Any]]


Answer = TypeVar("Answer")
Rows = TypeVar("Rows", bound=Composed)


class Told(Lines, Generic[Answer, Rows]):
    """The list; a subclass says how an answer is composed."""

    def __init__(self, name: str) -> None:
        super().__init__(name)
        self.answer: Answer | None = None
        self.rows: Rows | None = None

    def compose_rows(self, answer: Answer, width: int) -> Rows:
        """The entries of an answer for so many cells."""
        raise NotImplementedError

    def show_answer(self, answer: Answer) -> None:
        """Show another answer, or the same one again."""
        self.answer = answer
        self.lay_out()

    def show_trouble(self, sentence: str) -> None:
        """Say why there is nothing to show."""
        lines = prose(sentence).wrap(max(self.room - 2, 12))
        self.show_items([line_item("trouble", *lines)])

    def on_resize(self, event: Resize) -> None:
        """Entries are composed for a width: do it again for another."""
        super().on_resize(event)
        if self.rows is None or self.entry_width != self.rows.width:
            self.lay_out()

    @property
    def full(self) -> tuple[str, Any]:
        """Title and full text of the entry under the cursor."""
        key = self.current.key if self.current else ""
        return self.rows.full.get(key, ("", ())) if self.rows else ("", ())

    @property
    def entry_width(self) -> int:
        """Cells for an entry, beside the cursor and a scroll bar that may yet come."""
        return max(self.room - 3, 1)

    def lay_out(self) -> None:
        """Compose the answer for the width that there is now."""
        if self.answer is not None and self.room:
            self.rows = self.compose_rows(self.answer, self.entry_width)
            self.show_items(self.rows.items)
