"""What no single cell shows: missing parts, circles, impossible orders, and what hangs on them."""

from __future__ import annotations

from collections.abc import Iterable
from operator import itemgetter
from typing import Any

from sqlalchemy import Connection, select

from conservedb.dates import OPEN_START, iso
from conservedb.exchange.columns import Column, Ref, Values
from conservedb.exchange.faults import Fault
from conservedb.exchange.statements import FILES
from conservedb.exchange.stored import links_of
from conservedb.exchange.subject import Subject
from conservedb.exchange.subjects import BY_NAME, SUBJECTS
from conservedb.exchange.taking import Record, Taking
from conservedb.knowledge.layers import Interval, LayerBounds
from conservedb.recording.bounds import Chronology, Contradiction
from conservedb.recording.facts import FIELDS, Facts

_TABLES = {subject.table.name: subject for subject in SUBJECTS}


class Checking:
    """Checks the records of a folder against each other and against the database."""

    def __init__(self, connection: Connection, taking: Taking) -> None:
        self._connection = connection
        self._taking = taking
        self.faults = taking.faults
        self.dependents: list[Fault] = []
        self.bounds: dict[int, LayerBounds] = {}
        self.also_concerned: set[int] = set()

    def check(self) -> None:
        """Find every fault, mark the bad records, and work out the bounds of the good layers."""
        for subject, records in self._present():
            self._required(subject, records)
        self._places()
        for subject, records in self._present():
            if subject.parent:
                self._circles(subject, records, f"{subject.parent}_id", "id")
        self._recipes()
        self.also_concerned = self._objects_citing_changed_sources()
        while self._chronology(hanging_too=True):
            pass
        self._spread()
        if self.faults:
            while self._chronology(hanging_too=False):
                self._spread()

    def _present(self) -> Iterable[tuple[Subject, dict[int, Record]]]:
        return [(BY_NAME[name], records) for name, records in self._taking.records.items()]

    def _fault(
        self, subject: Subject, record: Record, column: str, value: str, reason: str, remedy: str
    ) -> None:
        record.bad = True
        self.faults.append(Fault(subject.file, record.row.first, column, value, reason, remedy))

    def _required(self, subject: Subject, records: dict[int, Record]) -> None:
        needed: list[tuple[int, Column]] = [
            (subject.position[column.fields[0]], column)
            for column in subject.plain
            if isinstance(column, Ref) and not subject.table.c[column.fields[0]].nullable
        ]
        if subject.name == "statements":
            needed += [(subject.position["subject"], subject.plain[1])]
        for record in records.values():
            for position, column in needed:
                if record.values[position] is None and not record.bad:
                    what = BY_NAME[column.subject].singular if isinstance(column, Ref) else "table"
                    self._fault(subject, record, column.name, "", f"names no {what}", "fill it in")

    def _places(self) -> None:
        subject = BY_NAME["places"]
        kind, other = subject.position["kind"], subject.position["other_component_id"]
        for record in self._taking.records.get("places", {}).values():
            values = record.values
            if values[other] is not None and values[kind] != "joint" and not record.bad:
                self._fault(
                    subject,
                    record,
                    "other_component",
                    self._taking.keys.name_of("components", values[other]),
                    "only a joint has a second side",
                    "write kind joint, or blank the cell",
                )

    def _circles(
        self, subject: Subject, records: dict[int, Record], parent: str, child: str
    ) -> None:
        """A part that contains itself through its parents."""
        position = subject.position[parent]
        above: dict[int, int | None] = self._stored_parents(subject, parent, records)
        above.update({r.id: r.values[position] for r in records.values() if not r.bad})
        for record in records.values():
            seen, step = {record.id}, above.get(record.id)
            while step is not None and step not in seen:
                seen.add(step)
                step = above.get(step)
            if step == record.id and not record.bad:
                self._fault(
                    subject,
                    record,
                    subject.parent,
                    self._taking.keys.name_of(subject.name, record.values[position]),
                    f"this {subject.singular} would contain itself through its parents",
                    "mend the parent of one of them",
                )

    def _stored_parents(
        self, subject: Subject, parent: str, records: dict[int, Record]
    ) -> dict[int, int | None]:
        table = subject.table
        statement = select(table.c.id, table.c[parent])
        if not subject.in_object:
            return dict(self._connection.execute(statement).all())
        objects = {record.values[0] for record in records.values() if not record.new}
        stored: dict[int, int | None] = {}
        for object_id in objects:
            rows = self._connection.execute(statement.where(table.c.object_id == object_id))
            stored.update(dict(rows.all()))
        return stored

    def _recipes(self) -> None:
        """A recipe that contains itself through its parts."""
        subject = BY_NAME["material_parts"]
        records = self._taking.records.get(subject.name, {})
        if not records:
            return
        whole, part = subject.position["material_id"], subject.position["part_id"]
        parts: dict[int, set[int]] = {}
        stored = self._connection.execute(
            select(subject.table.c.material_id, subject.table.c.part_id)
        )
        for material, inside in [
            *stored,
            *((r.values[whole], r.values[part]) for r in records.values() if not r.bad),
        ]:
            parts.setdefault(material, set()).add(inside)
        for record in records.values():
            if not record.bad and record.values[whole] in _reached(parts, record.values[part]):
                name = self._taking.keys.name_of("materials", record.values[part])
                reason = "this recipe would contain itself through its parts"
                self._fault(subject, record, "part", name, reason, "mend one of the recipes")

    # -- what hangs on bad rows ---------------------------------------------------------

    def _spread(self) -> None:
        """A record that refers to a new record which is refused hangs on it."""
        bad = {
            (name, record.id)
            for name, records in self._taking.records.items()
            for record in records.values()
            if record.refused and record.new
        }
        grown = bool(bad)
        while grown:
            grown = False
            for subject, records in self._present():
                pointers = _pointers(subject)
                for record in records.values():
                    if record.refused:
                        continue
                    target = _bad_target(subject, record, pointers, bad)
                    if target is None:
                        continue
                    record.hangs = grown = True
                    if record.new:
                        bad.add((subject.name, record.id))
                    self._note_dependent(subject, record, *target)

    def _note_dependent(self, subject: Subject, record: Record, name: str, target: int) -> None:
        cause = self._taking.records[name][target]
        self.dependents.append(
            Fault(
                subject.file,
                record.row.first,
                "",
                "",
                f"depends on {name}.csv, line {cause.row.first}, which is refused",
                "mend that row first",
            )
        )

    # -- order in time ------------------------------------------------------------------

    def _chronology(self, *, hanging_too: bool) -> bool:
        """Work out bounds; mark what is impossible. True where something new was refused.

        With the records that hang on refused ones every fault comes to light; without them
        the bounds are those of what can be written. A missing record only widens dates, so
        that it cannot make an order impossible.
        """
        facts = self._facts(hanging_too)
        chronology = Chronology(facts)
        before = len(self.faults)
        self._deeds(facts, chronology)
        self._arrivals(facts, chronology)
        self.bounds = {}
        for layer_id, worked_out in chronology.layers():
            if isinstance(worked_out, Contradiction):
                self._contradiction(worked_out)
            else:
                self.bounds[layer_id] = worked_out
        return len(self.faults) > before

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
                    self._fault(subject, record, "date", "", reason, _MEND)
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
                self._fault(subject, record, "date", "", reason, _MEND)

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
                    self._fault(subject, record, "date", "", f"this layer {reason}", _MEND)

    def _contradiction(self, found: Contradiction) -> None:
        """Charge the culprit, or whichever row of the folder has a part in it."""
        for table, record_id in ((found.table, found.id), ("layer", found.layer_id)):
            subject = _TABLES[table]
            record = self._taking.records.get(subject.name, {}).get(record_id)
            if record is not None:
                if not record.bad:
                    self._fault(subject, record, "date", "", found.reason, _MEND)
                return
        for name in ("removals", "sightings"):
            subject = BY_NAME[name]
            place = subject.position["layer_id"]
            for record in self._taking.records.get(name, {}).values():
                if record.values[place] == found.layer_id and not record.bad:
                    self._fault(subject, record, "date", "", found.reason, _MEND)
                    return
        self._charge_what_was_changed(found)

    def _charge_what_was_changed(self, found: Contradiction) -> None:
        """The order broke because a row above the layer (its deed, part or source) changed."""
        for subject, records in self._present():
            for record in records.values():
                if record.changed and not record.bad:
                    label = self._taking.keys.name_of("layers", found.layer_id)
                    reason = f"with this change layer {label} is impossible: {found.reason}"
                    self._fault(subject, record, "", "", reason, _MEND)


