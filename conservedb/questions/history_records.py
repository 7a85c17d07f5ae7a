"""What is on record in a scope, for a history of it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from sqlalchemy import ColumnElement, Connection, Table, func, select
from sqlalchemy.sql.selectable import FromClause

from conservedb.questions import finding_records, plan_records
from conservedb.questions.answers import Rival
from conservedb.questions.asking import Question, Rows, Selection, blank, cited, dated
from conservedb.questions.evidence import People, Statements, by_owner, people_of
from conservedb.questions.finding_records import Findings
from conservedb.questions.plan_records import Plans
from conservedb.questions.retiring import retirement
from conservedb.questions.rewordings import STATEMENTS as _REWORDINGS
from conservedb.questions.rewordings import Rewordings, rewordings
from conservedb.questions.scopes import SCOPES, Scope
from conservedb.records.layers import layer, layer_candidate, removal, sighting, sighting_person
from conservedb.records.materials import material, material_class
from conservedb.records.objects import component
from conservedb.records.places import joint_event, place
from conservedb.records.sources import source, statement
from conservedb.records.treatments import (
    agent,
    intervention,
    intervention_aim,
    intervention_component,
    intervention_person,
    intervention_place,
    treatment,
)

_TABLES = {
    "components": "component",
    "places": "place",
    "interventions": "intervention",
    "agents": "agent",
    "layers": "layer",
    "removals": "removal",
    "sightings": "sighting",
    "events": "joint_event",
}


@dataclass(frozen=True, slots=True)
class Records:
    """The rows that a history is made of."""

    components: Rows
    places: Rows
    interventions: Rows
    aims: Rows
    parts_touched: Rows
    places_touched: Rows
    agents: Rows
    layers: Rows
    candidates: Rows
    removals: Rows
    sightings: Rows
    events: Rows
    findings: Findings
    plans: Plans
    hands: People
    seen_by: People
    rivals: dict[tuple[str, int], list[Rival]]
    amended: Rewordings


def _words(table: FromClause, *names: str) -> list[ColumnElement[str]]:
    return [blank(table.c[name]).label(name) for name in names]


def _components(ids: Selection) -> Question:
    return Question(
        select(
            component.c.id,
            component.c.mark,
            *_words(component, "name", "kind", "note"),
            *dated(component, "made"),
            *dated(component, "lost"),
            *retirement(),
            *cited(source),
        )
        .outerjoin_from(component, source, source.c.id == component.c.source_id)
        .where(component.c.id.in_(ids))
    )


def _places(ids: Selection) -> Question:
    return Question(
        select(
            place.c.id,
            place.c.mark,
            *_words(place, "name", "kind", "arose"),
            *dated(place, "arose", "arising"),
        ).where(place.c.id.in_(ids))
    )


def _interventions(ids: Selection) -> Question:
    return Question(
        select(
            intervention.c.id,
            intervention.c.ref,
            *_words(intervention, "kind", "technique", "date_basis", "note"),
            *dated(intervention, "date"),
            *cited(source),
            blank(treatment.c.ref).label("treatment"),
        )
        .outerjoin_from(intervention, source, source.c.id == intervention.c.source_id)
        .outerjoin(treatment, treatment.c.id == intervention.c.treatment_id)
        .where(intervention.c.id.in_(ids))
        .order_by(intervention.c.id)
    )


def _aims(ids: Selection) -> Question:
    return Question(
        select(intervention_aim.c.intervention_id, intervention_aim.c.aim)
        .where(intervention_aim.c.intervention_id.in_(ids))
        .order_by(intervention_aim.c.intervention_id, intervention_aim.c.position)
    )


def _touched(link: Table, target: Table, ids: Selection) -> Question:
    """The marks of the components or places that interventions touched."""
    column = link.c[f"{target.name}_id"]
    return Question(
        select(link.c.intervention_id, target.c.mark)
        .join_from(link, target, target.c.id == column)
        .where(link.c.intervention_id.in_(ids))
        .order_by(link.c.intervention_id, link.c.position)
    )


def _agents(ids: Selection) -> Question:
    return Question(
        select(
            agent.c.id,
            agent.c.intervention_id,
            agent.c.ref,
            blank(func.coalesce(material.c.name, material.c.key, agent.c.material_words)).label(
                "material"
            ),
            *_words(agent, "concentration", "form", "cleared", "cleared_how", "note"),
            agent.c.temperature_c,
            agent.c.dwell_min,
        )
        .outerjoin_from(agent, material, material.c.id == agent.c.material_id)
        .where(agent.c.intervention_id.in_(ids))
        .order_by(agent.c.id)
    )


def _layers(ids: Selection) -> Question:
    return Question(
        select(
            layer.c.id,
            layer.c.intervention_id,
            layer.c.ref,
            *_words(layer, "role", "zone", "side", "origin", "note", "concentration"),
            blank(
                func.coalesce(
                    material.c.name,
                    material.c.key,
                    layer.c.material_words,
                    material_class.c.name,
                    material_class.c.key,
                )
            ).label("material"),
            blank(place.c.mark).label("place"),
            *dated(layer, "date"),
            *cited(source),
        )
        .outerjoin_from(layer, material, material.c.id == layer.c.material_id)
        .outerjoin(material_class, material_class.c.id == layer.c.material_class_id)
        .outerjoin(place, place.c.id == layer.c.place_id)
        .outerjoin(source, source.c.id == layer.c.source_id)
        .where(layer.c.id.in_(ids))
        .order_by(layer.c.id)
    )


def _candidates(ids: Selection) -> Question:
    return Question(
        select(layer_candidate.c.layer_id, place.c.mark)
        .join_from(layer_candidate, place, place.c.id == layer_candidate.c.place_id)
        .where(layer_candidate.c.layer_id.in_(ids))
        .order_by(layer_candidate.c.layer_id, layer_candidate.c.position)
    )


def _removals(ids: Selection) -> Question:
    return Question(
        select(
            removal.c.id,
            removal.c.layer_id,
            removal.c.intervention_id,
            removal.c.ref,
            *_words(removal, "extent", "side", "cause", "note"),
            *dated(removal, "date"),
            *cited(source),
        )
        .outerjoin_from(removal, source, source.c.id == removal.c.source_id)
        .where(removal.c.id.in_(ids))
        .order_by(removal.c.id)
    )


def _sightings(ids: Selection) -> Question:
    return Question(
        select(
            sighting.c.id,
            sighting.c.layer_id,
            sighting.c.ref,
            *_words(sighting, "result", "side", "note"),
            *dated(sighting, "date"),
            *cited(source),
        )
        .outerjoin_from(sighting, source, source.c.id == sighting.c.source_id)
        .where(sighting.c.id.in_(ids))
        .order_by(sighting.c.id)
    )


def _events(ids: Selection) -> Question:
    return Question(
        select(
            joint_event.c.id,
            joint_event.c.intervention_id,
            joint_event.c.ref,
            *_words(joint_event, "event", "location", "note"),
            place.c.mark.label("place"),
            *dated(joint_event, "date"),
            *cited(source),
        )
        .join_from(joint_event, place, place.c.id == joint_event.c.place_id)
        .outerjoin(source, source.c.id == joint_event.c.source_id)
        .where(joint_event.c.id.in_(ids))
        .order_by(joint_event.c.id)
    )


class Asked:
    """The questions of one scope, built once."""

    def __init__(self, scope: Scope) -> None:
        self.rows = {
            "components": _components(scope.components),
            "places": _places(scope.places),
            "interventions": _interventions(scope.interventions),
            "aims": _aims(scope.interventions),
            "parts_touched": _touched(intervention_component, component, scope.interventions),
            "places_touched": _touched(intervention_place, place, scope.interventions),
            "agents": _agents(scope.interventions),
            "layers": _layers(scope.layers),
            "candidates": _candidates(scope.layers),
            "removals": _removals(scope.removals),
            "sightings": _sightings(scope.sightings),
            "events": _events(scope.events),
        }
        self.hands = people_of(intervention_person, scope.interventions)
        self.seen_by = people_of(sighting_person, scope.sightings)
        self.findings = finding_records.Asked(scope.findings)
        self.plans = plan_records.Asked(scope.plans, scope.authorisations)
        self.stated = Statements(statement.c.id.in_(scope.statements))

    def records(self, connection: Connection, scope: int) -> Records:
        """Everything on record about the object, part, place or treatment with this id."""
        rows = {name: asked.all(connection, scope=scope) for name, asked in self.rows.items()}
        findings = self.findings.findings(connection, scope)
        plans = self.plans.records(connection, scope)
        return Records(
            **rows,
            findings=findings,
            plans=plans,
            hands=by_owner(self.hands.all(connection, scope=scope)),
            seen_by=by_owner(self.seen_by.all(connection, scope=scope)),
            rivals=self.stated.about(connection, scope=scope),
            amended=rewordings(connection, _in_view(rows, findings, plans)),
        )

    def questions(self) -> tuple[Question, ...]:
        """Every question, for the test of query plans."""
        return (
            *(*self.rows.values(), self.hands, self.seen_by),
            *(*self.findings.questions, *self.plans.questions, *self.stated.questions),
        )


def _in_view(rows: Mapping[str, Rows], findings: Findings, plans: Plans) -> dict[str, list[int]]:
    """The records of a history, by table."""
    found = {table: [row.id for row in rows[name]] for name, table in _TABLES.items()}
    found |= {
        "observation": [row.id for row in findings.observations],
        "reading": [row.id for row in findings.readings],
        "sample": [row.id for row in findings.samples],
        "spot_test": [row.id for row in findings.tests],
        "plan": [row.id for row in plans.plans],
        "planned_step": [row.id for steps in plans.steps.values() for row in steps],
        "authorisation": [row.id for row in plans.decisions],
    }
    return found


ASKED = {kind: Asked(scope) for kind, scope in SCOPES.items()}
STATEMENTS = (
    *(question for asked in ASKED.values() for question in asked.questions()),
    *_REWORDINGS,
)
