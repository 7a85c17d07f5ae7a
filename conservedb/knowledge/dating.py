"""What is recorded has happened: open and unknown days closed by what is certain."""

from __future__ import annotations

from functools import cache

from conservedb.dates import NEVER, OPEN_START, UNKNOWN_END, UNKNOWN_START, from_iso
from conservedb.knowledge.narrowing import Interval


@cache
def day_entered(entered: str) -> int:
    """The day on which a record was entered, from its ISO text."""
    return from_iso(entered)


def recorded_by(source_latest: int | None, entered: str, recorded: int = UNKNOWN_END) -> int:
    """By when something had been recorded.

    Args:
        source_latest: the latest day of its source, if there is one.
        entered: the day on which it was entered, as ISO text.
        recorded: the latest day on which it was written down, where that is recorded.
    """
    for day in (source_latest, recorded):
        if day is not None and day < UNKNOWN_END:
            return day
    return day_entered(entered)


def made_from(part: int | None, whole: int) -> int:
    """The earliest making of a part where it is known, else that of the whole object.

    A part may be older than the object it was put into.
    """
    return whole if part is None or part <= UNKNOWN_START else part


def happened(
    earliest: int,
    latest: int,
    flags: int,
    recorded: int,
    floor: int = OPEN_START,
    entered: int = NEVER,
) -> Interval:
    """The days on which a recorded event can lie.

    A limit that contradicts the date itself closes nothing: the date stays as wide as it is.

    Args:
        earliest, latest, flags: as the words of date say.
        recorded: the latest day of its source, else the day it was recorded; an open or
            unknown latest day cannot lie after it.
        floor: the earliest making of what bears it; an open or unknown earliest day cannot
            lie before it.
        entered: the day on which the record was made; no part of an event lies after it.
    """
    if latest >= UNKNOWN_END and recorded >= earliest:
        latest = recorded
    if latest > entered >= earliest:
        latest = entered
    if earliest <= UNKNOWN_START and earliest < floor <= latest:
        earliest = floor
    return Interval(earliest, latest, flags)
