"""Everything on record about a material or a class: values with sources, and where it lies."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

from sqlalchemy import Connection

from conservedb.knowledge.solvents import vapour_hazard_ratio
from conservedb.questions import material_records as records
from conservedb.questions.asking import Row
from conservedb.questions.basics import AsOf
from conservedb.questions.material_answers import (
    LimitRow,
    MaterialAnswer,
    Name,
    Property,
    TraitRow,
    Value,
)
from conservedb.questions.material_where import whereabouts
from conservedb.questions.meanings import Meaning, meaning
from conservedb.records.behaviour import PROPERTIES

STATEMENTS = records.STATEMENTS
_ONE_WORD = ("water miscibility", "hazard band", "carcinogen group", "CAS number", "flash point")
"""Properties in words that can contradict each other; two remarks on ageing do not."""


def material_answer(connection: Connection, word: str, on: AsOf) -> MaterialAnswer:
    """Everything on record about what a word means, and where it lies on a day and ever.

    Args:
        word: a key, a name or an alias of a material or of a class.

    Raises:
        NoSuch: no material and no class bears the word.
        Ambiguous: several do.
    """
    meant = meaning(connection, word)
    if meant.kind == "material":
        return _material(connection, word, meant, on)
    return _class(connection, word, meant, on)


def _material(connection: Connection, word: str, meant: Meaning, on: AsOf) -> MaterialAnswer:
    own = records.MATERIAL.first(connection, id=meant.id)
    other = _other(connection, own)
    owners = [(meant.id, "")]
    if other is not None:
        owners.append((own.as_id, records.name_of(other).name))
    aliases, trade_names = records.names(connection, meant.id)
    parts, recipes = records.recipe(connection, meant.id)
    values = [records.values(connection, *owner) for owner in owners]
    return MaterialAnswer(
        word=word,
        kind=meant.kind,
        key=meant.key,
        name=meant.name or meant.key,
        on=on,
        note=own.note,
        aliases=aliases,
        trade_names=trade_names,
        classes=tuple(name for _, name in _path(connection, own.class_id)),
        behaves_as=records.name_of(other) if other is not None else None,
        subclasses=(),
        members=(),
        parts=parts,
        recipes=recipes,
        properties=_properties(values),
        hansen=tuple(one for owner in owners for one in records.parameters(connection, *owner)),
        teas=tuple(one for owner in owners for one in records.fractions(connection, *owner)),
        solubilities=tuple(
            one for owner in owners for one in records.solubilities(connection, *owner)
        ),
        traits=_traits(connection, meant.id, own, other),
        periods=tuple(one for owner in owners for one in records.periods(connection, *owner)),
        hazards=records.hazards(connection, meant.id),
        limits=_limits(connection, meant.id, values[0].get("vapour pressure", ())),
        restrictions=records.restrictions(connection, meant.id),
        where=whereabouts(connection, word, on),
    )


def _class(connection: Connection, word: str, meant: Meaning, on: AsOf) -> MaterialAnswer:
    path = _path(connection, meant.id)
    subclasses, members = records.within(connection, meant.id)
    return MaterialAnswer(
        word=word,
        kind=meant.kind,
        key=meant.key,
        name=meant.name or meant.key,
        on=on,
        note="",
        aliases=(),
        trade_names=(),
        classes=tuple(name for _, name in path[1:]),
        behaves_as=None,
        subclasses=subclasses,
        members=members,
        parts=(),
        recipes=(),
        properties=(),
        hansen=(),
        teas=(),
        solubilities=(),
        traits=_nearest_count(_of_classes(connection, path, inherited_from=1)),
        periods=(),
        hazards=(),
        limits=(),
        restrictions=(),
        where=whereabouts(connection, word, on),
    )


def _other(connection: Connection, own: Row) -> Row:
    """The material that this one behaves as, None where it stands for itself."""
    return None if own.as_id is None else records.MATERIAL.first(connection, id=own.as_id)


def _path(connection: Connection, class_id: int | None) -> list[tuple[int, Name]]:
    """A class and those above it, nearest first."""
    path: list[tuple[int, Name]] = []
    seen: set[int] = set()
    while class_id is not None and class_id not in seen:
        seen.add(class_id)
        row = records.CLASS.first(connection, id=class_id)
        path.append((class_id, records.name_of(row)))
        class_id = row.parent_id
    return path


# -- values ---------------------------------------------------------------------------------


def _properties(owners: Sequence[dict[str, list[Value]]]) -> tuple[Property, ...]:
    """Properties in the order of the list of all, each with all its values."""
    found = []
    for name in PROPERTIES:
        values = tuple(value for owner in owners for value in owner.get(name, ()))
        if values:
            found.append(Property(name, values, differ(name, values)))
    return tuple(found)


def differ(name: str, values: Sequence[Value]) -> str:
    """Whether sources contradict each other about a property, and how.

    Numbers do where their ranges do not meet; words only where one word is asked for. What
    one source says twice is no contradiction between sources.
    """
    rivals = [
        pair for pair in combinations(values, 2) if _two_sources(*pair) and _apart(name, *pair)
    ]
    if not rivals:
        return ""
    if any(not (one.condition and other.condition) for one, other in rivals):
        return "sources differ"
    if any(_same(one.condition, other.condition) for one, other in rivals):
        return "sources differ"
    return "sources differ, under different conditions"


def _two_sources(one: Value, other: Value) -> bool:
    refs = [value.told.source.ref if value.told.source else "" for value in (one, other)]
    return refs[0] != refs[1] or not refs[0]


def _apart(name: str, one: Value, other: Value) -> bool:
    if one.low is not None and other.low is not None:
        ends = [
            (value.low, value.low if value.high is None else value.high) for value in (one, other)
        ]
        (first, last), (low, high) = ends
        assert first is not None and last is not None and low is not None and high is not None
        return last < low or high < first
    if name not in _ONE_WORD:
        return False
    if one.low is None and other.low is None:
        return bool(one.words and other.words) and not _same(one.words, other.words)
    return _same("none", one.words if one.low is None else other.words)


def _same(one: str, other: str) -> bool:
    return one.strip().casefold() == other.strip().casefold()


# -- traits ---------------------------------------------------------------------------------


def _traits(connection: Connection, own_id: int, own: Row, other: Row) -> tuple[TraitRow, ...]:
    """Its own traits, those of its classes, and those of the material it behaves as."""
    found: list[TraitRow] = []
    for owner_id, row in ((own_id, own), (own.as_id, other)):
        if row is None:
            continue
        bearer = records.name_of(row)
        found += [
            TraitRow(one.trait, one.holds, one.effect, bearer, False, True, told)
            for one, told in records.TRAITS["material_id"].rows(connection, owner_id)
        ]
        found += _of_classes(connection, _path(connection, row.class_id), inherited_from=0)
    return _nearest_count(found)


def _of_classes(
    connection: Connection, path: Sequence[tuple[int, Name]], *, inherited_from: int
) -> list[TraitRow]:
    return [
        TraitRow(row.trait, row.holds, row.effect, name, depth >= inherited_from, True, told)
        for depth, (class_id, name) in enumerate(path)
        for row, told in records.TRAITS["class_id"].rows(connection, class_id)
    ]


def _nearest_count(rows: Sequence[TraitRow]) -> tuple[TraitRow, ...]:
    """Rows of one trait together; the nearest bearer counts, those further off are set aside."""
    nearest: dict[str, Name] = {}
    for row in rows:
        nearest.setdefault(row.trait, row.bearer)
    order = list(nearest)
    found = [
        TraitRow(
            row.trait,
            row.holds,
            row.effect,
            row.bearer,
            row.inherited,
            row.bearer == nearest[row.trait],
            row.told,
        )
        for row in dict.fromkeys(rows)
    ]
    return tuple(sorted(found, key=lambda row: order.index(row.trait)))


# -- limits ---------------------------------------------------------------------------------


def _limits(connection: Connection, owner: int, pressures: Sequence[Value]) -> tuple[LimitRow, ...]:
    """Exposure limits, with how many times air saturated with the vapour exceeds each."""
    kpa = next((one.low for one in pressures if one.low), None)
    return tuple(
        LimitRow(
            row.kind,
            row.ppm,
            row.mg_m3,
            row.skin,
            row.jurisdiction,
            records.LIMITS.date(row, "as_of"),
            vapour_hazard_ratio(kpa, row.ppm) if kpa and row.ppm and row.kind == "TWA" else None,
            told,
        )
        for row, told in records.LIMITS.rows(connection, owner)
    )
