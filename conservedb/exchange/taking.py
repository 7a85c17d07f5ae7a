"""From the rows of a folder to records: keys first, then every cell."""

from __future__ import annotations

import uuid
from typing import Any

from sqlalchemy import Connection, bindparam, select

from conservedb.exchange.columns import Column, ListColumn, Material, Values
from conservedb.exchange.faults import CellProblem, Fault
from conservedb.exchange.files import Row, Table
from conservedb.exchange.keys import KeyBook
from conservedb.exchange.record import Record, chunks, made_key
from conservedb.exchange.stored import links_of
from conservedb.exchange.subject import Subject
from conservedb.store.keys import fold


class Taking:
    """Reads the tables of one folder into records; faults are collected, nothing is written."""

    def __init__(
        self, connection: Connection, tables: list[Table], *, update: bool, entered: str
    ) -> None:
        self._connection = connection
        self._update = update
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

    def take(self) -> None:
        """Give every row its record, then read its cells."""
        for table in self.tables:
            self._take_keys(table)
        for table in self.tables:
            self._take_cells(table)

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

    def _take_keys(self, table: Table) -> None:
        subject, keys = table.subject, self.keys
        self._load_keys(subject)
        records = self.records[subject.name] = {}
        index = {header: position for position, header in enumerate(table.headers)}
        key_columns = [c for c in subject.plain if c.name in subject.key]
        self._take_malformed(table, index, key_columns)
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
            records[record] = Record(record, row, key, known is None)
            self._make_names_known(subject, record, row, index)

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

    def _load_keys(self, subject: Subject) -> None:
        if subject.name not in ("terms", "material_parts", "statements"):
            return
        names = [column.fields[0] for column in subject.plain if column.name in subject.key]
        statement = select(subject.table.c.id, *(subject.table.c[name] for name in names))
        for record, *key in self._connection.execute(statement):
            self.keys.ids[subject.name][tuple(key) if len(key) > 1 else key[0]] = record

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
        position = index.get("aliases", -1)
        if position >= 0:
            column = next(c for c in subject.lists if c.name == "aliases")
            for _, folded in column.parse(row.cells[position], self.keys):
                self.keys.call(subject.name, record, folded)

    # -- cells --------------------------------------------------------------------------

    def _take_cells(self, table: Table) -> None:
        subject, keys = table.subject, self.keys
        index = {header: position for position, header in enumerate(table.headers)}
        plan = [(index.get(column.names[0], -1), column, column.blank) for column in subject.plain]
        lists = [(index[c.name], c) for c in subject.lists if c.name in index]
        needs_row = subject.name == "statements"
        keys.file = subject.file
        stored = self._stored(subject)
        for record in self.records[subject.name].values():
            cells = record.row.cells
            if record.bad:  # malformed: known by its key only
                record.values = [None] * len(subject.fields)
                continue
            keys.line = record.row.first
            if needs_row:
                keys.row = dict(zip(table.headers, cells, strict=True))
            if subject.in_object:
                keys.object_id = self._objects[cells[index["object"]].strip()]
                record.values.append(keys.object_id)
            kept = stored.get(record.id)
            self._read(table, record, plan, kept)
            self._read_lists(table, record, lists, kept)
            self._name(subject, record)
        self._classify(subject)

    def _read(
        self,
        table: Table,
        record: Record,
        plan: list[tuple[int, Column, Values]],
        kept: tuple[Any, ...] | None,
    ) -> None:
        values, keys, cells = record.values, self.keys, record.row.cells
        for position, column, blank in plan:
            cell = cells[position] if position >= 0 else ""
            start = len(values)
            if not cell or cell.isspace():
                values.extend(blank if kept is None else kept[start : start + len(blank)])
                continue
            try:
                parsed = column.parse(cell, keys)
            except CellProblem as problem:
                name, value = problem.column or column.name, problem.value
                value = value or ("" if problem.column else cell)
                self.fault(table, record.row, name, value, problem)
                record.bad = True
                values.extend(blank)
                continue
            values.extend(parsed)
            if kept is not None:
                was = kept[start : start + len(parsed)]
                self._compare(table, record, column, cell, was, parsed)

    def _compare(
        self,
        table: Table,
        record: Record,
        column: Column,
        cell: str,
        kept: tuple[Any, ...],
        parsed: Values,
    ) -> None:
        """Same key: the same cell is nothing; another is a fault unless it shall replace it."""
        if kept == parsed or column.name in table.subject.key:
            return
        if isinstance(column, Material) and column.show(kept, self.keys) == cell.strip():
            # the same word, which later records would resolve: what is kept stays
            start = len(record.values) - len(kept)
            record.values[start:] = kept
            return
        if self._update or kept == column.blank:
            record.changed = True
            return
        self._differs(table, record, column.name, cell, column.show(kept, self.keys))

    def _differs(self, table: Table, record: Record, name: str, cell: str, kept: str) -> None:
        record.bad = True
        problem = CellProblem(
            f'the database has "{kept}" for this {table.subject.singular}',
            "to replace it, import with --update; to keep it, blank the cell",
        )
        self.fault(table, record.row, name, cell, problem)

    def _read_lists(
        self,
        table: Table,
        record: Record,
        lists: list[tuple[int, ListColumn]],
        kept: tuple[Any, ...] | None,
    ) -> None:
        subject = table.subject
        singles = [column for column in subject.lists if column.single]
        first = len(record.values)
        record.values.extend(kept[first:] if kept is not None else [None] * len(singles))
        for position, column in lists:
            cell = record.row.cells[position]
            if not cell or cell.isspace():
                continue
            try:
                items = column.parse(cell, self.keys)
            except CellProblem as problem:
                self.fault(table, record.row, column.name, problem.value or cell, problem)
                record.bad = True
                continue
            if kept is not None and not self._new_list(table, record, column, cell, items):
                continue
            if column.single:
                place = subject.position[column.single]
                record.values[place] = items[0][0] if len(items) == 1 else None
                items = [] if len(items) == 1 else items
            record.links[column.name] = items

    def _new_list(
        self, table: Table, record: Record, column: ListColumn, cell: str, items: list[Values]
    ) -> bool:
        """Whether a list for a known record differs and may replace what is kept."""
        kept = links_of(self._connection, table.subject, column, record.id)
        if kept == items:
            return False
        if self._update or not kept:
            record.changed = True
            return True
        self._differs(table, record, column.name, cell, column.show(kept, self.keys))
        return False

    def _name(self, subject: Subject, record: Record) -> None:
        """Fill in what is never blank: the made key, the UUID, the day of entry."""
        values, position = record.values, subject.position
        if subject.makes_key and record.new:
            name = subject.key[0]
            values[position[name]] = record.key
        if values[position["uuid"]] is None:
            owner = values[0] if subject.in_object else ""
            name = f"{subject.table.name}/{owner}/{record.key}"
            values[position["uuid"]] = str(uuid.uuid5(self._namespace, name))
        if values[position["entered"]] is None:
            values[position["entered"]] = self._entered

    def _classify(self, subject: Subject) -> None:
        if subject.name == "materials":
            place = subject.position["class_id"]
            for record in self.records[subject.name].values():
                self.keys.classify(record.id, record.values[place])
        elif subject.name == "material_classes":
            place = subject.position["parent_id"]
            for record in self.records[subject.name].values():
                self.keys.put_under(record.id, record.values[place])

    def _stored(self, subject: Subject) -> dict[int, tuple[Any, ...]]:
        """What the database holds for the records that are not new."""
        known = [record.id for record in self.records[subject.name].values() if not record.new]
        if not known:
            return {}
        table = subject.table
        columns = [table.c[field] for field in subject.fields]
        statement = select(table.c.id, *columns).where(
            table.c.id.in_(bindparam("ids", expanding=True))
        )
        stored: dict[int, tuple[Any, ...]] = {}
        for some in chunks(known, 500):
            for row in self._connection.execute(statement, {"ids": some}):
                stored[row[0]] = tuple(row[1:])
        return stored


def _culprit(problem: CellProblem, key: str, row: Row, index: dict[str, int]) -> tuple[str, str]:
    column = problem.column or key
    return column, row.cells[index[column]] if column in index else ""
