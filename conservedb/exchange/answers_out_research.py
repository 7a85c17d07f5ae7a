"""A researcher's answer as the rows of a file."""

from __future__ import annotations

from conservedb.dates import iso
from conservedb.exchange.answers_out import Cell
from conservedb.questions.research_answers import ResearchRow

HEADER = (
    *("sureness", "object", "title", "place", "what", "ref", "intervention", "material"),
    *("material_name", "role", "kind", "people"),
    *("date_words", "date_edtf", "date_first_day", "date_last_day", "state"),
    "layers",
)
"""The columns of the file: those of the screen, the date in all that is known of it."""


def cells_of_row(row: ResearchRow) -> tuple[Cell, ...]:
    """The cells of one row, under `HEADER`; a day that is not known is blank."""
    date = row.date
    return (
        *(row.sureness, row.object, row.title, row.place, row.what, row.ref, row.intervention),
        *(row.material, row.matter, row.role, row.kind, row.people),
        *(date.words, date.edtf, iso(date.earliest), iso(date.latest)),
        *(row.state, row.layers),
    )
