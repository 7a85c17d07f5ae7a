"""The last step of a kind, to be taken over for the next one."""

from __future__ import annotations

import datetime
from dataclasses import fields, replace

from sqlalchemy import Connection, select

from conservedb.exchange.cells import split_list, unescape
from conservedb.exchange.deeds import LAID, USED, Step
from conservedb.exchange.keys import KeyBook
from conservedb.exchange.reading_cells import cells_of
from conservedb.exchange.subjects import BY_NAME
from conservedb.questions.naming import find_object
from conservedb.records.layers import layer
from conservedb.records.people import person
from conservedb.records.treatments import agent, intervention, intervention_person
from conservedb.store.keys import fold

_OF_THAT_TIME = (
    "date",
    "time_of_day",
    "note",
    "deviation",
    "unauthorised_reason",
    "unauthorised_by",
    "dry",
    "uptake_g",
    "depth_mm",
    "depth_known",
    "cleared",
    "cleared_how",
    "stack",
)
"""What was so that time only, and is not taken over."""
_OF_THAT_DAY = ("technique", "side", "zone", "coverage", "treated_from", "cycles")
"""How it was done: taken over within a day's work, and no longer."""

NO_STEP = ("examine", "sample", "remove earlier work")
"""Kinds that have forms of their own."""


def last_used(connection: Connection, number: str, kind: str, who: str) -> Step | None:
    """The step of a kind last recorded on an object: by this person, else by anybody.

    Args:
        kind: "" is any kind of step that lays or uses something.

    Raises:
        NoSuch: there is no such object.
    """
    owner = find_object(connection, number)
    of_kind = (
        select(intervention.c.id)
        .where(
            intervention.c.object_id == owner.id,
            intervention.c.kind == kind if kind else intervention.c.kind.not_in(NO_STEP),
        )
        .order_by(intervention.c.id.desc())
        .limit(1)
    )
    mine = (
        select(intervention_person.c.intervention_id)
        .join(person, person.c.id == intervention_person.c.person_id)
        .where(person.c.name_folded == fold(who))
    )
    for statement in (of_kind.where(intervention.c.id.in_(mine)), of_kind):
        found = connection.execute(statement).scalar()
        if found is not None:
            return _step(connection, found)
    return None


def again(step: Step, places: tuple[str, ...], today: datetime.date) -> Step:
    """The same step on the next places, today; what was so that time only is blank."""
    day = today.isoformat()
    only = _OF_THAT_TIME if step.date == day else (*_OF_THAT_TIME, *_OF_THAT_DAY)
    blank = dict.fromkeys(only, "") | {"date": day}
    return replace(step, components=(), places=places, **blank)


def _step(connection: Connection, found: int) -> Step:
    """A step as it stands on record, with the first layer laid and the first agent used."""
    book = KeyBook(connection)
    done = cells_of(connection, BY_NAME["interventions"], found, book)
    same = {field.name: done[field.name] for field in fields(Step) if field.name in done}
    for name in ("components", "places"):
        same[name] = tuple(map(unescape, split_list(done[name])))  # type: ignore[assignment]
    for name, table in (("layers", layer), ("agents", agent)):
        statement = select(table.c.id).where(table.c.intervention_id == found)
        first = connection.execute(statement.order_by(table.c.id).limit(1)).scalar()
        if first is not None:
            cells = cells_of(connection, BY_NAME[name], first, book)
            taken = {one: one for one in LAID} if name == "layers" else USED
            same |= {field: cells[header] for field, header in taken.items()}
    return Step(**same)  # type: ignore[arg-type]
