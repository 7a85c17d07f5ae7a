"""What answers a question on one of two days only, or more surely on one of them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.content import Content
from textual.screen import ModalScreen

from conservedb.knowledge.research_told import describe
from conservedb.questions.research_answers import ResearchRow
from conservedb.questions.research_compared import Changed, Compared
from conservedb.tui.answer_columns import fitted, row_line
from conservedb.tui.text import QUIET, STRONG, joined, plain
from conservedb.tui.widgets.lines import Drawer, Item, Lines, line_item
from conservedb.tui.wording import as_of_words

MOST = 1000
"""Rows that are listed of each group; who wants more can ask more narrowly."""


class ComparedSheet(ModalScreen[ResearchRow | None]):
    """The counts of both days, and what came and what went; answers with a row to open."""

    CSS_PATH = "kept_questions.tcss"
    BINDINGS = [Binding("escape", "leave", show=False)]  # noqa: RUF012
    AUTO_FOCUS = "#compared"

    def __init__(self, answer: Compared) -> None:
        super().__init__()
        self._answer = answer
        self._rows: dict[str, ResearchRow] = {}

    def compose(self) -> ComposeResult:
        """A framed list."""
        with Vertical(id="compared-sheet", classes="chosen-from") as sheet:
            sheet.border_title = plain("Two days compared")
            sheet.border_subtitle = plain("Enter opens a row, Esc leaves")
            yield Lines("compared")

    def on_mount(self) -> None:
        """List them."""
        self.query_one(Lines).show_items([*self._items()])

    @on(Lines.Chosen, "#compared")
    def _chosen(self, event: Lines.Chosen) -> None:
        event.stop()
        self.dismiss(self._rows[event.key])

    def action_leave(self) -> None:
        """Open none."""
        self.dismiss(None)

    def _items(self) -> Iterator[Item]:
        answer = self._answer
        yield line_item("asked", plain(describe(answer.asked), QUIET))
        yield line_item("added", plain(answer.added, QUIET))
        only = (answer.only_first, answer.only_second)
        for index, (day, counts, rows) in enumerate(
            zip(answer.days, answer.counts, only, strict=True)
        ):
            head = joined((plain(as_of_words(day), STRONG), plain(counts.sentence)), "  ")
            said = f"only then: {len(rows):,}" if rows else "nothing answered only then"
            yield line_item(f"day {index}", Content(""), head, plain(said, QUIET))
            yield from self._listed(f"{index}", rows)
        for name, changed in (("surer", answer.surer), ("less sure", answer.less_sure)):
            yield from self._changed(f"{name} on the second day", changed)

    def _changed(self, name: str, changed: Sequence[Changed]) -> Iterator[Item]:
        """What answers on both days, apart by how sure it was and is."""
        if changed:
            head = joined((plain(name, STRONG), plain(f"{len(changed):,}")), "  ")
            yield line_item(name, Content(""), head)
        for words in dict.fromkeys((before, row.sureness) for before, row in changed):
            rows = [row for before, row in changed if (before, row.sureness) == words]
            said = f"{', then '.join(words)}: {len(rows):,}"
            yield line_item(said, plain(said, QUIET))
            yield from self._listed(said, rows)

    def _listed(self, group: str, rows: Sequence[ResearchRow]) -> Iterator[Item]:
        for number, row in enumerate(rows[:MOST]):
            key = f"{group}:{number}"
            self._rows[key] = row
            yield Item(key, _drawer(row, self._answer.research.rows))
        if len(rows) > MOST:
            more = f"and {len(rows) - MOST:,} more, which are not listed"
            yield line_item(f"more {group}", plain(more, QUIET))


def _drawer(row: ResearchRow, rows: str) -> Drawer:
    return lambda width: (row_line(fitted(rows, width, "date"), row),)
