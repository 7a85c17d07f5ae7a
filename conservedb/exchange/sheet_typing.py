"""A filled-in bench sheet typed back: each filled row becomes a step, all rows or none."""

from __future__ import annotations

import datetime
import uuid
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path

from sqlalchemy import Connection, Engine, select, union_all

from conservedb.exchange.bench_sheet import DONE, FILLED, SHEET, recipe
from conservedb.exchange.deeds import ROLES, Step, compose_simple, compose_step
from conservedb.exchange.entering import Entry, Refs, Refused, put
from conservedb.exchange.faults import CellProblem, Fault
from conservedb.exchange.files import read_table
from conservedb.exchange.judging import NONE, UNNEEDED, Judging, Unexplained
from conservedb.exchange.keys import KeyBook
from conservedb.exchange.reading_cells import cells_of, find_record
from conservedb.exchange.subjects_plans import PLANNED_STEPS, PLANS
from conservedb.questions.answers import NoSuch
from conservedb.questions.naming import find_object
from conservedb.records.observations import observation
from conservedb.records.plans import planned_step
from conservedb.records.treatments import intervention
from conservedb.store.connect import raw_of, writing
from conservedb.store.keys import fold
from conservedb.store.log import Author, open_number

Cells = Mapping[str, str]


@dataclass
class Typed:
    """What became of a sheet. Where there are faults, nothing was written.

    Rows are named as on the sheet. `before` were typed in on another occasion, and left as they
    are on record by now; `not_done` say that nothing was done.
    """

    faults: list[str] = field(default_factory=list)
    recorded: list[tuple[str, str]] = field(default_factory=list)
    before: list[tuple[str, str]] = field(default_factory=list)
    not_done: list[str] = field(default_factory=list)
    notices: list[str] = field(default_factory=list)
    blank: int = 0
    set_number: int | None = None


@dataclass(frozen=True)
class _Desk:
    """Where a sheet is typed: into which transaction, by whom, of which object and plan."""

    connection: Connection
    number: str
    plan: str
    author: Author
    today: datetime.date
    overrides: Mapping[str, str]

    def put(self, entries: Sequence[Entry]) -> list[str]:
        """Write the records of a row after the rules were asked; what is to be known comes back."""
        judging = Judging(self.connection, self.number, self.author, self.today, self.overrides)
        judging.look_before(entries)
        put(self.connection, entries, self.today)
        return [notice for notice in judging.judge() if not notice.startswith(UNNEEDED)]


class _Wrong(Exception):
    """What is wrong with a row, in a sentence."""


def type_sheet(
    engine: Engine,
    number: str,
    plan: str,
    path: Path,
    author: Author,
    today: datetime.date,
    overrides: Mapping[str, str] = NONE,
) -> Typed:
    """Record the filled rows of a sheet in their order, in one transaction.

    The rules of the trade and the authorisations are asked of each row as of any other step.

    Args:
        plan: the rows must be of this plan; any where it is "".
        overrides: the reason for each rule, by its key, that is broken all the same.

    Raises:
        NoSuch: there is no such object.
        OSError: the file cannot be read.
        DatabaseProblem: the database cannot be written.
    """
    table = read_table(path, replace(SHEET, name=path.stem), "utf-8")
    typed = Typed([fault.sentence() for fault in table.faults])
    rows = [dict(zip(table.headers, row.cells, strict=True)) for row in table.rows]
    if typed.faults:
        return typed
    try:
        with writing(engine, author) as connection:
            owner = find_object(connection, number).number
            desk = _Desk(connection, owner, plan.strip(), author, today, overrides)
            for at, cells in enumerate(rows, 1):
                _take(desk, typed, cells, str(at))
            if typed.faults:
                raise Refused(())
            typed.set_number = open_number(raw_of(connection)) if typed.recorded else None
    except Refused:
        return Typed(typed.faults)
    return typed


