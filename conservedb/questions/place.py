"""What lies at a place on a day: sides, condition, fixings, layers, and how sure it all is."""

from __future__ import annotations

from sqlalchemy import Connection, bindparam, select

from conservedb.knowledge.dating import made_from
from conservedb.knowledge.joints import JointEvent
from conservedb.questions import cautions, evidence, joint, layers_at, naming
from conservedb.questions.answers import (
    AsOf,
    Fixing,
    JointCondition,
    Layer,
    PlaceAnswer,
    Rival,
    Seen,
    Side,
    Warning_,
)
from conservedb.questions.asking import Question, Row, blank, cited, dated
from conservedb.questions.evidence import source_of, when
from conservedb.questions.lasting import object_made
from conservedb.questions.layer_records import STATEMENTS as _LAYER_STATEMENTS
from conservedb.questions.rewordings import of, rewordings
from conservedb.questions.summary import summary
from conservedb.records.materials import material
from conservedb.records.objects import component
from conservedb.records.places import place as place_table
from conservedb.records.sources import source, statement
from conservedb.store.keys import fold

_SIDES = {"a": component.alias("a"), "b": component.alias("b")}
_OF = {"a": material.alias("of_a"), "b": material.alias("of_b")}

_PLACE = Question(
    select(
        place_table.c.id,
        place_table.c.mark,
        place_table.c.component_id,
        place_table.c.other_component_id,
        *(
            blank(place_table.c[name]).label(name)
            for name in ("kind", "name", "geometry", "arose", "fit", "access", "note")
        ),
        *dated(place_table, "arose", "arising"),
        place_table.c.load_kg,
        *cited(source),
        *(
            column
            for side, part in _SIDES.items()
            for column in (
                blank(part.c.mark).label(side),
                blank(part.c.name).label(f"{side}_name"),
                blank(part.c.kind).label(f"{side}_kind"),
                blank(part.c.material_words).label(f"{side}_words"),
                part.c.made_earliest.label(f"{side}_made"),
                blank(_OF[side].c.name).label(f"{side}_material"),
                blank(_OF[side].c.key).label(f"{side}_key"),
            )
        ),
    )
    .outerjoin_from(place_table, source, source.c.id == place_table.c.load_source_id)
    .outerjoin(_SIDES["a"], _SIDES["a"].c.id == place_table.c.component_id)
    .outerjoin(_SIDES["b"], _SIDES["b"].c.id == place_table.c.other_component_id)
    .outerjoin(_OF["a"], _OF["a"].c.id == _SIDES["a"].c.material_id)
    .outerjoin(_OF["b"], _OF["b"].c.id == _SIDES["b"].c.material_id)
    .where(
        place_table.c.object_id == bindparam("object"),
        place_table.c.mark_folded == bindparam("mark"),
    )
)
_MADE = naming.OBJECT.at("made_words")
_AROSE, _LOAD = _PLACE.at("arising_words"), _PLACE.at("source_ref")
_STATED = evidence.Statements(statement.c.place_id == bindparam("place"))
STATEMENTS = (
    *naming.STATEMENTS,
    _PLACE,
    *_STATED.questions,
    *_LAYER_STATEMENTS,
    *joint.STATEMENTS,
    *cautions.STATEMENTS,
)


def place(connection: Connection, number: str, mark: str, on: AsOf) -> PlaceAnswer:
    """What lies at a place of an object at the close of a day, or over a span.

    Raises:
        NoSuch: no such object, or it has no such place.
    """
    owner = naming.find_object(connection, number)
    row = _PLACE.first(connection, object=owner.id, mark=fold(mark))
    if row is None:
        raise naming.no_such_mark(connection, owner, ("place",), mark)
    whole = object_made(when(owner, _MADE))
    bearers = [made for made in (row.a_made, row.b_made) if made is not None]
    floor = max((made_from(made, whole.earliest) for made in bearers), default=whole.earliest)
    condition: JointCondition | None = None
    fixings: tuple[Fixing, ...] = ()
    known: list[JointEvent] = []
    if row.kind == "joint":
        rows = joint.events_at(connection, row.id)
        known = joint.known_events(rows, floor)
        condition = joint.joint_condition(rows, known, on.last)
        fixings = joint.fixings_at(connection, row.id, whole, on)
    layers = layers_at.layers_at(connection, row.id, on, known, floor)
    rivals = tuple(_STATED.about(connection, place=row.id)["place", row.id])
    return _answer(connection, owner, row, on, condition, fixings, layers, rivals)


def _answer(
    connection: Connection,
    owner: Row,
    row: Row,
    on: AsOf,
    condition: JointCondition | None,
    fixings: tuple[Fixing, ...],
    layers: tuple[Layer, ...],
    rivals: tuple[Rival, ...],
) -> PlaceAnswer:
    seen = _last_seen(layers)
    return PlaceAnswer(
        object=owner.number,
        title=owner.title,
        place=row.mark,
        kind=row.kind,
        name=row.name,
        geometry=row.geometry,
        arose=row.arose,
        arose_date=when(row, _AROSE),
        fit=row.fit,
        load_kg=row.load_kg,
        load_source=source_of(row, _LOAD),
        access=row.access,
        note=row.note,
        on=on,
        sides=_sides(row),
        condition=condition,
        fixings=fixings,
        layers=layers,
        warnings=_nearest_first(cautions.warnings_on(connection, owner.id), row),
        rivals=rivals,
        last_seen=seen,
        summary=summary(row.kind, row.load_kg, condition, fixings, layers, rivals, seen),
        residues=cautions.residues_at(connection, row.id, on),
        amended=of(rewordings(connection, {"place": [row.id]}), "place", row.id),
    )


def _sides(row: Row) -> tuple[Side, ...]:
    """Both sides of a joint (of one component, where it is broken across), else the bearer."""
    a = (row.a, row.a_name, row.a_material or row.a_key or row.a_words, row.a_kind)
    if row.kind != "joint":
        return (Side("", *a),)
    b = (row.b, row.b_name, row.b_material or row.b_key or row.b_words, row.b_kind)
    return Side("A", *a), Side("B", *(b if row.b else a))


def _nearest_first(warnings: tuple[Warning_, ...], row: Row) -> tuple[Warning_, ...]:
    """The warnings of an object, those about the place or its sides before the others."""
    here, sides = row.mark, (row.a, row.b)

    def distance(caution: Warning_) -> int:
        if caution.place == here or (caution.component and caution.component in sides):
            return 0
        return 2 if caution.place or caution.component else 1

    return tuple(sorted(warnings, key=distance))


def _last_seen(layers: tuple[Layer, ...]) -> Seen | None:
    seen = [layer.last_seen for layer in layers if layer.last_seen is not None]
    return max(seen, key=lambda found: (found.date.latest, found.date.earliest), default=None)
