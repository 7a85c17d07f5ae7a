"""Day numbers: integers that count days of the proleptic Gregorian calendar.

0001-01-01 is day 1, as in ``datetime.date.toordinal``; year 0 exists (it is 1 BC) and years run
from -9999 to 9999. Ends of a date that are not a day have a number of their own outside that
range, so that plain integer comparison puts them in the right order.
"""

import re
from bisect import bisect_right

FIRST_YEAR, LAST_YEAR = -9999, 9999

OPEN_START = -9_000_000  # "../1985": no beginning stated
UNKNOWN_START = -8_000_000  # "/1985": there was a beginning, nobody knows it
UNKNOWN_END = 8_000_000  # "1985/": there was an end, nobody knows it
OPEN_END = 9_000_000  # "1985/..": no end stated
NEVER = 20_000_000  # it has not happened

_DAYS_BEFORE_MONTH = (0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334)
_DAYS_BEFORE_MONTH_LEAP = (0, 31, 60, 91, 121, 152, 182, 213, 244, 274, 305, 335)
_MONTH_LENGTHS = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
_ISO = re.compile(r"(-?[0-9]{4})-([0-9]{2})-([0-9]{2})").fullmatch


def is_leap(year: int) -> bool:
    """Whether the year has a 29 February."""
    return not year % 4 and (year % 100 != 0 or not year % 400)


def days_before(year: int) -> int:
    """The number of the last day before a year, so that 1 January is one more."""
    past = year - 1
    return 365 * past + past // 4 - past // 100 + past // 400


def last_day_of(year: int, month: int) -> int:
    """The number of days in a month, 28 to 31. ValueError when there is no such month."""
    if not 1 <= month <= 12:
        raise ValueError(f"there is no month {month}")
    return 29 if month == 2 and is_leap(year) else _MONTH_LENGTHS[month - 1]


def day_number(year: int, month: int = 1, day: int = 1) -> int:
    """The number of a day. ValueError when the calendar has no such day, or beyond year +-9999."""
    if not FIRST_YEAR <= year <= LAST_YEAR:
        raise ValueError(f"year {year} lies outside {FIRST_YEAR} to {LAST_YEAR}")
    if not 1 <= month <= 12:
        raise ValueError(f"there is no month {month}")
    if not 1 <= day <= last_day_of(year, month):
        raise ValueError(f"there is no day {day} in month {month} of year {year}")
    starts = _DAYS_BEFORE_MONTH_LEAP if is_leap(year) else _DAYS_BEFORE_MONTH
    return days_before(year) + starts[month - 1] + day


MIN_DAY = day_number(FIRST_YEAR, 1, 1)
MAX_DAY = day_number(LAST_YEAR, 12, 31)


def is_known(day: int) -> bool:
    """True for a real day, False for every unknown, open or never-reached end."""
    return MIN_DAY <= day <= MAX_DAY


def civil(day: int) -> tuple[int, int, int]:
    """Year, month and day of a day number. ValueError when the number is not a real day."""
    if not is_known(day):
        raise ValueError(f"{day} is not the number of a day")
    cycles, rest = divmod(day - 1, 146_097)  # days in 400 years
    centuries = min(rest // 36_524, 3)  # the last century of a cycle is a day longer
    rest -= centuries * 36_524
    fours, rest = divmod(rest, 1_461)
    years = min(rest // 365, 3)  # the last year of four is a day longer
    rest -= years * 365
    year = 400 * cycles + 100 * centuries + 4 * fours + years + 1
    starts = _DAYS_BEFORE_MONTH_LEAP if is_leap(year) else _DAYS_BEFORE_MONTH
    month = bisect_right(starts, rest)
    return year, month, rest - starts[month - 1] + 1


def iso(day: int) -> str | None:
    """The day as "1950-06-14" or "-0099-01-01"; None for an end that is not a real day."""
    if not is_known(day):
        return None
    year, month, day_of_month = civil(day)
    return f"{'-' if year < 0 else ''}{abs(year):04}-{month:02}-{day_of_month:02}"


def from_iso(text: str) -> int:
    """The day number of a full date such as "1950-06-14". ValueError for anything else."""
    match = _ISO(text)
    if match is None or match[1] == "-0000":
        raise ValueError(f"{text!r} is not a full date such as 1950-06-14")
    return day_number(int(match[1]), int(match[2]), int(match[3]))
