"""How much there is of a material that was found, counted up to a limit."""

from __future__ import annotations

from sqlalchemy import BindParameter, Connection, Table, bindparam, func, select, union_all

from conservedb.questions.asking import Question, Selection
from conservedb.questions.meanings import classes_below
from conservedb.questions.wording import counted
from conservedb.records.layers import layer
from conservedb.records.materials import material, material_class
from conservedb.records.objects import component
from conservedb.records.treatments import agent

COUNTED = 1000
"""Layers, and uses as an agent, are counted up to so many."""
_LOOKED_AT = 200
"""Of so many layers the objects are counted."""
_ID: BindParameter[int] = bindparam("id")
_BELOW = classes_below(select(material_class.c.id).where(material_class.c.id == _ID))
_WITHIN = select(material.c.id).where(material.c.class_id.in_(_BELOW))


def _uses(table: Table, kind: str) -> Selection:
    """Rows of a table that name the material, or the class and what is below it."""
    if kind == "material":
        return select(table.c.id).where(table.c.material_id == _ID)
    named = select(table.c.id).where(table.c.material_id.in_(_WITHIN))
    if "material_class_id" not in table.c:
        return named
    return union_all(named, select(table.c.id).where(table.c.material_class_id.in_(_BELOW)))


def _number(uses: Selection) -> Question:
    few = uses.limit(COUNTED).subquery("few")
    return Question(select(func.count().label("number")).select_from(few))


def _objects(uses: Selection) -> Question:
    few = select(uses.limit(_LOOKED_AT).subquery("few").c.id)
    objects = func.count(layer.c.object_id.distinct()).label("number")
    return Question(select(objects).where(layer.c.id.in_(few)))


KINDS = ("material", "material_class")
_LAYERS = {kind: _number(_uses(layer, kind)) for kind in KINDS}
_OBJECTS = {kind: _objects(_uses(layer, kind)) for kind in KINDS}
_AGENTS = {kind: _number(_uses(agent, kind)) for kind in KINDS}
_PARTS = {kind: _number(_uses(component, kind)) for kind in KINDS}
STATEMENTS = tuple(
    question for asked in (_LAYERS, _OBJECTS, _AGENTS, _PARTS) for question in asked.values()
)


def used(connection: Connection, kind: str, record: int) -> str:
    """How many layers are on record of it on how many objects, and what else it was used for.

    That is as an agent, and for parts of objects.

    Args:
        kind: material or material_class, of which what is below it counts too.
    """
    layers = _LAYERS[kind].first(connection, id=record).number
    agents = _AGENTS[kind].first(connection, id=record).number
    said = "no layer of it recorded"
    if layers:
        objects = _OBJECTS[kind].first(connection, id=record).number
        on = counted(objects, "object") + (" or more" if layers > _LOOKED_AT else "")
        said = f"{_bounded(layers, 'layer')} recorded, on {on}"
    if agents:
        said += f", used {_bounded(agents, 'time')} as an agent"
    parts = _PARTS[kind].first(connection, id=record).number
    return f"{said}, {_bounded(parts, 'part')} made of it" if parts else said


def _bounded(number: int, noun: str) -> str:
    return f"{number:,} {noun}s or more" if number >= COUNTED else counted(number, noun)
