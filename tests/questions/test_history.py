"""Everything that happened, in order of time, told once."""

from __future__ import annotations

import pytest
from sqlalchemy import Connection

from conservedb.dates import is_known
from conservedb.questions.answers import HistoryRow, NoSuch
from conservedb.questions.history import history


def rows(connection: Connection, mark: str = "") -> list[HistoryRow]:
    return list(history(connection, "Q.1", mark).rows)


def refs(connection: Connection, mark: str = "") -> list[str]:
    return [f"{row.kind} {row.ref}" for row in rows(connection, mark)]


def one(connection: Connection, ref: str) -> HistoryRow:
    (found,) = [row for row in rows(connection) if row.ref == ref]
    return found


def test_the_whole_object_in_order_of_time(connection: Connection) -> None:
    found = rows(connection)
    placed = [
        row.date.earliest if is_known(row.date.earliest) else row.date.latest for row in found
    ]
    assert placed == sorted(placed)
    assert found[0].sentence == "Fountain made"
    assert [p.role for p in found[0].people] == ["maker"]
    assert [r.value for r in found[0].rivals] == ["B. Other"]


def test_an_open_date_stands_at_its_latest_day(connection: Connection) -> None:
    found = refs(connection)
    assert found.index("layer L8") > found.index("layer L5")  # ../1955 after c. 1950
    assert found.index("layer L8") < found.index("intervention i1980")


def test_an_intervention_tells_what_it_did(connection: Connection) -> None:
    joined = one(connection, "i1989")
    assert joined.sentence == "Joined: injected"
    assert joined.detail == (
        "applied: Epoxy adhesive, adhesive at J1, face (L3)",
        "removal attempted: Limestone, bedding at J1, face (L1)",
        "J1 closed",
    )
    assert joined.source is not None and joined.source.ref == "REP"
    assert [(r.subject, r.value) for r in joined.rivals] == [("layer", "shellac")]
    filled = one(connection, "i1934")
    assert (filled.treatment, filled.components, filled.places) == ("T1", ("B2",), ("J1",))
    assert "aim: remedial and restoration" in filled.detail
    assert [r.value for r in filled.rivals] == ["Nobody"]


def test_clearing_is_never_a_bare_no(connection: Connection) -> None:
    assert one(connection, "i1980").detail == (
        "used: Acetone, swab; clearing not recorded",
        "used: Epoxy adhesive, free; cleared",
    )


def test_what_no_intervention_did_has_its_own_entry(connection: Connection) -> None:
    assert one(connection, "r3").sentence == ("Gone: Epoxy adhesive, coating at S1 (L5); weathered")
    assert one(connection, "r1").sentence == (
        "Gone in part on side A: Portland cement, pointing at J1, edge (L2); cause not recorded"
    )
    assert one(connection, "e4").sentence == "J2 closed"
    assert one(connection, "L6").places == ("S1", "M1")
    assert "e5" not in [row.ref for row in rows(connection)]  # told with its intervention


def test_what_was_seen_on_one_occasion_is_one_entry(connection: Connection) -> None:
    seen = one(connection, "s1")
    assert seen.sentence == "Seen: 2 layers" and len(seen.detail) == 2
    assert one(connection, "s4").sentence == (
        "Could not be reached: Limestone, bedding at J1, face (L1)"
    )


def test_the_history_of_a_place(connection: Connection) -> None:
    assert refs(connection, "j2") == [
        "made J2",
        "layer L4",
        "joint e4",
        "intervention i2012",
        "sighting s5",
    ]
    crossing = refs(connection, "J1")
    assert "made K1" in crossing and "made B2" not in crossing  # fixings that cross it
    assert "made K1" not in refs(connection, "S1")


def test_the_history_of_a_part_takes_in_its_parts_places_and_joints(
    connection: Connection,
) -> None:
    found = refs(connection, "B2")
    for entry in ("made B2", "lost B2a", "joint e4", "intervention i1989", "layer L4"):
        assert entry in found
    assert "layer L5" not in found  # on B1 only
    assert refs(connection, "B2a") == ["lost B2a"]
    assert history(connection, "Q.1", "b2").name == "dolphin"


def test_nothing_of_that_mark(connection: Connection) -> None:
    with pytest.raises(NoSuch, match=r"no part or location of Q\.1 'Z9' on record"):
        history(connection, "Q.1", "Z9")
    assert history(connection, "Q.10", "").rows == ()