def _take(desk: _Desk, typed: Typed, cells: Cells, at: str) -> None:
    """One row: left, told, or written into the transaction; what is wrong is noted by row."""
    row = cells.get("row", "").strip() or at
    told = FILLED if cells.get("step", "").strip() else (*FILLED, "kind")
    if not any(cells.get(name, "").strip() for name in told):
        typed.blank += 1
        return
    try:
        key = _key(cells, desk)
        known = _on_record(desk.connection, key)
        if known is not None:
            typed.before.append((row, known))
            return
        done = _done(cells)
        refs, who = Refs(desk.connection), desk.author.who
        if done == "no" and not cells.get("note", "").strip():
            typed.not_done.append(row)
            return
        entries = (
            _not_done(refs, cells, who)
            if done == "no"
            else _step(refs, cells, done, who, desk.today)
        )
        notices = desk.put([_keyed(entry, key) for entry in entries])
        typed.notices += [f"row {row}: {notice}" for notice in notices]
        typed.recorded.append((row, _on_record(desk.connection, key) or ""))
        if done == "no":
            typed.not_done.append(row)
    except Refused as refused:
        for fault in refused.faults:
            about = f"{fault.column} {_short(fault.value)}".strip()
            typed.faults.append(f"row {row}: {about} {fault.reason}; {fault.remedy}")
    except Unexplained as found:
        typed.faults += [
            f'row {row}: {one.sentence} (to record it all the same: --override {one.rule}="WHY")'
            for one in found.findings
        ]
    except (_Wrong, NoSuch) as problem:
        typed.faults.append(f"row {row}: {problem}")


def _short(value: str) -> str:
    return value if len(value) <= 80 else f"{value[:77]}..."


def _said(value: str) -> str:
    return _short(value.strip()) or "blank"


def _key(cells: Cells, desk: _Desk) -> str:
    """The key of the row, which must be one of a sheet of this object and plan."""
    number, plan = desk.number, desk.plan
    if cells["object"].strip() != number:
        raise _Wrong(f"is of object {_short(cells['object'])}, not of {number}; type it there")
    if plan and cells.get("plan", "").strip() != plan:
        raise _Wrong(f"is of plan {_short(cells.get('plan', '')) or 'none'}, not of {plan}")
    try:
        return str(uuid.UUID(cells["key"].strip()))
    except ValueError as problem:
        raise _Wrong(
            f"has no key of a sheet ({_short(cells['key']) or 'blank'}); fill in the rows as"
            " conservedb sheet --csv wrote them"
        ) from problem


def _on_record(connection: Connection, key: str) -> str | None:
    """What a row was recorded as, where it was."""
    statement = union_all(
        select(intervention.c.ref).where(intervention.c.uuid == key),
        select(observation.c.ref).where(observation.c.uuid == key),
    )
    found = connection.execute(statement).first()
    return None if found is None else str(found[0])


def _done(cells: Cells) -> str:
    done = " ".join(cells.get("done", "").split()).lower()
    if done not in DONE:
        said = f"{_short(done)} is none of them" if done else "nothing"
        raise _Wrong(f"says under done: {said}; write yes, no or otherwise")
    if not cells.get("who", "").strip():
        raise _Wrong("names nobody under who; write who did it")
    if done == "otherwise" and not cells.get("note", "").strip():
        raise _Wrong("was done otherwise and does not say how; write it under note")
    return done


def _keyed(entry: Entry, key: str) -> Entry:
    """The deed itself bears the key of the row."""
    if entry.subject not in ("interventions", "observations"):
        return entry
    return Entry(entry.subject, dict(entry.cells) | {"uuid": key})


def _not_done(refs: Refs, cells: Cells, who: str) -> list[Entry]:
    """Why something was not done, as an observation, so that it is not lost."""
    step = cells.get("step", "").strip()
    what = f"planned step {step} not done: " if step else "not done: "
    said = {
        "component": cells.get("component", "").strip(),
        "place": cells.get("place", "").strip(),
        "date": cells.get("date", ""),
        "people": cells.get("who", ""),
        "note": what + cells.get("note", ""),
    }
    return compose_simple(refs, "observations", cells["object"].strip(), said, who)


