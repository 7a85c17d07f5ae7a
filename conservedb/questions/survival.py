"""How long the layers last that answer a researcher's question: how many are still there, by age.

Two readings stand side by side. As recorded, a layer is there until its end is on record. As last
seen, one without an end on record is followed only until the last day on which somebody saw it.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from typing import NamedTuple

from sqlalchemy import Connection, func, literal_column, select

from conservedb.dates import is_known
from conservedb.knowledge.research import Research, conditions
from conservedb.knowledge.research_words import AskError
from conservedb.knowledge.scales import round_steps
from conservedb.knowledge.survival import (
    YEAR,
    Age,
    Between,
    Curve,
    Life,
    Standing,
    age,
    age_when_seen,
    days,
    earliest,
    latest,
)
from conservedb.questions.asking import Question, Row
from conservedb.questions.research_answers import CERTAIN, POSSIBLE, UNIDENTIFIED, ResearchRow
from conservedb.questions.tally import OBJECTS, wanted
from conservedb.records.layers import layer, sighting
from conservedb.records.objects import object_

_STEPS = 10
_CHOOSING = ("state", "observed")
"""Fields of a question that only layers can answer to which were still there on some day."""
_SEEN = (
    select(func.max(sighting.c.date_earliest))
    .where(sighting.c.layer_id == layer.c.id, sighting.c.result == literal_column("'seen'"))
    .correlate(layer)
    .scalar_subquery()
)
"""The last day on which a layer was certainly there because it was seen on it or later."""
_LIVES = Question(
    select(
        object_.c.number,
        layer.c.ref,
        layer.c.came_from,
        layer.c.came_to,
        layer.c.gone_from,
        layer.c.gone_to,
        _SEEN.label("seen"),
        layer.c.came_flags.bitwise_or(layer.c.gone_flags).label("flags"),
    )
    .join_from(layer, object_, object_.c.id == layer.c.object_id)
    .where(layer.c.object_id.in_(OBJECTS))
)
STATEMENTS = (_LIVES,)


@dataclass(frozen=True, slots=True)
class LeftOut:
    """How many rows of the answer the estimate is without, each for one reason.

    Attributes:
        possible: layers that are answers only possibly, or by more than they are known to be.
        unidentified: layers that nobody identified.
        agents: uses of agents, which were not meant to stay.
        not_come: layers that need not have been laid by today.
    """

    possible: int
    unidentified: int
    agents: int
    not_come: int


class AtAge(NamedTuple):
    """How many are still there at an age; a share is from 0 to 1.

    Attributes:
        years: of 365.2425 days, as a whole number.
        recorded, seen: the estimate as recorded and as last seen; None beyond what is known.
        with_possible: as recorded, with the layers too that are answers only possibly; None
            where there are none.
        band: the 95 % band of the estimate as recorded, None where dates are vague.
        soonest, last: as recorded, if all ended as early or as late as their dates allow; the
            estimate need not lie between them, since few old ones weigh more than many young.
        standing: what is certain of the layers themselves, as recorded.
        followed: on how many layers the estimate as recorded still rests.
    """

    years: int
    recorded: Between
    seen: Between | None
    with_possible: Between | None
    band: Between | None
    soonest: Between | None
    last: Between
    standing: Standing
    followed: int


@dataclass(frozen=True, slots=True)
class Survival:
    """How many of some layers are still there, by age.

    Attributes:
        layers: how many layers it rests on: those that are certain answers.
        qualified: of how many of them a date is approximate or uncertain; taken as written.
        unseen: how many of them nobody has seen since they were laid, and no end is on record.
        chosen: the fields of the question that choose layers by how long they lasted.
        recorded, seen: the two readings.
        ages: the estimates at round ages, up to the last of which anything is known.
    """

    layers: int
    qualified: int
    unseen: int
    left_out: LeftOut
    chosen: tuple[str, ...]
    recorded: Curve
    seen: Curve
    ages: tuple[AtAge, ...]


def survival(
    connection: Connection, research: Research, rows: Iterable[ResearchRow], today: date
) -> Survival:
    """How many of the layers that answer a question are still there, by age; certain ones count.

    Raises:
        AskError: the rows of the question are no layers.
    """
    if research.rows != "layers":
        raise AskError(f"it is layers that last, not {research.rows}; ask for layers")
    listed = tuple(rows)
    laid = [row for row in listed if row.what == "layer"]
    lives = _lives(connection, laid)
    day = today.toordinal()
    certain = [lives[row.object, row.ref] for row in laid if row.sureness == CERTAIN]
    possible = [lives[row.object, row.ref] for row in laid if row.sureness == POSSIBLE]
    ages = [found for one in certain if (found := age(one.life, day))]
    seen = [found for one in certain if (found := age_when_seen(one.life, day))]
    also = [found for one in possible if (found := age(one.life, day))]
    number = Counter(row.sureness for row in laid)
    left_out = LeftOut(
        number[POSSIBLE], number[UNIDENTIFIED], len(listed) - len(laid), len(certain) - len(ages)
    )
    asked = {condition.field for condition in conditions(research.where)}
    recorded, last_seen = Curve(ages), Curve(seen)
    return Survival(
        layers=len(ages),
        qualified=sum(1 for one in certain if one.flags and age(one.life, day)),
        unseen=sum(1 for one in seen if not one.low and not one.ended and one.established),
        left_out=left_out,
        chosen=tuple(field for field in _CHOOSING if field in asked),
        recorded=recorded,
        seen=last_seen,
        ages=_at_ages(recorded, last_seen, ages, also),
    )


class _Known(NamedTuple):
    life: Life
    flags: int


def _lives(connection: Connection, rows: Sequence[ResearchRow]) -> dict[tuple[str, str], _Known]:
    found = _LIVES.all(connection, wanted=wanted(rows)) if rows else []
    return {(row.number, row.ref): _known(row) for row in found}


def _known(row: Row) -> _Known:
    seen = row.seen if row.seen is not None and is_known(row.seen) else None
    life = Life(row.came_from, row.came_to, row.gone_from, row.gone_to, seen)
    return _Known(life, row.flags)


def _at_ages(
    recorded: Curve, seen: Curve, ages: Sequence[Age], also: Sequence[Age]
) -> tuple[AtAge, ...]:
    together = Curve([*ages, *also]) if also else None
    soonest, last = Curve(map(earliest, ages)), Curve(map(latest, ages))
    return tuple(
        AtAge(
            years,
            recorded.at(day),
            seen.at(day) if day <= seen.horizon else None,
            together.at(day) if together else None,
            recorded.band(day),
            soonest.at(day) if day <= soonest.horizon else None,
            last.at(day),
            recorded.standing(day),
            recorded.followed(day),
        )
        for years in round_steps(recorded.horizon / YEAR, _STEPS)
        if 0 < (day := days(years)) <= recorded.horizon
    )
