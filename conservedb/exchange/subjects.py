"""The CSV files: one per subject, its key, its columns, and where they are kept.

This is the one place that names files and headers; import, export and the contributors'
guide follow it.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from sqlalchemy import Table

from conservedb.exchange.columns import (
    Choice,
    Column,
    Date,
    Day,
    Identity,
    KeyText,
    ListColumn,
    Material,
    Name,
    Number,
    Ref,
    Whole,
    aliases,
    people,
    refs,
    words,
)
from conservedb.exchange.statements import StatementTarget, StatementValue
from conservedb.records import layers, materials, objects, places, sources, terms, treatments
from conservedb.records import people as persons


@dataclass(frozen=True)
class Subject:
    """One CSV file.

    Attributes:
        name: the file is `name`.csv.
        singular: what one row is called in sentences.
        key: the headers of the key; unique in its object where `in_object`.
        folded: whether keys are compared without case.
        makes_key: whether a blank key is made from the row's other cells.
        parent: the header of a pointer into the same file, which makes a tree.
    """

    name: str
    singular: str
    table: Table
    key: tuple[str, ...]
    columns: tuple[Column | ListColumn, ...]
    in_object: bool = True
    folded: bool = False
    makes_key: bool = False
    parent: str = ""

    @property
    def file(self) -> str:
        """The name of the file."""
        return f"{self.name}.csv"

    @cached_property
    def plain(self) -> tuple[Column, ...]:
        """Columns kept in the table itself."""
        return tuple(c for c in self.columns if isinstance(c, Column))

    @cached_property
    def lists(self) -> tuple[ListColumn, ...]:
        """Columns kept in link tables."""
        return tuple(c for c in self.columns if isinstance(c, ListColumn))

    @cached_property
    def headers(self) -> tuple[str, ...]:
        """Every header, in the order of export."""
        first = ("object",) if self.in_object else ()
        return first + tuple(name for column in self.columns for name in column.names)

    @cached_property
    def fields(self) -> tuple[str, ...]:
        """Database fields in the order of a record's values (without the id)."""
        first = ("object_id",) if self.in_object else ()
        singles = tuple(column.single for column in self.lists if column.single)
        return first + tuple(f for column in self.plain for f in column.fields) + singles

    @cached_property
    def position(self) -> dict[str, int]:
        """Where a field stands among a record's values."""
        return {field: index for index, field in enumerate(self.fields)}


_NOTE = Column("note")
_RECORD = (Identity("uuid"), Day("entered"))


def _source(name: str = "source") -> Ref:
    return Ref(name, f"{name}_id", subject="sources")


def _person(name: str) -> Ref:
    return Ref(name, f"{name}_id", subject="people")


def _ref(key: str = "ref") -> KeyText:
    return KeyText(key)


def _local(name: str, field: str, subject: str) -> Ref:
    return Ref(name, field, subject=subject)


MATERIAL_CLASSES = Subject(
    "material_classes",
    "material class",
    materials.material_class,
    ("key",),
    (
        _ref("key"),
        Name("name"),
        Ref("parent", "parent_id", subject="material_classes"),
        *_RECORD,
    ),
    in_object=False,
    parent="parent",
)

MATERIALS = Subject(
    "materials",
    "material",
    materials.material,
    ("key",),
    (
        _ref("key"),
        Name("name"),
        Ref("class", "class_id", subject="material_classes"),
        aliases("material_alias", "material_id"),
        _NOTE,
        *_RECORD,
    ),
    in_object=False,
)

MATERIAL_PARTS = Subject(
    "material_parts",
    "recipe part",
    materials.material_part,
    ("material", "part"),
    (
        Ref("material", "material_id", subject="materials"),
        Ref("part", "part_id", subject="materials"),
        Number("amount"),
        Column("unit"),
        _NOTE,
        *_RECORD,
    ),
    in_object=False,
)

PEOPLE = Subject(
    "people",
    "person",
    persons.person,
    ("name",),
    (
        KeyText("name", folded=True),
        aliases("person_alias", "person_id"),
        Column("role"),
        Column("organisation"),
        Date("active"),
        _NOTE,
        *_RECORD,
    ),
    in_object=False,
    folded=True,
)

