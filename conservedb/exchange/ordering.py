"""Order in time: deeds and layers on parts not yet made or lost, impossible comings and goings."""

from __future__ import annotations

from operator import itemgetter

from sqlalchemy import Connection, select

from conservedb.dates import OPEN_START, iso
from conservedb.exchange.columns import Values
from conservedb.exchange.record import Record
from conservedb.exchange.stored import links_of
from conservedb.exchange.subject import Subject
from conservedb.exchange.subjects import BY_NAME, SUBJECTS
from conservedb.exchange.taking import Taking
from conservedb.knowledge.layers import Interval, LayerBounds
from conservedb.recording.bounds import Chronology, Contradiction
from conservedb.recording.facts import FIELDS, Facts

_TABLES = {subject.table.name: subject for subject in SUBJECTS}
_MEND = "mend whichever date is wrong"


class Ordering:
    """Holds the records of a folder, and those of the database, against their order in time.

    `bounds` are those of the layers after the last check; `also_concerned` the objects of the
    database that cite a source whose date changes.
    """

    def __init__(self, connection: Connection, taking: Taking) -> None:
        self._connection = connection
        self._taking = taking
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
        self._deeds(facts, chronology)
        self._arrivals(facts, chronology)
        self.bounds = {}
        for layer_id, worked_out in chronology.layers():
            if isinstance(worked_out, Contradiction):
                self._contradiction(worked_out)
            else:
                self.bounds[layer_id] = worked_out
        return len(self._taking.faults) > before

    def _facts(self, hanging_too: bool) -> Facts:
        facts = Facts()
        facts.load(self._connection, self._objects_in_database())
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
        """Deeds on components certainly not yet made, or certainly lost."""
        subject = BY_NAME["interventions"]
        for record in self._taking.records.get("interventions", {}).values():
            if record.bad or record.id not in facts.rows["intervention"]:
                continue
            when = chronology.deed(record.id)
            components = [c for (c,) in self._listed(subject, record, "components")]
            for (place,) in self._listed(subject, record, "places"):
                row = facts.rows["place"].get(place)
                components += [c for c in row[1:] if c is not None] if row else []
            for component in dict.fromkeys(components):
                reason = self._absence(chronology, component, when)
                if reason and not record.bad:
                    self._taking.charge(subject, record, "date", "", reason, _MEND)
        events = BY_NAME["joint_events"]
        for record in self._taking.records.get("joint_events", {}).values():
            if not record.bad and record.values[events.position["date_derived"]] != "blank":
                self._joint_event(events, record, facts, chronology)

    def _listed(self, subject: Subject, record: Record, name: str) -> list[Values]:
        """The items of a list: those of the row, else those that the database keeps."""
        if name in record.links or record.new:
            return record.links.get(name, [])
        column = next(column for column in subject.lists if column.name == name)
        return links_of(self._connection, subject, column, record.id)

    def _joint_event(
        self, subject: Subject, record: Record, facts: Facts, chronology: Chronology
    ) -> None:
        first = subject.position["date_earliest"]
        when = Interval(*record.values[first : first + 3])
        row = facts.rows["place"].get(record.values[subject.position["place_id"]])
        for component in row[1:] if row else ():
            reason = self._absence(chronology, component, when) if component else ""
            if reason and not record.bad:
                self._taking.charge(subject, record, "date", "", reason, _MEND)

    def _absence(self, chronology: Chronology, component: int, when: Interval) -> str:
        """Why an event cannot have touched a component; "" where it can."""
        made, lost = chronology.made(component), chronology.lost(component)
        name = self._taking.keys.name_of("components", component)
        if made > OPEN_START and when.latest < made:
            return f"lies before {name} was made (not before {iso(made)})"
        if lost is not None and when.earliest > lost.latest:
            return f"lies after {name} was lost (not after {iso(lost.latest)})"
        return ""

    def _arrivals(self, facts: Facts, chronology: Chronology) -> None:
        """Layers that came before what bears them, or after it was lost."""
        subject = BY_NAME["layers"]
        for record in self._taking.records.get("layers", {}).values():
            place = facts.rows["layer"].get(record.id, (None, None))[1]
            row = facts.rows["place"].get(place) if place is not None else None
            if record.bad or row is None:
                continue
            came = chronology.came(record.id)
            for component in row[1:]:
                reason = self._absence(chronology, component, came) if component else ""
                if reason and not record.bad:
                    self._taking.charge(subject, record, "date", "", f"this layer {reason}", _MEND)

    def _contradiction(self, found: Contradiction) -> None:
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
        self._charge_what_was_changed(found)

    def _charge_what_was_changed(self, found: Contradiction) -> None:
        """The order broke because a row above the layer (its deed, part or source) changed."""
        for subject, records in self._taking.present():
            for record in records.values():
                if record.changed and not record.bad:
                    label = self._taking.keys.name_of("layers", found.layer_id)
                    reason = f"with this change layer {label} is impossible: {found.reason}"
                    self._taking.charge(subject, record, "", "", reason, _MEND)
