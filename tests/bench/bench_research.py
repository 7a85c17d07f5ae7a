"""A researcher's first page and counts, against the same statements in raw `sqlite3`."""

from __future__ import annotations

import pytest

from conservedb.knowledge.research_words import read
from conservedb.questions.research import counts, page
from conservedb.store.connect import raw_of, reading
from conservedb.store.opening import open_database
from tests.bench.bench_questions import Ask, Measured, in_turn
from tests.bench.conftest import Collection
from tests.conftest import TODAY

QUESTIONS = (
    "material: class3",
    "material: material7 and state: there on 1950 and not kind: join",
    "date: 1930s and role: adhesive",
    "places where material: class5 and part material: material1",
    "objects where has (material: class3) and has none (material: material7)",
)
BUDGET = 1.5
BY_HAND_BUDGET = 2


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


BY_HAND = """WITH RECURSIVE below(id) AS (
  SELECT id FROM material_class WHERE key = 'class3'
  UNION ALL SELECT c.id FROM material_class c JOIN below b ON c.parent_id = b.id),
meant(id) AS (SELECT id FROM material WHERE class_id IN (SELECT id FROM below))
SELECT
  (SELECT count(*) FROM layer WHERE material_id IN (SELECT id FROM meant)
     AND coalesce(identified, '') NOT IN ('inferred', 'unknown'))
  + (SELECT count(*) FROM agent WHERE material_id IN (SELECT id FROM meant)),
  (SELECT count(*) FROM layer WHERE material_id IN (SELECT id FROM meant)
     AND identified IN ('inferred', 'unknown')),
  (SELECT count(*) FROM layer WHERE material_id IS NULL AND material_class_id IS NULL)
  + (SELECT count(*) FROM agent WHERE material_id IS NULL AND material_class_id IS NULL)"""
"""What somebody would write who knows that here no class is recorded and no statement disagrees."""


@pytest.mark.bench
def test_counts_against_sql_by_hand(large: Collection) -> None:
    research = read("material: class3")
    engine, _ = open_database(large.path)
    with reading(engine) as connection:

        def asked() -> tuple[int, ...]:
            found = counts(connection, research, TODAY)
            return found.certain, found.possible, found.unidentified

        def by_hand() -> tuple[int, ...]:
            return tuple(raw_of(connection).execute(BY_HAND).fetchone())

        assert asked() == by_hand()
        ours, floor = in_turn((asked, by_hand), 7)
    engine.dispose()
    print(
        f"counts of a class at {large.layers} layers: {ours * 1000:.0f} ms,"
        f" {ours / floor:.2f} x SQL written by hand"
    )
    assert ours / floor <= BY_HAND_BUDGET
