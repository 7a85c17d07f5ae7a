"""Places that a step is recorded over: found by likeness or by words, and what lies there."""

from __future__ import annotations

import itertools
from collections import defaultdict
from collections.abc import Iterable

from sqlalchemy import Connection, and_, or_, select, union_all

from conservedb.exchange.entering import Refused
from conservedb.exchange.faults import Fault
from conservedb.questions.asking import Row
from conservedb.questions.naming import find_object, no_such_mark
from conservedb.records.layers import layer, layer_candidate
from conservedb.records.materials import material
from conservedb.records.objects import component
from conservedb.records.places import place
from conservedb.store.keys import fold, sort_key

_OTHER = component.alias("other")
_MATERIAL = material.alias("of_part")
_OTHER_MATERIAL = material.alias("of_other")
_PLACES = (
    select(
        place.c.mark,
        place.c.mark_folded,
        place.c.kind,
        place.c.name,
        component.c.mark.label("part"),
        component.c.kind.label("part_kind"),
        component.c.material_id,
        component.c.material_words,
        _MATERIAL.c.key.label("material"),
        _MATERIAL.c.name.label("material_name"),
        _OTHER.c.kind.label("other_kind"),
        _OTHER.c.material_id.label("other_material_id"),
        _OTHER.c.material_words.label("other_words"),
        _OTHER_MATERIAL.c.key.label("other_material"),
        _OTHER_MATERIAL.c.name.label("other_name"),
    )
    .outerjoin_from(place, component, component.c.id == place.c.component_id)
    .outerjoin(_OTHER, _OTHER.c.id == place.c.other_component_id)
    .outerjoin(_MATERIAL, _MATERIAL.c.id == component.c.material_id)
    .outerjoin(_OTHER_MATERIAL, _OTHER_MATERIAL.c.id == _OTHER.c.material_id)
)


def all_like(connection: Connection, number: str, mark: str) -> tuple[str, ...]:
    """Marks of the places of the same kind, on components of the same kind and material.

    Of a component: those of the same kind and material that are neither lost nor retired. The
    one named is among them.

    Raises:
        NoSuch: no such object, or it has no such place or component.
    """
    rows = _rows(connection, number)
    this = next((row for row in rows if row.mark_folded == fold(mark)), None)
    if this is None:
        return _components_like(connection, number, mark)
    return tuple(row.mark for row in rows if _likeness(row) == _likeness(this))


def _components_like(connection: Connection, number: str, mark: str) -> tuple[str, ...]:
    owner = find_object(connection, number)
    columns = (component.c.kind, component.c.material_id, component.c.material_words)
    there = and_(component.c.lost_derived == "blank", component.c.retired_derived == "blank")
    statement = select(component.c.mark, component.c.mark_folded, *columns).where(
        component.c.object_id == owner.id, or_(there, component.c.mark_folded == fold(mark))
    )
    rows = sorted(connection.execute(statement), key=lambda row: sort_key(row.mark))
    this = next((row for row in rows if row.mark_folded == fold(mark)), None)
    if this is None:
        raise no_such_mark(connection, owner, ("place", "component"), mark)
    return tuple(row.mark for row in rows if row[2:] == this[2:])


def places_where(connection: Connection, number: str, words: str) -> tuple[str, ...]:
    """Marks of the places that bear every word in their mark, name or kind, or in the material.

    Raises:
        NoSuch: there is no such object.
    """
    wanted = fold(words).split()
    return tuple(
        row.mark
        for row in _rows(connection, number)
        if wanted and all(any(word in text for text in _texts(row)) for word in wanted)
    )


