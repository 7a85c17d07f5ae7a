"""How materials behave, read from the reference tables and what the department added to them.

The tables are read whole, once per answer: they hold a few thousand rows at most, and a plan
needs nearly all of the solvents.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from sqlalchemy import Connection

from conservedb.knowledge.behaviour import (
    Hansen,
    Hazard,
    Limit,
    Matter,
    Restriction,
    Solvent,
    Sphere,
    Trait,
    Warmth,
)
from conservedb.questions.asking import Row
from conservedb.questions.behaviour_records import (
    CLASSES,
    HANSEN,
    HAZARDS,
    LIMITS,
    MATERIALS,
    PARTS,
    RESTRICTIONS,
    SETTINGS,
    STATEMENTS,
    TRAITS,
    VALUES,
    WARMTH,
    cite,
    facts_of,
    grouped,
    hazard_of,
    limit_of,
    restriction_of,
    trait_of,
)

__all__ = ["STATEMENTS", "WARMTH", "Materials", "cite", "materials"]


class Materials:
    """Every material and class of one database, each made into a `Matter` when asked for."""

    def __init__(self, connection: Connection) -> None:
        self._rows = {row.id: row for row in MATERIALS.all(connection)}
        self._ids = {row.key: row.id for row in self._rows.values()}
        self._classes = {row.id: row for row in CLASSES.all(connection)}
        self._class_ids = {row.key: row.id for row in self._classes.values()}
        self._parts = grouped(PARTS.all(connection))
        traits = TRAITS.all(connection)
        self._own_traits = grouped([row for row in traits if row.material_id is not None])
        self._class_traits = grouped([row for row in traits if row.class_id is not None], 1)
        self._hansen = grouped(HANSEN.all(connection))
        self._values = grouped(VALUES.all(connection))
        self._facts = facts_of(connection)
        self._settings = {row.name: row.value for row in SETTINGS.all(connection)}
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

    def same_as(self, key: str) -> str:
        """The key of the material that one of this key behaves as; its own where none is named."""
        row = self._rows[self._ids[key]]
        return self._rows[row.as_id].key if row.as_id in self._rows else key

    def ids(self) -> Iterable[int]:
        """The ids of all materials."""
        return self._rows

    def classes(self) -> Mapping[str, int]:
        """The ids of all classes by their keys."""
        return self._class_ids

    def of_class(self, class_id: int) -> Matter:
        """What is known of a layer of which only the class is known: the rules of its class."""
        row = self._classes[class_id]
        name = row.name or row.key
        traits = self._inherited(class_id, {})
        for trait in self._possible(class_id) - traits.keys():
            traits[trait] = Trait("unknown", via=f"some of {name}")
        return Matter(row.key, name, traits, is_class=True)

    def _possible(self, class_id: int) -> set[str]:
        """Traits that some material of a class, or of one below it, is recorded to have."""
        below = {one for one in self._classes if class_id in self._path(one)}
        own = {
            trait.trait
            for material_id, row in self._rows.items()
            if row.class_id in below
            for trait in self._own_traits.get(material_id, ())
            if trait.holds == "yes"
        }
        inner = {
            trait.trait
            for one in below
            for trait in self._class_traits.get(one, ())
            if trait.holds == "yes"
        }
        return own | inner

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
            one.trait: trait_of(one, row.name or row.key)
            for one in self._own_traits.get(material_id, ())
        }
        return self._inherited(row.class_id, own)

    def _inherited(self, class_id: int | None, own: dict[str, Trait]) -> dict[str, Trait]:
        for klass in self._path(class_id):
            name = self._classes[klass].name or self._classes[klass].key
            for one in self._class_traits.get(klass, ()):
                own.setdefault(one.trait, trait_of(one, name))
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
        hazards = grouped(HAZARDS.all(self._connection))
        limits = grouped(LIMITS.all(self._connection))
        restrictions = grouped(RESTRICTIONS.all(self._connection))
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
                tuple(hazard_of(one) for one in hazards.get(material_id, ())),
                tuple(limit_of(one) for one in limits.get(material_id, ())),
                tuple(restriction_of(one) for one in restrictions.get(material_id, ())),
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
            max([words("hazard band"), *bands]),
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
