"""All tables together, for those who need every one: migrations, and moving tables in and out.

Who asks one question imports the tables of that question only; making all of them takes time.
"""

from conservedb.records import (
    behaviour,
    hazards,
    layers,
    log,
    materials,
    objects,
    people,
    places,
    rules,
    sources,
    spot_tests,
    terms,
    treatments,
)
from conservedb.records.base import metadata

__all__ = [
    "behaviour",
    "hazards",
    "layers",
    "log",
    "materials",
    "metadata",
    "objects",
    "people",
    "places",
    "rules",
    "sources",
    "spot_tests",
    "terms",
    "treatments",
]
