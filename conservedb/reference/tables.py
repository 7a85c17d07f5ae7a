"""The reference tables that the program ships: one CSV file per subject, in `tables/`.

The headers are those of the subject's import file; columns that would be blank may be left out.
What no source is at hand for is marked "from memory", and names none.
"""

from __future__ import annotations

import csv
from pathlib import Path

SUBJECTS: tuple[str, ...] = (
    "sources",
    "material_classes",
    "materials",
    "material_parts",
    "material_values",
    "hansen",
    "teas",
    "solubilities",
    "traits",
    "periods",
    "hazard_statements",
    "hazards",
    "exposure_limits",
    "restrictions",
    "rules",
    "settings",
)
"""Every shipped subject; each refers only to those before it, or to itself."""

_FOLDER = Path(__file__).parent / "tables"


def rows(subject: str) -> list[dict[str, str]]:
    """The shipped rows of a subject of `SUBJECTS`, header to cell, in the order of the file.

    Raises:
        FileNotFoundError: no table of that name is shipped.
    """
    with (_FOLDER / f"{subject}.csv").open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))
