"""Dates as people write them in a cell: EDTF, a closed table of plain words, or words to decide.

Conventions of the table (house conventions differ, so they are stated here and in the manual):
"by" and "not after" include the date named; decades divide 0-3, 4-6, 7-9 and centuries 00-33,
34-66, 67-99 into early, mid and late; the 19th century is 1800 to 1899; seasons are the
meteorological northern ones. What the table does not hold is kept with unknown bounds; what can
be read in two ways is refused. Nothing is guessed.
"""

import re
from typing import NamedTuple

from conservedb.dates.ambiguity import MONTH, MONTHS, SEASON, plain, refuse_ambiguous, refuse_years
from conservedb.dates.days import UNKNOWN_END, UNKNOWN_START, is_known, iso
from conservedb.dates.edtf import parse_edtf, plain_bounds
from conservedb.dates.refusal import LONGEST, DateError, refuse_long, refuse_unreadable


class Found(NamedTuple):
    """A date as found: the words, the EDTF, the bounds as day numbers, flags, how it was derived.

    ``derived`` is "edtf" (the words are EDTF), "words" (through the table), "decided" (somebody
    gave the EDTF beside the words), "not understood" (kept, bounds unknown) or "blank".
    """

    words: str
    edtf: str
    earliest: int
    latest: int
    flags: int
    derived: str


_BLANK = Found("", "", UNKNOWN_START, UNKNOWN_END, 0, "blank")

# Characters of no width and marks of direction: beside a date they are a slip, nobody sees them.
_UNSEEN = "\u200b-\u200f\u202a-\u202e\u2060-\u2064\ufeff"
# Only signs that EDTF or its draft of 2012 uses, and at least one digit: meant as EDTF.
_LIKE_EDTF = re.compile(
    rf"(?=.*(?:\d|XXXX))[-\dXxuUYySETZ?~%\[\]{{}}(),./:+ {_UNSEEN}]+"
    r"|(?:unknown|open)/\S+|\S+/(?:unknown|open)|(?:\.\.)?/(?:\.\.)?|\.\."
).fullmatch

_YEAR = r"([0-9]{4})"
_ORDINAL = r"([0-9]{1,2})(?:st|nd|rd|th)?"
_EDTF_DATE = re.compile(r"[0-9]{4}(?:-[0-9]{2}(?:-[0-9]{2})?)?").fullmatch
_MONTH_YEAR = re.compile(rf"{MONTH},? {_YEAR}").fullmatch
_DAY_MONTH_YEAR = re.compile(rf"{_ORDINAL} {MONTH},? {_YEAR}").fullmatch
_MONTH_DAY_YEAR = re.compile(rf"{MONTH} {_ORDINAL},? {_YEAR}").fullmatch
_SEASON_YEAR = re.compile(rf"{SEASON} {_YEAR}").fullmatch
_DECADE = re.compile(r"(?:the )?([0-9]{3})0s").fullmatch
_CENTURY = re.compile(r"(?:the )?([0-9]{1,2})(?:st|nd|rd|th) century").fullmatch
_PART = re.compile(r"(?:the )?(early|mid|late)[ -](.+)").fullmatch
_LIMIT = re.compile(r"(before|by|not after|after|not before|since|from) (.+)").fullmatch
_CIRCA = re.compile(r"(?:circa |about |ca?\.? ?)(.+)").fullmatch
_PERHAPS = re.compile(r"(?:perhaps|probably|possibly) (.+)").fullmatch
_QUERY = re.compile(r"(.+?) ?(?:\?|\(\?\))").fullmatch
_BETWEEN = re.compile(r"between (.+) and (.+)").fullmatch
_OR = re.compile(r"(.+) or (.+)").fullmatch
_SEASON_CODES = {"spring": "21", "summer": "22", "autumn": "23", "fall": "23", "winter": "24"}
_DECADE_PARTS = {"early": (0, 3), "mid": (4, 6), "late": (7, 9)}
_CENTURY_PARTS = {"early": (0, 33), "mid": (34, 66), "late": (67, 99)}


def read(cell: str) -> Found:
    """Read one cell. DateError when the date is impossible or can be read in more than one way."""
    bounds = plain_bounds(cell)
    if bounds is not None:
        return Found(cell, cell, bounds[0], bounds[1], 0, "edtf")
    text = cell.strip(" \t\r\n")
    decided = "=" in text
    refuse_long(text, 2 * LONGEST + len(" = ") if decided else LONGEST)
    refuse_unreadable(text)
    text = text.strip()
    if not text:
        return _BLANK
    if decided:
        return _read_decided(text)
    return _read_edtf(text) if _LIKE_EDTF(text) else _read_words(text)


def cell(found: Found) -> str:
    """The cell that reads back as this date."""
    return f"{found.words} = {found.edtf}" if found.derived == "decided" else found.words


def read_span(text: str) -> Found:
    """Read a date with two known ends, such as a question asks about. DateError otherwise."""
    found = read(text)
    if found.derived == "blank":
        raise DateError(text, "it is blank", "write a date such as 1950 or 14 June 1950")
    if found.derived == "not understood":
        raise DateError(
            text,
            "these words are not in the table of dates",
            "write a date such as 1950, 14 June 1950, 1930s or 1920/1925",
        )
    if not (is_known(found.earliest) and is_known(found.latest)):
        raise DateError(
            text,
            "a question needs a date with two known ends",
            "give a first and a last date, such as 1920/1925",
        )
    return found


