"""Which layers and agents can answer at all, found through indexes.

Of the conditions that must all hold, the one that commonly leaves the fewest is taken; the
others are then tried on what it finds. What none can find so is looked at from end to end.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from itertools import chain
from typing import Any, NamedTuple

from sqlalchemy import Table, literal_column, or_, select, union_all
from sqlalchemy.sql.selectable import Select

from conservedb.dates import OPEN_END, OPEN_START
from conservedb.knowledge.research import And, Condition, Or, Tree
from conservedb.questions.asking import Selection
from conservedb.questions.research_conditions import (
    materials_meant,
    objects_meant,
    span_of,
)
from conservedb.questions.research_occurrences import AGENT, LAYER, WORK, any_row
from conservedb.questions.research_terms import Meant, has_words, is_any, one_of_ids
from conservedb.records.layers import layer
from conservedb.records.objects import object_
from conservedb.records.sources import statement, statement_person
from conservedb.records.treatments import agent, intervention, intervention_person


class Narrowed(NamedTuple):
    """Selections of the ids that can answer, and how few these commonly are (0 the fewest).

    Attributes:
        layers, agents, works: of each what can answer; none where nothing of it can.
    """

    rank: int
    layers: tuple[Select[Any], ...]
    agents: tuple[Select[Any], ...]
    works: tuple[Select[Any], ...] = ()

    def of(self, what: int) -> tuple[Select[Any], ...]:
        """Those of one kind of occurrence."""
        return {LAYER: self.layers, AGENT: self.agents, WORK: self.works}[what]


Meanings = Mapping[Condition, Meant]


def narrowed(tree: Tree, meanings: Meanings) -> Narrowed | None:
    """What can answer a question; None where no condition narrows it."""
    if isinstance(tree, Condition):
        found = _NARROWING.get(tree.field)
        return found(tree, meanings[tree]) if found else None
    if isinstance(tree, And):
        parts = [one for one in (narrowed(part, meanings) for part in tree.parts) if one]
        return min(parts, key=lambda one: one.rank, default=None)
    if isinstance(tree, Or):
        parts = [one for part in tree.parts if (one := narrowed(part, meanings))]
        if parts and len(parts) == len(tree.parts):
            return Narrowed(
                max(one.rank for one in parts),
                tuple(chain.from_iterable(one.layers for one in parts)),
                tuple(chain.from_iterable(one.agents for one in parts)),
                tuple(chain.from_iterable(one.works for one in parts)),
            )
    return None


def _by_object(objects: Selection) -> Narrowed:
    return Narrowed(
        0,
        (select(layer.c.id).where(layer.c.object_id.in_(objects)),),
        (select(agent.c.id).where(agent.c.object_id.in_(objects)),),
        (select(intervention.c.id).where(intervention.c.object_id.in_(objects)),),
    )


def _object(condition: Condition, _: Meant) -> Narrowed:
    return _by_object(objects_meant(condition.value))


def _kind_of_object(_: Condition, meant: Meant) -> Narrowed:
    c = object_.c
    objects = select(c.id).where(or_(is_any(c.kind, meant.words), c.kind.is_(None)))
    return _by_object(objects)._replace(rank=4)


def _material(_: Condition, meant: Meant) -> Narrowed:
    """With all that has neither material nor class on record: it may be what is meant.

    Work of which nothing that was used is on record has no matter to be asked for.
    """
    materials = materials_meant(meant)
    loosely = (*meant.classes, *meant.above)
    said = select(statement.c.layer_id).where(
        statement.c.material_id.in_(materials),
        statement.c.field == "material",
        statement.c.layer_id.is_not(None),
    )
    return Narrowed(
        1, (*_of_matter(layer, materials, loosely), said), _of_matter(agent, materials, loosely)
    )


def _of_matter(
    table: Table, materials: Selection, classes: tuple[int, ...]
) -> tuple[Select[Any], ...]:
    c = table.c
    return (
        select(c.id).where(c.material_id.in_(materials)),
        select(c.id).where(one_of_ids(c.material_class_id, classes)),
        select(c.id).where(c.material_id.is_(None), c.material_class_id.is_(None)),
    )


def _by_deed(rank: int, deeds: Selection, *more: Select[Any]) -> Narrowed:
    """By interventions; with layers of which none is on record."""
    return Narrowed(
        rank,
        (
            select(layer.c.id).where(layer.c.intervention_id.in_(deeds)),
            select(layer.c.id).where(layer.c.intervention_id.is_(None)),
            *more,
        ),
        (select(agent.c.id).where(agent.c.intervention_id.in_(deeds)),),
        (select(intervention.c.id).where(intervention.c.id.in_(deeds)),),
    )


def _person(_: Condition, meant: Meant) -> Narrowed:
    link = intervention_person.c
    nobody = ~any_row(intervention_person, link.intervention_id == intervention.c.id)
    said = select(statement.c.intervention_id).where(
        statement.c.intervention_id.is_not(None),
        statement.c.field == "people",
        statement.c.id.in_(
            select(statement_person.c.statement_id).where(
                one_of_ids(statement_person.c.person_id, meant.ids)
            )
        ),
    )
    own = select(link.intervention_id).where(one_of_ids(link.person_id, meant.ids))
    return _by_deed(2, union_all(own, select(intervention.c.id).where(nobody), said))


def _date(condition: Condition, _: Meant) -> Narrowed:
    first, last, _plain = span_of(condition)
    deeds, own = (
        select(table.c.id).where(
            table.c.date_latest >= literal_column(str(first)),
            table.c.date_earliest <= literal_column(str(last)),
        )
        for table in (intervention, layer)
    )
    dated = layer.c.date_derived != literal_column("'blank'")
    open_ended = first == OPEN_START or last == OPEN_END
    return _by_deed(5 if open_ended else 3, deeds, own.where(dated))


def _kind(_: Condition, meant: Meant) -> Narrowed:
    kind = intervention.c.kind
    deeds = select(intervention.c.id).where(or_(is_any(kind, meant.words), kind.is_(None)))
    return _by_deed(7, deeds)


def _technique(condition: Condition, _: Meant) -> Narrowed:
    words = intervention.c.technique
    found = or_(has_words(words, condition.value), words.is_(None))
    return _by_deed(6, select(intervention.c.id).where(found))


_NARROWING: dict[str, Callable[[Condition, Meant], Narrowed]] = {
    "object": _object,
    "object kind": _kind_of_object,
    "material": _material,
    "person": _person,
    "date": _date,
    "kind": _kind,
    "technique": _technique,
}
