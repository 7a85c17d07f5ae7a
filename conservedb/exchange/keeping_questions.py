"""Keeping a researcher's question under a name."""

from __future__ import annotations

import datetime

from sqlalchemy import Engine

from conservedb.exchange.entering import Entry, Refs, Written, enter
from conservedb.exchange.writer import writer
from conservedb.knowledge.research import Research
from conservedb.knowledge.research_words import say_conditions
from conservedb.store.log import Author


def keep_question(
    engine: Engine,
    name: str,
    research: Research,
    who: str,
    today: datetime.date,
    note: str = "",
) -> Written:
    """Keep a question under a name that no other bears; it says who kept it, and when.

    Raises:
        DatabaseProblem: the file cannot be written.
    """
    cells = {
        "name": name,
        "rows": research.rows,
        "conditions": say_conditions(research),
        "saved": today.isoformat(),
        "person": who,
        "note": note,
    }

    def compose(refs: Refs) -> list[Entry]:
        return [*writer(refs, who), Entry("saved_questions", cells)]

    return enter(engine, compose, Author(who, "recorded"), today)
