"""A plan held against the steps on record: what is done, done otherwise, or not on record.

A planned step without a record may have been carried out all the same: it reads "no step on
record", never "not done".
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from conservedb.knowledge.departures import departures, differs
from conservedb.knowledge.planned_work import PlannedStep, RecordedStep, WorkPlan

NO_STEP = "no step on record"
IN_PART = "in part"
DONE = "done"
OTHERWISE = "done otherwise"
UNEXPLAINED = "done otherwise, no reason recorded"

STATES = {
    NO_STEP: "No step on record carries it out.",
    IN_PART: "A step is on record, but not for every place or component planned.",
    DONE: "A step is on record for all that was planned.",
    OTHERWISE: "Carried out otherwise than planned, and why is recorded.",
    UNEXPLAINED: "Carried out otherwise than planned, and why is not recorded.",
}
"""Every word that `StepProgress.state` may be, each with what it means."""


@dataclass(frozen=True, slots=True)
class StepProgress:
    """How a planned step stands.

    Args:
        by: the recorded steps that carry it out, in the order given.
        places, components: those planned that no such step names.
    """

    planned: PlannedStep
    state: str
    sentence: str
    by: tuple[str, ...] = ()
    places: tuple[str, ...] = ()
    components: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Unplanned:
    """A recorded step that carries out no step of the plan, and how that is accounted for."""

    step: RecordedStep
    sentence: str


@dataclass(frozen=True, slots=True)
class WorkDone:
    """The plan's steps in their order, and the steps that were not planned."""

    steps: tuple[StepProgress, ...]
    unplanned: tuple[Unplanned, ...]

    @property
    def places(self) -> tuple[str, ...]:
        """The places at which a planned step is still without a record, in the plan's order."""
        return tuple(dict.fromkeys(place for one in self.steps for place in one.places))

    @property
    def components(self) -> tuple[str, ...]:
        """The components at which a planned step is still without a record."""
        return tuple(dict.fromkeys(mark for one in self.steps for mark in one.components))


def work_done(plan: WorkPlan, steps: Sequence[RecordedStep]) -> WorkDone:
    """What of a plan is on record as done, and what was done beside it.

    Args:
        plan: the version of the plan that is followed.
        steps: the recorded steps of its treatment.
    """
    progress = tuple(
        _progress(planned, [step for step in steps if step.planned == planned.ref])
        for planned in plan.steps
    )
    beside = (step for step in steps if plan.step(step.planned) is None)
    return WorkDone(progress, tuple(Unplanned(one, _not_planned(one, plan)) for one in beside))


def _progress(planned: PlannedStep, done: Sequence[RecordedStep]) -> StepProgress:
    reached = {place for step in done for place in step.places}
    touched = {mark for step in done for mark in _touched(step)}
    places = tuple(place for place in planned.places if place not in reached)
    components = tuple(mark for mark in planned.components if mark not in touched)
    state = _state(planned, done, bool(places or components))
    return StepProgress(
        planned,
        state,
        _sentence(planned, done, (*places, *components)),
        tuple(step.ref for step in done),
        places,
        components,
    )


def _touched(step: RecordedStep) -> tuple[str, ...]:
    """The components that a step names, and those that bear its places."""
    return (*step.components, *(mark for some in step.borne_by.values() for mark in some))


def deviates(planned: PlannedStep, step: RecordedStep) -> bool:
    """Whether a step is on record as other than planned: by its own word, or by what it was."""
    return bool(step.deviation) or differs(planned, step)


def _state(planned: PlannedStep, done: Sequence[RecordedStep], open_still: bool) -> str:
    if not done:
        return NO_STEP
    other = [step for step in done if deviates(planned, step)]
    if other:
        return OTHERWISE if all(step.deviation for step in other) else UNEXPLAINED
    return IN_PART if open_still else DONE


def _sentence(
    planned: PlannedStep,
    done: Sequence[RecordedStep],
    missing: Sequence[str],
) -> str:
    if not done:
        return f"{_label(planned)}: no step on record."
    parts = [_deed(planned, step) for step in done]
    if missing:
        parts.append(f"no step on record names {', '.join(missing)}")
    return f"{_label(planned)}: {'; '.join(parts)}."


def _label(planned: PlannedStep) -> str:
    return f"{planned.ref} ({planned.kind or 'kind not recorded'})"


def _deed(planned: PlannedStep, step: RecordedStep) -> str:
    """One recorded step in words: done or done otherwise, by which, when, and why."""
    when = step.shown or "date not recorded"
    if not deviates(planned, step):
        kind = "" if step.kind else ", its kind not recorded"
        return f"done by {step.ref}, {when}{kind}"
    how = "; ".join(one.clause for one in departures(planned, step) if one.certain)
    why = step.deviation or "no reason recorded"
    return f"done otherwise by {step.ref}, {when}: {f'{how}: ' if how else ''}{why}"


def _not_planned(step: RecordedStep, plan: WorkPlan) -> str:
    """Why a step stands beside the plan; only a planned course can be deviated from."""
    what = f"{step.ref} ({step.kind or 'kind not recorded'}, {step.shown or 'date not recorded'})"
    if step.planned:
        return f"{what} carries out {step.planned}, which is no step of version {plan.version}."
    if step.standing in ("routine care", "first aid", "historic"):
        return f"{what} was not planned: {step.standing}."
    return f"{what} was not planned: {step.deviation or 'no reason recorded'}."
