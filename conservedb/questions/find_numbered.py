"""Places by their kind and number: "joint 14" is what is marked J14, J-14 or S014 and is a joint.

A mark is taken for a letter and a number, zeros before it and a sign between left aside.
"""

from __future__ import annotations

import itertools
import json
import re
import string
from collections.abc import Iterator, Sequence

from sqlalchemy import Connection, bindparam, func, select

from conservedb.questions.asking import Question, Row, Selection
from conservedb.records.objects import object_
from conservedb.records.places import PLACE_KINDS, place
from conservedb.store.keys import fold

MOST = 60
_SHORTEST = 4
"""Letters with which a kind is begun."""
_SIGNS = ("", "-", ".", " ")
_DIGITS = 4
_NUMBERED = re.compile(rf"([^\W\d_]{{{_SHORTEST},}})\s+([0-9]{{1,{_DIGITS}}})").fullmatch


def _listed(name: str) -> Selection:
    values = func.json_each(bindparam(name)).table_valued("value").alias("wanted")
    return select(values.c.value)


_ANYWHERE = (
    select(place.c.id.label("record"), place.c.mark_folded.label("mark"))
    .where(place.c.mark_folded.in_(_listed("marks")), place.c.kind == bindparam("kind"))
    .order_by(place.c.id.desc())
    .limit(MOST)
)
_ON_OBJECTS = _ANYWHERE.where(
    place.c.object_id.in_(
        select(object_.c.id).where(object_.c.number_folded.in_(_listed("numbers")))
    )
)
_ASKED, _ASKED_ON = Question(_ANYWHERE), Question(_ON_OBJECTS)
STATEMENTS = (_ASKED, _ASKED_ON)


def is_numbered(typed: str) -> bool:
    """Whether it is the beginning of a kind of place, and a number."""
    return _read(typed) is not None


def numbered(connection: Connection, typed: str, numbers: Sequence[str] = ()) -> list[int]:
    """The newest places of a kind with a number, at most 60; of the objects with these numbers."""
    return [row.record for row in _rows(connection, typed, numbers)]


def as_marks(connection: Connection, words: Sequence[str]) -> Iterator[tuple[str, ...]]:
    """The words with a kind and the number after it written as a mark, as many ways as there are.

    At most the marks of the newest 60 such places are taken.
    """
    for at in range(len(words) - 1):
        rows = _rows(connection, " ".join(words[at : at + 2]))
        for mark in dict.fromkeys(row.mark for row in rows):
            yield (*words[:at], mark, *words[at + 2 :])


def _rows(connection: Connection, typed: str, numbers: Sequence[str] = ()) -> list[Row]:
    asked = _read(typed)
    if asked is None:
        return []
    kind, number = asked
    zeros = ("0" * more for more in range(_DIGITS - len(number) + 1))
    marks = map("".join, itertools.product(string.ascii_lowercase, _SIGNS, zeros, (number,)))
    values = {"kind": kind, "marks": json.dumps(list(marks))}
    if numbers:
        owners = json.dumps([fold(one) for one in numbers])
        return _ASKED_ON.all(connection, numbers=owners, **values)
    return _ASKED.all(connection, **values)


def _read(typed: str) -> tuple[str, str] | None:
    """Kind and number."""
    found = _NUMBERED(typed.strip())
    if found is None:
        return None
    begun = fold(found[1])
    kind = next((kind for kind in PLACE_KINDS if kind.startswith(begun)), "")
    number = found[2].lstrip("0")
    return (kind, number) if kind and number else None
