"""Kinds of CSV column: how a cell becomes the values of database fields, and back.

A column covers one or more headers (`names`) and one or more fields of its table. `parse`
raises CellProblem; `show` is its reverse. Both see other records only through `Keys`.
"""

from __future__ import annotations

import datetime
import uuid
from dataclasses import dataclass
from typing import Any, Protocol

from conservedb import dates
from conservedb.exchange import cells
from conservedb.exchange.faults import CellProblem
from conservedb.records.base import DATE_PARTS
from conservedb.store.keys import fold, sort_key

Values = tuple[Any, ...]


class Keys(Protocol):
    """What columns may ask about other records (see `conservedb.exchange.keys`)."""

    object_id: int
    row: dict[str, str]

    def find(self, subject: str, text: str) -> int:
        """The id of a record named in a cell; CellProblem where there is none."""

    def load_object(self, object_id: int) -> None:
        """Make what the database holds for an object known."""

    def name_of(self, subject: str, record: int) -> str:
        """How a record is named in cells."""

    def material(self, text: str) -> Values:
        """(material id, class id, words as found) for what a cell calls a material."""

    def known_material(self, text: str) -> int | None:
        """The id of the one material of that key, name or alias; None where none or several."""

    def object_of(self, subject: str, record: int) -> int:
        """The id of the object that a record belongs to."""

    def notice(self, column: str, value: str, reason: str, remedy: str) -> None:
        """Tell the user something that is no fault."""


@dataclass(frozen=True)
class Column:
    """A column of free text; its cell is kept verbatim."""

    name: str
    field: str = ""

    @property
    def names(self) -> tuple[str, ...]:
        """The CSV headers that this column covers."""
        return (self.name,)

    @property
    def fields(self) -> tuple[str, ...]:
        """The database fields that it fills."""
        return (self.field or self.name,)

    @property
    def pointers(self) -> tuple[tuple[str, str], ...]:
        """Which of its fields point at records, and of which subject."""
        return ()

    @property
    def blank(self) -> Values:
        """The values where nothing is recorded."""
        return (None,) * len(self.fields)

    def parse(self, cell: str, keys: Keys) -> Values:
        """The field values for a cell that is not blank."""
        return (cell,)

    def show(self, values: Values, keys: Keys) -> str:
        """The cell for field values."""
        return values[0] or ""

    def show_all(self, values: Values, keys: Keys) -> tuple[str, ...]:
        """One cell per header."""
        return (self.show(values, keys),)


@dataclass(frozen=True)
class Name(Column):
    """Text that people look for: kept verbatim, with its folded form beside it."""

    sorted_too: bool = False

    @property
    def fields(self) -> tuple[str, ...]:
        name = self.field or self.name
        return (
            (name, f"{name}_sort", f"{name}_folded")
            if self.sorted_too
            else (name, f"{name}_folded")
        )

    def parse(self, cell: str, keys: Keys) -> Values:
        return (cell, sort_key(cell), fold(cell)) if self.sorted_too else (cell, fold(cell))


@dataclass(frozen=True)
class KeyText(Column):
    """The text that a record is known by; outer blanks do not count."""

    folded: bool = False
    sorted_too: bool = False

    @property
    def fields(self) -> tuple[str, ...]:
        name = self.field or self.name
        extra = ((f"{name}_sort",) if self.sorted_too else ()) + (
            (f"{name}_folded",) if self.folded else ()
        )
        return (name, *extra)

    def parse(self, cell: str, keys: Keys) -> Values:
        text = cell.strip()
        extra = ((sort_key(text),) if self.sorted_too else ()) + (
            (fold(text),) if self.folded else ()
        )
        return (text, *extra)


@dataclass(frozen=True)
class Choice(Column):
    """One of a closed list of words."""

    values: tuple[str, ...] = ()

    def parse(self, cell: str, keys: Keys) -> Values:
        word = " ".join(cell.split()).lower()
        for value in self.values:
            if value.lower() == word:
                return (value,)
        raise CellProblem("is not one of the words used here", f"use {', '.join(self.values)}")


@dataclass(frozen=True)
class Number(Column):
    """A measure; the unit stands in the name of the column. `above_zero`: nor may it be 0."""

    positive: bool = True
    above_zero: bool = False

    def parse(self, cell: str, keys: Keys) -> Values:
        value = cells.number(cell)
        if self.positive and value < 0:
            raise CellProblem("is below zero", "give the measure as a positive number")
        if self.above_zero and value == 0:
            raise CellProblem("is zero", "give a number above zero, or leave the cell blank")
        return (value,)

    def show(self, values: Values, keys: Keys) -> str:
        return "" if values[0] is None else cells.show_number(values[0])


