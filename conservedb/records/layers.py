"""Layers: matter formed in place, how it came and went, and who saw it there.

The bounds (`came_from` ... `gone_to`, day numbers) are those of
`conservedb.knowledge.layers`, worked out by the program from the dates of
interventions, removals and sightings; `NEVER` stands for "no such event known".
"""

from __future__ import annotations

from sqlalchemy import (
    REAL,
    CheckConstraint,
    Column,
    ForeignKey,
    ForeignKeyConstraint,
    Index,
    Integer,
    Text,
    UniqueConstraint,
)
from sqlalchemy.schema import SchemaItem

from conservedb.records.base import dated, link_table, one_of, record_table, reference, text
from conservedb.records.base import text as words

LAYER_ORIGINS = ("applied", "maker", "arisen")
SIDES = ("A", "B")
ZONES = ("face", "edge", "core")
COVERAGES = ("whole", "part", "spots", "unknown")
DRY = ("yes", "no", "unknown")
IDENTIFIED = (
    "analysed",
    "documented by the maker",
    "documented later",
    "inferred",
    "unknown",
)
SIGNIFICANCE = ("keep", "may go", "undecided")
EXTENTS = ("all", "part", "attempted")
SIGHTING_RESULTS = ("seen", "not found", "not accessible")
DEPTH_KNOWN = ("measured", "sampled", "estimated", "assumed")
RESIDUE_SIDES = ("A", "B", "both", "none seen", "unknown")
TEMPORARY_ROLES = ("facing", "temporary support", "temporary fill", "temporary consolidant")
"""Roles of layers that were never meant to stay."""

BOUNDS = (
    "came_from",
    "came_to",
    "reduced_from",
    "reduced_to",
    "gone_from",
    "gone_to",
    "came_flags",
    "reduced_flags",
    "gone_flags",
)


def _bounds() -> tuple[SchemaItem, ...]:
    return (
        *(Column(name, Integer, nullable=False) for name in BOUNDS),
        CheckConstraint(
            "came_from <= came_to AND reduced_from <= reduced_to AND gone_from <= gone_to",
            name="bounds_in_order",
        ),
        CheckConstraint(
            "came_to <= gone_to AND came_from <= gone_from AND came_to <= reduced_to"
            " AND came_from <= reduced_from",
            name="came_before_it_went",
        ),
    )


layer = record_table(
    "layer",
    reference("object_id", "object", required=True),
    Column("place_id", Integer),
    text("ref", required=True),
    Column("intervention_id", Integer),
    *dated("date"),
    text("origin"),
    reference("material_id", "material"),
    reference("material_class_id", "material_class"),
    text("material_words"),
    text("role"),
    Column("stack", Integer),
    text("side"),
    text("zone"),
    text("coverage"),
    text("concentration"),
    text("carrier"),
    text("dry"),
    text("identified"),
    text("significance"),
    reference("significance_by_id", "person"),
    reference("source_id", "source"),
    text("note"),
    *_bounds(),
    reference("batch_id", "batch"),
    Column("temperature_c", REAL),
    text("treated_from"),
    Column("cycles", Integer),
    Column("uptake_g", REAL),
    Column("depth_mm", REAL),
    text("depth_known"),
    Column("recorded_over", Integer),
    UniqueConstraint("object_id", "ref"),
    UniqueConstraint("object_id", "id"),
    ForeignKeyConstraint(["object_id", "place_id"], ["place.object_id", "place.id"]),
    ForeignKeyConstraint(
        ["object_id", "intervention_id"], ["intervention.object_id", "intervention.id"]
    ),
    one_of("origin", LAYER_ORIGINS),
    one_of("side", SIDES),
    one_of("zone", ZONES),
    one_of("coverage", COVERAGES),
    one_of("dry", DRY),
    one_of("identified", IDENTIFIED),
    one_of("significance", SIGNIFICANCE),
    one_of("depth_known", DEPTH_KNOWN),
    CheckConstraint("cycles >= 0", name="cycles_positive"),
    CheckConstraint("uptake_g >= 0", name="uptake_positive"),
    CheckConstraint("depth_mm >= 0", name="depth_positive"),
    CheckConstraint("recorded_over >= 1", name="recorded_over_some"),
    Index(None, "place_id", "stack"),
    Index(None, "intervention_id"),
    Index(None, "material_id", "material_class_id"),
    Index(None, "material_class_id", "place_id"),
    Index("ix_layer_batch", "batch_id", sqlite_where=words("batch_id").is_not(None)),
    Index("ix_layer_dated", "date_latest", sqlite_where=words("date_derived") != "blank"),
    Index("ix_layer_unplaced", "object_id", sqlite_where=words("place_id").is_(None)),
    Index(
        "ix_layer_temporary",
        "place_id",
        sqlite_where=words("role").in_(TEMPORARY_ROLES),
    ),
)
"""`place_id` is NULL where several places are candidates; they stand in `layer_candidate`.
`recorded_over`: over how many places at once it was recorded."""

layer_candidate = link_table(
    "layer_candidate",
    Column("object_id", Integer, nullable=False),
    Column("layer_id", Integer, primary_key=True),
    Column("place_id", Integer, primary_key=True),
    Column("position", Integer, nullable=False),
    ForeignKeyConstraint(["object_id", "layer_id"], ["layer.object_id", "layer.id"]),
    ForeignKeyConstraint(["object_id", "place_id"], ["place.object_id", "place.id"]),
    Index(None, "place_id"),
)

layer_side = link_table(
    "layer_side",
    Column("layer_id", Integer, ForeignKey("layer.id"), primary_key=True),
    Column("side", Text, primary_key=True),
    *_bounds(),
    one_of("side", SIDES),
)
"""Bounds of one side of a joint, only where the two sides differ."""

removal = record_table(
    "removal",
    reference("object_id", "object", required=True),
    text("ref", required=True),
    Column("layer_id", Integer, nullable=False),
    Column("intervention_id", Integer),
    *dated("date"),
    text("cause"),
    text("extent"),
    text("side"),
    reference("source_id", "source"),
    text("note"),
    text("kept_what"),
    text("kept_where"),
    text("residue_side"),
    text("residue"),
    UniqueConstraint("object_id", "ref"),
    ForeignKeyConstraint(["object_id", "layer_id"], ["layer.object_id", "layer.id"]),
    ForeignKeyConstraint(
        ["object_id", "intervention_id"], ["intervention.object_id", "intervention.id"]
    ),
    one_of("extent", EXTENTS),
    one_of("side", SIDES),
    one_of("residue_side", RESIDUE_SIDES),
    Index("ix_removal_in_object", "object_id", "id", unique=True),
    Index(None, "layer_id"),
    Index(None, "intervention_id"),
)
"""A layer taken away by an intervention, or ended without one (then with a cause)."""

sighting = record_table(
    "sighting",
    reference("object_id", "object", required=True),
    text("ref", required=True),
    Column("layer_id", Integer, nullable=False),
    *dated("date"),
    text("result"),
    text("side"),
    reference("source_id", "source"),
    text("note"),
    UniqueConstraint("object_id", "ref"),
    ForeignKeyConstraint(["object_id", "layer_id"], ["layer.object_id", "layer.id"]),
    one_of("result", SIGHTING_RESULTS),
    one_of("side", SIDES),
    Index(None, "layer_id"),
)

sighting_person = link_table(
    "sighting_person",
    Column("sighting_id", Integer, ForeignKey("sighting.id"), primary_key=True),
    Column("position", Integer, primary_key=True),
    reference("person_id", "person", required=True),
    text("role"),
    Index(None, "person_id"),
)
