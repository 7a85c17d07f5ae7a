"""CSV files about hazards of agents, limits of exposure, and what the law restricts."""

from __future__ import annotations

from conservedb.exchange.columns import Choice, Column, Date, Number, Ref
from conservedb.exchange.subject import NOTE, RECORD, Subject, ref, source
from conservedb.exchange.subjects_behaviour import BASIS, MATERIAL
from conservedb.records import hazards

HAZARD_STATEMENTS = Subject(
    "hazard_statements",
    "hazard statement",
    hazards.hazard_statement,
    ("code",),
    (
        ref("code"),
        Column("wording"),
        Choice("band", values=("A", "B", "C", "D")),
        BASIS,
        source(),
        Date("checked"),
        NOTE,
        *RECORD,
    ),
    in_object=False,
)

HAZARDS = Subject(
    "hazards",
    "hazard",
    hazards.hazard,
    ("key",),
    (
        ref("key"),
        MATERIAL,
        Ref("code", "statement_id", subject="hazard_statements"),
        BASIS,
        source(),
        Date("checked"),
        NOTE,
        *RECORD,
    ),
    in_object=False,
    makes_key=True,
)

EXPOSURE_LIMITS = Subject(
    "exposure_limits",
    "exposure limit",
    hazards.exposure_limit,
    ("key",),
    (
        ref("key"),
        MATERIAL,
        Choice("kind", values=hazards.EXPOSURE_KINDS),
        Number("ppm", above_zero=True),
        Number("mg_m3", above_zero=True),
        Choice("skin", values=("yes", "no")),
        Column("jurisdiction"),
        Date("as_of"),
        BASIS,
        source(),
        NOTE,
        *RECORD,
    ),
    in_object=False,
    makes_key=True,
)

RESTRICTIONS = Subject(
    "restrictions",
    "restriction",
    hazards.restriction,
    ("key",),
    (
        ref("key"),
        MATERIAL,
        Column("jurisdiction"),
        Column("text"),
        Date("since"),
        BASIS,
        source(),
        NOTE,
        *RECORD,
    ),
    in_object=False,
    makes_key=True,
)
