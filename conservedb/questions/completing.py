"""What a few letters typed into a form may mean: names on record, the likeliest first.

Names of one object are read by its id, shared names from their own small tables, so that
the number of layers in the database does not count.
"""

from __future__ import annotations

import difflib
from collections.abc import Callable, Iterable, Sequence
from typing import Any, NamedTuple

from sqlalchemy import Connection, Select, Table, literal, select

from conservedb.knowledge.layers import PRESENT, REDUCED, STATE_NAMES
from conservedb.knowledge.quantities import UNITS
from conservedb.questions.naming import find_object
from conservedb.questions.states import mask_at
from conservedb.records.authorisations import authorisation
from conservedb.records.batches import batch
from conservedb.records.behaviour import trade_name
from conservedb.records.layers import layer, layer_candidate, removal
from conservedb.records.materials import material, material_alias, material_class, material_part
from conservedb.records.objects import component, object_
from conservedb.records.observations import reading
from conservedb.records.people import person, person_alias
from conservedb.records.places import place
from conservedb.records.plans import plan, planned_step
from conservedb.records.sources import source
from conservedb.records.terms import term
from conservedb.records.treatments import intervention, treatment
from conservedb.store.keys import fold, sort_key

MOST = 30
_LIKE_ENOUGH = 0.7
_COMPARED = 5000
_NOT_FOUND = 9


class Known(NamedTuple):
    """Something on record: what goes into the field, what is shown, how near it comes."""

    text: str
    label: str
    near: bool = False
    exact: bool = False


class _Candidate(NamedTuple):
    text: str
    label: str
    names: tuple[str, ...]


def complete(
    connection: Connection,
    lookup: str,
    typed: str,
    *,
    number: str = "",
    places: Sequence[str] = (),
    day: int = 0,
) -> tuple[Known, ...]:
    """What the letters typed may mean: exact, beginning so, a word in it, then near misses.

    Args:
        lookup: what kind of name: material, people, places, layer, treatment ... or the name of
            a list of words.
        typed: as many letters as there are; none lists what there is.
        number: of the object, where the names are its own.
        places: marks; of layers only those there.
        day: today, as a day number: layers gone by then are left out.
    """
    make = _OF_ALL.get(lookup)
    if make is not None:
        return _ranked(make(connection), typed)
    owner = find_object(connection, number).id if number else 0
    if lookup == "layer":
        return _ranked(_layers(connection, owner, places, day), typed)
    of_object = _OF_OBJECT.get(lookup)
    if of_object is not None:
        return _ranked(of_object(connection, owner), typed)
    return _ranked(_words(connection, lookup, owner), typed)


def _ranked(candidates: Iterable[_Candidate], typed: str) -> tuple[Known, ...]:
    wanted = fold(typed)
    everything = list(candidates)
    found: list[tuple[int, int, str]] = []
    for order, one in enumerate(everything):
        rank, name = min((_rank(fold(name), wanted), name) for name in one.names)
        if rank < _NOT_FOUND:
            found.append((rank, order, name))
    if found or not wanted:
        return tuple(
            _known(everything[order], name, exact=bool(wanted) and rank == 0)
            for rank, order, name in sorted(found)[:MOST]
        )
    by_name = {fold(name): (one, name) for one in everything[:_COMPARED] for name in one.names}
    close = difflib.get_close_matches(wanted, by_name, 5, _LIKE_ENOUGH)
    near = {one.text: _known(one, name) for one, name in map(by_name.__getitem__, close[::-1])}
    return tuple(one._replace(near=True) for one in reversed(near.values()))


def _known(one: _Candidate, name: str, *, exact: bool = False) -> Known:
    """A name that was found by another one than those shown tells that one too."""
    label = one.label if name in one.label else f"{one.label} ({name})"
    return Known(one.text, label, exact=exact)


def _rank(name: str, wanted: str) -> int:
    """0 the same, 1 begins so, 2 a word in it begins so, 3 holds it; else not found."""
    if name == wanted:
        return 0
    if name.startswith(wanted):
        return 1
    if f" {wanted}" in name or f"-{wanted}" in name:
        return 2
    return 3 if wanted in name else _NOT_FOUND


