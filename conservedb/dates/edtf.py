"""EDTF, the Extended Date/Time Format: from text to the earliest and latest day.

Source: Library of Congress, Extended Date/Time Format (EDTF) Specification, 4 February 2019,
https://www.loc.gov/standards/datetime/, a profile of ISO 8601-1:2019 and ISO 8601-2:2019.
Accepted: level 0; level 1 without Y years; of level 2 the letter X anywhere in a date, qualifiers
on parts, one-of and all-of sets, and the divisions of a year 21 to 41.

Conventions of this program, where the specification leaves the days open: a season is the
meteorological one, of the northern half of the world unless its code (29 to 32) says southern;
winter belongs to the year it begins in. Nothing reaches past 9999-12-31.
"""

import re
from collections.abc import Iterator
from functools import lru_cache
from itertools import product
from typing import NamedTuple

from conservedb.dates.days import (
    LAST_YEAR,
    MAX_DAY,
    OPEN_END,
    OPEN_START,
    UNKNOWN_END,
    UNKNOWN_START,
    day_number,
    days_before,
    is_leap,
    last_day_of,
)
from conservedb.dates.refusal import DateError, refusal, refuse_long, refuse_unreadable

UNCERTAIN = 1
APPROXIMATE = 2

Bounds = tuple[int, int]

# A date with or without masked digits (X) and qualifiers: sign, year, month, day.
DATE = re.compile(
    r"[?~%]?(-?)([0-9X]{4})[?~%]?"
    r"(?:-[?~%]?([0-9X]{2})[?~%]?(?:-[?~%]?([0-9X]{2})[?~%]?)?)?"
)
TIME = re.compile(
    r"(?:[01][0-9]|2[0-3]):[0-5][0-9]:[0-5][0-9]"
    r"(?:Z|[+-](?:[01][0-9]|2[0-3])(?::[0-5][0-9])?)?"
)
_FULL_DATE = re.compile(r"-?[0-9]{4}-[0-9]{2}-[0-9]{2}").fullmatch

# Code of a division of the year: its first month and how many months it lasts.
DIVISIONS = {
    "21": (3, 3), "22": (6, 3), "23": (9, 3), "24": (12, 3),  # season, no half of the world named
    "25": (3, 3), "26": (6, 3), "27": (9, 3), "28": (12, 3),  # northern season
    "29": (9, 3), "30": (12, 3), "31": (3, 3), "32": (6, 3),  # southern season
    "33": (1, 3), "34": (4, 3), "35": (7, 3), "36": (10, 3),  # quarter
    "37": (1, 4), "38": (5, 4), "39": (9, 4),  # third
    "40": (1, 6), "41": (7, 6),  # half
}  # fmt: skip


def _within(year: int) -> dict[str, Bounds]:
    """What can follow the year in a plain date, with its first and last day of that year."""
    start = days_before(year)
    table = {"": (1, days_before(year + 1) - start)}
    for month in range(1, 13):
        before = day_number(year, month) - start - 1
        length = last_day_of(year, month)
        table[f"-{month:02}"] = (before + 1, before + length)
        for day in range(1, length + 1):
            table[f"-{month:02}-{day:02}"] = (before + day, before + day)
    return table


_IN_COMMON_YEAR = _within(2001)
_IN_LEAP_YEAR = _within(2000)


class Edtf(NamedTuple):
    """An EDTF text with its earliest and latest day number and its qualifier flags."""

    edtf: str
    earliest: int
    latest: int
    flags: int


def parse_edtf(text: str) -> Edtf:
    """Read an EDTF text. DateError when it is not EDTF, is impossible, or is out of scope."""
    bounds = plain_bounds(text)
    if bounds is not None:
        return Edtf(text, bounds[0], bounds[1], 0)
    text = text.strip()
    refuse_long(text)
    refuse_unreadable(text)
    earliest, latest = _bounds(text)
    return Edtf(text, earliest, latest, flags_of(text))


def plain_bounds(text: str) -> Bounds | None:
    """The bounds of a year, month or day without any sign or mark; None for everything else.

    Nearly every date in a bulk import is of this kind, so it is tried first.
    """
    year_text = text[:4]
    if len(year_text) != 4 or not (year_text.isascii() and year_text.isdigit()):
        return None
    year = int(year_text)
    found = (_IN_LEAP_YEAR if is_leap(year) else _IN_COMMON_YEAR).get(text[4:])
    if found is None:
        return None
    before = days_before(year)
    return before + found[0], before + found[1]


def flags_of(text: str) -> int:
    """The qualifiers in an EDTF text as bit flags: UNCERTAIN, APPROXIMATE."""
    if "%" in text:
        return UNCERTAIN | APPROXIMATE
    return (UNCERTAIN if "?" in text else 0) | (APPROXIMATE if "~" in text else 0)


def describe_flags(flags: int) -> str:
    """The flags in words, empty when the date carries no qualifier."""
    words = {UNCERTAIN: "uncertain", APPROXIMATE: "approximate"}
    said = [word for flag, word in words.items() if flags & flag]
    return f"date {' and '.join(said)}" if said else ""


def _bounds(text: str) -> Bounds:
    if text.startswith(("[", "{")):
        return _set_bounds(text)
    if "/" in text:
        return _interval_bounds(text)
    if "T" in text:
        return _datetime_bounds(text)
    return _date_bounds(text, text)


def _datetime_bounds(text: str) -> Bounds:
    date, _, time = text.partition("T")
    if _FULL_DATE(date) is None or TIME.fullmatch(time) is None:
        raise refusal(text)
    return _date_bounds(date, text)


