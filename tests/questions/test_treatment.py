"""The life of a treatment: plan in versions, leave, steps held against the plan, what is asked.

What is expected of authority and progress follows the rules written in `knowledge/authority.py`
and `knowledge/work_done.py`; what guidelines ask, `knowledge/guidelines.py`.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterator

import pytest
from sqlalchemy import Connection, Engine, select

from conservedb.questions.answers import Hit, NoSuch
from conservedb.questions.authority import how_step_stands
from conservedb.questions.history import history
from conservedb.questions.start import start
from conservedb.questions.treatment import treatment, treatments
from conservedb.questions.treatment_answers import PlannedEntry, StepEntry, TreatmentAnswer
from conservedb.records.treatments import intervention
from conservedb.store.connect import reading, writing
from conservedb.store.log import Author
from conservedb.store.opening import open_database
from tests.conftest import TODAY
from tests.questions.treating import make_workshop


@pytest.fixture(scope="module")
def workshop(tmp_path_factory: pytest.TempPathFactory) -> Engine:
    engine, _ = open_database(make_workshop(tmp_path_factory.mktemp("workshop")))
    return engine


@pytest.fixture
def connection(workshop: Engine) -> Iterator[Connection]:
    with reading(workshop) as open_connection:
        yield open_connection


@pytest.fixture
def answer(connection: Connection) -> TreatmentAnswer:
    return treatment(connection, "T.1", "T1", TODAY)


def step(answer: TreatmentAnswer, ref: str) -> StepEntry:
    (found,) = [one for one in answer.steps if one.ref == ref]
    return found


def planned(answer: TreatmentAnswer, ref: str) -> PlannedEntry:
    (found,) = [one for plan in answer.plans for one in plan.steps if one.ref == ref]
    return found


def outcomes(entry: StepEntry) -> list[str]:
    return [one.outcome for one in entry.findings]


def test_the_treatments_of_an_object(connection: Connection) -> None:
    rows = {row.ref: row for row in treatments(connection, "t.1").rows}
    assert (rows["T1"].state, rows["T1"].versions, rows["T1"].steps) == (
        "begun 2 March 2026, no end on record", (1, 2), 7,
    )  # fmt: skip
    assert rows["T1"].authorised == (
        "version 2: authorised 2 March 2026 by Cora Curator as curator, for b1, b2 and b5;"
        " authorised 2 March 2026 by Eve Engineer as engineer, for b1 and b5;"
        " authorised 2 March 2026 by Hal Head as head of conservation"
    )
    assert rows["T0"].state == "begun 1934, ended 1934"
    assert rows["T2"].state == "no day of beginning on record, no end on record"
    assert (rows["T2"].authorised, rows["T2"].steps) == ("none on record", 0)
    assert treatments(connection, "T.2").rows == ()


def test_what_frames_it(answer: TreatmentAnswer) -> None:
    assert (answer.purpose, answer.lead, answer.recommendations) == (
        "It moved", "Ann Author", "Look each spring.",
    )  # fmt: skip
    assert answer.next_check.said == "October 2026" and answer.check_passed
    assert not answer.closed and answer.result == ""
    assert [(r.field, r.value) for r in answer.rivals] == [("purpose", "Another")]


def test_a_check_within_its_month_has_not_passed(connection: Connection) -> None:
    within = treatment(connection, "T.1", "T1", datetime.date(2026, 10, 31))
    assert not within.check_passed


def test_an_examination_keeps_what_is_seen_apart(answer: TreatmentAnswer) -> None:
    (examined,) = answer.examinations
    assert (examined.circumstances, examined.methods) == ("On the bench", "lamp")
    (seen,) = examined.observations
    assert (seen.seen, seen.presumed, seen.where) == ("It opens.", "The glue is old.", "J1")
    assert [(line.kind, line.sentence) for line in examined.lines] == [
        ("reading", "Read at J1: gap 0.4 mm (feeler, left)"),
        ("sample", "Sample taken at J1: crumb"),
        (
            "spot test",
            "Spot test at J1, on L0: Test spirit, swab;"
            " wet swells, dry no effect, after a day not recorded",
        ),
    ]
    assert examined.lines[1].detail == (
        "kept: box 3", "remainder: half", "result: bone glue, analysed by Joan",
    )  # fmt: skip


def test_steps_stand_in_order_of_time_with_both_days(answer: TreatmentAnswer) -> None:
    assert [one.ref for one in answer.steps] == ["e1", "d1", "d2", "d3", "d4", "d5", "d6"]
    washed = step(answer, "d2")
    assert (washed.date.said, washed.recorded.said) == ("6 March 2026", "8 March 2026")
    assert washed.recorded_over == 12
    assert step(answer, "d1").time_of_day == "morning"
    assert [r.value for r in step(answer, "d1").rivals] == ["Nobody"]


def test_what_a_step_did(answer: TreatmentAnswer) -> None:
    (laid,) = step(answer, "d3").lines
    assert laid.sentence == "Applied: Test glue, adhesive at J1 (L1)"
    assert laid.detail == (
        "20 %, carrier spirit, at 18 °C, from face, two cycles, uptake 3.5 g,"
        " depth 4 mm, estimated",
        "batch BA1, lot LOT 7",
    )
    (off,) = step(answer, "d1").lines
    assert off.sentence == "Removed in part: material not recorded, adhesive at J1 (L0)"
    assert off.detail == ("kept: crumbs; box 3", "residue on A, a thin film")


def test_the_plan_against_the_steps(answer: TreatmentAnswer) -> None:
    assert [one.version for one in answer.plans] == [1, 2]
    assert planned(answer, "a1").state == "no step on record"
    # d1 names the joint only: its two sides bear it, so both components are reached
    assert (planned(answer, "b1").state, planned(answer, "b1").by) == ("done", ("d1",))
    # d2 names S1; an agent was used at S2, which reaches it too
    assert planned(answer, "b2").state == "done"
    assert planned(answer, "b3").progress == (
        "b3 (join): done otherwise by d3, 7 March 2026: colder than planned."
    )
    assert planned(answer, "b4").progress == "b4 (fill): no step on record."
    assert step(answer, "d4").beside == "d4 (fill, 8 March 2026) was not planned: first aid."
    assert step(answer, "e1").beside == ""  # an examination is no work beside the plan


def test_what_a_step_would_need_today(answer: TreatmentAnswer) -> None:
    (found,) = planned(answer, "b4").to_begin  # U2 does not name it, U1 is about version 1
    assert (found.outcome, found.capacity) == ("another version", "curator")
    assert found.sentence == (
        "Curator: it is about version 1, not version 2: Cora Curator as curator (U1)."
    )
    assert [one.outcome for one in planned(answer, "b5").to_begin] == ["in force", "in force"]
    assert planned(answer, "a1").to_begin == ()  # an older version is not followed
    assert planned(answer, "b1").to_begin == ()  # done


def test_leave_expires(connection: Connection) -> None:
    later = treatment(connection, "T.1", "T1", datetime.date(2027, 1, 1))
    assert [one.outcome for one in planned(later, "b5").to_begin] == ["expired", "expired"]


def test_the_authority_of_each_step(answer: TreatmentAnswer) -> None:
    assert outcomes(step(answer, "e1")) == ["needs not recorded"]
    assert outcomes(step(answer, "d1")) == ["in force", "in force"]
    assert "on conditions that a person must judge: Keep the pin." in (
        step(answer, "d1").findings[0].sentence
    )
    assert outcomes(step(answer, "d2")) == ["in force"]
    assert outcomes(step(answer, "d3")) == ["another version"]  # U2 does not name b3
    started = step(answer, "d3").start
    assert started is not None
    assert started.sentence == "Started before authorisation by Ann Author: It could not wait."
    assert outcomes(step(answer, "d4")) == ["ratified"]
    assert outcomes(step(answer, "d5")) == ["to be ratified"]
    assert outcomes(step(answer, "d6")) == ["standing approval"]
    assert len(answer.to_ratify) == 1 and answer.to_ratify[0].startswith("d5, 9 March 2026: ")
    assert [one.ref for one in answer.decisions] == ["U5"]


def test_decisions_stand_with_the_version_they_are_about(answer: TreatmentAnswer) -> None:
    assert [[one.ref for one in plan.decisions] for plan in answer.plans] == [
        ["U1"], ["U2", "U3", "U4"],
    ]  # fmt: skip
    second = answer.plans[1].decisions[0]
    assert (second.conditions, second.expires.said, second.evidence, second.steps) == (
        "Keep the pin.", "31 December 2026", "letter", ("b1", "b2", "b5"),
    )  # fmt: skip


def test_asking_for_one_step_gives_the_same(connection: Connection) -> None:
    """What is asked before a step is kept must be what the record shows afterwards."""
    shown = {
        one.ref: (one.needed, one.findings, one.start)
        for ref in ("T0", "T1", "T2")
        for one in treatment(connection, "T.1", ref, TODAY).steps
    }
    rows = connection.execute(
        select(intervention.c.object_id, intervention.c.id, intervention.c.ref)
    ).all()
    assert len(rows) == len(shown) == 8
    for object_id, id_, ref in rows:
        found = how_step_stands(connection, object_id, id_).authority
        assert (found.needed, found.findings, found.start) == shown[ref], ref
    with pytest.raises(NoSuch):
        how_step_stands(connection, rows[0][0] + 1, rows[0][1])


class Stopped(Exception):
    """What ends the transaction, so that nothing is kept."""


def test_it_sees_what_the_transaction_wrote(workshop: Engine) -> None:
    """Within the transaction that writes a step, before it is kept."""
    with pytest.raises(Stopped), writing(workshop, Author("A. Tester", "test")) as connection:
        id_, owner = connection.execute(
            select(intervention.c.id, intervention.c.object_id).where(intervention.c.ref == "d6")
        ).one()
        connection.execute(
            intervention.update().where(intervention.c.id == id_).values(kind="fill")
        )
        found = how_step_stands(connection, owner, id_).authority
        assert [one.outcome for one in found.findings] == ["not covered"]
        raise Stopped


def asked(answer: TreatmentAnswer, of: str) -> dict[str, str]:
    groups = [one for one in answer.asked if one.of.startswith(of)]
    return {one.field: one.sentence for group in groups for one in group.asked}


def test_what_guidelines_still_ask(answer: TreatmentAnswer) -> None:
    examination = asked(answer, "examination e1")
    assert {"maker", "made", "dimensions", "warnings", "sample_consent"} <= set(examination)
    assert not {"methods", "circumstances", "seen", "condition", "date"} & set(examination)
    plan = asked(answer, "plan P2, version 2")
    assert set(plan) == {"alternatives", "risks"}
    work = asked(answer, "treatment in progress")
    assert "not recorded: d3, d4, d5, d6." in work["recorded_by"]
    assert "not recorded: d3, d5." in work["authorisation"]
    assert not {"result", "ended", "deviation", "kept_where", "carrier"} & set(work)
    assert "photograph before" in asked(answer, "photographs")
    named = dict(answer.guidelines)
    assert "Commentary 27" in named["AIC C27"]


def test_a_closed_treatment_is_asked_for_its_result(connection: Connection) -> None:
    old = treatment(connection, "T.1", "T0", TODAY)
    assert {"result", "report", "next_check"} <= set(asked(old, "closed treatment"))
    assert outcomes(old.steps[0]) == ["historic"]


def test_a_treatment_of_which_little_is_known(connection: Connection) -> None:
    bare = treatment(connection, "T.1", "T2", TODAY)
    assert not (bare.plans or bare.steps or bare.decisions)
    assert [one.of for one in bare.asked] == ["photographs"]


def test_no_such_treatment(connection: Connection) -> None:
    with pytest.raises(NoSuch, match=r"no treatment of T\.1 'T11' on record; did you"):
        treatment(connection, "T.1", "T11", TODAY)
    assert treatment(connection, "T.1", "t1", TODAY).ref == "T1"


def test_the_history_tells_it_in_order_of_time(connection: Connection) -> None:
    rows = history(connection, "T.1", "J1").rows
    told = [f"{row.kind} {row.ref}" for row in rows]
    for entry in (
        "observation O1", "reading R1", "sample SM1", "spot test ST1",
        "plan P1", "plan P2", "authorisation U1", "authorisation U2",
    ):  # fmt: skip
        assert entry in told
    assert told.index("observation O1") < told.index("plan P1") < told.index("authorisation U1")
    assert "observation O2" not in told  # on S1
    whole = [row.ref for row in history(connection, "T.1").rows]
    assert {"O2", "U5"} <= set(whole)
    seen = next(row for row in rows if row.ref == "O1")
    assert seen.sentence == "Observed at J1: crack: It opens."
    assert "presumed, not seen: The glue is old." in seen.detail
    decision = next(row for row in rows if row.ref == "U2")
    assert decision.sentence == "Authorised: P2, version 2 of the plan"
    assert [(p.name, p.role) for p in decision.people] == [("Cora Curator", "curator")]


def test_a_check_of_a_treatment_is_due_once_it_has_passed(connection: Connection) -> None:
    (due,) = start(connection, TODAY).checks_due
    assert due == Hit("treatment", "T.1", "T1", "check after Joint remade", "due October 2026")
    assert start(connection, datetime.date(2026, 10, 31)).checks_due == ()
