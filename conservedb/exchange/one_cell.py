"""One cell of a record read on its own, while a form is being filled in."""

from __future__ import annotations

from sqlalchemy import Connection

from conservedb.exchange.faults import CellProblem, Fault
from conservedb.exchange.keys import KeyBook
from conservedb.exchange.reading_cells import subject_named
from conservedb.questions.naming import find_object


def fault_in(
    connection: Connection, subject: str, number: str, header: str, cell: str
) -> Fault | None:
    """What is wrong with a cell, if anything; a blank one is never wrong by itself.

    Args:
        subject: what kind of record.
        number: of its object, "" where it has none yet.
        header: the column.
        cell: its text.
    """
    known = subject_named(subject)
    column = next((one for one in known.columns if header in one.names), None)
    if column is None or not cell.strip() or len(column.names) > 1:
        return None
    keys = KeyBook(connection)
    if known.in_object and number:
        keys.object_id = find_object(connection, number).id
        keys.load_object(keys.object_id)
    keys.file = known.file
    try:
        column.parse(cell, keys)
    except CellProblem as problem:
        value = problem.value or cell
        return Fault(known.file, 1, header, value, problem.reason, problem.remedy)
    return None
