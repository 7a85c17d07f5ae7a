"""Lists in a cell: names, references, people with roles, closed words, each kept as link rows."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from conservedb.exchange import cells
from conservedb.exchange.columns import Choice, Keys, Values
from conservedb.exchange.faults import CellProblem
from conservedb.store.keys import fold


@dataclass(frozen=True)
class ListColumn:
    """A list in a cell, kept as rows of a link table (`owner` points back at the record).

    Where `single` names a field of the record itself, a list of one item is kept there.
    `subject` is what the first field of an item points at, "" where it points at nothing.
    A list that is `required` is never empty; `most` limits its items, 0 does not.
    """

    name: str
    table: str
    owner: str
    fields: tuple[str, ...]
    parse_item: Callable[[str, Keys], Values]
    show_item: Callable[[Values, Keys], str]
    with_object: bool = False
    single: str = ""
    subject: str = ""
    required: bool = False
    most: int = 0

    @property
    def names(self) -> tuple[str, ...]:
        """The CSV header of the list."""
        return (self.name,)

    @property
    def pointers(self) -> tuple[tuple[str, str], ...]:
        """The field of the record itself that points at a single item, if there is one."""
        return ((self.single, self.subject),) if self.single else ()

    def parse(self, cell: str, keys: Keys) -> list[Values]:
        """One tuple of link fields per item; the same item twice counts once."""
        items = list(dict.fromkeys(self.parse_one(item, keys) for item in cells.split_list(cell)))
        if cell.strip() and not items:
            raise CellProblem("names nothing", "name at least one, or leave it blank")
        if self.most and len(items) > self.most:
            raise CellProblem(f"names {len(items)} of them", f"name no more than {self.most}")
        return items

    def problems(self, cell: str, keys: Keys) -> list[CellProblem]:
        """What is wrong with each of its items, so that none has to be found out after another."""
        found = []
        for item in cells.split_list(cell):
            try:
                self.parse_one(item, keys)
            except CellProblem as problem:
                found.append(problem)
        return found

    def parse_one(self, item: str, keys: Keys) -> Values:
        """One item; a fault names it and not the whole cell."""
        try:
            return self.parse_item(item, keys)
        except CellProblem as problem:
            reason, remedy = problem.reason, problem.remedy
            raise CellProblem(reason, remedy, self.name, cells.unescape(item)) from problem

    def show(self, rows: list[Values], keys: Keys) -> str:
        """The cell for these link rows, in their order."""
        return "; ".join(self.show_item(row, keys) for row in rows)


def refs(
    name: str, table: str, owner: str, field: str, subject: str, single: str = ""
) -> ListColumn:
    """A list of references to records of the same object."""

    def parse(item: str, keys: Keys) -> Values:
        return (keys.find(subject, cells.unescape(item)),)

    def show(row: Values, keys: Keys) -> str:
        return cells.escape(keys.name_of(subject, row[0]))

    return ListColumn(name, table, owner, (field,), parse, show, True, single, subject)


def people(table: str, owner: str) -> ListColumn:
    """A list of people with roles: "Name (role); Name"."""
    return remarked("people", table, owner, ("person_id", "role"), "people")


def remarked(
    name: str, table: str, owner: str, fields: tuple[str, str], subject: str, most: int = 0
) -> ListColumn:
    """A list of records shared by all objects, each with a remark: "Name (remark); Name"."""

    def parse(item: str, keys: Keys) -> Values:
        named, remark = cells.split_role(item)
        try:
            return (keys.find(subject, named), remark or None)
        except CellProblem:
            return (keys.find(subject, cells.unescape(item)), None)

    def show(row: Values, keys: Keys) -> str:
        return cells.join_role(keys.name_of(subject, row[0]), row[1] or "")

    return ListColumn(name, table, owner, fields, parse, show, subject=subject, most=most)


def aliases(table: str, owner: str, name: str = "aliases") -> ListColumn:
    """A list of other names."""

    def parse(item: str, keys: Keys) -> Values:
        name = cells.unescape(item)
        return (name, fold(name))

    def show(row: Values, keys: Keys) -> str:
        return cells.escape(row[0])

    return ListColumn(name, table, owner, ("alias", "alias_folded"), parse, show)


def words(name: str, table: str, owner: str, field: str, values: tuple[str, ...]) -> ListColumn:
    """A list of words from a closed list."""
    choice = Choice(name, field, values)
    return ListColumn(name, table, owner, (field,), choice.parse, lambda row, _: str(row[0]))
