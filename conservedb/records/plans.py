"""Plans of treatment, version by version, and the steps that each version plans."""

from __future__ import annotations

from sqlalchemy import (
    CheckConstraint,
    Column,
    ForeignKey,
    ForeignKeyConstraint,
    Index,
    Integer,
    Text,
    UniqueConstraint,
)

from conservedb.records.base import dated, link_table, one_of, record_table, reference, text
from conservedb.records.treatments import AIMS, INTERVENTION_KINDS

plan = record_table(
    "plan",
    reference("object_id", "object", required=True),
    text("ref", required=True),
    Column("treatment_id", Integer, nullable=False),
    Column("version", Integer, nullable=False),
    *dated("date"),
    text("justification"),
    text("alternatives"),
    text("risks"),
    reference("source_id", "source"),
    text("note"),
    UniqueConstraint("object_id", "ref"),
    UniqueConstraint("object_id", "id"),
    UniqueConstraint("treatment_id", "version"),
    ForeignKeyConstraint(["object_id", "treatment_id"], ["treatment.object_id", "treatment.id"]),
    CheckConstraint("version >= 1", name="version_from_one"),
)
"""One version of the plan of a treatment; a changed plan is a new version."""

plan_aim = link_table(
    "plan_aim",
    Column("plan_id", Integer, ForeignKey("plan.id"), primary_key=True),
    Column("aim", Text, primary_key=True),
    Column("position", Integer, nullable=False),
    one_of("aim", AIMS),
)

plan_person = link_table(
    "plan_person",
    Column("plan_id", Integer, ForeignKey("plan.id"), primary_key=True),
    Column("position", Integer, primary_key=True),
    reference("person_id", "person", required=True),
    text("role"),
    Index(None, "person_id"),
)
"""The authors of a plan."""

planned_step = record_table(
    "planned_step",
    reference("object_id", "object", required=True),
    text("ref", required=True),
    Column("plan_id", Integer, nullable=False),
    Column("position", Integer, nullable=False),
    text("kind"),
    text("technique"),
    reference("material_id", "material"),
    reference("material_class_id", "material_class"),
    text("material_words"),
    text("concentration"),
    text("carrier"),
    text("note"),
    UniqueConstraint("object_id", "ref"),
    UniqueConstraint("object_id", "id"),
    ForeignKeyConstraint(["object_id", "plan_id"], ["plan.object_id", "plan.id"]),
    one_of("kind", INTERVENTION_KINDS),
    Index(None, "plan_id", "position"),
    Index(None, "material_id"),
    Index(None, "material_class_id"),
)

planned_step_component = link_table(
    "planned_step_component",
    Column("object_id", Integer, nullable=False),
    Column("planned_step_id", Integer, primary_key=True),
    Column("component_id", Integer, primary_key=True),
    Column("position", Integer, nullable=False),
    ForeignKeyConstraint(
        ["object_id", "planned_step_id"], ["planned_step.object_id", "planned_step.id"]
    ),
    ForeignKeyConstraint(["object_id", "component_id"], ["component.object_id", "component.id"]),
    Index(None, "component_id"),
)

planned_step_place = link_table(
    "planned_step_place",
    Column("object_id", Integer, nullable=False),
    Column("planned_step_id", Integer, primary_key=True),
    Column("place_id", Integer, primary_key=True),
    Column("position", Integer, nullable=False),
    ForeignKeyConstraint(
        ["object_id", "planned_step_id"], ["planned_step.object_id", "planned_step.id"]
    ),
    ForeignKeyConstraint(["object_id", "place_id"], ["place.object_id", "place.id"]),
    Index(None, "place_id"),
)
