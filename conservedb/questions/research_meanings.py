"""What the value of a condition means in a database: ids and words that are on record."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from sqlalchemy import BindParameter, Connection, bindparam, select, union_all

from conservedb.knowledge.research import Condition
from conservedb.knowledge.verdicts import WORST_FIRST
from conservedb.questions import meanings
from conservedb.questions.answers import NoSuch
from conservedb.questions.asking import Question
from conservedb.questions.basics import Ambiguous
from conservedb.questions.research_environment import STATEMENTS as _ENVIRONMENT
from conservedb.questions.research_environment import rooms_of
from conservedb.questions.research_reversibility import reversible
from conservedb.questions.research_rules import STATEMENTS as _RULES
from conservedb.questions.research_rules import known_rule
from conservedb.questions.research_terms import Meant
from conservedb.records.layers import IDENTIFIED
from conservedb.records.materials import material, material_class
from conservedb.records.objects import object_
from conservedb.records.people import person, person_alias
from conservedb.records.rules import ROOM_USES
from conservedb.records.sources import source
from conservedb.records.treatments import AIMS, INTERVENTION_KINDS
from conservedb.store.keys import fold

_ID: BindParameter[int] = bindparam("id")
_FOLDED: BindParameter[str] = bindparam("folded")

BELOW = Question(
    meanings.classes_below(select(material_class.c.id).where(material_class.c.id == _ID))
)
ABOVE_CLASS = Question(
    meanings.classes_above(
        select(material_class.c.parent_id.label("id")).where(
            material_class.c.id == _ID, material_class.c.parent_id.is_not(None)
        )
    )
)
ABOVE_MATERIAL = Question(
    meanings.classes_above(
        select(material.c.class_id.label("id")).where(
            material.c.id == _ID, material.c.class_id.is_not(None)
        )
    )
)
PEOPLE = Question(
    select(person.c.id, person.c.name)
    .where(
        person.c.id.in_(
            union_all(
                select(person.c.id).where(person.c.name_folded == _FOLDED),
                select(person_alias.c.person_id).where(person_alias.c.alias_folded == _FOLDED),
            )
        )
    )
    .order_by(person.c.name)
)
EVERYBODY = Question(
    union_all(
        select(person.c.name, person.c.name_folded.label("folded")),
        select(person_alias.c.alias, person_alias.c.alias_folded),
    )
)
OBJECT_KINDS = Question(select(object_.c.kind).where(object_.c.kind.is_not(None)).distinct())
SOURCE_KINDS = Question(select(source.c.kind).where(source.c.kind.is_not(None)).distinct())
STATEMENTS = (
    *meanings.STATEMENTS,
    *_ENVIRONMENT,
    *_RULES,
    *(BELOW, ABOVE_CLASS, ABOVE_MATERIAL, PEOPLE, EVERYBODY, OBJECT_KINDS, SOURCE_KINDS),
)


Meanings = tuple[tuple[Condition, Meant], ...]
"""Each condition of a question with what its value means; it can be kept as a key."""


def meaning_of(connection: Connection, condition: Condition) -> Meant:
    """What the value of a condition means.

    Raises:
        NoSuch: no material, class or person bears the word, or it is none of a closed list.
        Ambiguous: several do.
    """
    field, value = condition.field, condition.value
    if field in ("material", "part material"):
        return _matter(connection, value)
    if field == "person":
        return Meant((_person(connection, value),))
    if field in _LISTED:
        return Meant(words=(listed(*_LISTED[field], value),))
    if field == "object kind":
        return Meant(words=_alike(OBJECT_KINDS.tuples(connection), value))
    if field == "rule":
        return Meant(words=(known_rule(connection, value),))
    if field == "environment":
        use = listed("environment", ROOM_USES, value)
        return Meant(words=(use,), rooms=rooms_of(connection, use))
    if field == "reversibility":
        return reversible(connection, listed("verdict on removal", WORST_FIRST, value))
    if field == "source":
        return Meant(words=_alike(SOURCE_KINDS.tuples(connection), value))
    return Meant(words=(value,))


_LISTED = {
    "kind": ("kind of intervention", INTERVENTION_KINDS),
    "aim": ("aim", AIMS),
    "identified": ("way of identifying", IDENTIFIED),
}


def _matter(connection: Connection, word: str) -> Meant:
    found = meanings.meaning(connection, word)
    if found.kind == "material":
        above = _ids(ABOVE_MATERIAL.tuples(connection, id=found.id))
        return Meant((found.id,), above=above)
    below = _ids(BELOW.tuples(connection, id=found.id))
    return Meant(classes=below, above=_ids(ABOVE_CLASS.tuples(connection, id=found.id)))


def _ids(rows: Iterable[tuple[Any, ...]]) -> tuple[int, ...]:
    return tuple(sorted(row[0] for row in rows))


def _person(connection: Connection, word: str) -> int:
    found = PEOPLE.all(connection, folded=fold(word))
    if not found:
        written = {row.folded: row.name for row in EVERYBODY.all(connection)}
        raise NoSuch("person", word, _near(fold(word), written))
    if len(found) > 1:
        raise Ambiguous(word, tuple((row.name, row.name) for row in found))
    return int(found[0].id)


def listed(what: str, known: Sequence[str], value: str) -> str:
    """The word of a closed list that a value is; NoSuch where it is none."""
    word = fold(value)
    if word not in known:
        raise NoSuch(what, value, _near(word, {one: one for one in known}) or tuple(known))
    return word


def _alike(rows: Iterable[tuple[Any, ...]], value: str) -> tuple[str, ...]:
    """The words on record that are the value, compared without case and accents."""
    return tuple(sorted(word for (word,) in rows if fold(word) == fold(value)))


def _near(word: str, written: dict[str, str]) -> tuple[str, ...]:
    from difflib import get_close_matches

    return tuple(written[near] for near in get_close_matches(word, written, 3, 0.6))
