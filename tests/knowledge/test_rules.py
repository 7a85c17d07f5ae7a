"""The rules in code are the rules in the shipped table; and what their parts say alone."""

from __future__ import annotations

import csv
from pathlib import Path

import pytest

import conservedb.reference
from conservedb.knowledge.behaviour import Matter, Trait, Warmth
from conservedb.knowledge.rule_additions import TEMPORARY
from conservedb.knowledge.rule_case import Case, KnownLayer, KnownPlace
from conservedb.knowledge.rule_warmth import lowering, warmed
from conservedb.knowledge.rules import CONDUCT, OF_OBJECTS, OF_STEPS, RULES, SEVERITIES, Rule, found
from conservedb.knowledge.settled import Settled
from conservedb.records.layers import TEMPORARY_ROLES

TABLE = Path(conservedb.reference.__file__).parent / "tables" / "rules.csv"


@pytest.fixture(scope="module")
def shipped() -> list[dict[str, str]]:
    with TABLE.open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def test_every_rule_of_the_table_is_judged_and_the_reverse(shipped: list[dict[str, str]]) -> None:
    assert {row["key"] for row in shipped} == set(RULES)
    assert {*OF_OBJECTS, *OF_STEPS} == set(RULES)


def test_conduct_is_what_the_table_says(shipped: list[dict[str, str]]) -> None:
    assert {row["key"] for row in shipped if row["judges"] == "conduct"} == set(CONDUCT)


def test_severities_and_sentences_are_given(shipped: list[dict[str, str]]) -> None:
    assert all(row["severity"] in SEVERITIES for row in shipped)
    assert all(row["sentence"] and row["needs"] and row["basis"] for row in shipped)


def test_temporary_roles_are_those_of_the_records() -> None:
    assert TEMPORARY == TEMPORARY_ROLES


def test_an_empty_case_finds_nothing() -> None:
    rules = [Rule(key, "", "warn", "safety") for key in RULES]
    assert found(Case("1", 700_000, settled=Settled(conduct_from=1)), rules) == []


def test_a_rule_without_code_finds_nothing() -> None:
    assert found(Case("1", 700_000), [Rule("unheard-of", "", "warn", "safety")]) == []


# -- warmth -------------------------------------------------------------------------------

CREEPS = {"creeps under load": Trait("yes")}
B72 = Matter(
    "b72",
    "B-72",
    CREEPS,
    warmth=(
        Warmth("glass transition", 40, 40, source="KOOB96"),
        Warmth("glass transition", 37, 40, source="CARD22"),
    ),
)


@pytest.mark.parametrize(
    ("temperature", "lowered", "verdict"),
    [
        # The lowest published figure counts, 37 C; a margin of 15 C.
        (21.9, 0, ""),
        (22.0, 0, "may creep"),
        (36.9, 0, "may creep"),
        (37.0, 0, "softens"),
        # Vincotte et al. (2019): up to 30 C lower while solvent remains.
        (7.0, 30, "softens"),
        (-7.9, 30, "may creep"),
    ],
)
def test_creep_and_softening(temperature: float, lowered: float, verdict: str) -> None:
    reading = warmed(B72, temperature, lowered, 15)
    assert reading is not None and reading.verdict == verdict
    assert len(reading.lines) == 2


def test_only_what_creeps_may_creep() -> None:
    hard = Matter("epoxy", "epoxy", warmth=(Warmth("glass transition", 45, 65),))
    readings = [warmed(hard, temperature, 0, 15) for temperature in (40, 45)]
    assert [one.verdict for one in readings if one is not None] == ["", "softens"]


def test_no_figure_no_verdict() -> None:
    assert warmed(Matter("mystery", "mystery", CREEPS), 90, 0, 15) is None


def test_a_melting_range_is_not_lowered_by_solvent() -> None:
    wax = Matter("beeswax", "beeswax", CREEPS, warmth=(Warmth("melting", 62, 70),))
    reading = warmed(wax, 50, 30, 15)
    assert reading is not None and (reading.low, reading.verdict) == (62, "may creep")


def test_a_recipe_is_as_soft_as_its_softest_part() -> None:
    fill = Matter("fill", "fill", parts=(Matter("stone", "stone dust"), B72))
    reading = warmed(fill, 37, 0, 15)
    assert reading is not None and reading.verdict == "softens"


def test_a_memory_counts_only_where_nothing_is_printed_and_is_marked() -> None:
    remembered = Warmth("softening", 20, 25, "from memory")
    only = warmed(Matter("a", "a", CREEPS, warmth=(remembered,)), 30, 0, 15)
    assert only is not None and not only.sure and "from memory, not confirmed" in only.lines[0]
    printed = Warmth("softening", 50, 60)
    both = warmed(Matter("a", "a", CREEPS, warmth=(remembered, printed)), 30, 0, 15)
    assert both is not None and both.sure and both.low == 50


DAY = 740_000
SOLVENT = Matter("acetone", "acetone", {"organic solvent": Trait("yes")})
WATER = Matter("water", "water", {"water": Trait("yes")})


@pytest.mark.parametrize(
    ("carrier", "age", "lowered"),
    [(SOLVENT, 300, 30), (None, 300, 30), (WATER, 300, 0), (SOLVENT, 400, 0), (None, 400, 0)],
)
def test_a_film_keeps_solvent_for_a_year(carrier: Matter | None, age: int, lowered: float) -> None:
    layer = KnownLayer(
        "L1", "J1", "B-72", (B72,), carrier_matter=carrier, came=(DAY - 5000, DAY - age)
    )
    assert lowering(layer, DAY, Settled()) == lowered


def test_a_joint_is_loaded_unless_it_is_recorded_as_free_open_or_apart() -> None:
    assert KnownPlace("J1", "joint").loaded
    assert KnownPlace("J1", "joint", load_kg=5).loaded
    assert not KnownPlace("J1", "joint", load_kg=0).loaded
    assert not KnownPlace("J1", "joint", condition=("opened",)).loaded
    assert KnownPlace("J1", "joint", condition=("closed", "opened")).loaded
    assert not KnownPlace("J1", "joint", apart=True).loaded
    assert not KnownPlace("S1", "surface").loaded