_MEND = "mend whichever date is wrong"


def _pointers(subject: Subject) -> list[tuple[int, str]]:
    pointers = [
        (subject.position[column.fields[0]], column.subject)
        for column in subject.plain
        if isinstance(column, Ref)
    ]
    if subject.in_object:
        pointers.append((0, "objects"))
    for field, target in (
        ("material_id", "materials"),
        ("material_class_id", "material_classes"),
        ("place_id", "places"),
    ):
        if field in subject.position:
            pointers.append((subject.position[field], target))
    if subject.name == "statements":
        pointers += [(subject.position[f"{name}_id"], file) for name, file in FILES.items()]
    return pointers


_LISTED = {
    "bridges": "places",
    "people": "people",
    "components": "components",
    "places": "places",
    "place": "places",
}


def _bad_target(
    subject: Subject,
    record: Record,
    pointers: list[tuple[int, str]],
    bad: set[tuple[str, int]],
) -> tuple[str, int] | None:
    for position, name in pointers:
        if (name, record.values[position]) in bad:
            return name, record.values[position]
    for column, items in record.links.items():
        name = _LISTED.get(column, "")
        for item in items:
            if (name, item[0]) in bad:
                return name, item[0]
    return None


def _reached(parts: dict[int, set[int]], start: int) -> set[int]:
    """Every material inside `start`, itself included."""
    seen: set[int] = set()
    waiting: list[Any] = [start]
    while waiting:
        material = waiting.pop()
        if material not in seen:
            seen.add(material)
            waiting.extend(parts.get(material, ()))
    return seen
