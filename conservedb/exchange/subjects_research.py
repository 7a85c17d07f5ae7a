"""The CSV file of questions that researchers keep under a name."""

from __future__ import annotations

from dataclasses import dataclass

from conservedb.exchange.columns import Choice, Column, Date, Keys, KeyText, Values
from conservedb.exchange.faults import CellProblem
from conservedb.exchange.subject import NOTE, RECORD, Subject, person
from conservedb.knowledge.research_words import AskError, read_conditions
from conservedb.records import research


@dataclass(frozen=True)
class Conditions(Column):
    """The conditions of a question; kept as written, and only where they can be read."""

    def parse(self, cell: str, keys: Keys) -> Values:
        """The words, once they have been read."""
        try:
            read_conditions(cell)
        except AskError as problem:
            raise CellProblem(
                f"cannot be read as a question: {problem}",
                "write conditions as conservedb ask takes them",
            ) from problem
        return (cell,)


SAVED_QUESTIONS = Subject(
    "saved_questions",
    "saved question",
    research.saved_question,
    ("name",),
    (
        KeyText("name", folded=True),
        Choice("rows", values=research.RESEARCH_ROWS),
        Conditions("conditions"),
        Date("saved"),
        person("person"),
        NOTE,
        *RECORD,
    ),
    in_object=False,
    folded=True,
)
