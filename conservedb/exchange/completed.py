"""What is complete is amended with a reason: an ended treatment, an authorised plan, a decision."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from sqlalchemy import Connection, select

from conservedb.dates import say
from conservedb.exchange.faults import Fault
from conservedb.exchange.keys import key_field
from conservedb.exchange.reading_cells import find_record
from conservedb.exchange.subject import Subject
from conservedb.exchange.subjects import BY_NAME
from conservedb.questions.answers import NoSuch
from conservedb.questions.checks_places import found_date
from conservedb.questions.naming import find_object
from conservedb.records.authorisations import authorisation
from conservedb.records.base import DATE_PARTS
from conservedb.records.treatments import treatment
from conservedb.store.connect import raw_of
from conservedb.store.labels import owner_table
from conservedb.store.log import span

_PART_OF = {"interventions": "treatment", "plans": "treatment", "planned_steps": "plan"}
"""What a record is part of, where that is not its intervention."""
GIVE_A_REASON = "give the reason for this change"
_GIVEN = ("authorised", "ratified")
_BY_TABLE = {subject.table.name: subject for subject in BY_NAME.values()}


def needs_reason(connection: Connection, subject: str, number: str, key: str) -> str:
    """Why amending a record needs a reason, in a sentence; "" where it needs none.

    Raises:
        NoSuch: there is no such record.
    """
    known = BY_NAME[subject]
    return _why(connection, known, find_record(connection, known, number, key))


def undoing_needs_reason(connection: Connection, number: int) -> str:
    """Why taking a change set back needs a reason: it reaches into what is complete by now.

    One that was made with a reason leaves the record, once taken back, as it was closed.
    """
    given = connection.exec_driver_sql("SELECT reason FROM change_set WHERE id = ?", (number,))
    if given.scalar():
        return ""
    rows = connection.exec_driver_sql(
        "SELECT DISTINCT table_name, record_id FROM change WHERE id > ? AND id <= ?",
        span(raw_of(connection), number),
    )
    for table, record in rows:
        subject = _BY_TABLE.get(owner_table(table))
        if subject is None or subject.name == "authorisations" or not _header_or_whole(subject):
            continue
        known = select(subject.table.c.id).where(subject.table.c.id == record)
        if connection.execute(known).first() is not None:
            why = _complete(connection, subject, record)
            if why:
                return why
    return ""


def _header_or_whole(subject: Subject) -> bool:
    """Whether it is part of a treatment or plan, or one of these."""
    return bool(_header(subject)) or subject.name in ("treatments", "plans")


def lacking_reasons(
    connection: Connection, entries: Sequence[tuple[str, Mapping[str, str]]]
) -> list[Fault]:
    """A fault for each entry that goes into something complete, or would change it.

    Args:
        entries: subjects and cells by header.
    """
    faults = []
    owners: dict[str, int | None] = {}
    for row, (name, cells) in enumerate(entries, 1):
        number = cells.get("object", "")
        if number not in owners:
            owners[number] = _owner(connection, number)
        why = _of_entry(connection, BY_NAME[name], owners[number], cells)
        if why:
            faults.append(Fault(f"{name}.csv", row, "", "", why, GIVE_A_REASON))
    return faults


def _owner(connection: Connection, number: str) -> int | None:
    try:
        return int(find_object(connection, number).id)
    except NoSuch:
        return None  # the object is new, or the checks of the entry say what is wrong


def _of_entry(
    connection: Connection, subject: Subject, owner: int | None, cells: Mapping[str, str]
) -> str:
    """Why an entry needs a reason; neither it nor what it is part of need be there."""
    header = _header(subject)
    concerned = header or subject.name in ("treatments", "authorisations")
    if owner is None or not subject.in_object or not concerned:
        return ""
    there = _record(connection, subject, owner, cells.get(subject.key[-1], ""))
    if there is not None:
        return _why(connection, subject, there)
    whole = BY_NAME[f"{header}s"] if header else None
    part_of = _record(connection, whole, owner, cells.get(header, "")) if whole else None
    return "" if whole is None or part_of is None else _complete(connection, whole, part_of)


def _record(connection: Connection, subject: Subject, owner: int, key: str) -> int | None:
    table = subject.table
    statement = select(table.c.id).where(
        table.c.object_id == owner, table.c[key_field(subject)] == key.strip()
    )
    found = connection.execute(statement).scalar()
    return None if found is None else int(found)


def _why(connection: Connection, subject: Subject, record: int) -> str:
    if subject.name == "authorisations":
        return "a decision that was given is not changed without a reason"
    return _complete(connection, subject, record)


def _header(subject: Subject) -> str:
    """The column that names what a record is part of; "" where it is part of nothing."""
    if subject.name == "authorisations":  # a decision on a plan is no change of the plan
        return ""
    header = _PART_OF.get(subject.name, "intervention")
    return header if header in subject.headers else ""


def _complete(connection: Connection, subject: Subject, record: int) -> str:
    """Why a record, or what it is part of, is complete."""
    if subject.name == "treatments":
        return _ended(connection, record)
    if subject.name == "plans":
        decided = _authorised(connection, record)
        if decided:
            return decided
    header = _header(subject)
    if not header:
        return ""
    pointer = subject.table.c[f"{header}_id"]
    whole = connection.execute(select(pointer).where(subject.table.c.id == record)).scalar()
    return _complete(connection, BY_NAME[f"{header}s"], whole) if whole is not None else ""


def _ended(connection: Connection, record: int) -> str:
    parts = (treatment.c[f"ended_{part}"] for part in DATE_PARTS)
    statement = select(treatment.c.ref, *parts).where(treatment.c.id == record)
    ref, *_ = row = connection.execute(statement).one()
    ended = found_date(row, 1)
    if ended.derived == "blank":
        return ""
    return f"treatment {ref} was ended ({say(ended)})"


def _authorised(connection: Connection, record: int) -> str:
    statement = select(authorisation.c.ref, authorisation.c.decision).where(
        authorisation.c.plan_id == record, authorisation.c.decision.in_(_GIVEN)
    )
    found = connection.execute(statement.order_by(authorisation.c.id)).first()
    if found is None:
        return ""
    return f"the plan was {found.decision} ({found.ref}); a new version leaves it as it was"
