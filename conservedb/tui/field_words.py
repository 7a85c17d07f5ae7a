"""Labels, units and hints of the fields of forms, in the words of the trade."""

from __future__ import annotations

LABELS = {
    "agent": "agent",
    "agent_temperature_c": "agent at",
    "analysed_by": "analysed by",
    "area_mm2": "area",
    "arose": "arose by",
    "arose_date": "arose when",
    "behaves_as": "behaves as",
    "bridges": "crosses joints",
    "cleared_how": "how cleared",
    "date_basis": "dated by",
    "decided_by": "decided by",
    "depth_known": "depth known by",
    "depth_mm": "depth",
    "dwell_min": "left on for",
    "height_mm": "height",
    "width_mm": "width",
    "joint event": "event",
    "kept_at": "kept at",
    "kept_what": "what was kept",
    "kept_where": "kept where",
    "known_from": "known from",
    "load_kg": "carries",
    "load_source": "load known from",
    "made_by": "made up by",
    "mass_basis": "mass known from",
    "mass_kg": "mass",
    "next_check": "next check",
    "next_day": "next day",
    "other_component": "other part",
    "component": "part",
    "components": "parts",
    "parent": "part of",
    "place": "location",
    "places": "locations",
    "place_name": "place",
    "planned_step": "planned step",
    "recorded_by": "recorded by",
    "recorded_over": "recorded over",
    "replaced_by": "replaced by",
    "residue_side": "residue on side",
    "retired_why": "why retired",
    "significance_by": "judged by",
    "source": "paper or picture",
    "stack": "order, from inside",
    "swab_colour": "colour on swab",
    "temperature_c": "temperature",
    "thesaurus_id": "number there",
    "tide_line": "tide line",
    "time_of_day": "time of day",
    "trade_names": "trade names",
    "treated_from": "treated from",
    "unauthorised_by": "begun on word of",
    "unauthorised_reason": "why unauthorised",
    "uptake_g": "uptake",
}
"""Header -> what stands before the field; others are their header without underscores."""

UNITS = {
    "_mm2": "mm²",
    "_mm": "mm",
    "_kg": "kg",
    "_min": "min",
    "_c": "°C",
    "_g": "g",
}
"""End of a header -> unit."""

LONG = frozenset(
    (
        "note",
        "seen",
        "presumed",
        "justification",
        "alternatives",
        "risks",
        "conditions",
        "scope",
        "result",
        "recommendations",
        "circumstances",
        "methods",
        "text",
        "deviation",
        "geometry",
        "definition",
        "purpose",
    )
)
"""Headers of texts of several lines."""

HINTS = {
    "aims": "preventive, remedial or restoration; several with semicolons",
    "agent": "what is used and not meant to stay; a mixture as: acetone 50; ethanol 50",
    "aliases": "other names, with semicolons between them",
    "trade_names": "with semicolons between them",
    "coverage": "how much of the location it covers",
    "concentration": "as on the label: 5 % w/v",
    "date": "any date: 14 June 1950, 193X, c. 1890",
    "extent": "nothing is taken for granted: choose",
    "kept_what": "what was kept of it, and where",
    "people": "Name (role); Name",
    "position": "blank: the next",
    "presumed": "what you take for the cause; what you saw stands above",
    "ref": "blank: the next number",
    "seen": "what is to be seen, and nothing else",
    "stack": "blank: next outward of what is on record there",
    "unauthorised_reason": "only where no leave is on record: why it was begun",
    "until": "a day on which it ends or is to be looked at again",
    "version": "blank: the next",
    "behaves_as": "the key of a material known better: KEY (why)",
    "list": "the list it belongs to, such as technique or condition",
}

LOOKUPS = {
    "people": "person",
    "components": "component",
    "places": "place",
    "layers": "layer",
    "sources": "source",
    "treatments": "treatment",
    "planned_steps": "planned step",
    "plans": "plan",
    "interventions": "intervention",
    "batches": "batch",
    "materials": "material",
    "material_classes": "class",
    "removals": "removal",
    "objects": "object",
}
"""File of records -> the word by which a field asks for one of them."""

WORD_LISTS = {
    ("interventions", "technique"): "technique",
    ("planned_steps", "technique"): "technique",
    ("observations", "condition"): "condition",
    ("layers", "carrier"): "material",
    ("planned_steps", "carrier"): "material",
    ("batches", "carrier"): "material",
    ("layers", "role"): "role",
    ("layers", "treated_from"): "treated_from",
    ("components", "kind"): "component kind",
    ("objects", "kind"): "object kind",
    ("readings", "quantity"): "quantity",
    ("readings", "unit"): "unit",
    ("readings", "instrument"): "instrument",
}
"""Free words that are offered from a list or from what was written before."""


def label_of(header: str) -> str:
    """What stands before a field."""
    return LABELS.get(header, header.replace("_", " "))


def unit_of(header: str) -> str:
    """The unit that stands after the label, or ""."""
    return next((unit for end, unit in UNITS.items() if header.endswith(end)), "")
