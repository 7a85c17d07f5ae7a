"""Evidence has ranks; the target is read by its best, a neighbour by its worst plausible."""

from __future__ import annotations

import dataclasses

import pytest

from conservedb.knowledge.agents import covers, same_agent
from conservedb.knowledge.behaviour import Agent, Fact, Matter, Part, Sphere
from conservedb.knowledge.evidence import binders, on_target
from conservedb.knowledge.neighbours import on_neighbour
from tests.knowledge.removal_cases import (
    B72,
    EPOXY,
    GLUE,
    GYPSUM,
    LIMESTONE,
    SHELLAC,
    SOLUBLE_NYLON,
    SOLVENTS,
    fact,
    lying,
)


def agent(
    *parts: tuple[str, float], form: str = "", c: float | None = None, minutes: float | None = None
) -> Agent:
    return Agent(tuple(Part(*part) for part in parts), form, c, minutes)


ACETONE = agent(("acetone", 100))
ETHANOL = agent(("ethanol", 100))


def read(matter: Matter, used: Agent, **other: object) -> str:
    return on_target(lying("L1", matter, **other), used, SOLVENTS, fresh=False).effect


def beside(matter: Matter, used: Agent, **other: object) -> str:
    return on_neighbour(lying("L1", matter, **other), used, SOLVENTS).effect


# -- the target ---------------------------------------------------------------------------


def test_published_solvent_wins_over_its_prediction_and_both_are_shown() -> None:
    """B-72 in ethanol: a published solvent (Vincotte 2019) although its RED is 1.52 (O2, O10)."""
    reading = on_target(lying("L1", B72), ETHANOL, SOLVENTS, fresh=False)
    assert (reading.effect, reading.evidence) == ("dissolves", "published, fresh material")
    assert reading.red is not None and reading.red[0] == pytest.approx(1.5245, abs=5e-4)
    assert any("RED 1.52" in line for line in reading.losing)


def test_a_cross_linked_resin_never_dissolves_whatever_its_number() -> None:
    """O2: epoxy in acetone, RED 0.39, and yet no dissolution."""
    dissolution = dataclasses.replace(
        EPOXY, spheres=tuple(Sphere(s.at, s.r0) for s in EPOXY.spheres)
    )
    reading = on_target(lying("L1", dissolution), ACETONE, SOLVENTS, fresh=False)
    assert reading.red is not None and reading.red[0] == pytest.approx(0.3887, abs=5e-4)
    assert reading.effect == "swells"
    assert "cross-linked" in reading.reason


def test_no_verdict_for_proteins_nor_for_water() -> None:
    assert read(GLUE, ACETONE) == "cannot tell"
    assert read(GLUE, agent(("water", 100))) == "dissolves"
    watered = agent(("ethanol", 80), ("water", 20))
    reading = on_target(lying("L1", B72), watered, SOLVENTS, fresh=False)
    assert (reading.effect, reading.red) == ("cannot tell", None)


def test_what_is_soaked_into_a_porous_body_is_at_best_mobilised() -> None:
    assert read(B72, ACETONE, soaked=True) == "mobilises"


def test_dissolved_when_fresh_is_not_dissolved_now() -> None:
    """Soluble nylon ages insoluble (Sease 1981)."""
    assert read(SOLUBLE_NYLON, ETHANOL) == "undecided"
    young = on_target(lying("L1", SOLUBLE_NYLON), ETHANOL, SOLVENTS, fresh=True)
    assert young.effect == "dissolves"


def test_memory_never_outranks_a_prediction_until_confirmed() -> None:
    remembered = fact("xylenes", "no effect", basis="from memory")
    matter = dataclasses.replace(B72, facts=(remembered,))
    xylenes = agent(("xylenes", 100))
    reading = on_target(lying("L1", matter), xylenes, SOLVENTS, fresh=False)
    assert (reading.effect, reading.evidence) == ("dissolves", "Hansen prediction")
    confirmed = dataclasses.replace(B72, facts=(dataclasses.replace(remembered, confirmed=True),))
    reading = on_target(lying("L1", confirmed), xylenes, SOLVENTS, fresh=False)
    assert (reading.effect, reading.evidence) == (
        "no effect expected",
        "published, fresh material",
    )


def test_a_test_on_this_layer_decides() -> None:
    tested = Fact(ACETONE, "no effect", basis="tested here", source="3 May")
    reading = on_target(lying("L1", B72, tests=(tested,)), ACETONE, SOLVENTS, fresh=False)
    assert (reading.effect, reading.evidence) == ("no effect when tested", "tested here")
    assert any("dissolves" in line for line in reading.losing)


def test_sources_of_one_rank_that_disagree_leave_it_undecided() -> None:
    """Two authors disagree on the water sensitivity of Primal B-60A (Koob, Bargazova 2016)."""
    both = Matter("b60a", "B-60A", {}, (), (fact("water", "swells"), fact("water", "no effect")))
    reading = on_target(lying("L1", both), agent(("water", 100)), SOLVENTS, fresh=False)
    assert reading.effect == "undecided"
    assert len(reading.losing) == 2


