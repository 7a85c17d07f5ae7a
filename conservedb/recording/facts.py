"""The facts that bear on layers, as rows in memory: from the database, from an import, or both."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from sqlalchemy import Connection, Select, bindparam, select

from conservedb.records import layers, objects, places, sources, treatments

Row = tuple[Any, ...]

FIELDS: dict[str, tuple[str, ...]] = {
    "object": ("made_earliest",),
    "component": (
        "made_earliest",
        "lost_earliest",
        "lost_latest",
        "lost_flags",
        "lost_derived",
        "entered",
        "object_id",
    ),
    "source": ("date_latest",),
    "place": ("kind", "component_id", "other_component_id"),
    "intervention": (
        "date_earliest",
        "date_latest",
        "date_flags",
        "source_id",
        "recorded_latest",
        "entered",
    ),
    "layer": (
        "object_id",
        "place_id",
        "date_earliest",
        "date_latest",
        "date_flags",
        "date_derived",
        "intervention_id",
        "source_id",
        "entered",
        "side",
    ),
    "removal": (
        "layer_id",
        "date_earliest",
        "date_latest",
        "date_flags",
        "date_derived",
        "intervention_id",
        "extent",
        "side",
        "source_id",
        "entered",
    ),
    "sighting": (
        "layer_id",
        "date_earliest",
        "date_latest",
        "date_flags",
        "result",
        "side",
        "source_id",
        "entered",
    ),
}
"""Fields of each table on which the bounds of layers rest."""

_TABLES = {
    "object": objects.object_,
    "component": objects.component,
    "source": sources.source,
    "place": places.place,
    "intervention": treatments.intervention,
    "layer": layers.layer,
    "removal": layers.removal,
    "sighting": layers.sighting,
}


def _statement(name: str) -> Select[Any]:
    table = _TABLES[name]
    columns = [table.c[field] for field in FIELDS[name]]
    owner = table.c.id if name == "object" else table.c.object_id
    return select(table.c.id, *columns).where(owner == bindparam("object"))


_OF_OBJECT = {name: _statement(name) for name in FIELDS if name != "source"}
_SOURCES = select(sources.source.c.id, sources.source.c.date_latest)
_CANDIDATES = (
    select(layers.layer_candidate.c.layer_id, layers.layer_candidate.c.place_id)
    .where(
        layers.layer_candidate.c.layer_id.in_(
            select(layers.layer.c.id).where(layers.layer.c.object_id == bindparam("object"))
        )
    )
    .order_by(layers.layer_candidate.c.layer_id, layers.layer_candidate.c.position)
)


class Facts:
    """Rows by table and id; `candidates` holds the places of a layer that may be at several."""

    def __init__(self) -> None:
        self.rows: dict[str, dict[int, Row]] = {name: {} for name in FIELDS}
        self.candidates: dict[int, tuple[int, ...]] = {}

    def load(self, connection: Connection, object_ids: Iterable[int]) -> None:
        """Add what the database holds about these objects, and every source."""
        self.rows["source"] = {row[0]: (row[1],) for row in connection.execute(_SOURCES)}
        for object_id in object_ids:
            values = {"object": object_id}
            for name, statement in _OF_OBJECT.items():
                kept = self.rows[name]
                for row in connection.execute(statement, values):
                    kept[row[0]] = tuple(row[1:])
            for layer_id, place_id in connection.execute(_CANDIDATES, values):
                self.candidates[layer_id] = (*self.candidates.get(layer_id, ()), place_id)
