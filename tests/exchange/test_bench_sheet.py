"""A bench sheet: printed, filled in, typed back in its order, and typed back again."""

from __future__ import annotations

import csv
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import Engine

from conservedb.cli.sheet import sheet_lines
from conservedb.exchange.amending import amend, shown
from conservedb.exchange.bench_sheet import SHEET, Sheet, bench_sheet, write_sheet
from conservedb.exchange.sheet_typing import Typed, type_sheet
from conservedb.exchange.undoing import take_back
from conservedb.questions.answers import NoSuch
from conservedb.store.connect import raw_of, reading
from conservedb.store.log import Author, head
from tests.cli.conftest import Command, conservedb
from tests.conftest import TODAY
from tests.exchange.test_mending import put
from tests.nasty import NASTY
from tests.recording.conftest import OBJECT, engine
from tests.recording.test_undoing import sound, state

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them

__all__ = ["conservedb", "engine"]
TYPING = Author("A. Tester", "recorded", "typed from sheet")


@pytest.fixture
def planned(engine: Engine) -> Engine:
    put(
        engine,
        materials=[{"key": "plum-resin"}, {"key": "fig-milk"}],
        material_parts=[{"material": "plum-resin", "part": "fig-milk", "amount": "5"}],
        treatments=[{"ref": "T1", "title": "Care"}],
        plans=[{"ref": "P1", "treatment": "T1", "version": "1"}],
        planned_steps=[
            {
                "ref": "PS2",
                "plan": "P1",
                "position": "2",
                "kind": "consolidate",
                "material": "plum-resin",
                "concentration": "10 %",
                "carrier": "acetone",
                "places": "J1; S1",
            },
            {
                "ref": "PS1",
                "plan": "P1",
                "position": "1",
                "kind": "clean",
                "technique": "swab",
                "material": "acetone",
                "components": "B1",
                "note": "x[1] \x1b[2J",
            },
        ],
        warnings=[{"ref": "W1", "kind": "lead", "text": "Lead in joints"}],
    )
    return engine


def printed(engine: Engine, plan: str = "P1", *places: str) -> Sheet:
    with reading(engine) as connection:
        return bench_sheet(connection, OBJECT, plan, places, TODAY)


def filled(engine: Engine, path: Path, plan: str, *rows: dict[str, str]) -> Path:
    """The sheet as a CSV file, its rows filled in in their order."""
    write_sheet(printed(engine, plan), path)
    with path.open(encoding="utf-8", newline="") as file:
        read = list(csv.DictReader(file))
    for cells, more in zip(read, rows, strict=False):
        cells |= more
    with path.open("w", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, SHEET.headers)
        writer.writeheader()
        writer.writerows(read)
    return path


def typed(engine: Engine, path: Path, plan: str = "") -> Typed:
    return type_sheet(engine, OBJECT, plan, path, TYPING, TODAY)


def cells(engine: Engine, subject: str, key: str) -> dict[str, str]:
    with reading(engine) as connection:
        return dict(shown(connection, subject, OBJECT, key).cells)


YES = {"date": "2026-11-01", "who": "Ida Holm", "done": "yes"}


def test_the_rows_are_the_steps_in_order(planned: Engine) -> None:
    rows = printed(planned).rows
    assert [(r.row, r.step, r.component, r.place) for r in rows] == [
        (1, "PS1", "B1", ""),
        (2, "PS2", "", "J1"),
        (3, "PS2", "", "S1"),
    ]
    assert rows[1].there == "material not recorded, adhesive (L1): in place (on record)"
    assert rows[1].planned_recipe == "10 % in acetone; 5 fig-milk"
    assert len({row.key for row in rows}) == 3


def test_without_a_plan_it_lists_places(planned: Engine) -> None:
    assert [row.place for row in printed(planned, "").rows] == ["J1", "S1"]
    assert [row.place for row in printed(planned, "", "s1").rows] == ["S1"]
    for plan, places in (("P9", ()), ("", ("J9",))):
        with pytest.raises(NoSuch):
            printed(planned, plan, *places)


def test_what_is_printed(planned: Engine) -> None:
    lines = list(sheet_lines(printed(planned)))
    assert max(map(len, lines)) <= 80
    text = "\n".join(lines)
    with reading(planned) as connection:
        end = head(raw_of(connection))
    assert end is not None
    assert f"change set {end.number}\n  {end.hash}\n" in text
    for words in (
        "warning: lead: Lead in joints",
        "1. X.1: B1 (step PS1)",
        "material: plum-resin",
        "Not a safety data sheet",
        "local codes and licensed practice decide",
        "done: yes [ ] no [ ] otherwise [ ]",
    ):
        assert words in " ".join(text.split())
    assert "\x1b" not in text
    assert text.count("date ____") == 3


