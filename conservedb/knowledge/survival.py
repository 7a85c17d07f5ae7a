"""How long layers last, when nobody knows to the day when they came or went.

Each layer gives an interval of ages at which it ended, open where it may be there still. From
these comes the nonparametric maximum likelihood estimate: Turnbull 1976, "The empirical
distribution function with arbitrarily grouped, censored and truncated data", J. R. Stat. Soc. B
38:290-295. Where every day is known it is the product limit of Kaplan and Meier 1958, J. Am.
Stat. Assoc. 53:457-481. Ages are whole days.

The estimate holds if it is not the age of a layer that decides whether somebody looked; layers
that went before anybody wrote them down are in no record, and so in no estimate.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections import Counter
from collections.abc import Iterable, Sequence
from itertools import accumulate, pairwise
from math import exp, inf, log, sqrt
from typing import NamedTuple

from conservedb.dates import NEVER, is_known

YEAR = 365.2425
"""Days in a year of the Gregorian calendar, on average."""
CLOSE = 1e-8
"""The estimate is done when no other has a log-likelihood per layer greater by more than this."""
MOST_STEPS = 10_000
Z_95 = 1.959963984540054
"""Between minus and plus this lie 95 % of the standard normal distribution."""
FEW = 5
"""With fewer layers than these still followed, one more or less moves the estimate far."""
_LEAST = 1e-300
_SHORTEST = 1e-3
_NOTHING = 1e-7


class Life(NamedTuple):
    """From when until when a layer was there, each end as days between which it lies.

    Attributes:
        gone_from, gone_to: NEVER where no end of it is on record; a removal in part is no end.
        seen: the last day on which it was certainly seen, None where nobody saw it.
    """

    came_from: int
    came_to: int
    gone_from: int
    gone_to: int
    seen: int | None = None


class Age(NamedTuple):
    """The age in days at which something ended: at least `low`, at most `high`.

    Attributes:
        high: NEVER where it may be there still.
        longest: the greatest age that it can have reached by the day it was followed to.
        established: False where it may have ended at any age from `low` on.
    """

    low: int
    high: int
    longest: int
    established: bool = True

    @property
    def ended(self) -> bool:
        """Whether it certainly ended."""
        return self.high != NEVER


class Jump(NamedTuple):
    """A share of all that ends at some age from `first` to `last`; nobody can tell at which."""

    first: int
    last: int
    share: float


class Between(NamedTuple):
    """A share that lies from `low` to `high`."""

    low: float
    high: float


class Standing(NamedTuple):
    """How many were there for certain at an age, how many had ended, and of how many is unknown.

    Unknown: the dates are too vague, or the layer is not as old yet.
    """

    there: int
    ended: int
    unknown: int

    @property
    def share(self) -> Between:
        """The least and the most that can be there, of all; anything where there are none."""
        total = sum(self)
        possible = self.there + self.unknown
        return Between(self.there / total, possible / total) if total else Between(0, 1)


class Curve:
    """The estimate of how many are still there, by age.

    Attributes:
        ages: what it rests on.
        jumps: where it falls, in the order of age; the last may have no end (NEVER).
        exact: whether every end is known to the day, so that it is the product limit.
        horizon: the age in days from which on nothing is known of how many are still there.
        few_from: the age in days from which on fewer than FEW are followed.
    """

    def __init__(self, ages: Iterable[Age]) -> None:
        self.ages = tuple(ages)
        self.exact = all(age.low == age.high for age in self.ages if age.ended)
        spans = [(age.low, age.high) for age in self.ages]
        self.jumps = _product_limit(spans) if self.exact else _estimate(spans)
        self.horizon = _horizon(self.jumps)
        self._ends = [jump.last for jump in self.jumps]
        self._starts = [jump.first for jump in self.jumps]
        self._left = [1.0, *(1 - fallen for fallen in accumulate(j.share for j in self.jumps))]
        self._lows = sorted(age.low for age in self.ages)
        self._highs = sorted(age.high for age in self.ages)
        self._until = sorted(age.high if age.ended else age.low for age in self.ages)
        self.few_from = self._until[-FEW] if len(self._until) >= FEW else 0

    def at(self, age: int) -> Between:
        """The share that is still there after so many days; within a jump it is not known."""
        begun = bisect_right(self._starts, age)
        done = bisect_right(self._ends, age)
        return Between(max(self._left[begun], 0.0), max(self._left[done], 0.0))

    def standing(self, age: int) -> Standing:
        """What is certain of the layers themselves after so many days, without any estimate."""
        there = len(self._lows) - bisect_right(self._lows, age)
        ended = bisect_right(self._highs, age)
        return Standing(there, ended, len(self.ages) - there - ended)

    def followed(self, age: int) -> int:
        """How many the estimate still rests on after so many days: those at risk.

        Each up to the age at which it has ended for certain, or to which it was followed.
        """
        return len(self._until) - bisect_right(self._until, age)

    def band(self, age: int) -> Between | None:
        """The 95 % band of the share after so many days, by Greenwood's variance of its logarithm.

        On the scale log(-log), so that it stays within 0 and 1 (Kalbfleisch and Prentice, The
        Statistical Analysis of Failure Time Data). None where dates are vague, and where the
        share is 1 or 0, for which there is none.
        """
        share, _ = self.at(age)
        if not self.exact or not self.ages or share <= _NOTHING or share >= 1:
            return None
        deaths = Counter(one.low for one in self.ages if one.ended and one.low <= age)
        variance = 0.0
        for day, died in deaths.items():
            at_risk = self.standing(day).there + died
            variance += died / (at_risk * (at_risk - died))
        wide = Z_95 * sqrt(variance) / log(share)
        return Between(share ** exp(-wide), share ** exp(wide))


def age(life: Life, today: int) -> Age | None:
    """The age at which a layer ended, as recorded: it is there until an end is on record.

    None where it had not certainly come by today.
    """
    if life.came_to > today:
        return None
    longest = today - _begun(life)
    if life.gone_from > today:
        return Age(today + 1 - life.came_to, NEVER, longest)
    low = max(life.gone_from - life.came_to, 0)
    if life.gone_to > today:
        return Age(low, NEVER, longest, established=False)
    if not is_known(life.came_from):
        return Age(low, NEVER, longest, established=False)
    high = life.gone_to - life.came_from
    return Age(low, high, high)


def age_when_seen(life: Life, today: int) -> Age | None:
    """The same as last seen: where no end is on record, it is followed only while it was seen.

    A layer that nobody has seen since it was laid then tells nothing of how long layers last.
    """
    found = age(life, today)
    if found is None or life.gone_from <= today:
        return found
    seen = life.came_to if life.seen is None else max(life.came_to, min(life.seen, today))
    return Age(seen - life.came_to, NEVER, seen - _begun(life))


def earliest(found: Age) -> Age:
    """The age if it ended as early as its dates allow, also where it may be there still."""
    if found.ended or not found.established:
        return Age(found.low, found.low, found.low)
    return Age(found.low, NEVER, found.low)


def latest(found: Age) -> Age:
    """The age if it ended as late as its dates allow, or is there still."""
    if found.ended:
        return Age(found.high, found.high, found.high)
    return Age(max(found.low, found.longest + 1), NEVER, found.longest)


def days(years: float) -> int:
    """Whole days in so many years of 365.2425 days."""
    return round(years * YEAR)


def _begun(life: Life) -> int:
    """The earliest day on which it can have come; where none is known, the latest."""
    return life.came_from if is_known(life.came_from) else life.came_to


def _horizon(jumps: Sequence[Jump]) -> int:
    if not jumps:
        return 0
    return max(jumps[-1].first - 1, 0) if jumps[-1].last == NEVER else jumps[-1].last


def _product_limit(spans: Sequence[tuple[int, int]]) -> tuple[Jump, ...]:
    """The estimate where each span is one day or has no end."""
    ended = Counter(low for low, high in spans if high != NEVER)
    followed = sorted(low for low, high in spans if high == NEVER)
    at_risk, left, found = len(spans), 1.0, []
    for day, number in sorted(ended.items()):
        share = left * number / (at_risk - bisect_right(followed, day))
        found.append(Jump(day, day, share))
        at_risk, left = at_risk - number, left - share
    if left > _NOTHING and followed:
        found.append(Jump(followed[-1], NEVER, left))
    return tuple(found)


def _estimate(spans: Sequence[tuple[int, int]]) -> tuple[Jump, ...]:
    """The shares of the innermost intervals that make the spans most likely.

    The shares are unique wherever they decide how likely a span is; else one choice of many.
    """
    places = _innermost(spans)
    if not places:
        return ()
    starts, ends = [first for first, _ in places], [last for _, last in places]
    ranges = Counter((bisect_left(starts, low), bisect_right(ends, high)) for low, high in spans)
    shares = _most_likely(ranges, len(places))
    return tuple(
        Jump(first, last, share)
        for (first, last), share in zip(places, shares, strict=True)
        if share > _NOTHING
    )


def _innermost(spans: Sequence[tuple[int, int]]) -> list[tuple[int, int]]:
    """Turnbull's intervals: each begins where a span begins, ends at the next end of one.

    No other end or beginning lies between; only there can a most likely estimate have its shares.
    """
    lows, highs = sorted({low for low, _ in spans}), sorted({high for _, high in spans})
    found = []
    for at, low in enumerate(lows):
        high = highs[bisect_left(highs, low)]
        if at + 1 == len(lows) or high < lows[at + 1]:
            found.append((low, high))
    return found


Ranges = Counter[tuple[int, int]]


def _most_likely(ranges: Ranges, places: int) -> list[float]:
    """The shares of `places` intervals, of which each range takes in those from its first on.

    Turnbull's self-consistent step, and one of the iterative convex minorant after it: Wellner
    and Zhan 1997, J. Am. Stat. Assoc. 92:945-959. Done when the steepest slope of the
    log-likelihood towards any single interval is flat: none can be better by more than that.
    """
    shares = [1 / places] * places
    for _ in range(MOST_STEPS):
        shares, slope = _self_consistent(ranges, shares)
        if slope <= CLOSE:
            break
        shares = _convex_minorant(ranges, shares)
    return shares


def _self_consistent(ranges: Ranges, shares: Sequence[float]) -> tuple[list[float], float]:
    """Each share as what all layers together expect of it; and the steepest slope before that."""
    below = [0.0, *accumulate(shares)]
    change = [0.0] * (len(shares) + 1)
    for (first, end), count in ranges.items():
        weight = count / max(below[end] - below[first], _LEAST)
        change[first] += weight
        change[end] -= weight
    number = ranges.total()
    slopes = [slope / number for slope in accumulate(change[:-1])]
    moved = [share * slope for share, slope in zip(shares, slopes, strict=True)]
    whole = sum(moved)
    return [share / whole for share in moved], max(slopes) - 1


def _convex_minorant(ranges: Ranges, shares: Sequence[float]) -> list[float]:
    """Shares after a step of Newton's on what has ended by each place, which can only rise."""
    ended = [0.0, *accumulate(shares)]
    slopes, bends = [0.0] * len(ended), [_LEAST] * len(ended)
    for (first, end), count in ranges.items():
        weight = 1 / max(ended[end] - ended[first], _LEAST)
        slopes[end] += count * weight
        slopes[first] -= count * weight
        bends[end] += count * weight * weight
        bends[first] += count * weight * weight
    inner = range(1, len(shares))
    wanted = [ended[at] + slopes[at] / bends[at] for at in inner]
    risen = _rising(wanted, [bends[at] for at in inner])
    target = [0.0, *(min(max(value, 0.0), 1.0) for value in risen), 1.0]
    before = _likely(ranges, ended)
    far = 1.0
    while far > _SHORTEST:
        tried = [a + far * (b - a) for a, b in zip(ended, target, strict=True)]
        if _likely(ranges, tried) > before:
            return [max(b - a, 0.0) for a, b in pairwise(tried)]
        far /= 2
    return list(shares)


def _likely(ranges: Ranges, ended: Sequence[float]) -> float:
    """The log-likelihood where so much has ended by each place."""
    total = 0.0
    for (first, end), count in ranges.items():
        share = ended[end] - ended[first]
        if share <= 0:
            return -inf
        total += count * log(share)
    return total


def _rising(values: Sequence[float], weights: Sequence[float]) -> list[float]:
    """The nearest values that never fall, by weighted least squares: neighbours pooled."""
    pools: list[tuple[float, float, int]] = []
    for value, weight in zip(values, weights, strict=True):
        number = 1
        while pools and pools[-1][0] >= value:
            pooled, heavy, many = pools.pop()
            value = (pooled * heavy + value * weight) / (heavy + weight)
            weight, number = heavy + weight, many + number
        pools.append((value, weight, number))
    return [value for value, _, number in pools for _ in range(number)]
