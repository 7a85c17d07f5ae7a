"""Worked cases of what lies at a place on a day. Expected values follow from the order of events
by hand; qualifiers are 1 for uncertain and 2 for approximate, as in `conservedb.dates`."""

import pytest

from conservedb.dates.days import (
    NEVER,
    OPEN_END,
    OPEN_START,
    UNKNOWN_END,
    UNKNOWN_START,
    day_number,
)
from conservedb.knowledge.layers import (
    Bounds,
    Interval,
    LayerFacts,
    Removal,
    Sighting,
    bounds,
    held,
    names,
    possible,
    qualified,
    settle,
    state,
)

UNCERTAIN, APPROXIMATE = 1, 2


def years(first: int, last: int, flags: int = 0) -> Interval:
    return Interval(day_number(first, 1, 1), day_number(last, 12, 31), flags)


def year(number: int, flags: int = 0) -> Interval:
    return years(number, number, flags)


def noon(number: int) -> int:
    return day_number(number, 7, 1)


def states(b: Bounds, number: int) -> tuple[str, ...]:
    return names(possible(b, noon(number)))


def test_a_layer_with_one_dated_end() -> None:
    b = bounds(LayerFacts(year(1934), [Removal(year(1967), "all")])).whole
    assert [states(b, when) for when in (1933, 1934, 1950, 1967, 1968)] == [
        ("not yet",),
        ("not yet", "present"),
        ("present",),
        ("present", "gone"),
        ("gone",),
    ]
    assert b.reduced_from == b.reduced_to == NEVER


def test_names_are_in_order_of_time_and_several_are_uncertain() -> None:
    assert names(15) == ("not yet", "present", "reduced", "gone")
    assert [state(mask) for mask in (1, 2, 4, 8, 6, 9)] == [
        "not yet",
        "present",
        "reduced",
        "gone",
        "uncertain",
        "uncertain",
    ]


def test_an_attempted_removal_changes_nothing() -> None:
    came, tried = year(1934), Removal(year(1967), "attempted", "A")
    for two_sided in (False, True):
        assert bounds(LayerFacts(came, [tried], two_sided=two_sided)) == bounds(LayerFacts(came))


def test_not_found_does_not_mean_present_until_then() -> None:
    looked = [Sighting(year(1960), "not found")]
    b = bounds(LayerFacts(year(1934), (), looked)).whole
    assert states(b, 1935) == states(b, 1959) == ("present", "gone")
    assert states(b, 1961) == ("gone",)
    assert b.gone_from == day_number(1934, 1, 1)


def test_not_found_after_it_was_seen_dates_its_end_between_the_two() -> None:
    looked = [Sighting(year(1950), "seen"), Sighting(year(1960), "not found")]
    b = bounds(LayerFacts(year(1934), (), looked)).whole
    assert (b.gone_from, b.gone_to) == (day_number(1950, 1, 1), day_number(1960, 12, 31))
    assert states(b, 1949) == ("present",)


def test_not_found_that_a_removal_explains_only_narrows_it() -> None:
    removals = [Removal(years(1950, 1980), "all")]
    b = bounds(LayerFacts(year(1934), removals, [Sighting(year(1960), "not found")])).whole
    assert (b.gone_from, b.gone_to) == (day_number(1950), day_number(1960, 12, 31))


def test_not_found_before_the_only_removal_is_an_end_of_its_own() -> None:
    removals = [Removal(year(1967), "all")]
    b = bounds(LayerFacts(year(1934), removals, [Sighting(year(1960), "not found")])).whole
    assert (b.gone_from, b.gone_to) == (day_number(1934), day_number(1960, 12, 31))


def test_not_accessible_tells_nothing() -> None:
    came, looked = year(1934), Sighting(year(1960), "not accessible", "A")
    assert bounds(LayerFacts(came, (), [looked], {}, True)) == bounds(LayerFacts(came))


def test_a_sighting_bounds_a_vague_coming() -> None:
    came = Interval(OPEN_START, day_number(1989, 12, 31))
    b = bounds(LayerFacts(came, (), [Sighting(year(1871), "seen")])).whole
    assert (b.came_from, b.came_to) == (OPEN_START, day_number(1871, 12, 31))
    assert states(b, 1872) == ("present",)


