"""The next number of what is counted within another record: versions of a plan, its steps."""

from __future__ import annotations

from sqlalchemy import Connection, func, select

from conservedb.questions.naming import find_object
from conservedb.records.plans import plan, planned_step
from conservedb.records.treatments import treatment


def next_version(connection: Connection, number: str, ref: str) -> str:
    """The version of the next plan for a treatment of an object."""
    owner = find_object(connection, number).id
    statement = (
        select(func.max(plan.c.version))
        .join(treatment, treatment.c.id == plan.c.treatment_id)
        .where(treatment.c.object_id == owner, treatment.c.ref == ref.strip())
    )
    return str((connection.execute(statement).scalar() or 0) + 1)


def next_position(connection: Connection, number: str, ref: str) -> str:
    """The position of the next step of a plan of an object."""
    owner = find_object(connection, number).id
    statement = (
        select(func.max(planned_step.c.position))
        .join(plan, plan.c.id == planned_step.c.plan_id)
        .where(plan.c.object_id == owner, plan.c.ref == ref.strip())
    )
    return str((connection.execute(statement).scalar() or 0) + 1)
