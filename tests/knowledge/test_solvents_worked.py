"""Worked examples from outside: each value stands beside its source.

Sphere numbers are rows of table A.2 of Hansen, Hansen Solubility Parameters, 2nd ed. 2007.
Figures with no source of their own were computed once in floats and once in exact fractions.
"""

from __future__ import annotations

import pytest

from conservedb.knowledge.behaviour import Hansen, Part, Solvent, Sphere, Trait
from conservedb.knowledge.solvents import (
    HILDEBRAND_FACTOR,
    Teas,
    agent_parameters,
    blend,
    distance,
    fox,
    red,
    red_range,
    teas,
    teas_blend,
    teas_problem,
    total,
    vapour_hazard_ratio,
    weight_share,
    words_of_red,
)

ACETONE = Hansen(15.5, 10.4, 7.0)
ETHANOL = Hansen(15.8, 8.8, 19.4)
TOLUENE = Hansen(18.0, 1.4, 2.0)
ETHYL_ACETATE = Hansen(15.8, 5.3, 7.2)
WATER = Hansen(15.5, 16.0, 42.3)
PROPANOL = Hansen(15.8, 6.1, 16.4)

PMMA = Sphere(Hansen(18.64, 10.52, 7.51), 8.59, source="A.2 row 66")
B72 = Sphere(Hansen(17.6, 7.4, 5.6), 9.4, source="A.2 row 365")
SHELLAC = Sphere(Hansen(19.7, 10.1, 15.1), 10.7, source="A.2 row 219")
EPOXY = Sphere(Hansen(16.8, 10.8, 8.8), 8.2, "swelling only", source="A.2 row 408")
POLYSTYRENES = (
    Sphere(Hansen(21.3, 5.8, 4.3), 12.7, source="Burke 1984"),
    Sphere(Hansen(22.28, 5.75, 4.30), 12.68, source="A.2 row 68"),
    Sphere(Hansen(18.5, 4.5, 2.9), 5.3, source="A.2 row 203"),
)


# -- Burke, Solubility parameters: theory and application, 1984 (numbers from memory) ---------

BUTANONE_HEXANE = blend([(Hansen(16.0, 9.0, 5.1), 60), (Hansen(14.9, 0.0, 0.0), 40)])


def test_the_printed_blend_of_butanone_and_hexane() -> None:
    assert pytest.approx((15.56, 5.40, 3.06), abs=1e-9) == BUTANONE_HEXANE
    assert distance(POLYSTYRENES[0].at, BUTANONE_HEXANE) == pytest.approx(11.5537, abs=0.001)
    printed = Hansen(15.6, 5.4, 3.1)
    assert distance(POLYSTYRENES[0].at, printed) == pytest.approx(11.46996, abs=0.0005)
    assert distance(POLYSTYRENES[0].at, printed) == pytest.approx(11.5, abs=0.05)  # as printed


def test_other_published_spheres_say_the_opposite_so_a_range_is_shown() -> None:
    values = [red(sphere, BUTANONE_HEXANE) for sphere in POLYSTYRENES]
    assert [words_of_red(value) for value in values] == ["dissolves", "swells", "swells"]
    assert values[1:] == pytest.approx([1.065, 1.123], abs=0.0005)
    span = red_range(POLYSTYRENES, [BUTANONE_HEXANE])
    assert span == (values[0], values[2])
    assert span[0] < 1 < span[1]


# -- relative energy differences (spheres: A.2; liquids: Manuel/Ruben 2022) -------------------