def test_a_filled_sheet_is_recorded_in_its_order_once(planned: Engine, tmp_path: Path) -> None:
    before = state(planned)
    path = filled(
        planned,
        tmp_path / "sheet.csv",
        "P1",
        YES | {"note": "came off grey"},
        YES | {"done": " Otherwise", "concentration": "5 %", "note": "too thick at 10 %"},
    )
    done = typed(planned, path, "P1")
    assert done.faults == []
    assert [row for row, _ in done.recorded] == ["1", "2"] and done.blank == 1
    cleaned, laid = (cells(planned, "interventions", ref) for _, ref in done.recorded)
    assert (cleaned["kind"], cleaned["planned_step"], cleaned["treatment"]) == (
        "clean",
        "PS1",
        "T1",
    )
    assert (cleaned["people"], cleaned["recorded_by"]) == ("Ida Holm", "A. Tester")
    assert cleaned["deviation"] == "" and laid["deviation"] == "too thick at 10 %"
    layer = cells(planned, "layers", "L3")
    assert (layer["place"], layer["material"], layer["concentration"], layer["carrier"]) == (
        "J1",
        "plum-resin",
        "5 %",
        "acetone",
    )
    assert cells(planned, "agents", "G1")["material"] == "acetone"
    after = state(planned)
    again = typed(planned, path)
    assert (again.recorded, again.before, again.set_number) == ([], done.recorded, None)
    assert state(planned) == after
    take_back(planned, "A. Tester")
    assert state(planned) == before and sound(planned)
    anew = typed(planned, path).recorded  # as it was taken back; no ref is given twice
    assert [row for row, _ in anew] == ["1", "2"]
    assert not {ref for _, ref in anew} & {ref for _, ref in done.recorded}


def test_two_rows_at_one_place_build_up_outward(engine: Engine, tmp_path: Path) -> None:
    put(
        engine,
        materials=[{"key": "plum-resin"}],
        treatments=[{"ref": "T1"}],
        plans=[{"ref": "P1", "treatment": "T1", "version": "1"}],
        places=[{"mark": "S2", "kind": "surface", "component": "B1"}],
        planned_steps=[
            {"ref": f"PS{n}", "plan": "P1", "position": str(n), "kind": "coat", "places": "S2"}
            | {"material": "plum-resin"}
            for n in (1, 2)
        ],
    )
    path = filled(engine, tmp_path / "s.csv", "P1", YES, YES)
    assert typed(engine, path).faults == []
    assert [cells(engine, "layers", ref)["stack"] for ref in ("L3", "L4")] == ["0", "1"]


def test_what_was_not_done_keeps_its_reason(planned: Engine, tmp_path: Path) -> None:
    no = YES | {"done": "no"}
    path = filled(planned, tmp_path / "s.csv", "P1", no, no | {"note": "wet stone"})
    done = typed(planned, path)
    assert done.not_done == ["1", "2"]
    assert [row for row, _ in done.recorded] == ["2"]
    kept = cells(planned, "observations", done.recorded[0][1])
    assert (kept["note"], kept["place"]) == ("planned step PS2 not done: wet stone", "J1")
    assert typed(planned, path).before == done.recorded


@pytest.mark.parametrize(
    ("cells_of_row", "told"),
    [
        ({"who": "Ida Holm"}, "row 2: says under done: nothing; write yes, no or otherwise"),
        (YES | {"done": "nearly"}, "row 2: says under done: nearly is none"),
        (YES | {"who": " "}, "row 2: names nobody"),
        (YES | {"done": "otherwise"}, "row 2: was done otherwise and does not say how"),
        (YES | {"who": "Nobody Known"}, "row 2: people Nobody Known names no person"),
        (YES | {"material": "moonshine"}, "row 2: material moonshine names no material"),
        (YES | {"date": "5/6/1956"}, "row 2: date 5/6/1956"),
        (YES | {"batch": "none"}, "row 2: batch none names no batch"),
        (YES | {"key": "x"}, "row 2: has no key of a sheet (x)"),
        (YES | {"object": "Y"}, "row 2: is of object Y, not of X.1"),
        (YES | {"place": "J9"}, "row 2: place"),
        (YES | {"step": "PS9"}, "row 2: "),
    ],
)
def test_faults_are_named_by_row_and_nothing_is_written(
    planned: Engine, tmp_path: Path, cells_of_row: dict[str, str], told: str
) -> None:
    path = filled(planned, tmp_path / "s.csv", "P1", YES, cells_of_row, {"done": "yes"})
    before = state(planned)
    done = typed(planned, path)
    assert any(fault.startswith(told) for fault in done.faults), done.faults
    assert any(fault.startswith("row 3: names nobody") for fault in done.faults)
    assert state(planned) == before


