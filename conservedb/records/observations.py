"""What was found on an object: observations, readings of instruments, samples taken."""

from __future__ import annotations

from sqlalchemy import (
    REAL,
    Column,
    ForeignKey,
    ForeignKeyConstraint,
    Index,
    Integer,
    Table,
    UniqueConstraint,
)
from sqlalchemy.schema import SchemaItem

from conservedb.records.base import dated, link_table, one_of, record_table, reference, text

SAMPLE_KINDS = ("sample", "removed matter")
WHEREON = ("component", "place", "layer")
"""What a finding may be about; where it names none, it is about the object."""


def _finding(name: str, *items: SchemaItem) -> Table:
    """A table of what was found on a day, on a part, place or layer, perhaps in an examination."""
    pointers = ("intervention", *WHEREON)
    return record_table(
        name,
        reference("object_id", "object", required=True),
        text("ref", required=True),
        *(Column(f"{target}_id", Integer) for target in pointers),
        *dated("date"),
        *items,
        reference("source_id", "source"),
        text("note"),
        UniqueConstraint("object_id", "ref"),
        *(
            ForeignKeyConstraint(
                ["object_id", f"{target}_id"], [f"{target}.object_id", f"{target}.id"]
            )
            for target in pointers
        ),
        *(Index(None, f"{target}_id") for target in pointers),
    )


def _people_of(name: str) -> Table:
    return link_table(
        f"{name}_person",
        Column(f"{name}_id", Integer, ForeignKey(f"{name}.id"), primary_key=True),
        Column("position", Integer, primary_key=True),
        reference("person_id", "person", required=True),
        text("role"),
        Index(None, "person_id"),
    )


observation = _finding(
    "observation",
    text("condition"),
    text("seen"),
    text("presumed"),
    text("extent"),
)
"""What is seen is kept apart from what is presumed from it."""

observation_person = _people_of("observation")

reading = _finding(
    "reading",
    text("quantity"),
    Column("value", REAL, nullable=False),
    text("unit", required=True),
    text("instrument"),
    text("spot"),
)

reading_person = _people_of("reading")

sample = _finding(
    "sample",
    Column("removal_id", Integer),
    text("kind"),
    text("what"),
    text("box"),
    text("remainder"),
    text("result"),
    text("analysed_by"),
    ForeignKeyConstraint(["object_id", "removal_id"], ["removal.object_id", "removal.id"]),
    one_of("kind", SAMPLE_KINDS),
    Index(None, "removal_id"),
)
"""Matter taken for analysis, or kept when it was removed."""

sample_person = _people_of("sample")