SOURCES = Subject(
    "sources",
    "source",
    sources.source,
    ("ref",),
    (_ref(), Column("kind"), Name("citation"), Date("date"), _NOTE, *_RECORD),
    in_object=False,
    makes_key=True,
)

TERMS = Subject(
    "terms",
    "term",
    terms.term,
    ("list", "term"),
    (
        KeyText("list"),
        KeyText("term"),
        Column("definition"),
        Column("thesaurus"),
        Column("thesaurus_id"),
        Column("checked_by"),
        _NOTE,
        *_RECORD,
    ),
    in_object=False,
)

OBJECTS = Subject(
    "objects",
    "object",
    objects.object_,
    ("number",),
    (
        KeyText("number", folded=True, sorted_too=True),
        Name("title"),
        Column("kind"),
        Column("maker"),
        Date("made"),
        Column("whereabouts"),
        _NOTE,
        *_RECORD,
    ),
    in_object=False,
)

COMPONENTS = Subject(
    "components",
    "component",
    objects.component,
    ("mark",),
    (
        KeyText("mark", folded=True),
        _local("parent", "parent_id", "components"),
        Name("name"),
        Column("kind"),
        Choice("origin", values=objects.COMPONENT_ORIGINS),
        Material("material", with_class=False),
        refs("bridges", "bridge", "component_id", "place_id", "places"),
        Number("width_mm"),
        Number("height_mm"),
        Number("depth_mm"),
        Number("mass_kg"),
        Column("mass_basis"),
        Date("made"),
        Date("lost"),
        Column("kept_at"),
        Choice("known_from", values=objects.KNOWN_FROM),
        _source(),
        _NOTE,
        *_RECORD,
    ),
    folded=True,
    parent="parent",
)

PLACES = Subject(
    "places",
    "place",
    places.place,
    ("mark",),
    (
        KeyText("mark", folded=True),
        Choice("kind", values=places.PLACE_KINDS),
        _local("component", "component_id", "components"),
        _local("other_component", "other_component_id", "components"),
        Name("name"),
        Column("geometry"),
        Choice("arose", values=places.ARISEN_BY),
        Date("arose_date", "arose"),
        Column("fit"),
        Number("load_kg"),
        _source("load_source"),
        Column("access"),
        _NOTE,
        *_RECORD,
    ),
    folded=True,
)

TREATMENTS = Subject(
    "treatments",
    "treatment",
    treatments.treatment,
    ("ref",),
    (
        _ref(),
        Column("title"),
        Column("purpose"),
        Column("status"),
        Date("begun"),
        Date("ended"),
        _person("lead"),
        _NOTE,
        *_RECORD,
    ),
    makes_key=True,
)

INTERVENTIONS = Subject(
    "interventions",
    "intervention",
    treatments.intervention,
    ("ref",),
    (
        _ref(),
        _local("treatment", "treatment_id", "treatments"),
        Choice("kind", values=treatments.INTERVENTION_KINDS),
        Column("technique"),
        words("aims", "intervention_aim", "intervention_id", "aim", treatments.AIMS),
        Date("date"),
        Column("date_basis"),
        people("intervention_person", "intervention_id"),
        refs(
            "components", "intervention_component", "intervention_id", "component_id", "components"
        ),
        refs("places", "intervention_place", "intervention_id", "place_id", "places"),
        _source(),
        Date("recorded"),
        _person("recorded_by"),
        _NOTE,
        *_RECORD,
    ),
    makes_key=True,
)

AGENTS = Subject(
    "agents",
    "agent",
    treatments.agent,
    ("ref",),
    (
        _local("intervention", "intervention_id", "interventions"),
        _ref(),
        Material("material"),
        refs("place", "agent_place", "agent_id", "place_id", "places"),
        Column("concentration"),
        Choice("form", values=treatments.AGENT_FORMS),
        Number("temperature_c", positive=False),
        Number("dwell_min"),
        Choice("cleared", values=("yes", "no")),
        Column("cleared_how"),
        _NOTE,
        *_RECORD,
    ),
    makes_key=True,
)

