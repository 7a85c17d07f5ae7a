"""Finding anything by the start of what it is called: numbers, marks, names, papers.

What is typed is compared as folded text with ranges of an index, so that every character in
it is data. What is called exactly so comes first.
"""

from __future__ import annotations

from collections.abc import Iterator

from sqlalchemy import BindParameter, ColumnElement, Connection, Table, bindparam, select
from sqlalchemy.sql.selectable import FromClause

from conservedb.questions.answers import Hit
from conservedb.questions.asking import Question, Rows, Selection, blank
from conservedb.records.materials import material, material_alias, material_class
from conservedb.records.objects import component, object_
from conservedb.records.people import person, person_alias
from conservedb.records.places import place
from conservedb.records.sources import source
from conservedb.store.keys import fold

_FROM: BindParameter[str] = bindparam("first")
_TO: BindParameter[str] = bindparam("last")
_LIMIT: BindParameter[int] = bindparam("most")
_EXACT: BindParameter[str] = bindparam("exact")
_OBJECT: BindParameter[str] = bindparam("object")
_BEYOND = "\U0010ffff"


def _starting(column: ColumnElement[str], chosen: Selection) -> Question:
    """Rows whose column begins with what was typed, in the order of its index."""
    ranged = chosen.where(column >= _FROM, column < _TO)  # type: ignore[union-attr]
    return Question(ranged.order_by(column).limit(_LIMIT))


def _hits(
    kind: str,
    source_of: FromClause,
    number: ColumnElement[str],
    mark: ColumnElement[str],
    label: ColumnElement[str],
    detail: ColumnElement[str],
) -> Selection:
    return None
