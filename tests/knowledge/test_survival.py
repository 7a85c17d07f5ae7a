"""How long layers last, held against scipy, lifelines, published examples and plain search."""

from __future__ import annotations

import random
from itertools import pairwise, product
from math import exp, inf, log

import numpy
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats  # type: ignore[import-untyped]
from scipy.optimize import minimize  # type: ignore[import-untyped]

from conservedb.dates import NEVER, UNKNOWN_START
from conservedb.knowledge.survival import (
    FEW,
    Age,
    Between,
    Curve,
    Life,
    Standing,
    age,
    age_when_seen,
    days,
    earliest,
    latest,
)

TODAY = 100_000

FREIREICH = (
    [6, 6, 6, 7, 10, 13, 16, 22, 23],
    [6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35],
)
"""Weeks to relapse, and weeks followed without one, under 6-MP: Freireich and others 1963, Blood
21:699-716, as in many textbooks (from memory)."""
FREIREICH_AT_RISK = {6: 21, 7: 17, 10: 15, 13: 12, 16: 11, 22: 7, 23: 6}
"""How many were at risk at the relapses of each week, as textbooks print it (from memory)."""
FREIREICH_SHARES = {6: 0.857, 7: 0.807, 10: 0.753, 13: 0.690, 16: 0.627, 22: 0.538, 23: 0.448}
"""The product limit of these as textbooks print it (from memory)."""

RADIOTHERAPY = (
    *((45, inf), (6, 10), (0, 7), (46, inf), (46, inf), (7, 16), (17, inf), (7, 14), (37, 44)),
    *((0, 8), (4, 11), (15, inf), (11, 15), (22, inf), (46, inf), (46, inf), (25, 37), (46, inf)),
    *((26, 40), (46, inf), (27, 34), (36, 44), (46, inf), (36, 48), (37, inf), (40, inf)),
    *((17, 25), (46, inf), (11, 18), (38, inf), (5, 12), (37, inf), (0, 5), (18, inf), (24, inf)),
    *((36, inf), (5, 11), (19, 35), (17, 25), (24, inf), (32, inf), (33, inf), (19, 26)),
    *((37, inf), (34, inf), (36, inf)),
)
"""Months, open on the left, of the 46 patients after radiotherapy alone of Finkelstein and Wolfe
1985, Biometrics 41:933-945 (from memory)."""
RADIOTHERAPY_JUMPS = (
    *((4, 5, 0.0463), (6, 7, 0.0334), (7, 8, 0.0887), (11, 12, 0.0708), (24, 25, 0.0926)),
    *((33, 34, 0.0818), (38, 40, 0.1209), (46, 48, 0.4656)),
)
"""Their estimate as Gentleman and Geyer 1994, Biometrika 81:618-623, print it (from memory)."""

SPANS = (
    *((11, 19), (6, 6), (13, 17), (9, 17), (7, 9), (27, 27), (10, 10), (0, 11), (18, 28)),
    *((23, 27), (17, 17), (2, NEVER), (29, 29), (3, NEVER), (29, 29), (23, 35), (21, 21)),
    *((27, NEVER), (3, 3), (6, 14), (5, NEVER), (30, 37), (17, 17), (29, NEVER), (20, 28)),
    *((28, 32), (24, 34), (13, NEVER), (19, NEVER), (18, 18), (4, 4), (19, 19), (19, 19)),
    *((16, 25), (12, NEVER), (3, 3), (1, 1), (15, NEVER), (7, NEVER), (25, NEVER)),
)
SPANS_SHARES = {
    2: 0.97227,
    4: 0.91344,
    5: 0.88403,
    7: 0.84498,
    10: 0.79567,
    11: 0.74636,
    18: 0.60347,
    19: 0.55865,
    20: 0.46118,
    23: 0.40938,
    28: 0.24940,
    30: 0.08313,
}
"""What lifelines 0.30.3, `KaplanMeierFitter.fit_interval_censoring`, gives for SPANS: the share
that is left before each age."""


def exact(ended: list[int], followed: list[int]) -> Curve:
    there = [Age(day + 1, NEVER, day) for day in followed]
    return Curve([Age(day, day, day) for day in ended] + there)


