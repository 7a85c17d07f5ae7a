"""What one authorisation or standing approval on record says of one step on its day."""

from __future__ import annotations

from dataclasses import dataclass, replace

from conservedb.knowledge.authority_outcomes import (
    AFTERWARDS,
    CANNOT_TELL,
    EXPIRED,
    IN_FORCE,
    NOT_COVERED,
    OTHER_VERSION,
    RATIFIED,
    REFUSED,
)
from conservedb.knowledge.departures import departures
from conservedb.knowledge.narrowing import Interval
from conservedb.knowledge.planned_work import UNDATED, RecordedStep, WorkPlan

BEFORE, HOLDS, OVER, UNSURE = "before", "holds", "over", "unsure"


@dataclass(frozen=True, slots=True)
class Authorisation:
    """Who decided what, in which capacity, about a version of a plan or about one step.

    Args:
        decision: "authorised", "refused", "ratified", or "" where it is not recorded.
        version: the version of the plan it is about, None where it names no plan.
        intervention: the recorded step it is about, "" where it names none.
        steps: the planned steps it is limited to; none means the whole plan, unless `scope`
            limits it in words.
        expires: the last day on which it holds, None where no expiry is recorded.
        rewritten: how the plan was changed after the decision, in a clause; "" where it was not.
    """

    ref: str
    capacity: str
    person: str
    decision: str
    version: int | None = None
    intervention: str = ""
    steps: tuple[str, ...] = ()
    scope: str = ""
    conditions: str = ""
    when: Interval = UNDATED
    expires: Interval | None = None
    rewritten: str = ""

    @property
    def by(self) -> str:
        """By whom and in which capacity, in words."""
        person = self.person or "somebody not named"
        return f"{person} as {self.capacity or 'capacity not recorded'} ({self.ref})"


@dataclass(frozen=True, slots=True)
class StandingApproval:
    """An approval of kinds of routine care; `until` None means that no end is recorded."""

    ref: str
    kinds: tuple[str, ...]
    capacity: str
    person: str
    since: Interval = UNDATED
    until: Interval | None = None
    conditions: str = ""

    @property
    def by(self) -> str:
        """By whom and in which capacity, in words."""
        person = self.person or "somebody not named"
        return f"{person} as {self.capacity or 'capacity not recorded'} ({self.ref})"


@dataclass(frozen=True, slots=True)
class Reading:
    """What an approval amounts to for a step: an outcome and why, in one clause."""

    outcome: str
    clause: str
    by: str
    person: str
    capacity: str
    ref: str


def holds_on(since: Interval, until: Interval | None, day: Interval) -> str:
    """Whether an approval holds on a day: "before", "holds", "over" or "unsure".

    It holds from its own day to its last, both included, and only where both are exact: an
    approval whose date or expiry is vague ("in 2012") is never said to hold. Where the days
    overlap, or any of them is approximate or uncertain, nobody can tell.
    """
    ends = (since,) if until is None else (since, until)
    if day.flags or any(end.flags for end in ends):
        return UNSURE
    if day.latest < since.earliest:
        return BEFORE
    if until is not None and until.latest < day.earliest:
        return OVER
    if any(end.earliest != end.latest for end in ends):
        return UNSURE
    if since.latest <= day.earliest and (until is None or day.latest <= until.earliest):
        return HOLDS
    return UNSURE


def concerns(one: Authorisation, plan: WorkPlan | None, step: RecordedStep) -> tuple[str, str]:
    """Whether a decision is about this step: ("", "") if it is, else an outcome and why not."""
    if one.intervention:
        same = one.intervention == step.ref
        return ("", "") if same else (NOT_COVERED, f"it is about {one.intervention}")
    if one.version is None:
        return CANNOT_TELL, "which version of the plan it is about is not recorded"
    if plan is None:
        return NOT_COVERED, "the step belongs to no plan on record"
    if one.version != plan.version:
        return OTHER_VERSION, f"it is about version {one.version}, not version {plan.version}"
    planned = plan.step(step.planned) if step.planned else None
    if planned is None:
        return NOT_COVERED, f"the step is not linked to a step of version {plan.version}"
    if one.rewritten and one.decision != "refused":
        return CANNOT_TELL, one.rewritten
    beside = departures(planned, step)
    certain = [departure.clause for departure in beside if departure.certain]
    if certain:
        return NOT_COVERED, f"deviation: {'; '.join(certain)}"
    if one.steps:
        if step.planned not in one.steps:
            return NOT_COVERED, f"it does not name {step.planned}"
    elif one.scope:
        return CANNOT_TELL, f"its scope is given in words only: {one.scope}"
    if beside:
        return CANNOT_TELL, "; ".join(departure.clause for departure in beside)
    return "", ""


