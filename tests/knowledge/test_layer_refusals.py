"""Facts that leave no order of events are refused, in words, and the culprit is named."""

import pytest

from conservedb.dates.days import day_number
from conservedb.knowledge.layers import (
    Event,
    ImpossibleOrder,
    Interval,
    LayerFacts,
    Removal,
    Sighting,
    bounds,
)


def year(number: int) -> Interval:
    return Interval(day_number(number, 1, 1), day_number(number, 12, 31))


def refused(facts: LayerFacts) -> ImpossibleOrder:
    with pytest.raises(ImpossibleOrder) as caught:
        bounds(facts)
    assert str(caught.value) == caught.value.reason
    return caught.value


def test_refused_gone_before_it_came() -> None:
    error = refused(LayerFacts(year(1967), [Removal(year(1934), "all")]))
    assert error.reason == ("the layer was gone by 1934-12-31, but came not before 1967-01-01")
    assert error.event == Event("removal", 0)


def test_refused_taken_off_in_part_before_it_came() -> None:
    removals = [Removal(year(1990), "all"), Removal(year(1934), "part")]
    error = refused(LayerFacts(year(1967), removals))
    assert error.reason == (
        "the layer was taken off in part by 1934-12-31, but came not before 1967-01-01"
    )
    assert error.event == Event("removal", 1)


def test_refused_taken_off_in_part_after_it_had_gone() -> None:
    removals = [Removal(year(1950), "all"), Removal(year(1967), "part")]
    error = refused(LayerFacts(year(1934), removals))
    assert error.reason == (
        "the layer was gone by 1950-12-31, but was taken off in part not before 1967-01-01"
    )
    assert error.event == Event("removal", 1)


def test_refused_seen_after_it_had_gone() -> None:
    looked = [Sighting(year(1940), "seen"), Sighting(year(1967), "seen")]
    error = refused(LayerFacts(year(1934), [Removal(year(1950), "all")], looked))
    assert error.reason == ("the layer was gone by 1950-12-31, but was seen not before 1967-01-01")
    assert error.event == Event("sighting", 1)


def test_a_later_removal_in_part_is_not_blamed() -> None:
    removals = [Removal(year(number), how) for number, how in ((1990, "part"), (1967, "all"))]
    removals.append(Removal(year(1950), "part"))
    facts = LayerFacts(year(1934), removals, [Sighting(year(1980), "seen")])
    assert refused(facts).event == Event("sighting", 0)


def test_refused_seen_before_it_came() -> None:
    error = refused(LayerFacts(year(1967), (), [Sighting(year(1934), "seen")]))
    assert error.reason == ("the layer was seen by 1934-12-31, but came not before 1967-01-01")
    assert error.event == Event("sighting", 0)


def test_refused_seen_after_it_was_looked_for_and_not_found() -> None:
    looked = [Sighting(year(1950), "not found"), Sighting(year(1967), "seen")]
    error = refused(LayerFacts(year(1934), (), looked))
    assert error.reason == (
        "the layer was not found by 1950-12-31, but was seen not before 1967-01-01"
    )
    assert error.event == Event("sighting", 1)


def test_refused_lost_before_it_came_names_the_side() -> None:
    error = refused(LayerFacts(year(1967), lost={"B": year(1934)}, two_sided=True))
    assert error.reason == (
        "the layer was gone on side B by 1934-12-31, but came not before 1967-01-01"
    )
    assert error.event == Event("loss", "B")


def test_refused_seen_after_both_sides_had_gone() -> None:
    removals = [Removal(year(1950), "all", "A"), Removal(year(1960), "all", "B")]
    facts = LayerFacts(year(1934), removals, [Sighting(year(1967), "seen")], {}, True)
    assert refused(facts).event == Event("sighting", 0)


@pytest.mark.parametrize("came", [Interval(20, 10), Interval(0, 5)])
def test_refused_an_interval_that_ends_before_it_begins(came: Interval) -> None:
    refused(LayerFacts(came, [Removal(Interval(40, 30), "all")]))
