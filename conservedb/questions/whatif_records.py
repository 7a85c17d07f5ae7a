"""The layers at joints that a material may make creep or soften, and those of no known figure."""

from __future__ import annotations

from typing import Any

from sqlalchemy import (
    BindParameter,
    ColumnElement,
    and_,
    bindparam,
    case,
    exists,
    func,
    literal_column,
    or_,
    select,
    union_all,
)

from conservedb.knowledge.rule_warmth import CARRYING
from conservedb.questions.asking import Question, Selection, blank
from conservedb.questions.behaviour import WARMTH
from conservedb.questions.states import (
    certainly_there,
    mask_at,
    possibly_there,
    rests_on_qualified,
)
from conservedb.questions.whatif_answers import WhatIfLayer
from conservedb.records.behaviour import material_value
from conservedb.records.layers import layer, layer_candidate
from conservedb.records.materials import material, material_class
from conservedb.records.objects import object_
from conservedb.records.places import joint_event, place
from conservedb.records.sources import statement
from conservedb.records.treatments import intervention

_UNSURE = ("inferred", "unknown")


def _number(name: str) -> BindParameter[Any]:
    return bindparam(name)


_MATERIAL, _DAY, _OBJECT = _number("material"), _number("day"), _number("object")
_CARRIES = and_(
    or_(place.c.load_kg.is_(None), place.c.load_kg > 0),
    blank(layer.c.role).in_([literal_column(f"'{role}'") for role in CARRYING]),
)
_YOUNG = layer.c.came_to > _number("young_after")


def _event_day(event: Any, deed: Any, end: str) -> ColumnElement[int]:  # noqa: ANN401 (aliases)
    """An end of the date of an event; an undated one has that of its intervention."""
    own = event.c[f"date_{end}"]
    return case(
        (event.c.date_derived == "blank", func.coalesce(deed.c[f"date_{end}"], own)), else_=own
    )


def _certainly_open() -> ColumnElement[bool]:
    """Whether a joint was certainly opened by the day, and possibly not closed since."""
    opened, closed = joint_event.alias("parting"), joint_event.alias("closing")
    apart, together = intervention.alias("apart"), intervention.alias("together")
    by = _event_day(opened, apart, "latest")
    closed_since = exists(
        select(literal_column("1"))
        .select_from(closed.outerjoin(together, together.c.id == closed.c.intervention_id))
        .where(
            closed.c.place_id == opened.c.place_id,
            or_(closed.c.event != "opened", closed.c.event.is_(None)),
            _event_day(closed, together, "latest") >= by,
        )
    )
    return exists(
        select(literal_column("1"))
        .select_from(opened.outerjoin(apart, apart.c.id == opened.c.intervention_id))
        .where(
            opened.c.place_id == place.c.id,
            opened.c.event == "opened",
            by <= _DAY,
            ~closed_since,
        )
    )


def _flag(condition: ColumnElement[bool]) -> ColumnElement[int]:
    return case((condition, literal_column("1")), else_=literal_column("0"))


def _unless(condition: ColumnElement[bool]) -> ColumnElement[int]:
    """1 where it does not hold, or cannot be told."""
    return case((condition, literal_column("0")), else_=literal_column("1"))


def _by_age(name: str) -> ColumnElement[Any]:
    """A value of the material: one for films that may hold solvent, one for the others."""
    return case((_YOUNG, _number(f"{name}_young")), else_=_number(f"{name}_old"))


def _columns(sure: ColumnElement[bool]) -> dict[str, ColumnElement[Any]]:
    """The fields of `WhatIfLayer`, in its order."""
    return {
        "unsure": _unless(and_(sure, _by_age("sure") == 1)),
        "effect_at": _by_age("effect"),
        "lightness": -func.coalesce(place.c.load_kg, literal_column("0.0")),
        "margin_c": _by_age("margin"),
        "object_sort": object_.c.number_sort,
        "place_id": place.c.id,
        "layer_id": layer.c.id,
        "object": object_.c.number,
        "place": place.c.mark,
        "name": blank(place.c.name),
        "layer": layer.c.ref,
        "role": blank(layer.c.role),
        "young": _flag(_YOUNG),
        "doubtful": _unless(sure),
        "carrier": case((_YOUNG, blank(layer.c.carrier)), else_=literal_column("''")),
        "load_kg": place.c.load_kg,
        "figure": _by_age("figure"),
    }