@pytest.mark.parametrize(
    ("sphere", "at", "apart", "value"),
    [
        (PMMA, ACETONE, 6.3018, 0.7336),
        (PMMA, ETHANOL, 13.2888, 1.5470),
        (PMMA, TOLUENE, 10.7319, 1.2493),
        (PMMA, ETHYL_ACETATE, 7.7206, 0.8988),
        (PMMA, WATER, 35.7745, 4.1647),
        (B72, ACETONE, 5.3479, 0.5689),
        (B72, ETHANOL, 14.3304, 1.5245),
        (B72, TOLUENE, 7.0427, 0.7492),
        (B72, ETHYL_ACETATE, 4.4643, 0.4749),
        (SHELLAC, ETHANOL, 9.0011, 0.8412),
        (SHELLAC, ACETONE, 11.6730, 1.0909),
        (SHELLAC, blend([(ACETONE, 50), (ETHANOL, 50)]), 8.3349, 0.7790),
        (POLYSTYRENES[2], TOLUENE, 3.3793, 0.6376),
        (EPOXY, ACETONE, 3.1875, 0.3887),
    ],
)
def test_relative_energy_differences(
    sphere: Sphere, at: Hansen, apart: float, value: float
) -> None:
    assert distance(sphere.at, at) == pytest.approx(apart, abs=0.0005)
    assert red(sphere, at) == pytest.approx(value, abs=0.0005)


# -- blends printed in Teas space: Conservation DistList, 25 July 1989 ------------------------

PENTANE, PROPYLENE_GLYCOL = Teas(100, 0, 0), Teas(34, 15, 60)
ETHYLBENZENE = Teas(87, 3, 10)


@pytest.mark.parametrize(
    ("one", "share", "other", "printed"),
    [
        (PENTANE, 71.3, Teas(46, 13, 41), (84.49, 3.73, 11.78)),  # n-amyl alcohol
        (PENTANE, 69.0, Teas(50, 12, 38), (84.49, 3.72, 11.79)),  # cyclohexanol
        (ETHYLBENZENE, 95.9, Teas(30, 22, 48), (84.64, 3.79, 11.57)),  # methanol
        (ETHYLBENZENE, 95.3, Teas(36, 18, 46), (84.59, 3.71, 11.70)),  # ethanol
    ],
)
def test_blends_printed_in_teas_space(
    one: Teas, share: float, other: Teas, printed: tuple[float, float, float]
) -> None:
    assert teas_blend([(one, share), (other, 100 - share)]) == pytest.approx(printed, abs=0.05)


def test_the_printed_row_that_makes_101_85_is_refused() -> None:
    problem = teas_problem(Teas(86.49, 3.07, 12.29))
    assert problem is not None
    assert "86.49 + 3.07 + 12.29 makes 101.85" in problem
    with pytest.raises(ValueError, match="34 \\+ 15 \\+ 60 makes 109"):
        teas_blend([(PENTANE, 79.5), (PROPYLENE_GLYCOL, 20.5)])


# -- Teas fractions published (Burke 1984, from memory) against converted ---------------------


@pytest.mark.parametrize(
    ("at", "published", "converted"),
    [
        (ACETONE, Teas(47, 32, 21), (47.1, 31.6, 21.3)),
        (ETHANOL, Teas(36, 18, 46), (35.9, 20.0, 44.1)),
        (TOLUENE, Teas(80, 7, 13), (84.1, 6.5, 9.3)),
        (ETHYL_ACETATE, Teas(51, 18, 31), (55.8, 18.7, 25.4)),
        (Hansen(15.8, 8.2, 10.8), Teas(45, 24, 31), (45.4, 23.6, 31.0)),  # diacetone alcohol
        (WATER, Teas(18, 28, 54), (21.0, 21.7, 57.3)),
    ],
)
def test_published_fractions_are_not_the_converted_ones(
    at: Hansen, published: Teas, converted: tuple[float, float, float]
) -> None:
    assert teas(at) == pytest.approx(converted, abs=0.05)
    assert teas(at) != published
    assert teas_problem(published) is None


def test_a_blend_differs_with_the_kind_of_fractions_it_is_worked_out_from() -> None:
    published = teas_blend([(Teas(80, 7, 13), 50), (Teas(51, 18, 31), 50)])
    converted = teas_blend([(teas(TOLUENE), 50), (teas(ETHYL_ACETATE), 50)])
    assert published == (65.5, 12.5, 22.0)
    assert converted.d - published.d == pytest.approx(4.45, abs=0.05)


# -- two non-solvents make a solvent (the idea: S. Abbott, Practical solubility, solvent blends)


