"""A part that was retired or replaced is not in place any more, wherever it is asked for."""

from __future__ import annotations

from pathlib import Path

import pytest
from sqlalchemy import Engine

from conservedb.exchange.amending import amend
from conservedb.exchange.mending import replace, retire
from conservedb.questions.answers import ComponentRow, Fixing, PlaceAnswer
from conservedb.questions.history import history
from conservedb.questions.objects import object_on
from conservedb.questions.place import place
from conservedb.questions.removal import removal
from conservedb.store.connect import reading
from conservedb.store.log import Author
from tests.cli.conftest import Command, conservedb
from tests.conftest import TODAY
from tests.exchange.test_mending import put
from tests.questions.conftest import day
from tests.recording.conftest import OBJECT, engine

__all__ = ["conservedb", "engine"]
WHY = Author("A. Tester", "retired", "rusted through [b]")


@pytest.fixture
def cramped(engine: Engine) -> Engine:
    cramp = {"kind": "cramp", "bridges": "J1", "made": "1868"}
    put(engine, components=[{"mark": mark} | cramp for mark in ("K1", "K2")])
    return engine


def part(engine: Engine, on: str, mark: str = "K1") -> ComponentRow:
    with reading(engine) as connection:
        rows = object_on(connection, OBJECT, day(on)).components
    return next(row for row in rows if row.mark == mark)


def joint(engine: Engine, on: str) -> PlaceAnswer:
    with reading(engine) as connection:
        return place(connection, OBJECT, "J1", day(on))


def fixing(engine: Engine, on: str) -> Fixing:
    return next(one for one in joint(engine, on).fixings if one.component == "K1")


def test_from_its_day_on_a_part_is_retired(cramped: Engine) -> None:
    assert retire(cramped, OBJECT, "K1", "2026-05-03", WHY, TODAY).faults == ()
    for on, state in (
        ("1860", "not yet"),
        ("2026-05-02", "present"),
        ("2026-05-03", "retired"),
        ("today", "retired"),
    ):
        assert (part(cramped, on).state, fixing(cramped, on).state) == (state, state)
    assert part(cramped, "today", "K2").state == "present"
    retired = part(cramped, "today").retired
    assert retired is not None
    assert (retired.date.edtf, retired.why) == ("2026-05-03", WHY.reason)
    assert "two cramps" in joint(cramped, "2026-05-02").summary
    assert "one cramp" in joint(cramped, "today").summary


def test_within_an_unsure_date_it_is_not_established(cramped: Engine) -> None:
    retire(cramped, OBJECT, "K1", "1990/1999", WHY, TODAY)
    assert part(cramped, "1989").state == "present"
    during = part(cramped, "1995")
    assert (during.state, during.possible) == ("uncertain", ("present", "retired"))
    assert fixing(cramped, "1995").possible == ("present", "retired")
    assert part(cramped, "1999-12-31").state == "retired"
    assert part(cramped, "1860").possible == ("not yet",)


def test_an_unknown_day_lies_before_that_of_the_record(cramped: Engine) -> None:
    """What is recorded has happened; the log says when it was recorded."""
    retire(cramped, OBJECT, "K1", "unknown", WHY, TODAY)
    assert part(cramped, "1950").possible == ("present", "retired")
    assert part(cramped, "9999").state == "retired"


def test_an_approximate_date_is_said(cramped: Engine) -> None:
    retire(cramped, OBJECT, "K1", "c. 1950", WHY, TODAY)
    assert "approximate" in part(cramped, "today").qualified


def test_what_was_lost_after_it_was_retired_is_lost(cramped: Engine) -> None:
    retire(cramped, OBJECT, "K1", "1950", WHY, TODAY)
    amend(cramped, "components", OBJECT, "K1", {"lost": "1980"}, WHY, TODAY)
    assert [part(cramped, on).state for on in ("1949", "1960", "1981")] == [
        "present",
        "retired",
        "gone",
    ]


def test_the_history_tells_it(cramped: Engine) -> None:
    replace(cramped, OBJECT, "K1", "K1n", "2026-05-03", WHY, TODAY)
    for mark in ("", "K1"):
        with reading(cramped) as connection:
            rows = history(connection, OBJECT, mark).rows
        (row,) = (row for row in rows if row.kind == "retired")
        assert row.sentence == "Retired: rusted through [b]; replaced by K1n"
        assert (row.components, row.date.edtf) == (("K1",), "2026-05-03")
    with reading(cramped) as connection:
        assert "retired" not in {row.kind for row in history(connection, OBJECT, "K2").rows}


def test_the_commands_say_it(conservedb: Command, cramped: Engine, tmp_path: Path) -> None:
    replace(cramped, OBJECT, "K1", "K1n", "2026-05-03", WHY, TODAY)
    cramped.dispose()
    database = ("--db", str(tmp_path / "department.db"))
    told = "retired, taken out for good: 3 May 2026, replaced by K1n"
    lines = conservedb("object", OBJECT, *database).out
    assert any("K1, " in one and "retired" in one and "K1n" in one for one in lines.splitlines())
    assert told in lines, lines
    assert told in conservedb("place", OBJECT, "J1", *database).out
    assert "Retired: rusted through" in conservedb("history", OBJECT, "K1", *database).out
    rows = conservedb("object", OBJECT, "--json", *database).json["components"]
    found = {row["component"]: (row["state"], row["retired"]) for row in rows}
    assert found["K1"][0] == "retired" and found["K1"][1]["replaced_by"] == "K1n"
    assert found["K2"] == ("present", None)
    fixings = conservedb("place", OBJECT, "J1", "--json", *database).json["fixings"]
    assert [one["state"] for one in fixings] == ["retired", "present"]


def test_a_retired_fixing_holds_the_joint_no_longer(cramped: Engine) -> None:
    retire(cramped, OBJECT, "K1", "2026-05-03", WHY, TODAY)

    def holding(on: str) -> list[str]:
        with reading(cramped) as connection:
            found = removal(connection, OBJECT, "J1", "", day(on))
        return [one.what for one in found.plan.holds if one.what.startswith("cramp")]

    assert holding("2026-05-02") == ["cramp K1", "cramp K2"]
    assert holding("today") == ["cramp K2"]
