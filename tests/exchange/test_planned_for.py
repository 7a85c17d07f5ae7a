"""Which planned step a step carries out, and which treatments are open."""

from __future__ import annotations

import datetime
from collections.abc import Callable

from sqlalchemy import Engine

from conservedb.exchange.entering import Entry, enter
from conservedb.exchange.numbering import next_position, next_version
from conservedb.exchange.one_cell import fault_in
from conservedb.exchange.planned_for import open_treatments, planned_for
from conservedb.store.connect import reading
from conservedb.store.log import Author

TODAY = datetime.date(2026, 11, 2)
ROWS = (
    ("objects", {"number": "X.1"}),
    ("components", {"object": "X.1", "mark": "B1"}),
    ("components", {"object": "X.1", "mark": "B2"}),
    ("places", {"object": "X.1", "mark": "S1", "kind": "surface", "component": "B1"}),
    ("places", {"object": "X.1", "mark": "S2", "kind": "surface", "component": "B2"}),
    ("treatments", {"object": "X.1", "ref": "T1"}),
    ("treatments", {"object": "X.1", "ref": "T2", "ended": "2020"}),
    ("plans", {"object": "X.1", "ref": "P1", "treatment": "T1", "version": "1"}),
    ("plans", {"object": "X.1", "ref": "P2", "treatment": "T2", "version": "1"}),
    ("planned_steps", {"ref": "PS1", "plan": "P1", "kind": "clean", "places": "S1"}),
    ("planned_steps", {"ref": "PS2", "plan": "P1", "kind": "fill", "components": "B2"}),
    ("planned_steps", {"ref": "PS3", "plan": "P1", "kind": "coat"}),
    ("planned_steps", {"ref": "PS4", "plan": "P2", "kind": "join"}),
)


def test_planned_for(new_database: Callable[[str], Engine]) -> None:
    engine = new_database("d.db")
    positions = {"PS1": "1", "PS2": "2", "PS3": "3", "PS4": "1"}
    entries = [
        Entry(name, cells | ({"object": "X.1", "position": positions[cells["ref"]]}))
        if name == "planned_steps"
        else Entry(name, cells)
        for name, cells in ROWS
    ]
    written = enter(engine, lambda _: entries, Author("Ida Holm", "recorded", "past"), TODAY)
    assert written.faults == ()
    with reading(engine) as connection:

        def found(kind: str, *places: str) -> str:
            planned = planned_for(connection, "X.1", kind, places, ())
            return planned.ref if planned else ""

        assert found("clean", "S1") == "PS1"
        assert found("clean", "S1", "S2") == ""
        assert found("fill", "s2") == "PS2"  # B2 bears it
        assert found("fill", "S1") == ""
        assert found("coat", "S1", "S2") == "PS3"  # for the whole object
        assert found("join", "S1") == ""  # its treatment has ended
        assert open_treatments(connection, "X.1") == ("T1",)
        assert next_version(connection, "X.1", "T1") == "2"
        assert next_position(connection, "X.1", "P1") == "4"
        assert fault_in(connection, "places", "X.1", "component", "B2") is None
        fault = fault_in(connection, "places", "X.1", "component", "B9")
        assert fault is not None
        assert fault.value == "B9"
