"""A researcher's row in a file: each cell under its name, and no date sharper than it was."""

from __future__ import annotations

import datetime

import pytest

from conservedb.dates import read
from conservedb.exchange.answers_out_research import HEADER, cells_of_row
from conservedb.knowledge.layers import names
from conservedb.knowledge.research import STATES
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
    assert made == {name: name for name in made}
    assert dates == {
        "date_words": "c. 1950",
        "date_edtf": "1950~",
        "date_qualifiers": "approximate",
        "date_first_day": datetime.date(1950, 1, 1),
        "date_last_day": datetime.date(1950, 12, 31),
    }
    assert {name for name in COLUMNS if name != "date"} <= set(HEADER)


def test_what_is_not_known_of_a_date_is_blank() -> None:
    cells = dict(zip(HEADER, cells_of_row(row("../1950")), strict=True))
    assert (cells["date_first_day"], cells["date_last_day"]) == (
        None,
        datetime.date(1950, 12, 31),
    )
    old = dict(zip(HEADER, cells_of_row(row("-0099")), strict=True))
    assert (old["date_first_day"], old["date_last_day"]) == ("-0099-01-01", "-0099-12-31")
    blank = dict(zip(HEADER, cells_of_row(row("")), strict=True))
    assert {blank[name] for name in HEADER if name.startswith("date_")} <= {"", None}


@pytest.mark.parametrize(
    ("date", "said"),
    [
        ("1950", ""),
        ("1950~", "approximate"),
        ("1950?", "uncertain"),
        ("1950%", "uncertain and approximate"),
    ],
)
def test_qualifiers_have_a_column(date: str, said: str) -> None:
    assert dict(zip(HEADER, cells_of_row(row(date)), strict=True))["date_qualifiers"] == said


def test_a_state_is_a_word_of_the_question() -> None:
    at = HEADER.index("state")
    said = [cells_of_row(row("1950")._replace(state=one))[at] for one in (*names(15), "uncertain")]
    assert said == ["not yet", "in place", "partly removed", "gone", "perhaps"]
    assert set(said) <= set(STATES)
