"""Where on an object matter lies: joints, surfaces, bodies, cavities; and what joints did."""

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

from conservedb.records.base import dated, one_of, record_table, reference, text
from conservedb.records.base import text as words

PLACE_KINDS = ("joint", "surface", "body", "cavity")
JOINT_EVENTS = ("closed", "moving", "opened", "failed")
RESTLESS = ("moving", "failed")
"""Events that call for attention until the joint is seen to."""
ARISEN_BY = ("making", "breaking")

place = record_table(
    "place",
    reference("object_id", "object", required=True),
    text("mark", required=True),
    text("mark_folded", required=True),
    text("kind"),
    Column("component_id", Integer),
    Column("other_component_id", Integer),
    text("name"),
    text("name_folded"),
    text("geometry"),
    text("arose"),
    *dated("arose"),
    text("fit"),
    Column("load_kg", REAL),
    reference("load_source_id", "source"),
    text("access"),
    text("note"),
    UniqueConstraint("object_id", "mark_folded"),
    UniqueConstraint("object_id", "id"),
    ForeignKeyConstraint(["object_id", "component_id"], ["component.object_id", "component.id"]),
    ForeignKeyConstraint(
        ["object_id", "other_component_id"], ["component.object_id", "component.id"]
    ),
    one_of("kind", PLACE_KINDS),
    one_of("arose", ARISEN_BY),
    CheckConstraint("kind = 'joint' OR other_component_id IS NULL", name="only_joints_have_side_b"),
    CheckConstraint("load_kg >= 0", name="load_positive"),
    Index(None, "component_id"),
    Index(None, "other_component_id"),
    Index(None, "name_folded"),
    Index(None, "mark_folded"),
)

joint_event = record_table(
    "joint_event",
    reference("object_id", "object", required=True),
    Column("place_id", Integer, nullable=False),
    text("ref", required=True),
    text("event"),
    *dated("date"),
    Column("step", Integer),
    Column("intervention_id", Integer),
    text("location"),
    reference("source_id", "source"),
    text("note"),
    UniqueConstraint("object_id", "ref"),
    ForeignKeyConstraint(["object_id", "place_id"], ["place.object_id", "place.id"]),
    ForeignKeyConstraint(
        ["object_id", "intervention_id"], ["intervention.object_id", "intervention.id"]
    ),
    one_of("event", JOINT_EVENTS),
    Index(None, "place_id"),
    Index(
        "ix_joint_event_restless",
        "date_latest",
        sqlite_where=words("event").in_(RESTLESS),
    ),
    Index(None, "intervention_id"),
)
