"""An object on a day: its parts, its places, and how much certainly or possibly lies there."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import replace

from sqlalchemy import (
    BindParameter,
    Connection,
    bindparam,
    func,
    or_,
    select,
)

from conservedb.dates import describe_flags
from conservedb.knowledge.layers import Interval
from conservedb.questions import cautions, evidence, naming
from conservedb.questions.answers import AsOf, ComponentRow, Deed, Hit, ObjectAnswer, Rival
from conservedb.questions.asking import Question, Row, Rows, blank, cited, dated
from conservedb.questions.evidence import source_of, when
from conservedb.questions.lasting import lasting, object_made
from conservedb.questions.places_of import STATEMENTS as _PLACE_STATEMENTS
from conservedb.questions.places_of import places_of
from conservedb.questions.retiring import retired_of, retirement, standing
from conservedb.records.layers import layer, layer_candidate
from conservedb.records.materials import material
from conservedb.records.objects import bridge, component, whereabouts
from conservedb.records.places import place
from conservedb.records.sources import source, statement
from conservedb.records.treatments import intervention, intervention_person, treatment
from conservedb.store.keys import sort_key

_OBJECT: BindParameter[int] = bindparam("object")
_DAY: BindParameter[int] = bindparam("day")

_COMPONENTS = Question(
    select(
        component.c.id,
        component.c.mark,
        component.c.parent_id,
        *(
            blank(component.c[name]).label(name)
            for name in (
                "name",
                "kind",
                "origin",
                "material_words",
                "kept_at",
                "mass_basis",
                "known_from",
                "note",
            )
        ),
        *(component.c[name] for name in ("mass_kg", "width_mm", "height_mm", "depth_mm")),
        blank(func.coalesce(material.c.name, material.c.key)).label("material"),
        *dated(component, "made"),
        *dated(component, "lost"),
        *retirement(),
        source.c.date_latest.label("source_latest"),
        component.c.entered,
    )
    .outerjoin_from(component, material, material.c.id == component.c.material_id)
    .outerjoin(source, source.c.id == component.c.source_id)
    .where(component.c.object_id == _OBJECT)
)
_MADE, _LOST = _COMPONENTS.at("made_words"), _COMPONENTS.at("lost_words")
_RETIRED = _COMPONENTS.at("retired_words")
_BRIDGES = Question(
    select(bridge.c.component_id, place.c.mark)
    .join_from(bridge, place, place.c.id == bridge.c.place_id)
    .where(
        bridge.c.component_id.in_(select(component.c.id).where(component.c.object_id == _OBJECT))
    )
)
_EXAMINED = Question(
    select(
        intervention.c.id,
        intervention.c.ref,
        blank(intervention.c.technique).label("technique"),
        blank(intervention.c.note).label("note"),
        *dated(intervention, "date"),
        *cited(source),
    )
    .outerjoin_from(intervention, source, source.c.id == intervention.c.source_id)
    .where(
        intervention.c.object_id == _OBJECT,
        intervention.c.kind == "examine",
        intervention.c.date_latest <= _DAY,
    )
    .order_by(intervention.c.date_latest.desc(), intervention.c.id.desc())
    .limit(1)
)
_EXAMINED_ON, _EXAMINED_IN = _EXAMINED.at("date_words"), _EXAMINED.at("source_ref")
_EXAMINERS = evidence.people_of(
    intervention_person,
    select(intervention.c.id).where(intervention.c.id == bindparam("intervention")),
)
_KEPT = Question(
    select(blank(whereabouts.c.place_name).label("place_name"))
    .where(
        whereabouts.c.object_id == _OBJECT,
        whereabouts.c.component_id.is_(None),
        whereabouts.c.since_latest <= _DAY,
        (whereabouts.c.until_derived == "blank") | (whereabouts.c.until_earliest >= _DAY),
    )
    .order_by(whereabouts.c.since_latest.desc())
    .limit(1)
)
_STATED = evidence.Statements(
    or_(
        statement.c.object_id == _OBJECT,
        statement.c.component_id.in_(
            select(component.c.id).where(component.c.object_id == _OBJECT)
        ),
        statement.c.treatment_id.in_(
            select(treatment.c.id).where(treatment.c.object_id == _OBJECT)
        ),
    )
)
"""What sources state about an object, its parts and its treatments."""
_UNPLACED = Question(
    select(
        layer.c.ref,
        blank(func.coalesce(material.c.name, material.c.key, layer.c.material_words)).label("name"),
        blank(layer.c.role).label("role"),
    )
    .outerjoin_from(layer, material, material.c.id == layer.c.material_id)
    .where(
        layer.c.object_id == _OBJECT,
        layer.c.place_id.is_(None),
        ~select(layer_candidate.c.layer_id)
        .where(layer_candidate.c.layer_id == layer.c.id)
        .exists(),
    )
    .order_by(layer.c.id)
)
"""Layers of which nobody wrote down where they lie."""
_TREATMENTS = Question(
    select(treatment.c.id, treatment.c.ref).where(treatment.c.object_id == _OBJECT)
)
STATEMENTS = (
    *naming.STATEMENTS,
    _COMPONENTS,
    _BRIDGES,
    *_PLACE_STATEMENTS,
    _EXAMINED,
    _EXAMINERS,
    _KEPT,
    *_STATED.questions,
    _TREATMENTS,
    _UNPLACED,
    *cautions.STATEMENTS,
)
_OBJECT_MADE = naming.OBJECT.at("made_words")


def object_on(connection: Connection, number: str, on: AsOf) -> ObjectAnswer:
    """An object with its parts and places at the close of a day (the last of a span).

    Raises:
        NoSuch: there is no such object.
    """
    owner = naming.find_object(connection, number)
    made = when(owner, _OBJECT_MADE)
    components = _COMPONENTS.all(connection, object=owner.id)
    components.sort(key=lambda row: sort_key(row.mark))
    marks = {row.id: row.mark for row in components}
    return ObjectAnswer(
        owner.number,
        owner.title,
        owner.kind,
        owner.maker,
        made,
        _kept_at(connection, owner, on.last),
        owner.note,
        on,
        cautions.warnings_on(connection, owner.id),
        _last_examined(connection, owner.id, on.last),
        _component_rows(connection, owner.id, components, marks, object_made(made), on.last),
        places_of(connection, owner.id, components, marks, object_made(made), on.last),
        _rivals(connection, owner.id, marks),
        tuple(
            Hit("layer", owner.number, row.ref, row.name, row.role)
            for row in _UNPLACED.all(connection, object=owner.id)
        ),
    )


def _kept_at(connection: Connection, owner: Row, day: int) -> str:
    """Where it was on that day, if that is on record, else where it is said to be."""
    row = _KEPT.first(connection, object=owner.id, day=day)
    return str(row.place_name if row else owner.whereabouts)


def _last_examined(connection: Connection, owner: int, day: int) -> Deed | None:
    row = _EXAMINED.first(connection, object=owner, day=day)
    if row is None:
        return None
    people = evidence.by_owner(_EXAMINERS.all(connection, intervention=row.id))
    return Deed(
        when(row, _EXAMINED_ON),
        row.ref,
        "examine",
        row.technique,
        people.get(row.id, ()),
        source=source_of(row, _EXAMINED_IN),
        note=row.note,
    )


def _component_rows(
    connection: Connection,
    owner: int,
    components: Rows,
    marks: Mapping[int, str],
    whole: Interval,
    day: int,
) -> tuple[ComponentRow, ...]:
    bridges: dict[int, list[str]] = defaultdict(list)
    for fixing, mark in _BRIDGES.all(connection, object=owner):
        bridges[fixing].append(mark)
    return tuple(
        _component_row(row, marks, tuple(sorted(bridges.get(row.id, ()), key=sort_key)), whole, day)
        for row in components
    )


def _component_row(
    row: Row, marks: Mapping[int, str], bridges: tuple[str, ...], whole: Interval, day: int
) -> ComponentRow:
    made, lost = when(row, _MADE), when(row, _LOST)
    lasts = lasting(whole, made, lost, row.origin, row.source_latest, row.entered)
    retired = retired_of(row, _RETIRED)
    state, possible, flags = standing(lasts, retired, day)
    return ComponentRow(
        row.mark,
        marks.get(row.parent_id, ""),
        row.name,
        row.kind,
        row.origin,
        row.material or row.material_words,
        state,
        possible,
        row.kept_at,
        row.mass_kg,
        row.mass_basis,
        (row.width_mm, row.height_mm, row.depth_mm),
        row.known_from,
        bridges,
        row.note,
        made,
        lost,
        describe_flags(flags),
        retired,
    )


def _rivals(connection: Connection, owner: int, marks: Mapping[int, str]) -> tuple[Rival, ...]:
    """What sources state about the object, its parts and its treatments."""
    stated = _STATED.about(connection, object=owner)
    names = {("component", record): mark for record, mark in marks.items()}
    if any(subject == "treatment" for subject, _ in stated):
        rows = _TREATMENTS.all(connection, object=owner)
        names.update({("treatment", row.id): row.ref for row in rows})
    return tuple(
        replace(rival, of=names.get(record, ""))
        for record, rivals in stated.items()
        for rival in rivals
    )
