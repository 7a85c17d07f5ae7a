"""The condition of every joint of an object on a day."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping

from sqlalchemy import Connection, bindparam, case, func, select

from conservedb.dates import UNKNOWN_END, from_iso
from conservedb.knowledge.dating import happened
from conservedb.knowledge.joints import NOT_RECORDED, JointEvent, condition
from conservedb.questions.asking import Question, Row, Rows
from conservedb.records.places import joint_event, place
from conservedb.records.sources import source
from conservedb.records.treatments import intervention

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
    places: Rows,
    made: Mapping[int, int],
    whole_made: int,
    day: int,
) -> dict[int, str]:
    """The condition of each joint by its id.

    Args:
        made: the earliest making of each component by its id.
        whole_made: that of the object.
    """
    events: dict[int, list[Row]] = defaultdict(list)
    for row in _EVENTS.all(connection, object=owner):
        events[row.place_id].append(row)
    found = {}
    for joint in places:
        if joint.kind == "joint":
            floor = max(
                made.get(joint.component_id, whole_made),
                made.get(joint.other_component_id, whole_made),
                whole_made,
            )
            known = [known_event(row, floor) for row in events.get(joint.id, ())]
            found[joint.id] = condition(known, day).state if known else NOT_RECORDED
    return found


def known_event(row: Row, floor: int) -> JointEvent:
    """The event with the days on which it can have happened."""
    recorded = row.date_latest
    if recorded >= UNKNOWN_END:
        known = row.source_latest is not None and row.source_latest < UNKNOWN_END
        recorded = row.source_latest if known else from_iso(row.entered[:10])
    days = happened(row.date_earliest, row.date_latest, row.date_flags, recorded, floor)
    return JointEvent(row.event or "", days, row.step)
