"""What bears on taking a layer off: bearers, places near, spot tests, and support put in."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from sqlalchemy import BindParameter, ColumnElement, Connection, bindparam, select, union_all

from conservedb.dates import is_known
from conservedb.knowledge.behaviour import Fact
from conservedb.questions import place as place_question
from conservedb.questions import spot_test_records
from conservedb.questions.answers import AsOf, PlaceAnswer
from conservedb.questions.asking import Question, blank, dated
from conservedb.questions.evidence import when
from conservedb.questions.naming import find_object
from conservedb.questions.spot_test_records import tests_on
from conservedb.records.layers import layer
from conservedb.records.objects import bridge, component
from conservedb.records.places import joint_event, place
from conservedb.records.rules import near
from conservedb.records.treatments import (
    intervention,
    intervention_component,
    intervention_place,
)
from conservedb.store.keys import fold

_PLACE: BindParameter[int] = bindparam("place")
_OBJECT: BindParameter[int] = bindparam("object")

_HERE = Question(
    select(place.c.id, place.c.component_id, place.c.other_component_id, blank(place.c.kind)).where(
        place.c.object_id == _OBJECT, place.c.mark_folded == bindparam("mark")
    )
)


def _bearing(side: ColumnElement[Any], chosen: ColumnElement[bool]) -> Any:  # noqa: ANN401
    return select(
        component.c.id,
        component.c.mark,
        blank(component.c.name).label("name"),
        blank(component.c.kind).label("kind"),
        component.c.material_id,
        blank(component.c.material_words).label("words"),
        side.label("side"),
    ).where(chosen)


_BEARERS = Question(
    union_all(
        *(
            _bearing(
                bindparam(f"is_{name}", name.upper()),
                component.c.id.in_(select(column).where(place.c.id == _PLACE)),
            )
            for name, column in (("a", place.c.component_id), ("b", place.c.other_component_id))
        ),
        _bearing(
            bindparam("is_fixing", ""),
            component.c.id.in_(select(bridge.c.component_id).where(bridge.c.place_id == _PLACE)),
        ),
    )
)
_NEAR = Question(
    union_all(
        *(
            select(
                place.c.mark,
                place.c.id,
                near.c.distance_mm,
                blank(near.c.path).label("path"),
            )
            .join_from(near, place, place.c.id == there)
            .where(here == _PLACE)
            for here, there in (
                (near.c.place_id, near.c.other_place_id),
                (near.c.other_place_id, near.c.place_id),
            )
        )
    )
)
_BODIES = Question(
    select(place.c.mark, place.c.id)
    .where(
        place.c.kind == "body",
        place.c.id != _PLACE,
        place.c.component_id.in_(
            union_all(
                select(place.c.component_id).where(place.c.id == _PLACE),
                select(place.c.other_component_id).where(place.c.id == _PLACE),
            )
        ),
    )
    .order_by(place.c.id)
)


def _supports(chosen: Any) -> Question:  # noqa: ANN401 (a selection of ids)
    return Question(
        select(
            intervention.c.ref,
            blank(intervention.c.technique).label("technique"),
            *dated(intervention, "date"),
        )
        .where(intervention.c.kind == "support", intervention.c.id.in_(chosen))
        .order_by(intervention.c.date_latest.desc())
    )


_BORNE_BY = union_all(
    select(place.c.component_id).where(place.c.id == _PLACE),
    select(place.c.other_component_id).where(place.c.id == _PLACE),
)
_SUPPORTS = _supports(
    select(intervention_place.c.intervention_id).where(intervention_place.c.place_id == _PLACE)
)
_PART_SUPPORTS = _supports(
    select(intervention_component.c.intervention_id).where(
        intervention_component.c.component_id.in_(_BORNE_BY)
    )
)
_ON_PARTS = union_all(
    *(
        select(place.c.id).where(side.in_(_BORNE_BY), place.c.id != _PLACE)
        for side in (place.c.component_id, place.c.other_component_id)
    )
)
_ELSEWHERE = Question(
    select(
        place.c.mark,
        layer.c.material_id,
        layer.c.material_class_id,
        layer.c.came_from,
        layer.c.gone_to,
    )
    .join_from(layer, place, place.c.id == layer.c.place_id)
    .where(layer.c.place_id.in_(_ON_PARTS))
)
_CLOSED = Question(
    select(joint_event.c.date_latest, intervention.c.date_latest.label("done"))
    .outerjoin_from(joint_event, intervention, intervention.c.id == joint_event.c.intervention_id)
    .where(joint_event.c.place_id == _PLACE, joint_event.c.event == "closed")
)
STATEMENTS = (
    _HERE,
    _BEARERS,
    _NEAR,
    _BODIES,
    *spot_test_records.STATEMENTS,
    _SUPPORTS,
    _PART_SUPPORTS,
    _ELSEWHERE,
    _CLOSED,
    *place_question.STATEMENTS,
)
_DONE = _SUPPORTS.at("date_words")


@dataclass(frozen=True, slots=True)
class Bearer:
    """A component that a place is on, with its side; a fixing that crosses it has none."""

    mark: str
    name: str
    kind: str
    material_id: int | None
    words: str
    side: str


@dataclass(frozen=True, slots=True)
class NearPlace:
    """A place from which, or to which, an agent may pass; and what lies there."""

    answer: PlaceAnswer
    path: str
    distance_mm: float | None
    bearers: tuple[Bearer, ...]


@dataclass(frozen=True, slots=True)
class Surroundings:
    """What is around a place.

    `support` is a sentence of the record, "" where there is none that counts; `other_support`
    says of what there is why it does not count. `nitrates` are other places of the same parts
    where cellulose nitrate lies or may lie.
    """

    bearers: tuple[Bearer, ...]
    near: tuple[NearPlace, ...]
    tests: dict[str, tuple[Fact, ...]]
    support: str
    other_support: str
    nitrates: tuple[str, ...]


def surroundings(
    connection: Connection,
    number: str,
    mark: str,
    on: AsOf,
    *,
    laid: int,
    test_years: float,
    nitrate: Callable[[int | None, int | None], bool],
) -> Surroundings:
    """What bears on taking layers off at a place; `tests` by the ref of the layer tried.

    Args:
        laid: the latest day on which something that holds there can have come.
        test_years: years after which a test that did nothing clears nothing any more.
        nitrate: whether a material or class, by id, is or may be cellulose nitrate.
    """
    owner = find_object(connection, number)
    here = _HERE.first(connection, object=owner.id, mark=fold(mark))
    return Surroundings(
        _bearers(connection, here.id),
        tuple(_near(connection, owner.number, here.id, on)),
        tests_on(connection, owner.id, on, on.last - round(test_years * 365.25)),
        *_support(connection, here.id, on, laid),
        _nitrates(connection, here.id, on, nitrate),
    )


def _bearers(connection: Connection, at: int) -> tuple[Bearer, ...]:
    rows = _BEARERS.all(connection, place=at)
    return tuple(
        Bearer(row.mark, row.name, row.kind, row.material_id, row.words, row.side) for row in rows
    )


def _near(connection: Connection, number: str, at: int, on: AsOf) -> list[NearPlace]:
    """Places recorded as near, and the bodies of the bearers, into which agents soak."""
    found = [
        (row.mark, row.id, row.path or "unknown", row.distance_mm)
        for row in _NEAR.all(connection, place=at)
    ]
    listed = {mark for mark, *_ in found}
    found += [
        (row.mark, row.id, "porous", None)
        for row in _BODIES.all(connection, place=at)
        if row.mark not in listed
    ]
    here = {one.mark for one in _bearers(connection, at)}
    return [
        NearPlace(
            place_question.place(connection, number, mark, on),
            path,
            distance,
            tuple(one for one in _bearers(connection, there) if one.mark not in here),
        )
        for mark, there, path, distance in found
    ]


# -- support, and nitrate elsewhere -------------------------------------------------------


def _support(connection: Connection, at: int, on: AsOf, laid: int) -> tuple[str, str]:
    """The latest support that counts, and what else there is and why it does not.

    It counts where it is recorded for this very place, certainly after the joint was last
    closed and what holds it was laid.
    """
    closings = [
        date
        for row in _CLOSED.all(connection, place=at)
        for date in (row.date_latest, row.done)
        if date is not None and is_known(date) and date <= on.last
    ]
    since = max([*closings, laid])
    other = ""
    for row in _SUPPORTS.all(connection, place=at):
        early, late = row.date_earliest, row.date_latest
        told = f"{row.technique or 'support'}, {when(row, _DONE).said} ({row.ref})"
        if is_known(late) and late <= on.last and is_known(early) and early >= since:
            return told, ""
        other = other or f"support recorded, not known to stand since the joint was closed: {told}"
    for row in _PART_SUPPORTS.all(connection, place=at):
        told = f"{row.technique or 'support'}, {when(row, _DONE).said} ({row.ref})"
        other = other or f"support recorded for another place of its parts: {told}"
    return "", other


def _nitrates(
    connection: Connection, at: int, on: AsOf, may_be: Callable[[int | None, int | None], bool]
) -> tuple[str, ...]:
    """Other places of the same parts where cellulose nitrate may lie on the day."""
    found = [
        row.mark
        for row in _ELSEWHERE.all(connection, place=at)
        if row.came_from <= on.last < row.gone_to and may_be(row.material_id, row.material_class_id)
    ]
    return tuple(dict.fromkeys(found))
