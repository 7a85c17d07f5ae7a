"""How records read before they were amended, by whom and why: so that it stays readable in place.

The change log has it. One statement looks for all records in view at once; what was never amended
costs no more than that look.
"""

from __future__ import annotations

import json
from collections import defaultdict
from collections.abc import Collection, Iterable, Mapping
from dataclasses import replace
from typing import NamedTuple

from sqlalchemy import Connection, and_, bindparam, func, literal_column, select

from conservedb.questions.answers import FieldChange, Reworded
from conservedb.questions.asking import Question
from conservedb.records.log import change, change_set

LISTS = {
    "agent": ("agent_place",),
    "authorisation": ("authorisation_step",),
    "component": ("bridge",),
    "intervention": (
        "intervention_aim",
        "intervention_component",
        "intervention_person",
        "intervention_place",
    ),
    "layer": ("layer_candidate",),
    "observation": ("observation_person",),
    "plan": ("plan_aim", "plan_person"),
    "planned_step": ("planned_step_component", "planned_step_place"),
    "reading": ("reading_person",),
    "sample": ("sample_person",),
    "sighting": ("sighting_person",),
    "spot_test": ("spot_test_part", "spot_test_person"),
}
"""Tables whose rows are lists of a record. All tables are not loaded for a question of a few."""
_OWNER = {name: owner for owner, names in LISTS.items() for name in names}
_OF_LINKS = ("position", "object_id", "role", "share")
"""Fields of a list that are not what it lists."""

Key = tuple[str, int]
Rewordings = Mapping[Key, tuple[Reworded, ...]]

_WANTED = func.json_each(bindparam("wanted")).table_valued("value").alias("wanted")
_TABLE, _RECORD, _OWNED_BY = (
    func.json_extract(_WANTED.c.value, literal_column(f"'$[{place}]'")) for place in range(3)
)
_ENTERED, _CAME = change.alias("entered"), change.alias("came")
_FIRST = (
    select(func.min(_ENTERED.c.id))
    .where(_ENTERED.c.table_name == _OWNED_BY, _ENTERED.c.record_id == _RECORD)
    .correlate(_WANTED)
    .scalar_subquery()
)
"""When the record came, which the index alone tells."""
_CHANGES = Question(
    select(
        change.c.id,
        change.c.table_name,
        change.c.record_id,
        change.c.set_id,
        change.c.before,
        change.c.after,
    )
    # an outer join keeps its order: first what is wanted, then its changes by the index
    .outerjoin_from(
        _WANTED,
        change,
        and_(
            change.c.table_name == _TABLE,
            change.c.record_id == _RECORD,
            change.c.id > _FIRST,
            change.c.set_id
            != select(_CAME.c.set_id)
            .where(_CAME.c.id == _FIRST)
            .correlate(_WANTED)
            .scalar_subquery(),
        ),
    )
    .where(func.coalesce(change.c.id, literal_column("0")) > literal_column("0"))
)
_SETS = Question(
    select(
        change_set.c.id,
        change_set.c.who,
        change_set.c.at,
        func.coalesce(change_set.c.reason, literal_column("''")).label("reason"),
    ).where(change_set.c.id.in_(select(_WANTED.c.value)))
)
_TAKING_BACK = Question(select(change_set.c.id).where(change_set.c.undoes_id.is_not(None)))
STATEMENTS = (_CHANGES, _SETS, _TAKING_BACK)


class _Change(NamedTuple):
    table: str
    before: str | None
    after: str | None


def rewordings(connection: Connection, wanted: Mapping[str, Collection[int]]) -> Rewordings:
    """How records read before, by table and id, the oldest amendment first.

    Args:
        wanted: ids of the records in view, by table.
    """
    pairs = [
        (name, record, table)
        for table, records in wanted.items()
        for record in dict.fromkeys(records)
        for name in (table, *LISTS.get(table, ()))
    ]
    if not pairs:
        return {}
    by_set: dict[tuple[Key, int], list[_Change]] = defaultdict(list)
    came_or_went: set[tuple[Key, int]] = set()
    rows = _CHANGES.tuples(connection, wanted=json.dumps(pairs))
    for _, table, record, number, before, after in sorted(rows):
        key = (_OWNER.get(table, table), record)
        if table not in _OWNER and (before is None or after is None):
            came_or_went.add((key, number))
        else:
            by_set[key, number].append(_Change(table, before, after))
    amended = {one: changes for one, changes in by_set.items() if one not in came_or_went}
    if amended:
        silent = _silent(connection)
        amended = {one: changes for one, changes in amended.items() if one[1] not in silent}
    return _told(connection, amended) if amended else {}


