"""Which objects the rules look at: a range of ids, from the first to the last."""

from __future__ import annotations

from typing import Any

from sqlalchemy import BindParameter, ColumnElement, Table, bindparam, case, literal_column, select

FIRST: BindParameter[int] = bindparam("first")
LAST: BindParameter[int] = bindparam("last")
PHOTOGRAPH: ColumnElement[str] = literal_column("'photograph'")
"""The kind of source that shows what it is cited for."""


def of_range(table: Table) -> ColumnElement[bool]:
    """Whether a record belongs to an object of the range."""
    return table.c.object_id.between(FIRST, LAST)


def ids_of(table: Table) -> Any:  # noqa: ANN401 (a SELECT of one column)
    """The ids of the records that belong to an object of the range."""
    return select(table.c.id).where(of_range(table))


def photograph(of: Any, label: str) -> list[ColumnElement[Any]]:  # noqa: ANN401 (an alias)
    """Ref and days of a source where it is a photograph."""
    return [
        case((of.c.kind == PHOTOGRAPH, of.c[column])).label(f"{label}_{column}")
        for column in ("ref", "date_earliest", "date_latest")
    ]
