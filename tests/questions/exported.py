"""What `conservedb export` wrote, read back with plain csv: rows joined by the keys they carry.

Nothing of a database is read. A cell that names another record becomes the number of the line of
that record (`place` becomes `place_id`), a list becomes rows of its own (`agent_place`), a date is
read by `conservedb.dates`, and what a cell calls a material is looked up as the guide for
contributors says under "CSV files".
"""

from __future__ import annotations

import csv
import re
from collections import defaultdict
from collections.abc import Iterator
from pathlib import Path
from typing import Any, NamedTuple

from conservedb.dates import UNKNOWN_END, UNKNOWN_START, read
from conservedb.questions.behaviour import Materials
from conservedb.reference.words import AMBIGUOUS
from conservedb.store.keys import fold
from tests.questions.exported_bounds import Bearing

Row = dict[str, Any]
OF_NO_OBJECT = {
    "material_classes": ("material_class", "key"),
    "materials": ("material", "key"),
    "people": ("person", "name"),
    "sources": ("source", "ref"),
    "climates": ("climate", "key"),
    "objects": ("object", "number"),
    "statements": ("statement", "key"),
}
OF_OBJECTS = {
    "components": ("component", "mark"),
    "places": ("place", "mark"),
    "interventions": ("intervention", "ref"),
    "agents": ("agent", "ref"),
    "layers": ("layer", "ref"),
    "removals": ("removal", "ref"),
    "sightings": ("sighting", "ref"),
    "observations": ("observation", "ref"),
    "whereabouts": ("whereabouts", "ref"),
}
"""The files that a researcher's question rests on: what one row is, and the column of its key."""

DATES = ("active", "date", "lost", "made", "recorded", "since", "until")
POINTERS = {
    "class": "material_class",
    "component": "component",
    "intervention": "intervention",
    "layer": "layer",
    "other_component": "component",
    "place": "place",
    "source": "source",
}


class List(NamedTuple):
    """A column that holds several: each becomes a row of `table`, under `name`."""

    table: str
    name: str
    means: str = ""


LISTS = {
    ("agent", "place"): List("agent_place", "place_id", "place"),
    ("intervention", "aims"): List("intervention_aim", "aim"),
    ("intervention", "people"): List("intervention_person", "person_id", "person"),
    ("intervention", "places"): List("intervention_place", "place_id", "place"),
    ("layer", "place"): List("layer_candidate", "place_id", "place"),
    ("material", "aliases"): List("material_alias", "alias"),
    ("material", "trade_names"): List("trade_name", "alias"),
    ("person", "aliases"): List("person_alias", "alias"),
    ("statement", "people"): List("statement_person", "person_id", "person"),
}
OF_MATTER = ("agent", "component", "layer")

_ITEM = re.compile(r"(?s)(?:[^;\\]|\\.)+")
_IN_A_ROLE = re.compile(r"(?s)(.+) \((?:[^()\\]|\\.)+\)")


