"""The database itself refuses what must not be, whoever writes."""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest

from conservedb.demo.build import load
from conservedb.store.connect import connect_sqlite
from conservedb.store.log import Author, open_set
from conservedb.store.opening import open_database


@pytest.fixture(scope="module")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("demo") / "demo.db"
    load(path)
    open_database(path)[0].dispose()
    return path


REFUSED = {
    "a component inside itself": "UPDATE component SET parent_id = id WHERE id = 1",
    "a circle of components": (
        "UPDATE component SET parent_id = (SELECT id FROM component c WHERE c.parent_id ="
        " component.id) WHERE id = (SELECT parent_id FROM component WHERE parent_id IS NOT NULL)"
    ),
    "a circle of classes": (
        "UPDATE material_class SET parent_id = (SELECT id FROM material_class c WHERE c.parent_id"
        " = material_class.id) WHERE parent_id IS NULL AND id IN (SELECT parent_id FROM"
        " material_class)"
    ),
    "a recipe that contains itself": (
        "INSERT INTO material_part (uuid, entered, material_id, part_id)"
        " SELECT 'x', '2026-01-01', part_id, material_id FROM material_part LIMIT 1"
    ),
    "two places with one mark": (
        "UPDATE place SET mark_folded = (SELECT mark_folded FROM place p WHERE p.object_id ="
        " place.object_id AND p.id <> place.id) WHERE id = 1"
    ),
    "a place with the mark of a component": (
        "UPDATE place SET mark_folded = (SELECT mark_folded FROM component c WHERE c.object_id ="
        " place.object_id) WHERE id = 1"
    ),
    "a component with the mark of a place": (
        "UPDATE component SET mark_folded = (SELECT mark_folded FROM place p WHERE p.object_id ="
        " component.object_id) WHERE id = 1"
    ),
    "a side from another object": (
        "UPDATE place SET component_id = (SELECT id FROM component c WHERE c.object_id <>"
        " place.object_id) WHERE id = 1"
    ),
    "a second side where there is no joint": (
        "UPDATE place SET other_component_id = component_id WHERE kind = 'surface'"
    ),
    "a layer on another object's place": (
        "UPDATE layer SET place_id = (SELECT id FROM place p WHERE p.object_id <> layer.object_id)"
        " WHERE id = 1"
    ),
    "a removal of another object's layer": (
        "UPDATE removal SET layer_id = (SELECT id FROM layer l WHERE l.object_id <>"
        " removal.object_id) WHERE id = 1"
    ),
    "an unknown word": "UPDATE layer SET zone = 'middle' WHERE id = 1",
    "words in a number": "UPDATE component SET mass_kg = 'heavy' WHERE id = 1",
    "a negative mass": "UPDATE component SET mass_kg = -1 WHERE id = 1",
    "dates in the wrong order": "UPDATE object SET made_earliest = made_latest + 1 WHERE id = 1",
    "a layer gone before it came": "UPDATE layer SET gone_from = came_from - 1 WHERE id = 1",
    "bounds beyond the layer's date": (
        "UPDATE layer SET came_from = came_from - 400 WHERE date_derived = 'edtf'"
    ),
    "a removal that the bounds ignore": (
        "UPDATE removal SET date_earliest = date_earliest - 4000, date_latest = date_latest - 4000"
        " WHERE extent = 'all' AND side IS NULL AND date_derived <> 'blank'"
    ),
    "a sighting after the end": (
        "UPDATE sighting SET date_earliest = 800000, date_latest = 800001 WHERE result = 'seen'"
        " AND layer_id IN (SELECT layer_id FROM removal WHERE extent = 'all' AND side IS NULL)"
    ),
    "a statement about nothing": "UPDATE statement SET layer_id = NULL, place_id = NULL,"
    " object_id = NULL, component_id = NULL, intervention_id = NULL, removal_id = NULL,"
    " sighting_id = NULL, joint_event_id = NULL, treatment_id = NULL",
    "an authorisation of another object's plan": (
        "UPDATE authorisation SET object_id = (SELECT id FROM object o WHERE o.id <>"
        " authorisation.object_id) WHERE plan_id IS NOT NULL"
    ),
    "an authorised step of another object": (
        "UPDATE authorisation_step SET object_id = (SELECT id FROM object o WHERE o.id <>"
        " authorisation_step.object_id)"
    ),
    "a sample of another object's removal": (
        "UPDATE sample SET removal_id = (SELECT id FROM removal r WHERE r.object_id <>"
        " sample.object_id) WHERE id = 1"
    ),
    "a reading of another object's joint": (
        "UPDATE reading SET place_id = (SELECT id FROM place p WHERE p.object_id <>"
        " reading.object_id) WHERE id = 1"
    ),
    "a reading without a unit": "UPDATE reading SET unit = NULL",
    "a plan of version 0": "UPDATE plan SET version = 0",
    "two plans of one version": "UPDATE plan SET version = 1",
    "a capacity that nobody has": "UPDATE needed_authorisation SET capacity = 'intern'",
    "a person twice": "UPDATE person SET name_folded = (SELECT name_folded FROM person p WHERE"
    " p.id <> person.id) WHERE id = 1",
    "a record without identity": "UPDATE object SET uuid = NULL",
    "deleting what others point at": "DELETE FROM object",
}


@pytest.mark.parametrize("statement", REFUSED.values(), ids=REFUSED.keys())
def test_refused(demo: Path, statement: str) -> None:
    raw = connect_sqlite(demo)
    try:
        raw.execute("BEGIN")
        open_set(raw, Author("A. Tester", "recorded"))
        with pytest.raises(sqlite3.IntegrityError):
            raw.execute(statement)
    finally:
        raw.execute("ROLLBACK")
        raw.close()


def test_keys_are_never_used_again(demo: Path) -> None:
    raw = connect_sqlite(demo)
    raw.execute("BEGIN")
    open_set(raw, Author("A. Tester", "recorded"))
    insert = "INSERT INTO term (uuid, entered, list, term) VALUES (?, '2026-01-01', 'l', ?)"
    first = raw.execute(insert, ("u1", "a")).lastrowid
    raw.execute("DELETE FROM term WHERE id = ?", (first,))
    assert raw.execute(insert, ("u2", "b")).lastrowid == (first or 0) + 1
    raw.execute("ROLLBACK")
    raw.close()
