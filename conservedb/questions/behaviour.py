"""How materials behave, read from the reference tables and what the department added to them.

The tables are read whole, once per answer: they hold a few thousand rows at most, and a plan
needs nearly all of the solvents.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping
from typing import Any

from sqlalchemy import ColumnElement, Connection, Table, select

from conservedb.knowledge.behaviour import (
    Agent,
    Fact,
    Hansen,
    Hazard,
    Limit,
    Matter,
    Part,
    Restriction,
    Solvent,
    Sphere,
    Trait,
    Warmth,
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


_MATERIALS = Question(
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
_CLASSES = Question(
    select(
        material_class.c.id,
        material_class.c.key,
        blank(material_class.c.name).label("name"),
        material_class.c.parent_id,
    )
)
_PARTS = Question(
    select(material_part.c.material_id, material_part.c.part_id).order_by(material_part.c.id)
)
_TRAITS = _rows_of(
    records.trait,
    records.trait.c.material_id,
    records.trait.c.class_id,
    records.trait.c.trait,
    records.trait.c.holds,
    blank(records.trait.c.effect).label("effect"),
)
_HANSEN = Question(
    select(
        *(records.hansen.c[n] for n in ("material_id", "d", "p", "h", "r0")),
        blank(records.hansen.c.use).label("use"),
        blank(records.hansen.c.quality).label("quality"),
        *_told(records.hansen),
    )
    .outerjoin_from(records.hansen, source, source.c.id == records.hansen.c.source_id)
    .order_by(records.hansen.c.material_id, records.hansen.c.position, records.hansen.c.id)
)
_VALUES = _rows_of(
    records.material_value,
    *(records.material_value.c[n] for n in ("material_id", "property", "low", "high")),
    blank(records.material_value.c.words).label("words"),
    blank(records.material_value.c.condition).label("condition"),
)
_FACTS = _rows_of(
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
_FACT_PARTS = Question(
    select(records.solubility_part.c.solubility_id, material.c.key, records.solubility_part.c.share)
    .join_from(
        records.solubility_part, material, material.c.id == records.solubility_part.c.material_id
    )
    .order_by(records.solubility_part.c.solubility_id, records.solubility_part.c.position)
)
_HAZARDS = Question(
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
_LIMITS = _rows_of(
    exposure_limit,
    *(exposure_limit.c[n] for n in ("material_id", "kind", "ppm", "mg_m3", "skin", "jurisdiction")),
    *dated(exposure_limit, "as_of"),
)
_RESTRICTIONS = _rows_of(
    restriction,
    *(restriction.c[n] for n in ("material_id", "jurisdiction", "text")),
    *dated(restriction, "since"),
)
_SETTINGS = Question(select(setting.c.name, blank(setting.c.value).label("value")))
STATEMENTS = (
    _MATERIALS,
    _CLASSES,
    _PARTS,
    _TRAITS,
    _HANSEN,
    _VALUES,
    _FACTS,
    _FACT_PARTS,
    _HAZARDS,
    _LIMITS,
    _RESTRICTIONS,
    _SETTINGS,
)


def cite(row: Row) -> str:
    """Where a row says that it is from, in words."""
    words: str = row.citation or row.source_ref
    page = getattr(row, "page", "")
    return f"{words}, {page}" if words and page else words


class Materials:
    """Every material and class of one database, each made into a `Matter` when asked for."""

    def __init__(self, connection: Connection) -> None:
        self._rows = {row.id: row for row in _MATERIALS.all(connection)}
        self._ids = {row.key: row.id for row in self._rows.values()}
        self._classes = {row.id: row for row in _CLASSES.all(connection)}
        self._class_ids = {row.key: row.id for row in self._classes.values()}
        self._parts = _grouped(_PARTS.all(connection))
        traits = _TRAITS.all(connection)
        self._own_traits = _grouped([row for row in traits if row.material_id is not None])
        self._class_traits = _grouped([row for row in traits if row.class_id is not None], 1)
        self._hansen = _grouped(_HANSEN.all(connection))
        self._values = _grouped(_VALUES.all(connection))
        self._facts = _facts(connection)
        self._settings = {row.name: row.value for row in _SETTINGS.all(connection)}
        self._connection = connection
        self._made: dict[int, Matter] = {}
        self._liquids: dict[str, Solvent] | None = None

    def of(self, material_id: int) -> Matter:
        """A material by the id of its record."""
        if material_id not in self._made:
            self._made[material_id] = self._make(material_id, frozenset())
        return self._made[material_id]

    def known(self, key: str) -> int | None:
        """The id of the material of that key."""
        return self._ids.get(key)

    def named(self, material: str | None, klass: str) -> Matter | None:
        """The material of a key or, where only that is known, the class of one; else None."""
        if material is not None and material in self._ids:
            return self.of(self._ids[material])
        known = self._class_ids.get(klass)
        return self.of_class(known) if known is not None else None

    def ids(self) -> Iterable[int]:
        """The ids of all materials."""
        return self._rows

    def of_class(self, class_id: int) -> Matter:
        """What is known of a layer of which only the class is known: the rules of its class."""
        row = self._classes[class_id]
        name = row.name or row.key
        return Matter(row.key, name, self._inherited(class_id, {}), is_class=True)

    def class_path(self, material_id: int) -> tuple[str, ...]:
        """The keys of the class of a material and of those above it, nearest first."""
        return tuple(self._classes[one].key for one in self._path(self._rows[material_id].class_id))

    def setting(self, name: str) -> str:
        """What the department has settled; "" where it has not."""
        value: str = self._settings.get(name, "")
        return value

    def solvents(self) -> dict[str, Solvent]:
        """Every liquid with published parameters and no sphere of its own, by key."""
        if self._liquids is None:
            self._liquids = self._solvents()
        return self._liquids

    # -- materials ------------------------------------------------------------------------

    def _make(self, material_id: int, within: frozenset[int]) -> Matter:
        row = self._rows[material_id]
        behaves = row.as_id if row.as_id in self._rows and row.as_id not in within else None
        traits = self._traits(material_id)
        stand_in = None
        if behaves is not None:
            stand_in = self._make(behaves, within | {material_id})
            traits = {**stand_in.traits, **traits}
        spheres, facts = self._spheres(material_id), tuple(self._facts.get(material_id, ()))
        warmth = self._warmth(material_id)
        parts = tuple(
            self._make(part, within | {material_id})
            for _, part in self._parts.get(material_id, ())
            if part not in within and part != material_id
        )
        if stand_in is not None:
            spheres, facts = spheres or stand_in.spheres, facts + stand_in.facts
            warmth, parts = warmth or stand_in.warmth, parts or stand_in.parts
        return Matter(
            row.key,
            row.name or row.key,
            traits,
            spheres,
            facts,
            warmth,
            parts,
            stand_in=stand_in.key if stand_in is not None else "",
        )

    def _traits(self, material_id: int) -> dict[str, Trait]:
        row = self._rows[material_id]
        own = {
            one.trait: _trait(one, row.name or row.key)
            for one in self._own_traits.get(material_id, ())
        }
        return self._inherited(row.class_id, own)

    def _inherited(self, class_id: int | None, own: dict[str, Trait]) -> dict[str, Trait]:
        for klass in self._path(class_id):
            name = self._classes[klass].name or self._classes[klass].key
            for one in self._class_traits.get(klass, ()):
                own.setdefault(one.trait, _trait(one, name))
        return own

    def _path(self, class_id: int | None) -> list[int]:
        path: list[int] = []
        while class_id is not None and class_id not in path:
            path.append(class_id)
            class_id = self._classes[class_id].parent_id
        return path

    def _spheres(self, material_id: int) -> tuple[Sphere, ...]:
        return tuple(
            Sphere(
                Hansen(row.d, row.p, row.h),
                row.r0,
                row.use or "dissolution",
                row.quality,
                row.basis,
                cite(row),
            )
            for row in self._hansen.get(material_id, ())
            if row.r0 is not None
        )

    def _warmth(self, material_id: int) -> tuple[Warmth, ...]:
        return tuple(
            Warmth(
                row.property,
                row.low,
                row.high if row.high is not None else row.low,
                row.basis,
                row.confirmed_by_id is not None,
                cite(row),
                row.condition,
            )
            for row in self._values.get(material_id, ())
            if row.property in WARMTH and row.low is not None
        )

    # -- liquids --------------------------------------------------------------------------

    def _solvents(self) -> dict[str, Solvent]:
        hazards = _grouped(_HAZARDS.all(self._connection))
        limits = _grouped(_LIMITS.all(self._connection))
        restrictions = _grouped(_RESTRICTIONS.all(self._connection))
        found = {}
        for material_id, row in self._rows.items():
            published = self._hansen.get(material_id, ())
            at = tuple(Hansen(one.d, one.p, one.h) for one in published if one.r0 is None)
            traits = self._traits(material_id)
            liquid = any(
                trait in traits and traits[trait].holds == "yes"
                for trait in ("organic solvent", "water", "acid", "alkali")
            )
            if not liquid or any(one.r0 is not None for one in published):
                continue
            found[row.key] = self._solvent(
                row,
                at,
                traits,
                tuple(_hazard(one) for one in hazards.get(material_id, ())),
                tuple(_limit(one) for one in limits.get(material_id, ())),
                tuple(_restriction(one) for one in restrictions.get(material_id, ())),
            )
        return found

    def _solvent(
        self,
        row: Row,
        at: tuple[Hansen, ...],
        traits: Mapping[str, Trait],
        hazards: tuple[Hazard, ...],
        limits: tuple[Limit, ...],
        restrictions: tuple[Restriction, ...],
    ) -> Solvent:
        values = {}
        for one in reversed(self._values.get(row.id, [])):
            values[one.property] = one

        def number(name: str) -> float | None:
            low: float | None = values[name].low if name in values else None
            return low

        def words(name: str) -> str:
            found: str = values[name].words if name in values else ""
            return found

        bands = [one.band for one in hazards if one.band]
        return Solvent(
            row.key,
            row.name or row.key,
            at,
            words("hazard band") or max(bands, default=""),
            hazards,
            words("flash point"),
            number("flash point"),
            number("boiling point"),
            number("vapour pressure"),
            words("water miscibility"),
            limits,
            restrictions,
            traits,
            row.note,
        )


def materials(connection: Connection) -> Materials:
    """How every material of this database behaves."""
    return Materials(connection)


def _grouped(rows: Iterable[Row], at: int = 0) -> dict[int, list[Row]]:
    found: dict[int, list[Row]] = defaultdict(list)
    for row in rows:
        found[row[at]].append(row)
    return found


def _facts(connection: Connection) -> dict[int, list[Fact]]:
    parts: dict[int, list[Part]] = defaultdict(list)
    for owner, key, share in _FACT_PARTS.all(connection):
        parts[owner].append(Part(key, 100.0 if share is None else share))
    found: dict[int, list[Fact]] = defaultdict(list)
    for row in _FACTS.all(connection):
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


def _trait(row: Row, via: str) -> Trait:
    return Trait(row.holds, row.effect, row.basis, cite(row), via)


_CHECKED = _HAZARDS.at("checked_words")
_AS_OF = _LIMITS.at("as_of_words")
_SINCE = _RESTRICTIONS.at("since_words")


def _said(row: Row, at: int) -> str:
    date = when(row, at)
    return "" if date is BLANK else date.said


def _hazard(row: Row) -> Hazard:
    checked = _said(row, _CHECKED)
    return Hazard(row.code, row.wording, row.band, row.basis, cite(row), checked)


def _limit(row: Row) -> Limit:
    as_of = _said(row, _AS_OF)
    return Limit(
        row.kind, row.ppm, row.mg_m3, row.skin == "yes", row.jurisdiction, as_of, cite(row)
    )


def _restriction(row: Row) -> Restriction:
    return Restriction(row.jurisdiction, row.text, _said(row, _SINCE), row.basis, cite(row))
