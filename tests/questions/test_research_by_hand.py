"""Every condition, and random questions made of them, answered as by hand (`research_by_hand`).

On the demonstration, on three random collections full of nasty text, and on one of the shape
that the measurements use.
"""

from __future__ import annotations

import os
import random
from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import replace
from functools import partial
from typing import Any, NamedTuple

import pytest
from sqlalchemy import Connection

from conservedb.demo.build import tables_folder
from conservedb.exchange.exporting import export_folder
from conservedb.exchange.importing import import_folder
from conservedb.knowledge.research import (
    ROWS,
    STATES,
    And,
    Condition,
    Has,
    Not,
    Or,
    Research,
    Tree,
    conditions,
)
from conservedb.knowledge.research_words import say
from conservedb.knowledge.rule_case import Finding
from conservedb.knowledge.rules import OF_OBJECTS
from conservedb.knowledge.verdicts import WORST_FIRST
from conservedb.questions.answers import NoSuch
from conservedb.questions.asof import as_of
from conservedb.questions.behaviour import Materials
from conservedb.questions.checks import check
from conservedb.questions.research import counts, rows
from conservedb.questions.research_answers import Counts, ResearchRow
from conservedb.questions.research_compared import compare
from conservedb.records.layers import IDENTIFIED
from conservedb.records.rules import ROOM_USES
from conservedb.records.treatments import AIMS, INTERVENTION_KINDS
from conservedb.store.connect import reading
from conservedb.store.create import create
from conservedb.store.keys import fold
from conservedb.store.opening import open_database, today
from tests.bench.collection import make_collection
from tests.conftest import TODAY
from tests.exchange.random_tables import RandomTables
from tests.questions.exported import Tables
from tests.questions.research_by_hand import ByHand, Occurrence, occurrences


class Collection(NamedTuple):
    """A database, and the same answered by hand."""

    connection: Connection
    by_hand: ByHand
    day: int


LONG = [pytest.param(name, marks=pytest.mark.campaign) for name in ("random 2", "random 3")]


