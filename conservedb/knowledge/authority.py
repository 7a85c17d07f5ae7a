"""Which authorisations a step needs, which of them are on record, and what is not established.

A department's own table says which capacities must authorise which kind of step. Nothing here
gives leave: it reads what is recorded. A kind that the table does not name is unknown, not free.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from conservedb.knowledge.authorisations import (
    Authorisation,
    Reading,
    StandingApproval,
    read_authorisation,
    read_standing,
)
from conservedb.knowledge.authority_outcomes import (
    AFTERWARDS,
    AUTHOR_ALONE,
    CANNOT_TELL,
    EXPIRED,
    HISTORIC,
    IN_FORCE,
    MISSING,
    NONE_NEEDED,
    NOT_COVERED,
    NOT_RECORDED,
    OTHER_VERSION,
    OUTCOMES,
    RATIFIED,
    REFUSED,
    STANDING,
    STARTED,
    TO_BE_RATIFIED,
    UNEXPLAINED,
)
from conservedb.knowledge.planned_work import RecordedStep, WorkPlan

STANDING_UNSAID = "whether it was planned, routine care, first aid or historic is not recorded"
"""The clause of a step of which nobody said what it was."""
_THERE = (IN_FORCE, RATIFIED, STANDING)
_FREE = (HISTORIC, NONE_NEEDED)
_UNCERTAIN = (CANNOT_TELL, NOT_RECORDED)
_BEST_FIRST = (
    IN_FORCE,
    RATIFIED,
    CANNOT_TELL,
    AUTHOR_ALONE,
    EXPIRED,
    AFTERWARDS,
    OTHER_VERSION,
    NOT_COVERED,
)


@dataclass(frozen=True, slots=True)
class Needed:
    """A row of the department's table: a kind of step needs somebody of this capacity.

    A blank capacity says that the kind needs none; beside a row that names one it counts for
    nothing. `author_alone` allows an author of the plan to authorise alone in this capacity.
    """

    kind: str
    capacity: str
    author_alone: bool = False


@dataclass(frozen=True, slots=True)
class Finding:
    """One outcome of `OUTCOMES` in a sentence.

    `capacity` is the needed capacity it is about, "" for the whole step; `ref` is the
    authorisation or standing approval it rests on, "" where there is none.
    """

    outcome: str
    sentence: str
    capacity: str = ""
    ref: str = ""


@dataclass(frozen=True, slots=True)
class Authority:
    """The answer for one step: what it needs, what was found, and how its start stands.

    `start` is a finding where the step is begun before authorisation, else None.
    """

    needed: tuple[str, ...]
    findings: tuple[Finding, ...]
    start: Finding | None = None

    @property
    def there(self) -> tuple[Finding, ...]:
        """The authorisations that are on record and were in force, or ratified it afterwards."""
        return tuple(one for one in self.findings if one.outcome in _THERE)

    @property
    def uncertain(self) -> tuple[Finding, ...]:
        """What cannot be told from what is recorded."""
        return tuple(one for one in self.findings if one.outcome in _UNCERTAIN)

    @property
    def missing(self) -> tuple[Finding, ...]:
        """What is needed and is not on record in force."""
        known = (*_THERE, *_FREE, *_UNCERTAIN)
        return tuple(one for one in self.findings if one.outcome not in known)


def authority(
    plan: WorkPlan | None,
    step: RecordedStep,
    authorisations: Iterable[Authorisation],
    standing_approvals: Iterable[StandingApproval],
    needed: Iterable[Needed],
) -> Authority:
    """Whether a step is authorised, as far as the record shows.

    Args:
        plan: the version of the plan that the step carries out, None where there is none.
        step: the step done, or about to be done (then dated today).
        authorisations: all decisions on any version of that plan, and on the step itself.
        standing_approvals: those of the department.
        needed: the department's table of needed authorisations.
    """
    if step.standing == "historic":
        return Authority((), (_whole(HISTORIC),))
    rows = [row for row in needed if row.kind == step.kind]
    named = [row for row in rows if row.capacity]
    leave: list[Reading] = []
    refusals: list[Reading] = []
    for one in authorisations:
        reading = read_authorisation(one, plan, step)
        if reading is not None:
            (refusals if one.decision == "refused" else leave).append(reading)
    standing: list[Reading] = []
    if step.standing == "routine care":
        read = (read_standing(one, step) for one in standing_approvals)
        standing = [reading for reading in read if reading is not None]
    findings = _granted(plan, step, rows, leave, standing)
    findings = _with_refusals(findings, refusals)
    capacities = tuple(dict.fromkeys(row.capacity for row in named))
    return Authority(capacities, findings, _start(step, findings))


def _whole(outcome: str) -> Finding:
    return Finding(outcome, OUTCOMES[outcome])


def _granted(
    plan: WorkPlan | None,
    step: RecordedStep,
    rows: Sequence[Needed],
    leave: Sequence[Reading],
    standing: Sequence[Reading],
) -> tuple[Finding, ...]:
    """What the step needs and has, refusals not yet looked at."""
    for reading in standing:
        if reading.outcome == IN_FORCE:
            sentence = f"Routine care under a standing approval {reading.clause}: {reading.by}."
            return (Finding(STANDING, sentence, "", reading.ref),)
    if not step.kind:
        return (Finding(CANNOT_TELL, "Cannot tell: the kind of the step is not recorded."),)
    if not rows:
        ratify = step.standing == "first aid" and not any(_may_count(one) for one in leave)
        unknown = _whole(NOT_RECORDED)
        return (unknown, _whole(TO_BE_RATIFIED)) if ratify else (unknown,)
    named = [row for row in rows if row.capacity]
    if not named:
        return (_whole(NONE_NEEDED),)
    capacities = {row.capacity for row in named}
    return tuple(_finding(row, plan, step, leave, standing, capacities) for row in named)


def _may_count(reading: Reading) -> bool:
    return reading.outcome in (IN_FORCE, RATIFIED, CANNOT_TELL)


def _finding(
    row: Needed,
    plan: WorkPlan | None,
    step: RecordedStep,
    leave: Sequence[Reading],
    standing: Sequence[Reading],
    capacities: set[str],
) -> Finding:
    """What is on record for one needed capacity: the best of all that bears on it."""
    bearing = [
        _by_author(_in_capacity(one), row, plan, leave, capacities)
        for one in leave
        if one.capacity in (row.capacity, "")
    ]
    best = min((*bearing, *standing), key=lambda one: _BEST_FIRST.index(one.outcome), default=None)
    outcome = best.outcome if best else MISSING
    clause = f"{best.clause}: {best.by}" if best else "no authorisation on record"
    if outcome not in (IN_FORCE, RATIFIED, CANNOT_TELL):
        if step.standing == "first aid":
            outcome, clause = TO_BE_RATIFIED, f"first aid, to be ratified; {clause}"
        elif not step.standing:
            outcome, clause = CANNOT_TELL, f"{STANDING_UNSAID}; {clause}"
    said = f"cannot tell: {clause}" if outcome == CANNOT_TELL else clause
    sentence = f"{_capital(row.capacity)}: {said}."
    return Finding(outcome, sentence, row.capacity, best.ref if best else "")


def _in_capacity(reading: Reading) -> Reading:
    """A reading without a capacity may be in any: whether in a needed one cannot be told."""
    if reading.capacity or not _may_count(reading):
        return reading
    clause = "in which capacity it was given is not recorded"
    return replace(reading, outcome=CANNOT_TELL, clause=clause)


def _by_author(
    reading: Reading,
    row: Needed,
    plan: WorkPlan | None,
    leave: Sequence[Reading],
    capacities: set[str],
) -> Reading:
    """A plan's author does not authorise it alone, unless the table allows that."""
    if reading.outcome not in (IN_FORCE, RATIFIED) or row.author_alone or plan is None:
        return reading
    if not plan.authors:
        clause = "who wrote the plan is not recorded, so it may be its author alone"
        return replace(reading, outcome=CANNOT_TELL, clause=clause)
    if reading.person not in plan.authors:
        return reading
    found = {
        one.outcome
        for one in leave
        if one.capacity in capacities and one.person not in plan.authors
    }
    if found & {IN_FORCE, RATIFIED}:
        return reading
    if CANNOT_TELL in found:
        clause = "given by an author of the plan, and whether by another person too cannot be told"
        return replace(reading, outcome=CANNOT_TELL, clause=clause)
    return replace(reading, outcome=AUTHOR_ALONE, clause="given by an author of the plan alone")


