"""The shipped tables as the tests of this folder read them."""

from __future__ import annotations

from collections import defaultdict
from functools import cache

from conservedb.reference.tables import rows

Row = dict[str, str]


@cache
def table(subject: str) -> list[Row]:
    return rows(subject)


@cache
def keys(subject: str, column: str = "key") -> frozenset[str]:
    return frozenset(row[column] for row in table(subject))


def values(material: str, name: str) -> list[Row]:
    """The values of one property of a material, the preferred first."""
    return [
        row
        for row in table("material_values")
        if row["material"] == material and row["property"] == name
    ]


@cache
def cas_numbers() -> dict[str, str]:
    return {
        row["material"]: row["words"]
        for row in table("material_values")
        if row["property"] == "CAS number"
    }


@cache
def liquids() -> dict[str, list[Row]]:
    """Hansen rows of every material that is an organic solvent or water, the preferred first."""
    parents = {row["key"]: row["parent"] for row in table("material_classes")}
    found: dict[str, list[Row]] = defaultdict(list)
    classes = {row["key"]: row["class"] for row in table("materials")}
    for row in table("hansen"):
        klass = classes[row["material"]]
        if "solvent" in (klass, parents[klass]) or row["material"] == "water":
            found[row["material"]].append(row)
    return dict(found)
