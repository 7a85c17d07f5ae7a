"""What a researcher's question is asked of: layers at their places, agents that were used, work.

Work is an intervention of which neither is on record: nothing that was laid or used can be asked
of it. All are given the same face: whose date, intervention, material and place a condition
looks at.
A condition holds surely, perhaps or not, which is two SQL conditions, the one within the other.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, NamedTuple

from sqlalchemy import (
    Table,
    and_,
    case,
    exists,
    false,
    func,
    literal_column,
    not_,
    or_,
    select,
    true,
)
from sqlalchemy.sql.selectable import FromClause, Select

from conservedb.questions.asking import blank
from conservedb.questions.research_terms import Test, Value
from conservedb.records.layers import layer, layer_candidate
from conservedb.records.places import place
from conservedb.records.treatments import agent, agent_place, intervention, intervention_place

LAYER, AGENT, WORK = 1, 2, 3
"""What an occurrence is, as a number in rows of the database."""


class Holds(NamedTuple):
    """Whether a condition holds surely, and whether at least perhaps; never NULL."""

    sure: Test
    may: Test


NEVER_HOLDS = Holds(false(), false())
PERHAPS_HOLDS = Holds(false(), true())
ALWAYS_HOLDS = Holds(true(), true())
AtPlace = Callable[[Value], Holds]


@dataclass(frozen=True)
class Occurrence:
    """Layers, agents or work as rows of a selection.

    Attributes:
        source: where the rows come from.
        natural: whether no intervention made it: it arose, or is the maker's.
        place: the one place at which each row is judged, in questions for places only.
        several: whether that place is one of several candidates.
    """

    what: int
    table: Table
    source: FromClause
    date: dict[str, Value]
    natural: Test
    place: Value | None = None
    several: Test = NEVER_HOLDS.sure

    @property
    def id(self) -> Value:
        """The id of the layer, agent or intervention."""
        return self.table.c.id

    @property
    def deed(self) -> Value:
        """The id of the intervention that laid or used it, or that it is."""
        return self.table.c.id if self.what == WORK else self.table.c.intervention_id

    @property
    def is_layer(self) -> bool:
        """Whether it is about layers."""
        return self.what == LAYER

    @property
    def of_matter(self) -> bool:
        """Whether it is of something that was laid or used."""
        return self.what != WORK

    @property
    def nameless(self) -> Test:
        """Whether neither material nor class of what was laid or used is on record."""
        if not self.of_matter:
            return false()
        c = self.table.c
        return and_(c.material_id.is_(None), c.material_class_id.is_(None))

    def at_places(self, holds: AtPlace, unplaced: Holds) -> Holds:
        """A condition on the place; at most perhaps where several places are candidates.

        Args:
            holds: whether it holds at the place of an id.
            unplaced: whether it holds where no place is on record.
        """
        if self.place is not None:
            return holds(self.place)
        if self.is_layer:
            return _at_places_of_layer(holds, unplaced)
        if self.what == WORK:
            return _at_places_of_work(holds, unplaced)
        return _at_places_of_agent(holds, unplaced)


def _at_places_of_layer(holds: AtPlace, unplaced: Holds) -> Holds:
    own, other = holds(layer.c.place_id), holds(layer_candidate.c.place_id)
    candidate = layer_candidate.c.layer_id == layer.c.id
    perhaps = any_row(layer_candidate, candidate, other.may)
    placed = layer.c.place_id.is_not(None)
    nowhere = and_(~placed, ~any_row(layer_candidate, candidate))
    return Holds(
        or_(and_(placed, own.sure), and_(nowhere, unplaced.sure)),
        or_(and_(placed, own.may), and_(~placed, perhaps), and_(nowhere, unplaced.may)),
    )


def _at_places_of_agent(holds: AtPlace, unplaced: Holds) -> Holds:
    """Where it says so itself, else wherever its intervention took place."""
    own = agent_place.c.agent_id == agent.c.id
    deed = intervention_place.c.intervention_id == agent.c.intervention_id
    said = any_row(agent_place, own)
    nowhere = and_(~said, ~any_row(intervention_place, deed))
    at_own, at_deed = holds(agent_place.c.place_id), holds(intervention_place.c.place_id)
    return Holds(
        or_(
            any_row(agent_place, own, at_own.sure),
            and_(~said, any_row(intervention_place, deed, at_deed.sure)),
            and_(nowhere, unplaced.sure),
        ),
        or_(
            any_row(agent_place, own, at_own.may),
            and_(~said, any_row(intervention_place, deed, at_deed.may)),
            and_(nowhere, unplaced.may),
        ),
    )


def _at_places_of_work(holds: AtPlace, unplaced: Holds) -> Holds:
    own = intervention_place.c.intervention_id == intervention.c.id
    found, nowhere = holds(intervention_place.c.place_id), ~any_row(intervention_place, own)
    return Holds(
        or_(any_row(intervention_place, own, found.sure), and_(nowhere, unplaced.sure)),
        or_(any_row(intervention_place, own, found.may), and_(nowhere, unplaced.may)),
    )


def any_row(table: FromClause, *conditions: Test) -> Test:
    """Whether a table, or a join, has a row that meets the conditions."""
    found: Select[Any] = select(literal_column("1")).select_from(table).where(*conditions)
    return exists(found.correlate_except(table))


_CAME: dict[str, Value] = {
    "earliest": layer.c.came_from,
    "latest": layer.c.came_to,
    "flags": layer.c.came_flags,
}
"""When a layer came, by its own date, that of its intervention, and all else on record."""
_NATURAL = and_(
    layer.c.intervention_id.is_(None),
    blank(layer.c.origin).in_([literal_column(f"'{one}'") for one in ("maker", "arisen")]),
)
_DEED_OF_LAYER = layer.outerjoin(intervention, intervention.c.id == layer.c.intervention_id)
_DEED_OF_AGENT = agent.outerjoin(intervention, intervention.c.id == agent.c.intervention_id)
_OF_DEED: dict[str, Value] = {part: intervention.c[f"date_{part}"] for part in _CAME}
MATTER = (
    Occurrence(LAYER, layer, _DEED_OF_LAYER, _CAME, _NATURAL),
    Occurrence(AGENT, agent, _DEED_OF_AGENT, _OF_DEED, false()),
)
"""Each layer once and each agent once, wherever they are."""
OCCURRENCES = (*MATTER, Occurrence(WORK, intervention, intervention, _OF_DEED, false()))
"""With the work too of which neither is on record."""
_anywhere = place.alias("anywhere")


def _also_anywhere(source: FromClause, owner: Table, unplaced: Test) -> FromClause:
    """With every place of the object beside what has none on record: it may be at each.

    No object is asked for where there is one: its places would all be looked at in vain.
    """
    whose = case((unplaced, owner.c.object_id))
    return source.outerjoin(_anywhere, _anywhere.c.object_id == whose)


_UNPLACED_LAYER = and_(layer.c.place_id.is_(None), layer_candidate.c.layer_id.is_(None))
_UNPLACED_AGENT = and_(
    agent_place.c.agent_id.is_(None), intervention_place.c.intervention_id.is_(None)
)
_UNPLACED_WORK = intervention_place.c.intervention_id.is_(None)
AT_PLACES = (
    Occurrence(
        LAYER,
        layer,
        _also_anywhere(
            _DEED_OF_LAYER.outerjoin(
                layer_candidate,
                and_(layer.c.place_id.is_(None), layer_candidate.c.layer_id == layer.c.id),
            ),
            layer,
            _UNPLACED_LAYER,
        ),
        _CAME,
        _NATURAL,
        func.coalesce(layer.c.place_id, layer_candidate.c.place_id, _anywhere.c.id),
        layer.c.place_id.is_(None),
    ),
    Occurrence(
        AGENT,
        agent,
        _also_anywhere(
            _DEED_OF_AGENT.outerjoin(agent_place, agent_place.c.agent_id == agent.c.id).outerjoin(
                intervention_place,
                and_(
                    agent_place.c.agent_id.is_(None),
                    intervention_place.c.intervention_id == agent.c.intervention_id,
                ),
            ),
            agent,
            _UNPLACED_AGENT,
        ),
        _OF_DEED,
        false(),
        func.coalesce(agent_place.c.place_id, intervention_place.c.place_id, _anywhere.c.id),
        _UNPLACED_AGENT,
    ),
    Occurrence(
        WORK,
        intervention,
        _also_anywhere(
            intervention.outerjoin(
                intervention_place, intervention_place.c.intervention_id == intervention.c.id
            ),
            intervention,
            _UNPLACED_WORK,
        ),
        _OF_DEED,
        false(),
        func.coalesce(intervention_place.c.place_id, _anywhere.c.id),
        _UNPLACED_WORK,
    ),
)
"""Each once for every place where it lies or may lie, was used or was done. What has no place on
record may be at any of its object."""
BARE = and_(
    ~any_row(layer, layer.c.intervention_id == intervention.c.id),
    ~any_row(agent, agent.c.intervention_id == intervention.c.id),
)
"""Whether an intervention has neither layer nor agent on record."""


def all_of(parts: list[Holds]) -> Holds:
    """What holds where each part holds; everything where there is none."""
    return Holds(and_(true(), *(p.sure for p in parts)), and_(true(), *(p.may for p in parts)))


def any_of(parts: list[Holds]) -> Holds:
    """What holds where at least one part holds."""
    return Holds(or_(false(), *(p.sure for p in parts)), or_(false(), *(p.may for p in parts)))


def none_of(part: Holds) -> Holds:
    """What surely holds where the part cannot, and perhaps where the part need not."""
    return Holds(not_(part.may), not_(part.sure))
