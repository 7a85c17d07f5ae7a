"""Research: a question of plain conditions, and below it what answers, as a table."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.events import Key, Paste

from conservedb.knowledge.research import And, Research
from conservedb.tui.actions import actions_of
from conservedb.tui.researching import last_question, researcher_of
from conservedb.tui.screens.research_kept import Kept
from conservedb.tui.text import plain
from conservedb.tui.widgets.answers_table import AnswersTable
from conservedb.tui.widgets.key_line import KeyLine
from conservedb.tui.widgets.lines import Lines
from conservedb.tui.widgets.title import Title

if TYPE_CHECKING:
    from conservedb.tui.reading import Reading


_MOVES = {
    kind: {
        key: binding.action
        for binding in kind.BINDINGS
        if isinstance(binding, Binding)
        for key in binding.key.split(",")
    }
    for kind in (Lines, AnswersTable)
}
"""How one moves in the lists of this screen."""


class ResearchScreen(Kept):
    """Asks the whole record; nothing is asked before there is a condition, or `r` is pressed.

    Where no question is given, it begins with the one that was left last.
    """

    NAME = "research"
    CSS_PATH = "research.tcss"
    KEYS = {  # noqa: RUF012
        **{key: one.target for one in actions_of(NAME) for key in one.keys},
        **dict.fromkeys(("tab", "shift+tab"), "panel"),
        "enter": "choose",
    }
    AUTO_FOCUS = "#conditions"

    def __init__(self, reading: Reading, research: Research | None = None) -> None:
        super().__init__(research)
        self.reading = reading
        self._given = self.research if research is not None else None

    def compose(self) -> ComposeResult:
        """Title, the question, the answer, keys."""
        yield Title("Research")
        with Vertical(id="question", classes="panel"):
            yield Lines("conditions")
        with Vertical(id="answer", classes="panel"):
            yield AnswersTable()
        yield KeyLine(self.NAME)

    def on_mount(self) -> None:
        """Ask what was given or left last, if anything was."""
        self.researcher = researcher_of(self.app)
        reading = self.reading
        last = last_question(self.app)
        if self._given is None and last.asked is not None:
            self.begin_with(last.asked, last.name)
        self.ask("today", lambda: reading.as_of(""), self.show_today)
        self.show_question()
        self.say_answer(self.said)
        if self.researcher is None:
            self.refuse("nothing can be asked here: no database file is open")
        elif self._given is not None or self.where != And():
            self.put_question()
        self.begin()

    def on_unmount(self) -> None:
        """The question stays for the next time."""
        is_own = self.research != self._given
        last_question(self.app).leave(self.asked, self.name_kept, is_own=is_own)

    async def take(self, event: Key | Paste) -> None:
        """An action, or a move in the list that is in use; each before the next is looked at."""
        if isinstance(event, Paste):
            return
        used = self.query_one(AnswersTable) if self.at_answer else self.query_one(Lines)
        if event.key in self.KEYS:
            await self.run_action(self.KEYS[event.key])
        elif event.key in _MOVES[type(used)]:
            await used.run_action(_MOVES[type(used)][event.key])

    def say_answer(self, words: str) -> None:
        """See `Questioning`."""
        self.query_one("#answer").border_title = plain(f" {words} ")

    def refuse(self, sentence: str) -> None:
        """Why there is no answer, above the table and below all."""
        self.said = sentence
        self.show_state()
        self.tell(sentence)