def _candidate(text: str, *about: str | None, names: Iterable[str] = ()) -> _Candidate:
    said = ", ".join(one for one in about if one)
    label = f"{text}  {said}" if said and said != text else text
    return _Candidate(text, label, (text, *filter(None, about), *names))


def _materials(connection: Connection) -> list[_Candidate]:
    also: dict[int, list[str]] = {}
    for names in (material_alias, trade_name):
        for owner, alias in connection.execute(select(names.c.material_id, names.c.alias)):
            also.setdefault(owner, []).append(alias)
    recipes = set(connection.execute(select(material_part.c.material_id)).scalars())
    found = []
    rows = connection.execute(
        select(material.c.id, material.c.key, material.c.name).order_by(material.c.name_folded)
    )
    for record, key, name in rows:
        kind = "recipe" if record in recipes else ""
        found.append(_candidate(key, name, kind, names=also.get(record, ())))
    return found


def _people(connection: Connection) -> list[_Candidate]:
    also: dict[int, list[str]] = {}
    for owner, alias in connection.execute(select(person_alias.c.person_id, person_alias.c.alias)):
        also.setdefault(owner, []).append(alias)
    rows = connection.execute(
        select(person.c.id, person.c.name, person.c.role).order_by(person.c.name_folded)
    )
    return [_candidate(name, role, names=also.get(record, ())) for record, name, role in rows]


def _batches(connection: Connection) -> list[_Candidate]:
    rows = connection.execute(
        select(
            batch.c.ref,
            material.c.key,
            batch.c.material_words,
            batch.c.concentration,
            batch.c.made_words,
        )
        .outerjoin_from(batch, material, material.c.id == batch.c.material_id)
        .order_by(batch.c.id.desc())
    )
    return [_candidate(ref, key or words, *more) for ref, key, words, *more in rows]


def _plain(statement: Select[Any]) -> Callable[[Connection], list[_Candidate]]:
    return lambda connection: [_candidate(*row) for row in connection.execute(statement)]


_OF_ALL: dict[str, Callable[[Connection], list[_Candidate]]] = {
    "material": _materials,
    "materials": _materials,
    "person": _people,
    "people": _people,
    "batch": _batches,
    "source": _plain(select(source.c.ref, source.c.citation).order_by(source.c.ref)),
    "class": _plain(
        select(material_class.c.key, material_class.c.name).order_by(material_class.c.key)
    ),
    "object": _plain(select(object_.c.number, object_.c.title).order_by(object_.c.number_sort)),
}
"""Names that all objects share."""


def _own(
    table: Table, *fields: str, newest: bool = True
) -> Callable[[Connection, int], list[_Candidate]]:
    """Records of one object by their mark or ref; the newest first, or by mark."""
    statement = select(*(table.c[name] for name in fields)).order_by(table.c.id.desc())

    def make(connection: Connection, owner: int) -> list[_Candidate]:
        rows = connection.execute(statement.where(table.c.object_id == owner)).all()
        if not newest:
            rows = sorted(rows, key=lambda row: sort_key(row[0]))
        return [_candidate(str(first), *map(_said, rest)) for first, *rest in rows]

    return make


def _said(value: object) -> str:
    return "" if value is None else str(value)


_OF_OBJECT: dict[str, Callable[[Connection, int], list[_Candidate]]] = {
    "place": _own(place, "mark", "name", "kind", newest=False),
    "places": _own(place, "mark", "name", "kind", newest=False),
    "component": _own(component, "mark", "name", "kind", newest=False),
    "components": _own(component, "mark", "name", "kind", newest=False),
    "treatment": _own(treatment, "ref", "title", "status"),
    "plan": _own(plan, "ref", "date_words", "justification"),
    "planned step": _own(planned_step, "ref", "kind", "technique"),
    "intervention": _own(intervention, "ref", "kind", "date_words", "technique"),
    "removal": _own(removal, "ref", "extent", "date_words"),
    "authorisation": _own(authorisation, "ref", "capacity", "decision"),
}


