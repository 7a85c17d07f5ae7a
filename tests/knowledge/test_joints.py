"""The condition of joints against every order of events, and where remains lie."""

from collections.abc import Iterator
from itertools import permutations, product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from conservedb.dates.days import UNKNOWN_END
from conservedb.knowledge.joints import CONDITIONS, JointEvent, condition, remains
from conservedb.knowledge.layers import Interval, LayerFacts, Removal, Sighting, bounds

KINDS = ("closed", "moving", "opened", "failed")
LAST = 4


def orders(events: list[JointEvent]) -> Iterator[tuple[tuple[JointEvent, int], ...]]:
    """Every order of the events, each with its day, that contradicts nothing recorded."""
    for order in permutations(events):
        if any(wrong_way(one, other) for i, other in enumerate(order) for one in order[i + 1 :]):
            continue
        spans = [range(e.when.earliest, e.when.latest + 1) for e in order]
        for days in product(*spans):
            if list(days) == sorted(days):
                yield tuple(zip(order, days, strict=True))


def wrong_way(earlier: JointEvent, later: JointEvent) -> bool:
    """Whether `earlier` is known to come first, although it stands behind `later`."""
    if (earlier.when.earliest, earlier.when.latest) != (later.when.earliest, later.when.latest):
        return False
    if None not in (earlier.step, later.step) and earlier.step != later.step:
        return bool((earlier.step or 0) < (later.step or 0))
    return later.kind == "closed" and earlier.kind != "closed"


spans = st.builds(
    lambda earliest, length: Interval(earliest, min(earliest + length, LAST)),
    st.integers(0, LAST),
    st.integers(0, 3),
)
joint_events = st.builds(
    JointEvent, st.sampled_from(KINDS), spans, st.sampled_from([None, None, 1, 2, 3])
)


@settings(max_examples=300, deadline=None)
@given(st.lists(joint_events, max_size=4))
def test_condition_agrees_with_all_orders_of_events(events: list[JointEvent]) -> None:
    named = [event._replace(ref=str(number)) for number, event in enumerate(events)]
    all_orders = list(orders(named))
    for day in range(-1, LAST + 2):
        last: set[JointEvent | None] = set()
        for order in all_orders:
            done = [event for event, when in order if when <= day]
            last.add(done[-1] if done else None)
        kinds = {event.kind if event else "not recorded" for event in last}
        found = condition(named, day)
        assert found.possible == tuple(name for name in CONDITIONS if name in kinds)
        assert found.state == (found.possible[0] if len(kinds) == 1 else "uncertain")
        assert found.since == (next(iter(last)) if len(last) == 1 else None)


def on(day: int, flags: int = 0) -> Interval:
    return Interval(day, day, flags)


def test_nothing_recorded_is_not_closed() -> None:
    assert condition([], 10) == ("not recorded", ("not recorded",), 0, None)
    assert condition([JointEvent("opened", on(20))], 10).state == "not recorded"


def test_taken_apart_and_set_again_within_one_year() -> None:
    year = Interval(100, 464)
    events = [JointEvent("closed", year, ref="set"), JointEvent("opened", year, ref="apart")]
    after = condition(events, 500)
    assert (after.state, after.since) == ("closed", events[0])
    within = condition(events, 300)
    assert within.state == "uncertain"
    assert within.possible == ("not recorded", "closed", "opened")


def test_a_step_overrides_the_usual_order() -> None:
    year = Interval(100, 464)
    events = [JointEvent("closed", year, 1), JointEvent("opened", year, 2)]
    assert condition(events, 500).state == "opened"


def test_steps_order_nothing_between_different_dates() -> None:
    events = [JointEvent("closed", Interval(100, 300), 2), JointEvent("opened", on(200), 1)]
    assert condition(events, 500).possible == ("closed", "opened")
    assert condition(events, 500).since is None


def test_an_opening_without_a_last_day_may_not_have_happened() -> None:
    events = [JointEvent("closed", on(100)), JointEvent("opened", Interval(200, UNKNOWN_END))]
    assert condition(events, 150).state == "closed"
    assert condition(events, 250).possible == ("closed", "opened")