def _interval_bounds(text: str) -> Bounds:
    ends = text.split("/")
    if len(ends) != 2:
        raise DateError(
            text, "it has more than one '/'", "write one start and one end, such as 1964/2008"
        )
    left, right = ends
    if left in ("", "..") and right in ("", ".."):
        raise DateError(
            text, "neither end is known", "give at least one end, or leave the date blank"
        )
    if left in ("", ".."):
        earliest = OPEN_START if left else UNKNOWN_START
    else:
        earliest = _date_bounds(left, text)[0]
    if right in ("", ".."):
        latest = OPEN_END if right else UNKNOWN_END
    else:
        latest = _date_bounds(right, text)[1]
    if earliest > latest:
        raise DateError(text, f"it ends before it begins: {right} lies before {left}",
                        f"write {right}/{left} if the ends were swapped")  # fmt: skip
    return earliest, latest


def _set_bounds(text: str) -> Bounds:
    if not text.endswith("]" if text[0] == "[" else "}"):
        raise refusal(text)
    members = text[1:-1].split(",")
    last = len(members) - 1
    bounds = [
        _member_bounds(member, text, first=place == 0, last=place == last)
        for place, member in enumerate(members)
    ]
    return min(start for start, _ in bounds), max(end for _, end in bounds)


def _member_bounds(member: str, whole: str, *, first: bool, last: bool) -> Bounds:
    start, dots, end = member.partition("..")
    if not dots:
        return _date_bounds(member, whole)
    if not start and not end:
        raise DateError(whole, "'..' stands alone", "give it a date, such as ..1984 or 1760..")
    if (not start and not first) or (not end and not last):
        raise DateError(
            whole,
            "an open end stands in the middle of a set",
            "put ..date first and date.. last, such as [1760-01,1760-12..]",
        )
    earliest = _date_bounds(start, whole)[0] if start else OPEN_START
    latest = _date_bounds(end, whole)[1] if end else OPEN_END
    if earliest > latest:
        raise DateError(whole, f"the range {member} ends before it begins",
                        f"write {end}..{start} if the ends were swapped")  # fmt: skip
    return earliest, latest


def _date_bounds(text: str, whole: str) -> Bounds:
    """Bounds of one date that may hold X and qualifiers; ``whole`` is the text that errors name."""
    bounds = plain_bounds(text[:-1] if text.endswith(("?", "~", "%")) else text)
    if bounds is not None:
        return bounds
    match = DATE.fullmatch(text)
    if match is None:
        raise refusal(whole)
    sign, year, month, day = match.groups()
    if sign and year == "0000":
        raise DateError(whole, "year -0000 does not exist", "write 0000 for the year 1 BC")
    if month is None:
        return day_number(next(_years(sign, year))), day_number(
            next(_years(sign, year, downward=True)), 12, 31
        )
    if month in DIVISIONS:
        return _division_bounds(sign, year, month, day, whole)
    months = _matching(month, 12)
    if not months:
        raise DateError(
            whole,
            f"there is no month {month}",
            "write months as 01 to 12, and parts of a year as 21 to 41",
        )
    if day is None:
        last_year = next(_years(sign, year, downward=True))
        return (
            day_number(next(_years(sign, year)), months[0]),
            day_number(last_year, months[-1], last_day_of(last_year, months[-1])),
        )
    return _matching_days(sign, year, months, _matching(day, 31), whole)


def _division_bounds(sign: str, year: str, code: str, day: str | None, whole: str) -> Bounds:
    if day is not None:
        raise DateError(
            whole,
            f"{code} is a part of the year, which has no days of its own",
            "leave the day out, or write the month as 01 to 12",
        )
    first_month, length = DIVISIONS[code]
    earliest = day_number(next(_years(sign, year)), first_month)
    years_on, month = divmod(first_month + length - 2, 12)
    last_year = next(_years(sign, year, downward=True)) + years_on
    if last_year > LAST_YEAR:
        return earliest, MAX_DAY
    return earliest, day_number(last_year, month + 1, last_day_of(last_year, month + 1))


def _matching_days(
    sign: str, year: str, months: tuple[int, ...], days: tuple[int, ...], whole: str
) -> Bounds:
    """First and last day that exists and matches; which days exist hangs on leap years only."""
    fits = {
        leap: [
            (month, day)
            for month in months
            for day in days
            if day <= last_day_of(2000 if leap else 2001, month)
        ]
        for leap in (True, False)
    }
    first_year = next((y for y in _years(sign, year) if fits[is_leap(y)]), None)
    last_year = next((y for y in _years(sign, year, downward=True) if fits[is_leap(y)]), None)
    if first_year is None or last_year is None:
        raise DateError(
            whole,
            "there is no such day in the calendar",
            "check the day and month, or leave out what is not known",
        )
    return (
        day_number(first_year, *fits[is_leap(first_year)][0]),
        day_number(last_year, *fits[is_leap(last_year)][-1]),
    )


def _years(sign: str, pattern: str, *, downward: bool = False) -> Iterator[int]:
    """The years that match a pattern such as 19X4, in order of time or against it."""
    larger_first = downward != bool(sign)
    digits = "9876543210" if larger_first else "0123456789"
    for combination in product(*(digits if mark == "X" else mark for mark in pattern)):
        number = int("".join(combination))
        if not sign:
            yield number
        elif number:  # -0000 is not a year
            yield -number


@lru_cache(maxsize=256)
def _matching(pattern: str, highest: int) -> tuple[int, ...]:
    """Numbers from 1 to ``highest`` that match two characters such as 1X."""
    return tuple(
        number
        for number in range(1, highest + 1)
        if all(mark in ("X", digit) for mark, digit in zip(pattern, f"{number:02}", strict=True))
    )