class Tables:
    """Every row of an export, and what is looked up in them.

    A row has its place in its file as `id`, its cells (None where blank), and what they mean.
    """

    def __init__(self, folder: Path, materials: Materials) -> None:
        self.materials = materials
        self.rows: dict[str, list[Row]] = {each.table: [] for each in LISTS.values()}
        self._keys: dict[tuple[str, str, str], int] = {}
        self._found: dict[Any, dict[tuple[Any, ...], list[Row]]] = {}
        for file, (table, key) in (OF_NO_OBJECT | OF_OBJECTS).items():
            self.rows[table] = list(_cells(folder / f"{file}.csv"))
            for row in self.rows[table]:
                owner = row["object"] if file in OF_OBJECTS else ""
                self._keys[table, owner, row[key]] = row["id"]
        self.by_id = {
            table: {row["id"]: row for row in rows}
            for table, rows in self.rows.items()
            if rows and "id" in rows[0]
        }
        for table, _ in (OF_NO_OBJECT | OF_OBJECTS).values():
            for row in self.rows[table]:
                self._understand(table, row)
        self.parent = {row["id"]: row["parent_id"] for row in self.rows["material_class"]}
        self._named = self._names()
        for table in OF_MATTER:
            for row in self.rows[table]:
                matter = self._matter(row["material"] or "")
                row["material_id"], row["material_class_id"] = matter
                row["called"] = row["material"] if matter == (None, None) else None
        for row in self.rows["statement"]:
            stated = row["value"] if row["field"] == "material" else ""
            row["material_id"] = self._material((stated or "").strip())
        bearing = Bearing(self.rows, self.by_id)
        for row in self.rows["layer"]:
            row |= bearing.bounds(row)

    def get(self, table: str, record: int | None) -> Row:
        return self.by_id.get(table, {}).get(record, {}) if record is not None else {}

    def of(self, table: str, **wanted: Any) -> list[Row]:
        names = tuple(wanted)
        if (table, names) not in self._found:
            found: dict[tuple[Any, ...], list[Row]] = defaultdict(list)
            for row in self.rows[table]:
                found[tuple(row[name] for name in names)].append(row)
            self._found[table, names] = found
        return self._found[table, names].get(tuple(wanted.values()), [])

    def path(self, klass: int | None) -> list[int]:
        """A class and those above it."""
        found: list[int] = []
        while klass is not None and klass not in found:
            found.append(klass)
            klass = self.parent[klass]
        return found

    # -- what cells mean ------------------------------------------------------------------

    def _understand(self, table: str, row: Row) -> None:
        """Dates, pointers and lists of a row; a KeyError where it names what is not there."""
        owner = row.get("object") or ""
        if owner:
            row["object_id"] = self._keys["object", "", owner]
        for name in [*row]:
            if name in DATES:
                row |= _date(name, row[name])
            elif (table, name) in LISTS:
                self._list(table, name, owner, row)
            elif name in POINTERS:
                row[f"{name}_id"] = self._pointed(POINTERS[name], owner, row[name])
        if table == "material_class":
            row["parent_id"] = self._pointed(table, "", row["parent"])
        if table == "statement":
            if row["table"] != "object":
                row["object_id"] = None
            for about in ("component", "intervention", "layer", "place", "removal", "sighting"):
                here = row["ref"] if row["table"] == about else None
                row[f"{about}_id"] = self._pointed(about, owner, here)

    def _pointed(self, table: str, owner: str, key: str | None) -> int | None:
        scope = owner if table in dict(OF_OBJECTS.values()) else ""
        return None if key is None else self._keys[table, scope, key]

    def _list(self, table: str, name: str, owner: str, row: Row) -> None:
        told = LISTS[table, name]
        items = []
        for item in map(str.strip, _ITEM.findall(row[name] or "")):
            person = _IN_A_ROLE.fullmatch(item) if told.means == "person" else None
            text = re.sub(r"(?s)\\(.)", r"\1", person[1] if person else item)
            items.append(self._pointed(told.means, owner, text) if told.means else text)
        if table == "layer":
            row["place_id"] = items[0] if len(items) == 1 else None
            items = items if len(items) > 1 else []
        self.rows[told.table] += [{f"{table}_id": row["id"], told.name: item} for item in items]

    # -- materials ------------------------------------------------------------------------

    def _names(self) -> dict[tuple[str, str], set[int]]:
        """Who bears a name: materials theirs, aliases and trade names, classes theirs."""
        named: dict[tuple[str, str], set[int]] = defaultdict(set)
        for table in ("material", "material_class"):
            for row in self.rows[table]:
                named[table, fold(row["name"] or "")].add(row["id"])
        for table in ("material_alias", "trade_name"):
            for row in self.rows[table]:
                named["material", fold(row["alias"])].add(row["material_id"])
        return {(table, name): bearers for (table, name), bearers in named.items() if name}

    def _material(self, text: str) -> int | None:
        """The material of a key, or of a name that only it bears."""
        bearers = self._named.get(("material", fold(text)), set())
        only = [*bearers] if len(bearers) == 1 and fold(text) not in AMBIGUOUS else [None]
        return self._keys.get(("material", "", text), only[0])

    def _matter(self, text: str) -> tuple[int | None, int | None]:
        """The material, or else the class, that words stand for: "words = KEY", or a name."""
        if not text:
            return None, None
        for place, character in enumerate(text):
            key = text[place + 1 :].strip()
            material = self._keys.get(("material", "", key))
            klass = self._keys.get(("material_class", "", key))
            if character == "=" and (material is not None or klass is not None):
                return material, klass if material is None else None
        material = self._material(text)
        if material is not None:
            return material, None
        classes = {*self._named.get(("material_class", fold(text)), set())}
        if ("material_class", "", text) in self._keys:
            classes.add(self._keys["material_class", "", text])
        if len(classes) == 1:
            return None, classes.pop()
        bearers = self._named.get(("material", fold(text)), set())
        paths = [self.path(self.get("material", one)["class_id"]) for one in bearers]
        shared = [one for one in paths[0] if all(one in path for path in paths)] if paths else []
        return None, shared[0] if shared else None


def _cells(path: Path) -> Iterator[Row]:
    with path.open(encoding="utf-8", newline="") as file:
        for line, row in enumerate(csv.DictReader(file, strict=True), 1):
            yield {"id": line} | {name: cell or None for name, cell in row.items()}


def _date(name: str, cell: str | None) -> Row:
    """The days that the words of a cell may mean."""
    if cell is None:
        parts: tuple[Any, ...] = (None, UNKNOWN_START, UNKNOWN_END, 0, "blank")
    else:
        _, edtf, *days = read(cell)
        parts = (edtf or None, *days)
    words = ("edtf", "earliest", "latest", "flags", "derived")
    return dict(zip((f"{name}_{part}" for part in words), parts, strict=True))
