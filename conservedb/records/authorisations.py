"""Who authorised what, what is approved for good, and which authorisations are needed."""

from __future__ import annotations

from sqlalchemy import (
    Column,
    ForeignKey,
    ForeignKeyConstraint,
    Index,
    Integer,
    Text,
    UniqueConstraint,
)

from conservedb.records.base import dated, link_table, one_of, record_table, reference, text
from conservedb.records.treatments import INTERVENTION_KINDS

CAPACITIES = (
    "owner",
    "lender",
    "curator",
    "head of conservation",
    "engineer",
    "statutory body",
)
NOBODY = "nobody"
"""Stands in the department's table where a kind of step needs no authorisation."""
DECISIONS = ("authorised", "refused", "ratified")

authorisation = record_table(
    "authorisation",
    reference("object_id", "object", required=True),
    text("ref", required=True),
    Column("plan_id", Integer),
    Column("intervention_id", Integer),
    text("capacity"),
    reference("person_id", "person"),
    text("decision"),
    text("scope"),
    text("conditions"),
    *dated("date"),
    *dated("expires"),
    reference("source_id", "source"),
    text("evidence"),
    text("note"),
    UniqueConstraint("object_id", "ref"),
    UniqueConstraint("object_id", "id"),
    ForeignKeyConstraint(["object_id", "plan_id"], ["plan.object_id", "plan.id"]),
    ForeignKeyConstraint(
        ["object_id", "intervention_id"], ["intervention.object_id", "intervention.id"]
    ),
    one_of("capacity", CAPACITIES),
    one_of("decision", DECISIONS),
    Index(None, "plan_id"),
    Index(None, "intervention_id"),
)
"""A decision on one version of a plan, or (first aid) on a step already done.

Where `scope` is blank and no step is listed in `authorisation_step`, it is the whole plan.
"""

authorisation_step = link_table(
    "authorisation_step",
    Column("object_id", Integer, nullable=False),
    Column("authorisation_id", Integer, primary_key=True),
    Column("planned_step_id", Integer, primary_key=True),
    Column("position", Integer, nullable=False),
    ForeignKeyConstraint(
        ["object_id", "authorisation_id"], ["authorisation.object_id", "authorisation.id"]
    ),
    ForeignKeyConstraint(
        ["object_id", "planned_step_id"], ["planned_step.object_id", "planned_step.id"]
    ),
    Index(None, "planned_step_id"),
)

standing_approval = record_table(
    "standing_approval",
    text("ref", required=True),
    text("capacity"),
    reference("person_id", "person"),
    *dated("since"),
    *dated("until"),
    text("conditions"),
    reference("source_id", "source"),
    text("note"),
    UniqueConstraint("ref"),
    one_of("capacity", CAPACITIES),
)
"""Covers routine care of the kinds in `standing_approval_kind` while it is in force."""

standing_approval_kind = link_table(
    "standing_approval_kind",
    Column("standing_approval_id", Integer, ForeignKey("standing_approval.id"), primary_key=True),
    Column("kind", Text, primary_key=True),
    Column("position", Integer, nullable=False),
    one_of("kind", INTERVENTION_KINDS),
)

needed_authorisation = record_table(
    "needed_authorisation",
    text("kind", required=True),
    text("capacity", required=True),
    text("author_alone"),
    text("note"),
    UniqueConstraint("kind", "capacity"),
    one_of("kind", INTERVENTION_KINDS),
    one_of("capacity", (*CAPACITIES, NOBODY)),
    one_of("author_alone", ("yes", "no")),
)
"""The table that the department keeps; a kind without a row is "not recorded", never "none".

`author_alone`: whether an author of the plan who holds this capacity may authorise alone.
"""
