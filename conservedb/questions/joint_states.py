"""The condition of every joint of an object on a day."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping
from typing import Any

from sqlalchemy import Connection, bindparam, case, func, select

from conservedb.knowledge.dating import day_entered, happened, recorded_by
from conservedb.knowledge.joints import NOT_RECORDED, JointEvent, condition
from conservedb.questions.asking import Question
from conservedb.records.places import joint_event, place
from conservedb.records.sources import source
from conservedb.records.treatments import intervention

Event = tuple[Any, ...]
_undated = joint_event.c.date_derived == "blank"
EVENT_COLUMNS = (
    joint_event.c.place_id,
    joint_event.c.event,
    *(
        case(
            (_undated, func.coalesce(intervention.c[name], joint_event.c[name])),
            else_=joint_event.c[name],
        ).label(name)
        for name in ("date_earliest", "date_latest", "date_flags")
    ),
    joint_event.c.step,
    source.c.date_latest.label("source_latest"),
    joint_event.c.entered,
)
"""What the condition of joints rests on; an undated event has the date of its intervention."""
EVENTS_FROM = joint_event.outerjoin(
    intervention, intervention.c.id == joint_event.c.intervention_id
).outerjoin(source, source.c.id == joint_event.c.source_id)
_EVENTS = Question(
    select(*EVENT_COLUMNS)
    .select_from(EVENTS_FROM)
    .where(
        joint_event.c.place_id.in_(
            select(place.c.id).where(place.c.object_id == bindparam("object"))
        )
    )
)
STATEMENTS = (_EVENTS,)


def conditions(
    connection: Connection,
    owner: int,
    joints: Iterable[tuple[int, int | None, int | None]],
    made: Mapping[int | None, int],
    whole_made: int,
    day: int,
) -> dict[int, str]:
    """The condition of each joint by its id.

    Args:
        joints: the id of each, and of the components on both sides.
        made: the earliest making of each component by its id.
        whole_made: that of the object.
    """
    events: dict[int, tuple[Event, ...]] = defaultdict(tuple)
    for at, *event in _EVENTS.tuples(connection, object=owner):
        events[at] += (tuple(event),)
    known: dict[tuple[int, tuple[Event, ...]], str] = {}
    found = {}
    for joint, one, other in joints:
        # Joints that went through the same on the same days stand alike: worked out once.
        bearers = [made[part] for part in (one, other) if part in made]
        alike = (max(bearers, default=whole_made), events[joint])
        if alike not in known:
            known[alike] = _condition(*alike, day) if alike[1] else NOT_RECORDED
        found[joint] = known[alike]
    return found


def _condition(floor: int, events: tuple[Event, ...], day: int) -> str:
    return condition([known_event(event, floor) for event in events], day).state


def known_event(event: Event, floor: int) -> JointEvent:
    """The event with the days on which it can have happened; `event` is EVENT_COLUMNS[1:]."""
    kind, earliest, latest, flags, step, source_latest, entered = event
    recorded = recorded_by(source_latest, entered)
    when = happened(earliest, latest, flags, recorded, floor, day_entered(entered))
    return JointEvent(kind or "", when, step)
