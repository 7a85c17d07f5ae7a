"""The tree of parts and locations."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from textual.binding import Binding
from textual.content import Content
from textual.events import Click
from textual.message import Message

from conservedb.tui.part_items import TONES
from conservedb.tui.part_rows import ROOT, Row
from conservedb.tui.text import ACCENT, QUIET, STRONG, joined, plain, two_ends
from conservedb.tui.widgets.lines import Drawer, Item, Lines

DEEPEST_INDENT = 6
GUTTER = 2
TICK = "✓"


class Parts(Lines):
    """Parts as they belong together, each with the locations on it; rows fold."""

    BINDINGS = [  # noqa: RUF012
        Binding("right", "unfold", show=False),
        Binding("left", "fold", show=False),
    ]

    class Picked(Message):
        """Another part or place is selected; `mark` is "" for the whole object."""

        def __init__(self, row: Row) -> None:
            super().__init__()
            self.row = row

    def __init__(self) -> None:
        super().__init__("parts")
        self.rows: Sequence[Row] = ()
        self.unfolded: set[str] = {ROOT}
        self.picked = ""
        self.ticked: dict[str, bool] = {}

    @property
    def ticked_places(self) -> tuple[str, ...]:
        """Marks of the locations that are ticked, in the order in which they were."""
        return tuple(mark for mark, is_place in self.ticked.items() if is_place)

    @property
    def ticked_parts(self) -> tuple[str, ...]:
        """Marks of the parts that are ticked."""
        return tuple(mark for mark, is_place in self.ticked.items() if not is_place)

    def tick(self, rows: Iterable[Row]) -> None:
        """Tick rows for what is recorded next."""
        self.ticked |= {row.mark: row.is_place for row in rows if row.mark}
        self.refresh()

    def untick(self, marks: Iterable[str]) -> None:
        """Take ticks away."""
        for mark in tuple(marks):
            self.ticked.pop(mark, None)
        self.refresh()

    def show_rows(self, rows: Sequence[Row], key: str | None = None) -> None:
        """Show another tree; what was unfolded and selected stays so where it still is there."""
        self.rows = rows
        if key is not None:
            self._unfold_to(key)
        self._lay_out(key)
        self._tell()

    def select(self, mark: str) -> None:
        """Unfold the tree as far as needed and select the part or place of this mark."""
        folded = mark.casefold()
        row = next((one for one in self.rows if one.mark.casefold() == folded), None)
        if row is not None:
            self._unfold_to(row.key)
            self._lay_out(row.key)
            self._tell()

    @property
    def row(self) -> Row | None:
        """The selected row."""
        key = self.current.key if self.current else ""
        return next((one for one in self.rows if one.key == key), None)

    def action_unfold(self) -> None:
        """Unfold; on a row already unfolded, step into it."""
        row = self.row
        if row is None or not row.inside:
            return
        if row.key in self.unfolded:
            self.action_move(1)
        else:
            self.unfolded.add(row.key)
            self._lay_out(row.key)

    def action_fold(self) -> None:
        """Fold; on a row already folded, step out to the one it belongs to."""
        row = self.row
        if row is None:
            return
        if row.inside and row.key in self.unfolded and row.key != ROOT:
            self.unfolded.discard(row.key)
            self._lay_out(row.key)
        elif (above := self._above(row.key)) is not None:
            self.go_to(above)

    def flip(self) -> None:
        """Fold what is unfolded and the other way round."""
        row = self.row
        if row is not None and row.inside:
            self.unfolded ^= {row.key}
            self._lay_out(row.key)

    def on_click(self, event: Click) -> None:
        """A click on the sign before a row folds or unfolds it."""
        super().on_click(event)
        row = self.row
        line = event.y + self.scroll_offset.y
        if row is not None and line == self.cursor:
            sign = GUTTER + _indent(row)
            if sign <= event.x <= sign + 1:
                self.flip()

    def fold_all(self) -> None:
        """Unfold everything, or fold everything to the parts at the top."""
        foldable = {row.key for row in self.rows if row.inside}
        key = self.current.key if self.current else None
        if foldable <= self.unfolded:
            self.unfolded = {ROOT}
            while key is not None and key not in {row.key for row in self._visible()}:
                key = self._above(key)
        else:
            self.unfolded = foldable
        self._lay_out(key)
        self._tell()

    def watch_cursor(self, old: int, new: int) -> None:
        """Selecting is moving the cursor."""
        super().watch_cursor(old, new)
        self._tell()

    def _tell(self) -> None:
        row = self.row
        if row is not None and row.key != self.picked:
            self.picked = row.key
            self.post_message(self.Picked(row))

    def _visible(self) -> list[Row]:
        visible, skip = [], 0
        for row in self.rows:
            if skip:
                skip -= 1
                continue
            visible.append(row)
            if row.inside and row.key not in self.unfolded:
                skip = row.inside
        return visible

    def _lay_out(self, key: str | None) -> None:
        items = [Item(row.key, self._drawer(row)) for row in self._visible()]
        self.show_items(items, key)

    def _above(self, key: str) -> str | None:
        """The key of the row to which a row belongs."""
        index = next((i for i, row in enumerate(self.rows) if row.key == key), 0)
        depth = self.rows[index].depth if self.rows else 0
        for row in reversed(self.rows[:index]):
            if row.depth < depth:
                return row.key
        return None

    def _unfold_to(self, key: str) -> None:
        above = self._above(key)
        while above is not None:
            self.unfolded.add(above)
            above = self._above(above)

    def _drawer(self, row: Row) -> Drawer:
        def draw(width: int) -> tuple[Content]:
            sign = " " if not row.inside else "▾" if row.key in self.unfolded else "▸"
            indent = " " * _indent(row)
            label = plain(row.label, QUIET if row.is_place else "")
            mark = plain(row.mark, STRONG)
            tick = (plain(TICK, ACCENT),) if row.mark in self.ticked else ()
            left = joined((plain(f"{indent}{sign} ", QUIET), joined((*tick, mark, label), " ")))
            if not row.right:
                return (left.truncate(width, ellipsis=True),)
            return (two_ends(left, plain(row.right, TONES[row.tone]), width),)

        return draw


def _indent(row: Row) -> int:
    return 2 * max(min(row.depth, DEEPEST_INDENT) - 1, 0)
