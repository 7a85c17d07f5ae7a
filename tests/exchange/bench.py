"""A department with one fountain of thirteen blocks, for tests of what is done at the bench."""

from __future__ import annotations

import itertools
from collections.abc import Iterator, Mapping

import pytest
from sqlalchemy import Connection, Engine

from conservedb.exchange import authorised
from conservedb.exchange.entering import Entry, enter
from conservedb.exchange.reading_cells import cells_of, find_record
from conservedb.exchange.subjects import BY_NAME
from conservedb.knowledge.authority import Authority
from conservedb.questions.authority import Stands, how_step_stands
from conservedb.store.connect import raw_of, reading
from conservedb.store.log import Author
from tests.conftest import TODAY

ME = Author("A. Tester", "recorded")
OBJECT = "X.1"
TWELVE = tuple(f"J{number:02}" for number in range(1, 13))
SHARED = ("objects", "people", "materials", "sources", "batches", "climates")


def entries(**subjects: list[dict[str, str]]) -> list[Entry]:
    """Entries of the fountain by subject."""
    return [
        Entry(name, cells if name in SHARED else {"object": OBJECT} | cells)
        for name, rows in subjects.items()
        for cells in rows
    ]


def fill(engine: Engine) -> Engine:
    """Blocks B01 to B13 of limestone, the joints between them, a surface and a body of B01."""
    blocks = [f"B{number:02}" for number in range(1, 14)]
    joints = [
        {"mark": mark, "kind": "joint", "component": one, "other_component": other, "name": "bed"}
        for mark, one, other in zip(TWELVE, blocks, blocks[1:], strict=False)
    ]
    written = enter(
        engine,
        lambda _: entries(
            objects=[{"number": OBJECT, "title": "Basin", "made": "1741", "whereabouts": "Hall"}],
            climates=[{"key": "hall", "room": "Hall", "use": "display", "max_c": "32"}],
            people=[{"name": "Ida Holm"}],
            components=[{"mark": mark, "kind": "block", "material": "limestone"} for mark in blocks]
            + [{"mark": "K1", "kind": "pin", "material": "brass"}],
            places=[
                *joints,
                {"mark": "S1", "kind": "surface", "component": "B01", "name": "top of the lip"},
                {"mark": "M1", "kind": "body", "component": "B01"},
                {"mark": "M2", "kind": "body", "component": "B02"},
            ],
            interventions=[{"ref": "I1", "kind": "join", "date": "1950", "people": "Ida Holm"}],
            layers=[
                {"ref": "L1", "place": "J01", "intervention": "I1", "stack": "3", "role": "old"},
                {"ref": "L2", "place": "J02", "intervention": "I1", "role": "bedding"},
            ],
        ),
        ME,
        TODAY,
    )
    assert written.faults == ()
    return engine


def cells(connection: Connection, subject: str, key: str) -> Mapping[str, str]:
    """A record of the fountain as its row of a file."""
    known = BY_NAME[subject]
    number = OBJECT if known.in_object else ""
    return cells_of(connection, known, find_record(connection, known, number, key))


def count(engine: Engine, table: str) -> int:
    with reading(engine) as connection:
        found = raw_of(connection).execute(f"SELECT count(*) FROM {table}").fetchone()
    return int(found[0])


def authorise(patch: pytest.MonkeyPatch, answer: Authority | None = None) -> None:
    """Let every step be as authorised as the answer says, or let nothing be needed."""
    authorise_in_turn(patch, itertools.repeat(answer or Authority((), ())))


def authorise_in_turn(patch: pytest.MonkeyPatch, answers: Iterator[Authority]) -> None:
    """The same, with another answer each time that it is asked."""

    def stands(connection: Connection, owner: int, record: int) -> Stands:
        return how_step_stands(connection, owner, record)._replace(authority=next(answers))

    patch.setattr(authorised, "how_step_stands", stands)
