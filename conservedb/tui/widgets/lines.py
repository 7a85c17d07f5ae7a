"""A list that draws only the lines in view, so that thousands of entries cost nothing."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import accumulate

from textual.binding import Binding
from textual.content import Content
from textual.events import Click, Resize
from textual.geometry import Size
from textual.message import Message
from textual.reactive import reactive
from textual.scroll_view import ScrollView
from textual.strip import Strip
from textual.visual import Visual

from conservedb.tui.text import ACCENT, joined, plain

EMPTY = Content("")
MARKER, RESTING = "▌", "▏"


Drawer = Callable[[int], Sequence[Content]]
"""Composes the lines of an entry for a width in cells."""


@dataclass(frozen=True, slots=True)
class Item:
    """An entry of the list.

    Attributes:
        key: tells it from the others, also when the list is made anew.
        draw: gives its lines, already composed for a width in cells.
        height: how many lines that is.
        live: whether the cursor stops at it.
    """

    key: str
    draw: Drawer
    height: int = 1
    live: bool = True


def always(*lines: Content) -> Drawer:
    """Lines that suit any width."""
    return lambda _: lines


def line_item(key: str, *lines: Content) -> Item:
    """An entry at which the cursor does not stop, of lines that suit any width."""
    return Item(key, always(*lines), len(lines), live=False)


class Lines(ScrollView, can_focus=True):
    """Entries of one or more lines, with a cursor that rests on one entry."""

    BINDINGS = [  # noqa: RUF012
        Binding("down,j", "move(1)", show=False),
        Binding("up,k", "move(-1)", show=False),
        Binding("pagedown", "page(1)", show=False),
        Binding("pageup", "page(-1)", show=False),
        Binding("home", "edge(0)", show=False),
        Binding("end", "edge(-1)", show=False),
        Binding("enter", "choose", show=False),
    ]
    COMPONENT_CLASSES = {"lines--cursor"}  # noqa: RUF012
    DEFAULT_CSS = """
    Lines { overflow-x: hidden; scrollbar-size-vertical: 1; }
    Lines > .lines--cursor { background: $resting; }
    Lines:focus > .lines--cursor { background: $cursor; }
    """

    cursor: reactive[int] = reactive(-1, repaint=False)

    class Moved(Message):
        """The cursor came to rest on another entry."""

        def __init__(self, lines: Lines, key: str) -> None:
            super().__init__()
            self.lines, self.key = lines, key

        @property
        def control(self) -> Lines:
            """The list in which it moved."""
            return self.lines

    class Chosen(Moved):
        """Enter was pressed on an entry, or the entry under the cursor clicked again."""

    def __init__(self, id: str, *, marked: bool = True) -> None:
        super().__init__(id=id)
        self.items: Sequence[Item] = ()
        self._starts: list[int] = [0]
        self._marked = marked
        self._new, self._put_at = False, -1.0
        """Whether the cursor has not moved since the entries are new, and where they were put."""

    @property
    def current(self) -> Item | None:
        """The entry under the cursor."""
        return self.items[self.cursor] if 0 <= self.cursor < len(self.items) else None

    @property
    def room(self) -> int:
        """Cells of width that lines have, beside the scroll bar if there is one."""
        return self.scrollable_content_region.width

    @property
    def at_first(self) -> bool:
        """Whether no entry above the cursor can hold it."""
        return not any(item.live for item in self.items[: max(self.cursor, 0)])

    def show_items(self, items: Sequence[Item], key: str | None = None) -> None:
        """Replace the entries; the cursor stays on the entry of the same key if it is there."""
        wanted = key if key is not None else (self.current.key if self.current else None)
        self.items = items
        self._starts = list(accumulate((item.height for item in items), initial=0))
        self.virtual_size = Size(self.size.width, self._starts[-1])
        found = next((i for i, item in enumerate(items) if item.key == wanted and item.live), None)
        first = next((i for i, item in enumerate(items) if item.live), -1)
        self.set_reactive(Lines.cursor, first if found is None else found)
        self.refresh()
        if found is None:
            self.scroll_to(y=0, animate=False)
        else:
            self._new = True
            self.call_after_refresh(self._bring_into_view)

    def go_to(self, key: str) -> None:
        """Put the cursor on the entry of this key, if it is there."""
        for index, item in enumerate(self.items):
            if item.key == key and item.live:
                self._place_cursor(index)
                return

    def action_move(self, by: int) -> None:
        """Up or down by one entry that can hold the cursor."""
        if self.current is None:
            self.scroll_relative(y=by, animate=False)
            return
        index = self.cursor + by
        while 0 <= index < len(self.items) and not self.items[index].live:
            index += by
        if 0 <= index < len(self.items):
            self._place_cursor(index)
        elif by < 0:
            self.scroll_to(y=0, animate=False)

    def action_page(self, pages: int) -> None:
        """Up or down by what is in view."""
        if self.current is None:
            self.scroll_relative(y=pages * max(self.size.height - 1, 1), animate=False)
            return
        line = self._starts[max(self.cursor, 0)] + pages * max(self.size.height - 1, 1)
        self._place_cursor(self._index_at(line), pages)

    def action_edge(self, index: int) -> None:
        """To the first or last entry."""
        if self.current is None:
            self.scroll_to(y=-index * self._starts[-1], animate=False)
        else:
            self._place_cursor(index % len(self.items), 1 if index == 0 else -1)

    def action_choose(self) -> None:
        """Enter."""
        if self.current is not None:
            self.post_message(self.Chosen(self, self.current.key))

    def on_click(self, event: Click) -> None:
        """A click moves the cursor; on the entry that already holds it, it chooses."""
        line = event.y + self.scroll_offset.y
        if not self.items or line >= self._starts[-1]:
            return
        index = self._index_at(line)
        if not self.items[index].live:
            return
        if index == self.cursor:
            self.action_choose()
        else:
            self._place_cursor(index)

    def on_resize(self, event: Resize) -> None:
        """The width decides how lines are composed."""
        self.virtual_size = Size(event.size.width, self._starts[-1])
        self.call_after_refresh(self._bring_into_view)

    def render_line(self, y: int) -> Strip:
        """One line of the view."""
        line, width = y + self.scroll_offset.y, self.room
        if line >= self._starts[-1] or width < 1:
            return Strip.blank(width, self.rich_style)
        index = self._index_at(line)
        item, here = self.items[index], index == self.cursor
        gutter = 2 if self._marked else 0
        drawn = item.draw(max(width - gutter, 1))
        row = line - self._starts[index]
        content = drawn[row] if row < len(drawn) else EMPTY
        if gutter:
            mark = (MARKER if self.has_focus else RESTING) if here else " "
            content = joined((plain(f"{mark} ", ACCENT), content))
        style = self.get_visual_style("lines--cursor") if here else self.visual_style
        content = content.truncate(width, ellipsis=True)
        return Visual.to_strips(self, content, width, 1, style, pad=True)[0]

    def _index_at(self, line: int) -> int:
        return min(max(bisect_right(self._starts, line) - 1, 0), len(self.items) - 1)

    def _place_cursor(self, index: int, direction: int = 1) -> None:
        """Rest on `index`, or on the nearest entry that can hold the cursor."""
        for step in (*range(len(self.items)),):
            for candidate in (index + direction * step, index - direction * step):
                if 0 <= candidate < len(self.items) and self.items[candidate].live:
                    self.cursor = candidate
                    return

    def watch_cursor(self, old: int, new: int) -> None:
        """Tell, and repaint, where the cursor came to rest."""
        self._new = False
        self._bring_into_view()
        self.refresh()
        if self.current is not None:
            self.post_message(self.Moved(self, self.current.key))

    def _bring_into_view(self) -> None:
        """New entries are put with the cursor in the middle, anew where the height changes."""
        if self.current is None:
            return
        top = self._starts[self.cursor]
        above = self.cursor
        while above > 0 and not self.items[above - 1].live:
            above -= 1
        if above == 0:
            top = 0  # a heading above the first entry comes into view with it
        bottom, view, seen_from = self._starts[self.cursor + 1], self.size.height, self.scroll_y
        untouched = self._new and seen_from == self._put_at
        if seen_from <= top and bottom <= seen_from + view and not untouched:
            return
        if self._new:
            middle = min((top + bottom - view) // 2, self._starts[-1] - view)
            self._put_at = 0 if bottom <= view else max(middle, 0)
            self.scroll_to(y=self._put_at, animate=False, force=True)
        elif top < seen_from or bottom - top > view:
            self.scroll_to(y=top, animate=False, force=True)
        else:
            self.scroll_to(y=bottom - view, animate=False, force=True)
