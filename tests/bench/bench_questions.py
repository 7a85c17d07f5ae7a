"""Questions against the same statements in raw `sqlite3` with their rows fetched, in one run."""

from __future__ import annotations

import datetime
import os
import statistics
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import Connection

from conservedb.questions.answers import AsOf
from conservedb.questions.asking import Question
from conservedb.questions.asof import as_of
from conservedb.questions.objects import object_on
from conservedb.questions.place import place
from conservedb.questions.uses import uses
from conservedb.store.connect import connect_sqlite
from conservedb.store.opening import open_database
from tests.bench.collection import BIG_OBJECT
from tests.bench.conftest import Collection

TODAY = datetime.date(2026, 11, 2)
BROAD = "class1"
"""A class with a third of all classes below it."""
GROWTH = 1.5
Asked = list[tuple[str, Any]]
Ask = Callable[[Connection, AsOf], Any]


@contextmanager
def recorded() -> Iterator[Asked]:
    """Collects the SQL and parameters of every question asked meanwhile."""
    asked: Asked = []
    fetch = Question.fetch

    def spy(
        self: Question, connection: Connection, values: dict[str, Any], make: Callable[[Any], Any]
    ) -> list[Any]:
        sql, order, constants = self.compiled(connection)
        named = constants | values
        asked.append((sql, named if order is None else [named[name] for name in order]))
        return fetch(self, connection, values, make)

    Question.fetch = spy  # type: ignore[method-assign]
    try:
        yield asked
    finally:
        Question.fetch = fetch  # type: ignore[method-assign]


def seconds(work: Callable[[], Any]) -> float:
    started = time.perf_counter()
    work()
    return time.perf_counter() - started


def in_turn(works: tuple[Callable[[], Any], ...], rounds: int) -> list[float]:
    """The median seconds of each of several works, done in turn so that all see the same noise."""
    taken = [[seconds(work) for work in works] for _ in range(rounds + 1)][1:]
    return [statistics.median(times) for times in zip(*taken, strict=True)]


class Measured:
    """Some questions put to one collection: as answers, and as their raw statements."""

    def __init__(self, path: Path, asks: list[Ask]) -> None:
        self.engine, _ = open_database(path)
        self.asks, self.on = asks, as_of("1990", TODAY)
        self.raw = connect_sqlite(path)
        self.connection = self.engine.connect()
        with recorded() as self.asked:
            self.answers()
        self.rows = self.statements()

    def answers(self) -> None:
        for ask in self.asks:
            ask(self.connection, self.on)

    def statements(self) -> int:
        return sum(len(self.raw.execute(sql, given).fetchall()) for sql, given in self.asked)

    def close(self) -> None:
        self.connection.close()
        self.raw.close()
        self.engine.dispose()


def places(path: Path) -> list[Ask]:
    """Forty places of the first objects, which are the same in every collection."""
    raw = connect_sqlite(path)
    found = raw.execute(
        "SELECT o.number, p.mark FROM place p JOIN object o ON o.id = p.object_id"
        " WHERE o.id <= 20 AND p.mark IN ('P0', 'P6')"
    ).fetchall()
    raw.close()
    assert len(found) == 40
    return [lambda c, on, n=number, m=mark: place(c, n, m, on) for number, mark in found]  # type: ignore[misc]


def an_object(number: int) -> list[Ask]:
    return [lambda c, on: object_on(c, f"CB.{number}", on)]


USES: list[Ask] = [lambda c, on: uses(c, BROAD, on)]


ASKS: dict[str, Callable[[Path], list[Ask]]] = {
    "place": places,
    "object": lambda _: an_object(7),
    "big object": lambda _: an_object(BIG_OBJECT),
    "uses": lambda _: USES,
}


@pytest.mark.bench
@pytest.mark.parametrize(
    ("question", "budget", "rounds"), [("place", 4, 30), ("big object", 3, 15), ("uses", 1.5, 7)]
)
def test_answer_against_raw_statements(
    large: Collection, question: str, budget: float, rounds: int
) -> None:
    asked = Measured(large.path, ASKS[question](large.path))
    ours, floor = in_turn((asked.answers, asked.statements), rounds)
    asked.close()
    print(f"{question} at {large.layers} layers: {ours / floor:.2f} x its raw statements")
    assert ours / floor <= budget


@pytest.mark.bench
@pytest.mark.parametrize(("question", "rounds"), [("place", 30), ("object", 15), ("uses", 7)])
def test_growth(small: Collection, large: Collection, question: str, rounds: int) -> None:
    few, many = (Measured(one.path, ASKS[question](one.path)) for one in (small, large))
    seconds_few, seconds_many = in_turn((few.answers, many.answers), rounds)
    growth = (seconds_many / many.rows) / (seconds_few / few.rows)
    few.close()
    many.close()
    print(f"{question}: a row takes {growth:.2f} times as long at {large.layers} layers")
    assert growth <= GROWTH


@pytest.mark.bench
def test_cold_start(small: Collection, tmp_path: Path) -> None:
    compiled = os.environ | {"PYTHONPYCACHEPREFIX": str(tmp_path)}  # as an installed program is
    compiled.pop("PYTHONDONTWRITEBYTECODE", None)

    def started(*command: str) -> None:
        subprocess.run(
            [sys.executable, *command], check=True, stdout=subprocess.DEVNULL, env=compiled
        )

    place_cold, sqlalchemy, helped, nothing = in_turn(
        (
            lambda: started("-m", "conservedb", "place", "CB.1", "P0", "--db", str(small.path)),
            lambda: started("-c", "import sqlalchemy"),
            lambda: started("-m", "conservedb", "--help"),
            lambda: started("-c", "pass"),
        ),
        15,
    )
    print(f"conservedb place, cold: {place_cold / sqlalchemy:.2f} x importing sqlalchemy")
    print(f"conservedb --help: {helped / nothing:.1f} x an empty program")
    # opening reads the schema twice, and the triggers of the change log make it 12 ms longer
    assert place_cold / sqlalchemy <= 1.6
    assert helped / nothing <= 6
