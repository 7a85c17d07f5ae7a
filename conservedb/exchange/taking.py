"""From the rows of a folder to records: keys first, then every cell."""

from __future__ import annotations

import uuid
from typing import Any

from sqlalchemy import bindparam, select

from conservedb.exchange.columns import Column, Material, Values
from conservedb.exchange.faults import CellProblem
from conservedb.exchange.files import Table
from conservedb.exchange.lists import ListColumn
from conservedb.exchange.record import Record, chunks
from conservedb.exchange.stored import links_of
from conservedb.exchange.subject import Subject
from conservedb.exchange.taking_keys import TakingKeys
from conservedb.store.log_rows import parse


class Taking(TakingKeys):
    """Reads the tables of one folder into records; faults are collected, nothing is written."""

    def take(self) -> None:
        """Give every row its record, then read its cells."""
        for table in self.tables:
            self.take_keys(table)
        for table in self.tables:
            self._take_cells(table)

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
            bears_uuid = "uuid" in index and cells[index["uuid"]].strip()
            brought = bears_uuid and record.id in keys.as_shipped(subject.name)
            record.whole = bool(kept and (brought or self._whole))
            self._read(table, record, plan, kept)
            self._read_lists(table, record, lists, kept)
            self._name(subject, record)
        self._tell_what_gave_way(subject)
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
            if (not cell or cell.isspace()) and not (record.whole and position >= 0):
                values.extend(blank if kept is None else kept[start : start + len(blank)])
                continue
            try:
                parsed = column.parse(cell, keys) if cell.strip() else blank
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
        shown = column.show(kept, self.keys)
        mere_words = kept[-1] if kept[0] is None else shown
        if isinstance(column, Material) and cell.strip() in (shown, mere_words):
            # the same word, which later records would resolve: what is kept stays
            start = len(record.values) - len(kept)
            record.values[start:] = kept
            return
        if self._replaces(table.subject, record, column, kept == column.blank):
            return
        self._differs(table, record, column.name, cell, shown)

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
            if not cell.strip() and not record.whole:
                continue
            try:
                items = column.parse(cell, self.keys)
            except CellProblem as problem:
                for one in column.problems(cell, self.keys) or [problem]:
                    self.fault(table, record.row, column.name, one.value or cell, one)
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
        if self._replaces(table.subject, record, column, not kept):
            return True
        self._differs(table, record, column.name, cell, column.show(kept, self.keys))
        return False

    def _replaces(
        self, subject: Subject, record: Record, column: Column | ListColumn, blank: bool
    ) -> bool:
        """Whether a cell may replace what is kept: if asked to, if that is blank or as shipped."""
        brought = record.id in self.keys.as_shipped(subject.name)
        if not (self._update or blank or brought):
            return False
        record.changed = True
        record.taken_over |= brought and column.name not in ("uuid", "entered")
        return True

    def _tell_what_gave_way(self, subject: Subject) -> None:
        records = self.records[subject.name].values()
        taken = [record for record in records if record.taken_over and not record.bad]
        if taken and not self._update:
            others = f" and {len(taken) - 1} more" if len(taken) > 1 else ""
            self.keys.line = taken[0].row.first
            reason = f"this row{others}: the department's own in place of what the program brought"
            self.keys.notice("", "", reason, "later versions of the program will not change it")

    def _name(self, subject: Subject, record: Record) -> None:
        """Fill in what is never blank: the made key, the UUID, the day of entry."""
        values, position = record.values, subject.position
        if subject.makes_key and record.new:
            name = subject.key[0]
            values[position[name]] = record.key
        if values[position["uuid"]] is None:
            owner = values[0] if subject.in_object else ""
            name = f"{subject.table.name}/{owner}/{record.key}"
            made = str(uuid.uuid5(self._namespace, name))
            # one that another record bore once, or bears under another key by now, is not given
            # again; what is entered one by one never shares one
            values[position["uuid"]] = str(uuid.uuid4()) if self._used(subject, made) else made
        elif record.new and values[position["uuid"]] in self._withdrawn(subject):
            reason = "was withdrawn from this database before, and is on record again with this row"
            self.keys.notice("", "", reason, "withdraw it again if that was not meant")
        if values[position["entered"]] is None:
            values[position["entered"]] = self._entered

    def _used(self, subject: Subject, identity: str) -> bool:
        """Whether a record bears this UUID, or one that was withdrawn bore it."""
        if self._entering:
            return True
        # asked for every row: built by SQLAlchemy it took more than half of an import's time
        borne = self._connection.exec_driver_sql(
            f"SELECT 1 FROM {subject.table.name} WHERE uuid = ?", (identity,)
        ).first()
        return borne is not None or identity in self._withdrawn(subject)

    def _withdrawn(self, subject: Subject) -> set[str]:
        """The UUIDs of records of a subject that the change log has and the tables do not."""
        if subject.name not in self._gone:
            rows = self._connection.exec_driver_sql(
                "SELECT before FROM change WHERE table_name = ? AND after IS NULL",
                (subject.table.name,),
            )
            self._gone[subject.name] = {parse(row[0])["uuid"] for row in rows}
        return self._gone[subject.name]

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
