"""When layers came and went, worked out from exported tables.

What bears on a layer, and how each date is read as an event that has happened, is put together
here anew, by the words of the package's own descriptions: an event lies not after the day on which
it was recorded; where its date does not say since when, not before the making of what bears it;
where it has no date, it is dated by its intervention. How the order of such events narrows them is
taken from `knowledge/narrowing.py`: `tests/knowledge/test_layer_worlds.py` holds that against
every order that is possible.
"""

from __future__ import annotations

import datetime
from collections import defaultdict
from typing import Any

from conservedb.dates import NEVER, OPEN_START, UNKNOWN_END, UNKNOWN_START
from conservedb.knowledge.narrowing import Interval, LayerFacts, Removal, Sighting, bounds

Row = dict[str, Any]
Losses = dict[str, Interval]


class Bearing:
    """What bears on the layers of some tables."""

    def __init__(self, rows: dict[str, list[Row]], by_id: dict[str, dict[int, Row]]) -> None:
        self._by_id = by_id
        self._places: dict[int, list[int]] = defaultdict(list)
        for row in rows["layer_candidate"]:
            self._places[row["layer_id"]].append(row["place_id"])
        self._removals, self._sightings = (
            _by_layer(rows[name]) for name in ("removal", "sighting")
        )

    def bounds(self, layer: Row) -> dict[str, int]:
        """From when to when a layer may have come, been reduced and gone."""
        removals = self._removals.get(layer["id"], [])
        sightings = self._sightings.get(layer["id"], [])
        one = layer["place_id"]
        places = self._places[layer["id"]] if one is None else [one]
        since = [self._since(self._by_id["place"][place]) for place in places]
        came = self._event(layer, min(since, default=self._made(layer["object_id"])))
        joint = one is not None and self._by_id["place"][one]["kind"] == "joint"
        told = {row["side"] for row in (*removals, *sightings)} - {None}
        side = layer["side"]
        if one is None:
            lost = self._lost_somewhere(places)
        else:
            lost = self._lost(self._by_id["place"][one])
        if joint and side and told <= {side}:
            joint, lost = False, {"": lost[side]} if side in lost else {}
        facts = LayerFacts(
            came,
            [each for row in removals for each in self._removal(row)],
            [self._sighting(row) for row in sightings],
            lost,
            joint,
        )
        return bounds(facts).whole._asdict()

    # -- events ---------------------------------------------------------------------------

    def _event(self, row: Row, floor: int = OPEN_START) -> Interval:
        """A layer's coming or a removal, by its own date or by that of its intervention."""
        deed = self._by_id.get("intervention", {}).get(row["intervention_id"])
        if row["date_derived"] != "blank" or deed is None:
            return _happened(row, "date", self._recorded(row, row["source_id"]), floor)
        paper = row["source_id"] if row["source_id"] is not None else deed["source_id"]
        return _happened(deed, "date", self._recorded(deed, paper), floor)

    def _recorded(self, row: Row, paper: int | None) -> int:
        """The day of the source, else that of the writing down, else that of the entering."""
        source = self._by_id["source"][paper]["date_latest"] if paper is not None else UNKNOWN_END
        days = (source, row.get("recorded_latest", UNKNOWN_END), _entered(row))
        return next(day for day in days if day < UNKNOWN_END)

    def _removal(self, row: Row) -> list[Removal]:
        """Of an extent that nobody recorded a part may have gone, or all, or nothing."""
        when, side = self._event(row), row["side"] or ""
        if row["extent"] is not None:
            return [Removal(when, row["extent"], side)]
        perhaps = when._replace(latest=NEVER)
        return [Removal(perhaps, extent, side) for extent in ("part", "all")]

    def _sighting(self, row: Row) -> Sighting:
        when = _happened(row, "date", self._recorded(row, row["source_id"]))
        return Sighting(when, row["result"] or "not accessible", row["side"] or "")

    # -- what bears them ------------------------------------------------------------------

    def _made(self, number: int) -> int:
        """The earliest making of an object."""
        return int(self._by_id["object"][number]["made_earliest"])

    def _since(self, place: Row) -> int:
        """Since when all that bears a place may have been there."""
        whole = self._made(place["object_id"])
        ids = (place["component_id"], place["other_component_id"])
        own = [self._by_id["component"][one]["made_earliest"] for one in ids if one is not None]
        return max((whole if day <= UNKNOWN_START else day for day in own), default=whole)

    def _lost(self, place: Row) -> Losses:
        """The loss of what bears a place; of a joint that of each side."""
        first, second = place["component_id"], place["other_component_id"]
        joint = place["kind"] == "joint"
        sides = {"A": first, "B": first if second is None else second} if joint else {"": first}
        parts = {side: self._by_id.get("component", {}).get(part) for side, part in sides.items()}
        return {
            side: _happened(part, "lost", _entered(part), part["made_earliest"])
            for side, part in parts.items()
            if part is not None and part["lost_derived"] != "blank"
        }

    def _lost_somewhere(self, places: list[int]) -> Losses:
        """Lost with the one of several places that bears it; surely, where all of them are."""
        whole = []
        for place in (self._by_id["place"][one] for one in places):
            lost = self._lost(place)
            if len(lost) == (2 if place["kind"] == "joint" else 1):
                ends = lost.values()
                whole.append((max(i.earliest for i in ends), max(i.latest for i in ends)))
        if not whole:
            return {}
        latest = max(end for _, end in whole) if len(whole) == len(places) else NEVER
        return {"": Interval(min(start for start, _ in whole), latest)}


def _by_layer(rows: list[Row]) -> dict[int, list[Row]]:
    found: dict[int, list[Row]] = defaultdict(list)
    for row in rows:
        found[row["layer_id"]].append(row)
    return found


def _entered(row: Row) -> int:
    return datetime.date.fromisoformat(row["entered"]).toordinal()


def _happened(row: Row, name: str, recorded: int, floor: int = OPEN_START) -> Interval:
    """A date as the days of something that has happened; what contradicts it closes nothing."""
    earliest, latest, flags = (row[f"{name}_{part}"] for part in ("earliest", "latest", "flags"))
    if latest >= UNKNOWN_END and earliest <= recorded:
        latest = recorded
    if earliest <= _entered(row) < latest:
        latest = _entered(row)
    if earliest <= UNKNOWN_START and earliest < floor <= latest:
        earliest = floor
    return Interval(earliest, latest, flags)
