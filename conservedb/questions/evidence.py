"""Who, from what paper, and who says otherwise: the parts that most questions share."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping, Sequence

from sqlalchemy import ColumnElement, Connection, Table, func, select

from conservedb.dates import UNKNOWN_END, UNKNOWN_START
from conservedb.knowledge.dating import day_entered, happened, recorded_by
from conservedb.knowledge.layers import Interval
from conservedb.questions.answers import Person, Rival, Source, When
from conservedb.questions.asking import Question, Row, Rows, Selection, blank, cited, dated
from conservedb.records.materials import material
from conservedb.records.people import person
from conservedb.records.sources import STATEMENT_SUBJECTS, source, statement, statement_person

BLANK = When("", "", UNKNOWN_START, UNKNOWN_END, 0, "blank")

People = Mapping[int, tuple[Person, ...]]


def when(row: Row, at: int) -> When:
    """The date whose six columns begin at `at`; BLANK too where there is no such record."""
    return BLANK if row[at + 5] in ("blank", None) else When(*row[at : at + 6])


def source_of(row: Row, at: int) -> Source | None:
    """The source whose three columns begin at `at`."""
    return None if row[at] is None else Source(row[at], row[at + 1], row[at + 2])


def interval(date: When, floor: int, ceiling: int | None, entered: str) -> Interval:
    """The days on which something recorded can have happened.

    Args:
        floor: the earliest making of what bears it.
        ceiling: the latest day of its source, if there is one.
        entered: the day on which it was entered, as ISO text.
    """
    recorded = recorded_by(ceiling, entered)
    return happened(date.earliest, date.latest, date.flags, recorded, floor, day_entered(entered))


def people_of(link: Table, owners: Selection) -> Question:
    """The question for the people tied to records by a link table, in their order."""
    owner = link.c[f"{link.name.removesuffix('_person')}_id"]
    return Question(
        select(owner.label("owner"), person.c.name, blank(link.c.role).label("role"))
        .join_from(link, person, person.c.id == link.c.person_id)
        .where(owner.in_(owners))
        .order_by(owner, link.c.position)
    )


def by_owner(rows: Rows) -> People:
    """People grouped by the record that they belong to."""
    found: dict[int, tuple[Person, ...]] = defaultdict(tuple)
    for owner, name, role in rows:
        found[owner] += (Person(name, role),)
    return found


class Statements:
    """The questions for what sources state about some records, and by whom."""

    def __init__(self, condition: ColumnElement[bool]) -> None:
        decider, chosen = person.alias("decider"), material.alias("chosen")
        self.stated = Question(
            select(
                statement.c.id,
                statement.c.subject,
                func.coalesce(*(statement.c[f"{one}_id"] for one in STATEMENT_SUBJECTS)).label(
                    "record"
                ),
                blank(statement.c.field).label("field"),
                blank(func.coalesce(statement.c.value, chosen.c.key)).label("value"),
                *cited(source),
                blank(statement.c.page).label("page"),
                *dated(statement, "date"),
                blank(statement.c.followed).label("followed"),
                blank(decider.c.name).label("decided_by"),
                blank(statement.c.reason).label("reason"),
                blank(statement.c.note).label("note"),
            )
            .outerjoin_from(statement, source, source.c.id == statement.c.source_id)
            .outerjoin(chosen, chosen.c.id == statement.c.material_id)
            .outerjoin(decider, decider.c.id == statement.c.decided_by_id)
            .where(condition)
            .order_by(statement.c.id)
        )
        self.people = people_of(statement_person, select(statement.c.id).where(condition))
        self.questions = (self.stated, self.people)

    def about(self, connection: Connection, **values: int) -> dict[tuple[str, int], list[Rival]]:
        """Statements by the record that they are about: ("layer", its id) and so on."""
        rows = self.stated.all(connection, **values)
        found: dict[tuple[str, int], list[Rival]] = defaultdict(list)
        if not rows:
            return found
        people = by_owner(self.people.all(connection, **values))
        for row in rows:
            found[row.subject, row.record].append(self._rival(row, people))
        return found

    def _rival(self, row: Row, people: People) -> Rival:
        found = source_of(row, _SOURCE)
        if found is not None and row.page:
            found = Source(found.ref, found.kind, found.citation, row.page)
        return Rival(
            row.field,
            row.value,
            found,
            people.get(row.id, ()),
            when(row, _DATE),
            row.followed,
            row.decided_by,
            row.reason,
            row.note,
            row.subject,
        )


_SOURCE, _DATE = 5, 9
"""Where source and date stand in a row of `Statements.stated`."""


def distinct(sources: Sequence[Source | None]) -> tuple[Source, ...]:
    """Each source once, in the order first named."""
    return tuple(dict.fromkeys(found for found in sources if found is not None))
