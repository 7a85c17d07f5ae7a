"""A planned step is held against what lies at the place, and near it."""

from __future__ import annotations

import pytest
from sqlalchemy import Connection

from conservedb.questions.basics import NoSuch
from conservedb.questions.checks import check_step
from conservedb.questions.checks_answers import PlannedStep
from tests.questions.checking import ON, checked, connection, found_of_step

__all__ = ["checked", "connection"]

STEAM = PlannedStep("steam")


def test_steam_warns_of_the_softening_adhesive_two_millimetres_away(
    connection: Connection,
) -> None:
    # B-72 softens from 37 C (Cardiff 2022), steam is at 100 C: far above it.
    (near,) = found_of_step(connection, "step.near", "S1", STEAM, "heat-near-softening")
    assert near.outcome == "broken" and near.certain
    assert near.layers == ("L1",)
    assert near.places == ("J1", "S1")
    assert "2 mm away, path open (REP) (J1)" in near.sentence
    assert "softens from 37 C" in near.sentence
    assert "steam, 100 C at S1" in near.sentence


def test_the_relation_holds_both_ways_but_only_for_its_places(connection: Connection) -> None:
    (own,) = found_of_step(connection, "step.near", "J1", STEAM, "heat-near-softening")
    assert "at the place itself" in own.sentence
    (other,) = found_of_step(connection, "step.near", "S2", STEAM, "heat-near-softening")
    assert other.outcome == "cannot tell"
    assert other.missing == ("how far J1 is from S2",)


def test_what_is_not_recorded_as_near_is_not_held_to_be_far(connection: Connection) -> None:
    (finding,) = found_of_step(connection, "step.far", "S1", STEAM, "heat-near-softening")
    assert finding.missing == ("how far J1 is from S1",)


def test_a_heat_of_no_stated_temperature_cannot_be_judged(connection: Connection) -> None:
    step = PlannedStep("hot-air")
    (finding,) = found_of_step(connection, "step.near", "S1", step, "heat-near-softening")
    assert finding.missing == ("how hot the hot air gets",)


@pytest.mark.parametrize(("temperature", "finds"), [(36.0, False), (37.0, True), (40.0, True)])
def test_the_lowest_published_figure_counts(
    connection: Connection, temperature: float, finds: bool
) -> None:
    step = PlannedStep("deionised-water", "swab", temperature)
    findings = found_of_step(connection, "step.near", "S1", step, "heat-near-softening")
    assert bool(findings) is finds


def test_nothing_hot_is_no_question_of_heat(connection: Connection) -> None:
    step = PlannedStep("acetone", "swab")
    assert found_of_step(connection, "step.near", "S1", step, "heat-near-softening") == []


def test_water_finds_salts_in_the_body(connection: Connection) -> None:
    # Common practice: soluble salts move with water.
    step = PlannedStep("deionised-water", "poultice")
    findings = found_of_step(connection, "step.near", "S1", step, "water-near-sensitive")
    broken = [one for one in findings if one.outcome == "broken"]
    assert [one.layers for one in broken] == [("LM",)]
    assert "in the body of B1" in broken[0].sentence


def test_water_on_a_tight_path_and_on_something_unknown_cannot_be_judged(
    connection: Connection,
) -> None:
    # Animal glue swells and dissolves in water (lit.CGLUE in the shipped traits).
    step = PlannedStep("deionised-water", "swab")
    findings = found_of_step(connection, "step.tight", "S1", step, "water-near-sensitive")
    missing = {fact for one in findings for fact in one.missing}
    assert "whether the deionised water gets there" in missing
    assert "what L2 is made of, and whether it suffers from water" in missing
    assert {one.outcome for one in findings} == {"cannot tell"}


def test_water_on_porcelain_that_carries_nothing_else_finds_nothing(
    connection: Connection,
) -> None:
    step = PlannedStep("deionised-water", "swab")
    answer = check_step(connection, "step.hard", "S1", step, ON)
    assert answer.findings == ()


def test_acid_on_limestone_blocks(connection: Connection) -> None:
    # Common practice: acid dissolves calcite.
    step = PlannedStep("muriatic-acid", "swab")
    (finding,) = found_of_step(connection, "step.far", "S1", step, "acid-on-calcite")
    assert finding.outcome == "broken" and finding.components == ("B1",)
    answer = check_step(connection, "step.far", "S1", step, ON)
    assert answer.findings[0].rule.severity == "block"
    (unknown,) = found_of_step(connection, "step.hard", "S1", step, "acid-on-calcite")
    assert unknown.missing == ("whether each of these bears acid",)


def test_a_step_at_a_loaded_joint_wants_support_and_a_solvent_a_spot_test(
    connection: Connection,
) -> None:
    step = PlannedStep("acetone", "vapour")
    rules = ("loaded-without-support-record", "no-spot-test-before-solvent")
    for rule in rules:
        (finding,) = found_of_step(connection, "step.far", "J1", step, rule)
        assert "acetone, vapour is planned at" in finding.sentence
    assert found_of_step(connection, "support.held", "J1", step, rules[0]) == []
    assert found_of_step(connection, "swab.tested", "S1", step, rules[1]) == []


def test_only_the_step_is_judged(connection: Connection) -> None:
    answer = check_step(connection, "bare.none", "J1", PlannedStep("acetone"), ON)
    assert {one.finding.rule for one in answer.findings} == {
        "loaded-without-support-record",
        "no-spot-test-before-solvent",
    }
    assert answer.step == "acetone" and answer.place == "J1"


def test_no_such_place_and_no_such_agent(connection: Connection) -> None:
    with pytest.raises(NoSuch, match=r"location of step\.far"):
        check_step(connection, "step.far", "S9", STEAM, ON)
    with pytest.raises(NoSuch, match="'vitriol'"):
        check_step(connection, "step.far", "S1", PlannedStep("vitriol"), ON)
