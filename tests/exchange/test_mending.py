"""Merging, re-identifying, splitting, retiring, replacing: each is whole, and is taken back whole.

The cases are invented; what a merging must not lose is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from sqlalchemy import Engine

from conservedb.exchange.amending import shown
from conservedb.exchange.entering import Entry, enter
from conservedb.exchange.faults import Fault
from conservedb.exchange.mending import Analysis, reidentify, replace, retire, split
from conservedb.exchange.merging import Merged, merge
from conservedb.exchange.undoing import take_back
from conservedb.questions.answers import NoSuch
from conservedb.recording.bounds import check_bounds
from conservedb.store.connect import reading
from conservedb.store.log import Author
from tests.cli.conftest import Command, conservedb
from tests.conftest import TODAY
from tests.nasty import NASTY
from tests.recording.conftest import ME, OBJECT, engine, entries
from tests.recording.test_undoing import sound, state

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them

__all__ = ["conservedb", "engine"]
MERGING = Author("A. Tester", "merged", "same hand")
MENDING = Author("A. Tester", "mended", "seen under the lens")


def put(engine: Engine, **subjects: list[dict[str, str]]) -> None:
    shared = {"statements", "material_parts", "batches"}
    made = [
        Entry(one.subject, {k: v for k, v in one.cells.items() if k != "object"})
        if one.subject in shared and "table" not in one.cells
        else one
        for one in entries(**subjects)
    ]
    written = enter(engine, lambda _: made, ME, TODAY)
    assert written.faults == (), [fault.sentence() for fault in written.faults]


def cells(engine: Engine, subject: str, key: str, number: str = "") -> dict[str, str]:
    with reading(engine) as connection:
        return dict(shown(connection, subject, number, key).cells)


def taken_back_whole(engine: Engine, before: dict[str, list[str]]) -> None:
    take_back(engine, "A. Tester")
    assert state(engine) == before
    assert sound(engine)


def said(faults: tuple[Fault, ...]) -> str:
    return "; ".join(fault.sentence() for fault in faults)


def merged(engine: Engine, kind: str, keep: str, gone: str) -> Merged:
    return merge(engine, kind, keep, gone, MERGING, TODAY)


def test_two_people_are_one(engine: Engine) -> None:
    put(
        engine,
        people=[
            {"name": "I. Holm", "aliases": "I.H.; Ida H\\; olm", "role": "mason", "note": "left"},
            {"name": "Ida Holm (Oslo)", "organisation": "works"},
        ],
        interventions=[
            {"ref": "I2", "people": "I. Holm (mason); Ida Holm (mason)", "kind": "clean"},
            {"ref": "I3", "people": "I. Holm (mason); Ida Holm (clerk)", "recorded_by": "I.H."},
        ],
    )
    before = state(engine)
    done = merged(engine, "person", "ida holm", "I. Holm")
    assert (done.kept, done.gone, done.faults) == ("person Ida Holm", "person I. Holm", ())
    now = cells(engine, "people", "Ida Holm")
    assert now["aliases"] == "I. Holm; I.H.; Ida H\\; olm"
    assert now["role"] == "mason"  # Ida Holm had none
    assert now["note"] == ("2026-11-02 merged with I. Holm by A. Tester (same hand); note: left")
    assert cells(engine, "interventions", "I2", OBJECT)["people"] == "Ida Holm (mason)"
    assert cells(engine, "interventions", "I3", OBJECT)["people"] == (
        "Ida Holm (mason); Ida Holm (clerk)"
    )
    assert cells(engine, "interventions", "I3", OBJECT)["recorded_by"] == "Ida Holm"
    with pytest.raises(NoSuch):
        cells(engine, "people", "I. Holm")
    taken_back_whole(engine, before)
    take_back(engine, "A. Tester", undone=True)
    assert cells(engine, "people", "Ida Holm")["role"] == "mason"


def test_what_differs_stands_in_the_note(engine: Engine) -> None:
    put(engine, people=[{"name": "I. Holm", "role": "mason"}, {"name": "Kay", "role": "clerk"}])
    done = merged(engine, "people", "Kay", "I. Holm")
    assert done.noted == ("role was mason",)
    now = cells(engine, "people", "Kay")
    assert now["role"] == "clerk" and "role was mason" in now["note"]


def test_two_materials_are_one(engine: Engine) -> None:
    put(
        engine,
        materials=[
            {"key": "h-lime", "name": "Hydraulic lime", "trade_names": "Kalk"},
            {
                "key": "h-lime2",
                "name": "Lime, hydraulic",
                "trade_names": "Kalk 40; Kalk",
                "aliases": "HL",
                "behaves_as": "h-lime (as it does)",
            },
        ],
        layers=[{"ref": "L3", "place": "J1", "material": "h-lime2"}],
    )
    before = state(engine)
    done = merged(engine, "materials", "h-lime", "h-lime2")
    assert said(done.faults) == ""
    assert done.moved == (("layer", 1),)
    now = cells(engine, "materials", "h-lime")
    assert now["aliases"] == "Lime, hydraulic; h-lime2; HL"
    assert now["trade_names"] == "Kalk; Kalk 40"
    assert now["behaves_as"] == ""  # never as itself
    assert cells(engine, "layers", "L3", OBJECT)["material"] == "h-lime"
    put(engine, layers=[{"ref": "L4", "place": "J1", "material": "h-lime2"}])  # old files still do
    assert cells(engine, "layers", "L4", OBJECT)["material"] == "h-lime2 = h-lime"
    take_back(engine, "A. Tester")
    taken_back_whole(engine, before)


def test_a_material_that_behaved_as_the_other(engine: Engine) -> None:
    put(engine, materials=[{"key": "b1"}, {"key": "a1", "behaves_as": "b1"}])
    before = state(engine)
    assert merged(engine, "material", "a1", "b1").faults == ()
    assert cells(engine, "materials", "a1")["behaves_as"] == ""
    taken_back_whole(engine, before)


def test_both_in_one_recipe_is_refused_by_name(engine: Engine) -> None:
    put(
        engine,
        materials=[{"key": key} for key in ("mix", "wax1", "wax2")],
        material_parts=[{"material": "mix", "part": part} for part in ("wax1", "wax2")],
    )
    before = state(engine)
    told = said(merged(engine, "material", "wax1", "wax2").faults)
    assert (
        "stands beside wax1 in a recipe with mix, where one may stand only once" in told
        and "only once" in told
    )
    told = said(merged(engine, "material", "mix", "wax2").faults)
    assert "cannot be merged into mix" in told
    assert state(engine) == before


def test_two_sources_are_one_and_bounds_follow(engine: Engine) -> None:
    put(
        engine,
        sources=[
            {"ref": "R1", "kind": "report", "citation": "Report"},
            {"ref": "R2", "citation": "The report", "date": "1950"},
        ],
        layers=[{"ref": "L3", "place": "J1", "date": "after 1940", "source": "R1"}],
        sightings=[{"ref": "V1", "layer": "L3", "date": "2012", "result": "seen", "source": "R2"}],
    )
    before = state(engine)
    done = merged(engine, "source", "R1", "R2")
    assert done.noted == ("ref was R2", "citation was The report")
    assert cells(engine, "sources", "R1")["date"] == "1950"
    with reading(engine) as connection:
        assert list(check_bounds(connection, [1])) == []
    taken_back_whole(engine, before)


def test_what_cannot_be_merged(engine: Engine) -> None:
    assert "is this same person" in said(merged(engine, "people", "Ida Holm", "ida holm").faults)
    assert "cannot be merged" in said(merged(engine, "objects", OBJECT, OBJECT).faults)
    assert "came with the program" in said(merged(engine, "material", "ethanol", "acetone").faults)
    with pytest.raises(NoSuch):
        merged(engine, "people", "Ida Holm", "Nobody")


@pytest.mark.parametrize("text", [one for one in NASTY if one.strip() == one])
def test_nasty_names_are_merged_as_they_are(engine: Engine, text: str) -> None:
    if "\ud800" <= text[:1] <= "\udfff":
        return
    put(engine, people=[{"name": text, "note": text}])
    before = state(engine)
    why = Author("A. Tester", "merged", text)
    assert merge(engine, "people", "Ida Holm", text, why, TODAY).faults == ()
    with reading(engine) as connection:
        aliases = [r[0] for r in connection.exec_driver_sql("SELECT alias FROM person_alias")]
    assert aliases == [text]
    taken_back_whole(engine, before)


def lab(material: str = "h-lime", source: str = "LAB") -> Analysis:
    return Analysis(material, source)


@pytest.fixture
def analysed(engine: Engine) -> Engine:
    put(
        engine,
        materials=[{"key": "h-lime", "name": "Hydraulic lime"}, {"key": "plum-resin"}],
        sources=[{"ref": "LAB"}, {"ref": "OLD"}],
        layers=[
            {"ref": "L3", "place": "J1", "material": "old glue = plum-resin", "source": "OLD"},
            {"ref": "L4", "place": "S1", "material": "plum-resin", "identified": "inferred"},
        ],
    )
    return engine


def test_another_matter_keeps_both(analysed: Engine) -> None:
    before = state(analysed)
    written, layers = reidentify(analysed, OBJECT, "L3", lab(), MENDING, TODAY)
    assert said(written.faults) == ""
    assert layers == (f"layer L3 of {OBJECT}",)
    now = cells(analysed, "layers", "L3", OBJECT)
    assert (now["material"], now["identified"]) == ("old glue = h-lime", "analysed")
    assert now["source"] == "OLD"  # nothing else was blanked
    stated = [cells(analysed, "statements", key) for key in ("Z1", "Z2")]
    assert [(s["value"], s["source"], s["followed"], s["decided_by"]) for s in stated] == [
        ("plum-resin", "OLD", "no", "A. Tester"),
        ("h-lime", "LAB", "yes", "A. Tester"),
    ]
    taken_back_whole(analysed, before)


def test_a_second_analysis_overrules_the_first(analysed: Engine) -> None:
    reidentify(analysed, OBJECT, "L3", lab(), MENDING, TODAY)
    back = Analysis("plum-resin", "OLD", "documented later")
    written, _ = reidentify(analysed, OBJECT, "L3", back, MENDING, TODAY)
    assert written.faults == ()
    stated = [cells(analysed, "statements", key) for key in ("Z1", "Z2", "Z3")]
    assert [(s["value"], s["followed"]) for s in stated] == [
        ("plum-resin", "no"),
        ("h-lime", "no"),
        ("plum-resin", "yes"),
    ]
    assert stated[1]["source"] == "LAB"


def test_everywhere(analysed: Engine) -> None:
    before = state(analysed)
    written, layers = reidentify(analysed, OBJECT, "L4", lab(), MENDING, TODAY, everywhere=True)
    assert written.faults == () and len(layers) == 2
    assert cells(analysed, "layers", "L4", OBJECT)["material"] == "h-lime"
    assert cells(analysed, "layers", "L3", OBJECT)["material"] == "old glue = h-lime"
    taken_back_whole(analysed, before)


def test_what_is_not_reidentified(analysed: Engine) -> None:
    before = state(analysed)
    for found, ref, everywhere, told in (
        (lab("plum-resin"), "L3", False, "is on record as plum-resin already"),
        (lab("moonshine"), "L3", False, "names no material"),
        (lab(source="NONE"), "L3", False, "names no source"),
        (Analysis("h-lime", "LAB", "guessed"), "L3", False, "not one of the words"),
        (lab(), "L1", True, "has no material"),
    ):
        written, _ = reidentify(analysed, OBJECT, ref, found, MENDING, TODAY, everywhere=everywhere)
        assert told in said(written.faults)
    assert state(analysed) == before


def test_a_part_breaks(engine: Engine) -> None:
    put(engine, components=[{"mark": "B3", "origin": "original", "name": "lip"}])
    before = state(engine)
    written = split(engine, OBJECT, "b3", ["B3a", "B3b"], MENDING, TODAY)
    assert written.keys == ("B3a", "B3b")
    now = cells(engine, "components", "B3b", OBJECT)
    assert (now["parent"], now["origin"], now["kind"]) == ("B3", "original", "fragment")
    assert cells(engine, "components", "B3", OBJECT)["name"] == "lip"
    taken_back_whole(engine, before)
    for marks, told in (
        (["B3c", "B1"], "another part or place"),
        (["X", "x"], "another part or place"),
    ):
        assert told in said(split(engine, OBJECT, "B3", marks, MENDING, TODAY).faults)
    assert said(split(engine, OBJECT, "B3", ["J1"], MENDING, TODAY).faults)
    assert state(engine) == before


def test_a_part_is_retired_once(engine: Engine) -> None:
    before = state(engine)
    assert retire(engine, OBJECT, "B2", "May 2026", MENDING, TODAY).faults == ()
    now = cells(engine, "components", "B2", OBJECT)
    assert now["retired"].startswith("May 2026") and now["retired_why"] == "seen under the lens"
    again = retire(engine, OBJECT, "B2", "2026", MENDING, TODAY)
    assert "was retired May 2026" in said(again.faults)
    taken_back_whole(engine, before)
    assert "5/6/1956" in said(retire(engine, OBJECT, "B2", "5/6/1956", MENDING, TODAY).faults)


@pytest.mark.parametrize(
    ("on", "told"),
    [
        ("2027", "lies in the future; retire the part once it has been taken out"),
        ("2026-11-03", "lies in the future"),
        ("1850", "lies before K1 was made (not before 1868-01-01); amend whichever date is wrong"),
        ("1700", "lies before K1 was made"),
    ],
)
def test_a_part_is_not_retired_on_an_impossible_day(engine: Engine, on: str, told: str) -> None:
    put(engine, components=[{"mark": "K1", "parent": "B1", "made": "1868"}])
    before = state(engine)
    for done in (
        retire(engine, OBJECT, "K1", on, MENDING, TODAY),
        replace(engine, OBJECT, "K1", "K1n", on, MENDING, TODAY),
    ):
        assert len(done.faults) == 1 and told in said(done.faults)
    assert state(engine) == before


def test_what_is_original_is_no_older_than_the_object(engine: Engine) -> None:
    put(engine, components=[{"mark": "B3", "origin": "original"}, {"mark": "B4"}])
    told = said(retire(engine, OBJECT, "B3", "1740", MENDING, TODAY).faults)
    assert "lies before B3 was made (not before 1741-01-01)" in told
    assert retire(engine, OBJECT, "B3", "1741", MENDING, TODAY).faults == ()
    assert retire(engine, OBJECT, "B4", "unknown", MENDING, TODAY).faults == ()


def test_a_part_is_replaced(engine: Engine) -> None:
    put(
        engine,
        components=[{"mark": "K1", "parent": "B1", "kind": "cramp", "name": "c", "mass_kg": "2"}],
    )
    before = state(engine)
    assert replace(engine, OBJECT, "K1", "K1n", "2026-05-03", MENDING, TODAY).faults == ()
    old, new = (cells(engine, "components", mark, OBJECT) for mark in ("K1", "K1n"))
    assert (old["replaced_by"], old["retired"], old["mass_kg"]) == ("K1n", "2026-05-03", "2")
    assert (new["parent"], new["origin"], new["kind"], new["mass_kg"]) == (
        "B1",
        "replacement",
        "cramp",
        "",
    )
    taken_back_whole(engine, before)


@pytest.fixture
def ask(conservedb: Command, engine: Engine, tmp_path: Path) -> Callable[..., object]:
    engine.dispose()
    return lambda *arguments: conservedb(*arguments, "--db", str(tmp_path / "department.db"))


def test_the_commands(ask: Command) -> None:
    why = ("--reason", "it [b]fell")
    done = ask("split", OBJECT, "B1", "B1a", "B1b", *why, "--json")
    assert done.status == 0 and done.json["split"] == ["B1a", "B1b"]
    done = ask("replace", OBJECT, "B2", "B2n", "--on", "2026-05-03", *why)
    assert done.status == 0 and "replaced: B2n" in done.lines, done
    done = ask("retire", OBJECT, "B2n", "--on", "2026-06-03", *why, "--json")
    assert done.json["retired"] == ["B2n"]
    done = ask("merge", "person", "Ida Holm", "A. Tester", *why)
    assert done.status == 0 and "gone: person A. Tester" in done.lines, done
    done = ask("undo")
    assert done.status == 0, done
    done = ask("merge", "person", "Ida Holm", "Ida Holm", *why, "--json")
    assert done.status == 1 and "is this same person" in done.json["error"]
    done = ask("reidentify", OBJECT, "L1", "limestone", "--source", "NONE", *why)
    assert done.status == 1 and "names no source" in done.err
    done = ask("split", OBJECT, "B1", "B1c", "--reason", " ")
    assert done.status == 2 and "is empty; write why" in done.err
