"""All tables together, for those who need every one: migrations, and moving tables in and out.

Who asks one question imports the tables of that question only; making all of them takes time.
"""

from conservedb.records import (
    authorisations,
    batches,
    behaviour,
    hazards,
    layers,
    log,
    materials,
    objects,
    observations,
    people,
    places,
    plans,
    research,
    rules,
    sources,
    spot_tests,
    terms,
    treatments,
)
from conservedb.records.base import metadata

__all__ = [
    "authorisations",
    "batches",
    "behaviour",
    "hazards",
    "layers",
    "log",
    "materials",
    "metadata",
    "objects",
    "observations",
    "people",
    "places",
    "plans",
    "research",
    "rules",
    "sources",
    "spot_tests",
    "terms",
    "treatments",
]
