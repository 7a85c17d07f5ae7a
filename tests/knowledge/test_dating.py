"""What is recorded has happened: open and unknown ends are closed by what is certain."""

from __future__ import annotations

import datetime

from hypothesis import given
from hypothesis import strategies as st

from conservedb.dates import APPROXIMATE, OPEN_END, OPEN_START, read
from conservedb.knowledge.dating import happened


def day(text: str) -> int:
    return datetime.date.fromisoformat(text).toordinal()


RECORDED, MADE = day("1990-05-04"), day("1741-01-01")


def closed(words: str, floor: int = MADE) -> tuple[int, int]:
    found = read(words)
    when = happened(found.earliest, found.latest, found.flags, RECORDED, floor)
    return when.earliest, when.latest


def test_a_known_date_stays() -> None:
    assert closed("1934") == (day("1934-01-01"), day("1934-12-31"))


def test_an_open_or_unknown_end_is_capped_at_the_record() -> None:
    assert closed("after 1950") == (day("1951-01-01"), RECORDED)
    assert closed("1950/") == (day("1950-01-01"), RECORDED)


def test_an_open_or_unknown_start_is_raised_to_the_making() -> None:
    assert closed("before 1899") == (MADE, day("1898-12-31"))
    assert closed("/1898") == (MADE, day("1898-12-31"))


def test_nothing_known_lies_between_making_and_record() -> None:
    assert closed("Easter of the flood year") == (MADE, RECORDED)


def test_an_unknown_making_leaves_the_start_open() -> None:
    assert closed("before 1899", OPEN_START) == (OPEN_START, day("1898-12-31"))


def test_a_making_after_the_end_sharpens_nothing() -> None:
    assert closed("by 1700") == (OPEN_START, day("1700-12-31"))


def test_a_record_before_the_start_sharpens_nothing() -> None:
    assert closed("after 1995") == (day("1996-01-01"), OPEN_END)


def test_nothing_entered_lies_in_the_future() -> None:
    found, entered = read("1990s"), day("1995-06-01")
    when = happened(found.earliest, found.latest, found.flags, RECORDED, MADE, entered)
    assert when[:2] == (day("1990-01-01"), entered)
    found = read("2030")
    when = happened(found.earliest, found.latest, found.flags, RECORDED, MADE, entered)
    assert when[:2] == (day("2030-01-01"), day("2030-12-31"))


@given(st.sampled_from(["1934~", "c. 1890", "1951/..", "before 1899", "", "193X"]))
def test_qualifiers_stay_and_bounds_are_in_order(words: str) -> None:
    found = read(words)
    when = happened(found.earliest, found.latest, found.flags, RECORDED, MADE)
    assert when.earliest <= when.latest
    assert when.flags == found.flags
    assert ("~" in words or "c." in words) == bool(when.flags & APPROXIMATE)
