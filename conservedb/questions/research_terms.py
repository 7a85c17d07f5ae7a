"""What the conditions of a researcher's question share: values as parameters, and words."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any, NamedTuple

from sqlalchemy import (
    BindParameter,
    ColumnElement,
    and_,
    bindparam,
    false,
    func,
    literal_column,
    or_,
)

from conservedb.store.keys import fold

Value = ColumnElement[Any]
Test = ColumnElement[bool]
TODAY: BindParameter[int] = bindparam("today")


class Room(NamedTuple):
    """Words of whereabouts that are in a room, the days for which its use is sure."""

    names: tuple[str, ...]
    fits: bool
    first: int
    last: int


class Listed(NamedTuple):
    """Ids that a condition holds of, surely and perhaps, as lists in JSON."""

    sure: str = "[]"
    perhaps: str = "[]"


class Broken(NamedTuple):
    """What a rule is broken at.

    Attributes:
        layers, interventions: themselves; of interventions what was used.
        places, objects: with all that was laid, used or done there.
        rows_of_places, rows_of_objects: those at which it is broken by anything at all.
    """

    layers: Listed = Listed()
    interventions: Listed = Listed()
    places: Listed = Listed()
    objects: Listed = Listed()
    rows_of_places: Listed = Listed()
    rows_of_objects: Listed = Listed()


NOWHERE = Broken()


@dataclass(frozen=True, slots=True)
class Meant:
    """What a value means.

    Attributes:
        ids: of the material or materials, or of the person.
        classes: ids of the classes of which everything is meant, with those below them.
        above: ids of the classes of which some may be meant.
        words: as they stand in the database; of a material, what it was called as it was typed.
        rooms: of a condition on the environment.
        broken: where a rule is broken, of a condition on a rule.
        day: at whose close a state is asked for; None is today.
    """

    ids: tuple[int, ...] = ()
    classes: tuple[int, ...] = ()
    above: tuple[int, ...] = ()
    words: tuple[str, ...] = ()
    rooms: tuple[Room, ...] = ()
    broken: Broken = NOWHERE
    day: int | None = None


def given(value: Any) -> BindParameter[Any]:  # noqa: ANN401 (text or a number)
    """A value as a parameter: text of a user is never part of the statement."""
    return bindparam(None, value, unique=True)


def is_any(column: Value, values: Iterable[Any]) -> Test:
    """Whether a column has one of some values; of none, false."""
    return column.in_([given(value) for value in values] or [literal_column("NULL")])


def one_of_ids(column: Value, ids: Iterable[int]) -> Test:
    """Whether a column has one of some ids of the database."""
    return column.in_([literal_column(str(int(one))) for one in ids] or [literal_column("NULL")])


def has_words(column: Value, words: str) -> Test:
    """Whether each of the words stands in a text."""
    lowered = func.lower(func.coalesce(column, ""))
    return and_(*(func.instr(lowered, given(ascii_lower(word))) > 0 for word in words.split()))


def begins_words(column: Value, words: str) -> Test:
    """Whether each of the words begins a word of a text, as in titles: after a blank.

    Compared without the case of plain letters; with accents as typed, or with none.
    """
    text = literal_column("' '").concat(func.lower(func.coalesce(column, "")))
    begun = [[f" {one}" for one in spellings(word)] for word in words.split()]
    tests = [or_(false(), *(func.instr(text, given(one)) > 0 for one in ways)) for ways in begun]
    return and_(*tests) if tests else false()


def ascii_lower(text: str) -> str:
    """The text as SQLite's lower() gives it: only plain letters change."""
    return "".join(c.lower() if c.isascii() else c for c in text)


def spellings(value: str) -> tuple[str, ...]:
    """How SQLite's lower() may give a text that is the value but for its case."""
    value = value.strip()
    ways = (ascii_lower(value), value.lower(), fold(value))
    return tuple(dict.fromkeys(one for one in ways if one))


def starting_words(value: str) -> Callable[[str], bool]:
    """Whether each word of a value begins a word of a text, compared without case and accents."""
    tests = [re.compile(rf"(?<!\w){re.escape(word)}") for word in fold(value).split()]

    def holds(text: str) -> bool:
        folded = fold(text)
        return bool(tests) and all(test.search(folded) for test in tests)

    return holds