def read_authorisation(
    one: Authorisation, plan: WorkPlan | None, step: RecordedStep
) -> Reading | None:
    """What a decision amounts to for this step; None where it is a refusal of something else."""
    outcome, clause = concerns(one, plan, step)
    if one.decision == "refused":
        if outcome not in ("", CANNOT_TELL):
            return None
        outcome, clause = (outcome, clause) if outcome else _refusal(one, step)
    elif not outcome:
        judge = _ratification if one.decision == "ratified" else _leave
        outcome, clause = judge(one, step)
        clause = _with_conditions(clause, one.conditions)
    return _named(Reading(outcome, clause, one.by, one.person, one.capacity, one.ref))


def _refusal(one: Authorisation, step: RecordedStep) -> tuple[str, str]:
    """A refusal, told apart by whether it may have come after the step."""
    qualified = one.when.flags or step.when.flags
    if not qualified and step.when.latest < one.when.earliest:
        return AFTERWARDS, "refused after the day of the step"
    if not qualified and one.when.latest <= step.when.earliest:
        return REFUSED, "refused"
    return CANNOT_TELL, "refused, but whether before the step cannot be told from the dates"


def _ratification(one: Authorisation, step: RecordedStep) -> tuple[str, str]:
    """A ratification counts from the day of the step on, not before it, and needs a day."""
    exact = one.when.earliest == one.when.latest
    if exact and not one.when.flags and not step.when.flags:
        if step.when.latest <= one.when.earliest:
            return RATIFIED, "ratified afterwards"
        if one.when.latest < step.when.earliest:
            return CANNOT_TELL, "the ratification is dated before the step it ratifies"
    return CANNOT_TELL, "whether it was ratified after the step cannot be told from the dates"


def _leave(one: Authorisation, step: RecordedStep) -> tuple[str, str]:
    """Leave given: in force, expired, given too late, or not to be told."""
    if one.decision != "authorised":
        return CANNOT_TELL, "what was decided is not recorded"
    when = holds_on(one.when, one.expires, step.when)
    if when == HOLDS:
        return IN_FORCE, "in force on the day of the step"
    if when == OVER:
        return EXPIRED, "expired before the day of the step"
    if when == BEFORE:
        return AFTERWARDS, "given after the day of the step"
    return CANNOT_TELL, "whether it was in force that day cannot be told from the dates"


def _named(found: Reading) -> Reading:
    """What nobody signed authorises nothing: who gave it must be recorded."""
    if found.person or found.outcome not in (IN_FORCE, RATIFIED):
        return found
    return replace(found, outcome=CANNOT_TELL, clause="who gave it is not recorded")


def _with_conditions(clause: str, conditions: str) -> str:
    if not conditions:
        return clause
    return f"{clause}, on conditions that a person must judge: {conditions}"


def read_standing(one: StandingApproval, step: RecordedStep) -> Reading | None:
    """What a standing approval amounts to for routine care; None where it is of other kinds."""
    if one.kinds and step.kind not in one.kinds:
        return None
    if not one.kinds:
        outcome, clause = CANNOT_TELL, "which kinds of step it approves is not recorded"
    else:
        outcome, clause = {
            HOLDS: (IN_FORCE, "in force on the day of the step"),
            OVER: (EXPIRED, "ended before the day of the step"),
            BEFORE: (AFTERWARDS, "begins after the day of the step"),
            UNSURE: (CANNOT_TELL, "whether it was in force that day cannot be told from the dates"),
        }[holds_on(one.since, one.until, step.when)]
    clause = _with_conditions(clause, one.conditions)
    return _named(Reading(outcome, clause, one.by, one.person, one.capacity, one.ref))