def test_a_row_that_stands_twice_is_recorded_once(planned: Engine, tmp_path: Path) -> None:
    path = filled(planned, tmp_path / "s.csv", "P1", YES)
    lines = path.read_text(encoding="utf-8").splitlines(keepends=True)
    path.write_text("".join([*lines[:2], lines[1]]), encoding="utf-8")
    done = typed(planned, path)
    assert len(done.recorded) == 1 and done.before == done.recorded


def test_two_printings_are_two_sheets(planned: Engine, tmp_path: Path) -> None:
    """Nothing is written between them; the work of the second is not that of the first."""
    first = filled(planned, tmp_path / "a.csv", "P1", YES)
    second = filled(planned, tmp_path / "b.csv", "P1", YES | {"date": "2026-11-02"})
    one, other = typed(planned, first), typed(planned, second)
    assert (len(one.recorded), len(other.recorded), other.before) == (1, 1, [])
    assert one.recorded != other.recorded


OTHERWISE = YES | {"done": "otherwise", "note": "resin had set in the jar"}


def test_another_material_does_not_take_over_the_plan(planned: Engine, tmp_path: Path) -> None:
    rows = (OTHERWISE | {"material": "ethanol"}, OTHERWISE | {"material": "fig-milk"})
    done = typed(planned, filled(planned, tmp_path / "s.csv", "P1", *rows))
    assert done.faults == []
    cleaned, laid = (cells(planned, "interventions", ref) for _, ref in done.recorded)
    assert cleaned["technique"] == "" and laid["deviation"] == "resin had set in the jar"
    layer = cells(planned, "layers", "L3")
    said = ("fig-milk", "", "")
    assert (layer["material"], layer["concentration"], layer["carrier"]) == said


def test_another_material_is_not_as_planned(planned: Engine, tmp_path: Path) -> None:
    before = state(planned)
    rows = (YES, YES | {"material": "fig-milk", "note": "the other jar"})
    done = typed(planned, filled(planned, tmp_path / "s.csv", "P1", *rows))
    assert done.faults == [
        "row 2: says it was done as planned, with fig-milk, where the plan names plum-resin;"
        " write otherwise under done, and what was otherwise under note"
    ]
    assert state(planned) == before


def test_the_planned_material_by_another_name_is_as_planned(
    planned: Engine, tmp_path: Path
) -> None:
    named = amend(planned, "material", "", "plum-resin", {"aliases": "Plum gum"}, TYPING, TODAY)
    assert named.faults == ()
    rows = (YES, YES | {"material": "plum gum"})
    assert typed(planned, filled(planned, tmp_path / "s.csv", "P1", *rows)).faults == []
    assert cells(planned, "layers", "L3")["concentration"] == "10 %"


@pytest.mark.parametrize(
    ("change", "told"),
    [
        ({"material": "fig-milk"}, "planned_material was plum-resin and is fig-milk"),
        (
            {"concentration": "3 %"},
            "planned_recipe was 10 % in acetone; 5 fig-milk and is 3 % in acetone; 5 fig-milk",
        ),
    ],
)
def test_a_plan_changed_since_the_printing(
    planned: Engine, tmp_path: Path, change: dict[str, str], told: str
) -> None:
    as_planned = filled(planned, tmp_path / "a.csv", "P1", {}, YES)
    open_ = filled(planned, tmp_path / "b.csv", "P1", {}, OTHERWISE)
    used = filled(planned, tmp_path / "c.csv", "P1", {}, OTHERWISE | {"material": "plum-resin"})
    not_done = filled(planned, tmp_path / "d.csv", "P1", {}, YES | {"done": "no", "note": "wet"})
    amend(planned, "planned_steps", OBJECT, "PS2", change, TYPING, TODAY)
    before = state(planned)
    for path in (as_planned, open_):
        (fault,) = typed(planned, path).faults
        assert fault.startswith("row 2: the plan was changed since this sheet was printed: ")
        assert told in fault
        assert fault.endswith(
            "; print it again, or write done otherwise with what was used under material"
        )
    assert state(planned) == before
    assert typed(planned, used).faults == []
    layer = cells(planned, "layers", "L3")
    assert (layer["material"], layer["concentration"]) == ("plum-resin", "")
    assert typed(planned, not_done).faults == []  # nothing of the plan is taken over


