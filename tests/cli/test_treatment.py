"""The command `treatment`: the list, one treatment read aloud, and as JSON."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.cli.conftest import Command
from tests.questions.treating import make_workshop


@pytest.fixture(scope="module")
def workshop(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return make_workshop(tmp_path_factory.mktemp("workshop"))


def test_the_list(conservedb: Command, workshop: Path) -> None:
    lines = conservedb("treatment", "T.1", "--db", str(workshop)).lines
    assert lines[0] == "object: T.1, Urn"
    assert (
        "T1: Joint remade, begun 2 March 2026, no end on record, led by Ann Author,"
        " seven steps on record"
    ) in lines
    assert "  plan: none on record" in lines
    bare = conservedb("treatment", "T.2", "--db", str(workshop)).lines
    assert "treatments: none on record" in bare


def test_one_is_read_aloud(conservedb: Command, workshop: Path) -> None:
    ended = conservedb("treatment", "T.1", "T1", "--db", str(workshop))
    assert ended.status == 0
    for line in (
        "treatment: T1, Joint remade",
        "result: not recorded",
        "next check: October 2026, the day has passed",
        "plan version 2: P2, 1 March 2026, Ann Author",
        "    conditions: Keep the pin.",
        "    expires: 31 December 2026",
        "    evidence: letter",
        "  step 4: b4, Fill: toned",
        "    progress: b4 (fill): no step on record.",
        "    if begun today: Curator: it is about version 1, not version 2: Cora Curator as"
        " curator (U1).",
        "step: d2, Cleaned: dry, 6 March 2026, Ann Author",
        "  written down: 8 March 2026, by Ann Author",
        "  recorded at once: recorded over 12 at once",
        "  deviation: colder than planned",
        "  start: Started before authorisation by Ann Author: It could not wait.",
        "  layer: Applied: Test glue, adhesive at J1 (L1)",
        "    detail: batch BA1, lot LOT 7",
        "  observed: O1, J1, crack, 10 January 2026, Ann Author",
        "    seen: It opens.",
        "    presumed, not seen: The glue is old.",
        "guidelines ask of: plan P2, version 2",
        "  must: The risks: required by AIC C26, EN 16853; not recorded.",
    ):
        assert line in ended.lines, line
    (ratify,) = [line for line in ended.lines if line.startswith("to be ratified: ")]
    assert ratify.startswith("to be ratified: d5, 9 March 2026: ")
    assert "safe" not in ended.out
    assert ended.lines[-1].startswith("end of the change log: change set ")


def test_as_json(conservedb: Command, workshop: Path) -> None:
    listed = conservedb("treatment", "T.1", "--json", "--db", str(workshop)).json
    assert {row["ref"]: row["versions"] for row in listed["treatments"]} == {
        "T0": [], "T1": [1, 2], "T2": [],
    }  # fmt: skip
    told = conservedb("treatment", "T.1", "t1", "--json", "--db", str(workshop)).json
    assert (told["ref"], told["check_passed"], told["closed"]) == ("T1", True, False)
    assert told["next_check"]["latest"] == "2026-10-31"
    (plan,) = [one for one in told["plans"] if one["version"] == 2]
    assert plan["decisions"][0]["steps"] == ["b1", "b2", "b5"]
    assert plan["steps"][0]["by"] == ["d1"] and plan["steps"][0]["state"] == "done"
    steps = {one["ref"]: one for one in told["steps"]}
    assert steps["d3"]["start"]["outcome"] == "started before authorisation"
    assert steps["d6"]["authority"][0]["ref"] == "SA1"
    assert steps["d2"]["recorded"]["edtf"] == "2026-03-08"
    assert steps["e1"]["observations"][0]["presumed"] == "The glue is old."
    assert [one["kind"] for one in steps["e1"]["did"]] == ["reading", "sample", "spot test"]
    assert {one["of"] for one in told["asked"]} >= {"examination e1", "photographs"}
    assert set(told["guidelines"]) >= {"AIC C26", "AIC C27"}


def test_no_such_treatment(conservedb: Command, workshop: Path) -> None:
    ended = conservedb("treatment", "T.1", "T11", "--db", str(workshop))
    assert ended.status == 1
    assert "no treatment of T.1 'T11' on record; did you mean T1?" in ended.err
