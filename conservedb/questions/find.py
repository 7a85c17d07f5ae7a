"""Finding anything by the start of what it is called: numbers, marks, names, papers.

What is typed is compared as folded text with ranges of an index, so that every character in
it is data. What is called exactly so comes first. Of titles of objects every word counts.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from typing import Any

from sqlalchemy import (
    BindParameter,
    ColumnElement,
    Connection,
    Table,
    bindparam,
    literal_column,
    select,
)
from sqlalchemy.sql.selectable import Select

from conservedb.questions.answers import Hit
from conservedb.questions.asking import Question, Row, blank
from conservedb.records.behaviour import trade_name
from conservedb.records.materials import material, material_alias, material_class
from conservedb.records.objects import component, object_
from conservedb.records.people import person, person_alias
from conservedb.records.places import place
from conservedb.records.sources import source
from conservedb.store.keys import fold

_FROM: BindParameter[str] = bindparam("first")
_TO: BindParameter[str] = bindparam("last")
_MOST: BindParameter[int] = bindparam("most")
_BEYOND = "\U0010ffff"
_LONGEST = 1000
"""Longer words are not looked for inside titles; SQLite refuses patterns that are too long."""
Text = ColumnElement[Any]


def _starting(column: Text, label: Text, detail: Text, number: Text, mark: Text) -> Select[Any]:
    """What begins with the words typed, in the order of the index on `column`."""
    return (
        select(
            column.label("found"),
            blank(number).label("object"),
            blank(mark).label("mark"),
            blank(label).label("label"),
            blank(detail).label("detail"),
        )
        .where(column >= _FROM, column < _TO)
        .order_by(column)
        .limit(_MOST)
    )


_NOTHING: Text = literal_column("''")


def _object(column: Text) -> Question:
    return Question(_starting(column, object_.c.title, object_.c.kind, object_.c.number, _NOTHING))


def _marked(table: Table, column: Text) -> Select[Any]:
    """Parts or places, with the object that they are on."""
    c = table.c
    return _starting(column, c.name, c.kind, object_.c.number, c.mark).outerjoin_from(
        table, object_, object_.c.id == c.object_id
    )


def _on_object(table: Table) -> Question:
    """Parts or places of the object whose number is typed before them."""
    numbered = select(object_.c.id).where(object_.c.number_folded == bindparam("number"))
    found = _marked(table, table.c.mark_folded).where(table.c.object_id.in_(numbered))
    return Question(found)


def _named(table: Table, column: Text, label: Text, detail: Text) -> Question:
    return Question(_starting(column, label, detail, _NOTHING, _NOTHING).select_from(table))


def _alias(column: Text, owner: Table, link: Text, label: Text, detail: Text) -> Question:
    found = _starting(column, label, detail, _NOTHING, _NOTHING)
    return Question(found.outerjoin_from(column.table, owner, owner.c.id == link))


_CLASS = material_class.c
_BY_KIND: tuple[tuple[str, tuple[Question, ...]], ...] = (
    ("object", (_object(object_.c.number_folded), _object(object_.c.title_folded))),
    (
        "place",
        tuple(Question(_marked(place, place.c[n])) for n in ("mark_folded", "name_folded")),
    ),
    (
        "component",
        tuple(Question(_marked(component, component.c[n])) for n in ("mark_folded", "name_folded")),
    ),
    (
        "material",
        (
            *(
                _named(material, material.c[n], material.c.name, material.c.key)
                for n in ("key", "name_folded")
            ),
            *(
                _alias(
                    names.c.alias_folded,
                    material,
                    names.c.material_id,
                    names.c.alias,
                    material.c.key,
                )
                for names in (material_alias, trade_name)
            ),
            *(
                _named(material_class, _CLASS[n], _CLASS.name, _CLASS.key)
                for n in ("key", "name_folded")
            ),
        ),
    ),
    (
        "person",
        (
            _named(person, person.c.name_folded, person.c.name, person.c.role),
            _alias(
                person_alias.c.alias_folded,
                person,
                person_alias.c.person_id,
                person.c.name,
                person_alias.c.alias,
            ),
        ),
    ),
    (
        "source",
        (_named(source, source.c.citation_folded, source.c.ref, source.c.citation),),
    ),
)
_IN_TITLE = Question(
    select(
        object_.c.title_folded.label("found"),
        object_.c.number.label("object"),
        literal_column("''").label("mark"),
        blank(object_.c.title).label("label"),
        blank(object_.c.kind).label("detail"),
    )
    .where(object_.c.title_folded.like(bindparam("within"), escape="\\"))
    .order_by(object_.c.number_sort)
    .limit(_MOST)
)
"""Objects with a later word of the title that begins so ("winds" in "The Four Winds").

It reads every title; there are hundreds of layers to an object, so these are few.
"""
_SOURCE_REF = _named(source, source.c.ref, source.c.ref, source.c.citation)
_ON_OBJECT = (("place", _on_object(place)), ("component", _on_object(component)))
STATEMENTS = (
    *(question for _, questions in _BY_KIND for question in questions),
    _IN_TITLE,
    _SOURCE_REF,
    *(question for _, question in _ON_OBJECT),
)


def find(connection: Connection, text: str, limit: int = 50) -> tuple[Hit, ...]:
    """What begins with the words typed, the exact first; nothing for blank words.

    "B07" finds parts and places of that mark, "SQ.1902.7 J14" the one on that object.
    """
    typed = fold(text)
    if not typed:
        return ()
    found: dict[Hit, bool] = {}
    for kind, row, exact in _found(connection, text.strip(), typed, limit):
        hit = Hit(kind, row.object, row.mark, row.label or row.detail, row.detail)
        found[hit] = found.get(hit, False) or exact
    return _fair(found, limit)


def _fair(found: dict[Hit, bool], limit: int) -> tuple[Hit, ...]:
    """The exact first; of the rest as many of each kind as there is room for."""
    in_kind: Counter[str] = Counter()
    ranks: dict[Hit, tuple[bool, int, int]] = {}
    for order, (hit, exact) in enumerate(found.items()):
        ranks[hit] = (not exact, in_kind[hit.kind], order)
        in_kind[hit.kind] += not exact
    kept = sorted(found, key=ranks.__getitem__)[:limit]
    return tuple(sorted(kept, key=lambda hit: (ranks[hit][0], ranks[hit][2])))


def _found(
    connection: Connection, written: str, typed: str, limit: int
) -> Iterator[tuple[str, Row, bool]]:
    number, _, mark = typed.rpartition(" ")
    for kind, question in _ON_OBJECT if number else ():
        rows = question.all(connection, number=number.strip(), **_range(mark), most=limit)
        yield from ((kind, row, True) for row in rows)
    for kind, questions in _BY_KIND:
        for question in questions:
            rows = question.all(connection, **_range(typed), most=limit)
            yield from ((kind, row, row.found == typed) for row in rows)
    if len(typed) <= _LONGEST:
        for row in _IN_TITLE.all(connection, within=f"% {_literally(typed)}%", most=limit):
            yield "object", row, False
    for ref in dict.fromkeys((written, written.upper(), written.lower())):
        rows = _SOURCE_REF.all(connection, **_range(ref), most=limit)
        yield from (("source", row, row.found == ref) for row in rows)


def _range(start: str) -> dict[str, str]:
    return {"first": start, "last": start + _BEYOND}


def _literally(text: str) -> str:
    """Text in which the signs that LIKE would obey stand for themselves."""
    return text.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_")
