"""The two columns of statements.csv that need their neighbours to be understood."""

from __future__ import annotations

from dataclasses import dataclass

from conservedb.exchange.columns import Choice, Column, Keys, Values
from conservedb.exchange.faults import CellProblem
from conservedb.records.sources import STATEMENT_SUBJECTS

FILES = {
    "object": "objects",
    "component": "components",
    "place": "places",
    "layer": "layers",
    "intervention": "interventions",
    "removal": "removals",
    "sighting": "sightings",
    "joint_event": "joint_events",
    "treatment": "treatments",
}
"""Which file a statement's `table` means."""


@dataclass(frozen=True)
class StatementTarget(Column):
    """Which record the statement is about: its table, its object and its mark or ref."""

    @property
    def names(self) -> tuple[str, ...]:
        return ("table", "object", "ref")

    @property
    def fields(self) -> tuple[str, ...]:
        return ("subject", *(f"{subject}_id" for subject in STATEMENT_SUBJECTS))

    def parse(self, cell: str, keys: Keys) -> Values:
        (subject,) = Choice("table", values=STATEMENT_SUBJECTS).parse(cell, keys)
        number = keys.row.get("object", "").strip()
        if not number:
            raise CellProblem("names no object", "write the object's number in column object")
        keys.object_id = keys.find("objects", number)
        if subject == "object":
            target = keys.object_id
        else:
            target = keys.find(FILES[subject], keys.row.get("ref", "").strip())
        return (subject, *(target if name == subject else None for name in STATEMENT_SUBJECTS))

    def show_all(self, values: Values, keys: Keys) -> tuple[str, ...]:
        subject = values[0]
        target = next(value for value in values[1:] if value is not None)
        if subject == "object":
            return (subject, keys.name_of("objects", target), "")
        owner = keys.name_of("objects", keys.object_of(FILES[subject], target))
        return (subject, owner, keys.name_of(FILES[subject], target))


@dataclass(frozen=True)
class StatementValue(Column):
    """What is stated, as found; for the field `material` also which material that is."""

    @property
    def fields(self) -> tuple[str, ...]:
        return (self.name, "material_id")

    def parse(self, cell: str, keys: Keys) -> Values:
        if keys.row.get("field", "").strip() != "material":
            return (cell, None)
        return (cell, keys.known_material(cell.strip()))
