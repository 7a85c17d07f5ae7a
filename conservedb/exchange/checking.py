"""What no single cell shows: missing parts, circles, impossible orders, and what hangs on them."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Connection, Select, select

from conservedb.exchange.checking_plans import check_plans
from conservedb.exchange.checking_sides import check_sides, tell_odd_units
from conservedb.exchange.columns import Column, Ref
from conservedb.exchange.faults import Fault
from conservedb.exchange.limits import LIMITS
from conservedb.exchange.ordering import Ordering
from conservedb.exchange.record import Record
from conservedb.exchange.subject import Subject
from conservedb.exchange.subjects import BY_NAME
from conservedb.exchange.taking import Taking
from conservedb.records.behaviour import stand_in


class Checking:
    """Checks the records of a folder against each other and against the database."""

    def __init__(self, connection: Connection, taking: Taking) -> None:
        self._connection = connection
        self._taking = taking
        self.faults = taking.faults
        self.dependents: list[Fault] = []
        self.ordering = Ordering(connection, taking)

    def check(self) -> None:
        """Find every fault, mark the refused records, and work out the bounds of the rest."""
        for subject, records in self._taking.present():
            self._required(subject, records)
            self._limits(subject, records)
        self._places()
        check_sides(self._connection, self._taking)
        tell_odd_units(self._taking)
        for subject, records in self._taking.present():
            if subject.parent:
                reason = f"this {subject.singular} would contain itself through its parents"
                self._circles(subject, records, subject.parent, reason)
            if subject.name == "components":
                reason = "this component would be replaced by itself, at once or through others"
                self._circles(subject, records, "replaced_by", reason)
        self._recipes()
        self._stand_ins()
        check_plans(self._connection, self._taking)
        while self.ordering.check(hanging_too=True):
            pass
        self._spread()
        if self.faults:
            while self.ordering.check(hanging_too=False):
                self._spread()

    def _required(self, subject: Subject, records: dict[int, Record]) -> None:
        needed: list[tuple[int, Column]] = [
            (subject.position[column.fields[0]], column)
            for column in subject.plain
            if not subject.table.c[column.fields[0]].nullable
        ]
        lists = [column for column in subject.lists if column.required]
        for record in records.values():
            if record.bad:
                continue
            for position, column in needed:
                if record.values[position] is None:
                    pointed = isinstance(column, Ref) and BY_NAME[column.subject].singular
                    reason = f"names no {pointed}" if pointed else "is blank"
                    self._taking.charge(subject, record, column.name, "", reason, "fill it in")
            for listed in lists:
                if record.new and not record.links.get(listed.name):
                    reason = f"names no {BY_NAME[listed.subject].singular}"
                    self._taking.charge(subject, record, listed.name, "", reason, "fill it in")

    def _limits(self, subject: Subject, records: dict[int, Record]) -> None:
        for limit in LIMITS:
            if limit.subject != subject.name:
                continue
            places = [subject.position[field] for field in limit.fields]
            for record in records.values():
                reason = limit.broken(*(record.values[place] for place in places))
                if reason and not record.bad:
                    self._taking.charge(subject, record, limit.column, "", reason, limit.remedy)

    def _places(self) -> None:
        subject = BY_NAME["places"]
        kind, other = subject.position["kind"], subject.position["other_component_id"]
        for record in self._taking.records.get("places", {}).values():
            values = record.values
            if values[other] is not None and values[kind] != "joint" and not record.bad:
                self._taking.charge(
                    subject,
                    record,
                    "other_component",
                    self._taking.keys.name_of("components", values[other]),
                    "only a joint has a second side",
                    "write kind joint, or blank the cell (a second side that the database has"
                    " already stays: a blank cell never erases)",
                )

    def _circles(
        self, subject: Subject, records: dict[int, Record], column: str, reason: str
    ) -> None:
        """A record that leads back to itself through a pointer into its own file."""
        position = subject.position[f"{column}_id"]
        above = self._stored_pointers(subject, records, f"{column}_id")
        above.update({r.id: r.values[position] for r in records.values() if not r.bad})
        for record in records.values():
            seen, step = {record.id}, above.get(record.id)
            while step is not None and step not in seen:
                seen.add(step)
                step = above.get(step)
            if step == record.id and not record.bad:
                self._taking.charge(
                    subject,
                    record,
                    column,
                    self._taking.keys.name_of(subject.name, record.values[position]),
                    reason,
                    f"mend the {column} of one of them",
                )

    def _stored_pointers(
        self, subject: Subject, records: dict[int, Record], field: str
    ) -> dict[int, int | None]:
        table = subject.table
        statement = select(table.c.id, table.c[field])
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
        whole, part = subject.position["material_id"], subject.position["part_id"]
        pairs = {
            record.id: (record.values[whole], record.values[part])
            for record in self._taking.records.get(subject.name, {}).values()
        }
        table = subject.table.c
        stored = select(table.id, table.material_id, table.part_id)
        self._rounds(
            subject, "part", pairs, stored, "this recipe would contain itself through its parts"
        )

    def _stand_ins(self) -> None:
        """A material that behaves as itself, at once or through others."""
        subject = BY_NAME["materials"]
        pairs = {
            record.id: (record.id, items[0][0])
            for record in self._taking.records.get(subject.name, {}).values()
            if (items := record.links.get("behaves_as"))
        }
        table = stand_in.c
        stored = select(table.material_id, table.material_id, table.as_id)
        self._rounds(subject, "behaves_as", pairs, stored, "this material would behave as itself")

    def _rounds(
        self,
        subject: Subject,
        column: str,
        pairs: dict[int, tuple[int, int]],
        stored: Select[int, int, int],
        reason: str,
    ) -> None:
        """Charge each record whose pair of materials leads back to its first."""
        records = self._taking.records.get(subject.name, {})
        good = {record: pair for record, pair in pairs.items() if not records[record].bad}
        if not good:
            return
        rows = self._connection.execute(stored)
        known = {record: (first, second) for record, first, second in rows}
        leads: dict[int, set[int]] = {}
        for first, second in (known | good).values():
            leads.setdefault(first, set()).add(second)
        for record, (first, second) in good.items():
            if first in _reached(leads, second):
                self._taking.charge(
                    subject,
                    records[record],
                    column,
                    self._taking.keys.name_of("materials", second),
                    reason,
                    "mend one of them",
                )

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
            for subject, records in self._taking.present():
                for record in records.values():
                    if record.refused:
                        continue
                    target = _bad_target(subject, record, bad)
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


def _bad_target(
    subject: Subject, record: Record, bad: set[tuple[str, int]]
) -> tuple[str, int] | None:
    for position, name in subject.pointers:
        if (name, record.values[position]) in bad:
            return name, record.values[position]
    for column in subject.lists:
        for item in record.links.get(column.name, ()):
            if (column.subject, item[0]) in bad:
                return column.subject, item[0]
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
