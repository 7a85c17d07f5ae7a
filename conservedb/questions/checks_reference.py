"""What rules need besides the objects: the rules themselves, settings, rooms, periods, names."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from sqlalchemy import ColumnElement, Connection, Table, literal_column, select, union

from conservedb.dates import DateError, Found, read_span
from conservedb.knowledge.behaviour import Matter
from conservedb.knowledge.rule_case import Climate, Period, Strength
from conservedb.knowledge.rules import Rule
from conservedb.knowledge.settled import Settled, number
from conservedb.questions.asking import Question, blank, dated
from conservedb.questions.behaviour import Materials, cite, materials
from conservedb.questions.checks_kinds import STATEMENTS as _KINDS
from conservedb.questions.checks_kinds import Kinds
from conservedb.records.base import DATE_PARTS
from conservedb.records.behaviour import material_value, period
from conservedb.records.materials import material, material_alias
from conservedb.records.rules import climate, rule
from conservedb.records.sources import source
from conservedb.store.keys import fold

_STRENGTHS: list[ColumnElement[str]] = [
    literal_column(f"'{name} strength'") for name in ("tensile", "shear")
]


def _told(table: Table) -> list[Any]:
    """Basis, citation, ref of the source, and page, as `behaviour.cite` reads them."""
    return [
        blank(table.c.basis).label("basis"),
        blank(source.c.citation).label("citation"),
        blank(source.c.ref).label("source_ref"),
        blank(table.c.page).label("page"),
    ]


_RULES = Question(
    select(
        rule.c.key,
        rule.c.title,
        rule.c.severity,
        rule.c.judges,
        rule.c.sentence,
        blank(rule.c.active).label("active"),
        *_told(rule),
    )
    .outerjoin_from(rule, source, source.c.id == rule.c.source_id)
    .order_by(rule.c.id)
)
_PERIODS = Question(
    select(
        material.c.key,
        period.c.mark,
        period.c.confirmed_by_id,
        *dated(period, "date"),
        *_told(period),
    )
    .join_from(period, material, material.c.id == period.c.material_id)
    .outerjoin(source, source.c.id == period.c.source_id)
    .order_by(period.c.id)
)
_STRENGTH = Question(
    select(
        material.c.key,
        material_value.c.property,
        material_value.c.low,
        material_value.c.high,
        blank(material_value.c.condition).label("condition"),
        *_told(material_value),
    )
    .join_from(material_value, material, material.c.id == material_value.c.material_id)
    .outerjoin(source, source.c.id == material_value.c.source_id)
    .where(material_value.c.property.in_(_STRENGTHS), material_value.c.low.is_not(None))
    .order_by(material_value.c.id)
)
_CLIMATES = Question(
    select(
        climate.c.room,
        climate.c.room_folded,
        blank(climate.c.use).label("use"),
        climate.c.max_c,
        climate.c.since_earliest,
        climate.c.until_latest,
        blank(source.c.ref).label("source"),
    )
    .outerjoin_from(climate, source, source.c.id == climate.c.source_id)
    .where(climate.c.max_c.is_not(None))
    .order_by(climate.c.id)
)
_NAMES = Question(
    union(
        select(material.c.name_folded.label("name"), material.c.id),
        select(material_alias.c.alias_folded, material_alias.c.material_id),
    )
)
STATEMENTS = (_RULES, _PERIODS, _STRENGTH, _CLIMATES, _NAMES, *_KINDS)


@dataclass(frozen=True)
class Reference:
    """Everything that is the same for every object.

    Attributes:
        rules: those switched on, by their keys.
        off: keys of those that the department has switched off.
        notes: settings that could not be read, each in a sentence.
    """

    materials: Materials
    kinds: Kinds
    rules: Mapping[str, Rule]
    off: tuple[str, ...]
    settled: Settled
    notes: tuple[str, ...]
    periods: Mapping[str, tuple[Period, ...]]
    strengths: Mapping[str, tuple[Strength, ...]]
    climates: tuple[Any, ...]
    names: Mapping[str, int]

    def carrier(self, words: str) -> Matter | None:
        """The material that the words for a carrier name, None where they name no single one."""
        if not words:
            return None
        folded = fold(words)
        known = self.materials.known(folded.replace(" ", "-"))
        known = known if known is not None else self.names.get(folded)
        return self.materials.of(known) if known is not None else None

    def climates_of(self, kept: str, day: int) -> tuple[Climate, ...]:
        """The climates recorded for where something is kept, on a day."""
        folded = fold(kept)
        return tuple(
            Climate(row.room, row.use, row.max_c, row.source)
            for row in self.climates
            if begins_with(folded, row.room_folded)
            and row.since_earliest <= day <= row.until_latest
        )


def begins_with(kept: str, room: str) -> bool:
    """Whether whereabouts are in a room: "store 1, bay 2" is in "store 1", "store 10" is not."""
    rest = kept[len(room) :]
    return bool(room) and kept.startswith(room) and not rest[:1].isalnum()


def reference(connection: Connection) -> Reference:
    """The rules and what they refer to, as this database has them."""
    known = materials(connection)
    rows = _RULES.all(connection)
    settled, notes = settings(known)
    return Reference(
        known,
        Kinds(connection, known),
        {
            row.key: Rule(
                row.key, row.title, row.severity, row.judges, row.sentence, row.basis, cite(row)
            )
            for row in rows
            if row.active != "no"
        },
        tuple(row.key for row in rows if row.active == "no"),
        settled,
        notes,
        _periods(connection),
        _strengths(connection),
        tuple(_CLIMATES.all(connection)),
        _names(connection),
    )


def settings(known: Materials) -> tuple[Settled, tuple[str, ...]]:
    """What the department has settled for the rules, and what of it could not be read."""
    notes: list[str] = []

    def settled(name: str) -> float:
        value, note = number(name, known.setting(name))
        notes.append(note)
        return value

    start, problem = _conduct_from(known.setting("conduct from"))
    found = Settled(
        settled("creep margin"),
        settled("solvent hold months"),
        settled("solvent depression"),
        settled("cellulose nitrate age"),
        start,
    )
    return found, tuple(note for note in (*notes, problem) if note)


def _conduct_from(words: str) -> tuple[int | None, str]:
    """The day from which conduct is judged, and why the words for it could not be read."""
    if not words:
        return None, ""
    try:
        found = read_span(words)
    except DateError as problem:
        return None, f"the setting 'conduct from' cannot be read, no conduct is judged: {problem}"
    return found.earliest, ""


def _periods(connection: Connection) -> dict[str, tuple[Period, ...]]:
    found: dict[str, list[Period]] = defaultdict(list)
    for row in _PERIODS.all(connection):
        from_memory = row.basis == "from memory" and row.confirmed_by_id is None
        date = Found(*row[_DATE : _DATE + len(DATE_PARTS)])
        found[row.key].append(Period(row.mark, date, from_memory, cite(row)))
    return {key: tuple(those) for key, those in found.items()}


_DATE = _PERIODS.at("date_words")


def _strengths(connection: Connection) -> dict[str, tuple[Strength, ...]]:
    found: dict[str, list[Strength]] = defaultdict(list)
    for row in _STRENGTH.all(connection):
        memory = "from memory" if row.basis == "from memory" else ""
        condition = "; ".join(words for words in (row.condition, memory) if words)
        high = row.high if row.high is not None else row.low
        found[row.key].append(Strength(row.property, row.low, high, condition, cite(row)))
    return {key: tuple(those) for key, those in found.items()}


def _names(connection: Connection) -> dict[str, int]:
    """Folded names and aliases that just one material bears."""
    bearers: dict[str, set[int]] = defaultdict(set)
    for name, bearer in _NAMES.all(connection):
        if name:
            bearers[name].add(bearer)
    return {name: next(iter(those)) for name, those in bearers.items() if len(those) == 1}
