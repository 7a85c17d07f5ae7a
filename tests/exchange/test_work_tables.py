"""Tables of the life of a treatment: what they keep, and what is refused with a sentence."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from sqlalchemy import CheckConstraint, Engine

from conservedb.exchange.columns import Choice
from conservedb.exchange.subjects import SUBJECTS
from conservedb.records.every import metadata
from tests.exchange.test_behaviour_tables import Tables, ask, said, take

Make = Callable[[str], Engine]

BASE: Tables = {
    "objects": "number,made\nN.1,1741\nN.2,\n",
    "components": "object,mark,made,lost\nN.1,B1,1868,2000\nN.1,B2,,\nN.2,B9,,\n",
    "places": "object,mark,kind,component\nN.1,S1,surface,B1\nN.1,S2,surface,B2\n",
    "layers": "object,place,ref\nN.1,S2,l1\n",
    "people": "name\nEva Moor\nNed Marsh\n",
    "batches": "ref,material,lot,made,made_by\nbatch-1,b72,7/26,2026-10-01,Eva Moor\n",
    "treatments": "object,ref,next_check\nN.1,T1,2030\nN.2,T2,\n",
    "plans": "object,ref,treatment,version,people\nN.1,p1,T1,1,Eva Moor\nN.1,p2,T1,2,Eva Moor\n",
    "planned_steps": "object,ref,plan,position,kind\nN.1,s1,p1,1,join\nN.1,s2,p2,1,join\n",
}

AUTHORISED = "object,ref,plan,steps,date,expires\n"
LAYER = "object,place,ref,{}\nN.1,S2,l1,{}\n"

FAULTS: dict[str, tuple[Tables, str]] = {
    "ck_plan_version_from_one": (
        {"plans": "object,ref,treatment,version\nN.1,p1,T1,0\nN.1,p2,T1,2\n"},
        'plans.csv, line 2, column version "0": is below 1; give 1 or more',
    ),
    "a plan of no version": (
        {"plans": "object,ref,treatment,version\nN.1,p1,T1,\nN.1,p2,T1,2\n"},
        "plans.csv, line 2, column version: is blank; fill it in",
    ),
    "a plan of no treatment": (
        {"plans": "object,ref,treatment,version\nN.1,p1,,1\nN.1,p2,T1,2\n"},
        "plans.csv, line 2, column treatment: names no treatment; fill it in",
    ),
    "two plans of one version": (
        {"plans": "object,ref,treatment,version\nN.1,p1,T1,2\nN.1,p2,T1,2\n"},
        'plans.csv, line 3, column version "2": is there already: treatment T1 has another plan'
        " of this version; give the later plan the next version",
    ),
    "a step of nothing planned": (
        {"planned_steps": "object,ref,plan,position\nN.1,s1,p9,1\nN.1,s2,p2,1\n"},
        'planned_steps.csv, line 2, column plan "p9": names no plan in the folder or the database',
    ),
    "a step planned for another object": (
        {"interventions": "object,ref,planned_step\nN.2,i1,s1\n"},
        'interventions.csv, line 2, column planned_step "s1": names no planned step in the folder',
    ),
    "an authorised step of another plan": (
        {"authorisations": AUTHORISED + "N.1,a1,p2,s2; s1,,\n"},
        'authorisations.csv, line 2, column steps "s1": is a step of plan p1; name steps of the'
        " plan that is authorised",
    ),
    "an authorisation that expired before it was given": (
        {"authorisations": AUTHORISED + "N.1,a1,p2,,2026-05,2026-04-30\n"},
        "authorisations.csv, line 2, column expires: would end before it began; mend whichever"
        " date is wrong",
    ),
    "an approval that ended before it began": (
        {"standing_approvals": "ref,since,until\na1,2026,2025\n"},
        "standing_approvals.csv, line 2, column until: would end before it began",
    ),
    "a needed authorisation of no capacity": (
        {"needed_authorisations": "kind,capacity\njoin,\n"},
        "needed_authorisations.csv, line 2, column capacity: is blank; every row needs its key",
    ),
    "a needed authorisation twice": (
        {"needed_authorisations": "kind,capacity,author_alone\njoin,owner,yes\nJoin,OWNER,no\n"},
        'needed_authorisations.csv, line 3, column capacity "owner": stands for another needed'
        " authorisation on line 2 already",
    ),
    "ck_layer_cycles_positive": (
        {"layers": LAYER.format("cycles", "-1")},
        'layers.csv, line 2, column cycles "-1": is below 0; give 0 or more',
    ),
    "ck_layer_uptake_positive": (
        {"layers": LAYER.format("uptake_g", "-0.5")},
        'layers.csv, line 2, column uptake_g "-0.5": is below zero',
    ),
    "ck_layer_depth_positive": (
        {"layers": LAYER.format("depth_mm", "-2")},
        'layers.csv, line 2, column depth_mm "-2": is below zero',
    ),
    "ck_layer_recorded_over_some": (
        {"layers": LAYER.format("recorded_over", "0")},
        'layers.csv, line 2, column recorded_over "0": is below 1; give 1 or more',
    ),
    "ck_intervention_recorded_over_some": (
        {"interventions": "object,ref,recorded_over\nN.1,i1,0\n"},
        'interventions.csv, line 2, column recorded_over "0": is below 1; give 1 or more',
    ),
    "a batch that nobody made": (
        {"layers": LAYER.format("batch", "batch-9")},
        'layers.csv, line 2, column batch "batch-9": names no batch in the folder or the database;'
        " did you mean batch-1? else add it to batches.csv, or leave the cell blank",
    ),
    "ck_component_not_its_own_successor": (
        {"components": "object,mark,replaced_by\nN.1,B1,B1\nN.1,B2,\n"},
        'components.csv, line 2, column replaced_by "B1": this component would be replaced by'
        " itself, at once or through others; mend the replaced_by of one of them",
    ),
    "two parts in each other's place": (
        {"components": "object,mark,replaced_by\nN.1,B1,B2\nN.1,B2,B1\n"},
        'components.csv, line 2, column replaced_by "B2": this component would be replaced by',
    ),
    "a reading of no value": (
        {"readings": "object,ref,value,unit\nN.1,r1,,mm\n"},
        "readings.csv, line 2, column value: is blank; fill it in",
    ),
    "a reading of no unit": (
        {"readings": "object,ref,value,unit\nN.1,r1,0.3,\n"},
        "readings.csv, line 2, column unit: is blank; fill it in",
    ),
    "a reading before its part was made": (
        {"readings": "object,ref,component,date,value,unit\nN.1,r1,B1,1850,0.3,mm\n"},
        "readings.csv, line 2, column date: lies before B1 was made (not before 1868-01-01)",
    ),
    "an observation on a place that was lost": (
        {"observations": "object,ref,place,date\nN.1,o1,S1,2001\n"},
        "observations.csv, line 2, column date: lies after B1 was lost (not after 2000-12-31)",
    ),
    "a sample of no kind known": (
        {"samples": "object,ref,kind\nN.1,s1,crumb\n"},
        'samples.csv, line 2, column kind "crumb": is not one of the words used here',
    ),
}


@pytest.mark.parametrize(("tables", "expected"), FAULTS.values(), ids=FAULTS.keys())
def test_faults(new_database: Make, tmp_path: Path, tables: Tables, expected: str) -> None:
    report = take(new_database("a.db"), tmp_path / "in", BASE | tables)
    assert any(sentence.startswith(expected) for sentence in said(report)), said(report)
    assert not report.written


TABLES = {"batch", "observation", "reading", "sample", "plan", "planned_step", "authorisation"}
TABLES |= {"standing_approval", "needed_authorisation"}
JOINED = {"ck_component_not_its_own_successor"}
JOINED |= {f"ck_layer_{name}_positive" for name in ("cycles", "uptake", "depth")}
JOINED |= {f"ck_{name}_recorded_over_some" for name in ("layer", "intervention")}


def test_every_check_has_its_sentence() -> None:
    names = {
        str(constraint.name)
        for table in TABLES
        for constraint in metadata.tables[table].constraints
        if isinstance(constraint, CheckConstraint)
    }
    lists_and_dates = ("_known", "_in_order")
    assert JOINED | {n for n in names if not n.endswith(lists_and_dates)} <= set(FAULTS)


def test_every_closed_list_is_a_closed_list_of_the_schema() -> None:
    grew = {"treatment", "intervention", "layer", "agent", "removal", "component"}
    for subject in (one for one in SUBJECTS if one.table.name in TABLES | grew):
        known = {
            str(constraint.sqltext)
            for constraint in subject.table.constraints
            if isinstance(constraint, CheckConstraint) and "_known" in str(constraint.name)
        }
        for column in subject.columns:
            if isinstance(column, Choice):
                listed = ", ".join(f"'{value}'" for value in column.values)
                assert f"{column.fields[0]} IN ({listed})" in known, (subject.name, column.name)


def test_a_plan_may_not_take_the_version_of_one_on_record(
    new_database: Make, tmp_path: Path
) -> None:
    engine = new_database("a.db")
    assert said(take(engine, tmp_path / "in", BASE)) == []
    again = "object,ref,treatment,version\nN.1,p3,T1,2\n"
    report = take(engine, tmp_path / "again", {"plans": again})
    assert "is there already: treatment T1 has another plan" in said(report)[0]
    mended = again.replace("T1,2", "T1,3")
    assert said(take(engine, tmp_path / "mended", {"plans": mended})) == []


def test_steps_on_record_are_held_against_the_plan(new_database: Make, tmp_path: Path) -> None:
    engine = new_database("a.db")
    given = {"authorisations": AUTHORISED + "N.1,a1,p2,s2,,\n"}
    assert said(take(engine, tmp_path / "in", BASE | given)) == []
    moved = {"authorisations": "object,ref,plan\nN.1,a1,p1\n"}
    report = take(engine, tmp_path / "moved", moved, update=True)
    assert "is a step of plan p2" in said(report)[0]


def test_lists_and_pointers_are_kept(new_database: Make, tmp_path: Path) -> None:
    engine = new_database("a.db")
    tables = {
        "plans": "object,ref,treatment,version,aims,people\n"
        "N.1,p1,T1,1,,\nN.1,p2,T1,2,remedial; preventive,Eva Moor (author); Ned Marsh\n",
        "interventions": "object,ref,planned_step,standing,unauthorised_by\n"
        "N.1,i1,s2,First Aid,Ned Marsh\n",
        "authorisations": AUTHORISED + "N.1,a1,p2,s2,2026-05-01,\n",
        "standing_approvals": "ref,kinds,person\nsa,clean; examine,Eva Moor\n",
    }
    assert said(take(engine, tmp_path / "in", BASE | tables)) == []
    assert ask(engine, "SELECT aim FROM plan_aim ORDER BY position") == [
        ("remedial",),
        ("preventive",),
    ]
    people = "SELECT name, r.role FROM plan_person r JOIN person p ON p.id = person_id"
    assert ask(engine, f"{people} ORDER BY position") == [
        ("Eva Moor", "author"),
        ("Ned Marsh", None),
    ]
    done = "SELECT s.ref, standing, p.name FROM intervention i JOIN planned_step s"
    done += " ON s.id = planned_step_id JOIN person p ON p.id = unauthorised_by_id"
    assert ask(engine, done) == [("s2", "first aid", "Ned Marsh")]
    steps = "SELECT a.ref, s.ref FROM authorisation_step l JOIN planned_step s"
    steps += " ON s.id = planned_step_id JOIN authorisation a ON a.id = authorisation_id"
    assert ask(engine, steps) == [("a1", "s2")]
    kinds = "SELECT kind FROM standing_approval_kind ORDER BY position"
    assert ask(engine, kinds) == [("clean",), ("examine",)]
    assert ask(engine, "SELECT count(*) FROM needed_authorisation") == [(0,)]