def next_outward(connection: Connection, number: str, marks: Iterable[str]) -> dict[str, str]:
    """The next number of the build-up at places, by folded mark.

    It is left out where layers are on record there and none of them has a number.
    """
    owner = find_object(connection, number)
    wanted = {fold(mark) for mark in marks}
    statement = union_all(
        select(place.c.mark_folded, layer.c.id, layer.c.stack)
        .join_from(place, layer, layer.c.place_id == place.c.id, isouter=True)
        .where(place.c.object_id == owner.id, place.c.mark_folded.in_(wanted)),
        select(place.c.mark_folded, layer.c.id, layer.c.stack)
        .join_from(place, layer_candidate, layer_candidate.c.place_id == place.c.id)
        .join(layer, layer.c.id == layer_candidate.c.layer_id)
        .where(place.c.object_id == owner.id, place.c.mark_folded.in_(wanted)),
    )
    there: dict[str, list[int | None]] = defaultdict(list)
    for mark, record, stack in connection.execute(statement):
        there[mark] += [] if record is None else [stack]
    known = {mark: [one for one in found if one is not None] for mark, found in there.items()}
    return {
        mark: str(max(known[mark]) + 1 if known[mark] else 0)
        for mark, found in there.items()
        if known[mark] or not found
    }


def place_borne(
    connection: Connection, number: str, components: Iterable[str], kind: str
) -> dict[str, str]:
    """The mark of the one place of a kind that each component bears; "" where it has none.

    Raises:
        Refused: some bear several, or are not on record; each is named.
    """
    borne: dict[str, list[str]] = defaultdict(list)
    for row in _rows(connection, number):
        if row.kind == kind and row.part is not None:
            borne[fold(row.part)].append(str(row.mark))
    owner = find_object(connection, number)
    known = select(component.c.mark_folded).where(component.c.object_id == owner.id)
    there = set(connection.execute(known).scalars())
    found, faults = {}, []
    for mark in components:
        places = borne.get(fold(mark), [])
        reason, remedy = "", ""
        if fold(mark) not in there:
            reason, remedy = "is no component on record", "write it otherwise, or add it first"
        elif len(places) > 1:
            reason = f"has several places of kind {kind}: {', '.join(places)}"
            remedy = "name the place"
        if reason:
            faults.append(Fault("interventions.csv", 1, "components", mark, reason, remedy))
        found[mark] = next(iter(places), "")
    if faults:
        raise Refused(faults)
    return found


def free_mark(connection: Connection, number: str, wanted: str) -> str:
    """That mark, or the same with a number where it stands for something else already."""
    owner = find_object(connection, number)
    taken = union_all(
        select(place.c.mark_folded).where(place.c.object_id == owner.id),
        select(component.c.mark_folded).where(component.c.object_id == owner.id),
    )
    known = set(connection.execute(taken).scalars())
    further = (f"{wanted} {count}" for count in itertools.count(2))
    return next(one for one in itertools.chain([wanted], further) if fold(one) not in known)


def places_of_layers(connection: Connection, number: str, refs: Iterable[str]) -> tuple[str, ...]:
    """Marks of the places where layers lie or may lie, each once."""
    owner = find_object(connection, number)
    wanted = {ref.strip() for ref in refs}
    statement = union_all(
        select(layer.c.ref, place.c.mark)
        .join_from(layer, place, place.c.id == layer.c.place_id)
        .where(layer.c.object_id == owner.id),
        select(layer.c.ref, place.c.mark)
        .join_from(layer, layer_candidate, layer_candidate.c.layer_id == layer.c.id)
        .join(place, place.c.id == layer_candidate.c.place_id)
        .where(layer.c.object_id == owner.id),
    )
    found = [mark for ref, mark in connection.execute(statement) if ref in wanted]
    return tuple(dict.fromkeys(found))


def _rows(connection: Connection, number: str) -> list[Row]:
    """The places of an object in the order of their marks."""
    owner = find_object(connection, number)
    rows = connection.execute(_PLACES.where(place.c.object_id == owner.id)).all()
    return sorted(rows, key=lambda row: sort_key(row.mark))


def _likeness(row: Row) -> tuple[object, ...]:
    sides = [
        (row.part_kind, row.material_id, row.material_words),
        (row.other_kind, row.other_material_id, row.other_words),
    ]
    return (row.kind, *sorted(sides, key=repr))


def _texts(row: Row) -> list[str]:
    names = (
        row.mark,
        row.name,
        row.kind,
        row.material,
        row.material_name,
        row.material_words,
        row.other_material,
        row.other_name,
        row.other_words,
    )
    return [fold(text) for text in names if text]
