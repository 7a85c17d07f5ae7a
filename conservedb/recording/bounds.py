"""Working out when each layer came and went, from the facts recorded about it."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from typing import Any, NamedTuple

from sqlalchemy import BindParameter, Connection, bindparam, select

from conservedb.dates import NEVER, OPEN_START, UNKNOWN_END, iso
from conservedb.knowledge.dating import day_entered, happened, made_from, recorded_by
from conservedb.knowledge.layers import (
    Bounds,
    ImpossibleOrder,
    Interval,
    LayerBounds,
    LayerFacts,
    Removal,
    Sighting,
    bounds,
)
from conservedb.recording.facts import Facts, Row
from conservedb.records.layers import BOUNDS, layer, layer_side

_Event = tuple[int, Row]


class Contradiction(NamedTuple):
    """Facts about a layer that no order of events agrees with; `table`, `id` name the culprit."""

    layer_id: int
    table: str
    id: int
    reason: str


class Existence(NamedTuple):
    """The making of what bears a layer, and the loss of each side ("" where there is one)."""

    floor: int
    lost: dict[str, Interval]
    two_sided: bool


_NEVER_LOST: dict[str, Interval] = {}


class Chronology:
    """Works out the bounds of the layers in `facts`; nothing is read or written elsewhere.

    A row that another refers to may be missing; what it would have said is then unknown.
    """

    def __init__(self, facts: Facts) -> None:
        self._rows = facts.rows
        self._candidates = facts.candidates
        self._existence: dict[int | None, Existence] = {}
        self._removals = _by_layer(facts.rows["removal"])
        self._sightings = _by_layer(facts.rows["sighting"])

    def layers(self) -> Iterator[tuple[int, LayerBounds | Contradiction]]:
        """The bounds of every layer, or what makes them impossible."""
        for layer_id, row in self._rows["layer"].items():
            yield layer_id, self._bounds_of(layer_id, row)

    def came(self, layer_id: int) -> Interval:
        """When a layer came, before anything else narrows it."""
        row = self._rows["layer"][layer_id]
        return self._came(row, self._floor(layer_id, row))

    def deed(self, intervention_id: int) -> Interval:
        """When an intervention took place."""
        earliest, latest, flags, source, recorded, entered = self._rows["intervention"][
            intervention_id
        ]
        cap = self._cap(source, entered, recorded)
        return happened(earliest, latest, flags, cap, entered=day_entered(entered))

    def existence(self, place_id: int, object_id: int) -> Existence:
        """Since when what bears a place exists, and what of it was lost."""
        known = self._existence.get(place_id)
        if known is None:
            known = self._existence[place_id] = self._work_out_existence(place_id, object_id)
        return known

    def made(self, component_id: int) -> int:
        """The earliest day on which a component can have been made, else its object."""
        row = self._rows["component"].get(component_id)
        if row is None:
            return OPEN_START
        return made_from(row[0], self._object_made(row[6]))

    def lost(self, component_id: int) -> Interval | None:
        """When a component was lost; None where no loss is recorded."""
        row = self._rows["component"].get(component_id)
        if row is None or row[4] == "blank":
            return None
        entered = day_entered(row[5])
        return happened(row[1], row[2], row[3], entered, row[0], entered)

    def _work_out_existence(self, place_id: int, object_id: int) -> Existence:
        kind, first, second = self._rows["place"].get(place_id, (None, None, None))
        made = [self.made(component) for component in (first, second) if component is not None]
        floor = max(made, default=self._object_made(object_id))
        joint = kind == "joint"
        lost = _NEVER_LOST
        sides = (("A", first), ("B", second or first)) if joint else (("", first),)
        for side, component in sides:
            loss = self.lost(component) if component is not None else None
            if loss is not None:
                lost = {**lost, side: loss}
        return Existence(floor, lost, joint)

    def _object_made(self, object_id: int) -> int:
        row = self._rows["object"].get(object_id)
        return row[0] if row else OPEN_START

    def _floor(self, layer_id: int, row: Row) -> int:
        places = self._candidates.get(layer_id, ()) if row[1] is None else (row[1],)
        floors = [self.existence(place, row[0]).floor for place in places]
        return min(floors) if floors else self._object_made(row[0])

    def _cap(self, source: int | None, entered: str, recorded: int = UNKNOWN_END) -> int:
        (latest,) = self._rows["source"].get(source, (None,)) if source is not None else (None,)
        return recorded_by(latest, entered, recorded)

    def _came(self, row: Row, floor: int) -> Interval:
        _, _, earliest, latest, flags, derived, deed, source, entered, _ = row
        return self._dated(earliest, latest, flags, derived, deed, source, entered, floor)

    def _dated(
        self,
        earliest: int,
        latest: int,
        flags: int,
        derived: str,
        deed: int | None,
        source: int | None,
        entered: str,
        floor: int = OPEN_START,
    ) -> Interval:
        """An event's own date where it has one, else that of its intervention."""
        if derived == "blank" and deed in self._rows["intervention"]:
            earliest, latest, flags, deed_source, recorded, deed_entered = self._rows[
                "intervention"
            ][deed]
            cap = self._cap(source or deed_source, deed_entered, recorded)
            entered = deed_entered
        else:
            cap = self._cap(source, entered)
        return happened(earliest, latest, flags, cap, floor, day_entered(entered))

    def _bounds_of(self, layer_id: int, row: Row) -> LayerBounds | Contradiction:
        came = self._came(row, self._floor(layer_id, row))
        removed = [
            (record, removal)
            for record, event in self._removals.get(layer_id, ())
            for removal in self._taken(event)
        ]
        looked = self._sightings.get(layer_id, ())
        lost, two_sided = self._losses(layer_id, row)
        facts = LayerFacts(
            came,
            [removal for _, removal in removed],
            [self._sighting(s) for _, s in looked],
            lost,
            two_sided,
        )
        try:
            return bounds(facts)
        except ImpossibleOrder as problem:
            table, culprit = "layer", layer_id
            if problem.event is not None and isinstance(problem.event.key, int):
                table = problem.event.kind
                culprit = (removed if table == "removal" else looked)[problem.event.key][0]
            return Contradiction(layer_id, table, culprit, problem.reason)

    def _losses(self, layer_id: int, row: Row) -> tuple[Mapping[str, Interval], bool]:
        """What was lost of what bears a layer, and whether its two sides go each its own way."""
        place, side = row[1], row[9]
        if place is None:
            return self._losses_of_candidates(layer_id, row), False
        existence = self.existence(place, row[0])
        lost, two_sided = existence.lost, existence.two_sided
        if not two_sided:
            return lost, False
        if side and not _tells_of_both(
            side, self._removals.get(layer_id, ()), self._sightings.get(layer_id, ())
        ):
            return ({"": lost[side]} if side in lost else _NEVER_LOST), False
        return lost, True

    def _losses_of_candidates(self, layer_id: int, row: Row) -> Mapping[str, Interval]:
        """It went with its bearer, if that is one of those lost; for certain if all were."""
        losses: list[Interval] = []
        places = self._candidates.get(layer_id, ())
        for place in places:
            existence = self.existence(place, row[0])
            sides = existence.lost
            if len(sides) == (2 if existence.two_sided else 1):
                whole = sides.values()
                losses.append(
                    Interval(max(i.earliest for i in whole), max(i.latest for i in whole))
                )
        if not losses:
            return _NEVER_LOST
        latest = max(i.latest for i in losses) if len(losses) == len(places) else NEVER
        return {"": Interval(min(i.earliest for i in losses), latest)}

    def _taken(self, row: Row) -> list[Removal]:
        """A removal; where its extent is not recorded, all, a part or nothing may have gone."""
        _, earliest, latest, flags, derived, deed, extent, side, source, entered = row
        when = self._dated(earliest, latest, flags, derived, deed, source, entered)
        if extent is not None:
            return [Removal(when, extent, side or "")]
        perhaps = Interval(when.earliest, NEVER, when.flags)
        return [Removal(perhaps, "part", side or ""), Removal(perhaps, "all", side or "")]

    def _sighting(self, row: Row) -> Sighting:
        _, earliest, latest, flags, result, side, source, entered = row
        cap = self._cap(source, entered)
        when = happened(earliest, latest, flags, cap, entered=day_entered(entered))
        return Sighting(when, result or "not accessible", side or "")