def _with_refusals(
    findings: tuple[Finding, ...], refusals: Sequence[Reading]
) -> tuple[Finding, ...]:
    """A refusal beats all but what was in force before it, or needs no authorisation."""
    outcomes = {one.outcome for one in findings}
    settled = outcomes <= {IN_FORCE, STANDING, NONE_NEEDED}
    doubtful = CANNOT_TELL in outcomes
    doubts: list[Reading] = []
    for one in refusals:
        late = one.outcome == AFTERWARDS and not settled
        if one.outcome == REFUSED or (late and not doubtful):
            return (Finding(REFUSED, f"{_capital(one.clause)}: {one.by}.", "", one.ref),)
        if one.outcome == CANNOT_TELL or late:
            doubts.append(one)
    if not doubts:
        return findings
    kept = [_lowered(found) for found in findings]
    says = "Cannot tell whether a refusal stands"
    doubt = [
        Finding(CANNOT_TELL, f"{says}: {one.clause}: {one.by}.", "", one.ref) for one in doubts
    ]
    return (*kept, *doubt)


def _lowered(found: Finding) -> Finding:
    """A finding beside which there may be a refusal: it is no longer said to be in force."""
    if found.outcome not in _THERE:
        return found
    subject = found.capacity or "routine care"
    sentence = f"{_capital(subject)}: cannot tell: beside {found.ref} there may be a refusal."
    return replace(found, outcome=CANNOT_TELL, sentence=sentence)


def _start(step: RecordedStep, findings: Sequence[Finding]) -> Finding | None:
    """How a start before authorisation is accounted for; None where there was none."""
    if step.standing == "first aid":
        return None
    outcomes = {one.outcome for one in findings}
    without = outcomes - {IN_FORCE, STANDING, *_FREE, *_UNCERTAIN}
    reason, name = step.unauthorised_reason.strip(), step.unauthorised_by.strip()
    in_doubt = CANNOT_TELL in outcomes and (reason or name)
    if not without and not in_doubt:
        return None
    if reason and name:
        return Finding(STARTED, f"Started before authorisation by {name}: {reason}")
    lacking = [word for word, given in (("reason", reason), ("name", name)) if not given]
    what = " and ".join(f"the {word}" for word in lacking)
    verb = "are" if len(lacking) > 1 else "is"
    return Finding(UNEXPLAINED, f"A start before authorisation: {what} {verb} not recorded.")


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]
