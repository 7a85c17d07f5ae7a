"""A researcher's question as one statement: what answers, how far, in which order, which page."""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache
from typing import Any

from sqlalchemy import ColumnElement, bindparam, func, literal_column, select
from sqlalchemy.sql.selectable import FromClause

from conservedb.knowledge.research import Research
from conservedb.questions.asking import Question
from conservedb.questions.research_columns import details, sorting
from conservedb.questions.research_meanings import Meanings
from conservedb.questions.research_rows import key_of, lines, objects_of, scored


def answering_objects(research: Research, meanings: Meanings) -> Question:
    """The ids of the objects of all that answers."""
    return Question(objects_of(research, meanings))


@lru_cache(maxsize=64)
def counting(research: Research, meanings: Meanings) -> Question:
    """How many rows there are of each score."""
    each = scored(research, meanings).subquery("scored")
    return Question(select(each.c.score, func.count().label("rows")).group_by(each.c.score))


@lru_cache(maxsize=64)
def listing(research: Research, meanings: Meanings) -> Question:
    """Every row by its key, with its score."""
    return Question(scored(research, meanings))


@lru_cache(maxsize=64)
def picking(research: Research, meanings: Meanings) -> Question:
    """The rows of the keys in a list in JSON, in order of date, each with its key at the end."""
    each = lines(research, meanings).subquery("lines")
    wanted = select(func.json_each(bindparam("picked")).table_valued("value").c.value)
    page = select(*each.c).where(key_of(research.rows, each).in_(wanted)).subquery("page")
    shown = details(research.rows, page).add_columns(key_of(research.rows, page).label("key"))
    return Question(shown.order_by(*_last(research.rows, page)))


@lru_cache(maxsize=64)
def paging(research: Research, meanings: Meanings, order: str, descending: bool) -> Question:
    """Some rows in an order that leaves no two rows equal."""
    each = lines(research, meanings).subquery("lines")
    keys = sorting(research.rows, order, each)
    names = [f"by{at}" for at in range(len(keys))]

    def ordered(columns: Iterable[ColumnElement[Any]]) -> list[ColumnElement[Any]]:
        return [column.desc() if descending else column for column in columns]

    page = (
        select(*each.c, *(key.label(name) for name, key in zip(names, keys, strict=True)))
        .order_by(*ordered(literal_column(name) for name in names), *_last(research.rows, each))
        .limit(bindparam("length"))
        .offset(bindparam("start"))
        .subquery("page")
    )
    shown = details(research.rows, page)
    return Question(
        shown.order_by(*ordered(page.c[name] for name in names), *_last(research.rows, page))
    )


def _last(rows: str, lines: FromClause) -> list[ColumnElement[Any]]:
    """By what rows are sorted that are equal otherwise; it leaves none equal."""
    order: list[ColumnElement[Any]] = [
        lines.c[name] for name in ("latest", "earliest", "what", "id")
    ]
    return order if rows == "layers" else [*order, key_of(rows, lines)]