@pytest.fixture(scope="module", params=("demo", "random 1", "measured", *LONG))
def collection(
    request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[Collection]:
    folder = tmp_path_factory.mktemp(request.param.replace(" ", ""))
    tables = folder / "tables"
    if request.param == "demo":
        tables = tables_folder()
    elif request.param == "measured":
        make_collection(tables, 300)
    else:
        RandomTables(int(request.param[-1])).write(tables)
    path = folder / "collection.db"
    create(path, today=TODAY.isoformat())
    engine, _ = open_database(path)
    report = import_folder(engine, tables, today=TODAY, who="A. Tester")
    assert report.written, [fault.sentence() for fault in report.faults]
    with reading(engine) as connection:
        export_folder(connection, folder / "exported")
        known = Tables(folder / "exported", Materials(connection))
        day = today(connection).toordinal()
        by_hand = ByHand(known, day)
        checked = Checked(connection, known)
        by_hand.broken = {key: partial(checked.broken, key) for key in OF_OBJECTS}
        by_hand.broken_rows = {key: partial(checked.broken_rows, key) for key in OF_OBJECTS}
        yield Collection(connection, by_hand, day)
    engine.dispose()


class Checked:
    """What `conservedb check` finds of each object."""

    def __init__(self, connection: Connection, tables: Tables) -> None:
        self._connection, self._tables = connection, tables
        self._found: dict[str, list[Finding]] = {}

    def findings(self, key: str, owner: int) -> Iterator[tuple[Finding, int]]:
        """Of a rule and an object, each with 2 if it is sure and 1 if not."""
        number = self._tables.get("object", owner)["number"]
        if number not in self._found:
            answer = check(self._connection, number, as_of(None, TODAY))
            judged = (*answer.findings, *(one.judgement for one in answer.accepted))
            self._found[number] = [each.finding for each in judged]
        for finding in self._found[number]:
            if finding.rule == key:
                yield finding, 2 if finding.outcome == "broken" and finding.certain else 1

    def broken(self, key: str, one: Occurrence, place: int | None) -> int:
        """By one occurrence, at a place or by itself."""
        best = 0
        for finding, how in self.findings(key, one.row["object_id"]):
            if finding.layers:
                meant = place is None and one.what == "layer" and one.row["ref"] in finding.layers
            elif finding.interventions:
                ref = one.deed.get("ref")
                meant = place is None and one.what != "layer" and ref in finding.interventions
            elif finding.places or finding.components:
                meant = place is not None and self._names(finding, place)
            else:
                meant = place is None
            best = max(best, how if meant else 0)
        return best

    def broken_rows(self, key: str, owner: int, place: int | None) -> int:
        """By anything of an object, or at one of its places."""
        best = 0
        for finding, how in self.findings(key, owner):
            if place is None or not (finding.places or finding.layers or finding.components):
                meant = how
            elif finding.places or not finding.layers:
                meant = how if self._names(finding, place) else 0
            else:
                meant = max(self._lies(ref, owner, place, how) for ref in finding.layers)
            best = max(best, meant)
        return best

    def _names(self, finding: Finding, place: int) -> bool:
        if finding.places:
            return self._tables.get("place", place)["mark"] in finding.places
        sides = {self._tables.get("component", s)["mark"] for s in _sides(self._tables, place)}
        return bool(sides & set(finding.components))

    def _lies(self, ref: str, owner: int, place: int, how: int) -> int:
        (row,) = self._tables.of("layer", ref=ref, object_id=owner)
        if row["place_id"] is not None:
            return how if row["place_id"] == place else 0
        candidates = self._tables.of("layer_candidate", layer_id=row["id"])
        return 1 if place in [one["place_id"] for one in candidates] else 0


def _sides(tables: Tables, place: int | None) -> set[int]:
    row = tables.get("place", place)
    sides = (row.get("component_id"), row.get("other_component_id"))
    return {side for side in sides if side is not None}


# -- questions at random ------------------------------------------------------------------


class Asking:
    """Makes conditions of words that are on record, and of some that are not."""

    def __init__(self, tables: Tables, seed: int, fields: Sequence[str] = ()) -> None:
        self.chance = random.Random(seed)
        self._fields = fields or FIELDS
        self._tables = tables
        self._called = sorted(
            row["called"]
            for table in ("layer", "agent")
            for row in tables.rows[table]
            if row["material_id"] is row["material_class_id"] is None
            and (row["called"] or "").strip()
            and not _bears(tables, row["called"])
        )

    def condition(self, field: str) -> Condition:
        certainly = self.chance.random() < 0.2
        if field == "state":
            on = self.chance.choice(("", "ever", *self._days()))
            value = "there" if on == "ever" else self.chance.choice(STATES)
            return Condition(field, value, on, certainly)
        return Condition(field, self._value(field), certainly=certainly)

    def tree(self, depth: int = 3) -> Tree:
        shape = self.chance.random()
        if depth == 0 or shape < 0.4:
            return self.condition(self.chance.choice(self._fields))
        if shape < 0.55:
            return Not(self.tree(depth - 1))
        parts = tuple(self.tree(depth - 1) for _ in range(self.chance.randint(2, 3)))
        return And(parts) if shape < 0.8 else Or(parts)

    def of_rows(self, depth: int = 2) -> Tree:
        """What is asked of rows: several things that each has or has not."""
        shape = self.chance.random()
        if depth == 0 or shape < 0.5:
            if shape < 0.1:
                return self.tree(1)
            inner = self.tree(1)
            found = Has(inner.parts if isinstance(inner, And) else (inner,))
            return Not(found) if self.chance.random() < 0.4 else found
        if shape < 0.6:
            return Not(self.of_rows(depth - 1))
        parts = tuple(self.of_rows(depth - 1) for _ in range(self.chance.randint(2, 3)))
        return And(parts) if shape < 0.85 else Or(parts)

    def _days(self) -> tuple[str, ...]:
        year = self.chance.randint(1880, 2026)
        return (str(year), f"{year}-06-14", f"{year // 10}X", f"between {year - 5} and {year}")

    def _value(self, field: str) -> str:
        if field == "material" and self._called and self.chance.random() < 0.3:
            words = self.chance.choice(self._called)
            return str(self.chance.choice((words, self.chance.choice(words.split()))))
        if field in ("material", "part material"):
            return self._used(
                "component" if " " in field else self.chance.choice(("layer", "agent"))
            )
        if field == "date":
            year = self.chance.randint(1860, 2026)
            return self.chance.choice(
                (*self._days(), f"before {year}", f"after {year}", f"c. {year}")
            )
        if field in CLOSED:
            return self.chance.choice(CLOSED[field])
        if field == "person":
            return self._of("person", "name") or self._of("person_alias", "alias")
        table, column = ON_RECORD[field]
        return self._of(table, column)

    def _used(self, table: str) -> str:
        """The material, or a class, of a record that has one; else any."""
        used = [row for row in self._tables.rows[table] if row["material_id"] is not None]
        record = self.chance.choice(used)["material_id"] if used else 1
        row = self._tables.get("material", record)
        above = [
            self._tables.get("material_class", one) for one in self._tables.path(row["class_id"])
        ]
        return str(self.chance.choice([row, row, *above])["key"])

    def _of(self, table: str, column: str) -> str:
        written = [row[column] for row in self._tables.rows[table] if (row[column] or "").strip()]
        whole = self.chance.choice(written or ["nothing"])
        words = self.chance.choice((whole, self.chance.choice(whole.split())))
        exact = table in ("person", "layer")
        return str(whole if exact else words)


def _bears(tables: Tables, words: str) -> bool:
    """Whether a material or class is called by some of the words."""
    names = {fold(row[name] or "") for row, name in _names(tables)}
    return bool(names & {fold(words), *fold(words).split(), *map(fold, words.split())})


def _names(tables: Tables) -> Iterator[tuple[Any, str]]:
    for table, columns in (
        ("material", ("key", "name")),
        ("material_class", ("key", "name")),
        ("material_alias", ("alias",)),
        ("trade_name", ("alias",)),
    ):
        yield from ((row, name) for row in tables.rows[table] for name in columns)


CLOSED = {
    "as": ("layer", "agent"),
    "kind": INTERVENTION_KINDS,
    "aim": AIMS,
    "identified": IDENTIFIED,
    "environment": ROOM_USES,
    "reversibility": WORST_FIRST,
    "rule": OF_OBJECTS,
}
ON_RECORD = {
    "role": ("layer", "role"),
    "technique": ("intervention", "technique"),
    "object": ("object", "title"),
    "object kind": ("object", "kind"),
    "observed": ("observation", "condition"),
    "source": ("source", "kind"),
}
SLOW = ("rule", "reversibility")
FIELDS = (*CLOSED, *ON_RECORD, "material", "part material", "person", "date", "state")
PLAIN = tuple(field for field in FIELDS if field not in SLOW)
SCORES = {"certain": 3, "possible": 2, "unidentified": 1}
WORDS = {score: word for word, score in SCORES.items()}


def check_answer(collection: Collection, research: Research) -> None:
    """Hold the answer of the database against that by hand."""
    tables = collection.by_hand.tables
    try:
        counts(collection.connection, research, TODAY)
    except NoSuch as problem:
        check_refused(collection, research, problem.value)
        return
    expected = {
        _named(tables, research.rows, key): found
        for key, found in collection.by_hand.answer(research).items()
    }
    shown = list(rows(collection.connection, research, TODAY))
    found = {
        (row.object, row.place if research.rows == "places" else row.ref, row.what): (
            SCORES[row.sureness],
            row.layers,
        )
        for row in shown
    }
    assert len(found) == len(shown)
    assert found == expected, say(research)
    told = counts(collection.connection, research, TODAY)
    each = [score for score, _ in expected.values()]
    assert told == Counts(*map(each.count, SCORES.values())), say(research)


def check_refused(collection: Collection, research: Research, value: str) -> None:
    """What is refused holds certainly of nothing, as far as anybody can see by hand."""
    (asked, *_) = (one for one in conditions(research.where) if one.value == value)
    surely = Research("layers", replace(asked, certainly=True))
    assert not [one for one, _ in collection.by_hand.answer(surely).values() if one > 1], asked


def _named(tables: Tables, kind: str, key: Any) -> tuple[str, str, str]:
    """What a row is called: the number of its object, its mark or ref, what it is."""
    if kind == "objects":
        return tables.get("object", key)["number"], "", ""
    what, record = key if kind == "layers" else ("", key)
    row = tables.get(what or kind.removesuffix("s"), record)
    number = tables.get("object", row["object_id"])["number"]
    return number, row["mark" if kind == "places" else "ref"], what


@pytest.mark.parametrize("field", FIELDS)
def test_each_condition(collection: Collection, field: str) -> None:
    asking = Asking(collection.by_hand.tables, 7)
    for _ in range(1 if field in SLOW else 3):
        condition = asking.condition(field)
        first, second = asking.chance.sample(ROWS, 2)
        check_answer(collection, Research(first, condition))
        check_answer(collection, Research(second, Not(condition)))


def test_random_questions(collection: Collection) -> None:
    asking = Asking(collection.by_hand.tables, 5, PLAIN)
    for _ in range(6):
        check_answer(collection, Research(asking.chance.choice(ROWS), asking.tree()))


def test_what_rows_have_and_have_not(collection: Collection) -> None:
    asking = Asking(collection.by_hand.tables, 11, PLAIN)
    for _ in range(8):
        check_answer(collection, Research(asking.chance.choice(ROWS[1:]), asking.of_rows()))


def test_two_days_compared(collection: Collection) -> None:
    """What answers on one of two days only, or surer on one, against the answers of both by hand.

    A day is asked as if it were today.
    """
    tables = collection.by_hand.tables
    asking = Asking(tables, 11, PLAIN)
    for _ in range(4):
        rows = asking.chance.choice(ROWS)
        few = asking.chance.random() < 0.3 and rows != ROWS[0]
        research = Research(rows, asking.of_rows(1) if few else asking.tree(2))
        years = asking.chance.sample(range(1890, 2027), 2)
        found = compare(collection.connection, research, *(as_of(str(y), TODAY) for y in years))
        first, second = (
            {
                _named(tables, research.rows, key): WORDS[score]
                for key, (score, _) in ByHand(tables, day.last).answer(found.research).items()
            }
            for day in found.days
        )

        def shown(row: ResearchRow, rows: str = research.rows) -> tuple[str, str, str]:
            return row.object, row.place if rows == "places" else row.ref, row.what

        for only, here, there in (
            (found.only_first, first, second),
            (found.only_second, second, first),
        ):
            assert {shown(row): row.sureness for row in only} == {
                key: here[key] for key in here.keys() - there.keys()
            }
        for changed, surer in ((found.surer, True), (found.less_sure, False)):
            assert {shown(row): (before, row.sureness) for before, row in changed} == {
                key: (word, second[key])
                for key, word in first.items()
                if key in second
                and word != second[key]
                and surer == (SCORES[word] < SCORES[second[key]])
            }


@pytest.mark.campaign
@pytest.mark.parametrize("seed", range(int(os.environ.get("CONSERVEDB_QUESTIONS", "5"))))
def test_many_random_questions(collection: Collection, seed: int) -> None:
    asking = Asking(collection.by_hand.tables, seed)
    for _ in range(10):
        check_answer(collection, Research(asking.chance.choice(ROWS), asking.tree()))
        check_answer(collection, Research(asking.chance.choice(ROWS[1:]), asking.of_rows()))


def test_the_conditions_are_not_all_of_nothing(collection: Collection) -> None:
    asking = Asking(collection.by_hand.tables, 3)
    answered = 0
    for field in PLAIN:
        for _ in range(5):
            with suppress(NoSuch):
                asked = Research("layers", asking.condition(field))
                if counts(collection.connection, asked, TODAY).total:
                    answered += 1
                    break
    assert answered > len(PLAIN) * 2 // 3


@pytest.mark.campaign
@pytest.mark.parametrize("key", OF_OBJECTS)
def test_rules_are_broken_where_they_are_checked(collection: Collection, key: str) -> None:
    asked = Condition("rule", key)
    for kind in ROWS:
        check_answer(collection, Research(kind, asked))
    for kind in ("places", "objects"):
        check_answer(collection, Research(kind, Not(Has((asked,)))))
        check_answer(
            collection, Research(kind, And((Not(asked), Has((Condition("role", "fill"),)))))
        )


def test_what_has_no_place_may_be_anywhere_on_its_object(collection: Collection) -> None:
    """The agents and steps of the collection that nobody placed answer at no place for certain."""
    unplaced = {
        (one.what, one.row["id"]): one.row["object_id"]
        for one in occurrences(collection.by_hand.tables)
        if not one.places
    }
    found = collection.by_hand.answer(Research("places", And()))
    tables = collection.by_hand.tables
    for owner in {*unplaced.values()}:
        assert {place["id"] for place in tables.of("place", object_id=owner)} <= found.keys()
    check_answer(collection, Research("places", Has((Condition("as", "agent"),))))
    check_answer(collection, Research("places", Not(Has((Condition("as", "agent"),)))))
    assert unplaced
