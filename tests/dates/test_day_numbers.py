from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from conservedb import dates

YEARS = st.integers(min_value=-9999, max_value=9999)


def days_from_civil(year: int, month: int, day: int) -> int:
    """Days since 1970-01-01, after H. Hinnant, "chrono-Compatible Low-Level Date Algorithms",

    https://howardhinnant.github.io/date_algorithms.html (from memory).
    """
    year -= month <= 2
    era = year // 400
    year_of_era = year - era * 400
    day_of_year = (153 * (month - 3 if month > 2 else month + 9) + 2) // 5 + day - 1
    day_of_era = year_of_era * 365 + year_of_era // 4 - year_of_era // 100 + day_of_year
    return era * 146_097 + day_of_era - 719_468


@given(st.dates())
def test_agrees_with_the_standard_library_from_year_1(day: date) -> None:
    number = dates.day_number(day.year, day.month, day.day)
    assert number == day.toordinal()
    assert dates.civil(number) == (day.year, day.month, day.day)
    assert dates.iso(number) == day.isoformat()
    assert dates.from_iso(day.isoformat()) == number


def test_every_first_and_last_of_a_month_agrees_with_an_independent_algorithm() -> None:
    shift = date(1970, 1, 1).toordinal()
    for year in range(-9999, 10_000):
        for month in (1, 2, 3, 12):
            last = dates.last_day_of(year, month)
            for day in (1, last):
                number = dates.day_number(year, month, day)
                assert number == days_from_civil(year, month, day) + shift
                assert dates.civil(number) == (year, month, day)


def test_day_zero_of_the_julian_day_count() -> None:
    # Julian day number 0 is 24 November 4714 BC, proleptic Gregorian; 0001-01-01 is 1721426
    # (from memory of the usual conversion tables).
    assert dates.day_number(-4713, 11, 24) == 1 - 1_721_426


@given(st.integers(dates.MIN_DAY, dates.MAX_DAY))
def test_every_number_is_a_day_and_back(number: int) -> None:
    text = dates.iso(number)
    assert text is not None
    assert dates.from_iso(text) == number
    assert dates.day_number(*dates.civil(number)) == number


def test_ends_of_the_range() -> None:
    assert dates.iso(dates.MIN_DAY) == "-9999-01-01"
    assert dates.iso(dates.MAX_DAY) == "9999-12-31"
    assert dates.iso(dates.day_number(0, 2, 29)) == "0000-02-29"
    assert dates.iso(0) == "0000-12-31"
    assert dates.day_number(1) == 1


def test_sentinels_stand_in_order_outside_the_days() -> None:
    order = [
        dates.OPEN_START,
        dates.UNKNOWN_START,
        dates.MIN_DAY,
        dates.MAX_DAY,
        dates.UNKNOWN_END,
        dates.OPEN_END,
        dates.NEVER,
    ]
    assert order == sorted(set(order))
    for number in set(order) - {dates.MIN_DAY, dates.MAX_DAY}:
        assert not dates.is_known(number)
        assert dates.iso(number) is None
        with pytest.raises(ValueError, match="not the number of a day"):
            dates.civil(number)


@pytest.mark.parametrize(
    "parts",
    [
        (2023, 2, 29), (1900, 2, 29), (2023, 4, 31), (2023, 0, 1), (2023, 13, 1), (2023, 1, 0),
        (2023, 1, 32), (10_000, 1, 1), (-10_000, 12, 31),
    ],
)  # fmt: skip
def test_impossible_days_are_refused(parts: tuple[int, int, int]) -> None:
    with pytest.raises(ValueError, match=r"there is no|lies outside"):
        dates.day_number(*parts)


@pytest.mark.parametrize(
    "text",
    ["1950", "1950-06", "1950-6-14", "1950-06-31", "-0000-01-01", "1950-06-14 ", "19500614", ""],
)
def test_only_a_full_date_is_iso(text: str) -> None:
    with pytest.raises(ValueError, match=r"not a full date|there is no"):
        dates.from_iso(text)


@given(YEARS)
def test_months_have_the_days_of_the_gregorian_calendar(year: int) -> None:
    lengths = [dates.last_day_of(year, month) for month in range(1, 13)]
    assert sum(lengths) == (days_from_civil(year + 1, 1, 1) - days_from_civil(year, 1, 1))
    for month in (0, 13):
        with pytest.raises(ValueError, match="no month"):
            dates.last_day_of(year, month)
