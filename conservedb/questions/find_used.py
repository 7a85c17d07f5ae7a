"""How much there is of a material that was found, counted up to a limit."""

from __future__ import annotations

from typing import Any

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

_LAYERS = 1000
"""Layers are counted up to so many."""
_OTHERS = 100
"""Uses as an agent and parts are counted up to so many, and the objects of so many layers."""
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


def _number(table: Table, kind: str, most: int) -> ColumnElement[Any]:
    few = _uses(table, kind).limit(most).subquery("few")
    return select(func.count()).select_from(few).scalar_subquery().label(f"{table.name}s")


def _counts(kind: str) -> Question:
    limits = ((layer, _LAYERS), (agent, _OTHERS), (component, _OTHERS))
    return Question(select(*[_number(table, kind, most) for table, most in limits]))


def _objects(kind: str) -> Question:
    few = _uses(layer, kind).limit(_OTHERS).subquery("few")
    objects = func.count(layer.c.object_id.distinct()).label("objects")
    return Question(select(objects).where(layer.c.id.in_(select(few.c.id))))


KINDS = ("material", "material_class")
_COUNTS = {kind: _counts(kind) for kind in KINDS}
_OBJECTS = {kind: _objects(kind) for kind in KINDS}
STATEMENTS = (*_COUNTS.values(), *_OBJECTS.values())


def used(connection: Connection, kind: str, record: int) -> str:
    """How many layers are on record of it on how many objects, and what else it was used for.

    That is as an agent, and for parts of objects. The objects of many layers are not counted.

    Args:
        kind: material or material_class, of which what is below it counts too.
    """
    found = _COUNTS[kind].first(connection, id=record)
    said = "no layer of it recorded"
    if found.layers:
        said = f"{_bounded(found.layers, 'layer', _LAYERS)} recorded"
    if 0 < found.layers <= _OTHERS:
        objects = _OBJECTS[kind].first(connection, id=record).objects
        said += f", on {counted(objects, 'object')}"
    if found.agents:
        said += f", used {_bounded(found.agents, 'time', _OTHERS)} as an agent"
    if found.components:
        said += f", {_bounded(found.components, 'part', _OTHERS)} made of it"
    return said


def _bounded(number: int, noun: str, most: int) -> str:
    return f"{number:,} {noun}s or more" if number >= most else counted(number, noun)
