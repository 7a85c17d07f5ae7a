"""Cases for the rules: what is on record about a range of objects, as plain values on a day."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping
from typing import Any

from conservedb.knowledge.behaviour import Matter
from conservedb.knowledge.layers import (
    GONE,
    NOT_YET,
    REDUCED,
    Bounds,
    Interval,
    possible,
    qualified,
)
from conservedb.knowledge.rule_case import (
    Case,
    KnownLayer,
    KnownPart,
    KnownTest,
    KnownUse,
    Nearness,
)
from conservedb.knowledge.rule_words import dated as date_words
from conservedb.questions import checks_deeds as deeds
from conservedb.questions import checks_records as records
from conservedb.questions.asking import Row
from conservedb.questions.checks_places import PlaceMaker, found_date
from conservedb.questions.checks_records import Range
from conservedb.questions.checks_reference import Reference
from conservedb.questions.checks_whereabouts import kept_on
from conservedb.questions.evidence import when
from conservedb.questions.lasting import lasting, object_made
from conservedb.questions.retiring import retired_of, standing
from conservedb.records.layers import BOUNDS

_AT_BOUNDS = records.LAYERS.at(BOUNDS[0])
_AT_LAID = records.LAYERS.at("date_words")
_AT_RETIRED = records.PARTS.at("retired_words")
_AT_MADE, _AT_LOST = records.PARTS.at("made_words"), records.PARTS.at("lost_words")
_AT_WHOLE = records.OBJECTS.at("made_words")
_AT_LOOKED = records.SIGHTINGS.at("date_words")
_AT_DONE = deeds.DEEDS.at("date_words")


class CaseMaker:
    """Makes the case of an object from what is on record in its range."""

    def __init__(self, known: Reference, within: Range, day: int) -> None:
        self._known, self._within, self._day = known, within, day
        self._matters: dict[tuple[Any, ...], tuple[Matter, ...]] = {}

    def cases(self) -> Iterator[tuple[Row, Case]]:
        """Each object of the range with its case."""
        for row in self._within.objects:
            yield row, self.case(row)

    def case(self, owner: Row) -> Case:
        """The case of one object."""
        whole = object_made(when(owner, _AT_WHOLE))
        parts, places = (
            within.get(owner.id, ()) for within in (self._within.parts, self._within.places)
        )
        marks = {row.id: row.mark for row in places}
        kept = kept_on(owner, parts, self._within.kept.get(owner.id, ()), self._day)
        make = PlaceMaker(self._known, self._within, self._day, owner.id, whole.earliest, kept)
        layers = self._layers(owner.id, marks)
        return Case(
            owner.number,
            self._day,
            {row.mark: self._part(row, whole) for row in parts},
            {row.mark: make.place(row, layers.get(row.id, [])) for row in places},
            self._near(owner.id, marks),
            self._uses(owner.id, marks),
            self._tests(owner.id, marks),
            self._known.periods,
            self._known.strengths,
            self._known.settled,
        )

    # -- parts ----------------------------------------------------------------------------

    def _part(self, row: Row, whole: Interval) -> KnownPart:
        made, lost = when(row, _AT_MADE), when(row, _AT_LOST)
        lasts = lasting(whole, made, lost, row.origin, row.source_latest, row.entered)
        _, states, flags = standing(lasts, retired_of(row, _AT_RETIRED), self._day)
        there = "certain" if states == ("present",) and not flags else "possible"
        materials = self._known.materials
        known = row.material_id is not None
        return KnownPart(
            row.mark,
            row.name,
            row.kind,
            row.origin,
            matter=materials.of(row.material_id) if known else None,
            material_words=row.material_words,
            classes=materials.class_path(row.material_id) if known else (),
            made=found_date(row, _AT_MADE),
            there="gone" if "present" not in states else there,
            known_from=row.known_from,
            cited=row.source,
        )

    # -- layers ---------------------------------------------------------------------------

    def _layers(self, owner: int, marks: Mapping[int, str]) -> dict[int, list[KnownLayer]]:
        """The layers of an object by the places where they lie or may lie."""
        found: dict[int, list[KnownLayer]] = defaultdict(list)
        for row in self._within.layers.get(owner, ()):
            mask = possible(Bounds(*row[_AT_BOUNDS : _AT_BOUNDS + len(BOUNDS)]), self._day)
            if mask == NOT_YET:
                continue
            if row.place_id is not None:
                found[row.place_id].append(self._layer(row, mask, marks[row.place_id], True))
            for _, place in self._within.candidates.get(row.id, ()):
                found[place].append(self._layer(row, mask, marks[place], False))
        return found

    def _layer(self, row: Row, mask: int, place: str, placed: bool) -> KnownLayer:
        bounds = Bounds(*row[_AT_BOUNDS : _AT_BOUNDS + len(BOUNDS)])
        there = "gone" if mask == GONE else "possible"
        if placed and not mask & (NOT_YET | GONE) and not qualified(bounds, mask):
            there = "certain"
        matters = self._matter(row)
        return KnownLayer(
            row.ref,
            place,
            matters[0].name if matters else row.material_words,
            matters,
            role=row.role,
            zone=row.zone,
            side=row.side,
            stack=row.stack,
            origin=row.origin,
            coverage=row.coverage,
            carrier=row.carrier,
            carrier_matter=self._known.carrier(row.carrier),
            dry=row.dry,
            identified=row.identified,
            date=found_date(row, _AT_LAID),
            came=(bounds.came_from, bounds.came_to),
            went=(bounds.gone_from, bounds.gone_to),
            there=there,
            reduced=mask == REDUCED,
            only_stated=row.material_id is None and row.material_class_id is None,
            missed=self._missed(row.id),
            cited=row.source,
        )

    def _matter(self, row: Row) -> tuple[Matter, ...]:
        """Everything a layer may be made of, what is followed first."""
        others = self._within.alternatives.get(row.id)
        key = (
            row.material_id,
            row.material_class_id,
            *[other.material_id for other in others or ()],
        )
        if key not in self._matters:
            kinds = self._known.kinds
            ids = [one for one in (row.material_id, *key[2:]) if one is not None]
            found = [kinds.of(one) for one in dict.fromkeys(ids)]
            if row.material_id is None and row.material_class_id is not None:
                found.insert(0, kinds.of_class(row.material_class_id))
            self._matters[key] = tuple(found)
        return self._matters[key]

    def _missed(self, layer: int) -> str:
        looks = [
            look
            for look in self._within.sightings.get(layer, ())
            if look.result == "not found" and look.date_earliest <= self._day
        ]
        if not looks:
            return ""
        said = date_words(found_date(looks[-1], _AT_LOOKED))
        return f"{said}, {looks[-1].source}" if looks[-1].source else said

    # -- what was done --------------------------------------------------------------------

    def _near(self, owner: int, marks: Mapping[int, str]) -> tuple[Nearness, ...]:
        return tuple(
            Nearness(
                marks[row.place_id],
                marks[row.other_place_id],
                row.distance_mm,
                row.path,
                row.source,
            )
            for row in self._within.near.get(owner, ())
        )

    def _uses(self, owner: int, marks: Mapping[int, str]) -> tuple[KnownUse, ...]:
        """The agents used; one recorded without a place counts wherever its deed took place."""
        within, found = self._within, []
        for row in within.deeds.get(owner, ()):
            for agent in within.agents.get(row.id, ()):
                own = within.agent_places.get(agent.id) or within.deed_places.get(row.id, ())
                places = tuple(marks[one.place_id] for one in own)
                agent_matter = self._known.materials.of(agent.material_id)
                date = found_date(row, _AT_DONE)
                found.append(KnownUse(row.ref, row.kind, date, places, agent_matter))
        return tuple(found)

    def _tests(self, owner: int, marks: Mapping[int, str]) -> tuple[KnownTest, ...]:
        parts: dict[int, list[Row]] = defaultdict(list)
        for row in self._within.tests.get(owner, ()):
            parts[row.id].append(row)
        return tuple(
            KnownTest(
                rows[0].ref,
                marks.get(rows[0].place_id, ""),
                frozenset(row.key for row in rows),
                rows[0].date_earliest,
                rows[0].date_latest,
            )
            for rows in parts.values()
        )
