"""A sheet for work away from the screen: what is planned where, and room to write what was done.

Each row carries a key of its own, made when it is printed: a sheet typed back twice is recorded
once, and two printings of the same plan are never taken for each other.
"""

from __future__ import annotations

import csv
import datetime
import uuid
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import asdict, dataclass
from pathlib import Path

from sqlalchemy import Connection, select

from conservedb.exchange.cells import split_list, unescape
from conservedb.exchange.columns import Column
from conservedb.exchange.keys import KeyBook
from conservedb.exchange.reading_cells import cells_of, find_record
from conservedb.exchange.subject import Subject
from conservedb.exchange.subjects_parts import COMPONENTS
from conservedb.exchange.subjects_plans import PLANNED_STEPS, PLANS
from conservedb.exchange.subjects_shared import MATERIAL_PARTS
from conservedb.questions.answers import Layer, Warning_
from conservedb.questions.asof import as_of
from conservedb.questions.cautions import warnings_on
from conservedb.questions.naming import find_object
from conservedb.questions.place import place as place_question
from conservedb.questions.wording import state_words
from conservedb.records.materials import material_part
from conservedb.records.places import place
from conservedb.records.plans import planned_step
from conservedb.records.treatments import intervention
from conservedb.store.connect import raw_of
from conservedb.store.keys import sort_key
from conservedb.store.log import Head, head

FILLED = ("date", "who", "done", "material", "concentration", "batch", "note")
"""What is written at the bench; where no step is planned, also the `kind` of step."""
WITHOUT_LEAVE = ("unauthorised_reason", "unauthorised_by")
"""Why, and on whose word, a step was begun that was not authorised; only in the table."""
PRINTED = (
    *("row", "key", "object", "plan", "step", "component", "place"),
    *("there", "kind", "planned_material", "planned_recipe"),
)
SHEET = Subject(
    "sheet",
    "row",
    intervention,
    ("key",),
    tuple(Column(name) for name in PRINTED + FILLED + WITHOUT_LEAVE if name != "object"),
)
"""The columns of a sheet as a CSV table."""
DONE = ("yes", "no", "otherwise")
_THERE = ("present", "reduced", "uncertain")


@dataclass(frozen=True, slots=True)
class SheetRow:
    """One thing to do at one place (or on one part); `name` and `what` are only printed."""

    row: int
    key: str
    object: str
    plan: str
    step: str
    component: str
    place: str
    there: str
    kind: str
    planned_material: str
    planned_recipe: str
    name: str = ""
    what: str = ""


@dataclass(frozen=True, slots=True)
class Sheet:
    """A bench sheet: of which object and plan, from which state of which database."""

    object: str
    title: str
    plan: str
    about: str
    day: str
    database: str
    identity: str
    head: Head | None
    warnings: tuple[Warning_, ...]
    rows: tuple[SheetRow, ...]


def bench_sheet(
    connection: Connection,
    number: str,
    plan: str,
    marks: Sequence[str],
    today: datetime.date,
) -> Sheet:
    """The rows of a plan in order; without one, those of the places named, or of all.

    Raises:
        NoSuch: there is no such object, plan or place.
    """
    owner = find_object(connection, number)
    name, identity = connection.exec_driver_sql("SELECT name, uuid FROM database").one()
    end = head(raw_of(connection))
    about = ""
    if plan.strip():
        record = find_record(connection, PLANS, number, plan)
        cells = cells_of(connection, PLANS, record)
        plan = cells["ref"]
        about = f"version {cells['version']} of the plan of treatment {cells['treatment']}"
        rows = list(_planned(connection, owner.number, plan, record, today))
    else:
        rows = list(_unplanned(connection, owner.number, owner.id, marks, today))
    keyed = tuple(SheetRow(at, str(uuid.uuid4()), **row) for at, row in enumerate(rows, 1))
    warnings = warnings_on(connection, owner.id)
    return Sheet(
        *(owner.number, owner.title, plan, about, today.isoformat()),
        *(name or "", identity, end, warnings, keyed),
    )


