"""The records of one material: names, values, parameters, traits, hazards, each as it is known."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import replace
from typing import Any

from sqlalchemy import (
    BindParameter,
    ColumnElement,
    Connection,
    Table,
    bindparam,
    literal_column,
    select,
)

from conservedb.knowledge.behaviour import Hansen
from conservedb.knowledge.solvents import Teas, teas
from conservedb.questions.asking import Question, Row, blank, cited, dated
from conservedb.questions.basics import When
from conservedb.questions.evidence import BLANK, source_of, when
from conservedb.questions.material_answers import (
    Fractions,
    HazardRow,
    Name,
    Parameters,
    Part,
    Period,
    RestrictionRow,
    Solubility,
    Told,
    Value,
)
from conservedb.questions.meanings import classes_below
from conservedb.records import behaviour as records
from conservedb.records.hazards import exposure_limit, hazard, hazard_statement, restriction
from conservedb.records.materials import (
    material,
    material_alias,
    material_class,
    material_part,
)
from conservedb.records.people import person
from conservedb.records.sources import source

ID: BindParameter[int] = bindparam("id")


class Recorded:
    """The rows of a table about one owner, each with how it is known."""

    def __init__(
        self, table: Table, *columns: ColumnElement[Any], owner: str = "material_id"
    ) -> None:
        confirmed = "confirmed_by_id" in table.c
        told: list[ColumnElement[Any]] = [blank(table.c.basis).label("basis"), *cited(source)]
        told.append(blank(table.c.page if confirmed else literal_column("''")).label("page"))
        told.append(blank(table.c.note).label("note"))
        if confirmed:
            told += [blank(person.c.name).label("confirmed_by"), *dated(table, "confirmed")]
        chosen = select(table.c.id, *columns, *told).outerjoin_from(
            table, source, source.c.id == table.c.source_id
        )
        if confirmed:
            chosen = chosen.outerjoin(person, person.c.id == table.c.confirmed_by_id)
        if table is hazard:
            chosen = chosen.join(hazard_statement, hazard_statement.c.id == hazard.c.statement_id)
        order = table.c.position if "position" in table.c else table.c.id
        self.question = Question(chosen.where(table.c[owner] == ID).order_by(order, table.c.id))
        self._source = self.question.at("source_ref")
        self._confirmed = self.question.at("confirmed_words") if confirmed else None

    def rows(self, connection: Connection, owner: int) -> list[tuple[Row, Told]]:
        """Every row, in the order in which it is to be shown."""
        return [(row, self._told(row)) for row in self.question.all(connection, id=owner)]

    def date(self, row: Row, prefix: str) -> When:
        """The date of a row whose columns begin with `prefix`."""
        return when(row, self.question.at(f"{prefix}_words"))

    def _told(self, row: Row) -> Told:
        found = source_of(row, self._source)
        if found is not None and row.page:
            found = replace(found, page=row.page)
        if self._confirmed is None:
            return Told(row.basis, found, "", BLANK, row.note)
        return Told(row.basis, found, row.confirmed_by, when(row, self._confirmed), row.note)


def _named(table: Table) -> list[ColumnElement[Any]]:
    return [table.c.key, blank(table.c.name).label("name")]


_values, _hansen, _solubility = records.material_value, records.hansen, records.solubility
_parts, _period, _trait = records.solubility_part, records.period, records.trait
MATERIAL = Question(
    select(
        *_named(material),
        material.c.class_id,
        blank(material.c.note).label("note"),
        records.stand_in.c.as_id,
    )
    .outerjoin_from(material, records.stand_in, records.stand_in.c.material_id == material.c.id)
    .where(material.c.id == ID)
)
CLASS = Question(
    select(material_class.c.id, *_named(material_class), material_class.c.parent_id).where(
        material_class.c.id == ID
    )
)
_ALIASES = Question(
    select(material_alias.c.alias)
    .where(material_alias.c.material_id == ID)
    .order_by(material_alias.c.position)
)
_TRADE_NAMES = Question(
    select(records.trade_name.c.alias)
    .where(records.trade_name.c.material_id == ID)
    .order_by(records.trade_name.c.position)
)
_PARTS = Question(
    select(
        *_named(material),
        material_part.c.amount,
        blank(material_part.c.unit).label("unit"),
        blank(material_part.c.note).label("note"),
    )
    .join_from(material_part, material, material.c.id == material_part.c.part_id)
    .where(material_part.c.material_id == ID)
    .order_by(material_part.c.id)
)
_RECIPES = Question(
    select(*_named(material))
    .join_from(material_part, material, material.c.id == material_part.c.material_id)
    .where(material_part.c.part_id == ID)
    .order_by(material.c.key)
)
_SUBCLASSES = Question(
    select(*_named(material_class)).where(material_class.c.parent_id == ID).order_by("key")
)
_MEMBERS = Question(
    select(*_named(material))
    .where(
        material.c.class_id.in_(
            classes_below(select(material_class.c.id).where(material_class.c.id == ID))
        )
    )
    .order_by(material.c.key)
)
VALUES = Recorded(
    _values,
    _values.c.property,
    _values.c.low,
    _values.c.high,
    blank(_values.c.words).label("words"),
    blank(_values.c.condition).label("condition"),
)
_HANSEN = Recorded(
    _hansen,
    *(_hansen.c[name] for name in ("d", "p", "h", "r0", "position")),
    *(blank(_hansen.c[name]).label(name) for name in ("use", "quality", "condition")),
)
_TEAS = Recorded(records.teas, *(records.teas.c[name] for name in ("d", "p", "h")))
_SOLUBILITIES = Recorded(
    _solubility,
    blank(_solubility.c.state).label("state"),
    _solubility.c.effect,
    blank(_solubility.c.form).label("form"),
    _solubility.c.temperature_c,
    _solubility.c.dwell_min,
    blank(_solubility.c.condition).label("condition"),
)
_AGENTS = Question(
    select(_parts.c.solubility_id, *_named(material), _parts.c.share)
    .join_from(_parts, material, material.c.id == _parts.c.material_id)
    .where(
        _parts.c.solubility_id.in_(select(_solubility.c.id).where(_solubility.c.material_id == ID))
    )
    .order_by(_parts.c.solubility_id, _parts.c.position)
)
TRAITS = {
    owner: Recorded(
        _trait, _trait.c.trait, _trait.c.holds, blank(_trait.c.effect).label("effect"), owner=owner
    )
    for owner in ("material_id", "class_id")
}
_PERIODS = Recorded(_period, _period.c.mark, *dated(_period, "date"))
_HAZARDS = Recorded(
    hazard,
    hazard_statement.c.code,
    hazard_statement.c.wording,
    blank(hazard_statement.c.band).label("band"),
    *dated(hazard, "checked"),
)
LIMITS = Recorded(
    exposure_limit,
    *(exposure_limit.c[name] for name in ("kind", "ppm", "mg_m3", "jurisdiction")),
    blank(exposure_limit.c.skin).label("skin"),
    *dated(exposure_limit, "as_of"),
)
_RESTRICTIONS = Recorded(
    restriction, restriction.c.jurisdiction, restriction.c.text, *dated(restriction, "since")
)
STATEMENTS = (
    MATERIAL,
    CLASS,
    _ALIASES,
    _TRADE_NAMES,
    _PARTS,
    _RECIPES,
    _SUBCLASSES,
    _MEMBERS,
    _AGENTS,
    *(
        recorded.question
        for recorded in (
            VALUES,
            _HANSEN,
            _TEAS,
            _SOLUBILITIES,
            *TRAITS.values(),
            _PERIODS,
            _HAZARDS,
            LIMITS,
            _RESTRICTIONS,
        )
    ),
)


def name_of(row: Row) -> Name:
    """Key and name of a row."""
    return Name(row.key, row.name or row.key)


def names(connection: Connection, owner: int) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Aliases and trade names."""
    asked = (_ALIASES, _TRADE_NAMES)
    aliases, trade = (tuple(row.alias for row in one.all(connection, id=owner)) for one in asked)
    return aliases, trade


