"""The rows of a researcher's answer: which layer, place, intervention or object, and how far.

A row answers as far as the best of its occurrences does. Where a question asks several things
of a row (`has`, `has none`, what the row is by itself), each is found apart, and the rows of a
whole table are held against all of them.
"""

from __future__ import annotations

from typing import Any, NamedTuple

from sqlalchemy import ColumnElement, Table, case, func, or_, select, union_all
from sqlalchemy.sql.selectable import CTE, FromClause, Select

from conservedb.dates import UNKNOWN_END, UNKNOWN_START
from conservedb.knowledge.research import (
    And,
    Condition,
    Has,
    Not,
    Or,
    Research,
    Tree,
    each_has,
    on_rows,
)
from conservedb.questions.research_conditions import is_object, is_of_kind
from conservedb.questions.research_found import (
    CERTAIN,
    POSSIBLE,
    UNIDENTIFIED,
    Known,
    found,
    how_far,
    number,
)
from conservedb.questions.research_meanings import Meanings
from conservedb.questions.research_occurrences import LAYER, Holds, all_of, any_of, none_of
from conservedb.questions.research_places import is_borne_by, is_broken_at, is_broken_by
from conservedb.questions.research_terms import Value
from conservedb.records.objects import object_
from conservedb.records.places import place
from conservedb.records.treatments import intervention


class _Kind(NamedTuple):
    """Rows of one kind: their table, its column of objects, and what says which row it is."""

    table: Table
    owner: Value
    key: str


_KINDS = {
    "places": _Kind(place, place.c.object_id, "place_id"),
    "interventions": _Kind(intervention, intervention.c.object_id, "intervention_id"),
    "objects": _Kind(object_, object_.c.id, "object_id"),
}
_NAMES = ("what", "id", "object_id", "intervention_id", "place_id", "earliest", "latest", "flags")
"""What a line of an answer says of the first of its occurrences."""


def scored(research: Research, meanings: Meanings) -> Select[Any]:
    """Every row by its key, with its score, and nothing else."""
    known = dict(meanings)
    if research.rows == "layers":
        all_found = found("layers", research.where, known)
        return select(key_of("layers", all_found).label("key"), all_found.c.score)
    asked = on_rows(research.where, research.rows)
    if isinstance(asked, Has):
        return _best_of(found(research.rows, And(asked.parts), known), research.rows)
    rows = _Rows(research.rows, asked, known)
    return (
        select(rows.kind.table.c.id.label("key"), rows.score)
        .select_from(rows.source)
        .where(rows.may)
    )


def lines(research: Research, meanings: Meanings) -> Select[Any]:
    """A line for each row of the answer: the first of its occurrences, and its score."""
    known = dict(meanings)
    if research.rows == "layers":
        all_found = found("layers", research.where, known)
        one: ColumnElement[int] = number(1).label("layers")
        return select(*(all_found.c[name] for name in _NAMES), all_found.c.score, one)
    asked = on_rows(research.where, research.rows)
    if isinstance(asked, Has):
        return _firsts(found(research.rows, And(asked.parts), known), research.rows)
    return _Rows(research.rows, asked, known).lines()


def key_of(rows: str, lines: FromClause) -> Value:
    """A number that tells a row from all others of its answer."""
    if rows != "layers":
        return lines.c[_KINDS[rows].key]
    return lines.c.id * number(2) + lines.c.what - number(LAYER)


def _best_of(found: CTE, rows: str) -> Select[Any]:
    key = found.c[_KINDS[rows].key]
    score = func.max(found.c.score).label("score")
    return select(key.label("key"), score).where(key.is_not(None)).group_by(key)


def _firsts(found: FromClause, rows: str) -> Select[Any]:
    """The first of those occurrences of a row that answer most surely, and how many these are."""
    key = found.c[_KINDS[rows].key]
    order = [-found.c.score, *(found.c[name] for name in ("latest", "earliest", "what", "id"))]
    numbered = (
        select(
            *(found.c[name] for name in (*_NAMES, "score")),
            func.count().over(partition_by=[key, found.c.score]).label("layers"),
            func.row_number().over(partition_by=key, order_by=order).label("nth"),
        )
        .where(key.is_not(None))
        .subquery("numbered")
    )
    columns = [numbered.c[name] for name in (*_NAMES, "score", "layers")]
    return select(*columns).where(numbered.c.nth == number(1))


