"""Papers and other sources, and what they state about a field of a record."""

from __future__ import annotations

from sqlalchemy import CheckConstraint, Column, ForeignKey, Index, Integer, UniqueConstraint

from conservedb.records.base import dated, link_table, one_of, record_table, reference, text

STATEMENT_SUBJECTS = (
    "object",
    "component",
    "place",
    "layer",
    "intervention",
    "removal",
    "sighting",
    "joint_event",
    "treatment",
)
"""The tables about whose fields a source may state something."""

source = record_table(
    "source",
    text("ref", required=True),
    text("kind"),
    text("citation"),
    text("citation_folded"),
    *dated("date"),
    text("note"),
    UniqueConstraint("ref"),
    Index(None, "citation_folded"),
)

_subject_columns = [reference(f"{subject}_id", subject) for subject in STATEMENT_SUBJECTS]
_one_subject = " + ".join(f"({subject}_id IS NOT NULL)" for subject in STATEMENT_SUBJECTS)

statement = record_table(
    "statement",
    text("key", required=True),
    text("subject", required=True),
    *_subject_columns,
    text("field"),
    text("value"),
    reference("material_id", "material"),
    reference("source_id", "source"),
    text("page"),
    *dated("date"),
    text("followed"),
    reference("decided_by_id", "person"),
    text("reason"),
    text("note"),
    UniqueConstraint("key"),
    one_of("subject", STATEMENT_SUBJECTS),
    one_of("followed", ("yes", "no")),
    CheckConstraint(f"{_one_subject} = 1", name="one_subject"),
    Index(None, "material_id"),
    *(Index(None, f"{subject}_id") for subject in STATEMENT_SUBJECTS),
)

statement_person = link_table(
    "statement_person",
    Column("statement_id", Integer, ForeignKey("statement.id"), primary_key=True),
    Column("position", Integer, primary_key=True),
    reference("person_id", "person", required=True),
    text("role"),
    Index(None, "person_id"),
)
