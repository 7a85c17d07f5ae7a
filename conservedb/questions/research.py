"""What a researcher asks of the whole record: how many answer and how far, and which.

The conditions become one statement of the database; what is counted and what is shown are
worked out there. Each statement is made once for a question and kept. Only rules of the trade
are tried in Python, on the objects that the other conditions leave: a question for nothing but
a rule looks at every object.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from dataclasses import replace

from sqlalchemy import Connection

from conservedb.knowledge.layers import state
from conservedb.knowledge.research import Research, conditions
from conservedb.knowledge.research_words import askable
from conservedb.questions import research_answers as answers
from conservedb.questions.answers import NoSuch
from conservedb.questions.asking import Row
from conservedb.questions.basics import When
from conservedb.questions.research_answers import COLUMNS, Counts, Page, ResearchRow
from conservedb.questions.research_found import CERTAIN, POSSIBLE, UNIDENTIFIED
from conservedb.questions.research_meanings import STATEMENTS as _MEANINGS
from conservedb.questions.research_meanings import Meanings, meaning_of
from conservedb.questions.research_rules import broken_at, without_rules
from conservedb.questions.research_statements import answering_objects, counting, paging

STATEMENTS = _MEANINGS
SURENESS_OF = {
    CERTAIN: answers.CERTAIN,
    POSSIBLE: answers.POSSIBLE,
    UNIDENTIFIED: answers.UNIDENTIFIED,
}
"""How far a row answers, from what the database says of it."""
_WHAT = ("", "layer", "agent")
_DATE, _MASK, _LAYERS = 12, 18, 19


def counts(connection: Connection, research: Research, today: datetime.date) -> Counts:
    """How many rows answer a question certainly, possibly, and as far as nobody identified them.

    Raises:
        AskError: rows of that kind cannot be asked so.
        NoSuch: a material, person or word of a closed list is not on record.
        Ambiguous: a word may mean several of them.
    """
    question = counting(research, meanings_on(connection, research, today.toordinal()))
    found = dict(question.tuples(connection, today=today.toordinal()))
    return Counts(*(found.get(score, 0) for score in SURENESS_OF))


def page(
    connection: Connection,
    research: Research,
    today: datetime.date,
    order: str = "sureness",
    descending: bool = False,
    start: int = 0,
    length: int = 50,
) -> Page:
    """Some rows of the answer, sorted by a column, and by date where that leaves rows equal.

    Unless another column is named, what answers for certain comes first.

    Args:
        order: one of COLUMNS.
        start: how many rows come before.
        length: how many rows to give at most.

    Raises:
        NoSuch: there is no such column; or as of `counts`.
        Ambiguous: as of `counts`.
    """
    if order not in COLUMNS:
        raise NoSuch("column", order, COLUMNS)
    question = paging(
        research, meanings_on(connection, research, today.toordinal()), order, descending
    )
    found = question.tuples(connection, today=today.toordinal(), start=start, length=length)
    return Page(research, tuple(map(row_of, found)), start)


def rows(
    connection: Connection,
    research: Research,
    today: datetime.date,
    order: str = "sureness",
    descending: bool = False,
) -> Iterator[ResearchRow]:
    """Every row of the answer, in the order of its pages.

    Raises:
        NoSuch: as of `page`.
        Ambiguous: as of `page`.
    """
    question = paging(
        research, meanings_on(connection, research, today.toordinal()), order, descending
    )
    given: dict[str, int | str | None] = {"today": today.toordinal(), "start": 0, "length": -1}
    yield from question.each(connection, given, row_of)


def meanings_on(connection: Connection, research: Research, day: int) -> Meanings:
    """What the values mean; rules are tried on the objects that all else leaves.

    Raises:
        AskError: rows of that kind cannot be asked so.
        NoSuch: as of `counts`.
        Ambiguous: as of `counts`.
    """
    where = askable(research).where
    found = {one: meaning_of(connection, one) for one in conditions(where)}
    ruled = [one for one in found if one.field == "rule"]
    if ruled:
        rest = replace(research, where=without_rules(where))
        question = answering_objects(rest, tuple(found.items()))
        objects = [row.object_id for row in question.all(connection, today=day)]
        found |= {one: broken_at(connection, found[one].words[0], objects, day) for one in ruled}
    return tuple(found.items())


def row_of(row: Row) -> ResearchRow:
    """A row as the database gives it, made into one of the answer."""
    words = (SURENESS_OF[row[0]], *row[1:4], _WHAT[row[4]], *row[5:_DATE])
    standing = state(row[_MASK]) if row[_MASK] else ""
    return ResearchRow._make((*words, When(*row[_DATE:_MASK]), standing, row[_LAYERS]))
