"""The object: its parts, what lies at the selected location, its history, and the asked day."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Horizontal, Vertical
from textual.timer import Timer

from conservedb.dates import is_known, iso
from conservedb.questions.answers import AsOf, HistoryAnswer, Hit, ObjectAnswer, PlaceAnswer
from conservedb.tui import details
from conservedb.tui.actions import bindings
from conservedb.tui.asking import Asking
from conservedb.tui.part_rows import Row, rows_of
from conservedb.tui.screens.find import FindSheet
from conservedb.tui.screens.sheet import FactSheet, legend_sheet
from conservedb.tui.text import plain
from conservedb.tui.widgets.aside import Aside
from conservedb.tui.widgets.day_line import DayLine
from conservedb.tui.widgets.heading import Heading
from conservedb.tui.widgets.history import History
from conservedb.tui.widgets.key_line import KeyLine
from conservedb.tui.widgets.lines import Lines
from conservedb.tui.widgets.parts import Parts
from conservedb.tui.widgets.section import Section
from conservedb.tui.widgets.selected import Selected
from conservedb.tui.widgets.time_rule import TimeRule

if TYPE_CHECKING:
    from conservedb.tui.reading import Reading

SETTLE = 0.05  # seconds the cursor must rest before a location is asked for
TICKS = ("made", "intervention", "lost", "ended")


class ObjectScreen(Asking[None]):
    """Everything about one object on one day."""

    CSS_PATH = "object.tcss"
    BINDINGS = [  # noqa: RUF012
        *bindings("screens"),
        *bindings("object"),
        Binding("tab", "panel(1)", show=False),
        Binding("shift+tab", "panel(-1)", show=False),
    ]
    HORIZONTAL_BREAKPOINTS = [(0, "-narrow"), (116, "-wide")]  # noqa: RUF012
    AUTO_FOCUS = "#parts"
    PANELS = ("#parts", "#section", "#history", "#time-rule")

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

    def compose(self) -> ComposeResult:
        """Heading, tree, section, history and details, time rule, keys."""
        yield Heading(self.number)
        yield Selected()
        with Horizontal(id="below"):
            with Vertical(id="tree", classes="panel") as tree:
                tree.border_title = plain(" Parts and locations ")
                yield Parts()
            yield Aside()
        yield TimeRule()
        yield DayLine()
        yield KeyLine("object")

    def on_mount(self) -> None:
        """Ask for today."""
        self.look("")

    @property
    def row(self) -> Row | None:
        """The selected row of the tree."""
        return self.query_one(Parts).row

    @property
    def is_today(self) -> bool:
        """Whether the asked day is today."""
        return self.on is not None and self.today is not None and self.on.last >= self.today.last

    # Asking: answers for a day come together, so that no panel shows another day than the rest.

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

    # Showing

    def _show_day(
        self, today: AsOf, on: AsOf, answer: ObjectAnswer, place: PlaceAnswer | None
    ) -> None:
        self.today, self.on, self.object = today, on, answer
        if self.has_class("-typing"):
            self._day_left()
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
            first = min(days, default=self.today.first)
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
        if self.has_class("-typing"):
            self.query_one(DayLine).refuse(sentence)
        else:
            self.tell(sentence)

    def tell(self, sentence: str) -> None:
        """Show a message for a while."""
        self.query_one(KeyLine).tell(sentence)

    # What panels report

    @on(Parts.Picked)
    def _picked(self, event: Parts.Picked) -> None:
        if self._settling is not None:
            self._settling.stop()
        row = event.row
        self._settling = self.set_timer(SETTLE, lambda: self._ask_about(row))

    @on(Parts.Chosen, "#parts")
    def _into_section(self) -> None:
        self._focus_panel("#section")

    @on(Section.Moved, "#section")
    def _band_moved(self) -> None:
        self._show_details()

    @on(Section.Chosen, "#section")
    def _band_chosen(self, event: Lines.Chosen) -> None:
        kind, _, mark = event.key.partition(":")
        if kind == "go":
            self.query_one(Parts).select(mark)
            self._focus_panel("#parts")
        else:
            self.action_full()

    @on(History.Chosen, "#history")
    def _event_chosen(self, event: Lines.Chosen) -> None:
        row = self.query_one(History).row_of(event.key)
        if row is not None and is_known(row.date.latest):
            self.look(iso(row.date.latest) or "")
        else:
            self.tell("this event has no date to go to")

    @on(TimeRule.Asked)
    def _day_asked(self, event: TimeRule.Asked) -> None:
        self._go(event.day)

    @on(DayLine.Wanted)
    def _day_wanted(self, event: DayLine.Wanted) -> None:
        self.look(event.words)

    @on(DayLine.Left)
    def _day_left(self) -> None:
        self.remove_class("-typing")
        self._focus_panel("#parts")

    # Actions

    def action_panel(self, by: int) -> None:
        """Go to the next panel, or the one before."""
        here = f"#{self.focused.id}" if self.focused is not None else ""
        index = self.PANELS.index(here) + by if here in self.PANELS else 0
        self._focus_panel(self.PANELS[index % len(self.PANELS)])

    def action_earlier(self) -> None:
        """The event before."""
        self._step(-1, "nothing on record is earlier")

    def action_later(self) -> None:
        """The event after, at last today."""
        self._step(1, "this is today")

    def action_day(self) -> None:
        """Type a day."""
        self.add_class("-typing")
        self.call_after_refresh(self.query_one(DayLine).begin)

    def action_today(self) -> None:
        """Return to today."""
        if self.is_today:
            self.tell("this is today")
        else:
            self.look("")

    def action_gone(self) -> None:
        """Draw, or leave out, what is gone or not yet there."""
        self.show_gone = not self.show_gone
        if self.place is not None:
            self._show_place(self.place)

    def action_legend(self) -> None:
        """What the hatches stand for."""
        self.app.push_screen(legend_sheet())

    def action_warnings(self) -> None:
        """All warnings in full."""
        if self.object is None or not self.object.warnings:
            self.tell("no warning is on record for this day")
            return
        blocks = [tuple(details.warning_facts(one)) for one in self.object.warnings]
        self.app.push_screen(FactSheet("Warnings", blocks))

    def action_full(self) -> None:
        """The record under the cursor, in full."""
        history = self.query_one(History)
        row = history.row_of(history.current.key) if history.current else None
        aside = self.query_one(Aside)
        if history.has_focus and row is not None:
            title, facts = details.details_of(row, self.place)
            self.app.push_screen(FactSheet(title, [tuple(facts)]))
        else:
            self.app.push_screen(FactSheet(aside.title, [aside.facts]))

    def action_fold(self) -> None:
        """Unfold or fold the whole tree."""
        self.query_one(Parts).fold_all()

    def action_refresh(self) -> None:
        """Ask everything again."""
        self._histories.clear()
        self.look(self.on.edtf if self.on is not None and not self.is_today else "")

    def action_find(self) -> None:
        """Find anything without leaving."""
        self.app.push_screen(FindSheet(self.reading, self.number), self._found)

    def action_back(self) -> None:
        """To the start."""
        self.app.pop_screen()

    def _found(self, hit: Hit | None) -> None:
        if hit is None:
            return
        if hit.object == self.number:
            self.query_one(Parts).select(hit.mark)
            self._focus_panel("#parts")
        elif hit.object:
            self.app.switch_screen(ObjectScreen(self.reading, hit.object, hit.mark))
        else:
            self.tell(f"{hit.label} has no screen yet")

    def _step(self, by: int, end: str) -> None:
        day = self.query_one(TimeRule).next_tick(by, own=True)
        if day is None:
            self.tell(end)
        else:
            self._go(day)

    def _go(self, day: int) -> None:
        today = self.today is not None and day >= self.today.last
        self.look("" if today else iso(day) or "")

    def _focus_panel(self, panel: str) -> None:
        self.query_one(Aside).turn_to(details=panel == "#section")
        self.call_after_refresh(self.query_one(panel).focus)