def recipe(connection: Connection, owner: int) -> tuple[tuple[Part, ...], tuple[Name, ...]]:
    """The parts of a recipe, and the recipes that contain the material."""
    parts = tuple(
        Part(row.key, row.name or row.key, row.amount, row.unit, row.note)
        for row in _PARTS.all(connection, id=owner)
    )
    return parts, tuple(name_of(row) for row in _RECIPES.all(connection, id=owner))


def within(connection: Connection, klass: int) -> tuple[tuple[Name, ...], tuple[Name, ...]]:
    """The classes directly below a class, and every material in it."""
    below, members = (
        tuple(name_of(row) for row in one.all(connection, id=klass))
        for one in (_SUBCLASSES, _MEMBERS)
    )
    return below, members


def values(connection: Connection, owner: int, of: str) -> dict[str, list[Value]]:
    """Every value, by property."""
    found: dict[str, list[Value]] = defaultdict(list)
    for row, told in VALUES.rows(connection, owner):
        unit = records.UNITS.get(row.property, "")
        found[row.property].append(
            Value(row.low, row.high, unit, row.words, row.condition, told, of)
        )
    return found


def parameters(connection: Connection, owner: int, of: str) -> list[Parameters]:
    """Every published set of Hansen parameters, the preferred one first."""
    rows = _HANSEN.rows(connection, owner)
    first = rows[0][0].position if rows else 0
    return [
        Parameters(
            Hansen(row.d, row.p, row.h),
            row.r0,
            row.use,
            row.quality,
            row.condition,
            row.position == first,
            teas(Hansen(row.d, row.p, row.h)),
            told,
            of,
        )
        for row, told in rows
    ]


