"""A department with one object, for tests of writing."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from sqlalchemy import Engine

from conservedb.exchange.entering import Entry, enter
from conservedb.exchange.subjects import BY_NAME
from conservedb.store.log import Author
from tests.conftest import TODAY

ME = Author("A. Tester", "recorded")
OBJECT = "X.1"


def entries(**subjects: list[dict[str, str]]) -> list[Entry]:
    """Entries of the object by subject; its number is filled in."""
    return [
        Entry(
            name,
            {"object": OBJECT} | cells if BY_NAME[name].in_object else cells,
        )
        for name, rows in subjects.items()
        for cells in rows
    ]


@pytest.fixture
def engine(new_database: Callable[[str], Engine]) -> Engine:
    """An object of two blocks with a joint and a surface, and one step with two layers."""
    made = new_database("department.db")
    written = enter(
        made,
        lambda refs: entries(
            objects=[{"number": OBJECT, "title": "Basin", "made": "1741"}],
            people=[{"name": "Ida Holm"}, {"name": "A. Tester"}],
            components=[{"mark": "B1"}, {"mark": "B2"}],
            places=[
                {"mark": "J1", "kind": "joint", "component": "B1", "other_component": "B2"},
                {"mark": "S1", "kind": "surface", "component": "B1"},
            ],
            interventions=[{"ref": "I1", "kind": "join", "date": "1989", "people": "Ida Holm"}],
            layers=[
                {"ref": "L1", "place": "J1", "intervention": "I1", "role": "adhesive"},
                {"ref": "L2", "place": "S1", "intervention": "I1", "role": "coating"},
            ],
        ),
        ME,
        TODAY,
    )
    assert written.faults == ()
    return made