def _rows(*scope: ColumnElement[bool]) -> Question:
    """The layers of one material, or that may be of it, at joints that may be closed."""
    ids = union_all(
        select(layer.c.id).where(layer.c.material_id == _MATERIAL, *scope),
        select(statement.c.layer_id).where(
            statement.c.material_id == _MATERIAL,
            statement.c.field == "material",
            func.coalesce(statement.c.followed, literal_column("''")) != "no",
            statement.c.layer_id.is_not(None),
        ),
    )
    sure = and_(
        layer.c.material_id == _MATERIAL,
        layer.c.place_id.is_not(None),
        certainly_there(layer.c, _DAY),
        *(blank(layer.c.identified) != word for word in _UNSURE),
        ~rests_on_qualified(layer.c, mask_at(layer.c, _DAY)),
    )
    return Question(
        select(*(column.label(name) for name, column in _columns(sure).items()))
        .outerjoin_from(
            layer,
            layer_candidate,
            and_(layer.c.place_id.is_(None), layer_candidate.c.layer_id == layer.c.id),
        )
        .join(place, place.c.id == func.coalesce(layer.c.place_id, layer_candidate.c.place_id))
        .join(object_, object_.c.id == layer.c.object_id)
        .where(
            layer.c.id.in_(ids),
            layer.c.came_to > _number("after"),
            possibly_there(layer.c, _DAY),
            place.c.kind == "joint",
            or_(_by_age("effect") == 0, _CARRIES),
            ~_certainly_open(),
            *scope,
        ),
        WhatIfLayer,
    )


_NO_FIGURE = select(material.c.id).where(
    material.c.id.not_in(
        select(material_value.c.material_id).where(
            material_value.c.property.in_([literal_column(f"'{name}'") for name in WARMTH])
        )
    )
)


def _counted(column: ColumnElement[Any], which: Selection, *scope: ColumnElement[bool]) -> Question:
    """How many layers that are or may be there lie at joints, by material or by class."""
    return Question(
        select(column.label("of"), func.count().label("layers"))
        .join_from(layer, place, place.c.id == layer.c.place_id)
        .where(column.in_(which), possibly_there(layer.c, _DAY), place.c.kind == "joint", *scope)
        .group_by(column)
    )


def _loaded(*scope: ColumnElement[bool]) -> Question:
    """How many layers of one material carry something at joints that may be closed."""
    return Question(
        select(func.count().label("layers"))
        .join_from(layer, place, place.c.id == layer.c.place_id)
        .where(
            layer.c.material_id == _MATERIAL,
            possibly_there(layer.c, _DAY),
            place.c.kind == "joint",
            _CARRIES,
            ~_certainly_open(),
            *scope,
        )
    )


def _questions(*scope: ColumnElement[bool]) -> dict[str, Question]:
    unnamed = layer.c.material_id.is_(None)
    return {
        "rows": _rows(*scope),
        "loaded": _loaded(*scope),
        "materials": _counted(layer.c.material_id, _NO_FIGURE, *scope),
        "classes": _counted(
            layer.c.material_class_id, select(material_class.c.id), unnamed, *scope
        ),
        "unidentified": Question(
            select(func.count().label("layers"))
            .join_from(layer, place, place.c.id == layer.c.place_id)
            .where(
                unnamed,
                layer.c.material_class_id.is_(None),
                possibly_there(layer.c, _DAY),
                place.c.kind == "joint",
                *scope,
            )
        ),
    }


COLLECTION = _questions()
ONE_OBJECT = _questions(layer.c.object_id == _OBJECT)
STATEMENTS = (*COLLECTION.values(), *ONE_OBJECT.values())
