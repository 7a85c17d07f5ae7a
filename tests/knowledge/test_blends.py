"""The search for blends: what must be found, and what must never be."""

from __future__ import annotations

from collections.abc import Sequence
from random import Random

import pytest

from conservedb.knowledge import grading
from conservedb.knowledge.behaviour import Hansen, Part, Solvent, Sphere, Trait
from conservedb.knowledge.blends import MOST, NARROWEST, Window, candidates, search
from conservedb.knowledge.solvents import distance

# Parameters: Manuel/Ruben 2022; boiling points: chemicals 1.5.2; bands from hazard statements.
LIQUIDS = {
    key: Solvent(key, key, (Hansen(d, p, h),), band=band, boiling_c=boiling)
    for key, d, p, h, band, boiling in (
        ("acetone", 15.5, 10.4, 7.0, "B", 56.1),
        ("methanol", 14.7, 12.3, 22.3, "C", 64.5),
        ("ethanol", 15.8, 8.8, 19.4, "A", 78.4),
        ("1-propanol", 16.0, 6.8, 17.4, "B", 97.0),
        ("1-butanol", 16.0, 5.7, 15.8, "B", 117.6),
        ("benzyl-alcohol", 18.4, 6.3, 13.7, "B", 205.3),
        ("toluene", 18.0, 1.4, 2.0, "C", 110.6),
        ("xylenes", 17.6, 1.0, 3.1, "B", 140.0),
        ("n-heptane", 15.3, 0.0, 0.0, "B", 98.4),
        ("white-spirit", 16.11, 0.25, 0.69, "C", 150.0),
        ("dmf", 17.4, 13.7, 11.3, "D", 152.8),
        ("acetonitrile", 15.3, 18.0, 6.1, "B", 81.6),
        ("propylene-carbonate", 20.0, 18.0, 4.1, "A", 241.6),
        ("d5", 12.9, 1.3, 1.0, "A", 210.9),
    )
}
WATER = Solvent("water", "water", (Hansen(15.5, 16.0, 42.3),), traits={"water": Trait("yes")})

# Rows of table A.2 of Hansen, Hansen Solubility Parameters, 2nd ed. 2007.
B72 = Sphere(Hansen(17.6, 7.4, 5.6), 9.4)  # 365
PMMA = Sphere(Hansen(18.64, 10.52, 7.51), 8.59)  # 66
SHELLAC = Sphere(Hansen(19.7, 10.1, 15.1), 10.7)  # 219
EPIKOTE = Sphere(Hansen(20.0, 10.32, 10.11), 10.02)  # 7, uncured
NITRATE = Sphere(Hansen(15.41, 14.73, 8.84), 11.46)  # 48


def some(*keys: str) -> list[Solvent]:
    return [LIQUIDS[key] for key in keys]


def pairs(found: Sequence[Window]) -> set[frozenset[str]]:
    return {frozenset(part.solvent for part in window.parts) for window in found}


# -- what must be found -----------------------------------------------------------------------


def test_aged_shellac_acetone_and_ethanol_in_equal_parts_lie_in_the_window() -> None:
    """Immersion in 50:50 acetone:ethanol; ethanol alone often fails (Koob, DistList 21:35, 2007).

    RED 0.841 for ethanol, 0.779 for the blend: without the record of how ethanol does, the
    gain is within noise, and nothing is listed.
    """
    liquids = some("acetone", "ethanol")
    assert search([SHELLAC], [], liquids) == []
    found = search([SHELLAC], [], liquids, known={"ethanol": "softens"})
    assert len(found) == 1
    window = found[0]
    assert (window.low, window.high) == (35, 85)
    assert window.low <= 50 <= window.high
    assert window.words == (
        "expected to act from 35 to 85 % acetone in ethanol, by every published sphere"
    )
    assert window.parts == (Part("acetone", 60), Part("ethanol", 40))


def test_two_non_solvents_of_an_uncured_epoxy_are_found_together() -> None:
    """Xylenes RED 1.259 and 1-butanol 1.083 alone, 0.947 in equal parts (worked example)."""
    found = search([EPIKOTE], [], some("xylenes", "1-butanol"))
    assert len(found) == 1
    window = found[0]
    assert window.parts[0].solvent == "1-butanol"
    assert window.low <= 50 <= window.high


