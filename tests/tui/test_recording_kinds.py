"""Every kind of form saves, and what it saved stands on record as it was typed."""

from __future__ import annotations

from pathlib import Path

import pytest

from conservedb.exchange.amending import shown
from conservedb.store.connect import reading
from conservedb.tui.about import KINDS, About, about_of
from conservedb.tui.database_recorder import DatabaseRecorder
from conservedb.tui.forms_of_records import subject_of
from conservedb.tui.reading import Database
from tests.tui.at_the_desk import NUMBER, filled, saved

pytestmark = pytest.mark.campaign

TYPED: dict[str, dict[str, str]] = {
    "step": {
        "kind": "clean",
        "agent": "acetone",
        "form": "swab",
        "technique": "rolled",
        "unauthorised_reason": "dust only",
        "unauthorised_by": "Amara Whitlock",
    },
    "removal": {"layers": "L14f", "extent": "part", "kept_what": "crumbs", "residue_side": "A"},
    "spot test": {"layer": "L14f", "agent": "acetone 50; ethanol 50", "wet": "no effect"},
    "sighting": {"layer": "L14f", "result": "seen"},
    "observation": {"condition": "crack", "seen": "open 0.3 mm", "presumed": "a cramp rusts"},
    "reading": {"quantity": "gap", "value": "0.3", "unit": "mm"},
    "sample": {"kind": "sample", "what": "powder of the fill", "box": "box 4"},
    "examination": {"circumstances": "raking light, dry", "methods": "loupe"},
    "joint event": {"event": "moving", "where": "front edge"},
    "warning": {"kind": "check due", "text": "look at the gauge", "until": "2027-05"},
    "treatment": {"title": "Spring check", "purpose": "to know"},
    "closing": {"result": "stable", "recommendations": "leave it", "next_check": "2027"},
    "plan": {"aims": "preventive", "justification": "it cannot travel", "risks": "lip"},
    "planned step": {"kind": "consolidate", "material": "b72", "concentration": "3 % w/v"},
    "authorisation": {"capacity": "curator", "person": "Rosalind Thaxter", "decision": "refused"},
    "whereabouts": {"place_name": "Studio 2", "note": "for the gauge"},
    "component": {"mark": "B99", "name": "shard", "kind": "fragment", "origin": "original"},
    "place": {"mark": "S99", "kind": "surface", "component": "B07", "name": "underside"},
    "batch": {"material": "b72", "concentration": "3 % w/v", "lot": "x-1"},
    "material": {"key": "own-putty", "name": "putty of the house", "aliases": "our putty"},
    "person": {"name": "Ada Brown", "role": "intern"},
    "source": {"kind": "report", "citation": "Report on the gauge"},
    "term": {"list": "condition", "term": "blistering", "definition": "raised in domes"},
    "object": {"number": "SQ.2026.1", "title": "A jar"},
}


@pytest.fixture
def desk(demo: Path) -> DatabaseRecorder:
    return DatabaseRecorder(Database(demo))


def about(desk: DatabaseRecorder, kind: str) -> About:
    number = "" if kind == "object" else NUMBER
    return About(desk.database, kind, number, places=("J14",))


def test_every_kind_is_tried() -> None:
    assert set(TYPED) == {one.name for one in KINDS}
    letters = [one.letter for one in KINDS if one.letter]
    assert len(letters) == len(set(letters))


@pytest.mark.parametrize("kind", TYPED)
def test_a_kind_is_saved_and_read_back(desk: DatabaseRecorder, kind: str) -> None:
    form = desk.form(about(desk, kind))
    values = filled(form, **TYPED[kind])
    for name in {*TYPED[kind], "people", "made_by"} & set(values):
        assert desk.check(form, name, values) == "", name
    override = {}
    outcome = desk.save(form, values)
    if outcome.judged:
        override = {one.rule: "known, and accepted" for one in outcome.judged}
        outcome = desk.save(form, values, override=override)
    if outcome.complete:
        outcome = desk.save(form, values, reason="added for the files", override=override)
    sentence = saved(outcome)
    assert "change set" in sentence
    assert outcome.key, outcome
    subject = "interventions" if kind in ("step", "removal") else subject_of(kind).name
    number = NUMBER if subject_of(kind).in_object else ""
    with reading(desk._reading.engine()) as connection:
        cells = shown(connection, subject, number, outcome.key).cells
    held = {name: text for name, text in TYPED[kind].items() if name in cells}
    assert {name: cells[name] for name in held} == held
    assert len(held) > 1 or kind in ("step", "removal")


def test_what_a_removal_kept_stands_beside_it(desk: DatabaseRecorder) -> None:
    form = desk.form(about(desk, "removal"))
    assert {f.name: f.value for f in form.fields}["extent"] == ""
    saved(desk.save(form, filled(form, **TYPED["removal"])))
    with reading(desk._reading.engine()) as connection:
        sql = "SELECT extent, kept_what, residue_side FROM removal ORDER BY id DESC LIMIT 1"
        assert tuple(connection.exec_driver_sql(sql).one()) == ("part", "crumbs", "A")


@pytest.mark.parametrize(
    ("kind", "fields", "field", "words"),
    [
        ("reading", {"value": "about 3", "unit": "mm"}, "value", "is not a number"),
        ("observation", {"seen": "x", "people": "Nobody Atall"}, "people", "Ctrl+N adds it"),
        ("sighting", {"layer": "L99"}, "layer", "names no layer"),
        ("step", {"kind": "clean", "agent": "unobtainium"}, "agent", "names no material"),
        ("step", {"kind": "clean", "agent": "acetone", "dwell_min": "x"}, "dwell_min", "number"),
        ("removal", {"layers": "L99", "extent": "all"}, "layers", "names no layer"),
    ],
)
def test_a_fault_is_told_at_its_field(
    desk: DatabaseRecorder, kind: str, fields: dict[str, str], field: str, words: str
) -> None:
    form = desk.form(about(desk, kind))
    outcome = desk.save(form, filled(form, **fields))
    assert outcome.saved == ""
    (problem,) = [one for one in outcome.problems if one.field == field]
    assert words in problem.sentence
    assert ".csv" not in problem.sentence
    assert "cell" not in problem.sentence


def test_a_form_is_found_again_by_the_key_of_its_draft(desk: DatabaseRecorder) -> None:
    here = about(desk, "observation").new("observation", people="Ada; Bo", intervention="I1")
    assert about_of(here.key) == here
    assert about_of("step J14") is None
    assert about_of("[1]") is None


def test_what_follows(desk: DatabaseRecorder) -> None:
    for kind, given in (("examination", "intervention"), ("plan", "plan")):
        form = desk.form(about(desk, kind))
        values = filled(form, **TYPED[kind])
        outcome = desk.save(form, values)
        following = desk.next_form(form, values, outcome)
        assert following is not None
        held = filled(following)
        assert held[given] == outcome.key
    form = desk.form(about(desk, "warning"))
    assert desk.next_form(form, filled(form), desk.save(form, filled(form, text="x"))) is None
