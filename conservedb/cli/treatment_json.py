"""JSON of `conservedb treatment`, as the command documents it."""

from __future__ import annotations

from dataclasses import asdict

from conservedb.cli import json_shapes as shape
from conservedb.cli.json_shapes import Json
from conservedb.questions.treatment_answers import (
    DecisionEntry,
    Observation,
    PlanEntry,
    PlannedEntry,
    StepEntry,
    TreatmentAnswer,
    TreatmentsAnswer,
)


def _fields(record: object, names: str) -> Json:
    """Some fields of a record, as they are; lists where they are lists."""
    held = {name: getattr(record, name) for name in names.split()}
    return {name: list(one) if isinstance(one, tuple) else one for name, one in held.items()}


def treatments_json(answer: TreatmentsAnswer) -> Json:
    """The treatments of an object as JSON."""
    row = "ref title state status lead versions authorised steps"
    return {
        "object": answer.object,
        "title": answer.title,
        "treatments": [_fields(one, row) for one in answer.rows],
    }


def treatment_json(answer: TreatmentAnswer) -> Json:
    """One treatment as JSON."""
    return {
        **_fields(answer, "object object_title ref title purpose status state"),
        "begun": shape.date(answer.begun),
        "ended": shape.date(answer.ended),
        **_fields(answer, "closed lead note result recommendations"),
        "next_check": shape.date(answer.next_check),
        "check_passed": answer.check_passed,
        "plans": [_plan(one) for one in answer.plans],
        "steps": [_step(one) for one in answer.steps],
        "decisions": [_decision(one) for one in answer.decisions],
        "to_ratify": list(answer.to_ratify),
        "asked": [
            {"of": group.of, "asked": [asdict(one) for one in group.asked]}
            for group in answer.asked
        ],
        "guidelines": dict(answer.guidelines),
        "rivals": [shape.rival(one) for one in answer.rivals],
    }


def _plan(plan: PlanEntry) -> Json:
    return {
        **_fields(plan, "ref version aims justification alternatives risks note"),
        "date": shape.date(plan.date),
        "authors": shape.people(plan.authors),
        "source": shape.source(plan.source),
        "decisions": [_decision(one) for one in plan.decisions],
        "steps": [_planned(one) for one in plan.steps],
    }


def _planned(step: PlannedEntry) -> Json:
    names = "ref position kind sentence components places note state progress by"
    return _fields(step, names) | {"to_begin": [asdict(one) for one in step.to_begin]}


def _decision(one: DecisionEntry) -> Json:
    names = "ref decision capacity person version intervention scope steps conditions evidence note"
    return {
        **_fields(one, names),
        "date": shape.date(one.date),
        "expires": shape.date(one.expires),
        "source": shape.source(one.source),
    }


def _step(step: StepEntry) -> Json:
    names = (
        "ref kind sentence time_of_day date_basis recorded_by recorded_over aims standing planned"
        " beside deviation unauthorised_reason unauthorised_by circumstances methods components"
        " places note needed"
    )
    return {
        **_fields(step, names),
        "date": shape.date(step.date),
        "recorded": shape.date(step.recorded),
        "people": shape.people(step.people),
        "source": shape.source(step.source),
        "authority": [asdict(one) for one in step.findings],
        "start": asdict(step.start) if step.start is not None else None,
        "did": [_fields(one, "kind ref sentence detail") for one in step.lines],
        "observations": [_observation(one) for one in step.observations],
        "rivals": [shape.rival(one) for one in step.rivals],
    }


def _observation(one: Observation) -> Json:
    return {
        **_fields(one, "ref where condition seen presumed extent note"),
        "date": shape.date(one.date),
        "people": shape.people(one.people),
        "source": shape.source(one.source),
    }
