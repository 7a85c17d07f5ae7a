"""What answers a researcher's question, counted: by decade, class, person or kind of object."""

from __future__ import annotations

import json
from collections import defaultdict
from collections.abc import Iterable, Mapping

from sqlalchemy import Connection, bindparam, func, literal_column, select, union_all

from conservedb.knowledge.decades import (
    Decades,
    LabelledDecades,
    Tally,
    Thing,
    by_decade,
    by_label_and_decade,
    tally,
)
from conservedb.knowledge.research import Research
from conservedb.knowledge.research_words import AskError
from conservedb.questions.asking import Question, Selection, Value, blank
from conservedb.questions.research_answers import ResearchRow
from conservedb.records.layers import layer
from conservedb.records.materials import material, material_class
from conservedb.records.objects import object_
from conservedb.records.people import person
from conservedb.records.treatments import agent, intervention, intervention_person
from conservedb.store.keys import fold

DECADE, CLASS, PERSON, OBJECT_KIND = "decade", "class", "person", "object-kind"
WAYS = (DECADE, CLASS, PERSON, OBJECT_KIND)
_ONLY_OF = {CLASS: ("layers",), PERSON: ("layers", "interventions")}
"""Ways to count that only these kinds of rows have."""
Key = tuple[str, ...]
Labels = Mapping[Key, tuple[str, ...]]

_WANTED = func.json_each(bindparam("wanted")).table_valued("value").alias("wanted")
OBJECTS = select(object_.c.id).where(object_.c.number_folded.in_(select(_WANTED.c.value)))
"""The ids of the objects whose folded numbers are `wanted`, a list as JSON."""


def _classes(what: str) -> Selection:
    """The class of the matter of each layer, or each use of an agent, of some objects."""
    table = layer if what == "layer" else agent
    own, of_material = material_class.alias("own"), material_class.alias("of_material")
    name = func.coalesce(own.c.name, own.c.key, of_material.c.name, of_material.c.key)
    return (
        select(
            object_.c.number,
            literal_column(f"'{what}'").label("what"),
            table.c.ref,
            name.label("label"),
        )
        .join_from(table, object_, object_.c.id == table.c.object_id)
        .outerjoin(material, material.c.id == table.c.material_id)
        .outerjoin(own, own.c.id == table.c.material_class_id)
        .outerjoin(of_material, of_material.c.id == material.c.class_id)
        .where(table.c.object_id.in_(OBJECTS), name.is_not(None))
    )


_CLASSES = Question(union_all(_classes("layer"), _classes("agent")))
_PEOPLE = Question(
    select(object_.c.number, intervention.c.ref, person.c.name.label("label"))
    .join_from(intervention, object_, object_.c.id == intervention.c.object_id)
    .join(intervention_person, intervention_person.c.intervention_id == intervention.c.id)
    .join(person, person.c.id == intervention_person.c.person_id)
    .where(intervention.c.object_id.in_(OBJECTS))
)
_KINDS = Question(
    select(object_.c.number, blank(object_.c.kind).label("label")).where(
        object_.c.id.in_(OBJECTS), object_.c.kind.is_not(None)
    )
)
STATEMENTS = (_CLASSES, _PEOPLE, _KINDS)
_LABELS = {CLASS: _CLASSES, PERSON: _PEOPLE, OBJECT_KIND: _KINDS}


def ways_of(rows: str) -> tuple[str, ...]:
    """The ways in which rows of a kind can be counted."""
    return tuple(way for way in WAYS if rows in _ONLY_OF.get(way, (rows,)))


def counted(
    connection: Connection, research: Research, rows: Iterable[ResearchRow], by: str
) -> Tally | Decades:
    """The rows that answer a question by decade of their date, or by one of the other ways.

    Args:
        by: one of WAYS.

    Raises:
        AskError: such rows cannot be counted that way.
    """
    if by not in ways_of(research.rows):
        only = _ONLY_OF[by]
        raise AskError(f"{research.rows} cannot be counted by {by}; ask for {' or '.join(only)}")
    if by == DECADE:
        return by_decade(map(_thing, rows))
    listed = tuple(rows)
    labels = _labels(connection, listed, by)
    return tally(_thing(row, labels.get(_key(row, by), ())) for row in listed)


def materials_by_decade(
    research: Research, rows: Iterable[ResearchRow]
) -> tuple[LabelledDecades, ...]:
    """The rows of each material by decade, that with the most first.

    Raises:
        AskError: the rows of the question are no layers and uses of agents.
    """
    if research.rows != "layers":
        raise AskError(f"it is layers that have a material, not {research.rows}; ask for layers")
    return by_label_and_decade(_thing(row, (row.matter,) if row.matter else ()) for row in rows)


def wanted(rows: Iterable[ResearchRow]) -> Value:
    """The objects of some rows, as OBJECTS wants them."""
    return json.dumps(sorted({fold(row.object) for row in rows}))


def _labels(connection: Connection, rows: Iterable[ResearchRow], by: str) -> Labels:
    found: dict[Key, tuple[str, ...]] = defaultdict(tuple)
    for *key, label in _LABELS[by].tuples(connection, wanted=wanted(rows)):
        found[tuple(key)] += (label,)
    return found


def _key(row: ResearchRow, by: str) -> Key:
    if by == CLASS:
        return (row.object, row.what, row.ref)
    return (row.object, row.intervention) if by == PERSON else (row.object,)


def _thing(row: ResearchRow, labels: tuple[str, ...] = ()) -> Thing:
    date = row.date
    return Thing(row.sureness, date.earliest, date.latest, date.flags, labels)