def test_without_a_plan_the_kind_is_written(planned: Engine, tmp_path: Path) -> None:
    row = YES | {"material": "plum-resin"}
    path = filled(planned, tmp_path / "s.csv", "", row)
    assert "no kind of step" in typed(planned, path).faults[0]
    path.unlink()
    path = filled(planned, path, "", row | {"kind": "Coat"})
    assert typed(planned, path).faults == []
    assert cells(planned, "layers", "L3")["role"] == "coating"


@pytest.mark.parametrize("text", NASTY)
def test_nasty_notes_come_back_as_they_are(planned: Engine, tmp_path: Path, text: str) -> None:
    path = filled(planned, tmp_path / "s.csv", "P1", YES | {"note": text, "done": "otherwise"})
    done = typed(planned, path)
    assert done.faults == []
    found = cells(planned, "interventions", done.recorded[0][1])
    assert (found["note"], found["deviation"]) == (text, text)


@pytest.mark.parametrize(
    ("content", "told"),
    [
        (b"", "is empty"),
        (b"row;key\n1;2\n", "separated by semicolons"),
        (b"a,b\n1,2\n", "is no column of this file"),
        (b"row,key,object,done\n1,2\n", "has 2 cells where the first line names 4"),
        (b"row,key,object,note\n1,2,3,\xff\n", "is not UTF-8 text"),
        (b"row,key,object,note\n1,2,3,a\0b\n", "NUL"),
    ],
)
def test_files_that_are_no_sheet(
    planned: Engine, tmp_path: Path, content: bytes, told: str
) -> None:
    path = tmp_path / "bad.csv"
    path.write_bytes(content)
    faults = typed(planned, path).faults
    assert any(told in fault and fault.startswith("bad.csv") for fault in faults), faults


@pytest.fixture
def ask(conservedb: Command, planned: Engine, tmp_path: Path) -> Callable[..., Any]:
    planned.dispose()
    return lambda *arguments: conservedb(*arguments, "--db", str(tmp_path / "department.db"))


def test_the_command(ask: Command, tmp_path: Path) -> None:
    path = str(tmp_path / "out.csv")
    assert "Bench sheet: X.1 Basin" in ask("sheet", OBJECT, "P1").lines
    assert ask("sheet", OBJECT, "P1", "--csv", path).out == f"written: {path}, 3 rows\n"
    again = ask("sheet", OBJECT, "P1", "--csv", path)
    assert again.status == 3 and "File exists" in again.err  # it may be filled in by now
    told = ask("sheet", OBJECT, "--typed", path, "--json").json
    assert told == {
        "recorded": [],
        "before": [],
        "not_done": [],
        "notices": [],
        "blank": 3,
        "change_set": None,
    }
    sheet = ask("sheet", OBJECT, "--place", "S1", "--json").json
    assert [row["place"] for row in sheet["rows"]] == ["S1"] and len(sheet["head"]["hash"]) == 64
    assert ask("sheet", OBJECT, "P1", "--place", "S1").status == 2
    assert ask("sheet", OBJECT, "--typed", str(tmp_path / "none.csv")).status == 3


def test_an_unauthorised_row_is_refused_unless_it_says_why(planned: Engine, tmp_path: Path) -> None:
    needed = {"kind": "clean", "capacity": "curator"}
    put(planned, needed_authorisations=[needed], people=[{"name": "Rosa Thorn"}])
    path = filled(planned, tmp_path / "s.csv", "P1", YES)
    kinds = [row.kind for row in printed(planned).rows]
    assert kinds[0] == "clean"
    refused = typed(planned, path)
    assert refused.recorded == []
    (fault,) = refused.faults
    assert fault.startswith("row 1: ")
    assert "urator" in fault
    why = {"unauthorised_reason": "grains were falling", "unauthorised_by": "Rosa Thorn"}
    path = filled(planned, tmp_path / "t.csv", "P1", YES | why)
    ((row, ref),) = typed(planned, path).recorded
    assert row == "1"
    assert cells(planned, "intervention", ref)["unauthorised_by"] == "Rosa Thorn"
