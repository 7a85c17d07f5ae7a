"""CSV files about plans of treatment, and about who authorised what."""

from __future__ import annotations

from conservedb.exchange.columns import Choice, Column, Date, Material, Whole
from conservedb.exchange.lists import people, refs, words
from conservedb.exchange.subject import NOTE, RECORD, Subject, local, person, ref, source
from conservedb.records import authorisations, plans
from conservedb.records.treatments import AIMS, INTERVENTION_KINDS

CAPACITY = Choice("capacity", values=authorisations.CAPACITIES)

PLANS = Subject(
    "plans",
    "plan",
    plans.plan,
    ("ref",),
    (
        ref(),
        local("treatment", "treatment_id", "treatments"),
        Whole("version", least=1),
        Date("date"),
        words("aims", "plan_aim", "plan_id", "aim", AIMS),
        Column("justification"),
        Column("alternatives"),
        Column("risks"),
        people("plan_person", "plan_id"),
        source(),
        NOTE,
        *RECORD,
    ),
    makes_key=True,
)

PLANNED_STEPS = Subject(
    "planned_steps",
    "planned step",
    plans.planned_step,
    ("ref",),
    (
        ref(),
        local("plan", "plan_id", "plans"),
        Whole("position"),
        Choice("kind", values=INTERVENTION_KINDS),
        Column("technique"),
        Material("material"),
        Column("concentration"),
        Column("carrier"),
        refs(
            "components", "planned_step_component", "planned_step_id", "component_id", "components"
        ),
        refs("places", "planned_step_place", "planned_step_id", "place_id", "places"),
        NOTE,
        *RECORD,
    ),
    makes_key=True,
)

AUTHORISATIONS = Subject(
    "authorisations",
    "authorisation",
    authorisations.authorisation,
    ("ref",),
    (
        ref(),
        local("plan", "plan_id", "plans"),
        local("intervention", "intervention_id", "interventions"),
        CAPACITY,
        person("person"),
        Choice("decision", values=authorisations.DECISIONS),
        Column("scope"),
        refs("steps", "authorisation_step", "authorisation_id", "planned_step_id", "planned_steps"),
        Column("conditions"),
        Date("date"),
        Date("expires"),
        source(),
        Column("evidence"),
        NOTE,
        *RECORD,
    ),
    makes_key=True,
)

STANDING_APPROVALS = Subject(
    "standing_approvals",
    "standing approval",
    authorisations.standing_approval,
    ("ref",),
    (
        ref(),
        words(
            "kinds", "standing_approval_kind", "standing_approval_id", "kind", INTERVENTION_KINDS
        ),
        CAPACITY,
        person("person"),
        Date("since"),
        Date("until"),
        Column("conditions"),
        source(),
        NOTE,
        *RECORD,
    ),
    in_object=False,
    makes_key=True,
)

NEEDED_AUTHORISATIONS = Subject(
    "needed_authorisations",
    "needed authorisation",
    authorisations.needed_authorisation,
    ("kind", "capacity"),
    (
        Choice("kind", values=INTERVENTION_KINDS),
        Choice("capacity", values=(*authorisations.CAPACITIES, authorisations.NOBODY)),
        Choice("author_alone", values=("yes", "no")),
        NOTE,
        *RECORD,
    ),
    in_object=False,
)
