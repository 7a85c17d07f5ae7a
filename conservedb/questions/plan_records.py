"""Plans of treatment with their steps, and the decisions on them, as they are written."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass

from sqlalchemy import Connection, Table, func, select

from conservedb.questions.asking import Question, Row, Rows, Selection, blank, cited, dated
from conservedb.questions.evidence import People, by_owner, people_of
from conservedb.records.authorisations import authorisation, authorisation_step
from conservedb.records.materials import material, material_class
from conservedb.records.objects import component
from conservedb.records.people import person
from conservedb.records.places import place
from conservedb.records.plans import (
    plan,
    plan_aim,
    plan_person,
    planned_step,
    planned_step_component,
    planned_step_place,
)
from conservedb.records.sources import source
from conservedb.records.treatments import intervention, treatment

Words = Mapping[int, tuple[str, ...]]


@dataclass(frozen=True, slots=True)
class Plans:
    """Versions of plans, their steps by plan, and decisions; words by the record they belong to."""

    plans: Rows
    authors: People
    aims: Words
    steps: Mapping[int, list[Row]]
    components: Words
    places: Words
    decisions: Rows
    limited: Words


class Asked:
    """The questions for the plans and decisions of a scope, built once."""

    def __init__(self, plans: Selection, decisions: Selection) -> None:
        steps = select(planned_step.c.id).where(planned_step.c.plan_id.in_(plans))
        self.plans = _plans(plans)
        self.authors = people_of(plan_person, plans)
        self.steps = _steps(plans)
        self.decisions = _decisions(decisions)
        self.words = {
            "aims": Question(
                select(plan_aim.c.plan_id, plan_aim.c.aim)
                .where(plan_aim.c.plan_id.in_(plans))
                .order_by(plan_aim.c.plan_id, plan_aim.c.position)
            ),
            "components": _marks(planned_step_component, component, steps),
            "places": _marks(planned_step_place, place, steps),
        }
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
        self.questions = (
            *(self.plans, self.authors, self.steps, self.decisions, self.limited),
            *self.words.values(),
        )

    def records(self, connection: Connection, scope: int) -> Plans:
        """Everything planned and decided in the scope with this id."""
        plans = self.plans.all(connection, scope=scope)
        decisions = self.decisions.all(connection, scope=scope)
        steps: dict[int, list[Row]] = defaultdict(list)
        for row in self.steps.all(connection, scope=scope) if plans else ():
            steps[row.plan_id].append(row)
        words = {
            name: grouped(asked.all(connection, scope=scope)) if plans else {}
            for name, asked in self.words.items()
        }
        return Plans(
            plans,
            by_owner(self.authors.all(connection, scope=scope)) if plans else {},
            words["aims"],
            steps,
            words["components"],
            words["places"],
            decisions,
            grouped(self.limited.all(connection, scope=scope)) if decisions else {},
        )


def grouped(rows: Rows) -> Words:
    """Words by the record that they belong to, in their order."""
    found: dict[int, tuple[str, ...]] = defaultdict(tuple)
    for owner, word in rows:
        found[owner] += (word,)
    return found


def _plans(plans: Selection) -> Question:
    return Question(
        select(
            plan.c.id,
            plan.c.ref,
            plan.c.version,
            treatment.c.ref.label("treatment"),
            *(
                blank(plan.c[name]).label(name)
                for name in ("justification", "alternatives", "risks", "note")
            ),
            *dated(plan, "date"),
            *cited(source),
        )
        .join_from(plan, treatment, treatment.c.id == plan.c.treatment_id)
        .outerjoin(source, source.c.id == plan.c.source_id)
        .where(plan.c.id.in_(plans))
        .order_by(plan.c.treatment_id, plan.c.version)
    )


def _steps(plans: Selection) -> Question:
    texts = ("kind", "technique", "concentration", "carrier", "note")
    material_name = func.coalesce(
        material.c.name,
        material.c.key,
        planned_step.c.material_words,
        material_class.c.name,
        material_class.c.key,
    )
    return Question(
        select(
            planned_step.c.id,
            planned_step.c.plan_id,
            planned_step.c.ref,
            planned_step.c.position,
            blank(material_name).label("material"),
            *(blank(planned_step.c[name]).label(name) for name in texts),
        )
        .outerjoin_from(planned_step, material, material.c.id == planned_step.c.material_id)
        .outerjoin(material_class, material_class.c.id == planned_step.c.material_class_id)
        .where(planned_step.c.plan_id.in_(plans))
        .order_by(planned_step.c.plan_id, planned_step.c.position, planned_step.c.id)
    )


def _marks(link: Table, target: Table, steps: Selection) -> Question:
    """The marks of the parts or places that planned steps name."""
    return Question(
        select(link.c.planned_step_id, target.c.mark)
        .join_from(link, target, target.c.id == link.c[f"{target.name}_id"])
        .where(link.c.planned_step_id.in_(steps))
        .order_by(link.c.planned_step_id, link.c.position)
    )


def _decisions(decisions: Selection) -> Question:
    texts = ("capacity", "decision", "scope", "conditions", "evidence", "note")
    return Question(
        select(
            authorisation.c.id,
            authorisation.c.ref,
            authorisation.c.plan_id,
            blank(plan.c.ref).label("plan"),
            plan.c.version,
            blank(intervention.c.ref).label("intervention"),
            blank(person.c.name).label("person"),
            *(blank(authorisation.c[name]).label(name) for name in texts),
            *dated(authorisation, "date"),
            *dated(authorisation, "expires"),
            *cited(source),
        )
        .outerjoin_from(authorisation, plan, plan.c.id == authorisation.c.plan_id)
        .outerjoin(intervention, intervention.c.id == authorisation.c.intervention_id)
        .outerjoin(person, person.c.id == authorisation.c.person_id)
        .outerjoin(source, source.c.id == authorisation.c.source_id)
        .where(authorisation.c.id.in_(decisions))
        .order_by(authorisation.c.date_earliest, authorisation.c.id)
    )
