"""The bounds and states of layers against every order of events, counted out day by day.

A world gives every recorded event one day of its interval. Layers are compared with the plain
list of all worlds in which nothing contradicts anything.
"""

from collections.abc import Iterable, Iterator
from itertools import product
from typing import NamedTuple

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from conservedb.dates.days import NEVER
from conservedb.knowledge.layers import (
    GONE,
    NOT_YET,
    PRESENT,
    REDUCED,
    Bounds,
    ImpossibleOrder,
    Interval,
    LayerFacts,
    Removal,
    Sighting,
    bounds,
    held,
    possible,
)

LAST = 6
DAYS = range(-1, LAST + 2)


class World(NamedTuple):
    came: int
    reduced: int
    gone: int


def spread(when: Interval) -> range:
    return range(when.earliest, when.latest + 1)


def worlds(facts: LayerFacts, side: str = "") -> set[World]:
    """Every order of events on a side ("" for a layer whose sides nobody tells apart)."""

    def acts(of: str) -> bool:
        return not side or not of or of == side

    parts = [r.when for r in facts.removals if r.extent == "part" and acts(r.side)]
    ends = [r.when for r in facts.removals if r.extent == "all" and acts(r.side)]
    ends += [when for of, when in facts.lost.items() if acts(of)]
    seen = [s for s in facts.sightings if s.result == "seen" and acts(s.side)]
    missed = [s.when for s in facts.sightings if s.result == "not found" and acts(s.side)]
    if any(all(end.earliest > miss.latest for end in ends) for miss in missed):
        ends = [*ends, Interval(0, LAST)]
    if side:
        other = "B" if side == "A" else "A"
        seen = [s for s in seen if s.side or not seen_elsewhere(facts, s, side, other)]
    found = set()
    reductions = {min(days, default=NEVER) for days in product(*map(spread, parts))}
    ending = {min(days, default=NEVER) for days in product(*map(spread, ends))}
    for a, p, r in product(spread(facts.came), reductions, ending):
        in_order = a <= r and (not parts or a <= p <= r)
        was_seen = all(any(a <= day <= r for day in spread(s.when)) for s in seen)
        was_missed = all(any(r <= day for day in spread(when)) for when in missed)
        if in_order and was_seen and was_missed:
            found.add(World(a, p, r))
    return found


def seen_elsewhere(facts: LayerFacts, sighting: Sighting, side: str, other: str) -> bool:
    """Seen, nobody says where: on a side that had certainly gone it was not."""

    def gone_by(of: str) -> int:
        days = [r.when.latest for r in facts.removals if r.extent == "all" and r.side in ("", of)]
        days += [when.latest for lost, when in facts.lost.items() if lost in ("", of)]
        days += [
            s.when.latest for s in facts.sightings if s.result == "not found" and s.side in ("", of)
        ]
        return min(days, default=NEVER)

    return gone_by(side) < sighting.when.earliest <= gone_by(other)


def one_sided_end(facts: LayerFacts, before: int) -> bool:
    return (
        any(r.extent == "all" and r.side and r.when.earliest < before for r in facts.removals)
        or any(side and when.earliest < before for side, when in facts.lost.items())
        or any(s.result == "not found" and s.side for s in facts.sightings)
    )


def joined(facts: LayerFacts, side_a: set[World], side_b: set[World]) -> set[World]:
    """The worlds of the whole: gone when both sides are, reduced from the first loss on either."""

    def ends(of: set[World]) -> tuple[int, int]:
        return min(w.gone for w in of), max(w.gone for w in of)

    pairs = [(a, b) for a, b in product(side_a, side_b) if a.came == b.came]
    if not pairs:
        return set()
    at_once = ends({a for a, _ in pairs}) == ends({b for _, b in pairs}) and not one_sided_end(
        facts, max(a.gone for a, _ in pairs)
    )
    return {
        World(a.came, min(a.reduced, b.reduced, a.gone, b.gone), max(a.gone, b.gone))
        for a, b in pairs
        if not at_once or a.gone == b.gone
    }


def state_in(world: World, day: int) -> int:
    if day < world.came:
        return NOT_YET
    if world.gone <= day:
        return GONE
    return REDUCED if world.reduced <= day else PRESENT


def any_of(masks: Iterable[int]) -> int:
    total = 0
    for mask in masks:
        total |= mask
    return total


def check(found: Bounds, real: set[World], with_spans: bool = False) -> None:
    assert (found.came_from, found.came_to) == span_of(world.came for world in real)
    assert (found.gone_from, found.gone_to) == span_of(world.gone for world in real)
    tables = [{day: state_in(world, day) for day in DAYS} for world in real]
    for day in DAYS:
        assert possible(found, day) == any_of(table[day] for table in tables)
    if with_spans:
        check_spans(found, tables)


def span_of(days: Iterable[int]) -> tuple[int, int]:
    ordered = sorted(days)
    return ordered[0], ordered[-1]


