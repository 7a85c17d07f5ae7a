"""An answer of the research screen as a file."""

from __future__ import annotations

import datetime
import os
from pathlib import Path

from conservedb.exchange.answers_out import about_answer, write_answer
from conservedb.exchange.answers_out_research import HEADER, cells_of_row
from conservedb.knowledge.research_told import describe
from conservedb.knowledge.research_words import say
from conservedb.questions.research import counts, rows
from conservedb.questions.wording import counted
from conservedb.store.connect import raw_of
from conservedb.tui.reading import Connection, Unanswered
from conservedb.tui.researching import Asked

FORMS = {".csv": "csv", ".jsonl": "jsonl", ".xlsx": "xlsx"}
"""How the name of a file ends -> what is written into it."""


def write(connection: Connection, asked: Asked, day: datetime.date, file: str) -> str:
    """Write every row of an answer, in its order, into a new file; a sentence what was written.

    Raises:
        Unanswered: the name of the file does not say what is to be written.
        DatabaseProblem: the file is there already, or cannot be written.
    """
    path = Path(os.path.expanduser(file))  # noqa: PTH111 (Path fails where nobody is so called)
    form = FORMS.get(path.suffix.lower())
    if form is None:
        raise Unanswered(f"end the name of the file with {', '.join(FORMS)}; nothing was written")
    research = asked.research
    about = about_answer(
        raw_of(connection),
        day.isoformat(),
        say(research),
        describe(research),
        counts(connection, research, day).sentence,
    )
    found = rows(connection, research, day, asked.order, asked.descending)
    try:
        number = write_answer(path, form, about, HEADER, map(cells_of_row, found))
    except OSError as problem:
        raise Unanswered(f"{path} cannot be a file ({problem.strerror}); name another") from problem
    return f"{counted(number, 'row')} written to {path.absolute()}"
