"""Researchers' questions that are kept under a name."""

from __future__ import annotations

from dataclasses import dataclass

from sqlalchemy import BindParameter, Connection, bindparam, select

from conservedb.knowledge.research import Research
from conservedb.knowledge.research_told import describe
from conservedb.knowledge.research_words import AskError, read_conditions
from conservedb.questions.answers import NoSuch
from conservedb.questions.asking import Question, Row, blank, dated
from conservedb.questions.basics import When
from conservedb.questions.evidence import when
from conservedb.questions.nearest import nearest
from conservedb.records.people import person
from conservedb.records.research import saved_question
from conservedb.store.keys import fold

_NAME: BindParameter[str] = bindparam("name")
_KEPT = (
    select(
        saved_question.c.name,
        saved_question.c.rows,
        blank(saved_question.c.conditions).label("conditions"),
        *dated(saved_question, "saved"),
        blank(person.c.name).label("person"),
        blank(saved_question.c.note).label("note"),
    )
    .select_from(saved_question)
    .outerjoin(person, person.c.id == saved_question.c.person_id)
    .order_by(saved_question.c.name_folded)
)
ALL = Question(_KEPT)
ONE = Question(_KEPT.where(saved_question.c.name_folded == _NAME))
STATEMENTS = (ALL, ONE)
_SAVED = ALL.at("saved_words")


@dataclass(frozen=True, slots=True)
class SavedQuestion:
    """A question kept under a name, by whom and when."""

    name: str
    rows: str
    conditions: str
    saved: When
    person: str
    note: str

    @property
    def research(self) -> Research:
        """The question itself.

        Raises:
            AskError: its conditions cannot be read, or no more.
        """
        return Research(self.rows, read_conditions(self.conditions))

    @property
    def question(self) -> str:
        """The question as it is asked, in the words that were kept."""
        return f"{self.rows} where {self.conditions}" if self.conditions else self.rows

    @property
    def description(self) -> str:
        """The question as a sentence; "" where its conditions cannot be read."""
        try:
            return describe(self.research)
        except AskError:
            return ""


def saved_questions(connection: Connection) -> tuple[SavedQuestion, ...]:
    """Every question that is kept, in the order of their names."""
    return tuple(map(_kept, ALL.all(connection)))


def saved(connection: Connection, name: str) -> SavedQuestion:
    """The question of a name, compared without case and accents.

    Raises:
        NoSuch: there is none.
    """
    found = ONE.first(connection, name=fold(name))
    if found is None:
        names = {fold(row.name): row.name for row in ALL.all(connection)}
        raise NoSuch("saved question", name, nearest(fold(name), names))
    return _kept(found)


def _kept(row: Row) -> SavedQuestion:
    return SavedQuestion(
        row.name, row.rows, row.conditions, when(row, _SAVED), row.person, row.note
    )
