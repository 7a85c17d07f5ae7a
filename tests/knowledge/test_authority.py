"""Which authorisations a step needs and has: the rules one by one, and against every choice.

Rules: Spectrum (authorisation before any change), AIC Guidelines for Practice 26 and EN 16853
(from memory); the rest is common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import product
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from conservedb.dates.days import UNKNOWN_END, UNKNOWN_START
from conservedb.knowledge import authority_outcomes as words
from conservedb.knowledge.authorisations import (
    BEFORE,
    HOLDS,
    OVER,
    UNSURE,
    Authorisation,
    StandingApproval,
    holds_on,
)
from conservedb.knowledge.authority import Authority, Needed, authority
from conservedb.knowledge.authority_outcomes import OUTCOMES
from conservedb.knowledge.narrowing import Interval
from conservedb.knowledge.planned_work import PlannedStep, RecordedStep, WorkPlan

DAY = 100
PLAN = WorkPlan(
    "P2", 2, ("Ada Wren",), (PlannedStep("S1", "consolidate"), PlannedStep("S2", "clean"))
)
STEP = RecordedStep("I1", "consolidate", "S1", "planned", Interval(DAY, DAY))
CURATOR = (Needed("consolidate", "curator"),)
BOTH = (*CURATOR, Needed("consolidate", "owner"))


def on(first: int, last: int | None = None, flags: int = 0) -> Interval:
    return Interval(first, first if last is None else last, flags)


def given_leave(**more: Any) -> Authorisation:
    base = Authorisation("A1", "curator", "Bo Linden", "authorised", 2, when=on(90))
    return replace(base, **more)


def ask(
    *authorisations: Authorisation,
    step: RecordedStep = STEP,
    needed: tuple[Needed, ...] = CURATOR,
    standing: tuple[StandingApproval, ...] = (),
    plan: WorkPlan | None = PLAN,
) -> Authority:
    return authority(plan, step, authorisations, standing, needed)


def outcomes(found: Authority) -> list[str]:
    return [one.outcome for one in found.findings]


REFUSAL = given_leave(ref="R1", capacity="owner", person="Cy Marsh", decision="refused")
AUTHOR = given_leave(person="Ada Wren")


@pytest.mark.parametrize(
    ("more", "outcome"),
    [
        ({}, words.IN_FORCE),
        ({"when": on(DAY)}, words.IN_FORCE),
        ({"when": on(80, 95)}, words.CANNOT_TELL),  # a vague date is never said to be in force
        ({"when": on(101, 110)}, words.AFTERWARDS),  # vague, and too late whichever day it was
        ({"expires": on(200, 230)}, words.CANNOT_TELL),
        ({"expires": on(92, 95)}, words.EXPIRED),
        ({"when": on(95, 105)}, words.CANNOT_TELL),
        ({"when": on(90, 90, 1)}, words.CANNOT_TELL),
        ({"when": on(90, 90, 2)}, words.CANNOT_TELL),
        ({"when": on(UNKNOWN_START, UNKNOWN_END)}, words.CANNOT_TELL),
        ({"when": on(DAY + 1)}, words.AFTERWARDS),
        ({"expires": on(DAY)}, words.IN_FORCE),
        ({"expires": on(DAY - 1)}, words.EXPIRED),
        ({"expires": on(DAY - 5, DAY + 5)}, words.CANNOT_TELL),
        ({"expires": on(500, 500, 2)}, words.CANNOT_TELL),
        ({"expires": on(UNKNOWN_START, UNKNOWN_END)}, words.CANNOT_TELL),
        ({"version": 1}, words.OTHER_VERSION),
        ({"version": 3}, words.OTHER_VERSION),
        ({"version": None}, words.CANNOT_TELL),
        ({"version": None, "intervention": "I1"}, words.IN_FORCE),
        ({"version": None, "intervention": "I2"}, words.NOT_COVERED),
        ({"steps": ("S1", "S2")}, words.IN_FORCE),
        ({"steps": ("S2",)}, words.NOT_COVERED),
        ({"scope": "the basin only"}, words.CANNOT_TELL),
        ({"scope": "the basin only", "steps": ("S1",)}, words.IN_FORCE),
        ({"capacity": "owner"}, words.MISSING),
        ({"capacity": ""}, words.CANNOT_TELL),
        ({"person": ""}, words.CANNOT_TELL),
        ({"decision": ""}, words.CANNOT_TELL),
        ({"decision": "ratified", "when": on(DAY + 9)}, words.RATIFIED),
        ({"decision": "ratified", "when": on(DAY - 9)}, words.CANNOT_TELL),
        ({"decision": "ratified", "when": on(DAY - 9, DAY + 9)}, words.CANNOT_TELL),
        ({"decision": "ratified", "when": on(DAY + 1, DAY + 9)}, words.CANNOT_TELL),
        ({"decision": "ratified", "when": on(DAY + 9, DAY + 9, 2)}, words.CANNOT_TELL),
        ({"person": "Ada Wren"}, words.AUTHOR_ALONE),
    ],
)
def test_one_authorisation(more: dict[str, Any], outcome: str) -> None:
    assert outcomes(ask(given_leave(**more))) == [outcome]


def test_nothing_on_record_is_missing_in_each_needed_capacity() -> None:
    found = ask(needed=BOTH)
    assert found.needed == ("curator", "owner")
    assert [one.capacity for one in found.missing] == ["curator", "owner"]
    assert found.missing[0].sentence == "Curator: no authorisation on record."


def test_a_sentence_names_who_and_conditions() -> None:
    (found,) = ask(given_leave(conditions="no water")).there
    assert found.sentence == (
        "Curator: in force on the day of the step, on conditions that a person must judge:"
        " no water: Bo Linden as curator (A1)."
    )


def test_a_kind_without_a_row_is_unknown_and_not_free() -> None:
    found = ask(given_leave(), needed=(Needed("clean", ""),))
    assert outcomes(found) == [words.NOT_RECORDED]
    assert found.uncertain == found.findings
    assert found.start is None


def test_a_blank_capacity_says_that_none_is_needed_unless_another_is_named() -> None:
    none = Needed("consolidate", "")
    assert outcomes(ask(needed=(none,))) == [words.NONE_NEEDED]
    assert outcomes(ask(needed=(none, *CURATOR))) == [words.MISSING]


def test_historic_work_needs_none_even_where_the_table_names_some() -> None:
    found = ask(REFUSAL, step=replace(STEP, standing="historic", planned=""), needed=BOTH)
    assert (found.needed, outcomes(found), found.start) == ((), [words.HISTORIC], None)


@pytest.mark.parametrize(
    ("more", "outcome"),
    [
        ({}, words.STANDING),
        ({"kinds": ("clean",)}, words.MISSING),
        ({"kinds": ()}, words.CANNOT_TELL),
        ({"since": on(DAY + 1)}, words.AFTERWARDS),
        ({"since": on(UNKNOWN_START, UNKNOWN_END)}, words.CANNOT_TELL),
        ({"until": on(DAY)}, words.STANDING),
        ({"until": on(DAY - 1)}, words.EXPIRED),
        ({"until": on(DAY - 1, DAY + 1)}, words.CANNOT_TELL),
        ({"until": on(200, 200, 2)}, words.CANNOT_TELL),
        ({"person": ""}, words.CANNOT_TELL),
    ],
)
def test_routine_care_under_a_standing_approval(more: dict[str, Any], outcome: str) -> None:
    approval = StandingApproval("G1", ("consolidate",), "owner", "Cy Marsh", on(1))
    routine = replace(STEP, standing="routine care", planned="")
    found = ask(step=routine, standing=(replace(approval, **more),))
    assert outcomes(found) == [outcome]
    if outcome == words.STANDING:
        assert outcomes(ask(step=STEP, standing=(approval,))) == [words.MISSING]


def test_first_aid_is_to_be_ratified_until_it_is() -> None:
    aid = replace(STEP, standing="first aid", planned="")
    found = ask(step=aid, plan=None)
    assert (outcomes(found), found.start) == ([words.TO_BE_RATIFIED], None)
    ratified = given_leave(
        decision="ratified", version=None, intervention="I1", when=on(DAY + 3), person="Ada Wren"
    )
    assert outcomes(ask(ratified, step=aid, plan=None)) == [words.RATIFIED]
    assert outcomes(ask(ratified, step=aid)) == [words.TO_BE_RATIFIED]  # by the author alone
    other = replace(ratified, intervention="I2")
    assert outcomes(ask(other, step=aid, plan=None)) == [words.TO_BE_RATIFIED]
    refused = replace(ratified, decision="refused")
    assert outcomes(ask(ratified, refused, step=aid, plan=None)) == [words.REFUSED]
    unknown = ask(step=aid, plan=None, needed=())
    assert outcomes(unknown) == [words.NOT_RECORDED, words.TO_BE_RATIFIED]
    assert outcomes(ask(ratified, step=aid, plan=None, needed=())) == [words.NOT_RECORDED]


def test_a_refusal_beats() -> None:
    assert outcomes(ask(given_leave(), REFUSAL)) == [words.REFUSED]
    assert outcomes(ask(given_leave(), replace(REFUSAL, version=1))) == [words.IN_FORCE]
    assert outcomes(ask(given_leave(), replace(REFUSAL, steps=("S2",)))) == [words.IN_FORCE]
    assert outcomes(ask(given_leave(), replace(REFUSAL, when=on(DAY + 1)))) == [words.IN_FORCE]
    assert outcomes(ask(given_leave(), replace(REFUSAL, when=on(80, 95)))) == [words.REFUSED]
    assert outcomes(ask(replace(REFUSAL, when=on(DAY + 1)))) == [words.REFUSED]
    assert outcomes(ask(given_leave(), replace(REFUSAL, when=on(DAY)))) == [words.REFUSED]
    late = replace(REFUSAL, when=on(DAY + 1))
    in_doubt = given_leave(when=on(95, 105))
    assert outcomes(ask(in_doubt, late)) == [words.CANNOT_TELL] * 2


@pytest.mark.parametrize(
    "more", [{"when": on(90, 90, 2)}, {"when": on(110, 110, 1)}, {"scope": "the basin"}]
)
def test_a_refusal_in_doubt_leaves_nothing_in_force(more: dict[str, Any]) -> None:
    doubtful = ask(given_leave(), replace(REFUSAL, **more))
    assert outcomes(doubtful) == [words.CANNOT_TELL] * 2
    assert "in force" not in doubtful.findings[0].sentence


@pytest.mark.parametrize(
    ("plan", "needed", "given_by", "expected"),
    [
        (PLAN, (Needed("consolidate", "curator", True),), [AUTHOR], [words.IN_FORCE]),
        (PLAN, CURATOR, [AUTHOR], [words.AUTHOR_ALONE]),
        # the author in both capacities is still alone
        (PLAN, BOTH, [AUTHOR, replace(AUTHOR, capacity="owner")], [words.AUTHOR_ALONE] * 2),
        # another person of a needed capacity joins
        (PLAN, BOTH, [AUTHOR, given_leave(capacity="owner")], [words.IN_FORCE] * 2),
        (PLAN, CURATOR, [AUTHOR, given_leave()], [words.IN_FORCE]),
        # another person of a capacity that is not needed does not count
        (PLAN, CURATOR, [AUTHOR, given_leave(capacity="owner")], [words.AUTHOR_ALONE]),
        # another person whose authorisation is in doubt
        (
            PLAN,
            BOTH,
            [AUTHOR, given_leave(capacity="owner", when=on(90, 90, 2))],
            [words.CANNOT_TELL] * 2,
        ),
        # another person in a capacity that nobody wrote down
        (PLAN, CURATOR, [AUTHOR, given_leave(capacity="")], [words.CANNOT_TELL]),
        (PLAN, BOTH[1:], [AUTHOR, replace(AUTHOR, capacity="owner")], [words.AUTHOR_ALONE]),
        (replace(PLAN, authors=()), CURATOR, [given_leave()], [words.CANNOT_TELL]),
    ],
)
def test_an_author_does_not_authorise_alone(
    plan: WorkPlan,
    needed: tuple[Needed, ...],
    given_by: list[Authorisation],
    expected: list[str],
) -> None:
    assert outcomes(ask(*given_by, plan=plan, needed=needed)) == expected


@pytest.mark.parametrize(
    ("step", "clause"),
    [
        (replace(STEP, planned="S2"), "deviation: planned as clean (S2), not consolidate"),
        (replace(STEP, planned=""), "the step is not linked to a step of version 2"),
        (replace(STEP, planned="S9"), "the step is not linked to a step of version 2"),
    ],
)
def test_a_deviation_is_not_covered_by_the_plan(step: RecordedStep, clause: str) -> None:
    (found,) = ask(given_leave(), step=step).findings
    assert found.outcome == words.NOT_COVERED
    assert clause in found.sentence


def test_kind_or_standing_not_recorded() -> None:
    assert outcomes(ask(given_leave(), step=replace(STEP, kind=""))) == [words.CANNOT_TELL]
    assert outcomes(ask(step=replace(STEP, standing=""))) == [words.CANNOT_TELL]
    assert outcomes(ask(given_leave(), step=replace(STEP, standing=""))) == [words.IN_FORCE]


@pytest.mark.parametrize(
    ("reason", "name", "outcome", "sentence"),
    [
        ("rain", "Di", words.STARTED, "Started before authorisation by Di: rain"),
        ("", "Di", words.UNEXPLAINED, "A start before authorisation: the reason is not recorded."),
        (
            "rain",
            " ",
            words.UNEXPLAINED,
            "A start before authorisation: the name is not recorded.",
        ),
        (
            "",
            "",
            words.UNEXPLAINED,
            "A start before authorisation: the reason and the name are not recorded.",
        ),
    ],
)
def test_a_start_before_authorisation(reason: str, name: str, outcome: str, sentence: str) -> None:
    step = replace(STEP, unauthorised_reason=reason, unauthorised_by=name)
    late = given_leave(when=on(DAY + 2))
    ratified = given_leave(decision="ratified", when=on(DAY + 2))
    for found in (ask(step=step), ask(late, step=step), ask(ratified, step=step)):
        assert found.start is not None
        assert (found.start.outcome, found.start.sentence) == (outcome, sentence)
    assert ask(given_leave(), step=step).start is None


def test_a_reason_given_is_shown_where_the_authorisation_is_in_doubt() -> None:
    step = replace(STEP, unauthorised_reason="rain", unauthorised_by="Di")
    in_doubt = given_leave(when=on(95, 105))
    found = ask(in_doubt, step=step)
    assert found.start is not None
    assert found.start.outcome == words.STARTED
    assert ask(in_doubt).start is None


def test_the_nearest_to_an_authorisation_is_told() -> None:
    expired, late = given_leave(expires=on(DAY - 1)), given_leave(when=on(DAY + 1))
    assert outcomes(ask(late, expired)) == [words.EXPIRED]
    assert outcomes(ask(late, expired, AUTHOR)) == [words.AUTHOR_ALONE]
    assert outcomes(ask(given_leave(), plan=None)) == [words.NOT_COVERED]


def test_dates_against_every_day() -> None:
    spans = [on(a, b) for a in range(4) for b in range(a, 4)]
    for since, until, day in product(spans, [None, *spans], spans):
        seen = set()
        for start, end, when in product(
            range(since.earliest, since.latest + 1),
            [9] if until is None else range(until.earliest, until.latest + 1),
            range(day.earliest, day.latest + 1),
        ):
            if start <= end:
                seen.add(BEFORE if when < start else OVER if when > end else HOLDS)
        found = holds_on(since, until, day)
        if not seen:  # it would have ended before it began
            continue
        ordered = until is None or since.latest <= until.earliest
        exact = all(one is None or one.earliest == one.latest for one in (since, until))
        if found != UNSURE:
            assert {found} == seen
            assert exact or found != HOLDS
        elif ordered:
            assert len(seen) > 1 or (seen == {HOLDS} and not exact)
        for flags in (1, 2, 3):
            assert holds_on(since, until, day._replace(flags=flags)) == UNSURE
            assert holds_on(since._replace(flags=flags), until, day) == UNSURE
            if until is not None:
                assert holds_on(since, until._replace(flags=flags), day) == UNSURE


people = st.sampled_from(["Ada Wren", "Bo Linden", "Cy Marsh", ""])
capacities = st.sampled_from(["curator", "owner", "engineer", ""])
days = st.sampled_from([on(90), on(DAY), on(110), on(95, 105), on(90, 90, 2)])
decisions = st.builds(
    Authorisation,
    st.sampled_from(["A1", "A2", "A3"]),
    capacities,
    people,
    st.sampled_from(["authorised", "authorised", "ratified", "refused", ""]),
    st.sampled_from([2, 2, 1, None]),
    st.sampled_from(["", "", "I1", "I2"]),
    st.sampled_from([(), ("S1",), ("S2",)]),
    st.sampled_from(["", "", "the basin"]),
    when=days,
    expires=st.sampled_from([None, on(120), on(95), on(99, 101), on(120, 120, 2)]),
)
steps = st.builds(
    RecordedStep,
    st.just("I1"),
    st.sampled_from(["consolidate", "clean", ""]),
    st.sampled_from(["S1", "S2", ""]),
    st.sampled_from(["planned", "routine care", "first aid", "historic", ""]),
    days,
)
tables = st.lists(
    st.builds(Needed, st.sampled_from(["consolidate", "clean"]), capacities, st.booleans()),
    max_size=4,
)


@settings(max_examples=400, deadline=None)
@given(steps, st.lists(decisions, max_size=4), tables, st.sampled_from([PLAN, None]))
def test_what_holds_of_every_answer(
    step: RecordedStep, given_by: list[Authorisation], rows: list[Needed], plan: WorkPlan | None
) -> None:
    found = authority(plan, step, given_by, (), rows)
    assert found.findings
    assert {one.outcome for one in found.findings} <= set(OUTCOMES)
    assert all(one.sentence.endswith((".",)) for one in found.findings)
    in_force = [one for one in found.findings if one.outcome == words.IN_FORCE]
    for one in in_force:
        # somebody named gave it, on a certain day before the step, and it had not run out
        assert any(
            a.ref == one.ref
            and a.decision == "authorised"
            and a.person
            and a.capacity == one.capacity
            and a.when.earliest == a.when.latest <= step.when.earliest
            and not a.when.flags | step.when.flags
            and (a.intervention == "I1" or (plan is not None and a.version == plan.version))
            and (a.expires is None or a.expires.earliest >= step.when.latest)
            for a in given_by
        )
    if in_force:
        assert not any(
            a.decision == "refused" and a.intervention == "I1" and a.when.latest <= DAY - 10
            for a in given_by
        )
    if not any(row.kind == step.kind for row in rows) and step.standing != "historic":
        assert not found.there
        assert words.NONE_NEEDED not in outcomes(found)


@settings(max_examples=200, deadline=None)
@given(steps, st.lists(decisions, max_size=3), tables)
def test_a_plain_refusal_leaves_nothing_in_force(
    step: RecordedStep, given_by: list[Authorisation], rows: list[Needed]
) -> None:
    dated = replace(step, when=on(DAY), standing="planned", kind="clean")
    refusal = replace(REFUSAL, version=None, intervention="I1")
    found = authority(PLAN, dated, [*given_by, refusal], (), rows)
    assert outcomes(found) == [words.REFUSED]


@settings(max_examples=200, deadline=None)
@given(st.permutations([given_leave(), AUTHOR, replace(AUTHOR, capacity="owner"), REFUSAL]))
def test_the_order_of_the_records_does_not_matter(given_by: list[Authorisation]) -> None:
    assert outcomes(ask(*given_by, needed=BOTH)) == [words.REFUSED]
    without = [one for one in given_by if one.decision != "refused"]
    assert outcomes(ask(*without, needed=BOTH)) == [words.IN_FORCE] * 2
