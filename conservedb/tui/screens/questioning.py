"""What the research screen asks: rows as they come into view, counts, and how that is stopped."""

from __future__ import annotations

from collections.abc import Callable
from time import monotonic
from typing import TYPE_CHECKING, TypeVar

from textual import on
from textual.timer import Timer

from conservedb.tui.in_order import Typed
from conservedb.tui.researching import Asked, Researcher, Stop
from conservedb.tui.widgets.answers_table import PAGE, AnswersTable

if TYPE_CHECKING:
    from conservedb.questions.research_answers import Counts, Page

Answer = TypeVar("Answer")
SOON = 0.4  # seconds for which nothing is said of waiting
TICK = 0.2
EMPTY = "nothing is asked yet: a adds a condition, r asks for all on record"
STOPPED = "stopped; r asks again"


class Questioning(Typed[None]):
    """Asks one question at a time; whatever is outdated is stopped, not only dropped."""

    researcher: Researcher | None

    def __init__(self) -> None:
        super().__init__()
        self.counts: Counts | None = None
        self.said = EMPTY
        """What stands above the table while nothing is waited for."""
        self._stops: dict[str, Stop] = {}
        self._since = 0.0
        self._ticking: Timer | None = None

    @property
    def asked(self) -> Asked:
        """The question as it stands."""
        raise NotImplementedError

    def say_answer(self, words: str) -> None:
        """Show how the answer stands, above the table."""
        raise NotImplementedError

    def on_unmount(self) -> None:
        """Nobody waits any longer."""
        for stop in self._stops.values():
            stop.now()

    @property
    def waiting(self) -> bool:
        """Whether an answer is still to come."""
        return bool(self._stops)

    def put_question(self, *, counted: bool = False) -> None:
        """Ask anew, from the first row.

        Args:
            counted: whether the counts are known already, as after sorting.
        """
        self.stop_all()
        counts = self.counts if counted else None
        self.counts = counts
        table = self.query_one(AnswersTable)
        table.begin(self.asked)
        self._ask_rows(0, PAGE)
        if counts is not None:
            table.show_total(counts.total)
        else:
            self.said = "asking ..."
            self.say_answer(self.said)

    def stop_all(self) -> bool:
        """Give up whatever is waited for; whether anything was."""
        waiting = self.waiting
        for slot, stop in self._stops.items():
            stop.now()
            self.forget(slot)
        self._stops.clear()
        if waiting:
            self.query_one(AnswersTable).forget_wanted()
        return waiting

    def stoppable(
        self,
        slot: str,
        question: Callable[[Stop], Answer],
        then: Callable[[Answer], None],
        otherwise: Callable[[str], None] | None = None,
    ) -> None:
        """Ask in a slot; what was asked there before is stopped, and waiting is told.

        Args:
            slot: what is asked about.
            question: blocks until it is answered or stopped.
            then: takes the answer.
            otherwise: takes the sentence why there is none; by default it is shown as that.
        """
        if slot in self._stops:
            self._stops.pop(slot).now()
        if not self._stops:
            self._since = monotonic()
        stop = self._stops[slot] = Stop()

        def answered(answer: Answer) -> None:
            self._came(slot)
            then(answer)
            self.show_state()

        def refused(sentence: str) -> None:
            self._came(slot)
            (otherwise or self.refuse)(sentence)
            self.show_state()

        self.ask(slot, lambda: question(stop), answered, refused)
        if self._ticking is None:
            self._ticking = self.set_interval(TICK, self.show_state)

    def show_state(self) -> None:
        """Counts, or how long has been waited."""
        seconds = monotonic() - self._since
        if not self.waiting:
            if self._ticking is not None:
                self._ticking.stop()
                self._ticking = None
            self.say_answer(self.said)
        elif seconds > SOON:
            what = "counting" if "counts" in self._stops else "asking"
            so_far = f"{self.said}; " if self.counts is not None else ""
            self.say_answer(f"{so_far}{what} ... {seconds:.0f} s, Esc stops")

    def _came(self, slot: str) -> None:
        self._stops.pop(slot, None)

    @on(AnswersTable.Wanted)
    def _rows_wanted(self, event: AnswersTable.Wanted) -> None:
        event.stop()
        if event.asked == self.asked:
            self._ask_rows(event.start, event.length)

    def _ask_rows(self, start: int, length: int) -> None:
        researcher, asked = self.researcher, self.asked
        if researcher is not None:
            self.stoppable(
                "rows", lambda stop: researcher.page(asked, start, length, stop), self._show_rows
            )

    def _show_rows(self, page: Page) -> None:
        self.query_one(AnswersTable).show_rows(page.start, page.rows)
        researcher, asked = self.researcher, self.asked
        if self.counts is None and researcher is not None and "counts" not in self._stops:
            self.said = f"{len(page.rows)} rows or more" if page.rows else "no row"
            self.stoppable("counts", lambda stop: researcher.counts(asked, stop), self._show_counts)

    def _show_counts(self, counts: Counts) -> None:
        self.counts = counts
        self.said = counts.sentence
        self.query_one(AnswersTable).show_total(counts.total)
