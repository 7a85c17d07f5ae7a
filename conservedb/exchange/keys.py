"""Which record a cell means: the keys of the folder and of the database together."""

from __future__ import annotations

import difflib
import sqlite3
from collections import defaultdict
from typing import Any

from sqlalchemy import Connection, func, select

from conservedb.exchange.columns import Values
from conservedb.exchange.faults import CellProblem, Fault
from conservedb.exchange.subject import Subject
from conservedb.exchange.subjects import BY_NAME, SUBJECTS
from conservedb.records import materials, people
from conservedb.records.behaviour import trade_name
from conservedb.reference.words import AMBIGUOUS
from conservedb.store.keys import fold
from conservedb.store.shipping import as_shipped

_OR_BLANK = dict.fromkeys(
    ("people", "sources", "materials", "material_classes", "components", "places", "batches"),
    ", or leave the cell blank",
)
_REFERRED = {
    name
    for subject in SUBJECTS
    for name in (*(n for _, n in subject.pointers), *(c.subject for c in subject.lists))
}
"""Subjects whose records others refer to; the keys of the rest are read where they are needed."""
_NEAR = 5000
"""Above this many candidates no near miss is looked for."""


def key_field(subject: Subject) -> str:
    """The field that holds a record's key as it is compared."""
    name = subject.key[-1]
    return f"{name}_folded" if subject.folded else name


