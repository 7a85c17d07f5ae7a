"""The states of `conservedb.knowledge.layers` as SQL over stored bounds.

The same rules as `possible`, `held` and `qualified` there; a property test holds the two
equal. A mask is the sum of the numbers of the states that are possible.
"""

from __future__ import annotations

from typing import Any

from sqlalchemy import ColumnElement, and_, case, literal_column, or_
from sqlalchemy.sql.base import ReadOnlyColumnCollection

from conservedb.knowledge.layers import GONE, NOT_YET, PRESENT, REDUCED

Columns = ReadOnlyColumnCollection[str, Any]
Number = ColumnElement[int]
Condition = ColumnElement[bool]


def mask_at(bounds: Columns, day: Number) -> Number:
    """The mask of states possible at the close of a day."""
    return _mask(
        (NOT_YET, day < bounds.came_to),
        (
            PRESENT,
            and_(bounds.came_from <= day, day < bounds.reduced_to, day < bounds.gone_to),
        ),
        (REDUCED, and_(bounds.reduced_from <= day, day < bounds.gone_to)),
        (GONE, bounds.gone_from <= day),
    )


def possibly_held(bounds: Columns, first: Number, last: Number) -> Number:
    """The mask of states that may have been held on some day of a span."""
    return _mask(
        (NOT_YET, first < bounds.came_to),
        (
            PRESENT,
            and_(
                bounds.came_from <= last,
                *(
                    start < end
                    for start in (bounds.came_from, first)
                    for end in (bounds.reduced_to, bounds.gone_to)
                ),
            ),
        ),
        (
            REDUCED,
            and_(
                bounds.reduced_from <= last,
                bounds.reduced_from < bounds.gone_to,
                first < bounds.gone_to,
            ),
        ),
        (GONE, bounds.gone_from <= last),
    )


def surely_held(bounds: Columns, first: Number, last: Number) -> Number:
    """The mask of states that were certainly held on some day of a span."""
    return _mask(
        (NOT_YET, first < bounds.came_from),
        (
            PRESENT,
            and_(
                bounds.came_to <= last,
                *(
                    start < end
                    for start in (bounds.came_to, first)
                    for end in (bounds.reduced_from, bounds.gone_from)
                ),
            ),
        ),
        (
            REDUCED,
            and_(
                bounds.reduced_to <= last,
                bounds.reduced_to < bounds.gone_from,
                first < bounds.gone_from,
            ),
        ),
        (GONE, bounds.gone_to <= last),
    )


def certainly_there(bounds: Columns, day: Number) -> Condition:
    """Whether it had come and not gone at the close of a day; part of it may be off."""
    return and_(bounds.came_to <= day, day < bounds.gone_from)


def possibly_there(bounds: Columns, day: Number) -> Condition:
    """Whether some order of events allows that it had come and not gone."""
    return and_(bounds.came_from <= day, day < bounds.gone_to)


def is_one(mask: Number) -> Condition:
    """Whether just one state is possible."""
    return mask.in_([literal_column(str(bit)) for bit in (NOT_YET, PRESENT, REDUCED, GONE)])


def rests_on_qualified(bounds: Columns, mask: Number) -> Condition:
    """Whether the answer rests on a date that is approximate or uncertain."""
    rests = [
        and_(flags != 0, mask.bitwise_and(literal_column(str(states))) != 0)
        for flags, states in (
            (bounds.came_flags, NOT_YET | PRESENT),
            (bounds.reduced_flags, PRESENT | REDUCED),
            (bounds.gone_flags, PRESENT | REDUCED | GONE),
        )
    ]
    return or_(*rests)


def _mask(*states: tuple[int, Condition]) -> Number:
    numbers = [
        case((condition, literal_column(str(number))), else_=literal_column("0"))
        for number, condition in states
    ]
    return numbers[0] + numbers[1] + numbers[2] + numbers[3]