class _Rows:
    """Rows of a table held against several things that are asked of them."""

    def __init__(self, rows: str, asked: Tree, known: Known) -> None:
        self._rows, self._known, self._asked = rows, known, asked
        self.kind = _KINDS[rows]
        each = dict.fromkeys(each_has(asked))
        self._found = {
            one: found(rows, And(one.parts), known, f"found_{at}") for at, one in enumerate(each, 1)
        }
        self._best = {
            one: _best_of(of_one, rows).cte(f"best_{at}").prefix_with("MATERIALIZED")
            for at, (one, of_one) in enumerate(self._found.items(), 1)
        }

    @property
    def source(self) -> FromClause:
        """The table, beside the best of what answers each; without what cannot answer."""
        source: FromClause = self.kind.table
        for one, best in self._best.items():
            needed = self._asked.parts if isinstance(self._asked, And) else (self._asked,)
            source = source.join(
                best, best.c.key == self.kind.table.c.id, isouter=one not in needed
            )
        return source

    @property
    def may(self) -> Value:
        """Whether a row answers at all."""
        return self._holds(self._asked, most=True).may

    @property
    def score(self) -> ColumnElement[int]:
        """How far; what matter that nobody identified decides is not known."""
        most, least = (how_far(self._holds(self._asked, most=most)) for most in (True, False))
        return case((most == least, most), else_=number(UNIDENTIFIED)).label("score")

    def lines(self) -> Select[Any]:
        """A line for each row; its occurrences are those that it is asked to have."""
        shown = _firsts(self._shown(), self._rows).subquery("shown")
        own: dict[str, Value] = {name: shown.c[name] for name in _NAMES}
        own |= {
            "what": func.coalesce(shown.c.what, number(0)),
            "object_id": self.kind.owner,
            "earliest": func.coalesce(shown.c.earliest, number(UNKNOWN_START)),
            "latest": func.coalesce(shown.c.latest, number(UNKNOWN_END)),
            "flags": func.coalesce(shown.c.flags, number(0)),
            self.kind.key: self.kind.table.c.id,
        }
        layers = func.coalesce(shown.c.layers, number(0)).label("layers")
        beside = self.source.outerjoin(shown, shown.c[self.kind.key] == self.kind.table.c.id)
        columns = (column.label(name) for name, column in own.items())
        return select(*columns, self.score, layers).select_from(beside).where(self.may)

    def _shown(self) -> FromClause:
        """The occurrences that rows are asked to have; where none are asked for, all theirs.

        One of which several things are asked counts once, as surely as it answers any.
        """
        if not self._found:
            return found(self._rows, self._asked, self._known)
        wanted = _wanted(self._asked)
        columns = (*_NAMES, "score")
        only = [one for has, one in self._found.items() if has in wanted]
        if len(only) == 1:
            return only[0]
        asked = [select(*(one.c[name] for name in columns)) for one in only]
        if not asked:
            nothing = next(iter(self._found.values()))
            return (
                select(*(nothing.c[name] for name in columns))
                .where(number(0) == number(1))
                .subquery("asked")
            )
        each = union_all(*asked).subquery("each")
        names = [each.c[name] for name in _NAMES]
        return select(*names, func.max(each.c.score).label("score")).group_by(*names).subquery()

    def _holds(self, tree: Tree, *, most: bool) -> Holds:
        """Whether it holds of a row at most, or at least, by what nobody identified may be."""
        if isinstance(tree, Condition):
            return self._by_itself(tree)
        if isinstance(tree, Has):
            score = func.coalesce(self._best[tree].c.score, number(0))
            unidentified = score == number(UNIDENTIFIED)
            certain, may = score == number(CERTAIN), score >= number(POSSIBLE)
            if not most:
                return Holds(certain, may)
            return Holds(or_(certain, unidentified), or_(may, unidentified))
        if isinstance(tree, Not):
            return none_of(self._holds(tree.part, most=not most))
        parts = [self._holds(part, most=most) for part in tree.parts]
        return any_of(parts) if isinstance(tree, Or) else all_of(parts)

    def _by_itself(self, condition: Condition) -> Holds:
        meant, own, owner = self._known[condition], self.kind.table.c.id, self.kind.owner
        if condition.field == "part material":
            holds = is_borne_by(own, condition, meant)
        elif condition.field == "rule":
            at_place = self._rows == "places"
            holds = is_broken_at(own, owner, meant) if at_place else is_broken_by(own, meant)
        elif condition.field == "object":
            holds = is_object(owner, condition, meant)
        else:
            holds = is_of_kind(owner, condition, meant)
        return Holds(holds.sure, holds.sure) if condition.certainly else holds


def objects_of(research: Research, meanings: Meanings) -> Select[Any]:
    """The ids of the objects of all that answers."""
    if research.rows == "layers":
        owner: Value = found("layers", research.where, dict(meanings)).c.object_id
        return select(owner).distinct().order_by(owner)
    kind, keys = _KINDS[research.rows], scored(research, meanings).subquery("keys")
    answers = kind.table.c.id.in_(select(keys.c.key))
    return select(kind.owner.label("object_id")).where(answers).distinct().order_by(kind.owner)


def _wanted(tree: Tree, wanted: bool = True) -> frozenset[Has]:
    """What rows are asked to have, not what they are asked not to have."""
    if isinstance(tree, Has):
        return frozenset((tree,) if wanted else ())
    if isinstance(tree, Not):
        return _wanted(tree.part, not wanted)
    if isinstance(tree, And | Or):
        return frozenset().union(*(_wanted(part, wanted) for part in tree.parts))
    return frozenset()
