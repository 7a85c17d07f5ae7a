"""What lies there on a day: not yet, present, reduced, gone, or uncertain between these.

The states of a layer at the close of a day, over a span of days, and what would settle an
uncertain one. A set of states that are possible is a mask: the sum of their numbers.
"""

from collections.abc import Sequence
from typing import NamedTuple

from conservedb.dates.days import is_known, iso
from conservedb.knowledge.narrowing import (
    Bounds,
    Event,
    ImpossibleOrder,
    Interval,
    LayerBounds,
    LayerFacts,
    Removal,
    Sighting,
    bounds,
)

__all__ = [
    "GONE",
    "NOT_YET",
    "PRESENT",
    "REDUCED",
    "STATE_NAMES",
    "Bounds",
    "Event",
    "Held",
    "ImpossibleOrder",
    "Interval",
    "LayerBounds",
    "LayerFacts",
    "Removal",
    "Sighting",
    "bounds",
    "held",
    "names",
    "possible",
    "qualified",
    "settle",
    "state",
]

NOT_YET, PRESENT, REDUCED, GONE = 1, 2, 4, 8
STATE_NAMES: dict[int, str] = {
    NOT_YET: "not yet",
    PRESENT: "present",
    REDUCED: "reduced",
    GONE: "gone",
}


class Held(NamedTuple):
    """Masks of the states held on every day of a span, on some day for certain, and perhaps."""

    throughout: int
    at_some_time: int
    possibly: int


def possible(b: Bounds, day: int) -> int:
    """The mask of states that some order of events allows at the close of a day."""
    mask = 0
    if day < b.came_to:
        mask = NOT_YET
    if b.came_from <= day < min(b.reduced_to, b.gone_to):
        mask |= PRESENT
    if b.reduced_from <= day < b.gone_to:
        mask |= REDUCED
    if b.gone_from <= day:
        mask |= GONE
    return mask


def names(mask: int) -> tuple[str, ...]:
    """The names of the states in a mask, in the order in which a layer passes through them."""
    return tuple(name for bit, name in STATE_NAMES.items() if mask & bit)


def state(mask: int) -> str:
    """The name of the only possible state, or "uncertain"."""
    return STATE_NAMES.get(mask, "uncertain")


def qualified(b: Bounds, mask: int) -> int:
    """The flags of the dates on which it rests that just these states are possible."""
    flags = 0
    if mask & (NOT_YET | PRESENT):
        flags |= b.came_flags
    if mask & (PRESENT | REDUCED):
        flags |= b.reduced_flags
    if mask & (PRESENT | REDUCED | GONE):
        flags |= b.gone_flags
    return flags


def held(b: Bounds, first: int, last: int) -> Held:
    """The states held from the close of one day to the close of another, both included.

    A state counts as held at some time only if every order of events passes through it then.
    ValueError when the span ends before it begins.
    """
    if first > last:
        raise ValueError(f"the span ends ({last}) before it begins ({first})")
    possibly = 0
    if first < b.came_to:
        possibly = NOT_YET
    if b.came_from <= last and max(b.came_from, first) < min(b.reduced_to, b.gone_to):
        possibly |= PRESENT
    if b.reduced_from <= last and max(b.reduced_from, first) < b.gone_to:
        possibly |= REDUCED
    if b.gone_from <= last:
        possibly |= GONE
    surely = 0
    if first < b.came_from:
        surely = NOT_YET
    if b.came_to <= last and max(b.came_to, first) < min(b.reduced_from, b.gone_from):
        surely |= PRESENT
    if b.reduced_to <= last and max(b.reduced_to, first) < b.gone_from:
        surely |= REDUCED
    if b.gone_to <= last:
        surely |= GONE
    return Held(possibly if possibly in STATE_NAMES else 0, surely, possibly)


def settle(b: Bounds, day: int, seen: Sequence[Sighting] = ()) -> str:
    """What would settle an uncertain state, in one sentence; "" where nothing is uncertain."""
    mask = possible(b, day)
    if mask in STATE_NAMES:
        return ""
    dates, look = [], False
    if mask & NOT_YET:
        dates.append(f"the date it came, {_window(b.came_from, b.came_to)}")
    if b.reduced_from <= day < b.reduced_to:
        dates.append(f"the date of the removal in part, {_window(b.reduced_from, b.reduced_to)}")
        look = not is_known(b.reduced_to)
    if mask & GONE:
        dates.append(f"the date of the removal or loss, {_window(b.gone_from, b.gone_to)}")
        look |= not is_known(b.gone_to)
    find = "find " + ", and ".join(dates)
    return f"{find}; or look at the place: {_last_look(seen)}" if look else find


def _window(earliest: int, latest: int) -> str:
    start, end = iso(earliest), iso(latest)
    if start and end:
        return f"between {start} and {end}"
    if end:
        return f"not after {end}"
    return f"not before {start}" if start else "on which nothing is recorded"


def _last_look(sightings: Sequence[Sighting]) -> str:
    looks = [s.when for s in sightings if s.result != "not accessible"]
    if not looks:
        return "no sighting is on record"
    last = max(looks)
    day = iso(last.latest) or iso(last.earliest)
    return f"nobody has since {day}" if day else "no dated sighting is on record"
