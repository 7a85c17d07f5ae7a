"""The start: find anything, and what needs attention."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual import on
from textual.app import ComposeResult
from textual.widgets import Static

from conservedb.tui.about import About, about_of
from conservedb.tui.actions import bindings
from conservedb.tui.drafts_here import DRAFT, draft_group
from conservedb.tui.hits import no_screen, start_groups
from conservedb.tui.in_order import Holding
from conservedb.tui.text import QUIET, STRONG, WARNING, joined, plain, styled, two_ends
from conservedb.tui.widgets.find_panel import FindPanel
from conservedb.tui.widgets.key_line import KeyLine
from conservedb.tui.you import you

if TYPE_CHECKING:
    from conservedb.questions.answers import StartAnswer
    from conservedb.tui.desk import Desk
    from conservedb.tui.reading import Reading
    from conservedb.tui.recording import Form, Outcome

WIDEST = 112  # as in the style sheet


class StartScreen(Holding[None]):
    """Painted before the database is opened; filled when the answers come."""

    NAME = "start"
    BINDINGS = bindings(NAME)
    AUTO_FOCUS = "#find-line"

    def __init__(self, reading: Reading) -> None:
        super().__init__()
        self.reading = reading
        self._counts = ""
        self._answer: StartAnswer | None = None

    def compose(self) -> ComposeResult:
        """Name of the program and file, a sentence if something is wrong, the find line."""
        yield Static(id="masthead")
        yield Static(id="notice")
        yield FindPanel(self.reading)
        yield KeyLine(self.NAME)

    def on_mount(self) -> None:
        """Paint first, ask afterwards."""
        self._show_masthead()
        self.call_after_refresh(self.action_refresh)

    def on_resize(self) -> None:
        """The masthead is composed for a width."""
        self._show_masthead()

    def action_refresh(self) -> None:
        """Ask what needs attention."""
        self.ask("start", self.reading.start, self._show_start)

    def action_find(self) -> None:
        """Go to the line and begin anew; within words it is the sign itself ("1902/7")."""
        panel = self.query_one(FindPanel)
        if panel.line.has_focus and panel.words:
            panel.line.insert_text_at_cursor("/")
        else:
            panel.clear()

    def action_back(self) -> None:
        """Forget what was typed, from wherever the cursor is."""
        panel = self.query_one(FindPanel)
        if not panel.words and panel.line.has_focus:
            self.tell("this is the start; Ctrl+Q leaves the program")
        panel.clear()

    def action_new_object(self) -> None:
        """The form for an object."""
        desk = self._desk()
        if desk is None:
            self.tell("nothing can be recorded here: no database file is open for writing")
            return
        self._open_form(desk, About(desk.database, "object"))

    def action_research(self) -> None:
        """Ask the whole record."""
        from conservedb.tui.screens.research import ResearchScreen

        self.app.push_screen(ResearchScreen(self.reading))

    def on_screen_resume(self) -> None:
        """Back from elsewhere: drafts may have come or gone, and a name may be known."""
        if self._answer is not None:
            self._show_masthead()
            self._list()

    def refuse(self, sentence: str) -> None:
        """Show why there is no answer, where the eye is."""
        self._notice(sentence)

    def tell(self, sentence: str, ink: str = WARNING) -> None:
        """Show a message for a while."""
        self.query_one(KeyLine).tell(sentence, ink)

    @on(FindPanel.Opened)
    def _open(self, event: FindPanel.Opened) -> None:
        desk = self._desk()
        about = about_of(event.hit.mark) if event.hit.kind == DRAFT else None
        if about is not None and desk is not None:
            self._open_form(desk, about)
            return
        from conservedb.tui.screens.opening import screen_of

        screen = screen_of(self.reading, event.hit)
        if screen is None:
            self.tell(no_screen(event.hit))
        else:
            self.app.push_screen(screen)

    def _show_start(self, answer: StartAnswer) -> None:
        self._counts = ", ".join(f"{number} {what}" for what, number in answer.counts.items())
        self._notice("; ".join(self.reading.remarks()))
        self._show_masthead()
        self._answer = answer
        self._list()

    def _list(self) -> None:
        assert self._answer is not None
        desk = self._desk()
        drafts = draft_group(desk.database) if desk is not None else ()
        self.query_one(FindPanel).show_before([*drafts, *start_groups(self._answer)])

    def _desk(self) -> Desk | None:
        desk: Desk | None = getattr(self.app, "desk", None)
        return desk

    def _open_form(self, desk: Desk, about: About) -> None:
        """Have a form made and open it; keys wait for it."""
        from conservedb.tui.screens.desk_form import DeskForm

        self.hold("form")

        def refused(sentence: str) -> None:
            self.refuse(sentence)
            self.release("form")

        def made(form: Form) -> None:
            self.open_over(DeskForm(form, desk), lambda outcome: self._recorded(about, outcome))
            self.release("form")

        self.ask("form", lambda: desk.form(about), made, refused)

    def _recorded(self, about: About, outcome: Outcome | None) -> None:
        """Saved: say so; a new object is opened."""
        if outcome is None:
            return
        self.action_refresh()
        self.tell(outcome.saved, STRONG)
        if about.kind == "object" and not about.record:
            from conservedb.tui.screens.object import ObjectScreen

            screen = ObjectScreen(self.reading, outcome.key)
            screen.saved_before = outcome
            self.app.push_screen(screen)

    def _notice(self, sentence: str) -> None:
        notice = self.query_one("#notice", Static)
        notice.display = bool(sentence)
        notice.update(plain(f"! {sentence}", "$hazard"))

    def _show_masthead(self) -> None:
        left = joined((styled("conservedb", STRONG), plain(self.reading.name)), "  ")
        left = joined((left, you(self.app)), "   ")
        room = max(min(self.size.width - 4, WIDEST), 1)
        counts = plain(self._counts, QUIET).truncate(
            max(room - left.cell_length - 2, 0), ellipsis=True
        )
        self.query_one("#masthead", Static).update(two_ends(left, counts, room))
