"""What is on record about the authorisation of steps: plans, decisions, standing approvals."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass

from sqlalchemy import BindParameter, Connection, bindparam, select, union

from conservedb.knowledge.authorisations import Authorisation, StandingApproval
from conservedb.knowledge.authority import Needed
from conservedb.knowledge.narrowing import Interval
from conservedb.knowledge.planned_work import PlannedStep, RecordedStep, WorkPlan
from conservedb.questions.asking import Question, Row, Rows, Selection, blank, dated
from conservedb.questions.evidence import BLANK, when
from conservedb.questions.named_work import Asked as AskedNames
from conservedb.questions.named_work import Named
from conservedb.questions.rewritten_plans import rewritten
from conservedb.records.authorisations import (
    NOBODY,
    authorisation,
    authorisation_step,
    needed_authorisation,
    standing_approval,
    standing_approval_kind,
)
from conservedb.records.people import person
from conservedb.records.plans import plan, plan_person, planned_step
from conservedb.records.treatments import intervention, treatment

_OBJECT: BindParameter[int] = bindparam("object")
_SCOPE: BindParameter[int] = bindparam("scope")


@dataclass(frozen=True, slots=True)
class Version:
    """A version of a plan, with the treatment that it belongs to."""

    treatment: int
    plan: WorkPlan


@dataclass(frozen=True, slots=True)
class Decision:
    """A decision, with the records that it points to; the treatment is that of its plan."""

    treatment: int | None
    step: int | None
    made: Authorisation

    def bears_on(self, treatment: int | None, step: int) -> bool:
        """Whether it is about a plan of that treatment or that step, or names neither."""
        if self.treatment is None and self.step is None:
            return True
        return self.step == step or (self.treatment is not None and self.treatment == treatment)


@dataclass(frozen=True, slots=True)
class Step:
    """A recorded step, with the treatment whose plan it falls under and its planned version."""

    id: int
    treatment: int | None
    version: int | None
    made: RecordedStep


@dataclass(frozen=True, slots=True)
class Work:
    """Steps, and all that may authorise them; versions by treatment, the newest last."""

    steps: tuple[Step, ...]
    versions: tuple[Version, ...]
    decisions: tuple[Decision, ...]
    standing: tuple[StandingApproval, ...]
    needed: tuple[Needed, ...]

    def plan_of(self, step: Step) -> WorkPlan | None:
        """The version that a step carries out, None where it names no planned step."""
        own = (one.plan for one in self.versions if one.treatment == step.treatment)
        return next((plan for plan in own if plan.version == step.version), None)

    def decisions_on(self, treatment: int | None, step: int) -> list[Authorisation]:
        """The decisions on any version of a treatment's plan, and on one step."""
        return [one.made for one in self.decisions if one.bears_on(treatment, step)]