def check_spans(found: Bounds, tables: list[dict[int, int]]) -> None:
    for first, last in product(DAYS, DAYS):
        if first > last:
            continue
        passed = [{table[day] for day in range(first, last + 1)} for table in tables]
        answer = held(found, first, last)
        for state in (NOT_YET, PRESENT, REDUCED, GONE):
            assert bool(answer.possibly & state) == any(state in states for states in passed)
            assert bool(answer.at_some_time & state) == all(state in states for states in passed)
            assert bool(answer.throughout & state) == all(states == {state} for states in passed)


def check_layer(facts: LayerFacts, with_spans: bool = False) -> None:
    real = worlds(facts)
    if not real:
        with pytest.raises(ImpossibleOrder):
            bounds(facts)
        return
    answer = bounds(facts)
    assert answer.sides == {}
    check(answer.whole, real, with_spans)


def check_joint(facts: LayerFacts, with_spans: bool = False) -> None:
    side_a, side_b = worlds(facts, "A"), worlds(facts, "B")
    real = joined(facts, side_a, side_b)
    if not real:
        with pytest.raises(ImpossibleOrder):
            bounds(facts)
        return
    answer = bounds(facts)
    came = {world.came for world in side_a} & {world.came for world in side_b}
    for side, of in (("A", side_a), ("B", side_b)):
        bounds_of = answer.sides.get(side, answer.whole)
        check(bounds_of, {world for world in of if world.came in came}, with_spans)
    check(answer.whole, real, with_spans)


def intervals(last: int) -> Iterator[Interval]:
    for earliest in range(last + 1):
        for latest in range(earliest, last + 1):
            yield Interval(earliest, latest)


def test_every_order_of_coming_a_part_and_an_end() -> None:
    choices = list(intervals(3))
    for came, part, end in product(choices, [None, *choices], [None, *choices]):
        removals = [Removal(part, "part")] if part else []
        removals += [Removal(end, "all")] if end else []
        check_layer(LayerFacts(came, removals), with_spans=True)


def test_every_order_of_an_end_and_two_sightings() -> None:
    choices = list(intervals(2))
    looks = [None, *(Sighting(when, how) for when in choices for how in ("seen", "not found"))]
    for came, end, one, two in product(choices, [None, *choices], looks, looks):
        removals = [Removal(end, "all")] if end else []
        check_layer(LayerFacts(came, removals, [look for look in (one, two) if look]))


def test_every_order_of_an_end_on_each_side_and_on_both() -> None:
    choices = list(intervals(2))
    options: list[Interval | None] = [None, *choices]
    came = Interval(0, 1)
    for on_a, on_b, on_both in product(options, options, options):
        sided = (("A", on_a), ("B", on_b), ("", on_both))
        removals = [Removal(when, "all", side) for side, when in sided if when]
        check_joint(LayerFacts(came, removals, (), {}, True), with_spans=True)


def test_every_sighting_that_names_no_side() -> None:
    choices = list(intervals(2))
    options: list[Interval | None] = [None, *choices]
    for on_a, on_b, seen in product(options, options, choices):
        sided = (("A", on_a), ("B", on_b))
        removals = [Removal(when, "all", side) for side, when in sided if when]
        looks = [Sighting(seen, "seen")]
        check_joint(LayerFacts(Interval(0, 1), removals, looks, {}, True))


days = st.builds(
    lambda earliest, length: Interval(earliest, min(earliest + length, LAST)),
    st.integers(0, LAST),
    st.integers(0, 4),
)
early = st.builds(lambda latest: Interval(0, latest), st.integers(0, 3)) | days


def facts(sides: list[str], two_sided: bool) -> st.SearchStrategy[LayerFacts]:
    side = st.sampled_from(sides)
    extents = st.sampled_from(["all", "part", "attempted"])
    results = st.sampled_from(["seen", "not found", "not accessible"])
    return st.builds(
        LayerFacts,
        early,
        st.lists(st.builds(Removal, days, extents, side), max_size=3),
        st.lists(st.builds(Sighting, days, results, side), max_size=2),
        st.dictionaries(side, days, max_size=1),
        st.just(two_sided),
    )


@settings(max_examples=800, deadline=None)
@given(facts([""], two_sided=False))
def test_layers_agree_with_all_orders_of_events(of: LayerFacts) -> None:
    check_layer(of, with_spans=True)


@settings(max_examples=800, deadline=None)
@given(facts(["", "A", "B"], two_sided=True))
def test_joints_agree_with_all_orders_of_events(of: LayerFacts) -> None:
    check_joint(of, with_spans=True)


@settings(max_examples=100, deadline=None)
@given(facts(["", "A", "B"], two_sided=False))
def test_a_layer_without_sides_asks_for_none(of: LayerFacts) -> None:
    check_layer(of)


@settings(max_examples=200, deadline=None)
@given(facts(["", "A", "B"], two_sided=True))
def test_what_is_stored_is_in_order(of: LayerFacts) -> None:
    try:
        answer = bounds(of)
    except ImpossibleOrder:
        return
    for b in (answer.whole, *answer.sides.values()):
        assert b.came_from <= b.came_to and b.gone_from <= b.gone_to
        assert b.came_from <= b.reduced_from <= b.reduced_to
        assert b.came_from <= b.gone_from and b.came_to <= min(b.reduced_to, b.gone_to)
        if b.reduced_from != NEVER:
            assert b.reduced_from <= b.gone_from and b.reduced_to <= b.gone_to
