"""A layer known only as a class may be any material in it, and is never left out."""

from __future__ import annotations

from collections.abc import Callable

from sqlalchemy import Engine

from conservedb.questions.uses import uses
from conservedb.store.connect import reading, writing
from conservedb.store.log import Author
from tests.questions.conftest import day

ROWS = """
INSERT INTO material_class (id, uuid, entered, key, parent_id) VALUES
  (9001, 'c1', '2026-01-01', 'q-resin', NULL), (9002, 'c2', '2026-01-01', 'q-acrylic', 9001),
  (9003, 'c3', '2026-01-01', 'q-wax', NULL);
INSERT INTO material (id, uuid, entered, key, class_id) VALUES
  (9001, 'm1', '2026-01-01', 'q-72', 9002), (9002, 'm2', '2026-01-01', 'q-beeswax', 9003);
INSERT INTO object (id, uuid, entered, number, number_sort, number_folded, made_earliest,
  made_latest, made_flags, made_derived)
  VALUES (1, 'o1', '2026-01-01', 'Q', 'q', 'q', 1, 1, 0, 'edtf');
INSERT INTO place (id, uuid, entered, object_id, mark, mark_folded, kind, arose_earliest,
  arose_latest, arose_flags, arose_derived)
  VALUES (1, 'p1', '2026-01-01', 1, 'S1', 's1', 'surface', 1, 1, 0, 'edtf');
"""
LAYER = """
INSERT INTO layer (id, uuid, entered, object_id, place_id, ref, material_id, material_class_id,
  identified, date_earliest, date_latest, date_flags, date_derived, came_from, came_to,
  reduced_from, reduced_to, gone_from, gone_to, came_flags, reduced_flags, gone_flags)
  VALUES (?1, 'l' || ?1, '2026-01-01', 1, 1, 'L' || ?1, ?2, ?3, 'analysed', 1, 1, 0, 'edtf', 1, 1,
  20000000, 20000000, 20000000, 20000000, 0, 0, 0)
"""
LAYERS = (
    (1, 9001, None),
    (2, None, 9002),
    (3, None, 9001),
    (4, None, 9003),
    (5, 9002, None),
    (6, None, None),
)
"""id, material, class: 72; acrylic; resin; wax; beeswax; nobody knows."""


def test_layers_known_only_by_class(new_database: Callable[[str], Engine]) -> None:
    engine = new_database("classes.db")
    with writing(engine, Author("A. Tester", "recorded")) as connection:
        for statement in ROWS.split(";"):
            connection.exec_driver_sql(statement)
        for layer in LAYERS:
            connection.exec_driver_sql(LAYER, layer)
    found = {}
    with reading(engine) as connection:
        for word in ("q-72", "q-acrylic", "q-resin", "q-wax"):
            answer = uses(connection, word, day("today"))
            found[word] = (
                [row.layer for row in answer.layers_certain],
                [row.layer for row in answer.layers_possible],
                answer.unidentified,
            )
    assert found == {
        "q-72": (["L1"], ["L2", "L3"], 1),  # an acrylic, or a resin, may be this one
        "q-acrylic": (["L1", "L2"], ["L3"], 1),
        "q-resin": (["L1", "L2", "L3"], [], 1),
        "q-wax": (["L4", "L5"], [], 1),
    }
