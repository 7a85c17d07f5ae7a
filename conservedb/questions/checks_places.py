"""Places as the rules look at them: what happened there, what was photographed, how warm it is."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import chain

from conservedb.dates import Found
from conservedb.knowledge.dating import made_from
from conservedb.knowledge.joints import JointEvent, condition
from conservedb.knowledge.rule_case import Dated, KnownLayer, KnownPlace, Support
from conservedb.questions import checks_deeds as deeds
from conservedb.questions import checks_records as records
from conservedb.questions.asking import Row
from conservedb.questions.checks_records import Range
from conservedb.questions.checks_reference import Reference
from conservedb.questions.checks_whereabouts import Kept
from conservedb.questions.joint_states import EVENT_COLUMNS, known_event
from conservedb.records.base import DATE_PARTS

_EVENT = len(EVENT_COLUMNS)
_AT_DONE, _PARTS_OF_DATE = deeds.DEEDS.at("date_words"), len(DATE_PARTS)
_IN_EVENT = records.EVENTS.at("paper_ref")
_IN_DEED = deeds.DEEDS.at("paper_ref")
_IN_LAYER, _IN_DEED_OF_LAYER = (records.LAYERS.at(f"{one}_ref") for one in ("paper", "why"))
_IN_SIGHTING = records.SIGHTINGS.at("paper_ref")
"""Where in a row stand the ref and the days of its source, if that is a photograph."""


def found_date(row: Row, at: int) -> Found:
    """The date whose six columns begin at `at`."""
    return Found(*row[at : at + _PARTS_OF_DATE])


class PlaceMaker:
    """Makes the places of one object.

    Args:
        parts: the rows of its components.
        whole_made: the earliest making of the object.
        kept: where it and its parts are.
    """

    def __init__(
        self,
        known: Reference,
        within: Range,
        day: int,
        owner: int,
        whole_made: int,
        kept: Kept,
    ) -> None:
        self._known, self._within, self._day, self._kept = known, within, day, kept
        parts = within.parts.get(owner, ())
        self._marks = {row.id: row.mark for row in parts}
        self._made = {row.id: made_from(row.made_earliest, whole_made) for row in parts}
        self._whole_made = whole_made
        self._layer_rows: dict[int, list[Row]] = {}
        for row in within.layers.get(owner, ()):
            self._layer_rows.setdefault(row.place_id, []).append(row)
        self._places = {row.id: row for row in within.places.get(owner, ())}
        self._deeds: dict[int, list[Row]] = {}
        for deed in within.deeds.get(owner, ()):
            for link in within.deed_places.get(deed.id, ()):
                self._deeds.setdefault(link.place_id, []).append(deed)
        self._supports = [one for one in within.deeds.get(owner, ()) if one.kind == "support"]

    def place(self, row: Row, layers: Sequence[KnownLayer]) -> KnownPlace:
        """A place with everything at it."""
        bearers = _bearers(row)
        parts: list[int | None] = [*bearers] or [None]
        events = self._events(row.id, bearers)
        kept = list(dict.fromkeys(chain.from_iterable(self._kept_of(one) for one in parts)))
        return KnownPlace(
            row.mark,
            row.kind,
            row.name,
            tuple(dict.fromkeys(self._marks[one] for one in bearers)),
            row.load_kg,
            row.load_source,
            tuple(layers),
            events,
            condition=condition(events, self._day).possible if row.kind == "joint" else (),
            fixings=tuple(one.mark for one in self._within.fixings.get(row.id, ())),
            no_barrier=self._no_barrier(row.id),
            supported=tuple(self._supported(row)),
            photographs=tuple(dict.fromkeys(self._photographs(row.id))),
            climates=tuple(
                chain.from_iterable(self._known.climates_of(where, self._day) for where in kept)
            ),
            kept=" or ".join(kept),
            apart=self._apart(bearers),
        )

    def _supported(self, row: Row) -> Iterator[Support]:
        for deed in self._supports:
            mark = self._recorded_for(deed, row)
            if mark:
                yield Support(deed.ref, found_date(deed, _AT_DONE), mark)

    def _recorded_for(self, deed: Row, row: Row) -> str:
        """The place or part that a deed is recorded for: this one first, "" where none is near."""
        places = [self._places[one.place_id] for one in self._within.deed_places.get(deed.id, ())]
        if row in places:
            mark: str = row.mark
            return mark
        bearers = set(_bearers(row))
        near = [one.mark for one in places if bearers & set(_bearers(one))]
        parts = self._within.deed_components.get(deed.id, ())
        near += [self._marks[one.component_id] for one in parts if one.component_id in bearers]
        return near[0] if near else ""

    def _events(self, place: int, bearers: Sequence[int]) -> tuple[JointEvent, ...]:
        floor = max((self._made[one] for one in bearers), default=self._whole_made)
        return tuple(
            known_event(tuple(row[1:_EVENT]), floor) for row in self._within.events.get(place, ())
        )

    def _kept_of(self, part: int | None) -> tuple[str, ...]:
        return self._kept.get(part, self._kept[None])

    def _apart(self, bearers: Sequence[int]) -> bool:
        """Whether both sides of a joint are recorded as kept, each in a place of its own."""
        places = [set(self._kept_of(one)) for one in bearers]
        return len(places) == 2 and all(places) and not places[0] & places[1]

    def _no_barrier(self, place: int) -> str:
        """Who says that there is none; only the plain word counts, no other words are read."""
        said = self._within.no_barrier.get(place, ())
        if len(said) != 1 or said[0].value.strip().lower() != "none":
            return ""
        return ", p. ".join(word for word in (said[0].source, said[0].page) if word) or "no source"

    def _photographs(self, place: int) -> Iterator[Dated]:
        """Photographs cited by a layer, a sighting, an event or an intervention there."""
        layers = self._layer_rows.get(place, ())
        looks = [look for row in layers for look in self._within.sightings.get(row.id, ())]
        yield from _shown(_IN_EVENT, self._within.events.get(place, ()))
        yield from _shown(_IN_DEED, self._deeds.get(place, ()))
        yield from _shown(_IN_LAYER, layers)
        yield from _shown(_IN_DEED_OF_LAYER, layers)
        yield from _shown(_IN_SIGHTING, looks)


def _bearers(row: Row) -> list[int]:
    """The ids of the components that bear a place."""
    return [one for one in (row.component_id, row.other_component_id) if one is not None]


def _shown(at: int, rows: Iterable[Row]) -> Iterator[Dated]:
    """The photographs whose ref stands at a place of some rows, and their days after it."""
    for row in rows:
        if row[at] is not None:
            yield Dated(*row[at : at + 3])
