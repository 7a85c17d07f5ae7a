"""A researcher's question asked for two days: what answers on one of them only."""

from __future__ import annotations

import json
from dataclasses import dataclass

from sqlalchemy import Connection

from conservedb.knowledge.research import And, Condition, Research, conditions
from conservedb.questions.answers import AsOf
from conservedb.questions.research import SURENESS_OF, meanings_on, row_of
from conservedb.questions.research_answers import Counts, ResearchRow
from conservedb.questions.research_found import POSSIBLE
from conservedb.questions.research_statements import listing, picking


@dataclass(frozen=True, slots=True)
class Compared:
    """What answers on one day and not on the other, certainly or possibly.

    Attributes:
        research: the question that was asked for each day.
        only_first, only_second: in order of date, with their states on that day.
    """

    research: Research
    days: tuple[AsOf, AsOf]
    counts: tuple[Counts, Counts]
    only_first: tuple[ResearchRow, ...]
    only_second: tuple[ResearchRow, ...]


def compare(connection: Connection, research: Research, day_one: AsOf, day_two: AsOf) -> Compared:
    """Ask a question for two days, each as if it were today; of a span its last day counts.

    A question that leaves it to today how layers stand is asked as it is. Any other is asked of
    what is there: else nothing in it could differ.

    Raises:
        NoSuch: as of `research.counts`.
        Ambiguous: as of `research.counts`.
    """
    asked = _of_a_day(research)
    days = (day_one, day_two)
    found = [_scores(connection, asked, day.last) for day in days]
    counts = [_counts(scores) for scores in found]
    answers = [{key for key, score in scores.items() if score >= POSSIBLE} for scores in found]
    return Compared(
        asked,
        days,
        (counts[0], counts[1]),
        _picked(connection, asked, day_one.last, answers[0] - answers[1]),
        _picked(connection, asked, day_two.last, answers[1] - answers[0]),
    )


def _of_a_day(research: Research) -> Research:
    if any(one.field == "state" and one.on == "" for one in conditions(research.where)):
        return research
    there = Condition("state", "there")
    where = research.where
    parts = where.parts if isinstance(where, And) else (where,)
    return Research(research.rows, And((*parts, there)) if parts else there)


def _scores(connection: Connection, research: Research, day: int) -> dict[int, int]:
    question = listing(research, meanings_on(connection, research, day))
    return dict(question.tuples(connection, today=day))


def _counts(scores: dict[int, int]) -> Counts:
    values = list(scores.values())
    return Counts(*(values.count(score) for score in SURENESS_OF))


def _picked(
    connection: Connection, research: Research, day: int, keys: set[int]
) -> tuple[ResearchRow, ...]:
    if not keys:
        return ()
    question = picking(research, meanings_on(connection, research, day))
    rows = question.tuples(connection, today=day, picked=json.dumps(sorted(keys)))
    return tuple(map(row_of, rows))
