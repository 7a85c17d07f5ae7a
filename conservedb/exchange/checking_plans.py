"""What plans and authorisations must be to each other: one plan a version, steps of one plan."""

from __future__ import annotations

from sqlalchemy import Connection, select

from conservedb.exchange.stored import links_of
from conservedb.exchange.subjects import BY_NAME
from conservedb.exchange.taking import Taking
from conservedb.records.plans import plan, planned_step


def check_plans(connection: Connection, taking: Taking) -> None:
    """Charge plans whose version is taken, and authorisations of steps of another plan."""
    _versions(connection, taking)
    _steps(connection, taking)


def _versions(connection: Connection, taking: Taking) -> None:
    subject = BY_NAME["plans"]
    records = taking.records.get(subject.name, {})
    place, version = subject.position["treatment_id"], subject.position["version"]
    taken: set[tuple[int, int]] = set()
    for object_id in {r.values[0] for r in records.values() if not r.bad}:
        rows = connection.execute(
            select(plan.c.id, plan.c.treatment_id, plan.c.version).where(
                plan.c.object_id == object_id
            )
        )
        taken |= {(treatment, number) for id_, treatment, number in rows if id_ not in records}
    for record in records.values():
        if record.bad:
            continue
        treatment, number = record.values[place], record.values[version]
        if (treatment, number) in taken:
            name = taking.keys.name_of("treatments", treatment)
            reason = f"is there already: treatment {name} has another plan of this version"
            remedy = "give the later plan the next version"
            taking.charge(subject, record, "version", str(number), reason, remedy)
        taken.add((treatment, number))


def _steps(connection: Connection, taking: Taking) -> None:
    subject = BY_NAME["authorisations"]
    (listed,) = subject.lists
    for record in taking.records.get(subject.name, {}).values():
        meant = None if record.bad else record.values[subject.position["plan_id"]]
        if meant is None:
            continue
        steps = record.links.get(listed.name)
        if steps is None:
            steps = links_of(connection, subject, listed, record.id)
        for (step,) in steps:
            other = _plan_of(connection, taking, step)
            if other is not None and other != meant:
                name = taking.keys.name_of("planned_steps", step)
                reason = f"is a step of plan {taking.keys.name_of('plans', other)}"
                remedy = "name steps of the plan that is authorised"
                taking.charge(subject, record, listed.name, name, reason, remedy)
                break


def _plan_of(connection: Connection, taking: Taking, step: int) -> int | None:
    subject = BY_NAME["planned_steps"]
    record = taking.records.get(subject.name, {}).get(step)
    if record is not None:
        found: int | None = record.values[subject.position["plan_id"]]
        return found
    statement = select(planned_step.c.plan_id).where(planned_step.c.id == step)
    return connection.execute(statement).scalar()
