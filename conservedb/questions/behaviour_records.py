"""The questions that read how materials behave, and their rows as plain values."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from typing import Any

from sqlalchemy import ColumnElement, Connection, Table, select

from conservedb.knowledge.behaviour import (
    Agent,
    Fact,
    Hazard,
    Limit,
    Part,
    Restriction,
    Trait,
)
from conservedb.questions.asking import Question, Row, blank, dated
from conservedb.questions.evidence import BLANK, when
from conservedb.records import behaviour as records
from conservedb.records.hazards import exposure_limit, hazard, hazard_statement, restriction
from conservedb.records.materials import material, material_class, material_part
from conservedb.records.rules import setting
from conservedb.records.sources import source

WARMTH = ("glass transition", "softening", "melting")


def _told(table: Table) -> list[Any]:
    """Basis, source and, where it has them, page and confirmation of a row."""
    columns: list[Any] = [blank(table.c.basis).label("basis")]
    columns.append(blank(source.c.citation).label("citation"))
    columns.append(blank(source.c.ref).label("source_ref"))
    if "page" in table.c:
        columns.append(blank(table.c.page).label("page"))
    if "confirmed_by_id" in table.c:
        columns.append(table.c.confirmed_by_id)
    return columns


def _rows_of(table: Table, *columns: ColumnElement[Any]) -> Question:
    return Question(
        select(*columns, *_told(table))
        .outerjoin_from(table, source, source.c.id == table.c.source_id)
        .order_by(table.c.id)
    )


MATERIALS = Question(
    select(
        material.c.id,
        material.c.key,
        blank(material.c.name).label("name"),
        material.c.class_id,
        records.stand_in.c.as_id,
        blank(material.c.note).label("note"),
    )
    .outerjoin_from(material, records.stand_in, records.stand_in.c.material_id == material.c.id)
    .order_by(material.c.id)
)
CLASSES = Question(
    select(
        material_class.c.id,
        material_class.c.key,
        blank(material_class.c.name).label("name"),
        material_class.c.parent_id,
    )
)
PARTS = Question(
    select(material_part.c.material_id, material_part.c.part_id).order_by(material_part.c.id)
)
TRAITS = _rows_of(
    records.trait,
    records.trait.c.material_id,
    records.trait.c.class_id,
    records.trait.c.trait,
    records.trait.c.holds,
    blank(records.trait.c.effect).label("effect"),
)
HANSEN = Question(
    select(
        *(records.hansen.c[n] for n in ("material_id", "d", "p", "h", "r0")),
        blank(records.hansen.c.use).label("use"),
        blank(records.hansen.c.quality).label("quality"),
        *_told(records.hansen),
    )
    .outerjoin_from(records.hansen, source, source.c.id == records.hansen.c.source_id)
    .order_by(records.hansen.c.material_id, records.hansen.c.position, records.hansen.c.id)
)
VALUES = _rows_of(
    records.material_value,
    *(records.material_value.c[n] for n in ("material_id", "property", "low", "high")),
    blank(records.material_value.c.words).label("words"),
    blank(records.material_value.c.condition).label("condition"),
)
FACTS = _rows_of(
    records.solubility,
    records.solubility.c.id,
    records.solubility.c.material_id,
    blank(records.solubility.c.state).label("state"),
    records.solubility.c.effect,
    blank(records.solubility.c.form).label("form"),
    records.solubility.c.temperature_c,
    records.solubility.c.dwell_min,
    blank(records.solubility.c.condition).label("condition"),
)
FACT_PARTS = Question(
    select(records.solubility_part.c.solubility_id, material.c.key, records.solubility_part.c.share)
    .join_from(
        records.solubility_part, material, material.c.id == records.solubility_part.c.material_id
    )
    .order_by(records.solubility_part.c.solubility_id, records.solubility_part.c.position)
)
HAZARDS = Question(
    select(
        hazard.c.material_id,
        hazard_statement.c.code,
        hazard_statement.c.wording,
        blank(hazard_statement.c.band).label("band"),
        *dated(hazard, "checked"),
        *_told(hazard),
    )
    .join_from(hazard, hazard_statement, hazard_statement.c.id == hazard.c.statement_id)
    .outerjoin(source, source.c.id == hazard.c.source_id)
    .order_by(hazard.c.id)
)
LIMITS = _rows_of(
    exposure_limit,
    *(exposure_limit.c[n] for n in ("material_id", "kind", "ppm", "mg_m3", "skin", "jurisdiction")),
    *dated(exposure_limit, "as_of"),
)
RESTRICTIONS = _rows_of(
    restriction,
    *(restriction.c[n] for n in ("material_id", "jurisdiction", "text")),
    *dated(restriction, "since"),
)
SETTINGS = Question(select(setting.c.name, blank(setting.c.value).label("value")))
STATEMENTS = (
    MATERIALS,
    CLASSES,
    PARTS,
    TRAITS,
    HANSEN,
    VALUES,
    FACTS,
    FACT_PARTS,
    HAZARDS,
    LIMITS,
    RESTRICTIONS,
    SETTINGS,
)


def cite(row: Row) -> str:
    """Where a row says that it is from: the short reference, then the whole citation."""
    page = getattr(row, "page", "")
    words = f"{row.citation}, {page}" if row.citation and page else row.citation or page
    return f"{row.source_ref}: {words}" if words and row.source_ref else row.source_ref or words


def grouped(rows: Iterable[Row], at: int = 0) -> dict[int, list[Row]]:
    """Rows by the number in one of their columns."""
    found: dict[int, list[Row]] = defaultdict(list)
    for row in rows:
        found[row[at]].append(row)
    return found


def facts_of(connection: Connection) -> dict[int, list[Fact]]:
    """What agents were seen to do to each material, by its id."""
    parts: dict[int, list[Part]] = defaultdict(list)
    for owner, key, share in FACT_PARTS.all(connection):
        parts[owner].append(Part(key, 100.0 if share is None else share))
    found: dict[int, list[Fact]] = defaultdict(list)
    for row in FACTS.all(connection):
        if row.id in parts:
            found[row.material_id].append(
                Fact(
                    Agent(tuple(parts[row.id]), row.form, row.temperature_c, row.dwell_min),
                    row.effect,
                    row.state or "not stated",
                    row.basis or "published",
                    row.confirmed_by_id is not None,
                    cite(row),
                    row.condition,
                )
            )
    return found


def trait_of(row: Row, via: str) -> Trait:
    """A row as a trait."""
    return Trait(row.holds, row.effect, row.basis, cite(row), via)


_CHECKED = HAZARDS.at("checked_words")
_AS_OF = LIMITS.at("as_of_words")
_SINCE = RESTRICTIONS.at("since_words")


def _said(row: Row, at: int) -> str:
    date = when(row, at)
    return "" if date is BLANK else date.said


def hazard_of(row: Row) -> Hazard:
    """A row as a hazard."""
    checked = _said(row, _CHECKED)
    return Hazard(row.code, row.wording, row.band, row.basis, cite(row), checked)


def limit_of(row: Row) -> Limit:
    """A row as an exposure limit."""
    as_of = _said(row, _AS_OF)
    return Limit(
        row.kind, row.ppm, row.mg_m3, row.skin == "yes", row.jurisdiction, as_of, cite(row)
    )


def restriction_of(row: Row) -> Restriction:
    """A row as a restriction."""
    return Restriction(row.jurisdiction, row.text, _said(row, _SINCE), row.basis, cite(row))
