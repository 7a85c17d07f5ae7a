"""What was done on a day, in a year or in a decade that somebody types: steps, and dated layers.

A date is what `dates.read` takes for one, with an end that is known. What is dated within it comes
first, then what is perhaps of it, since the two overlap: each is shown with its date as written.
Of what ends up to ten years later than the date begins or ends, the nearest 500 are looked at. A
date with an open end, as "before 1872", finds what is dated from and to the very same days.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import NamedTuple

from sqlalchemy import BindParameter, Connection, Table, bindparam, select, text

from conservedb.dates import MIN_DAY, DateError, Found, is_known, read
from conservedb.questions.asking import Question, Selection
from conservedb.records.layers import layer
from conservedb.records.objects import object_
from conservedb.records.treatments import intervention
from conservedb.store.keys import fold

MOST = 60
_LONGEST = 40
_NEAREST = 500
_REACH = 3653
_YEAR = re.compile(r"\d{3}")
_ABOUT = re.compile(r"(?:circa|ca?\.?) ?\d", re.IGNORECASE)


class Dated(NamedTuple):
    """Records of a table within a date, the newest first, and whether there may be more."""

    table: str
    records: list[int]
    more: bool


class _Asked(NamedTuple):
    """The questions put to one table."""

    table: str
    within: Question
    same: Question
    ending: Question


def _of(table: Table, *, owned: bool) -> _Asked:
    """Questions about rows with a date of their own; `owned` by the object with a number."""
    found = select(table.c.id.label("record"), table.c.date_earliest.label("earliest"))
    found = found.where(text(f"{table.name}.date_derived != 'blank'"))
    if owned:
        number = object_.c.number_folded == bindparam("number")
        found = found.where(table.c.object_id.in_(select(object_.c.id).where(number)))
    first: BindParameter[int] = bindparam("first")
    last: BindParameter[int] = bindparam("last")
    begun, ended = table.c.date_earliest, table.c.date_latest
    ending = found.where(ended >= first, ended <= last)

    def asked(statement: Selection, most: int) -> Question:
        return Question(statement.limit(most))

    return _Asked(
        table.name,
        asked(ending.where(begun >= first).order_by(ended.desc()), MOST),
        asked(found.where(ended == last, begun == first), MOST),
        asked(ending.where(begun >= MIN_DAY).order_by(ended), _NEAREST),
    )


_ANYWHERE = tuple(_of(table, owned=False) for table in (intervention, layer))
_OWNED = tuple(_of(table, owned=True) for table in (intervention, layer))
STATEMENTS = tuple(question for asked in (*_ANYWHERE, *_OWNED) for question in asked[1:])


def is_about(typed: str) -> bool:
    """Whether it is a date that begins with a short word for "about", as "c. 1868"."""
    return bool(_ABOUT.match(typed)) and _read(typed) is not None


def dated(connection: Connection, typed: str, number: str = "") -> Iterator[Dated]:
    """What was done within the date typed, if it is one; with a `number`, on that object."""
    date = _read(typed)
    if date is None:
        return
    values = {"number": fold(number)} if number else {}
    for asked in _OWNED if number else _ANYWHERE:
        if is_known(date.earliest) and is_known(date.latest):
            records, more = _overlapping(connection, asked, date, values)
        else:
            ends: dict[str, int | str] = {"first": date.earliest, "last": date.latest}
            records = [row.record for row in asked.same.all(connection, **ends, **values)]
            more = len(records) == MOST
        if records:
            yield Dated(asked.table, records, more)


def _read(typed: str) -> Found | None:
    """The date typed, where one of its ends is known."""
    if len(typed) > _LONGEST or not _YEAR.search(typed):
        return None
    try:
        date = read(typed)
    except DateError:
        return None
    return date if is_known(date.earliest) or is_known(date.latest) else None


def _overlapping(
    connection: Connection, asked: _Asked, date: Found, values: dict[str, str]
) -> tuple[list[int], bool]:
    """What lies within a date, then what only overlaps with it; and whether there may be more."""
    first, last = date.earliest, date.latest
    within = asked.within.all(connection, first=first, last=last, **values)
    begun = asked.ending.all(connection, first=first, last=min(last, first + _REACH), **values)
    after = asked.ending.all(connection, first=last + 1, last=last + _REACH, **values)
    records = [row.record for row in within]
    records += (row.record for row in begun if row.earliest < first)
    records += (row.record for row in after if row.earliest <= last)
    full = len(within) == MOST or _NEAREST in (len(begun), len(after))
    return records[:MOST], full or len(records) > MOST
