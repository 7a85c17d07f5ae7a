"""A researcher's row in a file: each cell under its name, and no date sharper than it was."""

from __future__ import annotations

from conservedb.dates import read
from conservedb.exchange.answers_out_research import HEADER, cells_of_row
from conservedb.questions.basics import When
from conservedb.questions.research_answers import COLUMNS, ResearchRow


def row(date: str) -> ResearchRow:
    found = read(date)
    when = When(found.words, found.edtf, found.earliest, found.latest, found.flags, found.derived)
    texts = {name: name for name in ResearchRow._fields if name not in ("date", "layers")}
    return ResearchRow(date=when, layers=3, **texts)


def test_every_cell_stands_under_its_name() -> None:
    made = dict(zip(HEADER, cells_of_row(row("c. 1950")), strict=True))
    assert made.pop("layers") == 3
    dates = {name: made.pop(name) for name in HEADER if name.startswith("date_")}
    assert made.pop("material_name") == "matter"
    assert made == {name: name for name in made}
    assert dates == {
        "date_words": "c. 1950",
        "date_edtf": "1950~",
        "date_first_day": "1950-01-01",
        "date_last_day": "1950-12-31",
    }
    assert {name for name in COLUMNS if name != "date"} <= set(HEADER)


def test_what_is_not_known_of_a_date_is_blank() -> None:
    cells = dict(zip(HEADER, cells_of_row(row("../1950")), strict=True))
    assert (cells["date_first_day"], cells["date_last_day"]) == (None, "1950-12-31")
    blank = dict(zip(HEADER, cells_of_row(row("")), strict=True))
    assert {blank[name] for name in HEADER if name.startswith("date_")} <= {"", None}
