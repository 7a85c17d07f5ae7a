"""Dates as people wrote them: EDTF, plain words, and day numbers to compare them by."""

from conservedb.dates.days import (
    MAX_DAY,
    MIN_DAY,
    NEVER,
    OPEN_END,
    OPEN_START,
    UNKNOWN_END,
    UNKNOWN_START,
    civil,
    day_number,
    from_iso,
    is_known,
    iso,
    last_day_of,
)
from conservedb.dates.edtf import APPROXIMATE, UNCERTAIN, Edtf, describe_flags, parse_edtf
from conservedb.dates.refusal import DateError
from conservedb.dates.wording import say
from conservedb.dates.words import Found, cell, read, read_span

__all__ = [
    "APPROXIMATE",
    "MAX_DAY",
    "MIN_DAY",
    "NEVER",
    "OPEN_END",
    "OPEN_START",
    "UNCERTAIN",
    "UNKNOWN_END",
    "UNKNOWN_START",
    "DateError",
    "Edtf",
    "Found",
    "cell",
    "civil",
    "day_number",
    "describe_flags",
    "from_iso",
    "is_known",
    "iso",
    "last_day_of",
    "parse_edtf",
    "read",
    "read_span",
    "say",
]
