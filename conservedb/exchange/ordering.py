"""Order in time: deeds and layers on parts not yet made or lost, impossible comings and goings."""

from __future__ import annotations

from collections.abc import Iterable
from operator import itemgetter

from sqlalchemy import Connection, select

from conservedb.dates import OPEN_START, iso
from conservedb.exchange.columns import Values
from conservedb.exchange.stored import links_of
from conservedb.exchange.subjects import BY_NAME, SUBJECTS
from conservedb.exchange.taking import Taking
from conservedb.knowledge.layers import Interval, LayerBounds
from conservedb.recording.bounds import Chronology, Contradiction
from conservedb.recording.facts import FIELDS, Facts, Row
from conservedb.recording.settling import A_FEW

_TABLES = {subject.table.name: subject for subject in SUBJECTS}
_BEHIND_LAYERS = ("objects", "components", "places", "sources", "interventions")
"""Files on whose records the bounds of known layers rest."""
_ON_A_DAY = ("joint_events", "observations", "readings", "samples")
"""Files of what befell, or was found on, a part or place on a day."""
_MEND = "mend whichever date is wrong"
_MEND_OR_SIDE = f"{_MEND}, or name the side of the joint on which it lies"


class Ordering:
    """Holds the records of a folder, and those of the database, against their order in time.

    `bounds` are those of the layers after the last check; `also_concerned` the objects of the
    database that cite a source whose date changes.
    """

    def __init__(self, connection: Connection, taking: Taking) -> None:
        self._connection = connection
        self._taking = taking
        self._parts_change = False
        self.bounds: dict[int, LayerBounds] = {}
        self.also_concerned = self._objects_citing_changed_sources()

    def check(self, *, hanging_too: bool) -> bool:
        """Work out bounds; mark what is impossible. True where something new was refused.

        With the records that hang on refused ones every fault comes to light; without them
        the bounds are those of what can be written. A missing record only widens dates, so
        that it cannot make an order impossible.
        """
        facts = self._facts(hanging_too)
        chronology = Chronology(facts)
        before = len(self._taking.faults)
        self._parts_change = any(
            record.changed and not record.bad
            for name in ("objects", "components", "places")
            for record in self._taking.records.get(name, {}).values()
        )
        self._deeds(facts, chronology)
        self._arrivals(facts, chronology)
        self.bounds = {}
        for layer_id, worked_out in chronology.layers():
            if isinstance(worked_out, Contradiction):
                self._contradiction(worked_out, facts)
            else:
                self.bounds[layer_id] = worked_out
        return len(self._taking.faults) > before

    def _facts(self, hanging_too: bool) -> Facts:
        facts = Facts()
        facts.load(self._connection, self._objects_in_database(), self._layers_concerned())
        for table, fields in FIELDS.items():
            subject = _TABLES[table]
            take = itemgetter(*(subject.position[name] for name in fields))
            rows = facts.rows[table]
            single = len(fields) == 1
            for record in self._taking.records.get(subject.name, {}).values():
                if not (record.bad or (record.hangs and not hanging_too)):
                    row = take(record.values)
                    rows[record.id] = (row,) if single else row
        for record in self._taking.records.get("layers", {}).values():
            places = record.links.get("place")
            taken = record.id in facts.rows["layer"] and not record.bad
            if taken and places is not None:
                facts.candidates.pop(record.id, None)
                if places:
                    facts.candidates[record.id] = tuple(place for (place,) in places)
        return facts

    def _layers_concerned(self) -> set[int] | None:
        """The known layers whose bounds may move; None for all, or very many.

        What is newly recorded moves no layer but those that it is about: nothing known points
        at it.
        """
        for name in _BEHIND_LAYERS:
            known = self._taking.records.get(name, {}).values()
            if any(record.changed and not record.new for record in known):
                return None
        found: set[int | None] = {
            r.id for r in self._taking.records.get("layers", {}).values() if not r.new
        }
        for name in ("removals", "sightings"):
            subject = BY_NAME[name]
            position, was = subject.position["layer_id"], subject.table.c.layer_id
            for record in self._taking.records.get(name, {}).values():
                found.add(record.values[position])
                if not record.new:
                    statement = select(was).where(subject.table.c.id == record.id)
                    found.add(self._connection.execute(statement).scalar())
            if len(found) > A_FEW:
                return None
        return {layer for layer in found if layer is not None}

    def _objects_in_database(self) -> set[int]:
        new = {r.id for r in self._taking.records.get("objects", {}).values() if r.new}
        known = {r.id for r in self._taking.records.get("objects", {}).values() if not r.new}
        return ((self._taking.touched | known) - new) | self.also_concerned

    def _objects_citing_changed_sources(self) -> set[int]:
        changed = [r.id for r in self._taking.records.get("sources", {}).values() if r.changed]
        found: set[int] = set()
        for name in ("interventions", "layers", "removals", "sightings"):
            table = BY_NAME[name].table
            for source in changed:
                rows = self._connection.execute(
                    select(table.c.object_id).where(table.c.source_id == source).distinct()
                )
                found.update(row[0] for row in rows)
        return found

    def _deeds(self, facts: Facts, chronology: Chronology) -> None:
        """Deeds, joint events and findings on parts certainly not yet made, or certainly lost.

        Those that the database holds are looked at too, where a part, place or object of the
        folder changes under them.
        """
        for deed in facts.rows["intervention"]:
            if not self._concerned("interventions", deed):
                continue
            when = chronology.deed(deed)
            components = [c for (c,) in self._listed("interventions", deed, "components")]
            reasons = [self._absence(chronology, [c], when) for c in components]
            for (place,) in self._listed("interventions", deed, "places"):
                bearers = _bearers(facts.rows["place"].get(place))
                reasons.append(self._absence(chronology, bearers, when))
                components += bearers
            self._blame("interventions", deed, components, next(filter(None, reasons), ""))
        for name in _ON_A_DAY:
            self._on_a_day(name, facts, chronology)

    def _on_a_day(self, name: str, facts: Facts, chronology: Chronology) -> None:
        position = BY_NAME[name].position
        dated = position["date_earliest"]
        for record in self._taking.records.get(name, {}).values():
            values = record.values
            if record.bad or values[position["date_derived"]] == "blank":
                continue
            when = Interval(*values[dated : dated + 3])
            bearers = _bearers(facts.rows["place"].get(values[position["place_id"]]))
            part = values[position["component_id"]] if "component_id" in position else None
            alone = [] if part is None else [part]
            for parts in (alone, bearers):
                reason = self._absence(chronology, parts, when)
                if reason:
                    self._blame(name, record.id, parts, reason)
                    break

    def _arrivals(self, facts: Facts, chronology: Chronology) -> None:
        """Layers that came before what bears them, or after it was lost."""
        for layer, row in facts.rows["layer"].items():
            if not self._concerned("layers", layer):
                continue
            places = facts.candidates.get(layer, ()) if row[1] is None else (row[1],)
            bearers = [_bearers(facts.rows["place"].get(place), row[9]) for place in places]
            came = chronology.came(layer)
            reasons = [
                next(filter(None, (self._absence(chronology, [p], came) for p in parts)), "")
                for parts in bearers
            ]
            if reasons and all(reasons):
                parts = [part for some in bearers for part in some]
                remedy = _MEND_OR_SIDE if len(parts) > 1 and not row[9] else _MEND
                self._blame("layers", layer, parts, f"this layer {reasons[0]}", remedy)

    def _absence(self, chronology: Chronology, parts: list[int], when: Interval) -> str:
        """Why an event cannot have touched these parts (the sides of a joint); "" where it can.

        It needs all of them made, and one of them not lost.
        """
        name_of = self._taking.keys.name_of
        losses = []
        for part in parts:
            made, lost = chronology.made(part), chronology.lost(part)
            if made > OPEN_START and when.latest < made:
                name = name_of("components", part)
                return f"lies before {name} was made (not before {iso(made)})"
            if lost is not None and when.earliest > lost.latest:
                losses.append((part, lost))
        if not parts or len(losses) < len(parts):
            return ""
        part, lost = losses[0]
        name = name_of("components", part)
        return f"lies after {name} was lost (not after {iso(lost.latest)})"

    def _concerned(self, name: str, record_id: int) -> bool:
        """Whether a record is of the folder, or may hang on a part that the folder changes."""
        record = self._taking.records.get(name, {}).get(record_id)
        return self._parts_change if record is None else not record.bad

    def _listed(self, name: str, record_id: int, column_name: str) -> list[Values]:
        """The items of a list: those of the row, else those that the database keeps."""
        subject = BY_NAME[name]
        record = self._taking.records.get(name, {}).get(record_id)
        if record is not None and (column_name in record.links or record.new):
            return record.links.get(column_name, [])
        column = next(column for column in subject.lists if column.name == column_name)
        return links_of(self._connection, subject, column, record_id)

    def _blame(
        self, name: str, record_id: int, parts: list[int], reason: str, remedy: str = ""
    ) -> None:
        """Charge the row itself, or the change to a part of the object that it hangs on."""
        if not reason:
            return
        record = self._taking.records.get(name, {}).get(record_id)
        if record is not None:
            if not record.bad:
                self._taking.charge(BY_NAME[name], record, "date", "", reason, remedy or _MEND)
            return
        what = f"{BY_NAME[name].singular} {self._taking.keys.name_of(name, record_id)}"
        self._charge_change(f"with this change {what} is impossible: it {reason}", parts)

    def _charge_change(self, reason: str, parts: Iterable[int]) -> None:
        """Charge the changed component, else the changed place or object, under a record."""
        wanted = set(parts)
        changed = [
            (subject, record)
            for subject, records in self._taking.present()
            for record in records.values()
            if record.changed and not record.bad
        ]
        for names in (("components",), ("places", "objects")):
            for subject, record in changed:
                if subject.name in names and (subject.name != "components" or record.id in wanted):
                    self._taking.charge(subject, record, "", "", reason, _MEND)
                    return

    def _contradiction(self, found: Contradiction, facts: Facts) -> None:
        """Charge the culprit, or whichever row of the folder has a part in it."""
        for table, record_id in ((found.table, found.id), ("layer", found.layer_id)):
            subject = _TABLES[table]
            record = self._taking.records.get(subject.name, {}).get(record_id)
            if record is not None:
                if not record.bad:
                    self._taking.charge(subject, record, "date", "", found.reason, _MEND)
                return
        for name in ("removals", "sightings"):
            subject = BY_NAME[name]
            place = subject.position["layer_id"]
            for record in self._taking.records.get(name, {}).values():
                if record.values[place] == found.layer_id and not record.bad:
                    self._taking.charge(subject, record, "date", "", found.reason, _MEND)
                    return
        self._charge_what_was_changed(found, facts)

    def _charge_what_was_changed(self, found: Contradiction, facts: Facts) -> None:
        """The order broke because a row above the layer (its deed, part or source) changed."""
        above = _above(found.layer_id, facts)
        label = self._taking.keys.name_of("layers", found.layer_id)
        reason = f"with this change layer {label} is impossible: {found.reason}"
        for subject, records in self._taking.present():
            for record in records.values():
                if record.changed and not record.bad and (subject.name, record.id) in above:
                    self._taking.charge(subject, record, "", "", reason, _MEND)


def _bearers(row: Row | None, side: str | None = None) -> list[int]:
    """The components that bear a place, or the one on a side of it."""
    if row is None:
        return []
    _, first, second = row
    if side is not None:
        first, second = (second or first, None) if side == "B" else (first, None)
    return [component for component in (first, second) if component is not None]


def _above(layer: int, facts: Facts) -> set[tuple[str, int]]:
    """Every record, by file and id, on whose dates the bounds of a layer rest."""
    rows = facts.rows
    row = rows["layer"][layer]
    found: set[tuple[str, int | None]] = {("objects", row[0]), ("sources", row[7])}
    deeds = [row[6]]
    for name, deed, source in (("removal", 5, 8), ("sighting", None, 6)):
        for event in rows[name].values():
            if event[0] == layer:
                found.add(("sources", event[source]))
                deeds += [event[deed]] if deed is not None else []
    for deed in deeds:
        found.add(("interventions", deed))
        if deed in rows["intervention"]:
            found.add(("sources", rows["intervention"][deed][3]))
    for place in facts.candidates.get(layer, ()) if row[1] is None else (row[1],):
        found.add(("places", place))
        found.update(("components", part) for part in _bearers(rows["place"].get(place)))
    return {(name, record) for name, record in found if record is not None}
