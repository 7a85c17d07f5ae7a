"""What no single cell shows: missing parts, circles, impossible orders, and what hangs on them."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Connection, select

from conservedb.exchange.columns import Column, Ref
from conservedb.exchange.faults import Fault
from conservedb.exchange.ordering import Ordering
from conservedb.exchange.record import Record
from conservedb.exchange.subject import Subject
from conservedb.exchange.subjects import BY_NAME
from conservedb.exchange.taking import Taking


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
        self._places()
        for subject, records in self._taking.present():
            if subject.parent:
                self._circles(subject, records)
        self._recipes()
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
            if isinstance(column, Ref) and not subject.table.c[column.fields[0]].nullable
        ]
        if subject.name == "statements":
            needed += [(subject.position["subject"], subject.plain[1])]
        for record in records.values():
            for position, column in needed:
                if record.values[position] is None and not record.bad:
                    what = BY_NAME[column.subject].singular if isinstance(column, Ref) else "table"
                    self._taking.charge(
                        subject, record, column.name, "", f"names no {what}", "fill it in"
                    )

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

    def _circles(self, subject: Subject, records: dict[int, Record]) -> None:
        """A part that contains itself through its parents."""
        position = subject.position[f"{subject.parent}_id"]
        above = self._stored_parents(subject, records)
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
                    subject.parent,
                    self._taking.keys.name_of(subject.name, record.values[position]),
                    f"this {subject.singular} would contain itself through its parents",
                    "mend the parent of one of them",
                )

    def _stored_parents(
        self, subject: Subject, records: dict[int, Record]
    ) -> dict[int, int | None]:
        table = subject.table
        statement = select(table.c.id, table.c[f"{subject.parent}_id"])
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
                self._taking.charge(
                    subject, record, "part", name, reason, "mend one of the recipes"
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
