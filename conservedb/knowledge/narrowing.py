"""What the facts about a layer say of the days on which it came, was reduced and ended.

Days are integers (`conservedb.dates.days`). An event happened on one day of its interval, and
nobody knows on which. `bounds` narrows the intervals as far as their order allows and no
further: with a the day the layer came, p its first removal in part and r its end, that order
is a <= p <= r. Qualified dates ("about", "perhaps") never move a bound; their flags travel
with the bounds they supply. Asked of every interval: its earliest day is not after its latest.
"""

from collections.abc import Mapping, Sequence
from itertools import product
from typing import NamedTuple

from conservedb.dates.days import NEVER, OPEN_START, iso


class Interval(NamedTuple):
    """The first and last day on which an event may lie, and how its date is qualified."""

    earliest: int
    latest: int
    flags: int = 0


class Removal(NamedTuple):
    """The end of a layer, by an intervention or without one (weathered, fell out, failed).

    `extent` is "all", "part" or "attempted"; `side` is "A" or "B", or "" for both.
    """

    when: Interval
    extent: str
    side: str = ""


class Sighting(NamedTuple):
    """Somebody looked. `result` is "seen", "not found" or "not accessible"; `side` as above."""

    when: Interval
    result: str
    side: str = ""


class LayerFacts(NamedTuple):
    """Everything recorded that bears on one layer.

    `lost` holds the loss of what bears it: key "A" or "B" at a joint, "" elsewhere.
    `two_sided` is true at a joint; where it is false no side is told from another.
    """

    came: Interval
    removals: Sequence[Removal] = ()
    sightings: Sequence[Sighting] = ()
    lost: Mapping[str, Interval] = {}
    two_sided: bool = False


class Bounds(NamedTuple):
    """First and last possible day of coming, of the first loss of a part, and of the end.

    NEVER, twice, where no such event is known.
    """

    came_from: int
    came_to: int
    reduced_from: int
    reduced_to: int
    gone_from: int
    gone_to: int
    came_flags: int
    reduced_flags: int
    gone_flags: int


class LayerBounds(NamedTuple):
    """Bounds of the whole layer; of sides "A" and "B" too where they differ from the whole."""

    whole: Bounds
    sides: dict[str, Bounds]


class Event(NamedTuple):
    """Which fact: a "removal" or "sighting" by its index in the facts, a "loss" by its side."""

    kind: str
    key: int | str


class ImpossibleOrder(ValueError):
    """No order of events agrees with every fact. `event` is the culprit, where one stands out."""

    def __init__(self, reason: str, event: Event | None) -> None:
        super().__init__(reason)
        self.reason = reason
        self.event = event


_Dated = tuple[Interval, Event]


class _Acting(NamedTuple):
    """The facts that act on one side, each with its interval."""

    parts: list[_Dated]
    ends: list[_Dated]
    seen: list[_Dated]
    missed: list[_Dated]


def bounds(facts: LayerFacts) -> LayerBounds:
    """The intervals of coming, reduction and end, narrowed as far as their order allows.

    At a joint an event without a side acts on both sides, on each on a day of its own within
    its interval; the whole is gone when both sides are. Raises ImpossibleOrder.
    """
    if facts.two_sided and _sides_are_told_apart(facts):
        return _two_sided(facts)
    return LayerBounds(_narrowed(facts.came, _acting(facts, ""), ""), {})


def _sides_are_told_apart(facts: LayerFacts) -> bool:
    for removal in facts.removals:
        if removal.side and removal.extent != "attempted":
            return True
    for sighting in facts.sightings:
        if sighting.side and sighting.result != "not accessible":
            return True
    return any(facts.lost)


def _acting(facts: LayerFacts, side: str) -> _Acting:
    """Sort the facts that act on a side; on side "" all of them act."""
    parts: list[_Dated] = []
    ends: list[_Dated] = []
    seen: list[_Dated] = []
    missed: list[_Dated] = []
    for index, (when, extent, of) in enumerate(facts.removals):
        if extent != "attempted" and not (side and of and of != side):
            (parts if extent == "part" else ends).append((when, Event("removal", index)))
    for of, when in facts.lost.items():
        if not (side and of and of != side):
            ends.append((when, Event("loss", of)))
    for index, (when, result, of) in enumerate(facts.sightings):
        if result != "not accessible" and not (side and of and of != side):
            (seen if result == "seen" else missed).append((when, Event("sighting", index)))
    return _Acting(parts, ends, seen, missed)


def _first(intervals: Sequence[tuple[int, int, int]]) -> tuple[int, int, int]:
    """The interval of the earliest of several events, with the flags of those that bound it."""
    if not intervals:
        return NEVER, NEVER, 0
    if len(intervals) == 1:
        return intervals[0]
    start = min(interval[0] for interval in intervals)
    end = min(interval[1] for interval in intervals)
    flags = 0
    for earliest, latest, qualifiers in intervals:
        if qualifiers and (earliest == start or latest == end):
            flags |= qualifiers
    return start, end, flags


