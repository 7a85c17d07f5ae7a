"""Taking a change set back, and putting it in force again, from what the log says.

What somebody else has changed since is never overwritten: it is named, and nothing is done.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from typing import Any, NamedTuple

from sqlalchemy import Connection, Engine
from sqlalchemy.exc import IntegrityError

from conservedb.recording.facts import FIELDS, Facts
from conservedb.recording.references import references
from conservedb.recording.settling import Impossible, settle_objects
from conservedb.records.every import metadata
from conservedb.records.layers import BOUNDS
from conservedb.store.connect import raw_of, reading, writing
from conservedb.store.labels import label, owner_table
from conservedb.store.log import Author, SetRow, open_number, set_row, sets, span, taken_back
from conservedb.store.log_rows import parse
from conservedb.store.logging_triggers import owner_field
from conservedb.store.past import last_change

OF_THE_PROGRAM = ("made", "upgraded", "found", "shipped", "accepted")
"""Kinds of change sets that nobody recorded and nobody takes back."""
_WORKED_OUT = "layer_side"
_HELD_AGAINST_BOUNDS = ("removal", "sighting")
_CITING = ("intervention", "layer", "removal", "sighting")
_NAMED = 3

Fields = dict[str, Any]
Key = tuple[str, tuple[Any, ...]]


class CannotUndo(Exception):
    """The change set cannot be taken back; the message says why and what to do."""


class _Net(NamedTuple):
    """What a change set did to one row, all in all."""

    key: Key
    before: Fields | None
    after: Fields | None


@dataclass
class _Work:
    """Rows to take away, to change and to bring back."""

    gone: list[_Net] = field(default_factory=list)
    changed: list[_Net] = field(default_factory=list)
    back: list[_Net] = field(default_factory=list)


def latest(connection: Connection, who: str, *, undone: bool) -> SetRow | None:
    """The last change set of a person that stands: of their work, or of what they took back."""
    gone = taken_back(raw_of(connection))
    for one in sorted(sets(raw_of(connection)), key=lambda row: row.id, reverse=True):
        mine = one.who == who and one.hash is not None and one.id not in gone
        if (
            mine
            and (one.kind == "undone") == undone
            and one.kind not in (*OF_THE_PROGRAM, "redone")
        ):
            return one
    return None


def undo(connection: Connection, number: int) -> list[tuple[str, int]]:
    """Take a change set back, inside the caller's writing transaction.

    Returns:
        Table and id of the records that are on record again, or as they were before.

    Raises:
        CannotUndo: there is no such set, it does not stand, or something of it was changed since.
    """
    wanted = set_row(raw_of(connection), number)
    if wanted is None or wanted.hash is None:
        raise CannotUndo(f"there is no change set {number}; conservedb log lists them")
    if wanted.kind in OF_THE_PROGRAM:
        raise CannotUndo(f"change set {number} was {wanted.kind} by the program; it stays")
    if number in taken_back(raw_of(connection)):
        raise CannotUndo(f"change set {number} has been taken back already")
    nets = _nets(connection, number)
    work = _compared(connection, nets)
    _leave_the_writer(connection, work)
    _refuse_needed(connection, work)
    _carry_out(connection, work)
    return list(dict.fromkeys(_owner(net) for net in (*work.changed, *work.back)))


def _owner(net: _Net) -> tuple[str, int]:
    """The record that a row is, or belongs to."""
    table = net.key[0]
    return owner_table(table), (net.before or {})[owner_field(metadata.tables[table])]


def _nets(connection: Connection, number: int) -> list[_Net]:
    first: dict[Key, Fields | None] = {}
    last: dict[Key, Fields | None] = {}
    rows = raw_of(connection).execute(
        "SELECT table_name, before, after FROM change WHERE id > ? AND id <= ? ORDER BY id",
        span(raw_of(connection), number),
    )
    for table, before, after in rows:
        if table == _WORKED_OUT:
            continue
        was = parse(before) if before is not None else None
        now = parse(after) if after is not None else None
        if was is not None:
            first.setdefault(_key(table, was), was)
            last[_key(table, was)] = None
        if now is not None:
            first.setdefault(_key(table, now), None)
            last[_key(table, now)] = now
    return [
        _Net(key, first[key], last[key])
        for key in first
        if _judged(key[0], first[key]) != _judged(key[0], last[key])
    ]


def _key(table: str, fields: Fields) -> Key:
    return table, tuple(fields.get(c.name) for c in metadata.tables[table].primary_key)


def _judged(table: str, fields: Fields | None) -> Fields | None:
    """A row without what the program works out by itself."""
    if fields is None or table != "layer":
        return fields
    return {name: value for name, value in fields.items() if name not in BOUNDS}


def _compared(connection: Connection, nets: Iterable[_Net]) -> _Work:
    """What is to be done; refused where a row is not as the change set left it."""
    work, astray = _Work(), []
    for net in nets:
        table, key = net.key
        now = _present(connection, table, key)
        if _judged(table, now) != _judged(table, net.after):
            fields = now or net.after or net.before or {}
            astray.append((table, fields[owner_field(metadata.tables[table])]))
        elif net.before is None:
            work.gone.append(net)
        elif net.after is None:
            work.back.append(net)
        else:
            work.changed.append(net)
    if astray:
        raise CannotUndo(_changed_since(connection, astray))
    return work


def _present(connection: Connection, table: str, key: tuple[Any, ...]) -> Fields | None:
    names = [column.name for column in metadata.tables[table].primary_key]
    where = " AND ".join(f"{name} = ?" for name in names)
    row = connection.exec_driver_sql(f"SELECT * FROM {table} WHERE {where}", key).mappings().first()
    return None if row is None else {k: v for k, v in row.items() if v is not None}


def _changed_since(connection: Connection, astray: list[tuple[str, int]]) -> str:
    said = []
    for table, record in list(dict.fromkeys(astray))[:_NAMED]:
        last = last_change(connection, table, record)
        by = f" (by {last.who} on {last.at[:10]}, change set {last.set_number})" if last else ""
        said.append(f"{label(connection, table, record)}{by}")
    more = f" and {len(astray) - _NAMED} more" if len(astray) > _NAMED else ""
    return (
        f"changed again since: {'; '.join(said)}{more}; nothing was taken back; take the later"
        " change back first, or amend the record"
    )


def _leave_the_writer(connection: Connection, work: _Work) -> None:
    """A person added with what they wrote first stays once anything else names them."""
    going = {(net.key[0], (net.after or {}).get("id")) for net in work.gone}
    for net in [net for net in work.gone if net.key[0] == "person"]:
        record = (net.after or {})["id"]
        others = [
            one
            for one in references(connection, "person", record)
            if (one.table, one.record) not in going
            and not _belongs_to_gone(one.table, one.record, work)
        ]
        if others and len(going) > 1:
            work.gone = [
                kept
                for kept in work.gone
                if owner_table(kept.key[0]) != "person"
                or (kept.after or {}).get("id", (kept.after or {}).get("person_id")) != record
            ]


def _refuse_needed(connection: Connection, work: _Work) -> None:
    """A record that others point at does not go, unless they go with it or let go of it."""
    going = {(net.key[0], (net.after or {}).get("id")) for net in work.gone}
    letting_go = {net.key for net in (*work.changed, *work.gone)}
    for table, record in going:
        if record is None:
            continue
        for one in references(connection, table, record):
            owned = metadata.tables[one.table]
            if (one.table, one.record) in going or (one.table, (one.record,)) in letting_go:
                continue
            if "uuid" not in owned.c and _belongs_to_gone(one.table, one.record, work):
                continue
            raise CannotUndo(
                f"{label(connection, one.table, one.record)} rests on"
                f" {label(connection, table, record)} by now; nothing was taken back; take that"
                " back first, or amend it"
            )


def _belongs_to_gone(table: str, owner: int, work: _Work) -> bool:
    """Whether rows of a list of this owner are among those that go or change."""
    name = owner_field(metadata.tables[table])
    return any(
        net.key[0] == table and (net.after or {}).get(name) == owner
        for net in (*work.gone, *work.changed)
    )


def _carry_out(connection: Connection, work: _Work) -> None:
    connection.exec_driver_sql("PRAGMA defer_foreign_keys=ON")
    objects = _objects(connection, (*work.gone, *work.changed, *work.back))
    for net in work.gone:
        table, key = net.key
        if table == "layer":
            connection.exec_driver_sql("DELETE FROM layer_side WHERE layer_id = ?", key)
        names = [column.name for column in metadata.tables[table].primary_key]
        where = " AND ".join(f"{name} = ?" for name in names)
        connection.exec_driver_sql(f"DELETE FROM {table} WHERE {where}", key)
    late = [net for net in (*work.changed, *work.back) if net.key[0] in _HELD_AGAINST_BOUNDS]
    for net in (*work.changed, *work.back):
        if net not in late:
            _put(connection, net)
    facts = Facts()
    facts.load(connection, sorted(objects))
    for net in late:
        fields = net.before or {}
        row = tuple(fields.get(name) for name in FIELDS[net.key[0]])
        facts.rows[net.key[0]][fields["id"]] = row
    try:
        settle_objects(connection, objects, facts)
    except Impossible as problem:
        raise CannotUndo(f"{problem}; nothing was taken back") from problem
    for net in late:
        _put(connection, net)


def _put(connection: Connection, net: _Net) -> None:
    """Write a row as it was before; a layer keeps its present bounds until they are settled."""
    table, key = net.key
    fields = net.before or {}
    names = [c.name for c in metadata.tables[table].columns]
    if net.after is None:
        marks = ", ".join("?" * len(names))
        statement = f"INSERT INTO {table} ({', '.join(names)}) VALUES ({marks})"
        connection.exec_driver_sql(statement, tuple(fields.get(name) for name in names))
        return
    keys = [c.name for c in metadata.tables[table].primary_key]
    given = [name for name in names if name not in keys]
    sets_ = ", ".join(f"{name} = ?" for name in given)
    where = " AND ".join(f"{name} = ?" for name in keys)
    values = (*(fields.get(name) for name in given), *key)
    connection.exec_driver_sql(f"UPDATE {table} SET {sets_} WHERE {where}", values)


def _objects(connection: Connection, nets: Iterable[_Net]) -> set[int]:
    """The objects whose layers may be bounded otherwise afterwards."""
    found: set[int] = set()
    for net in nets:
        for fields in (net.before, net.after):
            if fields is None:
                continue
            if net.key[0] == "object":
                found.add(fields["id"])
            elif "object_id" in fields:
                found.add(fields["object_id"])
            elif net.key[0] == "source":
                for table in _CITING:
                    rows = connection.exec_driver_sql(
                        f"SELECT DISTINCT object_id FROM {table} WHERE source_id = ?",
                        (fields["id"],),
                    )
                    found.update(row[0] for row in rows)
    return found


class TakenBack(NamedTuple):
    """What was taken back: the new change set, the one that it undoes, and that one in words."""

    number: int
    undoes: int
    what: str


def take_back(
    engine: Engine,
    who: str,
    number: int | None = None,
    reason: str = "",
    *,
    undone: bool = False,
    complete: Callable[[Connection, int], str],
    disagrees: Callable[[Connection, Sequence[tuple[str, int]]], str],
) -> TakenBack:
    """Take a change set back, or put one in force again that was, in one transaction.

    Args:
        number: of the set; the last of this person where not given.
        undone: take a taking-back back.
        complete: says why a set is not taken back without a reason, "" where nothing speaks
            against it.
        disagrees: says why records that are on record again, or as they were before, cannot
            stand beside the others, "" where they can.

    Raises:
        CannotUndo: there is nothing of that kind, something of it was changed since, or it
            cannot stand beside what was recorded meanwhile.
        DatabaseProblem: the file cannot be written.
    """
    found = _meant(engine, who, number, undone=undone)
    author = Author(who, "redone" if undone else "undone", reason, undoes=found.id)
    try:
        with writing(engine, author) as connection:
            why = "" if reason.strip() else complete(connection, found.id)
            if why:
                raise CannotUndo(
                    f"{why}; to take change set {found.id} back all the same, say why: conservedb"
                    f" {'redo' if undone else 'undo'} {found.id} --reason WHY"
                )
            why = disagrees(connection, undo(connection, found.id))
            if why:
                raise CannotUndo(
                    f"change set {found.id} does not agree with what was recorded since: {why};"
                    " nothing was taken back"
                )
            made = open_number(raw_of(connection))
    except IntegrityError as problem:
        raise CannotUndo(
            f"change set {found.id} cannot be taken back as things stand now ({problem.orig});"
            " nothing was taken back; amend the records instead"
        ) from problem
    assert made is not None
    what = f"change set {found.id}, {found.kind} by {found.who} on {found.at[:10]}"
    return TakenBack(made, found.id, what + (f": {found.reason}" if found.reason else ""))


def _meant(engine: Engine, who: str, number: int | None, *, undone: bool) -> SetRow:
    """The set of that number, or the last of this person.

    Raises:
        CannotUndo: there is none, or it is of another kind.
    """
    with reading(engine) as connection:
        if number is None:
            last = latest(connection, who, undone=undone)
            if last is None:
                what = "taken back" if undone else "written"
                raise CannotUndo(f"{who} has {what} nothing here")
            if last.kind == "imported":  # never thousands of rows by one key
                raise CannotUndo(
                    f"the last that {who} wrote is the import of change set {last.id}, with"
                    f" {last.changes} changes; to take all of it back: conservedb undo {last.id}"
                )
            number = last.id
        found = set_row(raw_of(connection), number)
    if found is None:
        raise CannotUndo(f"there is no change set {number}; conservedb log lists them")
    if (found.kind == "undone") != undone:
        other = "undo" if undone else "redo"
        raise CannotUndo(f"change set {number} was {found.kind}; use conservedb {other} {number}")
    return found
