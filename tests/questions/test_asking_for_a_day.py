"""The day a question is asked for, and how records reach the terminal."""

from __future__ import annotations

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sqlalchemy import Connection
from sqlalchemy.exc import DBAPIError

from conservedb.dates import DateError, iso
from conservedb.questions.asking import Question
from conservedb.questions.asof import as_of
from conservedb.questions.display import escape_json, show
from conservedb.questions.wording import counted, listed, state_words
from tests.conftest import TODAY
from tests.nasty import NASTY
from tests.questions.test_query_plans import QUESTIONS


@pytest.mark.parametrize("text", [None, "", "today", " Now ", "TODAY"])
def test_today(text: str | None) -> None:
    on = as_of(text, TODAY)
    assert (on.edtf, iso(on.first), on.first == on.last) == ("2026-11-02", "2026-11-02", True)


@pytest.mark.parametrize(
    ("text", "first", "last"),
    [
        ("14 June 1950", "1950-06-14", "1950-06-14"),
        ("1950", "1950-01-01", "1950-12-31"),
        ("the 1930s", "1930-01-01", "1939-12-31"),
        ("1920/1925", "1920-01-01", "1925-12-31"),
    ],
)
def test_a_day_or_a_span(text: str, first: str, last: str) -> None:
    on = as_of(text, TODAY)
    assert (iso(on.first), iso(on.last)) == (first, last)
    assert on.is_span == (first != last)


@pytest.mark.parametrize("text", ["1950/..", "before 1950", "5/6/56", "Easter 1956"])
def test_a_question_needs_two_known_ends(text: str) -> None:
    with pytest.raises(DateError):
        as_of(text, TODAY)


@pytest.mark.parametrize("text", NASTY)
def test_nothing_that_a_terminal_obeys_gets_through(text: str) -> None:
    shown = show(text)
    assert not any((c < " " and c not in "\n\t") or "\x7f" <= c <= "\x9f" for c in shown)
    assert not set(shown) & set("\u061c\u200b\u200e\u200f\u202a\u202e\u2066\u2069\ufeff")


@given(st.text(st.characters(exclude_categories=["Cc", "Cf", "Cs", "Zl", "Zp"])))
def test_other_text_is_not_touched(text: str) -> None:
    assert show(text) == text


def test_what_is_shown_instead() -> None:
    assert show("a\x1b[2J\x9b\u202eb\u200dc\td\ne\x7f") == "a␛[2J<009b><202e>b\u200dc\td\ne␡"
    assert show("\U000e0041\ud800") == "<e0041><d800>"


@given(st.text())
def test_json_means_the_same(text: str) -> None:
    written = escape_json(json.dumps(text, ensure_ascii=False))
    assert json.loads(written) == text
    assert show(written) == written


def test_words() -> None:
    assert counted(1, "pin") == "one pin" and counted(14, "pin") == "14 pins"
    assert listed(["a", "b", "c"]) == "a, b and c"
    assert state_words("uncertain", ("not yet", "present")) == (
        "not established: not yet there or in place (on record)"
    )


def test_errors_of_the_driver_come_as_those_of_sqlalchemy(connection: Connection) -> None:
    from sqlalchemy import column, select, table

    with pytest.raises(DBAPIError, match="no such table: nowhere"):
        Question(select(column("id")).select_from(table("nowhere"))).all(connection)


def test_rows_have_the_names_of_their_columns() -> None:
    for question in QUESTIONS:
        assert len(set(question.names)) == len(question.names)
