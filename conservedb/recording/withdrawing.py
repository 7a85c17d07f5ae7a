"""Withdrawing a record: it leaves its table and stays whole, with the reason, in the change log.

So every answer is without it at once, and it can be read and put back for ever.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from sqlalchemy import Connection

from conservedb.recording.references import references
from conservedb.recording.settling import Impossible, settle_objects
from conservedb.records.every import metadata
from conservedb.store.labels import label
from conservedb.store.logging_triggers import owner_field
from conservedb.store.past import last_change, tables_of

PARTS = {
    "intervention": (
        "agent",
        "joint_event",
        "layer",
        "observation",
        "reading",
        "removal",
        "sample",
        "spot_test",
    ),
    "layer": ("observation", "removal", "sample", "sighting", "spot_test"),
    "plan": ("authorisation", "planned_step"),
}
"""What was recorded as part of a record and goes with it, where that is asked for."""
_NAMED = 5


class CannotWithdraw(Exception):
    """The record cannot be withdrawn; the message says why and what to do."""


@dataclass
class Withdrawal:
    """Records that go together, by table and id; the one asked for is the first."""

    records: list[tuple[str, int]] = field(default_factory=list)
    labels: list[str] = field(default_factory=list)


def withdraw(
    connection: Connection,
    table: str,
    record: int,
    *,
    together: bool = False,
    version: int | None = None,
) -> Withdrawal:
    """Withdraw a record, inside the caller's writing transaction, whose author names the reason.

    Args:
        together: with what was recorded as part of it; else that is a reason to refuse.
        version: the number of its last change when it was looked at, where that is known.

    Raises:
        CannotWithdraw: it was changed since, other records point at it, or what is left would
            be impossible.
    """
    _refuse_changed(connection, table, record, version)
    going = Withdrawal([(table, record)], [label(connection, table, record)])
    for one in iter(going.records):  # the list grows while it is gone through
        _look_at(connection, going, one, together)
    objects = _objects(connection, going)
    connection.exec_driver_sql("PRAGMA defer_foreign_keys=ON")
    for name, number in reversed(going.records):
        for owned in reversed(tables_of(name)):
            owner = owner_field(metadata.tables[owned])
            connection.exec_driver_sql(f"DELETE FROM {owned} WHERE {owner} = ?", (number,))
    try:
        settle_objects(connection, objects)
    except Impossible as problem:
        raise CannotWithdraw(f"{problem}; nothing was withdrawn") from problem
    return going


def _refuse_changed(connection: Connection, table: str, record: int, version: int | None) -> None:
    """What somebody changed a moment before was not meant."""
    last = None if version is None else last_change(connection, table, record)
    if last is not None and last.number != version:
        raise CannotWithdraw(
            f"{label(connection, table, record)} was changed since you looked at it (by {last.who}"
            f" on {last.at[:10]}); look at it again, then withdraw it; nothing was withdrawn"
        )


def _look_at(
    connection: Connection, going: Withdrawal, one: tuple[str, int], together: bool
) -> None:
    parts: list[tuple[str, int]] = []
    others: list[tuple[str, int]] = []
    for reference in references(connection, *one):
        key = (reference.table, reference.record)
        if key in going.records:
            continue
        about = reference.table == "statement" or reference.table in PARTS.get(one[0], ())
        (parts if about else others).append(key)
    if others:
        raise CannotWithdraw(
            f"{_listed(connection, others)} name {label(connection, *one)}; amend or withdraw"
            " those first; nothing was withdrawn"
        )
    parts = list(dict.fromkeys(parts))
    if parts and not together:
        raise CannotWithdraw(
            f"{_listed(connection, parts)} were recorded with {label(connection, *one)}; withdraw"
            " those first, or all together (--together); nothing was withdrawn"
        )
    going.records += parts
    going.labels += [label(connection, *part) for part in parts]


def _listed(connection: Connection, keys: list[tuple[str, int]]) -> str:
    unique = list(dict.fromkeys(keys))
    said = ", ".join(label(connection, *key) for key in unique[:_NAMED])
    return said + (f" and {len(unique) - _NAMED} more" if len(unique) > _NAMED else "")


def _objects(connection: Connection, going: Withdrawal) -> set[int]:
    found: set[int] = set()
    for table, record in going.records:
        if "object_id" in metadata.tables[table].c:
            row = connection.exec_driver_sql(
                f"SELECT object_id FROM {table} WHERE id = ?", (record,)
            ).scalar()
            if row is not None:
                found.add(row)
    return found
