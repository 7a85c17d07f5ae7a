"""A treatment from examination to next check: planned, authorised, done, and what is asked."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Horizontal, Vertical

from conservedb.tui.actions import bindings
from conservedb.tui.asking import Asking
from conservedb.tui.hits import no_screen
from conservedb.tui.screens.find import FindSheet
from conservedb.tui.screens.opening import screen_of
from conservedb.tui.screens.sheet import FactSheet
from conservedb.tui.text import QUIET, STRONG, UNSURE, joined, plain
from conservedb.tui.widgets.facts import Facts
from conservedb.tui.widgets.key_line import KeyLine
from conservedb.tui.widgets.lines import Lines
from conservedb.tui.widgets.title import Title
from conservedb.tui.widgets.treated import Treated

if TYPE_CHECKING:
    from conservedb.questions.answers import Hit
    from conservedb.questions.treatment_answers import TreatmentAnswer, TreatmentsAnswer
    from conservedb.tui.reading import Reading

WIDE = 116  # cells from which the full text stands beside the list


class TreatmentScreen(Asking[None]):
    """One treatment of an object, as it stands today."""

    NAME = "treatment"
    CSS_PATH = "treatment.tcss"
    BINDINGS = [  # noqa: RUF012
        *bindings(NAME),
        Binding("tab", "panel(1)", show=False, priority=True),
        Binding("shift+tab", "panel(-1)", show=False, priority=True),
    ]
    HORIZONTAL_BREAKPOINTS = [(0, "-narrow"), (WIDE, "-wide")]  # noqa: RUF012
    AUTO_FOCUS = "#treated"

    def __init__(self, reading: Reading, number: str, ref: str) -> None:
        super().__init__()
        self.reading, self.number, self.ref = reading, number, ref
        self.answer: TreatmentAnswer | None = None

    def compose(self) -> ComposeResult:
        """Title, the list, the entry in full, keys."""
        yield Title(f"{self.number} {self.ref}")
        with Horizontal(id="life"):
            with Vertical(id="treated-panel", classes="panel") as treated:
                treated.border_title = plain(" Plan, authorisation, steps ")
                yield Treated()
            with Vertical(id="in-full-panel", classes="panel"):
                yield Facts("in-full")
        yield KeyLine(self.NAME)

    def on_mount(self) -> None:
        """Ask."""
        self.action_refresh()

    def action_refresh(self) -> None:
        """Ask again."""
        self._ask_for(self.ref)

    def _ask_for(self, ref: str) -> None:
        self.ref = ref
        reading, number = self.reading, self.number
        self.ask("treatment", lambda: reading.treatment(number, ref), self._show)

    def refuse(self, sentence: str) -> None:
        """Show why there is no answer."""
        if self.answer is None:
            self.query_one(Treated).show_trouble(f"{sentence}. Esc goes back.")
        else:
            self.tell(sentence)

    def tell(self, sentence: str) -> None:
        """Show a message for a while."""
        self.query_one(KeyLine).tell(sentence)

    def _show(self, answer: TreatmentAnswer) -> None:
        self.answer = answer
        name = joined((plain(answer.object, STRONG), plain(answer.object_title, STRONG)), "  ")
        led = plain(f"led by {answer.lead}" if answer.lead else "", QUIET)
        what = (plain("treatment", QUIET), plain(answer.ref), plain(answer.title, STRONG))
        aside = plain(answer.status, QUIET if answer.closed else UNSURE)
        state = plain(answer.state, QUIET)
        self.query_one(Title).show((name, joined((led, aside), ", ")), (joined(what, " "), state))
        self.query_one(Treated).show_answer(answer)
        self._show_entry()

    def _show_entry(self) -> None:
        """The entry under the cursor, in full."""
        heading, blocks = self.query_one(Treated).full
        self.query_one("#in-full-panel").border_title = plain(f" {heading} " if heading else "")
        self.query_one(Facts).show_facts(*blocks)

    # What panels report

    @on(Lines.Moved, "#treated")
    def _moved(self) -> None:
        self._show_entry()

    @on(Lines.Chosen, "#treated")
    def _chosen(self) -> None:
        self.action_full()

    # Actions

    def action_panel(self, by: int) -> None:
        """Go to the next panel, or the one before."""
        panels = ["#treated", *(["#in-full"] if self.size.width >= WIDE else [])]
        here = f"#{self.focused.id}" if self.focused is not None else ""
        index = panels.index(here) + by if here in panels else 0
        self.set_focus(self.query_one(panels[index % len(panels)]))

    def action_full(self) -> None:
        """The entry under the cursor, in full."""
        title, blocks = self.query_one(Treated).full
        if blocks:
            self.app.push_screen(FactSheet(title, blocks))

    def action_treatments(self) -> None:
        """Choose another treatment of the object."""
        reading, number = self.reading, self.number
        self.ask("treatments", lambda: reading.treatments(number), self._choose, self.tell)

    def _choose(self, answer: TreatmentsAnswer) -> None:
        from conservedb.tui.screens.treatments import TreatmentsSheet

        self.app.push_screen(TreatmentsSheet(answer, self.ref), self._treatment_chosen)

    def _treatment_chosen(self, ref: str | None) -> None:
        if ref is not None and ref != self.ref:
            self._ask_for(ref)

    def action_whole(self) -> None:
        """The object that is treated."""
        from conservedb.tui.screens.object import ObjectScreen

        self.app.push_screen(ObjectScreen(self.reading, self.number))

    def action_find(self) -> None:
        """Find anything without leaving."""
        self.app.push_screen(FindSheet(self.reading, self.number), self._found)

    def action_back(self) -> None:
        """To where this was opened from."""
        self.app.pop_screen()

    def _found(self, hit: Hit | None) -> None:
        if hit is None:
            return
        screen = screen_of(self.reading, hit)
        if screen is None:
            self.tell(no_screen(hit))
        else:
            self.app.push_screen(screen)
