"""What wants attention before anything is asked."""

from __future__ import annotations

import datetime
from collections import defaultdict
from operator import itemgetter

from sqlalchemy import (
    BindParameter,
    ColumnElement,
    Connection,
    bindparam,
    exists,
    func,
    literal_column,
    select,
    union_all,
)

from conservedb.dates import OPEN_START
from conservedb.knowledge.joints import JointEvent, condition
from conservedb.knowledge.layers import GONE, NOT_YET, Bounds, possible
from conservedb.questions.answers import Hit, StartAnswer
from conservedb.questions.asking import Question, Row, blank, dated
from conservedb.questions.evidence import when
from conservedb.questions.joint_states import EVENT_COLUMNS, EVENTS_FROM, known_event
from conservedb.questions.wording import STATE_WORDS
from conservedb.records.layers import BOUNDS, TEMPORARY_ROLES, layer
from conservedb.records.materials import material
from conservedb.records.objects import component, object_, warning
from conservedb.records.people import person
from conservedb.records.places import RESTLESS, joint_event, place
from conservedb.records.treatments import intervention, treatment

_DAY: BindParameter[int] = bindparam("day")
_MOST = 50
_RECENT = 10

_TREATMENTS = Question(
    select(
        treatment.c.ref,
        object_.c.number.label("object"),
        blank(treatment.c.title).label("title"),
        blank(treatment.c.status).label("status"),
        blank(person.c.name).label("lead"),
        *dated(treatment, "begun"),
    )
    .outerjoin_from(treatment, object_, object_.c.id == treatment.c.object_id)
    .outerjoin(person, person.c.id == treatment.c.lead_id)
    .where(
        treatment.c.ended_derived == "blank",
        treatment.c.begun_derived != "blank",
        treatment.c.begun_earliest <= _DAY,
    )
    .order_by(treatment.c.begun_latest.desc(), treatment.c.id.desc())
    .limit(_MOST)
)
_BEGUN = _TREATMENTS.at("begun_words")


def _written_out(words: tuple[str, ...]) -> list[ColumnElement[str]]:
    """Words of ours as text of the statement: only so does SQLite use a partial index on them."""
    return [literal_column(f"'{word}'") for word in words]


_TEMPORARY = Question(
    select(
        object_.c.number.label("object"),
        blank(place.c.mark).label("mark"),
        layer.c.ref,
        layer.c.role,
        blank(func.coalesce(material.c.name, material.c.key, layer.c.material_words)).label(
            "material"
        ),
        *(layer.c[name] for name in BOUNDS),
    )
    .outerjoin_from(layer, object_, object_.c.id == layer.c.object_id)
    .outerjoin(place, place.c.id == layer.c.place_id)
    .outerjoin(material, material.c.id == layer.c.material_id)
    .where(
        layer.c.role.in_(_written_out(TEMPORARY_ROLES)),
        layer.c.came_from <= _DAY,
        layer.c.gone_to > _DAY,
    )
    .order_by(layer.c.came_from.desc(), layer.c.id)
    .limit(_MOST)
)
_BOUNDS = _TEMPORARY.at(BOUNDS[0])

_later = joint_event.alias("later")
_restless = (
    select(joint_event.c.place_id)
    .where(
        joint_event.c.event.in_(_written_out(RESTLESS)),
        joint_event.c.date_earliest <= _DAY,
        ~exists().where(
            _later.c.place_id == joint_event.c.place_id,
            _later.c.event.in_(_written_out(("closed", "opened"))),
            _later.c.date_earliest > joint_event.c.date_latest,
            _later.c.date_latest <= _DAY,
        ),
    )
    .order_by(joint_event.c.date_latest.desc())
    .limit(4 * _MOST)
)
"""Joints that moved or failed and were not certainly seen to afterwards: the latest of them."""
_EVENTS = Question(
    select(*EVENT_COLUMNS).select_from(EVENTS_FROM).where(joint_event.c.place_id.in_(_restless))
)
_JOINTS = Question(
    select(
        place.c.id,
        object_.c.number.label("object"),
        place.c.mark,
        blank(place.c.name).label("name"),
        place.c.load_kg,
    )
    .outerjoin_from(place, object_, object_.c.id == place.c.object_id)
    .where(place.c.id.in_(_restless))
)
_CHECKS = Question(
    select(
        object_.c.number.label("object"),
        blank(func.coalesce(place.c.mark, component.c.mark)).label("mark"),
        blank(warning.c.kind).label("kind"),
        blank(warning.c.text).label("text"),
        *dated(warning, "until"),
    )
    .outerjoin_from(warning, object_, object_.c.id == warning.c.object_id)
    .outerjoin(component, component.c.id == warning.c.component_id)
    .outerjoin(place, place.c.id == warning.c.place_id)
    .where(warning.c.until_latest < _DAY)
    .order_by(warning.c.until_latest.desc())
    .limit(_MOST)
)
_UNTIL = _CHECKS.at("until_words")
_NEXT_CHECKS = Question(
    select(
        object_.c.number.label("object"),
        treatment.c.ref,
        blank(treatment.c.title).label("title"),
        *dated(treatment, "next_check"),
    )
    .outerjoin_from(treatment, object_, object_.c.id == treatment.c.object_id)
    .where(treatment.c.next_check_latest < _DAY)
    .order_by(treatment.c.next_check_latest.desc())
    .limit(_MOST)
)
_NEXT_CHECK = _NEXT_CHECKS.at("next_check_words")
_WORKED_ON = Question(
    select(
        intervention.c.object_id,
        object_.c.number.label("object"),
        blank(object_.c.title).label("title"),
        blank(intervention.c.kind).label("kind"),
        *dated(intervention, "date"),
    )
    .outerjoin_from(intervention, object_, object_.c.id == intervention.c.object_id)
    .where(intervention.c.date_latest <= _DAY)
    .order_by(intervention.c.date_latest.desc())
    .limit(20 * _RECENT)
)
_WORKED = _WORKED_ON.at("date_words")
_ENTERED = Question(
    select(
        object_.c.id.label("object_id"),
        object_.c.number.label("object"),
        blank(object_.c.title).label("title"),
        blank(object_.c.kind).label("kind"),
    )
    .order_by(object_.c.id.desc())
    .limit(_RECENT)
)
_COUNTED = {
    "objects": object_,
    "treatments": treatment,
    "people": person,
}
_COUNTS = Question(
    union_all(
        *(
            select(
                literal_column(f"'{name}'").label("name"), func.count().label("number")
            ).select_from(table)
            for name, table in _COUNTED.items()
        )
    )
)
STATEMENTS = (
    _TREATMENTS,
    _TEMPORARY,
    _EVENTS,
    _JOINTS,
    _CHECKS,
    _NEXT_CHECKS,
    _WORKED_ON,
    _ENTERED,
    _COUNTS,
)


