"""The one way to the data: opens the database when first asked, answers one question a call.

Nothing of the store is imported before the first question, so that the screen is painted first.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from pathlib import Path
from threading import Lock
from typing import TYPE_CHECKING, Any, Protocol, TypeAlias, TypeVar

if TYPE_CHECKING:
    from conservedb.questions.answers import (
        AsOf,
        HistoryAnswer,
        ObjectAnswer,
        PlaceAnswer,
        StartAnswer,
    )
    from conservedb.questions.find_answers import FoundAnswer
    from conservedb.questions.material_answers import MaterialAnswer
    from conservedb.questions.removal_answers import RemovalAnswer
    from conservedb.questions.treatment_answers import TreatmentAnswer, TreatmentsAnswer


Answer = TypeVar("Answer")
Connection: TypeAlias = Any
Engine: TypeAlias = Any
"""Of the library of the store, which no screen knows."""


class Unanswered(Exception):
    """The question cannot be answered; the message says why and what to do."""


class Reading(Protocol):
    """What the screens ask. Calls block and come from worker threads."""

    @property
    def name(self) -> str:
        """A short name for what is read from."""

    def remarks(self) -> tuple[str, ...]:
        """Sentences that the person should know about this database, once it is open."""

    def start(self) -> StartAnswer:
        """What needs attention."""

    def find(self, text: str) -> FoundAnswer:
        """Records in which every one of these words begins some word."""

    def as_of(self, text: str) -> AsOf:
        """A day or span from words; "" is today."""

    def object(self, number: str, on: AsOf) -> ObjectAnswer:
        """An object on a day."""

    def place(self, number: str, mark: str, on: AsOf) -> PlaceAnswer:
        """What lies at a place on a day."""

    def history(self, number: str, mark: str) -> HistoryAnswer:
        """The history of an object (`mark` "") or of a part or place of it."""

    def material(self, word: str, on: AsOf) -> MaterialAnswer:
        """A material or class, and where it lies on a day."""

    def removal(self, number: str, mark: str, layer: str, on: AsOf, band: str) -> RemovalAnswer:
        """How a layer may come off; `layer` "" is the likeliest, `band` "" the department's."""

    def treatments(self, number: str) -> TreatmentsAnswer:
        """The treatments of an object."""

    def treatment(self, number: str, ref: str) -> TreatmentAnswer:
        """One treatment of an object, as it stands today."""


class Database:
    """A database file."""

    def __init__(self, path: Path) -> None:
        self.path = path
        self._engine: Engine = None
        self._remarks: tuple[str, ...] = ()
        self._opening = Lock()

    @property
    def name(self) -> str:
        """The name of the file."""
        return self.path.name

    def remarks(self) -> tuple[str, ...]:
        """What opening the file brought to light: an upgrade, an unsafe place."""
        return self._remarks

    def start(self) -> StartAnswer:
        """See `Reading`."""
        from conservedb.questions.start import start
        from conservedb.store.opening import today

        return self.ask(lambda connection: start(connection, today(connection)))

    def find(self, text: str) -> FoundAnswer:
        """See `Reading`."""
        from conservedb.questions.find import find

        return self.ask(lambda connection: find(connection, text))

    def as_of(self, text: str) -> AsOf:
        """See `Reading`."""
        from conservedb.questions.asof import as_of
        from conservedb.store.opening import today

        return self.ask(lambda connection: as_of(text, today(connection)))

    def object(self, number: str, on: AsOf) -> ObjectAnswer:
        """See `Reading`."""
        from conservedb.questions.objects import object_on

        return self.ask(lambda connection: object_on(connection, number, on))

    def place(self, number: str, mark: str, on: AsOf) -> PlaceAnswer:
        """See `Reading`."""
        from conservedb.questions.place import place

        return self.ask(lambda connection: place(connection, number, mark, on))

    def history(self, number: str, mark: str) -> HistoryAnswer:
        """See `Reading`."""
        from conservedb.questions.history import history

        return self.ask(lambda connection: history(connection, number, mark))

    def material(self, word: str, on: AsOf) -> MaterialAnswer:
        """See `Reading`."""
        from conservedb.questions.material import material_answer

        return self.ask(lambda connection: material_answer(connection, word, on))

    def removal(self, number: str, mark: str, layer: str, on: AsOf, band: str) -> RemovalAnswer:
        """See `Reading`."""
        from conservedb.questions.removal import removal

        return self.ask(lambda connection: removal(connection, number, mark, layer, on, band))

    def treatments(self, number: str) -> TreatmentsAnswer:
        """See `Reading`."""
        from conservedb.questions.treatment import treatments

        return self.ask(lambda connection: treatments(connection, number))

    def treatment(self, number: str, ref: str) -> TreatmentAnswer:
        """See `Reading`."""
        from conservedb.questions.treatment import treatment
        from conservedb.store.opening import today

        return self.ask(lambda connection: treatment(connection, number, ref, today(connection)))

    def ask(self, question: Callable[[Connection], Answer]) -> Answer:
        """Put a question to one unchanging state of the file.

        Raises:
            Unanswered: the file cannot be used, or there is no such thing in it.
        """
        from conservedb.store.connect import reading

        def put() -> Answer:
            with reading(self.engine()) as connection:
                return question(connection)

        return self.answered(put)

    def answered(self, work: Callable[[], Answer]) -> Answer:
        """Do something with the file; what cannot be is said in a sentence.

        Raises:
            Unanswered: the file cannot be used, or there is no such thing in it.
        """
        from conservedb.dates import DateError
        from conservedb.knowledge.research_words import AskError
        from conservedb.questions.answers import NoSuch
        from conservedb.store.problems import DatabaseProblem

        try:
            return work()
        except (AskError, DatabaseProblem, NoSuch, DateError) as problem:
            raise Unanswered(str(problem)) from problem
        except Exception as problem:
            if not isinstance(problem.__cause__, sqlite3.Error):
                raise
            raise Unanswered(
                f"{self.path} could not be read ({problem.__cause__}); if somebody is saving just"
                " now, press r to read again"
            ) from problem

    def engine(self) -> Engine:
        """The file, opened when it is first asked for."""
        from conservedb.store.opening import open_database, surroundings

        with self._opening:
            if self._engine is None:
                self._engine, upgraded = open_database(self.path)
                warning = surroundings(self.path)
                remarks = upgraded.remarks if upgraded is not None else ()
                self._remarks = (*((warning,) if warning else ()), *remarks)
            return self._engine
