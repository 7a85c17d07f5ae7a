"""What a condition of a researcher's question may ask for, as far as letters were typed."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from sqlalchemy import Connection

from conservedb.knowledge.research import STATES, Condition, Tree, conditions
from conservedb.knowledge.roles import ROLES
from conservedb.knowledge.rules import OF_OBJECTS
from conservedb.knowledge.verdicts import WORST_FIRST
from conservedb.questions.answers import NoSuch
from conservedb.questions.basics import Ambiguous
from conservedb.questions.checks_reference import reference
from conservedb.questions.completing import MOST, Known, complete
from conservedb.questions.research_meanings import meaning_of
from conservedb.questions.research_on_record import OBJECT_KINDS, SOURCE_KINDS, terms
from conservedb.records.layers import IDENTIFIED
from conservedb.records.rules import ROOM_USES
from conservedb.records.treatments import AIMS, INTERVENTION_KINDS
from conservedb.store.keys import fold

_CLOSED: dict[str, tuple[str, ...]] = {
    "as": ("layer", "agent"),
    "kind": INTERVENTION_KINDS,
    "aim": AIMS,
    "environment": ROOM_USES,
    "state": STATES,
    "identified": IDENTIFIED,
    "reversibility": WORST_FIRST,
}
_LOOKED_UP = {
    "material": ("material", "class"),
    "part material": ("material", "class"),
    "technique": ("technique",),
    "person": ("person",),
    "object": ("object",),
    "observed": ("condition",),
}
"""Field -> the kinds of name that `complete` is asked for."""


def closed(field: str) -> tuple[str, ...]:
    """The words of which a value is one; none where any words may be asked for."""
    return _CLOSED.get(field, ())


def offers(connection: Connection, field: str, typed: str) -> tuple[Known, ...]:
    """What the letters typed into a condition may mean, the likeliest first.

    Args:
        field: one of FIELDS.
    """
    if field in _LOOKED_UP:
        found = [one for lookup in _LOOKED_UP[field] for one in complete(connection, lookup, typed)]
        near = all(one.near for one in found)
        return tuple(one for one in found if near or not one.near)[:MOST]
    listed = _LISTED.get(field)
    words = listed(connection) if listed is not None else closed(field)
    wanted = fold(typed)
    return tuple(
        Known(word, label, exact=fold(word) == wanted)
        for word, label in _labelled(words)
        if wanted in fold(label)
    )[:MOST]


def completed(connection: Connection, field: str, typed: str) -> str:
    """What was typed if it can be asked for; else the first that is offered for it, but no near
    miss. What several bear stays as it is: it is for a person to say which is meant.

    Args:
        field: one of FIELDS.
    """
    try:
        meaning_of(connection, Condition(field, typed))
    except Ambiguous:
        return typed
    except NoSuch:
        return next((one.text for one in offers(connection, field, typed) if not one.near), typed)
    return typed


def ensure_known(connection: Connection, tree: Tree) -> None:
    """Refuse conditions of which a value names nothing on record.

    Raises:
        NoSuch: as of `meaning_of`.
        Ambiguous: as of `meaning_of`.
    """
    for condition in conditions(tree):
        meaning_of(connection, condition)


def _labelled(words: Iterable[str | tuple[str, str]]) -> Iterable[tuple[str, str]]:
    """Each word with what is shown for it."""
    for word in words:
        yield (word, word) if isinstance(word, str) else word


def _roles(connection: Connection) -> list[str]:
    """Those listed, not those of layers: there are too many to look through while one types."""
    return sorted({*ROLES, *terms(connection, "role")})


def _rules(connection: Connection) -> list[str | tuple[str, str]]:
    known = reference(connection).rules
    return [(key, f"{key}  {known[key].title}") for key in OF_OBJECTS if key in known]


_LISTED: dict[str, Callable[[Connection], Iterable[str | tuple[str, str]]]] = {
    "object kind": lambda connection: sorted(row[0] for row in OBJECT_KINDS.tuples(connection)),
    "source": lambda connection: sorted(row[0] for row in SOURCE_KINDS.tuples(connection)),
    "role": _roles,
    "rule": _rules,
}
