"""Ticking parts and locations, so that what is recorded next is recorded on all of them."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from textual import on
from textual.message import Message

from conservedb.tui.recording import Field
from conservedb.tui.screens.looking import Looking
from conservedb.tui.screens.sheet import FactSheet
from conservedb.tui.text import plain
from conservedb.tui.widgets.parts import Parts

if TYPE_CHECKING:
    from conservedb.tui.desk import Desk

NO_DESK = "nothing can be recorded here: no database file is open for writing"


class Ticking(Looking):
    """The part of the object screen that ticks, and that waits for the cursor to come to rest."""

    class Settled(Message):
        """Follows the keys pressed before it on their way."""

        def __init__(self, act: Callable[[], None]) -> None:
            super().__init__()
            self.act = act

    @property
    def desk(self) -> Desk | None:
        """Who records, if anybody can."""
        desk: Desk | None = getattr(self.app, "desk", None)
        return desk

    def action_tick(self) -> None:
        """Tick or untick the row under the cursor."""
        self.settled(self._flip_tick)

    def action_tick_like(self) -> None:
        """Tick every location like the one under the cursor."""
        self.settled(self._tick_like)

    def action_tick_words(self) -> None:
        """Tick every location that bears some words."""
        desk = self.desk_or_say()
        if desk is None:
            return
        from conservedb.tui.screens.entry_sheet import EntrySheet

        words = plain("Ticks every location with all of these words in mark, name, kind, material.")
        field = Field("words", "words", required=True)
        number = self.number

        def look(answers: Mapping[str, str] | None) -> None:
            if answers is not None:
                typed = answers["words"]
                self._find(lambda: desk.where(number, typed))

        foot = "Enter ticks them, Esc goes back"
        self.open_over(EntrySheet("Tick by words", [([words], (field,))], foot), look)

    def untick_all(self) -> bool:
        """Take all ticks away; whether there were any."""
        parts = self.query_one(Parts)
        ticked = bool(parts.ticked)
        parts.untick(parts.ticked)
        self._show_ticked()
        return ticked

    def _flip_tick(self) -> None:
        parts, row = self.query_one(Parts), self.row
        if row is None or not row.mark:
            self.tell("the whole object needs no tick; choose a location or part of it")
        elif row.mark in parts.ticked:
            parts.untick((row.mark,))
        else:
            parts.tick((row,))
        self._show_ticked()

    def _tick_like(self) -> None:
        desk, row = self.desk_or_say(), self.row
        if desk is None:
            return
        if row is None or not row.mark:
            self.tell("choose a location or part first: all like it are ticked then")
            return
        number, mark = self.number, row.mark
        self._find(lambda: desk.like(number, mark))

    def _find(self, question: Callable[[], tuple[str, ...]]) -> None:
        """Tick what is found; keys wait for it."""
        self.hold("tick")

        def found(marks: tuple[str, ...]) -> None:
            self._tick(marks)
            self.release("tick")

        def refused(sentence: str) -> None:
            self.tell(sentence)
            self.release("tick")

        self.ask("tick", question, found, refused)

    def _tick(self, marks: tuple[str, ...]) -> None:
        parts = self.query_one(Parts)
        rows = {row.mark: row for row in parts.rows}
        parts.tick(rows[mark] for mark in marks if mark in rows)
        self._show_ticked()
        self.tell(f"{len(marks)} found and ticked; Esc takes ticks away" if marks else "none found")

    def _show_ticked(self) -> None:
        ticked = len(self.query_one(Parts).ticked)
        title = f" Parts: {ticked} ticked " if ticked else " Parts and locations "
        self.query_one("#tree").border_title = plain(title)

    def say(self, sentence: str) -> None:
        """Say something that must be read in full: in the line at the foot, or over the screen."""
        if len(sentence) < self.size.width - 2:
            self.tell(sentence)
        else:
            self.app.push_screen(FactSheet("Not done", [[("why not", sentence)]]))

    def settled(self, then: Callable[[], None]) -> None:
        """Do something once the keys pressed before have moved the cursor; later ones wait."""
        self.hold("settled")

        def act() -> None:
            if self.app.screen is self:  # a key before may have led elsewhere
                then()
            self.release("settled")

        (self.focused or self).post_message(self.Settled(act))

    @on(Settled)
    def _pass_on(self, message: Settled) -> None:
        """The keys pressed before went this way, up to the app."""
        message.stop()
        self.app.call_later(message.act)

    def desk_or_say(self) -> Desk | None:
        """Who records; says so where nobody can."""
        if self.desk is None:
            self.tell(NO_DESK)
        return self.desk
