"""The condition of a joint on a day, and on which side what an opening left behind lies."""

from collections.abc import Sequence
from typing import NamedTuple

from conservedb.knowledge.layers import GONE, NOT_YET, possible
from conservedb.knowledge.narrowing import Bounds, Interval, LayerBounds, Sighting

NOT_RECORDED = "not recorded"
CONDITIONS = (NOT_RECORDED, "closed", "moving", "opened", "failed")
PARTINGS = ("opened", "failed")
"""Events after which the layers older than them are remains."""


class JointEvent(NamedTuple):
    """A joint was "closed" or "opened", was found "moving", or "failed".

    Where nobody wrote down which of them it was, `kind` is "": then each is possible.
    `step` orders events of the same interval; `ref` is for whoever asks, and not looked at.
    """

    kind: str
    when: Interval
    step: int | None = None
    ref: str = ""


class Condition(NamedTuple):
    """The condition at the close of a day.

    `state` is the only possible condition, or "uncertain"; `possible` lists them in the order
    of CONDITIONS; `flags` are those of the dates it rests on; `since` is the event that
    brought it about, None where that may be one of several or none.
    """

    state: str
    possible: tuple[str, ...]
    flags: int
    since: JointEvent | None


def condition(events: Sequence[JointEvent], day: int) -> Condition:
    """The condition of a joint at the close of a day: that of the last event until then.

    Every event that could be the last counts. Of events with the same interval the lower step
    came first; without steps a joint was opened, failed or moving before it was closed.
    """
    last = [event for event in events if _may_be_last(event, events, day)]
    kinds = {event.kind for event in last}
    if "" in kinds:
        kinds.update(CONDITIONS[1:])
    none_yet = all(event.when.latest > day for event in events)
    if none_yet:
        kinds.add(NOT_RECORDED)
    names = tuple(name for name in CONDITIONS if name in kinds)
    flags = 0
    for event in last + _next(events, day):
        flags |= event.when.flags
    since = last[0] if len(last) == 1 and not none_yet else None
    return Condition(names[0] if len(names) == 1 else "uncertain", names, flags, since)


def _may_be_last(event: JointEvent, events: Sequence[JointEvent], day: int) -> bool:
    if event.when.earliest > day:
        return False
    # The later its own day, the more of the others can lie before it.
    own_day = min(event.when.latest, day)
    return all(
        other.when.latest > day or (other.when.earliest <= own_day and not _precedes(event, other))
        for other in events
    )


def _precedes(one: JointEvent, other: JointEvent) -> bool:
    """Whether one of two events of the same interval came first, by what is recorded."""
    if one.when[:2] != other.when[:2]:
        return False
    if one.step is not None and other.step is not None and one.step != other.step:
        return one.step < other.step
    return one.kind != "closed" and other.kind == "closed"


def _next(events: Sequence[JointEvent], day: int) -> list[JointEvent]:
    """The events that may be the first of those that certainly lie after the day."""
    later = [event for event in events if event.when.earliest > day]
    first_by = min((event.when.latest for event in later), default=day)
    return [event for event in later if event.when.earliest <= first_by]


def remains(
    layer: LayerBounds, events: Sequence[JointEvent], sightings: Sequence[Sighting], day: int
) -> str:
    """On which side of a joint, opened since, a layer still lies at the close of a day.

    "" where the joint was not opened between the coming of the layer and the day, or nothing
    is left; "A", "B" or "both"; "A at least", "B at least" where nobody looked at the other
    side; "split unknown" where nobody looked at all. Preceded by "possibly " where the layer
    may not be there or the joint may not have been opened since it came. `events` may be all
    those of the joint, `sightings` all those of the layer. Qualified dates count as they stand.
    """
    mask = possible(layer.whole, day)
    partings = [event for event in events if _may_part(event, layer.whole, day)]
    if not partings or not mask & ~(NOT_YET | GONE):
        return ""
    certain = not mask & (NOT_YET | GONE) and any(
        layer.whole.came_to < event.when.earliest and event.when.latest <= day for event in partings
    )
    parted = min(event.when for event in partings)
    has_a, has_b = (_looked_at(layer, sightings, parted, side, day) for side in "AB")
    split = {
        (True, True): "both",
        (True, False): "A",
        (False, True): "B",
        (None, False): "A",
        (False, None): "B",
        (True, None): "A at least",
        (None, True): "B at least",
    }.get((has_a, has_b), "split unknown")
    return split if certain else f"possibly {split}"


def _may_part(event: JointEvent, layer: Bounds, day: int) -> bool:
    """Whether it may have opened the joint by the day, after the layer came.

    Of the same interval, the layer is the later: a joint is taken apart and set again.
    """
    return (
        event.kind in PARTINGS
        and event.when.earliest <= day
        and layer.came_from <= event.when.latest
        and event.when[:2] != layer[:2]
    )


def _looked_at(
    layer: LayerBounds, sightings: Sequence[Sighting], parted: Interval, side: str, day: int
) -> bool | None:
    """Whether the layer lies on a side since the parting; None where nobody has established it."""
    mask = possible(layer.sides.get(side, layer.whole), day)
    if mask == GONE:
        return False
    seen = any(
        sighting.result == "seen"
        and sighting.side == side
        and (sighting.when.earliest >= parted.latest or sighting.when[:2] == parted[:2])
        for sighting in sightings
    )
    return True if seen and not mask & (NOT_YET | GONE) else None
