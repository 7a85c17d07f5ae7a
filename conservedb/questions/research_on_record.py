"""Whether the words of a condition are on record at all: what is misspelt is refused, not asked.

A word that the trade or the department lists, and that nobody used yet, is no mistake: it is
asked for, and nothing answers.
"""

from __future__ import annotations

from collections.abc import Iterable

from sqlalchemy import BindParameter, Connection, bindparam, func, select

from conservedb.knowledge.roles import ROLES
from conservedb.questions.answers import NoSuch
from conservedb.questions.asking import Question, Selection
from conservedb.questions.nearest import MOST, nearest
from conservedb.questions.research_conditions import objects_meant
from conservedb.questions.research_terms import (
    Value,
    ascii_lower,
    begins_words,
    has_words,
    is_any,
    spellings,
    starting_words,
)
from conservedb.records.layers import layer
from conservedb.records.objects import object_
from conservedb.records.observations import observation
from conservedb.records.sources import source
from conservedb.records.terms import term
from conservedb.records.treatments import agent, intervention
from conservedb.store.keys import fold

_LOOKED_THROUGH = 5000
"""Of so many texts or objects the words are offered in the place of one that is misspelt."""
_LIST: BindParameter[str] = bindparam("list")
TERMS = Question(select(term.c.term).where(term.c.list == _LIST).order_by(term.c.term))
OBJECT_KINDS = Question(select(object_.c.kind).where(object_.c.kind.is_not(None)).distinct())
SOURCE_KINDS = Question(select(source.c.kind).where(source.c.kind.is_not(None)).distinct())

STATEMENTS = (TERMS, OBJECT_KINDS, SOURCE_KINDS)


def is_called(connection: Connection, value: str) -> bool:
    """Whether anything that nobody identified was called so by who laid, used or found it.

    What has neither material nor class on record is found through an index.
    """
    return any(
        _any(
            connection,
            select(table.c.id).where(
                table.c.material_id.is_(None),
                table.c.material_class_id.is_(None),
                begins_words(table.c.material_words, value),
            ),
        )
        for table in (layer, agent)
    )


def kinds(connection: Connection, field: str, value: str) -> tuple[str, ...]:
    """The kinds on record, of objects or of sources, in which all words of a value begin words.

    Raises:
        NoSuch: there is none, nor is one listed.
    """
    what, listed, question = _KINDS[field]
    holds = starting_words(value)
    written = sorted(kind for (kind,) in question.tuples(connection))
    known = (*written, *terms(connection, listed))
    if not any(map(holds, known)):
        raise NoSuch(what, value, _nearest_words(value, known))
    return tuple(filter(holds, written))


_KINDS = {
    "object kind": ("kind of object", "object kind", OBJECT_KINDS),
    "source": ("kind of source", "source kind", SOURCE_KINDS),
}
"""Field -> what its value is, the department's list of such words, those on record."""


def role(connection: Connection, value: str) -> tuple[str, ...]:
    """The ways in which a role may be spelt in the database.

    Raises:
        NoSuch: no layer has it, nor is it a role of the trade or listed.
    """
    spelt, column = spellings(value), layer.c.role
    known = (*ROLES, *terms(connection, "role"))
    if fold(value) not in map(fold, known):
        found = select(layer.c.id).where(is_any(func.lower(column), spelt))
        if not _any(connection, found):
            written = [*_written(connection, column), *known]
            raise NoSuch("role", value, nearest(fold(value), _folded(written)))
    return spelt


def ensure_words(connection: Connection, field: str, value: str) -> None:
    """Refuse words that no technique, or no condition that was observed, has.

    Raises:
        NoSuch: with words on record that come near.
    """
    what, listed, column = _TEXTS[field]
    words = [ascii_lower(one) for one in value.split()]
    known = terms(connection, listed)
    if any(all(word in ascii_lower(text) for word in words) for text in known):
        return
    if words and _any(connection, select(column).where(has_words(column, value))):
        return
    texts = [*known, *_written(connection, column)]
    raise NoSuch(what, value, _nearest_words(value, texts))


_TEXTS = {
    "technique": ("technique", "technique", intervention.c.technique),
    "observed": ("observed condition", "condition", observation.c.condition),
}
"""Field -> what its value is, the department's list of such words, the column of free text."""


def ensure_object(connection: Connection, value: str) -> None:
    """Refuse what is neither the number of an object nor has its words in a title.

    Raises:
        NoSuch: with numbers and words of titles that come near.
    """
    if _any(connection, objects_meant(value)):
        return
    rows = connection.execute(select(object_.c.title_folded, object_.c.number)).all()
    titles = [title for title, _ in rows if title]
    numbers = _folded(number for _, number in rows)
    near = nearest(fold(value), numbers)
    raise NoSuch("object", value, _nearest_words(value, titles, near))


def terms(connection: Connection, name: str) -> tuple[str, ...]:
    """The words of a list of the department."""
    return tuple(word for (word,) in TERMS.tuples(connection, list=name))


def _nearest_words(
    value: str, texts: Iterable[str], first: tuple[str, ...] = ()
) -> tuple[str, ...]:
    """Whole texts near a value, then the value with each of its words as one of them has it."""
    written, asked = _folded(texts), fold(value).split()
    words = {word: word for text in written for word in text.split()}
    near = [(one,) if one in words else nearest(one, words) for one in asked]
    found = [*first, *nearest(fold(value), written)]
    if len(near) == 1:
        found += near[0]
    elif all(near):
        found.append(" ".join(one[0] for one in near))
    return tuple(dict.fromkeys(one for one in found if fold(one) != fold(value)))[:MOST]


def _folded(texts: Iterable[str]) -> dict[str, str]:
    """Each text by its folded form, those first that come first."""
    found: dict[str, str] = {}
    for text in texts:
        found.setdefault(fold(text), text)
    return found


def _any(connection: Connection, statement: Selection) -> bool:
    return connection.execute(statement.limit(1)).first() is not None


def _written(connection: Connection, column: Value) -> list[str]:
    """Different texts of a column, some thousands at most."""
    found = select(column).where(column.is_not(None)).distinct().limit(_LOOKED_THROUGH)
    return [text for (text,) in connection.execute(found)]
