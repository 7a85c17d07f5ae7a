"""Keeping a researcher's question under a name."""

from __future__ import annotations

import datetime

from sqlalchemy import Connection, Engine

from conservedb.exchange.entering import Entry, Refs, Refused, Written, enter
from conservedb.exchange.faults import Fault
from conservedb.exchange.subjects_research import SAVED_QUESTIONS
from conservedb.exchange.writer import writer
from conservedb.knowledge.research import Research
from conservedb.knowledge.research_words import say_conditions
from conservedb.questions.answers import NoSuch
from conservedb.questions.research_saved import saved
from conservedb.store.log import Author

LONGEST_NAME = 200
"""Letters of a name."""


def keep_question(
    engine: Engine,
    name: str,
    research: Research,
    who: str,
    today: datetime.date,
    note: str = "",
) -> Written:
    """Keep a question under a name that no other bears; it says who kept it, and when.

    Where the name is taken, missing or too long, there is a fault, and nothing is written.

    Raises:
        DatabaseProblem: the file cannot be written.
    """
    name = " ".join(name.split())
    cells = {
        "name": name,
        "rows": research.rows,
        "conditions": say_conditions(research),
        "saved": today.isoformat(),
        "person": who,
        "note": note,
    }

    def compose(refs: Refs) -> list[Entry]:
        _refuse_unfit(name)
        _refuse_taken(refs.connection, name)
        return [*writer(refs, who), Entry("saved_questions", cells)]

    return enter(engine, compose, Author(who, "recorded"), today)


def _refuse_unfit(name: str) -> None:
    """Refuse a name that is blank, or longer than anybody types it again."""
    reason = "" if name else "a name is missing"
    if len(name) > LONGEST_NAME:
        reason = f"the name has {len(name):,} letters, more than {LONGEST_NAME}"
    if reason:
        raise Refused([Fault(SAVED_QUESTIONS.file, 0, "", "", reason, "write a short name")])


def _refuse_taken(connection: Connection, name: str) -> None:
    try:
        other = saved(connection, name)
    except NoSuch:
        return
    raise Refused(
        [
            Fault(
                SAVED_QUESTIONS.file,
                0,
                "name",
                other.name,
                "is the name of a question that is kept already",
                "choose another name, or withdraw that question first",
            )
        ]
    )