def spans(*those: tuple[int, int]) -> Curve:
    return Curve([Age(low, high, high) for low, high in those])


def likelihood(shares: list[float], places: list[int], those: list[tuple[int, int]]) -> float:
    found = 0.0
    for low, high in those:
        held = sum(s for s, at in zip(shares, places, strict=True) if low <= at <= high)
        found += log(held) if held > 0 else -1e9
    return found


def test_a_published_example_of_the_product_limit() -> None:
    curve = exact(*FREIREICH)
    assert curve.exact and curve.horizon == 35
    assert curve.at(5) == (1, 1)
    for week, share in FREIREICH_SHARES.items():
        assert curve.at(week) == pytest.approx((share, share), abs=5e-4)
    for week, number in FREIREICH_AT_RISK.items():
        assert curve.followed(week) + FREIREICH[0].count(week) == number
    assert (curve.followed(35), curve.followed(36)) == (1, 0)
    assert curve.few_from == 26  # then 32, 32, 34 and 35 are left of those followed
    assert curve.standing(10) == Standing(there=14, ended=5, unknown=2)
    # Greenwood's standard error at 10 weeks is 0.0963 (from memory, the same textbooks), which on
    # the scale log(-log) is divided by the share and by its logarithm.
    wide = 1.96 * 0.0963 / (0.7529 * log(0.7529))
    assert curve.band(10) == pytest.approx((0.7529 ** exp(-wide), 0.7529 ** exp(wide)), abs=1e-3)


def test_who_is_followed_within_intervals() -> None:
    # It may end at any age from 3 to 9; one is followed to 5; of one no end is established.
    curve = Curve([Age(3, 9, 9), Age(6, NEVER, 5), Age(4, NEVER, 8, established=False)])
    assert [curve.followed(day) for day in (0, 3, 4, 5, 6, 8, 9)] == [3, 3, 2, 2, 1, 1, 0]
    assert curve.few_from == 0 and Curve([]).few_from == 0
    many = spans(*((day, day + 1) for day in range(10)))
    assert (many.few_from, many.followed(5), many.followed(6)) == (6, 5, 4)


@pytest.mark.filterwarnings("ignore:The confidence interval is undefined")
@pytest.mark.parametrize("seed", range(20))
def test_exact_ages_agree_with_scipy(seed: int) -> None:
    chance = random.Random(seed)
    ended = [chance.randint(1, 40) for _ in range(chance.randint(2, 30))]
    followed = [chance.randint(0, 50) for _ in range(chance.randint(0, 30))]
    curve = exact(ended, followed)
    # Spans of two days that never overlap leave the same estimate to the steps of Turnbull's.
    stepped = spans(
        *((10 * day, 10 * day + 1) for day in ended), *((10 * day + 2, NEVER) for day in followed)
    )
    reference = stats.ecdf(stats.CensoredData(ended, right=followed)).sf
    band = reference.confidence_interval(0.95, method="log-log")
    assert len(reference.quantiles) > 1
    for at, day in enumerate(reference.quantiles):
        share = reference.probabilities[at]
        low, high = curve.at(int(day))
        if day in ended or day <= curve.horizon:
            assert (high, low) == pytest.approx((share, share), abs=1e-9)
        assert stepped.at(10 * int(day) + 1).high == pytest.approx(share, abs=1e-5)
        ours = curve.band(int(day))
        theirs = band.low.probabilities[at], band.high.probabilities[at]
        if ours is not None:
            assert ours == pytest.approx(theirs, abs=1e-5)
        else:
            assert share in (0, 1) or share == pytest.approx(0, abs=1e-9)


def test_published_intervals() -> None:
    whole = [(int(low) + 1, NEVER if high == inf else int(high)) for low, high in RADIOTHERAPY]
    assert len(whole) == 46
    curve = spans(*whole)
    assert [(j.first - 1, j.last) for j in curve.jumps] == [j[:2] for j in RADIOTHERAPY_JUMPS]
    assert [j.share for j in curve.jumps] == pytest.approx(
        [share for *_, share in RADIOTHERAPY_JUMPS], abs=6e-5
    )


