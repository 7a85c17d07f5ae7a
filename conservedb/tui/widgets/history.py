"""The history of what is selected: one entry an event, later ones than the asked day quiet."""

from __future__ import annotations

from collections.abc import Sequence

from textual.content import Content

from conservedb.questions.answers import AsOf, HistoryAnswer, HistoryRow
from conservedb.questions.wording import hands
from conservedb.tui import wording
from conservedb.tui.text import ACCENT, QUIET, STRONG, UNSURE, joined, plain, styled
from conservedb.tui.widgets.lines import Drawer, Item, Lines, line_item


class History(Lines):
    """Dated events in order of time, with a line drawn at the asked day."""

    def __init__(self) -> None:
        super().__init__("history")
        self.rows: Sequence[HistoryRow] = ()

    def show_history(self, answer: HistoryAnswer, on: AsOf, *, is_today: bool) -> None:
        """Show the events; those certainly after `on` are quiet, below a line for that day."""
        self.rows = answer.rows
        after = [row.date.recorded and row.date.earliest > on.last for row in answer.rows]
        items = [
            Item(str(index), _drawer(row, later=later), 2)
            for index, (row, later) in enumerate(zip(answer.rows, after, strict=True))
        ]
        by_then = after.index(True) if True in after else len(items)
        if not items:
            words = styled("nothing is on record here", QUIET)
            items = [line_item("none", words)]
        elif not is_today:
            items.insert(by_then, _day_line(wording.as_of_words(on)))
        self.show_items(items, str(max(by_then - 1, 0)))

    def row_of(self, key: str) -> HistoryRow | None:
        """The event behind an entry."""
        return self.rows[int(key)] if key.isdigit() and int(key) < len(self.rows) else None


def _day_line(words: str) -> Item:
    def draw(width: int) -> tuple[Content]:
        label = plain(f"─ {words} ", ACCENT)
        return (joined((label, styled("─" * max(width - label.cell_length, 0), ACCENT))),)

    return Item("day", draw, live=False)


def _drawer(row: HistoryRow, *, later: bool) -> Drawer:
    def draw(width: int) -> tuple[Content, Content]:
        date = plain(row.date.said, QUIET if later else STRONG)
        by = plain(hands(row.people), QUIET)
        doubt = plain("papers disagree" if row.rivals else "", UNSURE)
        mended = plain("amended" if row.amended else "", QUIET)
        sentence = plain(row.sentence, QUIET if later else "")
        paper = plain(row.source.ref if row.source else "", QUIET)
        return (
            joined((date, by, doubt, mended), "  ").truncate(width, ellipsis=True),
            joined((Content(" "), sentence, paper), " ").truncate(width, ellipsis=True),
        )

    return draw
