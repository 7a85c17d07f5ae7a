"""The places of an object on a day: how much lies there for certain, how much perhaps."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from sqlalchemy import (
    BindParameter,
    ColumnElement,
    Connection,
    and_,
    bindparam,
    case,
    func,
    literal_column,
    select,
)

from conservedb.knowledge.dating import made_from
from conservedb.knowledge.layers import Interval
from conservedb.questions.answers import PlaceRow
from conservedb.questions.asking import Question, Rows, blank
from conservedb.questions.joint_states import STATEMENTS as _JOINT_STATEMENTS
from conservedb.questions.joint_states import conditions
from conservedb.questions.states import (
    certainly_there,
    mask_at,
    possibly_there,
    rests_on_qualified,
)
from conservedb.records.layers import layer, layer_candidate
from conservedb.records.places import place
from conservedb.store.keys import sort_key

_OBJECT: BindParameter[int] = bindparam("object")
_DAY: BindParameter[int] = bindparam("day")

_PLACES = Question(
    select(
        place.c.id,
        place.c.mark,
        blank(place.c.kind).label("kind"),
        place.c.component_id,
        place.c.other_component_id,
        blank(place.c.name).label("name"),
        place.c.load_kg,
    ).where(place.c.object_id == _OBJECT)
)
_IN_OBJECT = select(place.c.id).where(place.c.object_id == _OBJECT)
_SURE = and_(certainly_there(layer.c, _DAY), ~rests_on_qualified(layer.c, mask_at(layer.c, _DAY)))


def _how_many(condition: ColumnElement[bool]) -> ColumnElement[int]:
    return func.sum(case((condition, literal_column("1")), else_=literal_column("0")))


_LAYERS = Question(
    select(
        layer.c.place_id,
        _how_many(_SURE).label("certain"),
        _how_many(possibly_there(layer.c, _DAY)).label("possible"),
    )
    .where(layer.c.place_id.in_(_IN_OBJECT))
    .group_by(layer.c.place_id)
)
_CANDIDATES = Question(
    select(layer_candidate.c.place_id, func.count().label("possible"))
    .join_from(layer_candidate, layer, layer.c.id == layer_candidate.c.layer_id)
    .where(layer_candidate.c.place_id.in_(_IN_OBJECT), possibly_there(layer.c, _DAY))
    .group_by(layer_candidate.c.place_id)
)
STATEMENTS = (_PLACES, _LAYERS, _CANDIDATES, *_JOINT_STATEMENTS)


def places_of(
    connection: Connection,
    owner: int,
    components: Rows,
    marks: Mapping[int, str],
    whole: Interval,
    day: int,
) -> tuple[PlaceRow, ...]:
    """The places of an object in natural order of their marks.

    Args:
        components: rows with the id and the earliest making of every component.
        marks: the mark of each component by its id.
        whole: when the object was made.
    """
    places = _PLACES.tuples(connection, object=owner)
    places.sort(key=_by_mark)
    certain: dict[int, int] = {}
    unsure: dict[int, int] = {}
    for at, sure, possible in _LAYERS.tuples(connection, object=owner, day=day):
        certain[at], unsure[at] = sure, possible - sure
    for at, possible in _CANDIDATES.tuples(connection, object=owner, day=day):
        unsure[at] = unsure.get(at, 0) + possible
    made = {row.id: made_from(row.made_earliest, whole.earliest) for row in components}
    joints = [(row[0], row[3], row[4]) for row in places if row[2] == "joint"]
    standing = conditions(connection, owner, joints, made, whole.earliest, day)
    return tuple(
        [
            PlaceRow(
                mark,
                kind,
                marks.get(component_id, ""),
                marks.get(other_id, ""),
                name,
                certain.get(at, 0),
                unsure.get(at, 0),
                standing.get(at, ""),
                load_kg,
            )
            for at, mark, kind, component_id, other_id, name, load_kg in places
        ]
    )


def _by_mark(row: tuple[Any, ...]) -> str:
    return sort_key(row[1])
