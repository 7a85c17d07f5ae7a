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

    @property
    def pointers(self) -> tuple[tuple[str, str], ...]:
        return tuple((f"{subject}_id", file) for subject, file in FILES.items())

    def parse(self, cell: str, keys: Keys) -> Values:
        (subject,) = Choice("table", values=STATEMENT_SUBJECTS).parse(cell, keys)
        keys.object_id = self._find(keys, "objects", "object", "the number of the object")
        keys.load_object(keys.object_id)  # nothing else in the folder may be about it
        if subject == "object":
            target = keys.object_id
        else:
            target = self._find(keys, FILES[subject], "ref", f"the mark or ref of the {subject}")
        return (subject, *(target if name == subject else None for name in STATEMENT_SUBJECTS))

    def _find(self, keys: Keys, file: str, column: str, what: str) -> int:
        named = keys.row.get(column, "").strip()
        if not named:
            raise CellProblem("is blank", f"write {what}", column)
        try:
            return keys.find(file, named)
        except CellProblem as problem:
            reason = problem.reason
            raise CellProblem(reason, f"write {what}, or add it first", column, named) from problem

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

    @property
    def pointers(self) -> tuple[tuple[str, str], ...]:
        return (("material_id", "materials"),)

    def parse(self, cell: str, keys: Keys) -> Values:
        if keys.row.get("field", "").strip() != "material":
            return (cell, None)
        return (cell, keys.known_material(cell.strip()))
