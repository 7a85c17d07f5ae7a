"""Where an object was kept when something was done to it: outdoors, on display, in storage ...

Its whereabouts then, or those of the part if it was kept apart, are held against the rooms of
`climate`, as `checks_whereabouts` does for one day. A stay whose end is not recorded lasts
until another had certainly begun. Where it is kept today says nothing of where it was.
"""

from __future__ import annotations

from sqlalchemy import Connection, and_, false, literal_column, or_, select
from sqlalchemy.sql.selectable import FromClause

from conservedb.dates import NEVER, OPEN_START
from conservedb.knowledge.research import Condition
from conservedb.questions.asking import Question, blank
from conservedb.questions.checks_reference import begins_with
from conservedb.questions.research_occurrences import Holds, Occurrence, any_row
from conservedb.questions.research_terms import Meant, Room, Test, Value, is_any
from conservedb.records.objects import whereabouts
from conservedb.records.places import place
from conservedb.records.rules import climate
from conservedb.store.keys import fold

CLIMATES = Question(
    select(
        climate.c.room_folded,
        blank(climate.c.use).label("use"),
        *(
            climate.c[f"{end}_{part}"]
            for end, part in (
                ("since", "latest"),
                ("since", "derived"),
                ("until", "earliest"),
                ("until", "derived"),
            )
        ),
    ).where(climate.c.use.is_not(None))
)
WHEREABOUTS = Question(
    select(whereabouts.c.place_name).where(whereabouts.c.place_name.is_not(None)).distinct()
)
STATEMENTS = (CLIMATES, WHEREABOUTS)
_stay, _later, _spot = whereabouts.alias("stay"), whereabouts.alias("later"), place.alias("spot")
_apart = whereabouts.alias("apart")


def rooms_of(connection: Connection, use: str) -> tuple[Room, ...]:
    """The rooms on record, with whether their use is the one asked for."""
    names = [name for (name,) in WHEREABOUTS.tuples(connection)]
    found = []
    for row in CLIMATES.all(connection):
        inside = tuple(name for name in names if begins_with(fold(name), row.room_folded))
        first = OPEN_START if row.since_derived == "blank" else row.since_latest
        last = NEVER if row.until_derived == "blank" else row.until_earliest
        found.append(Room(inside, row.use == use, first, last))
    return tuple(found)


def kept_in(occurrence: Occurrence, _: Condition, meant: Meant) -> Holds:
    """Sure, or surely not, where one stay covers all days that the date may mean."""
    return occurrence.at_places(
        lambda at: _Stays(occurrence, meant, at).holds(),
        _Stays(occurrence, meant, None).holds(),
    )


class _Stays:
    """The stays that bear on an occurrence at a place; without one, those of its object."""

    def __init__(self, occurrence: Occurrence, meant: Meant, at: Value | None) -> None:
        self._object = occurrence.table.c.object_id
        self._date = occurrence.date
        self._rooms = meant.rooms
        self._at = at

    def holds(self) -> Holds:
        fits, other = self._used(fits=True), self._used(fits=False)
        plain = self._date["flags"] == 0
        surely = and_(
            plain, self._any(self._covers(), fits, ~other), ~self._any(~and_(fits, ~other))
        )
        not_so = and_(
            plain, self._any(self._covers(), other, ~fits), ~self._any(~and_(other, ~fits))
        )
        return Holds(surely, ~not_so)

    def _any(self, *conditions: Test) -> Test:
        return any_row(_stay, self._counts(), *conditions)

    def _counts(self) -> Test:
        """Stays of the object, or of the part where it was perhaps kept apart."""
        whole = and_(self._of_object(_stay), _stay.c.component_id.is_(None))
        if self._at is None:
            return and_(whole, self._then(_stay))
        apart = any_row(_apart, self._of_object(_apart), self._of_part(_apart), self._then(_apart))
        of_part = and_(self._of_object(_stay), self._of_part(_stay))
        return and_(self._then(_stay), or_(of_part, and_(whole, ~apart)))

    def _of_object(self, stay: FromClause) -> Test:
        return stay.c.object_id == self._object

    def _of_part(self, stay: FromClause) -> Test:
        sides = (_spot.c.component_id, _spot.c.other_component_id)
        return any_row(
            _spot, _spot.c.id == self._at, or_(*(side == stay.c.component_id for side in sides))
        )

    def _then(self, stay: FromClause) -> Test:
        """Whether it was perhaps there when it was done, and no other had begun after it."""
        ended = any_row(
            _later,
            self._of_object(_later),
            or_(
                _later.c.component_id == stay.c.component_id,
                and_(_later.c.component_id.is_(None), stay.c.component_id.is_(None)),
            ),
            _later.c.place_name.is_not(None),
            _later.c.since_earliest > stay.c.since_latest,
            _later.c.since_latest <= self._date["earliest"],
        )
        return and_(
            stay.c.place_name.is_not(None),
            stay.c.since_earliest <= self._date["latest"],
            stay.c.until_latest >= self._date["earliest"],
            ~ended,
        )

    def _covers(self) -> Test:
        c = _stay.c
        return and_(
            c.since_flags == 0,
            c.until_flags == 0,
            c.since_latest <= self._date["earliest"],
            or_(c.until_derived == "blank", c.until_earliest >= self._date["latest"]),
        )

    def _used(self, *, fits: bool) -> Test:
        """Whether the place of a stay is in a room that surely had such a use then."""
        return or_(
            false(),
            *(
                and_(
                    is_any(_stay.c.place_name, room.names),
                    literal_column(str(room.first)) <= self._date["earliest"],
                    self._date["latest"] <= literal_column(str(room.last)),
                )
                for room in self._rooms
                if room.fits is fits and room.names
            ),
        )
