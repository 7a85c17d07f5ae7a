"""A step held against the planned one it is linked to (AIC Commentary 27: deviations recorded)."""

from __future__ import annotations

from dataclasses import replace
from itertools import product

import pytest

from conservedb.knowledge.authorisations import Authorisation, concerns
from conservedb.knowledge.authority_outcomes import CANNOT_TELL, NOT_COVERED
from conservedb.knowledge.departures import departures, differs, same
from conservedb.knowledge.narrowing import Interval
from conservedb.knowledge.planned_work import (
    PlannedStep,
    RecordedStep,
    Substance,
    WorkPlan,
    begun_as_planned,
)

ACRYLIC = ("acrylic", "thermoplastic", "polymer")
B72 = Substance("Paraloid B-72", "b72", ACRYLIC)
B44 = Substance("Paraloid B-44", "b44", ACRYLIC)
EPOXY = Substance("epoxy adhesive", "epoxy", ("epoxies", "polymer"))
LACQUER = Substance("B-72 lacquer", "lacquer", (), frozenset({"b72", "acetone"}))
SOME_ACRYLIC = Substance("acrylics", "", ACRYLIC)
SOME_POLYMER = Substance("polymers", "", ("polymer",))
SOME_EPOXY = Substance("epoxies", "", ("epoxies", "polymer"))
UNCLASSED = Substance("Glue no. 7", "glue7")
WORDS = Substance("the clear glue")


@pytest.mark.parametrize(
    ("planned", "found", "expected"),
    [
        (B72, B72, True),
        (B72, B44, False),
        (B72, EPOXY, False),
        (LACQUER, B72, True),
        (B72, LACQUER, True),
        (LACQUER, B44, False),
        (B72, SOME_ACRYLIC, None),
        (B72, SOME_POLYMER, None),
        (B72, SOME_EPOXY, False),
        (UNCLASSED, SOME_EPOXY, None),
        (SOME_ACRYLIC, B72, True),
        (SOME_ACRYLIC, EPOXY, False),
        (SOME_ACRYLIC, UNCLASSED, None),
        (SOME_ACRYLIC, SOME_ACRYLIC, True),
        (SOME_ACRYLIC, SOME_POLYMER, None),
        (SOME_POLYMER, SOME_ACRYLIC, True),
        (SOME_ACRYLIC, SOME_EPOXY, False),
        (B72, WORDS, None),
        (WORDS, B72, None),
        (WORDS, replace(WORDS, shown="The clear GLUE "), True),
    ],
)
def test_whether_it_is_the_material_planned(
    planned: Substance, found: Substance, expected: bool | None
) -> None:
    assert same(planned, found) is expected


PLANNED = PlannedStep("S1", "join", ("J1", "J2"), substance=B72)
STEP = RecordedStep("I1", "join", "S1", places=("J1",), laid=(B72,))


@pytest.mark.parametrize(
    ("step", "clauses"),
    [
        (STEP, []),
        (replace(STEP, laid=()), []),
        (replace(STEP, laid=(EPOXY,)), ["planned with Paraloid B-72 (S1), and done with epoxy"]),
        (replace(STEP, laid=(B72, EPOXY)), ["and done with epoxy adhesive"]),
        (replace(STEP, laid=(EPOXY,), used=(B72,)), ["and done with epoxy adhesive"]),
        (replace(STEP, laid=(), used=(EPOXY,)), ["and done with epoxy adhesive"]),
        (replace(STEP, laid=(), used=(EPOXY, B72)), []),
        (replace(STEP, laid=(), used=(EPOXY,), taken=(B72,)), []),
        (replace(STEP, laid=(), used=(EPOXY, SOME_ACRYLIC)), ["whether acrylics is Paraloid"]),
        (replace(STEP, places=("J3",)), ["planned at J1, J2 (S1), and done at J3"]),
        (replace(STEP, places=()), ["at which place or component planned as S1"]),
        (replace(STEP, kind=""), ["whether the step is of the kind planned as S1"]),
        (
            replace(STEP, kind="coat", places=("J1", "J3"), laid=(EPOXY,)),
            ["planned as join (S1), not coat", "done with epoxy adhesive", "and done at J3"],
        ),
    ],
)
def test_departures_in_clauses(step: RecordedStep, clauses: list[str]) -> None:
    found = [one.clause for one in departures(PLANNED, step)]
    assert len(found) == len(clauses)
    for said, expected in zip(found, clauses, strict=True):
        assert expected in said


ON_PARTS = PlannedStep("S1", "join", ("J1",), ("A", "B"), {"J1": ("A",)})


@pytest.mark.parametrize(
    ("places", "components", "expected"),
    [
        (("J1",), (), False),
        (("J2",), (), True),  # on A, of which the plan names J1 only
        (("J3",), (), False),  # on B, which the plan names as a whole
        (("J4",), (), False),  # on a part of B
        (("J5",), (), True),  # on C
        (("J6",), (), False),  # between B and C
        ((), ("A",), False),
        ((), ("B1",), False),
        ((), ("C",), True),
        (("J1",), ("C",), True),
    ],
)
def test_where_it_was_done(
    places: tuple[str, ...], components: tuple[str, ...], expected: bool
) -> None:
    borne = {"J2": ("A",), "J3": ("B",), "J4": ("B1",), "J5": ("C",), "J6": ("C", "B")}
    step = RecordedStep(
        "I1",
        "join",
        "S1",
        places=places,
        components=components,
        borne_by={place: borne.get(place, ("A",)) for place in places},
        within={"B1": ("B",)},
    )
    assert differs(ON_PARTS, step) is expected


def test_a_plan_that_leaves_something_open_is_not_departed_from_there() -> None:
    for planned in (PlannedStep("S1", "join"), replace(PLANNED, substance=None)):
        for laid, places in product(((), (B72,), (EPOXY,)), ((), ("J1",), ("J2",))):
            assert not differs(planned, replace(STEP, laid=laid, places=places))


def test_what_is_begun_as_planned_departs_in_nothing() -> None:
    for planned in (PLANNED, ON_PARTS, PlannedStep("S1", "join")):
        assert departures(planned, begun_as_planned(planned, Interval(1, 1))) == ()


@pytest.mark.parametrize(
    ("step", "outcome", "clause"),
    [
        (replace(STEP, laid=(EPOXY,)), NOT_COVERED, "deviation: planned with Paraloid B-72"),
        (replace(STEP, places=("J3",)), NOT_COVERED, "deviation: planned at J1, J2"),
        (replace(STEP, laid=(SOME_ACRYLIC,)), CANNOT_TELL, "whether acrylics is Paraloid B-72"),
        (STEP, "", ""),
    ],
)
def test_an_authorisation_of_the_plan_does_not_reach_a_departure(
    step: RecordedStep, outcome: str, clause: str
) -> None:
    leave = Authorisation("U1", "curator", "Cora", "authorised", 2)
    found, said = concerns(leave, WorkPlan("P2", 2, ("Ada",), (PLANNED,)), step)
    assert found == outcome
    assert said.startswith(clause)
