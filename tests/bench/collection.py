"""Makes large collections of records with realistic skew, as CSV folders.

Object number k is the same in a collection of any size, so that one question has one answer
at every size. The proportions (about 20 components, 100 places and 210 layers an object, two
layers a place, four removals in ten layers) are those of the design's measurements. From object
1001 on the same thousand objects come again under other numbers (`like`), so that `fill` can
copy them inside the database.

A few materials, people, words and kinds of deed make up most of what there is, as in any real
department: what is picked with `skewed` comes the less often the later it stands in its list.
"""

from __future__ import annotations

import csv
import random
import sys
from collections.abc import Iterator, Sequence
from contextlib import ExitStack
from pathlib import Path
from typing import Any, NamedTuple, TypeVar

CLASSES = 54
MATERIALS = 400
PEOPLE = 120
SOURCES = 600
PERIOD = 1000
"""After so many objects the same ones come again."""
BIG_OBJECT = 100
"""Every object of this number, and each five hundredth after it, has 500 components."""

KINDS = (
    *("clean", "fill", "join", "consolidate", "coat", "examine", "integrate", "support"),
    *("take apart", "desalinate", "remove earlier work", "other"),
)
LAID_BY = {
    "join": ("adhesive", "bedding", "barrier", "pointing"),
    "fill": ("fill", "barrier", "bedding", "temporary fill"),
    "consolidate": ("consolidant", "facing"),
    "coat": ("coating", "wax", "barrier"),
    "integrate": ("inpainting", "toning", "coating"),
    "support": ("bedding", "adhesive", "facing"),
}
"""The roles of layers that a kind of intervention lays, the usual one first."""
LIQUIDS = ("clean", "desalinate", "remove earlier work", "take apart")
"""The kinds of intervention that use an agent."""
AIMS = ("remedial", "restoration", "preventive", "remedial; restoration")
TECHNIQUES = (
    *("brushed on", "by hand", "injected", "under pressure", "poured", "swabs", "poultices"),
    *("in a bath", "with a spatula", "dry", "in thin coats", "over a facing", "with clamps"),
)
PAPERS = ("report", "card", "letter", "invoice", "photograph", "publication", "radiograph", "oral")
ROOMS = (
    *(("Store 1", "storage"), ("Garden court", "outdoors"), ("Gallery 1", "display")),
    *(("Store 2", "storage"), ("Gallery 2", "display"), ("Terrace", "outdoors")),
    *(("Store 3", "storage"), ("Stair hall", "display"), ("Lorry", "transport")),
)
CONDITIONS = ("crack", "dirt", "loss", "efflorescence", "stain", "lifting", "corrosion", "biofilm")
SPOKEN = (
    *("joint", "edge", "old", "fill", "white", "dry", "left", "right", "upper", "lower", "crack"),
    *("surface", "soft", "hard", "brown", "residue", "seen", "under", "lamp", "block", "face"),
    *("yellowed", "brittle", "sound", "loose", "mortar", "varnish", "lead", "salts", "water"),
    *("stain", "plaster", "pin", "rust", "wax", "dust", "paint", "gap", "seam", "mark", "test"),
)
"""Words that most notes are made of; the rest are rarer and belong to nothing in particular."""
_SYLLABLES = ("ba", "cor", "den", "fal", "gim", "hol", "jas", "kel", "lum", "mor", "nev", "pra")
WORDS = (*SPOKEN, *(a + b + c for a in _SYLLABLES for b in _SYLLABLES for c in _SYLLABLES))

HEADERS = {
    "material_classes": ("key", "name", "parent"),
    "materials": ("key", "name", "class", "aliases"),
    "people": ("name", "aliases"),
    "sources": ("ref", "kind", "citation", "date"),
    "climates": ("key", "room", "use", "min_c", "max_c"),
    "objects": ("number", "title", "kind", "made"),
    "components": ("object", "mark", "parent", "name", "kind", "origin", "material", "made"),
    "places": ("object", "mark", "kind", "component", "other_component", "name", "load_kg"),
    "treatments": ("object", "ref", "title", "begun", "ended", "lead"),
    "interventions": (
        *("object", "ref", "treatment", "kind", "technique", "aims", "date", "people", "places"),
        *("source", "note"),
    ),
    "agents": ("object", "intervention", "ref", "material", "place", "form"),
    "joint_events": ("object", "place", "ref", "event", "date", "intervention"),
    "layers": (
        *("object", "place", "ref", "intervention", "origin", "material", "role", "stack"),
        *("zone", "coverage", "identified", "source", "note"),
    ),
    "removals": ("object", "ref", "layer", "intervention", "date", "extent"),
    "sightings": ("object", "ref", "layer", "date", "result", "people"),
    "observations": ("object", "ref", "intervention", "place", "date", "condition", "seen"),
    "whereabouts": ("object", "ref", "place_name", "since", "until"),
}
Rows = Iterator[tuple[str, tuple[Any, ...]]]
Item = TypeVar("Item")


