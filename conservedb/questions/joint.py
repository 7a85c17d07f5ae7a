"""What a joint did, and what crosses it."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence

from sqlalchemy import Connection, bindparam, select, union_all

from conservedb.dates import describe_flags
from conservedb.knowledge.joints import JointEvent, condition
from conservedb.knowledge.layers import Interval
from conservedb.questions.answers import AsOf, Fixing, JointCondition
from conservedb.questions.asking import Question, Row, Rows, blank, cited, dated
from conservedb.questions.evidence import BLANK, interval, source_of, when
from conservedb.questions.lasting import lasting
from conservedb.questions.retiring import retired_of, retirement, standing
from conservedb.records.materials import material
from conservedb.records.objects import bridge, component
from conservedb.records.places import joint_event, place
from conservedb.records.sources import source
from conservedb.records.treatments import intervention
from conservedb.store.keys import sort_key

_EVENTS = Question(
    select(
        joint_event.c.ref,
        blank(joint_event.c.event).label("event"),
        *dated(joint_event, "date"),
        *dated(intervention, "date", "done"),
        joint_event.c.step,
        *cited(source),
        source.c.date_latest.label("source_latest"),
        joint_event.c.entered,
        blank(joint_event.c.note).label("note"),
        blank(joint_event.c.location).label("location"),
    )
    .outerjoin_from(joint_event, intervention, intervention.c.id == joint_event.c.intervention_id)
    .outerjoin(source, source.c.id == joint_event.c.source_id)
    .where(joint_event.c.place_id == bindparam("place"))
    .order_by(joint_event.c.id)
)
_DATE, _DONE, _SOURCE = (_EVENTS.at(n) for n in ("date_words", "done_words", "source_ref"))

_CROSSING = select(bridge.c.component_id).where(bridge.c.place_id == bindparam("place"))
_FIXINGS = Question(
    select(
        component.c.id,
        component.c.mark,
        *(
            blank(component.c[name]).label(name)
            for name in ("name", "kind", "origin", "material_words", "known_from", "note")
        ),
        blank(material.c.name).label("material_name"),
        blank(material.c.key).label("material"),
        *dated(component, "made"),
        *dated(component, "lost"),
        *retirement(),
        *cited(source),
        source.c.date_latest.label("source_latest"),
        component.c.entered,
    )
    .outerjoin_from(component, material, material.c.id == component.c.material_id)
    .outerjoin(source, source.c.id == component.c.source_id)
    .where(component.c.id.in_(_CROSSING))
    .order_by(component.c.mark_folded)
)
_MADE, _LOST, _KNOWN = (_FIXINGS.at(n) for n in ("made_words", "lost_words", "source_ref"))

_RETIRED = _FIXINGS.at("retired_words")
_HOLES = Question(
    union_all(
        *(
            select(place.c.mark, bridge.c.component_id.label("fixing"))
            .join_from(bridge, place, side == bridge.c.component_id)
            .where(bridge.c.place_id == bindparam("place"), place.c.kind == "joint")
            for side in (place.c.component_id, place.c.other_component_id)
        )
    )
)
STATEMENTS = (_EVENTS, _FIXINGS, _HOLES)


def events_at(connection: Connection, at: int) -> Rows:
    """Every recorded event of a joint."""
    return _EVENTS.all(connection, place=at)


def known_events(rows: Rows, floor: int) -> list[JointEvent]:
    """The events with their intervals; an undated one has the date of its intervention."""
    found = []
    for row in rows:
        date = when(row, _DATE)
        if date is BLANK:
            date = when(row, _DONE)
        days = interval(date, floor, row.source_latest, row.entered)
        found.append(JointEvent(row.event, days, row.step, row.ref))
    return found


def joint_condition(rows: Rows, events: Sequence[JointEvent], day: int) -> JointCondition:
    """The condition at the close of a day, and the event that brought it about."""
    found = condition(events, day)
    row = next((r for r in rows if found.since and r.ref == found.since.ref), None)
    qualified = describe_flags(found.flags)
    if row is None:
        return JointCondition(found.state, found.possible, qualified, None, None, "")
    date = when(row, _DATE)
    if date is BLANK:
        date = when(row, _DONE)
    note = "; ".join(text for text in (row.location, row.note) if text)
    return JointCondition(
        found.state, found.possible, qualified, date, source_of(row, _SOURCE), note
    )


def fixings_at(connection: Connection, at: int, whole: Interval, on: AsOf) -> tuple[Fixing, ...]:
    """The components that cross a joint, with the joints in which they are set."""
    rows = _FIXINGS.all(connection, place=at)
    if not rows:
        return ()
    holes: dict[int, list[str]] = defaultdict(list)
    for mark, fixing in _HOLES.all(connection, place=at):
        holes[fixing].append(mark)
    return tuple(
        _fixing(row, tuple(sorted(set(holes[row.id]), key=sort_key)), whole, on) for row in rows
    )


def _fixing(row: Row, holes: tuple[str, ...], whole: Interval, on: AsOf) -> Fixing:
    made, lost = when(row, _MADE), when(row, _LOST)
    lasts = lasting(whole, made, lost, row.origin, row.source_latest, row.entered)
    retired = retired_of(row, _RETIRED)
    state, possible, _ = standing(lasts, retired, on.last)
    return Fixing(
        row.mark,
        row.name,
        row.kind,
        row.material_name or row.material or row.material_words,
        made,
        lost,
        row.known_from,
        state,
        possible,
        source_of(row, _KNOWN),
        holes,
        row.note,
        retired,
    )
