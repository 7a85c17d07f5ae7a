"""Treatments, the dated interventions they consist of, and the agents these used."""

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

from conservedb.records.base import dated, link_table, one_of, record_table, reference, text
from conservedb.records.base import text as words

INTERVENTION_KINDS = (
    "examine",
    "sample",
    "clean",
    "desalinate",
    "consolidate",
    "join",
    "take apart",
    "fill",
    "integrate",
    "coat",
    "support",
    "remove earlier work",
    "other",
)
AIMS = ("preventive", "remedial", "restoration")
STANDINGS = ("planned", "routine care", "first aid", "historic")
"""By what right a step was done: by a plan, a standing approval, need, or long ago."""
AGENT_FORMS = ("free", "swab", "gel", "poultice", "vapour", "bath")

treatment = record_table(
    "treatment",
    reference("object_id", "object", required=True),
    text("ref", required=True),
    text("title"),
    text("purpose"),
    text("status"),
    *dated("begun"),
    *dated("ended"),
    reference("lead_id", "person"),
    text("note"),
    text("result"),
    text("recommendations"),
    *dated("next_check", joined=True),
    UniqueConstraint("object_id", "ref"),
    UniqueConstraint("object_id", "id"),
    Index(None, "lead_id"),
    Index(None, "ended_derived", "ended_latest"),
)

intervention = record_table(
    "intervention",
    reference("object_id", "object", required=True),
    text("ref", required=True),
    Column("treatment_id", Integer),
    text("kind"),
    text("technique"),
    *dated("date"),
    text("date_basis"),
    reference("source_id", "source"),
    *dated("recorded"),
    reference("recorded_by_id", "person"),
    text("note"),
    reference("planned_step_id", "planned_step"),
    text("deviation"),
    text("standing"),
    text("unauthorised_reason"),
    reference("unauthorised_by_id", "person"),
    text("circumstances"),
    text("methods"),
    Column("recorded_over", Integer),
    text("time_of_day"),
    UniqueConstraint("object_id", "ref"),
    UniqueConstraint("object_id", "id"),
    ForeignKeyConstraint(["object_id", "treatment_id"], ["treatment.object_id", "treatment.id"]),
    one_of("kind", INTERVENTION_KINDS),
    one_of("standing", STANDINGS),
    CheckConstraint("recorded_over >= 1", name="recorded_over_some"),
    Index(None, "treatment_id"),
    Index(None, "date_latest"),
    Index(
        "ix_intervention_planned",
        "planned_step_id",
        sqlite_where=words("planned_step_id").is_not(None),
    ),
)
"""`recorded_over`: over how many parts or places at once it was recorded."""

intervention_aim = link_table(
    "intervention_aim",
    Column("intervention_id", Integer, ForeignKey("intervention.id"), primary_key=True),
    Column("aim", Text, primary_key=True),
    Column("position", Integer, nullable=False),
    one_of("aim", AIMS),
)

intervention_person = link_table(
    "intervention_person",
    Column("intervention_id", Integer, ForeignKey("intervention.id"), primary_key=True),
    Column("position", Integer, primary_key=True),
    reference("person_id", "person", required=True),
    text("role"),
    Index(None, "person_id"),
)

intervention_component = link_table(
    "intervention_component",
    Column("object_id", Integer, nullable=False),
    Column("intervention_id", Integer, primary_key=True),
    Column("component_id", Integer, primary_key=True),
    Column("position", Integer, nullable=False),
    ForeignKeyConstraint(
        ["object_id", "intervention_id"], ["intervention.object_id", "intervention.id"]
    ),
    ForeignKeyConstraint(["object_id", "component_id"], ["component.object_id", "component.id"]),
    Index(None, "component_id"),
)

intervention_place = link_table(
    "intervention_place",
    Column("object_id", Integer, nullable=False),
    Column("intervention_id", Integer, primary_key=True),
    Column("place_id", Integer, primary_key=True),
    Column("position", Integer, nullable=False),
    ForeignKeyConstraint(
        ["object_id", "intervention_id"], ["intervention.object_id", "intervention.id"]
    ),
    ForeignKeyConstraint(["object_id", "place_id"], ["place.object_id", "place.id"]),
    Index(None, "place_id"),
)

agent = record_table(
    "agent",
    reference("object_id", "object", required=True),
    Column("intervention_id", Integer, nullable=False),
    text("ref", required=True),
    reference("material_id", "material"),
    reference("material_class_id", "material_class"),
    text("material_words"),
    text("concentration"),
    text("form"),
    Column("temperature_c", REAL),
    Column("dwell_min", REAL),
    text("cleared"),
    text("cleared_how"),
    text("note"),
    reference("batch_id", "batch"),
    UniqueConstraint("object_id", "ref"),
    UniqueConstraint("object_id", "id"),
    ForeignKeyConstraint(
        ["object_id", "intervention_id"], ["intervention.object_id", "intervention.id"]
    ),
    one_of("form", AGENT_FORMS),
    Index(None, "intervention_id"),
    Index(None, "material_id"),
    Index(None, "material_class_id"),
    Index("ix_agent_batch", "batch_id", sqlite_where=words("batch_id").is_not(None)),
)

agent_place = link_table(
    "agent_place",
    Column("object_id", Integer, nullable=False),
    Column("agent_id", Integer, primary_key=True),
    Column("place_id", Integer, primary_key=True),
    Column("position", Integer, nullable=False),
    ForeignKeyConstraint(["object_id", "agent_id"], ["agent.object_id", "agent.id"]),
    ForeignKeyConstraint(["object_id", "place_id"], ["place.object_id", "place.id"]),
    Index(None, "place_id"),
)