@dataclass(frozen=True)
class Whole(Column):
    """A whole number, not below `least` where that is given; a blank cell is `default`."""

    default: int | None = None
    least: int | None = None

    @property
    def blank(self) -> Values:
        return (self.default,)

    def parse(self, cell: str, keys: Keys) -> Values:
        value = cells.integer(cell)
        if self.least is not None and value < self.least:
            raise CellProblem(f"is below {self.least}", f"give {self.least} or more")
        return (value,)

    def show(self, values: Values, keys: Keys) -> str:
        return "" if values[0] is None else str(values[0])


@dataclass(frozen=True)
class Date(Column):
    """A date as found; the words are kept, the bounds worked out."""

    @property
    def fields(self) -> tuple[str, ...]:
        prefix = self.field or self.name
        return tuple(f"{prefix}_{part}" for part in DATE_PARTS)

    @property
    def blank(self) -> Values:
        return BLANK_DATE

    def parse(self, cell: str, keys: Keys) -> Values:
        try:
            found = dates.read(cell)
        except dates.DateError as problem:
            raise CellProblem(problem.reason, problem.remedy) from problem
        if found.derived == "not understood":
            keys.notice(
                self.name,
                cell,
                "these words of date are not in the table; kept as found, with unknown bounds",
                "to date it, write: words = EDTF",
            )
        return (found.words or None, found.edtf or None, *found[2:])

    def show(self, values: Values, keys: Keys) -> str:
        words, edtf, earliest, latest, flags, derived = values
        if derived == "blank":
            return ""
        return dates.cell(dates.Found(words or "", edtf or "", earliest, latest, flags, derived))


BLANK_DATE: Values = (None, None, dates.UNKNOWN_START, dates.UNKNOWN_END, 0, "blank")


@dataclass(frozen=True)
class Day(Column):
    """The day on which a record came into a database; the day of import where not given."""

    def parse(self, cell: str, keys: Keys) -> Values:
        try:
            return (datetime.date.fromisoformat(cell.strip()).isoformat(),)
        except ValueError as problem:
            raise CellProblem("is not a day", "write it as year-month-day: 2026-11-25") from problem


@dataclass(frozen=True)
class Identity(Column):
    """The UUID of a record, made where not given."""

    def parse(self, cell: str, keys: Keys) -> Values:
        try:
            return (str(uuid.UUID(cell.strip())),)
        except ValueError as problem:
            raise CellProblem("is not a UUID", "leave it blank and one is made") from problem


@dataclass(frozen=True)
class Ref(Column):
    """A pointer to one record of another subject."""

    subject: str = ""

    @property
    def pointers(self) -> tuple[tuple[str, str], ...]:
        return ((self.fields[0], self.subject),)

    def parse(self, cell: str, keys: Keys) -> Values:
        return (keys.find(self.subject, cell.strip()),)

    def show(self, values: Values, keys: Keys) -> str:
        return "" if values[0] is None else keys.name_of(self.subject, values[0])


@dataclass(frozen=True)
class Material(Column):
    """What a paper calls a material: a key, a name that only one bears, or mere words.

    Words that somebody decided, or that mean a class, are shown as "words = KEY".
    """

    with_class: bool = True

    @property
    def fields(self) -> tuple[str, ...]:
        middle = ("material_class_id",) if self.with_class else ()
        return ("material_id", *middle, "material_words")

    @property
    def pointers(self) -> tuple[tuple[str, str], ...]:
        klass = (("material_class_id", "material_classes"),) if self.with_class else ()
        return (("material_id", "materials"), *klass)

    def parse(self, cell: str, keys: Keys) -> Values:
        material, klass, words = keys.material(cell.strip())
        return (material, klass, words) if self.with_class else (material, words)

    def show(self, values: Values, keys: Keys) -> str:
        """Words with what they were taken for: a name added later must not decide them anew."""
        named = zip(values[:-1], ("materials", "material_classes"), strict=False)
        meant = [keys.name_of(subject, record) for record, subject in named if record is not None]
        return " = ".join([*filter(None, values[-1:]), *meant])
