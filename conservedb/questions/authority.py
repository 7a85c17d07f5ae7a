"""Whether a step is authorised, as far as the record shows."""

from __future__ import annotations

from typing import NamedTuple

from sqlalchemy import Connection

from conservedb.knowledge.authority import Authority, authority
from conservedb.knowledge.departures import Departure, departures
from conservedb.knowledge.planned_work import RecordedStep, WorkPlan
from conservedb.questions.authority_records import ONE_STEP, STATEMENTS, Step, Work
from conservedb.questions.basics import NoSuch

__all__ = ["STATEMENTS", "authority_in", "authority_to_begin", "how_step_stands"]


class Stands(NamedTuple):
    """A recorded step, what authorises it, and how it departs from what was planned."""

    made: RecordedStep
    authority: Authority
    departures: tuple[Departure, ...]


def how_step_stands(connection: Connection, object_id: int, intervention_id: int) -> Stands:
    """What a recorded step needs, what of that is on record, and whether it is as planned.

    Reads in the caller's transaction, so that it can be asked before a step is kept for good.

    Raises:
        NoSuch: the object has no such intervention.
    """
    work = ONE_STEP.work(connection, object_id, intervention_id)
    if not work.steps:
        raise NoSuch("intervention with the key", str(intervention_id))
    step = work.steps[0]
    plan = work.plan_of(step)
    planned = plan.step(step.made.planned) if plan is not None else None
    beside = () if planned is None else departures(planned, step.made)
    return Stands(step.made, authority_in(work, step), beside)


def authority_in(work: Work, step: Step) -> Authority:
    """What a step needs and has, from records read before."""
    decisions = work.decisions_on(step.treatment, step.id)
    return authority(work.plan_of(step), step.made, decisions, work.standing, work.needed)


def authority_to_begin(work: Work, treatment: int, plan: WorkPlan, step: RecordedStep) -> Authority:
    """What a planned step that has no record would need if it were begun as `step` says."""
    decisions = work.decisions_on(treatment, 0)
    return authority(plan, step, decisions, work.standing, work.needed)
