"""What is on record about the layers at a place, in a handful of statements."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass
from typing import Any

from sqlalchemy import (
    BindParameter,
    ColumnElement,
    Connection,
    bindparam,
    func,
    select,
    union_all,
)
from sqlalchemy.sql.selectable import FromClause

from conservedb.knowledge.layers import Bounds
from conservedb.questions.answers import Rival
from conservedb.questions.asking import Question, Row, Rows, blank, cited, dated
from conservedb.questions.evidence import People, Statements, by_owner, people_of
from conservedb.questions.rewordings import STATEMENTS as _REWORDINGS
from conservedb.questions.rewordings import Rewordings, rewordings
from conservedb.records.layers import (
    BOUNDS,
    layer,
    layer_candidate,
    layer_side,
    removal,
    sighting,
    sighting_person,
)
from conservedb.records.materials import material, material_class
from conservedb.records.people import person
from conservedb.records.places import place
from conservedb.records.sources import source, statement
from conservedb.records.treatments import intervention, intervention_person

_PLACE: BindParameter[int] = bindparam("place")
# Every list that a statement builds for an IN costs an allocation of 90 kB inside SQLite: these
# selections are lists of their own, never lists within lists.
_HERE = union_all(
    select(layer.c.id).where(layer.c.place_id == _PLACE),
    select(layer_candidate.c.layer_id).where(layer_candidate.c.place_id == _PLACE),
)
_REMOVALS_HERE = union_all(
    select(removal.c.id)
    .join_from(layer, removal, removal.c.layer_id == layer.c.id)
    .where(layer.c.place_id == _PLACE),
    select(removal.c.id)
    .join_from(layer_candidate, removal, removal.c.layer_id == layer_candidate.c.layer_id)
    .where(layer_candidate.c.place_id == _PLACE),
)
_SIGHTINGS_HERE = union_all(
    select(sighting.c.id)
    .join_from(layer, sighting, sighting.c.layer_id == layer.c.id)
    .where(layer.c.place_id == _PLACE),
    select(sighting.c.id)
    .join_from(layer_candidate, sighting, sighting.c.layer_id == layer_candidate.c.layer_id)
    .where(layer_candidate.c.place_id == _PLACE),
)
_DEEDS_HERE = union_all(
    select(layer.c.intervention_id).where(layer.c.place_id == _PLACE),
    select(layer.c.intervention_id)
    .join_from(layer_candidate, layer, layer.c.id == layer_candidate.c.layer_id)
    .where(layer_candidate.c.place_id == _PLACE),
    select(removal.c.intervention_id)
    .join_from(layer, removal, removal.c.layer_id == layer.c.id)
    .where(layer.c.place_id == _PLACE),
    select(removal.c.intervention_id)
    .join_from(layer_candidate, removal, removal.c.layer_id == layer_candidate.c.layer_id)
    .where(layer_candidate.c.place_id == _PLACE),
)
_paper, _why = source.alias("paper"), source.alias("why")


def _done(table: FromClause) -> list[ColumnElement[str]]:
    return [
        blank(table.c.ref).label("intervention"),
        blank(table.c.kind).label("kind"),
        blank(table.c.technique).label("technique"),
    ]


_PLAIN: dict[str, ColumnElement[Any]] = {
    "ref": layer.c.ref,
    "stack": layer.c.stack,
    "side": blank(layer.c.side),
    "zone": blank(layer.c.zone),
    "role": blank(layer.c.role),
    "material": material.c.key,
    "material_name": blank(
        func.coalesce(
            material.c.name,
            material.c.key,
            material_class.c.name,
            material_class.c.key,
            layer.c.material_words,
        )
    ),
    "material_words": blank(layer.c.material_words),
    "material_class": blank(material_class.c.key),
    "origin": blank(layer.c.origin),
    "coverage": blank(layer.c.coverage),
    "concentration": blank(layer.c.concentration),
    "carrier": blank(layer.c.carrier),
    "dry": blank(layer.c.dry),
    "identified": blank(layer.c.identified),
    "significance": blank(layer.c.significance),
    "significance_by": blank(person.c.name),
    "note": blank(layer.c.note),
}
"""The fields of `answers.Layer` that are columns, in its order."""

LAYERS = Question(
    select(
        *(column.label(name) for name, column in _PLAIN.items()),
        layer.c.id,
        layer.c.place_id,
        layer.c.intervention_id,
        *(layer.c[name] for name in BOUNDS),
        *dated(layer, "date"),
        *dated(intervention, "date", "done"),
        *_done(intervention),
        blank(intervention.c.note).label("done_note"),
        *cited(_paper, "paper"),
        *cited(_why, "why"),
    )
    .outerjoin_from(layer, material, material.c.id == layer.c.material_id)
    .outerjoin(material_class, material_class.c.id == layer.c.material_class_id)
    .outerjoin(person, person.c.id == layer.c.significance_by_id)
    .outerjoin(intervention, intervention.c.id == layer.c.intervention_id)
    .outerjoin(_paper, _paper.c.id == layer.c.source_id)
    .outerjoin(_why, _why.c.id == intervention.c.source_id)
    .where(layer.c.id.in_(_HERE))
)
_CANDIDATES = Question(
    select(layer_candidate.c.layer_id, place.c.mark)
    .join_from(layer_candidate, place, place.c.id == layer_candidate.c.place_id)
    .where(layer_candidate.c.layer_id.in_(_HERE))
    .order_by(layer_candidate.c.layer_id, layer_candidate.c.position)
)
_SIDES = Question(
    select(layer_side.c.layer_id, layer_side.c.side, *(layer_side.c[name] for name in BOUNDS))
    .where(layer_side.c.layer_id.in_(_HERE))
    .order_by(layer_side.c.layer_id, layer_side.c.side)
)
_REMOVALS = Question(
    select(
        removal.c.id,
        removal.c.layer_id,
        removal.c.intervention_id,
        *(blank(removal.c[name]).label(name) for name in ("cause", "extent", "side", "note")),
        *dated(removal, "date"),
        *dated(intervention, "date", "done"),
        *_done(intervention),
        *cited(_paper, "paper"),
        *cited(_why, "why"),
    )
    .outerjoin_from(removal, intervention, intervention.c.id == removal.c.intervention_id)
    .outerjoin(_paper, _paper.c.id == removal.c.source_id)
    .outerjoin(_why, _why.c.id == intervention.c.source_id)
    .where(removal.c.layer_id.in_(_HERE))
    .order_by(removal.c.id)
)
_SIGHTINGS = Question(
    select(
        sighting.c.id,
        sighting.c.layer_id,
        *(blank(sighting.c[name]).label(name) for name in ("result", "side", "note")),
        *dated(sighting, "date"),
        *cited(source),
        source.c.date_latest.label("source_latest"),
        sighting.c.entered,
    )
    .outerjoin_from(sighting, source, source.c.id == sighting.c.source_id)
    .where(sighting.c.layer_id.in_(_HERE))
    .order_by(sighting.c.date_latest, sighting.c.id)
)
_SEEN_BY = people_of(sighting_person, _SIGHTINGS_HERE)
_HANDS = people_of(intervention_person, _DEEDS_HERE)
_ON_LAYERS = Statements(statement.c.layer_id.in_(_HERE))
_ON_DEEDS = Statements(statement.c.intervention_id.in_(_DEEDS_HERE))
_ON_REMOVALS = Statements(statement.c.removal_id.in_(_REMOVALS_HERE))
_ON_SIGHTINGS = Statements(statement.c.sighting_id.in_(_SIGHTINGS_HERE))
STATEMENTS = (
    LAYERS,
    _CANDIDATES,
    _SIDES,
    _REMOVALS,
    _SIGHTINGS,
    _SEEN_BY,
    _HANDS,
    *_ON_LAYERS.questions,
    *_ON_DEEDS.questions,
    *_ON_REMOVALS.questions,
    *_ON_SIGHTINGS.questions,
    *_REWORDINGS,
)
PLAIN = len(_PLAIN)
AT_BOUNDS = LAYERS.at("came_from")
AT_LAID = tuple(LAYERS.at(n) for n in ("date_words", "done_words", "paper_ref", "why_ref"))
AT_TAKEN = tuple(_REMOVALS.at(n) for n in ("date_words", "done_words", "paper_ref", "why_ref"))
AT_LOOKED, AT_LOOKED_IN = _SIGHTINGS.at("date_words"), _SIGHTINGS.at("source_ref")


@dataclass(slots=True)
class LayerEvidence:
    """Everything on record about the layers at one place."""

    hands: People
    removals: dict[int, list[Row]]
    sightings: dict[int, list[Row]]
    seen_by: People
    sides: dict[int, dict[str, Bounds]]
    candidates: dict[int, list[str]]
    rivals: dict[tuple[str, int], list[Rival]]
    amended: Rewordings


def gathered(connection: Connection, at: int, rows: Rows) -> LayerEvidence:
    """Everything on record about the layers (`rows`) at a place."""
    removals = _by_layer(_REMOVALS.all(connection, place=at))
    sightings = _by_layer(_SIGHTINGS.all(connection, place=at))
    sides: dict[int, dict[str, Bounds]] = defaultdict(dict)
    for owner, side, *numbers in _SIDES.all(connection, place=at):
        sides[owner][side] = Bounds(*numbers)
    candidates: dict[int, list[str]] = defaultdict(list)
    if any(row.place_id is None for row in rows):
        for owner, mark in _CANDIDATES.all(connection, place=at):
            candidates[owner].append(mark)
    rivals = _ON_LAYERS.about(connection, place=at) | _ON_DEEDS.about(connection, place=at)
    if removals:
        rivals |= _ON_REMOVALS.about(connection, place=at)
    if sightings:
        rivals |= _ON_SIGHTINGS.about(connection, place=at)
    return LayerEvidence(
        by_owner(_HANDS.all(connection, place=at)),
        removals,
        sightings,
        by_owner(_SEEN_BY.all(connection, place=at)) if sightings else {},
        sides,
        candidates,
        rivals,
        rewordings(connection, _in_view(rows, removals, sightings)),
    )


def _in_view(
    rows: Rows, removals: dict[int, list[Row]], sightings: dict[int, list[Row]]
) -> dict[str, list[int]]:
    """The records that tell of these layers, by table."""
    deeds = {row.intervention_id for row in rows if row.intervention_id is not None}
    return {
        "layer": [row.id for row in rows],
        "intervention": sorted(deeds),
        "removal": [row.id for some in removals.values() for row in some],
        "sighting": [row.id for some in sightings.values() for row in some],
    }


def _by_layer(rows: Rows) -> dict[int, list[Row]]:
    found: dict[int, list[Row]] = defaultdict(list)
    for row in rows:
        found[row.layer_id].append(row)
    return found