def test_toluene_and_ethanol_are_found_for_pmma() -> None:
    """Toluene RED 1.249 and ethanol 1.547 alone, 0.817 at 60:40 (worked example)."""
    window = search([PMMA], [], some("toluene", "ethanol"))[0]
    assert window.low <= 40 <= window.high


def test_a_blend_may_spare_a_neighbour_that_its_part_attacks() -> None:
    """Acetone attacks both; diluted it still dissolves the nitrate and leaves B-72 undecided."""
    found = search([NITRATE], [[B72]], some("acetone", "ethanol"))
    assert [window.neighbours for window in found] == ["undecided"]
    assert found[0].high < 50
    assert found[0].margin is not None
    assert found[0].margin > 0.2


# -- what must never be -----------------------------------------------------------------------


def test_heptane_with_white_spirit_inherits_that_each_alone_does_nothing_to_b72(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Recorded "no effect" alone; together they have no record of their own to stop them."""
    liquids = some("n-heptane", "white-spirit")
    alone = {"n-heptane": "no effect", "white-spirit": "no effect"}
    at = [one.at[0] for one in liquids]
    assert search([B72], [], liquids, known=alone) == []
    assert search([B72], [], liquids, non_solvents=at) == []
    wider = Sphere(B72.at, 12.0)  # which holds both, so that only the record speaks against them
    assert search([wider], [], liquids, known=alone) == []
    monkeypatch.setattr(grading, "NEAR_TARGET", 0.1)
    assert search([wider], [], liquids, known=alone)


def test_a_window_ends_where_a_non_solvent_is_near() -> None:
    liquids = some("n-heptane", "1-propanol")
    heptane, propanol = (one.at[0] for one in liquids)
    free = search([B72], [], liquids)[0]
    held = search([B72], [], liquids, non_solvents=[propanol])[0]
    assert free.parts[0].solvent == held.parts[0].solvent == "1-propanol"
    assert held.high < free.high
    assert distance(_mixed(propanol, heptane, held.high), propanol) >= 4.0
    assert distance(_mixed(propanol, heptane, held.high + 5), propanol) < 4.0


def _mixed(one: Hansen, other: Hansen, share: float) -> Hansen:
    return Hansen(
        *(a * share / 100 + b * (1 - share / 100) for a, b in zip(one, other, strict=True))
    )


def test_water_never_stands_in_a_blend() -> None:
    """Unconstrained, the arithmetic proposes water with propylene carbonate for shellac."""
    carbonate = LIQUIDS["propylene-carbonate"]
    assert search([SHELLAC], [], [WATER, carbonate]) == []
    as_if_dry = Solvent("dry", "a liquid with the parameters of water", WATER.at)
    assert search([SHELLAC], [], [as_if_dry, carbonate])


def test_liquids_that_separate_never_stand_in_a_blend() -> None:
    """Unconstrained, it proposes methanol with D5 for cellulose nitrate."""
    liquids = some("methanol", "d5")
    assert search([NITRATE], [], liquids) == []
    renamed = [Solvent(f"other {one.key}", one.name, one.at) for one in liquids]
    assert search([NITRATE], [], renamed)


def test_a_blend_that_attacks_is_no_gain_over_a_part_that_dissolves_alone() -> None:
    liquids = some("acetone", "ethanol")
    attackers = [frozenset(("acetone", "ethanol"))]
    assert search([SHELLAC], [[B72]], liquids, attackers=attackers) == []
    found = search([SHELLAC], [[B72]], liquids, attackers=attackers, known={"ethanol": "softens"})
    assert [window.neighbours for window in found] == ["attacked"]


def test_a_part_near_a_liquid_that_does_nothing_is_not_what_must_be_bettered() -> None:
    """Ethanol is bettered too little by a blend with acetone, unless it is itself in doubt."""
    liquids = some("acetone", "ethanol")
    found = search([SHELLAC], [], liquids, non_solvents=[LIQUIDS["1-propanol"].at[0]])
    assert [(window.low, window.high) for window in found] == [(40, 85)]


def test_a_known_solvent_is_not_bettered_by_a_prediction_that_harms_no_less() -> None:
    liquids = some("toluene", "1-propanol")
    assert search([B72], [], liquids)
    assert search([B72], [], liquids, known={"toluene": "dissolves"}) == []


@pytest.mark.parametrize("use", ["swelling only", "proxy"])
def test_only_a_sphere_of_dissolution_nominates(use: str) -> None:
    sphere = Sphere(SHELLAC.at, SHELLAC.r0, use)
    liquids = some("acetone", "ethanol")
    assert search([sphere], [], liquids, known={"ethanol": "softens"}) == []
    assert search([], [], liquids) == []


def test_a_narrow_window_is_dropped() -> None:
    """With a smaller sphere of the epoxy less than 10 % is left between the ends."""
    liquids = some("xylenes", "1-butanol")
    for step in (1, 5):
        assert search([Sphere(EPIKOTE.at, 9.38)], [], liquids, step=step) == []
        wider = search([Sphere(EPIKOTE.at, 9.6)], [], liquids, step=step)
        assert all(window.high - window.low >= NARROWEST for window in wider)
        assert wider


@pytest.mark.parametrize("step", [0, -5, 26])
def test_steps_out_of_reach(step: int) -> None:
    with pytest.raises(ValueError, match=f"steps of 1 to 25 per cent, not {step}"):
        search([B72], [], some("acetone", "ethanol"), step=step)


# -- neighbours -------------------------------------------------------------------------------

FAR = Sphere(Hansen(30.0, 0.0, 0.0), 2.0)


def worst(
    neighbours: Sequence[Sequence[Sphere]], *attackers: str, liquids: Sequence[Solvent] = ()
) -> str:
    """What is expected beside PMMA of toluene and ethanol, neither of which acts alone."""
    found = search(
        [PMMA],
        neighbours,
        liquids or some("toluene", "ethanol"),
        attackers=[frozenset(attackers)],
    )
    return found[0].neighbours


def test_a_neighbour_far_off_is_not_expected_to_react() -> None:
    assert worst([[FAR]]) == "no effect expected"


def test_of_several_neighbours_and_spheres_the_worst_counts() -> None:
    mixed = _mixed(LIQUIDS["toluene"].at[0], LIQUIDS["ethanol"].at[0], 55)
    assert worst([[FAR], [Sphere(mixed, 9.0)]]) == "attacked"
    assert worst([[FAR, Sphere(mixed, 9.0)]]) == "attacked"


def test_of_two_windows_on_either_side_of_a_neighbour_the_wider_stands() -> None:
    """A small sphere on the line parts the shares into 20 to 35 % and 55 to 65 % of ethanol."""
    mixed = _mixed(LIQUIDS["ethanol"].at[0], LIQUIDS["toluene"].at[0], 45)
    window = search([PMMA], [[Sphere(mixed, 0.8)]], some("toluene", "ethanol"))[0]
    assert window.neighbours == "no effect expected"
    assert (window.low, window.high) == (20, 35)


def test_a_neighbour_without_a_sphere_stays_undecided() -> None:
    assert worst([[FAR], []]) == "undecided"


@pytest.mark.parametrize("part", ["toluene", "ethanol"])
def test_a_part_known_to_act_on_a_neighbour_counts_for_the_blend(part: str) -> None:
    assert worst([[FAR]], part) == "attacked"
    assert worst([[FAR]], "acetone") == "no effect expected"


def test_a_blend_near_a_liquid_known_to_act_on_a_neighbour_is_likely_to_swell_it() -> None:
    """Methanol with 1-butanol comes within 1 of ethanol."""
    between = Sphere(_mixed(LIQUIDS["methanol"].at[0], LIQUIDS["1-butanol"].at[0], 50), 4.0)
    liquids = some("methanol", "1-butanol", "ethanol")
    found = {
        key: search([between], [[FAR]], liquids, attackers=[frozenset((key,))])
        for key in ("ethanol", "acetone")
    }
    wanted = frozenset(("methanol", "1-butanol"))
    near = next(
        one for one in found["ethanol"] if frozenset(p.solvent for p in one.parts) == wanted
    )
    assert near.neighbours == "swells"
    free = next(
        one for one in found["acetone"] if frozenset(p.solvent for p in one.parts) == wanted
    )
    assert free.neighbours == "no effect expected"


def _boiling(toluene: float | None, ethanol: float | None) -> list[Solvent]:
    one, other = some("toluene", "ethanol")
    return [
        Solvent(one.key, one.name, one.at, boiling_c=toluene),
        Solvent(other.key, other.name, other.at, boiling_c=ethanol),
    ]


@pytest.mark.parametrize(
    ("toluene", "ethanol", "attacked"),
    [
        (110.6, 78.4, True),
        (78.4, 110.6, False),
        (100.0, 100.0, True),
        (None, 78.4, True),
        (78.4, None, True),
    ],
)
def test_the_part_that_stays_longest_is_judged_alone(
    toluene: float | None, ethanol: float | None, attacked: bool
) -> None:
    """Beside a neighbour that toluene alone dissolves, and no blend with 20 % of ethanol does."""
    neighbour = Sphere(LIQUIDS["toluene"].at[0], 1.0)
    found = worst([[neighbour]], liquids=_boiling(toluene, ethanol))
    assert (found == "attacked") is attacked


# -- the list ---------------------------------------------------------------------------------


def test_candidates_have_parameters_no_water_and_a_band_within_the_limit() -> None:
    nameless = Solvent("nameless", "nameless", ())
    unknown = Solvent("unknown", "unknown", (Hansen(16, 5, 5),))
    table = [*some("ethanol", "acetone", "toluene", "dmf"), WATER, nameless, unknown]
    keys = {band: [one.key for one in candidates(table, widest_band=band)] for band in "ABCD"}
    assert keys == {
        "A": ["ethanol"],
        "B": ["ethanol", "acetone"],
        "C": ["ethanol", "acetone", "toluene", "unknown"],
        "D": ["ethanol", "acetone", "toluene", "dmf", "unknown"],
    }
    for band in ("", "AB", "E", "b"):
        with pytest.raises(ValueError, match="one of A, B, C, D"):
            candidates(table, widest_band=band)


def test_the_order_of_the_list_does_not_hang_on_the_order_of_the_liquids() -> None:
    liquids = list(LIQUIDS.values())
    first = search([PMMA], [[SHELLAC]], liquids)
    Random(3).shuffle(liquids)
    assert search([PMMA], [[SHELLAC]], liquids) == first
    assert 0 < len(first) <= MOST


def test_neighbours_come_first_then_evidence_hazard_retention_and_selectivity() -> None:
    effects = ["no effect expected", "undecided", "swells", "attacked"]
    spheres = ["by every", "by the preferred", "by another"]
    keys = [
        (
            effects.index(one.neighbours),
            [one.spheres.startswith(start) for start in spheres].index(True),
            max(LIQUIDS[part.solvent].band for part in one.parts),
            max(_step(LIQUIDS[part.solvent]) for part in one.parts),
            -round(one.margin or 0.0, 1),
        )
        for one in search([PMMA, B72], [[SHELLAC]], list(LIQUIDS.values()))
    ]
    assert keys == sorted(keys)
    for place in range(len(keys[0])):  # each of them decides somewhere
        assert len({key[: place + 1] for key in keys}) > len({key[:place] for key in keys})


def test_the_more_selective_blend_comes_before_the_better_solvent() -> None:
    """The blend of a has RED 0.17 and 3.2 for the neighbour, that of b 0.5 and 4.0."""
    liquids = [
        Solvent(f"{name}{place}", name, (Hansen(17, p, h),), band="A", boiling_c=80.0)
        for name, h in (("a", 9), ("b", 5))
        for place, p in enumerate((0, 16))
    ]
    found = search([Sphere(Hansen(17, 8, 8), 6)], [[Sphere(Hansen(17, 8, 25), 5)]], liquids)
    order = [tuple(part.solvent for part in window.parts) for window in found]
    assert order.index(("b0", "b1")) < order.index(("a0", "a1"))


def _step(liquid: Solvent) -> int:
    """Up to 100, 150, 180 C and above: how long a liquid stays."""
    assert liquid.boiling_c is not None
    return [liquid.boiling_c <= bound for bound in (100, 150, 180, 1000)].index(True)


def test_alcohol_in_a_hydrocarbon_carries_a_caution() -> None:
    found = search([SHELLAC], [], some("ethanol", "white-spirit"), known={"ethanol": "softens"})
    found += search([Sphere(Hansen(16, 5, 11), 6.0)], [], some("ethanol", "n-heptane"))
    assert found
    assert all("separate when damp" in window.caution for window in found)
    assert search([PMMA], [], some("toluene", "ethanol"))[0].caution == ""
