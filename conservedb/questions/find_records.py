"""The records behind what was found by its words: what they are called, and where they belong."""

from __future__ import annotations

from typing import Any, NamedTuple

from sqlalchemy import ColumnElement, Table, bindparam, func, literal_column, select

from conservedb.questions.asking import Question, blank
from conservedb.records.every import metadata
from conservedb.records.sources import STATEMENT_SUBJECTS
from conservedb.store.search_tables import SEARCHED, Searched

_KINDS = {
    "material_class": "material",
    "intervention": "step",
}
_WANTED = func.json_each(bindparam("wanted")).table_valued("value").alias("wanted")
_NOTHING: ColumnElement[Any] = literal_column("''")


class Shown(NamedTuple):
    """How the rows of a table are asked for, and which kind of thing they are.

    `owned` are those of the object with a `number`. A row has `id`, `object`, `mark`, `date`,
    `matter`, `aliases` (JSON), then the names as written and the words, each as many as here.
    """

    kind: str
    rows: Question
    owned: Question
    names: int
    words: int


def _aliases(one: Searched) -> ColumnElement[Any]:
    """All further names of a record, as a list in JSON."""
    lists = [
        f"(SELECT json_group_array(alias) FROM {link} WHERE {one.table}_id = {one.table}.id)"
        for link in one.aliases
    ]
    return literal_column(f"json_array({', '.join(f'json({one})' for one in lists)})")


def _number(table: Table) -> ColumnElement[Any]:
    """The number of the object that a row is, or belongs to."""
    name = table.name
    if name == "object":
        return blank(table.c.number)
    if "object_id" not in table.c:
        return _NOTHING
    owners = [f"{name}.object_id"]
    if name == "statement":  # of which this is only one of several subjects
        owners += [
            f"(SELECT object_id FROM {subject} WHERE id = statement.{subject}_id)"
            for subject in STATEMENT_SUBJECTS
            if subject != "object"
        ]
    found = owners[0] if len(owners) == 1 else f"coalesce({', '.join(owners)})"
    return literal_column(f"coalesce((SELECT number FROM object WHERE id = {found}), '')")


def _mark(table: Table) -> ColumnElement[Any]:
    """The part or place that a row is, or is about."""
    if "mark" in table.c:
        return blank(table.c.mark)
    if table.name == "treatment":
        return blank(table.c.ref)
    at, name = [], table.name
    if "place_id" in table.c:
        at.append(f"(SELECT mark FROM place WHERE id = {name}.place_id)")
    if "layer_id" in table.c:
        at.append(
            "(SELECT mark FROM place WHERE id ="
            f" (SELECT place_id FROM layer WHERE id = {name}.layer_id))"
        )
    if "component_id" in table.c:
        at.append(f"(SELECT mark FROM component WHERE id = {name}.component_id)")
    if name == "intervention":
        at.append(
            "(SELECT p.mark FROM intervention_place i CROSS JOIN place p ON p.id = i.place_id"
            " WHERE i.intervention_id = intervention.id ORDER BY i.position LIMIT 1)"
        )
    return literal_column(f"coalesce({', '.join(at)}, '')") if at else _NOTHING


def _date(table: Table) -> ColumnElement[Any]:
    """The day of it as it was written."""
    prefix = next((one for one in ("date", "begun", "since") if f"{one}_words" in table.c), "")
    if not prefix:
        return _NOTHING
    return literal_column(f"coalesce({table.name}.{prefix}_words, {table.name}.{prefix}_edtf, '')")


def _matter(table: Table) -> ColumnElement[Any]:
    """The material of it."""
    if table.name in ("material", "statement") or "material_id" not in table.c:
        return _NOTHING
    named = f"(SELECT coalesce(name, key) FROM material WHERE id = {table.name}.material_id)"
    return literal_column(f"coalesce({named}, {table.name}.material_words, '')")


def _shown(one: Searched) -> Shown:
    table = metadata.tables[one.table]
    written = [name.removesuffix("_folded") for name in one.names]
    number = _number(table)
    wanted = table.c.id.in_(select(_WANTED.c.value))
    statement = select(
        table.c.id,
        number.label("object"),
        _mark(table).label("mark"),
        _date(table).label("date"),
        _matter(table).label("matter"),
        _aliases(one).label("aliases"),
        *(blank(table.c[name]).label(f"text_{name}") for name in (*written, *one.words)),
    ).where(wanted)
    owned = select(table.c.id).where(wanted, number == bindparam("number"))
    kind = _KINDS.get(one.table, one.table.replace("_", " "))
    return Shown(kind, Question(statement), Question(owned), len(written), len(one.words))


SHOWN = {one.table: _shown(one) for one in SEARCHED}
"""By table, in the order in which what was found is listed."""
