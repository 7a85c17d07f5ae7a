"""How much there is of a material that was found, counted up to a limit."""

from __future__ import annotations

from sqlalchemy import (
    BindParameter,
    ColumnElement,
    Connection,
    Table,
    bindparam,
    func,
    select,
    union_all,
)

from conservedb.questions.asking import Question, Selection
from conservedb.questions.meanings import classes_below
from conservedb.questions.wording import counted
from conservedb.records.layers import layer
from conservedb.records.materials import material, material_class
from conservedb.records.objects import component
from conservedb.records.treatments import agent

COUNTED = 1000
"""Layers, and uses as an agent, are counted up to so many."""
_LOOKED_AT = 100
"""Of so many layers the objects are counted."""
_ID: BindParameter[int] = bindparam("id")
_BELOW = classes_below(select(material_class.c.id).where(material_class.c.id == _ID))
_WITHIN = select(material.c.id).where(material.c.class_id.in_(_BELOW))


def _uses(table: Table, kind: str) -> Selection:
    """The keys of rows that name the material, or the class and what is below it."""
    wanted = select(table.c.id)
    if kind == "material":
        return wanted.where(table.c.material_id == _ID)
    named = wanted.where(table.c.material_id.in_(_WITHIN))
    if "material_class_id" not in table.c:
        return named
    return union_all(named, wanted.where(table.c.material_class_id.in_(_BELOW)))


def _number(table: Table, kind: str) -> ColumnElement[int]:
    few = _uses(table, kind).limit(COUNTED).subquery("few")
    return select(func.count()).select_from(few).scalar_subquery().label(f"{table.name}s")


def _counts(kind: str) -> Question:
    few = _uses(layer, kind).limit(_LOOKED_AT).subquery("few")
    objects = select(func.count(layer.c.object_id.distinct())).where(
        layer.c.id.in_(select(few.c.id))
    )
    return Question(
        select(
            _number(layer, kind),
            _number(agent, kind),
            _number(component, kind),
            objects.scalar_subquery().label("objects"),
        )
    )


KINDS = ("material", "material_class")
_COUNTS = {kind: _counts(kind) for kind in KINDS}
STATEMENTS = tuple(_COUNTS.values())


def used(connection: Connection, kind: str, record: int) -> str:
    """How many layers are on record of it on how many objects, and what else it was used for.

    That is as an agent, and for parts of objects.

    Args:
        kind: material or material_class, of which what is below it counts too.
    """
    found = _COUNTS[kind].first(connection, id=record)
    said = "no layer of it recorded"
    if found.layers:
        on = counted(found.objects, "object") + (" or more" if found.layers > _LOOKED_AT else "")
        said = f"{_bounded(found.layers, 'layer')} recorded, on {on}"
    if found.agents:
        said += f", used {_bounded(found.agents, 'time')} as an agent"
    return f"{said}, {_bounded(found.components, 'part')} made of it" if found.components else said


def _bounded(number: int, noun: str) -> str:
    return f"{number:,} {noun}s or more" if number >= COUNTED else counted(number, noun)
