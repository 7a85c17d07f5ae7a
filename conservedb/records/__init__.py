"""The tables, one file per subject, and nothing else."""

from conservedb.records import (
    behaviour,
    hazards,
    layers,
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
from conservedb.records.base import DATE_PARTS, metadata

__all__ = [
    "DATE_PARTS",
    "behaviour",
    "hazards",
    "layers",
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
