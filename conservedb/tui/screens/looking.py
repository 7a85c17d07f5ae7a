"""What the object screen asks and shows: an object, a day, a location, histories."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual.timer import Timer
from textual.widget import Widget

from conservedb.dates import is_known
from conservedb.questions.answers import AsOf, HistoryAnswer, ObjectAnswer, PlaceAnswer
from conservedb.tui import details
from conservedb.tui.in_order import Holding
from conservedb.tui.part_rows import Row, rows_of
from conservedb.tui.text import WARNING
from conservedb.tui.widgets.aside import Aside
from conservedb.tui.widgets.day_line import DayLine
from conservedb.tui.widgets.heading import Heading
from conservedb.tui.widgets.key_line import KeyLine
from conservedb.tui.widgets.parts import Parts
from conservedb.tui.widgets.section import Section
from conservedb.tui.widgets.selected import Selected
from conservedb.tui.widgets.time_rule import TimeRule

if TYPE_CHECKING:
    from conservedb.tui.reading import Reading

TICKS = ("made", "intervention", "lost", "retired", "ended")


class Looking(Holding[None]):
    """Looks at one object: answers for a day come together, so that no panel shows another day."""

    def __init__(self, reading: Reading, number: str, mark: str = "") -> None:
        super().__init__()
        self.reading = reading
        self.number = number
        self.today: AsOf | None = None
        self.on: AsOf | None = None
        self.object: ObjectAnswer | None = None
        self.place: PlaceAnswer | None = None
        self.show_gone = False
        self._wanted = mark
        self._histories: dict[str, HistoryAnswer] = {}
        self._settling: Timer | None = None
        self._before_typing: Widget | None = None

    @property
    def row(self) -> Row | None:
        """The selected row of the tree."""
        return self.query_one(Parts).row

    @property
    def is_today(self) -> bool:
        """Whether the asked day is today."""
        if self.on is None or self.today is None:
            return False
        return (self.on.first, self.on.last) == (self.today.first, self.today.last)

    def look(self, words: str) -> None:
        """Show another day, in words or EDTF; "" is today."""
        reading, number, row = self.reading, self.number, self.row
        mark = row.mark if row is not None and row.is_place else ""

        def question() -> tuple[AsOf, AsOf, ObjectAnswer, PlaceAnswer | None]:
            on = reading.as_of(words)
            place = reading.place(number, mark, on) if mark else None
            return reading.as_of(""), on, reading.object(number, on), place

        self.forget("place")
        self.ask("look", question, lambda answer: self._show_day(*answer))
        if "" not in self._histories:
            self.ask("ticks", lambda: reading.history(number, ""), self._keep_history)

    def _ask_about(self, row: Row) -> None:
        """Show a part at once, ask for a location; and the history of either."""
        reading, number, on = self.reading, self.number, self.on
        if self.object is None or on is None:
            return
        if row.is_place:
            self.ask("place", lambda: reading.place(number, row.mark, on), self._show_place)
        else:
            self.forget("place")
            self.place = None
            self.query_one(Selected).show_row(self.object, self.query_one(Parts).rows, row)
            self._show_details()
        if row.mark in self._histories:
            self._show_history()
        else:
            self.ask("history", lambda: reading.history(number, row.mark), self._keep_history)

    def _show_day(
        self, today: AsOf, on: AsOf, answer: ObjectAnswer, place: PlaceAnswer | None
    ) -> None:
        self.today, self.on, self.object = today, on, answer
        self.end_typing()
        self.query_one(Heading).show_object(answer, is_today=self.is_today)
        parts = self.query_one(Parts)
        parts.show_rows(rows_of(answer))
        if self._wanted:
            parts.select(self._wanted)
            self._wanted = ""
        self.query_one(TimeRule).show_day(on)
        self._show_ticks()
        row = parts.row
        if place is not None and row is not None and row.mark == place.place:
            self._show_place(place)
            self._show_history()
        elif row is not None:
            self._ask_about(row)

    def _show_place(self, place: PlaceAnswer) -> None:
        self.place = place
        self.query_one(Selected).show_place(place, show_gone=self.show_gone)
        self._show_details()

    def _keep_history(self, answer: HistoryAnswer) -> None:
        self._histories[answer.mark] = answer
        if not answer.mark:
            self._show_ticks()
        self._show_history()

    def _show_history(self) -> None:
        history = self._histories.get(self.row.mark if self.row else "")
        if history is None or self.on is None:
            return
        self.query_one(Aside).show_history(history, self.on, is_today=self.is_today)
        own = [row.date.latest for row in history.rows if is_known(row.date.latest)]
        self.query_one(TimeRule).show_own(own)

    def _show_ticks(self) -> None:
        history = self._histories.get("")
        if history is None or self.object is None or self.today is None:
            return
        days = [row.date.latest for row in history.rows if row.kind in TICKS]
        days = [day for day in days if is_known(day)]
        first = self.object.made.earliest
        if not is_known(first):
            dates = [row.date for row in history.rows]
            ends = [day for date in dates for day in (date.earliest, date.latest)]
            first = min((day for day in ends if is_known(day)), default=self.today.first)
        self.query_one(TimeRule).show_span(first, self.today.last, days)

    def _show_details(self) -> None:
        aside, record = self.query_one(Aside), self._record()
        if record is not None:
            aside.show_facts(*details.details_of(record, self.place))
        elif self.place is not None:
            aside.show_facts(f"About {self.place.place}", details.place_facts(self.place))
        elif self.object is not None:
            aside.show_facts("About the object", details.object_facts(self.object))

    def _record(self) -> details.Record | None:
        """What the cursor of the section rests on, or the selected part."""
        section = self.query_one(Section)
        if self.place is not None or self.object is None:
            return section.band
        key = section.current.key if section.current else ""
        warning = next((w for w in self.object.warnings if key == f"warning:{w.ref}"), None)
        mark = self.row.mark if self.row else ""
        return warning or next((c for c in self.object.components if c.mark == mark), None)

    def refuse(self, sentence: str) -> None:
        """Show why there is no answer; in the line for the day while that is used."""
        if self.typing:
            self.query_one(DayLine).refuse(sentence)
        elif self.object is None:
            self.query_one(Selected).show_trouble(sentence)
        else:
            self.tell(sentence)

    def begin_typing(self) -> None:
        """The line for a day takes the place of the time rule."""
        self._before_typing = self.focused
        self._swap_rule(typing=True)
        self.query_one(DayLine).begin()

    def end_typing(self) -> None:
        """The time rule again, and the panel that was in use."""
        if self.typing:
            self._swap_rule(typing=False)
            self.set_focus(self._before_typing or self.query_one(Parts))

    @property
    def typing(self) -> bool:
        """Whether a day is being typed."""
        return self.query_one(DayLine).display

    def _swap_rule(self, *, typing: bool) -> None:
        self.query_one(DayLine).display = typing
        self.query_one(TimeRule).display = not typing

    def tell(self, sentence: str, ink: str = WARNING) -> None:
        """Show a message for a while."""
        self.query_one(KeyLine).tell(sentence, ink)
