"""What was done to some objects, said of them and accepted about them, for the rules."""

from __future__ import annotations

from sqlalchemy import func, select

from conservedb.questions.asking import Question, blank, dated
from conservedb.questions.checks_scope import ids_of, of_range, photograph
from conservedb.records.layers import layer
from conservedb.records.materials import material
from conservedb.records.objects import component, whereabouts
from conservedb.records.people import person
from conservedb.records.places import place
from conservedb.records.rules import acceptance, rule
from conservedb.records.sources import source, statement
from conservedb.records.spot_tests import spot_test, spot_test_part
from conservedb.records.treatments import (
    agent,
    agent_place,
    intervention,
    intervention_component,
    intervention_place,
)

DEEDS = Question(
    select(
        intervention.c.object_id,
        intervention.c.id,
        intervention.c.ref,
        blank(intervention.c.kind).label("kind"),
        *dated(intervention, "date"),
        *photograph(source, "paper"),
    )
    .outerjoin_from(intervention, source, source.c.id == intervention.c.source_id)
    .where(of_range(intervention))
)
DEED_PLACES = Question(
    select(intervention_place.c.intervention_id, intervention_place.c.place_id).where(
        intervention_place.c.intervention_id.in_(ids_of(intervention))
    )
)
DEED_COMPONENTS = Question(
    select(intervention_component.c.intervention_id, intervention_component.c.component_id).where(
        intervention_component.c.intervention_id.in_(ids_of(intervention))
    )
)
AGENTS = Question(
    select(agent.c.id, agent.c.intervention_id, agent.c.material_id).where(
        of_range(agent), agent.c.material_id.is_not(None)
    )
)
AGENT_PLACES = Question(
    select(agent_place.c.agent_id, agent_place.c.place_id).where(
        agent_place.c.agent_id.in_(ids_of(agent))
    )
)
TESTS = Question(
    select(
        spot_test.c.object_id,
        spot_test.c.id,
        spot_test.c.ref,
        layer.c.place_id,
        material.c.key,
        spot_test.c.date_earliest,
        spot_test.c.date_latest,
    )
    .join_from(spot_test, layer, layer.c.id == spot_test.c.layer_id)
    .join(spot_test_part, spot_test_part.c.spot_test_id == spot_test.c.id)
    .join(material, material.c.id == spot_test_part.c.material_id)
    .where(of_range(spot_test))
)
KEPT = Question(
    select(
        whereabouts.c.object_id,
        whereabouts.c.component_id,
        blank(whereabouts.c.place_name).label("place_name"),
        whereabouts.c.since_earliest,
        whereabouts.c.since_latest,
        whereabouts.c.until_earliest,
        whereabouts.c.until_latest,
    ).where(of_range(whereabouts))
)
NO_BARRIER = Question(
    select(
        statement.c.place_id,
        blank(statement.c.value).label("value"),
        blank(source.c.ref).label("source"),
        blank(statement.c.page).label("page"),
    )
    .outerjoin_from(statement, source, source.c.id == statement.c.source_id)
    .where(
        statement.c.place_id.in_(ids_of(place)),
        statement.c.field == "barrier",
        func.coalesce(statement.c.followed, "") != "no",
    )
)
ACCEPTED = Question(
    select(
        acceptance.c.object_id,
        acceptance.c.ref,
        rule.c.key.label("rule"),
        blank(component.c.mark).label("component"),
        blank(place.c.mark).label("place"),
        blank(layer.c.ref).label("layer"),
        person.c.name.label("person"),
        acceptance.c.reason,
        *dated(acceptance, "date"),
        *dated(acceptance, "review"),
        blank(acceptance.c.note).label("note"),
    )
    .join_from(acceptance, rule, rule.c.id == acceptance.c.rule_id)
    .join(person, person.c.id == acceptance.c.person_id)
    .outerjoin(component, component.c.id == acceptance.c.component_id)
    .outerjoin(place, place.c.id == acceptance.c.place_id)
    .outerjoin(layer, layer.c.id == acceptance.c.layer_id)
    .where(of_range(acceptance))
    .order_by(acceptance.c.id)
)
STATEMENTS = (
    DEEDS,
    DEED_PLACES,
    DEED_COMPONENTS,
    AGENTS,
    AGENT_PLACES,
    TESTS,
    KEPT,
    NO_BARRIER,
    ACCEPTED,
)