class Asked:
    """The questions about some steps and the treatments they belong to, built once."""

    def __init__(self, steps: Selection, *treatments: Selection) -> None:
        carried = select(intervention.c.planned_step_id).where(intervention.c.id.in_(steps))
        carried_plans = select(planned_step.c.plan_id).where(planned_step.c.id.in_(carried))
        of_treatments = union(
            *treatments, select(plan.c.treatment_id).where(plan.c.id.in_(carried_plans))
        )
        plans = select(plan.c.id).where(plan.c.treatment_id.in_(of_treatments))
        decisions = union(
            select(authorisation.c.id).where(authorisation.c.plan_id.in_(plans)),
            select(authorisation.c.id).where(authorisation.c.intervention_id.in_(steps)),
            select(authorisation.c.id).where(
                authorisation.c.object_id == _OBJECT,
                authorisation.c.plan_id.is_(None),
                authorisation.c.intervention_id.is_(None),
            ),
        )
        self.steps = _steps(steps)
        self.plans = Question(
            select(plan.c.id, plan.c.ref, plan.c.treatment_id, plan.c.version)
            .where(plan.c.id.in_(plans))
            .order_by(plan.c.treatment_id, plan.c.version)
        )
        self.authors = Question(
            select(plan_person.c.plan_id, person.c.name)
            .join_from(plan_person, person, person.c.id == plan_person.c.person_id)
            .where(plan_person.c.plan_id.in_(plans))
            .order_by(plan_person.c.plan_id, plan_person.c.position)
        )
        self.planned = Question(
            select(
                planned_step.c.plan_id,
                planned_step.c.id,
                planned_step.c.ref,
                blank(planned_step.c.kind),
            )
            .where(planned_step.c.plan_id.in_(plans))
            .order_by(planned_step.c.plan_id, planned_step.c.position, planned_step.c.id)
        )
        self.names = AskedNames(plans, steps)
        self.decisions = _decisions(decisions)
        self.limited = Question(
            select(authorisation_step.c.authorisation_id, planned_step.c.ref)
            .join_from(
                authorisation_step,
                planned_step,
                planned_step.c.id == authorisation_step.c.planned_step_id,
            )
            .where(authorisation_step.c.authorisation_id.in_(decisions))
            .order_by(authorisation_step.c.authorisation_id, authorisation_step.c.position)
        )
        self.questions: tuple[Question, ...] = (
            *(self.steps, self.plans, self.authors, self.planned, self.decisions, self.limited),
            *(*self.names.questions, _STANDING, _NEEDED),
        )

    def work(self, connection: Connection, owner: int, scope: int) -> Work:
        """All of it, for the steps of one scope of an object."""
        asked = {"object": owner, "scope": scope}
        named = self.names.named(connection, asked)
        versions = self._versions(connection, asked, named)
        limited = _grouped(self.limited.all(connection, **asked))
        decisions = (
            _decision(row, tuple(limited[row.id]), rewritten(connection, row.id))
            for row in self.decisions.all(connection, **asked)
        )
        return Work(
            tuple(_step(row, named) for row in self.steps.all(connection, **asked)),
            versions,
            tuple(decisions),
            standing_approvals(connection),
            tuple(
                Needed(
                    row.kind,
                    "" if row.capacity == NOBODY else row.capacity,
                    row.author_alone == "yes",
                )
                for row in _NEEDED.all(connection)
            ),
        )

    def _versions(
        self, connection: Connection, asked: dict[str, int], named: Named
    ) -> tuple[Version, ...]:
        rows = self.plans.all(connection, **asked)
        if not rows:
            return ()
        authors = _grouped(self.authors.all(connection, **asked))
        planned: dict[int, list[PlannedStep]] = defaultdict(list)
        for owner, record, ref, kind in self.planned.all(connection, **asked):
            planned[owner].append(named.planned(record, ref, kind))
        return tuple(
            Version(
                row.treatment_id,
                WorkPlan(row.ref, row.version, tuple(authors[row.id]), tuple(planned[row.id])),
            )
            for row in rows
        )


def _steps(steps: Selection) -> Question:
    blamed = person.alias("blamed")
    return Question(
        select(
            intervention.c.id,
            intervention.c.ref,
            *(
                blank(intervention.c[name]).label(name)
                for name in ("kind", "standing", "deviation", "unauthorised_reason")
            ),
            blank(blamed.c.name).label("unauthorised_by"),
            blank(planned_step.c.ref).label("planned"),
            plan.c.version,
            plan.c.treatment_id.label("planned_in"),
            intervention.c.treatment_id,
            *dated(intervention, "date"),
        )
        .outerjoin_from(
            intervention, planned_step, planned_step.c.id == intervention.c.planned_step_id
        )
        .outerjoin(plan, plan.c.id == planned_step.c.plan_id)
        .outerjoin(blamed, blamed.c.id == intervention.c.unauthorised_by_id)
        .where(intervention.c.id.in_(steps))
        .order_by(intervention.c.id)
    )


def _decisions(decisions: Selection) -> Question:
    return Question(
        select(
            authorisation.c.id,
            authorisation.c.ref,
            *(
                blank(authorisation.c[name]).label(name)
                for name in ("capacity", "decision", "scope", "conditions")
            ),
            blank(person.c.name).label("person"),
            plan.c.version,
            plan.c.treatment_id,
            authorisation.c.intervention_id,
            blank(intervention.c.ref).label("intervention"),
            *dated(authorisation, "date"),
            *dated(authorisation, "expires"),
        )
        .outerjoin_from(authorisation, plan, plan.c.id == authorisation.c.plan_id)
        .outerjoin(intervention, intervention.c.id == authorisation.c.intervention_id)
        .outerjoin(person, person.c.id == authorisation.c.person_id)
        .where(authorisation.c.id.in_(decisions))
        .order_by(authorisation.c.id)
    )


