"""CSV files about rules and settings, climates, places near each other, and what is accepted."""

from __future__ import annotations

from conservedb.exchange.columns import Choice, Column, Date, Name, Number, Ref
from conservedb.exchange.subject import NOTE, RECORD, Subject, local, person, ref, source
from conservedb.exchange.subjects_behaviour import BASIS
from conservedb.records import rules

RULES = Subject(
    "rules",
    "rule",
    rules.rule,
    ("key",),
    (
        ref("key"),
        Column("title"),
        Choice("severity", values=rules.SEVERITIES),
        Choice("judges", values=rules.JUDGES),
        Column("needs"),
        Column("sentence"),
        Choice("active", values=("yes", "no")),
        BASIS,
        source(),
        Column("page"),
        NOTE,
        *RECORD,
    ),
    in_object=False,
)

SETTINGS = Subject(
    "settings",
    "setting",
    rules.setting,
    ("name",),
    (ref("name"), Column("value"), source(), NOTE, *RECORD),
    in_object=False,
)

CLIMATES = Subject(
    "climates",
    "climate",
    rules.climate,
    ("key",),
    (
        ref("key"),
        Name("room"),
        Choice("use", values=rules.ROOM_USES),
        Number("min_c", positive=False),
        Number("max_c", positive=False),
        Date("since"),
        Date("until"),
        source(),
        NOTE,
        *RECORD,
    ),
    in_object=False,
    makes_key=True,
)

NEAR = Subject(
    "near",
    "pair of near places",
    rules.near,
    ("ref",),
    (
        ref(),
        local("place", "place_id", "places"),
        local("other_place", "other_place_id", "places"),
        Number("distance_mm"),
        Choice("path", values=("open", "tight", "porous", "unknown")),
        source(),
        NOTE,
        *RECORD,
    ),
    makes_key=True,
)

ACCEPTANCES = Subject(
    "acceptances",
    "acceptance",
    rules.acceptance,
    ("ref",),
    (
        ref(),
        Ref("rule", "rule_id", subject="rules"),
        local("component", "component_id", "components"),
        local("place", "place_id", "places"),
        local("layer", "layer_id", "layers"),
        person("person"),
        Column("reason"),
        Date("date"),
        Date("review"),
        NOTE,
        *RECORD,
    ),
    makes_key=True,
)
