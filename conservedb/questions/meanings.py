"""Which material or class of materials a word means; an ambiguous word is not resolved."""

from __future__ import annotations

from typing import NamedTuple

from sqlalchemy import BindParameter, Connection, bindparam, or_, select, union_all

from conservedb.questions.answers import NoSuch
from conservedb.questions.asking import Question, Selection, blank
from conservedb.questions.basics import Ambiguous
from conservedb.questions.nearest import nearest
from conservedb.records.behaviour import trade_name
from conservedb.records.materials import material, material_alias, material_class
from conservedb.store.keys import fold

_WORD: BindParameter[str] = bindparam("word")
_FOLDED: BindParameter[str] = bindparam("folded")


class Meaning(NamedTuple):
    """A material or a material class."""

    kind: str
    id: int
    key: str
    name: str


_MATERIALS = Question(
    select(material.c.id, material.c.key, blank(material.c.name).label("name"))
    .where(
        material.c.id.in_(
            union_all(
                select(material.c.id).where(
                    or_(material.c.key == _WORD, material.c.key == _FOLDED)
                ),
                select(material.c.id).where(material.c.name_folded == _FOLDED),
                select(material_alias.c.material_id).where(
                    material_alias.c.alias_folded == _FOLDED
                ),
                select(trade_name.c.material_id).where(trade_name.c.alias_folded == _FOLDED),
            )
        )
    )
    .order_by(material.c.key)
)
_CLASSES = Question(
    select(material_class.c.id, material_class.c.key, blank(material_class.c.name).label("name"))
    .where(
        material_class.c.id.in_(
            union_all(
                select(material_class.c.id).where(
                    or_(material_class.c.key == _WORD, material_class.c.key == _FOLDED)
                ),
                select(material_class.c.id).where(material_class.c.name_folded == _FOLDED),
            )
        )
    )
    .order_by(material_class.c.key)
)
_EVERY_NAME = Question(
    union_all(
        select(material.c.name.label("written"), material.c.name_folded.label("folded")),
        select(material.c.key, material.c.key),
        select(material_alias.c.alias, material_alias.c.alias_folded),
        select(trade_name.c.alias, trade_name.c.alias_folded),
        select(material_class.c.name, material_class.c.name_folded),
        select(material_class.c.key, material_class.c.key),
    )
)


def classes_below(start: Selection) -> Selection:
    """The ids of some classes and of everything below them."""
    below = start.cte("below", recursive=True)
    child = select(material_class.c.id).where(material_class.c.parent_id == below.c.id)
    return select(below.union(child).c.id)


def classes_above(start: Selection) -> Selection:
    """The ids of some classes and of everything above them."""
    above = start.cte("above", recursive=True)
    parent = select(material_class.c.parent_id).where(material_class.c.id == above.c.id)
    found = above.union(select(parent.scalar_subquery()).where(above.c.id.is_not(None)))
    return select(found.c.id).where(found.c.id.is_not(None))


_ID: BindParameter[int] = bindparam("id")
_CLASSES_OF = Question(
    classes_above(
        select(material.c.class_id.label("id")).where(
            material.c.id == _ID, material.c.class_id.is_not(None)
        )
    )
)
STATEMENTS = (_MATERIALS, _CLASSES, _EVERY_NAME, _CLASSES_OF)


def meaning(connection: Connection, word: str) -> Meaning:
    """What a key, name, alias or trade name means: one material or one class.

    All are compared as folded text. A key goes before names, a class before materials in it.

    Raises:
        NoSuch: nothing bears the word.
        Ambiguous: several things bear it; it is for a person to say which is meant.
    """
    asked = {"word": word.strip(), "folded": fold(word)}
    found = [
        *(Meaning("material class", *row) for row in _CLASSES.all(connection, **asked)),
        *(Meaning("material", *row) for row in _MATERIALS.all(connection, **asked)),
    ]
    if not found:
        raise NoSuch("material or class", word, _nearest(connection, word))
    keyed = [one for one in found if one.key in asked.values()]
    found = keyed or found
    classes = {one.id for one in found if one.kind == "material class"}
    outside = [
        one
        for one in found
        if one.kind == "material class" or not classes & _classes_of(connection, one)
    ]
    if len(outside) == 1 or keyed:
        return outside[-1]
    raise Ambiguous(word, tuple((one.name or one.key, one.key) for one in outside))


def _classes_of(connection: Connection, one: Meaning) -> set[int]:
    return {row.id for row in _CLASSES_OF.all(connection, id=one.id)}


def _nearest(connection: Connection, word: str) -> tuple[str, ...]:
    written = {
        row.folded.replace("-", " "): row.written
        for row in _EVERY_NAME.all(connection)
        if row.folded
    }
    return nearest(fold(word), written)
