"""What is on record about the treatments of an object, beside what a history tells."""

from __future__ import annotations

from typing import Any

from sqlalchemy import (
    BindParameter,
    ColumnElement,
    Select,
    Table,
    bindparam,
    exists,
    func,
    or_,
    select,
)

from conservedb.questions.asking import Question, blank, dated
from conservedb.questions.authority_records import STEPS_OF_TREATMENT
from conservedb.questions.history_records import Asked
from conservedb.questions.scopes import of_treatment
from conservedb.records.batches import batch
from conservedb.records.layers import layer, removal
from conservedb.records.objects import component, warning
from conservedb.records.people import person
from conservedb.records.treatments import agent, intervention, treatment

_OBJECT: BindParameter[int] = bindparam("object")
_SCOPE: BindParameter[int] = bindparam("scope")
ASKED = Asked(of_treatment())
"""What the steps of a treatment did and found, as a history tells it."""

TREATMENTS = Question(
    select(
        treatment.c.id,
        treatment.c.ref,
        *(
            blank(treatment.c[name]).label(name)
            for name in ("title", "purpose", "status", "note", "result", "recommendations")
        ),
        blank(person.c.name).label("lead"),
        *dated(treatment, "begun"),
        *dated(treatment, "ended"),
        *dated(treatment, "next_check"),
    )
    .outerjoin_from(treatment, person, person.c.id == treatment.c.lead_id)
    .where(treatment.c.object_id == _OBJECT)
    .order_by(treatment.c.begun_latest.desc(), treatment.c.id.desc())
)
STEPS_COUNTED = Question(
    select(intervention.c.treatment_id, func.count().label("number"))
    .where(intervention.c.object_id == _OBJECT)
    .group_by(intervention.c.treatment_id)
)
_writer = person.alias("writer")
STEPS = Question(
    select(
        intervention.c.id,
        *(
            blank(intervention.c[name]).label(name)
            for name in ("time_of_day", "circumstances", "methods")
        ),
        intervention.c.recorded_over,
        blank(_writer.c.name).label("recorded_by"),
        *dated(intervention, "recorded"),
    )
    .outerjoin_from(intervention, _writer, _writer.c.id == intervention.c.recorded_by_id)
    .where(intervention.c.id.in_(STEPS_OF_TREATMENT))
)


def _by_step(table: Table, *columns: str, texts: tuple[str, ...]) -> Select[tuple[int]]:
    """Further columns of what steps laid, took off or used."""
    return select(
        table.c.id,
        table.c.ref,
        table.c.intervention_id,
        *(table.c[name] for name in columns),
        *(blank(table.c[name]).label(name) for name in texts),
    ).where(table.c.object_id == _OBJECT, table.c.intervention_id.in_(STEPS_OF_TREATMENT))


LAID = Question(
    _by_step(
        layer,
        *("temperature_c", "cycles", "uptake_g", "depth_mm", "recorded_over"),
        texts=("concentration", "carrier", "treated_from", "depth_known"),
    )
    .add_columns(
        blank(batch.c.ref).label("batch"),
        blank(batch.c.lot).label("lot"),
    )
    .outerjoin_from(layer, batch, batch.c.id == layer.c.batch_id)
)
REMOVED = Question(_by_step(removal, texts=("kept_what", "kept_where", "residue_side", "residue")))
USED = Question(
    _by_step(agent, texts=("concentration",))
    .add_columns(blank(batch.c.ref).label("batch"), blank(batch.c.lot).label("lot"))
    .outerjoin_from(agent, batch, batch.c.id == agent.c.batch_id)
)
_sized = or_(*(component.c[f"{side}_mm"].is_not(None) for side in ("width", "height", "depth")))
_has: list[ColumnElement[Any]] = [
    exists().where(component.c.object_id == _OBJECT).label("components"),
    exists().where(component.c.object_id == _OBJECT, _sized).label("dimensions"),
    exists().where(warning.c.object_id == _OBJECT).label("warnings"),
    exists()
    .where(
        intervention.c.object_id == _OBJECT,
        intervention.c.treatment_id.is_distinct_from(_SCOPE),
    )
    .label("past_treatment"),
]
OBJECT_HAS = Question(select(*_has))
"""What of an object is on record at all, as guidelines ask it of an examination."""
STATEMENTS = (
    *(TREATMENTS, STEPS_COUNTED, STEPS, LAID, REMOVED, USED, OBJECT_HAS),
    *ASKED.questions(),
)
