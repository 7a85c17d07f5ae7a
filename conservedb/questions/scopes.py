"""What a history is about: an object, a part with what belongs to it, or one place.

Each scope selects ids by the parameter `scope`. A part takes in the parts below it and the
places that it bears or touches; a place takes in the fixings that cross it.
"""

from __future__ import annotations

from typing import NamedTuple

from sqlalchemy import BindParameter, Table, bindparam, select, union, union_all

from conservedb.questions.asking import Selection
from conservedb.records.authorisations import authorisation
from conservedb.records.layers import layer, layer_candidate, removal, sighting
from conservedb.records.objects import bridge, component
from conservedb.records.observations import observation, reading, sample
from conservedb.records.places import joint_event, place
from conservedb.records.plans import plan, planned_step, planned_step_component, planned_step_place
from conservedb.records.sources import statement
from conservedb.records.spot_tests import spot_test
from conservedb.records.treatments import (
    agent,
    agent_place,
    intervention,
    intervention_component,
    intervention_place,
    treatment,
)

_ID: BindParameter[int] = bindparam("scope")
_NO_RECORD = 0
"""A key that no record ever has."""


class Scope(NamedTuple):
    """Selections of the ids of the records that a history takes in."""

    components: Selection
    places: Selection
    layers: Selection
    removals: Selection
    sightings: Selection
    events: Selection
    interventions: Selection
    statements: Selection
    findings: dict[str, Selection]
    """Observations, readings, samples and spot tests, by the name of their table."""
    plans: Selection
    authorisations: Selection


def _of_object(table: Table) -> Selection:
    return select(table.c.id).where(table.c.object_id == _ID)


def _of_layers(table: Table, layers: Selection) -> Selection:
    return select(table.c.id).where(table.c.layer_id.in_(layers))


def _scope(
    components: Selection,
    places: Selection,
    layers: Selection,
    removals: Selection,
    sightings: Selection,
    events: Selection,
    interventions: Selection,
    findings: dict[str, Selection],
    plans: Selection,
    authorisations: Selection,
    **also: Selection,
) -> Scope:
    """The scope of these records, with the statements about them (and about `also`)."""
    subjects = {
        **also,
        "component": components,
        "place": places,
        "layer": layers,
        "removal": removals,
        "sighting": sightings,
        "joint_event": events,
        "intervention": interventions,
    }
    statements = union_all(
        *(
            select(statement.c.id).where(statement.c[f"{subject}_id"].in_(ids))
            for subject, ids in subjects.items()
        )
    )
    return Scope(
        *(components, places, layers, removals, sightings, events, interventions, statements),
        *(findings, plans, authorisations),
    )


_FINDINGS = (observation, reading, sample, spot_test)


def _whole_object() -> Scope:
    return _scope(
        _of_object(component),
        _of_object(place),
        _of_object(layer),
        _of_object(removal),
        _of_object(sighting),
        _of_object(joint_event),
        _of_object(intervention),
        {table.name: _of_object(table) for table in _FINDINGS},
        _of_object(plan),
        _of_object(authorisation),
        object=select(_ID),
    )


def _local(components: Selection, places: Selection, *deeds: Selection) -> Scope:
    """Everything at some places, and the interventions (`deeds` among them) that touched them."""
    layers = union_all(
        select(layer.c.id).where(layer.c.place_id.in_(places)),
        select(layer_candidate.c.layer_id).where(layer_candidate.c.place_id.in_(places)),
    )
    removals, sightings = _of_layers(removal, layers), _of_layers(sighting, layers)
    events = select(joint_event.c.id).where(joint_event.c.place_id.in_(places))
    used = select(agent_place.c.agent_id).where(agent_place.c.place_id.in_(places))
    interventions = union(
        select(intervention_place.c.intervention_id).where(
            intervention_place.c.place_id.in_(places)
        ),
        select(joint_event.c.intervention_id).where(joint_event.c.place_id.in_(places)),
        select(layer.c.intervention_id).where(layer.c.id.in_(layers)),
        select(removal.c.intervention_id).where(removal.c.layer_id.in_(layers)),
        select(agent.c.intervention_id).where(agent.c.id.in_(used)),
        *deeds,
    )
    planned = union(
        select(planned_step_place.c.planned_step_id).where(
            planned_step_place.c.place_id.in_(places)
        ),
        select(planned_step_component.c.planned_step_id).where(
            planned_step_component.c.component_id.in_(components)
        ),
    )
    plans = select(planned_step.c.plan_id).where(planned_step.c.id.in_(planned))
    return _scope(
        *(components, places, layers, removals, sightings, events, interventions),
        _local_findings(components, places, layers, removals),
        plans,
        _decisions(plans, interventions),
    )


def _local_findings(
    components: Selection, places: Selection, layers: Selection, removals: Selection
) -> dict[str, Selection]:
    """What was found on these parts, places and layers."""
    whereon = {"component_id": components, "place_id": places, "layer_id": layers}
    found: dict[str, Selection] = {"spot_test": _of_layers(spot_test, layers)}
    for table in (observation, reading, sample):
        pointers = whereon | ({"removal_id": removals} if table is sample else {})
        found[table.name] = union(
            *(select(table.c.id).where(table.c[name].in_(ids)) for name, ids in pointers.items())
        )
    return found


def _decisions(plans: Selection, interventions: Selection) -> Selection:
    return union(
        select(authorisation.c.id).where(authorisation.c.plan_id.in_(plans)),
        select(authorisation.c.id).where(authorisation.c.intervention_id.in_(interventions)),
    )


def _part() -> Scope:
    below = select(component.c.id).where(component.c.id == _ID).cte("below", recursive=True)
    below = below.union(select(component.c.id).where(component.c.parent_id == below.c.id))
    components = select(below.c.id)
    return _local(
        components,
        union(
            select(place.c.id).where(place.c.component_id.in_(components)),
            select(place.c.id).where(place.c.other_component_id.in_(components)),
        ),
        select(intervention_component.c.intervention_id).where(
            intervention_component.c.component_id.in_(components)
        ),
    )


def _one_place() -> Scope:
    return _local(
        select(bridge.c.component_id).where(bridge.c.place_id == _ID),
        select(place.c.id).where(place.c.id == _ID),
    )


def of_treatment() -> Scope:
    """What the steps of one treatment did and found, and its plans; no parts, places, sightings."""
    steps = select(intervention.c.id).where(intervention.c.treatment_id == _ID)

    owner = select(treatment.c.object_id).where(treatment.c.id == _ID).scalar_subquery()

    def by_step(table: Table, column: str = "id") -> Selection:
        # Its object too: where few rows name a step, an index on that column finds nothing fast.
        own = table.c.object_id == owner
        return select(table.c[column]).where(own, table.c.intervention_id.in_(steps))

    plans = select(plan.c.id).where(plan.c.treatment_id == _ID)
    return _scope(
        select(component.c.id).where(component.c.id == _NO_RECORD),
        select(place.c.id).where(place.c.id == _NO_RECORD),
        union(by_step(layer), by_step(removal, "layer_id")),
        by_step(removal),
        select(sighting.c.id).where(sighting.c.id == _NO_RECORD),
        by_step(joint_event),
        steps,
        {table.name: by_step(table) for table in _FINDINGS},
        plans,
        _decisions(plans, steps),
        treatment=select(treatment.c.id).where(treatment.c.id == _ID),
    )


SCOPES = {"object": _whole_object(), "component": _part(), "place": _one_place()}
