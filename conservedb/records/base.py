"""What every table shares: naming of constraints, identity, and the shape of a date."""

from __future__ import annotations

from typing import Any

from sqlalchemy import (
    CheckConstraint,
    Column,
    ForeignKey,
    Integer,
    MetaData,
    Table,
    Text,
    UniqueConstraint,
)
from sqlalchemy import text as sql
from sqlalchemy.schema import SchemaItem

from conservedb.dates import UNKNOWN_END, UNKNOWN_START

metadata = MetaData(
    naming_convention={
        "ix": "ix_%(table_name)s_%(column_0_N_name)s",
        "uq": "uq_%(table_name)s_%(column_0_N_name)s",
        "ck": "ck_%(table_name)s_%(constraint_name)s",
        "fk": "fk_%(table_name)s_%(column_0_N_name)s",
        "pk": "pk_%(table_name)s",
    }
)

DATE_PARTS = ("words", "edtf", "earliest", "latest", "flags", "derived")
"""A date `x` is stored as x_words, x_edtf, x_earliest, x_latest, x_flags and x_derived."""


def record_table(name: str, *items: SchemaItem) -> Table:
    """A table of records that can be cited: own key never used again, UUID, day of entry."""
    return Table(
        name,
        metadata,
        Column("id", Integer, primary_key=True),
        Column("uuid", Text, nullable=False),
        Column("entered", Text, nullable=False),
        *items,
        UniqueConstraint("uuid"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )


def link_table(name: str, *items: SchemaItem) -> Table:
    """A table that only ties records together; its primary key is what it ties."""
    return Table(name, metadata, *items, sqlite_strict=True)


def text(name: str, required: bool = False) -> Column[Any]:
    """Words as written; NULL where nothing was recorded."""
    return Column(name, Text, nullable=not required)


def reference(name: str, target: str, required: bool = False) -> Column[Any]:
    """A pointer to the record of another table, kept by its integer key."""
    return Column(name, Integer, ForeignKey(f"{target}.id"), nullable=not required)


def one_of(column: str, values: tuple[str, ...]) -> CheckConstraint:
    """A column that holds one of the listed words, or nothing."""
    listed = ", ".join(f"'{value}'" for value in values)
    return CheckConstraint(f"{column} IN ({listed})", name=f"{column}_known")


def dated(prefix: str, *, joined: bool = False) -> tuple[SchemaItem, ...]:
    """The six columns of one date (see `conservedb.dates`); bounds are day numbers.

    Where they `joined` a table that may already have had rows, the date of these is blank.
    """
    earliest, latest, flags, derived = (
        (sql(f"{UNKNOWN_START}"), sql(f"{UNKNOWN_END}"), sql("0"), sql("'blank'"))
        if joined
        else (None,) * 4
    )
    return (
        Column(f"{prefix}_words", Text),
        Column(f"{prefix}_edtf", Text),
        Column(f"{prefix}_earliest", Integer, nullable=False, server_default=earliest),
        Column(f"{prefix}_latest", Integer, nullable=False, server_default=latest),
        Column(f"{prefix}_flags", Integer, nullable=False, server_default=flags),
        Column(f"{prefix}_derived", Text, nullable=False, server_default=derived),
        CheckConstraint(f"{prefix}_earliest <= {prefix}_latest", name=f"{prefix}_in_order"),
    )