def _layers(
    connection: Connection, owner: int, places: Sequence[str], day: int
) -> list[_Candidate]:
    """Layers that are there on a day, whole or reduced, or may be."""
    marks = {fold(mark) for mark in places}
    where = _places_of_layers(connection, owner)
    rows = connection.execute(
        select(
            layer.c.id,
            layer.c.ref,
            material.c.name,
            layer.c.material_words,
            layer.c.role,
            mask_at(layer.c, literal(day)).label("mask"),
        )
        .outerjoin_from(layer, material, material.c.id == layer.c.material_id)
        .where(layer.c.object_id == owner)
        .order_by(layer.c.stack.desc(), layer.c.id.desc())
    )
    found = []
    for record, ref, name, words, role, mask in rows:
        there = where.get(record, [])
        if not mask & (PRESENT | REDUCED):
            continue
        if marks and not marks & {fold(mark) for mark in there}:
            continue
        sure = STATE_NAMES.get(mask, "whether it is there is not established")
        state = "" if sure == STATE_NAMES[PRESENT] else sure
        at = f"at {' or '.join(there)}" if there else "place not recorded"
        found.append(_candidate(ref, name or words or "material not recorded", role, at, state))
    return found


def _places_of_layers(connection: Connection, owner: int) -> dict[int, list[str]]:
    found: dict[int, list[str]] = {}
    certain = select(layer.c.id, place.c.mark).join_from(
        layer, place, place.c.id == layer.c.place_id
    )
    possible = select(layer_candidate.c.layer_id, place.c.mark).join_from(
        layer_candidate, place, place.c.id == layer_candidate.c.place_id
    )
    for statement in (certain, possible):
        for record, mark in connection.execute(statement.where(place.c.object_id == owner)):
            found.setdefault(record, []).append(mark)
    return found


def there_at(connection: Connection, number: str, places: Sequence[str], day: int) -> list[str]:
    """Refs of the layers that are there, whole or reduced, or may be, at these places."""
    owner = find_object(connection, number).id
    return [one.text for one in _layers(connection, owner, places, day)]


def _words(connection: Connection, name: str, owner: int) -> list[_Candidate]:
    """Words of a list, then those written in the same field on this object."""
    rows = connection.execute(
        select(term.c.term, term.c.definition).where(term.c.list == name).order_by(term.c.term)
    )
    found = {row[0]: _candidate(row[0], row[1]) for row in rows}
    for word, about in _OFFERED.get(name, {}).items():
        found.setdefault(word, _candidate(word, about))
    for table, field in _WRITTEN.get(name, ()):
        statement = select(table.c[field]).where(table.c[field].is_not(None)).distinct()
        if "object_id" in table.c:
            statement = statement.where(table.c.object_id == owner)
        for word in connection.execute(statement.limit(_COMPARED)).scalars():
            found.setdefault(word, _candidate(word))
    return list(found.values())


_OFFERED: dict[str, dict[str, str]] = {
    "quantity": {quantity: units[0] for quantity, units in UNITS.items()},
    "unit": {
        unit: ", ".join(quantity for quantity in UNITS if unit in UNITS[quantity])
        for units in UNITS.values()
        for unit in units
    },
}
"""Words that are offered whatever is on record, with what they are about."""
_WRITTEN: dict[str, tuple[tuple[Table, str], ...]] = {
    "technique": ((intervention, "technique"), (planned_step, "technique")),
    "carrier": ((layer, "carrier"), (batch, "carrier")),
    "role": ((layer, "role"),),
    "treated_from": ((layer, "treated_from"),),
    "component kind": ((component, "kind"),),
    "object kind": ((object_, "kind"),),
    "quantity": ((reading, "quantity"),),
    "unit": ((reading, "unit"),),
    "instrument": ((reading, "instrument"),),
}
"""Fields of free words whose former words are offered again."""
