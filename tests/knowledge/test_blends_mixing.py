"""Which liquids are not held to mix, and which only while dry."""

from __future__ import annotations

import pytest

from conservedb.knowledge.behaviour import Hansen, Solvent, Trait
from conservedb.knowledge.mixing import SEPARATING, mixes, separates_when_damp

AT = (Hansen(16, 5, 5),)
WATER = Solvent("water", "water", AT, traits={"water": Trait("yes")})


def liquid(key: str, miscible: str = "") -> Solvent:
    return Solvent(key, key, AT, miscible=miscible)


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("methanol", "n-heptane"),
        ("methanol", "white-spirit"),
        ("propylene-carbonate", "white-spirit"),
        ("acetonitrile", "isooctane"),
        ("nitromethane", "cyclohexane"),
        ("dmso", "n-hexane"),
        ("dmf", "n-heptane"),
        ("nmp", "white-spirit"),
        ("d5", "methanol"),
        ("d5", "acetonitrile"),
        ("d5", "dmso"),
        ("d5", "dmf"),
        ("d5", "propylene-carbonate"),
    ],
)
def test_pairs_that_separate(one: str, other: str) -> None:
    """From memory, but for none of them is there a source that says otherwise."""
    assert "separate" in mixes(liquid(one), liquid(other))
    assert "separate" in mixes(liquid(other), liquid(one))


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("ethanol", "ethyl-acetate"),
        ("dmf", "xylenes"),
        ("acetone", "ethanol"),
        ("toluene", "n-heptane"),
        ("methanol", "acetonitrile"),
    ],
)
def test_pairs_that_mix(one: str, other: str) -> None:
    """The first two stand as immiscible in a data set in circulation, wrongly (from memory)."""
    assert mixes(liquid(one), liquid(other)) == ""


def test_no_liquid_separates_from_itself() -> None:
    assert all(len(pair) == 2 for pair in SEPARATING)


@pytest.mark.parametrize(
    ("miscible", "reason"),
    [
        ("yes", ""),
        ("limited", "only to a limit"),
        ("no", "does not mix with water"),
        ("", "is not recorded"),
    ],
)
def test_water_mixes_only_with_what_is_recorded_to_mix(miscible: str, reason: str) -> None:
    found = mixes(WATER, liquid("some", miscible)), mixes(liquid("some", miscible), WATER)
    assert found[0] == found[1]
    assert reason in found[0]
    assert bool(found[0]) is bool(reason)


def test_two_watery_liquids_mix() -> None:
    assert mixes(WATER, Solvent("detergent", "detergent", (), traits=WATER.traits)) == ""


def test_ethanol_in_white_spirit_is_warned_of_not_excluded() -> None:
    """15 parts of ethanol with 5 % of water and 85 of white spirit separate (Hook, JAIC 1988)."""
    one, other = liquid("ethanol"), liquid("white-spirit")
    assert mixes(one, other) == ""
    assert "Hook, JAIC 27, 1988" in separates_when_damp(one, other)
    assert separates_when_damp(other, one)
    assert separates_when_damp(one, liquid("toluene")) == ""