def test_ends_that_are_no_days() -> None:
    came = Interval(UNKNOWN_START, OPEN_END)
    taken = Interval(day_number(1950), UNKNOWN_END)
    b = bounds(LayerFacts(came, [Removal(taken, "all")])).whole
    assert (b.came_to, b.gone_to) == (UNKNOWN_END, UNKNOWN_END)
    assert states(b, 1900) == ("not yet", "present")
    assert states(b, 2020) == ("not yet", "present", "gone")


def test_the_loss_of_what_bears_it_ends_a_layer() -> None:
    b = bounds(LayerFacts(year(1934), lost={"": year(1950)})).whole
    assert states(b, 1951) == ("gone",)


def test_the_second_of_two_removals_does_not_matter() -> None:
    removals = [Removal(year(1967), "all"), Removal(years(1950, 1980), "all")]
    b = bounds(LayerFacts(year(1934), removals)).whole
    assert (b.gone_from, b.gone_to) == (day_number(1950), day_number(1967, 12, 31))


def test_taken_off_on_one_side_of_a_joint() -> None:
    answer = bounds(LayerFacts(year(1934), [Removal(year(1967), "all", "A")], two_sided=True))
    assert set(answer.sides) == {"A", "B"}
    assert states(answer.sides["A"], 1970) == ("gone",)
    assert states(answer.sides["B"], 1970) == ("present",)
    assert states(answer.whole, 1970) == ("reduced",)
    assert states(answer.whole, 1967) == ("present", "reduced")


def test_gone_on_both_sides_is_gone() -> None:
    removals = [Removal(year(1967), "all", "A"), Removal(year(1989), "all", "B")]
    whole = bounds(LayerFacts(year(1934), removals, two_sided=True)).whole
    assert [states(whole, when) for when in (1960, 1970, 1990)] == [
        ("present",),
        ("reduced",),
        ("gone",),
    ]


def test_one_side_may_have_gone_first_although_the_dates_are_alike() -> None:
    removals = [Removal(year(1967), "all", side) for side in "AB"]
    apart = bounds(LayerFacts(year(1934), removals, two_sided=True))
    assert states(apart.whole, 1967) == ("present", "reduced", "gone")
    assert states(apart.sides["A"], 1967) == ("present", "gone")
    together = bounds(LayerFacts(year(1934), [Removal(year(1967), "all")], two_sided=True))
    assert together.sides == {}
    assert states(together.whole, 1967) == ("present", "gone")


def test_both_sides_on_one_day_leave_no_sides_to_tell_apart() -> None:
    day = Interval(noon(1967), noon(1967))
    removals = [Removal(day, "all", side) for side in "AB"]
    answer = bounds(LayerFacts(year(1934), removals, two_sided=True))
    assert answer.sides == {} and answer.whole.reduced_from == NEVER


def test_the_loss_of_a_component_takes_its_side_of_the_joint_along() -> None:
    answer = bounds(LayerFacts(year(1934), lost={"A": year(1950)}, two_sided=True))
    assert states(answer.sides["A"], 1951) == ("gone",)
    assert states(answer.whole, 1951) == ("reduced",)


def test_seen_somewhere_after_one_side_had_gone_was_seen_on_the_other() -> None:
    removals = [Removal(year(1967), "all", "A"), Removal(years(1968, 2020), "all", "B")]
    facts = LayerFacts(year(1934), removals, [Sighting(year(2012), "seen")], {}, True)
    answer = bounds(facts)
    assert states(answer.sides["A"], 1970) == ("gone",)
    assert answer.sides["B"].gone_from == day_number(2012)


def test_a_sighting_on_one_side_bounds_the_coming_on_both() -> None:
    facts = LayerFacts(years(1934, 1989), (), [Sighting(year(1950), "seen", "A")], {}, True)
    answer = bounds(facts)
    assert answer.sides == {}
    assert answer.whole.came_to == day_number(1950, 12, 31)


def test_flags_are_those_of_the_dates_that_bound() -> None:
    facts = LayerFacts(
        year(1934, APPROXIMATE),
        [Removal(years(1950, 1980), "all"), Removal(year(1967, UNCERTAIN), "all")],
    )
    b = bounds(facts).whole
    assert (b.came_flags, b.reduced_flags, b.gone_flags) == (APPROXIMATE, 0, UNCERTAIN)
    assert [qualified(b, mask) for mask in (1, 2, 4, 8, 1 | 8)] == [2, 3, 1, 1, 3]


