"""The next number of what is counted within another record: versions of a plan, its steps."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Column, ColumnElement, Connection, func, select

from conservedb.questions.naming import find_object
from conservedb.records.plans import plan, planned_step
from conservedb.records.treatments import treatment


def next_version(connection: Connection, number: str, ref: str) -> str:
    """The version of the next plan for a treatment of an object."""
    statement = (
        select(func.max(plan.c.version))
        .join(treatment, treatment.c.id == plan.c.treatment_id)
        .where(_of(connection, number, treatment.c.object_id), treatment.c.ref == ref.strip())
    )
    return str((connection.execute(statement).scalar() or 0) + 1)


def next_position(connection: Connection, number: str, ref: str) -> str:
    """The position of the next step of a plan of an object."""
    statement = (
        select(func.max(planned_step.c.position))
        .join(plan, plan.c.id == planned_step.c.plan_id)
        .where(_of(connection, number, plan.c.object_id), plan.c.ref == ref.strip())
    )
    return str((connection.execute(statement).scalar() or 0) + 1)


def _of(connection: Connection, number: str, column: Column[Any]) -> ColumnElement[bool]:
    return column == find_object(connection, number).id
