"""The parts of a treatment in full, as blocks of labelled lines."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from conservedb.questions.treatment_answers import (
    DecisionEntry,
    Observation,
    PlanEntry,
    PlannedEntry,
    StepEntry,
    TreatmentAnswer,
)
from conservedb.questions.treatment_words import decision_words, recorded_over
from conservedb.questions.wording import hands, listed
from conservedb.tui import wording
from conservedb.tui.details import Fact, rival_facts
from conservedb.tui.plan_facts import Blocks


def frame_facts(answer: TreatmentAnswer) -> Blocks:
    """What frames a treatment: why, by whom, what came of it, what is next."""
    passed = "; the day has passed" if answer.check_passed else ""
    check = answer.next_check.said if answer.next_check.recorded else "not recorded"
    about: tuple[Fact, ...] = (
        ("treatment", f"{answer.ref} {answer.title}".strip()),
        ("state", answer.state),
        ("status", answer.status),
        ("purpose", answer.purpose or "not recorded"),
        ("led by", answer.lead or "not recorded"),
        ("note", answer.note),
    )
    after = (
        ("result", answer.result or "not recorded"),
        ("recommended", answer.recommendations or "not recorded"),
        ("next check", f"{check}{passed}"),
    )
    blocks = (about, after, tuple(rival_facts(answer.rivals)))
    return tuple(block for block in blocks if block)


def step_facts(step: StepEntry) -> Blocks:
    """A step on record: both its days, how it was done, by what leave, and all that it did."""
    written = step.recorded.said if step.recorded.recorded else "day not recorded"
    by = f"by {step.recorded_by}" if step.recorded_by else "by whom, not recorded"
    done = ", ".join(word for word in (step.date.said, step.time_of_day) if word)
    about: tuple[Fact, ...] = (
        ("step", f"{step.ref} {step.sentence}"),
        ("done", done),
        ("that is", wording.bounds_words(step.date)),
        ("dated by", step.date_basis),
        ("by", hands(step.people)),
        ("written down", f"{written}, {by}"),
        ("", recorded_over(step.recorded_over)),
        ("aims", listed(step.aims)),
        ("circumstances", step.circumstances),
        ("methods", step.methods),
        ("parts", ", ".join(step.components)),
        ("locations", ", ".join(step.places)),
        ("source", wording.source_or_not(step.source)),
        ("note", step.note),
    )
    leave: tuple[Fact, ...] = (
        ("standing", step.standing or "not recorded"),
        ("carries out", step.planned),
        ("beside", step.beside),
        ("deviation", step.deviation),
        ("needs", listed(step.needed)),
        *(("authority", one.sentence) for one in step.findings),
        ("start", step.start.sentence if step.start is not None else ""),
        *_early(step),
    )
    blocks = (about, leave, tuple(_did(step)))
    seen = (tuple(observation_facts(one)) for one in step.observations)
    return tuple(block for block in (*blocks, *seen, tuple(rival_facts(step.rivals))) if block)


def _early(step: StepEntry) -> Iterator[Fact]:
    """Why it was begun early, where the sentence about the start does not say it."""
    if step.start is None or step.unauthorised_reason not in step.start.sentence:
        yield "begun early", step.unauthorised_reason
        yield "says", step.unauthorised_by


def _did(step: StepEntry) -> Iterator[Fact]:
    for line in step.lines:
        told = f"({line.ref})" in line.sentence
        yield line.kind, line.sentence if told else f"{line.sentence} ({line.ref})"
        for detail in line.detail:
            yield "", detail


def observation_facts(one: Observation) -> Iterator[Fact]:
    """What was seen, and apart from it what is presumed."""
    yield "observation", one.ref
    yield "where", one.where or "the object as a whole"
    yield "condition", one.condition or "not recorded"
    yield "seen", one.seen or "not recorded"
    yield "presumed", one.presumed
    yield "extent", one.extent
    yield "date", one.date.said if one.date.recorded else ""
    yield "by", hands(one.people, "")
    yield "source", wording.source_or_not(one.source)
    yield "note", one.note


def plan_blocks(plan: PlanEntry) -> Blocks:
    """A version of the plan with its reasons, and the decisions on it."""
    about: tuple[Fact, ...] = (
        ("plan", f"{plan.ref}, version {plan.version}"),
        ("date", plan.date.said),
        ("authors", hands(plan.authors, "not recorded")),
        ("aims", listed(plan.aims)),
        ("justification", plan.justification or "not recorded"),
        ("alternatives", plan.alternatives or "not recorded"),
        ("risks", plan.risks or "not recorded"),
        ("source", wording.source_or_not(plan.source)),
        ("note", plan.note),
    )
    return about, *(tuple(decision_facts(one)) for one in plan.decisions)


def planned_facts(step: PlannedEntry) -> tuple[Fact, ...]:
    """A planned step, how it stands, and what it would need today."""
    return (
        ("planned step", f"{step.ref} {step.sentence}"),
        ("parts", ", ".join(step.components)),
        ("locations", ", ".join(step.places)),
        ("note", step.note),
        ("progress", step.progress),
        *(("begun today", one.sentence) for one in step.to_begin),
    )


def decision_facts(one: DecisionEntry) -> Iterator[Fact]:
    """A decision with its conditions, its end and its evidence."""
    yield "decision", f"{one.ref}: {decision_words(one)}"
    yield "on", ", ".join(word for word in (one.intervention, _version(one)) if word)
    yield "scope", one.scope
    yield "conditions", one.conditions
    yield "expires", one.expires.said if one.expires.recorded else "no end on record"
    yield "evidence", one.evidence or "not recorded"
    yield "source", wording.source_or_not(one.source)
    yield "note", one.note


def _version(one: DecisionEntry) -> str:
    return f"version {one.version} of the plan" if one.version is not None else ""


def guideline_facts(answer: TreatmentAnswer, named: Iterable[str]) -> tuple[Fact, ...]:
    """The guidelines of those short names, in full."""
    full = dict(answer.guidelines)
    return tuple((name, full.get(name, "")) for name in named)
