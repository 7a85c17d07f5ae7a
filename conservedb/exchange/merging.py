"""Two people, materials or sources that are one: everything that named the one names the other.

Nothing is lost: the names of the one that goes become other names of the one that stays, blank
fields are filled from it, what differs stands in the note, and the change log keeps it whole.
"""

from __future__ import annotations

import datetime
import sqlite3
from collections.abc import Iterator
from dataclasses import dataclass

from sqlalchemy import Column, Connection, Engine, Table, UniqueConstraint, select
from sqlalchemy.exc import IntegrityError

from conservedb.exchange.cells import escape, split_list, split_role, unescape
from conservedb.exchange.entering import Entry, Refused, put
from conservedb.exchange.faults import Fault
from conservedb.exchange.reading_cells import cells_of, find_record, subject_named
from conservedb.exchange.subject import Subject
from conservedb.exchange.subjects_shared import MATERIAL_PARTS
from conservedb.recording.references import pointers_to
from conservedb.recording.settling import Impossible, settle_objects
from conservedb.recording.withdrawing import withdraw
from conservedb.records.every import metadata
from conservedb.store.connect import raw_of, writing
from conservedb.store.keys import fold
from conservedb.store.labels import label, name_of
from conservedb.store.log import Author, open_number
from conservedb.store.logging_triggers import owner_field
from conservedb.store.past import tables_of

MERGED = ("people", "materials", "sources")
_NAMES = ("aliases", "trade_names")
_DATING = ("intervention", "layer", "removal", "sighting")
"""Tables whose records are dated no later than their source."""
_LISTED = 5


@dataclass(frozen=True, slots=True)
class Merged:
    """What became of a merging; where there are faults, nothing was written.

    `moved` counts what names the record kept from now on, by what kind of thing it is.
    """

    faults: tuple[Fault, ...] = ()
    kept: str = ""
    gone: str = ""
    moved: tuple[tuple[str, int], ...] = ()
    noted: tuple[str, ...] = ()
    set_number: int | None = None


@dataclass(frozen=True, slots=True)
class _Pair:
    """The record that is kept and the one that goes."""

    subject: Subject
    keep: int
    gone: int
    keep_key: str
    gone_key: str

    @property
    def table(self) -> str:
        return self.subject.table.name


def merge(
    engine: Engine, kind: str, keep: str, gone: str, author: Author, today: datetime.date
) -> Merged:
    """Make one record of two that are one, in one transaction.

    Args:
        kind: people, materials or sources, also in the singular.
        keep: key of the record that stays (a person's name, a material's key, a source's ref).
        gone: key of the one that goes.
        author: who says so; the reason stands in the note of the record kept.

    Raises:
        NoSuch: there is no such kind, or no record of that key.
        DatabaseProblem: the file cannot be written.
    """
    subject = subject_named(kind)
    try:
        with writing(engine, author) as connection:
            pair = _pair(connection, subject, keep, gone)
            return _merge(connection, pair, author, today)
    except Refused as refused:
        return Merged(refused.faults)


def _pair(connection: Connection, subject: Subject, keep: str, gone: str) -> _Pair:
    if subject.name not in MERGED:
        raise _refused(subject, subject.name, "cannot be merged", f"merge {', '.join(MERGED)}")
    ids = [find_record(connection, subject, "", key) for key in (keep, gone)]
    if ids[0] == ids[1]:
        raise _refused(subject, gone, f"is this same {subject.singular}", "name two of them")
    key = subject.table.c[subject.key[-1]]
    names = [
        str(connection.execute(select(key).where(subject.table.c.id == one)).scalar_one())
        for one in ids
    ]
    shipped = connection.exec_driver_sql(
        "SELECT 1 FROM shipped WHERE subject = ? AND record_id = ?", (subject.name, ids[1])
    ).first()
    if shipped:
        raise _refused(subject, gone, "came with the program", "name it as the one to keep")
    return _Pair(subject, ids[0], ids[1], names[0], names[1])


