"""What was done on a day, in a year or in a decade that somebody types: steps, and dated layers.

A date is what `dates.read_span` takes for one. Records are found whose date lies within it, as
they are written; what may only perhaps lie within it is not.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import NamedTuple

from sqlalchemy import Connection, Table, bindparam, select, text

from conservedb.dates import DateError, read_span
from conservedb.questions.asking import Question
from conservedb.records.layers import layer
from conservedb.records.objects import object_
from conservedb.records.treatments import intervention
from conservedb.store.keys import fold

MOST = 60
_LONGEST = 40
_YEAR = re.compile(r"\d{3}")


class Dated(NamedTuple):
    """Records of a table within a date, the newest first, and whether there may be more."""

    table: str
    records: list[int]
    more: bool


def _within(table: Table, *, owned: bool) -> Question:
    """Rows with a date of their own within two days; `owned` by the object with a number."""
    found = select(table.c.id.label("record")).where(
        text(f"{table.name}.date_derived != 'blank'"),
        table.c.date_latest >= bindparam("first"),
        table.c.date_latest <= bindparam("last"),
        table.c.date_earliest >= bindparam("first"),
    )
    if owned:
        number = object_.c.number_folded == bindparam("number")
        found = found.where(table.c.object_id.in_(select(object_.c.id).where(number)))
    return Question(found.order_by(table.c.date_latest.desc()).limit(MOST))


_ANYWHERE = tuple((table.name, _within(table, owned=False)) for table in (intervention, layer))
_OWNED = tuple((table.name, _within(table, owned=True)) for table in (intervention, layer))
STATEMENTS = tuple(question for _, question in (*_ANYWHERE, *_OWNED))


def dated(connection: Connection, typed: str, number: str = "") -> Iterator[Dated]:
    """What was done within the date typed, if it is one; with a `number`, on that object."""
    if len(typed) > _LONGEST or not _YEAR.search(typed):
        return
    try:
        span = read_span(typed)
    except DateError:
        return
    values: dict[str, int | str] = {"first": span.earliest, "last": span.latest}
    if number:
        values["number"] = fold(number)
    for table, question in _OWNED if number else _ANYWHERE:
        records = [row.record for row in question.all(connection, **values)]
        if records:
            yield Dated(table, records, len(records) == MOST)
