"""Parts taken out of an object for good: when, why, and what stands in their place."""

from __future__ import annotations

from typing import Any

from sqlalchemy import ColumnElement, case, func, select

from conservedb.dates import NEVER
from conservedb.knowledge.dating import day_entered, happened
from conservedb.knowledge.layers import Bounds
from conservedb.questions.answers import Retired
from conservedb.questions.asking import Row, blank, dated
from conservedb.questions.evidence import BLANK, when
from conservedb.questions.lasting import on_day
from conservedb.records.log import change, change_set
from conservedb.records.objects import component

_successor = component.alias("successor")
_SUCCESSOR = (
    select(_successor.c.mark).where(_successor.c.id == component.c.replaced_by_id).scalar_subquery()
)
_WRITTEN = (
    select(func.substr(func.max(change_set.c.at), 1, 10))
    .join_from(change, change_set, change_set.c.id == change.c.set_id)
    .where(change.c.table_name == component.name, change.c.record_id == component.c.id)
    .correlate(component)
    .scalar_subquery()
)
"""The last day on which something was written of a part: by then it had been retired."""


def retirement() -> list[ColumnElement[Any]]:
    """The columns that `retired_of` reads, from `retired_words` on."""
    return [
        *dated(component, "retired"),
        blank(component.c.retired_why).label("retired_why"),
        blank(_SUCCESSOR).label("replaced_by"),
        case((component.c.retired_derived != "blank", _WRITTEN), else_=None).label("retired_known"),
    ]


def retired_of(row: Row, at: int) -> Retired | None:
    """How a part was retired, from the columns that begin at `at`; None where it was not."""
    date = when(row, at)
    return None if date is BLANK else Retired(date, *row[at + 6 : at + 9])


def standing(lasts: Bounds, retired: Retired | None, day: int) -> tuple[str, tuple[str, ...], int]:
    """`on_day` of a part that may have been retired: then "retired" is one of its states."""
    state, possible, flags = on_day(lasts, day)
    if retired is None or possible == ("gone",):
        return state, possible, flags
    date = retired.date
    known = NEVER if retired.known is None else day_entered(retired.known)
    out = happened(date.earliest, date.latest, date.flags, known, lasts.came_from, known)
    if day < max(out.earliest, lasts.came_from):
        return state, possible, flags | out.flags
    if out.latest <= day:
        return "retired", ("retired",), out.flags
    before = tuple(word for word in possible if word != "gone")
    return "uncertain", (*before, "retired", *possible[len(before) :]), flags | out.flags