JOINT_EVENTS = Subject(
    "joint_events",
    "joint event",
    places.joint_event,
    ("ref",),
    (
        _local("place", "place_id", "places"),
        _ref(),
        Choice("event", values=places.JOINT_EVENTS),
        Date("date"),
        Whole("step"),
        _local("intervention", "intervention_id", "interventions"),
        Column("where", "location"),
        _source(),
        _NOTE,
        *_RECORD,
    ),
    makes_key=True,
)

LAYERS = Subject(
    "layers",
    "layer",
    layers.layer,
    ("ref",),
    (
        refs("place", "layer_candidate", "layer_id", "place_id", "places", single="place_id"),
        _ref(),
        _local("intervention", "intervention_id", "interventions"),
        Date("date"),
        Choice("origin", values=layers.LAYER_ORIGINS),
        Material("material"),
        Column("role"),
        Whole("stack"),
        Choice("side", values=layers.SIDES),
        Choice("zone", values=layers.ZONES),
        Choice("coverage", values=layers.COVERAGES),
        Column("concentration"),
        Column("carrier"),
        Choice("dry", values=layers.DRY),
        Choice("identified", values=layers.IDENTIFIED),
        Choice("significance", values=layers.SIGNIFICANCE),
        _person("significance_by"),
        _source(),
        _NOTE,
        *_RECORD,
    ),
    makes_key=True,
)

REMOVALS = Subject(
    "removals",
    "removal",
    layers.removal,
    ("ref",),
    (
        _ref(),
        _local("layer", "layer_id", "layers"),
        _local("intervention", "intervention_id", "interventions"),
        Date("date"),
        Column("cause"),
        Choice("extent", values=layers.EXTENTS),
        Choice("side", values=layers.SIDES),
        _source(),
        _NOTE,
        *_RECORD,
    ),
    makes_key=True,
)

SIGHTINGS = Subject(
    "sightings",
    "sighting",
    layers.sighting,
    ("ref",),
    (
        _ref(),
        _local("layer", "layer_id", "layers"),
        Date("date"),
        Choice("result", values=layers.SIGHTING_RESULTS),
        Choice("side", values=layers.SIDES),
        people("sighting_person", "sighting_id"),
        _source(),
        _NOTE,
        *_RECORD,
    ),
    makes_key=True,
)

STATEMENTS = Subject(
    "statements",
    "statement",
    sources.statement,
    ("key",),
    (
        _ref("key"),
        StatementTarget("table"),
        Column("field"),
        StatementValue("value"),
        _source(),
        Column("page"),
        people("statement_person", "statement_id"),
        Date("date"),
        Choice("followed", values=("yes", "no")),
        _person("decided_by"),
        Column("reason"),
        _NOTE,
        *_RECORD,
    ),
    in_object=False,
    makes_key=True,
)

WARNINGS = Subject(
    "warnings",
    "warning",
    objects.warning,
    ("ref",),
    (
        _ref(),
        _local("component", "component_id", "components"),
        _local("place", "place_id", "places"),
        Column("kind"),
        Column("text"),
        Date("since"),
        Date("until"),
        _source(),
        _NOTE,
        *_RECORD,
    ),
    makes_key=True,
)

WHEREABOUTS = Subject(
    "whereabouts",
    "whereabouts",
    objects.whereabouts,
    ("ref",),
    (
        _ref(),
        _local("component", "component_id", "components"),
        Column("place_name"),
        Date("since"),
        Date("until"),
        _source(),
        _NOTE,
        *_RECORD,
    ),
    makes_key=True,
)

SUBJECTS = (
    TERMS,
    MATERIAL_CLASSES,
    MATERIALS,
    MATERIAL_PARTS,
    PEOPLE,
    SOURCES,
    OBJECTS,
    COMPONENTS,
    PLACES,
    TREATMENTS,
    INTERVENTIONS,
    AGENTS,
    JOINT_EVENTS,
    LAYERS,
    REMOVALS,
    SIGHTINGS,
    STATEMENTS,
    WARNINGS,
    WHEREABOUTS,
)
"""Every subject, in an order in which each refers only to those before it (or to itself)."""

BY_NAME = {subject.name: subject for subject in SUBJECTS}
