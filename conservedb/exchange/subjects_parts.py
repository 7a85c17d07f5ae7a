"""CSV files about objects, their components and places, and what befell these."""

from __future__ import annotations

from conservedb.exchange.columns import Choice, Column, Date, KeyText, Material, Name, Number, Whole
from conservedb.exchange.lists import refs
from conservedb.exchange.subject import NOTE, RECORD, Subject, local, ref, source
from conservedb.records import objects, places

OBJECTS = Subject(
    "objects",
    "object",
    objects.object_,
    ("number",),
    (
        KeyText("number", folded=True, sorted_too=True),
        Name("title"),
        Column("kind"),
        Column("maker"),
        Date("made"),
        Column("whereabouts"),
        NOTE,
        *RECORD,
    ),
    in_object=False,
    folded=True,
)

COMPONENTS = Subject(
    "components",
    "component",
    objects.component,
    ("mark",),
    (
        KeyText("mark", folded=True),
        local("parent", "parent_id", "components"),
        Name("name"),
        Column("kind"),
        Choice("origin", values=objects.COMPONENT_ORIGINS),
        Material("material", with_class=False),
        refs("bridges", "bridge", "component_id", "place_id", "places"),
        Number("width_mm"),
        Number("height_mm"),
        Number("depth_mm"),
        Number("mass_kg"),
        Column("mass_basis"),
        Date("made"),
        Date("lost"),
        Column("kept_at"),
        Choice("known_from", values=objects.KNOWN_FROM),
        source(),
        Date("retired"),
        Column("retired_why"),
        local("replaced_by", "replaced_by_id", "components"),
        NOTE,
        *RECORD,
    ),
    folded=True,
    parent="parent",
)

PLACES = Subject(
    "places",
    "place",
    places.place,
    ("mark",),
    (
        KeyText("mark", folded=True),
        Choice("kind", values=places.PLACE_KINDS),
        local("component", "component_id", "components"),
        local("other_component", "other_component_id", "components"),
        Name("name"),
        Column("geometry"),
        Choice("arose", values=places.ARISEN_BY),
        Date("arose_date", "arose"),
        Column("fit"),
        Number("load_kg"),
        source("load_source"),
        Column("access"),
        NOTE,
        *RECORD,
    ),
    folded=True,
)

JOINT_EVENTS = Subject(
    "joint_events",
    "joint event",
    places.joint_event,
    ("ref",),
    (
        local("place", "place_id", "places"),
        ref(),
        Choice("event", values=places.JOINT_EVENTS),
        Date("date"),
        Whole("step"),
        local("intervention", "intervention_id", "interventions"),
        Column("where", "location"),
        source(),
        NOTE,
        *RECORD,
    ),
    makes_key=True,
)

WARNINGS = Subject(
    "warnings",
    "warning",
    objects.warning,
    ("ref",),
    (
        ref(),
        local("component", "component_id", "components"),
        local("place", "place_id", "places"),
        Column("kind"),
        Column("text"),
        Date("since"),
        Date("until"),
        source(),
        NOTE,
        *RECORD,
    ),
    makes_key=True,
)

WHEREABOUTS = Subject(
    "whereabouts",
    "whereabouts",
    objects.whereabouts,
    ("ref",),
    (
        ref(),
        local("component", "component_id", "components"),
        Column("place_name"),
        Date("since"),
        Date("until"),
        source(),
        NOTE,
        *RECORD,
    ),
    makes_key=True,
)