def make_collection(folder: Path, layers: int, objects: int | None = None) -> int:
    """Write the CSV files of a collection with at least so many layers.

    Args:
        objects: no more than these, where given, however few layers they have.

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
        while written < layers and number != objects:
            number += 1
            for name, row in _object(number):
                writers[name].writerow(row)
                written += name == "layers"
    return written


def like(number: int) -> int:
    """The number of the object among the first `PERIOD` that an object is like."""
    return (number - 1) % PERIOD + 1


def skewed(things: Sequence[Item], chance: random.Random) -> Item:
    """One of them; half of all picks fall on the first fifth."""
    return things[int(len(things) * chance.random() ** 2.3)]


def _shared() -> Rows:
    for k in range(CLASSES):
        parent = f"class{(k - 1) // 3}" if k else ""
        yield "material_classes", (f"class{k}", f"Class {k}", parent)
    for k in range(MATERIALS):
        yield "materials", (f"material{k}", f"Material {k}", f"class{k % CLASSES}", f"trade {k}")
    for k in range(PEOPLE):
        yield "people", (f"Worker Number{k}", f"W.N.{k}")
    for k in range(SOURCES):
        kind = PAPERS[min(k * k // 47_000, len(PAPERS) - 1)]
        yield "sources", (f"S{k}", kind, f"{kind} number {k}", str(1880 + k % 146))
    for k, (room, use) in enumerate(ROOMS):
        if use != "outdoors":
            yield "climates", (f"room{k}", room, use, 14, 26)


def _at_work(year: int) -> range:
    """The people who may have worked in a year: each does for some thirty years."""
    first = max(0, (year - 1900) * (PEOPLE - 30) // 126)
    return range(first, first + 30)


def _person(year: int, chance: random.Random) -> str:
    return f"Worker Number{skewed(_at_work(year), chance)}"


def _date(year: int, chance: random.Random) -> str:
    shape = chance.random() * 100
    if shape < 40:
        return str(year)
    if shape < 60:
        return f"{year}-{chance.randint(1, 12):02d}-{chance.randint(1, 28):02d}"
    if shape < 74:
        return f"{year // 10}X"
    if shape < 84:
        return f"{year}~"
    if shape < 92:
        return f"between {year - 3} and {year + 3}"
    return f"by {year}"


def _material(chance: random.Random) -> str:
    """A few materials make up most of what was ever used; some was never identified."""
    if chance.random() < 0.05:
        return ""
    return f"material{int(MATERIALS * chance.random() ** 3)}"


def _note(chance: random.Random) -> str:
    """One record in five has a remark of some words."""
    if chance.random() < 0.8:
        return ""
    words = [WORDS[int(len(WORDS) * chance.random() ** 4)] for _ in range(chance.randint(3, 12))]
    return " ".join(words)


def _source(chance: random.Random) -> str:
    return "" if chance.random() < 0.5 else f"S{int(SOURCES * chance.random() ** 2)}"


class Deed(NamedTuple):
    """An intervention: its number on its object, its true year, and its kind."""

    number: int
    year: int
    kind: str


def _object(number: int) -> Rows:
    chance = random.Random(like(number))
    name = f"CB.{number}"
    big = like(number) >= BIG_OBJECT and (like(number) - BIG_OBJECT) % 500 == 0
    parts = 500 if big else min(120, max(2, int(chance.lognormvariate(2.75, 0.7))))
    kind = skewed(("stone", "metal", "wood", "plaster", "ceramic"), chance)
    yield "objects", (name, f"Object {number}", kind, "1741")
    yield from _whereabouts(name, chance)
    stuff = f"material{skewed(range(40), chance)}"
    for part in range(parts):
        above = f"C{chance.randrange(part)}" if part and chance.random() < 0.5 else ""
        origin = "original" if chance.random() < 0.85 else "restoration"
        yield (
            "components",
            (name, f"C{part}", above, f"block {part}", "block", origin, stuff, "1741"),
        )
    deeds = list(_deeds(3 + parts * 2 // 3, chance))
    yield from _interventions(name, deeds, parts * 5, chance)
    laying = [deed for deed in deeds if deed.kind in LAID_BY]
    layer = 0
    for place in range(parts * 5):
        kind = ("joint", "surface", "body", "joint", "surface")[place % 5]
        other = f"C{chance.randrange(parts)}" if kind == "joint" else ""
        mark = f"P{place}"
        yield "places", (name, mark, kind, f"C{place // 5}", other, f"place {place}", "")
        if kind == "joint":
            yield "joint_events", (name, mark, f"e{place}", "closed", "1741", "")
        for stack in range(chance.choice((1, 2, 2, 3))):
            deed = laying[chance.randrange(len(laying))]
            yield "layers", _layer(name, mark, layer, deed, stack, kind, chance)
            yield from _later(name, layer, deed, chance)
            layer += 1


def _whereabouts(name: str, chance: random.Random) -> Rows:
    """One to three stays since it was made, the last of them without an end."""
    moved = sorted(chance.randint(1850, 2020) for _ in range(chance.choice((0, 1, 1, 2))))
    for stay, since in enumerate((1741, *moved)):
        until = moved[stay] if stay < len(moved) else ""
        room = skewed(ROOMS, chance)[0]
        yield "whereabouts", (name, f"w{stay}", room, since, until)


def _deeds(number: int, chance: random.Random) -> Iterator[Deed]:
    """Deeds in the order of time, more of them the nearer the present; the first lays a layer."""
    years = sorted(1880 + int(137 * chance.random() ** 0.6) for _ in range(number))
    for deed, year in enumerate(years):
        yield Deed(deed, year, skewed(KINDS, chance) if deed else "join")


def _interventions(name: str, deeds: list[Deed], places: int, chance: random.Random) -> Rows:
    """The deeds, those of twenty years in one treatment; what they used, and what was seen."""
    for century in sorted({deed.year // 20 for deed in deeds}):
        begun = century * 20
        title = f"campaign of the {begun}s"
        lead = _person(begun + 10, chance)
        yield "treatments", (name, f"t{begun}", title, begun, min(begun + 19, 2025), lead)
    for number, year, kind in deeds:
        date = "" if number and chance.random() < 0.03 else _date(year, chance)
        row = (name, f"i{number}", f"t{year // 20 * 20}", kind, skewed(TECHNIQUES, chance))
        people = _person(year, chance)
        if chance.random() < 0.2:
            people += f"; {_person(year, chance)} (assistant)"
        people = "; ".join(dict.fromkeys(p for p in people.split("; ")))
        where = _where(kind, places, chance)
        about = (skewed(AIMS, chance), date, people, where, _source(chance), _note(chance))
        yield "interventions", (*row, *about)
        if kind in LIQUIDS and chance.random() < 0.9:
            form = skewed(("swab", "poultice", "gel", "bath", "free"), chance)
            yield "agents", (name, f"i{number}", f"a{number}", _material(chance), "", form)
        if kind == "examine":
            place = f"P{chance.randrange(places)}"
            seen = " ".join(skewed(WORDS, chance) for _ in range(6))
            found = (date, skewed(CONDITIONS, chance), seen)
            yield "observations", (name, f"o{number}", f"i{number}", place, *found)


def _where(kind: str, places: int, chance: random.Random) -> str:
    """The places of what lays no layer there; of one in ten nobody wrote them down."""
    if kind in LAID_BY or chance.random() < 0.1:
        return ""
    first = chance.randrange(places)
    return "; ".join(f"P{place}" for place in range(first, min(first + 3, places)))


def _layer(
    name: str, mark: str, layer: int, deed: Deed, stack: int, kind: str, chance: random.Random
) -> tuple[Any, ...]:
    return (
        *(name, mark, f"l{layer}", f"i{deed.number}", "applied", _material(chance)),
        skewed(LAID_BY[deed.kind], chance),
        stack,
        "face" if kind == "joint" else "",
        skewed(("", "whole", "part", "spots", "unknown"), chance),
        skewed(("", "documented later", "inferred", "analysed", "unknown"), chance),
        _source(chance),
        _note(chance),
    )


def _later(name: str, layer: int, deed: Deed, chance: random.Random) -> Rows:
    """What became of a layer: taken away, or seen, or nothing that anybody wrote down."""
    fate = chance.random()
    if fate < 0.45:
        extent = chance.choices(("all", "part", "attempted"), (6, 3, 1))[0]
        removed = chance.randint(min(deed.year + 8, 2026), 2026)
        date = _date(removed, chance)
        yield "removals", (name, f"r{layer}", f"l{layer}", "", date, extent)
        if removed - deed.year > 20 and chance.random() < 0.1:
            between = str(chance.randint(deed.year + 10, removed - 10))
            yield "sightings", (name, f"s{layer}", f"l{layer}", between, "seen", "")
    elif fate < 0.55:
        looked = chance.randint(deed.year + 8, 2026) if deed.year < 2015 else 2025
        result = chance.choices(("seen", "not accessible", "not found"), (80, 15, 5))[0]
        people = _person(looked, chance)
        yield "sightings", (name, f"s{layer}", f"l{layer}", str(looked), result, people)


if __name__ == "__main__":
    print(make_collection(Path(sys.argv[1]), int(sys.argv[2])), "layers")
