"""The facts that bear on layers, as rows in memory: from the database, from an import, or both."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from typing import Any

from sqlalchemy import BindParameter, Connection, Select, bindparam, select, union

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


OF_LAYERS = ("layer", "removal", "sighting", "intervention")
"""Tables of which only what bears on some layers can be loaded; the others are short."""


def _columns(name: str) -> Select[Any]:
    table = _TABLES[name]
    return select(table.c.id, *(table.c[field] for field in FIELDS[name]))


def _statement(name: str) -> Select[Any]:
    table = _TABLES[name]
    owner = table.c.id if name == "object" else table.c.object_id
    return _columns(name).where(owner == bindparam("object"))


def _bearing(name: str) -> Select[Any]:
    """Rows that bear on some layers: themselves, what befell them, and the deeds behind both."""
    table = _TABLES[name]
    ids: BindParameter[int] = bindparam("layers", expanding=True)
    if name == "layer":
        return _columns(name).where(table.c.id.in_(ids))
    if name != "intervention":
        return _columns(name).where(table.c.layer_id.in_(ids))
    layer, removal = layers.layer, layers.removal
    deeds = union(
        select(layer.c.intervention_id).where(layer.c.id.in_(ids)),
        select(removal.c.intervention_id).where(removal.c.layer_id.in_(ids)),
    )
    return _columns(name).where(table.c.id.in_(deeds))


_OF_OBJECT = {name: _statement(name) for name in FIELDS if name != "source"}
_OF_LAYERS = {name: _bearing(name) for name in OF_LAYERS}
_SOURCES = select(sources.source.c.id, sources.source.c.date_latest)
_PLACES_OF = select(layers.layer_candidate.c.layer_id, layers.layer_candidate.c.place_id).order_by(
    layers.layer_candidate.c.layer_id, layers.layer_candidate.c.position
)
_CANDIDATES = _PLACES_OF.where(
    layers.layer_candidate.c.layer_id.in_(
        select(layers.layer.c.id).where(layers.layer.c.object_id == bindparam("object"))
    )
)
_CANDIDATES_OF = _PLACES_OF.where(
    layers.layer_candidate.c.layer_id.in_(bindparam("layers", expanding=True))
)


class Facts:
    """Rows by table and id; `candidates` holds the places of a layer that may be at several."""

    def __init__(self) -> None:
        self.rows: dict[str, dict[int, Row]] = {name: {} for name in FIELDS}
        self.candidates: dict[int, tuple[int, ...]] = {}

    def load(
        self,
        connection: Connection,
        object_ids: Iterable[int],
        only: Collection[int] | None = None,
    ) -> None:
        """Add what the database holds about these objects, and every source.

        Args:
            only: of the layers, and of what befell layers, only what bears on these.
        """
        self.rows["source"] = {row[0]: (row[1],) for row in connection.execute(_SOURCES)}
        for object_id in object_ids:
            values = {"object": object_id}
            for name, statement in _OF_OBJECT.items():
                if only is None or name not in OF_LAYERS:
                    self._keep(name, connection.execute(statement, values))
            if only is None:
                self._keep_candidates(connection.execute(_CANDIDATES, values))
        if only:
            some = {"layers": list(only)}
            for name, statement in _OF_LAYERS.items():
                self._keep(name, connection.execute(statement, some))
            self._keep_candidates(connection.execute(_CANDIDATES_OF, some))

    def _keep(self, name: str, rows: Iterable[Any]) -> None:
        kept = self.rows[name]
        for row in rows:
            kept[row[0]] = tuple(row[1:])

    def _keep_candidates(self, rows: Iterable[Any]) -> None:
        for layer_id, place_id in rows:
            self.candidates[layer_id] = (*self.candidates.get(layer_id, ()), place_id)
