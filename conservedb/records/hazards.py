"""Hazards of agents. Not a safety data sheet: read the supplier's sheet and the local code."""

from __future__ import annotations

from sqlalchemy import REAL, CheckConstraint, Column, Index, UniqueConstraint

from conservedb.records.base import dated, one_of, record_table, reference, text
from conservedb.records.behaviour import BASES

EXPOSURE_KINDS = ("TWA", "STEL", "ceiling")

hazard_statement = record_table(
    "hazard_statement",
    text("code", required=True),
    text("wording", required=True),
    text("band"),
    text("basis"),
    reference("source_id", "source"),
    *dated("checked"),
    text("note"),
    UniqueConstraint("code"),
    one_of("band", ("A", "B", "C", "D")),
    one_of("basis", BASES),
)
"""The codes of the UN GHS, Annex 3, and the band (A mildest) that each puts an agent in."""

hazard = record_table(
    "hazard",
    text("key", required=True),
    reference("material_id", "material", required=True),
    reference("statement_id", "hazard_statement", required=True),
    text("basis"),
    reference("source_id", "source"),
    *dated("checked"),
    text("note"),
    UniqueConstraint("key"),
    one_of("basis", BASES),
    Index(None, "material_id"),
    Index(None, "statement_id"),
)

exposure_limit = record_table(
    "exposure_limit",
    text("key", required=True),
    reference("material_id", "material", required=True),
    text("kind", required=True),
    Column("ppm", REAL),
    Column("mg_m3", REAL),
    text("skin"),
    text("jurisdiction", required=True),
    *dated("as_of"),
    text("basis"),
    reference("source_id", "source"),
    text("note"),
    UniqueConstraint("key"),
    one_of("kind", EXPOSURE_KINDS),
    one_of("skin", ("yes", "no")),
    one_of("basis", BASES),
    CheckConstraint("ppm > 0 AND mg_m3 > 0", name="limit_positive"),
    Index(None, "material_id"),
)
"""A limit of one jurisdiction at one date; never legal advice."""

restriction = record_table(
    "restriction",
    text("key", required=True),
    reference("material_id", "material", required=True),
    text("jurisdiction", required=True),
    text("text", required=True),
    *dated("since"),
    text("basis"),
    reference("source_id", "source"),
    text("note"),
    UniqueConstraint("key"),
    one_of("basis", BASES),
    Index(None, "material_id"),
)
"""What the law says of an agent where the department works; the department keeps this table."""
