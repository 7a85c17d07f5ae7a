"""Entries of a history for what was found, planned and decided."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from conservedb.questions import finding_words as words
from conservedb.questions.answers import HistoryRow, Person, Reworded
from conservedb.questions.asking import Question, Row, Rows
from conservedb.questions.evidence import source_of, when
from conservedb.questions.finding_records import Findings
from conservedb.questions.history_entry import entry
from conservedb.questions.history_records import ASKED
from conservedb.questions.plan_records import Plans, Words
from conservedb.questions.rewordings import Rewordings, of
from conservedb.questions.wording import listed

_FOUND = ASKED["object"].findings.rows
_PLANNED = ASKED["object"].plans


def finding_rows(findings: Findings, amended: Rewordings) -> Iterator[HistoryRow]:
    """Observations, readings, samples and spot tests."""
    for row in findings.observations:
        said, more = words.observed(row), words.observed_details(row)
        yield _finding("observation", findings, amended, row, said, more)
    for row in findings.readings:
        yield _finding("reading", findings, amended, row, words.measured(row))
    for row in findings.samples:
        said, more = words.sampled(row), words.sampled_details(row)
        yield _finding("sample", findings, amended, row, said, more)
    for row in findings.tests:
        said, more = words.tested(row, findings.agents.get(row.id, ())), words.tested_details(row)
        yield _finding("spot test", findings, amended, row, said, more)


def _finding(
    kind: str,
    findings: Findings,
    amended: Rewordings,
    row: Row,
    text: str,
    detail: Iterable[str] = (),
) -> HistoryRow:
    table = kind.replace(" ", "_")
    asked = _FOUND[table]
    part_of = (f"part of {row.intervention}",) if row.intervention else ()
    return entry(
        kind,
        row.ref,
        when(row, asked.at("date_words")),
        text,
        detail=(*detail, *part_of),
        people=findings.people[table].get(row.id, ()),
        components=[row.component] if row.component else (),
        places=[row.place] if row.place else (),
        source=source_of(row, asked.at("source_ref")),
        note=row.note,
        amended=of(amended, table, row.id),
    )


def plan_rows(plans: Plans, amended: Rewordings) -> Iterator[HistoryRow]:
    """Plans, each version on its own day, and the decisions on them."""
    for row in plans.plans:
        steps = plans.steps.get(row.id, [])
        yield entry(
            "plan",
            row.ref,
            when(row, _PLANNED.plans.at("date_words")),
            f"plan of treatment {row.treatment}, version {row.version}",
            detail=[f"planned {step.ref}: {words.planned(step)}" for step in steps],
            people=plans.authors.get(row.id, ()),
            treatment=row.treatment,
            components=_named(plans.components, steps),
            places=_named(plans.places, steps),
            source=source_of(row, _PLANNED.plans.at("source_ref")),
            note=row.note,
            amended=(
                *of(amended, "plan", row.id),
                *(one for s in steps for one in of(amended, "planned_step", s.id, s.ref)),
            ),
        )
    for row in plans.decisions:
        steps_of = plans.limited.get(row.id, ())
        yield _decision(row, steps_of, _PLANNED.decisions, of(amended, "authorisation", row.id))


def _named(words_of: Words, steps: Rows) -> tuple[str, ...]:
    return tuple(dict.fromkeys(mark for step in steps for mark in words_of.get(step.id, ())))


def _decision(
    row: Row, steps: tuple[str, ...], asked: Question, amended: tuple[Reworded, ...]
) -> HistoryRow:
    expires = when(row, asked.at("expires_words"))
    detail = {
        "for": listed(steps),
        "scope": row.scope,
        "conditions": row.conditions,
        "expires": expires.said if expires.recorded else "",
        "evidence": row.evidence,
    }
    return entry(
        "authorisation",
        row.ref,
        when(row, asked.at("date_words")),
        words.decided(row),
        detail=[f"{label}: {value}" for label, value in detail.items() if value],
        people=(Person(row.person, row.capacity),) if row.person else (),
        source=source_of(row, asked.at("source_ref")),
        note=row.note,
        amended=amended,
    )
