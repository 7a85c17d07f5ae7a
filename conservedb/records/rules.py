"""Rules of the trade, findings that somebody has accepted, climates of rooms, and settings."""

from __future__ import annotations

from sqlalchemy import (
    REAL,
    CheckConstraint,
    Column,
    ForeignKeyConstraint,
    Index,
    Integer,
    Text,
)
from sqlalchemy import UniqueConstraint as Unique

from conservedb.records.base import (
    dated,
    link_table,
    one_of,
    record_table,
    reference,
    text,
)
from conservedb.records.behaviour import BASES

SEVERITIES = ("block", "warn", "inform")
JUDGES = ("safety", "conduct")
ROOM_USES = ("display", "storage", "transport", "outdoors")

rule = record_table(
    "rule",
    text("key", required=True),
    text("title", required=True),
    text("severity", required=True),
    text("judges", required=True),
    text("needs"),
    text("sentence", required=True),
    text("active"),
    text("basis"),
    reference("source_id", "source"),
    text("page"),
    text("note"),
    Unique("key"),
    one_of("severity", SEVERITIES),
    one_of("judges", JUDGES),
    one_of("active", ("yes", "no")),
    one_of("basis", BASES),
)
"""A rule judges the object's safety now, or the conduct of work from a day that is set."""

acceptance = record_table(
    "acceptance",
    reference("object_id", "object", required=True),
    text("ref", required=True),
    reference("rule_id", "rule", required=True),
    Column("component_id", Integer),
    Column("place_id", Integer),
    Column("layer_id", Integer),
    reference("person_id", "person", required=True),
    text("reason", required=True),
    *dated("date"),
    *dated("review"),
    text("note"),
    Unique("object_id", "ref"),
    ForeignKeyConstraint(["object_id", "component_id"], ["component.object_id", "component.id"]),
    ForeignKeyConstraint(["object_id", "place_id"], ["place.object_id", "place.id"]),
    ForeignKeyConstraint(["object_id", "layer_id"], ["layer.object_id", "layer.id"]),
    Index(None, "object_id", "rule_id"),
)
"""A finding that a named person accepts for a reason until a day of review."""

climate = record_table(
    "climate",
    text("key", required=True),
    text("room", required=True),
    text("room_folded", required=True),
    text("use"),
    Column("min_c", REAL),
    Column("max_c", REAL),
    *dated("since"),
    *dated("until"),
    reference("source_id", "source"),
    text("note"),
    Unique("key"),
    one_of("use", ROOM_USES),
    CheckConstraint("min_c <= max_c", name="cold_below_warm"),
    Index(None, "room_folded"),
)
"""How warm a room, case or van gets. It holds for every whereabouts that begins with `room`."""

setting = record_table(
    "setting",
    text("name", required=True),
    text("value"),
    reference("source_id", "source"),
    text("note"),
    Unique("name"),
)
"""What the department has settled for the program, by name."""

near = record_table(
    "near",
    reference("object_id", "object", required=True),
    text("ref", required=True),
    Column("place_id", Integer, nullable=False),
    Column("other_place_id", Integer, nullable=False),
    Column("distance_mm", REAL),
    text("path"),
    reference("source_id", "source"),
    text("note"),
    Unique("object_id", "ref"),
    ForeignKeyConstraint(["object_id", "place_id"], ["place.object_id", "place.id"]),
    ForeignKeyConstraint(["object_id", "other_place_id"], ["place.object_id", "place.id"]),
    one_of("path", ("open", "tight", "porous", "unknown")),
    CheckConstraint("place_id <> other_place_id", name="two_places"),
    CheckConstraint("distance_mm >= 0", name="distance_positive"),
    Index(None, "place_id"),
    Index(None, "other_place_id"),
)
"""Two places of an object between which an agent, heat or vapour may pass; holds both ways."""

shipped = link_table(
    "shipped",
    Column("subject", Text, primary_key=True),
    Column("record_id", Integer, primary_key=True),
    text("content", required=True),
)
"""What the program put in, as it put it in: a record that differs by now is the department's."""
