"""Plans: what a joint carries first, then how it opens; never leave to go ahead."""

from __future__ import annotations

import dataclasses

import pytest

from conservedb.knowledge.behaviour import (
    Agent,
    Fact,
    Lying,
    Matter,
    Neighbour,
    Part,
    Trait,
    Warmth,
)
from conservedb.knowledge.plan import EFFECTS, GROUPS, VERDICTS, Plan
from conservedb.knowledge.reversal import Settings, plan
from conservedb.knowledge.verdicts import Fixing
from tests.knowledge.removal_cases import (
    B72,
    CYCLODODECANE,
    DAY,
    EPOXY,
    GLUE,
    GYPSUM,
    LIMESTONE,
    NITRATE,
    SHELLAC,
    SOLVENTS,
    YES,
    case,
    liquid,
    lying,
)


def titles(found: Plan, group: str) -> list[str]:
    return [one.title for one in found.options if one.group == group]


def checked(found: Plan) -> Plan:
    """Every word of a plan is of the closed lists."""
    assert found.verdict in VERDICTS
    for one in found.options:
        assert one.group in GROUPS
        assert {one.target.effect, *(n.reading.effect for n in one.neighbours)} <= set(EFFECTS)
    return found


def test_load_comes_first() -> None:
    target = lying("L1", B72)
    loaded = plan(case(target, load_kg=85, load_source="REP-2012"))
    assert loaded.carries == "carries 85 kg (REP-2012): support before you loosen"
    assert plan(case(target)).carries == "load not recorded: treat as loaded"
    assert plan(case(target)).study_only
    assert not plan(case(target, support="steel strap, 2024-01-03")).study_only


def test_a_reversible_joint_ranks_aged_evidence_over_fresh() -> None:
    """B-72: acetone on aged films (Koob 2007) before ethanol on fresh ones."""
    found = checked(plan(case(lying("L1", B72))))
    assert titles(found, "to test")[:2] == ["acetone", "ethanol"]
    assert found.verdict == "re-dissolves"
    assert "acetone" in found.first_test
    assert "n-heptane" not in [one.title for one in found.options]


def test_what_harms_a_neighbour_stands_apart() -> None:
    """Shellac beside B-72: ethanol releases it and attacks the fill (reversal.md, section 6)."""
    found = checked(plan(case(lying("L1", SHELLAC), lying("L2", B72))))
    assert "ethanol" in titles(found, "acts on neighbours too")
    assert "ethanol" not in titles(found, "to test")


def test_a_neighbour_that_may_go_does_not_count_as_harm() -> None:
    found = plan(case(lying("L1", SHELLAC), lying("L2", B72, significance="may go")))
    assert "ethanol" in titles(found, "to test")


def test_swelling_in_a_closed_joint_is_the_last_resort() -> None:
    found = checked(plan(case(lying("L1", EPOXY))))
    assert found.verdict == "not reversible"
    last = [one for one in found.options if one.group == "last resort"]
    assert last and all(one.target.effect == "swells" for one in last)
    assert any("burst the edges" in words for words in last[0].cautions)
    by_hand = next(i for i, one in enumerate(found.options) if one.kind == "mechanical")
    assert all(found.options.index(one) > by_hand for one in last)
    assert not any(one.target.effect in ("dissolves", "mobilises") for one in found.options)


def test_a_vapour_chamber_is_an_explosive_atmosphere() -> None:
    found = plan(case(lying("L1", B72)))
    vapours = [one for one in found.options if one.kind == "vapour"]
    assert vapours
    assert all("explosive atmosphere" in one.cautions[0] for one in vapours)


WHOLE = {"role": "barrier", "dry": "yes", "coverage": "whole", "stack": 0}


def over_barriers(*barriers: Lying) -> Plan:
    return checked(plan(case(lying("L1", EPOXY, stack=1), *barriers)))


def test_an_irreversible_layer_is_released_through_its_barrier() -> None:
    found = over_barriers(
        lying("L2", B72, **WHOLE, side="A"), lying("L3", B72, **WHOLE | {"stack": 2}, side="B")
    )
    assert found.verdict == "releases through the barrier"
    assert found.via is not None and found.via.layer == "L2"
    assert titles(found, "to test")[0] == "acetone"


@pytest.mark.parametrize(
    ("lacking", "words"),
    [
        ({"dry": "no"}, "not dry when covered"),
        ({"dry": ""}, "whether it was dry"),
        ({"coverage": "spots"}, "coverage: spots"),
        ({"side": "A"}, "side A only"),
        ({"certain": False}, "not certainly there"),
    ],
)
def test_a_barrier_short_of_whole_establishes_nothing(
    lacking: dict[str, object], words: str
) -> None:
    found = over_barriers(lying("L2", B72, **WHOLE | {"side": ""} | lacking))
    assert found.verdict == "not established"
    assert found.via is not None
    assert any(words in condition for condition in found.via.conditions)


