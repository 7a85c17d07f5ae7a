"""One record as the cells of its CSV row: what a form shows, and what a conflict is told by."""

from __future__ import annotations

from sqlalchemy import Connection, select

from conservedb.exchange.keys import KeyBook, key_field
from conservedb.exchange.lists import ListColumn
from conservedb.exchange.stored import links_of
from conservedb.exchange.subject import Subject
from conservedb.exchange.subjects import BY_NAME
from conservedb.questions.answers import NoSuch
from conservedb.questions.naming import find_object
from conservedb.store.keys import fold


def subject_named(name: str) -> Subject:
    """The subject of that name, in the singular or as its file is called.

    Raises:
        NoSuch: there is none.
    """
    wanted = fold(name).replace(" ", "_").removesuffix(".csv")
    for subject in BY_NAME.values():
        if wanted in (subject.name, subject.singular.replace(" ", "_")):
            return subject
    from difflib import get_close_matches

    raise NoSuch("kind of record", name, tuple(get_close_matches(wanted, list(BY_NAME), 3)))


def find_record(connection: Connection, subject: Subject, number: str, key: str) -> int:
    """The id of a record, by the number of its object ("" where it has none) and its key.

    Raises:
        NoSuch: there is none.
    """
    table = subject.table
    wanted = fold(key) if subject.folded else key.strip()
    statement = select(table.c.id).where(table.c[key_field(subject)] == wanted)
    where = ""
    if subject.in_object:
        owner = find_object(connection, number)
        statement = statement.where(table.c.object_id == owner.id)
        where = f" of {owner.number}"
    found = connection.execute(statement).all()
    if len(found) != 1:
        near = _near(connection, subject, wanted, number)
        raise NoSuch(f"{subject.singular}{where}", key, near)
    return int(found[0][0])


def _near(connection: Connection, subject: Subject, key: str, number: str) -> tuple[str, ...]:
    from difflib import get_close_matches

    table = subject.table
    statement = select(table.c[key_field(subject)])
    if subject.in_object:
        owner = find_object(connection, number)
        statement = statement.where(table.c.object_id == owner.id)
    known = [row[0] for row in connection.execute(statement.limit(5000))]
    return tuple(get_close_matches(key, known, 3))


def cells_of(
    connection: Connection, subject: Subject, record: int, keys: KeyBook | None = None
) -> dict[str, str]:
    """The cells of a record by header, as an export writes them."""
    book = keys or KeyBook(connection)
    table = subject.table
    statement = select(*(table.c[field] for field in subject.fields)).where(table.c.id == record)
    values = tuple(connection.execute(statement).one())
    cells: dict[str, str] = {}
    if subject.in_object:
        cells["object"] = book.name_of("objects", values[0])
    for column in subject.columns:
        if isinstance(column, ListColumn):
            rows = links_of(connection, subject, column, record)
            cells[column.name] = column.show(rows, book)
        else:
            group = tuple(values[subject.position[field]] for field in column.fields)
            cells |= dict(zip(column.names, column.show_all(group, book), strict=True))
    return cells
