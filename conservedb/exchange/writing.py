"""Writing the good records, all in the caller's one transaction."""

from __future__ import annotations

from collections.abc import Iterable

from sqlalchemy import Connection

from conservedb.exchange.lists import ListColumn
from conservedb.exchange.record import Record
from conservedb.exchange.subject import Subject
from conservedb.exchange.subjects import SUBJECTS
from conservedb.exchange.subjects_deeds import LAYERS
from conservedb.exchange.subjects_parts import COMPONENTS, PLACES
from conservedb.knowledge.layers import LayerBounds
from conservedb.recording.settling import many, settle
from conservedb.records.every import metadata
from conservedb.records.layers import BOUNDS


def write(
    connection: Connection,
    records: dict[str, dict[int, Record]],
    bounds: dict[int, LayerBounds],
    objects: set[int],
) -> None:
    """Write new and changed records, and the bounds of known layers that moved.

    Args:
        records: by subject.
        bounds: of every layer of the objects concerned.
        objects: ids of the objects that the database held before.
    """
    # a record may give its key to a new one, and may point at a new one: references are checked
    # when all is written
    connection.exec_driver_sql("PRAGMA defer_foreign_keys=ON")
    for subject in SUBJECTS:
        good = [r for r in records.get(subject.name, {}).values() if not r.refused]
        _update(connection, subject, [r for r in good if r.changed], bounds)
        _insert(connection, subject, _parents_first(subject, good), bounds)
        if subject is not COMPONENTS:
            _write_lists(connection, subject, good)
        if subject is PLACES:  # a fixing bridges joints, which are written after components
            parts = records.get(COMPONENTS.name, {}).values()
            _write_lists(connection, COMPONENTS, [r for r in parts if not r.refused])
        if subject is LAYERS:  # before the removals and sightings, which are held against them
            settle(connection, bounds, objects)


def _insert(
    connection: Connection,
    subject: Subject,
    records: list[Record],
    bounds: dict[int, LayerBounds],
) -> None:
    fields = ("id", *subject.fields)
    layers = subject.name == "layers"
    if layers:
        fields += BOUNDS
    marks = ", ".join("?" * len(fields))
    names = ", ".join(fields)
    rows = [
        (r.id, *r.values, *bounds[r.id].whole) if layers else (r.id, *r.values)
        for r in records
        if r.new
    ]
    many(connection, f"INSERT INTO {subject.table.name} ({names}) VALUES ({marks})", rows)


def _update(
    connection: Connection,
    subject: Subject,
    records: list[Record],
    bounds: dict[int, LayerBounds],
) -> None:
    layers = subject.name == "layers"
    fields = subject.fields + (BOUNDS if layers else ())
    names = ", ".join(f"{name} = ?" for name in fields)
    rows = [
        (*r.values, *bounds[r.id].whole, r.id) if layers else (*r.values, r.id)
        for r in records
        if not r.new
    ]
    many(connection, f"UPDATE {subject.table.name} SET {names} WHERE id = ?", rows)


def _parents_first(subject: Subject, records: list[Record]) -> list[Record]:
    """In a tree each parent stands before its children."""
    if not subject.parent:
        return records
    position = subject.position[f"{subject.parent}_id"]
    waiting = {record.id: record for record in records}
    ordered: list[Record] = []
    while waiting:
        ready = [r for r in waiting.values() if r.values[position] not in waiting]
        ordered += ready
        for record in ready:
            del waiting[record.id]
    return ordered


def _write_lists(connection: Connection, subject: Subject, records: list[Record]) -> None:
    for column in subject.lists:
        concerned = [r for r in records if column.name in r.links]
        known = [(r.id,) for r in concerned if not r.new]
        many(connection, f"DELETE FROM {column.table} WHERE {column.owner} = ?", known)
        _insert_list(connection, column, concerned)


def _insert_list(connection: Connection, column: ListColumn, records: Iterable[Record]) -> None:
    ordered = "position" in metadata.tables[column.table].c
    fields = (
        *(("object_id",) if column.with_object else ()),
        column.owner,
        *column.fields,
        *(("position",) if ordered else ()),
    )
    rows = [
        (
            *((record.values[0],) if column.with_object else ()),
            record.id,
            *item,
            *((place,) if ordered else ()),
        )
        for record in records
        for place, item in enumerate(record.links[column.name])
    ]
    marks = ", ".join("?" * len(fields))
    many(connection, f"INSERT INTO {column.table} ({', '.join(fields)}) VALUES ({marks})", rows)
