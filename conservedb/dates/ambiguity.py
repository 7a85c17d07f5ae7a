"""Dates that can be read in more than one way. They are refused with the readings, not guessed."""

import re

from conservedb.dates.days import day_number, iso
from conservedb.dates.refusal import DateError

MONTH_NAMES = (
    "January", "February", "March", "April", "May", "June", "July",
    "August", "September", "October", "November", "December",
)  # fmt: skip
MONTHS = {name[:3].lower(): number for number, name in enumerate(MONTH_NAMES, start=1)}
MONTH = rf"({'|'.join(MONTH_NAMES).lower()}|sept\.?|(?:{'|'.join(MONTHS)})\.?)"
SEASON = r"(spring|summer|autumn|fall|winter)"

_NEAR = 20  # years apart up to which "1934-39" is probably a span; 2001-21 is safely a spring
_DASHES = dict.fromkeys(map(ord, "\u2010\u2011\u2012\u2013\u2014\u2212"), "-") | {0x2019: "'"}
_NUMBERS = re.compile(r"([0-9]{1,2})([/. -])([0-9]{1,2})\2([0-9]{4})").fullmatch
_YEAR_FIRST = re.compile(r"([0-9]{4})([/. -])([0-9]{1,2})\2([0-9]{1,2})").fullmatch
_TWO_DIGIT_YEAR = re.compile(
    r"[0-9]{1,2}([/. -])[0-9]{1,2}\1[0-9]{2}"  # 5/6/56
    r"|'?[0-9]{2}(?:s| ?[/-] ?[0-9]{2})?|'[0-9]{2}s"  # '56, 56, 30s, 56-57
    rf"|(?:[0-9]{{1,2}}(?:st|nd|rd|th)? )?{MONTH} '?[0-9]{{2}}"  # June 56, 14 June 56
    rf"|{MONTH} [0-9]{{1,2}},? '?[0-9]{{2}}"  # June 14, 56
    rf"|{SEASON} '?[0-9]{{2}}"
).fullmatch
_MONTH_AND_YEAR = re.compile(r"(0?[1-9]|1[0-2])[/.-]([0-9]{4})").fullmatch
_SHORT_SECOND = re.compile(r"([0-9]{4}) ?([/-]) ?([0-9]{1,2})").fullmatch
_HUNDRED = re.compile(r"(?:(?:the )?(?:early|mid|late)[ -])?(?:the )?([0-9]{2})00s").fullmatch
_YEAR_AND_PART = re.compile(r"([0-9]{2})([0-9]{2})-([234][0-9])[?~%]?").fullmatch


def plain(text: str) -> str:
    """The text in small letters, with single spaces, plain hyphens and plain apostrophes."""
    return " ".join(text.translate(_DASHES).lower().split())


def refuse_ambiguous(words: str) -> None:
    """DateError when plain words, or a part of them, can be read in more than one way."""
    if match := _NUMBERS(words):
        day, month, year = int(match[1]), int(match[3]), int(match[4])
        raise _two_orders(words, [(year, month, day), (year, day, month)])
    if match := _YEAR_FIRST(words):
        year, month, day = int(match[1]), int(match[3]), int(match[4])
        if match[2] != "-" or len(words) != 10:
            raise _two_orders(words, [(year, month, day), (year, day, month)])
    if _TWO_DIGIT_YEAR(words):
        raise DateError(
            words,
            "a year of two digits does not say its century",
            "write the year with four digits, such as 1956",
        )
    if match := _MONTH_AND_YEAR(words):
        raise DateError(
            words,
            "a month and a year are written year first, with a hyphen",
            f"write {match[2]}-{match[1]:0>2} if it is a month",
        )
    if match := _HUNDRED(words):
        raise DateError(
            words,
            f"{match[1]}00s can mean ten years or a hundred",
            f"write {match[1]}0X for the decade or {match[1]}XX for the century",
        )
    _refuse_short_second(words)


def refuse_years(text: str) -> None:
    """DateError for EDTF such as 1934-35 (a quarter) that also reads as two years not far apart."""
    match = _YEAR_AND_PART(text)
    if match and 0 < int(match[3]) - int(match[2]) < _NEAR:
        raise DateError(
            text,
            f"it can mean the years to {match[1]}{match[3]} or part {match[3]} of the one year",
            f"write {match[1]}{match[2]}/{match[1]}{match[3]} for the years, "
            f"or `{text} = {text}` for the part of the year once somebody has decided",
        )


def _refuse_short_second(words: str) -> None:
    match = _SHORT_SECOND(words)
    if match is None:
        return
    year, sign, number = match[1], match[2], int(match[3])
    if sign == "-" and f"{year}-{match[3]}" == words and number <= int(year[2:]):
        return  # 1985-13: no later year, so a faulty month; EDTF says so
    last_year = int(year) // 100 * 100 + number
    last_year += 100 if last_year < int(year) else 0
    span = f"write {year}/{last_year:04} for the years"
    if not 1 <= number <= 12:
        raise DateError(words, "a year of two digits does not say its century", span)
    month = f"{MONTH_NAMES[number - 1]} {year} for the month"
    raise DateError(words, "the second number can be a year or a month", f"{span}, or {month}")


def _two_orders(words: str, orders: list[tuple[int, int, int]]) -> DateError:
    possible = list(dict.fromkeys(filter(None, (_written(*order) for order in orders))))
    if not possible:
        return DateError(words, "there is no such day in the calendar", "check the day and month")
    either = len(possible) == 2
    return DateError(
        words,
        "day and month can stand in either order" if either else "the year has to stand first",
        f"write {' or '.join(possible)}, or `{words} = {possible[0]}` once somebody has decided",
    )


def _written(year: int, month: int, day: int) -> str | None:
    try:
        return iso(day_number(year, month, day))
    except ValueError:
        return None
