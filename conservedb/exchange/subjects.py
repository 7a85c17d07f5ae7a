"""The CSV files: one per subject.

Import, export and the contributors' guide follow this list; it is the one that names files.
"""

from __future__ import annotations

from conservedb.exchange.subjects_behaviour import (
    HANSEN,
    MATERIAL_VALUES,
    PERIODS,
    SOLUBILITIES,
    TEAS,
    TRAITS,
)
from conservedb.exchange.subjects_deeds import (
    AGENTS,
    INTERVENTIONS,
    LAYERS,
    REMOVALS,
    SIGHTINGS,
    SPOT_TESTS,
    TREATMENTS,
)
from conservedb.exchange.subjects_findings import OBSERVATIONS, READINGS, SAMPLES
from conservedb.exchange.subjects_hazards import (
    EXPOSURE_LIMITS,
    HAZARD_STATEMENTS,
    HAZARDS,
    RESTRICTIONS,
)
from conservedb.exchange.subjects_parts import (
    COMPONENTS,
    JOINT_EVENTS,
    OBJECTS,
    PLACES,
    WARNINGS,
    WHEREABOUTS,
)
from conservedb.exchange.subjects_plans import (
    AUTHORISATIONS,
    NEEDED_AUTHORISATIONS,
    PLANNED_STEPS,
    PLANS,
    STANDING_APPROVALS,
)
from conservedb.exchange.subjects_research import SAVED_QUESTIONS
from conservedb.exchange.subjects_rules import ACCEPTANCES, CLIMATES, NEAR, RULES, SETTINGS
from conservedb.exchange.subjects_shared import (
    BATCHES,
    MATERIAL_CLASSES,
    MATERIAL_PARTS,
    MATERIALS,
    PEOPLE,
    SOURCES,
    STATEMENTS,
    TERMS,
)

SUBJECTS = (
    TERMS,
    MATERIAL_CLASSES,
    MATERIALS,
    MATERIAL_PARTS,
    PEOPLE,
    SOURCES,
    MATERIAL_VALUES,
    HANSEN,
    TEAS,
    SOLUBILITIES,
    TRAITS,
    PERIODS,
    HAZARD_STATEMENTS,
    HAZARDS,
    EXPOSURE_LIMITS,
    RESTRICTIONS,
    RULES,
    SETTINGS,
    CLIMATES,
    BATCHES,
    NEEDED_AUTHORISATIONS,
    STANDING_APPROVALS,
    OBJECTS,
    COMPONENTS,
    PLACES,
    NEAR,
    TREATMENTS,
    PLANS,
    PLANNED_STEPS,
    INTERVENTIONS,
    AUTHORISATIONS,
    AGENTS,
    JOINT_EVENTS,
    LAYERS,
    REMOVALS,
    SIGHTINGS,
    SPOT_TESTS,
    OBSERVATIONS,
    READINGS,
    SAMPLES,
    ACCEPTANCES,
    STATEMENTS,
    WARNINGS,
    WHEREABOUTS,
    SAVED_QUESTIONS,
)
"""Every subject, in an order in which each refers only to those before it (or to itself)."""

BY_NAME = {subject.name: subject for subject in SUBJECTS}
