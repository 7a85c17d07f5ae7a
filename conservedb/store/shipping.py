"""Putting the shipped reference tables into a database, and bringing them up to date there.

The table `shipped` remembers each record as it was put in. One that is still so follows the
next edition; one that the department has changed by then is the department's, and stays.
"""

from __future__ import annotations

import sqlite3
import uuid
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any, NamedTuple

from conservedb.reference.edition import EDITION
from conservedb.reference.tables import SUBJECTS, rows
from conservedb.store.shipped_shape import (
    SHAPES,
    Fields,
    Ids,
    Links,
    Shape,
    canonical,
    content_fields,
    fields_of,
    key_fields,
    key_of,
    links_of,
    present,
)

_NAMESPACE = uuid.UUID("0f1c5a2e-8d0b-4f0c-9f55-3f4d2b7a6c11")
_BESIDE = "shipped-"
_NAMED = 3
"""So many keys of a subject are named in the sentence; the others are counted."""


@dataclass
class Shipped:
    """What taking an edition in did. `beside` and `taken` are keys, by subject, not free."""

    edition: str
    added: int = 0
    updated: int = 0
    changed: int = 0
    beside: dict[str, list[str]] = field(default_factory=dict)
    taken: dict[str, list[str]] = field(default_factory=dict)

    def sentence(self) -> str:
        """What was done, for the person who opened the file."""
        parts = [
            f"reference tables of edition {self.edition}: records added {self.added}, brought up"
            f" to date {self.updated}"
        ]
        if self.changed:
            parts.append(f"left as they are, because the department changed them: {self.changed}")
        if self.beside:
            parts.append(
                f"{_listed(self.beside)}: these keys are the department's own, so that the shipped"
                f" records are called {_BESIDE}KEY; name one of them under behaves_as in"
                " materials.csv where yours behaves as it does"
            )
        if self.taken:
            parts.append(f"{_listed(self.taken)}: the department's own were kept")
        return "; ".join(parts)


def _listed(keys: dict[str, list[str]]) -> str:
    return "; ".join(
        f"{subject} {', '.join(of_it[:_NAMED])}"
        + (f" and {len(of_it) - _NAMED} more" if len(of_it) > _NAMED else "")
        for subject, of_it in keys.items()
    )


class _Put(NamedTuple):
    """A shipped row and the record that it goes into.

    `was` is the remembered content: None where the record is new, "" where the department has
    brought it in itself, from the export of another database.
    """

    row: Mapping[str, str]
    id: int
    key: tuple[Any, ...]
    uuid: str
    was: str | None


class _Ready(NamedTuple):
    """A record to be written."""

    put: _Put
    fields: Fields
    links: Links


def ship(raw: sqlite3.Connection) -> Shipped | None:
    """Take the edition of this program in, inside the caller's transaction.

    Returns:
        What was done; None where the database has this edition, or a newer one, already.
    """
    (edition,) = raw.execute("SELECT edition FROM database").fetchone()
    if edition is not None and edition >= EDITION:
        return None
    raw.execute("PRAGMA defer_foreign_keys=ON")  # a class may stand before its parent
    report = Shipped(EDITION)
    ids: dict[str, dict[str, int]] = {}
    for subject, shape in SHAPES.items():
        if subject not in SUBJECTS:
            continue
        placing, puts = _Placing(raw, subject, report), []
        bearers = ids.setdefault(shape.table.name, {})
        for row in rows(subject):
            put, bearers[row[shape.key[0]].strip()] = placing.place(row, ids)
            if put is not None:
                puts.append(put)
        _take_in(raw, subject, puts, ids, report)
    raw.execute("UPDATE database SET edition = ?", (EDITION,))
    return report


def as_shipped(raw: sqlite3.Connection, subject: str) -> dict[int, str]:
    """The UUIDs, by id, of the records of a subject that are still as the program put them in."""
    if subject not in SHAPES:
        return {}
    now = present(raw, subject)
    identities = raw.execute(
        f"SELECT record_id, uuid, content FROM shipped JOIN {SHAPES[subject].table.name}"
        " ON id = record_id WHERE subject = ?",
        (subject,),
    )
    return {record: one for record, one, content in identities if now[record] == content}


