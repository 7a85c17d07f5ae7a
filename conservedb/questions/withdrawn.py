"""What was withdrawn of an object: who took it out of every answer, when and why."""

from __future__ import annotations

from collections.abc import Iterator, Set
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection

from conservedb.questions.answers import FieldChange
from conservedb.questions.log import told
from conservedb.questions.naming import find_object
from conservedb.questions.rewordings import in_words
from conservedb.records.every import metadata
from conservedb.store.labels import described
from conservedb.store.log_rows import parse

_GONE = (
    "SELECT c.record_id, c.before, s.id, s.who, s.at, coalesce(s.reason, '')"
    " FROM change c JOIN change_set s ON s.id = c.set_id"
    " WHERE c.table_name = ? AND c.after IS NULL ORDER BY c.id DESC"
)


@dataclass(frozen=True, slots=True)
class Withdrawn:
    """A record that is in no answer any more; `fields` are what it said, under `before`."""

    what: str
    when: str
    who: str
    reason: str
    set_number: int
    fields: tuple[FieldChange, ...]


@dataclass(frozen=True, slots=True)
class WithdrawnAnswer:
    """What was withdrawn of an object, the latest first."""

    object: str
    title: str
    records: tuple[Withdrawn, ...]


def withdrawn(connection: Connection, number: str) -> WithdrawnAnswer:
    """Records of an object that were withdrawn or taken back, and are not in force again.

    Raises:
        NoSuch: there is no such object.
    """
    owner = find_object(connection, number)
    found: dict[tuple[str, int], tuple[int, Withdrawn]] = {}
    tables = [name for name, one in metadata.tables.items() if "uuid" in one.c]
    owned = sorted(name for name in tables if "object_id" in metadata.tables[name].c)
    for table in sorted(owned, key=lambda name: name == "statement"):  # after what they are about
        for record, order, one in _gone(connection, table, owner.id, found.keys()):
            found[table, record] = order, one
    rows = sorted(found.values(), key=lambda pair: -pair[0])
    return WithdrawnAnswer(owner.number, owner.title, tuple(one for _, one in rows))


def _gone(
    connection: Connection, table: str, owner: int, known: Set[tuple[str, int]]
) -> Iterator[tuple[int, int, Withdrawn]]:
    seen: set[int] = set()
    for record, before, number, who, at, reason in connection.exec_driver_sql(_GONE, (table,)):
        if record in seen:
            continue  # it went twice: the last time counts
        seen.add(record)
        fields = parse(before)
        if not _is_of(connection, table, fields, owner, known):
            continue
        there = connection.exec_driver_sql(f"SELECT 1 FROM {table} WHERE id = ?", (record,)).first()
        if there is None:
            said = tuple(in_words(connection, table, one) for one in told(before, None))
            what = described(table, fields)
            yield record, number, Withdrawn(what, at[:10], who, reason, number, said)


def _is_of(
    connection: Connection,
    table: str,
    fields: dict[str, Any],
    owner: int,
    known: Set[tuple[str, int]],
) -> bool:
    """Whether a record that is gone was one of the object; a statement is where its subject is."""
    if table != "statement" or fields.get("object_id") is not None:
        return bool(fields.get("object_id") == owner)
    subject = fields["subject"]
    record = fields[f"{subject}_id"]
    if (subject, record) in known:
        return True
    found = connection.exec_driver_sql(f"SELECT object_id FROM {subject} WHERE id = ?", (record,))
    return bool(found.scalar() == owner)
