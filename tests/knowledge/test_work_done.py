"""A plan against the steps on record (AIC Commentary 27: deviations from the plan are recorded)."""

from __future__ import annotations

from itertools import product

import pytest

from conservedb.knowledge.planned_work import PlannedStep, RecordedStep, WorkPlan
from conservedb.knowledge.work_done import (
    DONE,
    IN_PART,
    NO_STEP,
    OTHERWISE,
    STATES,
    UNEXPLAINED,
    work_done,
)

CLEAN = PlannedStep("S1", "clean", ("J14", "J15"))
FILL = PlannedStep("S2", "fill", (), ("B07",))
PLAN = WorkPlan("P2", 2, ("Ada Wren",), (CLEAN, FILL))


def step(ref: str, kind: str = "clean", planned: str = "S1", **more: object) -> RecordedStep:
    given = {"shown": "3 May 2012", "places": ("J14", "J15"), **more}
    return RecordedStep(ref, kind, planned, **given)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("steps", "state", "sentence"),
    [
        ([], NO_STEP, "S1 (clean): no step on record."),
        ([step("I1")], DONE, "S1 (clean): done by I1, 3 May 2012."),
        ([step("I1", shown="")], DONE, "S1 (clean): done by I1, date not recorded."),
        (
            [step("I1", places=("J14",))],
            IN_PART,
            "S1 (clean): done by I1, 3 May 2012; no step on record names J15.",
        ),
        (
            [step("I1", places=())],
            IN_PART,
            "S1 (clean): done by I1, 3 May 2012; no step on record names J14, J15.",
        ),
        (
            [step("I1", places=("J14",)), step("I2", places=("J15", "J16"), shown="4 May 2012")],
            UNEXPLAINED,
            "S1 (clean): done by I1, 3 May 2012; done otherwise by I2, 4 May 2012:"
            " planned at J14, J15 (S1), and done at J16: no reason recorded.",
        ),
        (
            [step("I1", deviation="the gel ran")],
            OTHERWISE,
            "S1 (clean): done otherwise by I1, 3 May 2012: the gel ran.",
        ),
        (
            [step("I1", kind="desalinate")],
            UNEXPLAINED,
            "S1 (clean): done otherwise by I1, 3 May 2012: planned as clean (S1), not"
            " desalinate: no reason recorded.",
        ),
        (
            [step("I1", kind="desalinate", deviation="salts")],
            OTHERWISE,
            "S1 (clean): done otherwise by I1, 3 May 2012: planned as clean (S1), not"
            " desalinate: salts.",
        ),
        (
            [step("I1", kind="")],
            DONE,
            "S1 (clean): done by I1, 3 May 2012, its kind not recorded.",
        ),
    ],
)
def test_how_a_planned_step_stands(steps: list[RecordedStep], state: str, sentence: str) -> None:
    first = work_done(PLAN, steps).steps[0]
    assert (first.state, first.sentence) == (state, sentence)
    assert first.by == tuple(one.ref for one in steps)


def test_places_and_components_still_without_a_step() -> None:
    found = work_done(PLAN, [step("I1", places=("J14",))])
    assert (found.places, found.components) == (("J15",), ("B07",))
    found = work_done(PLAN, [step("I1"), step("I2", "fill", "S2", components=("B07",))])
    assert (found.places, found.components) == ((), ())


def test_a_plan_without_places_leaves_every_place_open_to_it() -> None:
    on_it = step("I2", "fill", "S2", places=("J3",), borne_by={"J3": ("B07",)})
    assert work_done(PLAN, [on_it]).steps[1].state == DONE


@pytest.mark.parametrize(
    ("one", "sentence"),
    [
        (step("I9", planned=""), "I9 (clean, 3 May 2012) was not planned: no reason recorded."),
        (
            step("I9", planned="", deviation="dust came up"),
            "I9 (clean, 3 May 2012) was not planned: dust came up.",
        ),
        (
            step("I9", planned="", standing="first aid"),
            "I9 (clean, 3 May 2012) was not planned: first aid.",
        ),
        (
            step("I9", planned="S7", shown="", kind=""),
            "I9 (kind not recorded, date not recorded) carries out S7,"
            " which is no step of version 2.",
        ),
    ],
)
def test_steps_that_were_not_planned(one: RecordedStep, sentence: str) -> None:
    (found,) = work_done(PLAN, [one]).unplanned
    assert (found.step, found.sentence) == (one, sentence)


CHOICES = [
    None,
    *(
        step("", kind, planned, places=places, deviation=why)
        for kind, planned, places, why in product(
            ("clean", "fill"), ("S1", ""), ((), ("J14",), ("J14", "J15")), ("", "because")
        )
    ),
]


def test_against_every_pair_of_steps() -> None:
    for pair in product(CHOICES, repeat=2):
        steps = [one for one in pair if one is not None]
        found = work_done(PLAN, steps)
        linked = [one for one in steps if one.planned == "S1"]
        first = found.steps[0]
        odd = [one for one in linked if one.kind != "clean" or one.deviation]
        covered = {place for one in linked for place in one.places}
        if not linked:
            expected = NO_STEP
        elif any(not one.deviation for one in odd):
            expected = UNEXPLAINED
        elif odd:
            expected = OTHERWISE
        else:
            expected = DONE if covered == {"J14", "J15"} else IN_PART
        assert first.state == expected
        assert first.state in STATES
        assert set(first.places) == {"J14", "J15"} - covered
        assert len(found.unplanned) + len(linked) == len(steps)
        assert "not done" not in " ".join(one.sentence for one in found.steps)