_STANDING = Question(
    select(
        standing_approval.c.id,
        standing_approval.c.ref,
        blank(standing_approval.c.capacity).label("capacity"),
        blank(person.c.name).label("person"),
        blank(standing_approval.c.conditions).label("conditions"),
        blank(standing_approval_kind.c.kind).label("kind"),
        *dated(standing_approval, "since"),
        *dated(standing_approval, "until"),
    )
    .outerjoin_from(
        standing_approval,
        standing_approval_kind,
        standing_approval_kind.c.standing_approval_id == standing_approval.c.id,
    )
    .outerjoin(person, person.c.id == standing_approval.c.person_id)
    .order_by(standing_approval.c.id, standing_approval_kind.c.position)
)
_NEEDED = Question(
    select(
        needed_authorisation.c.kind,
        needed_authorisation.c.capacity,
        blank(needed_authorisation.c.author_alone).label("author_alone"),
    ).order_by(needed_authorisation.c.id)
)
_SINCE, _UNTIL = _STANDING.at("since_words"), _STANDING.at("until_words")
ONE_STEP = Asked(
    select(intervention.c.id).where(
        intervention.c.object_id == _OBJECT, intervention.c.id == _SCOPE
    ),
    select(intervention.c.treatment_id).where(
        intervention.c.id == _SCOPE, intervention.c.treatment_id.is_not(None)
    ),
)
STEPS_OF_TREATMENT = select(intervention.c.id).where(intervention.c.treatment_id == _SCOPE)
ONE_TREATMENT = Asked(STEPS_OF_TREATMENT, select(treatment.c.id).where(treatment.c.id == _SCOPE))
STATEMENTS = tuple(dict.fromkeys((*ONE_STEP.questions, *ONE_TREATMENT.questions)))
_DONE = ONE_STEP.steps.at("date_words")
_DECIDED = ONE_STEP.decisions.at("date_words")
_EXPIRES = ONE_STEP.decisions.at("expires_words")


def standing_approvals(connection: Connection) -> tuple[StandingApproval, ...]:
    """Every standing approval of the department."""
    kinds: dict[int, list[str]] = defaultdict(list)
    rows = _STANDING.all(connection)
    for row in rows:
        kinds[row.id] += [row.kind] if row.kind else []
    return tuple(
        StandingApproval(
            row.ref,
            tuple(kinds[row.id]),
            row.capacity,
            row.person,
            _days(row, _SINCE),
            _end(row, _UNTIL),
            row.conditions,
        )
        for row in {row.id: row for row in rows}.values()
    )


def _days(row: Row, at: int) -> Interval:
    """The days a date may mean; every day where it is blank or was not understood."""
    date = when(row, at)
    return Interval(date.earliest, date.latest, date.flags)


def _end(row: Row, at: int) -> Interval | None:
    """The same of an end, None where none is recorded."""
    return None if when(row, at) is BLANK else _days(row, at)


def _grouped(rows: Rows) -> dict[int, list[str]]:
    found: dict[int, list[str]] = defaultdict(list)
    for owner, word in rows:
        found[owner].append(word)
    return found


def _step(row: Row, named: Named) -> Step:
    made = RecordedStep(
        row.ref,
        row.kind,
        row.planned,
        row.standing,
        _days(row, _DONE),
        when(row, _DONE).said if row.date_derived != "blank" else "",
        row.deviation,
        unauthorised_reason=row.unauthorised_reason,
        unauthorised_by=row.unauthorised_by,
    )
    made = named.recorded(row.id, made)
    return Step(row.id, row.planned_in or row.treatment_id, row.version, made)


def _decision(row: Row, steps: tuple[str, ...], since: str) -> Decision:
    made = Authorisation(
        row.ref,
        row.capacity,
        row.person,
        row.decision,
        row.version,
        row.intervention,
        steps,
        row.scope,
        row.conditions,
        _days(row, _DECIDED),
        _end(row, _EXPIRES),
        since,
    )
    return Decision(row.treatment_id, row.intervention_id, made)


def _capacity(recorded: str) -> str:
    """Blank where the department's table says that a kind of step needs nobody's leave."""
    return "" if recorded == NOBODY else recorded