def _ended(acting: _Acting) -> tuple[int, int, int]:
    """The end of the layer, from what ended it and from those who looked and found nothing.

    Not found means gone by then. Where nothing recorded can be the reason, it is itself an
    end, and nobody knows since when.
    """
    r0, r1, flags = _first([end[0] for end in acting.ends])
    if not acting.missed:
        return r0, r1, flags
    _, missed_by, missed_flags = min((miss[0] for miss in acting.missed), key=lambda m: m[1])
    if r0 > missed_by:
        return OPEN_START, missed_by, missed_flags
    if missed_by < r1:
        return r0, missed_by, flags | missed_flags
    return r0, r1, flags


def _narrowed(came: Interval, acting: _Acting, side: str) -> Bounds:
    """One side, narrowed until a1 <= p1 <= r1 and a0 <= p0 <= r0. Flags go with the days."""
    a0, a1, a_flags = came
    p0, p1, p_flags = _first([part[0] for part in acting.parts])
    r0, r1, r_flags = _ended(acting)
    if acting.seen:
        by = min((seen[0] for seen in acting.seen), key=lambda interval: interval.latest)
        if by.latest < a1:
            a1, a_flags = by.latest, a_flags | by.flags
        last = max(seen[0] for seen in acting.seen)
        if last.earliest > r0:
            r0, r_flags = last.earliest, r_flags | last.flags
    reducible = p0 != NEVER
    if reducible and r1 < p1:
        p1, p_flags = r1, p_flags | r_flags
    if p1 < a1:
        a1, a_flags = p1, a_flags | p_flags
    if r1 < a1:
        a1, a_flags = r1, a_flags | r_flags
    if p0 < a0:
        p0, p_flags = a0, p_flags | came.flags
    if r0 < a0:
        r0, r_flags = a0, r_flags | came.flags
    if reducible and r0 < p0:
        r0, r_flags = p0, r_flags | p_flags
    if a0 > a1 or p0 > p1 or r0 > r1:
        raise _contradiction(came, acting, side)
    return Bounds(a0, a1, p0, p1, r0, r1, a_flags, p_flags, r_flags)


def _contradiction(came: Interval, acting: _Acting, side: str) -> ImpossibleOrder:
    """The first pair of facts that cannot both be true, in words."""
    where = f" on side {side}" if side else ""
    coming = (came, None)
    for first, lower, lower_facts in (
        (0, "came", [coming]),
        (1, "was taken off in part", sorted(acting.parts)[:1]),
        (2, "was seen", acting.seen),
    ):
        for second, upper, upper_facts in (
            (0, "came", [coming]),
            (0, "was seen", acting.seen),
            (1, "was taken off in part", acting.parts),
            (2, "was gone", acting.ends),
            (2, "was not found", acting.missed),
        ):
            for (low, low_event), (high, high_event) in product(lower_facts, upper_facts):
                if first <= second and high.latest < low.earliest:
                    return ImpossibleOrder(
                        f"the layer {upper}{where} by {_day(high.latest)}, "
                        f"but {lower} not before {_day(low.earliest)}",
                        low_event or high_event,
                    )
    return ImpossibleOrder("the end of the layer has an interval that ends before it begins", None)


def _day(day: int) -> str:
    return iso(day) or "a day unknown"


def _two_sided(facts: LayerFacts) -> LayerBounds:
    acting = {side: _acting(facts, side) for side in "AB"}
    gone_by = {side: _ended(acting[side])[1] for side in "AB"}
    for side, other in ("AB", "BA"):
        # Seen, nobody says on which side: where one side had certainly gone, on the other.
        for seen in list(acting[side].seen):
            elsewhere = gone_by[side] < seen[0].earliest <= gone_by[other]
            if elsewhere and not facts.sightings[int(seen[1].key)].side:
                acting[side].seen.remove(seen)
    a, b = (_narrowed(facts.came, acting[side], side) for side in "AB")
    came_to, _, came_flags = min((a.came_to, 0, a.came_flags), (b.came_to, 1, b.came_flags))
    a = a._replace(came_to=came_to, came_flags=came_flags)
    b = b._replace(came_to=came_to, came_flags=came_flags)
    whole = _whole(a, b, _ends_on_one_side(facts, a.gone_to))
    return LayerBounds(whole, {} if a == b == whole else {"A": a, "B": b})


def _ends_on_one_side(facts: LayerFacts, day: int) -> bool:
    """Whether something that may lie before the day ended the layer on one side by itself."""
    return (
        any(r.side and r.extent == "all" and r.when.earliest < day for r in facts.removals)
        or any(side and when.earliest < day for side, when in facts.lost.items())
        or any(s.side and s.result == "not found" for s in facts.sightings)
    )


def _whole(a: Bounds, b: Bounds, ends_on_one_side: bool) -> Bounds:
    """Gone when both sides are; reduced from the first loss on either until then."""
    gone_a, gone_b = a[4:6] + a[8:], b[4:6] + b[8:]
    losses = [a[2:4] + a[7:8], b[2:4] + b[7:8]]
    if a[4:6] != b[4:6] or (ends_on_one_side and a.gone_from < a.gone_to):
        losses += [gone_a, gone_b]
    reduced = _first(losses)
    gone_from, gone_to = max(a.gone_from, b.gone_from), max(a.gone_to, b.gone_to)
    flags = 0
    for start, end, qualifiers in (gone_a, gone_b):
        if start == gone_from or end == gone_to:
            flags |= qualifiers
    return Bounds(*a[:2], *reduced[:2], gone_from, gone_to, a.came_flags, reduced[2], flags)
