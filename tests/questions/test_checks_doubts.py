"""What is not recorded is not read as though it were: support, barriers, softening, salts.

Each case is a small object; the values are those of the shipped reference tables.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import Connection

from conservedb.knowledge.rule_case import Finding
from conservedb.questions.checks_answers import NoAgent, PlannedStep
from tests.questions.checking import (
    Tables,
    asking,
    changed,
    found,
    found_of_step,
    import_tables,
)

BROKEN, CANNOT_TELL = "broken", "cannot tell"
WATER, STEAM = PlannedStep("deionised-water"), PlannedStep("steam")
SUPPORT, BARE, DETACH = (
    "loaded-without-support-record",
    "cross-linked-without-barrier",
    "fill-not-detachable",
)
HEAT, WET = "heat-near-softening", "water-near-sensitive"


def fill(made: Tables) -> None:
    made.add("people", name="Tom Aldous")
    for cases in (_supports, _barriers, _heated, _wetted, _metals):
        cases(made)


def _supports(made: Tables) -> None:
    for number, closed, done, cells in (
        ("held.before", "1989", "1900", {"places": "J1"}),
        ("held.unclosed", "", "2024-05-02", {"places": "J1"}),
        ("held.elsewhere", "1989", "2020-05", {"places": "J2"}),
        ("held.part", "1989", "2020-05", {"components": "B1"}),
        ("held.about", "1989", "2020~", {"places": "J1"}),
        ("held.overlap", "1989", "1985/1995", {"places": "J1"}),
        ("held.since", "1989", "2020-05", {"places": "J1"}),
    ):
        _joint_with_two(made, number, closed)
        made.add(
            "interventions", object=number, ref="i1", kind="support", date=done,
            people="Tom Aldous", **cells,
        )  # fmt: skip
    for number, laid in (("held.old-cradle", "1900"), ("held.cradle", "2020-05")):
        _joint_with_two(made, number, "1989")
        made.layer(number, "L1", "oak", "temporary support", laid)


def _joint_with_two(made: Tables, number: str, closed: str) -> None:
    made.joint(number)
    made.add("places", object=number, mark="J2", kind="joint", component="B1", other_component="B2")
    if closed:
        made.add("joint_events", object=number, place="J1", ref="e1", event="closed", date=closed)


def _barriers(made: Tables) -> None:
    for name, material, cells in (
        ("sound", "b72", {}),
        ("recipe", "b72-22-acetone", {}),
        ("epoxy", "epoxy", {}),
        ("epoxy-class", "epoxy-resin", {}),
        ("bulked", "epoxy-silica", {}),
        ("plaster", "gypsum-plaster", {}),
        ("nylon", "soluble-nylon", {}),
        ("inferred", "epoxy", {"identified": "inferred"}),
        ("class", "acrylic-resin", {}),
        ("unnamed", "", {"identified": "unknown"}),
        ("pval", "pval", {}),
        ("cyano", "cyano", {}),
        ("part", "b72", {"coverage": "part"}),
        ("spots", "b72", {"coverage": "spots"}),
        ("unknown", "b72", {"coverage": "unknown"}),
        ("blank", "b72", {"coverage": ""}),
        ("damp", "b72", {"dry": "no"}),
        ("later", "b72", {"date": "1995"}),
        ("perhaps-later", "b72", {"date": "1985/1995", "stack": ""}),
        ("above", "b72", {"date": "1990"}),
    ):
        for number, role in (("under", "adhesive"), ("fill", "fill")):
            number = f"{number}.{name}"
            made.joint(number)
            stacks = ("2", "0") if name == "above" else ("0", "2")
            for ref, side, stack in (("L1", "A", stacks[0]), ("L3", "B", stacks[1])):
                laid = {"date": "1989", "stack": stack, "side": side, "dry": "yes", **cells}
                made.layer(number, ref, material, "barrier", **laid)
            made.layer(number, "L2", "epoxy", role, "1990", stack="1")


def _heated(made: Tables) -> None:
    for number, material in (
        ("hot.class", "acrylic-resin"),
        ("hot.resin", "k80"),
        ("hot.ester", "cellulose-ester"),
        ("hot.thermoplastic", "synthetic-thermoplastic"),
        ("hot.below", "lacquer"),
        ("hot.not-nitrate", "acetate"),
        ("hot.mortar", "lime-mortar"),
    ):
        made.joint(number)
        made.surface(number)
        made.layer(number, "L1", material, "coating", place="S1")
    for key, parent in (("lacquer", "cellulose-ester"), ("acetate", "cellulose-ester")):
        made.add("material_classes", key=key, name=f"{key} (class)", parent=parent)
    cells = {"trait": "cellulose nitrate", "holds": "no", "basis": "common practice"}
    made.add("traits", key="acetate/cellulose nitrate", **{"class": "acetate"}, **cells)
    for number, material in (
        ("far.ester", "cellulose-ester"),
        ("far.class", "acrylic-resin"),
        ("far.nobody", ""),
    ):
        made.joint(number)
        made.surface(number)
        made.surface(number, "S2")
        made.layer(number, "L1", material, "coating", place="S2", identified="unknown")


def _wetted(made: Tables) -> None:
    for number, material, origin in (
        ("wet.salts", "alkali-sulphate", "arisen"),
        ("wet.limescale", "limescale", "arisen"),
        ("wet.nobody", "", "applied"),
    ):
        made.joint(number)
        made.surface(number)
        made.surface(number, "S2")
        made.layer(number, "L1", material, "deposit", place="S2", origin=origin)
    made.joint("wet.portland", body="porcelain")
    made.surface("wet.portland")
    made.layer("wet.portland", "L1", "portland-cement", "fill", place="S1")
    made.layer("wet.portland", "L2", "epoxy", "coating", place="S1")


def _metals(made: Tables) -> None:
    for number, material, role, load in (
        ("metal.lead", "lead-run", "lead run", ""),
        ("metal.hard", "silver-solder", "solder", ""),
        ("metal.free", "lead-run", "lead run", "0"),
    ):
        made.joint(number, load=load)
        made.layer(number, "L1", material, role)


@pytest.fixture(scope="module")
def department(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return import_tables(tmp_path_factory.mktemp("doubts"), fill)


@pytest.fixture
def connection(department: Path) -> Iterator[Connection]:
    with asking(department) as open_connection:
        yield open_connection


# -- support ------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("number", "doubt"),
    [
        ("held.before", "before the closing (i1, 1900)"),
        ("held.unclosed", "with no closing on record (i1, 2 May 2024)"),
        ("held.elsewhere", "for another place, J2 (i1, May 2020)"),
        ("held.part", "for B1 (i1, May 2020)"),
        ("held.about", "but not certainly there since the closing (i1, "),
        ("held.overlap", "but not certainly there since the closing (i1, "),
        ("held.old-cradle", "before the closing (L1, 1900)"),
    ],
)
def test_a_support_that_is_not_known_to_stand(
    connection: Connection, number: str, doubt: str
) -> None:
    (finding,) = found_of_step(connection, number, "J1", WATER, SUPPORT)
    assert finding.outcome == CANNOT_TELL and finding.missing == ("whether J1 is supported",)
    assert f"support is recorded {doubt}" in finding.sentence
    assert ": not known to stand" in finding.sentence


@pytest.mark.parametrize("number", ["held.since", "held.cradle"])
def test_a_support_put_in_there_since_the_closing_counts(
    connection: Connection, number: str
) -> None:
    assert found_of_step(connection, number, "J1", WATER, SUPPORT) == []


# -- barriers -----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("name", "outcome", "says"),
    [
        # The class rules of the shipped traits: cross-linked, or no solvent at all.
        ("epoxy", BROKEN, r"which does not dissolve again \(cross-linked\), lies between them"),
        ("epoxy-class", BROKEN, r"does not dissolve again \(cross-linked\)"),
        ("bulked", BROKEN, r"does not dissolve again \(cross-linked\)"),
        ("plaster", BROKEN, r"does not dissolve again \(no solvent\)"),
        ("nylon", BROKEN, r"does not dissolve again \(cross-linked\)"),
        ("inferred", CANNOT_TELL, r"what L1 is made of"),
        ("class", CANNOT_TELL, r"whether acrylic resin \(L1\) dissolves again"),
        ("unnamed", CANNOT_TELL, r"what L1 is made of"),
        ("pval", CANNOT_TELL, r"whether poly\(vinyl alcohol\) \(L1\) dissolves again"),
        ("cyano", CANNOT_TELL, r"dissolves again"),
        ("part", CANNOT_TELL, r"whether L1 covers all that L2 lies on"),
        ("spots", CANNOT_TELL, r"covering spots only.*whether L1 covers all"),
        ("unknown", CANNOT_TELL, r"of no recorded coverage.*whether L1 covers all"),
        ("blank", CANNOT_TELL, r"of no recorded coverage.*whether L1 covers all"),
        ("damp", CANNOT_TELL, r"whether L1, covered damp, parts L2 from the body"),
        ("later", CANNOT_TELL, r"laid later; no barrier is on record.*whether there was"),
        ("above", CANNOT_TELL, r"whether L1 was laid before L2"),
        ("perhaps-later", CANNOT_TELL, r"whether L1 was laid before L2"),
    ],
)
def test_a_barrier_that_may_not_let_off_what_lies_on_it(
    connection: Connection, name: str, outcome: str, says: str
) -> None:
    for number, rule in ((f"under.{name}", BARE), (f"fill.{name}", DETACH)):
        (finding,) = found(connection, number, rule)
        assert finding.outcome == outcome, finding
        told = f"{finding.sentence} {' '.join(finding.missing)}"
        assert re.search(says, told), told


@pytest.mark.parametrize("name", ["sound", "recipe"])
def test_a_whole_dry_barrier_that_dissolves_counts(connection: Connection, name: str) -> None:
    assert found(connection, f"under.{name}", BARE) == []
    assert found(connection, f"fill.{name}", DETACH) == []


# -- heat ---------------------------------------------------------------------------------


def missing(findings: list[Finding]) -> list[str]:
    return [fact for one in findings for fact in one.missing]


@pytest.mark.parametrize(
    ("number", "unknown"),
    [
        ("hot.class", "softening of acrylic resin"),
        ("hot.resin", "softening of cyclohexanone resin"),
        ("hot.ester", "softening of cellulose ester"),
    ],
)
def test_unrecorded_softening_is_said(connection: Connection, number: str, unknown: str) -> None:
    for step in (STEAM, PlannedStep("hot-air")):
        findings = found_of_step(connection, number, "S1", step, HEAT)
        assert unknown in missing(findings)
        assert any("L1" in one.layers for one in findings)


@pytest.mark.parametrize(
    ("number", "may_be"),
    [
        ("hot.ester", True),
        ("hot.thermoplastic", True),  # above the class of nitrate
        ("hot.below", True),  # below it
        ("hot.not-nitrate", False),  # recorded as no nitrate
        ("hot.class", False),
    ],
)
def test_a_class_that_may_be_nitrate_is_named(
    connection: Connection, number: str, may_be: bool
) -> None:
    step = PlannedStep("hot-air", temperature_c=150)
    facts = missing(found_of_step(connection, number, "S1", step, HEAT))
    assert any("is cellulose nitrate, which decays and may burn" in f for f in facts) is may_be


def test_what_bears_heat_is_not_doubted(connection: Connection) -> None:
    # Common practice: stone and lime mortar bear working warmth when dry.
    assert found_of_step(connection, "hot.mortar", "S1", STEAM, HEAT) == []


@pytest.mark.parametrize(
    ("number", "manner"),
    [
        ("far.ester", "lie layers that may be cellulose nitrate"),
        ("far.class", "lie layers that may suffer from such heat"),
        ("far.nobody", "lie layers that may suffer from such heat"),
    ],
)
def test_what_may_suffer_from_heat_elsewhere_is_named(
    connection: Connection, number: str, manner: str
) -> None:
    (finding,) = found_of_step(connection, number, "S1", STEAM, HEAT)
    assert manner in finding.sentence and finding.layers == ("L1",)
    assert finding.missing == ("how far S2 is from S1",)


# -- water --------------------------------------------------------------------------------


@pytest.mark.parametrize("step", [WATER, STEAM], ids=lambda step: step.agent)
def test_salts_elsewhere_on_the_part_are_named(connection: Connection, step: PlannedStep) -> None:
    # Common practice: soluble salts move with water.
    (finding,) = found_of_step(connection, "wet.salts", "S1", step, WET)
    assert finding.outcome == CANNOT_TELL and finding.layers == ("L1",)
    assert finding.missing == ("how far S2 is from S1",)
    assert "would suffer from water: S2 sodium sulphate" in finding.sentence


def test_what_may_suffer_from_water_elsewhere_is_named(connection: Connection) -> None:
    (finding,) = found_of_step(connection, "wet.nobody", "S1", WATER, WET)
    assert "lie layers that may suffer from water" in finding.sentence
    assert found_of_step(connection, "wet.limescale", "S1", WATER, WET) == []


def test_salts_that_a_cement_may_bring_are_named(connection: Connection) -> None:
    # Sayre: Portland cement brings alkali sulphate and hydroxide; the shipped trait is "unknown".
    (finding,) = found_of_step(connection, "wet.portland", "S1", WATER, WET)
    assert finding.outcome == CANNOT_TELL and finding.layers == ("L1",)
    assert "brings alkali sulphate and hydroxide" in finding.sentence


# -- lead ---------------------------------------------------------------------------------


def test_lead_under_load_creeps_at_room_temperature(connection: Connection) -> None:
    # Common practice: lead creeps in the cold; it melts at 327 C (from memory).
    (finding,) = found(connection, "metal.lead", "creep-temperature")
    assert finding.outcome == CANNOT_TELL and finding.layers == ("L1",)
    assert "creeps under load at room temperature" in finding.sentence
    for number in ("metal.hard", "metal.free"):
        assert found(connection, number, "creep-temperature") == []


# -- agents and settings ------------------------------------------------------------------


@pytest.mark.parametrize("agent", ["shellac", "epoxy-resin", "limestone", "benzotriazole"])
def test_what_is_no_agent_is_refused(connection: Connection, agent: str) -> None:
    with pytest.raises(NoAgent, match=r"is no agent .*ask for water, an acid"):
        found_of_step(connection, "hot.class", "S1", PlannedStep(agent), HEAT)


@pytest.mark.parametrize("agent", ["edta", "pumice", "abrasive", "laser", "solvent", "ammonia"])
def test_agents_are_taken(connection: Connection, agent: str) -> None:
    found_of_step(connection, "hot.class", "S1", PlannedStep(agent), HEAT)


def test_an_odd_age_is_not_printed(department: Path, tmp_path: Path) -> None:
    from conservedb.questions.checks import check
    from tests.questions.checking import ON

    odd = "UPDATE setting SET value = '-5' WHERE name = 'cellulose nitrate age'"
    with asking(changed(department, tmp_path / "odd.db", odd)) as connection:
        answer = check(connection, "hot.class", ON)
    assert answer.notes == (
        "the setting 'cellulose nitrate age' reads '-5', which is out of range; 30 years was"
        " taken; write a number from 0 to 500",
    )