@pytest.mark.parametrize(
    "barrier",
    [
        lying("L2", EPOXY, **WHOLE),
        lying("L2", B72, **WHOLE, laid=(DAY - 9, DAY - 8)),
        lying("L2", B72, **WHOLE | {"stack": 2}),
        lying("L2", dataclasses.replace(B72, is_class=True), **WHOLE),
    ],
    ids=["epoxy", "later", "outside it", "known only as a class"],
)
def test_what_is_no_barrier_under_it(barrier: Lying) -> None:
    found = over_barriers(barrier)
    assert (found.verdict, found.via) == ("not reversible", None)


def test_swelling_of_the_layer_over_a_barrier_is_a_hazard_too() -> None:
    found = over_barriers(lying("L2", B72, **WHOLE))
    acetone = next(one for one in found.options if one.title == "acetone")
    assert any("burst the edges" in words for words in acetone.cautions)


def test_an_agent_used_warm_is_read_as_heat() -> None:
    warm = Fact(Agent((Part("water"),), "swab", 50.0), "dissolves")
    glue = dataclasses.replace(GLUE, facts=(warm,))
    found = plan(case(lying("L1", glue), lying("L2", B72)))
    water = next(one for one in found.options if one.kind == "water")
    assert water.neighbours[0].reading.effect == "softens"
    refused = plan(case(lying("L1", glue), lying("L2", NITRATE)))
    assert not [one for one in refused.options if one.kind == "water"]
    assert any("water" in one.title for one in refused.refused)


def test_a_class_that_may_be_nitrate_forbids_heat() -> None:
    maybe = Matter(
        "ester", "cellulose ester", {"cellulose nitrate": Trait("unknown")}, is_class=True
    )
    assert plan(case(lying("L1", B72), lying("L2", maybe))).refused


def test_a_tight_path_holds_back_a_swab_but_no_vapour_nor_warmth() -> None:
    behind = Neighbour(lying("L2", SHELLAC, role="coating"), "tight")
    open_joint = plan(case(lying("L1", B72), neighbours=(behind,), closed=False))
    closed = plan(case(lying("L1", B72), neighbours=(behind,)))
    assert "ethanol" in titles(open_joint, "to test")
    assert "ethanol" in titles(closed, "acts on neighbours too")


def test_memory_never_clears_a_neighbour_of_heat() -> None:
    remembered = Matter("m", "m", warmth=(Warmth("glass transition", 90, 90, basis="from memory"),))
    found = plan(case(lying("L1", B72), lying("L2", remembered)))
    heat = next(one for one in found.options if one.kind == "heat")
    assert heat.neighbours[0].reading.effect == "cannot tell"


def test_a_rival_identity_counts_in_the_verdict() -> None:
    found = plan(case(lying("L1", B72, EPOXY, identified="inferred")))
    assert found.verdict == "not reversible"
    assert "may be Paraloid B-72 or epoxy" in found.verdict_reason


def test_what_lies_over_it_is_tested_first() -> None:
    target = lying("L1", B72, stack=0, role="coating")
    paint = lying("L2", SHELLAC, stack=1, role="paint", origin="maker")
    found = plan(case(target, paint, is_joint=False, closed=False))
    assert found.first_test.startswith("test what lies over it first (shellac)")
    assert any("the maker's own near: shellac" in words for words in found.cautions)


def test_unknown_alkali_is_not_no() -> None:
    base = liquid("morpholine", (18.0, 4.9, 11.0))
    alkaline = dataclasses.replace(base, traits={**base.traits, "alkali": YES})
    solvents = SOLVENTS | {"morpholine": alkaline}
    situation = dataclasses.replace(case(lying("L1", SHELLAC)), solvents=solvents)
    near = Neighbour(lying("B1", LIMESTONE, role="block"), is_substrate=True)
    found = plan(dataclasses.replace(situation, neighbours=(near,)))
    morpholine = next(one for one in found.options if one.title == "morpholine")
    assert morpholine.neighbours[0].reading.effect == "cannot tell"


