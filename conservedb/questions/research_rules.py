"""Where a rule of the trade is broken, for a researcher's question.

The rules are no statements of the database: they are tried in Python, object by object, as
`checks` does, on the objects that the other conditions of the question leave.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Sequence

from sqlalchemy import Connection, literal_column, select

from conservedb.knowledge.research import (
    And,
    Condition,
    Not,
    Or,
    Tree,
    conditions,
    each_has,
    on_rows,
)
from conservedb.knowledge.rule_case import BROKEN, Finding
from conservedb.knowledge.rules import OF_OBJECTS, found
from conservedb.questions.answers import NoSuch
from conservedb.questions.asking import Question, Row, blank, without_collecting
from conservedb.questions.checks_cases import CaseMaker
from conservedb.questions.checks_records import Range
from conservedb.questions.checks_reference import reference
from conservedb.questions.nearest import nearest
from conservedb.questions.research_terms import Broken, Listed, Meant
from conservedb.records.rules import rule

ACTIVE = Question(select(rule.c.key).where(blank(rule.c.active) != literal_column("'no'")))
STATEMENTS = (ACTIVE,)
_AT_ONCE = 50
"""Objects with ids in a row that are read at once."""


def known_rule(connection: Connection, value: str) -> str:
    """The key of a rule that judges objects.

    Raises:
        NoSuch: there is none of that key, or the department has switched it off.
    """
    key = value.strip().lower()
    recorded = {row.key for row in ACTIVE.all(connection)}
    keys = [one for one in OF_OBJECTS if one in recorded]
    if key not in keys:
        near = nearest(key, {one: one for one in keys})
        raise NoSuch("rule that judges objects", value, near)
    return key


def where_ruled(tree: Tree, rows: str) -> Tree:
    """What holds of occurrences of all objects for which it matters where rules are broken."""
    if rows == "layers":
        return without_rules(tree)
    parts = [And(one.parts) for one in each_has(on_rows(tree, rows))]
    ruled = [one for one in parts if any(each.field == "rule" for each in conditions(one))]
    return Or(tuple(map(without_rules, ruled)))


def without_rules(tree: Tree, wanted: bool = True) -> Tree:
    """Conditions that hold wherever those given can hold, whatever the rules find."""
    if isinstance(tree, Condition):
        if tree.field != "rule":
            return tree
        return And() if wanted else Or(())
    if isinstance(tree, Not):
        return Not(without_rules(tree.part, not wanted))
    parts = tuple(without_rules(part, wanted) for part in tree.parts)
    return Or(parts) if isinstance(tree, Or) else And(parts)


def broken_at(connection: Connection, key: str, objects: Sequence[int], day: int) -> Meant:
    """What of some objects a rule is broken at on a day; perhaps where that cannot be told.

    Args:
        objects: their ids, in order.
    """
    known = reference(connection)
    gathered = _Gathered()
    with without_collecting():
        for first, last in _runs(objects):
            within = Range(connection, first, last)
            for owner, case in CaseMaker(known, within, day).cases():
                for finding in found(case, [known.rules[key]]):
                    gathered.add(finding, owner, within)
    return Meant(words=(key,), broken=gathered.broken())


def _runs(ids: Sequence[int]) -> Iterator[tuple[int, int]]:
    """First and last of ids that follow each other."""
    first = last = None
    for one in ids:
        if first is not None and last is not None and (one != last + 1 or one - first >= _AT_ONCE):
            yield first, last
            first = None
        first, last = one if first is None else first, one
    if first is not None and last is not None:
        yield first, last


class _Gathered:
    """Ids of what findings are about, those of sure findings apart."""

    def __init__(self) -> None:
        self._ids: dict[tuple[str, bool], set[int]] = {}

    def add(self, finding: Finding, owner: Row, within: Range) -> None:
        """Take what a finding names: layers, else places, else parts, else the object."""
        sure = finding.outcome == BROKEN and finding.certain
        places = within.places.get(owner.id, ())
        if finding.layers:
            layers = within.layers.get(owner.id, ())
            self._put("layer", sure, (row.id for row in layers if row.ref in finding.layers))
        elif finding.places:
            self._put("place", sure, (row.id for row in places if row.mark in finding.places))
        elif finding.components:
            parts = within.parts.get(owner.id, ())
            named = {row.id for row in parts if row.mark in finding.components}
            borne = (row.id for row in places if {row.component_id, row.other_component_id} & named)
            self._put("place", sure, borne)
        else:
            self._put("object", sure, (owner.id,))

    def _put(self, kind: str, sure: bool, ids: Iterable[int]) -> None:
        self._ids.setdefault((kind, sure), set()).update(ids)

    def broken(self) -> Broken:
        """What was gathered, as conditions take it."""
        return Broken(*(self._listed(kind) for kind in ("layer", "place", "object")))

    def _listed(self, kind: str) -> Listed:
        sure, perhaps = (sorted(self._ids.get((kind, how), ())) for how in (True, False))
        return Listed(json.dumps(sure), json.dumps(perhaps))