def start(connection: Connection, today: datetime.date) -> StartAnswer:
    """Open treatments, temporary layers, restless joints, checks due, recent objects."""
    day = today.toordinal()
    return StartAnswer(
        tuple(_treatment(row) for row in _TREATMENTS.all(connection, day=day)),
        tuple(_temporary(row, day) for row in _TEMPORARY.all(connection, day=day)),
        tuple(_restless_joints(connection, day)),
        tuple(_checks(connection, day)),
        tuple(_recent(connection, day)),
        dict(_COUNTS.all(connection)),
    )


def _said(*words: str) -> str:
    return ", ".join(word for word in words if word)


def _treatment(row: Row) -> Hit:
    detail = _said(f"begun {when(row, _BEGUN).said}", row.lead, row.status)
    return Hit("treatment", row.object, row.ref, row.title, detail)


def _temporary(row: Row, day: int) -> Hit:
    mask = possible(Bounds(*row[_BOUNDS : _BOUNDS + len(BOUNDS)]), day)
    unsure = STATE_WORDS["uncertain"] if mask & (NOT_YET | GONE) else ""
    label = _said(row.material or "material not recorded", row.role)
    return Hit("layer", row.object, row.mark, label, _said(row.ref, unsure))


def _restless_joints(connection: Connection, day: int) -> list[Hit]:
    """Joints that are or may be moving or failed on the day, the heaviest load first."""
    events: dict[int, list[JointEvent]] = defaultdict(list)
    for at, *event in _EVENTS.tuples(connection, day=day):
        events[at].append(known_event(tuple(event), OPEN_START))
    found = []
    for row in _JOINTS.all(connection, day=day):
        standing = condition(events[row.id], day)
        if {"moving", "failed"} & set(standing.possible):
            load = "load not recorded" if row.load_kg is None else f"carries {row.load_kg:g} kg"
            said = " or ".join(standing.possible)
            unsure = f"{STATE_WORDS['uncertain']}: {said}" if len(standing.possible) > 1 else said
            hit = Hit("place", row.object, row.mark, row.name, _said(unsure, load))
            found.append((-(row.load_kg or 0), hit))
    found.sort(key=itemgetter(0))
    return [hit for _, hit in found[:_MOST]]


def _checks(connection: Connection, day: int) -> list[Hit]:
    """Warnings that have run out and treatments whose next check has passed, the latest first."""
    found = []
    for row in _CHECKS.all(connection, day=day):
        detail = f"until {when(row, _UNTIL).said}"
        hit = Hit("warning", row.object, row.mark, _said(row.kind, row.text), detail)
        found.append((row.until_latest, hit))
    for row in _NEXT_CHECKS.all(connection, day=day):
        label = f"check after {row.title}" if row.title else "check after treatment"
        hit = Hit("treatment", row.object, row.ref, label, f"due {when(row, _NEXT_CHECK).said}")
        found.append((row.next_check_latest, hit))
    found.sort(key=itemgetter(0), reverse=True)
    return [hit for _, hit in found[:_MOST]]


def _recent(connection: Connection, day: int) -> list[Hit]:
    """The objects with the latest interventions; where these are few, those entered last."""
    found: dict[int, Hit] = {}
    for row in _WORKED_ON.all(connection, day=day):
        detail = _said(row.kind, when(row, _WORKED).said)
        found.setdefault(row.object_id, Hit("object", row.object, "", row.title, detail))
    for row in _ENTERED.all(connection):
        found.setdefault(row.object_id, Hit("object", row.object, "", row.title, row.kind))
    return list(found.values())[:_RECENT]
