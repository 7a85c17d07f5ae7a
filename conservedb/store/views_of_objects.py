"""Views of objects, their parts and places, the layers there, and what became of these."""

from __future__ import annotations

from conservedb.store.view_shape import (
    OBJECT,
    SOURCE,
    UUID,
    View,
    bounds,
    days,
    given,
    marks,
    matter,
    matter_joins,
    own,
    people,
)

OBJECTS = View(
    "v_objects",
    "objects in the department's care",
    (
        OBJECT,
        *own("ob", title="what it is called", kind="what it is", maker="who made it"),
        *days("ob", made="when it was made"),
        *own("ob", whereabouts="where it is, in words", note="remarks", uuid=UUID),
    ),
    "FROM object ob",
)

COMPONENTS = View(
    "v_components",
    "the parts that objects are made of",
    (
        OBJECT,
        *own("co", mark="mark of the component on its object"),
        given("parent", "pa.mark", "mark of the component that it is a part of"),
        *own("co", name="what it is called", kind="block, limb, pin ..."),
        *own("co", origin="original, later, restoration, replacement, fixing, mount, uncertain"),
        given("material", "ma.key", "key of the material; NULL where not identified"),
        *own("co", material_words="the material as found in the papers"),
        marks(
            "bridges",
            "marks of the joints that a fixing crosses",
            "bridge",
            "li.component_id = co.id",
            order="ta.mark",
        ),
        *own("co", width_mm="width in mm", height_mm="height in mm", depth_mm="depth in mm"),
        *own("co", mass_kg="mass in kg", mass_basis="how the mass is known"),
        *days("co", made="when it was made", lost="when it was lost"),
        *days("co", retired="when it was taken out for good"),
        *own("co", retired_why="why it was taken out for good"),
        given("replaced_by", "su.mark", "mark of the component that replaced it"),
        *own("co", kept_at="where it is kept apart from the object"),
        *own("co", known_from="seen, documented, picture only, suspected"),
        SOURCE,
        *own("co", note="remarks", uuid=UUID),
    ),
    """FROM component co
JOIN object ob ON ob.id = co.object_id
LEFT JOIN component pa ON pa.id = co.parent_id
LEFT JOIN component su ON su.id = co.replaced_by_id
LEFT JOIN material ma ON ma.id = co.material_id
LEFT JOIN source so ON so.id = co.source_id""",
)

PLACES = View(
    "v_places",
    "where on an object matter lies: joints, surfaces, bodies, cavities",
    (
        OBJECT,
        *own("pl", mark="mark of the place on its object", kind="joint, surface, body, cavity"),
        given("component", "ca.mark", "mark of the component that it lies on; of a joint, side A"),
        given("other_component", "cb.mark", "of a joint, the mark of the component of side B"),
        *own("pl", name="what it is called", geometry="its shape, in words"),
        *own("pl", arose="making or breaking"),
        *days("pl", arose="when the joint arose"),
        *own("pl", fit="how the sides meet", load_kg="what the joint carries, in kg"),
        given("load_source", "so.ref", "ref of the source of the load, see v_sources"),
        *own("pl", access="how it can be reached", note="remarks", uuid=UUID),
    ),
    """FROM place pl
JOIN object ob ON ob.id = pl.object_id
LEFT JOIN component ca ON ca.id = pl.component_id
LEFT JOIN component cb ON cb.id = pl.other_component_id
LEFT JOIN source so ON so.id = pl.load_source_id""",
)

JOINT_EVENTS = View(
    "v_joint_events",
    "what joints did: closed, moving, opened, failed",
    (
        OBJECT,
        given("place", "pl.mark", "mark of the joint"),
        *own("je", ref="ref of the event on its object", event="closed, moving, opened, failed"),
        *days("je", date="when"),
        given("intervention", "i.ref", "ref of the intervention that did it"),
        *own("je", location="where on the joint"),
        SOURCE,
        *own("je", note="remarks", uuid=UUID),
    ),
    """FROM joint_event je
JOIN object ob ON ob.id = je.object_id
LEFT JOIN place pl ON pl.id = je.place_id
LEFT JOIN intervention i ON i.id = je.intervention_id
LEFT JOIN source so ON so.id = je.source_id""",
)

