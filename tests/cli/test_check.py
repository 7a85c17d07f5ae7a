"""`conservedb check` and `conservedb whatif`, as lines to be read aloud and as JSON."""

from __future__ import annotations

import re

import pytest

from conservedb.cli.check import FORMS
from conservedb.records.treatments import AGENT_FORMS
from tests.cli.conftest import Command, Ended
from tests.questions.checking import checked

__all__ = ["checked"]

FINDING = """
    rule title severity judges outcome certain sentence missing places components layers load_kg
    says basis source sources
"""
PRAISE = re.compile(r"\b(safe|in order|no risk|harmless|permitted)\b")


@pytest.fixture
def judge(conservedb: Command, checked: object) -> Command:
    """Runs a command on the department made for the rules."""

    def command(*arguments: str) -> Ended:
        return conservedb(*arguments, "--db", str(checked))

    return command


@pytest.mark.parametrize(
    "command",
    [
        ("check",),
        ("check", "bare.none"),
        ("check", "accepted.still"),
        ("check", "accepted.over"),
        ("check", "step.near", "S1", "--step", "steam"),
        ("whatif", "--temperature", "28"),
        ("whatif", "--temperature", "28", "creep.hall", "--on", "2026"),
    ],
    ids=" ".join,
)
def test_lines_are_labels_and_values(judge: Command, command: tuple[str, ...]) -> None:
    ended = judge(*command)
    assert ended.status == 0 and ended.err == ""
    for line in ended.lines:
        assert line == "" or re.match(r" *[^:]+: .+", line), line
    assert not PRAISE.search(ended.out)
    assert "caution: " in ended.out


def test_the_three_of_most_consequence_come_first(judge: Command) -> None:
    lines = judge("check", "bare.missed").lines
    assert lines[:4] == [
        "checked: bare.missed, Case bare.missed",
        "as of: 2 November 2026",
        "findings: two findings",
        "",
    ]
    assert lines[4] == "of most consequence: two findings"
    assert "warn, cross-linked resin on porous original without a barrier: broken" in lines[5]
    assert any(line.startswith("source: lit.POD01: Podany") for line in lines)


def test_a_finding_in_json(judge: Command) -> None:
    answer = judge("check", "bare.unrecorded", "J1", "--json").json
    assert (answer["object"], answer["place"], answer["step"]) == ("bare.unrecorded", "J1", "")
    one = next(o for o in answer["findings"] if o["rule"] == "cross-linked-without-barrier")
    assert set(one) == set(FINDING.split())
    assert one["outcome"] == "cannot tell"
    assert one["missing"] == ["whether there was a barrier"]
    assert (one["places"], one["layers"], one["load_kg"]) == (["J1"], ["L1"], 85)
    assert one["source"].startswith("lit.POD01: ")
    assert answer["cautions"] and answer["rules"]


def test_an_accepted_finding_stands_apart_with_its_reason(judge: Command) -> None:
    answer = judge("check", "accepted.still", "--json").json
    (one,) = answer["accepted"]
    assert one["by"]["person"] == "Ines Calder"
    assert one["by"]["review"]["latest"] == "2027-06-01"
    lines = judge("check", "accepted.still").lines
    assert "  because: Carries nothing since the frame of 2013." in lines
    late = judge("check", "accepted.over").lines
    assert "review overdue: a1, cross-linked-without-barrier, since 20 March 2025, Ines Calder" in (
        late
    )


def test_a_step_in_json(judge: Command) -> None:
    command = ("check", "step.near", "S1", "--step", "hot-air", "--temperature", "60", "--json")
    answer = judge(*command, "--dwell", "5").json
    assert answer["step"] == "hot air, 60 C, 5 min"
    assert {one["rule"] for one in answer["findings"]} == {"heat-near-softening"}


def test_a_solvent_points_to_what_it_does_there(judge: Command) -> None:
    step = ("check", "step.near", "S1", "--step")
    command = "conservedb reverse step.near S1"
    lines = judge(*step, "acetone").lines
    assert lines[-1] == f"what a solvent does to the layers here: {command}"
    assert judge(*step, "acetone", "--json").json["see"] == command
    assert "reverse" not in judge(*step, "deionised-water").out
    assert judge(*step, "deionised-water", "--json").json["see"] == ""


def test_nothing_is_said_of_no_layers(judge: Command) -> None:
    out = judge("whatif", "--temperature", "28", "creep.hall").out
    assert "cannot tell" not in out and "not creeping" not in out
    assert "cannot tell: one layer not identified" in (
        judge("whatif", "--temperature", "28", "soft.unknown").lines
    )


def test_the_collection_in_json(judge: Command) -> None:
    answer = judge("check", "--json").json
    row = answer["rows"][0]
    assert row["severity"] == "block" and set(row["foremost"]) == set(FINDING.split())
    assert answer["objects"] > 50 and answer["accepted"] == 2


def test_whatif_in_json(judge: Command) -> None:
    answer = judge("whatif", "--temperature", "28", "creep.hall", "--json").json
    (joint,) = answer["joints"]
    assert (joint["place"], joint["load_kg"], joint["certain"]) == ("J1", 85, True)
    (layer,) = joint["layers"]
    assert (layer["effect"], layer["margin_c"], layer["softens_from_c"]) == ("may creep", 9, 37)
    assert answer["counts"] == {"joints": 1, "objects": 1, "layers": 1}
    assert answer["cannot_tell"] == {
        "by_material": [],
        "class_only": 0,
        "unidentified": 0,
        "soft_metal": [],
    }


@pytest.mark.parametrize(
    ("command", "status", "says"),
    [
        (("check", "nothing"), 1, "no object 'nothing' on record"),
        (("check", "step.near", "S8", "--step", "steam"), 1, "no location of step.near 'S8'"),
        (("check", "step.near", "S1", "--step", "vitriol"), 1, "'vitriol'"),
        (("whatif", "--temperature", "28", "nothing"), 1, "no object 'nothing' on record"),
        (("check", "--step", "steam"), 2, "needs the object and the place"),
        (("check", "step.near", "S1", "--form", "swab"), 2, "belong to --step"),
        (("whatif",), 2, "--temperature"),
        (("whatif", "--temperature", "warm"), 2, "'warm' is not a valid float"),
        (("whatif", "--temperature", "nan"), 2, "nan is no temperature of a room"),
        (("whatif", "--temperature", "-inf"), 2, "-inf is no temperature of a room"),
        (("whatif", "--temperature", "-300"), 2, "write one from -50 to 150 C"),
        (("whatif", "--temperature", "150.5"), 2, "write one from -50 to 150 C"),
        (("check", "step.near", "S1", "--step", "steam", "--temperature", "inf"), 2, "no number"),
        (("check", "step.near", "S1", "--step", "steam", "--dwell", "nan"), 2, "no number"),
        (("check", "step.near", "S1", "--step", "shellac"), 1, "ask for water, an acid"),
    ],
    ids=str,
)
def test_what_cannot_be_asked(
    judge: Command, command: tuple[str, ...], status: int, says: str
) -> None:
    ended = judge(*command)
    assert ended.status == status
    assert says in ended.err


def test_forms_are_those_of_the_records() -> None:
    assert FORMS == AGENT_FORMS
