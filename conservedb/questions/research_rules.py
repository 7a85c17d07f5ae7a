"""Where a rule of the trade is broken, for a researcher's question.

The rules are no statements of the database: they are tried in Python, object by object, as
`checks` does, on the objects that the other conditions of the question leave.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Sequence

from sqlalchemy import Connection, literal_column, select

from conservedb.knowledge.research import And, Condition, Not, Or, Tree
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


def without_rules(tree: Tree, wanted: bool = True) -> Tree:
    """Conditions that hold wherever those given can hold, whatever the rules find."""
    if isinstance(tree, Condition):
        if tree.field != "rule":
            return tree
        return And() if wanted else Or(())
    if isinstance(tree, Not):
        return Not(without_rules(tree.part, not wanted))
    return type(tree)(tuple(without_rules(part, wanted) for part in tree.parts))


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
        """Take what a finding names: layers, uses, else places, else parts, else the object."""
        sure = finding.outcome == BROKEN and finding.certain
        layers = [row for row in within.layers.get(owner.id, ()) if row.ref in finding.layers]
        places = _places_of(finding, owner, within, layers)
        may_lie = [row.place_id for one in layers for row in within.candidates.get(one.id, ())]
        self._put("rows_of_objects", sure, (owner.id,))
        self._put("rows_of_places", sure, places)
        self._put("rows_of_places", False, () if finding.places else may_lie)
        if finding.layers:
            self._put("layers", sure, (row.id for row in layers))
        elif finding.interventions:
            done = within.deeds.get(owner.id, ())
            named = (row.id for row in done if row.ref in finding.interventions)
            self._put("interventions", sure, named)
        elif finding.places or finding.components:
            self._put("places", sure, places)
        else:
            self._put("objects", sure, (owner.id,))

    def _put(self, kind: str, sure: bool, ids: Iterable[int]) -> None:
        self._ids.setdefault((kind, sure), set()).update(ids)

    def broken(self) -> Broken:
        """What was gathered, as conditions take it."""
        return Broken(**{name: self._listed(name) for name in Broken._fields})

    def _listed(self, kind: str) -> Listed:
        sure, perhaps = (sorted(self._ids.get((kind, how), ())) for how in (True, False))
        return Listed(json.dumps(sure), json.dumps(perhaps))


def _places_of(finding: Finding, owner: Row, within: Range, layers: Sequence[Row]) -> set[int]:
    """The places that a finding is about: named, or where its layers lie, or on its parts."""
    places = within.places.get(owner.id, ())
    if finding.places:
        return {row.id for row in places if row.mark in finding.places}
    if finding.layers:
        return {row.place_id for row in layers if row.place_id is not None}
    parts = within.parts.get(owner.id, ())
    named = {row.id for row in parts if row.mark in finding.components}
    return {row.id for row in places if {row.component_id, row.other_component_id} & named}
