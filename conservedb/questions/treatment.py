"""The treatments of an object, and the life of one: planned, authorised, done, to be checked."""

from __future__ import annotations

import datetime
from collections import defaultdict
from dataclasses import replace
from difflib import get_close_matches

from sqlalchemy import Connection

from conservedb.knowledge.authority_outcomes import TO_BE_RATIFIED
from conservedb.knowledge.narrowing import Interval
from conservedb.knowledge.planned_work import begun_as_planned
from conservedb.knowledge.work_done import NO_STEP
from conservedb.questions import naming
from conservedb.questions import treatment_records as records
from conservedb.questions import treatment_words as words
from conservedb.questions.asking import Row
from conservedb.questions.authority import authority_to_begin
from conservedb.questions.authority_records import ONE_TREATMENT
from conservedb.questions.basics import NoSuch, When
from conservedb.questions.evidence import when
from conservedb.questions.history_records import ASKED as HISTORY
from conservedb.questions.treatment_answers import (
    DecisionEntry,
    PlanEntry,
    PlannedEntry,
    StepEntry,
    TreatmentAnswer,
    TreatmentRow,
    TreatmentsAnswer,
)
from conservedb.questions.treatment_asked import asked_of, guidelines_named
from conservedb.questions.treatment_parts import (
    Life,
    decision_entries,
    life_of,
    plan_entry,
    progress,
    step_entries,
)
from conservedb.store.keys import fold

_PLANS = HISTORY["object"].plans
STATEMENTS = (
    *(*naming.STATEMENTS, *_PLANS.questions),
    *(*records.STATEMENTS, *ONE_TREATMENT.questions),
)


def treatments(connection: Connection, number: str) -> TreatmentsAnswer:
    """The treatments of an object, a line each, the latest begun first.

    Raises:
        NoSuch: no such object.
    """
    owner = naming.find_object(connection, number)
    plans = _PLANS.records(connection, owner.id)
    counted = dict(records.STEPS_COUNTED.tuples(connection, object=owner.id))
    decided = decision_entries(plans)
    versions: dict[str, list[int]] = defaultdict(list)
    decisions: dict[str, list[DecisionEntry]] = defaultdict(list)
    for row in plans.plans:
        versions[row.treatment].append(row.version)
        decisions[row.treatment] += decided.get(row.id, ())
    rows = (
        TreatmentRow(
            row.ref,
            row.title,
            words.state(_date(row, "begun"), _date(row, "ended")),
            row.status,
            row.lead,
            tuple(versions[row.ref]),
            words.authorised_words(versions[row.ref], decisions[row.ref]),
            counted.get(row.id, 0),
        )
        for row in records.TREATMENTS.all(connection, object=owner.id)
    )
    return TreatmentsAnswer(owner.number, owner.title, tuple(rows))


def treatment(
    connection: Connection, number: str, ref: str, today: datetime.date
) -> TreatmentAnswer:
    """One treatment, from its examinations to its next check.

    Raises:
        NoSuch: no such object, or it has no treatment of that reference.
    """
    owner = naming.find_object(connection, number)
    row = _find(connection, owner, ref)
    life = life_of(connection, owner.id, row.id)
    closed = _date(row, "ended").recorded
    plans, beside = _plans_of(life, None if closed else today.toordinal())
    steps = step_entries(life, beside)
    decided = decision_entries(life.told.plans)
    own = {one.id for one in life.told.plans.plans}
    check = _date(row, "next_check")
    answer = TreatmentAnswer(
        object=owner.number,
        object_title=owner.title,
        ref=row.ref,
        title=row.title,
        purpose=row.purpose,
        status=row.status,
        state=words.state(_date(row, "begun"), _date(row, "ended")),
        begun=_date(row, "begun"),
        ended=_date(row, "ended"),
        lead=row.lead,
        note=row.note,
        result=row.result,
        recommendations=row.recommendations,
        next_check=check,
        check_passed=check.recorded and check.latest < today.toordinal(),
        closed=closed,
        plans=plans,
        steps=steps,
        decisions=tuple(one for plan, some in decided.items() if plan not in own for one in some),
        to_ratify=_to_ratify(steps),
        asked=(),
        guidelines=(),
        rivals=tuple(life.told.rivals.get(("treatment", row.id), ())),
    )
    has = records.OBJECT_HAS.first(connection, object=owner.id, scope=row.id)
    asked = asked_of(answer, life, owner, has)
    return replace(answer, asked=asked, guidelines=guidelines_named(asked))


def _find(connection: Connection, owner: Row, ref: str) -> Row:
    rows = records.TREATMENTS.all(connection, object=owner.id)
    exact = [row for row in rows if row.ref == ref.strip()]
    alike = exact or [row for row in rows if fold(row.ref) == fold(ref)]
    if len(alike) == 1:
        return alike[0]
    written = {fold(row.ref): row.ref for row in rows}
    close = get_close_matches(fold(ref), written, 3, 0.6)
    nearest = [row.ref for row in alike] or [written[one] for one in close]
    raise NoSuch(f"treatment of {owner.number}", ref, tuple(nearest))


def _date(row: Row, name: str) -> When:
    return when(row, records.TREATMENTS.at(f"{name}_words"))


def _plans_of(life: Life, today: int | None) -> tuple[tuple[PlanEntry, ...], dict[str, str]]:
    """The versions, the newest last, and why steps stand beside the newest."""
    told = life.told.plans
    decided, done = decision_entries(told), progress(life)
    entries = [plan_entry(one, told, done[one.ref], decided.get(one.id, ())) for one in told.plans]
    if not entries:
        return (), {}
    if today is not None:
        entries[-1] = _with_needs(life, entries[-1], today)
    unplanned = done[told.plans[-1].ref].unplanned
    return tuple(entries), {one.step.ref: one.sentence for one in unplanned}


def _with_needs(life: Life, entry: PlanEntry, today: int) -> PlanEntry:
    """A plan with what its steps that have no record would need if they were begun today."""
    plan = next(one.plan for one in life.work.versions if one.plan.ref == entry.ref)

    def needs(one: PlannedEntry) -> PlannedEntry:
        planned = plan.step(one.ref)
        assert planned is not None  # entries are made of the steps of the plan
        step = begun_as_planned(planned, Interval(today, today))
        found = authority_to_begin(life.work, life.id, plan, step)
        return replace(one, to_begin=found.findings)

    steps = (needs(one) if one.state == NO_STEP else one for one in entry.steps)
    return replace(entry, steps=tuple(steps))


def _to_ratify(steps: tuple[StepEntry, ...]) -> tuple[str, ...]:
    return tuple(
        f"{one.ref}, {one.date.said}: {found.sentence}"
        for one in steps
        for found in one.findings
        if found.outcome == TO_BE_RATIFIED
    )
