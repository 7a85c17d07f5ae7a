"""What guidelines still ask for in the record of a treatment, by the record that lacks it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace

from conservedb.knowledge.due import Asked, fields_asked, photographs_asked
from conservedb.knowledge.guidelines import CLOSED, EXAMINATION, IN_PROGRESS, PLAN, SOURCES
from conservedb.knowledge.work_done import OTHERWISE, UNEXPLAINED
from conservedb.questions.asking import Row
from conservedb.questions.basics import Source
from conservedb.questions.treatment_answers import (
    AskedOf,
    PlanEntry,
    StepEntry,
    TreatmentAnswer,
)
from conservedb.questions.treatment_parts import Life

Recorded = Mapping[str, object]
Pairs = list[tuple[str, object]]
"""References of records, each with what it holds in a field."""
_AUTHORISED = ("in force", "ratified", "standing approval", "none needed", "historic")


def asked_of(answer: TreatmentAnswer, life: Life, owner: Row, has: Row) -> tuple[AskedOf, ...]:
    """Of each examination, the newest plan and the treatment itself, what is asked for.

    Args:
        owner: the row of the object.
        has: whether the object has components, dimensions, warnings and past treatment on record.
    """
    found = [
        AskedOf(
            f"examination {one.ref}",
            _asked(EXAMINATION, _examined(answer, one, owner, has), _seen(answer, one, life)),
        )
        for one in answer.steps
        if one.kind == "examine"
    ]
    if answer.plans:
        newest = answer.plans[-1]
        asked = _asked(PLAN, _planned(answer, newest), {})
        found.append(AskedOf(f"plan {newest.ref}, version {newest.version}", asked))
    stage = CLOSED if answer.closed else IN_PROGRESS
    if answer.closed or answer.begun.recorded or answer.steps:
        asked = _asked(stage, _treated(answer), {**_worked(answer, life), **_matter(life)})
        found.append(AskedOf(f"{stage} {answer.ref}", asked))
    else:
        stage = PLAN
    samples = bool(life.told.findings.samples)
    photographs = photographs_asked(stage, _photographs(answer), samples=samples)
    found.append(AskedOf("photographs", photographs))
    return tuple(one for one in found if one.asked)


def guidelines_named(asked: Iterable[AskedOf]) -> tuple[tuple[str, str], ...]:
    """The guidelines that ask, short and in full, in the order of their names."""
    named = {name for one in asked for each in one.asked for name in each.source.split("; ")}
    return tuple((name, SOURCES[name]) for name in sorted(named))


def _asked(stage: str, recorded: Recorded, each: Mapping[str, Pairs]) -> tuple[Asked, ...]:
    """What is asked for at a stage; of what there are many, with those that lack it.

    Args:
        recorded: fields of which there is one.
        each: field -> reference and value of every record that has it.
    """
    lacking = {field: [ref for ref, held in pairs if not held] for field, pairs in each.items()}
    full = {field: True if pairs and not lacking[field] else None for field, pairs in each.items()}
    return tuple(
        replace(one, sentence=f"{one.sentence.removesuffix('.')}: {', '.join(refs)}.")
        if (refs := lacking.get(one.field))
        else one
        for one in fields_asked(stage, {**recorded, **full})
    )


def _examined(answer: TreatmentAnswer, step: StepEntry, owner: Row, has: Row) -> Recorded:
    return {
        "number": owner.number,
        "title": owner.title or owner.kind,
        "maker": owner.maker,
        "made": owner.made_words or owner.made_edtf,
        "dimensions": has.dimensions or None,
        "components": has.components or None,
        "purpose": answer.purpose,
        "date": step.date.recorded or None,
        "people": step.people,
        "recorded_by": step.recorded_by,
        "recorded": step.recorded.recorded or None,
        "circumstances": step.circumstances,
        "methods": step.methods,
        "past_treatment": has.past_treatment or None,
        "warnings": has.warnings or None,
    }


def _seen(answer: TreatmentAnswer, step: StepEntry, life: Life) -> dict[str, Pairs]:
    """What an examination observed and sampled."""
    samples = [row for row in life.told.findings.samples if row.intervention == step.ref]
    return {
        "seen": [(one.ref, one.seen) for one in step.observations],
        "condition": [(one.ref, one.condition) for one in step.observations],
        **_sampled(samples, answer),
    }


def _planned(answer: TreatmentAnswer, plan: PlanEntry) -> Recorded:
    return {
        "number": answer.object,
        "date": plan.date.said if plan.date.recorded else "",
        "people": plan.authors,
        "aims": plan.aims,
        "justification": plan.justification,
        "alternatives": plan.alternatives,
        "risks": plan.risks,
        "planned_steps": plan.steps,
        "authorisation": any(
            one.person and one.date.recorded and one.decision for one in plan.decisions
        )
        or None,
    }


def _treated(answer: TreatmentAnswer) -> Recorded:
    states = {step.state for plan in answer.plans[-1:] for step in plan.steps}
    recorded: dict[str, object] = {
        "number": answer.object,
        "purpose": answer.purpose,
        "begun": answer.begun.recorded or None,
        "ended": answer.ended.recorded or None,
        "result": answer.result,
        "report": any("report" in one.kind.casefold() for one in _sources(answer)) or None,
        "recommendations": answer.recommendations,
        "next_check": answer.next_check.recorded or None,
    }
    if {OTHERWISE, UNEXPLAINED} & states:
        recorded["deviation"] = None if UNEXPLAINED in states else True
    return recorded


def _worked(answer: TreatmentAnswer, life: Life) -> dict[str, Pairs]:
    """What is asked of every step; leave only of those that are more than an examination."""
    steps = answer.steps
    return {
        "recorded_by": [(one.ref, one.recorded_by) for one in steps],
        "recorded": [(one.ref, one.recorded.recorded) for one in steps],
        "aims": [(one.ref, one.aims) for one in steps],
        "authorisation": [(one.ref, _authorised(one)) for one in steps if one.kind != "examine"],
        "step_date": [(one.ref, one.date.recorded) for one in steps],
        "step_people": [(one.ref, one.people) for one in steps],
        "technique": [(row.ref, row.technique) for row in life.told.interventions],
        **_sampled(life.told.findings.samples, answer),
    }


def _matter(life: Life) -> dict[str, Pairs]:
    """What was added and what was taken off, asked for only where something was."""
    found: dict[str, Pairs] = {}
    laid = [row for row in life.told.layers if row.id in life.laid]
    if laid:
        candidates = {layer for layer, _ in life.told.candidates}
        found["material_added"] = [(row.ref, row.material) for row in laid]
        found["concentration"] = [(row.ref, row.concentration) for row in laid]
        found["carrier"] = [(row.ref, row.carrier) for row in life.laid.values()]
        found["place"] = [(row.ref, row.place or row.id in candidates) for row in laid]
    off = [row for row in life.told.removals if row.extent != "attempted"]
    if off:
        names = {row.id: row.material for row in life.told.layers}
        found["material_removed"] = [(row.ref, names.get(row.layer_id)) for row in off]
        found["kept_where"] = [(row.ref, life.removed[row.id].kept_where) for row in off]
    return found


def _sampled(samples: Iterable[Row], answer: TreatmentAnswer) -> dict[str, Pairs]:
    """What is asked of samples, only where some were taken."""
    taken = [row for row in samples if row.kind != "removed matter"]
    if not taken:
        return {}
    leave = {one.ref: _authorised(one) for one in answer.steps}
    return {
        "sample_place": [(row.ref, row.place or row.component) for row in taken],
        "sample_consent": [(row.ref, leave.get(row.intervention)) for row in taken],
        "sample_remainder": [(row.ref, row.box or row.remainder) for row in taken],
    }


def _authorised(step: StepEntry) -> bool:
    """Whether leave for a step is on record, or none is needed; what is in doubt is not."""
    return bool(step.findings) and all(one.outcome in _AUTHORISED for one in step.findings)


def _photographs(answer: TreatmentAnswer) -> int:
    return sum(one.kind.casefold().startswith("photo") for one in _sources(answer))


def _sources(answer: TreatmentAnswer) -> set[Source]:
    """The papers that the record of a treatment cites."""
    decisions = [*answer.decisions, *(one for plan in answer.plans for one in plan.decisions)]
    cited = [one.source for one in answer.plans] + [one.source for one in decisions]
    for step in answer.steps:
        cited += [step.source, *(one.source for one in step.observations)]
    return {one for one in cited if one is not None}
