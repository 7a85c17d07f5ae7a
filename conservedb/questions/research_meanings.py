"""What the value of a condition means in a database: ids and words that are on record."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Any

from sqlalchemy import BindParameter, Connection, bindparam, select, union_all

from conservedb.dates import read_span
from conservedb.knowledge.research import EVER, Condition
from conservedb.knowledge.research_words import AskError
from conservedb.knowledge.verdicts import WORST_FIRST
from conservedb.questions import meanings
from conservedb.questions.answers import NoSuch
from conservedb.questions.asking import Question, Row
from conservedb.questions.basics import Ambiguous
from conservedb.questions.nearest import nearest
from conservedb.questions.research_environment import STATEMENTS as _ENVIRONMENT
from conservedb.questions.research_environment import rooms_of
from conservedb.questions.research_on_record import STATEMENTS as _ON_RECORD
from conservedb.questions.research_on_record import (
    ensure_object,
    ensure_words,
    is_called,
    kinds,
    role,
)
from conservedb.questions.research_reversibility import reversible
from conservedb.questions.research_rules import STATEMENTS as _RULES
from conservedb.questions.research_rules import known_rule
from conservedb.questions.research_terms import Meant
from conservedb.records.layers import IDENTIFIED
from conservedb.records.materials import material, material_class
from conservedb.records.people import person, person_alias
from conservedb.records.rules import ROOM_USES
from conservedb.records.treatments import AIMS, INTERVENTION_KINDS
from conservedb.store.keys import fold
from conservedb.store.opening import today

_WORDS = re.compile(r"\w+")
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
        select(
            person.c.id,
            person.c.name,
            person.c.name.label("written"),
            person.c.name_folded.label("folded"),
        ),
        select(person.c.id, person.c.name, person_alias.c.alias, person_alias.c.alias_folded).join(
            person_alias, person_alias.c.person_id == person.c.id
        ),
    )
)
STATEMENTS = (
    *meanings.STATEMENTS,
    *_ENVIRONMENT,
    *_RULES,
    *_ON_RECORD,
    *(BELOW, ABOVE_CLASS, ABOVE_MATERIAL, PEOPLE, EVERYBODY),
)


Meanings = tuple[tuple[Condition, Meant], ...]
"""Each condition of a question with what its value means; it can be kept as a key."""


def meaning_of(connection: Connection, condition: Condition) -> Meant:
    """What the value of a condition means.

    Raises:
        NoSuch: no material, class or person bears the word, it is none of a closed list, or
            nothing on record has it.
        Ambiguous: several do.
        AskError: the day of a state has not come.
    """
    field, value = condition.field, condition.value
    if field == "part material":
        return _matter(connection, value)
    if field == "material":
        return _matter_or_called(connection, value)
    if field == "state":
        return Meant(day=_day(connection, condition.on))
    if field == "person":
        return Meant((_person(connection, value),))
    if field in _LISTED:
        return Meant(words=(listed(*_LISTED[field], value),))
    if field in ("object kind", "source"):
        return Meant(words=kinds(connection, field, value))
    if field == "role":
        return Meant(words=role(connection, value))
    if field == "rule":
        return Meant(words=(known_rule(connection, value),))
    if field == "environment":
        use = listed("environment", ROOM_USES, value)
        return Meant(words=(use,), rooms=rooms_of(connection, use))
    if field == "reversibility":
        return reversible(connection, listed("verdict on removal", WORST_FIRST, value))
    if field in ("technique", "observed"):
        ensure_words(connection, field, value)
    elif field == "object":
        ensure_object(connection, value)
    return Meant(words=(value,))


def _day(connection: Connection, on: str) -> int | None:
    """The last day of what was asked for, as far as it has come; None is today."""
    if on in ("", EVER):
        return None
    found = read_span(on)
    return min(found.latest, ensure_come(connection, on, found.earliest))


def ensure_come(connection: Connection, words: str, first: int) -> int:
    """Today, unless a day is after it.

    Raises:
        AskError: it is.
    """
    now = today(connection).toordinal()
    if first > now:
        raise AskError(f"{words!r} lies in the future; how layers will stand then is on no record")
    return now


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


def _matter_or_called(connection: Connection, word: str) -> Meant:
    """What bears the word, with what nobody identified and was called so; or only the latter."""
    try:
        found = _matter(connection, word)
    except Ambiguous:
        raise
    except NoSuch:
        if not is_called(connection, word):
            raise
        found = Meant()
    return replace(found, words=(word,))


def _ids(rows: Iterable[tuple[Any, ...]]) -> tuple[int, ...]:
    return tuple(sorted(row[0] for row in rows))


def _person(connection: Connection, word: str) -> int:
    """Who bears the name or alias; else the only one whose name has these words, such as one."""
    found = PEOPLE.all(connection, folded=fold(word)) or _named_so(connection, word)
    if len(found) > 1:
        raise Ambiguous(word, tuple((row.name, row.name) for row in found))
    return int(found[0].id)


def _named_so(connection: Connection, word: str) -> list[Row]:
    everybody = EVERYBODY.all(connection)
    asked = set(_WORDS.findall(fold(word)))
    found = {row.id: row for row in everybody if asked and asked <= set(_WORDS.findall(row.folded))}
    if not found:
        written = {row.folded: row.written for row in everybody}
        raise NoSuch("person", word, nearest(fold(word), written))
    return sorted(found.values(), key=lambda row: row.name)


def listed(what: str, known: Sequence[str], value: str) -> str:
    """The word of a closed list that a value is; NoSuch where it is none."""
    word = fold(value)
    if word not in known:
        raise NoSuch(what, value, nearest(word, {one: one for one in known}) or tuple(known))
    return word
