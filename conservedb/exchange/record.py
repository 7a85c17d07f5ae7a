"""A row on its way into the database."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

from conservedb.exchange.columns import Values
from conservedb.exchange.files import Row
from conservedb.exchange.subject import Subject


@dataclass(slots=True)
class Record:
    """A row on its way in: its values for the database, and what is wrong with it.

    `bad`: it has a fault of its own. `hangs`: it refers to a new row that is refused.
    `whole`: its blank cells are blank, for it comes from an export and the database has what
    the program brought, or it amends a record. `taken_over`: it makes a record that the program
    brought the department's own.
    """

    id: int
    row: Row
    key: Any
    new: bool
    values: list[Any] = field(default_factory=list)
    links: dict[str, list[Values]] = field(default_factory=dict)
    bad: bool = False
    hangs: bool = False
    changed: bool = False
    whole: bool = False
    taken_over: bool = False

    @property
    def refused(self) -> bool:
        """Whether it is wrong itself, or hangs on a row that is."""
        return self.bad or self.hangs


def chunks(items: list[int], size: int) -> Iterator[list[int]]:
    """The items, so many at a time."""
    for start in range(0, len(items), size):
        yield items[start : start + size]


def made_key(subject: Subject, cells: list[str], index: dict[str, int]) -> str:
    """A key made from the other cells of a row, the same whenever these are the same."""
    digest = hashlib.blake2s(digest_size=6)
    for header in subject.headers:
        position = index.get(header, -1)
        if position >= 0 and header not in subject.key and cells[position].strip():
            digest.update(f"{header}\x1f{cells[position]}\x1e".encode())
    return f"{subject.singular[0]}-{digest.hexdigest()}"