class _Placing:
    """Finds the record of each shipped row of one subject: a known one, else a new one."""

    def __init__(self, raw: sqlite3.Connection, subject: str, report: Shipped) -> None:
        self._subject, self._shape, self._report = subject, SHAPES[subject], report
        table = self._shape.table.name
        names = ", ".join(key_fields(self._shape))
        self._by_key: dict[tuple[Any, ...], int] = {}
        self._by_uuid: dict[str, int] = {}
        for record, identity, *key in raw.execute(f"SELECT id, uuid, {names} FROM {table}"):
            self._by_key[tuple(key)] = self._by_uuid[identity] = record
        memory = "SELECT record_id, content FROM shipped WHERE subject = ?"
        self._memory = dict(raw.execute(memory, (subject,)).fetchall())
        sequence = "SELECT seq FROM sqlite_sequence WHERE name = ?"
        (used,) = raw.execute(sequence, (table,)).fetchone() or (0,)
        self._last = max(used, *self._by_uuid.values(), 0)

    def place(self, row: Mapping[str, str], ids: Ids) -> tuple[_Put | None, int]:
        """Where a row goes, if it does; and the record that bears its key for other rows."""
        key = key_of(self._shape, row, ids)
        label = "/".join(row[header].strip() for header in self._shape.key)
        prefix = ""
        while True:
            if prefix:
                key = (prefix + label,)
            identity = str(uuid.uuid5(_NAMESPACE, f"{self._subject}/{prefix}{label}"))
            bearer = self._by_key.get(key)
            found = bearer if bearer in self._memory else self._by_uuid.get(identity)
            if found is not None:
                return _Put(row, found, key, identity, self._memory.get(found, "")), found
            if bearer is None:
                self._last += 1
                self._by_key[key] = self._last
                if prefix:
                    self._report.beside.setdefault(self._subject, []).append(label)
                return _Put(row, self._last, key, identity, None), self._last
            if not self._shape.beside:
                self._report.taken.setdefault(self._subject, []).append(label)
                return None, bearer
            prefix += _BESIDE


def _take_in(
    raw: sqlite3.Connection, subject: str, puts: list[_Put], ids: Ids, report: Shipped
) -> None:
    """Write the new records and those that the department has left as they were."""
    shape = SHAPES[subject]
    found = [(subject, put.id) for put in puts if put.was == ""]
    raw.executemany("INSERT OR IGNORE INTO shipped VALUES (?, ?, '')", found)
    now = present(raw, subject)
    new: list[_Ready] = []
    renewed: list[_Ready] = []
    memory: list[tuple[str, int, str]] = []
    for put in puts:
        fields = fields_of(shape, put.row, ids) | dict(zip(key_fields(shape), put.key, strict=True))
        links = links_of(shape, put.row, ids)
        content = canonical(fields, links)
        held = now.get(put.id)
        if put.was is None:
            new.append(_Ready(put, fields, links))
        elif held == put.was != content:
            renewed.append(_Ready(put, fields, links))
        elif held != content:
            report.changed += put.was != content
            continue
        memory.append((subject, put.id, content))
    _insert(raw, shape, new)
    _update(raw, shape, renewed)
    raw.executemany("INSERT OR REPLACE INTO shipped VALUES (?, ?, ?)", memory)
    report.added += len(new)
    report.updated += len(renewed)


def _insert(raw: sqlite3.Connection, shape: Shape, ready: list[_Ready]) -> None:
    names = ("id", "uuid", "entered", *content_fields(shape))
    marks = ", ".join("?" * len(names))
    raw.executemany(
        f"INSERT INTO {shape.table.name} ({', '.join(names)}) VALUES ({marks})",
        [(one.put.id, one.put.uuid, EDITION, *one.fields.values()) for one in ready],
    )
    _insert_links(raw, shape, ready)


def _update(raw: sqlite3.Connection, shape: Shape, ready: list[_Ready]) -> None:
    names = ", ".join(f"{name} = ?" for name in content_fields(shape))
    raw.executemany(
        f"UPDATE {shape.table.name} SET {names} WHERE id = ?",
        [(*one.fields.values(), one.put.id) for one in ready],
    )
    for listed in shape.lists:
        raw.executemany(
            f"DELETE FROM {listed.table} WHERE {listed.owner} = ?", [(r.put.id,) for r in ready]
        )
    _insert_links(raw, shape, ready)


def _insert_links(raw: sqlite3.Connection, shape: Shape, ready: list[_Ready]) -> None:
    for listed in shape.lists:
        names = (listed.owner, *listed.fields, *listed.ordered)
        marks = ", ".join("?" * len(names))
        raw.executemany(
            f"INSERT INTO {listed.table} ({', '.join(names)}) VALUES ({marks})",
            [
                (one.put.id, *item, *((place,) if listed.ordered else ()))
                for one in ready
                for place, item in enumerate(one.links[listed.header])
            ],
        )