def _merge(connection: Connection, pair: _Pair, author: Author, today: datetime.date) -> Merged:
    before = {one: cells_of(connection, pair.subject, one) for one in (pair.keep, pair.gone)}
    label_gone = label(connection, pair.table, pair.gone)
    concerned = _objects(connection, pair) if pair.table == "source" else set()
    _refuse_twice(connection, pair)
    _drop_repeats(connection, pair)
    moved: dict[str, int] = {}
    try:
        for column in _pointers(pair.table):
            name = column.table.name
            done = connection.exec_driver_sql(
                f"UPDATE {name} SET {column.name} = ? WHERE {column.name} = ?",
                (pair.keep, pair.gone),
            )
            if done.rowcount:
                words = name.replace("_", " ")
                moved[words] = moved.get(words, 0) + done.rowcount
    except (IntegrityError, sqlite3.IntegrityError) as problem:
        cause = str(getattr(problem, "orig", None) or problem)
        reason = f"cannot be merged into {pair.keep_key} ({cause})"
        raise _refused(pair.subject, pair.gone_key, reason, "amend that record first") from problem
    withdraw(connection, pair.table, pair.gone)
    cells, noted = _united(pair, before[pair.keep], before[pair.gone], author, today)
    put(connection, [Entry(pair.subject.name, cells)], today, whole=True)
    try:
        settle_objects(connection, concerned)
    except Impossible as problem:
        reason = f"cannot be merged into {pair.keep_key}: {problem}"
        raise _refused(pair.subject, pair.gone_key, reason, "mend the dates first") from problem
    number = open_number(raw_of(connection))
    kept = label(connection, pair.table, pair.keep)
    return Merged((), kept, label_gone, tuple(sorted(moved.items())), noted, number)


def _pointers(table: str) -> Iterator[Column[object]]:
    """Fields of other records that name one of these; what belongs to it goes with it."""
    own = tables_of(table)
    for column in pointers_to(table):
        name = column.table.name
        if name not in own or column.name != owner_field(metadata.tables[name]):
            yield column


def _united(
    pair: _Pair,
    keep: dict[str, str],
    gone: dict[str, str],
    author: Author,
    today: datetime.date,
) -> tuple[dict[str, str], tuple[str, ...]]:
    """The cells of the record kept, and what of the other has no room in them."""
    headers = pair.subject.headers
    cells = {name: keep[name] for name in pair.subject.key}
    noted = []
    if pair.table == "source":
        noted.append(f"ref was {pair.gone_key}")
    for name in _NAMES:
        if name in headers:
            cells[name] = _names(pair, name, keep, gone)
    for name in headers:
        if name in (*_NAMES, *pair.subject.key, "uuid", "entered", "note") or not gone[name]:
            continue
        itself = name == "behaves_as" and split_role(gone[name])[0] == pair.keep_key
        if not keep[name] and not itself:
            cells[name] = gone[name]
        elif keep[name] != gone[name] and not itself and (pair.table, name) != ("material", "name"):
            noted.append(f"{name.replace('_', ' ')} was {gone[name]}")
    if gone["note"]:
        noted.append(f"note: {gone['note']}")
    why = f" ({author.reason.strip()})" if author.reason.strip() else ""
    said = f"{today.isoformat()} merged with {pair.gone_key} by {author.who}{why}"
    line = "; ".join((said, *noted))
    cells["note"] = f"{keep['note']}\n{line}" if keep["note"] else line
    return cells, tuple(noted)


def _names(pair: _Pair, column: str, keep: dict[str, str], gone: dict[str, str]) -> str:
    """Names of both, each once; the key and name of the one that goes are other names now."""
    items = [unescape(item) for item in split_list(keep[column])]
    others = [unescape(item) for item in split_list(gone[column])]
    if column == "aliases":
        others = [gone["name"], pair.gone_key, *others]
    known = {fold(item) for item in (*items, keep["name"], pair.keep_key)}
    for other in others:
        if other.strip() and fold(other) not in known:
            known.add(fold(other))
            items.append(other)
    return "; ".join(map(escape, items))