def test_intervals_agree_with_lifelines() -> None:
    curve = spans(*SPANS)
    for day, share in SPANS_SHARES.items():
        assert curve.at(day - 1) == pytest.approx((share, share), abs=1e-5)
    assert curve.at(31) == pytest.approx((0, 0.08313), abs=1e-5)  # it falls from 30 to 32
    assert not curve.exact and curve.band(10) is None


@pytest.mark.parametrize("seed", range(30))
def test_no_other_shares_are_more_likely(seed: int) -> None:
    """Searched numerically over every day, also those outside of Turnbull's intervals."""
    chance = random.Random(seed)
    those = []
    for _ in range(chance.randint(1, 9)):
        low = chance.randint(0, 8)
        those.append((low, chance.choice([low, low + chance.randint(0, 5), NEVER])))
    curve = spans(*those)
    ours = likelihood([j.share for j in curve.jumps], [j.first for j in curve.jumps], those)
    places = [*range(15), NEVER]

    def unlikely(free: numpy.ndarray) -> float:
        shares = numpy.exp(free - free.max())
        return -likelihood(list(shares / shares.sum()), places, those)

    best = -min(
        minimize(unlikely, [chance.uniform(-1, 1) for _ in places], method="L-BFGS-B").fun
        for _ in range(2)
    )
    assert sum(j.share for j in curve.jumps) == pytest.approx(1, abs=1e-5)
    assert ours >= best - 1e-6 * len(those)
    assert ours == pytest.approx(best, abs=1e-2)  # the search came near: it tests something


def test_what_lies_within_a_jump_is_not_known() -> None:
    curve = spans((10, 20), (30, NEVER))
    assert [jump[:2] for jump in curve.jumps] == [(10, 20), (30, NEVER)]
    assert [jump.share for jump in curve.jumps] == pytest.approx([0.5, 0.5])
    assert curve.at(9) == (1, 1)
    assert curve.at(10) == pytest.approx((0.5, 1))
    assert curve.at(19) == pytest.approx((0.5, 1))
    assert curve.at(20) == pytest.approx((0.5, 0.5))
    assert curve.at(30) == pytest.approx((0, 0.5))
    assert curve.horizon == 29


@given(
    st.lists(
        st.tuples(st.integers(0, 40), st.integers(0, 15) | st.none()).map(
            lambda one: (one[0], NEVER if one[1] is None else one[0] + one[1])
        ),
        max_size=12,
    )
)
def test_a_curve_only_falls(those: list[tuple[int, int]]) -> None:
    curve = spans(*those)
    shares = [curve.at(day) for day in range(60)]
    assert all(0 <= low <= high <= 1 for low, high in shares)
    for one, next_one in pairwise(shares):
        assert next_one.low <= one.low and next_one.high <= one.high
    counts = [curve.standing(day) for day in range(60)]
    assert all(sum(count) == len(those) and min(count) >= 0 for count in counts)
    assert all(a.there >= b.there and a.ended <= b.ended for a, b in pairwise(counts))
    followed = [curve.followed(day) for day in range(60)]
    assert all(a >= b for a, b in pairwise(followed))
    for day, (count, number) in enumerate(zip(counts, followed, strict=True)):
        assert count.there <= number <= count.there + count.unknown
        assert (number < FEW) == (day >= curve.few_from)
    assert not those or curve.followed(curve.horizon + 1) == 0 or curve.jumps[-1].last != NEVER


def test_nothing_and_one_are_curves_too() -> None:
    nothing = Curve([])
    assert nothing.jumps == () and nothing.at(5) == (1, 1) and nothing.horizon == 0
    assert nothing.standing(5) == (0, 0, 0) and nothing.band(5) is None
    only = spans((3, 3))
    assert only.at(2) == (1, 1) and only.at(3) == (0, 0) and only.band(3) is None


