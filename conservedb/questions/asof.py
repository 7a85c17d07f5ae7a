"""The day, or the span of days, that a question is asked for."""

from __future__ import annotations

import datetime

from conservedb.dates import read_span
from conservedb.questions.answers import AsOf

_TODAY = ("", "today", "now")


def as_of(text: str | None, today: datetime.date) -> AsOf:
    """What the words of a date mean as the time of a question; nothing means today.

    Raises:
        DateError: the words are no date, or one without two known ends.
    """
    if text is None or text.strip().lower() in _TODAY:
        day = today.toordinal()
        return AsOf((text or "today").strip() or "today", today.isoformat(), day, day)
    found = read_span(text)
    return AsOf(found.words, found.edtf, found.earliest, found.latest)
