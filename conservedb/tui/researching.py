"""What the research screen needs of whoever answers: one Protocol. Nothing heavy is imported."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Protocol

from textual.app import App

from conservedb.knowledge.research import Research, Tree
from conservedb.tui.recording import Completion

if TYPE_CHECKING:
    from conservedb.questions.answers import AsOf
    from conservedb.questions.research_answers import Counts, Page
    from conservedb.questions.research_compared import Compared
    from conservedb.questions.research_saved import SavedQuestion


class Stop:
    """Asks a question that is being answered in another thread to give up."""

    def __init__(self) -> None:
        self.asked = False

    def now(self) -> None:
        """Give up as soon as may be."""
        self.asked = True


@dataclass(frozen=True, slots=True)
class Asked:
    """All that an answer depends on.

    Attributes:
        on: the day of the question, of which the end counts; today where it is None.
        order: the column by which rows are sorted.
        descending: whether the last comes first.
    """

    research: Research
    on: AsOf | None = None
    order: str = "sureness"
    descending: bool = False

    def sorted_by(self, order: str) -> Asked:
        """Sorted by a column; by the same one again, the other way round."""
        turned = order == self.order and not self.descending
        return replace(self, order=order, descending=turned)


class LastQuestion:
    """The question that was left last; nothing before there was one. It goes with the program.

    Attributes:
        name: under which it is kept; "" where it is not.
    """

    def __init__(self) -> None:
        self.asked: Asked | None = None
        self.name = ""
        self._is_own = False

    def leave(self, asked: Asked, name: str, *, is_own: bool) -> None:
        """Have a question here when research is opened again.

        Args:
            is_own: whether somebody put it together; one that is not takes no such one's place.
        """
        if is_own or not self._is_own:
            self.asked, self.name, self._is_own = asked, name, is_own


class Researcher(Protocol):
    """Who answers. Calls block and come from worker threads; any may raise `Unanswered`."""

    def page(self, asked: Asked, start: int, length: int, stop: Stop) -> Page:
        """Some rows of an answer, from the row `start` on."""

    def counts(self, asked: Asked, stop: Stop) -> Counts:
        """How many rows answer, and how far they do."""

    def compare(self, research: Research, first: AsOf, second: AsOf, stop: Stop) -> Compared:
        """What answers on one of two days only, or more surely on one of them."""

    def bars(self, asked: Asked, by: str, width: int, stop: Stop) -> tuple[str, ...]:
        """The answer counted, as lines of bars of at most so many cells."""

    def survival(self, asked: Asked, width: int, stop: Stop) -> tuple[str, ...]:
        """How long the layers of the answer last, as lines of at most so many cells."""

    def write(self, asked: Asked, file: str, stop: Stop) -> str:
        """Write the answer into a new file; a sentence what was written."""

    def kept(self) -> tuple[SavedQuestion, ...]:
        """The questions that are kept under a name."""

    def keep(self, research: Research, name: str, who: str) -> str:
        """Keep a question under a name; a sentence that it was."""

    def closed(self, field: str) -> tuple[str, ...]:
        """The words to choose from in a condition; none where any words may be asked for."""

    def offers(self, field: str, typed: str) -> tuple[Completion, ...]:
        """What the letters typed into a condition may mean."""

    def completed(self, field: str, typed: str) -> str:
        """What the letters typed stand for where they are no name of their own."""

    def ensure_known(self, tree: Tree) -> None:
        """Refuse conditions that name what is not on record, with a sentence why."""


def researcher_of(app: App[None]) -> Researcher | None:
    """Who answers in this program; None where there is no database to ask."""
    found: Researcher | None = getattr(app, "researcher", None)
    return found


def last_question(app: App[None]) -> LastQuestion:
    """The question that was left last in this program."""
    found: LastQuestion = getattr(app, "last_question", None) or LastQuestion()
    return found
