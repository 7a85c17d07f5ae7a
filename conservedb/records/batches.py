"""Batches: what somebody made up or opened on a day, to be used afterwards."""

from __future__ import annotations

from sqlalchemy import Index, UniqueConstraint

from conservedb.records.base import dated, record_table, reference, text

batch = record_table(
    "batch",
    text("ref", required=True),
    reference("material_id", "material"),
    reference("material_class_id", "material_class"),
    text("material_words"),
    text("lot"),
    *dated("made"),
    reference("made_by_id", "person"),
    text("concentration"),
    text("carrier"),
    text("note"),
    UniqueConstraint("ref"),
    Index(None, "material_id"),
    Index(None, "material_class_id"),
)
