"""A question put to the database: a SELECT built once, its rows as named tuples.

SQLAlchemy builds and compiles the statement, once; it then runs on the driver's own cursor.
Running it through `Connection.execute` costs four times the query itself for the few rows
that lie at a place.
"""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from functools import partial
from operator import itemgetter
from typing import Any, TypeAlias

from sqlalchemy import Column, ColumnElement, Connection, func, literal_column
from sqlalchemy.exc import DBAPIError
from sqlalchemy.sql.selectable import CompoundSelect, FromClause, Select

from conservedb.records.base import DATE_PARTS

Selection: TypeAlias = Select[Any] | CompoundSelect[Any]
Row: TypeAlias = Any
"""A named tuple whose fields are the columns of its question."""
Rows: TypeAlias = Sequence[Row]
Value: TypeAlias = int | str | None


class Question:
    """A SELECT with named parameters; rows carry the names of its columns."""

    def __init__(self, statement: Selection, row: type[tuple[Any, ...]] | None = None) -> None:
        self.statement = statement
        self.names = tuple(statement.selected_columns.keys())
        self._make = partial(tuple.__new__, row or _row_class(self.names))
        self._compiled: dict[str, tuple[str, list[str] | None, dict[str, Value]]] = {}

    def all(self, connection: Connection, **values: Value) -> list[Row]:
        """Every row.

        Raises:
            sqlalchemy.exc.DBAPIError: the database cannot answer.
        """
        return self.fetch(connection, values, self._make)

    def first(self, connection: Connection, **values: Value) -> Row:
        """The first row, or None."""
        rows = self.all(connection, **values)
        return rows[0] if rows else None

    def tuples(self, connection: Connection, **values: Value) -> list[tuple[Any, ...]]:
        """Every row as a plain tuple, for long answers that are taken apart at once."""
        return self.fetch(connection, values, tuple)

    def fetch(
        self, connection: Connection, values: dict[str, Value], make: Callable[[Any], Row]
    ) -> list[Row]:
        """The rows, each made into something else at once, from one state of the database."""
        sql, given = self._put(connection, values)
        driver = connection.dialect.loaded_dbapi
        try:
            cursor: Any = connection.connection.cursor()
            return list(map(make, cursor.execute(sql, given)))
        except driver.Error as problem:
            raise DBAPIError.instance(sql, given, problem, driver.Error) from problem

    def each(
        self, connection: Connection, values: dict[str, Value], make: Callable[[Any], Row]
    ) -> Iterator[Row]:
        """The same one by one, for answers that nobody holds as a whole."""
        sql, given = self._put(connection, values)
        driver = connection.dialect.loaded_dbapi
        try:
            cursor: Any = connection.connection.cursor()
            yield from map(make, cursor.execute(sql, given))
        except driver.Error as problem:
            raise DBAPIError.instance(sql, given, problem, driver.Error) from problem

    def _put(self, connection: Connection, values: dict[str, Value]) -> tuple[str, Any]:
        """The statement and its values, in a transaction."""
        if not connection.in_transaction():
            connection.begin()
        sql, order, constants = self.compiled(connection)
        named = constants | values
        return sql, named if order is None else [named[name] for name in order]

    def compiled(self, connection: Connection) -> tuple[str, list[str] | None, dict[str, Value]]:
        """The SQL for this database, the order of its parameters, and those with fixed values."""
        name = connection.dialect.name
        if name not in self._compiled:
            made = self.statement.compile(dialect=connection.dialect)
            self._compiled[name] = (str(made), made.positiontup, dict(made.params))
        return self._compiled[name]

    def at(self, name: str) -> int:
        """Where a column stands in a row."""
        return self.names.index(name)


@contextmanager
def without_collecting() -> Iterator[None]:
    """Keep Python from looking for garbage meanwhile.

    For answers of very many rows: these make no cycles, yet every ten thousand of them would
    set off one more search through all that there are.
    """
    collecting = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if collecting:
            gc.enable()


def _row_class(names: Sequence[str]) -> type[tuple[Any, ...]]:
    """A tuple whose fields have names; made ten times as fast as a `namedtuple`."""
    fields = {name: property(itemgetter(at)) for at, name in enumerate(names)}
    return type("Row", (tuple,), {"__slots__": (), **fields})


def blank(column: ColumnElement[Any]) -> ColumnElement[Any]:
    """A text column that gives "" where nothing is recorded.

    Columns of a table are written out as text: the same as `func.coalesce`, and seven times
    as fast to build and compile, which a cold start feels.
    """
    if isinstance(column, Column):
        return literal_column(f"coalesce({column.table.name}.{column.name}, '')")
    return func.coalesce(column, literal_column("''"))


def dated(table: FromClause, prefix: str, label: str = "") -> list[ColumnElement[Any]]:
    """The columns of one date, in the order of `answers.When`."""
    label = label or prefix
    columns = {part: table.c[f"{prefix}_{part}"] for part in DATE_PARTS}
    return [
        (blank(column) if part in ("words", "edtf") else column).label(f"{label}_{part}")
        for part, column in columns.items()
    ]


def cited(table: FromClause, label: str = "source") -> list[ColumnElement[Any]]:
    """The columns of one source, in the order of `answers.Source`."""
    return [table.c.ref.label(f"{label}_ref")] + [
        blank(table.c[name]).label(f"{label}_{name}") for name in ("kind", "citation")
    ]
