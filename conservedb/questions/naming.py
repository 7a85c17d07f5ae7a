"""From what people call an object and a place on it to the records; else what comes nearest."""

from __future__ import annotations

from sqlalchemy import Connection, bindparam, select

from conservedb.questions.answers import NoSuch
from conservedb.questions.asking import Question, Row, blank, dated
from conservedb.records.objects import component, object_
from conservedb.records.places import place
from conservedb.store.keys import fold, sort_key

_NEIGHBOURS = 40
_OFFERED = 3

OBJECT = Question(
    select(
        object_.c.id,
        object_.c.number,
        *(
            blank(object_.c[name]).label(name)
            for name in ("title", "kind", "maker", "whereabouts", "note")
        ),
        *dated(object_, "made"),
    ).where(object_.c.number_folded == bindparam("number"))
)
_BEFORE = Question(
    select(object_.c.number, object_.c.number_folded)
    .where(object_.c.number_folded < bindparam("number"))
    .order_by(object_.c.number_folded.desc())
    .limit(_NEIGHBOURS)
)
_AFTER = Question(
    select(object_.c.number, object_.c.number_folded)
    .where(object_.c.number_folded > bindparam("number"))
    .order_by(object_.c.number_folded)
    .limit(_NEIGHBOURS)
)
_MARKS = {
    table.name: Question(
        select(table.c.id, table.c.mark, table.c.mark_folded).where(
            table.c.object_id == bindparam("object")
        )
    )
    for table in (component, place)
}
STATEMENTS = (OBJECT, _BEFORE, _AFTER, *_MARKS.values())


def find_object(connection: Connection, number: str) -> Row:
    """The object of that number, compared without case and accents.

    Raises:
        NoSuch: there is none, or several that differ only in case or accents.
    """
    rows = OBJECT.all(connection, number=fold(number))
    exact = [row for row in rows if row.number == number.strip()]
    if exact:
        return exact[0]
    if len(rows) == 1:
        return rows[0]
    if rows:
        raise NoSuch("single object", number, tuple(row.number for row in rows))
    around = [
        *_BEFORE.all(connection, number=fold(number)),
        *_AFTER.all(connection, number=fold(number)),
    ]
    raise NoSuch("object", number, _nearest(number, around))


def no_such_mark(connection: Connection, owner: Row, kinds: tuple[str, ...], mark: str) -> NoSuch:
    """What to raise where an object has no component or place of that mark."""
    around = [row[1:] for kind in kinds for row in _MARKS[kind].all(connection, object=owner.id)]
    what = " or ".join("part" if kind == "component" else "location" for kind in kinds)
    return NoSuch(f"{what} of {owner.number}", mark, _nearest(mark, around))


def _nearest(value: str, candidates: list[tuple[str, str]]) -> tuple[str, ...]:
    """The candidates (as written, folded) most like what was typed, best first."""
    from difflib import get_close_matches

    written = {folded: text for text, folded in candidates}
    wanted = fold(value)
    same = [folded for folded in written if sort_key(folded) == sort_key(wanted)]
    close = get_close_matches(wanted, written, _OFFERED, 0.6)
    return tuple(written[folded] for folded in dict.fromkeys(same + close))[:_OFFERED]
