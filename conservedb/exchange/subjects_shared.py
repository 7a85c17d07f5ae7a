"""CSV files about what all objects share: words, materials, people, sources, statements."""

from __future__ import annotations

from conservedb.exchange.columns import Choice, Column, Date, KeyText, Material, Name, Number, Ref
from conservedb.exchange.lists import aliases, people, remarked
from conservedb.exchange.statements import StatementTarget, StatementValue
from conservedb.exchange.subject import NOTE, RECORD, Subject, person, ref, source
from conservedb.records import batches, materials, sources, terms
from conservedb.records import people as persons

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
        NOTE,
        *RECORD,
    ),
    in_object=False,
)

MATERIAL_CLASSES = Subject(
    "material_classes",
    "material class",
    materials.material_class,
    ("key",),
    (
        ref("key"),
        Name("name"),
        Ref("parent", "parent_id", subject="material_classes"),
        *RECORD,
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
        ref("key"),
        Name("name"),
        Ref("class", "class_id", subject="material_classes"),
        aliases("material_alias", "material_id"),
        aliases("trade_name", "material_id", "trade_names"),
        remarked("behaves_as", "stand_in", "material_id", ("as_id", "note"), "materials", most=1),
        NOTE,
        *RECORD,
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
        NOTE,
        *RECORD,
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
        NOTE,
        *RECORD,
    ),
    in_object=False,
    folded=True,
)

BATCHES = Subject(
    "batches",
    "batch",
    batches.batch,
    ("ref",),
    (
        ref(),
        Material("material"),
        Column("lot"),
        Date("made"),
        person("made_by"),
        Column("concentration"),
        Column("carrier"),
        NOTE,
        *RECORD,
    ),
    in_object=False,
    makes_key=True,
)

SOURCES = Subject(
    "sources",
    "source",
    sources.source,
    ("ref",),
    (ref(), Column("kind"), Name("citation"), Date("date"), NOTE, *RECORD),
    in_object=False,
    makes_key=True,
)

STATEMENTS = Subject(
    "statements",
    "statement",
    sources.statement,
    ("key",),
    (
        ref("key"),
        StatementTarget("table"),
        Column("field"),
        StatementValue("value"),
        source(),
        Column("page"),
        people("statement_person", "statement_id"),
        Date("date"),
        Choice("followed", values=("yes", "no")),
        person("decided_by"),
        Column("reason"),
        NOTE,
        *RECORD,
    ),
    in_object=False,
    makes_key=True,
)
