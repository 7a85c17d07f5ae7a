"""The tables, one file per subject, and nothing else."""

from conservedb.records import (
    layers,
    materials,
    objects,
    people,
    places,
    sources,
    terms,
    treatments,
)
from conservedb.records.base import DATE_PARTS, metadata

__all__ = [
    "DATE_PARTS",
    "layers",
    "materials",
    "metadata",
    "objects",
    "people",
    "places",
    "sources",
    "terms",
    "treatments",
]
