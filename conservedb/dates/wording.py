"""A date in the short wording of the trade, for the screen and for reports."""

from conservedb.dates.ambiguity import MONTH_NAMES
from conservedb.dates.edtf import DATE, describe_flags, flags_of
from conservedb.dates.words import Found

_QUALIFIERS = {"?": "perhaps ", "~": "about ", "%": "perhaps about "}
_DIVISION_NAMES = (
    "spring {}", "summer {}", "autumn {}", "winter {}",
    "northern spring {}", "northern summer {}", "northern autumn {}", "northern winter {}",
    "southern spring {}", "southern summer {}", "southern autumn {}", "southern winter {}",
    "first quarter of {}", "second quarter of {}", "third quarter of {}", "fourth quarter of {}",
    "first third of {}", "second third of {}", "last third of {}",
    "first half of {}", "second half of {}",
)  # fmt: skip
_DIVISIONS = {str(code): name for code, name in enumerate(_DIVISION_NAMES, start=21)}


def say(found: Found) -> str:
    """The words as found; EDTF in plain English; a decided date with its reading beside it."""
    if found.derived == "blank":
        return "undated"
    if found.derived == "edtf":
        return _english(found.edtf)
    if found.derived == "decided":
        return f"{found.words}, read as {_english(found.edtf)}"
    return found.words


def _english(edtf: str) -> str:
    if edtf.startswith(("[", "{")):
        return _say_set(edtf)
    if "/" in edtf:
        return _say_interval(*edtf.split("/"))
    day, _, time = edtf.partition("T")
    return f"{_say_date(day)}, {time}" if time else _say_date(edtf)


def _say_interval(left: str, right: str) -> str:
    if right == "":
        return f"{_say_date(left)}, end not known"
    if right == "..":
        return f"since {_say_date(left)}"
    if left == "":
        return f"until {_say_date(right)}, start not known"
    if left == "..":
        return f"{'on or before' if _is_day(right) else 'before or in'} {_say_date(right)}"
    return f"{_say_date(left)} to {_say_date(right)}"


def _say_set(edtf: str) -> str:
    joining = "or" if edtf[0] == "[" else "and"
    *members, last = [_say_member(member, joining) for member in edtf[1:-1].split(",")]
    return f"{', '.join(members)} {joining} {last}" if members else last


def _say_member(member: str, joining: str) -> str:
    start, dots, end = member.partition("..")
    if not dots:
        return _say_date(member)
    if not start:
        return f"{_say_date(end)} {joining} earlier"
    if not end:
        return f"{_say_date(start)} {joining} later"
    return f"{_say_date(start)} to {_say_date(end)}"


def _is_day(date: str) -> bool:
    match = DATE.fullmatch(date)
    return match is not None and match[4] is not None


def _say_date(date: str) -> str:
    """One date; a form without a short English name is shown as it is written."""
    match = DATE.fullmatch(date)
    if match is None:
        return date
    sign, year, month, day = match.groups()
    whole = date.rstrip("?~%")
    qualifier = _QUALIFIERS.get(date[len(whole) :], "")
    masked = month is not None and "X" in year
    plain = None if masked else _say_parts(_say_year(sign, year), month, day)
    if plain is None:
        return date
    if flags_of(whole):
        return f"{qualifier}{plain} ({describe_flags(flags_of(whole))} in part)"
    return f"{qualifier}{plain}"


def _say_parts(year: str | None, month: str | None, day: str | None) -> str | None:
    if year is None:
        return None
    if month is None:
        return year
    if month == "XX":
        return {None: f"{year}, month not known", "XX": f"{year}, day and month not known"}.get(day)
    if month in _DIVISIONS:
        return _DIVISIONS[month].format(year)
    if "X" in month:
        return None
    named = f"{MONTH_NAMES[int(month) - 1]} {year}"
    if day is None:
        return named
    if day == "XX":
        return f"{named}, day not known"
    return None if "X" in day else f"{int(day)} {named}"


def _say_year(sign: str, year: str) -> str | None:
    if year == "XXXX":
        return None
    if "X" not in year:
        number = int(sign + year)
        return str(number) if number > 0 else f"{1 - number} BC"
    if sign:
        return None
    if year.endswith("XX") and "X" not in year[:2]:
        return f"{_ordinal(int(year[:2]) + 1)} century"
    if year.endswith("X") and "X" not in year[:3]:
        return f"{int(year[:3])}0s" if year[2] != "0" else f"{int(year[:3])}0 to {int(year[:3])}9"
    return None


def _ordinal(number: int) -> str:
    ending = {1: "st", 2: "nd", 3: "rd"}.get(number % 10, "th")
    return f"{number}{'th' if 10 <= number % 100 <= 13 else ending}"
