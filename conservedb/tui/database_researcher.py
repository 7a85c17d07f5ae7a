"""Answers researchers from a database file. Nothing of the store is imported before it is asked."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, TypeVar

from conservedb.knowledge.research import Tree
from conservedb.tui.reading import Connection, Database, Unanswered
from conservedb.tui.recording import Completion
from conservedb.tui.researching import Asked, Stop

if TYPE_CHECKING:
    import datetime

    from conservedb.knowledge.research import Research
    from conservedb.questions.answers import AsOf
    from conservedb.questions.research_answers import Counts, Page
    from conservedb.questions.research_compared import Compared
    from conservedb.questions.research_saved import SavedQuestion

Answer = TypeVar("Answer")
_LOOKS_UP = 1_000_000
"""Instructions of the database, hundredths of a second, after which it looks whether to stop."""


class DatabaseResearcher:
    """Asks the file that a `Database` reads."""

    def __init__(self, reading: Database) -> None:
        self._reading = reading

    def page(self, asked: Asked, start: int, length: int, stop: Stop) -> Page:
        """See `Researcher`."""
        from conservedb.questions.research import page

        order = (asked.order, asked.descending)
        return self._ask(
            asked, stop, lambda c, day: page(c, asked.research, day, *order, start, length)
        )

    def counts(self, asked: Asked, stop: Stop) -> Counts:
        """See `Researcher`."""
        from conservedb.questions.research import counts

        return self._ask(asked, stop, lambda c, day: counts(c, asked.research, day))

    def compare(self, research: Research, first: AsOf, second: AsOf, stop: Stop) -> Compared:
        """See `Researcher`."""
        from conservedb.questions.research_compared import compare

        return self._ask(Asked(research), stop, lambda c, _: compare(c, research, first, second))

    def bars(self, asked: Asked, by: str, width: int, stop: Stop) -> tuple[str, ...]:
        """See `Researcher`."""
        from conservedb.questions.research import rows
        from conservedb.questions.tally import counted
        from conservedb.tui.looking_lines import lines_of_bars

        research = asked.research

        def question(connection: Connection, day: datetime.date) -> tuple[str, ...]:
            found = counted(connection, research, rows(connection, research, day), by)
            return lines_of_bars(found, asked, by, width)

        return self._ask(asked, stop, question)

    def survival(self, asked: Asked, width: int, stop: Stop) -> tuple[str, ...]:
        """See `Researcher`."""
        from conservedb.questions.research import rows
        from conservedb.questions.survival import survival
        from conservedb.tui.looking_lines import lines_of_survival

        research = asked.research

        def question(connection: Connection, day: datetime.date) -> tuple[str, ...]:
            found = survival(connection, research, rows(connection, research, day), day)
            return lines_of_survival(found, asked, width)

        return self._ask(asked, stop, question)

    def write(self, asked: Asked, file: str, stop: Stop) -> str:
        """See `Researcher`."""
        from conservedb.tui.writing_answers import write

        return self._ask(asked, stop, lambda c, day: write(c, asked, day, file))

    def kept(self) -> tuple[SavedQuestion, ...]:
        """See `Researcher`."""
        from conservedb.questions.research_saved import saved_questions

        return self._reading.ask(saved_questions)

    def keep(self, research: Research, name: str, who: str) -> str:
        """See `Researcher`."""
        from conservedb.exchange.keeping_questions import keep_question
        from conservedb.store.connect import ensure_writable
        from conservedb.store.opening import today

        engine, day = self._reading.engine(), self._reading.ask(today)

        def work() -> str:
            ensure_writable(engine)
            written = keep_question(engine, name, research, who, day)
            if written.faults:
                raise Unanswered("; ".join(fault.sentence() for fault in written.faults))
            return f"kept as {name}; l lists all that are kept"

        return self._reading.answered(work)

    def closed(self, field: str) -> tuple[str, ...]:
        """See `Researcher`."""
        from conservedb.questions.research_offers import closed

        return closed(field)

    def offers(self, field: str, typed: str) -> tuple[Completion, ...]:
        """See `Researcher`."""
        from conservedb.questions.research_offers import offers

        return self._reading.ask(
            lambda connection: tuple(Completion(*one) for one in offers(connection, field, typed))
        )

    def completed(self, field: str, typed: str) -> str:
        """See `Researcher`."""
        from conservedb.questions.research_offers import completed

        return self._reading.ask(lambda connection: completed(connection, field, typed))

    def ensure_known(self, tree: Tree) -> None:
        """See `Researcher`."""
        from conservedb.questions.research_offers import ensure_known

        self._reading.ask(lambda connection: ensure_known(connection, tree))

    def _ask(
        self,
        asked: Asked,
        stop: Stop,
        question: Callable[[Connection, datetime.date], Answer],
    ) -> Answer:
        """Put a question to the file that can be stopped meanwhile, for its day."""
        import datetime

        from conservedb.store.connect import raw_of
        from conservedb.store.opening import today

        def put(connection: Connection) -> Answer:
            if asked.on is None:
                day = today(connection)
            else:
                day = datetime.date.fromordinal(asked.on.last)
            raw = raw_of(connection)
            raw.set_progress_handler(lambda: stop.asked, _LOOKS_UP)
            try:
                return question(connection, day)
            finally:
                raw.set_progress_handler(None, 0)

        if stop.asked:
            raise Unanswered("stopped")
        return self._reading.ask(put)
