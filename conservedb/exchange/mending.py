"""Mending what was entered: a part broken, retired or replaced; a layer taken for another matter.

Each is one transaction, logged with its reason, and can be taken back whole.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from sqlalchemy import Connection, Engine, select

from conservedb.dates import DateError, iso, read
from conservedb.exchange.entering import Entry, Refs, Refused, Written, put
from conservedb.exchange.faults import CellProblem, Fault
from conservedb.exchange.keys import KeyBook
from conservedb.exchange.reading_cells import cells_of, find_record
from conservedb.exchange.subjects_deeds import LAYERS
from conservedb.exchange.subjects_parts import COMPONENTS, OBJECTS
from conservedb.exchange.subjects_shared import STATEMENTS
from conservedb.exchange.writer import writer
from conservedb.questions.naming import find_object
from conservedb.records.layers import layer
from conservedb.records.objects import component
from conservedb.records.places import place
from conservedb.records.sources import statement
from conservedb.store.connect import writing
from conservedb.store.keys import fold
from conservedb.store.labels import label
from conservedb.store.log import Author

Cells = dict[str, str]
Compose = Callable[[Connection], list[Entry]]
"""Makes the records of a mending from what is on record."""


@dataclass(frozen=True, slots=True)
class Analysis:
    """What a layer turned out to be.

    Attributes:
        material: key of the material, or a name that only it bears.
        source: ref of the paper that says so.
        identified: how that is known: analysed, documented later, inferred ...
    """

    material: str
    source: str
    identified: str = "analysed"


def split(
    engine: Engine,
    number: str,
    mark: str,
    fragments: Sequence[str],
    author: Author,
    today: datetime.date,
) -> Written:
    """Record that a component broke into fragments; it stays on record as their parent.

    Origin and material are those of the whole; the rest is left to be recorded.

    Raises:
        NoSuch: there is no such object or component.
        DatabaseProblem: the file cannot be written.
    """

    def compose(connection: Connection) -> list[Entry]:
        whole = _component(connection, number, mark)
        _refuse_taken(connection, number, fragments)
        kept = {name: whole[name] for name in ("origin", "material", "known_from")}
        own = {"object": whole["object"], "parent": whole["mark"], "kind": "fragment"}
        said = {"note": f"broken from {whole['mark']}: {author.reason.strip()}"}
        return [Entry("components", {"mark": one} | own | kept | said) for one in fragments]

    return _carry_out(engine, author, today, compose)


def retire(
    engine: Engine, number: str, mark: str, on: str, author: Author, today: datetime.date
) -> Written:
    """Record that a component has been taken out of the object for good.

    Raises:
        NoSuch: there is no such object or component.
        DatabaseProblem: the file cannot be written.
    """

    def compose(connection: Connection) -> list[Entry]:
        return [_retired(connection, _component(connection, number, mark), on, author, today)]

    return _carry_out(engine, author, today, compose)


def replace(
    engine: Engine,
    number: str,
    mark: str,
    new: str,
    on: str,
    author: Author,
    today: datetime.date,
) -> Written:
    """Record that a new component stands in the place of an old one, which is retired.

    The new one has the parent, name and kind of the old one, and `replacement` as its origin;
    what it is made of, and when it was made, is left to be recorded.

    Raises:
        NoSuch: there is no such object or component.
        DatabaseProblem: the file cannot be written.
    """

    def compose(connection: Connection) -> list[Entry]:
        old = _component(connection, number, mark)
        _refuse_taken(connection, number, [new])
        gone = _retired(connection, old, on, author, today)
        own = {name: old[name] for name in ("object", "parent", "name", "kind")}
        said = {"mark": new, "origin": "replacement", "note": f"in place of {old['mark']}"}
        went = Entry("components", dict(gone.cells) | {"replaced_by": new.strip()})
        return [Entry("components", own | said), went]

    return _carry_out(engine, author, today, compose)


def reidentify(
    engine: Engine,
    number: str,
    ref: str,
    found: Analysis,
    author: Author,
    today: datetime.date,
    *,
    everywhere: bool = False,
) -> tuple[Written, tuple[str, ...]]:
    """Say that a layer is another material than was thought, and keep both statements.

    The former material becomes a statement that is not followed, the new one a statement that
    is, with its source; decided by the writer, for the reason given.

    Args:
        everywhere: every layer of every object that is on record as that same material.

    Returns:
        What became of it, and what the layers are called.

    Raises:
        NoSuch: there is no such object or layer.
        DatabaseProblem: the file cannot be written.
    """

    def compose(connection: Connection) -> list[Entry]:
        record = find_record(connection, LAYERS, number, ref)
        keys = KeyBook(connection)
        try:
            material = keys.name_of("materials", keys.find("materials", found.material.strip()))
        except CellProblem as problem:
            raise _refused("layers.csv", "material", found.material, problem) from problem
        refs = Refs(connection)
        entries = writer(refs, author.who)
        for one in _layers(connection, record, ref) if everywhere else [record]:
            entries += _another_matter(connection, keys, refs, one, material, found, author)
            named.append(label(connection, "layer", one))
        return entries

    named: list[str] = []
    return _carry_out(engine, author, today, compose), tuple(named)


def _layers(connection: Connection, record: int, ref: str) -> list[int]:
    """Every layer of the material of this one."""
    material = connection.execute(select(layer.c.material_id).where(layer.c.id == record)).scalar()
    if material is None:
        problem = CellProblem(
            "has no material of the list on record", "name each layer instead of everywhere"
        )
        raise _refused("layers.csv", "ref", ref, problem)
    same = select(layer.c.id).where(layer.c.material_id == material).order_by(layer.c.id)
    return [row[0] for row in connection.execute(same)]


def _another_matter(
    connection: Connection,
    keys: KeyBook,
    refs: Refs,
    record: int,
    material: str,
    found: Analysis,
    author: Author,
) -> Iterator[Entry]:
    """The statements about one layer, and the layer itself."""
    cells = cells_of(connection, LAYERS, record, keys)
    was, words = connection.execute(
        select(layer.c.material_id, layer.c.material_words).where(layer.c.id == record)
    ).one()
    former = keys.name_of("materials", was) if was is not None else words or ""
    if former == material:
        problem = CellProblem(f"is on record as {material} already", "name another material")
        raise _refused("layers.csv", "ref", cells["ref"], problem)
    decided = {"decided_by": author.who, "reason": author.reason.strip()}
    about = {"table": "layer", "object": cells["object"], "ref": cells["ref"], "field": "material"}
    stated = set()
    for key, value, followed in _stated(connection, record):
        stated.add(value)
        if followed == "yes":
            yield Entry("statements", {"key": key, "followed": "no"} | about | decided)
    if former and former not in stated:
        old = {"key": refs.next("statements"), "value": former, "source": cells["source"]}
        yield Entry("statements", old | about | {"followed": "no"} | decided)
    new = {"key": refs.next("statements"), "value": material, "source": found.source}
    yield Entry("statements", new | about | {"followed": "yes"} | decided)
    changed = {"material": f"{words} = {material}" if words else material}
    changed |= {"object": cells["object"], "ref": cells["ref"], "identified": found.identified}
    yield Entry("layers", changed)


def _stated(connection: Connection, record: int) -> list[tuple[str, str, str]]:
    """Key, value and standing of what is stated about the material of a layer."""
    rows = connection.execute(
        select(statement.c.id, statement.c.followed)
        .where(statement.c.layer_id == record, statement.c.field == "material")
        .order_by(statement.c.id)
    )
    found = []
    for one, followed in rows.all():
        cells = cells_of(connection, STATEMENTS, one)
        found.append((cells["key"], cells["value"], followed or ""))
    return found


def _component(connection: Connection, number: str, mark: str) -> Cells:
    return cells_of(connection, COMPONENTS, find_record(connection, COMPONENTS, number, mark))


def _retired(
    connection: Connection, cells: Cells, on: str, author: Author, today: datetime.date
) -> Entry:
    """A component as retired, on a day on which it can have been."""
    if cells["retired"] or cells["lost"]:
        how = "retired" if cells["retired"] else "lost"
        problem = CellProblem(f"was {how} {cells[how]} already", "amend that if it is wrong")
        raise _refused("components.csv", "mark", cells["mark"], problem)
    _refuse_day(connection, cells, on, today)
    own = {"object": cells["object"], "mark": cells["mark"]}
    return Entry("components", own | {"retired": on, "retired_why": author.reason.strip()})


def _refuse_day(connection: Connection, cells: Cells, on: str, today: datetime.date) -> None:
    """A day certainly still to come, or certainly before the part was made.

    What is no date at all is told when it is written.
    """
    try:
        day = read(on)
    except DateError:
        return
    made = read(cells["made"])
    if made.derived == "blank" and cells["origin"] == "original":
        made = read(_object_made(connection, cells["object"]))
    problem = None
    if day.earliest > today.toordinal():
        problem = CellProblem("lies in the future", "retire the part once it has been taken out")
    elif day.latest < made.earliest:
        reason = f"lies before {cells['mark']} was made (not before {iso(made.earliest)})"
        problem = CellProblem(reason, "amend whichever date is wrong")
    if problem is not None:
        raise _refused("components.csv", "retired", on, problem)


def _object_made(connection: Connection, number: str) -> str:
    """When an object was made: what is original of it is no older."""
    record = find_record(connection, OBJECTS, "", number)
    return cells_of(connection, OBJECTS, record)["made"]


def _refuse_taken(connection: Connection, number: str, marks: Sequence[str]) -> None:
    """Marks that stand for a component or place of the object already."""
    owner = find_object(connection, number)
    known = {
        row[0]
        for table in (component, place)
        for row in connection.execute(
            select(table.c.mark_folded).where(table.c.object_id == owner.id)
        )
    }
    for mark in marks:
        if fold(mark) in known:
            reason = "stands for another part or place already"
            problem = CellProblem(reason, "choose a new mark")
            raise _refused("components.csv", "mark", mark, problem)
        known.add(fold(mark))


def _carry_out(engine: Engine, author: Author, today: datetime.date, compose: Compose) -> Written:
    try:
        with writing(engine, author) as connection:
            return _put_alike(connection, compose(connection), today)
    except Refused as refused:
        return Written(refused.faults, refused.notices)


def _put_alike(connection: Connection, entries: list[Entry], today: datetime.date) -> Written:
    """Write entries of the same fields together: one that is not named must not blank another's."""
    alike: dict[tuple[str, frozenset[str]], list[Entry]] = {}
    for entry in entries:
        alike.setdefault((entry.subject, frozenset(entry.cells)), []).append(entry)
    done = [put(connection, some, today, whole=True) for some in alike.values()]
    keys = tuple(key for written in done for key in written.keys)
    notices = tuple(notice for written in done for notice in written.notices)
    return Written((), notices, keys, done[-1].set_number)


def _refused(file: str, column: str, value: str, problem: CellProblem) -> Refused:
    return Refused([Fault(file, 1, column, value, problem.reason, problem.remedy)])
