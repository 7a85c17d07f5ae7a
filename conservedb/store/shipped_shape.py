"""How a row of a shipped table becomes the fields of a record, and what a record holds by now."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterator, Mapping
from functools import cache
from typing import Any, NamedTuple

from sqlalchemy import REAL, Integer, Table

from conservedb import dates
from conservedb.records import behaviour, hazards, materials, rules, sources
from conservedb.records.base import DATE_PARTS
from conservedb.store.keys import fold

Fields = dict[str, Any]
Links = dict[str, list[tuple[Any, ...]]]
Ids = Mapping[str, Mapping[str, int]]
"""Ids of records that shipped rows refer to, by table and by shipped key."""

_BLANK_DATE = (None, None, dates.UNKNOWN_START, dates.UNKNOWN_END, 0, "blank")
_IDENTITY = ("id", "uuid", "entered")
_RENAMED = {("hazard", "code"): "statement"}


class Listed(NamedTuple):
    """A list in a cell, kept in a link table with these fields besides owner and position."""

    header: str
    table: str
    owner: str
    fields: tuple[str, str]
    ordered: tuple[str, ...] = ("position",)


class Shape(NamedTuple):
    """One shipped table. `beside`: a record whose key is taken goes in under another one."""

    table: Table
    key: tuple[str, ...] = ("key",)
    beside: bool = True
    lists: tuple[Listed, ...] = ()


def _names(header: str, table: str) -> Listed:
    return Listed(header, table, "material_id", ("alias", "alias_folded"))


SHAPES = {
    "material_classes": Shape(materials.material_class),
    "materials": Shape(
        materials.material,
        lists=(
            _names("aliases", "material_alias"),
            _names("trade_names", "trade_name"),
            Listed("behaves_as", "stand_in", "material_id", ("as_id", "note"), ordered=()),
        ),
    ),
    "material_parts": Shape(materials.material_part, ("material", "part"), beside=False),
    "sources": Shape(sources.source, ("ref",), beside=False),
    "material_values": Shape(behaviour.material_value),
    "hansen": Shape(behaviour.hansen),
    "teas": Shape(behaviour.teas),
    "solubilities": Shape(
        behaviour.solubility,
        lists=(Listed("agent", "solubility_part", "solubility_id", ("material_id", "share")),),
    ),
    "traits": Shape(behaviour.trait),
    "periods": Shape(behaviour.period),
    "hazard_statements": Shape(hazards.hazard_statement, ("code",), beside=False),
    "hazards": Shape(hazards.hazard),
    "exposure_limits": Shape(hazards.exposure_limit),
    "restrictions": Shape(hazards.restriction),
    "rules": Shape(rules.rule, beside=False),
    "settings": Shape(rules.setting, ("name",), beside=False),
}
"""Every table that may be shipped; each refers only to those before it (or to itself)."""


def key_fields(shape: Shape) -> tuple[str, ...]:
    """The columns by which records of a subject are told apart."""
    return tuple(name if name in shape.table.c else f"{name}_id" for name in shape.key)


def key_of(shape: Shape, row: Mapping[str, str], ids: Ids) -> tuple[Any, ...]:
    """The values of these columns for a shipped row."""
    return tuple(
        _field(shape.table, header, row[header].strip(), ids)[name]
        for header, name in zip(shape.key, key_fields(shape), strict=True)
    )


def fields_of(shape: Shape, row: Mapping[str, str], ids: Ids) -> Fields:
    """Every field of the record that a shipped row describes.

    Raises:
        KeyError: it names a column that is not there, or a record that is not shipped.
    """
    listed = {one.header for one in shape.lists}
    fields = dict(_blank(shape))
    for header, cell in row.items():
        if header not in listed and cell.strip():
            fields.update(_field(shape.table, header, cell, ids))
    return fields


@cache
def _blank(shape: Shape) -> Fields:
    """Every column that is content, with nothing recorded."""
    fields: Fields = {c.name: None for c in shape.table.columns if c.name not in _IDENTITY}
    for name in list(fields):
        if name.endswith("_earliest"):
            fields |= _date(name.removesuffix("_earliest"), _BLANK_DATE)
    if "position" in fields:
        fields["position"] = 0
    return fields


def content_fields(shape: Shape) -> tuple[str, ...]:
    """The columns that are content, in the order of `fields_of`."""
    return tuple(_blank(shape))


def _field(table: Table, header: str, cell: str, ids: Ids) -> Fields:
    name = _RENAMED.get((table.name, header), header)
    if f"{name}_id" in table.c:
        (pointer,) = table.c[f"{name}_id"].foreign_keys
        return {f"{name}_id": ids[pointer.column.table.name][cell.strip()]}
    if f"{name}_earliest" in table.c:
        found = dates.read(cell)
        return _date(name, (found.words or None, found.edtf or None, *found[2:]))
    kind = table.c[name].type
    if isinstance(kind, REAL | Integer):
        return {name: float(cell) if isinstance(kind, REAL) else int(cell)}
    folded = {f"{name}_folded": fold(cell)} if f"{name}_folded" in table.c else {}
    return {name: cell, **folded}


def _date(prefix: str, values: tuple[Any, ...]) -> Fields:
    return {f"{prefix}_{part}": value for part, value in zip(DATE_PARTS, values, strict=True)}


def links_of(shape: Shape, row: Mapping[str, str], ids: Ids) -> Links:
    """The items of the lists of a shipped row."""
    return {
        one.header: [_item(one, item, ids) for item in _split(row.get(one.header, ""))]
        for one in shape.lists
    }


def _split(cell: str) -> Iterator[str]:
    return filter(None, (item.strip() for item in cell.split(";")))


def _item(listed: Listed, item: str, ids: Ids) -> tuple[Any, ...]:
    if listed.fields[0] == "alias":
        return (item, fold(item))
    key, _, rest = item.partition(" ")
    if listed.header == "agent":
        return (ids["material"][key], float(rest) if rest else None)
    return (ids["material"][key], rest.strip("() ") or None)


def canonical(fields: Fields, links: Links) -> str:
    """The content of a record as one text that is the same for the same content."""
    content = {name: value for name, value in fields.items() if value is not None}
    for name in [n for n, value in content.items() if value == "blank" and n[-8:] == "_derived"]:
        for part in DATE_PARTS:
            content.pop(f"{name[:-8]}_{part}", None)
    content |= {header: [list(item) for item in items] for header, items in links.items() if items}
    return json.dumps(content, ensure_ascii=False, sort_keys=True)


def present(raw: sqlite3.Connection, subject: str) -> dict[int, str]:
    """By id, the content by now of every record of a subject that was shipped."""
    shape = SHAPES[subject]
    shipped = "IN (SELECT record_id FROM shipped WHERE subject = ?)"
    names = content_fields(shape)
    rows = raw.execute(
        f"SELECT id, {', '.join(names)} FROM {shape.table.name} WHERE id {shipped}", (subject,)
    ).fetchall()
    links: dict[int, Links] = {row[0]: {} for row in rows}
    for one in shape.lists:
        order = ", ".join((one.owner, *one.ordered))
        found = raw.execute(
            f"SELECT {one.owner}, {', '.join(one.fields)} FROM {one.table}"
            f" WHERE {one.owner} {shipped} ORDER BY {order}",
            (subject,),
        )
        for owner, *item in found:
            links[owner].setdefault(one.header, []).append(tuple(item))
    return {
        row[0]: canonical(dict(zip(names, row[1:], strict=True)), links[row[0]]) for row in rows
    }
