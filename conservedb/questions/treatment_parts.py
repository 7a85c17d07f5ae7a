"""The steps, plans and decisions of a treatment, made from what is on record."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from sqlalchemy import Connection

from conservedb.dates import is_known
from conservedb.knowledge.work_done import WorkDone, work_done
from conservedb.questions import finding_words, history_words
from conservedb.questions import treatment_records as records
from conservedb.questions import treatment_words as words
from conservedb.questions.asking import Row, Rows
from conservedb.questions.authority import authority_in
from conservedb.questions.authority_records import ONE_TREATMENT, Step, Work
from conservedb.questions.basics import Rival
from conservedb.questions.evidence import source_of, when
from conservedb.questions.finding_records import Findings
from conservedb.questions.history import deed_rivals
from conservedb.questions.history_records import Records
from conservedb.questions.plan_records import Plans
from conservedb.questions.treatment_answers import (
    DecisionEntry,
    Line,
    Observation,
    PlanEntry,
    PlannedEntry,
    StepEntry,
)
from conservedb.store.keys import sort_key

_ASKED = records.ASKED
_STEP = _ASKED.rows["interventions"]
_FOUND = _ASKED.findings.rows["observation"]


@dataclass(frozen=True, slots=True)
class Life:
    """The rows about one treatment."""

    id: int
    told: Records
    work: Work
    steps: Mapping[int, Row]
    laid: Mapping[int, Row]
    removed: Mapping[int, Row]
    used: Mapping[str, Row]


def life_of(connection: Connection, owner: int, treatment: int) -> Life:
    """Everything on record about a treatment of an object."""
    asked = {"object": owner, "scope": treatment}
    return Life(
        treatment,
        _ASKED.records(connection, treatment),
        ONE_TREATMENT.work(connection, owner, treatment),
        {row.id: row for row in records.STEPS.all(connection, **asked)},
        {row.id: row for row in records.LAID.all(connection, **asked)},
        {row.id: row for row in records.REMOVED.all(connection, **asked)},
        {row.ref: row for row in records.USED.all(connection, **asked)},
    )


# -- steps ----------------------------------------------------------------------------------


def step_entries(life: Life, beside: Mapping[str, str]) -> tuple[StepEntry, ...]:
    """The steps in order of time."""
    told, parts = life.told, _marks(life.told.parts_touched)
    lines, seen = _lines(life), _observations(life.told.findings)
    aims = _marks(life.told.aims)
    made, rivals = {one.id: one for one in life.work.steps}, deed_rivals(told)
    entries = [
        _step(
            life,
            row,
            made[row.id],
            lines[row.id],
            seen[row.id],
            parts=parts[row.id],
            aims=aims[row.id],
            beside=beside.get(row.ref, ""),
            rivals=rivals[row.id],
        )
        for row in told.interventions
    ]
    return tuple(sorted(entries, key=_in_time))


def _step(
    life: Life,
    row: Row,
    step: Step,
    lines: list[Line],
    seen: list[Observation],
    *,
    parts: Sequence[str],
    aims: Sequence[str],
    beside: str,
    rivals: Sequence[Rival],
) -> StepEntry:
    more, made = life.steps[row.id], step.made
    found = authority_in(life.work, step)
    return StepEntry(
        ref=row.ref,
        kind=row.kind,
        sentence=history_words.sentence(history_words.done(row)),
        date=when(row, _STEP.at("date_words")),
        time_of_day=more.time_of_day,
        date_basis=row.date_basis,
        people=life.told.hands.get(row.id, ()),
        recorded=when(more, records.STEPS.at("recorded_words")),
        recorded_by=more.recorded_by,
        recorded_over=more.recorded_over,
        aims=tuple(aims),
        standing=made.standing,
        planned=made.planned,
        deviation=made.deviation,
        unauthorised_reason=made.unauthorised_reason,
        unauthorised_by=made.unauthorised_by,
        circumstances=more.circumstances,
        methods=more.methods,
        components=tuple(sorted(set(parts), key=sort_key)),
        places=tuple(sorted(made.places, key=sort_key)),
        source=source_of(row, _STEP.at("source_ref")),
        note=row.note,
        needed=found.needed,
        findings=found.findings,
        start=found.start,
        beside=beside,
        lines=tuple(lines),
        observations=tuple(seen),
        rivals=tuple(rivals),
    )


def _in_time(one: StepEntry) -> tuple[int, int]:
    """By the first day it may lie on; where that is not known, by the last."""
    first, last = one.date.earliest, one.date.latest
    return (first if is_known(first) else last, last)


def _marks(rows: Rows) -> dict[int, list[str]]:
    found: dict[int, list[str]] = defaultdict(list)
    for owner, word in rows:
        found[owner].append(word)
    return found


def _lines(life: Life) -> dict[int, list[Line]]:
    """What each step laid, took off, used, moved, read, took and tried, in a line each."""
    told, found = life.told, defaultdict[int, list[Line]](list)
    several = _marks(told.candidates)
    names = {
        row.id: history_words.layer_name(row, several.get(row.id) or [p for p in (row.place,) if p])
        for row in told.layers
    }

    def add(kind: str, row: Row, sentence: str, detail: Iterable[str] = ()) -> None:
        said = history_words.sentence(sentence)
        found[row.intervention_id].append(Line(kind, row.ref, said, tuple(detail)))

    for row in told.agents:
        add("agent", row, history_words.used(row), words.used_details(life.used[row.ref]))
    for row in told.removals:
        said = history_words.removed(row, names[row.layer_id])
        add("removal", row, said, words.removed_details(life.removed[row.id]))
    for row in told.layers:
        if row.id in life.laid:
            said = history_words.laid(row, names[row.id])
            add("layer", row, said, words.laid_details(life.laid[row.id]))
    for row in told.events:
        add("joint", row, history_words.joint(row))
    for row in told.findings.readings:
        add("reading", row, finding_words.measured(row))
    for row in told.findings.samples:
        add("sample", row, finding_words.sampled(row), finding_words.sampled_details(row))
    for row in told.findings.tests:
        said = finding_words.tested(row, told.findings.agents.get(row.id, ()))
        add("spot test", row, said, finding_words.tested_details(row))
    return found


def _observations(findings: Findings) -> dict[int, list[Observation]]:
    found: dict[int, list[Observation]] = defaultdict(list)
    people = findings.people["observation"]
    for row in findings.observations:
        found[row.intervention_id].append(
            Observation(
                row.ref,
                when(row, _FOUND.at("date_words")),
                finding_words.where(row),
                row.condition,
                row.seen,
                row.presumed,
                row.extent,
                people.get(row.id, ()),
                source_of(row, _FOUND.at("source_ref")),
                row.note,
            )
        )
    return found


# -- plans and decisions --------------------------------------------------------------------


def progress(life: Life) -> dict[str, WorkDone]:
    """Each version held against the steps, by its ref.

    An examination that carries out no planned step is no work beside the plan: it is left out.
    """
    made = [one.made for one in life.work.steps]
    steps = [one for one in made if one.planned or one.kind != "examine"]
    return {one.plan.ref: work_done(one.plan, steps) for one in life.work.versions}


def plan_entry(
    row: Row, plans: Plans, done: WorkDone, decisions: Sequence[DecisionEntry]
) -> PlanEntry:
    """A version of the plan; what its steps would need today is filled in afterwards."""
    at = _ASKED.plans.plans
    rows = {step.ref: step for step in plans.steps.get(row.id, ())}
    steps = (
        PlannedEntry(
            one.planned.ref,
            rows[one.planned.ref].position,
            history_words.sentence(finding_words.planned(rows[one.planned.ref])),
            one.planned.kind,
            one.planned.components,
            one.planned.places,
            rows[one.planned.ref].note,
            one.state,
            one.sentence,
            one.by,
        )
        for one in done.steps
    )
    return PlanEntry(
        row.ref,
        row.version,
        when(row, at.at("date_words")),
        plans.authors.get(row.id, ()),
        plans.aims.get(row.id, ()),
        row.justification,
        row.alternatives,
        row.risks,
        source_of(row, at.at("source_ref")),
        row.note,
        tuple(steps),
        tuple(decisions),
    )


def decision_entries(plans: Plans) -> dict[int | None, tuple[DecisionEntry, ...]]:
    """Decisions by the key of the plan that they are about; None where they name no plan."""
    found: dict[int | None, tuple[DecisionEntry, ...]] = defaultdict(tuple)
    asked = _ASKED.plans.decisions
    for row in plans.decisions:
        found[row.plan_id] += (
            DecisionEntry(
                row.ref,
                row.decision,
                row.capacity,
                row.person,
                row.version,
                row.intervention,
                when(row, asked.at("date_words")),
                when(row, asked.at("expires_words")),
                row.scope,
                plans.limited.get(row.id, ()),
                row.conditions,
                row.evidence,
                source_of(row, asked.at("source_ref")),
                row.note,
            ),
        )
    return found
