"""Checking an object, a planned step or the whole collection by the rules of the trade."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import replace

from sqlalchemy import Connection

from conservedb.knowledge.behaviour import Matter
from conservedb.knowledge.rule_case import BROKEN, Case, Finding, KnownPlace, Step
from conservedb.knowledge.rule_step_words import step_words
from conservedb.knowledge.rules import OF_OBJECTS, OF_STEPS, RULES, Rule, consequence, found, ranked
from conservedb.questions import checks_deeds as deeds
from conservedb.questions import checks_records as records
from conservedb.questions.answers import AsOf
from conservedb.questions.asking import Row, without_collecting
from conservedb.questions.checks_answers import (
    Acceptance,
    AcceptedFinding,
    CheckAnswer,
    CollectionCheck,
    Judgement,
    NoAgent,
    PlannedStep,
    RuleOnObject,
)
from conservedb.questions.checks_cases import CaseMaker
from conservedb.questions.checks_records import Range
from conservedb.questions.checks_reference import STATEMENTS as _REFERENCE
from conservedb.questions.checks_reference import Reference, reference
from conservedb.questions.evidence import when
from conservedb.questions.meanings import STATEMENTS as _MEANINGS
from conservedb.questions.meanings import meaning
from conservedb.questions.naming import find_object, no_such_mark
from conservedb.store.keys import fold

AGENT_TRAITS = ("water", "acid", "alkali", "heat", "organic solvent")
AGENT_CLASSES = ("abrasive", "energy")
"""Traits of what a step can be planned with, and classes of which there is no trait."""
_AT_ONCE = 50
"""Objects of the collection that are read at once."""
_ACCEPTED_ON = deeds.ACCEPTED.at("date_words")
_REVIEW = deeds.ACCEPTED.at("review_words")
STATEMENTS = (*records.STATEMENTS, *_REFERENCE, *_MEANINGS)


def check(connection: Connection, number: str, on: AsOf, mark: str = "") -> CheckAnswer:
    """What the rules find of an object as it is on record on a day, or of one place of it.

    Raises:
        NoSuch: no such object, or it has no such place.
    """
    known = reference(connection)
    owner = find_object(connection, number)
    case, accepted = _case(connection, known, owner, on)
    findings = found(case, known.rules.values())
    place = ""
    if mark:
        place = _place(connection, owner, case, mark).mark
        findings = [one for one in findings if _is_about(one, case.places[place])]
    return _answer(known, owner, place, on, "", findings, accepted, _judging(known, OF_OBJECTS))


def check_step(
    connection: Connection, number: str, mark: str, step: PlannedStep, on: AsOf
) -> CheckAnswer:
    """What the rules find of a step that somebody plans at a place.

    Raises:
        NoSuch: no such object, place or agent.
        NoAgent: a material that is none.
        Ambiguous: several materials bear the name of the agent.
    """
    known = reference(connection)
    owner = find_object(connection, number)
    case, accepted = _case(connection, known, owner, on)
    place = _place(connection, owner, case, mark).mark
    agent = _agent(connection, known, step.agent)
    planned = Step(place, agent, step.form, step.temperature_c, step.dwell_min)
    case = replace(case, step=planned)
    ran = _judging(known, OF_STEPS)
    findings = found(case, [known.rules[key] for key in ran])
    words = step_words(planned, planned.temperature_c)
    answer = _answer(known, owner, place, on, words, findings, accepted, ran)
    return replace(answer, solvent=agent.has("organic solvent"))


def check_all(connection: Connection, on: AsOf) -> CollectionCheck:
    """What the rules find in the whole collection on a day: a line for each rule and object."""
    known = reference(connection)
    ids = [row.id for row in records.OBJECT_IDS.all(connection)]
    rows: list[RuleOnObject] = []
    with without_collecting():
        for start in range(0, len(ids), _AT_ONCE):
            some = ids[start : start + _AT_ONCE]
            within = Range(connection, some[0], some[-1])
            for owner, case in CaseMaker(known, within, on.last).cases():
                rows += _lines(known, owner, case, _acceptances(within, owner, on.last))
    rows.sort(key=lambda row: consequence(row.foremost, known.rules))
    return CollectionCheck(
        on,
        len(ids),
        tuple(row for row in rows if row.broken or row.cannot_tell),
        sum(row.accepted for row in rows),
        _judging(known, OF_OBJECTS),
        _silent(known),
        known.notes,
    )


# -- one object ---------------------------------------------------------------------------


def _case(
    connection: Connection, known: Reference, owner: Row, on: AsOf
) -> tuple[Case, list[Acceptance]]:
    within = Range(connection, owner.id, owner.id)
    (row,) = within.objects
    return CaseMaker(known, within, on.last).case(row), _acceptances(within, row, on.last)


def _place(connection: Connection, owner: Row, case: Case, mark: str) -> KnownPlace:
    wanted = fold(mark)
    for place in case.places.values():
        if fold(place.mark) == wanted:
            return place
    raise no_such_mark(connection, owner, ("place",), mark)


def _is_about(finding: Finding, place: KnownPlace) -> bool:
    """Whether a finding is about a place, or about a component that bears or crosses it."""
    parts = {*place.sides, *place.fixings}
    return place.mark in finding.places or (
        not finding.places and bool(parts & set(finding.components))
    )


def _agent(connection: Connection, known: Reference, word: str) -> Matter:
    meant = meaning(connection, word)
    if meant.kind == "material":
        found, classes = known.materials.of(meant.id), known.materials.class_path(meant.id)
    else:
        found, classes = known.materials.of_class(meant.id), known.kinds.path(meant.id)
    if not any(map(found.has, AGENT_TRAITS)) and not set(AGENT_CLASSES) & set(classes):
        raise NoAgent(found.key, found.name)
    return found


def _answer(
    known: Reference,
    owner: Row,
    place: str,
    on: AsOf,
    step: str,
    findings: Iterable[Finding],
    accepted: Sequence[Acceptance],
    ran: tuple[str, ...],
) -> CheckAnswer:
    open_, closed = _apart(ranked(findings, known.rules), accepted, on.last)
    return CheckAnswer(
        owner.number,
        owner.title,
        place,
        on,
        step,
        tuple(Judgement(known.rules[one.rule], one) for one in open_),
        tuple(AcceptedFinding(Judgement(known.rules[one.rule], one), by) for one, by in closed),
        tuple(one for one in accepted if one.review.recorded and one.review.latest < on.last),
        ran,
        _silent(known),
        known.notes,
    )


def _judging(known: Reference, keys: Iterable[str]) -> tuple[str, ...]:
    """The rules among these that are switched on and have what they need to judge."""
    silent = {key for key, _ in _silent(known)}
    return tuple(key for key in keys if key in known.rules and key not in silent)


def _silent(known: Reference) -> tuple[tuple[str, str], ...]:
    """The rules that did not judge, each with the reason."""
    found = [(key, "switched off by the department") for key in known.off]
    for rule in known.rules.values():
        if rule.key not in RULES:
            found.append((rule.key, "the program does not know how to judge it"))
        elif rule.judges == "conduct" and known.settled.conduct_from is None:
            found.append((rule.key, "no day is set from which conduct is judged"))
    return tuple(found)


# -- acceptances --------------------------------------------------------------------------


def _acceptances(within: Range, owner: Row, day: int) -> list[Acceptance]:
    """What somebody had accepted by the day, whether or not it is to be reviewed."""
    return [
        Acceptance(
            row.ref,
            row.rule,
            row.component,
            row.place,
            row.layer,
            row.person,
            row.reason,
            when(row, _ACCEPTED_ON),
            when(row, _REVIEW),
            row.note,
        )
        for row in within.accepted.get(owner.id, ())
        if row.date_earliest <= day
    ]


def _apart(
    findings: Iterable[Finding], accepted: Sequence[Acceptance], day: int
) -> tuple[list[Finding], list[tuple[Finding, Acceptance]]]:
    """Findings that stand, and those that somebody accepts until a day not yet past."""
    valid = [one for one in accepted if not one.review.recorded or day <= one.review.latest]
    open_, closed = [], []
    for finding in findings:
        by = next((one for one in valid if _accepts(one, finding)), None)
        if by is None:
            open_.append(finding)
        else:
            closed.append((finding, by))
    return open_, closed


def _accepts(one: Acceptance, finding: Finding) -> bool:
    """Whether a finding is the one accepted: the same rule, and everything that was named.

    A finding about several places is not accepted for one of them.
    """
    return (
        one.rule == finding.rule
        and (not one.component or one.component in finding.components)
        and (not one.place or {one.place} == set(finding.places))
        and (not one.layer or (one.layer in finding.layers and len(finding.places) < 2))
    )


# -- the collection -----------------------------------------------------------------------


def _lines(
    known: Reference, owner: Row, case: Case, accepted: Sequence[Acceptance]
) -> list[RuleOnObject]:
    by_rule: dict[str, list[Finding]] = defaultdict(list)
    for finding in found(case, known.rules.values()):
        by_rule[finding.rule].append(finding)
    return [
        _line(owner, known.rules[key], those, accepted, case.day) for key, those in by_rule.items()
    ]


def _line(
    owner: Row, rule: Rule, findings: list[Finding], accepted: Sequence[Acceptance], day: int
) -> RuleOnObject:
    open_, closed = _apart(findings, accepted, day)
    broken = sum(1 for one in open_ if one.outcome == BROKEN)
    first = ranked(open_ or findings, {rule.key: rule})[0]
    return RuleOnObject(
        owner.number, owner.title, rule, broken, len(open_) - broken, len(closed), first
    )
