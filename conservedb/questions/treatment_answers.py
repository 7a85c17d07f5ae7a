"""What the questions for treatments answer with: how one was planned, authorised and done."""

from __future__ import annotations

from dataclasses import dataclass

from conservedb.knowledge.authority import Finding
from conservedb.knowledge.due import Asked
from conservedb.questions.basics import Person, Rival, Source, When


@dataclass(frozen=True, slots=True)
class TreatmentRow:
    """A treatment in one line.

    Args:
        state: begun, ended, or neither on record, in words.
        versions: the versions of its plan on record.
        authorised: the newest version of its plan and what was decided on it; no judgement.
        steps: how many steps are on record.
    """

    ref: str
    title: str
    state: str
    status: str
    lead: str
    versions: tuple[int, ...]
    authorised: str
    steps: int


@dataclass(frozen=True, slots=True)
class TreatmentsAnswer:
    """The treatments of an object, the latest begun first."""

    object: str
    title: str
    rows: tuple[TreatmentRow, ...]


@dataclass(frozen=True, slots=True)
class Line:
    """Something that a step laid, took off, used, read, took or tried, in a sentence.

    `kind` is "layer", "removal", "agent", "joint", "reading", "sample" or "spot test".
    """

    kind: str
    ref: str
    sentence: str
    detail: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Observation:
    """What was seen somewhere, apart from what is presumed from it."""

    ref: str
    date: When
    where: str
    condition: str
    seen: str
    presumed: str
    extent: str
    people: tuple[Person, ...]
    source: Source | None
    note: str


@dataclass(frozen=True, slots=True)
class StepEntry:
    """A step on record, with what it did and how it is authorised.

    Args:
        date, recorded: the day it was done, and the day it was written down.
        recorded_over: over how many parts or places at once it was recorded, None for one.
        findings: what is on record about its authorisation, a sentence each.
        start: how a start before authorisation is accounted for, None where there was none.
        beside: why it stands beside the newest plan, "" where it carries out a step of it.
    """

    ref: str
    kind: str
    sentence: str
    date: When
    time_of_day: str
    date_basis: str
    people: tuple[Person, ...]
    recorded: When
    recorded_by: str
    recorded_over: int | None
    aims: tuple[str, ...]
    standing: str
    planned: str
    deviation: str
    unauthorised_reason: str
    unauthorised_by: str
    circumstances: str
    methods: str
    components: tuple[str, ...]
    places: tuple[str, ...]
    source: Source | None
    note: str
    needed: tuple[str, ...]
    findings: tuple[Finding, ...]
    start: Finding | None
    beside: str
    lines: tuple[Line, ...]
    observations: tuple[Observation, ...]
    rivals: tuple[Rival, ...]


@dataclass(frozen=True, slots=True)
class PlannedEntry:
    """A planned step, and how it stands.

    Args:
        state, progress: one of `work_done.STATES`, and the same in a sentence.
        to_begin: what is on record about its authorisation if it were begun today; none where
            a step carries it out, the plan is not the newest, or the treatment is ended.
    """

    ref: str
    position: int
    sentence: str
    kind: str
    components: tuple[str, ...]
    places: tuple[str, ...]
    note: str
    state: str
    progress: str
    by: tuple[str, ...]
    to_begin: tuple[Finding, ...] = ()


@dataclass(frozen=True, slots=True)
class DecisionEntry:
    """A decision on a version of a plan, or on a step."""

    ref: str
    decision: str
    capacity: str
    person: str
    version: int | None
    intervention: str
    date: When
    expires: When
    scope: str
    steps: tuple[str, ...]
    conditions: str
    evidence: str
    source: Source | None
    note: str


@dataclass(frozen=True, slots=True)
class PlanEntry:
    """A version of the plan, its steps, and the decisions on it."""

    ref: str
    version: int
    date: When
    authors: tuple[Person, ...]
    aims: tuple[str, ...]
    justification: str
    alternatives: str
    risks: str
    source: Source | None
    note: str
    steps: tuple[PlannedEntry, ...]
    decisions: tuple[DecisionEntry, ...]


@dataclass(frozen=True, slots=True)
class AskedOf:
    """What guidelines ask for and a record does not show; `of` names the record."""

    of: str
    asked: tuple[Asked, ...]


@dataclass(frozen=True, slots=True)
class TreatmentAnswer:
    """One treatment from examination to next check.

    Args:
        check_passed: whether the last day of the next check lies before today.
        closed: whether an end is on record.
        plans: the versions, the newest last.
        steps: in order of time; the examinations are among them.
        decisions: those on steps that name no plan of it, such as first aid ratified
            afterwards; those on a version of the plan stand with it.
        to_ratify: first aid that is not ratified, a sentence each.
        asked: what guidelines still ask for, by record.
        guidelines: the guidelines named there, short and in full.
    """

    object: str
    object_title: str
    ref: str
    title: str
    purpose: str
    status: str
    state: str
    begun: When
    ended: When
    lead: str
    note: str
    result: str
    recommendations: str
    next_check: When
    check_passed: bool
    closed: bool
    plans: tuple[PlanEntry, ...]
    steps: tuple[StepEntry, ...]
    decisions: tuple[DecisionEntry, ...]
    to_ratify: tuple[str, ...]
    asked: tuple[AskedOf, ...]
    guidelines: tuple[tuple[str, str], ...]
    rivals: tuple[Rival, ...]

    @property
    def examinations(self) -> tuple[StepEntry, ...]:
        """The steps that examined, or during which something was observed."""
        return tuple(one for one in self.steps if one.kind == "examine" or one.observations)