@pytest.mark.parametrize(
    ("life", "found"),
    [
        # To the day: laid on day 100, gone on day 150.
        (Life(100, 100, 150, 150), Age(50, 50, 50)),
        # Both ends vague: from the latest coming to the earliest end, and the other way round.
        (Life(100, 130, 150, 180), Age(20, 80, 80)),
        # It may have come and gone on one day.
        (Life(100, 160, 150, 180), Age(0, 80, 80)),
        # There still: older than it has certainly been at the close of today.
        (Life(100, 130, NEVER, NEVER), Age(TODAY + 1 - 130, NEVER, TODAY - 100)),
        # Perhaps gone since day 150: no end is known, and no state today.
        (Life(100, 130, 150, NEVER), Age(20, NEVER, TODAY - 100, established=False)),
        # No beginning known: it ended, nobody knows how old.
        (Life(UNKNOWN_START, 130, 150, 180), Age(20, NEVER, TODAY - 130, established=False)),
        (Life(UNKNOWN_START, 130, NEVER, NEVER), Age(TODAY + 1 - 130, NEVER, TODAY - 130)),
        # Its end lies in the future of the day asked for.
        (Life(100, 100, TODAY + 1, TODAY + 9), Age(TODAY - 99, NEVER, TODAY - 100)),
        # It need not have come yet.
        (Life(TODAY - 5, TODAY + 5, NEVER, NEVER), None),
    ],
)
def test_an_age_is_as_wide_as_its_dates(life: Life, found: Age | None) -> None:
    assert age(life, TODAY) == found


def test_an_age_takes_in_every_age_that_its_dates_allow() -> None:
    for came, more, gone, later in product((5, 8), (0, 4), (9, 14), (0, 3)):
        life = Life(came, came + more, gone, gone + later)
        found = age(life, 30)
        assert found is not None
        ages = [g - c for c in range(came, came + more + 1) for g in range(gone, gone + later + 1)]
        assert (found.low, found.high) == (max(min(ages), 0), max(ages))


def test_as_last_seen_follows_only_what_was_seen() -> None:
    assert age_when_seen(Life(100, 130, NEVER, NEVER, 500), TODAY) == Age(370, NEVER, 400)
    assert age_when_seen(Life(100, 130, NEVER, NEVER), TODAY) == Age(0, NEVER, 30)
    assert age_when_seen(Life(100, 130, NEVER, NEVER, 90), TODAY) == Age(0, NEVER, 30)
    ended = Life(100, 130, 150, 180, 140)
    assert age_when_seen(ended, TODAY) == age(ended, TODAY)
    # What nobody has seen since it was laid leaves the estimate as it is.
    seen, unseen = spans((5, 9), (7, NEVER)), spans((5, 9), (7, NEVER), (0, NEVER))
    assert [seen.at(day) for day in range(10)] == pytest.approx(
        [pytest.approx(unseen.at(day), abs=1e-6) for day in range(10)]
    )


def test_the_two_extremes() -> None:
    vague, there = Age(20, 80, 80), Age(60, NEVER, 100)
    perhaps = Age(30, NEVER, 90, established=False)
    assert [earliest(one) for one in (vague, there, perhaps)] == [
        *(Age(20, 20, 20), Age(60, NEVER, 60), Age(30, 30, 30))
    ]
    assert [latest(one)[:2] for one in (vague, there, perhaps)] == [
        *((80, 80), (101, NEVER), (91, NEVER))
    ]
    ages = (vague, there, perhaps)
    assert Curve(map(earliest, ages)).exact and Curve(map(latest, ages)).exact
    assert Curve(map(earliest, ages)).at(30) == pytest.approx((1 / 3, 1 / 3))
    assert Curve(map(latest, ages)).at(79) == Between(1, 1)


def test_years_are_those_of_the_calendar() -> None:
    assert [days(years) for years in (0, 1, 4, 400)] == [0, 365, 1461, 146_097]


def test_thousands_of_layers_take_no_time() -> None:
    chance = random.Random(7)
    many = []
    for _ in range(3000):
        low = chance.randint(0, 15_000)
        many.append((low, chance.choice([low, low + 365, low + 3650, NEVER])))
    curve = spans(*many)
    whole = [low for low, _ in many]
    # The slope towards each place, over all layers, is nowhere above that of the estimate.
    slopes = []
    for jump in curve.jumps:
        held = (
            1 / (curve.at(low - 1).high - (curve.at(high).low if high != NEVER else 0))
            for low, high in many
            if low <= jump.first and jump.last <= high
        )
        slopes.append(sum(held) / len(whole))
    assert max(slopes) == pytest.approx(1, abs=1e-3)
