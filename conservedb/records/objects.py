"""Objects in the department's care, the components they are made of, and warnings on them."""

from __future__ import annotations

from sqlalchemy import (
    REAL,
    CheckConstraint,
    Column,
    ForeignKeyConstraint,
    Index,
    Integer,
    UniqueConstraint,
)

from conservedb.records.base import dated, link_table, one_of, record_table, reference, text

COMPONENT_ORIGINS = (
    "original",
    "later",
    "restoration",
    "replacement",
    "fixing",
    "mount",
    "uncertain",
)

object_ = record_table(
    "object",
    text("number", required=True),
    text("number_sort", required=True),
    text("number_folded", required=True),
    text("title"),
    text("title_folded"),
    text("kind"),
    text("maker"),
    *dated("made"),
    text("whereabouts"),
    text("note"),
    UniqueConstraint("number_folded"),
    Index(None, "title_folded"),
    Index(None, "number_sort"),
)

KNOWN_FROM = ("seen", "documented", "picture only", "suspected")

component = record_table(
    "component",
    reference("object_id", "object", required=True),
    text("mark", required=True),
    text("mark_folded", required=True),
    Column("parent_id", Integer),
    text("name"),
    text("name_folded"),
    text("kind"),
    text("origin"),
    reference("material_id", "material"),
    text("material_words"),
    Column("width_mm", REAL),
    Column("height_mm", REAL),
    Column("depth_mm", REAL),
    Column("mass_kg", REAL),
    text("mass_basis"),
    *dated("made"),
    *dated("lost"),
    text("kept_at"),
    text("known_from"),
    reference("source_id", "source"),
    text("note"),
    *dated("retired", joined=True),
    text("retired_why"),
    reference("replaced_by_id", "component"),
    UniqueConstraint("object_id", "mark_folded"),
    UniqueConstraint("object_id", "id"),
    ForeignKeyConstraint(["object_id", "parent_id"], ["component.object_id", "component.id"]),
    one_of("origin", COMPONENT_ORIGINS),
    one_of("known_from", KNOWN_FROM),
    CheckConstraint("parent_id <> id", name="not_its_own_parent"),
    CheckConstraint("replaced_by_id <> id", name="not_its_own_successor"),
    CheckConstraint("width_mm >= 0 AND height_mm >= 0 AND depth_mm >= 0", name="size_positive"),
    CheckConstraint("mass_kg >= 0", name="mass_positive"),
    Index(None, "parent_id"),
    Index(None, "material_id"),
    Index(None, "name_folded"),
    Index(None, "mark_folded"),
)

bridge = link_table(
    "bridge",
    Column("object_id", Integer, nullable=False),
    Column("component_id", Integer, primary_key=True),
    Column("place_id", Integer, primary_key=True),
    ForeignKeyConstraint(["object_id", "component_id"], ["component.object_id", "component.id"]),
    ForeignKeyConstraint(["object_id", "place_id"], ["place.object_id", "place.id"]),
    Index(None, "place_id"),
)
"""A fixing (pin, cramp, dowel) and the joint that it crosses."""

whereabouts = record_table(
    "whereabouts",
    reference("object_id", "object", required=True),
    text("ref", required=True),
    Column("component_id", Integer),
    text("place_name"),
    *dated("since"),
    *dated("until"),
    reference("source_id", "source"),
    text("note"),
    UniqueConstraint("object_id", "ref"),
    ForeignKeyConstraint(["object_id", "component_id"], ["component.object_id", "component.id"]),
)

warning = record_table(
    "warning",
    reference("object_id", "object", required=True),
    text("ref", required=True),
    Column("component_id", Integer),
    Column("place_id", Integer),
    text("kind"),
    text("text"),
    *dated("since"),
    *dated("until"),
    reference("source_id", "source"),
    text("note"),
    UniqueConstraint("object_id", "ref"),
    ForeignKeyConstraint(["object_id", "component_id"], ["component.object_id", "component.id"]),
    ForeignKeyConstraint(["object_id", "place_id"], ["place.object_id", "place.id"]),
    Index(None, "until_latest"),
)
