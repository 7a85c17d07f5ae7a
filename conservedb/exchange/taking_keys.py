"""From the rows of a folder to records: which record each row is about, by its key."""

from __future__ import annotations

import uuid
from typing import Any

from sqlalchemy import Connection

from conservedb.exchange.columns import Column
from conservedb.exchange.faults import CellProblem, Fault
from conservedb.exchange.files import Row, Table
from conservedb.exchange.keys import KeyBook
from conservedb.exchange.record import Record, made_key
from conservedb.exchange.subject import Subject
from conservedb.store.keys import fold


class TakingKeys:
    """Gives every row of a folder its record; faults are collected, nothing is written."""

    def __init__(
        self,
        connection: Connection,
        tables: list[Table],
        *,
        update: bool,
        entered: str,
        whole: bool = False,
        entering: bool = False,
    ) -> None:
        self._connection = connection
        self._update = update
        self._whole = whole
        self._entering = entering
        self._gone: dict[str, set[str]] = {}
        self._entered = entered
        self._namespace = uuid.UUID(
            connection.exec_driver_sql("SELECT uuid FROM database").scalar_one()
        )
        self.tables = tables
        self.keys = KeyBook(connection)
        self.faults: list[Fault] = [fault for table in tables for fault in table.faults]
        self.records: dict[str, dict[int, Record]] = {}
        self.refused: dict[str, list[Row]] = {t.subject.name: [] for t in tables}
        self.repeated: dict[str, int] = {t.subject.name: 0 for t in tables}
        self.touched: set[int] = set()
        self._objects: dict[str, int] = {}

    def fault(self, table: Table, row: Row, column: str, value: str, problem: CellProblem) -> None:
        """Note a fault of a row."""
        self.faults.append(
            Fault(table.subject.file, row.first, column, value, problem.reason, problem.remedy)
        )

    def charge(
        self, subject: Subject, record: Record, column: str, value: str, reason: str, remedy: str
    ) -> None:
        """Note a fault of a record, which is then refused."""
        record.bad = True
        self.faults.append(Fault(subject.file, record.row.first, column, value, reason, remedy))

    def present(self) -> list[tuple[Subject, dict[int, Record]]]:
        """The subjects of the folder with their records, in the order of `SUBJECTS`."""
        return [(table.subject, self.records[table.subject.name]) for table in self.tables]

    # -- keys ---------------------------------------------------------------------------

    def take_keys(self, table: Table) -> None:
        """Find or make the record of every row of a file."""
        subject, keys = table.subject, self.keys
        keys.load_keys(subject)
        records = self.records[subject.name] = {}
        index = {header: position for position, header in enumerate(table.headers)}
        key_columns = [c for c in subject.plain if c.name in subject.key]
        self._take_malformed(table, index, key_columns)
        renamed = self._rename(table, index, key_columns)
        for row in table.rows:
            try:
                keys.object_id = self._object_of(row, index) if subject.in_object else 0
                key, label = self._key(subject, row, index, key_columns)
            except CellProblem as problem:
                name = subject.key[-1]
                self.fault(table, row, *_culprit(problem, name, row, index), problem)
                self.refused[subject.name].append(row)
                continue
            ids = keys.ids_of(subject, keys.object_id)
            known = ids.get(key)
            if known is not None and known in records:
                self._repeat(table, row, label, records[known])
                continue
            record = known if known is not None else keys.new_id(subject)
            ids[key] = record
            keys.label(subject.name, record, label)
            records[record] = Record(record, row, key, known is None, changed=record in renamed)
            self._make_names_known(subject, record, row, index)

    def _rename(self, table: Table, index: dict[str, int], key_columns: list[Column]) -> set[int]:
        """Let what the program brought bear the keys that the folder has for the same UUIDs."""
        subject, renamed = table.subject, set()
        brought = {one: record for record, one in self.keys.as_shipped(subject.name).items()}
        for row in table.rows if brought and "uuid" in index else ():
            record = brought.get(row.cells[index["uuid"]].strip())
            if record is None:
                continue
            ids = self.keys.ids_of(subject, 0)
            try:
                key, _ = self._key(subject, row, index, key_columns)
            except CellProblem:
                continue  # it is told where the row is taken
            if key not in ids:
                for old in [one for one, bearer in ids.items() if bearer == record]:
                    del ids[old]  # another row may bear it now
                ids[key] = record
                renamed.add(record)
        return renamed

    def _take_malformed(
        self, table: Table, index: dict[str, int], key_columns: list[Column]
    ) -> None:
        """Rows that cannot be read but whose key can: so that others hang on them by name."""
        subject, keys = table.subject, self.keys
        wanted = [index[name] for name in ("object", *subject.key) if name in index]
        for row in table.malformed:
            if not wanted or max(wanted) >= len(row.cells):
                self.refused[subject.name].append(row)
                continue
            try:
                keys.object_id = self._object_of(row, index) if subject.in_object else 0
                key, label = self._key(subject, row, index, key_columns)
            except CellProblem:
                self.refused[subject.name].append(row)
                continue
            ids = keys.ids_of(subject, keys.object_id)
            if key in ids:
                self.refused[subject.name].append(row)
                continue
            record = ids[key] = keys.new_id(subject)
            keys.label(subject.name, record, label)
            self.records[subject.name][record] = Record(record, row, key, True, bad=True)

    def _object_of(self, row: Row, index: dict[str, int]) -> int:
        number = row.cells[index["object"]].strip()
        if not number:
            raise CellProblem("names no object", "write the object's number", "object")
        object_id = self._objects.get(number)
        if object_id is None:
            try:
                object_id = self._objects[number] = self.keys.find("objects", number)
            except CellProblem as problem:
                raise CellProblem(problem.reason, problem.remedy, "object") from problem
        if object_id not in self.touched:
            self.touched.add(object_id)
            self.keys.load_object(object_id)
        return object_id

    def _key(
        self, subject: Subject, row: Row, index: dict[str, int], columns: list[Column]
    ) -> tuple[Any, str]:
        """The key as compared, and as written."""
        if len(columns) > 1:
            parsed = [self._key_part(column, row, index) for column in columns]
            return tuple(parsed), str(parsed[-1])
        position = index.get(columns[0].name, -1)
        text = row.cells[position].strip() if position >= 0 else ""
        if not text:
            if not subject.makes_key:
                raise CellProblem("is blank", "every row needs its key", columns[0].name)
            text = made_key(subject, row.cells, index)
        return (fold(text) if subject.folded else text), text

    def _key_part(self, column: Column, row: Row, index: dict[str, int]) -> object:
        cell = row.cells[index[column.name]]
        if not cell.strip():
            raise CellProblem("is blank", "every row needs its key", column.name)
        try:
            return column.parse(cell, self.keys)[0]
        except CellProblem as problem:
            raise CellProblem(problem.reason, problem.remedy, column.name) from problem

    def _repeat(self, table: Table, row: Row, label: str, first: Record) -> None:
        """The key stands twice in the file: the same row again is nothing, another a fault."""
        name = table.subject.name
        if row.cells == first.row.cells:
            self.repeated[name] += 1
            self.keys.file, self.keys.line = table.subject.file, row.first
            column = table.subject.key[-1]
            reason = f"is the same row as line {first.row.first}"
            self.keys.notice(column, label, reason, "it was counted once")
            return
        problem = CellProblem(
            f"stands for another {table.subject.singular} on line {first.row.first} already",
            "give one of them another key",
        )
        self.fault(table, row, table.subject.key[-1], label, problem)
        self.refused[name].append(row)

    def _make_names_known(
        self, subject: Subject, record: int, row: Row, index: dict[str, int]
    ) -> None:
        """Names and aliases of people, materials and classes, before cells mention them."""
        if subject.name not in ("people", "materials", "material_classes"):
            return
        position = index.get("name", -1)
        if position >= 0:
            self.keys.call(subject.name, record, fold(row.cells[position]))
        for column in subject.lists:
            position = index.get(column.name, -1)
            if position >= 0 and "alias_folded" in column.fields:
                for _, folded in column.parse(row.cells[position], self.keys):
                    self.keys.call(subject.name, record, folded)


def _culprit(problem: CellProblem, key: str, row: Row, index: dict[str, int]) -> tuple[str, str]:
    column = problem.column or key
    return column, row.cells[index[column]] if column in index else ""