LAYERS = View(
    "v_layers",
    "matter formed in place, with the bounds of its coming and going from all records together;"
    " a layer is there for certain on a day whose number is at least came_last_number and below"
    " both reduced_first_number and gone_first_number, and possibly there from came_first_number"
    " until below gone_last_number",
    (
        OBJECT,
        given("place", "pl.mark", "mark of the place; NULL where several are possible, or none"),
        marks(
            "possible_places",
            "marks of the places where it may lie, where the papers do not say which",
            "layer_candidate",
            "li.layer_id = la.id",
        ),
        *own("la", ref="ref of the layer on its object"),
        given("intervention", "i.ref", "ref of the intervention that laid it"),
        given("intervention_date_words", "i.date_words", "date of that intervention: as found"),
        *days("la", date="its own date, beside that of the intervention"),
        *own("la", origin="applied, maker (the maker's own), arisen"),
        *matter("la"),
        *own("la", role="adhesive, fill, coating ...", stack="order outward; 0 is nearest side A"),
        *own("la", side="of a joint, A or B", zone="of a joint, face, edge or core"),
        *own("la", coverage="whole, part, spots, unknown", concentration="in words"),
        *own("la", carrier="what carried it", dry="whether it was dry when covered"),
        given("batch", "ba.ref", "ref of the batch that it came from"),
        *own("la", temperature_c="at what temperature, in degrees C", treated_from="from where"),
        *own("la", cycles="how often it was put on", uptake_g="taken up, in g"),
        *own("la", depth_mm="how deep it went, in mm", depth_known="how that is known"),
        *own("la", identified="how well the material is known"),
        *own("la", significance="keep, may go, undecided"),
        given("significance_by", "pe.name", "who says so"),
        *bounds("la"),
        SOURCE,
        *own("la", note="remarks", uuid=UUID),
    ),
    f"""FROM layer la
JOIN object ob ON ob.id = la.object_id
LEFT JOIN place pl ON pl.id = la.place_id
LEFT JOIN intervention i ON i.id = la.intervention_id
{matter_joins("la")}
LEFT JOIN batch ba ON ba.id = la.batch_id
LEFT JOIN person pe ON pe.id = la.significance_by_id
LEFT JOIN source so ON so.id = la.source_id""",
)

LAYER_SIDES = View(
    "v_layer_sides",
    "the same bounds for one side of a joint, only where the two sides differ",
    (
        OBJECT,
        given("place", "pl.mark", "mark of the joint"),
        given("layer", "la.ref", "ref of the layer"),
        *own("ls", side="A or B"),
        *bounds("ls"),
    ),
    """FROM layer_side ls
JOIN layer la ON la.id = ls.layer_id
JOIN object ob ON ob.id = la.object_id
LEFT JOIN place pl ON pl.id = la.place_id""",
)

REMOVALS = View(
    "v_removals",
    "layers taken away by an intervention, or ended without one",
    (
        OBJECT,
        given("place", "pl.mark", "mark of the place of the layer"),
        given("layer", "la.ref", "ref of the layer"),
        *own("re", ref="ref of the removal on its object"),
        given("intervention", "i.ref", "ref of the intervention that took it away"),
        *days("re", date="its own date, beside that of the intervention"),
        *own("re", cause="why it ended, without an intervention"),
        *own("re", extent="all, part, attempted (changed nothing)"),
        *own("re", side="of a joint, the side it was taken from; NULL for both"),
        *own("re", residue_side="where something was left", residue="what was left"),
        *own("re", kept_what="what was kept of it", kept_where="where that is kept"),
        SOURCE,
        *own("re", note="remarks", uuid=UUID),
    ),
    """FROM removal re
JOIN object ob ON ob.id = re.object_id
LEFT JOIN layer la ON la.id = re.layer_id
LEFT JOIN place pl ON pl.id = la.place_id
LEFT JOIN intervention i ON i.id = re.intervention_id
LEFT JOIN source so ON so.id = re.source_id""",
)

SIGHTINGS = View(
    "v_sightings",
    "somebody looked whether a layer was there",
    (
        OBJECT,
        given("place", "pl.mark", "mark of the place of the layer"),
        given("layer", "la.ref", "ref of the layer"),
        *own("si", ref="ref of the sighting on its object"),
        *days("si", date="when somebody looked"),
        *own("si", result="seen, not found, not accessible", side="of a joint, A or B"),
        people("sighting", "si"),
        SOURCE,
        *own("si", note="remarks", uuid=UUID),
    ),
    """FROM sighting si
JOIN object ob ON ob.id = si.object_id
LEFT JOIN layer la ON la.id = si.layer_id
LEFT JOIN place pl ON pl.id = la.place_id
LEFT JOIN source so ON so.id = si.source_id""",
)
