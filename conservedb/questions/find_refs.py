"""What is found by its ref: what of one object is called so, and rows without any words."""

from __future__ import annotations

import json
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from sqlalchemy import (
    ColumnElement,
    Connection,
    Table,
    bindparam,
    func,
    literal_column,
    select,
    text,
)

from conservedb.questions.asking import Question, Selection
from conservedb.records.every import metadata
from conservedb.records.objects import component, object_
from conservedb.records.places import place
from conservedb.store.keys import fold
from conservedb.store.search_refs import PLAIN, spellings, unwritten
from conservedb.store.search_tables import SEARCHED, Searched

CONSIDERED = 60
COUNTED = 10_000
BEYOND = "\U0010ffff"


class Referred(NamedTuple):
    """Rows of a table whose ref begins so: the first of them, how many, and whether more."""

    table: str
    records: list[int]
    total: int
    more: bool


def _of_objects(table: Table, column: str) -> Question:
    """What of the objects with some numbers is called by something that begins so, case aside."""
    numbers = func.json_each(bindparam("numbers")).table_valued("value").alias("wanted")
    numbered = select(object_.c.id).where(object_.c.number_folded.in_(select(numbers.c.value)))
    called: ColumnElement[str] = literal_column(f"{table.name}.{column} COLLATE NOCASE")
    found = select(table.c.id.label("record")).where(
        table.c.object_id.in_(numbered),
        called >= bindparam("first"),
        called < bindparam("last"),
    )
    return Question(found.order_by(called).limit(CONSIDERED))


_MARKED = (
    ("place", _of_objects(place, "mark_folded")),
    ("component", _of_objects(component, "mark_folded")),
)
_CITED = tuple(
    (one.table, _of_objects(metadata.tables[one.table], "ref"))
    for one in SEARCHED
    if {"object_id", "ref"} <= set(metadata.tables[one.table].c.keys())
)


def _unwritten(one: Searched) -> tuple[Question, Question]:
    """The first rows of a sparse table whose plain ref begins so, and their number up to a limit.

    Both as text, since SQLite uses an index of expressions for the very same text only.
    """
    table = metadata.tables[one.table]
    begun = text(f"{PLAIN} >= :first AND {PLAIN} < :last AND {unwritten(one)}")
    rows = select(table.c.id.label("record")).where(begun).order_by(text(PLAIN)).limit(CONSIDERED)
    counted: Selection = select(literal_column("1")).select_from(table).where(begun).limit(COUNTED)
    return Question(rows), Question(
        select(func.count().label("rows")).select_from(counted.subquery("few"))
    )


_UNWRITTEN = tuple((one.table, *_unwritten(one)) for one in SEARCHED if one.sparse)
STATEMENTS = (
    *(question for _, question in (*_MARKED, *_CITED)),
    *(question for _, *questions in _UNWRITTEN for question in questions),
)


def of_objects(
    connection: Connection, numbers: Sequence[str], rest: str
) -> Iterator[tuple[str, int]]:
    """Table and key of what is on these objects and has a mark or ref that begins with the rest."""
    owners = json.dumps([fold(number) for number in numbers])
    for questions, begin in ((_MARKED, fold(rest)), (_CITED, rest)):
        reach = {"first": begin, "last": begin + BEYOND}
        for table, question in questions:
            rows = question.all(connection, numbers=owners, **reach)
            yield from ((table, row.record) for row in rows)


def unwritten_rows(connection: Connection, typed: str) -> Iterator[Referred]:
    """Rows that the index of words leaves out, whose ref begins as typed, signs aside."""
    for table, rows, count in _UNWRITTEN:
        records: list[int] = []
        total = 0
        for begin in spellings(typed):
            reach = {"first": begin, "last": begin + BEYOND}
            found = [row.record for row in rows.all(connection, **reach)]
            records += (one for one in found if one not in records)
            if len(found) == CONSIDERED:
                total += count.first(connection, **reach).rows
        if records:
            total = max(total, len(records))
            yield Referred(table, records, total, total >= COUNTED)