def test_two_non_solvents_make_a_solvent() -> None:
    epikote = Sphere(Hansen(20.0, 10.32, 10.11), 10.02, source="A.2 row 7, uncured")
    xylenes, butanol = Hansen(17.6, 1.0, 3.1), Hansen(16.0, 5.7, 15.8)
    assert red(epikote, xylenes) == pytest.approx(1.259, abs=0.0005)
    assert red(epikote, butanol) == pytest.approx(1.083, abs=0.0005)
    assert red(epikote, blend([(xylenes, 50), (butanol, 50)])) == pytest.approx(0.947, abs=0.0005)
    mixed = blend([(TOLUENE, 60), (ETHANOL, 40)])
    assert red(PMMA, mixed) == pytest.approx(0.817, abs=0.0005)


def test_there_is_no_verdict_on_a_blend_with_water() -> None:
    """80:20 2-propanol:water dissolves PMMA (from memory); the arithmetic says the opposite."""
    arithmetic = red(PMMA, blend([(PROPANOL, 80), (WATER, 20)]))
    assert arithmetic == pytest.approx(1.794, abs=0.0005)
    liquids = {
        "2-propanol": Solvent("2-propanol", "2-propanol", (PROPANOL,)),
        "water": Solvent("water", "water", (WATER,), traits={"water": Trait("yes")}),
    }
    at = agent_parameters([Part("2-propanol", 80), Part("water", 20)], liquids)
    assert red_range([PMMA], at) is None


# -- Hildebrand totals ------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("at", "expected"),
    [
        (ACETONE, 19.94),
        (ETHANOL, 26.52),
        (TOLUENE, 18.16),
        (WATER, 47.81),
        (Hansen(15.3, 0.0, 0.0), 15.30),  # n-heptane
        (Hansen(18.4, 16.4, 10.2), 26.68),  # dimethyl sulfoxide
        (Hansen(17.0, 7.3, 7.1), 19.82),  # dichloromethane
    ],
)
def test_hildebrand_totals(at: Hansen, expected: float) -> None:
    assert total(at) == pytest.approx(expected, abs=0.01)


def test_the_factor_between_the_units_of_hildebrand() -> None:
    """1 cal is 4.184 J (thermochemical), and J/cm3 is MPa."""
    assert pytest.approx(4.184**0.5, abs=0.0001) == HILDEBRAND_FACTOR


# -- glass transitions (PEMA 65, PMA 9, PEA -24: CAMEO, Polyacrylate, 2018; PMMA 105: memory) --


def test_glass_transitions_of_copolymers() -> None:
    by_mole = weight_share([(70, 114.14), (30, 86.09)])
    assert by_mole[0] == pytest.approx(0.7557, abs=0.00005)
    assert fox([(65, 0.7), (9, 0.3)]) == pytest.approx(46.0, abs=0.05)
    assert fox([(65, by_mole[0]), (9, by_mole[1])]) == pytest.approx(49.4, abs=0.05)
    assert fox([(-24, 0.6), (105, 0.4)]) == pytest.approx(15.4, abs=0.05)


def test_an_estimate_is_good_to_about_ten_degrees() -> None:
    """Measured: B-72 37 to 40 (Cardiff 2022); Primal B-60A, related, 16 (Koob 2016)."""
    assert 40 < fox([(65, 0.7), (9, 0.3)]) < 40 + 10
    assert abs(fox([(-24, 0.6), (105, 0.4)]) - 16) < 10


# -- vapour hazard ratios at 20 C (pressures: Perry's 8th ed. or VDI; limits: Ontario) ---------


@pytest.mark.parametrize(
    ("kpa", "ppm", "expected"),
    [
        (24.7, 500, 488),  # acetone
        (5.9, 1000, 58),  # ethanol, short-term limit
        (4.39, 200, 216),  # 2-propanol
        (9.69, 400, 239),  # ethyl acetate
        (1.10, 150, 72),  # n-butyl acetate
        (4.7, 400, 116),  # n-heptane
        (2.93, 20, 1444),  # toluene
        (47.7, 50, 9407),  # dichloromethane
        (21.0, 10, 20723),  # chloroform
    ],
)
def test_vapour_hazard_ratios(kpa: float, ppm: float, expected: float) -> None:
    assert vapour_hazard_ratio(kpa, ppm) == pytest.approx(expected, rel=0.03)
