"""What is complete is amended with a reason."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from sqlalchemy import Engine

from conservedb.exchange.amending import amend
from conservedb.exchange.completed import needs_reason
from conservedb.exchange.entering import enter
from conservedb.store.connect import reading
from tests.conftest import TODAY
from tests.exchange.bench import ME, OBJECT, entries, fill

WHY = replace(ME, reason="the label was read again")


@pytest.fixture
def engine(new_database: Callable[[str], Engine]) -> Engine:
    """An ended treatment, an open one with an authorised plan and one that is only written."""
    made = fill(new_database("bench.db"))
    written = enter(
        made,
        lambda _: entries(
            treatments=[{"ref": "T1", "begun": "2012", "ended": "2012-11-30"}, {"ref": "T2"}],
            plans=[
                {"ref": "P1", "treatment": "T2", "version": "1"},
                {"ref": "P2", "treatment": "T2", "version": "2"},
            ],
            planned_steps=[
                {"ref": "S1", "plan": "P1", "position": "1", "kind": "clean"},
                {"ref": "S2", "plan": "P2", "position": "1", "kind": "clean"},
            ],
            interventions=[
                {"ref": "I7", "treatment": "T1", "kind": "clean", "date": "2012-11"},
                {"ref": "I8", "treatment": "T2", "kind": "clean", "date": "2026-10"},
            ],
            agents=[
                {"ref": "G1", "intervention": "I7", "material": "acetone"},
                {"ref": "G2", "intervention": "I8", "material": "acetone"},
            ],
            authorisations=[
                {"ref": "A1", "plan": "P1", "person": "Ida Holm", "decision": "authorised"},
                {"ref": "A2", "plan": "P2", "person": "Ida Holm", "decision": "refused"},
            ],
        ),
        ME,
        TODAY,
    )
    assert written.faults == ()
    return made


COMPLETE = {
    ("treatments", "T1"): "treatment T1 was ended (30 November 2012)",
    ("interventions", "I7"): "treatment T1 was ended (30 November 2012)",
    ("agents", "G1"): "treatment T1 was ended (30 November 2012)",
    ("plans", "P1"): "the plan was authorised (A1)",
    ("planned_steps", "S1"): "the plan was authorised (A1)",
    ("authorisations", "A1"): "a decision that was given",
    ("authorisations", "A2"): "a decision that was given",
}
OPEN = (
    ("treatments", "T2"),
    ("interventions", "I8"),
    ("interventions", "I1"),
    ("agents", "G2"),
    ("plans", "P2"),
    ("planned_steps", "S2"),
    ("places", "J01"),
)


@pytest.mark.parametrize(("subject", "key"), COMPLETE)
def test_a_complete_record_is_amended_with_a_reason_only(
    engine: Engine, subject: str, key: str
) -> None:
    with reading(engine) as connection:
        assert needs_reason(connection, subject, OBJECT, key).startswith(COMPLETE[subject, key])
    refused = amend(engine, subject, OBJECT, key, {"note": "new"}, ME, TODAY)
    assert COMPLETE[subject, key] in refused.faults[0].reason
    assert refused.faults[0].remedy == "give the reason for this change"
    assert not amend(engine, subject, OBJECT, key, {"note": "new"}, WHY, TODAY).faults


@pytest.mark.parametrize(("subject", "key"), OPEN)
def test_an_open_record_is_amended_without(engine: Engine, subject: str, key: str) -> None:
    with reading(engine) as connection:
        assert needs_reason(connection, subject, OBJECT, key) == ""
    assert not amend(engine, subject, OBJECT, key, {"note": "new"}, ME, TODAY).faults


@pytest.mark.parametrize(
    ("subject", "cells", "complete"),
    [
        ("interventions", {"ref": "N", "treatment": "T1", "kind": "coat"}, True),
        ("interventions", {"ref": "N", "treatment": "T2", "kind": "coat"}, False),
        ("layers", {"ref": "N", "place": "J01", "intervention": "I7"}, True),
        ("layers", {"ref": "N", "place": "J01", "intervention": "I8"}, False),
        ("layers", {"ref": "N", "place": "J01"}, False),
        ("planned_steps", {"ref": "N", "plan": "P1", "position": "2", "kind": "coat"}, True),
        ("planned_steps", {"ref": "N", "plan": "P2", "position": "2", "kind": "coat"}, False),
        ("plans", {"ref": "N", "treatment": "T1", "version": "1"}, True),
        ("authorisations", {"ref": "N", "plan": "P1", "person": "Ida Holm"}, False),
    ],
)
def test_what_is_added_to_something_complete_needs_a_reason_too(
    engine: Engine, subject: str, cells: dict[str, str], complete: bool
) -> None:
    made = entries(**{subject: [cells]})
    assert bool(enter(engine, lambda _: made, ME, TODAY).faults) is complete
    assert not enter(engine, lambda _: made, WHY, TODAY).faults


def test_ending_a_treatment_needs_no_reason(engine: Engine) -> None:
    assert not amend(engine, "treatments", OBJECT, "T2", {"ended": "2026-11-02"}, ME, TODAY).faults
    assert amend(engine, "treatments", OBJECT, "T2", {"ended": ""}, ME, TODAY).faults
