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

    from conservedb.questions.research_answers import Counts, Page

Answer = TypeVar("Answer")
_LOOKS_UP = 20_000
"""Instructions of the database, about a millisecond, after which it looks whether to stop."""


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
