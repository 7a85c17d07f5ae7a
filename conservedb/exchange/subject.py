"""What one CSV file is: its key, its columns, and where they are kept."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from sqlalchemy import Table

from conservedb.exchange.columns import Column, Day, Identity, KeyText, Ref
from conservedb.exchange.lists import ListColumn


@dataclass(frozen=True)
class Subject:
    """One CSV file.

    Attributes:
        name: the file is `name`.csv.
        singular: what one row is called in sentences.
        key: the headers of the key; unique in its object where `in_object`.
        folded: whether keys are compared without case.
        makes_key: whether a blank key is made from the row's other cells.
        parent: the header of a pointer into the same file, which makes a tree.
    """

    name: str
    singular: str
    table: Table
    key: tuple[str, ...]
    columns: tuple[Column | ListColumn, ...]
    in_object: bool = True
    folded: bool = False
    makes_key: bool = False
    parent: str = ""

    @property
    def file(self) -> str:
        """The name of the file."""
        return f"{self.name}.csv"

    @cached_property
    def plain(self) -> tuple[Column, ...]:
        """Columns kept in the table itself."""
        return tuple(c for c in self.columns if isinstance(c, Column))

    @cached_property
    def lists(self) -> tuple[ListColumn, ...]:
        """Columns kept in link tables."""
        return tuple(c for c in self.columns if isinstance(c, ListColumn))

    @cached_property
    def headers(self) -> tuple[str, ...]:
        """Every header, in the order of export."""
        first = ("object",) if self.in_object else ()
        return first + tuple(name for column in self.columns for name in column.names)

    @cached_property
    def fields(self) -> tuple[str, ...]:
        """Database fields in the order of a record's values (without the id)."""
        first = ("object_id",) if self.in_object else ()
        singles = tuple(column.single for column in self.lists if column.single)
        return first + tuple(f for column in self.plain for f in column.fields) + singles

    @cached_property
    def pointers(self) -> tuple[tuple[int, str], ...]:
        """Which of a record's values point at records, and of which subject."""
        first = ((0, "objects"),) if self.in_object else ()
        found = [pointer for column in self.columns for pointer in column.pointers]
        return first + tuple((self.position[field], subject) for field, subject in found)

    @cached_property
    def position(self) -> dict[str, int]:
        """Where a field stands among a record's values."""
        return {field: index for index, field in enumerate(self.fields)}


NOTE = Column("note")
RECORD = (Identity("uuid"), Day("entered"))


def source(name: str = "source") -> Ref:
    """Where something is known from."""
    return Ref(name, f"{name}_id", subject="sources")


def person(name: str) -> Ref:
    """One person."""
    return Ref(name, f"{name}_id", subject="people")


def ref(key: str = "ref") -> KeyText:
    """What a record is referred to by."""
    return KeyText(key)


def local(name: str, field: str, subject: str) -> Ref:
    """A record of the same object."""
    return Ref(name, field, subject=subject)
