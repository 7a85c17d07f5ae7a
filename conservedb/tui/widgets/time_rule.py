"""The time rule: from the making of the object to today, a tick for every event."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Iterable

from textual.app import RenderResult
from textual.binding import Binding
from textual.content import Content
from textual.events import Click
from textual.message import Message
from textual.widget import Widget

from conservedb.dates import civil, day_number
from conservedb.questions.answers import AsOf
from conservedb.tui.text import ACCENT, QUIET, STRONG, joined, plain, styled
from conservedb.tui.widgets.lines import MARKER
from conservedb.tui.wording import as_of_words


class TimeRule(Widget, can_focus=True):
    """Shows the asked day among the events, and asks for another day when used."""

    BINDINGS = [  # noqa: RUF012
        Binding("left", "tick(-1)", show=False),
        Binding("right", "tick(1)", show=False),
        Binding("pageup", "years(-10)", show=False),
        Binding("pagedown", "years(10)", show=False),
        Binding("home", "end(0)", show=False),
        Binding("end", "end(-1)", show=False),
    ]
    DEFAULT_CSS = "TimeRule { height: 2; }"

    class Asked(Message):
        """Show another day."""

        def __init__(self, day: int) -> None:
            super().__init__()
            self.day = day

    def __init__(self) -> None:
        super().__init__(id="time-rule")
        self.first = self.today = 1
        self.ticks: list[int] = []
        self.own: list[int] = []
        self.on: AsOf | None = None

    def show_span(self, first: int, today: int, ticks: Iterable[int]) -> None:
        """Lay the rule from `first` to `today`, with the days of all events of the object."""
        self.today = today
        self.ticks = sorted({day for day in ticks if day <= today})
        self.first = min([first, *self.ticks[:1], today - 1])
        self.refresh()

    def show_own(self, ticks: Iterable[int]) -> None:
        """Days of the events of what is selected: drawn heavier, and stepped along."""
        self.own = sorted({day for day in ticks if day <= self.today})
        self.refresh()

    def show_day(self, on: AsOf) -> None:
        """Mark the asked day or span."""
        self.on = on
        self.refresh()

    def next_tick(self, by: int, *, own: bool) -> int | None:
        """The day of the event before (-1) or after (1) the asked day; today comes last."""
        days = self.own if own and self.own else self.ticks
        days = [*[day for day in days if day < self.today], self.today]
        here = self.on.last if self.on else self.today
        index = bisect_right(days, here) if by > 0 else bisect_left(days, here) - 1
        return days[index] if 0 <= index < len(days) else None

    def action_tick(self, by: int) -> None:
        """Step along all events of the object."""
        day = self.next_tick(by, own=False)
        if day is not None:
            self.post_message(self.Asked(day))

    def action_years(self, by: int) -> None:
        """Ten years on or back, within the rule."""
        here = self.on.last if self.on else self.today
        year, month, day = civil(here)
        moved = day_number(year + by, month, min(day, 28))
        self.post_message(self.Asked(min(max(moved, self.first), self.today)))

    def action_end(self, which: int) -> None:
        """The first day of the rule, or today."""
        self.post_message(self.Asked(self.today if which else self.first))

    def on_click(self, event: Click) -> None:
        """Go to the event at that spot, else to the year."""
        column = event.x - self._left
        if 0 <= column < self._span:
            self.post_message(self.Asked(self.day_at(column)))

    def day_at(self, column: int) -> int:
        """The day meant by a column of the rule: an event there, else the first of its year."""
        if column == self._span - 1:
            return self.today
        there = [day for day in self.own or self.ticks if self._column(day) == column]
        there = there or [day for day in self.ticks if self._column(day) == column]
        if there:
            return there[-1]
        share = column / max(self._span - 1, 1)
        year = civil(self.first + round(share * (self.today - self.first)))[0]
        return max(day_number(year), self.first)

    def render(self) -> RenderResult:
        """The rule, and below it the asked day and as many years as fit."""
        return joined((self._axis(), self._labels()), "\n")

    @property
    def _start_label(self) -> str:
        return f"{MARKER if self.has_focus else ' '}{_year(self.first)} "

    @property
    def _left(self) -> int:
        return len(self._start_label)

    @property
    def _span(self) -> int:
        return max(self.size.width - self._left - len(" today "), 2)

    def _column(self, day: int) -> int:
        share = (day - self.first) / max(self.today - self.first, 1)
        return min(max(round(share * (self._span - 1)), 0), self._span - 1)

    def _axis(self) -> Content:
        own = {self._column(day) for day in self.own}
        other = {self._column(day) for day in self.ticks}
        begin, end = self._marked
        cells = []
        for column in range(self._span):
            style = ACCENT if column <= end else QUIET
            if begin <= column <= end:
                sign = "◆" if column in (begin, end) else "═"
            elif column in own:
                sign = "╋" if column <= end else "┼"
            elif column in other:
                sign = "┻" if column <= end else "┴"
            else:
                sign = "━" if column <= end else "─"
            cells.append(plain(sign, f"bold {style}" if self.has_focus else style))
        return joined((plain(self._start_label, QUIET), *cells, styled(" today ", QUIET)))

    @property
    def _marked(self) -> tuple[int, int]:
        if self.on is None:
            return self._span - 1, self._span - 1
        return self._column(self.on.first), self._column(self.on.last)

    def _labels(self) -> Content:
        """The asked day under its mark; years of events wherever there is room."""
        width = self.size.width
        words = "today" if self.on is None else as_of_words(self.on)
        label = plain(words, f"bold {ACCENT}")
        middle = self._left + sum(self._marked) // 2
        start = min(max(middle - label.cell_length // 2, 1), max(width - label.cell_length - 1, 0))
        placed = {start: label}
        taken = [(start - 2, start + label.cell_length + 2)]
        for days, style in ((self.own, STRONG), (self.ticks, QUIET)):
            for day in days:
                year = _year(day)
                at = self._left + self._column(day) - len(year) // 2
                if year == _year(self.first) or at < 0 or at + len(year) > width:
                    continue
                if all(at >= stop or at + len(year) <= begin for begin, stop in taken):
                    placed[at] = plain(year, style if style == QUIET else "")
                    taken.append((at - 2, at + len(year) + 2))
        line, column = [], 0
        for at in sorted(placed):
            line += [Content(" " * (at - column)), placed[at]]
            column = at + placed[at].cell_length
        return joined(line)


def _year(day: int) -> str:
    year = civil(day)[0]
    return str(year) if year > 0 else f"{1 - year} BC"