def _read_decided(text: str) -> Found:
    words, _, right = text.rpartition("=")
    words = words.rstrip()
    right = right.strip()
    if not words:
        raise DateError(text, "nothing stands before '='", f"write {right} alone")
    refuse_long(words)
    try:
        parsed = parse_edtf(right)
    except DateError as error:
        raise DateError(
            text,
            f"{right!r}, after the last '=', has to be EDTF: {error.reason}",
            error.remedy,
        ) from None
    return Found(words, *parsed, "decided")


def _read_edtf(text: str) -> Found:
    try:
        parsed = parse_edtf(text)
    except DateError as error:
        found = _read_words(text)
        if found.derived == "not understood":
            raise error from None
        return found
    refuse_years(text)
    return Found(text, *parsed, "edtf")


def _read_words(text: str) -> Found:
    words = plain(text)
    try:
        refuse_ambiguous(words)
        edtf = _phrase(words)
        if edtf is None:
            return Found(text, "", UNKNOWN_START, UNKNOWN_END, 0, "not understood")
        return Found(text, *parse_edtf(edtf), "words")
    except DateError as error:
        raise DateError(text, error.reason, error.remedy) from None


def _phrase(words: str) -> str | None:
    """The EDTF of a whole phrase of the table, None when it is not in the table."""
    if match := _BETWEEN(words):
        first, last = _operand(match[1]), _operand(match[2])
        return f"{first}/{last}" if first and last else None
    if match := _OR(words):
        first, last = _operand(match[1]), _operand(match[2])
        return f"[{first},{last}]" if first and last else None
    if match := _LIMIT(words):
        date = _operand(match[2])
        return _limit(match[1], date) if date else None
    for pattern, qualifier in ((_CIRCA, "~"), (_PERHAPS, "?"), (_QUERY, "?")):
        if match := pattern(words):
            refuse_ambiguous(match[1])
            edtf = _time(match[1])
            return f"{edtf.replace('/', f'{qualifier}/')}{qualifier}" if edtf else None
    return _time(words)


def _time(words: str) -> str | None:
    """The EDTF of a date, season, part of a decade or century, or span."""
    return _date(words) or _season(words) or _part(words) or _span(words)


def _operand(words: str) -> str | None:
    """A date that stands beside another word, and has to be as clear as one that stands alone."""
    refuse_ambiguous(words)
    return _date(words)


def _date(words: str) -> str | None:
    """A year, month, day, decade or century: what has exact ends and one EDTF date."""
    if _EDTF_DATE(words):
        return words
    if match := _MONTH_YEAR(words):
        return f"{match[2]}-{MONTHS[match[1][:3]]:02}"
    if match := _DAY_MONTH_YEAR(words):
        return f"{match[3]}-{MONTHS[match[2][:3]]:02}-{int(match[1]):02}"
    if match := _MONTH_DAY_YEAR(words):
        return f"{match[3]}-{MONTHS[match[1][:3]]:02}-{int(match[2]):02}"
    if match := _DECADE(words):
        return f"{match[1]}X"
    if (match := _CENTURY(words)) and int(match[1]) > 0:
        return f"{int(match[1]) - 1:02}XX"
    return None


def _season(words: str) -> str | None:
    match = _SEASON_YEAR(words)
    return f"{match[2]}-{_SEASON_CODES[match[1]]}" if match else None


def _part(words: str) -> str | None:
    """Early, mid or late in a decade or century."""
    match = _PART(words)
    if match is None:
        return None
    if decade := _DECADE(match[2]):
        first, last = _DECADE_PARTS[match[1]]
        return f"{decade[1]}{first}/{decade[1]}{last}"
    if (century := _CENTURY(match[2])) and int(century[1]) > 0:
        first, last = _CENTURY_PARTS[match[1]]
        hundreds = int(century[1]) - 1
        return f"{hundreds:02}{first:02}/{hundreds:02}{last:02}"
    return None


def _span(words: str) -> str | None:
    """Two dates of one kind with a dash between them: 1920-1925, June 1920 - May 1921."""
    ends = [end.strip() for end in words.split("-")]
    dates = [date for end in ends if (date := _date(end))]
    if len(ends) != 2 or len(dates) != 2 or len(dates[0]) != len(dates[1]):
        return None
    for end in ends:
        refuse_ambiguous(end)
    return f"{dates[0]}/{dates[1]}"


def _limit(word: str, date: str) -> str:
    """A date known to lie on one side of another, as precise as the one that was named."""
    bounds = parse_edtf(date)
    if word == "before":
        return f"../{_as_precise(bounds.earliest - 1, date)}"
    if word in ("by", "not after"):
        return f"../{_as_precise(bounds.latest, date)}"
    if word == "after":
        return f"{_as_precise(bounds.latest + 1, date)}/.."
    return f"{_as_precise(bounds.earliest, date)}/.."


def _as_precise(day: int, model: str) -> str:
    written = iso(day)
    if written is None:
        raise DateError(model, "it reaches beyond the year 9999", "write a year up to 9999")
    return written[: len(model) + written.startswith("-")]