def test_the_worst_zone_decides_and_an_unseen_fixing_leaves_it_open() -> None:
    edge = lying("L2", GYPSUM, role="pointing", zone="edge")
    target = lying("L1", B72, zone="face")
    assert plan(case(target)).opens.startswith("re-dissolves")
    assert plan(case(target, edge)).opens.startswith("mechanical only")
    pin = Fixing("P1", "pin", "", "picture only", True)
    found = plan(case(target, edge, fixings=(pin,)))
    assert found.opens.startswith("not established (pin P1: ")
    assert [hold.what for hold in found.holds] == ["zone face", "zone edge", "pin P1"]
    assert plan(case(target, fixings=(Fixing("K1", "cramp", "iron", "seen", True),))).opens == (
        "mechanical only (cramp K1: iron: drawn, drilled or cut, not dissolved)"
    )


def test_heat_is_refused_near_cellulose_nitrate() -> None:
    found = plan(case(lying("L1", B72), lying("L2", NITRATE)))
    assert [one.title for one in found.refused] == ["warmth, up to 40 C"]
    assert not any(one.kind == "heat" for one in found.options)


def test_heat_asks_for_a_named_approval_near_unknown_matter_paint_and_stone() -> None:
    stone = Neighbour(lying("B1", LIMESTONE, role="block"), is_substrate=True)
    paint = Neighbour(lying("L3", GLUE, role="paint"))
    unknown = Neighbour(lying("L4"))
    found = plan(case(lying("L1", B72), neighbours=(stone, paint, unknown), beware=("lead: x",)))
    heat = next(one for one in found.options if one.kind == "heat")
    asked = [words for words in heat.cautions if "approval of a named person" in words]
    assert len(asked) == 4


def test_a_young_film_softens_lower() -> None:
    """Residual solvent lowers the glass transition by up to 30 C (Vincotte 2019)."""
    young = lying("L1", B72, laid=(DAY - 30, DAY - 20))
    heat = next(one for one in plan(case(young)).options if one.kind == "heat")
    assert "softens from 7 C by the lowest figure" in heat.target.reason


def test_band_d_is_hidden_unless_asked_for() -> None:
    shellac = dataclasses.replace(
        SHELLAC, facts=(*SHELLAC.facts, Fact(Agent((Part("dmf"),)), "dissolves"))
    )
    found = plan(case(lying("L1", shellac)))
    assert "dmf" not in [one.title for one in found.options]
    assert found.hidden >= 1
    shown = plan(case(lying("L1", shellac), settings=Settings("D")))
    assert "dmf" in [one.title for one in shown.options]
    assert shown.hidden == 0


def test_unknown_matter_begins_with_what_takes_nothing() -> None:
    found = checked(plan(case(lying("L1"), lying("L2", GYPSUM))))
    assert found.verdict == "unknown"
    names = [step.title for step in found.sequence]
    sample = next(i for i, name in enumerate(names) if "sample" in name)
    swabs = [i for i, name in enumerate(names) if name.startswith("swab")]
    assert names[0].startswith("look under UV") and sample < min(swabs)
    assert names[-1] == "swab of water, a spot"
    assert found.sequence[-1].withheld == "no water: gypsum (gypsum) lies near"
    assert "sample before any solvent" in found.first_test


def test_unknown_water_waits_until_salts_are_ruled_out() -> None:
    last = plan(case(lying("L1"), lying("L2", LIMESTONE))).sequence[-1]
    assert "soluble salts are not ruled out" in last.withheld
    last = plan(case(lying("L1"), lying("L2"))).sequence[-1]
    assert "cannot tell for ?" in last.withheld


def test_what_sublimes_is_waited_for() -> None:
    found = plan(case(lying("L1", CYCLODODECANE)))
    assert found.verdict == "goes by itself"
    assert found.options[0].kind == "wait"


def test_a_joint_by_prediction_alone_is_not_established() -> None:
    predicted = Matter("p", "some resin", spheres=B72.spheres)
    found = plan(case(lying("L1", predicted)))
    assert (found.verdict, "prediction" in found.verdict_reason) == ("not established", True)


def test_every_option_defers_and_none_says_safe() -> None:
    found = plan(case(lying("L1", SHELLAC), lying("L2", B72), lying("L3", EPOXY)))
    for one in found.options:
        assert any("safety data sheet" in words for words in one.cautions), one.title
    assert " safe " not in repr(found).replace("safety", "")
    assert any("coupons" in words for words in found.limits)


def test_no_solvent_is_left_out_by_name() -> None:
    """A solvent that is not in the tables makes no option, and nothing falls over."""
    odd = dataclasses.replace(B72, facts=(Fact(Agent((Part("nobody"),)), "dissolves"),))
    assert "nobody" not in SOLVENTS
    checked(plan(case(lying("L1", odd))))
