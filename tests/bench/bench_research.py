"""A researcher's first page and counts, against the same statements in raw `sqlite3`."""

from __future__ import annotations

import pytest

from conservedb.knowledge.research_words import read
from conservedb.questions.research import counts, page
from tests.bench.bench_questions import Ask, Measured, in_turn
from tests.bench.conftest import Collection
from tests.conftest import TODAY

QUESTIONS = (
    "material: class3",
    "material: material7 and state: there on 1950 and not kind: join",
    "date: 1930s and role: adhesive",
    "places where material: class5 and part material: material1",
)
BUDGET = 1.5


def _page(text: str) -> Ask:
    return lambda connection, _: page(connection, read(text), TODAY)


def _counts(text: str) -> Ask:
    return lambda connection, _: counts(connection, read(text), TODAY)


@pytest.mark.bench
@pytest.mark.parametrize("text", QUESTIONS)
def test_first_page_and_counts_against_raw_statements(large: Collection, text: str) -> None:
    for name, ask in (("page", _page(text)), ("counts", _counts(text))):
        asked = Measured(large.path, [ask])
        ours, floor = in_turn((asked.answers, asked.statements), 7)
        asked.close()
        print(
            f"{name} of {text!r} at {large.layers} layers: {ours * 1000:.0f} ms,"
            f" {ours / floor:.2f} x its raw statements"
        )
        assert asked.rows > 0
        assert ours / floor <= BUDGET
