"""The arithmetic of solvents: properties, boundaries and refusals."""

from __future__ import annotations

from math import isclose

import pytest
from hypothesis import given
from hypothesis import strategies as st

from conservedb.knowledge.behaviour import Hansen, Part, Solvent, Sphere, Trait
from conservedb.knowledge.solvents import (
    Teas,
    agent_parameters,
    blend,
    distance,
    fox,
    has_water,
    near_known,
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

axis = st.floats(0, 45, allow_nan=False)
hansen = st.builds(Hansen, st.floats(10, 25), axis, axis)
spheres = st.builds(Sphere, hansen, st.floats(0.5, 25))
shares = st.floats(1, 99)

ACETONE, ETHANOL = Hansen(15.5, 10.4, 7.0), Hansen(15.8, 8.8, 19.4)


def liquid(key: str, *at: Hansen, **more: str) -> Solvent:
    return Solvent(key, key, at, traits={name: Trait(holds) for name, holds in more.items()})


LIQUIDS = {
    "acetone": liquid("acetone", ACETONE),
    "methanol": liquid("methanol", Hansen(14.7, 12.3, 22.3), Hansen(15.1, 12.3, 22.3)),
    "dioxane": liquid("dioxane", Hansen(17.5, 1.8, 9.0), Hansen(19.0, 1.8, 7.4)),
    "detergent": liquid("detergent"),
    "water": liquid("water", Hansen(15.5, 16.0, 42.3), water="yes"),
    "doubtful": liquid("doubtful", ETHANOL, water="unknown"),
}


# -- Hansen ---------------------------------------------------------------------------------


@given(hansen, hansen)
def test_a_distance_is_the_same_both_ways_and_none_to_itself(one: Hansen, other: Hansen) -> None:
    assert distance(one, other) == distance(other, one) >= 0
    assert distance(one, one) == 0


@given(hansen, hansen, hansen)
def test_a_detour_is_never_shorter(one: Hansen, other: Hansen, by: Hansen) -> None:
    assert distance(one, other) <= distance(one, by) + distance(by, other) + 1e-9


def test_dispersion_counts_double() -> None:
    at = Hansen(16, 5, 5)
    assert distance(at, Hansen(17, 5, 5)) == 2 * distance(at, Hansen(16, 6, 5)) == 2


@given(st.lists(spheres, min_size=1, max_size=4), st.lists(hansen, min_size=1, max_size=3))
def test_a_range_holds_every_member(found: list[Sphere], at: list[Hansen]) -> None:
    span = red_range(found, at)
    members = [red(sphere, one) for sphere in found for one in at]
    assert span is not None
    assert all(span[0] <= member <= span[1] for member in members)
    assert span[0] in members
    assert span[1] in members


def test_without_a_sphere_or_parameters_there_is_no_range() -> None:
    assert red_range([], [ACETONE]) is None
    assert red_range([Sphere(ACETONE, 5)], []) is None


@pytest.mark.parametrize("radius", [0.0, -1.0, float("nan")])
def test_a_sphere_needs_a_radius(radius: float) -> None:
    with pytest.raises(ValueError, match="radius of a Hansen sphere must be above 0"):
        red(Sphere(ACETONE, radius), ETHANOL)


@pytest.mark.parametrize(
    ("value", "words"),
    [
        (0.0, "dissolves"),
        (0.999999, "dissolves"),
        (1.0, "swells"),
        (1.199999, "swells"),
        (1.2, "undecided"),
        (2.0, "undecided"),
        (2.000001, "no effect expected"),
    ],
)
def test_boundaries_of_red(value: float, words: str) -> None:
    assert words_of_red(value) == words


def test_near_is_closer_than_the_limit_by_any_set() -> None:
    at, far = Hansen(16, 5, 5), Hansen(16, 25, 5)
    assert not near_known([at], [Hansen(16, 9, 5)], 4.0)
    assert near_known([far, at], [far, Hansen(16, 8.99, 5)], 4.0)
    assert not near_known([], [at], 4.0)
    assert not near_known([at], [], 4.0)


# -- blends ---------------------------------------------------------------------------------


@given(hansen, hansen, shares)
def test_a_blend_lies_between_its_parts(one: Hansen, other: Hansen, share: float) -> None:
    mixed = blend([(one, share), (other, 100 - share)])
    for a, b, between in zip(one, other, mixed, strict=True):
        assert min(a, b) - 1e-9 <= between <= max(a, b) + 1e-9
    whole = distance(one, other)
    assert isclose(distance(one, mixed) + distance(mixed, other), whole, abs_tol=1e-6)


@given(st.lists(hansen, min_size=1, max_size=4), hansen, st.floats(0.5, 20))
def test_a_blend_of_liquids_in_a_sphere_is_in_it(at: list[Hansen], to: Hansen, r0: float) -> None:
    mixed = blend([(one, 100 / len(at)) for one in at])
    sphere = Sphere(to, r0)
    assert red(sphere, mixed) <= max(red(sphere, one) for one in at) + 1e-9


@pytest.mark.parametrize(
    ("given_shares", "sentence"),
    [
        ([60.0, 30.0], "must make 100 per cent by volume: 60 \\+ 30 makes 90"),
        ([60.0, 40.6], "60 \\+ 40.6 makes 100.6"),
        ([0.0, 100.0], "must be above 0 per cent, not 0 \\+ 100"),
        ([-5.0, 105.0], "must be above 0 per cent"),
        ([float("nan"), 50.0], "must be above 0 per cent"),
        ([], "no part at all makes 0"),
    ],
)
def test_shares_that_make_no_blend(given_shares: list[float], sentence: str) -> None:
    with pytest.raises(ValueError, match=sentence):
        blend([(ACETONE, share) for share in given_shares])


def test_shares_a_little_off_are_taken_as_a_whole() -> None:
    mixed = blend([(ACETONE, 33.3), (ACETONE, 33.3), (ACETONE, 33.3)])
    assert all(isclose(*pair) for pair in zip(mixed, ACETONE, strict=True))
    assert blend([(ACETONE, 60), (ACETONE, 40.5)]).d == pytest.approx(ACETONE.d)


def test_a_single_liquid_has_all_its_published_sets() -> None:
    assert agent_parameters([Part("methanol")], LIQUIDS) == LIQUIDS["methanol"].at


def test_a_blend_is_worked_out_from_the_preferred_sets_then_one_other_at_a_time() -> None:
    parts = [Part("methanol", 50), Part("dioxane", 50)]
    found = agent_parameters(parts, LIQUIDS)
    first, second = LIQUIDS["methanol"].at, LIQUIDS["dioxane"].at
    assert found == (
        blend([(first[0], 50), (second[0], 50)]),
        blend([(first[1], 50), (second[0], 50)]),
        blend([(first[0], 50), (second[1], 50)]),
    )


@pytest.mark.parametrize("other", ["detergent", "not in the table", "water"])
def test_a_blend_with_a_part_of_no_verdict_has_none(other: str) -> None:
    assert agent_parameters([Part("acetone", 50), Part(other, 50)], LIQUIDS) == ()


def test_shares_that_do_not_add_up_are_refused_not_guessed() -> None:
    with pytest.raises(ValueError, match="100 \\+ 100 makes 200"):
        agent_parameters([Part("acetone"), Part("methanol")], LIQUIDS)


def test_water_is_seen_in_any_part_and_only_where_recorded() -> None:
    assert has_water([Part("acetone", 90), Part("water", 10)], LIQUIDS)
    assert not has_water([Part("acetone", 50), Part("doubtful", 50)], LIQUIDS)
    assert not has_water([Part("not in the table")], LIQUIDS)


# -- Teas -----------------------------------------------------------------------------------


@given(hansen)
def test_converted_fractions_make_100(at: Hansen) -> None:
    fractions = teas(at)
    assert sum(fractions) == pytest.approx(100)
    assert teas_problem(fractions) is None


@given(hansen, hansen, shares)
def test_blended_fractions_make_100(one: Hansen, other: Hansen, share: float) -> None:
    assert sum(teas_blend([(teas(one), share), (teas(other), 100 - share)])) == pytest.approx(100)


def test_magnitude_is_lost_in_fractions() -> None:
    assert teas(Hansen(16, 8, 8)) == teas(Hansen(8, 4, 4)) == Teas(50, 25, 25)


@pytest.mark.parametrize(("h", "right"), [(9.0, True), (11.0, True), (8.9, False), (11.1, False)])
def test_fractions_may_be_off_by_one(h: float, right: bool) -> None:
    assert (teas_problem(Teas(60, 30, h)) is None) is right


def test_a_fraction_below_0_is_a_mistake_even_where_the_sum_is_100() -> None:
    assert "cannot be below 0" in str(teas_problem(Teas(80, 30, -10)))


def test_parameters_of_nothing_have_no_fractions() -> None:
    with pytest.raises(ValueError, match="no Teas fractions"):
        teas(Hansen(0, 0, 0))


# -- vapour and softening -------------------------------------------------------------------


@given(st.floats(0.001, 60), st.floats(1, 1000), st.floats(1.01, 10))
def test_a_lower_limit_is_a_greater_hazard(kpa: float, ppm: float, times: float) -> None:
    ratio = vapour_hazard_ratio(kpa, ppm)
    assert vapour_hazard_ratio(kpa, ppm / times) == pytest.approx(ratio * times)


@pytest.mark.parametrize(("kpa", "ppm"), [(0.0, 50.0), (1.0, 0.0), (-1.0, 50.0)])
def test_a_vapour_hazard_ratio_needs_both_figures(kpa: float, ppm: float) -> None:
    with pytest.raises(ValueError, match="above 0"):
        vapour_hazard_ratio(kpa, ppm)


@given(st.floats(-100, 200), st.floats(-100, 200), st.floats(0.01, 0.99))
def test_a_copolymer_softens_between_its_parts(one: float, other: float, share: float) -> None:
    found = fox([(one, share), (other, 1 - share)])
    assert min(one, other) - 1e-6 <= found <= max(one, other) + 1e-6


def test_fractions_a_little_off_are_taken_as_a_whole() -> None:
    assert fox([(50, 0.333)] * 3) == pytest.approx(50)


@pytest.mark.parametrize(
    "parts", [[(65.0, 0.7), (9.0, 0.2)], [(65.0, 1.0), (9.0, 0.0)], [(-300.0, 1.0)], []]
)
def test_what_is_no_copolymer(parts: list[tuple[float, float]]) -> None:
    with pytest.raises(ValueError, match=r"Fractions by weight|absolute zero"):
        fox(parts)


def test_weight_shares_make_one_and_need_amounts() -> None:
    assert sum(weight_share([(70, 114.14), (30, 86.09)])) == pytest.approx(1)
    with pytest.raises(ValueError, match="must all be above 0"):
        weight_share([(70, 0)])
    with pytest.raises(ValueError, match="must all be above 0"):
        weight_share([])


@given(hansen)
def test_the_total_is_at_least_each_part_of_it(at: Hansen) -> None:
    assert total(at) >= max(at)
