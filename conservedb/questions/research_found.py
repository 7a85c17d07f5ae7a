"""Which occurrences answer a researcher's question, and how far, as a selection."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from sqlalchemy import ColumnElement, and_, case, literal_column, or_, select, union_all
from sqlalchemy.sql.selectable import CTE, Select

from conservedb.knowledge.research import Condition, Not, Or, Tree, conditions
from conservedb.questions.research_conditions import JUDGES, ON_MATTER
from conservedb.questions.research_narrowing import narrowed
from conservedb.questions.research_occurrences import (
    ALWAYS_HOLDS,
    AT_PLACES,
    BARE,
    MATTER,
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
Known = Mapping[Condition, Meant]


def number(value: int) -> ColumnElement[int]:
    """A number as it stands in a statement."""
    return literal_column(str(value))


class _Judged:
    """How far the occurrences of one kind answer."""

    def __init__(self, occurrence: Occurrence, meanings: Known) -> None:
        self._occurrence, self._meanings = occurrence, meanings

    def holds(self, tree: Tree, most: bool | None = None) -> Holds:
        """Whether conditions hold.

        Args:
            most: of matter that nobody identified: whether each condition on it is taken for
                what lets the whole hold most, or least; each may be so apart from the others.
        """
        if isinstance(tree, Condition):
            return self._condition(tree, most)
        if isinstance(tree, Not):
            return none_of(self.holds(tree.part, None if most is None else not most))
        parts = [self.holds(part, most) for part in tree.parts]
        return any_of(parts) if isinstance(tree, Or) else all_of(parts)

    def _condition(self, condition: Condition, most: bool | None) -> Holds:
        meant = self._meanings[condition]
        if condition.field in ON_MATTER:
            found = ON_MATTER[condition.field](self._occurrence, condition, meant)
            if most is not None and found is not NEVER_HOLDS:
                unknown = (condition.field, condition.value) == ("reversibility", "unknown")
                matter = ALWAYS_HOLDS if most else NEVER_HOLDS
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
    may, score = known.may, how_far(known)
    if any(one.field in ON_MATTER for one in conditions(tree)):
        high, low = judged.holds(tree, most=True), judged.holds(tree, most=False)
        agree = how_far(high) == how_far(low)
        unidentified = case((agree, how_far(high)), else_=number(UNIDENTIFIED))
        nameless = occurrence.nameless
        may = or_(and_(nameless, high.may), and_(~nameless, known.may))
        score = case((nameless, unidentified), else_=score)
    if occurrence.place is not None:
        may = and_(occurrence.place.is_not(None), may)
        score = case(
            (and_(occurrence.several, score == number(CERTAIN)), number(POSSIBLE)), else_=score
        )
    return may, score


def how_far(holds: Holds) -> ColumnElement[int]:
    """How far a condition holds, as a number."""
    return case((holds.sure, number(CERTAIN)), (holds.may, number(POSSIBLE)), else_=number(0))


def found(rows: str, where: Tree, meanings: Known, name: str = "found") -> CTE:
    """Every occurrence that answers, at least perhaps; work has none of its own among layers."""
    narrow = narrowed(where, meanings)
    selections = []
    for occurrence in _asked_of(rows):
        ids = None if narrow is None else narrow.of(occurrence.what)
        if ids == ():
            continue
        selection = _answering(occurrence, where, meanings)
        if ids is not None:
            selection = selection.where(occurrence.id.in_(union_all(*ids)))
        selections.append(selection)
    return union_all(*selections).cte(name).prefix_with("MATERIALIZED")


def _asked_of(rows: str) -> tuple[Occurrence, ...]:
    if rows == "layers":
        return MATTER
    return AT_PLACES if rows == "places" else OCCURRENCES


def _answering(occurrence: Occurrence, where: Tree, meanings: Known) -> Select[Any]:
    may, score = _score(occurrence, where, meanings)
    place = occurrence.place if occurrence.place is not None else literal_column("NULL")
    selection = (
        select(
            number(occurrence.what).label("what"),
            occurrence.id.label("id"),
            occurrence.table.c.object_id,
            occurrence.deed.label("intervention_id"),
            place.label("place_id"),
            *(occurrence.date[part].label(part) for part in ("earliest", "latest", "flags")),
            score.label("score"),
        )
        .select_from(occurrence.source)
        .where(may)
    )
    return selection if occurrence.of_matter else selection.where(BARE)
