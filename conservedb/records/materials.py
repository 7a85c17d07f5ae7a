"""Materials, their many names, the tree of classes, and the parts of a recipe."""

from __future__ import annotations

from sqlalchemy import (
    REAL,
    CheckConstraint,
    Column,
    ForeignKey,
    Index,
    Integer,
    Text,
    UniqueConstraint,
)

from conservedb.records.base import link_table, record_table, reference, text

material_class = record_table(
    "material_class",
    text("key", required=True),
    text("name"),
    text("name_folded"),
    reference("parent_id", "material_class"),
    UniqueConstraint("key"),
    CheckConstraint("parent_id <> id", name="not_its_own_parent"),
    Index(None, "parent_id"),
    Index(None, "name_folded"),
)

material = record_table(
    "material",
    text("key", required=True),
    text("name"),
    text("name_folded"),
    reference("class_id", "material_class"),
    text("note"),
    UniqueConstraint("key"),
    Index(None, "class_id"),
    Index(None, "name_folded"),
)

material_alias = link_table(
    "material_alias",
    Column("material_id", Integer, ForeignKey("material.id"), primary_key=True),
    Column("alias", Text, primary_key=True),
    text("alias_folded", required=True),
    Column("position", Integer, nullable=False),
    Index(None, "alias_folded"),
)

material_part = record_table(
    "material_part",
    reference("material_id", "material", required=True),
    reference("part_id", "material", required=True),
    Column("amount", REAL),
    text("unit"),
    text("note"),
    UniqueConstraint("material_id", "part_id"),
    CheckConstraint("part_id <> material_id", name="not_part_of_itself"),
    Index(None, "part_id"),
)
