"""Makes large collections of records with realistic skew, as CSV folders.

Object number k is the same in a collection of any size, so that one question has one answer
at every size. The proportions (about 20 components, 100 places and 210 layers an object, two
layers a place, four removals in ten layers) are those of the design's measurements.
"""

from __future__ import annotations

import csv
import random
import sys
from collections.abc import Iterator
from contextlib import ExitStack
from pathlib import Path
from typing import Any

CLASSES = 54
MATERIALS = 400
PEOPLE = 120
BIG_OBJECT = 100
"""Every object of this number, and each five hundredth after it, has 500 components."""

ROLES = ("adhesive", "fill", "bedding", "barrier", "consolidant", "coating", "inpainting", "wax")
KINDS = ("clean", "consolidate", "join", "take apart", "fill", "integrate", "coat", "support")
HEADERS = {
    "material_classes": ("key", "name", "parent"),
    "materials": ("key", "name", "class", "aliases"),
    "people": ("name", "aliases"),
    "objects": ("number", "title", "kind", "made"),
    "components": ("object", "mark", "parent", "name", "kind", "origin", "material", "made"),
    "places": ("object", "mark", "kind", "component", "other_component", "name", "load_kg"),
    "treatments": ("object", "ref", "title", "begun", "ended", "lead"),
    "interventions": ("object", "ref", "treatment", "kind", "date", "people", "places"),
    "agents": ("object", "intervention", "ref", "material", "place", "form"),
    "joint_events": ("object", "place", "ref", "event", "date", "intervention"),
    "layers": (
        "object",
        "place",
        "ref",
        "intervention",
        "origin",
        "material",
        "role",
        "stack",
        "zone",
        "identified",
    ),
    "removals": ("object", "ref", "layer", "intervention", "date", "extent"),
    "sightings": ("object", "ref", "layer", "date", "result"),
}


def make_collection(folder: Path, layers: int) -> int:
    """Write the CSV files of a collection with at least so many layers.

    Returns:
        The number of layers written.
    """
    folder.mkdir(parents=True)
    with ExitStack() as stack:
        writers: dict[str, Any] = {}
        for name, headers in HEADERS.items():
            file = stack.enter_context((folder / f"{name}.csv").open("w", newline=""))
            writers[name] = csv.writer(file)
            writers[name].writerow(headers)
        for name, row in _shared():
            writers[name].writerow(row)
        written = number = 0
        while written < layers:
            number += 1
            for name, row in _object(number):
                writers[name].writerow(row)
                written += name == "layers"
    return written


Rows = Iterator[tuple[str, tuple[Any, ...]]]


def _shared() -> Rows:
    for k in range(CLASSES):
        parent = f"class{(k - 1) // 3}" if k else ""
        yield "material_classes", (f"class{k}", f"Class {k}", parent)
    for k in range(MATERIALS):
        yield "materials", (f"material{k}", f"Material {k}", f"class{k % CLASSES}", f"trade {k}")
    for k in range(PEOPLE):
        yield "people", (f"Worker Number{k}", f"W.N.{k}")


def _date(year: int, chance: random.Random) -> str:
    shape = chance.random()
    if shape < 0.4:
        return str(year)
    if shape < 0.6:
        return f"{year}-{chance.randint(1, 12):02d}-{chance.randint(1, 28):02d}"
    if shape < 0.75:
        return f"{year // 10}X"
    if shape < 0.85:
        return f"{year}~"
    if shape < 0.93:
        return f"between {year - 3} and {year + 3}"
    return f"by {year}"


def _material(chance: random.Random) -> str:
    """A few materials make up most of what was ever used; some was never identified."""
    if chance.random() < 0.05:
        return ""
    return f"material{int(MATERIALS * chance.random() ** 3)}"


def _object(number: int) -> Rows:
    chance = random.Random(number)
    name = f"CB.{number}"
    big = number >= BIG_OBJECT and (number - BIG_OBJECT) % 500 == 0
    parts = 500 if big else min(120, max(2, int(chance.lognormvariate(2.75, 0.7))))
    yield "objects", (name, f"Object {number}", chance.choice(("stone", "metal", "wood")), "1741")
    for part in range(parts):
        above = f"C{chance.randrange(part)}" if part and chance.random() < 0.5 else ""
        yield (
            "components",
            (name, f"C{part}", above, f"block {part}", "block", "original", "material1", "1741"),
        )
    deeds = 3 + parts * 2 // 3
    years = sorted(chance.randint(1880, 2016) for _ in range(deeds))
    yield from _deeds(name, years, chance)
    layer = removal = 0
    for place in range(parts * 5):
        kind = ("joint", "surface", "body", "joint", "surface")[place % 5]
        other = f"C{chance.randrange(parts)}" if kind == "joint" else ""
        mark = f"P{place}"
        yield "places", (name, mark, kind, f"C{place // 5}", other, f"place {place}", "")
        if kind == "joint":
            yield "joint_events", (name, mark, f"e{place}", "closed", "1741", "")
        for stack in range(chance.choice((1, 2, 2, 3))):
            deed = chance.randrange(deeds)
            yield "layers", _layer(name, mark, layer, deed, stack, kind, chance)
            if chance.random() < 0.45:
                extent = chance.choices(("all", "part", "attempted"), (6, 3, 1))[0]
                later = chance.randint(years[deed] + 8, 2026)
                date = _date(later, chance)
                yield "removals", (name, f"r{removal}", f"l{layer}", "", date, extent)
                removal += 1
            elif chance.random() < 0.1:
                yield "sightings", (name, f"s{layer}", f"l{layer}", "2025", "seen")
            layer += 1


def _deeds(name: str, years: list[int], chance: random.Random) -> Rows:
    yield "treatments", (name, "t1", "all that is known", "1880", "2025", "W.N.1")
    for deed, year in enumerate(years):
        worker = f"Worker Number{chance.randrange(PEOPLE)}"
        yield (
            "interventions",
            (name, f"i{deed}", "t1", chance.choice(KINDS), _date(year, chance), worker, ""),
        )
        if chance.random() < 0.3:
            yield "agents", (name, f"i{deed}", f"a{deed}", _material(chance), "", "swab")


def _layer(
    name: str, mark: str, layer: int, deed: int, stack: int, kind: str, chance: random.Random
) -> tuple[Any, ...]:
    zone = "face" if kind == "joint" else ""
    known = chance.choice(("analysed", "documented later", "inferred", ""))
    return (
        name,
        mark,
        f"l{layer}",
        f"i{deed}",
        "applied",
        _material(chance),
        chance.choice(ROLES),
        stack,
        zone,
        known,
    )


if __name__ == "__main__":
    print(make_collection(Path(sys.argv[1]), int(sys.argv[2])), "layers")
