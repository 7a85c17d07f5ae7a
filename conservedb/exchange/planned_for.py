"""Which planned step a step at the bench carries out, so that nobody has to look it up."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from sqlalchemy import Connection, select

from conservedb.questions.naming import find_object
from conservedb.records.objects import component
from conservedb.records.places import place
from conservedb.records.plans import (
    plan,
    planned_step,
    planned_step_component,
    planned_step_place,
)
from conservedb.records.treatments import treatment
from conservedb.store.keys import fold

_NOT_ENDED = treatment.c.ended_derived == "blank"


class Planned(NamedTuple):
    """A planned step, and the treatment that its plan belongs to."""

    ref: str
    treatment: str


def planned_for(
    connection: Connection,
    number: str,
    kind: str,
    places: Sequence[str],
    components: Sequence[str],
) -> Planned | None:
    """The newest planned step of a kind, of a treatment not ended, that names all these marks.

    One that names no place and no component is for the whole object.
    """
    owner = find_object(connection, number).id
    statement = (
        select(planned_step.c.id, planned_step.c.ref, treatment.c.ref.label("treatment"))
        .join(plan, plan.c.id == planned_step.c.plan_id)
        .join(treatment, treatment.c.id == plan.c.treatment_id)
        .where(
            planned_step.c.object_id == owner,
            planned_step.c.kind == kind,
            _NOT_ENDED,
        )
        .order_by(planned_step.c.id.desc())
    )
    for row in connection.execute(statement):
        named_places, named_parts = _named(connection, row.id)
        asked = {fold(mark) for mark in places}, {fold(mark) for mark in components}
        whole = not named_places and not named_parts
        within = asked[0] <= named_places and asked[1] <= named_parts
        by_part = not named_places and not asked[1] and bool(named_parts)
        if whole or within or (by_part and _borne_by(connection, owner, asked[0]) <= named_parts):
            return Planned(row.ref, row.treatment)
    return None


def open_treatments(connection: Connection, number: str) -> tuple[str, ...]:
    """Refs of the treatments of an object that are not ended, the newest first."""
    owner = find_object(connection, number).id
    statement = select(treatment.c.ref).where(treatment.c.object_id == owner, _NOT_ENDED)
    return tuple(connection.execute(statement.order_by(treatment.c.id.desc())).scalars())


def _named(connection: Connection, record: int) -> tuple[set[str], set[str]]:
    """Folded marks of the places and of the components of a planned step."""
    at = (
        select(place.c.mark_folded)
        .join(planned_step_place, planned_step_place.c.place_id == place.c.id)
        .where(planned_step_place.c.planned_step_id == record)
    )
    on = (
        select(component.c.mark_folded)
        .join(planned_step_component, planned_step_component.c.component_id == component.c.id)
        .where(planned_step_component.c.planned_step_id == record)
    )
    return set(connection.execute(at).scalars()), set(connection.execute(on).scalars())


def _borne_by(connection: Connection, owner: int, places: set[str]) -> set[str]:
    """Folded marks of the components that bear these places."""
    statement = (
        select(component.c.mark_folded)
        .join(place, place.c.component_id == component.c.id)
        .where(place.c.object_id == owner, place.c.mark_folded.in_(places))
    )
    return set(connection.execute(statement).scalars())
