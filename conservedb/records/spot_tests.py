"""Spot tests: an agent tried on one layer, read wet, dry and after a day."""

from __future__ import annotations

from sqlalchemy import (
    REAL,
    CheckConstraint,
    Column,
    ForeignKey,
    ForeignKeyConstraint,
    Index,
    Integer,
    UniqueConstraint,
)

from conservedb.records.base import dated, link_table, one_of, record_table, reference, text
from conservedb.records.behaviour import HOLDS, SOLUBILITY_EFFECTS
from conservedb.records.treatments import AGENT_FORMS

TEST_RESULTS = SOLUBILITY_EFFECTS

spot_test = record_table(
    "spot_test",
    reference("object_id", "object", required=True),
    text("ref", required=True),
    Column("layer_id", Integer, nullable=False),
    Column("intervention_id", Integer),
    *dated("date"),
    text("form"),
    Column("area_mm2", REAL),
    Column("temperature_c", REAL),
    Column("dwell_min", REAL),
    text("pressure"),
    text("magnification"),
    text("wet"),
    text("dry"),
    text("next_day"),
    text("swab_colour"),
    text("tide_line"),
    reference("source_id", "source"),
    text("note"),
    UniqueConstraint("object_id", "ref"),
    UniqueConstraint("object_id", "id"),
    ForeignKeyConstraint(["object_id", "layer_id"], ["layer.object_id", "layer.id"]),
    ForeignKeyConstraint(
        ["object_id", "intervention_id"], ["intervention.object_id", "intervention.id"]
    ),
    one_of("form", AGENT_FORMS),
    one_of("wet", TEST_RESULTS),
    one_of("dry", TEST_RESULTS),
    one_of("next_day", TEST_RESULTS),
    one_of("tide_line", HOLDS),
    CheckConstraint("area_mm2 > 0 AND dwell_min >= 0", name="measures_positive"),
    Index(None, "layer_id"),
    Index(None, "intervention_id"),
)

spot_test_part = link_table(
    "spot_test_part",
    Column("spot_test_id", Integer, ForeignKey("spot_test.id"), primary_key=True),
    Column("material_id", Integer, ForeignKey("material.id"), primary_key=True),
    Column("share", REAL),
    Column("position", Integer, nullable=False),
    CheckConstraint("share > 0 AND share <= 100", name="share_in_percent"),
    Index(None, "material_id"),
)

spot_test_person = link_table(
    "spot_test_person",
    Column("spot_test_id", Integer, ForeignKey("spot_test.id"), primary_key=True),
    Column("position", Integer, primary_key=True),
    reference("person_id", "person", required=True),
    text("role"),
    Index(None, "person_id"),
)
