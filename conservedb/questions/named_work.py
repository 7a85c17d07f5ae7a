"""What planned and recorded steps name, for holding one against the other: where and with what.

Which plans and steps it is about is given as selections; the questions are built once from them.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from typing import Any

from sqlalchemy import (
    BindParameter,
    Column,
    ColumnElement,
    Connection,
    Select,
    Table,
    bindparam,
    func,
    literal_column,
    or_,
    select,
    union,
)
from sqlalchemy import union_all as union_all_of

from conservedb.knowledge.planned_work import PlannedStep, RecordedStep, Substance
from conservedb.questions.asking import Question, Row, Rows, Selection
from conservedb.records.layers import layer, removal
from conservedb.records.materials import material, material_class, material_part
from conservedb.records.objects import component
from conservedb.records.places import joint_event, place
from conservedb.records.plans import planned_step, planned_step_component, planned_step_place
from conservedb.records.treatments import (
    agent,
    agent_place,
    intervention_component,
    intervention_place,
)

Borne = Mapping[int, Mapping[str, tuple[str, ...]]]
"""The components that bear a place, by its mark, by the key of what names the place."""
Marks = Mapping[int, tuple[str, ...]]

_OBJECT: BindParameter[int] = bindparam("object")
_other = component.alias("other")
_CLASSES = Question(select(material_class.c.id, material_class.c.key, material_class.c.parent_id))


@dataclass(frozen=True, slots=True)
class Named:
    """What the planned steps and the recorded steps of a scope name, by their keys."""

    planned_places: Borne
    planned_components: Marks
    planned_substances: Mapping[int, Substance]
    places: Borne
    components: Marks
    within: Mapping[str, tuple[str, ...]]
    substances: Mapping[str, Mapping[int, tuple[Substance, ...]]]

    def planned(self, record: int, ref: str, kind: str) -> PlannedStep:
        """A planned step with what it names."""
        borne = self.planned_places.get(record, {})
        return PlannedStep(
            ref,
            kind,
            tuple(borne),
            self.planned_components.get(record, ()),
            borne,
            self.planned_substances.get(record),
        )

    def recorded(self, record: int, made: RecordedStep) -> RecordedStep:
        """A recorded step with what it names."""
        borne = self.places.get(record, {})
        laid, used, taken = (
            self.substances[how].get(record, ()) for how in ("laid", "used", "taken")
        )
        return replace(
            made,
            places=tuple(borne),
            components=self.components.get(record, ()),
            borne_by=borne,
            within=self.within,
            laid=laid,
            used=used,
            taken=taken,
        )


class Asked:
    """The questions for the plans and steps of a scope."""

    def __init__(self, plans: Selection, steps: Selection) -> None:
        planned = select(planned_step.c.id).where(planned_step.c.plan_id.in_(plans))
        of_planned = planned_step_place.c.planned_step_id.in_(planned)
        self.planned_places = _borne(
            select(
                planned_step_place.c.planned_step_id.label("owner"),
                planned_step_place.c.place_id,
                planned_step_place.c.position,
            ).where(of_planned)
        )
        self.planned_components = _marks(
            planned_step_component, planned_step_component.c.planned_step_id, planned
        )
        self.planned_substances = Question(
            _substances("planned", planned_step, planned_step.c.id).where(
                planned_step.c.plan_id.in_(plans)
            )
        )
        touched = _touched(steps)
        self.places = _borne(touched)
        self.components = _marks(
            intervention_component, intervention_component.c.intervention_id, steps
        )
        self.within = _within(touched, steps)
        self.substances = Question(_of_steps(steps))
        materials = union(
            select(planned_step.c.material_id).where(planned_step.c.plan_id.in_(plans)),
            *(
                select(table.c.material_id).where(table.c.intervention_id.in_(steps))
                for table in (layer, agent)
            ),
        )
        self.parts = Question(
            select(material_part.c.material_id, material.c.key)
            .join_from(material_part, material, material.c.id == material_part.c.part_id)
            .where(material_part.c.material_id.in_(materials))
        )
        self.questions = (
            *(self.planned_places, self.planned_components, self.planned_substances),
            *(self.places, self.components, self.within, self.substances, self.parts),
            _CLASSES,
        )

    def named(self, connection: Connection, asked: Mapping[str, int]) -> Named:
        """All that is named in one scope."""
        planned = self.planned_substances.all(connection, **asked)
        done = self.substances.all(connection, **asked) if planned else []
        make = _Substances(
            self.parts.all(connection, **asked) if done else [],
            _CLASSES.all(connection) if done else [],
        )
        substances: dict[str, dict[int, tuple[Substance, ...]]] = {}
        for how in ("laid", "used", "taken"):
            found: dict[int, tuple[Substance, ...]] = defaultdict(tuple)
            for row in done:
                found[row.owner] += (make(row),) if row.how == how else ()
            substances[how] = found
        within: dict[str, tuple[str, ...]] = defaultdict(tuple)
        for mark, above in self.within.all(connection, **asked):
            within[mark] += (above,)
        return Named(
            _by_place(self.planned_places.all(connection, **asked)),
            _by_owner(self.planned_components.all(connection, **asked)),
            {row.owner: make(row) for row in planned},
            _by_place(self.places.all(connection, **asked)),
            _by_owner(self.components.all(connection, **asked)),
            within,
            substances,
        )


class _Substances:
    """Makes a substance of a row, from what materials are made up of and the tree of classes."""

    def __init__(self, parts: Rows, classes: Rows) -> None:
        self._classes = {row.id: row for row in classes}
        self._parts: dict[int, set[str]] = defaultdict(set)
        for owner, key in parts:
            self._parts[owner].add(key)

    def __call__(self, row: Row) -> Substance:
        parts = frozenset(self._parts.get(row.material_id, ()))
        return Substance(row.shown, row.key or "", tuple(self._path(row.class_id)), parts)

    def _path(self, at: int | None) -> Iterable[str]:
        seen: set[int] = set()
        while at is not None and at not in seen and at in self._classes:
            seen.add(at)
            yield self._classes[at].key
            at = self._classes[at].parent_id


def _borne(named: Selection) -> Question:
    """The places of a selection of (owner, place_id, position), with the parts that bear them."""
    wanted = named.subquery("wanted")
    return Question(
        select(wanted.c.owner, place.c.mark, component.c.mark.label("component"), _other.c.mark)
        .join_from(wanted, place, place.c.id == wanted.c.place_id)
        .outerjoin(component, component.c.id == place.c.component_id)
        .outerjoin(_other, _other.c.id == place.c.other_component_id)
        .order_by(wanted.c.owner, wanted.c.position, place.c.id)
    )


def _touched(steps: Selection) -> Selection:
    """The places that steps name, acted on, laid a layer at, took one off or used an agent at."""

    def found(owner: ColumnElement[Any], at: ColumnElement[Any]) -> Select[Any]:
        last: ColumnElement[Any] = literal_column("1000000").label("position")
        return select(owner.label("owner"), at, last).where(owner.in_(steps))

    named = select(
        intervention_place.c.intervention_id.label("owner"),
        intervention_place.c.place_id,
        intervention_place.c.position,
    ).where(intervention_place.c.intervention_id.in_(steps))
    off = found(removal.c.intervention_id, layer.c.place_id).join_from(
        removal, layer, layer.c.id == removal.c.layer_id
    )
    swabbed = found(agent.c.intervention_id, agent_place.c.place_id).join_from(
        agent, agent_place, agent_place.c.agent_id == agent.c.id
    )
    return union(
        named,
        found(layer.c.intervention_id, layer.c.place_id).where(layer.c.place_id.is_not(None)),
        off.where(removal.c.object_id == _OBJECT, layer.c.place_id.is_not(None)),
        swabbed,
        found(joint_event.c.intervention_id, joint_event.c.place_id).where(
            joint_event.c.object_id == _OBJECT
        ),
    )


def _marks(link: Table, owner: Column[int], wanted: Selection) -> Question:
    return Question(
        select(owner, component.c.mark)
        .join_from(link, component, component.c.id == link.c.component_id)
        .where(owner.in_(wanted))
        .order_by(owner, link.c.position)
    )


def _within(touched: Selection, steps: Selection) -> Question:
    """The components that those of the steps, and those bearing their places, are part of."""
    places = touched.subquery("touched")
    bearing = (
        select(place.c[side]).where(place.c.id.in_(select(places.c.place_id)))
        for side in ("component_id", "other_component_id")
    )
    named = select(intervention_component.c.component_id).where(
        intervention_component.c.intervention_id.in_(steps)
    )
    start = select(component.c.id.label("part"), component.c.parent_id.label("up")).where(
        component.c.id.in_(union(named, *bearing)), component.c.parent_id.is_not(None)
    )
    above = start.cte("above", recursive=True)
    parent = component.alias("parent")
    further = select(parent.c.parent_id).where(parent.c.id == above.c.up).scalar_subquery()
    above = above.union(select(above.c.part, further).where(above.c.up.is_not(None)))
    return Question(
        select(component.c.mark, _other.c.mark.label("within"))
        .join_from(above, component, component.c.id == above.c.part)
        .join(_other, _other.c.id == above.c.up)
    )


def _of_steps(steps: Selection) -> Selection:
    laid = _substances("laid", layer, layer.c.intervention_id)
    used = _substances("used", agent, agent.c.intervention_id)
    taken = _substances("taken", layer, removal.c.intervention_id).join(
        removal, removal.c.layer_id == layer.c.id
    )
    return union_all_of(
        laid.where(layer.c.intervention_id.in_(steps)),
        used.where(agent.c.intervention_id.in_(steps)),
        taken.where(removal.c.object_id == _OBJECT, removal.c.intervention_id.in_(steps)),
    )


def _substances(how: str, table: Table, owner: Column[int]) -> Select[Any]:
    """Owner, material, class and words of rows that name a material in any way."""
    ways = (table.c.material_id, table.c.material_class_id, table.c.material_words)
    shown = func.coalesce(
        material.c.name,
        material.c.key,
        table.c.material_words,
        material_class.c.name,
        material_class.c.key,
    )
    return (
        select(
            literal_column(f"'{how}'").label("how"),
            owner.label("owner"),
            table.c.material_id,
            func.coalesce(table.c.material_class_id, material.c.class_id).label("class_id"),
            material.c.key,
            shown.label("shown"),
        )
        .select_from(table)
        .outerjoin(material, material.c.id == table.c.material_id)
        .outerjoin(material_class, material_class.c.id == table.c.material_class_id)
        .where(or_(*(way.is_not(None) for way in ways)))
    )


def _by_place(rows: Rows) -> Borne:
    found: dict[int, dict[str, tuple[str, ...]]] = defaultdict(dict)
    for owner, mark, *sides in rows:
        found[owner][mark] = tuple(side for side in sides if side)
    return found


def _by_owner(rows: Rows) -> Marks:
    found: dict[int, tuple[str, ...]] = defaultdict(tuple)
    for owner, mark in rows:
        found[owner] += (mark,)
    return found
