"""The answer to a researcher's question: only the rows in view are ever fetched or drawn."""

from __future__ import annotations

from textual.binding import Binding
from textual.content import Content
from textual.events import Click, Resize
from textual.geometry import Size
from textual.message import Message
from textual.reactive import reactive
from textual.scroll_view import ScrollView
from textual.strip import Strip
from textual.visual import Visual

from conservedb.questions.research_answers import ResearchRow
from conservedb.tui.answer_columns import GAP, Column, fitted, headings, row_line
from conservedb.tui.researching import Asked
from conservedb.tui.text import ACCENT, QUIET, joined, plain
from conservedb.tui.widgets.lines import MARKER, RESTING

PAGE = 100
"""Rows that are fetched together at first."""
BLOCK = 10
"""Pages that are fetched together from then on: each time the whole answer is sorted anew."""
MOST_KEPT = 60
"""Pages that are kept; those not looked at for longest are forgotten first."""
HEAD = 1
GUTTER = 2


class AnswersTable(ScrollView, can_focus=True):
    """Rows of one line each under a line of headings, with a cursor that rests on a row.

    It may have millions of rows: it knows how many there are, keeps the pages that were looked
    at, and says which rows it wants.
    """

    BINDINGS = [  # noqa: RUF012
        Binding("down,j", "move(1)", show=False),
        Binding("up,k", "move(-1)", show=False),
        Binding("pagedown", "page(1)", show=False),
        Binding("pageup", "page(-1)", show=False),
        Binding("home", "edge(0)", show=False),
        Binding("end", "edge(-1)", show=False),
        Binding("enter", "choose", show=False),
    ]
    COMPONENT_CLASSES = {"answers--cursor"}  # noqa: RUF012
    DEFAULT_CSS = """
    AnswersTable { overflow-x: hidden; scrollbar-size-vertical: 1; }
    AnswersTable > .answers--cursor { background: $resting; }
    AnswersTable:focus > .answers--cursor { background: $cursor; }
    """

    cursor: reactive[int] = reactive(0, repaint=False)

    class Wanted(Message):
        """Rows of an answer in view that are not there yet."""

        def __init__(self, asked: Asked, start: int, length: int) -> None:
            super().__init__()
            self.asked, self.start, self.length = asked, start, length

    class Chosen(Message):
        """Enter was pressed on a row, or the row under the cursor clicked again."""

        def __init__(self, row: ResearchRow) -> None:
            super().__init__()
            self.row = row

    class Sorted(Message):
        """The heading of a column was clicked."""

        def __init__(self, column: str) -> None:
            super().__init__()
            self.column = column

    def __init__(self) -> None:
        super().__init__(id="answers")
        self._asked: Asked | None = None
        self._pages: dict[int, tuple[ResearchRow, ...]] = {}
        self._total = 0
        self._wants = range(0)
        self._fitted: tuple[Asked, int, tuple[tuple[Column, int], ...]] | None = None

    @property
    def total(self) -> int:
        """How many rows there are, as far as is known."""
        return self._total

    @property
    def current(self) -> ResearchRow | None:
        """The row under the cursor, if there is one and it has come."""
        return self._row(self.cursor)

    def begin(self, asked: Asked) -> None:
        """Another question, or another order: nothing is known, and the first page is asked for."""
        self._asked = asked
        self._pages.clear()
        self._wants = range(1)
        self._total = 0
        self.set_reactive(AnswersTable.cursor, 0)
        self._extend()
        self.scroll_to(y=0, animate=False, force=True)

    def show_rows(self, start: int, rows: tuple[ResearchRow, ...]) -> None:
        """Rows came, from `start` on, which begins a page."""
        for first in range(0, max(len(rows), 1), PAGE):
            number = (start + first) // PAGE
            self._pages.pop(number, None)
            self._pages[number] = rows[first : first + PAGE]
        while len(self._pages) > MOST_KEPT:
            del self._pages[next(iter(self._pages))]
        self._wants = range(0)
        self._total = max(self._total, start + len(rows))
        self._extend()
        self._want()

    def show_total(self, total: int) -> None:
        """How many rows there are."""
        self._total = total
        self._extend()
        self._want()

    def forget_wanted(self) -> None:
        """What was wanted will not come; moving wants it again."""
        self._wants = range(0)

    # Moving

    def action_move(self, by: int) -> None:
        """Up or down by a row."""
        self._go(self.cursor + by)

    def action_page(self, pages: int) -> None:
        """Up or down by what is in view."""
        self._go(self.cursor + pages * max(self._in_view - 1, 1))

    def action_edge(self, index: int) -> None:
        """To the first or last row."""
        self._go(index % max(self._total, 1))

    def action_choose(self) -> None:
        """Enter."""
        if self.current is not None:
            self.post_message(self.Chosen(self.current))

    def on_click(self, event: Click) -> None:
        """A click on a heading sorts; on a row it moves the cursor, and there again it opens."""
        if event.y < HEAD:
            self._click_heading(event.x)
            return
        index = int(self.scroll_y) + event.y - HEAD
        if index == self.cursor:
            self.action_choose()
        elif index < self._total:
            self._go(index)

    def _click_heading(self, x: int) -> None:
        left = GUTTER
        for column, width in self._columns:
            if left <= x < left + width + GAP:
                self.post_message(self.Sorted(column.name))
                return
            left += width + GAP

    def _go(self, index: int) -> None:
        self.cursor = min(max(index, 0), max(self._total - 1, 0))

    def watch_cursor(self) -> None:
        """Bring the row into view."""
        top = int(self.scroll_y)
        if self.cursor < top:
            self.scroll_to(y=self.cursor, animate=False, force=True)
        elif self.cursor >= top + self._in_view:
            self.scroll_to(y=self.cursor - self._in_view + 1, animate=False, force=True)
        self.refresh()

    def watch_scroll_y(self, old_value: float, new_value: float) -> None:
        """Other rows come into view."""
        super().watch_scroll_y(old_value, new_value)
        self._want()

    def on_resize(self, event: Resize) -> None:
        """The width decides which columns there are."""
        self._extend()
        self.call_after_refresh(self.watch_cursor)
        self._want()

    # What is there

    @property
    def _in_view(self) -> int:
        return max(self.size.height - HEAD, 1)

    def _row(self, index: int) -> ResearchRow | None:
        page = self._pages.get(index // PAGE, ())
        at = index % PAGE
        return page[at] if at < len(page) else None

    def _extend(self) -> None:
        self.virtual_size = Size(self.size.width, self._total + HEAD)
        self.refresh()

    @property
    def _columns(self) -> tuple[tuple[Column, int], ...]:
        """Those for which there is room beside the scroll bar, if there is one."""
        asked, room = self._asked, self.scrollable_content_region.width - GUTTER
        if asked is None:
            return ()
        if self._fitted is None or self._fitted[:2] != (asked, room):
            self._fitted = (asked, room, fitted(asked.research.rows, room, asked.order))
        return self._fitted[2]

    def _want(self) -> None:
        """Ask for the pages in view that are not there, unless they are asked for already."""
        first = int(self.scroll_y)
        last = min(first + self._in_view, self._total) - 1
        view = range(first // PAGE, max(last, 0) // PAGE + 1)
        missing = [number for number in view if number not in self._pages]
        if self._asked is None or not self._total or not set(missing) - set(self._wants):
            return
        begins, ends = missing[0] // BLOCK * BLOCK, (missing[-1] // BLOCK + 1) * BLOCK
        self._wants = range(begins, ends)
        self.post_message(self.Wanted(self._asked, begins * PAGE, (ends - begins) * PAGE))

    # Drawing

    def render_line(self, y: int) -> Strip:
        """The headings, or a row."""
        width = self.scrollable_content_region.width
        if self._asked is None or width < 1:
            return Strip.blank(width, self.rich_style)
        if y < HEAD:
            order, descending = self._asked.order, self._asked.descending
            drawn = headings(self._columns, order, descending=descending)
            return self._strip(joined((Content(" " * GUTTER), drawn)), width)
        index = int(self.scroll_y) + y - HEAD
        if index >= self._total:
            return Strip.blank(width, self.rich_style)
        here = index == self.cursor
        row = self._row(index)
        drawn = row_line(self._columns, row) if row is not None else plain("...", QUIET)
        mark = (MARKER if self.has_focus else RESTING) if here else " "
        return self._strip(joined((plain(f"{mark} ", ACCENT), drawn)), width, here=here)

    def _strip(self, content: Content, width: int, *, here: bool = False) -> Strip:
        style = self.get_visual_style("answers--cursor") if here else self.visual_style
        return Visual.to_strips(self, content.truncate(width), width, 1, style, pad=True)[0]