def test_flags_are_those_of_the_last_event_and_of_the_next() -> None:
    events = [
        JointEvent("closed", on(100, 1)),
        JointEvent("opened", on(200)),
        JointEvent("closed", on(300, 2)),
        JointEvent("failed", on(400, 1)),
    ]
    assert [condition(events, day).flags for day in (50, 150, 250, 350, 450)] == [1, 1, 2, 3, 1]


CAME = on(100)
OPENED = JointEvent("opened", on(200))
CLOSED = JointEvent("closed", on(201))


def lies(
    removals: list[Removal] | None = None,
    sightings: list[Sighting] | None = None,
    day: int = 500,
    came: Interval = CAME,
    events: tuple[JointEvent, ...] = (OPENED, CLOSED),
) -> str:
    looks = sightings or []
    layer = bounds(LayerFacts(came, removals or [], looks, {}, two_sided=True))
    return remains(layer, events, looks, day)


def test_a_joint_never_opened_holds_no_remains() -> None:
    assert lies(events=(CLOSED,)) == ""
    assert lies(day=150) == ""


def test_after_the_opening_nobody_knows_where_it_lies() -> None:
    assert lies() == "split unknown"
    assert lies(events=(JointEvent("failed", on(200)),)) == "split unknown"


@pytest.mark.parametrize(
    ("looks", "expected"),
    [
        ({"A": "seen"}, "A at least"),
        ({"B": "seen"}, "B at least"),
        ({"A": "seen", "B": "seen"}, "both"),
        ({"A": "seen", "B": "not found"}, "A"),
        ({"A": "not found", "B": "seen"}, "B"),
        ({"A": "not found"}, "B"),
        ({"B": "not found"}, "A"),
        ({"A": "not accessible"}, "split unknown"),
        ({"": "seen"}, "split unknown"),
    ],
)
def test_looking_tells(looks: dict[str, str], expected: str) -> None:
    assert lies(sightings=[Sighting(on(250), result, of) for of, result in looks.items()]) == (
        expected
    )


def test_a_sighting_before_the_opening_tells_nothing_of_the_split() -> None:
    assert lies(sightings=[Sighting(on(150), "seen", "A")]) == "split unknown"


def test_a_sighting_at_the_opening_tells() -> None:
    year = Interval(180, 220)
    opened = JointEvent("opened", year)
    assert lies(sightings=[Sighting(year, "seen", "A")], events=(opened,)) == "A at least"


def test_a_removal_on_one_side_leaves_the_other() -> None:
    assert lies([Removal(on(300), "all", "A")]) == "B"
    assert lies([Removal(on(300), "all", "A")], day=250) == "split unknown"


def test_seen_on_a_side_that_may_since_have_gone_decides_nothing() -> None:
    removed, looked = Removal(Interval(400, 600), "all", "A"), Sighting(on(250), "seen", "A")
    assert lies([removed], [looked]) == "split unknown"
    assert lies([removed], [looked], day=300) == "A at least"


def test_gone_on_both_sides_leaves_nothing() -> None:
    assert lies([Removal(on(300), "all")]) == ""


def test_possibly_gone_or_possibly_not_opened_since() -> None:
    assert lies([Removal(Interval(400, 600), "all")]) == "possibly split unknown"
    maybe = JointEvent("opened", Interval(200, UNKNOWN_END))
    assert lies(events=(maybe,)) == "possibly split unknown"
    assert lies(came=Interval(100, 250)) == "possibly split unknown"
    assert lies(came=Interval(100, 200)) == "possibly split unknown"
    removed = [Removal(on(300), "all", "A"), Removal(Interval(400, 600), "all", "B")]
    assert lies(removed) == "possibly B"


def test_what_came_in_the_span_of_the_opening_was_laid_after_it() -> None:
    year = Interval(180, 220)
    assert lies(came=year, events=(JointEvent("opened", year),)) == ""
    assert lies(came=on(300)) == ""
