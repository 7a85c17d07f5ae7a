"""Counting by decade and by word: certain and possible apart, nothing sharpened, nothing lost."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from conservedb.dates import (
    APPROXIMATE,
    MAX_DAY,
    MIN_DAY,
    OPEN_END,
    OPEN_START,
    UNKNOWN_END,
    UNKNOWN_START,
    civil,
    read,
)
from conservedb.knowledge.decades import (
    Count,
    Decade,
    Group,
    Thing,
    by_decade,
    decades_of,
    tally,
    with_gaps,
)


def thing(date: str, sureness: str = "certain") -> Thing:
    found = read(date)
    return Thing(sureness, found.earliest, found.latest, found.flags)


def counted(*things: Thing) -> dict[int, tuple[int, ...]]:
    return {decade.first: (*decade.counts,) for decade in by_decade(things).decades}


def test_a_decade_begins_with_the_calendar() -> None:
    # 1939-12-31 and 1940-01-01 are neighbours in two decades.
    assert counted(thing("1939-12-31"), thing("1940-01-01"), thing("1949-12-31")) == {
        1930: (1, 0, 0),
        1940: (2, 0, 0),
    }
    assert counted(thing("193X")) == {1930: (1, 0, 0)}


def test_what_may_lie_in_several_is_possible_in_each_and_counted_once() -> None:
    found = by_decade([thing("1938/1951"), thing("1945")])
    assert [(one.first, *one.counts) for one in found.decades] == [
        *((1930, 0, 1, 0), (1940, 1, 1, 0), (1950, 0, 1, 0))
    ]
    assert found.total == (2, 0, 0) and found.several == 1


def test_a_qualified_date_is_possible_only() -> None:
    assert thing("1934~").flags == APPROXIMATE
    assert counted(thing("1934~"), thing("1934?")) == {1930: (0, 2, 0)}


def test_how_far_a_thing_is_an_answer_is_kept() -> None:
    found = by_decade([thing("1934", "possible"), thing("1934/1945", "unidentified")])
    assert [(one.first, *one.counts) for one in found.decades] == [
        *((1930, 0, 1, 1), (1940, 0, 0, 1))
    ]
    assert found.total == (0, 1, 1)
    with pytest.raises(ValueError, match=r"tuple\.index"):
        by_decade([thing("1934", "surely")])


@pytest.mark.parametrize(
    "date", ["", "Easter", "../1898", "/1898", "1950/..", "1950/", "XXXX", "1800/1900"]
)
def test_a_date_that_names_no_decade_is_counted_apart(date: str) -> None:
    found = by_decade([thing(date)])
    assert found.decades == () and found.undated == (1, 0, 0) and found.total == (1, 0, 0)


def test_a_hundred_years_are_ten_decades() -> None:
    assert list(decades_of(read("19XX").earliest, read("19XX").latest)) == [*range(1900, 2000, 10)]
    for unknown in (OPEN_START, UNKNOWN_START):
        assert not decades_of(unknown, 700_000)
    for unknown in (OPEN_END, UNKNOWN_END):
        assert not decades_of(700_000, unknown)


@given(st.integers(MIN_DAY, MAX_DAY), st.integers(0, 20_000))
def test_a_span_has_the_decade_of_each_of_its_days(first: int, more: int) -> None:
    last = min(first + more, MAX_DAY)
    span = decades_of(first, last)
    for day in {first, (first + last) // 2, last}:
        decade = next(one for one in span if one <= civil(day)[0] < one + 10)
        assert decade % 10 == 0
    assert len(span) <= 7


def test_empty_decades_stand_together() -> None:
    found = with_gaps(by_decade([thing("1741"), thing("1868"), thing("1871")]).decades)
    assert [(one.label, one.counts.total) for one in found] == [
        *(("1740s", 1), ("1750s to 1850s", 0), ("1860s", 1), ("1870s", 1))
    ]
    assert with_gaps(()) == ()


@pytest.mark.parametrize(
    ("decade", "label"),
    [
        (Decade(1930, 1930, Count()), "1930s"),
        (Decade(10, 10, Count()), "10s"),
        (Decade(0, 0, Count()), "1 BC to 9"),  # year 0 is 1 BC
        (Decade(-10, -10, Count()), "11 BC to 2 BC"),
        (Decade(-100, -20, Count()), "101 BC to 12 BC"),
    ],
)
def test_names_of_decades(decade: Decade, label: str) -> None:
    assert decade.label == label


def test_groups_by_word() -> None:
    found = tally(
        [
            Thing("certain", 1, 1, labels=("Orde", "Calder", "Orde")),
            Thing("possible", 1, 1, labels=("Calder",)),
            Thing("certain", 1, 1, labels=("Adams",)),
            Thing("certain", 1, 1),
            Thing("unidentified", 1, 1),
        ]
    )
    assert found.groups == (
        Group("Calder", Count(1, 1, 0)),
        Group("Adams", Count(1, 0, 0)),
        Group("Orde", Count(1, 0, 0)),
        Group("not recorded", Count(1, 0, 1)),
    )
    assert found.total == (3, 1, 1) and found.shared == 1
    assert tally([]) == ((), Count(), 0)
