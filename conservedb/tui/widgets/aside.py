"""Beside or below the section: the history of what is selected, and details of one line."""

from __future__ import annotations

from collections.abc import Iterable

from textual.app import ComposeResult
from textual.containers import Horizontal, Vertical

from conservedb.questions.answers import AsOf, HistoryAnswer
from conservedb.tui.details import Fact
from conservedb.tui.text import plain
from conservedb.tui.widgets.facts import Facts
from conservedb.tui.widgets.history import History


class Aside(Horizontal):
    """Where there is room both are in view; else the details show while the section is used."""

    def __init__(self) -> None:
        super().__init__(id="aside")
        self.title = ""
        self.facts: tuple[Fact, ...] = ()

    def compose(self) -> ComposeResult:
        """Two panels, of which style may hide one."""
        with Vertical(id="history-panel", classes="panel"):
            yield History()
        with Vertical(id="details-panel", classes="panel"):
            details = Facts("details")
            details.can_focus = False
            yield details

    def show_history(self, answer: HistoryAnswer, on: AsOf, *, is_today: bool) -> None:
        """The history of the object or of a part or location."""
        panel = self.query_one("#history-panel")
        panel.border_title = plain(f" History of {answer.mark or answer.object} ")
        self.query_one(History).show_history(answer, on, is_today=is_today)

    def show_facts(self, title: str, facts: Iterable[Fact]) -> None:
        """Details of the line under the cursor."""
        self.title, self.facts = title, tuple(facts)
        self.query_one("#details-panel").border_title = plain(f" {title} ")
        self.query_one(Facts).show_facts(self.facts)

    def turn_to(self, *, details: bool, both: bool) -> None:
        """Show the details or the history, or both where there is room for both."""
        self.query_one("#details-panel").display = both or details
        self.query_one("#history-panel").display = both or not details