class KeyBook:
    """Ids by key, for the records of the database and those of the folder.

    `object_id` and `row` tell whose references are being read; `file` and `line` where.
    """

    def __init__(self, connection: Connection) -> None:
        self._connection = connection
        self.object_id = 0
        self.row: dict[str, str] = {}
        self.file, self.line = "", 0
        self.notices: list[Fault] = []
        self.ids: dict[str, dict[Any, int]] = {s.name: {} for s in SUBJECTS if not s.in_object}
        self.scoped: dict[str, dict[int, dict[str, int]]] = {
            s.name: defaultdict(dict) for s in SUBJECTS if s.in_object
        }
        self._labels: dict[str, dict[int, str]] = {s.name: {} for s in SUBJECTS}
        self._next: dict[str, int] = {}
        self._loaded: set[int] = set()
        self._aliases: dict[str, dict[str, set[int]]] = {
            name: defaultdict(set) for name in ("people", "materials", "material_classes")
        }
        self._as_shipped: dict[str, dict[int, str]] = {}
        self._given: set[tuple[str, int]] = set()
        self._parents: dict[int, int | None] = {}
        self._class_of: dict[int, int | None] = {}
        self._load_global()

    # -- filling ------------------------------------------------------------------------

    def _load_global(self) -> None:
        for subject in SUBJECTS:
            if not subject.in_object and subject.name in _REFERRED:
                table = subject.table
                rows = self._connection.execute(select(table.c.id, table.c[key_field(subject)]))
                self.ids[subject.name] = {key: record for record, key in rows}
        for name, table, alias in (
            ("people", people.person, people.person_alias),
            ("materials", materials.material, materials.material_alias),
            ("materials", materials.material, trade_name),
        ):
            owner = alias.c[f"{table.name}_id"]
            for record, word in self._connection.execute(select(table.c.id, table.c.name_folded)):
                self._call(name, record, word)
            for record, word in self._connection.execute(select(owner, alias.c.alias_folded)):
                self._call(name, record, word)
        classes = materials.material_class
        for record, word, parent in self._connection.execute(
            select(classes.c.id, classes.c.name_folded, classes.c.parent_id)
        ):
            self._call("material_classes", record, word)
            self._parents[record] = parent
        self._class_of = dict(
            self._connection.execute(
                select(materials.material.c.id, materials.material.c.class_id)
            ).all()
        )

    def load_keys(self, subject: Subject) -> None:
        """Make the keys that the database holds of a subject known that no other refers to."""
        if subject.in_object or subject.name in _REFERRED:
            return
        names = [column.fields[0] for column in subject.plain if column.name in subject.key]
        if subject.folded:
            names[-1] = key_field(subject)
        statement = select(subject.table.c.id, *(subject.table.c[name] for name in names))
        for record, *key in self._connection.execute(statement):
            self.ids[subject.name][tuple(key) if len(key) > 1 else key[0]] = record

    def load_object(self, object_id: int) -> None:
        """Make the records that the database holds for an object known, once."""
        if object_id in self._loaded:
            return
        self._loaded.add(object_id)
        for name, scoped in self.scoped.items():
            subject = BY_NAME[name]
            table = subject.table
            statement = select(table.c[key_field(subject)], table.c.id).where(
                table.c.object_id == object_id
            )
            scoped[object_id].update(dict(self._connection.execute(statement).all()))

    def call(self, subject: str, record: int, word: str) -> None:
        """Make known what the folder calls a person, material or class, as folded text."""
        self._given.add((subject, record))
        self._call(subject, record, word)

    def _call(self, subject: str, record: int, word: str | None) -> None:
        if word:
            self._aliases[subject][word].add(record)

    def classify(self, material: int, klass: int | None) -> None:
        """Make the class of a material known."""
        self._class_of[material] = klass

    def put_under(self, klass: int, parent: int | None) -> None:
        """Make the parent of a material class known."""
        self._parents[klass] = parent

    def new_id(self, subject: Subject) -> int:
        """The next id of a table; ids are never used twice."""
        table = subject.table.name
        if table not in self._next:
            used = self._connection.execute(select(func.max(subject.table.c.id))).scalar() or 0
            kept = self._connection.exec_driver_sql(
                "SELECT seq FROM sqlite_sequence WHERE name = ?", (table,)
            ).scalar()
            self._next[table] = max(used, kept or 0)
        self._next[table] += 1
        return self._next[table]

    def as_shipped(self, subject: str) -> dict[int, str]:
        """UUIDs, by id, of what the database has as the program brought it, never changed."""
        if subject not in self._as_shipped:
            raw = self._connection.connection.driver_connection
            assert isinstance(raw, sqlite3.Connection)
            self._as_shipped[subject] = as_shipped(raw, subject)
        return self._as_shipped[subject]

    def ids_of(self, subject: Subject, object_id: int) -> dict[Any, int]:
        """Ids by key: of the records of one object, or of all where no object has its own."""
        return self.scoped[subject.name][object_id] if subject.in_object else self.ids[subject.name]

    def label(self, subject: str, record: int, text: str) -> None:
        """Make known how a record of the folder is written in cells."""
        self._labels[subject][record] = text

    # -- asking (see columns.Keys) ------------------------------------------------------

    def find(self, subject: str, text: str) -> int:
        """The id of the record that a cell names; CellProblem where there is none."""
        if subject in self.scoped:
            key = fold(text) if BY_NAME[subject].folded else text
            found = self.scoped[subject][self.object_id].get(key)
        elif subject == "people":
            found = self._person(text)
        elif subject == "materials":
            found = self.known_material(text)
        else:
            found = self.ids[subject].get(fold(text) if BY_NAME[subject].folded else text)
        if found is None:
            raise self._missing(subject, text)
        return found

    def _person(self, text: str) -> int | None:
        folded = fold(text)
        exact = self.ids["people"].get(folded)
        if exact is not None:
            return exact
        bearers = self._aliases["people"].get(folded, set())
        if len(bearers) > 1:
            names = sorted(self.name_of("people", record) for record in bearers)
            raise CellProblem(
                f"is an alias of {len(bearers)} people: {', '.join(names)}",
                "write the full name of the one meant",
            )
        return next(iter(bearers), None)

    def _missing(self, subject: str, text: str) -> CellProblem:
        folded = fold(text)
        if subject == "materials" and (folded in AMBIGUOUS or self._bearers(subject, folded)):
            meanings = "; ".join(self._meanings(folded))
            return CellProblem(f"may mean several things: {meanings}", "write the key of one")
        known = (
            self.scoped[subject][self.object_id] if subject in self.scoped else self.ids[subject]
        )
        near: list[str] = []
        if len(known) <= _NEAR:
            written = {fold(str(key)): record for key, record in known.items()}
            close = difflib.get_close_matches(folded, written, 2, 0.75)
            near = [self.name_of(subject, written[key]) for key in close]
        singular = BY_NAME[subject].singular
        hint = f"did you mean {' or '.join(near)}? else " if near else ""
        several = (
            "where several are possible, name each, separated by semicolons; "
            if subject == "places"
            else ""
        )
        return CellProblem(
            f"names no {singular} in the folder or the database",
            f"{hint}{several}add it to {subject}.csv{_OR_BLANK.get(subject, '')}",
        )

    def known_material(self, text: str) -> int | None:
        """The id of the one material of that key, or of a name or alias that only it bears."""
        exact = self.ids["materials"].get(text)
        if exact is not None:
            return exact
        folded = fold(text)
        bearers = self._bearers("materials", folded)
        return next(iter(bearers)) if len(bearers) == 1 and folded not in AMBIGUOUS else None

    def _bearers(self, subject: str, folded: str) -> set[int]:
        """Who bears a name: the department's own, else what the program has brought."""
        bearers = self._aliases[subject].get(folded, set())
        if len(bearers) > 1:
            brought = {
                record
                for record in bearers & self.as_shipped(subject).keys()
                if (subject, record) not in self._given
            }
            bearers = (bearers - brought) or bearers
        return bearers

    def material(self, text: str) -> Values:
        """(material, class, words): an ambiguous word is kept at class level, never resolved."""
        exact = self.ids["materials"].get(text)
        if exact is not None:
            return exact, None, None
        decided = self._decided(text)
        if decided is not None:
            return decided
        folded = fold(text)
        bearers = self._bearers("materials", folded)
        if folded not in AMBIGUOUS and len(bearers) == 1:
            return next(iter(bearers)), None, text
        classes = {self.ids["material_classes"].get(text)} - {None}
        classes |= self._bearers("material_classes", folded)
        if folded in AMBIGUOUS or len(bearers) > 1:
            self._offer(text, folded)
            klass = next(iter(classes)) if len(classes) == 1 else self._common(bearers)
            return None, klass, text
        if len(classes) == 1:
            return None, next(iter(classes)), text
        raise self._missing("materials", text)

    def _decided(self, text: str) -> Values | None:
        """Words as found and the material or class they were taken for: "words = KEY"."""
        for place, character in enumerate(text):
            if character == "=":
                key = text[place + 1 :].strip()
                material = self.ids["materials"].get(key)
                klass = None if material is not None else self.ids["material_classes"].get(key)
                if material is not None or klass is not None:
                    return material, klass, text[:place].strip() or None
        return None

    def _offer(self, text: str, folded: str) -> None:
        meanings = "; ".join(self._meanings(folded))
        self.notice(
            "material",
            text,
            "may mean several things and was kept as found",
            f"once somebody has decided, write: {text} = KEY (possible: {meanings})",
        )

    def _meanings(self, folded: str) -> list[str]:
        bearers = self._bearers("materials", folded)
        keys = sorted(self.name_of("materials", record) for record in bearers)
        return [*AMBIGUOUS.get(folded, ()), *keys]

    def _common(self, bearers: set[int]) -> int | None:
        """The lowest class that all these materials share."""
        paths = [self._path(self._class_of.get(record)) for record in bearers]
        if not paths:
            return None
        shared = set(paths[0]).intersection(*paths[1:])
        return next((klass for klass in paths[0] if klass in shared), None)

    def _path(self, klass: int | None) -> list[int]:
        path: list[int] = []
        while klass is not None and klass not in path:
            path.append(klass)
            klass = self._parents.get(klass)
        return path

    def name_of(self, subject: str, record: int) -> str:
        """How a record is written in cells."""
        labels = self._labels[subject]
        if record not in labels:
            table = BY_NAME[subject].table
            text = table.c[BY_NAME[subject].key[-1]]
            labels[record] = self._connection.execute(
                select(text).where(table.c.id == record)
            ).scalar_one()
        return labels[record]

    def object_of(self, subject: str, record: int) -> int:
        """The id of the object that a record belongs to."""
        table = BY_NAME[subject].table
        statement = select(table.c.object_id).where(table.c.id == record)
        return int(self._connection.execute(statement).scalar_one())

    def notice(self, column: str, value: str, reason: str, remedy: str) -> None:
        """Note something that is no fault."""
        self.notices.append(Fault(self.file, self.line, column, value, reason, remedy))
