"""A researcher's answer as the rows of a file, in the words of the question and of `--json`."""

from __future__ import annotations

import datetime

from conservedb.dates import iso
from conservedb.exchange.answers_out import Cell
from conservedb.questions.research_answers import ResearchRow
from conservedb.questions.wording import asked_state, qualifiers

HEADER = (
    *("sureness", "object", "title", "place", "what", "ref", "intervention", "material"),
    *("matter", "role", "kind", "people"),
    *("date_words", "date_edtf", "date_qualifiers", "date_first_day", "date_last_day", "state"),
    "layers",
)
"""The columns of the file: those of the screen, the date in all that is known of it.

`matter` is what the material is called, else the words found or the class. `date_qualifiers` says
whether the date is approximate or uncertain, which the days after it do not show."""


def cells_of_row(row: ResearchRow) -> tuple[Cell, ...]:
    """The cells of one row, under `HEADER`; a day that is not known is blank."""
    date = row.date
    return (
        *(row.sureness, row.object, row.title, row.place, row.what, row.ref, row.intervention),
        *(row.material, row.matter, row.role, row.kind, row.people),
        *(date.words, date.edtf, qualifiers(date.flags)),
        *(_day(date.earliest), _day(date.latest)),
        *(asked_state(row.state), row.layers),
    )


def _day(number: int) -> datetime.date | str | None:
    """A day as a date, or as ISO text where the calendar of computers does not reach."""
    if datetime.date.min.toordinal() <= number <= datetime.date.max.toordinal():
        return datetime.date.fromordinal(number)
    return iso(number)
