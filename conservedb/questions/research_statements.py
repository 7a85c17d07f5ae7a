"""A researcher's question as one statement: what answers, how far, in which order, which page."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import lru_cache
from typing import Any

from sqlalchemy import (
    ColumnElement,
    and_,
    bindparam,
    case,
    func,
    literal_column,
    or_,
    select,
    union_all,
)
from sqlalchemy.sql.selectable import CTE, FromClause, Select

from conservedb.knowledge.research import And, Condition, Not, Research, Tree
from conservedb.questions.asking import Question
from conservedb.questions.research_columns import details, sorting
from conservedb.questions.research_conditions import JUDGES, ON_MATTER
from conservedb.questions.research_meanings import Meanings, conditions
from conservedb.questions.research_narrowing import narrowed
from conservedb.questions.research_occurrences import (
    ALWAYS_HOLDS,
    AT_PLACES,
    LAYER,
    NEVER_HOLDS,
    OCCURRENCES,
    Holds,
    Occurrence,
    all_of,
    any_of,
    none_of,
)
from conservedb.questions.research_places import ON_PLACES
from conservedb.questions.research_terms import Meant, Value

CERTAIN, POSSIBLE, UNIDENTIFIED = 3, 2, 1
"""How far an occurrence answers, as a number: the most of its occurrences is that of a row."""
_GROUPED_BY = {"places": "place_id", "interventions": "intervention_id", "objects": "object_id"}
Known = Mapping[Condition, Meant]


def _number(value: int) -> ColumnElement[int]:
    return literal_column(str(value))


class _Judged:
    """How far the occurrences of one kind answer."""

    def __init__(self, occurrence: Occurrence, meanings: Known) -> None:
        self._occurrence, self._meanings = occurrence, meanings

    def holds(self, tree: Tree, matter: Holds | None = None) -> Holds:
        """Whether conditions hold; those on matter as given where it is not identified."""
        if isinstance(tree, Condition):
            return self._condition(tree, matter)
        if isinstance(tree, Not):
            return none_of(self.holds(tree.part, matter))
        parts = [self.holds(part, matter) for part in tree.parts]
        return all_of(parts) if isinstance(tree, And) else any_of(parts)

    def _condition(self, condition: Condition, matter: Holds | None) -> Holds:
        meant = self._meanings[condition]
        if condition.field in ON_MATTER:
            found = ON_MATTER[condition.field](self._occurrence, condition, meant)
            if matter is not None and found is not NEVER_HOLDS:
                unknown = (condition.field, condition.value) == ("reversibility", "unknown")
                found = ALWAYS_HOLDS if unknown else _unless_stated(found, matter)
        else:
            found = (JUDGES | ON_PLACES)[condition.field](self._occurrence, condition, meant)
        return Holds(found.sure, found.sure) if condition.certainly else found


def _unless_stated(stated: Holds, matter: Holds) -> Holds:
    """Matter that nobody identified is only perhaps what a statement says that it is."""
    return Holds(and_(~stated.may, matter.sure), or_(stated.may, matter.may))


def _score(occurrence: Occurrence, tree: Tree, meanings: Known) -> tuple[Value, Value]:
    """Whether it answers at all, and how far."""
    judged = _Judged(occurrence, meanings)
    known = judged.holds(tree)
    may, score = known.may, _how_far(known)
    if any(one.field in ON_MATTER for one in conditions(tree)):
        high, low = judged.holds(tree, ALWAYS_HOLDS), judged.holds(tree, NEVER_HOLDS)
        agree = _how_far(high) == _how_far(low)
        unidentified = case((agree, _how_far(high)), else_=_number(UNIDENTIFIED))
        nameless = occurrence.nameless
        may = or_(and_(nameless, or_(high.may, low.may)), and_(~nameless, known.may))
        score = case((nameless, unidentified), else_=score)
    if occurrence.place is not None:
        may = and_(occurrence.place.is_not(None), may)
        score = case(
            (and_(occurrence.several, score == _number(CERTAIN)), _number(POSSIBLE)), else_=score
        )
    return may, score


def _how_far(holds: Holds) -> ColumnElement[int]:
    return case((holds.sure, _number(CERTAIN)), (holds.may, _number(POSSIBLE)), else_=_number(0))


def _found(research: Research, meanings: Known) -> CTE:
    """Every occurrence that answers, at least perhaps."""
    narrow = narrowed(research.where, meanings)
    selections = []
    for occurrence in AT_PLACES if research.rows == "places" else OCCURRENCES:
        may, score = _score(occurrence, research.where, meanings)
        c = occurrence.table.c
        place = occurrence.place if occurrence.place is not None else literal_column("NULL")
        selection = select(
            _number(occurrence.what).label("what"),
            c.id,
            c.object_id,
            c.intervention_id,
            place.label("place_id"),
            occurrence.date["earliest"].label("earliest"),
            occurrence.date["latest"].label("latest"),
            score.label("score"),
        ).select_from(occurrence.source)
        if narrow is not None:
            ids = narrow.layers if occurrence.is_layer else narrow.agents
            selection = selection.where(c.id.in_(union_all(*ids)))
        selections.append(selection.where(may))
    return union_all(*selections).cte("found").prefix_with("MATERIALIZED")


def _best(research: Research, found: CTE) -> Select[Any]:
    """A line for each row of the answer: the first of its occurrences, and the best score."""
    names = ("what", "id", "object_id", "intervention_id", "place_id", "earliest", "latest")
    if research.rows == "layers":
        whole = [found.c.score, literal_column("1").label("layers")]
        return select(*(found.c[name] for name in names), *whole)
    key = found.c[_GROUPED_BY[research.rows]]
    order = [found.c[name] for name in ("latest", "earliest", "what", "id")]
    numbered = (
        select(
            *(found.c[name] for name in names),
            func.max(found.c.score).over(partition_by=key).label("score"),
            func.count().over(partition_by=key).label("layers"),
            func.row_number().over(partition_by=key, order_by=order).label("nth"),
        )
        .where(key.is_not(None))
        .subquery("numbered")
    )
    columns = [numbered.c[name] for name in (*names, "score", "layers")]
    return select(*columns).where(numbered.c.nth == _number(1))


def answering_objects(research: Research, meanings: Meanings) -> Question:
    """The ids of the objects with any occurrence that answers."""
    found = _found(research, dict(meanings))
    return Question(select(found.c.object_id).distinct().order_by(found.c.object_id))


@lru_cache(maxsize=64)
def counting(research: Research, meanings: Meanings) -> Question:
    """How many rows there are of each score."""
    found = _found(research, dict(meanings))
    if research.rows == "layers":
        return Question(select(found.c.score, func.count().label("rows")).group_by(found.c.score))
    key = found.c[_GROUPED_BY[research.rows]]
    best = (
        select(func.max(found.c.score).label("score"))
        .where(key.is_not(None))
        .group_by(key)
        .subquery("best")
    )
    return Question(select(best.c.score, func.count().label("rows")).group_by(best.c.score))


def _key(rows: str, lines: FromClause) -> Value:
    """A number that tells a row from all others of its answer."""
    if rows != "layers":
        return lines.c[_GROUPED_BY[rows]]
    return lines.c.id * _number(2) + lines.c.what - _number(LAYER)


@lru_cache(maxsize=64)
def listing(research: Research, meanings: Meanings) -> Question:
    """Every row by its key, with its score."""
    found = _found(research, dict(meanings))
    key = _key(research.rows, found)
    score = func.max(found.c.score).label("score")
    return Question(select(key.label("key"), score).where(key.is_not(None)).group_by(key))


@lru_cache(maxsize=64)
def picking(research: Research, meanings: Meanings) -> Question:
    """The rows of the keys in a list in JSON, in order of date, each with its key at the end."""
    lines = _best(research, _found(research, dict(meanings))).subquery("lines")
    wanted = select(func.json_each(bindparam("picked")).table_valued("value").c.value)
    page = select(*lines.c).where(_key(research.rows, lines).in_(wanted)).subquery("page")
    shown = details(research.rows, page).add_columns(_key(research.rows, page).label("key"))
    return Question(shown.order_by(*_last(page)))


@lru_cache(maxsize=64)
def paging(research: Research, meanings: Meanings, order: str, descending: bool) -> Question:
    """Some rows in an order that leaves no two rows equal."""
    lines = _best(research, _found(research, dict(meanings))).subquery("lines")
    keys = sorting(research.rows, order, lines)
    names = [f"by{at}" for at in range(len(keys))]

    def ordered(columns: Iterable[ColumnElement[Any]]) -> list[ColumnElement[Any]]:
        return [column.desc() if descending else column for column in columns]

    page = (
        select(*lines.c, *(key.label(name) for name, key in zip(names, keys, strict=True)))
        .order_by(*ordered(literal_column(name) for name in names), *_last(lines))
        .limit(bindparam("length"))
        .offset(bindparam("start"))
        .subquery("page")
    )
    shown = details(research.rows, page)
    return Question(shown.order_by(*ordered(page.c[name] for name in names), *_last(page)))


def _last(lines: FromClause) -> list[ColumnElement[Any]]:
    """By what rows are sorted that are equal otherwise; it leaves none equal."""
    return [lines.c[name] for name in ("latest", "earliest", "what", "id", "place_id")]
