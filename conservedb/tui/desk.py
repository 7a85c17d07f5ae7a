"""What the screens need to record: a `Recorder` that also makes the forms. Nothing heavy."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Protocol

from conservedb.tui.about import About
from conservedb.tui.recording import Form, Outcome, Recorder

if TYPE_CHECKING:
    from conservedb.exchange.amending import Shown


class Desk(Recorder, Protocol):
    """Who records. Calls block and come from worker threads; any may raise `Unanswered`."""

    database: str

    def ensure_writable(self) -> None:
        """Refuse, with a sentence why, where the database may only be read."""

    def form(self, about: About) -> Form:
        """The form for a new record, or for amending one."""

    def kind_chosen(self, form: Form, values: Mapping[str, str]) -> Mapping[str, str]:
        """What the fields of a step hold once another kind of step is chosen."""

    def next_form(self, form: Form, values: Mapping[str, str], outcome: Outcome) -> Form | None:
        """The form that opens once this one is saved, if any."""

    def like(self, number: str, mark: str) -> tuple[str, ...]:
        """Marks of the locations that are like this one."""

    def where(self, number: str, words: str) -> tuple[str, ...]:
        """Marks of the locations that bear all these words."""

    def shown(self, about: About) -> Shown:
        """A record as it is on record now, with its version."""

    def withdraw(self, about: About, reason: str, version: int, *, together: bool = False) -> str:
        """Withdraw a record that was seen at this version; a sentence what went."""

    def take_back(self, *, undone: bool) -> str:
        """Undo my last change, or redo what I undid; a sentence what was done."""
