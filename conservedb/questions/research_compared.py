"""A researcher's question asked for two days: what answers on one only, or less surely."""

from __future__ import annotations

import json
from dataclasses import dataclass
from typing import NamedTuple

from sqlalchemy import Connection

from conservedb.knowledge.research import Condition, Research, conditions, with_condition
from conservedb.knowledge.research_words import checked_day
from conservedb.questions.answers import AsOf
from conservedb.questions.research import SURENESS_OF, meanings_on, row_of
from conservedb.questions.research_answers import Counts, ResearchRow
from conservedb.questions.research_meanings import ensure_come
from conservedb.questions.research_statements import listing, picking


class Changed(NamedTuple):
    """A row that answers on both days, not equally surely.

    Attributes:
        before: how sure it was on the first day.
        row: as it answers on the second.
    """

    before: str
    row: ResearchRow


@dataclass(frozen=True, slots=True)
class Compared:
    """What answers on one day and not on the other, and what answers more or less surely.

    Attributes:
        asked: the question as it was put.
        research: the question that was asked for each day.
        only_first, only_second: in order of date, with their states on that day.
        surer, less_sure: on the second day than on the first, in order of date.
    """

    asked: Research
    research: Research
    days: tuple[AsOf, AsOf]
    counts: tuple[Counts, Counts]
    only_first: tuple[ResearchRow, ...]
    only_second: tuple[ResearchRow, ...]
    surer: tuple[Changed, ...]
    less_sure: tuple[Changed, ...]

    @property
    def added(self) -> str:
        """What is asked of each day, or of which the days are."""
        if self.research != self.asked:
            return "on each day only what was there, not uses and steps"
        return "a state without a day is asked of each day"


def compare(connection: Connection, research: Research, day_one: AsOf, day_two: AsOf) -> Compared:
    """Ask a question for two days, each as if it were today; of a span its last day counts.

    A question that leaves it to today how layers stand is asked as it is. Any other is asked of
    what is there: else nothing in it could differ.

    Raises:
        AskError: a day is approximate, uncertain or in the future.
        NoSuch: as of `research.counts`.
        Ambiguous: as of `research.counts`.
    """
    for day in (day_one, day_two):
        ensure_come(connection, checked_day(day.words), day.first)
    asked = _of_a_day(research)
    first, second = (_scores(connection, asked, day.last) for day in (day_one, day_two))
    gone, come = _only(first, second), _only(second, first)
    changed = {key for key in first.keys() & second.keys() if first[key] != second[key]}
    left = _picked(connection, asked, day_one.last, gone)
    found = _picked(connection, asked, day_two.last, come | changed)
    moved = [(key, Changed(SURENESS_OF[first[key]], found[key])) for key in found if key in changed]
    return Compared(
        research,
        asked,
        (day_one, day_two),
        (_counts(first), _counts(second)),
        tuple(left.values()),
        tuple(row for key, row in found.items() if key in come),
        tuple(one for key, one in moved if first[key] < second[key]),
        tuple(one for key, one in moved if first[key] > second[key]),
    )


def _only(scores: dict[int, int], others: dict[int, int]) -> set[int]:
    return scores.keys() - others.keys()


def _of_a_day(research: Research) -> Research:
    if any(one.field == "state" and one.on == "" for one in conditions(research.where)):
        return research
    there = Condition("state", "there")
    return Research(research.rows, with_condition(research.where, research.rows, there))


def _scores(connection: Connection, research: Research, day: int) -> dict[int, int]:
    question = listing(research, meanings_on(connection, research, day))
    return dict(question.tuples(connection, today=day))


def _counts(scores: dict[int, int]) -> Counts:
    values = list(scores.values())
    return Counts(*(values.count(score) for score in SURENESS_OF))


def _picked(
    connection: Connection, research: Research, day: int, keys: set[int]
) -> dict[int, ResearchRow]:
    """The rows of some keys, in order of date."""
    if not keys:
        return {}
    question = picking(research, meanings_on(connection, research, day))
    rows = question.tuples(connection, today=day, picked=json.dumps(sorted(keys)))
    return {row[-1]: row_of(row) for row in rows}