def _step(refs: Refs, cells: Cells, done: str, who: str, today: datetime.date) -> list[Entry]:
    """The records of a step done: what is left blank was as planned.

    How it was to be done is not taken from the plan where another material was used.
    """
    number = cells["object"].strip()
    plan, treatment = _plan(refs.connection, number, cells.get("step", "").strip())
    kind = plan.get("kind", "") or " ".join(cells.get("kind", "").split()).lower()
    used = cells.get("material", "").strip()
    kept = plan if _as_planned(refs.connection, cells, plan, done) else {}
    material = used or plan.get("material", "")
    strength = cells.get("concentration", "").strip() or kept.get("concentration", "")
    batch = cells.get("batch", "").strip()
    if material and not kind:
        raise _Wrong("names a material and no kind of step; write under kind what was done")
    lays = kind in ROLES
    carried = kept.get("carrier", "") if not used else ""
    step = Step(
        number,
        kind,
        cells.get("date", ""),
        kept.get("technique", ""),
        people=cells.get("who", ""),
        treatment=treatment,
        planned_step=plan.get("ref", ""),
        deviation=cells.get("note", "") if done == "otherwise" and plan else "",
        note=cells.get("note", ""),
        agent="" if lays else material,
        components=(cells.get("component", ""),),
        places=(cells.get("place", ""),),
        unauthorised_reason=cells.get("unauthorised_reason", ""),
        unauthorised_by=cells.get("unauthorised_by", ""),
        material=material if lays else "",
        concentration=strength if lays else "",
        carrier=carried if lays else "",
        batch=batch if lays else "",
    )
    entries = compose_step(refs, step, who, today)
    strengths = {"concentration": strength, "batch": batch}
    return [
        Entry(one.subject, dict(one.cells) | strengths) if one.subject == "agents" else one
        for one in entries
    ]


def _as_planned(connection: Connection, cells: Cells, plan: Cells, done: str) -> bool:
    """Whether what is left blank was as planned; a row that leaves that open is refused."""
    if not plan:
        return True
    planned, used = plan["material"], cells.get("material", "").strip()
    changed = [
        f"{name} was {_said(cells[name])} and is {_said(plan[name])}"
        for name in ("planned_material", "planned_recipe")
        if name in cells and cells[name].split() != plan[name].split()
    ]
    if changed and not (done == "otherwise" and used):
        raise _Wrong(
            f"the plan was changed since this sheet was printed: {'; '.join(changed)}; print it"
            " again, or write done otherwise with what was used under material"
        )
    keys = KeyBook(connection)
    another = bool(used and planned) and _matter(keys, used) != _matter(keys, planned)
    if another and done == "yes":
        raise _Wrong(
            f"says it was done as planned, with {_short(used)}, where the plan names"
            f" {_short(planned)}; write otherwise under done, and what was otherwise under note"
        )
    return not (another or changed)


def _matter(keys: KeyBook, text: str) -> tuple[int | None, str]:
    """The material that a cell means; the words alone where they mean none for certain.

    Raises:
        Refused: nothing is called so.
    """
    try:
        material, _, words = keys.material(text)
    except CellProblem as problem:
        fault = Fault("", 0, "material", text, problem.reason, problem.remedy)
        raise Refused([fault]) from problem
    return (material, "") if material is not None else (None, fold(words or text))


def _plan(connection: Connection, number: str, step: str) -> tuple[dict[str, str], str]:
    """The planned step, with what a sheet would print of it today; the ref of its treatment."""
    if not step:
        return {}, ""
    keys = KeyBook(connection)
    record = find_record(connection, PLANNED_STEPS, number, step)
    cells = cells_of(connection, PLANNED_STEPS, record, keys)
    plan = find_record(connection, PLANS, number, cells["plan"])
    material = connection.execute(
        select(planned_step.c.material_id).where(planned_step.c.id == record)
    ).scalar()
    cells["planned_material"] = cells["material"]
    cells["planned_recipe"] = recipe(connection, keys, cells, material)
    return cells, cells_of(connection, PLANS, plan, keys)["treatment"]
