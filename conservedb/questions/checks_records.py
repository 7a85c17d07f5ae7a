"""What is on record about some objects, for the rules: whole ranges of objects at a time.

Every statement takes the ids of the first and the last object of a range, so that one object
and a whole collection are asked for in the same way, a collection range by range.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping, Sequence
from typing import Any

from sqlalchemy import (
    ColumnElement,
    Connection,
    Table,
    case,
    func,
    or_,
    select,
)

from conservedb.questions import checks_deeds as deeds
from conservedb.questions.asking import Question, Row, blank, dated
from conservedb.questions.checks_scope import FIRST, LAST, PHOTOGRAPH, ids_of, of_range, photograph
from conservedb.questions.joint_states import EVENT_COLUMNS, EVENTS_FROM
from conservedb.questions.retiring import retirement
from conservedb.records.base import DATE_PARTS
from conservedb.records.layers import BOUNDS, layer, layer_candidate, sighting
from conservedb.records.objects import bridge, component, object_
from conservedb.records.places import joint_event, place
from conservedb.records.rules import near
from conservedb.records.sources import source, statement
from conservedb.records.treatments import intervention


def _own_or_of_deed(table: Table) -> list[ColumnElement[Any]]:
    """The date of a record; where it has none of its own, that of its intervention."""
    own = or_(table.c.date_derived != "blank", table.c.intervention_id.is_(None))
    return [
        case((own, table.c[f"date_{part}"]), else_=intervention.c[f"date_{part}"]).label(
            f"date_{part}"
        )
        for part in DATE_PARTS
    ]


_paper, _why = source.alias("paper"), source.alias("why")

OBJECTS = Question(
    select(
        object_.c.id,
        object_.c.number,
        blank(object_.c.title).label("title"),
        blank(object_.c.whereabouts).label("whereabouts"),
        *dated(object_, "made"),
    ).where(object_.c.id.between(FIRST, LAST))
)
PARTS = Question(
    select(
        component.c.object_id,
        component.c.id,
        component.c.mark,
        *(
            blank(component.c[name]).label(name)
            for name in ("name", "kind", "origin", "material_words", "known_from", "kept_at")
        ),
        component.c.material_id,
        *dated(component, "made"),
        *dated(component, "lost"),
        *retirement(),
        component.c.entered,
        blank(source.c.ref).label("source"),
        source.c.date_latest.label("source_latest"),
    )
    .outerjoin_from(component, source, source.c.id == component.c.source_id)
    .where(of_range(component))
)
PLACES = Question(
    select(
        place.c.object_id,
        place.c.id,
        place.c.mark,
        blank(place.c.kind).label("kind"),
        blank(place.c.name).label("name"),
        place.c.component_id,
        place.c.other_component_id,
        place.c.load_kg,
        blank(source.c.ref).label("load_source"),
    )
    .outerjoin_from(place, source, source.c.id == place.c.load_source_id)
    .where(of_range(place))
)
LAYERS = Question(
    select(
        layer.c.object_id,
        layer.c.id,
        layer.c.place_id,
        layer.c.ref,
        layer.c.material_id,
        layer.c.material_class_id,
        *(
            blank(layer.c[name]).label(name)
            for name in (
                "material_words",
                "role",
                "zone",
                "side",
                "origin",
                "coverage",
                "carrier",
                "dry",
                "identified",
            )
        ),
        layer.c.stack,
        layer.c.intervention_id,
        *(layer.c[name] for name in BOUNDS),
        *_own_or_of_deed(layer),
        blank(func.coalesce(_paper.c.ref, _why.c.ref)).label("source"),
        *photograph(_paper, "paper"),
        *photograph(_why, "why"),
    )
    .outerjoin_from(layer, intervention, intervention.c.id == layer.c.intervention_id)
    .outerjoin(_paper, _paper.c.id == layer.c.source_id)
    .outerjoin(_why, _why.c.id == intervention.c.source_id)
    .where(of_range(layer))
)
CANDIDATES = Question(
    select(layer_candidate.c.layer_id, layer_candidate.c.place_id).where(
        layer_candidate.c.layer_id.in_(ids_of(layer))
    )
)
ALTERNATIVES = Question(
    select(statement.c.layer_id, statement.c.material_id)
    .where(
        statement.c.layer_id.in_(ids_of(layer)),
        statement.c.field == "material",
        statement.c.material_id.is_not(None),
        func.coalesce(statement.c.followed, "") != "no",
    )
    .order_by(statement.c.id)
)
SIGHTINGS = Question(
    select(
        sighting.c.layer_id,
        blank(sighting.c.result).label("result"),
        *dated(sighting, "date"),
        blank(source.c.ref).label("source"),
        *photograph(source, "paper"),
    )
    .outerjoin_from(sighting, source, source.c.id == sighting.c.source_id)
    .where(
        of_range(sighting),
        or_(sighting.c.result == "not found", source.c.kind == PHOTOGRAPH),
    )
)
EVENTS = Question(
    select(*EVENT_COLUMNS, *photograph(source, "paper"))
    .select_from(EVENTS_FROM)
    .where(of_range(joint_event))
)
FIXINGS = Question(
    select(bridge.c.place_id, component.c.mark)
    .join_from(bridge, component, component.c.id == bridge.c.component_id)
    .where(bridge.c.component_id.in_(ids_of(component)))
)
NEAR = Question(
    select(
        near.c.object_id,
        near.c.place_id,
        near.c.other_place_id,
        near.c.distance_mm,
        blank(near.c.path).label("path"),
        blank(source.c.ref).label("source"),
    )
    .outerjoin_from(near, source, source.c.id == near.c.source_id)
    .where(of_range(near))
)
OBJECT_IDS = Question(select(object_.c.id).order_by(object_.c.id))
STATEMENTS = (
    OBJECTS,
    PARTS,
    PLACES,
    LAYERS,
    CANDIDATES,
    ALTERNATIVES,
    SIGHTINGS,
    EVENTS,
    FIXINGS,
    NEAR,
    OBJECT_IDS,
    *deeds.STATEMENTS,
)

Grouped = Mapping[int, Sequence[Row]]


class Range:
    """What is on record about the objects of a range, grouped by what it belongs to."""

    def __init__(self, connection: Connection, first: int, last: int) -> None:
        def grouped(question: Question, by: str) -> Grouped:
            at = question.at(by)
            found: dict[int, list[Row]] = defaultdict(list)
            for row in question.all(connection, first=first, last=last):
                found[row[at]].append(row)
            return found

        self.objects = OBJECTS.all(connection, first=first, last=last)
        self.parts = grouped(PARTS, "object_id")
        self.places = grouped(PLACES, "object_id")
        self.layers = grouped(LAYERS, "object_id")
        self.candidates = grouped(CANDIDATES, "layer_id")
        self.alternatives = grouped(ALTERNATIVES, "layer_id")
        self.sightings = grouped(SIGHTINGS, "layer_id")
        self.events = grouped(EVENTS, "place_id")
        self.fixings = grouped(FIXINGS, "place_id")
        self.near = grouped(NEAR, "object_id")
        self.deeds = grouped(deeds.DEEDS, "object_id")
        self.deed_places = grouped(deeds.DEED_PLACES, "intervention_id")
        self.deed_components = grouped(deeds.DEED_COMPONENTS, "intervention_id")
        self.agents = grouped(deeds.AGENTS, "intervention_id")
        self.agent_places = grouped(deeds.AGENT_PLACES, "agent_id")
        self.tests = grouped(deeds.TESTS, "object_id")
        self.kept = grouped(deeds.KEPT, "object_id")
        self.no_barrier = grouped(deeds.NO_BARRIER, "place_id")
        self.accepted = grouped(deeds.ACCEPTED, "object_id")