def test_a_filled_resin_behaves_as_its_binder() -> None:
    filler = Matter("chalk", "chalk", {"no solvent": LIMESTONE.traits["no solvent"]})
    filled = Matter("fill", "acrylic fill", parts=(B72, filler))
    assert binders(filled) == (B72,)
    assert read(filled, ACETONE) == "dissolves"
    assert beside(filled, ACETONE) == "dissolves"


def test_a_mixture_is_as_resistant_as_its_most_resistant_binder() -> None:
    mixed = Matter("mix", "shellac and epoxy", parts=(SHELLAC, EPOXY))
    reading = on_target(lying("L1", mixed), agent(("xylenes", 100)), SOLVENTS, fresh=False)
    assert reading.effect in ("no effect expected", "undecided", "cannot tell")
    reading = on_target(lying("L1", mixed), ETHANOL, SOLVENTS, fresh=False)
    assert reading.effect == "softens"
    assert "only in part" in reading.reason


# -- neighbours ---------------------------------------------------------------------------


def test_any_published_effect_counts_for_a_neighbour() -> None:
    """Shellac beside B-72: ethanol attacks it although RED says 1.52 (reversal.md, section 6)."""
    assert beside(B72, ETHANOL) == "dissolves"


def test_a_part_of_a_blend_that_dissolves_a_neighbour_counts_for_the_blend() -> None:
    some = agent(("n-heptane", 85), ("acetone", 15))
    little = agent(("n-heptane", 95), ("acetone", 5))
    assert beside(B72, some) == "dissolves"
    assert beside(B72, little) != "dissolves"


def test_minerals_bear_organic_solvents_and_water_is_not_mild() -> None:
    assert beside(LIMESTONE, ACETONE) == "no effect expected"
    assert beside(GYPSUM, agent(("water", 100))) == "attacked"
    unsaid = Matter("stone", "some stone", {"no solvent": GYPSUM.traits["no solvent"]})
    assert beside(unsaid, agent(("water", 100))) == "cannot tell"


def test_an_unidentified_neighbour_can_never_be_cleared_but_by_a_test() -> None:
    unknown = lying("L2")
    assert on_neighbour(unknown, ACETONE, SOLVENTS).effect == "cannot tell"
    tested = Fact(agent(("acetone", 100), form="swab", minutes=2), "no effect", basis="tested here")
    known = dataclasses.replace(unknown, tests=(tested,))
    used = agent(("acetone", 100), form="swab")
    assert on_neighbour(known, used, SOLVENTS).effect == "no effect when tested"


def test_alternatives_count_by_their_worst() -> None:
    """Where papers disagree on what it is, the worst of the candidates is read."""
    assert beside(SHELLAC, agent(("xylenes", 100))) == "no effect expected"
    either = lying("L1", SHELLAC, B72)
    assert on_neighbour(either, agent(("xylenes", 100)), SOLVENTS).effect == "dissolves"


def test_no_effect_from_memory_clears_nothing() -> None:
    matter = Matter("m", "m", {}, (), (fact("xylenes", "no effect", basis="from memory"),))
    assert beside(matter, agent(("xylenes", 100))) == "cannot tell"


TESTED = agent(("acetone", 100), form="swab", c=20, minutes=2)


@pytest.mark.parametrize(
    ("meant", "effect"),
    [
        (agent(("acetone", 100), form="swab", minutes=2), "no effect when tested"),
        (agent(("acetone", 100), form="swab", minutes=1), "no effect when tested"),
        (agent(("acetone", 100), form="swab", minutes=5), "tested but for less"),
        (agent(("acetone", 100), form="poultice", minutes=1), "tested but for less"),
        (agent(("acetone", 100), form="vapour", minutes=1), "tested but for less"),
        (agent(("acetone", 100), form="swab", c=40, minutes=1), "tested but for less"),
        (agent(("ethanol", 100), form="swab", minutes=1), "cannot tell"),
    ],
)
def test_a_test_clears_only_what_was_tried_or_milder(meant: Agent, effect: str) -> None:
    tested = Fact(TESTED, "no effect", basis="tested here")
    assert on_neighbour(lying("L1", tests=(tested,)), meant, SOLVENTS).effect == effect


def test_tested_for_less_yields_to_worse_evidence() -> None:
    tested = Fact(TESTED, "no effect", basis="tested here")
    layer = lying("L1", B72, tests=(tested,))
    poultice = agent(("acetone", 100), form="poultice", minutes=30)
    reading = on_neighbour(layer, poultice, SOLVENTS)
    assert reading.effect == "dissolves"
    assert any("tested, but for less" in line for line in reading.losing)


def test_shares_are_the_same_within_what_a_bench_measures() -> None:
    half = (Part("acetone", 50), Part("ethanol", 50))
    assert same_agent(half, (Part("ethanol", 52), Part("acetone", 48)))
    assert not same_agent(half, (Part("ethanol", 60), Part("acetone", 40)))
    assert not same_agent(half, (Part("acetone", 100),))
    assert not covers(Agent(half), agent(("acetone", 50), ("ethanol", 50), minutes=1))