def _refuse_twice(connection: Connection, pair: _Pair) -> None:
    """Records that name both where one may stand only once."""
    both = []
    for column in _pointers(pair.table):
        for key in _unique_with(column):
            both += _meeting(connection, column, key, pair)
    if both:
        unique = list(dict.fromkeys(both))
        said = ", ".join(unique[:_LISTED])
        more = f" and {len(unique) - _LISTED} more" if len(unique) > _LISTED else ""
        raise _refused(
            pair.subject,
            pair.gone_key,
            f"stands beside {pair.keep_key} in {said}{more}, where one may stand only once",
            "take one of the two out there first",
        )


def _unique_with(column: Column[object]) -> Iterator[tuple[str, ...]]:
    """The other fields of every key in which a field stands."""
    table = column.table
    assert isinstance(table, Table)
    keys = [tuple(c.name for c in table.primary_key.columns)]
    keys += [
        tuple(c.name for c in one.columns)
        for one in table.constraints
        if isinstance(one, UniqueConstraint)
    ]
    for key in keys:
        if column.name in key:
            yield tuple(name for name in key if name != column.name)


def _meeting(
    connection: Connection, column: Column[object], others: tuple[str, ...], pair: _Pair
) -> list[str]:
    name = column.table.name
    table = metadata.tables[name]
    owner = owner_field(table)
    same = " AND ".join(f"a.{other} IS b.{other}" for other in others) or "1"
    rows = connection.exec_driver_sql(
        f"SELECT b.{owner} FROM {name} a JOIN {name} b ON {same}"
        f" WHERE a.{column.name} = ? AND b.{column.name} = ?",
        (pair.keep, pair.gone),
    ).all()
    if table is not MATERIAL_PARTS.table:
        return [label(connection, name, row[0]) for row in rows]
    of = f"SELECT {others[0]} FROM {name} WHERE id = ?"  # a part has no name of its own
    recipes = [connection.exec_driver_sql(of, (row[0],)).scalar_one() for row in rows]
    return [f"a recipe with {name_of(connection, 'material', recipe)}" for recipe in recipes]


def _drop_repeats(connection: Connection, pair: _Pair) -> None:
    """A list of people that names both in the same role names the one once.

    A material that behaved as the other one does not behave as itself.
    """
    if pair.table == "material":
        connection.exec_driver_sql(
            "DELETE FROM stand_in WHERE material_id = ? AND as_id = ?", (pair.keep, pair.gone)
        )
    for column in _pointers(pair.table):
        table = metadata.tables[column.table.name]
        if "role" not in table.c or "uuid" in table.c:
            continue
        owner = owner_field(table)
        connection.exec_driver_sql(
            f"DELETE FROM {table.name} WHERE {column.name} = ? AND EXISTS (SELECT 1 FROM"
            f" {table.name} k WHERE k.{owner} = {table.name}.{owner} AND k.{column.name} = ?"
            f" AND k.role IS {table.name}.role)",
            (pair.gone, pair.keep),
        )


def _objects(connection: Connection, pair: _Pair) -> set[int]:
    """Objects with records that are dated by one of two sources."""
    found: set[int] = set()
    for table in _DATING:
        rows = connection.exec_driver_sql(
            f"SELECT DISTINCT object_id FROM {table} WHERE source_id IN (?, ?)",
            (pair.keep, pair.gone),
        )
        found.update(row[0] for row in rows)
    return found


def _refused(subject: Subject, value: str, reason: str, remedy: str) -> Refused:
    return Refused([Fault(subject.file, 1, subject.key[-1], value, reason, remedy)])
