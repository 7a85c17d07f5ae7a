"""CSV files about treatments, and about layers coming, going, being seen and being tried."""

from __future__ import annotations

from conservedb.exchange.columns import Choice, Column, Date, Material, Number, Ref, Whole
from conservedb.exchange.lists import people, refs, words
from conservedb.exchange.mixtures import mixture
from conservedb.exchange.subject import NOTE, RECORD, Subject, local, person, ref, source
from conservedb.records import layers, spot_tests, treatments
from conservedb.records.behaviour import HOLDS

BATCH = Ref("batch", "batch_id", subject="batches")

TREATMENTS = Subject(
    "treatments",
    "treatment",
    treatments.treatment,
    ("ref",),
    (
        ref(),
        Column("title"),
        Column("purpose"),
        Column("status"),
        Date("begun"),
        Date("ended"),
        person("lead"),
        Column("result"),
        Column("recommendations"),
        Date("next_check"),
        NOTE,
        *RECORD,
    ),
    makes_key=True,
)

INTERVENTIONS = Subject(
    "interventions",
    "intervention",
    treatments.intervention,
    ("ref",),
    (
        ref(),
        local("treatment", "treatment_id", "treatments"),
        local("planned_step", "planned_step_id", "planned_steps"),
        Column("deviation"),
        Choice("standing", values=treatments.STANDINGS),
        Column("unauthorised_reason"),
        person("unauthorised_by"),
        Choice("kind", values=treatments.INTERVENTION_KINDS),
        Column("technique"),
        words("aims", "intervention_aim", "intervention_id", "aim", treatments.AIMS),
        Date("date"),
        Column("time_of_day"),
        Column("date_basis"),
        Column("circumstances"),
        Column("methods"),
        people("intervention_person", "intervention_id"),
        refs(
            "components", "intervention_component", "intervention_id", "component_id", "components"
        ),
        refs("places", "intervention_place", "intervention_id", "place_id", "places"),
        Whole("recorded_over", least=1),
        source(),
        Date("recorded"),
        person("recorded_by"),
        NOTE,
        *RECORD,
    ),
    makes_key=True,
)

AGENTS = Subject(
    "agents",
    "agent",
    treatments.agent,
    ("ref",),
    (
        local("intervention", "intervention_id", "interventions"),
        ref(),
        Material("material"),
        BATCH,
        refs("place", "agent_place", "agent_id", "place_id", "places"),
        Column("concentration"),
        Choice("form", values=treatments.AGENT_FORMS),
        Number("temperature_c", positive=False),
        Number("dwell_min"),
        Column("cleared"),
        Column("cleared_how"),
        NOTE,
        *RECORD,
    ),
    makes_key=True,
)

LAYERS = Subject(
    "layers",
    "layer",
    layers.layer,
    ("ref",),
    (
        refs("place", "layer_candidate", "layer_id", "place_id", "places", single="place_id"),
        ref(),
        local("intervention", "intervention_id", "interventions"),
        Date("date"),
        Choice("origin", values=layers.LAYER_ORIGINS),
        Material("material"),
        BATCH,
        Column("role"),
        Whole("stack"),
        Choice("side", values=layers.SIDES),
        Choice("zone", values=layers.ZONES),
        Choice("coverage", values=layers.COVERAGES),
        Column("concentration"),
        Column("carrier"),
        Number("temperature_c", positive=False),
        Column("treated_from"),
        Whole("cycles", least=0),
        Number("uptake_g"),
        Number("depth_mm"),
        Choice("depth_known", values=layers.DEPTH_KNOWN),
        Whole("recorded_over", least=1),
        Choice("dry", values=layers.DRY),
        Choice("identified", values=layers.IDENTIFIED),
        Choice("significance", values=layers.SIGNIFICANCE),
        person("significance_by"),
        source(),
        NOTE,
        *RECORD,
    ),
    makes_key=True,
)

REMOVALS = Subject(
    "removals",
    "removal",
    layers.removal,
    ("ref",),
    (
        ref(),
        local("layer", "layer_id", "layers"),
        local("intervention", "intervention_id", "interventions"),
        Date("date"),
        Column("cause"),
        Choice("extent", values=layers.EXTENTS),
        Choice("side", values=layers.SIDES),
        Column("kept_what"),
        Column("kept_where"),
        Choice("residue_side", values=layers.RESIDUE_SIDES),
        Column("residue"),
        source(),
        NOTE,
        *RECORD,
    ),
    makes_key=True,
)

SIGHTINGS = Subject(
    "sightings",
    "sighting",
    layers.sighting,
    ("ref",),
    (
        ref(),
        local("layer", "layer_id", "layers"),
        Date("date"),
        Choice("result", values=layers.SIGHTING_RESULTS),
        Choice("side", values=layers.SIDES),
        people("sighting_person", "sighting_id"),
        source(),
        NOTE,
        *RECORD,
    ),
    makes_key=True,
)

SPOT_TESTS = Subject(
    "spot_tests",
    "spot test",
    spot_tests.spot_test,
    ("ref",),
    (
        local("layer", "layer_id", "layers"),
        ref(),
        mixture("spot_test_part", "spot_test_id"),
        local("intervention", "intervention_id", "interventions"),
        Date("date"),
        Choice("form", values=treatments.AGENT_FORMS),
        Number("area_mm2", above_zero=True),
        Number("temperature_c", positive=False),
        Number("dwell_min"),
        Column("pressure"),
        Column("magnification"),
        Choice("wet", values=spot_tests.TEST_RESULTS),
        Choice("dry", values=spot_tests.TEST_RESULTS),
        Choice("next_day", values=spot_tests.TEST_RESULTS),
        Column("swab_colour"),
        Choice("tide_line", values=HOLDS),
        people("spot_test_person", "spot_test_id"),
        source(),
        NOTE,
        *RECORD,
    ),
    makes_key=True,
)
