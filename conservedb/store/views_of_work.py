"""Views of treatments and interventions, what they used, and what was found."""

from __future__ import annotations

from conservedb.store.view_shape import (
    OBJECT,
    SOURCE,
    UUID,
    View,
    ViewColumn,
    days,
    given,
    listed,
    marks,
    matter,
    matter_joins,
    own,
    people,
)

TREATMENTS = View(
    "v_treatments",
    "campaigns of work on one object",
    (
        OBJECT,
        *own("tr", ref="ref of the treatment on its object", title="what it is called"),
        *own("tr", purpose="what it is for", status="how far it is, in words"),
        *days("tr", begun="when it began", ended="when it ended"),
        given("lead", "pe.name", "who leads it"),
        *own("tr", result="what came of it", recommendations="what is recommended"),
        *days("tr", next_check="when to look again"),
        *own("tr", note="remarks", uuid=UUID),
    ),
    """FROM treatment tr
JOIN object ob ON ob.id = tr.object_id
LEFT JOIN person pe ON pe.id = tr.lead_id""",
)

INTERVENTIONS = View(
    "v_interventions",
    "dated deeds by named people",
    (
        OBJECT,
        *own("i", ref="ref of the intervention on its object"),
        given("treatment", "tr.ref", "ref of the treatment that it is a part of"),
        *own("i", kind="clean, consolidate, join, fill ...", technique="how it was done"),
        given(
            "aims",
            listed("li.aim", "intervention_aim li", "li.intervention_id = i.id"),
            "preventive, remedial, restoration; several at once",
        ),
        *days("i", date="when it was done"),
        *own("i", time_of_day="at what time", date_basis="how the date is known"),
        people("intervention", "i"),
        marks(
            "components",
            "marks of the components worked on",
            "intervention_component",
            "li.intervention_id = i.id",
            "component",
        ),
        marks(
            "places",
            "marks of the places worked on",
            "intervention_place",
            "li.intervention_id = i.id",
        ),
        *own("i", recorded_over="over how many parts or places at once it was recorded"),
        *own("i", standing="planned, routine care, first aid, historic"),
        *own("i", deviation="why it was not done as planned"),
        *own("i", circumstances="under what circumstances", methods="by what methods"),
        SOURCE,
        *days("i", recorded="when it was written down"),
        given("recorded_by", "pe.name", "who wrote it down"),
        *own("i", note="remarks", uuid=UUID),
    ),
    """FROM intervention i
JOIN object ob ON ob.id = i.object_id
LEFT JOIN treatment tr ON tr.id = i.treatment_id
LEFT JOIN person pe ON pe.id = i.recorded_by_id
LEFT JOIN source so ON so.id = i.source_id""",
)

AGENTS = View(
    "v_agents",
    "what interventions used that was not meant to stay",
    (
        OBJECT,
        given("intervention", "i.ref", "ref of the intervention"),
        *own("ag", ref="ref of the agent on its object"),
        *matter("ag"),
        marks("places", "marks of the places", "agent_place", "li.agent_id = ag.id"),
        given("batch", "ba.ref", "ref of the batch that it came from"),
        *own("ag", concentration="in words", form="free, swab, gel, poultice, vapour, bath"),
        *own("ag", temperature_c="in degrees C", dwell_min="how long it stayed, in minutes"),
        *own("ag", cleared="whether it was cleared, in words; NULL is not recorded"),
        *own("ag", cleared_how="how it was cleared", note="remarks", uuid=UUID),
    ),
    f"""FROM agent ag
JOIN object ob ON ob.id = ag.object_id
LEFT JOIN intervention i ON i.id = ag.intervention_id
{matter_joins("ag")}
LEFT JOIN batch ba ON ba.id = ag.batch_id""",
)


def _finding(name: str, meaning: str, table: str, *columns: ViewColumn) -> View:
    """A view of what was found on an object, or on a component, place or layer of it."""
    return View(
        name,
        meaning,
        (
            OBJECT,
            *own("fi", ref=f"ref of the {table} on its object"),
            given("intervention", "i.ref", "ref of the examination or step it belongs to"),
            given("component", "co.mark", "mark of the component that it is about"),
            given("place", "pl.mark", "mark of the place that it is about"),
            given("layer", "la.ref", "ref of the layer that it is about"),
            *days("fi", date="when"),
            *columns,
            people(table, "fi"),
            SOURCE,
            *own("fi", note="remarks", uuid=UUID),
        ),
        f"""FROM {table} fi
JOIN object ob ON ob.id = fi.object_id
LEFT JOIN intervention i ON i.id = fi.intervention_id
LEFT JOIN component co ON co.id = fi.component_id
LEFT JOIN place pl ON pl.id = fi.place_id
LEFT JOIN layer la ON la.id = fi.layer_id
LEFT JOIN source so ON so.id = fi.source_id""",
    )


OBSERVATIONS = _finding(
    "v_observations",
    "what was seen, apart from what was presumed from it",
    "observation",
    *own("fi", condition="one word for it", seen="what was seen", presumed="what was presumed"),
    *own("fi", extent="how much of it"),
)

READINGS = _finding(
    "v_readings",
    "readings of instruments",
    "reading",
    *own("fi", quantity="what was measured", value="the number", unit="its unit"),
    *own("fi", instrument="with what", spot="where exactly"),
)

SAMPLES = _finding(
    "v_samples",
    "matter taken for analysis, or kept when it was removed",
    "sample",
    *own("fi", kind="sample, removed matter", what="what was taken", box="where it is kept"),
    *own("fi", remainder="what is left of it", result="what analysis found"),
    *own("fi", analysed_by="who analysed it"),
)
