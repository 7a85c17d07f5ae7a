"""Writing the bounds of layers that a change has moved, and nothing else."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from sqlalchemy import Connection

from conservedb.knowledge.layers import LayerBounds
from conservedb.recording.bounds import Chronology, Contradiction, stored_bounds, stored_bounds_of
from conservedb.recording.facts import Facts
from conservedb.records.layers import BOUNDS

A_FEW = 500
"""So many layers are read one by one; of more, whole objects."""


class Impossible(Exception):
    """No order of events agrees with what would then be on record; the message says why."""


def settle(
    connection: Connection, bounds: Mapping[int, LayerBounds], objects: Iterable[int]
) -> None:
    """Write these bounds where the database has others.

    Args:
        bounds: by layer, as worked out.
        objects: the objects whose layers the database may hold with older bounds.
    """
    stored: dict[int, LayerBounds] = {}
    if len(bounds) <= A_FEW:
        stored = stored_bounds_of(connection, bounds)
    else:
        for object_id in objects:
            stored |= stored_bounds(connection, object_id)
    moved, gone, new = [], [], []
    for layer_id, now in bounds.items():
        was = stored.get(layer_id)
        if was is not None and was.whole != now.whole:
            moved.append((*now.whole, layer_id))
        if was is not None and was.sides and was.sides != now.sides:
            gone.append((layer_id,))
        if was is None or was.sides != now.sides:
            new += [(layer_id, side, *numbers) for side, numbers in now.sides.items()]
    names = ", ".join(f"{name} = ?" for name in BOUNDS)
    many(connection, f"UPDATE layer SET {names} WHERE id = ?", moved)
    many(connection, "DELETE FROM layer_side WHERE layer_id = ?", gone)
    fields = ("layer_id", "side", *BOUNDS)
    marks = ", ".join("?" * len(fields))
    many(connection, f"INSERT INTO layer_side ({', '.join(fields)}) VALUES ({marks})", new)


def settle_objects(
    connection: Connection, objects: Iterable[int], facts: Facts | None = None
) -> None:
    """Work the bounds of all layers of these objects out anew and write those that moved.

    Args:
        facts: what holds of them, where that is not (yet) what the tables say.

    Raises:
        Impossible: the facts allow no order of events.
    """
    known = sorted(set(objects))
    if facts is None:
        facts = Facts()
        facts.load(connection, known)
    bounds: dict[int, LayerBounds] = {}
    for layer_id, worked_out in Chronology(facts).layers():
        if isinstance(worked_out, Contradiction):
            ref = connection.exec_driver_sql(
                "SELECT ref FROM layer WHERE id = ?", (layer_id,)
            ).scalar()
            raise Impossible(f"layer {ref} would be impossible: {worked_out.reason}")
        bounds[layer_id] = worked_out
    settle(connection, bounds, known)


def many(connection: Connection, statement: str, rows: list[tuple[Any, ...]]) -> None:
    """Run a statement for each of these rows; nothing where there is none."""
    if rows:
        connection.exec_driver_sql(statement, rows)
