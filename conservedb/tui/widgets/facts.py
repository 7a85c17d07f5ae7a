"""Labelled facts in two columns, wrapped, without a cursor: it scrolls as a whole."""

from __future__ import annotations

from collections.abc import Sequence

from textual.content import Content
from textual.events import Resize

from conservedb.tui.details import Fact
from conservedb.tui.text import QUIET, STRONG, joined, plain, prose, styled
from conservedb.tui.widgets.lines import Lines, line_item

LABEL = 14
NARROWEST = 12


def fact_lines(facts: Sequence[Fact], width: int) -> list[Content]:
    """The facts as lines of `width` cells; facts without a value are left out."""
    room = max(width - LABEL - 1, NARROWEST)
    lines: list[Content] = []
    for label, value in facts:
        if not value:
            continue
        head = plain(label, QUIET).truncate(LABEL, ellipsis=True)
        for line in prose(value, STRONG if label == "state" else "").wrap(room):
            lines.append(joined((head.pad_left(LABEL - head.cell_length), Content(" "), line)))
            head = styled("")
    return lines


class Facts(Lines):
    """Facts about one thing, or several blocks of facts."""

    def __init__(self, id: str) -> None:
        super().__init__(id, marked=False)
        self.blocks: Sequence[Sequence[Fact]] = ()

    def show_facts(self, *blocks: Sequence[Fact]) -> None:
        """Show other facts, from their top."""
        self.blocks = blocks
        self._wrap()
        self.scroll_to(y=0, animate=False)

    def on_resize(self, event: Resize) -> None:
        """Wrap for the new width."""
        super().on_resize(event)
        self._wrap()

    def _wrap(self) -> None:
        lines: list[Content] = []
        for block in self.blocks:
            lines += [Content("")] if lines else []
            lines += fact_lines(block, self.room - 1)
        self.show_items([line_item(str(index), line) for index, line in enumerate(lines)])
        self.refresh(layout=True)