def _tells_of_both(side: str, removed: Sequence[_Event], looked: Sequence[_Event]) -> bool:
    """Whether anything recorded of a layer laid on one side concerns the other side too.

    A joint that opens may pull a layer over; until somebody says so it lies where it was laid.
    """
    sides = {row[7] for _, row in removed} | {row[5] for _, row in looked}
    return bool(sides - {None, side})


def _by_layer(rows: dict[int, Row]) -> dict[int, list[tuple[int, Row]]]:
    grouped: dict[int, list[tuple[int, Row]]] = defaultdict(list)
    for record, row in rows.items():
        grouped[row[0]].append((record, row))
    return grouped


_OWN = select(layer.c.id, *(layer.c[name] for name in BOUNDS))
_SIDES = select(layer_side.c.layer_id, layer_side.c.side, *(layer_side.c[n] for n in BOUNDS))
_OF_OBJECT = select(layer.c.id).where(layer.c.object_id == bindparam("object"))
_SOME: BindParameter[int] = bindparam("layers", expanding=True)


def stored_bounds(connection: Connection, object_id: int) -> dict[int, LayerBounds]:
    """The bounds that the database holds for the layers of an object."""
    values = {"object": object_id}
    own = connection.execute(_OWN.where(layer.c.object_id == bindparam("object")), values)
    sides = connection.execute(_SIDES.where(layer_side.c.layer_id.in_(_OF_OBJECT)), values)
    return _stored(own, sides)


def stored_bounds_of(connection: Connection, layers: Collection[int]) -> dict[int, LayerBounds]:
    """The same for these layers; none for those that are not there yet."""
    values = {"layers": list(layers)}
    own = connection.execute(_OWN.where(layer.c.id.in_(_SOME)), values)
    return _stored(own, connection.execute(_SIDES.where(layer_side.c.layer_id.in_(_SOME)), values))


def _stored(own: Iterable[Any], sides: Iterable[Any]) -> dict[int, LayerBounds]:
    stored = {row[0]: LayerBounds(Bounds(*row[1:]), {}) for row in own}
    for layer_id, side, *numbers in sides:
        stored[layer_id].sides[side] = Bounds(*numbers)
    return stored


def check_bounds(connection: Connection, object_ids: list[int]) -> list[str]:
    """Work the bounds of all layers out anew; a sentence for each that is stored otherwise."""
    faults = []
    for object_id in object_ids:
        facts = Facts()
        facts.load(connection, [object_id])
        stored = stored_bounds(connection, object_id)
        for layer_id, worked_out in Chronology(facts).layers():
            if isinstance(worked_out, Contradiction):
                faults.append(f"layer {layer_id}: {worked_out.reason}")
            elif stored[layer_id] != worked_out:
                kept, now = stored[layer_id].whole, worked_out.whole
                faults.append(
                    f"layer {layer_id}: stored bounds {_said(kept)}, worked out {_said(now)}"
                )
    return faults


def _said(b: Bounds) -> str:
    return " ".join(iso(day) or str(day) for day in b[:6])