def _silent(connection: Connection) -> set[int]:
    """Change sets that were taken back, and those that only took back: nothing came of them."""
    from conservedb.store.connect import raw_of
    from conservedb.store.log import taken_back

    return taken_back(raw_of(connection)) | {row.id for row in _TAKING_BACK.all(connection)}


def _told(
    connection: Connection, amended: Mapping[tuple[Key, int], Iterable[_Change]]
) -> Rewordings:
    numbers = json.dumps(sorted({number for _, number in amended}))
    sets = {row.id: row for row in _SETS.all(connection, wanted=numbers)}
    found: dict[Key, tuple[Reworded, ...]] = {}
    for (key, number), changes in sorted(amended.items(), key=lambda item: item[0][1]):
        fields = tuple(_fields(connection, changes))
        if fields:
            by = sets[number]
            one = Reworded(by.at[:10], by.who, by.reason, fields)
            found[key] = (*found.get(key, ()), one)
    return found


def _fields(connection: Connection, changes: Iterable[_Change]) -> Iterable[FieldChange]:
    """What one change set did to a record, all in all."""
    from conservedb.questions.log import told

    first: dict[str, str | None] = {}
    last: dict[str, str | None] = {}
    lists: dict[str, tuple[list[str], list[str]]] = defaultdict(lambda: ([], []))
    for one in changes:
        if one.table in _OWNER:
            was, now = lists[one.table]
            was += [one.before] if one.before is not None else []
            now += [one.after] if one.after is not None else []
        else:
            first.setdefault(one.table, one.before)
            last[one.table] = one.after
    for table, before in first.items():
        for field in told(before, last[table]):
            yield in_words(connection, table, field)
    for table, (was, now) in lists.items():
        gone = [row for row in was if row not in now]
        new = [row for row in now if row not in was]
        if gone or new:
            name = table.removeprefix(f"{_OWNER[table]}_").replace("_", " ")
            said = (
                ", ".join(_item(connection, table, row) for row in some) for some in (gone, new)
            )
            yield FieldChange(name, *said)


def _item(connection: Connection, table: str, row: str) -> str:
    """One row of a list in words: what it names, with a role or share in parentheses."""
    from conservedb.store.log_rows import parse

    fields = parse(row)
    owner = f"{_OWNER[table]}_id"
    named = [
        _value(connection, table, name, str(value))
        for name, value in fields.items()
        if name != owner and name not in _OF_LINKS
    ]
    remark = fields.get("role") or fields.get("share")
    return ", ".join(named) + (f" ({remark})" if remark else "")


def in_words(connection: Connection, table: str, field: FieldChange) -> FieldChange:
    """A field as people read it: what it points at by name, not by number."""
    was, now = (_value(connection, table, field.name, one) for one in (field.before, field.after))
    return FieldChange(field.name.removesuffix("_id").replace("_", " "), was, now)


def _value(connection: Connection, table: str, name: str, value: str) -> str:
    """A value as stored, or what the record that it points at is called."""
    from conservedb.records.every import metadata
    from conservedb.store.labels import name_of

    column = metadata.tables[table].c.get(name)
    targets = [] if column is None else [key.column for key in column.foreign_keys]
    if not value or not targets or not name.endswith("_id"):
        return value
    return name_of(connection, targets[0].table.name, int(value))


def of(amended: Rewordings, table: str, record: int, called: str = "") -> tuple[Reworded, ...]:
    """The amendments of one record; `called` where it is not the one that an entry is about."""
    found = amended.get((table, record), ())
    return tuple(replace(one, of=called) for one in found) if called else found