def _planned(
    connection: Connection, number: str, plan: str, record: int, today: datetime.date
) -> Iterator[dict[str, str]]:
    """A row for every place of every step; for its parts, where a step names no place."""
    keys = KeyBook(connection)
    steps = connection.execute(
        select(planned_step.c.id, planned_step.c.material_id)
        .where(planned_step.c.plan_id == record)
        .order_by(planned_step.c.position, planned_step.c.id)
    ).all()
    for step, material in steps:
        cells = cells_of(connection, PLANNED_STEPS, step, keys)
        what = " ".join(part for part in (cells["kind"], cells["technique"]) if part)
        said = {
            "object": number,
            "plan": plan,
            "step": cells["ref"],
            "kind": cells["kind"],
            "planned_material": cells["material"],
            "planned_recipe": recipe(connection, keys, cells, material),
            "what": "; ".join(part for part in (what, cells["note"]) if part),
        }
        places = [unescape(mark) for mark in split_list(cells["places"])]
        parts = [unescape(mark) for mark in split_list(cells["components"])] if not places else []
        for mark in places:
            yield said | _at_place(connection, number, mark, today)
        for mark in parts or ([""] if not places else []):
            yield said | _at_part(connection, number, mark)


def _unplanned(
    connection: Connection, number: str, owner: int, marks: Sequence[str], today: datetime.date
) -> Iterator[dict[str, str]]:
    named = list(marks)
    if not named:
        rows = connection.execute(select(place.c.mark).where(place.c.object_id == owner))
        named = sorted((row[0] for row in rows), key=sort_key)
    blank = dict.fromkeys(("plan", "step", "kind", "planned_material", "planned_recipe"), "")
    for mark in named:
        yield {"object": number} | blank | _at_place(connection, number, mark, today)


def _at_place(
    connection: Connection, number: str, mark: str, today: datetime.date
) -> dict[str, str]:
    found = place_question(connection, number, mark, as_of(None, today))
    there = "; ".join(_layer(layer) for layer in found.layers if layer.state in _THERE)
    what = there or "nothing on record"
    return {"component": "", "place": found.place, "there": what, "name": found.name}


def _at_part(connection: Connection, number: str, mark: str) -> dict[str, str]:
    if not mark:
        return {"component": "", "place": "", "there": "", "name": "the object"}
    cells = cells_of(connection, COMPONENTS, find_record(connection, COMPONENTS, number, mark))
    there = cells["material"] or "material not recorded"
    return {"component": cells["mark"], "place": "", "there": there, "name": cells["name"]}


def _layer(layer: Layer) -> str:
    name = layer.material_name or "material not recorded"
    role = f", {layer.role}" if layer.role else ""
    return f"{name}{role} ({layer.ref}): {state_words(layer.state, layer.possible)}"


def recipe(
    connection: Connection, keys: KeyBook, cells: Mapping[str, str], material: int | None
) -> str:
    """Concentration and carrier of a planned step, and the parts its material is made up of."""
    strength = " in ".join(part for part in (cells["concentration"], cells["carrier"]) if part)
    if material is None:
        return strength
    ids = connection.execute(
        select(material_part.c.id)
        .where(material_part.c.material_id == material)
        .order_by(material_part.c.id)
    )
    parts = [cells_of(connection, MATERIAL_PARTS, row[0], keys) for row in ids.all()]
    said = ", ".join(
        " ".join(part for part in (one["amount"], one["unit"], one["part"]) if part)
        for one in parts
    )
    return "; ".join(part for part in (strength, said) if part)


def write_sheet(sheet: Sheet, path: Path) -> None:
    """Write a sheet as a CSV table with blank cells to fill in.

    Raises:
        FileExistsError: there is such a file: it may be filled in already.
        OSError: it cannot be written.
    """
    with path.open("x", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, SHEET.headers, restval="", extrasaction="ignore")
        writer.writeheader()
        writer.writerows(asdict(row) for row in sheet.rows)