def fractions(connection: Connection, owner: int, of: str) -> list[Fractions]:
    """Published Teas fractions."""
    return [
        Fractions(Teas(row.d, row.p, row.h), told, of)
        for row, told in _TEAS.rows(connection, owner)
    ]


def solubilities(connection: Connection, owner: int, of: str) -> list[Solubility]:
    """What agents were seen to do: aged material first, then fresh, then what is not stated."""
    agents: dict[int, list[str]] = defaultdict(list)
    for row in _AGENTS.all(connection, id=owner):
        share = f"{row.share:g} % " if row.share is not None else ""
        agents[row.solubility_id].append(f"{share}{row.name or row.key}")
    found = [
        Solubility(
            " + ".join(agents.get(row.id, ())) or "agent not recorded",
            row.state or "not stated",
            row.effect,
            row.form,
            row.temperature_c,
            row.dwell_min,
            row.condition,
            told,
            of,
        )
        for row, told in _SOLUBILITIES.rows(connection, owner)
    ]
    order = ("aged", "fresh", "not stated")
    return sorted(found, key=lambda one: order.index(one.state))


def periods(connection: Connection, owner: int, of: str) -> list[Period]:
    """When it could be had, was taken into use, was given up."""
    return [
        Period(row.mark, _PERIODS.date(row, "date"), told, of)
        for row, told in _PERIODS.rows(connection, owner)
    ]


def hazards(connection: Connection, owner: int) -> tuple[HazardRow, ...]:
    """Hazard statements."""
    return tuple(
        HazardRow(row.code, row.wording, row.band, _HAZARDS.date(row, "checked"), told)
        for row, told in _HAZARDS.rows(connection, owner)
    )


def restrictions(connection: Connection, owner: int) -> tuple[RestrictionRow, ...]:
    """What the law says where."""
    return tuple(
        RestrictionRow(row.jurisdiction, row.text, _RESTRICTIONS.date(row, "since"), told)
        for row, told in _RESTRICTIONS.rows(connection, owner)
    )
