"""What the rules of the trade newly find of an object when something is written."""

from __future__ import annotations

import datetime
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from math import isfinite

from sqlalchemy import Connection, select

from conservedb import dates
from conservedb.exchange.cells import split_list, unescape
from conservedb.exchange.entering import Entry
from conservedb.knowledge.rule_case import BROKEN, Finding
from conservedb.questions.answers import AsOf, NoSuch
from conservedb.questions.checks import check, check_step
from conservedb.questions.checks_answers import Judgement, PlannedStep
from conservedb.questions.naming import find_object
from conservedb.records.treatments import intervention

RECENT_DAYS = 366
"""Work that is certainly older is history: it is recorded, not judged."""
_PARTS = ("agents", "layers", "removals", "joint_events")
"""Subjects that belong to a step where they name one."""
_NEED_REASON = ("block", "warn")

Key = tuple[object, ...]
Found = dict[Key, Judgement]


@dataclass(frozen=True, slots=True)
class Judged:
    """What a rule of the trade says of a step that is about to be kept.

    `severity` is block, warn or inform; `certain` is False where it rests on what is only
    possible, and `broken` False where it cannot be told.
    """

    rule: str
    title: str
    severity: str
    sentence: str
    places: tuple[str, ...] = ()
    certain: bool = True
    broken: bool = True

    @property
    def needs_reason(self) -> bool:
        """Whether it is kept only with a reason."""
        return self.broken and self.severity in _NEED_REASON


@dataclass
class Bench:
    """What the rules find of an object before and after a step, and what it was done with."""

    connection: Connection
    number: str
    on: AsOf
    before: Found = field(default_factory=dict)
    steps: Found = field(default_factory=dict)
    notices: list[str] = field(default_factory=list)
    later: list[tuple[str, PlannedStep]] = field(default_factory=list)

    def look_before(self, entries: Sequence[Entry]) -> None:
        """The findings that stand already, and those of each agent at each place as planned."""
        self.before = self._standing()
        for mark, step in _planned(entries):
            if not self._plan(mark, step):
                self.later.append((mark, step))

    def new(self) -> list[Judgement]:
        """The findings that are new since, and those of the agents, most consequence first."""
        for mark, step in self.later:  # at a place, or with a material, that is new itself
            if not self._plan(mark, step):
                self.notices.append(f"{mark}: the rules did not judge {step.agent} there")
        new = {key: one for key, one in self._standing().items() if key not in self.before}
        return list((self.steps | new).values())

    def forget(self, entries: Sequence[Entry]) -> None:
        """Leave out what agents that are amended were found to do as they stood on record."""
        were = Bench(self.connection, self.number, self.on)
        for mark, step in _planned(entries):
            were._plan(mark, step)
        self.steps = {key: one for key, one in self.steps.items() if key not in were.steps}

    def _standing(self) -> Found:
        try:
            answer = check(self.connection, self.number, self.on)
        except NoSuch:
            return {}  # the object is new
        return {_key(one.finding): one for one in answer.findings}

    def _plan(self, mark: str, step: PlannedStep) -> bool:
        try:
            answer = check_step(self.connection, self.number, mark, step, self.on)
        except NoSuch:
            return False
        self.steps |= {_key(one.finding): one for one in answer.findings}
        return True


def told_of(judgement: Judgement) -> Judged:
    """A finding as a form shows it."""
    rule, finding = judgement.rule, judgement.finding
    return Judged(
        rule.key,
        rule.title,
        rule.severity,
        finding.sentence,
        finding.places,
        finding.certain,
        finding.outcome == BROKEN,
    )


def may_be_recent(
    connection: Connection, number: str, entries: Sequence[Entry], today: datetime.date
) -> list[Entry]:
    """The entries of steps that may have been done within the last year."""
    done = {one.cells.get("ref", ""): one for one in entries if one.subject == "interventions"}
    since = today.toordinal() - RECENT_DAYS
    recent = []
    for entry in entries:
        if entry.subject == "interventions":
            step: Entry | None = entry
            ref = ""
        elif entry.subject in _PARTS:
            ref = entry.cells.get("intervention", "").strip()
            step = done.get(ref)
        else:
            continue
        own = entry.cells.get("date", "").strip()
        if own:
            latest = _latest(own)
        elif step is not None:
            latest = _latest_of(step.cells)
        elif ref:
            latest = _on_record(connection, number, ref)
        else:
            continue  # a layer that no step laid is a description
        if latest >= since:
            recent.append(entry)
    return recent


def is_of_step(entry: Entry) -> bool:
    """Whether an entry tells of work done."""
    return entry.subject == "interventions" or (
        entry.subject in _PARTS and bool(entry.cells.get("intervention", "").strip())
    )


def _key(finding: Finding) -> Key:
    return (finding.rule, finding.places, finding.components, finding.layers, finding.outcome)


def _planned(entries: Iterable[Entry]) -> Iterable[tuple[str, PlannedStep]]:
    """Each agent at each place it is used at."""
    steps = {one.cells.get("ref", ""): one for one in entries if one.subject == "interventions"}
    for entry in entries:
        cells = entry.cells
        agent = cells.get("material", "").rsplit("=", 1)[-1].strip()
        if entry.subject != "agents" or not agent:
            continue
        listed = cells.get("place", "")
        step = steps.get(cells.get("intervention", ""))
        if not listed.strip() and step is not None:
            listed = step.cells.get("places", "")
        heat, dwell = _number(cells, "temperature_c"), _number(cells, "dwell_min")
        planned = PlannedStep(agent, cells.get("form", ""), heat, dwell)
        for item in split_list(listed):
            yield unescape(item), planned


def _number(cells: Mapping[str, str], name: str) -> float | None:
    try:
        value = float(cells.get(name, ""))
    except ValueError:
        return None
    return value if isfinite(value) else None


def _latest(words: str) -> int:
    try:
        return dates.read(words).latest
    except dates.DateError:
        return dates.UNKNOWN_END  # the checks of the entry say what is wrong with it


def _latest_of(cells: Mapping[str, str]) -> int:
    """The last day on which a step may have been done; undated historic work is history."""
    words = cells.get("date", "").strip()
    if words:
        return _latest(words)
    historic = cells.get("standing", "").strip().lower() == "historic"
    return dates.UNKNOWN_START if historic else dates.UNKNOWN_END


def _on_record(connection: Connection, number: str, ref: str) -> int:
    try:
        owner = find_object(connection, number)
    except NoSuch:
        return dates.UNKNOWN_END
    statement = select(intervention.c.date_latest).where(
        intervention.c.object_id == owner.id, intervention.c.ref == ref
    )
    latest = connection.execute(statement).scalar()
    return dates.UNKNOWN_END if latest is None else int(latest)