def test_a_removal_that_bounds_nothing_lends_no_flags() -> None:
    removals = [Removal(year(1950), "all"), Removal(year(1967, UNCERTAIN), "all")]
    assert bounds(LayerFacts(year(1934), removals)).whole.gone_flags == 0


def test_flags_travel_with_the_bound_they_supply() -> None:
    looked = [Sighting(year(1950, UNCERTAIN), "seen"), Sighting(year(1960, 2), "not found")]
    b = bounds(LayerFacts(years(1934, 1989), (), looked)).whole
    assert b.came_flags == UNCERTAIN
    assert b.gone_flags == UNCERTAIN | APPROXIMATE


def test_an_end_that_a_failed_search_narrows_rests_on_both() -> None:
    removals = [Removal(years(1950, 1980, UNCERTAIN), "all")]
    looked = [Sighting(year(1960, APPROXIMATE), "not found")]
    b = bounds(LayerFacts(year(1934), removals, looked)).whole
    assert b.gone_flags == UNCERTAIN | APPROXIMATE


def test_flags_of_a_joint_come_from_the_side_that_decides() -> None:
    removals = [Removal(year(1967, UNCERTAIN), "all", "A"), Removal(year(1989, 2), "all", "B")]
    whole = bounds(LayerFacts(year(1934), removals, two_sided=True)).whole
    assert (whole.reduced_flags, whole.gone_flags) == (UNCERTAIN, APPROXIMATE)


def test_over_a_span() -> None:
    removals = [Removal(year(1950), "part"), Removal(year(1967), "all")]
    b = bounds(LayerFacts(year(1934), removals)).whole
    forties = held(b, day_number(1940), day_number(1949, 12, 31))
    assert [names(mask) for mask in forties] == [("present",)] * 3
    fifties = held(b, day_number(1949), day_number(1959, 12, 31))
    assert [names(mask) for mask in fifties] == [(), ("present", "reduced"), ("present", "reduced")]
    year_of_the_end = held(b, day_number(1967), day_number(1967, 12, 31))
    assert [names(mask) for mask in year_of_the_end] == [(), ("gone",), ("reduced", "gone")]


def test_a_span_that_ends_before_it_begins() -> None:
    with pytest.raises(ValueError, match=r"ends \(5\) before it begins \(9\)"):
        held(bounds(LayerFacts(year(1934))).whole, 9, 5)


def test_nothing_to_settle() -> None:
    b = bounds(LayerFacts(year(1934))).whole
    assert settle(b, noon(1950)) == settle(b, noon(1900)) == ""


def test_what_would_settle_it() -> None:
    b = bounds(LayerFacts(years(1900, 1933), [Removal(years(1934, 1967), "all")])).whole
    assert settle(b, noon(1950)) == (
        "find the date of the removal or loss, between 1934-01-01 and 1967-12-31"
    )
    assert settle(b, noon(1910)) == "find the date it came, between 1900-01-01 and 1933-12-31"


def test_looking_settles_an_end_nobody_has_dated() -> None:
    gone = Removal(Interval(day_number(1912), UNKNOWN_END), "all")
    b = bounds(LayerFacts(year(1868), [gone])).whole
    find = "find the date of the removal or loss, not before 1912-01-01; or look at the place: "
    assert settle(b, noon(1950)) == find + "no sighting is on record"
    looked = [Sighting(year(1901), "seen"), Sighting(year(1934), "not accessible")]
    assert settle(b, noon(1950), looked) == find + "nobody has since 1901-12-31"


def test_two_dates_to_find() -> None:
    removals = [Removal(years(1934, 1967), "part"), Removal(years(1950, 1989), "all")]
    b = bounds(LayerFacts(Interval(OPEN_START, day_number(1900)), removals)).whole
    assert settle(b, noon(1960)) == (
        "find the date of the removal in part, between 1934-01-01 and 1967-12-31, "
        "and the date of the removal or loss, between 1950-01-01 and 1989-12-31"
    )
    assert settle(b, noon(1890)) == "find the date it came, not after 1900-01-01"
