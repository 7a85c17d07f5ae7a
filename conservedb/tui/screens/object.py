"""The object: its parts, what lies at the selected location, its history, and the asked day."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Horizontal, Vertical
from textual.events import DescendantFocus

from conservedb.dates import is_known, iso
from conservedb.questions.answers import Hit, Layer
from conservedb.tui import details
from conservedb.tui.actions import bindings
from conservedb.tui.hits import no_screen
from conservedb.tui.screens.find import FindSheet
from conservedb.tui.screens.opening import screen_of
from conservedb.tui.screens.recording_here import RecordingHere
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
    from conservedb.questions.treatment_answers import TreatmentsAnswer

SETTLE = 0.05  # seconds the cursor must rest before a location is asked for
WIDE = 116  # cells from which history and details stand side by side


class ObjectScreen(RecordingHere):
    """Everything about one object on one day."""

    NAME = "object"
    CSS_PATH = "object.tcss"
    BINDINGS = [  # noqa: RUF012
        *bindings(NAME),
        Binding("tab", "panel(1)", show=False, priority=True),
        Binding("shift+tab", "panel(-1)", show=False, priority=True),
    ]
    HORIZONTAL_BREAKPOINTS = [(0, "-narrow"), (WIDE, "-wide")]  # noqa: RUF012
    AUTO_FOCUS = "#parts"
    PANELS = ("#parts", "#section", "#history", "#time-rule")

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
        yield KeyLine(self.NAME)

    def on_mount(self) -> None:
        """Ask for today; say what was saved to come here."""
        self.look("")
        if self.saved_before is not None:
            self.tell_saved(self.saved_before)

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
        self.end_typing()

    # Actions

    def action_panel(self, by: int) -> None:
        """Go to the next panel, or the one before; a day half typed is left."""
        self.end_typing()
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
        self.begin_typing()

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

    def action_removal(self) -> None:
        """How the layer under the cursor may come off; without one, the likeliest here."""
        if self.place is None or self.on is None:
            self.tell("choose a location first: what lies there may come off")
            return
        from conservedb.tui.screens.removal import RemovalScreen

        band = self.query_one(Section).band
        layer = band.ref if isinstance(band, Layer) else ""
        where = (self.number, self.place.place, layer)
        self.app.push_screen(RemovalScreen(self.reading, *where, self.on))

    def action_material(self) -> None:
        """How the material under the cursor behaves."""
        record = self._record()
        word = details.material_word(record) if record is not None else ""
        if not word:
            self.tell("no material is on record for this line")
            return
        from conservedb.tui.screens.material import MaterialScreen

        self.app.push_screen(MaterialScreen(self.reading, word, self.on))

    def action_research(self) -> None:
        """Where else the material under the cursor is; without one, all of this object."""
        from conservedb.knowledge.research import Condition, Research
        from conservedb.tui.screens.research import ResearchScreen

        record = self._record()
        word = details.material_word(record) if record is not None else ""
        asked = Condition("material", word) if word else Condition("object", self.number)
        self.app.push_screen(ResearchScreen(self.reading, Research(where=asked)))

    def action_treatments(self) -> None:
        """The treatments of this object: the only one, or a list to choose from."""
        reading, number = self.reading, self.number
        self.ask("treatments", lambda: reading.treatments(number), self._show_treatments, self.tell)

    def _show_treatments(self, answer: TreatmentsAnswer) -> None:
        from conservedb.tui.screens.treatments import TreatmentsSheet

        if not answer.rows:
            self.tell("no treatment of this object is on record")
        elif len(answer.rows) == 1:
            self._treatment_chosen(answer.rows[0].ref)
        else:
            self.app.push_screen(TreatmentsSheet(answer), self._treatment_chosen)

    def _treatment_chosen(self, ref: str | None) -> None:
        if ref is not None:
            from conservedb.tui.screens.treatment import TreatmentScreen

            self.app.push_screen(TreatmentScreen(self.reading, self.number, ref))

    def action_fold(self) -> None:
        """Unfold or fold the whole tree."""
        self.query_one(Parts).fold_all()

    def action_refresh(self) -> None:
        """Ask everything again."""
        self.read_again()

    def read_again(self) -> None:
        """Ask everything again; the cursor stays."""
        self._histories.clear()
        self.look(self.on.edtf if self.on is not None and not self.is_today else "")

    def action_find(self) -> None:
        """Find anything without leaving."""
        self.app.push_screen(FindSheet(self.reading, self.number), self._found)

    def action_back(self) -> None:
        """Take ticks away, else to the start."""
        if not self.untick_all():
            self.app.pop_screen()

    def _found(self, hit: Hit | None) -> None:
        if hit is None:
            return
        if hit.object == self.number:
            self.query_one(Parts).select(hit.mark)
            self._focus_panel("#parts")
        elif hit.object:
            self.app.switch_screen(ObjectScreen(self.reading, hit.object, hit.mark))
        elif (screen := screen_of(self.reading, hit, self.on)) is not None:
            self.app.push_screen(screen)
        else:
            self.tell(no_screen(hit))

    def _step(self, by: int, end: str) -> None:
        day = self.query_one(TimeRule).next_tick(by, own=True)
        if day is None:
            self.tell(end)
        else:
            self.query_one(KeyLine).clear()
            self._go(day)

    def _go(self, day: int) -> None:
        today = self.today is not None and day >= self.today.last
        self.look("" if today else iso(day) or "")

    def _focus_panel(self, panel: str) -> None:
        self._share_aside(details=panel == "#section")
        self.set_focus(self.query_one(panel))

    def _share_aside(self, *, details: bool) -> None:
        self.query_one(Aside).turn_to(details=details, both=self.size.width >= WIDE)

    def on_resize(self) -> None:
        """Another width may have room for more panels, or for fewer."""
        self._share_aside(details=self.query_one(Section).has_focus)

    @on(DescendantFocus, "#section")
    def _section_entered(self) -> None:
        self._share_aside(details=True)

    @on(DescendantFocus, "#parts, #time-rule")
    def _section_left(self) -> None:
        self._share_aside(details=False)
